//! A set of a problem's groups, one bit each.

/// Up to 64 × `N` groups.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) struct Mask<const N: usize>([u64; N]);

impl<const N: usize> Mask<N> {
    pub(super) const EMPTY: Self = Self([0; N]);

    /// The first `count` groups.
    pub(super) fn first(count: usize) -> Self {
        let mut mask = Self::EMPTY;
        (0..count).for_each(|group| mask.insert(group));
        mask
    }

    pub(super) fn insert(&mut self, group: usize) {
        if let Some(word) = self.0.get_mut(group / 64) {
            *word |= 1 << (group % 64);
        }
    }

    pub(super) fn keep(&mut self, other: &Self) {
        for (word, more) in self.0.iter_mut().zip(&other.0) {
            *word &= more;
        }
    }

    pub(super) fn add(&mut self, other: &Self) {
        for (word, more) in self.0.iter_mut().zip(&other.0) {
            *word |= more;
        }
    }

    pub(super) fn has(&self, group: usize) -> bool {
        self.0.get(group / 64).is_some_and(|word| word >> (group % 64) & 1 == 1)
    }

    /// Whether any group is in both.
    pub(super) fn meets(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).any(|(word, other)| word & other != 0)
    }

    /// Whether all of these are in the other too.
    pub(super) fn is_within(&self, other: &Self) -> bool {
        self.0.iter().zip(&other.0).all(|(word, other)| word & !other == 0)
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = usize> + '_ {
        self.0.iter().enumerate().flat_map(|(place, word)| {
            let mut left = *word;
            std::iter::from_fn(move || {
                let bit = (left != 0).then(|| left.trailing_zeros() as usize)?;
                left &= left - 1;
                Some(place * 64 + bit)
            })
        })
    }
}
