//! A set of arrangements, one bit each.

use crate::arrangement::{Arrangement, ArrangementId, COUNT, all};

const WORDS: usize = COUNT.div_ceil(64);

/// A set of arrangements.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ArrangementSet([u64; WORDS]);

impl ArrangementSet {
    /// The empty set.
    pub const EMPTY: Self = Self([0; WORDS]);

    /// The arrangements for which `holds`.
    pub fn of(holds: impl Fn(&Arrangement) -> bool) -> Self {
        let mut set = Self::EMPTY;
        for (place, arrangement) in all().iter().enumerate() {
            if holds(arrangement) {
                set.insert(ArrangementId(place as u16));
            }
        }
        set
    }

    /// All arrangements.
    pub fn all() -> Self {
        Self::of(|_| true)
    }

    /// Puts an arrangement in.
    pub fn insert(&mut self, id: ArrangementId) {
        if let Some(word) = self.0.get_mut(usize::from(id.0) / 64) {
            *word |= 1 << (id.0 % 64);
        }
    }

    /// Whether an arrangement is in.
    pub fn contains(&self, id: ArrangementId) -> bool {
        self.0.get(usize::from(id.0) / 64).is_some_and(|word| word & (1 << (id.0 % 64)) != 0)
    }

    /// Keeps what is in both.
    pub fn keep(&mut self, other: &Self) {
        for (word, more) in self.0.iter_mut().zip(&other.0) {
            *word &= more;
        }
    }

    /// Adds what is in the other.
    pub fn add(&mut self, other: &Self) {
        for (word, more) in self.0.iter_mut().zip(&other.0) {
            *word |= more;
        }
    }

    /// Takes out what is in the other.
    pub fn remove(&mut self, other: &Self) {
        for (word, less) in self.0.iter_mut().zip(&other.0) {
            *word &= !less;
        }
    }

    /// What is in both.
    #[must_use]
    pub fn and(&self, other: &Self) -> Self {
        let mut both = self.clone();
        both.keep(other);
        both
    }

    /// Whether nothing is in.
    pub fn is_empty(&self) -> bool {
        self.0.iter().all(|word| *word == 0)
    }

    /// How many are in.
    pub fn len(&self) -> usize {
        self.0.iter().map(|word| word.count_ones() as usize).sum()
    }

    /// Whether all of these are in the other too.
    pub fn is_within(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).all(|(word, outer)| word & !outer == 0)
    }

    /// The arrangements in the set, in their order.
    pub fn iter(&self) -> impl Iterator<Item = (ArrangementId, &'static Arrangement)> + '_ {
        self.0
            .iter()
            .zip(0u16..)
            .flat_map(|(&word, at)| Bits(word).map(move |bit| at * 64 + bit))
            .filter_map(|place| all().get(usize::from(place)).map(|a| (ArrangementId(place), a)))
    }
}

/// The set bits of a word, from the lowest.
struct Bits(u64);

impl Iterator for Bits {
    type Item = u16;

    fn next(&mut self) -> Option<u16> {
        if self.0 == 0 {
            return None;
        }
        let bit = self.0.trailing_zeros() as u16;
        self.0 &= self.0 - 1;
        Some(bit)
    }
}

#[cfg(test)]
mod tests {
    use super::ArrangementSet;
    use crate::arrangement::{COUNT, Isolation};

    #[test]
    fn a_set_gives_back_what_it_was_made_of() {
        let all = ArrangementSet::all();
        assert_eq!((all.len(), all.iter().count()), (COUNT, COUNT));
        let isolating = ArrangementSet::of(|a| a.isolation == Isolation::Isolating);
        assert_eq!(isolating.len(), 1008);
        assert!(isolating.iter().all(|(_, a)| a.isolation == Isolation::Isolating));
        assert!(isolating.is_within(&all) && !all.is_within(&isolating));
        assert!(isolating.and(&ArrangementSet::EMPTY).is_empty());
    }
}
