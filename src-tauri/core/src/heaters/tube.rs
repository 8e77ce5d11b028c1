//! A tube as it was entered: what is known of its heater, from the list or by rule.

use super::catalogue::{Doubt, HeaterKind, Rating, Rectifier, TubeRole, TubeType, Use};
use super::designation::{ByRule, by_rule};
use super::lamps;
use super::lookup::{Found, lookup};
use super::spelling::key;
use crate::figure::Mark;

/// How far a tube is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
pub enum Known {
    /// The list has it.
    Listed,
    /// Its number says so by a rule, not a list.
    ByRule,
    /// Neither says anything.
    Unknown,
}

/// One tube with what is known of its heater.
#[derive(Clone, Debug, PartialEq)]
pub struct Tube {
    /// As it was entered.
    pub entered: String,
    /// The type that was understood, as it is written.
    pub name: String,
    /// The entry of the list; nothing where it has none.
    pub listed: Option<&'static TubeType>,
    /// How far it is known.
    pub known: Known,
    /// The entry was taken for another with letters that look alike.
    pub corrected: bool,
    /// Its heater as it is usually connected.
    pub rating: Rating,
    /// The other way in which it can be connected.
    pub other: Option<Rating>,
    /// Resistance of a resistor that is known by it, Ω.
    pub ohms: Option<f64>,
    /// What is heated.
    pub kind: HeaterKind,
    /// How it is usually fed.
    pub usual: Use,
    /// What it does.
    pub role: TubeRole,
    /// How it rectifies.
    pub rectifier: Rectifier,
    /// How far its figures were checked.
    pub mark: Mark,
    /// What is doubtful about them.
    pub doubt: Option<Doubt>,
}

impl Tube {
    /// What is known of a tube of this name. Any text has an answer, if only that nothing is known.
    pub fn of(entered: &str) -> Self {
        // No number is as long; whatever comes, the look-up stays quick.
        let cut = entered.char_indices().nth(LONGEST_ENTRY).map_or(entered.len(), |(end, _)| end);
        let entered = entered.get(..cut).unwrap_or(entered).trim();
        if let Some(lamp) = lamps::find(entered) {
            return Self::lamp(entered, lamp.name(), lamp.rating(), lamp.mark);
        }
        match lookup(entered) {
            Some(found) => Self::listed(entered, &found).unwrap_or_else(|| Self::unlisted(entered)),
            None => Self::unlisted(entered),
        }
    }

    fn listed(entered: &str, found: &Found) -> Option<Self> {
        let tube = found.named.tube()?;
        Some(Self {
            entered: entered.to_owned(),
            name: if found.suffix.is_some() {
                key(entered)
            } else {
                found.named.name()?.to_owned()
            },
            listed: Some(tube),
            known: Known::Listed,
            corrected: found.corrected,
            rating: tube.rating,
            other: tube.other,
            ohms: None,
            kind: tube.kind,
            usual: tube.usual,
            role: tube.role,
            rectifier: tube.rectifier,
            mark: tube.mark,
            doubt: tube.doubt.or(found.suffix.flatten()),
        })
    }

    fn unlisted(entered: &str) -> Self {
        let name = key(entered).chars().take(NAME_LENGTH).collect();
        by_rule(entered).map_or_else(
            || Self {
                name: entered.to_owned(),
                ..Self::from_rule(entered, String::new(), UNKNOWN)
            },
            |rule| Self { known: Known::ByRule, ..Self::from_rule(entered, name, rule) },
        )
    }

    fn from_rule(entered: &str, name: String, rule: ByRule) -> Self {
        Self {
            entered: entered.to_owned(),
            name,
            listed: None,
            known: Known::Unknown,
            corrected: false,
            rating: rule.rating,
            other: rule.other,
            ohms: rule.ohms,
            kind: rule.kind,
            usual: rule.usual,
            role: rule.role,
            rectifier: rule.rectifier,
            mark: Mark::MemoryLow,
            doubt: None,
        }
    }

    fn lamp(entered: &str, name: String, rating: Rating, mark: Mark) -> Self {
        Self {
            known: Known::Listed,
            rating,
            kind: HeaterKind::Lamp,
            role: TubeRole::Lamp,
            mark,
            ..Self::from_rule(entered, name, UNKNOWN)
        }
    }

    /// The dial lamp of the same number, for an old tube that has one.
    pub fn as_lamp(&self) -> Option<Self> {
        let lamp = lamps::find(&format!("#{}", self.name))
            .filter(|_| LABEL_LAMPS.contains(&self.name.as_str()))?;
        let is_old = self.listed.is_some() && self.kind != HeaterKind::Lamp;
        is_old.then(|| Self::lamp(&self.entered, lamp.name(), lamp.rating(), lamp.mark))
    }

    /// The ways in which its heater can be connected, the usual one first.
    pub fn ratings(&self) -> impl Iterator<Item = Rating> + '_ {
        std::iter::once(self.rating).chain(self.other)
    }
}

/// Lamps that labels name by bare numbers; of these, tubes of the same number are rare in a string.
const LABEL_LAMPS: [&str; 5] = ["40", "44", "46", "47", "51"];

/// The most of an entry that is looked at, characters.
const LONGEST_ENTRY: usize = 128;

/// The longest name that is shown of a type that no list has, characters.
const NAME_LENGTH: usize = 16;

const UNKNOWN: ByRule = ByRule {
    rating: Rating { volts: None, amperes: None },
    other: None,
    ohms: None,
    kind: HeaterKind::Heater,
    usual: Use::Either,
    role: TubeRole::Unknown,
    rectifier: Rectifier::None,
};

#[cfg(test)]
mod tests {
    use super::{Known, Rating, Tube};

    #[track_caller]
    fn is(entered: &str, name: &str, corrected: bool) {
        let tube = Tube::of(entered);
        assert_eq!(
            (tube.name.as_str(), tube.corrected, tube.known),
            (name, corrected, Known::Listed),
            "{entered}"
        );
    }

    #[test]
    fn a_type_is_known_however_it_is_written() {
        is("12sk7", "12SK7", false);
        is("12 sk 7", "12SK7", false);
        is("I2SK7", "12SK7", true);
        is("5OL6", "50L6", true);
        is("5oL6-gt", "50L6GT", true);
        is("ecc83", "ECC83", false);
        is("12SK7GT", "12SK7GT", false);
        is("UX-226", "226", false);
        is("KX-80", "80", false);
        is("6Ж1П", "6Ж1П", false);
        is("6H8C", "6N8S", true);
        is("6C2C", "6S2S", true);
        is("6n14n", "6P14P", true);
        is("6H2П", "6N2P", true);
        is("6N2P-EV", "6N2PEV", false);
        is("345", "45", false);
        is("6SC7", "6SC7", false);
        is("14A7", "14A7", false);
        is("#47", "#47", false);
        is("lamp 47", "#47", false);
    }

    #[test]
    fn letters_that_begin_european_numbers_are_no_base() {
        assert_eq!(Tube::of("UY31").rating, Rating { volts: None, amperes: Some(0.1) });
        assert_eq!(Tube::of("UY-76").name, "76");
        assert_eq!(Tube::of("6C4C").rating, Rating { volts: Some(6.3), amperes: None });
        // No American number is taken for a Russian one that is not there.
        for name in ["3B4", "6P7", "6C7"] {
            assert!(!Tube::of(name).corrected, "{name}");
        }
    }

    #[test]
    fn a_lamp_is_no_tube_of_the_same_number() {
        assert_ne!(Tube::of("47").kind, Tube::of("#47").kind);
    }

    #[test]
    fn an_improved_version_is_doubtful_and_another_bulb_is_not() {
        assert!(Tube::of("12SK7W").doubt.is_some());
        assert_eq!(Tube::of("12BE6").doubt, None);
        assert_eq!(Tube::of("12BE6GT").doubt, None);
    }
}
