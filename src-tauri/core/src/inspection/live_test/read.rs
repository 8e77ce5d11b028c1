//! Reads what is kept of a live touch test, naming the field of anything that is wrong.

use std::collections::BTreeMap;

use serde_json::Value;

use super::{LiveTest, Protection, TouchPosition};
use crate::fields::{FieldError, Fields};
use crate::words::Message;

/// The name of a live test among findings.
pub const LIVE_TEST: &str = "live_test";
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
    /// The protection tripped in a position.
    Tripped(TouchPosition),
}

impl TouchPart {
    /// Everything that can be kept.
    pub fn all() -> impl Iterator<Item = Self> {
        let of = |position: &TouchPosition| {
            let position = *position;
            [
                Self::Check(position),
                Self::LowCheck(position),
                Self::Network(position),
                Self::Tripped(position),
            ]
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
            Self::Tripped(position) => format!("tripped_{}", position.id()),
        }
    }

    /// The finding that it is kept as.
    pub fn finding(self) -> String {
        format!("{LIVE_TEST}.{}", self.key())
    }

    /// The part that a finding keeps; nothing of any other finding.
    pub fn of_finding(finding: &str) -> Option<Self> {
        Self::of(finding.strip_prefix(LIVE_TEST)?.strip_prefix('.')?)
    }

    /// The part with this key.
    pub fn of(key: &str) -> Option<Self> {
        Self::all().find(|part| part.key() == key)
    }
}

/// Reads what is kept: `qualified`, `protection`, `earth_volts`, and by position the volts of the meter alone
/// (`check_…`, `low_…` on its range of low impedance) and across the network, and `tripped_…`.
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
        TouchPart::Qualified => test.qualified = is_true(fields, &key)?,
        TouchPart::Protection => {
            test.protection = fields.id(&key, Protection::IDS, Protection::of)?;
        }
        TouchPart::EarthVolts => test.earth_volts = fields.number(&key, 0.0..=MOST_VOLTS)?,
        TouchPart::Check(position) => keep_volts(position, fields, &key, &mut test.checks)?,
        TouchPart::LowCheck(position) => keep_volts(position, fields, &key, &mut test.low_checks)?,
        TouchPart::Network(position) => keep_volts(position, fields, &key, &mut test.volts)?,
        TouchPart::Tripped(position) => {
            test.tripped.extend(is_true(fields, &key)?.then_some(position));
        }
    }
    Ok(())
}

fn keep_volts(
    position: TouchPosition,
    fields: &mut Fields,
    key: &str,
    kept: &mut BTreeMap<TouchPosition, f64>,
) -> Result<(), FieldError> {
    let volts = fields.number(key, 0.0..=MOST_VOLTS)?;
    kept.extend(volts.map(|volts| (position, volts)));
    Ok(())
}

/// What is kept only where it is so: what is not is left out.
fn is_true(fields: &mut Fields, key: &str) -> Result<bool, FieldError> {
    match fields.flag(key)? {
        Some(false) => Err(FieldError::new(fields.path(key), Message::new("takes-true"))),
        given => Ok(given.unwrap_or(false)),
    }
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
            "low_first_on": 3, "first_on": 0.2, "second_on": 0.9, "tripped_second_off": true,
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
            (json!({"tripped_first_on": false}), "live_test.tripped_first_on"),
            (json!({"check_second_off": 1001}), "live_test.check_second_off"),
            (json!({"low_second_off": -1}), "live_test.low_second_off"),
            (json!({"third_on": 1}), "live_test.third_on"),
            (json!([]), "live_test"),
        ] {
            assert_eq!(read_live_test(file.clone()).unwrap_err().field, field, "{file}");
        }
        for part in TouchPart::all() {
            assert_eq!(TouchPart::of(&part.key()), Some(part));
            assert_eq!(TouchPart::of_finding(&part.finding()), Some(part));
        }
    }
}
