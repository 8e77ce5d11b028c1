//! American numbers: number, letters, number, suffix. The first number rounds the heater volts.

use super::{ByRule, number_then_letters, split_while};
use crate::heaters::catalogue::{HeaterKind, Rating, Rectifier, TubeRole, Use};

/// Suffixes that leave the heater as it is: bulb, base, shield, improved and ruggedised versions.
const SUFFIXES: [&str; 31] = [
    "", "G", "GT", "GTG", "GTA", "GTB", "GTC", "GTX", "GTY", "GA", "GB", "GC", "GX", "GY", "A",
    "B", "C", "D", "W", "WA", "WB", "WC", "WGT", "WGTA", "WGTB", "WGB", "X", "Y", "LT", "M", "MG",
];

/// The highest first number of a heater in a string, V.
const HIGHEST_VOLTS: u32 = 70;
/// The first number of a heater for the whole line, V.
const LINE_VOLTS: u32 = 117;

/// The parts of an American number: the volts' number, the letters, the number of elements, the suffix;
/// nothing where it is none.
pub(in crate::heaters) fn parts(key: &str) -> Option<(u32, &str, &str, &str)> {
    let (number, letters, rest) = number_then_letters(key)?;
    let (elements, suffix) = split_while(rest, |c| c.is_ascii_digit());
    // 6C4C is a Russian number read as Latin letters; a bare C belongs to later numbers.
    let is_suffix = SUFFIXES.contains(&suffix) && (suffix != "C" || letters.len() > 1);
    // Three digits are the whole line's; no other heater has more than 70 V.
    let is_voltage = number <= HIGHEST_VOLTS || number == LINE_VOLTS;
    let fits = is_voltage && letters.len() <= 3 && (1..=2).contains(&elements.len()) && is_suffix;
    fits.then_some((number, letters, elements, suffix))
}

/// The heater by the first number. The letters tell where one number stands for two voltages.
pub(super) fn heater(key: &str) -> Option<ByRule> {
    let (number, letters, elements, _) = parts(key)?;
    let battery = |volts| Some(ByRule::volts(volts, Use::Battery).filament());
    match number {
        0 => Some(ByRule {
            kind: HeaterKind::ColdCathode,
            role: TubeRole::Unknown,
            ..ByRule::heater(Rating { volts: None, amperes: None }, Use::None)
        }),
        // 1.4 V mostly; the 2 V types of the early thirties and their octal successors are in the list.
        1 => battery(1.4),
        2 => Some(ByRule::volts(2.5, Use::Parallel)),
        // One letter, or a lock-in's L before it: a battery tube whose filament has two halves.
        3 if letters.len() == 1 || letters.starts_with('L') => Some(ByRule {
            other: Some(Rating { volts: Some(2.8), amperes: None }),
            ..ByRule::volts(1.4, Use::Battery).filament()
        }),
        3 => Some(ByRule::heater(Rating::of(3.15, 0.6), Use::Series)),
        // With three or four elements a rectifier, with more a tube for a 600 mA string.
        5 if matches!(elements, "3" | "4") => {
            Some(ByRule::volts(5.0, Use::Parallel).filament().rectifies(Rectifier::Full))
        }
        5 => Some(ByRule::heater(Rating::of(4.7, 0.6), Use::Series)),
        6 => Some(six(letters, elements)),
        7 if is_lock_in(letters) => Some(ByRule::volts(6.3, Use::Either)),
        // A British system in which 10, 20 and 30 are 0.1, 0.2 and 0.3 A (from memory).
        10 | 20 | 30 if matches!(letters, "C" | "D" | "F" | "FL" | "L" | "LD" | "P" | "PL") => {
            Some(ByRule::amperes(f64::from(number) / 100.0, Use::Series))
        }
        8 => Some(ByRule::volts(8.2, Use::Series)),
        9 => Some(ByRule::volts(9.25, Use::Series)),
        10 => Some(ByRule::volts(10.5, Use::Series)),
        11 => Some(ByRule::volts(10.85, Use::Series)),
        12 => Some(ByRule::volts(12.6, Use::Either)),
        14 if is_lock_in(letters) => Some(ByRule::volts(12.6, Use::Either)),
        19 => Some(ByRule::volts(18.9, Use::Series)),
        26 => Some(ByRule::volts(26.5, Use::Parallel)),
        100.. => Some(line(number, letters)),
        _ => Some(high(f64::from(number), letters, elements)),
    }
}

fn six(letters: &str, elements: &str) -> ByRule {
    let tube = ByRule::volts(6.3, Use::Either);
    let two_plates = letters.len() == 1 && is_rectifier(letters, elements);
    if two_plates { tube.rectifies(Rectifier::Full) } else { tube }
}

/// A voltage that only a string has.
fn high(volts: f64, letters: &str, elements: &str) -> ByRule {
    let tube = ByRule::volts(volts, Use::Series);
    let rectifies = volts >= 25.0 && letters.len() == 1 && is_rectifier(letters, elements);
    if rectifies { tube.rectifies(Rectifier::Half) } else { tube }
}

/// A heater for the whole line.
fn line(number: u32, letters: &str) -> ByRule {
    let tube = ByRule::volts(f64::from(number), Use::Line);
    if letters.starts_with('Z') { tube.rectifies(Rectifier::Half) } else { tube }
}

/// Letters from R on, behind an A or not, with three to five elements, were mostly given to rectifiers.
fn is_rectifier(letters: &str, elements: &str) -> bool {
    let last = letters.strip_prefix('A').unwrap_or(letters);
    let letter = last.starts_with(|c| ('R'..='Z').contains(&c)) && last.len() == 1;
    let elements = matches!(elements, "3" | "4" | "5");
    letter && elements && !letters.starts_with('S')
}

/// Lock-in types have one letter, or A and one of the first eleven; their number is nominal.
fn is_lock_in(letters: &str) -> bool {
    let second = letters.strip_prefix('A');
    letters.len() == 1
        || second.is_some_and(|second| second.starts_with(|c| ('A'..='K').contains(&c)))
}

#[cfg(test)]
mod tests {
    use super::heater;

    #[track_caller]
    fn volts(name: &str, volts: f64) {
        assert_eq!(heater(name).unwrap().rating.volts, Some(volts), "{name}");
    }

    // Each rule as published tables of the system give it; the last digits from memory.
    #[test]
    fn the_first_number_rounds_the_volts() {
        volts("6ZZ9", 6.3);
        volts("12ZZ9", 12.6);
        volts("14Z9", 12.6);
        volts("14ZZ9", 14.0);
        volts("7Z9", 6.3);
        volts("25ZZ9GT", 25.0);
        volts("117Z9", 117.0);
        volts("5Z3", 5.0);
        volts("5KK8", 4.7);
        volts("5T8", 4.7);
        volts("5AS4", 5.0);
        volts("5DB4", 5.0);
        volts("1ZZ5", 1.4);
    }

    #[test]
    fn what_is_no_american_number_is_left_alone() {
        for other in ["", "6", "12", "SK7", "1234", "12SK", "12SK7QQ", "99999A1", "12ABCD7"] {
            assert_eq!(heater(other), None, "{other}");
        }
    }
}
