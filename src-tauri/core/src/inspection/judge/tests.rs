use super::{ArrangementSet, Judge};
use crate::arrangement::{Arrangement, ArrangementId, FaultSet, Reach, ReadingId, all};
use crate::hazard::Class;
use crate::inspection::{Access, Findings, PartValue, Reading, ValueId};
use crate::supply::{Feed, Supply};

#[test]
fn a_judge_that_turned_to_other_values_judges_as_a_new_one_does() {
    let mut findings = Findings::new(Supply::new(120.0, 60.0));
    findings.access = Access::ALL.iter().copied().collect();
    let mut turned = Judge::of(&findings);
    let changes: [fn(&mut Findings); 7] = [
        |f| value(f, ValueId::LineCapacitor, 2.2e-9),
        |f| value(f, ValueId::NetworkResistor, 470e3),
        |f| value(f, ValueId::AerialCapacitor, 1e-9),
        |f| value(f, ValueId::NetworkCapacitor, 0.25e-6),
        |f| f.tubes = vec!["12SA7".to_owned(), "50L6GT".to_owned()],
        |f| reading(f, ReadingId::OhmsAChassisOn, 90e3),
        |f| f.values.retain(|value, _| *value != ValueId::LineCapacitor),
    ];
    for (turn, change) in changes.into_iter().enumerate() {
        // A part of what is known before each turn, another part after it.
        for id in (turn..all().len()).step_by(5) {
            everything(&mut turned, ArrangementId(id as u16));
        }
        change(&mut findings);
        turned.turn_to(&findings);
        let mut anew = Judge::of(&findings);
        for id in (turn..all().len()).step_by(3) {
            let id = ArrangementId(id as u16);
            assert_eq!(everything(&mut turned, id), everything(&mut anew, id), "{turn}, {id:?}");
        }
    }
}

#[test]
fn a_judge_says_what_one_of_other_values_would() {
    let mut findings = Findings::new(Supply::new(120.0, 60.0));
    value(&mut findings, ValueId::LineCapacitor, 1e-9);
    value(&mut findings, ValueId::NetworkCapacitor, 1e-9);
    let mut judge = Judge::of(&findings);
    let mut differ = 0;
    for of in [ValueId::LineCapacitor, ValueId::NetworkCapacitor] {
        let mut other = findings.clone();
        other.values.remove(&of);
        for (place, arrangement) in all().iter().enumerate().step_by(7) {
            let set = ArrangementSet::of(|a| a == arrangement);
            let by_other = judge.worst_over_by(&other, &set);
            let id = ArrangementId(place as u16);
            assert_eq!(by_other, Judge::of(&other).worst_class(id), "{arrangement:?}");
            differ += usize::from(by_other != judge.worst_class(id));
        }
    }
    assert!(differ > 10, "{differ}");
}

/// Every so manyth arrangement of some, from a place on.
fn some_of(from: usize, step: usize, of: impl Fn(&Arrangement) -> bool) -> ArrangementSet {
    let places = (from..all().len()).step_by(step).filter(|place| of(&all()[*place]));
    let mut set = ArrangementSet::EMPTY;
    places.for_each(|place| set.insert(ArrangementId(place as u16)));
    set
}

/// Sets that are live as found, and some that are not, on feeds that differ.
fn sets() -> Vec<(Supply, ArrangementSet)> {
    let us = Supply::new(120.0, 60.0);
    let closed = |a: &Arrangement| a.line.is_some_and(|line| line.reach == Reach::Closed);
    let earthed = |a: &Arrangement| a.line.is_some_and(|line| line.cord.is_earthed());
    vec![
        (us, some_of(0, 11, |_| true)),
        (us, some_of(3, 7, closed)),
        (us, some_of(1, 5, |a| closed(a) && !earthed(a))),
        (us.fed_by(Feed::Isolated), some_of(2, 13, |_| true)),
        (Supply::new(230.0, 50.0), some_of(4, 9, earthed)),
        (us, some_of(0, 3, |a| a.line.is_none())),
    ]
}

#[test]
fn the_largest_current_as_found_is_that_of_each_by_itself() {
    let mut lives = 0;
    for (supply, set) in sets() {
        let mut judge = Judge::of(&Findings::new(supply));
        let found = judge.as_found_over(&set);
        let mut each = Judge::of(&Findings::new(supply));
        let largest = set.iter().map(|(id, a)| each.as_found_ma(id, a)).fold(0.0, f64::max);
        assert_eq!(found, largest, "{supply:?}, {}", set.len());
        lives += usize::from(each.worst_over(&set) == Class::Live);
    }
    assert!((1..sets().len()).contains(&lives), "{lives}");
}

#[test]
fn the_sets_that_make_something_live_are_those_of_each_by_itself() {
    let mut there = 0;
    for (supply, set) in sets() {
        let mut judge = Judge::of(&Findings::new(supply));
        let class = judge.worst_over(&set);
        for faults in [1, 2] {
            let found = judge.live_sets_over(&set, faults);
            let mut each: Vec<FaultSet> = Vec::new();
            for (id, arrangement) in set.iter().filter(|(_, a)| a.line.is_some()) {
                if judge.worst_class(id) != class {
                    continue;
                }
                for judge in [&mut judge.at_highest, &mut judge.at_nominal] {
                    // Of one that is not earthed the nominal voltage makes nothing live that the highest does not.
                    let mut own = Vec::new();
                    judge.add_live_sets(arrangement, faults, &mut own);
                    own.retain(|set| !each.contains(set));
                    each.extend(own);
                }
                assert!(!each.is_empty() || class != Class::OneFault || faults > 1, "{id:?}");
            }
            assert_eq!(found, each, "{supply:?}, {class:?}, {faults}");
            there += each.len();
        }
    }
    assert!(there > 10, "{there}");
}

fn value(findings: &mut Findings, of: ValueId, value: f64) {
    findings.values.insert(of, PartValue { value, measured: true });
}

fn reading(findings: &mut Findings, of: ReadingId, value: f64) {
    findings.readings.insert(of, Reading::Value(value));
}

fn everything(judge: &mut Judge, id: ArrangementId) -> String {
    let classes = [
        judge.worst_class(id),
        judge.best_class(id),
        judge.class_if_read(id),
        judge.usual_class(id),
    ];
    let case = all().get(usize::from(id.0)).map(|a| judge.worst_case_of(id, a));
    format!("{classes:?} {case:?}")
}
