//! The picture of an arrangement: its figures against the grid, and the way of the current against rules that
//! are written down here by hand.

use coldchassis_core::arrangement::{
    Arrangement, ArrangementId, FaultSet, Leg, LineCapacitor, LineSide, Part, State, Switch, all,
    states,
};
use coldchassis_core::body::LET_GO_MA;
use coldchassis_core::hazard::{Class, Exposures, Outcome, Parts, Way};
use coldchassis_core::inspection::{Findings, Judge};
use coldchassis_core::supply::Supply;
use rand::SeedableRng;
use rand::seq::IndexedRandom;
use rand_chacha::ChaCha8Rng;

const ARRANGEMENTS: usize = 200;

fn drawn(seed: u64) -> Vec<(&'static Arrangement, Supply)> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let with_line: Vec<&Arrangement> = all().iter().filter(|a| a.line.is_some()).collect();
    let supplies = [Supply::new(120.0, 60.0), Supply::new(230.0, 50.0)];
    let one = |_| {
        let arrangement = *with_line.choose(&mut rng).expect("arrangements");
        (arrangement, *supplies.choose(&mut rng).expect("two"))
    };
    (0..ARRANGEMENTS).map(one).collect()
}

fn ways(judge: &mut Judge, arrangement: &Arrangement) -> Vec<(State, FaultSet, Outcome, Way)> {
    let grid = judge.grid(arrangement);
    let mut ways = Vec::new();
    for (faults, row) in grid.faults.iter().zip(&grid.cells) {
        for (state, cell) in grid.states.iter().zip(row) {
            let way = judge.way(arrangement, *state, *faults).expect("a line side");
            ways.push((*state, *faults, *cell, way));
        }
    }
    ways
}

/// What can follow a part on the way from the outlet to a person, as a drawing of the circuit shows it.
fn may_follow(part: Part, next: Part) -> bool {
    use Part as P;
    let after_far = [P::Load, P::FarChassis, P::FarCapacitor];
    let after_near = [P::Load, P::NearChassis, P::NearCapacitor, P::Common, P::AerialCapacitor];
    let onto_chassis = [P::Chassis];
    let from_contact = [P::FarConductor, P::NearConductor, P::StrayFar, P::StrayNear];
    match part {
        P::HotContact => next == P::NeutralPull || from_contact.contains(&next),
        P::NeutralPull => next == P::NeutralContact,
        P::NeutralContact => from_contact.contains(&next),
        P::FarConductor => next == P::FarSwitch,
        P::NearConductor => next == P::NearSwitch,
        P::FarSwitch => after_far.contains(&next),
        P::NearSwitch => after_near.contains(&next),
        P::Load => after_far.contains(&next) || after_near.contains(&next),
        P::FarChassis | P::NearChassis | P::FarCapacitor | P::NearCapacitor => {
            onto_chassis.contains(&next) || after_near.contains(&next) || after_far.contains(&next)
        }
        P::StrayFar | P::StrayNear => onto_chassis.contains(&next),
        P::Chassis => {
            // On to earth, to whoever touches it, or by what joins the chassis to a common that is touched.
            let on = [P::EarthWire, P::Person, P::AerialCapacitor];
            let back = [P::NearChassis, P::FarChassis, P::NearCapacitor, P::FarCapacitor];
            on.contains(&next) || back.contains(&next)
        }
        P::Common => [P::EarthWire, P::Person].contains(&next),
        P::AerialCapacitor => next == P::AerialTerminal,
        P::AerialTerminal => [P::EarthWire, P::Person].contains(&next),
        P::EarthWire => next == P::Person,
        P::Person => false,
    }
}

#[test]
fn the_picture_has_the_figures_of_the_grid_and_its_way_can_be_followed() {
    let mut seen = 0;
    for (arrangement, supply) in drawn(31) {
        let mut judge = Judge::of(&Findings::new(supply));
        for (state, faults, cell, way) in ways(&mut judge, arrangement) {
            let what = format!("{arrangement:?} {state:?} {faults:?} {way:?}");
            assert_eq!(way.outcome, cell, "{what}");
            let touches = matches!(cell, Outcome::Touch { .. });
            assert_eq!(way.parts.last() == Some(&Part::Person), touches, "{what}");
            let first = [Some(&Part::HotContact), None];
            assert!(first.contains(&way.parts.first()), "one hot contact feeds it: {what}");
            let follows = way.parts.windows(2).all(|pair| may_follow(pair[0], pair[1]));
            assert!(follows, "{what}");
            seen += 1;
        }
    }
    println!("{seen} pictures of {ARRANGEMENTS} arrangements");
    assert!(seen > 20 * ARRANGEMENTS);
}

/// An open contact of 1 GΩ lets a few hundred nanoamperes through: what startles somebody came another way.
#[test]
fn what_startles_never_comes_through_an_open_switch() {
    let mut checked = 0;
    for (arrangement, supply) in drawn(32) {
        let line = arrangement.line.expect("a line side");
        let mut judge = Judge::of(&Findings::new(supply));
        for (state, faults, cell, way) in ways(&mut judge, arrangement) {
            if state.switch == Switch::On || cell.milliamperes() < 0.5 {
                continue;
            }
            let open = |part: &Part| match part {
                Part::FarSwitch => line.switch_leg.opens(Leg::Far),
                Part::NearSwitch => line.switch_leg.opens(Leg::Near),
                _ => false,
            };
            assert!(!way.parts.iter().any(open), "{arrangement:?} {state:?} {faults:?} {way:?}");
            checked += 1;
        }
    }
    assert!(checked > ARRANGEMENTS);
}

/// The way that is named is the one that carries: without its capacitor less than half the current is left.
#[test]
fn a_line_capacitor_on_the_way_carries_most_of_the_current() {
    let mut checked = 0;
    for (arrangement, supply) in drawn(33) {
        let mut exposures = Exposures::new(&supply, supply.volts, Parts::default());
        let line = arrangement.line.expect("a line side");
        let without = Arrangement {
            line: Some(LineSide { line_capacitor: LineCapacitor::None, ..line }),
            ..*arrangement
        };
        for state in states(arrangement, supply.feed) {
            let Some(way) = exposures.way(arrangement, state, FaultSet::NONE) else { continue };
            let by = [Part::NearCapacitor, Part::FarCapacitor];
            if !way.parts.iter().any(|part| by.contains(part)) || way.outcome.milliamperes() < 0.5 {
                continue;
            }
            let selector = None;
            let bare = exposures.way(&without, State { selector, ..state }, FaultSet::NONE);
            let left = bare.expect("a line side").outcome.milliamperes();
            assert!(left < 0.5 * way.outcome.milliamperes(), "{arrangement:?} {way:?} {left} mA");
            checked += 1;
        }
    }
    assert!(checked > 20, "{checked}");
}

#[test]
fn the_class_with_no_fault_is_that_of_the_worst_case_and_a_fault_never_betters_it() {
    for (arrangement, supply) in drawn(34) {
        let mut judge = Judge::of(&Findings::new(supply));
        let grid = judge.grid(arrangement);
        let class = judge.class_with(arrangement, FaultSet::NONE);
        let id = all().iter().position(|a| a == arrangement).expect("it is one of them");
        let id = ArrangementId(id as u16);
        assert_eq!(class, judge.worst_class(id), "{arrangement:?}");
        for (faults, row) in grid.faults.iter().zip(&grid.cells).skip(1) {
            let with = judge.class_with(arrangement, *faults);
            let most = row.iter().map(|cell| cell.milliamperes()).fold(0.0, f64::max);
            let live = most >= LET_GO_MA.value || arrangement.is_line_on_earth();
            assert_eq!(with == Class::Live, live, "{arrangement:?} {faults:?}");
        }
    }
}
