//! European numbers: the first letter fixes the heater's volts or its current, never both.

use super::{ByRule, split_while};
use crate::heaters::catalogue::{Rectifier, TubeRole, Use};

/// What the first letter says. Circulating tables disagree on X and Y; these fit XCL82 (8.2 V, 0.6 A)
/// and LCL82 (10.7 V, 0.45 A).
fn by_letter(letter: char) -> Option<ByRule> {
    Some(match letter {
        'A' => ByRule::volts(4.0, Use::Parallel),
        'B' => ByRule::amperes(0.18, Use::Series),
        'C' => ByRule::amperes(0.2, Use::Series),
        'D' => ByRule::volts(1.4, Use::Battery).filament(),
        'E' => ByRule::volts(6.3, Use::Either),
        'F' => ByRule::volts(12.6, Use::Either),
        'G' => ByRule::volts(5.0, Use::Parallel),
        'H' => ByRule::amperes(0.15, Use::Series),
        'I' => ByRule::volts(20.0, Use::Parallel),
        'K' => ByRule::volts(2.0, Use::Battery).filament(),
        'L' | 'Y' => ByRule::amperes(0.45, Use::Series),
        'P' => ByRule::amperes(0.3, Use::Series),
        'T' => ByRule::volts(7.4, Use::Parallel),
        'U' => ByRule::amperes(0.1, Use::Series),
        'V' => ByRule::amperes(0.05, Use::Series),
        'X' => ByRule::amperes(0.6, Use::Series),
        _ => return None,
    })
}

/// Letters that name a system of electrodes.
const SYSTEMS: &str = "ABCDEFHKLMNPQXYZ";

/// The heater of a European number, of an old one, or of one for professional use.
pub(super) fn heater(key: &str) -> Option<ByRule> {
    let first = key.chars().next()?;
    let (letters, rest) = split_while(key, |c| c.is_ascii_uppercase());
    let (digits, suffix) = split_while(rest, |c| c.is_ascii_digit());
    if letters.len() == 1 {
        return old(first, digits, suffix).or_else(|| professional(first, digits, suffix));
    }
    let systems = letters.strip_prefix(first)?;
    let fits = (1..=3).contains(&systems.len())
        && systems.chars().all(|c| SYSTEMS.contains(c))
        && (1..=4).contains(&digits.len())
        && (suffix.is_empty() || matches!(suffix, "N" | "S" | "G" | "SPEZ"));
    let tube = by_letter(first).filter(|_| fits && !is_british(letters, digits))?;
    Some(with_systems(tube, systems))
}

/// Prefixes that look European and are British: DH77 is 6.3 V, PX4 is 4 V, HL2 is 2 V.
fn is_british(letters: &str, digits: &str) -> bool {
    match letters {
        "DH" | "PX" | "PEN" | "PENA" | "PP" | "VP" | "HN" | "HP" | "LN" | "LP" | "UU" => true,
        "DA" => digits.len() > 2,
        "HL" => !digits.starts_with(['8', '9']) || digits.len() != 2,
        _ => false,
    }
}

fn with_systems(tube: ByRule, systems: &str) -> ByRule {
    if systems.ends_with('Z') {
        tube.rectifies(Rectifier::Full)
    } else if systems.ends_with('Y') {
        tube.rectifies(Rectifier::Half)
    } else if systems.contains('L') {
        ByRule { role: TubeRole::Output, ..tube }
    } else {
        tube
    }
}

/// `E443H`: here the letter is a class of current, and the first digit is the volts.
fn old(first: char, digits: &str, suffix: &str) -> Option<ByRule> {
    let volts = digits.chars().next()?.to_digit(10).filter(|volts| (1..=6).contains(volts))?;
    // One letter that no system of electrodes has: E180F is for professional use, 6.3 V.
    let ends = matches!(suffix, "" | "H" | "N" | "S" | "T");
    let fits = ('A'..='F').contains(&first) && digits.len() == 3 && ends;
    let usual = if volts == 4 { Use::Parallel } else { Use::Battery };
    fits.then_some(ByRule::volts(f64::from(volts), usual))
}

/// `E88CC`: the digits stand inside, the first letter means what it always does.
fn professional(first: char, digits: &str, suffix: &str) -> Option<ByRule> {
    let fits = (2..=3).contains(&digits.len())
        && (1..=3).contains(&suffix.len())
        && suffix.chars().all(|c| SYSTEMS.contains(c));
    // Other letters before two digits belong to British makers' own numbers.
    by_letter(first).filter(|_| fits && first == 'E').map(|tube| with_systems(tube, suffix))
}

#[cfg(test)]
mod tests {
    use super::heater;
    use crate::heaters::catalogue::Rating;

    // The letter table as several published tables agree, but for X and Y, which are from memory.
    #[test]
    fn the_first_letter_fixes_volts_or_current() {
        let volts = |volts| Rating { volts: Some(volts), amperes: None };
        let amperes = |amperes| Rating { volts: None, amperes: Some(amperes) };
        for (name, rating) in [
            ("PCF999", amperes(0.3)),
            ("UCH99", amperes(0.1)),
            ("ECC999", volts(6.3)),
            ("AZ99", volts(4.0)),
            ("XCL99", amperes(0.6)),
            ("LCL99", amperes(0.45)),
            ("E99CC", volts(6.3)),
            ("E446", volts(4.0)),
            ("E180F", volts(6.3)),
            ("E443H", volts(4.0)),
            ("B443S", volts(4.0)),
            ("KF99", volts(2.0)),
        ] {
            assert_eq!(heater(name).unwrap().rating, rating, "{name}");
        }
    }

    #[test]
    fn what_is_no_european_number_is_left_alone() {
        for other in [
            "", "E", "DH77", "PX4", "HL2", "VP41", "X61M", "EC", "EGG1", "OZ4", "ZZZ", "ECC", "E1",
            "ÄCC8",
        ] {
            assert_eq!(heater(other), None, "{other}");
        }
    }
}
