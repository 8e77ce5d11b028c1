//! Four states of one arrangement that teach why it is what it is: the kindest and the worst as found, the worst
//! with the switch off, and the worst single fault; and the pair of faults that the verdict quotes, where it takes two.

use serde::Serialize;

use super::grid::Says;
use crate::arrangement::{Arrangement, Fault, FaultSet, State, Switch, SwitchLeg};
use crate::hazard::{Grid, Outcome};
use crate::words::Message;

/// One step of the walk.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct WalkStep {
    /// What it shows.
    pub title: String,
    /// Plug, switch and ground switch.
    pub state: State,
    /// The fault it shows, if any.
    pub faults: Vec<Fault>,
    /// Why, in sentences.
    pub sentences: Vec<String>,
}

/// One state with some faults, and what comes of it.
#[derive(Clone, Copy)]
pub(super) struct Cell {
    pub state: State,
    pub faults: FaultSet,
    pub outcome: Outcome,
}

/// The walk through the worst arrangement.
pub(super) fn walk(
    grid: &Grid,
    pair: Option<Cell>,
    behind: &[(State, f64)],
    says: &Says<'_>,
) -> Vec<WalkStep> {
    let cells = cells(grid);
    let found = || cells.iter().copied().filter(|cell| cell.faults.is_empty());
    let off = || found().filter(|cell| cell.state.switch == Switch::Off);
    let broken = cells.iter().copied().filter(|cell| !cell.faults.is_empty());
    let switched = says.arrangement.line.is_some_and(|line| line.switch_leg != SwitchLeg::None);
    let behind = |cell: &Cell| {
        behind.iter().find(|(state, _)| *state == cell.state).map_or(0.0, |(_, volts)| *volts)
    };
    let on_earth = on_earth(says.arrangement, grid);
    let steps = [
        ("walk-kindest", kindest(found(), behind)),
        // Where the supply is on the earth wire no position as found is the worst.
        ("walk-worst", worst(found(), behind).filter(|_| on_earth.is_none())),
        ("walk-off", worst(off(), behind).filter(|_| switched)),
        ("walk-on-earth", on_earth),
        ("walk-fault", worst(broken, |_| 0.0)),
        ("walk-pair", pair),
    ];
    let mut walk: Vec<WalkStep> = Vec::new();
    for (id, cell) in steps {
        let step = cell.map(|cell| step(says, id, cell));
        // Where every position is alike, one step says it.
        let is_new = |step: &WalkStep| {
            walk.iter().all(|seen| (seen.state, &seen.faults) != (step.state, &step.faults))
        };
        walk.extend(step.filter(is_new));
    }
    walk
}

/// The position that shows why a set with the supply on the earth wire is live: where the breaker trips.
pub(super) fn on_earth(arrangement: &Arrangement, grid: &Grid) -> Option<Cell> {
    let trips = |cell: &Cell| cell.outcome == Outcome::BreakerTrips;
    arrangement.is_line_on_earth().then(|| cells(grid).into_iter().find(trips)).flatten()
}

fn step(says: &Says<'_>, id: &'static str, cell: Cell) -> WalkStep {
    let what = |fault: Fault| says.words.say(&Message::new(format!("fault-{}-what", fault.id())));
    let what = cell.faults.faults().map(what);
    let sentences = says.cell(cell.state, cell.faults, cell.outcome).sentences;
    WalkStep {
        title: says.words.say_id(id),
        state: cell.state,
        faults: cell.faults.faults().collect(),
        sentences: what.chain(sentences).collect(),
    }
}

fn cells(grid: &Grid) -> Vec<Cell> {
    let rows = grid.faults.iter().zip(&grid.cells);
    let of_row = |(faults, row): (&FaultSet, &Vec<Outcome>)| -> Vec<Cell> {
        let cells = grid.states.iter().zip(row);
        let cell = |(state, outcome): (&State, &Outcome)| Cell {
            state: *state,
            faults: *faults,
            outcome: *outcome,
        };
        cells.map(cell).collect()
    };
    rows.flat_map(of_row).collect()
}

/// The first of those with the most current; where nothing can be touched, with the most behind it.
fn worst(cells: impl Iterator<Item = Cell>, behind: impl Fn(&Cell) -> f64) -> Option<Cell> {
    cells.reduce(|best, next| if is_worse(&next, &best, &behind) { next } else { best })
}

/// The first of those with the least.
fn kindest(cells: impl Iterator<Item = Cell>, behind: impl Fn(&Cell) -> f64) -> Option<Cell> {
    cells.reduce(|best, next| if is_worse(&best, &next, &behind) { next } else { best })
}

fn is_worse(one: &Cell, other: &Cell, behind: &impl Fn(&Cell) -> f64) -> bool {
    if one.outcome == other.outcome {
        behind(one) > behind(other)
    } else {
        one.outcome.worse(other.outcome) == one.outcome
    }
}
