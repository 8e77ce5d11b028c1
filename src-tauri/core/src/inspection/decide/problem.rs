//! The question of what to ask next, cut down to what bears on it: groups of arrangements that are alike
//! in class and in every answer that may still be given, and the steps that may still be taken.

use super::super::measured::MetalReads;
use super::Step;
use super::metal::{Digits, Kind};
use crate::hazard::Class;

/// The outcome that an answer of "can't tell" counts as.
pub(crate) const CANT_TELL: u8 = 15;
/// The most outcomes that a step can have besides "can't tell".
pub(crate) const OUTCOMES: usize = 13;

/// Arrangements that are alike in all that matters from here on.
#[derive(Clone, Debug)]
pub(crate) struct Group {
    /// How likely it is, beside the others; need not sum to 1.
    pub(crate) weight: f64,
    /// Its worst class as things stand.
    pub(crate) class: Class,
    /// Its worst class once its parts are read, at their best.
    pub(crate) if_read: Class,
    /// The values that it takes to get there, one bit each.
    pub(crate) parts: u8,
    /// What of it can be touched.
    pub(crate) kind: Kind,
    /// A path from pin to pin that comes and goes with the switch can be true of it.
    pub(crate) has_path: bool,
}

/// What is joined to what in a step's outcomes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Role {
    /// Its answers stand by themselves.
    Alone,
    /// One of the four questions about metal, read together.
    Metal(usize),
    /// A value, by its bit: outcomes are good and bad.
    Value(u8),
    /// A meter reading: outcomes are wire, load and open.
    Reading,
    /// Pin to pin with the switch on, and off: together they prove the path.
    PathOn,
    /// See `PathOn`.
    PathOff,
    /// It rules nothing out, and says what is likely.
    Soft,
}

/// A step that may be taken.
#[derive(Clone, Debug)]
pub(crate) struct Test {
    /// Which.
    pub(crate) step: Step,
    /// What it takes, s, with what has to be asked twice because it is answered wrongly.
    pub(crate) seconds: f64,
    /// Share of inspectors who cannot tell.
    pub(crate) cant_tell: f64,
    /// How many outcomes it has.
    pub(crate) outcomes: u8,
    /// How its outcomes are read.
    pub(crate) role: Role,
    /// Another step that comes before it, with the outcomes after which it may be taken.
    pub(crate) after: Option<(usize, u16)>,
    /// For each group, the outcomes under which it stays.
    pub(crate) may: Vec<u16>,
    /// The same once the path from pin to pin is proven; empty for all but readings.
    pub(crate) may_proven: Vec<u16>,
    /// For each group, the outcomes that it gives, each as likely; none where the step is idle.
    pub(crate) gives: Vec<u16>,
    /// For each group, how likely each outcome is, where they are not alike; empty for all but soft steps.
    pub(crate) chances: Vec<&'static [f64]>,
}

impl Test {
    /// How likely an outcome is for a group that is asked and can tell.
    pub(super) fn chance(&self, group: usize, outcome: u8) -> f64 {
        if let Some(chances) = self.chances.get(group) {
            return chances.get(usize::from(outcome)).copied().unwrap_or_default();
        }
        let gives = self.gives.get(group).copied().unwrap_or_default();
        if gives >> outcome & 1 == 1 { 1.0 / f64::from(gives.count_ones()) } else { 0.0 }
    }
}

/// What is still possible and what may still be asked.
#[derive(Clone, Debug)]
pub(crate) struct Problem {
    /// What is still possible.
    pub(crate) groups: Vec<Group>,
    /// What may still be asked, in the order of the bank.
    pub(crate) tests: Vec<Test>,
    /// The answers about metal that are given already.
    pub(crate) metal: Digits,
    /// Pin to pin proves the path already.
    pub(crate) proven: bool,
    /// A look has ruled a motor out, so that readings can prove a path.
    pub(crate) no_motor: bool,
    /// What the readings on the metal say.
    pub(crate) metal_reads: MetalReads,
}

/// The outcomes of the steps taken so far, each plus 1; 0 is not taken.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub(crate) struct Told(pub(super) Vec<u8>);

impl Told {
    /// Nothing yet.
    pub(crate) fn nothing(problem: &Problem) -> Self {
        Self(vec![0; problem.tests.len()])
    }

    /// The outcome of a step; nothing where it was not taken.
    pub(super) fn outcome(&self, test: usize) -> Option<u8> {
        self.0.get(test).and_then(|told| told.checked_sub(1))
    }

    pub(super) fn is_open(&self, test: usize) -> bool {
        self.0.get(test) == Some(&0)
    }

    /// The same with one more.
    pub(crate) fn and(&self, test: usize, outcome: u8) -> Self {
        let mut more = self.clone();
        more.set(test, outcome);
        more
    }

    pub(super) fn set(&mut self, test: usize, outcome: u8) {
        if let Some(told) = self.0.get_mut(test) {
            *told = outcome + 1;
        }
    }
}

impl Problem {
    /// Some of its groups and steps, as a problem of its own.
    pub(crate) fn part(&self, groups: &[usize], tests: &[usize]) -> Self {
        let of = |list: &[u16]| -> Vec<u16> {
            groups.iter().filter_map(|group| list.get(*group).copied()).collect()
        };
        let narrowed = |test: &Test| Test {
            may: of(&test.may),
            may_proven: of(&test.may_proven),
            gives: of(&test.gives),
            chances: groups.iter().filter_map(|group| test.chances.get(*group).copied()).collect(),
            after: test.after.and_then(|(first, outcomes)| {
                tests.iter().position(|kept| *kept == first).map(|place| (place, outcomes))
            }),
            ..test.clone()
        };
        Self {
            groups: groups.iter().filter_map(|group| self.groups.get(*group).cloned()).collect(),
            tests: tests.iter().filter_map(|test| self.tests.get(*test)).map(narrowed).collect(),
            ..self.clone()
        }
    }
}
