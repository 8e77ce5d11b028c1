//! Meter readings as a shell shows them: where the probes go, what was read, what it was to be.

use serde::Serialize;

use crate::arrangement::{Probe, Switch};
use crate::inspection::ReadingId;

/// The plug as it is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
pub enum PlugDrawing {
    /// Two equal pins: one is marked with tape.
    TwoEqual,
    /// Two blades, one wider.
    TwoPolarised,
    /// Three pins.
    Three,
    /// Three pins once, the earth pin cut off.
    ThreeCut,
    /// An earthed plug that goes in both ways round.
    ThreeReversible,
    /// No plug on the cord: two bare ends, one marked with tape.
    BareEnds,
    /// Nobody has looked: two pins, one marked with tape.
    Unknown,
}

/// Where one probe goes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct ProbeView {
    /// The place.
    pub place: Probe,
    /// The place by its name on this unit, such as `the wide blade (pin B)`.
    pub name: String,
}

/// What one way of building the line side was to read.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ExpectedView {
    /// The way of building, such as `Line tied, common on pin B`.
    pub name: String,
    /// The least it reads when sound, Ω; nothing above the meter's range.
    pub low_ohm: Option<f64>,
    /// The most it reads when sound, Ω; nothing above the meter's range.
    pub high_ohm: Option<f64>,
    /// The range in words, such as `0.1 Ω to 100 Ω`.
    pub range: String,
    /// Whether what was read lies in that range.
    pub fits: bool,
    /// Whether it is still possible with all that was found: a part may have failed, or a wire be broken.
    pub possible: bool,
}

/// One reading: how to take it, and, once it is kept, what it means.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ReadingView {
    /// Its id.
    pub id: ReadingId,
    /// What to do in one line, such as `Pin A to the chassis, switch on`.
    pub title: String,
    /// Where the one probe goes.
    pub first: ProbeView,
    /// Where the other goes.
    pub second: ProbeView,
    /// Where the switch stands; nothing where it makes no difference.
    pub switch: Option<Switch>,
    /// How to take it, step by step.
    pub how: Vec<String>,
    /// What was read, with its unit; nothing where it was not taken.
    pub kept: Option<String>,
    /// What was read, Ω; nothing where it was not taken or is above range.
    pub ohms: Option<f64>,
    /// What each way of building was to read; empty until the reading is kept.
    pub expected: Vec<ExpectedView>,
    /// What the reading says by itself; nothing until it is kept.
    pub means: Option<String>,
    /// What may have fooled the meter.
    pub traps: Vec<String>,
}

/// The meter.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct MeterView {
    /// The highest resistance it shows, Ω.
    pub max_ohms: f64,
    /// Accuracy, % of the reading.
    pub percent: f64,
    /// Accuracy, digits of the last place.
    pub digits: f64,
    /// The same in one line, such as `±(1 % + 2 digits), OL above 2 MΩ`.
    pub text: String,
}

/// All readings of an inspection, in the order in which they are taken.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ReadingsView {
    /// What comes before any probe: unplug, discharge.
    pub cautions: Vec<String>,
    /// The plug as it is drawn.
    pub plug: PlugDrawing,
    /// Pin A by its name on this plug.
    pub pin_a: String,
    /// Pin B by its name on this plug.
    pub pin_b: String,
    /// What to answer first so that the readings prove more, by the question's id; nothing where that is done.
    pub answer_first: Option<String>,
    /// Why.
    pub answer_first_why: Option<String>,
    /// The readings that can be taken at this access.
    pub readings: Vec<ReadingView>,
    /// The reading to take next; nothing when all are taken.
    pub next: Option<ReadingId>,
    /// What the readings say together, the first first.
    pub together: Vec<String>,
    /// The meter.
    pub meter: MeterView,
}
