//! What is left of a problem after some outcomes, and what the verdict can still become.

use std::cell::OnceCell;

use super::mask::Mask;
use super::metal;
use super::problem::{CANT_TELL, Problem, Role, Told};
use crate::hazard::Class;

/// Outcomes of a value.
pub(super) const GOOD: u8 = 0;
/// Outcomes of a reading.
pub(super) const LOAD: u8 = 1;
pub(super) const OPEN: u8 = 2;

/// The ways in which the four values of parts can have turned out well.
const GOODS: usize = 1 << 4;

/// Whether not all are the same.
fn differs<'a>(mut chances: impl Iterator<Item = &'a &'static [f64]>) -> bool {
    let first = chances.next();
    chances.any(|chance| Some(chance) != first)
}

/// What the metal found is joined to.
const TRACING: Role = Role::Metal(3);

/// A problem ready to be searched: which groups each outcome leaves, as masks.
pub(crate) struct View<'a, const N: usize> {
    pub(super) problem: &'a Problem,
    all: Mask<N>,
    /// By step and outcome.
    rows: Vec<Vec<Mask<N>>>,
    proven_rows: Vec<Vec<Mask<N>>>,
    kinds: Vec<Mask<N>>,
    path: Mask<N>,
    /// The groups of each class, by which values turned out well; worked out when first asked for.
    classes: [OnceCell<Vec<Mask<N>>>; GOODS],
    values: bool,
    /// The step that traces the metal found.
    tracing: Option<usize>,
}

impl<'a, const N: usize> View<'a, N> {
    pub(crate) fn of(problem: &'a Problem) -> Self {
        let rows = |may: &[u16], outcomes: u8| -> Vec<Mask<N>> {
            if may.is_empty() {
                return Vec::new();
            }
            let mut rows = vec![Mask::EMPTY; usize::from(outcomes)];
            for (group, may) in may.iter().enumerate() {
                for (outcome, row) in rows.iter_mut().enumerate() {
                    if may >> outcome & 1 == 1 {
                        row.insert(group);
                    }
                }
            }
            rows
        };
        let mut kinds = vec![Mask::EMPTY; 16];
        let mut path = Mask::EMPTY;
        for (place, group) in problem.groups.iter().enumerate() {
            if let Some(kind) = kinds.get_mut(usize::from(group.kind)) {
                kind.insert(place);
            }
            if group.has_path {
                path.insert(place);
            }
        }
        Self {
            problem,
            all: Mask::first(problem.groups.len()),
            rows: problem.tests.iter().map(|test| rows(&test.may, test.outcomes)).collect(),
            proven_rows: problem
                .tests
                .iter()
                .map(|test| rows(&test.may_proven, test.outcomes))
                .collect(),
            kinds,
            path,
            classes: [const { OnceCell::new() }; GOODS],
            values: problem.tests.iter().any(|test| matches!(test.role, Role::Value(_))),
            tracing: problem.tests.iter().position(|test| test.role == TRACING),
        }
    }

    /// Nothing told, with how likely each group is and all of them left.
    pub(super) fn start(&self) -> (Told, Vec<f64>, Mask<N>) {
        let told = Told::nothing(self.problem);
        let weights = self.problem.groups.iter().map(|group| group.weight).collect();
        let left = self.possible(&told);
        (told, weights, left)
    }

    /// How many classes are left, and the most of them that one outcome of a step rules out.
    pub(super) fn settles(&self, place: usize, told: &Told, left: &Mask<N>) -> (usize, usize) {
        let classes = self.count_classes(&self.counted(told, left));
        let outcomes = self.problem.tests.get(place).map_or(0, |test| test.outcomes);
        let left_by = (0..outcomes)
            .filter(|outcome| left.iter().any(|group| self.gives(place, group, *outcome)))
            .map(|outcome| {
                let told = told.and(place, outcome);
                let mut after = self.judged(&told);
                after.keep(left);
                self.count_classes(&after)
            });
        (classes, classes - left_by.min().unwrap_or(classes).min(classes))
    }

    fn count_classes(&self, left: &Mask<N>) -> usize {
        self.classes(0).iter().filter(|row| row.meets(left)).count()
    }

    /// The groups that outcomes leave; where metal is not traced yet, with those that it leaves if it is joined
    /// to nothing.
    pub(super) fn possible(&self, told: &Told) -> Mask<N> {
        let mut left = self.all;
        let proven = self.is_proven(told);
        let mut metal_told = false;
        for (place, test) in self.problem.tests.iter().enumerate() {
            let Some(outcome) = told.outcome(place).filter(|outcome| *outcome != CANT_TELL) else {
                continue;
            };
            if matches!(test.role, Role::Metal(_)) {
                metal_told = true;
            } else if let Some(row) = self.rows_of(place, proven).get(usize::from(outcome)) {
                left.keep(row);
            }
        }
        if metal_told {
            let digits = self.digits(told);
            let mut kinds = metal::left(digits, self.problem.metal_reads);
            if self.is_untraced(told) {
                let [bare, back, terminals, _] = digits;
                let digits = [bare, back, terminals, metal::NO + 1];
                kinds |= metal::left(digits, self.problem.metal_reads);
            }
            left.keep(&self.of_kinds(kinds));
        }
        if proven && !self.problem.proven {
            left.keep(&self.path);
        }
        left
    }

    /// Whether metal could be traced, and nobody has said to what.
    fn is_untraced(&self, told: &Told) -> bool {
        let outcome = self.tracing.map(|place| told.outcome(place));
        outcome.is_some_and(|outcome| outcome.is_none_or(|outcome| outcome == CANT_TELL))
    }

    fn of_kinds(&self, kinds: u16) -> Mask<N> {
        let mut of = Mask::EMPTY;
        for (kind, row) in self.kinds.iter().enumerate() {
            if kinds >> kind & 1 == 1 {
                of.add(row);
            }
        }
        of
    }

    /// Those of some groups that the verdict is over: metal counts as joined until it is traced.
    fn counted(&self, told: &Told, left: &Mask<N>) -> Mask<N> {
        let mut counted = *left;
        if self.is_untraced(told) {
            let kinds = metal::left(self.digits(told), self.problem.metal_reads);
            counted.keep(&self.of_kinds(kinds));
        }
        counted
    }

    /// The groups that the verdict is over after some outcomes.
    pub(super) fn judged(&self, told: &Told) -> Mask<N> {
        self.counted(told, &self.possible(told))
    }

    /// What each outcome of a step leaves, by whether the path is proven.
    fn rows_of(&self, place: usize, proven: bool) -> &[Mask<N>] {
        let proven = self.proven_rows.get(place).filter(|rows| proven && !rows.is_empty());
        proven.or_else(|| self.rows.get(place)).map_or(&[], Vec::as_slice)
    }

    /// Whether pin to pin has shown that current comes through.
    fn is_proven(&self, told: &Told) -> bool {
        if self.problem.proven {
            return true;
        }
        let read = |role: Role, outcome: u8| {
            let place = self.problem.tests.iter().position(|test| test.role == role);
            place.and_then(|place| told.outcome(place)) == Some(outcome)
        };
        self.problem.no_motor && read(Role::PathOn, LOAD) && read(Role::PathOff, OPEN)
    }

    /// The worst class among groups as things stand.
    pub(super) fn treat_as(&self, told: &Told, left: &Mask<N>) -> Class {
        let counted = self.counted(told, left);
        self.worst(&counted, if self.values { self.parts(told, false) } else { 0 })
    }

    /// The worst class among groups whose parts among `good` turned out well.
    pub(super) fn worst(&self, left: &Mask<N>, good: u8) -> Class {
        let rows = self.classes(if self.values { good } else { 0 });
        let worst = Class::ALL.iter().zip(rows).find(|(_, row)| row.meets(left));
        worst.map_or(Class::NoLine, |(class, _)| *class)
    }

    /// The groups of each class, worst first, if the parts among `good` turned out well.
    fn classes(&self, good: u8) -> &[Mask<N>] {
        let rows = || {
            let mut rows = vec![Mask::EMPTY; Class::ALL.len()];
            for group in 0..self.problem.groups.len() {
                if let Some(row) = rows.get_mut(self.class(group, good) as usize) {
                    row.insert(group);
                }
            }
            rows
        };
        self.classes.get(usize::from(good)).map_or(&[], |known| known.get_or_init(rows))
    }

    /// The class of a group whose parts among `good` were read and turned out well.
    pub(super) fn class(&self, group: usize, good: u8) -> Class {
        let Some(group) = self.problem.groups.get(group) else { return Class::Live };
        if group.parts & !good == 0 { group.if_read } else { group.class }
    }

    /// The values that were read and turned out well, and, in hope, those that still may.
    pub(super) fn parts(&self, told: &Told, in_hope: bool) -> u8 {
        let tests = self.problem.tests.iter().enumerate();
        tests.fold(0, |bits, (place, test)| match test.role {
            Role::Value(bit) if told.outcome(place) == Some(GOOD) => bits | bit,
            Role::Value(bit) if in_hope && told.is_open(place) => bits | bit,
            _ => bits,
        })
    }

    /// Whether a step may be taken and could remove something or better a class.
    pub(super) fn is_useful(&self, place: usize, told: &Told, left: &Mask<N>) -> bool {
        let Some(test) = self.problem.tests.get(place).filter(|_| told.is_open(place)) else {
            return false;
        };
        if let Some((first, outcomes)) = test.after
            && told.outcome(first).is_none_or(|outcome| outcomes >> outcome & 1 == 0)
        {
            return false;
        }
        match test.role {
            Role::Value(bit) => left.iter().any(|group| {
                self.problem
                    .groups
                    .get(group)
                    .is_some_and(|g| g.parts & bit != 0 && g.class != g.if_read)
            }),
            Role::Metal(_) => self.metal_matters(place, told, left),
            Role::PathOn | Role::PathOff => self.readings_are_open(told),
            Role::Soft => differs(left.iter().filter_map(|group| test.chances.get(group))),
            Role::Alone | Role::Reading => self.parts_some(place, told, left),
        }
    }

    fn readings_are_open(&self, told: &Told) -> bool {
        let tests = self.problem.tests.iter().enumerate();
        self.problem.no_motor
            && !self.problem.proven
            && tests
                .filter(|(place, _)| told.is_open(*place))
                .any(|(_, test)| test.role == Role::Reading)
    }

    /// The groups that stay under an outcome of a step whose answers stand by themselves.
    pub(super) fn row(&self, place: usize, outcome: u32) -> Option<&Mask<N>> {
        self.rows.get(place).and_then(|rows| rows.get(outcome as usize))
    }

    /// Whether some outcome that a group may give removes another.
    fn parts_some(&self, place: usize, told: &Told, left: &Mask<N>) -> bool {
        let rows = self.rows_of(place, self.is_proven(told));
        rows.iter().enumerate().any(|(outcome, row)| {
            !left.is_within(row) && left.iter().any(|group| self.gives(place, group, outcome as u8))
        })
    }

    pub(super) fn gives(&self, place: usize, group: usize, outcome: u8) -> bool {
        let test = self.problem.tests.get(place);
        test.and_then(|test| test.gives.get(group)).is_some_and(|gives| gives >> outcome & 1 == 1)
    }

    /// Whether a question about metal can part kinds that are left, with whatever the others may say.
    fn metal_matters(&self, place: usize, told: &Told, left: &Mask<N>) -> bool {
        let present = self.kinds_present(left);
        if present.count_ones() < 2 {
            return false;
        }
        let mut open = Vec::new();
        for (other, test) in self.problem.tests.iter().enumerate() {
            if let Role::Metal(question) = test.role
                && told.is_open(other)
                && other != place
            {
                open.push(question);
            }
        }
        let Some(Role::Metal(own)) = self.problem.tests.get(place).map(|test| test.role) else {
            return false;
        };
        let digits = self.digits(told);
        let found = metal::is_found(self.problem.metal);
        (0..16).filter(|kind| present >> kind & 1 == 1).any(|kind| {
            let Some(outcome) = metal::outcome(own, kind, found) else { return false };
            // Alone, and together with all that is open: no answer of the others lies between.
            [false, true].into_iter().any(|with_others| {
                let mut before = digits;
                for question in open.iter().filter(|_| with_others) {
                    if let (Some(digit), Some(told)) =
                        (before.get_mut(*question), metal::outcome(*question, kind, found))
                    {
                        *digit = told + 1;
                    }
                }
                let mut after = before;
                if let Some(digit) = after.get_mut(own) {
                    *digit = outcome + 1;
                }
                let reads = self.problem.metal_reads;
                metal::left(before, reads) & present != metal::left(after, reads) & present
            })
        })
    }

    fn kinds_present(&self, left: &Mask<N>) -> u16 {
        let kinds = self.kinds.iter().enumerate();
        kinds.filter(|(_, row)| row.meets(left)).fold(0, |mask, (kind, _)| mask | 1 << kind)
    }

    fn digits(&self, told: &Told) -> metal::Digits {
        let mut digits = self.problem.metal;
        for (place, test) in self.problem.tests.iter().enumerate() {
            if let (Role::Metal(question), Some(outcome)) = (test.role, told.outcome(place))
                && outcome != CANT_TELL
                && let Some(digit) = digits.get_mut(question)
            {
                *digit = outcome + 1;
            }
        }
        digits
    }

    /// How likely each group is after one more outcome.
    pub(super) fn weights_after(
        &self,
        weights: &[f64],
        place: usize,
        outcome: u8,
        left: &Mask<N>,
    ) -> Vec<f64> {
        let Some(test) = self.problem.tests.get(place) else { return weights.to_vec() };
        let after = |(group, weight): (usize, &f64)| {
            if left.has(group) { weight * test.chance(group, outcome) } else { 0.0 }
        };
        weights.iter().enumerate().map(after).collect()
    }
}
