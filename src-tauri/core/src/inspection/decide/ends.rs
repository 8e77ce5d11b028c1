//! What treat as would come to for each group if it is what the unit is and all that is open is answered.
//!
//! Where several answers are true the best joint choice counts. Groups that answer alike so far are
//! followed together.

use std::collections::BTreeMap;
use std::ops::Range;

use super::mask::Mask;
use super::problem::{CANT_TELL, Role, Told};
use super::view::View;
use crate::hazard::Class;

struct Ends<'v, 'p, const N: usize> {
    view: &'v View<'p, N>,
    /// The values that are read well, or may still be.
    good: u8,
    /// The steps still open whose answers stand by themselves.
    alone: Vec<usize>,
    /// The first of the groups that are followed, one after the other in `ends`.
    first: usize,
    ends: Vec<Class>,
}

/// The final verdict of each group; the one that stands for those that can no longer better it.
pub(super) fn ends<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    left: &Mask<N>,
    treat_as: Class,
) -> Vec<Class> {
    let good = view.parts(told, true);
    let hopeful = left.iter().filter(|group| treat_as.is_worse_than(view.class(*group, good)));
    let mut ends = Ends::new(view, told, treat_as, 0..view.problem.groups.len());
    for (told, mut groups) in read_together(view, told, hopeful) {
        let left = view.judged(&told);
        groups.retain(|group| left.has(*group));
        ends.follow(groups, 0, &left);
    }
    ends.ends
}

/// Whether treat as can still become better.
pub(super) fn can_improve<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    left: &Mask<N>,
    treat_as: Class,
) -> bool {
    let good = view.parts(told, true);
    let hopeful = left.iter().filter(|group| treat_as.is_worse_than(view.class(*group, good)));
    let mut ends = Ends::new(view, told, treat_as, 0..view.problem.groups.len());
    for (told, mut groups) in read_together(view, told, hopeful) {
        let left = view.judged(&told);
        groups.retain(|group| left.has(*group));
        // One after the other: most often the first says it.
        for group in groups {
            ends.follow(vec![group], 0, &left);
            if ends.of(group).is_some_and(|end| treat_as.is_worse_than(end)) {
                return true;
            }
        }
    }
    false
}

/// The final verdict of one group.
pub(super) fn at_best<const N: usize>(view: &View<'_, N>, group: usize, told: &Told) -> Class {
    let mut ends = Ends::new(view, told, Class::Live, group..group + 1);
    for (told, groups) in read_together(view, told, std::iter::once(group)) {
        let left = view.judged(&told);
        ends.follow(groups, 0, &left);
    }
    ends.of(group).unwrap_or(Class::Live)
}

/// The steps that it takes to show the final verdict of a group if it is what the unit is: none of them can be
/// left out, and dear ones are left out first.
pub(super) fn certificate<const N: usize>(
    view: &View<'_, N>,
    group: usize,
    told: &Told,
    useful: &[usize],
) -> Vec<usize> {
    let end = at_best(view, group, told);
    let seconds = |place: &usize| view.problem.tests.get(*place).map_or(0.0, |test| test.seconds);
    let mut dear: Vec<usize> = useful.to_vec();
    dear.sort_by(|a, b| seconds(b).total_cmp(&seconds(a)));
    let mut told = told.clone();
    let mut needed = Vec::new();
    for place in dear {
        let without = told.and(place, CANT_TELL);
        if at_best(view, group, &without).is_worse_than(end) {
            needed.push(place);
        } else {
            told = without;
        }
    }
    needed
}

/// Groups that answer alike to the steps whose answers are read together, with these answers told.
fn read_together<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    groups: impl Iterator<Item = usize>,
) -> Vec<(Told, Vec<usize>)> {
    let tests = view.problem.tests.iter().enumerate();
    let joint = |role: Role| !matches!(role, Role::Alone | Role::Value(_) | Role::Soft);
    let open: Vec<usize> = tests
        .filter(|(place, test)| told.is_open(*place) && joint(test.role))
        .map(|(place, _)| place)
        .collect();
    together(view, told, &open, groups)
}

/// What groups answer to a step, where their own answers lead to it.
struct Given<'p> {
    gives: &'p [u16],
    /// The outcomes that groups give to what comes first, and those after which the step may be taken.
    first: Option<(&'p [u16], u16)>,
}

impl<'p> Given<'p> {
    fn of<const N: usize>(view: &View<'p, N>, told: &Told, place: usize) -> Self {
        let gives = |place: usize| {
            view.problem.tests.get(place).map_or(&[][..], |test| test.gives.as_slice())
        };
        let after = view.problem.tests.get(place).and_then(|test| test.after);
        let after = after.filter(|(first, _)| told.is_open(*first));
        Self { gives: gives(place), first: after.map(|(first, leads)| (gives(first), leads)) }
    }

    fn by(&self, group: usize) -> u16 {
        let of = |gives: &[u16]| gives.get(group).copied().unwrap_or_default();
        let leads = self.first.is_none_or(|(first, leads)| of(first) & leads != 0);
        if leads { of(self.gives) } else { 0 }
    }
}

/// Groups that answer alike to some steps, with these answers told; of several true answers the first.
pub(super) fn together<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    open: &[usize],
    groups: impl Iterator<Item = usize>,
) -> Vec<(Told, Vec<usize>)> {
    let given: Vec<Given<'_>> = open.iter().map(|place| Given::of(view, told, *place)).collect();
    let mut alike: BTreeMap<u64, Vec<usize>> = BTreeMap::new();
    for group in groups {
        let packed = given.iter().fold(0, |packed, given| {
            let gives = given.by(group);
            packed << 4 | if gives == 0 { 0 } else { u64::from(gives.trailing_zeros()) + 1 }
        });
        alike.entry(packed).or_default().push(group);
    }
    let with = |packed: u64| {
        let mut told = told.clone();
        for (turn, place) in open.iter().rev().enumerate() {
            if let Some(outcome) = (packed >> (4 * turn) & 15).checked_sub(1) {
                told.set(*place, outcome as u8);
            }
        }
        told
    };
    alike.into_iter().map(|(packed, groups)| (with(packed), groups)).collect()
}

impl<'v, 'p, const N: usize> Ends<'v, 'p, N> {
    fn new(view: &'v View<'p, N>, told: &Told, start: Class, groups: Range<usize>) -> Self {
        let tests = view.problem.tests.iter().enumerate();
        let alone = tests
            .filter(|(place, test)| told.is_open(*place) && test.role == Role::Alone)
            .map(|(place, _)| place)
            .collect();
        Self {
            view,
            good: view.parts(told, true),
            alone,
            first: groups.start,
            ends: vec![start; groups.len()],
        }
    }

    /// The final verdict of a group, so far.
    fn of(&self, group: usize) -> Option<Class> {
        group.checked_sub(self.first).and_then(|place| self.ends.get(place)).copied()
    }

    /// Follows groups that have answered alike so far through the open steps from one on.
    fn follow(&mut self, mut groups: Vec<usize>, from: usize, left: &Mask<N>) {
        let worst = self.view.worst(left, self.good);
        for group in &groups {
            let place = group.checked_sub(self.first);
            if let Some(end) = place.and_then(|place| self.ends.get_mut(place))
                && end.is_worse_than(worst)
            {
                *end = worst;
            }
        }
        // A group itself stays whatever is answered: nothing better than its own class can come.
        groups.retain(|group| {
            let own = self.view.class(*group, self.good);
            self.of(*group).is_some_and(|end| end.is_worse_than(own))
        });
        if groups.is_empty() {
            return;
        }
        let next = (from..self.alone.len()).find_map(|turn| {
            let place = *self.alone.get(turn)?;
            let test = self.view.problem.tests.get(place)?;
            let rows = (0..u32::from(test.outcomes)).filter_map(|o| self.view.row(place, o));
            rows.into_iter().any(|row| !left.is_within(row)).then_some((turn, test))
        });
        let Some((turn, test)) = next else { return };
        let place = self.alone.get(turn).copied().unwrap_or_default();
        let gives = |group: &usize| test.gives.get(*group).copied().unwrap_or_default();
        let silent: Vec<usize> = groups.iter().copied().filter(|group| gives(group) == 0).collect();
        if !silent.is_empty() {
            self.follow(silent, turn + 1, left);
        }
        for outcome in 0..u32::from(test.outcomes) {
            let of = groups.iter().copied().filter(|group| gives(group) >> outcome & 1 == 1);
            let of: Vec<usize> = of.collect();
            if let (false, Some(row)) = (of.is_empty(), self.view.row(place, outcome)) {
                let mut fewer = *left;
                fewer.keep(row);
                self.follow(of, turn + 1, &fewer);
            }
        }
    }
}
