use super::{ArrangementSet, Judge};
use crate::arrangement::{ArrangementId, ReadingId, all};
use crate::inspection::{Access, Findings, PartValue, Reading, ValueId};
use crate::supply::Supply;

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
