//! The shortest stack of modifications that leaves a unit two faults from live.
//!
//! Breadth first over what the unit may be after each step. What is still to come depends on that alone, so of all
//! ways to the same place only the best is kept: fewest steps that make anything worse, then minutes, then parts.

use rustc_hash::FxHashMap;

use super::cost::cost_of;
use super::modification::Modification;
use super::setup::Setup;
use super::standing::{Bench, Brief};

/// How far a search goes: every unit of the table gets there in fewer.
const MOST_STEPS: usize = 5;

/// What a search may do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Within {
    /// Only what is done to the unit: it stays so wherever it is plugged in.
    Unit,
    /// Also what is done to what it is plugged into.
    Everything,
}

/// A stack of modifications and what it costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Stack {
    /// The modifications, in the order in which they are done.
    pub steps: Vec<Modification>,
    /// Where the unit stands after each.
    pub briefs: Vec<Brief>,
    /// The places of the steps after which it is worse than before them.
    pub worse: Vec<usize>,
    /// Minutes.
    pub minutes: f64,
    /// Parts, in US dollars or euros.
    pub price: f64,
}

impl Stack {
    const EMPTY: Self =
        Self { steps: Vec::new(), briefs: Vec::new(), worse: Vec::new(), minutes: 0.0, price: 0.0 };

    /// The same with one more step, from where the unit stood before to where it stands after.
    fn with(&self, step: Modification, before: &Brief, after: Brief) -> Self {
        let cost = cost_of(step);
        let mut more = self.clone();
        if after.is_worse_than(before) {
            more.worse.push(self.steps.len());
        }
        more.steps.push(step);
        more.briefs.push(after);
        more.minutes += cost.minutes;
        more.price += cost.price;
        more
    }

    /// Whether it is better than another of as many steps.
    fn is_better_than(&self, other: &Self) -> bool {
        let key = |stack: &Self| (stack.worse.len() as f64, stack.minutes, stack.price);
        key(self) < key(other)
    }
}

/// A stack as it was chosen, step by step; nothing where one of its steps is not offered.
pub fn follow(setup: &Setup, steps: &[Modification], bench: &mut Bench) -> Option<Stack> {
    let mut before = bench.brief(setup);
    let mut stack = Stack::EMPTY;
    let after = setup.after_all(steps).ok()?;
    for (step, setup) in steps.iter().zip(&after) {
        let brief = bench.brief(setup);
        stack = stack.with(*step, &before, brief);
        before = brief;
    }
    Some(stack)
}

/// A place of the search: what the unit may be, how it stands, and the best way there.
struct Place {
    setup: Setup,
    brief: Brief,
    stack: Stack,
}

/// The shortest stack that leaves a unit two faults from live over everything that it may be; of those the one with
/// the fewest steps that make anything worse, then the fewest minutes, then the cheapest parts. Empty where it is
/// there already, nothing where no stack of five gets there.
pub fn shortest(setup: &Setup, within: Within, bench: &mut Bench) -> Option<Stack> {
    let brief = bench.brief(setup);
    let mut places = vec![Place { setup: setup.clone(), brief, stack: Stack::EMPTY }];
    for _ in 0..=MOST_STEPS {
        let there = places.iter().filter(|place| place.brief.is_two_faults());
        let best = there
            .map(|place| &place.stack)
            .reduce(|best, next| if next.is_better_than(best) { next } else { best });
        if best.is_some() {
            return best.cloned();
        }
        places = next_places(&places, within, bench);
    }
    None
}

/// Every place that is one step further.
fn next_places(places: &[Place], within: Within, bench: &mut Bench) -> Vec<Place> {
    let mut next: Vec<Place> = Vec::new();
    let mut known: FxHashMap<Key, usize> = FxHashMap::default();
    for place in places {
        for &step in Modification::ALL {
            let allowed =
                step.changes_current() && (within == Within::Everything || step.is_of_unit());
            if !allowed || place.stack.steps.contains(&step) {
                continue;
            }
            let Ok(setup) = place.setup.after(step) else { continue };
            let key = key(&setup);
            let at = known.get(&key).copied();
            let known_brief = at.and_then(|at| next.get(at)).map(|place| place.brief);
            let brief = known_brief.unwrap_or_else(|| bench.brief(&setup));
            let stack = place.stack.with(step, &place.brief, brief);
            match at.and_then(|at| next.get_mut(at)) {
                Some(other) if stack.is_better_than(&other.stack) => other.stack = stack,
                Some(_) => {}
                None => {
                    known.insert(key, next.len());
                    next.push(Place { setup, brief, stack });
                }
            }
        }
    }
    next
}

/// What tells two places apart: the set, the feed, and which parts are new.
type Key = (Vec<u16>, u8, bool, Option<u64>);

fn key(setup: &Setup) -> Key {
    let set = setup.set.iter().map(|(id, _)| id.0).collect();
    let high = setup.parts.line_capacitor.map(|spread| spread.high.to_bits());
    (set, setup.supply.feed as u8, setup.parts.network_class_y, high)
}
