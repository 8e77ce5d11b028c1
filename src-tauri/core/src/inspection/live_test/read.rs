//! Reads what is kept of a live touch test, naming the field of anything that is wrong.

use serde_json::Value;

use super::{LiveTest, Protection, TouchPosition};
use crate::fields::{FieldError, Fields};
use crate::words::Message;

/// The name of a live test among findings.
pub const LIVE_TEST: &str = "live_test";
/// What is kept in place of a reading where the protection tripped.
const TRIPPED: &str = "tripped";
/// The most that is taken as a voltage of the test, V rms.
const MOST_VOLTS: f64 = 1000.0;

/// One thing that is kept of a live test.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TouchPart {
    /// Somebody qualified takes it.
    Qualified,
    /// What protects them.
    Protection,
    /// The proof of the earth.
    EarthVolts,
    /// The meter alone in a position.
    Check(TouchPosition),
    /// The meter alone on its range of low impedance.
    LowCheck(TouchPosition),
    /// Across the network in a position.
    Network(TouchPosition),
}

impl TouchPart {
    /// Everything that can be kept.
    pub fn all() -> impl Iterator<Item = Self> {
        let of = |position: &TouchPosition| {
            [Self::Check(*position), Self::LowCheck(*position), Self::Network(*position)]
        };
        let single = [Self::Qualified, Self::Protection, Self::EarthVolts];
        single.into_iter().chain(TouchPosition::ALL.iter().flat_map(of))
    }

    /// The key that it is kept under.
    pub fn key(self) -> String {
        match self {
            Self::Qualified => "qualified".to_owned(),
            Self::Protection => "protection".to_owned(),
            Self::EarthVolts => "earth_volts".to_owned(),
            Self::Check(position) => format!("check_{}", position.id()),
            Self::LowCheck(position) => format!("low_{}", position.id()),
            Self::Network(position) => position.id().to_owned(),
        }
    }

    /// The part with this key.
    pub fn of(key: &str) -> Option<Self> {
        Self::all().find(|part| part.key() == key)
    }
}

/// Reads what is kept: `qualified`, `protection`, `earth_volts`, and by position the volts of the meter alone
/// (`check_…`, `low_…` on its range of low impedance) and across the network, or `tripped`.
///
/// # Errors
/// Names the field and what it takes.
pub fn read_live_test(value: Value) -> Result<LiveTest, FieldError> {
    let mut fields = Fields::of(value, LIVE_TEST)?;
    let mut test = LiveTest::default();
    for part in TouchPart::all() {
        read_part(part, &mut fields, &mut test)?;
    }
    let keys: Vec<String> = TouchPart::all().map(TouchPart::key).collect();
    fields.finish(&keys.iter().map(String::as_str).collect::<Vec<_>>())?;
    Ok(test)
}

fn read_part(part: TouchPart, fields: &mut Fields, test: &mut LiveTest) -> Result<(), FieldError> {
    let key = part.key();
    match part {
        TouchPart::Qualified => match fields.flag(&key)? {
            // Nobody says of themselves that they are not: that is left out.
            Some(false) => {
                return Err(FieldError::new(fields.path(&key), Message::new("takes-true")));
            }
            given => test.qualified = given.unwrap_or(false),
        },
        TouchPart::Protection => {
            test.protection = fields.id(&key, Protection::IDS, Protection::of)?;
        }
        TouchPart::EarthVolts => test.earth_volts = fields.number(&key, 0.0..=MOST_VOLTS)?,
        TouchPart::Check(position) => {
            let volts = fields.number(&key, 0.0..=MOST_VOLTS)?;
            test.checks.extend(volts.map(|volts| (position, volts)));
        }
        TouchPart::LowCheck(position) => {
            let volts = fields.number(&key, 0.0..=MOST_VOLTS)?;
            test.low_checks.extend(volts.map(|volts| (position, volts)));
        }
        TouchPart::Network(position) => match fields.take(&key) {
            Some(Value::String(text)) if text == TRIPPED => {
                test.tripped.insert(position);
            }
            Some(value) => {
                test.volts.insert(position, volts_of(&value, &fields.path(&key))?);
            }
            None => {}
        },
    }
    Ok(())
}

fn volts_of(value: &Value, path: &str) -> Result<f64, FieldError> {
    let volts = value.as_f64().filter(|volts| (0.0..=MOST_VOLTS).contains(volts));
    volts.ok_or_else(|| FieldError::new(path, Message::new("takes-volts-or-tripped")))
}

#[cfg(test)]
mod tests {
    use super::super::{Protection, TouchPosition};
    use super::{TouchPart, read_live_test};
    use serde_json::json;

    #[test]
    fn a_live_test_is_read_and_what_does_not_fit_is_named() {
        let test = read_live_test(json!({
            "qualified": true, "protection": "rcd", "earth_volts": 118, "check_first_on": 12,
            "low_first_on": 3, "first_on": 0.2, "second_on": 0.9, "second_off": "tripped",
        }));
        let test = test.unwrap();
        assert_eq!((test.qualified, test.protection), (true, Some(Protection::Rcd)));
        assert_eq!((test.earth_volts, test.most_volts()), (Some(118.0), Some(0.9)));
        assert_eq!(test.checks.get(&TouchPosition::FirstOn), Some(&12.0));
        assert_eq!(test.alone(TouchPosition::FirstOn), Some(3.0));
        assert!(test.is_done(TouchPosition::SecondOff) && !test.knows(TouchPosition::FirstOff));
        for (file, field) in [
            (json!({"qualified": false}), "live_test.qualified"),
            (json!({"protection": "none"}), "live_test.protection"),
            (json!({"earth_volts": "yes"}), "live_test.earth_volts"),
            (json!({"first_on": -0.1}), "live_test.first_on"),
            (json!({"first_on": "OL"}), "live_test.first_on"),
            (json!({"check_first_on": "tripped"}), "live_test.check_first_on"),
            (json!({"check_second_off": 1001}), "live_test.check_second_off"),
            (json!({"low_second_off": -1}), "live_test.low_second_off"),
            (json!({"third_on": 1}), "live_test.third_on"),
            (json!([]), "live_test"),
        ] {
            assert_eq!(read_live_test(file.clone()).unwrap_err().field, field, "{file}");
        }
        for part in TouchPart::all() {
            assert_eq!(TouchPart::of(&part.key()), Some(part));
        }
    }
}
