//! What a person would receive from an arrangement, and the class that follows.
//!
//! States × faults → touch currents → fault margin → class. It does not know what has been found
//! out about a unit; it is asked about one arrangement at a time, and remembers what it solved.

mod class;
mod exposure;
mod grade;
mod grid;
mod outcome;
mod plan;
mod screen;
mod table;
mod touch;
mod touch_range;
mod touch_test;
mod way;

pub use class::{Class, Severity, Signal, severity};
pub use exposure::{Corner, Exposures, Parts};
pub use grade::Worst;
pub use grid::Grid;
pub use outcome::{BREAKER_TRIPS_A, Outcome, Person, outcome};
pub use screen::{Level, Screen};
pub use table::{Row, Table, table, table_for};
pub use touch::touch_amperes;
pub use touch_range::{TouchRange, TouchRanges, touch_ranges};
pub use touch_test::{
    STOP_VOLTS, TestedMetal, TouchReading, implied_farads, touch_test, volts_through,
};
pub use way::Way;
