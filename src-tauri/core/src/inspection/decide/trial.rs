//! What an order of asking takes on average, against the least that any could: for measuring the engine.

use super::exact::{Search, expected};
use super::foreseen::Outlook;
use super::mask::Mask;
use super::metal;
use super::orders::Order;
use super::problem::{Group, Problem, Role, Test, Told};
use super::view::View;
use super::{Beliefs, Step, Work, build, choose_at, in_room};
use crate::hazard::Class;
use crate::inspection::bank::Question;
use crate::inspection::conflict::Possible;
use crate::inspection::findings::Findings;
use crate::inspection::judge::Judge;
use crate::inspection::measured::MetalReads;

/// A problem of what to ask, taken out of an inspection or made by hand.
#[derive(Clone, Debug)]
pub struct Trial(Problem);

/// A step made by hand.
#[derive(Clone, Debug)]
pub struct HandStep {
    /// What it takes, s.
    pub seconds: f64,
    /// Share of those who cannot tell.
    pub cant_tell: f64,
    /// For each group, the outcomes that are true of it, one bit each; each as likely.
    pub outcomes: Vec<u16>,
}

impl Trial {
    /// What is possible and may be asked after findings.
    pub fn of(findings: &Findings, judge: &mut Judge, beliefs: &Beliefs) -> Self {
        judge.turn_to(findings);
        let possible = Possible::after(findings);
        Self(build::problem(findings, &possible.considered, judge, beliefs))
    }

    /// Groups by weight and class, and steps whose outcomes stand by themselves.
    pub fn by_hand(groups: &[(f64, Class)], steps: &[HandStep]) -> Self {
        let group = |&(weight, class): &(f64, Class)| Group {
            weight,
            class,
            if_read: class,
            parts: 0,
            kind: metal::NO_LINE,
            has_path: true,
        };
        let test = |(place, step): (usize, &HandStep)| Test {
            step: Step::Ask(Question::ALL.get(place).copied().unwrap_or(Question::Plug)),
            seconds: step.seconds,
            cant_tell: step.cant_tell,
            outcomes: step.outcomes.iter().map(|o| u16::BITS - o.leading_zeros()).max().unwrap_or(0)
                as u8,
            role: Role::Alone,
            after: None,
            may: step.outcomes.clone(),
            may_proven: Vec::new(),
            gives: step.outcomes.clone(),
            chances: Vec::new(),
        };
        Self(Problem {
            groups: groups.iter().map(group).collect(),
            tests: steps.iter().enumerate().map(test).collect(),
            metal: [0; 4],
            proven: false,
            no_motor: false,
            metal_reads: MetalReads::Nothing,
        })
    }

    /// How many groups and steps it has.
    pub fn size(&self) -> (usize, usize) {
        (self.0.groups.len(), self.0.tests.len())
    }

    /// How likely each group is.
    pub fn weights(&self) -> Vec<f64> {
        self.0.groups.iter().map(|group| group.weight).collect()
    }

    /// Some of its groups and steps.
    #[must_use]
    pub fn part(&self, groups: &[usize], steps: &[usize]) -> Self {
        Self(self.0.part(groups, steps))
    }

    /// The same where everybody can tell.
    #[must_use]
    pub fn without_cant_tell(mut self) -> Self {
        for test in &mut self.0.tests {
            test.cant_tell = 0.0;
        }
        self
    }

    /// The least expected seconds, by dynamic programming; nothing where it has more than `states` states.
    pub fn optimum(&self, states: usize) -> Option<f64> {
        in_room(&self.0, &mut Optimum(states))
    }

    /// The expected seconds to the final verdict in an order of asking.
    pub fn seconds(&self, order: Order) -> f64 {
        in_room(&self.0, &mut Expected(order)).unwrap_or_default()
    }
}

struct Optimum(usize);

impl Work for Optimum {
    type Out = f64;

    fn on<const N: usize>(&mut self, view: &View<'_, N>) -> Option<f64> {
        let (told, weights, left) = view.start();
        Search::within(view, self.0)
            .with_soft_steps()
            .best(&told, &weights, &left)
            .map(|(seconds, _)| seconds)
    }
}

struct Expected(Order);

impl Work for Expected {
    type Out = f64;

    fn on<const N: usize>(&mut self, view: &View<'_, N>) -> Option<f64> {
        let (told, weights, _) = view.start();
        let order = self.0;
        let mut policy = |view: &View<'_, N>, told: &Told, weights: &[f64], left: &Mask<N>| {
            choose_at(view, told, weights, left, order, &mut Outlook::default())
        };
        Some(expected(view, &told, &weights, &mut policy))
    }
}
