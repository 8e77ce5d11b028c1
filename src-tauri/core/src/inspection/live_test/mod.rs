//! The live touch test: who takes it and behind what, what a meter alone showed first, what the network read.
//!
//! It needs the unit plugged in, so everything is said before that and each place of plug and switch has a
//! check of its own: turning the plug round can put the chassis on the line.

mod forecast;
mod gate;

pub use forecast::{Floating, TouchForecast, floating};
pub use gate::{TouchGate, touch_gate};

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use crate::arrangement::Switch;
use crate::fields::{FieldError, Fields, id_enum};
use crate::hazard::STOP_VOLTS;
use crate::words::Message;

id_enum! {
    /// What protects whoever takes the test.
    pub enum Protection {
        /// A ground-fault circuit interrupter.
        Gfci = "gfci",
        /// A residual-current device of 30 mA or less.
        Rcd = "rcd",
        /// A tested isolating transformer.
        Isolating = "isolating",
    }
}

id_enum! {
    /// How plug and switch stand, the plug first as it happens to be, then turned round.
    pub enum TouchPosition {
        /// One way round, switch on.
        FirstOn = "first_on",
        /// One way round, switch off.
        FirstOff = "first_off",
        /// Turned round, switch on.
        SecondOn = "second_on",
        /// Turned round, switch off.
        SecondOff = "second_off",
    }
}

impl TouchPosition {
    /// Where the power switch stands.
    pub const fn switch(self) -> Switch {
        match self {
            Self::FirstOn | Self::SecondOn => Switch::On,
            Self::FirstOff | Self::SecondOff => Switch::Off,
        }
    }

    /// Whether the plug is turned round for it.
    pub const fn is_turned(self) -> bool {
        matches!(self, Self::SecondOn | Self::SecondOff)
    }
}

/// The most that is taken as a reading of the test, V rms.
const MOST_VOLTS: f64 = 1000.0;

/// What is kept of a live touch test.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LiveTest {
    /// Whoever takes it said to be qualified for work on live equipment.
    pub qualified: bool,
    /// What protects them.
    pub protection: Option<Protection>,
    /// What a meter of high impedance showed before the network went on, V rms.
    pub checks: BTreeMap<TouchPosition, f64>,
    /// What it showed across the network, V rms.
    pub volts: BTreeMap<TouchPosition, f64>,
    /// Where the protection tripped instead.
    pub tripped: BTreeSet<TouchPosition>,
}

impl LiveTest {
    /// The highest voltage across the network, V rms.
    pub fn most_volts(&self) -> Option<f64> {
        self.volts.values().copied().reduce(f64::max)
    }

    /// Whether the meter alone showed so much, or the protection tripped, that the test ends there.
    pub fn is_stopped(&self) -> bool {
        let too_much = |volts: &f64| *volts > STOP_VOLTS.value;
        !self.tripped.is_empty() || self.checks.values().any(too_much)
    }

    /// Whether a position is done: read, or ended by the protection.
    pub fn is_done(&self, position: TouchPosition) -> bool {
        self.volts.contains_key(&position) || self.tripped.contains(&position)
    }

    /// Reads what is kept: `qualified`, `protection`, and volts by their position, or `tripped`, those of the
    /// meter alone with `check_` before it.
    ///
    /// # Errors
    /// Names the field and what it takes.
    pub fn read(value: Value) -> Result<Self, FieldError> {
        let mut fields = Fields::of(value, LIVE_TEST)?;
        let qualified = match fields.flag(QUALIFIED)? {
            // Nobody says of themselves that they are not: that is left out.
            Some(false) => {
                return Err(FieldError::new(fields.path(QUALIFIED), Message::new("takes-true")));
            }
            given => given.unwrap_or(false),
        };
        let protection = fields.id(PROTECTION, Protection::IDS, Protection::of)?;
        let mut test = Self { qualified, protection, ..Self::default() };
        for &position in TouchPosition::ALL {
            let check = fields.number(&check_key(position), 0.0..=MOST_VOLTS)?;
            test.checks.extend(check.map(|volts| (position, volts)));
            match fields.take(position.id()) {
                Some(Value::String(text)) if text == TRIPPED => {
                    test.tripped.insert(position);
                }
                Some(value) => {
                    test.volts.insert(position, volts_of(&value, &fields.path(position.id()))?);
                }
                None => {}
            }
        }
        let checks: Vec<String> = TouchPosition::ALL.iter().copied().map(check_key).collect();
        let known = [QUALIFIED, PROTECTION].into_iter().chain(TouchPosition::IDS.iter().copied());
        let known: Vec<&str> = known.chain(checks.iter().map(String::as_str)).collect();
        fields.finish(&known)?;
        Ok(test)
    }
}

fn volts_of(value: &Value, path: &str) -> Result<f64, FieldError> {
    let volts = value.as_f64().filter(|volts| (0.0..=MOST_VOLTS).contains(volts));
    volts.ok_or_else(|| FieldError::new(path, Message::new("takes-volts-or-tripped")))
}

/// What is kept in place of a reading where the protection tripped.
const TRIPPED: &str = "tripped";

/// The name of a live test among findings.
pub const LIVE_TEST: &str = "live_test";
const QUALIFIED: &str = "qualified";
const PROTECTION: &str = "protection";

/// The key under which the meter alone is kept for a position.
pub fn check_key(position: TouchPosition) -> String {
    format!("check_{}", position.id())
}

#[cfg(test)]
mod tests {
    use super::{LiveTest, Protection, TouchPosition};
    use serde_json::json;

    #[test]
    fn a_live_test_is_read_and_what_does_not_fit_is_named() {
        let test = LiveTest::read(json!({
            "qualified": true, "protection": "rcd", "check_first_on": 12, "first_on": 0.2, "second_on": 0.9,
        }));
        let test = test.unwrap();
        assert_eq!((test.qualified, test.protection), (true, Some(Protection::Rcd)));
        assert_eq!(test.most_volts(), Some(0.9));
        assert_eq!(test.checks.get(&TouchPosition::FirstOn), Some(&12.0));
        assert!(!test.is_stopped());
        for (file, field) in [
            (json!({"qualified": false}), "live_test.qualified"),
            (json!({"protection": "none"}), "live_test.protection"),
            (json!({"first_on": -0.1}), "live_test.first_on"),
            (json!({"first_on": "OL"}), "live_test.first_on"),
            (json!({"check_first_on": "tripped"}), "live_test.check_first_on"),
            (json!({"check_second_off": 1001}), "live_test.check_second_off"),
            (json!({"third_on": 1}), "live_test.third_on"),
            (json!([]), "live_test"),
        ] {
            assert_eq!(LiveTest::read(file.clone()).unwrap_err().field, field, "{file}");
        }
    }

    #[test]
    fn above_thirty_volts_it_ends() {
        let at = |volts: f64| LiveTest::read(json!({"check_second_off": volts})).unwrap();
        assert!(!at(30.0).is_stopped());
        assert!(at(30.1).is_stopped());
        let tripped = LiveTest::read(json!({"first_on": "tripped"})).unwrap();
        assert!(tripped.is_stopped() && tripped.is_done(TouchPosition::FirstOn));
        assert_eq!(tripped.most_volts(), None);
    }
}
