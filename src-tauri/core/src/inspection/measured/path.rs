//! Whether pin to pin proves the way through cord, switch and load.
//!
//! Above range from a pin to the metal may only mean that a wire is broken, or that another switch stands
//! open. It says something of the metal only once current is known to come through: pin to pin is finite
//! with the switch on, changes with this very switch, and no motor can be what was seen instead.

use super::super::bank::Question;
use super::super::findings::{Findings, Reading};
use crate::arrangement::{ReadingId, Spread};
use crate::figure::{Figure, Mark, Source};

/// The most that a load is believed to have with the heaters cold: 2.5 kΩ of string and dropper, or 4 kΩ
/// with a thermistor, on 220 V; above it is no load, Ω.
const LOAD_MOST: Figure = Figure::new(10e3, "Ω", Source::Model, Mark::Assumption);

/// How much two readings of one path may differ because the probes rest otherwise, Ω.
const PROBES: Figure = Figure::new(0.5, "Ω", Source::Model, Mark::Assumption);

/// Answers that leave no motor across the line that could be mistaken for the set.
///
/// A clock runs ahead of every switch, so it is no obstacle; a turntable or a tape has a switch of its own.
/// A traced primary is no such answer: a motor may lie beside it.
pub(super) const NO_MOTOR: [(Question, &[&str]); 2] = [
    (Question::Kind, &["table_radio", "portable_radio", "instrument_amplifier"]),
    (Question::Transformer, &["none"]),
];

/// What speaks of a motor, or of whatever may be plugged into the unit's own outlet, whatever else is said.
const MOTOR: [(Question, &[&str]); 3] = [
    (Question::Kind, &["record_player"]),
    (Question::Transformer, &["motor_winding"]),
    (Question::AccessoryOutlet, &["present"]),
];

/// Why pin to pin proves nothing yet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unproven {
    /// Pin to pin was not read in both positions of the switch.
    NotRead,
    /// It reads open, or more than any load, with the switch on.
    Open,
    /// It does not change with the switch.
    Unchanged,
    /// A motor lies or may lie across the line.
    Motor,
}

/// The answers that rule a motor out; none where something speaks of one.
pub(super) fn no_motor(findings: &Findings) -> Vec<Question> {
    let given = |rows: &[(Question, &[&str])]| -> Vec<Question> {
        let says =
            |row: &(Question, &[&str])| row.1.iter().any(|answer| findings.says(row.0, answer));
        rows.iter().filter(|row| says(row)).map(|row| row.0).collect()
    };
    if given(&MOTOR).is_empty() { given(&NO_MOTOR) } else { Vec::new() }
}

/// The most that cord, switch and load have together, Ω, where pin to pin proves them.
pub fn proven_path(findings: &Findings) -> Result<f64, Unproven> {
    let of = |id| findings.readings.get(&id).map(|reading| findings.meter.interval(*reading));
    let (Some(on), Some(off)) = (of(ReadingId::OhmsABOn), of(ReadingId::OhmsABOff)) else {
        return Err(Unproven::NotRead);
    };
    let open = findings.readings.get(&ReadingId::OhmsABOn) == Some(&Reading::OverRange);
    if open || on.high > LOAD_MOST.value {
        Err(Unproven::Open)
    } else if off.low <= on.high + PROBES.value {
        Err(Unproven::Unchanged)
    } else if no_motor(findings).is_empty() {
        Err(Unproven::Motor)
    } else {
        Ok(switched_part(on, off))
    }
}

/// Whatever reads with the switch off lies beside what the switch adds: 1/R = 1/on − 1/off, at its most.
fn switched_part(on: Spread, off: Spread) -> f64 {
    let added = 1.0 / (on.high + PROBES.value) - 1.0 / off.low;
    1.0 / added
}
