//! Types offered while a person types, the likeliest first.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;

use super::catalogue::{BY_KEY, Named, TubeType};
use super::lookup::lookup;
use super::spelling::{Alike, Key, folded, in_latin, key};

/// A type that may be meant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Suggestion {
    /// The type.
    pub tube: &'static TubeType,
    /// The name of it that fits what was typed.
    pub name: &'static str,
    /// It is not what was typed, but looks like it.
    pub corrected: bool,
}

/// One name in every spelling that is compared.
struct Spelt {
    key: Key,
    round: Key,
    worn: Key,
    named: Named,
    line_ups: u32,
}

static SPELT: LazyLock<Vec<Spelt>> = LazyLock::new(|| {
    let spell = |(key, &named): (&Key, &Named)| Spelt {
        round: folded(key, Alike::Round),
        worn: folded(key, Alike::Worn),
        line_ups: named.tube().map_or(0, |tube| tube.line_ups),
        key: key.clone(),
        named,
    };
    let mut spelt: Vec<Spelt> = BY_KEY.iter().map(spell).collect();
    // The usual types first, then the shorter, then by name: the order within each kind of match.
    spelt.sort_by(|a, b| (b.line_ups, a.key.len(), &a.key).cmp(&(a.line_ups, b.key.len(), &b.key)));
    spelt
});

/// Types by their spelling with look-alikes made the same.
pub(super) static FOLDED: LazyLock<FxHashMap<Key, Named>> = LazyLock::new(|| {
    // The first name of a type comes last, and so stands.
    let mut names: Vec<&Spelt> = SPELT.iter().collect();
    names.sort_by_key(|spelt| std::cmp::Reverse(spelt.named.nth));
    names.into_iter().map(|spelt| (spelt.round.clone(), spelt.named)).collect()
});

/// The shortest text for which types that differ in one character are offered.
const SHORTEST_CLOSE: usize = 4;

/// At most so many types that may be meant: as typed, beginning so, then those that look alike.
pub fn suggest(text: &str, most: usize) -> Vec<Suggestion> {
    let typed = key(text);
    if typed.is_empty() {
        return Vec::new();
    }
    let typed = in_latin(&typed).filter(|_| !BY_KEY.contains_key(&typed)).unwrap_or(typed);
    let mut offer = Offer { most, given: Vec::new() };
    if let Some(found) = lookup(text) {
        offer.add(found.named, found.corrected);
    }
    offer.add_all(|spelt| spelt.key.starts_with(&typed), false);
    let round = folded(&typed, Alike::Round);
    offer.add_all(|spelt| spelt.round.starts_with(&round), true);
    let worn = folded(&typed, Alike::Worn);
    offer.add_all(|spelt| spelt.worn.starts_with(&worn), true);
    let length = typed.chars().count();
    // What begins as typed is meant sooner than what is one slip away.
    if length >= SHORTEST_CLOSE && offer.given.is_empty() {
        let near =
            |key: &str| key.len().abs_diff(length) <= 1 && strsim::osa_distance(key, &typed) <= 1;
        offer.add_all(|spelt| near(&spelt.key), true);
    }
    offer.given
}

struct Offer {
    most: usize,
    given: Vec<Suggestion>,
}

impl Offer {
    fn add_all(&mut self, fits: impl Fn(&Spelt) -> bool, corrected: bool) {
        for spelt in SPELT.iter() {
            if self.given.len() >= self.most {
                return;
            }
            if fits(spelt) {
                self.add(spelt.named, corrected);
            }
        }
    }

    fn add(&mut self, named: Named, corrected: bool) {
        let (Some(tube), Some(name)) = (named.tube(), named.name()) else { return };
        let is_new = !self.given.iter().any(|given| std::ptr::eq(given.tube, tube));
        if is_new && self.given.len() < self.most {
            self.given.push(Suggestion { tube, name, corrected });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::suggest;
    use crate::heaters::catalogue;
    use crate::heaters::spelling::{Alike, folded, key};
    use std::collections::BTreeMap;

    fn names(text: &str) -> Vec<&'static str> {
        suggest(text, 8).into_iter().map(|hit| hit.name).collect()
    }

    #[test]
    fn what_is_typed_comes_first_and_the_usual_types_next() {
        assert_eq!(names("12sk7").first(), Some(&"12SK7"));
        assert!(names("ECC8").len() > 4 && names("1").len() == 8);
        assert!(names("50").iter().take(3).any(|name| *name == "50L6"), "{:?}", names("50"));
        assert!(names("").is_empty() && names("§ ,").is_empty());
    }

    #[test]
    fn mistakes_are_forgiven() {
        for (typed, meant) in
            [("I2SK7", "12SK7"), ("5OL6", "50L6"), ("125K7", "12SK7"), ("12SK77", "12SK7")]
        {
            let hits = suggest(typed, 8);
            assert!(hits.iter().any(|hit| hit.name == meant && hit.corrected), "{typed} {hits:?}");
        }
    }

    #[test]
    fn no_two_types_differ_by_round_look_alikes_alone() {
        let mut by_fold: BTreeMap<String, &str> = BTreeMap::new();
        for tube in catalogue() {
            for name in tube.names() {
                let before = by_fold.insert(folded(&key(name), Alike::Round), &tube.name);
                assert!(before.is_none_or(|before| before == tube.name), "{name} {before:?}");
            }
        }
    }
}
