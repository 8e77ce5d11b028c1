//! The least that it can take on average to the final verdict, by dynamic programming over all that may
//! be asked and answered; and what any other order takes.

use rustc_hash::FxHashMap;

use super::ends::can_improve;
use super::mask::Mask;
use super::problem::{CANT_TELL, Role, Test, Told};
use super::view::View;

/// Whoever asks gets this for a state: which step next, if any.
pub(crate) type Policy<'a, const N: usize> =
    dyn FnMut(&View<'_, N>, &Told, &[f64], &Mask<N>) -> Option<usize> + 'a;

/// A state of a search; two ways to the same one are searched once.
#[derive(PartialEq, Eq, Hash)]
struct State<const N: usize> {
    taken: Vec<u8>,
    left: Mask<N>,
    /// By group, in parts of the whole.
    shares: Vec<u64>,
}

/// How finely states are told apart by how likely their groups are.
const SHARES: f64 = 1e12;

/// A search of a whole problem, within a budget of states.
pub(crate) struct Search<'v, 'p, const N: usize> {
    view: &'v View<'p, N>,
    known: FxHashMap<State<N>, (f64, Option<usize>)>,
    /// The steps whose outcome still counts once it has left what it leaves.
    counts: Vec<bool>,
    left: usize,
    soft: bool,
}

/// The step that takes the least time on average; nothing where the search needs more than so many states.
///
/// Soft steps make it several times as large. They are left out first, and searched with where even the least of
/// them takes less than all that is left to ask.
pub(super) fn search<const N: usize>(
    view: &View<'_, N>,
    states: usize,
    told: &Told,
    weights: &[f64],
    left: &Mask<N>,
) -> Option<usize> {
    let (seconds, place) = Search::within(view, states).best(told, weights, left)?;
    let soft = view.problem.tests.iter().enumerate().any(|(place, test)| {
        test.role == Role::Soft && test.seconds < seconds && view.is_useful(place, told, left)
    });
    let with =
        soft.then(|| Search::within(view, states).with_soft_steps().best(told, weights, left));
    with.flatten().map_or(place, |(_, place)| place)
}

/// One way in which a step can end: what it is likely to be, and what it leaves.
pub(crate) struct Branch<const N: usize> {
    pub(crate) share: f64,
    pub(crate) told: Told,
    pub(crate) weights: Vec<f64>,
    pub(crate) left: Mask<N>,
}

/// The ways in which a step can end for groups as likely as this.
pub(super) fn branches<const N: usize>(
    view: &View<'_, N>,
    place: usize,
    told: &Told,
    weights: &[f64],
) -> Vec<Branch<N>> {
    let Some(test) = view.problem.tests.get(place) else { return Vec::new() };
    let total: f64 = weights.iter().sum();
    let mut branches = Vec::new();
    let mut told_it = 0.0;
    for outcome in 0..test.outcomes {
        let told = told.and(place, outcome);
        let left = view.possible(&told);
        let weights = view.weights_after(weights, place, outcome, &left);
        let mass: f64 = weights.iter().sum();
        if mass > 0.0 {
            told_it += mass;
            branches.push(Branch {
                share: (1.0 - test.cant_tell) * mass / total,
                told,
                weights,
                left,
            });
        }
    }
    // Those who cannot tell, and those who have nothing to tell.
    let idle: Vec<f64> = weights
        .iter()
        .enumerate()
        .map(|(group, weight)| {
            let can: f64 = (0..test.outcomes).map(|outcome| test.chance(group, outcome)).sum();
            weight * (test.cant_tell + (1.0 - test.cant_tell) * (1.0 - can).max(0.0))
        })
        .collect();
    let mass: f64 = idle.iter().sum();
    if mass > 1e-12 * total.max(told_it) {
        let told = told.and(place, CANT_TELL);
        let left = view.possible(&told);
        branches.push(Branch { share: mass / total, told, weights: idle, left });
    }
    branches
}

impl<'v, 'p, const N: usize> Search<'v, 'p, N> {
    /// A search that gives up after so many states, without soft steps.
    pub(crate) fn within(view: &'v View<'p, N>, budget: usize) -> Self {
        let tests = &view.problem.tests;
        let is_first = |place: usize| {
            tests.iter().any(|test| test.after.is_some_and(|(first, _)| first == place))
        };
        let says_on = |(place, test): (usize, &Test)| {
            !matches!(test.role, Role::Alone | Role::Soft) || is_first(place)
        };
        let counts = tests.iter().enumerate().map(says_on).collect();
        Self { view, known: FxHashMap::default(), counts, left: budget, soft: false }
    }

    /// The same with soft steps.
    pub(crate) fn with_soft_steps(self) -> Self {
        Self { soft: true, ..self }
    }

    /// The least expected seconds from a state, and the step to take; nothing where the budget ran out.
    pub(crate) fn best(
        &mut self,
        told: &Told,
        weights: &[f64],
        left: &Mask<N>,
    ) -> Option<(f64, Option<usize>)> {
        let state = self.state(told, weights, left);
        if let Some(known) = self.known.get(&state) {
            return Some(*known);
        }
        self.left = self.left.checked_sub(1)?;
        let view = self.view;
        let treat_as = view.treat_as(told, left);
        let mut best = (0.0, None);
        if weights.iter().sum::<f64>() > 0.0 && can_improve(view, told, left, treat_as) {
            best = (f64::INFINITY, None);
            for (place, test) in view.problem.tests.iter().enumerate() {
                if test.role == Role::Soft && !self.soft || !view.is_useful(place, told, left) {
                    continue;
                }
                let mut cost = test.seconds;
                for branch in branches(view, place, told, weights) {
                    if cost >= best.0 {
                        break;
                    }
                    cost +=
                        branch.share * self.best(&branch.told, &branch.weights, &branch.left)?.0;
                }
                if cost < best.0 {
                    best = (cost, Some(place));
                }
            }
            if best.1.is_none() {
                best.0 = 0.0;
            }
        }
        self.known.insert(state, best);
        Some(best)
    }

    /// What a state comes to: the steps taken, what of their outcomes still counts, and how likely each group is
    /// among the others.
    fn state(&self, told: &Told, weights: &[f64], left: &Mask<N>) -> State<N> {
        let total: f64 = weights.iter().sum();
        let share = |weight: &f64| (weight / total * SHARES) as u64;
        let taken = told.0.iter().zip(&self.counts);
        State {
            taken: taken
                .map(|(told, counts)| if *counts { *told } else { (*told).min(1) })
                .collect(),
            left: *left,
            shares: weights.iter().map(share).collect(),
        }
    }
}

/// The expected seconds to the final verdict where a policy says what to ask.
pub(crate) fn expected<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    weights: &[f64],
    policy: &mut Policy<'_, N>,
) -> f64 {
    let left = view.possible(told);
    let treat_as = view.treat_as(told, &left);
    if weights.iter().sum::<f64>() <= 0.0 || !can_improve(view, told, &left, treat_as) {
        return 0.0;
    }
    let Some(place) = policy(view, told, weights, &left) else { return 0.0 };
    let seconds = view.problem.tests.get(place).map_or(0.0, |test| test.seconds);
    branches(view, place, told, weights)
        .iter()
        .map(|branch| branch.share * expected(view, &branch.told, &branch.weights, policy))
        .sum::<f64>()
        + seconds
}
