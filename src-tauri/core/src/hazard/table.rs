//! The full table of one arrangement: every state with every set of at most two faults.

use crate::arrangement::{
    Arrangement, FaultSet, State, Values, Wiring, fault_sets, states, touched,
};
use crate::body::LET_GO_MA;
use crate::supply::Supply;

use super::class::Class;
use super::outcome::{Outcome, Person, outcome};

/// One row: a state, a set of faults, what happens.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    /// The state.
    pub state: State,
    /// The faults.
    pub faults: FaultSet,
    /// What a person receives.
    pub outcome: Outcome,
}

/// All rows of an arrangement at one voltage.
#[derive(Clone, Debug)]
pub struct Table {
    /// The rows, by state, then by number of faults, each in the design's order.
    pub rows: Vec<Row>,
    /// The class.
    pub class: Class,
    /// The smallest number of faults that lets the current reach 5 mA; 3 is three or more.
    pub margin: u8,
    /// The largest current with no fault, mA rms.
    pub as_found_ma: f64,
}

/// The table of an arrangement whose parts have exactly these values, at `volts` of the supply, for
/// the person that verdicts are for.
pub fn table(arrangement: &Arrangement, supply: &Supply, volts: f64, values: &Values) -> Table {
    table_for(arrangement, supply, volts, values, &Person::default())
}

/// The same for another person. The classes keep their limits of 0.5 and 5 mA.
pub fn table_for(
    arrangement: &Arrangement,
    supply: &Supply,
    volts: f64,
    values: &Values,
    person: &Person,
) -> Table {
    let contacts = supply.contacts(volts);
    let sets = fault_sets(arrangement, supply.feed);
    let mut rows = Vec::with_capacity(sets.len() * 8);
    if let Some(line) = arrangement.line {
        for state in states(arrangement, supply.feed) {
            for &faults in &sets {
                let Some(wiring) = Wiring::of(arrangement, state, faults) else {
                    continue;
                };
                let touched = touched(&line, faults);
                let outcome = outcome(wiring, touched, values, supply.hertz, contacts, person);
                rows.push(Row { state, faults, outcome });
            }
        }
    }
    summarise(arrangement, rows)
}

fn summarise(arrangement: &Arrangement, rows: Vec<Row>) -> Table {
    let margin = margin(arrangement, &rows);
    let as_found_ma = rows
        .iter()
        .filter(|row| row.faults.is_empty())
        .map(|row| row.outcome.milliamperes())
        .fold(0.0, f64::max);
    let class = if arrangement.isolation.has_line() {
        Class::from_margin(margin, as_found_ma)
    } else {
        Class::NoLine
    };
    Table { rows, class, margin, as_found_ma }
}

/// The fault margin; 0 by definition where powering would put the supply on the earth conductor.
fn margin(arrangement: &Arrangement, rows: &[Row]) -> u8 {
    if arrangement.is_line_on_earth() {
        return 0;
    }
    rows.iter()
        .filter(|row| row.outcome.milliamperes() >= LET_GO_MA.value)
        .map(|row| row.faults.len() as u8)
        .min()
        .unwrap_or(3)
}
