//! Russian numbers: volts, a letter for the function, a serial number, a letter for the bulb.

use super::{ByRule, number_then_letters, split_while};
use crate::heaters::catalogue::{Rectifier, Use};
use crate::heaters::spelling::in_latin;

/// Function letters in Latin; two of them for one Cyrillic letter where none fits.
const FUNCTIONS: [&str; 20] = [
    "ZH", "TS", "KH", "D", "H", "X", "S", "N", "E", "P", "K", "R", "G", "B", "F", "I", "A", "V",
    "M", "L",
];

/// The highest first number, V.
const HIGHEST_VOLTS: u32 = 70;

/// Bulbs: finger-size, octal or large, subminiature, nuvistor.
const BULBS: [char; 6] = ['P', 'S', 'B', 'A', 'G', 'N'];
/// Quality grades after it, the longer first.
pub(in crate::heaters) const GRADES: [&str; 8] = ["EV", "DR", "VI", "V", "E", "I", "D", ""];

/// The heater by the first number.
///
/// A Latin spelling counts as Russian only with a bulb that no American suffix has, so that 6K7 and 6A7G
/// stay American.
pub(super) fn heater(key: &str) -> Option<ByRule> {
    let latin = in_latin(key);
    let is_cyrillic = latin.is_some();
    let key = latin.as_deref().unwrap_or(key);
    let (number, letters, rest) = number_then_letters(key)?;
    let (serial, ending) = split_while(rest, |c| c.is_ascii_digit());
    let fits = FUNCTIONS.contains(&letters) && (1..=2).contains(&serial.len());
    let told = is_cyrillic || letters.len() == 2 || ending.starts_with(['P', 'S', 'N']);
    if !(1..=HIGHEST_VOLTS).contains(&number) || !fits || !told || !is_ending(ending) {
        return None;
    }
    let volts = match number {
        1 => 1.2,
        2 => 2.4,
        5 => 5.0,
        6 => 6.3,
        12 => 12.6,
        number => f64::from(number),
    };
    Some(match (number, letters) {
        (1 | 2, _) => ByRule::volts(volts, Use::Battery).filament(),
        (5, _) => ByRule::volts(volts, Use::Parallel).filament().rectifies(Rectifier::Full),
        (6, "TS") => ByRule::volts(volts, Use::Parallel).rectifies(Rectifier::Full),
        (13.., "TS") => ByRule::volts(volts, Use::Series).rectifies(Rectifier::Half),
        (13.., _) => ByRule::volts(volts, Use::Series),
        _ => ByRule::volts(volts, Use::Either),
    })
}

fn is_ending(ending: &str) -> bool {
    let grade = ending.strip_prefix(BULBS).unwrap_or(ending);
    GRADES.contains(&grade)
}

#[cfg(test)]
mod tests {
    use super::heater;

    // Voltages of the first number as published tables of the system give them.
    #[test]
    fn the_first_number_is_the_volts_in_either_script() {
        for (name, volts) in [
            ("6Ж99П", 6.3),
            ("6ZH99P", 6.3),
            ("1К9П", 1.2),
            ("30П9С", 30.0),
            ("6N99S", 6.3),
            ("6Ц9ПЕ", 6.3),
        ] {
            assert_eq!(heater(name).unwrap().rating.volts, Some(volts), "{name}");
        }
    }

    #[test]
    fn american_numbers_are_not_taken_for_russian_ones() {
        for name in ["6K7", "6A8G", "6B8", "12SK7", "6SN7GT", "6F6G"] {
            assert_eq!(heater(name), None, "{name}");
        }
    }
}
