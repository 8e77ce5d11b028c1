//! The search against trying every sequence, judged by the full tables of states and faults.
//!
//! `COLDCHASSIS_REMEDIES=all` tries all 6,945 arrangements, else a sample.

use std::collections::HashMap;

use coldchassis_core::arrangement::{Arrangement, COUNT, Cord, Fault, Values, all};
use coldchassis_core::body::LET_GO_MA;
use coldchassis_core::hazard::table;
use coldchassis_core::remedy::{Bench, Modification, NewParts, Setup, Within, cost_of, shortest};
use coldchassis_core::supply::{Feed, Supply};

use crate::must_show::usual;

/// What the unit is and where it is plugged in, as far as a step can change it.
type Place = (Arrangement, Feed, bool);

/// Whether it takes two faults, and the current with none, by the full table at the usual values.
struct Judged {
    supply: Supply,
    known: HashMap<Place, (bool, u8, f64)>,
}

impl Judged {
    /// Two faults or more, how bad the class is (0 is the worst), and mA as found.
    fn at(&mut self, place: Place) -> (bool, u8, f64) {
        let supply = self.supply.fed_by(place.1);
        *self.known.entry(place).or_insert_with(|| {
            let (arrangement, _, class_y) = place;
            if arrangement.line.is_none() {
                return (true, 4, 0.0);
            }
            // New parts may be a fifth above or below what is printed on them: both ends.
            let usual = Values::default();
            let new = NewParts::default();
            let ends = [0.8, 1.2].map(|share| Values {
                line_capacitor_farad: is_class_y(&arrangement).then_some(new.line_farad * share),
                network_farad: if class_y {
                    new.network_farad * share
                } else {
                    usual.network_farad
                },
                ..usual
            });
            let rows = ends.map(|values| table(&arrangement, &supply, supply.volts, &values).rows);
            let counted = |faults: usize| {
                let rows = rows.iter().flatten().filter(|row| row.faults.len() == faults);
                let shorts = Fault::NetworkCapacitorShorted;
                rows.filter(|row| !(class_y && row.faults.has(shorts)))
                    .map(|row| row.outcome.milliamperes())
                    .fold(0.0, f64::max)
            };
            let (found, single) = (counted(0), counted(1));
            let live = LET_GO_MA.value;
            let rank = if arrangement.is_line_on_earth() || found >= live {
                0
            } else if single >= live {
                if found >= 0.5 { 1 } else { 2 }
            } else {
                3
            };
            (rank == 3, rank, found)
        })
    }
}

fn is_class_y(arrangement: &Arrangement) -> bool {
    use coldchassis_core::arrangement::LineCapacitorClass::ClassY;
    arrangement.line.is_some_and(|line| line.line_capacitor_class == ClassY)
}

fn step(place: Place, one: Modification) -> Option<Place> {
    let (arrangement, feed, class_y) = place;
    // A set with a plug of the kind that goes in both ways round is where outlets take any plug so.
    let goes_both_ways = arrangement.line.is_some_and(|line| {
        matches!(line.cord, Cord::ThreePinReversibleEarthed | Cord::ThreePinReversibleUnearthed)
    });
    let after = one.on(&arrangement, class_y).ok()?;
    match one {
        Modification::PolarisedPlug if goes_both_ways => None,
        Modification::IsolatingTransformerInFront if feed == Feed::Isolated => None,
        Modification::IsolatingTransformerInFront => Some((after, Feed::Isolated, class_y)),
        Modification::NetworkClassY => Some((after, feed, true)),
        _ => Some((after, feed, class_y)),
    }
}

/// How many steps, how many of them make something worse, minutes, price.
type Found = (usize, usize, f64, f64);

/// The best of all sequences of at most so many steps, by trying each.
fn tried(
    place: Place,
    so_far: Found,
    used: &mut Vec<Modification>,
    most: usize,
    within: Within,
    judged: &mut Judged,
    best: &mut Option<Found>,
) {
    let (there, rank, found) = judged.at(place);
    if there {
        let better = best.is_none_or(|best| so_far < best);
        *best = if better { Some(so_far) } else { *best };
        return;
    }
    if used.len() == most {
        return;
    }
    for &one in Modification::ALL {
        let allowed = one.changes_current() && (within == Within::Everything || one.is_of_unit());
        if !allowed || used.contains(&one) {
            continue;
        }
        let Some(next) = step(place, one) else { continue };
        let (_, next_rank, next_found) = judged.at(next);
        let worse = next_rank < rank || next_found > found * 1.01 + 0.001;
        let cost = cost_of(one);
        let (steps, worsened, minutes, price) = so_far;
        let longer =
            (steps + 1, worsened + usize::from(worse), minutes + cost.minutes, price + cost.price);
        used.push(one);
        tried(next, longer, used, most, within, judged, best);
        used.pop();
    }
}

#[test]
fn the_best_stack_is_the_one_that_trying_everything_finds() {
    let everything = std::env::var_os("COLDCHASSIS_REMEDIES").is_some_and(|value| value == "all");
    let every = if everything { 1 } else { 29 };
    let supply = Supply { volts_max: 120.0, ..Supply::new(120.0, 60.0) };
    let mut judged = Judged { supply, known: HashMap::new() };
    let bench = &mut Bench::default();
    let (mut checked, mut steps) = (0, [0; 6]);
    for arrangement in all().iter().step_by(every) {
        for within in [Within::Unit, Within::Everything] {
            let setup = Setup::one(arrangement, supply, usual());
            let ours = shortest(&setup, within, bench);
            let ours = ours
                .map(|stack| (stack.steps.len(), stack.worse.len(), stack.minutes, stack.price));
            let most = ours.map_or(3, |(steps, ..)| steps);
            let mut best = None;
            let place = (*arrangement, supply.feed, false);
            tried(place, (0, 0, 0.0, 0.0), &mut Vec::new(), most, within, &mut judged, &mut best);
            assert_eq!(ours, best, "{within:?} {arrangement:?}");
            assert!(ours.is_some(), "no way for {arrangement:?}");
            steps[most] += 1;
            checked += 1;
        }
    }
    assert!(!everything || checked == 2 * COUNT);
    println!("{checked} searches; how many took none, one, two … steps: {steps:?}");
}

/// No stack that is found has a step after which it is worse, but for those that say so; how many do is printed.
#[test]
fn no_stack_hides_a_step_that_makes_it_worse() {
    let supply = Supply::new(120.0, 60.0);
    let bench = &mut Bench::default();
    let (mut stacks, mut said) = (0, 0);
    for arrangement in all().iter().step_by(37) {
        let setup = Setup::one(arrangement, supply, usual());
        let Some(stack) = shortest(&setup, Within::Everything, bench) else { continue };
        let mut before = bench.brief(&setup);
        for (place, brief) in stack.briefs.iter().enumerate() {
            let worse = brief.class.is_worse_than(before.class)
                || brief.as_found_ma > before.as_found_ma * 1.01 + 0.001;
            assert_eq!(worse, stack.worse.contains(&place), "{arrangement:?} {stack:?}");
            before = *brief;
        }
        stacks += 1;
        said += usize::from(!stack.worse.is_empty());
    }
    println!("{stacks} stacks, {said} of them say that a step makes something worse");
}
