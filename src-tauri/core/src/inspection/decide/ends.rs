//! What treat as would come to for each group if it is what the unit is and all that is open is answered.
//!
//! Where several answers are true the best joint choice counts. What has one answer only is answered first, all at
//! once: little is left to choose then.

use std::collections::BTreeMap;

use super::mask::Mask;
use super::problem::{CANT_TELL, Role, Test, Told};
use super::view::View;
use crate::hazard::Class;

struct Ends<'v, 'p, const N: usize> {
    view: &'v View<'p, N>,
    /// The values that are read well, or may still be.
    good: u8,
    /// The steps still open whose answers stand by themselves, with their places.
    alone: Vec<(usize, &'p Test)>,
    /// What a group can still choose among, while it is followed.
    choices: Vec<(usize, u16)>,
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
    let mut follow = Ends::new(view, told);
    let mut ends = vec![treat_as; view.problem.groups.len()];
    for (told, groups) in read_together(view, told, hopeful) {
        let left = view.judged(&told);
        for group in groups.into_iter().filter(|group| left.has(*group)) {
            if let Some(end) = ends.get_mut(group) {
                *end = follow.end(group, &left, treat_as);
            }
        }
    }
    ends
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
    let mut follow = Ends::new(view, told);
    read_together(view, told, hopeful).into_iter().any(|(told, groups)| {
        let left = view.judged(&told);
        let mut groups = groups.into_iter().filter(|group| left.has(*group));
        groups.any(|group| treat_as.is_worse_than(follow.end(group, &left, treat_as)))
    })
}

/// The final verdict of one group.
pub(super) fn at_best<const N: usize>(view: &View<'_, N>, group: usize, told: &Told) -> Class {
    let mut follow = Ends::new(view, told);
    let ways = read_together(view, told, std::iter::once(group));
    ways.iter().fold(Class::Live, |end, (told, _)| follow.end(group, &view.judged(told), end))
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
    fn new(view: &'v View<'p, N>, told: &Told) -> Self {
        let tests = view.problem.tests.iter().enumerate();
        let alone = tests
            .filter(|(place, test)| told.is_open(*place) && test.role == Role::Alone)
            .collect();
        Self { view, good: view.parts(told, true), alone, choices: Vec::new() }
    }

    /// The final verdict of a group with these left; `at_least` where it comes to nothing better.
    fn end(&mut self, group: usize, left: &Mask<N>, at_least: Class) -> Class {
        let own = self.view.class(group, self.good);
        let mut left = *left;
        let mut choices = std::mem::take(&mut self.choices);
        choices.clear();
        for (place, test) in &self.alone {
            let gives = test.gives.get(group).copied().unwrap_or_default();
            match gives.count_ones() {
                0 => {}
                1 => {
                    if let Some(row) = self.view.row(*place, gives.trailing_zeros()) {
                        left.keep(row);
                    }
                }
                _ => choices.push((*place, gives)),
            }
        }
        let end = self.choose(own, &left, &choices, at_least);
        self.choices = choices;
        end
    }

    /// The best that can be left of some groups by the choices that are still open, and nothing better than `own`: the
    /// group itself stays whatever is answered.
    fn choose(
        &self,
        own: Class,
        left: &Mask<N>,
        choices: &[(usize, u16)],
        at_least: Class,
    ) -> Class {
        let worst = self.view.worst(left, self.good);
        let mut best = if at_least.is_worse_than(worst) { worst } else { at_least };
        for (turn, (place, gives)) in choices.iter().enumerate() {
            if !best.is_worse_than(own) {
                return best;
            }
            let rows = (0..u16::BITS).filter(|outcome| gives >> outcome & 1 == 1);
            let rows: Vec<_> = rows.filter_map(|outcome| self.view.row(*place, outcome)).collect();
            if rows.iter().all(|row| left.is_within(row)) {
                continue;
            }
            let rest = choices.get(turn + 1..).unwrap_or_default();
            for row in rows {
                let mut fewer = *left;
                fewer.keep(row);
                best = self.choose(own, &fewer, rest, best);
            }
            return best;
        }
        best
    }
}
