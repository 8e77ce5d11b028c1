//! Findings that contradict each other: which ones, and what is possible until that is mended.
//!
//! Reiter's duality between conflicts and corrections (1987): for each arrangement, the findings it
//! violates are a correction that would let it stay; the inclusion-minimal of these are all minimal
//! corrections, and their minimal hitting sets, found by Berge's multiplication, are all minimal
//! conflicts. With 6,945 arrangements that is exact and quick.

use crate::arrangement::{ArrangementId, COUNT};

use super::bank::Question;
use super::evidence;
use super::findings::Findings;
use super::reach;
use super::set::ArrangementSet;

/// What is possible after the findings.
#[derive(Clone, Debug, PartialEq)]
pub struct Possible {
    /// The arrangements the verdict is over: all consistent ones, or, in a conflict, those that stay
    /// after some minimal correction.
    pub considered: ArrangementSet,
    /// The minimal sets of findings that contradict each other, sorted; empty without a conflict.
    pub conflicts: Vec<Vec<Question>>,
}

impl Possible {
    /// What the findings leave.
    pub fn after(findings: &Findings) -> Self {
        let consistent = evidence::possible(findings);
        if consistent.is_empty() {
            contradiction(findings)
        } else {
            Self { considered: consistent, conflicts: Vec::new() }
        }
    }

    /// How many arrangements agree with every finding.
    pub fn consistent(&self) -> usize {
        if self.is_conflict() { 0 } else { self.considered.len() }
    }

    /// Whether the findings contradict each other.
    pub fn is_conflict(&self) -> bool {
        !self.conflicts.is_empty()
    }
}

/// A set of findings, one bit for each place in the list of those that can contradict.
type Mask = u32;

fn contradiction(findings: &Findings) -> Possible {
    // The reach rules leave some reach to every isolation, so they take no part in a conflict.
    let allowed = reach::allowed(findings).set();
    let constraints: Vec<(Question, &ArrangementSet)> = evidence::constraints(findings).collect();
    let mut violated: Vec<Mask> = vec![0; COUNT];
    for (place, (_, left)) in constraints.iter().enumerate() {
        let mut out = ArrangementSet::all();
        out.remove(left);
        for (id, _) in out.iter() {
            if let Some(mask) = violated.get_mut(usize::from(id.0)) {
                *mask |= 1 << place;
            }
        }
    }
    let reachable = allowed.iter().filter_map(|(id, _)| violated.get(usize::from(id.0)).copied());
    let corrections = minimal(reachable.collect());
    let considered = considered(&allowed, &violated, &corrections);
    let name = |mask: Mask| {
        let places = (0..constraints.len()).filter(|place| mask & (1 << place) != 0);
        places.filter_map(|place| constraints.get(place).map(|(question, _)| *question)).collect()
    };
    let mut conflicts: Vec<Vec<Question>> =
        hitting_sets(&corrections).into_iter().map(name).collect();
    for conflict in &mut conflicts {
        conflict.sort_by_key(|question| question.id());
    }
    conflicts
        .sort_by_key(|conflict| conflict.iter().map(|question| question.id()).collect::<Vec<_>>());
    Possible { considered, conflicts }
}

fn considered(allowed: &ArrangementSet, violated: &[Mask], corrections: &[Mask]) -> ArrangementSet {
    let mut set = ArrangementSet::EMPTY;
    for (id, mask) in (0u16..).map(ArrangementId).zip(violated) {
        if allowed.contains(id) && corrections.contains(mask) {
            set.insert(id);
        }
    }
    set
}

/// The inclusion-minimal of some sets, sorted.
fn minimal(mut sets: Vec<Mask>) -> Vec<Mask> {
    sets.sort_unstable_by_key(|set| (set.count_ones(), *set));
    sets.dedup();
    let mut kept: Vec<Mask> = Vec::new();
    for set in sets {
        if !kept.iter().any(|smaller| smaller & set == *smaller) {
            kept.push(set);
        }
    }
    kept
}

/// All inclusion-minimal sets that share a member with each of these: Berge's multiplication.
fn hitting_sets(sets: &[Mask]) -> Vec<Mask> {
    let mut hitting: Vec<Mask> = vec![0];
    for set in sets {
        let members = (0..Mask::BITS).map(|bit| 1 << bit).filter(|bit| set & bit != 0);
        let members: Vec<Mask> = members.collect();
        let next = hitting.iter().flat_map(|found| {
            let extended: Vec<Mask> = if found & set != 0 {
                vec![*found]
            } else {
                members.iter().map(|member| found | member).collect()
            };
            extended
        });
        hitting = minimal(next.collect());
    }
    hitting
}

#[cfg(test)]
mod tests {
    use super::{hitting_sets, minimal};
    use proptest::prelude::{prop_assert, prop_assert_eq, proptest};

    proptest! {
        // Brute force over all subsets of eight findings is the outside reference here.
        #[test]
        fn hitting_sets_are_those_of_brute_force(sets in proptest::collection::vec(1u32..256, 1..7)) {
            let sets = minimal(sets);
            let hits = |candidate: u32| sets.iter().all(|set| set & candidate != 0);
            let all: Vec<u32> = (0..256).filter(|c| hits(*c)).collect();
            let expected = minimal(all);
            let mut found = hitting_sets(&sets);
            found.sort_unstable_by_key(|set| (set.count_ones(), *set));
            prop_assert_eq!(&found, &expected);
            // Duality: hitting the conflicts gives the corrections back.
            let mut back = hitting_sets(&found);
            back.sort_unstable_by_key(|set| (set.count_ones(), *set));
            prop_assert_eq!(back, sets);
            prop_assert!(!found.is_empty());
        }
    }
}
