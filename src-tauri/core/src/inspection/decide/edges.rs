//! Equivalence Class Edge Cutting: ask what parts most of the likelihood of one final verdict from that
//! of others for each second (Golovin, Krause and Ray, "Near-optimal Bayesian active learning with noisy
//! observations", NeurIPS 2010).
//!
//! The classes of equivalence are what treat as would come to if all that is open were answered: two
//! units that end alike need not be told apart.

use std::collections::BTreeMap;

use super::ends::{at_best, certificate, ends, together};
use super::exact::branches;
use super::foreseen::Outlook;
use super::mask::Mask;
use super::problem::{CANT_TELL, OUTCOMES, Problem, Role, Test, Told};
use super::view::{GOOD, View};
use crate::hazard::Class;

/// Likelihood by final verdict.
type Shares = [f64; Class::ALL.len()];

/// What a group counts at least, so that no step looks idle for want of a prior.
const FLOOR: f64 = 1e-9;

/// How many of the likeliest groups with a better end are asked what they need.
const LIKELIEST: usize = 24;
/// What a step counts that none of them needs, beside 1 for one that all need.
const UNNEEDED: f64 = 0.02;

/// Steps that only say something together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Bundle {
    /// What can be touched.
    Metal,
    /// The readings, with the path that makes an open one count.
    Readings,
}

/// Adds a likelihood to the shares of each outcome whose bit is set.
fn add_to(shares: &mut [Shares; OUTCOMES], mut outcomes: u16, end: Class, weight: f64) {
    while outcomes != 0 {
        let of_outcome = shares.get_mut(outcomes.trailing_zeros() as usize);
        if let Some(share) = of_outcome.and_then(|shares| shares.get_mut(end as usize)) {
            *share += weight;
        }
        outcomes &= outcomes - 1;
    }
}

/// Likelihood of those who end so × likelihood of others that end otherwise.
fn product(having: &Shares, removed: &Shares) -> f64 {
    let total: f64 = removed.iter().sum();
    having.iter().zip(removed).map(|(share, same)| share * (total - same)).sum()
}

struct Edges<'v, 'p, const N: usize> {
    view: &'v View<'p, N>,
    told: &'v Told,
    left: &'v Mask<N>,
    weights: Vec<f64>,
    /// The final verdict of each group.
    ends: Vec<Class>,
}

/// The step that parts the most for each second; the bank's order breaks ties. The outlook is that of this state.
pub(crate) fn choose<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    weights: &[f64],
    left: &Mask<N>,
    outlook: &mut Outlook,
) -> Option<usize> {
    let edges = Edges::of(view, told, weights, left, outlook);
    let tests = &view.problem.tests;
    let needed = edges.shares_that_need(outlook);
    let mut best: Option<(f64, usize)> = None;
    let mut take = |score: f64, place: usize| {
        if score > 0.0 && best.is_none_or(|(most, _)| score > most * (1.0 + 1e-9)) {
            best = Some((score, place));
        }
    };
    let useful: Vec<usize> =
        (0..tests.len()).filter(|place| view.is_useful(*place, told, left)).collect();
    let alone: BTreeMap<usize, f64> =
        useful.iter().map(|place| (*place, edges.parted(*place))).collect();
    for (place, parted) in &alone {
        take(parted / edges.seconds(*place) * favour(&needed, &[*place]), *place);
    }
    for bundle in [Bundle::Metal, Bundle::Readings] {
        let open: Vec<usize> = (0..tests.len())
            .filter(|place| told.is_open(*place) && is_of(view.problem, *place, bundle))
            .collect();
        let first =
            open.iter().filter_map(|place| alone.get(place).map(|parted| (*place, *parted)));
        let first = first.reduce(|best, next| {
            let better = next.1 / edges.seconds(next.0) > best.1 / edges.seconds(best.0);
            if better { next } else { best }
        });
        if let Some((first, _)) = first {
            take(edges.parted_together(&open) * favour(&needed, &open), first);
        }
    }
    best.map(|(_, place)| place).or_else(|| edges.needed(&useful))
}

/// What is needed counts more than what only happens to part something.
fn favour(needed: &[f64], places: &[usize]) -> f64 {
    let share = places.iter().filter_map(|place| needed.get(*place)).copied().fold(0.0, f64::max);
    (UNNEEDED + share).powi(2)
}

fn is_of(problem: &Problem, place: usize, bundle: Bundle) -> bool {
    problem.tests.get(place).is_some_and(|test| match bundle {
        Bundle::Metal => matches!(test.role, Role::Metal(_)),
        Bundle::Readings => matches!(test.role, Role::Reading | Role::PathOn | Role::PathOff),
    })
}

impl<'v, 'p, const N: usize> Edges<'v, 'p, N> {
    fn of(
        view: &'v View<'p, N>,
        told: &'v Told,
        weights: &[f64],
        left: &'v Mask<N>,
        outlook: &mut Outlook,
    ) -> Self {
        let treat_as = view.treat_as(told, left);
        let total: f64 = weights.iter().sum();
        let floor = FLOOR * if total > 0.0 { total } else { 1.0 };
        let ends = outlook.ends.get_or_insert_with(|| ends(view, told, left, treat_as)).clone();
        let weigh = |(group, weight): (usize, &f64)| {
            if left.has(group) { weight.max(floor) } else { 0.0 }
        };
        Self { view, told, left, weights: weights.iter().enumerate().map(weigh).collect(), ends }
    }

    /// The groups with a better end.
    fn hopeful(&self) -> impl Iterator<Item = usize> {
        let treat_as = self.view.treat_as(self.told, self.left);
        let better = move |group: &usize| {
            self.ends.get(*group).is_some_and(|end| treat_as.is_worse_than(*end))
        };
        self.left.iter().filter(better)
    }

    /// For each step the share of the likeliest groups with a better end that cannot do without it.
    fn shares_that_need(&self, outlook: &mut Outlook) -> Vec<f64> {
        let weight = |group: usize| self.weights.get(group).copied().unwrap_or_default();
        let mut likeliest: Vec<usize> = self.hopeful().collect();
        likeliest.sort_by(|a, b| weight(*b).total_cmp(&weight(*a)).then(a.cmp(b)));
        likeliest.truncate(LIKELIEST);
        let open: Vec<usize> =
            (0..self.view.problem.tests.len()).filter(|place| self.told.is_open(*place)).collect();
        let total: f64 = likeliest.iter().map(|group| weight(*group)).sum();
        let mut shares = vec![0.0; self.view.problem.tests.len()];
        for group in likeliest {
            let work_out = || certificate(self.view, group, self.told, &open);
            for place in outlook.certificates.entry(group).or_insert_with(work_out) {
                if let Some(share) = shares.get_mut(*place) {
                    *share += weight(group) / total;
                }
            }
        }
        shares
    }

    /// Seconds for an answer, with those who cannot tell.
    fn seconds(&self, place: usize) -> f64 {
        let test = self.view.problem.tests.get(place);
        test.map_or(f64::INFINITY, |test| test.seconds / (1.0 - test.cant_tell).max(1e-6))
    }

    fn count(&self, groups: impl Iterator<Item = (usize, f64)>) -> Shares {
        let mut shares = Shares::default();
        for (group, part) in groups {
            let (weight, end) = (self.weights.get(group), self.ends.get(group));
            if let (Some(weight), Some(end)) = (weight, end)
                && let Some(share) = shares.get_mut(*end as usize)
            {
                *share += weight * part;
            }
        }
        shares
    }

    /// Likelihood of those who end so × likelihood of others that the outcome removes.
    fn cut(&self, having: &Shares, after: &Told) -> f64 {
        let stay = self.view.possible(after);
        let removed = self.left.iter().filter(|group| !stay.has(*group));
        let removed = self.count(removed.map(|group| (group, 1.0)));
        product(having, &removed)
    }

    fn parted(&self, place: usize) -> f64 {
        let Some(test) = self.view.problem.tests.get(place) else { return 0.0 };
        match test.role {
            Role::Value(bit) => return self.parted_by_value(bit),
            Role::Alone => return self.parted_alone(test),
            Role::Soft => return self.parted_softly(test),
            _ => {}
        }
        let outcomes = 0..test.outcomes;
        let parted = outcomes.map(|outcome| {
            let having = self.left.iter().map(|group| (group, test.chance(group, outcome)));
            let having = self.count(having.filter(|(_, chance)| *chance > 0.0));
            self.cut(&having, &self.told.and(place, outcome))
        });
        parted.sum()
    }

    /// The same for answers that stand by themselves, in one pass over the groups.
    fn parted_alone(&self, test: &Test) -> f64 {
        let mut having = [Shares::default(); OUTCOMES];
        let mut removed = [Shares::default(); OUTCOMES];
        let outcomes = (1u16 << test.outcomes) - 1;
        let says = test.may.iter().zip(&test.gives);
        for ((weight, end), (may, gives)) in self.weights.iter().zip(&self.ends).zip(says) {
            if *weight == 0.0 {
                continue;
            }
            let part = weight / f64::from(gives.count_ones().max(1));
            add_to(&mut having, gives & outcomes, *end, part);
            add_to(&mut removed, !may & outcomes, *end, *weight);
        }
        having.iter().zip(&removed).map(|(having, removed)| product(having, removed)).sum()
    }

    /// The same for a step that rules nothing out: an outcome cuts as much of a group as it is less likely there
    /// than where it is likeliest, so that one as likely everywhere cuts nothing (edge discounting after Chen,
    /// Hassani and Krause, "Near-optimal Bayesian active learning with correlated and noisy tests", 2017, from
    /// memory).
    fn parted_softly(&self, test: &Test) -> f64 {
        let outcomes = (0..test.outcomes).map(|outcome| {
            let chance = |group: usize| test.chance(group, outcome);
            let most = self.left.iter().map(chance).fold(0.0, f64::max);
            if most <= 0.0 {
                return 0.0;
            }
            let having = self.count(self.left.iter().map(|group| (group, chance(group))));
            let less = self.left.iter().map(|group| (group, 1.0 - chance(group) / most));
            product(&having, &self.count(less))
        });
        outcomes.sum()
    }

    /// A value parts a group that turns out well from the same that does not; half and half (assumption).
    fn parted_by_value(&self, bit: u8) -> f64 {
        let of_part = |group: &usize| {
            let group = self.view.problem.groups.get(*group);
            group.is_some_and(|group| group.parts & bit != 0 && group.class != group.if_read)
        };
        let halves = self.left.iter().filter(of_part).filter_map(|group| self.weights.get(group));
        halves.map(|weight| weight * weight / 4.0).sum()
    }

    /// What steps part if all are taken, for each second of all of them.
    fn parted_together(&self, open: &[usize]) -> f64 {
        let ways = together(self.view, self.told, open, self.left.iter());
        let cut = |(after, groups): &(Told, Vec<usize>)| {
            let having = self.count(groups.iter().map(|group| (*group, 1.0)));
            self.cut(&having, after)
        };
        let parted: f64 = ways.iter().map(cut).sum();
        // What nobody has an answer to costs nothing.
        let asked = |place: &&usize| ways.iter().any(|(after, _)| !after.is_open(**place));
        let seconds: f64 = open.iter().filter(asked).map(|place| self.seconds(*place)).sum();
        if seconds > 0.0 { parted / seconds } else { 0.0 }
    }

    /// Where nothing parts anything by itself: the soonest step that the likeliest way to a better verdict
    /// cannot do without, else the first that may be of use.
    fn needed(&self, useful: &[usize]) -> Option<usize> {
        let likeliest = self.hopeful().reduce(|best, next| {
            if self.weights.get(next) > self.weights.get(best) { next } else { best }
        })?;
        let end = self.ends.get(likeliest)?;
        let mut needed: Vec<usize> = useful
            .iter()
            .copied()
            .filter(|place| {
                let without = self.told.and(*place, CANT_TELL);
                at_best(self.view, likeliest, &without).is_worse_than(*end)
                    || self.betters(*place, likeliest)
            })
            .collect();
        needed.sort_by(|a, b| self.seconds(*a).total_cmp(&self.seconds(*b)));
        needed.first().or(useful.first()).copied()
    }

    fn betters(&self, place: usize, group: usize) -> bool {
        let Some(Role::Value(_)) = self.view.problem.tests.get(place).map(|test| test.role) else {
            return false;
        };
        let after = self.told.and(place, GOOD);
        branches(self.view, place, self.told, &self.weights)
            .iter()
            .any(|branch| branch.told == after)
            && self.view.class(group, self.view.parts(&after, false))
                != self.view.class(group, self.view.parts(self.told, false))
    }
}
