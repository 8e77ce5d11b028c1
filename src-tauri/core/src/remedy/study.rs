//! What each modification would do to a unit, before anything is done.

use super::modification::Modification;
use super::refusal::Refusal;
use super::search::{Stack, Within, shortest};
use super::setup::Setup;
use super::standing::{Bench, Standing};
use crate::arrangement::all;

/// Where a unit stands after a modification.
#[derive(Clone, Debug, PartialEq)]
pub struct Offered {
    /// Over everything that the unit may be.
    pub over: Standing,
    /// The arrangement that is the worst of it now, after the modification; nothing where that is no other standing.
    pub worst: Option<Standing>,
    /// Whether it makes anything worse.
    pub is_worse: bool,
    /// Whether it changes the class, the margin, the current with no fault, or what trips.
    pub changes: bool,
}

/// A modification and what it comes to, or why it is not offered.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// The modification.
    pub modification: Modification,
    /// What it comes to.
    pub result: Result<Offered, Refusal>,
}

/// Every modification of a unit, and the shortest stacks that leave it two faults from live.
#[derive(Clone, Debug, PartialEq)]
pub struct Study {
    /// Where it stands now.
    pub before: Standing,
    /// Every modification.
    pub offers: Vec<Offer>,
    /// The shortest stack of all, and the shortest of those done to the unit alone.
    pub shortest: Option<Stack>,
    /// See [`Study::shortest`].
    pub in_unit: Option<Stack>,
}

/// Works all of it out.
pub fn study(setup: &Setup, bench: &mut Bench) -> Study {
    let before = bench.stand(setup);
    let offers = offers(setup, &before, bench);
    let shortest_of = |within, bench: &mut Bench| shortest(setup, within, bench);
    Study {
        offers,
        shortest: shortest_of(Within::Everything, bench),
        in_unit: shortest_of(Within::Unit, bench),
        before,
    }
}

/// Every modification after what a setup is.
pub fn offers(setup: &Setup, before: &Standing, bench: &mut Bench) -> Vec<Offer> {
    let offer = |modification: &Modification| Offer {
        modification: *modification,
        result: setup
            .after(*modification)
            .map(|after| offered(setup, before, *modification, &after, bench)),
    };
    Modification::ALL.iter().map(offer).collect()
}

fn offered(
    setup: &Setup,
    before: &Standing,
    modification: Modification,
    after: &Setup,
    bench: &mut Bench,
) -> Offered {
    let over = bench.stand(after);
    let alone = before.of.and_then(|id| all().get(usize::from(id.0))).map(|arrangement| {
        let mut alone = setup.clone();
        alone.set = Setup::one(arrangement, setup.supply, setup.parts).set;
        // What there is nothing to do for stays as it is.
        alone.after(modification).unwrap_or(alone)
    });
    let worst = alone.map(|alone| bench.stand(&alone)).filter(|worst| worst != &over);
    let is_same = over.class == before.class
        && over.worst.margin == before.worst.margin
        && over.as_found_ma == before.as_found_ma
        && over.worst.milliamperes == before.worst.milliamperes
        && over.remaining == before.remaining
        && over.cut == before.cut;
    Offered {
        is_worse: over.brief().is_worse_than(&before.brief()),
        changes: !is_same,
        over,
        worst,
    }
}
