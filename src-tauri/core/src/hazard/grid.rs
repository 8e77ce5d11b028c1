//! What a person receives in every state, as found and after each single fault.
//!
//! At the worst ends of what is known of the parts, so that no cell is kinder than the class.

use crate::arrangement::{Arrangement, FaultSet, State, states};

use super::exposure::Exposures;
use super::outcome::Outcome;
use super::table::Row;

/// All states of an arrangement with no fault and with each single one.
#[derive(Clone, Debug, PartialEq)]
pub struct Grid {
    /// The states, in the design's order; none for a unit without a line side.
    pub states: Vec<State>,
    /// No fault first, then each fault that can happen to it.
    pub faults: Vec<FaultSet>,
    /// By fault, then by state.
    pub cells: Vec<Vec<Outcome>>,
}

impl Grid {
    /// Every cell with what it is of, by fault, then by state.
    pub fn rows(&self) -> impl Iterator<Item = Row> {
        self.faults.iter().zip(&self.cells).flat_map(move |(&faults, cells)| {
            let cells = self.states.iter().zip(cells);
            cells.map(move |(&state, &outcome)| Row { state, faults, outcome })
        })
    }

    /// The worse of two grids of one arrangement, cell by cell.
    #[must_use]
    pub fn worse(self, other: &Self) -> Self {
        let rows = self.cells.into_iter().zip(&other.cells);
        let cells = rows.map(|(row, more)| {
            row.into_iter().zip(more).map(|(cell, other)| cell.worse(*other)).collect()
        });
        Self { cells: cells.collect(), ..self }
    }
}

impl Exposures {
    /// The grid of an arrangement, each cell at the ends of the parts that are worst for it.
    pub fn grid(&mut self, arrangement: &Arrangement) -> Grid {
        let states: Vec<State> = states(arrangement, self.feed()).collect();
        let sets = self.fault_sets(arrangement);
        let faults: Vec<FaultSet> = sets.into_iter().filter(|set| set.len() < 2).collect();
        let cells = faults
            .iter()
            .map(|faults| {
                states
                    .iter()
                    .map(|state| self.worst_corner(arrangement, *state, *faults).0)
                    .collect()
            })
            .collect();
        Grid { states, faults, cells }
    }
}
