//! Units behind an isolating transformer or an autotransformer, over every arrangement.
//!
//! Single networks of both are compared with ngspice in `outside_solver`.

use coldchassis_core::arrangement::Values;
use coldchassis_core::arrangement::{Fault, Isolation, Reach, all, states};
use coldchassis_core::hazard::{Class, Parts, table};
use coldchassis_core::remedy::{Bench, Setup};
use coldchassis_core::supply::{Feed, Supply};

fn classes(supply: Supply, every: usize) -> Vec<(usize, Class)> {
    let mut bench = Bench::default();
    let class = |(place, arrangement)| {
        let setup = Setup::one(arrangement, supply, Parts::default());
        (place, bench.brief(&setup).class)
    };
    all().iter().enumerate().step_by(every).map(class).collect()
}

#[test]
fn behind_an_autotransformer_nothing_is_better_than_straight_at_the_outlet() {
    let straight = Supply::new(120.0, 60.0);
    let behind = straight.fed_by(Feed::StepDownAuto);
    let mut worse = 0;
    for ((place, straight), (_, behind)) in classes(straight, 3).into_iter().zip(classes(behind, 3))
    {
        assert!(!straight.is_worse_than(behind), "{:?}", all()[place]);
        worse += usize::from(behind.is_worse_than(straight));
    }
    assert!(worse > 100, "{worse}");
}

/// An autotransformer that is taken for an isolating one: whatever is tied to the line is live behind it, however
/// its plug was wired.
#[test]
fn what_is_taken_for_isolation_and_is_none_is_shown() {
    let behind = Supply::new(120.0, 60.0).fed_by(Feed::StepDownAuto);
    for (place, class) in classes(behind, 5) {
        let arrangement = all()[place];
        let Some(line) = arrangement.line else { continue };
        let reached = matches!(line.reach, Reach::Exposed | Reach::Handheld);
        if arrangement.isolation == Isolation::LineTied && reached {
            assert_eq!(class, Class::Live, "{arrangement:?}");
        }
    }
}

#[test]
fn behind_an_isolating_transformer_no_tied_chassis_is_live_but_it_is_one_fault_away() {
    let behind = Supply::new(230.0, 50.0).fed_by(Feed::Isolated);
    for (place, class) in classes(behind, 5) {
        let arrangement = all()[place];
        let Some(line) = arrangement.line else { continue };
        let tied = arrangement.isolation == Isolation::LineTied && !line.cord.is_earthed();
        if tied && line.reach == Reach::Exposed {
            assert_eq!(class, Class::OneFault, "{arrangement:?}");
        }
    }
}

#[test]
fn a_plug_that_fits_one_way_stands_both_ways_where_there_is_no_neutral() {
    for arrangement in all().iter().step_by(11) {
        let Some(line) = arrangement.line else { continue };
        for feed in [Feed::Isolated, Feed::StepDownAuto] {
            let here = states(arrangement, feed).count();
            let straight = states(arrangement, Feed::Direct).count();
            let ways = if line.cord.is_reversible() { 1 } else { 2 };
            assert_eq!(here, ways * straight);
            assert!(!Fault::OutletReversed.exists(arrangement, feed));
            assert_eq!(Fault::FeedEarthed.exists(arrangement, feed), feed == Feed::Isolated);
        }
    }
}

/// With one conductor earthed, an isolated outlet is a plain one with that conductor as its neutral.
#[test]
fn an_isolated_outlet_with_an_earthed_conductor_is_a_plain_one() {
    let plain = Supply::new(120.0, 60.0);
    let isolated = plain.fed_by(Feed::Isolated);
    let values = Values::default();
    let mut compared = 0;
    for arrangement in all().iter().step_by(17) {
        let expected = table(arrangement, &plain, 120.0, &values);
        for row in table(arrangement, &isolated, 120.0, &values).rows {
            let mut faults = row.faults.faults();
            if (faults.next(), faults.next()) != (Some(Fault::FeedEarthed), None) {
                continue;
            }
            let same = expected.rows.iter().find(|e| e.faults.is_empty() && e.state == row.state);
            let Some(same) = same else { continue };
            let (ours, theirs) = (row.outcome.milliamperes(), same.outcome.milliamperes());
            // The earthed conductor is 0.1 Ω off earth, the strays carry up to 0.1 mA besides.
            assert!(
                (ours - theirs).abs() < 0.01 * theirs + 0.2,
                "{arrangement:?} {row:?} {same:?}"
            );
            compared += 1;
        }
    }
    assert!(compared > 500, "{compared}");
}
