//! The tubes of a unit as a shell shows them: their heaters, how these add up, and what that suggests.

use serde::Serialize;

use crate::heaters::{Known, Place};

/// A type offered while a person types.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct TubeHit {
    /// The type, as it is kept when it is chosen.
    pub name: String,
    /// Other names of the same tube, such as `= ECC83`; empty where there are none.
    pub same_as: String,
    /// Its heater, such as `12.6 V, 0.15 A`.
    pub heater: String,
    /// What it is, such as `output tube`.
    pub role: String,
    /// Where the figures come from.
    pub known: Known,
    /// What is doubtful about them.
    pub doubt: Option<String>,
    /// It is not what was typed, but looks like it: letters and digits that are easily mixed up.
    pub corrected: bool,
}

/// One type of a list that was pasted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct TubeRead {
    /// As it stood there.
    pub written: String,
    /// The type that was understood.
    pub name: String,
    /// How far it is known.
    pub known: Known,
}

/// One tube of the list with its heater.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct TubeRow {
    /// As it was entered.
    pub name: String,
    /// Other names of the same tube.
    pub same_as: String,
    /// What it is.
    pub role: String,
    /// Its heater as it is taken here, such as `6.3 V, 0.3 A, halves in parallel`.
    pub heater: String,
    /// Volts, where known; what its bar is drawn by.
    pub volts: Option<f64>,
    /// Amperes, where known.
    pub amperes: Option<f64>,
    /// How it is fed.
    pub place: Place,
    /// How far it is known.
    pub known: Known,
    /// Where the figures come from and how far they were checked.
    pub source: String,
    /// What is doubtful about them.
    pub doubt: Option<String>,
}

/// What the drawing is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
pub enum HeaterDrawing {
    /// Heater volts stacked against the line voltage.
    Stack,
    /// Heaters side by side on a low voltage.
    SideBySide,
    /// Nothing to draw.
    Nothing,
}

/// A figure with its name, such as `Plug, pin to pin, cold` and `about 120 Ω (90 to 165 Ω)`.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct NamedFigure {
    /// What it is.
    pub name: String,
    /// The figure, with unit and range.
    pub figure: String,
    /// What to know about it; empty where there is nothing.
    pub note: String,
}

/// The heaters of a list of tubes against a supply.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct HeaterView {
    /// The tubes, in the order of the list.
    pub tubes: Vec<TubeRow>,
    /// What the list reads as: `series_on_line`, `series_with_dropper`, `parallel_transformer`,
    /// `battery` or `undecided`.
    pub reading: &'static str,
    /// The reading as a heading.
    pub heading: String,
    /// The reading in a sentence or two: how the volts add up, and the tolerance.
    pub sum: String,
    /// What it suggests about the line side; never proof.
    pub suggests: String,
    /// What the list cannot prove.
    pub cannot_prove: Vec<String>,
    /// What cannot be as listed.
    pub clashes: Vec<String>,
    /// Which drawing explains it.
    pub drawing: HeaterDrawing,
    /// The line voltage, V.
    pub line_volts: f64,
    /// The line voltage less 25 %: from here on a string counts as straight across the line, V.
    pub low_volts: f64,
    /// The line voltage and 8 %: above it no string stands on it, V.
    pub high_volts: f64,
    /// The heater volts that count, V.
    pub sum_volts: f64,
    /// What is left for a dropper, V; nothing where none is needed.
    pub left_volts: Option<f64>,
    /// What to beware of before a meter is held to it; nothing where no reading is told.
    pub caution: Option<String>,
    /// Currents, dropper, expected readings, string at other line voltages.
    pub figures: Vec<NamedFigure>,
    /// Types of which no heater voltage is known.
    pub unknown: Vec<String>,
}
