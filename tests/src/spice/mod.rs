//! The outside circuit reference: ngspice solves the line side of a unit from the written design.
//!
//! Nothing here comes from the core. The netlist is built again from the words of the design
//! (arrangements, states, faults), so that a comparison checks which part joins which node as
//! well as the arithmetic.
//!
//! ```
//! use coldchassis_tests::spice::{Body, Case, run_batch};
//! use serde_json::json;
//!
//! let case = Case {
//!     exposure: json!({
//!         "supply": {"volts": 120, "hertz": 60},
//!         "isolation": "line_tied", "cord": "two_pin_reversible", "near_pin": "b",
//!         "line_capacitor": "none", "line_capacitor_class": "ordinary",
//!         "switch_leg": "near", "reach": "exposed",
//!         "values": {"line_capacitor_farad": 4.7e-8, "network_ohm": 220e3,
//!                    "network_farad": 1e-7, "aerial_farad": 1e-8, "heater_ohm": 819,
//!                    "load_ohm": 1500, "winding_farad": 5e-10, "primary_ohm": 240,
//!                    "earth_ohm": 0.2}}),
//!     plug: "second".into(),
//!     switch: "on".into(),
//!     selector: None,
//!     faults: vec![],
//! };
//! let volts = run_batch(&[(case, Some(Body { node: "c".into(), ohm: 1000.0, farad: None }))]);
//! assert!((volts[0]["c"].norm() - 120.0).abs() < 0.1);
//! ```
//!
//! What it does not do: body impedance by touch voltage, breaker trips, classes. It gives node
//! voltages and Thévenin equivalents, and the check that uses it does the rest.
//!
//! Precision: over 3,000 random cases solved again with 120 digits, voltages came within
//! 2e-8 of their size or 1e-13 V, impedances within 2e-8.

mod exposure;
mod netlist;
mod random;
mod run;
#[cfg(test)]
mod tests;
mod unit;

pub use exposure::existing_faults;
pub use netlist::netlist;
pub use random::random_cases;
pub use run::{Thevenin, run_batch, thevenin_batch};

use serde_json::Value;

/// One arrangement in one state with one set of faults.
#[derive(Clone, Debug, PartialEq)]
pub struct Case {
    /// An exposure file with every factor and every one of `values`; `supply.feed` may be
    /// `direct` (also when absent) or `both_hot`.
    pub exposure: Value,
    /// Which way round the plug is: `first` or `second`.
    pub plug: String,
    /// `on` or `off`.
    pub switch: String,
    /// `near` or `far` where the unit has a selector, else nothing.
    pub selector: Option<String>,
    /// Fault ids, each of which must exist in this arrangement.
    pub faults: Vec<String>,
}

/// A person as a plain resistor from a node to earth.
#[derive(Clone, Debug, PartialEq)]
pub struct Body {
    /// The touched node: `c`, `near`, `t` or any other node of the case.
    pub node: String,
    /// Resistance in Ω, above 0.
    pub ohm: f64,
    /// Capacitance beside it in F, as of a measuring network; nothing of a plain resistor.
    pub farad: Option<f64>,
}

/// Why the outside reference gave no figures.
#[derive(Debug)]
enum SpiceError {
    /// The simulator is not on this machine: the check must fail, not pass over it.
    Missing { program: String },
    /// The case does not exist in the design, or its file is incomplete.
    Case { reason: String },
    /// The simulator ran and gave no usable figures.
    Failed { reason: String },
    /// A file could not be written or read.
    File { source: std::io::Error },
}

impl std::fmt::Display for SpiceError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Missing { program } => write!(
                out,
                "{program} was not found: this check needs the ngspice circuit simulator \
                 (Debian: apt-get install ngspice)"
            ),
            Self::Case { reason } => write!(out, "no such case: {reason}"),
            Self::Failed { reason } => write!(out, "ngspice gave no figures: {reason}"),
            Self::File { source } => write!(out, "a file of the ngspice run: {source}"),
        }
    }
}

impl std::error::Error for SpiceError {}

impl From<std::io::Error> for SpiceError {
    fn from(source: std::io::Error) -> Self {
        Self::File { source }
    }
}

/// Ends the check with the reason in words: a missing figure must never pass for an agreement.
fn or_fail<T>(result: Result<T, SpiceError>) -> T {
    match result {
        Ok(value) => value,
        Err(error) => panic!("{error}"),
    }
}
