//! Findings that contradict each other: which ones, and what is possible until that is mended.
//!
//! Reiter's duality between conflicts and corrections (1987): each arrangement has its clashes, groups
//! of findings that cannot all be true of it; most are a single answer. What shares a member with each of
//! them is a correction that would let it stay. The inclusion-minimal of these are all minimal
//! corrections, and their minimal hitting sets, found by Berge's multiplication, are all minimal
//! conflicts. With 6,945 arrangements that is exact and quick.

use std::collections::HashSet;

use crate::arrangement::{ArrangementId, COUNT, all};

use super::evidence;
use super::findings::{Finding, Findings};
use super::measured::Measured;
use super::reach;
use super::set::ArrangementSet;

/// What is possible after the findings.
#[derive(Clone, Debug, PartialEq)]
pub struct Possible {
    /// The arrangements the verdict is over: all consistent ones, or, in a conflict, those that stay
    /// after some minimal correction.
    pub considered: ArrangementSet,
    /// The minimal sets of findings that contradict each other, sorted; empty without a conflict.
    pub conflicts: Vec<Vec<Finding>>,
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

/// The findings that can contradict each other, and what clashes with each arrangement.
struct Clashes {
    findings: Vec<Finding>,
    by_arrangement: Vec<Clashing>,
}

/// What clashes with one arrangement: findings that each do alone, which is nearly all there is, and
/// groups that only do together.
#[derive(Clone, Default)]
struct Clashing {
    alone: Mask,
    groups: Vec<Mask>,
}

impl Clashing {
    fn is_mended_by(&self, correction: Mask) -> bool {
        correction & self.alone == self.alone
            && self.groups.iter().all(|group| group & correction != 0)
    }

    /// The groups that withdrawing the single findings leaves.
    fn groups_left(&self) -> Vec<Mask> {
        minimal(self.groups.iter().copied().filter(|group| group & self.alone == 0).collect())
    }
}

impl Clashes {
    fn of(findings: &Findings, measured: &Measured) -> Self {
        let mut clashes =
            Self { findings: Vec::new(), by_arrangement: vec![Clashing::default(); COUNT] };
        for (question, left) in evidence::constraints(findings) {
            let mask = clashes.mask(&[Finding::Answer(question)]);
            let mut out = ArrangementSet::all();
            out.remove(left);
            out.iter().for_each(|(id, _)| clashes.add(id, mask));
        }
        // Without readings the reach rules leave some reach to every isolation, and take no part.
        if !measured.is_empty() {
            let metal = reach::exclusions(findings);
            for (id, arrangement) in (0u16..).map(ArrangementId).zip(all()) {
                for clash in measured.clashes(id, arrangement) {
                    let mask = clashes.mask(&clash);
                    clashes.add(id, mask);
                }
                for answers in metal.of(arrangement) {
                    let answers: Vec<_> = answers.iter().copied().map(Finding::Answer).collect();
                    let mask = clashes.mask(&answers);
                    clashes.add(id, mask);
                }
            }
        }
        clashes
    }

    fn mask(&mut self, findings: &[Finding]) -> Mask {
        findings.iter().fold(0, |mask, finding| {
            let place = self.findings.iter().position(|known| known == finding);
            let place = place.unwrap_or_else(|| {
                self.findings.push(*finding);
                self.findings.len() - 1
            });
            mask | 1 << place
        })
    }

    fn add(&mut self, id: ArrangementId, mask: Mask) {
        match self.by_arrangement.get_mut(usize::from(id.0)) {
            Some(clashing) if mask.is_power_of_two() => clashing.alone |= mask,
            Some(clashing) => clashing.groups.push(mask),
            None => {}
        }
    }

    /// What clashes with each of some arrangements.
    fn among(&self, set: &ArrangementSet) -> impl Iterator<Item = (ArrangementId, &Clashing)> {
        let all = (0u16..).map(ArrangementId).zip(&self.by_arrangement);
        all.filter(|(id, _)| set.contains(*id))
    }

    /// The minimal sets of findings to withdraw so that something is possible again.
    fn corrections(&self, candidates: &ArrangementSet) -> Vec<Mask> {
        let distinct: HashSet<(Mask, Vec<Mask>)> = self
            .among(candidates)
            .map(|(_, clashing)| (clashing.alone, clashing.groups_left()))
            .collect();
        let of = |(alone, groups): &(Mask, Vec<Mask>)| -> Vec<Mask> {
            hitting_sets(groups).into_iter().map(|hit| hit | alone).collect()
        };
        minimal(distinct.iter().flat_map(of).collect())
    }
}

fn contradiction(findings: &Findings) -> Possible {
    let measured = Measured::of(findings);
    let clashes = Clashes::of(findings, &measured);
    let candidates =
        if measured.is_empty() { reach::allowed(findings).set() } else { ArrangementSet::all() };
    let corrections = clashes.corrections(&candidates);
    let mut considered = ArrangementSet::EMPTY;
    for (id, clashing) in clashes.among(&candidates) {
        if corrections.iter().any(|correction| clashing.is_mended_by(*correction)) {
            considered.insert(id);
        }
    }
    let name = |mask: Mask| -> Vec<Finding> {
        let places = (0..Mask::BITS).zip(&clashes.findings);
        places.filter(|(place, _)| mask & (1 << place) != 0).map(|(_, finding)| *finding).collect()
    };
    let mut conflicts: Vec<Vec<Finding>> =
        hitting_sets(&corrections).into_iter().map(name).collect();
    for conflict in &mut conflicts {
        conflict.sort_by_key(|finding| finding.name());
    }
    conflicts
        .sort_by_key(|conflict| conflict.iter().map(|finding| finding.name()).collect::<Vec<_>>());
    Possible { considered, conflicts }
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
