//! The two conductors of the supply, and what there is one of for each.

use std::ops::{Index, IndexMut};

use rand::Rng;

/// One of the two supply conductors, or the blade of the plug that it is wired to.
///
/// They have no names of their own and are merely counted; letters and "near" and "far" are derived.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Conductor {
    /// One of them.
    First,
    /// The other.
    Second,
}

impl Conductor {
    /// Both, in the order of counting.
    pub const BOTH: [Self; 2] = [Self::First, Self::Second];

    /// The one that this is not.
    pub fn other(self) -> Self {
        match self {
            Self::First => Self::Second,
            Self::Second => Self::First,
        }
    }

    /// Either, as likely as the other.
    pub(super) fn random(rng: &mut impl Rng) -> Self {
        if rng.random_range(0..2_usize) == 0 { Self::First } else { Self::Second }
    }
}

/// One thing for the first conductor and one for the second.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pair<T>(pub T, pub T);

impl<T> Pair<T> {
    /// What `of` gives for each, the first before the second.
    pub fn each(mut of: impl FnMut(Conductor) -> T) -> Self {
        let first = of(Conductor::First);
        Self(first, of(Conductor::Second))
    }

    /// Both, in the order of counting.
    pub fn both(self) -> [T; 2] {
        [self.0, self.1]
    }
}

impl<T: Copy> Pair<T> {
    /// The same for both.
    pub const fn alike(thing: T) -> Self {
        Self(thing, thing)
    }
}

impl<T> Index<Conductor> for Pair<T> {
    type Output = T;

    fn index(&self, conductor: Conductor) -> &T {
        match conductor {
            Conductor::First => &self.0,
            Conductor::Second => &self.1,
        }
    }
}

impl<T> IndexMut<Conductor> for Pair<T> {
    fn index_mut(&mut self, conductor: Conductor) -> &mut T {
        match conductor {
            Conductor::First => &mut self.0,
            Conductor::Second => &mut self.1,
        }
    }
}
