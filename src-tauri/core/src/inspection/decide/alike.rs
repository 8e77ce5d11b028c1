//! Which arrangements are one group: those that say the same to every open step and are of the same class.

use super::problem::Group;
use crate::arrangement::{Arrangement, ArrangementId};

/// What makes two arrangements alike here, in 128 bits of two hashes: among 6,945 a chance of 1e-31 that two
/// that differ fall together, and then only the order of asking would suffer.
#[derive(PartialEq, Eq, Hash)]
pub(super) struct Alike(u64, u64);

impl Alike {
    /// What arrangements say to all steps, one step after the other for all of them: their lists are long.
    pub(super) fn said<S: Fn(ArrangementId) -> u64>(
        steps: impl Iterator<Item = S>,
        all: &[(ArrangementId, &Arrangement)],
    ) -> Vec<Self> {
        let mut said: Vec<Self> =
            all.iter().map(|_| Self(0xcbf2_9ce4_8422_2325, 0x9e37_79b9_7f4a_7c15)).collect();
        for says in steps {
            for (alike, (id, _)) in said.iter_mut().zip(all) {
                alike.add(says(*id));
            }
        }
        said
    }

    fn add(&mut self, word: u64) {
        let mixed =
            |hash: u64, factor: u64| (hash ^ word).wrapping_mul(factor).rotate_left(29) ^ word >> 7;
        self.0 = mixed(self.0, 0x0100_0000_01b3);
        self.1 = mixed(self.1, 0xff51_afd7_ed55_8ccd);
    }

    /// With what a group is by itself.
    pub(super) fn with(mut self, group: &Group) -> Self {
        self.add(u64::from(group.kind) << 8 | u64::from(group.has_path));
        let classes = (group.class as u64) << 16 | (group.if_read as u64) << 8;
        self.add(classes | u64::from(group.parts));
        self
    }
}
