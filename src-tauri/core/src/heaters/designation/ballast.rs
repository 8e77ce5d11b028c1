//! Ballast codes and resistance line cords: resistors that stand in the string with the heaters.

use super::{ByRule, split_while};
use crate::heaters::catalogue::{HeaterKind, Rating, TubeRole, Use};

/// The current that the number of a ballast goes by, A (from memory).
const BALLAST_AMPERES: f64 = 0.3;

/// The highest number of a ballast, V: no more than the line.
const HIGHEST_VOLTS: f64 = 250.0;

/// The highest resistance of a cord or dropper that is read, Ω.
const HIGHEST_OHMS: f64 = 100_000.0;

/// The sign of the ohm, and the Greek letter that looks like it.
const OHM_SIGNS: [char; 2] = ['\u{2126}', '\u{3a9}'];

fn in_string(rating: Rating, ohms: Option<f64>) -> ByRule {
    ByRule {
        ohms,
        kind: HeaterKind::Resistor,
        role: TubeRole::Ballast,
        ..ByRule::heater(rating, Use::Series)
    }
}

/// A ballast: `[B][X]` lamp letter, total volts at 0.3 A, letters of the circuit.
pub(super) fn ballast(key: &str) -> Option<ByRule> {
    let regulates = key.strip_prefix('B');
    let rest = regulates.unwrap_or(key);
    let rest = rest.strip_prefix('X').unwrap_or(rest);
    let rest = rest.strip_prefix(['K', 'L', 'M'])?;
    let (digits, circuit) = split_while(rest, |c| c.is_ascii_digit());
    let volts: f64 = digits.parse().ok()?;
    let fits = (2..=3).contains(&digits.len())
        && (5.0..=HIGHEST_VOLTS).contains(&volts)
        // L63 is a triode: without a circuit letter it takes the B in front.
        && (!circuit.is_empty() || regulates.is_some())
        && circuit.len() <= 3
        && circuit.chars().all(|c| ('A'..='J').contains(&c));
    fits.then(|| in_string(Rating::of(volts, BALLAST_AMPERES), None))
}

/// A resistance: `180 ohm`, `180 Ω`, `140R`, or a line cord `cord 180`.
pub(super) fn resistor(written: &str, key: &str) -> Option<ByRule> {
    let in_ohms = written.trim().ends_with(OHM_SIGNS);
    let cord = key.strip_prefix("LINECORD").or_else(|| key.strip_prefix("CORD"));
    let (digits, unit) = split_while(cord.unwrap_or(key), |c| c.is_ascii_digit());
    let named = in_ohms || cord.is_some();
    // The digit after the R is the maker's, not the resistance. Two digits and an R are a tube.
    let coded = digits.len() == 3 && is_r(unit);
    let fits = matches!(unit, "OHM" | "OHMS") || coded || (named && unit.is_empty());
    let ohms: f64 = digits.parse().ok().filter(|_| fits && digits.len() <= 6)?;
    let nothing = Rating { volts: None, amperes: None };
    (ohms > 0.0 && ohms <= HIGHEST_OHMS).then(|| in_string(nothing, Some(ohms)))
}

fn is_r(unit: &str) -> bool {
    let mark = unit.strip_prefix('R');
    mark.is_some_and(|mark| mark.len() <= 1 && mark.bytes().all(|b| b.is_ascii_digit()))
}

#[cfg(test)]
mod tests {
    use super::{ballast, resistor};
    use crate::heaters::spelling::key;

    // The number is the total volts (seen in print) at 0.3 A (from memory): 49 V is 163 Ω.
    #[test]
    fn the_number_of_a_ballast_is_volts_at_300_ma() {
        for (name, volts) in [("K49C", 49.0), ("BK36B", 36.0), ("L42D", 42.0), ("BX55A", 0.0)] {
            let found = ballast(name).and_then(|ballast| ballast.rating.volts);
            assert_eq!(found, (volts > 0.0).then_some(volts), "{name}");
        }
    }

    #[test]
    fn a_resistance_is_read_as_ohms() {
        for (written, ohms) in [
            ("180 ohm", 180.0),
            ("140R", 140.0),
            ("165R4", 165.0),
            ("cord 290", 290.0),
            ("220Ω", 220.0),
        ] {
            let found = resistor(written, &key(written)).unwrap();
            assert_eq!(found.ohms, Some(ohms), "{written}");
        }
        for other in ["180", "0 ohm", "ohm", "R", "6R7", "9999999 ohm", "Ω"] {
            assert_eq!(resistor(other, &key(other)), None, "{other}");
        }
    }
}
