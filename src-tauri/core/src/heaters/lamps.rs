//! Dial lamps: what a lamp in or across a heater string draws.

use std::sync::LazyLock;

use serde::Deserialize;

use super::catalogue::Rating;
use super::spelling::key;
use super::tube::Tube;
use crate::figure::Mark;

/// A dial lamp by its trade number.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub(super) struct Lamp {
    number: String,
    volts: f64,
    amperes: f64,
    pub(super) mark: Mark,
}

impl Lamp {
    pub(super) fn name(&self) -> String {
        format!("#{}", self.number)
    }

    pub(super) fn rating(&self) -> Rating {
        Rating::of(self.volts, self.amperes)
    }
}

static LAMPS: LazyLock<Vec<Lamp>> = LazyLock::new(|| {
    let text = include_str!("../../data/dial_lamps.csv");
    csv::Reader::from_reader(text.as_bytes()).into_deserialize().filter_map(Result::ok).collect()
});

/// The lamps that may be meant: by the beginning of a number after `#` or `lamp`, or by a whole number.
pub fn lamps_like(written: &str) -> Vec<Tube> {
    let key = key(written);
    let marked = key.strip_prefix('#').or_else(|| key.strip_prefix("LAMP"));
    let fits = |lamp: &&Lamp| match marked {
        Some(number) => lamp.number.starts_with(number),
        None => lamp.number == key,
    };
    LAMPS.iter().filter(fits).map(|lamp| Tube::of(&lamp.name())).collect()
}

/// The lamp of this name: its number after `#` or `lamp`, for a bare 47 is a tube.
pub(super) fn find(written: &str) -> Option<&'static Lamp> {
    let is_marked = |word: &[u8]| word.eq_ignore_ascii_case(b"lamp");
    if !written.contains('#') && !written.as_bytes().windows(4).any(is_marked) {
        return None;
    }
    let key = key(written);
    let number = key.strip_prefix('#').or_else(|| key.strip_prefix("LAMP"));
    let number = number.or_else(|| key.strip_suffix("LAMP"))?;
    let number = number.strip_prefix('#').unwrap_or(number);
    LAMPS.iter().find(|lamp| lamp.number == number)
}
