//! Type numbers by rule: what a number that no list has says about its heater.
//!
//! Rules fix the volts or the current, seldom both, and each has exceptions; what comes out is marked
//! as read by rule. Sources: published tables of the type-number systems; `data/` has no row for them.

mod american;
mod ballast;
mod european;
mod japanese;
mod russian;

pub(super) use american::parts as american_parts;
pub(super) use russian::GRADES as RUSSIAN_GRADES;

use super::catalogue::{HeaterKind, Rating, Rectifier, TubeRole, Use};
use super::spelling::key;

/// What a type number says by its rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct ByRule {
    /// The heater, as far as the number says.
    pub(super) rating: Rating,
    /// The other way to connect it.
    pub(super) other: Option<Rating>,
    /// Resistance of a resistor that is named by it, Ω.
    pub(super) ohms: Option<f64>,
    pub(super) kind: HeaterKind,
    pub(super) usual: Use,
    pub(super) role: TubeRole,
    pub(super) rectifier: Rectifier,
}

impl ByRule {
    const fn heater(rating: Rating, usual: Use) -> Self {
        Self {
            rating,
            other: None,
            ohms: None,
            kind: HeaterKind::Heater,
            usual,
            role: TubeRole::Unknown,
            rectifier: Rectifier::None,
        }
    }

    const fn volts(volts: f64, usual: Use) -> Self {
        Self::heater(Rating { volts: Some(volts), amperes: None }, usual)
    }

    const fn amperes(amperes: f64, usual: Use) -> Self {
        Self::heater(Rating { volts: None, amperes: Some(amperes) }, usual)
    }

    const fn filament(self) -> Self {
        Self { kind: HeaterKind::Filament, ..self }
    }

    const fn rectifies(self, rectifier: Rectifier) -> Self {
        Self { rectifier, role: TubeRole::Rectifier, ..self }
    }
}

/// What a type number says by the first rule that it follows; nothing where it follows none.
pub(super) fn by_rule(written: &str) -> Option<ByRule> {
    let key = key(written);
    ballast::resistor(written, &key)
        .or_else(|| japanese::heater(written))
        .or_else(|| russian::heater(&key))
        .or_else(|| american::heater(&key))
        .or_else(|| ballast::ballast(&key))
        .or_else(|| european::heater(&key))
        // The Cyrillic S looks like a Latin C.
        .or_else(|| russian::heater(&key.replace('C', "S")))
}

/// A number, the letters after it, and what is left.
pub(super) fn number_then_letters(key: &str) -> Option<(u32, &str, &str)> {
    let (digits, rest) = split_while(key, |c| c.is_ascii_digit());
    let (letters, rest) = split_while(rest, |c| c.is_ascii_uppercase());
    let number = digits.parse().ok().filter(|_| digits.len() <= 3)?;
    (!letters.is_empty()).then_some((number, letters, rest))
}

/// Splits where a text stops to be made of such characters.
pub(super) fn split_while(text: &str, is: impl Fn(char) -> bool) -> (&str, &str) {
    let end = text.find(|c| !is(c)).unwrap_or(text.len());
    text.split_at_checked(end).unwrap_or((text, ""))
}
