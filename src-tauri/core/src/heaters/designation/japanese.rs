//! Japanese numbers: volts, a letter for the base, a hyphen, letters for the function, a serial number.

use super::{ByRule, number_then_letters, split_while};
use crate::heaters::catalogue::{Rectifier, Use};
use crate::heaters::spelling::key;

/// The highest first number, V: the line there is 100 V.
const HIGHEST_VOLTS: u32 = 100;

/// Letters of the bases.
const BASES: &str = "BCDEGHLMRTWXYZ";
/// Letters of the functions.
const FUNCTIONS: &str = "ABCDEGHKLPRVX";

/// The heater by the first number. Without its hyphen such a number cannot be told from an American one.
pub(super) fn heater(written: &str) -> Option<ByRule> {
    let (front, back) = written.trim().split_once(['-', '‐', '–'])?;
    let (front, back) = (key(front), key(back));
    let (number, base, rest) = number_then_letters(&front)?;
    let (functions, serial) = split_while(&back, |c| c.is_ascii_uppercase());
    let fits = (1..=HIGHEST_VOLTS).contains(&number)
        && rest.is_empty()
        && base.len() == 1
        && BASES.contains(base)
        && (1..=3).contains(&functions.len())
        && functions.chars().all(|c| FUNCTIONS.contains(c))
        && (1..=2).contains(&serial.len())
        && serial.bytes().all(|b| b.is_ascii_digit());
    if !fits {
        return None;
    }
    let volts = match number {
        6 => 6.3,
        12 => 12.6,
        number => f64::from(number),
    };
    let usual = match number {
        0..=2 => Use::Battery,
        3..=12 => Use::Either,
        _ => Use::Series,
    };
    let tube = ByRule::volts(volts, usual);
    let rectifier = if number < 13 { Rectifier::Full } else { Rectifier::Half };
    Some(if functions == "K" { tube.rectifies(rectifier) } else { tube })
}

#[cfg(test)]
mod tests {
    use super::heater;

    // The scheme as pages on it show it; its volts are those of the number.
    #[test]
    fn the_first_number_is_the_volts() {
        for (name, volts) in [("6R-HH9", 6.3), ("25M-K99", 25.0), ("12g-p9", 12.6)] {
            assert_eq!(heater(name).unwrap().rating.volts, Some(volts), "{name}");
        }
        for other in ["6BQ5", "12-SK-7", "6R-", "-", "6R-HH", "6RR-H9"] {
            assert_eq!(heater(other), None, "{other}");
        }
    }
}
