//! Other orders of asking, to measure the engine against. All stop and skip by the same rules.

use super::exact::branches;
use super::mask::Mask;
use super::problem::{Role, Told};
use super::view::View;
use crate::hazard::Class;

/// In which order to ask.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Order {
    /// The engine's own.
    Engine,
    /// Edge cutting alone, without a search of small problems.
    EdgesOnly,
    /// The order of the bank.
    Bank,
    /// The most expected information on the class, whatever it takes.
    Information,
    /// The same for each second.
    InformationPerSecond,
    /// Any order, by a seed.
    Random(u64),
}

/// The first useful step in the order of the bank.
pub(super) fn bank<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    left: &Mask<N>,
) -> Option<usize> {
    useful(view, told, left).into_iter().next()
}

/// A useful step drawn by a seed.
pub(super) fn random<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    left: &Mask<N>,
    seed: u64,
) -> Option<usize> {
    let useful = useful(view, told, left);
    let drawn = mixed(seed) % useful.len().max(1) as u64;
    useful.get(drawn as usize).copied()
}

/// The finaliser of `SplitMix64` (Steele, Lea and Flood 2014): one draw from one seed.
fn mixed(seed: u64) -> u64 {
    let seed = seed.wrapping_add(0x9e37_79b9_7f4a_7c15);
    let seed = (seed ^ seed >> 30).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    let seed = (seed ^ seed >> 27).wrapping_mul(0x94d0_49bb_1331_11eb);
    seed ^ seed >> 31
}

/// The step after which the least is expected to be unknown of the class.
pub(super) fn information<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    weights: &[f64],
    left: &Mask<N>,
    per_second: bool,
) -> Option<usize> {
    let before = entropy(view, told, weights);
    let mut best: Option<(f64, usize)> = None;
    for place in useful(view, told, left) {
        let after: f64 = branches(view, place, told, weights)
            .iter()
            .map(|branch| branch.share * entropy(view, &branch.told, &branch.weights))
            .sum();
        let seconds = view.problem.tests.get(place).map_or(1.0, |test| test.seconds);
        let gain = (before - after) / if per_second { seconds } else { 1.0 };
        if best.is_none_or(|(most, _)| gain > most + 1e-12) {
            best = Some((gain, place));
        }
    }
    best.map(|(_, place)| place)
}

/// Shannon's entropy of the class, bits.
fn entropy<const N: usize>(view: &View<'_, N>, told: &Told, weights: &[f64]) -> f64 {
    let good = view.parts(told, false);
    let mut shares = [0.0; Class::ALL.len()];
    for (group, weight) in weights.iter().enumerate() {
        if let Some(share) = shares.get_mut(view.class(group, good) as usize) {
            *share += weight;
        }
    }
    let total: f64 = shares.iter().sum();
    let bits = |share: &f64| {
        let share = share / total;
        if share > 0.0 { -share * share.log2() } else { 0.0 }
    };
    if total > 0.0 { shares.iter().map(bits).sum() } else { 0.0 }
}

/// What rules nothing out is left out here: these orders would only lose by it.
fn useful<const N: usize>(view: &View<'_, N>, told: &Told, left: &Mask<N>) -> Vec<usize> {
    let tests = view.problem.tests.iter().enumerate();
    let tests = tests.filter(|(_, test)| test.role != Role::Soft);
    tests.map(|(place, _)| place).filter(|place| view.is_useful(*place, told, left)).collect()
}
