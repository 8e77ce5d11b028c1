//! Checks of the outside reference itself.

mod by_hand;
mod existence;
mod solving;

use super::*;
use num_complex::Complex;
use serde_json::json;

const BODY_OHM: f64 = 1000.0;

/// What doubles leave of a difference of hundreds of volts, V.
const ROUNDING_V: f64 = 1e-12;

/// A reversible two-pin set at 120 V 60 Hz with no switch, plugged so that pin A is on hot.
fn case(isolation: &str, near_pin: &str) -> Case {
    Case {
        exposure: json!({
            "supply": {"volts": 120, "hertz": 60},
            "isolation": isolation, "cord": "two_pin_reversible", "near_pin": near_pin,
            "line_capacitor": "none", "line_capacitor_class": "ordinary",
            "switch_leg": "none", "reach": "exposed",
            "values": {"line_capacitor_farad": 4.7e-8, "network_ohm": 220e3,
                       "network_farad": 1e-7, "aerial_farad": 1e-8, "heater_ohm": 819,
                       "load_ohm": 1500, "winding_farad": 5e-10, "primary_ohm": 240,
                       "earth_ohm": 0.2}}),
        plug: "first".into(),
        switch: "on".into(),
        selector: None,
        faults: vec![],
    }
}

impl Case {
    fn with(mut self, factor: &str, value: &str) -> Self {
        self.exposure[factor] = json!(value);
        self
    }

    fn fault(mut self, fault: &str) -> Self {
        self.faults.push(fault.into());
        self
    }

    fn off(mut self) -> Self {
        self.switch = "off".into();
        self
    }

    fn second(mut self) -> Self {
        self.plug = "second".into();
        self
    }
}

fn body(node: &str) -> Body {
    Body { node: node.into(), ohm: BODY_OHM, farad: None }
}

/// Voltage of a node with a 1 kΩ body at that node.
fn touched(case: Case, node: &str) -> Complex<f64> {
    run_batch(&[(case, Some(body(node)))])[0][node]
}

/// Voltage of the chassis with nobody there.
fn untouched(case: Case) -> Complex<f64> {
    run_batch(&[(case, None)])[0]["c"]
}

fn parallel(parts: &[f64]) -> f64 {
    1.0 / parts.iter().map(|ohm| 1.0 / ohm).sum::<f64>()
}

fn capacitor_ohm(farad: f64, hertz: f64) -> Complex<f64> {
    Complex::new(0.0, -1.0 / (std::f64::consts::TAU * hertz * farad))
}

fn impedance(ohm: f64) -> Complex<f64> {
    Complex::new(ohm, 0.0)
}

fn in_parallel(a: Complex<f64>, b: Complex<f64>) -> Complex<f64> {
    a * b / (a + b)
}

fn assert_near(found: Complex<f64>, expected: Complex<f64>, relative: f64) {
    assert!(
        (found - expected).norm() <= relative * expected.norm() + ROUNDING_V,
        "found {found}, expected {expected}"
    );
}
