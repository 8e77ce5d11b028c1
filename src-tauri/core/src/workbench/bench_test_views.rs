//! Tests on the bench as a shell shows them: stored charge, insulation, live touch test.

use serde::Serialize;

use super::heater_views::NamedFigure;
use crate::inspection::{Protection, TouchPosition};

/// A limit of stored energy or charge.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct ChargeLimitView {
    /// What it says.
    pub text: String,
    /// Whether this charge reaches it.
    pub reached: bool,
}

/// A level of voltage on the way down.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChargeLevel {
    /// The voltage, V.
    pub volts: f64,
    /// The same in words.
    pub name: String,
    /// When it is reached at the latest, s; nothing where nothing bleeds the capacitor.
    pub seconds: Option<f64>,
    /// The same in words, from the marked value to the most that the capacitor may hold.
    pub time: String,
}

/// A charged capacitor.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChargeView {
    /// Energy, charge and first current, from the marked value to the most that it may hold.
    pub figures: Vec<NamedFigure>,
    /// The levels on the way down, highest first.
    pub levels: Vec<ChargeLevel>,
    /// The voltage it starts from, V.
    pub volts: f64,
    /// The same in words.
    pub from: String,
    /// When the curve ends, in words.
    pub until: String,
    /// The voltage at even steps of time on the way down, V; empty where nothing bleeds it.
    pub curve: Vec<f64>,
    /// How long the whole curve takes, s.
    pub curve_seconds: f64,
    /// The limits, gravest first.
    pub limits: Vec<ChargeLimitView>,
    /// What is not ruled out whatever the limits say.
    pub not_ruled_out: String,
    /// What to do, in order.
    pub cautions: Vec<String>,
}

/// The insulation test.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct InsulationView {
    /// What comes before it.
    pub cautions: Vec<String>,
    /// Why it must not be used on this unit; empty where nothing speaks against it.
    pub refused: Vec<String>,
    /// What has to be done to the unit first; nothing where nothing has.
    pub first: Option<String>,
    /// How it is done.
    pub steps: Vec<String>,
    /// What was read; nothing where it was not done.
    pub kept: Option<String>,
    /// What that means.
    pub means: Vec<String>,
}

/// One of the protections to choose from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct ProtectionView {
    /// Its id.
    pub id: Protection,
    /// Its name.
    pub name: String,
    /// What it does and does not do.
    pub says: String,
}

/// One position of plug and switch.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct TouchPositionView {
    /// Its id.
    pub id: TouchPosition,
    /// How plug and switch stand.
    pub title: String,
    /// What the meter alone showed, and its range of low impedance; nothing before.
    pub check: Option<String>,
    /// Whether the meter alone showed too much, and its range of low impedance is to be tried.
    pub wants_low: bool,
    /// Whether the network may go on.
    pub is_checked: bool,
    /// What was read across the network, or that the protection tripped; nothing before.
    pub kept: Option<String>,
    /// The same, V.
    pub volts: Option<f64>,
    /// The least that was to be expected across the network, V; nothing where no metal can be touched.
    pub low_volts: Option<f64>,
    /// The most, V.
    pub high_volts: Option<f64>,
    /// Both in words.
    pub expected: String,
    /// What was to be expected on the meter alone, in words.
    pub expected_alone: String,
    /// What the readings say.
    pub says: Vec<String>,
    /// Whether it ends the test.
    pub ends: bool,
}

/// The live touch test.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct TouchTestView {
    /// What comes before it.
    pub cautions: Vec<String>,
    /// What holds while the plug is in.
    pub energised: String,
    /// Why it must not be done on this unit; empty where nothing speaks against it.
    pub refused: Vec<String>,
    /// What to look at first, by the question's id; nothing where that is done.
    pub first: Option<&'static str>,
    /// The same in words.
    pub first_what: Option<String>,
    /// What has to be at hand, and what will come of it.
    pub tools: Vec<String>,
    /// Whether somebody qualified said that they take it.
    pub qualified: bool,
    /// The protections to choose from.
    pub protections: Vec<ProtectionView>,
    /// The one that was chosen.
    pub protection: Option<Protection>,
    /// How the earth and the meter are proven.
    pub earth_steps: Vec<String>,
    /// What the meter showed there; nothing before.
    pub earth: Option<String>,
    /// Whether that proves both.
    pub earth_proven: bool,
    /// Why it does not; nothing before, or where it does.
    pub earth_why: Option<String>,
    /// Why nothing can be concluded from a low reading here; nothing where something can.
    pub proves_nothing: Option<String>,
    /// What the meter alone may show on sound metal, and why.
    pub ghost: String,
    /// The positions of plug and switch, in their order, and others that something was read in.
    pub positions: Vec<TouchPositionView>,
    /// The position to go on with; nothing when all are read, the test is stopped or may not begin.
    pub next: Option<TouchPosition>,
    /// How the meter alone is used.
    pub check_steps: Vec<String>,
    /// How its range of low impedance is used.
    pub low_steps: Vec<String>,
    /// How the network is used.
    pub network_steps: Vec<String>,
    /// Why the test is stopped; nothing where it is not.
    pub stopped: Option<String>,
    /// The limit, V.
    pub limit_volts: f64,
    /// What all readings say together.
    pub together: Vec<String>,
}
