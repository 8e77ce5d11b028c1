//! Draws arrangements, states and fault sets at random, all of them possible ones.

use super::Case;
use super::exposure::Exposure;
use super::or_fail;
use rand::Rng;
use rand::seq::{IndexedRandom, IteratorRandom};
use serde_json::{Value, json};

pub(super) const ISOLATIONS: [&str; 7] = [
    "line_tied",
    "line_rectified",
    "line_floated",
    "line_insulated",
    "heater_transformer",
    "autotransformer",
    "isolating",
];
pub(super) const CORDS: [&str; 7] = [
    "two_pin_reversible",
    "two_pin_polarised",
    "three_pin_earthed",
    "three_pin_unearthed",
    "three_pin_cut",
    "three_pin_reversible_earthed",
    "three_pin_reversible_unearthed",
];
pub(super) const SWITCH_LEGS: [&str; 4] = ["near", "far", "both", "none"];

/// Nominal voltages in use, V (common practice), and the two frequencies, Hz.
const VOLTS: [f64; 8] = [100.0, 110.0, 120.0, 127.0, 200.0, 220.0, 230.0, 240.0];
const HERTZ: [f64; 2] = [50.0, 60.0];

/// Ranges to draw part values from, wider than or equal to those of the design.
const HEATER_OHM: [f64; 2] = [100.0, 5e3];
const LOAD_OHM: [f64; 2] = [500.0, 5e3];
const NETWORK_OHM: [f64; 2] = [150e3, 470e3];
const NETWORK_FARAD: [f64; 2] = [0.05e-6, 0.25e-6];
const ORDINARY_FARAD: [f64; 2] = [0.01e-6, 0.1e-6];
const CLASS_Y_FARAD: [f64; 2] = [1e-9, 47e-9];
const AERIAL_FARAD: [f64; 2] = [1e-9, 0.1e-6];
const WINDING_FARAD: [f64; 2] = [0.1e-9, 2e-9];
const PRIMARY_OHM: [f64; 2] = [50.0, 1e3];
const EARTH_OHM: [f64; 2] = [0.05, 2.0];

/// `count` cases: any isolation equally often, then any of the factors, states and fault sets of
/// up to two that it can have, with part values spread evenly over their decades.
pub fn random_cases<R: Rng + ?Sized>(rng: &mut R, count: usize) -> Vec<Case> {
    (0..count).map(|_| random_case(rng)).collect()
}

fn random_case<R: Rng + ?Sized>(rng: &mut R) -> Case {
    let file = random_exposure(rng);
    let exposure = or_fail(Exposure::read(&file));
    let turns = exposure.cord.reversible() || !exposure.supply.feed.has_neutral();
    let plugs: &[&str] = if turns { &["first", "second"] } else { &["first"] };
    let selector = exposure.has_selector().then(|| any(rng, &["near", "far"]).to_owned());
    Case {
        exposure: file,
        plug: any(rng, plugs).to_owned(),
        switch: any(rng, &["on", "off"]).to_owned(),
        selector,
        faults: random_faults(rng, &exposure.faults()),
    }
}

/// None, one or two faults, in the order of the design's table.
fn random_faults<R: Rng + ?Sized>(rng: &mut R, existing: &[&'static str]) -> Vec<String> {
    let count = rng.random_range(0..=2);
    let mut places = (0..existing.len()).choose_multiple(rng, count);
    places.sort_unstable();
    places.into_iter().map(|place| existing[place].to_owned()).collect()
}

fn random_exposure<R: Rng + ?Sized>(rng: &mut R) -> Value {
    let isolation = any(rng, &ISOLATIONS);
    let (capacitor, class) = any(rng, line_capacitors(isolation));
    let line_capacitor_range = match class {
        "class_y" => CLASS_Y_FARAD,
        _ => ORDINARY_FARAD,
    };
    let mut supply = json!({
        "volts": any(rng, &VOLTS),
        "hertz": any(rng, &HERTZ),
        "feed": any(rng, &["direct", "both_hot", "isolated", "step_down_auto"]),
    });
    if supply["feed"] == "step_down_auto" {
        supply["input_volts"] = json!(rng.random_range(240.0..480.0));
    }
    json!({
        "supply": supply,
        "isolation": isolation,
        "cord": any(rng, &CORDS),
        "near_pin": any(rng, near_pins(isolation)),
        "line_capacitor": capacitor,
        "line_capacitor_class": class,
        "switch_leg": any(rng, &SWITCH_LEGS),
        "reach": any(rng, reaches(isolation)),
        "values": {
            "line_capacitor_farad": spread(rng, line_capacitor_range),
            "network_ohm": spread(rng, NETWORK_OHM),
            "network_farad": spread(rng, NETWORK_FARAD),
            "aerial_farad": spread(rng, AERIAL_FARAD),
            "heater_ohm": spread(rng, HEATER_OHM),
            "load_ohm": spread(rng, LOAD_OHM),
            "winding_farad": spread(rng, WINDING_FARAD),
            "primary_ohm": spread(rng, PRIMARY_OHM),
            "earth_ohm": spread(rng, EARTH_OHM),
        },
    })
}

/// The circuit common of an isolating set is on neither pin: near is just the leg of pin B.
pub(super) fn near_pins(isolation: &str) -> &'static [&'static str] {
    match isolation {
        "isolating" => &["b"],
        _ => &["b", "a"],
    }
}

/// Line capacitors and their class: only where the chassis is not joined to the line.
pub(super) fn line_capacitors(isolation: &str) -> &'static [(&'static str, &'static str)] {
    match isolation {
        "isolating" | "line_floated" | "line_insulated" => &[
            ("none", "ordinary"),
            ("near_leg", "ordinary"),
            ("far_leg", "ordinary"),
            ("both_legs", "ordinary"),
            ("selector", "ordinary"),
            ("near_leg", "class_y"),
            ("far_leg", "class_y"),
            ("both_legs", "class_y"),
            ("selector", "class_y"),
        ],
        _ => &[("none", "ordinary")],
    }
}

/// Metal on the common differs from metal on the chassis only where the two are held apart.
pub(super) fn reaches(isolation: &str) -> &'static [&'static str] {
    match isolation {
        "line_floated" | "line_insulated" => {
            &["closed", "aerial_terminal", "exposed", "handheld", "common_exposed"]
        }
        _ => &["closed", "aerial_terminal", "exposed", "handheld"],
    }
}

/// One of a list that is never empty.
fn any<R: Rng + ?Sized, T: Copy>(rng: &mut R, choices: &[T]) -> T {
    *choices.choose(rng).expect("every list of choices has one")
}

/// A value spread evenly over the decades of its range.
fn spread<R: Rng + ?Sized>(rng: &mut R, [low, high]: [f64; 2]) -> f64 {
    rng.random_range(low.ln()..high.ln()).exp()
}
