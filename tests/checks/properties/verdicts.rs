//! What every verdict keeps to.

use std::cell::Cell;

use coldchassis_core::hazard::Class;
use coldchassis_core::inspection::{
    Access, Basis, Finding, Findings, Judge, PartValue, Possible, Question, RestsOn, Step, ValueId,
    Verdict, assess,
};
use proptest::prelude::{any, prop_assert, prop_assert_eq};
use proptest::test_runner::{TestCaseResult, TestRunner};

use crate::cases;
use crate::drafts::{Draft, draft};
use crate::oracle::Oracle;

/// How often something was seen, so that a law that was never put to the test fails.
#[derive(Default)]
struct Seen {
    conflict: Cell<u32>,
    shown: Cell<u32>,
    better_than_live: Cell<u32>,
    rests: Cell<u32>,
    asks: Cell<u32>,
    reads: Cell<u32>,
}

fn count(cell: &Cell<u32>, holds: bool) {
    cell.update(|count| count + u32::from(holds));
}

fn classes_are_in_order(verdict: &Verdict) -> TestCaseResult {
    prop_assert!(!verdict.could_be.is_worse_than(verdict.treat_as));
    prop_assert_eq!(verdict.worst.class, verdict.treat_as);
    prop_assert_eq!(verdict.classes.first(), Some(&verdict.treat_as));
    prop_assert!(verdict.classes.is_sorted_by(|a, b| a.is_worse_than(*b)));
    prop_assert_eq!(verdict.conflicts.is_empty(), verdict.consistent > 0);
    let agree = verdict.treat_as == verdict.could_be && verdict.conflicts.is_empty();
    prop_assert_eq!(verdict.basis == Basis::Shown, agree);
    if let Some(likely) = verdict.likely {
        prop_assert!((0.7..=1.0 + 1e-9).contains(&likely.share), "{likely:?}");
        // Usual values lie inside the ranges whose ends the other two are judged at.
        prop_assert!(!likely.class.is_worse_than(verdict.treat_as), "{likely:?}");
        prop_assert!(!verdict.could_be.is_worse_than(likely.class), "{likely:?}");
    }
    Ok(())
}

fn the_step_can_be_taken(findings: &Findings, verdict: &Verdict) -> TestCaseResult {
    let Some(step) = verdict.next else {
        return Ok(());
    };
    // Where only one class is left, something else has to speak for a step: a doubt, or metal that may be
    // joined to nothing.
    let settled = verdict.treat_as == verdict.could_be && verdict.doubts.is_empty();
    prop_assert!(!settled || !findings.answers.contains_key(&Question::MetalJoined), "{step:?}");
    prop_assert!(verdict.conflicts.is_empty());
    prop_assert!(step.rules_out <= step.classes, "{step:?}");
    match step.step {
        Step::Ask(question) => {
            let access: Vec<Access> = findings.access.iter().copied().collect();
            prop_assert!(question.may_be_asked(&access), "{question:?}");
            prop_assert!(!findings.answers.contains_key(&question), "{question:?}");
        }
        Step::Read(value) => {
            prop_assert!(findings.access.contains(&Access::CoverOff));
            prop_assert!(!findings.values.contains_key(&value), "{value:?}");
        }
        Step::Measure(reading) => {
            prop_assert!(findings.access.contains(&Access::Meter));
            prop_assert!(!findings.readings.contains_key(&reading), "{reading:?}");
        }
    }
    Ok(())
}

/// Treat as, worked out again.
fn treat_as(findings: &Findings) -> Class {
    Oracle::of(findings).treat_as(&Possible::after(findings).considered)
}

/// The classes and the worst case are those worked out arrangement by arrangement.
fn classes_are_those_of_the_oracle(findings: &Findings, verdict: &Verdict) -> TestCaseResult {
    let mut oracle = Oracle::of(findings);
    let left = Possible::after(findings).considered;
    let classes = (oracle.treat_as(&left), oracle.could_be(&left));
    prop_assert_eq!((verdict.treat_as, verdict.could_be), classes);
    let (own, expected) = (verdict.worst, oracle.worst_case(&left));
    let quoted = (own.class, own.margin, own.milliamperes);
    // Which of equally bad cases is quoted is free.
    prop_assert_eq!(quoted, (expected.class, expected.margin, expected.milliamperes));
    Ok(())
}

fn rests_on(findings: &Findings, verdict: &Verdict) -> Vec<RestsOn> {
    let answers = findings.answers.iter().filter(|(_, answer)| answer.is_known());
    let answers = answers.map(|(question, _)| Finding::Answer(*question));
    let values = findings.values.keys().map(|value| Finding::Value(*value));
    answers
        .chain(values)
        .map(|finding| RestsOn { finding, without: treat_as(&findings.without(finding)) })
        .filter(|rests| rests.without.is_worse_than(verdict.treat_as))
        .collect()
}

#[test]
fn every_verdict_keeps_its_promises() {
    let seen = Seen::default();
    let law = |draft: Draft| {
        let findings = draft.findings();
        let verdict = assess(&findings, &mut Judge::of(&findings));
        println!("{:?} {:?} {}", verdict.treat_as, verdict.could_be, draft.json());
        classes_are_in_order(&verdict)?;
        the_step_can_be_taken(&findings, &verdict)?;
        classes_are_those_of_the_oracle(&findings, &verdict)?;
        prop_assert_eq!(&verdict.rests_on, &rests_on(&findings, &verdict));
        count(&seen.conflict, verdict.consistent == 0);
        count(&seen.shown, verdict.basis == Basis::Shown);
        count(&seen.better_than_live, verdict.treat_as != Class::Live);
        count(&seen.rests, !verdict.rests_on.is_empty());
        count(&seen.asks, matches!(verdict.next.map(|next| next.step), Some(Step::Ask(_))));
        count(&seen.reads, matches!(verdict.next.map(|next| next.step), Some(Step::Read(_))));
        Ok(())
    };
    TestRunner::new(cases(96)).run(&draft(90), law).unwrap();
    let seen =
        [seen.conflict, seen.shown, seen.better_than_live, seen.rests, seen.asks, seen.reads];
    let seen = seen.map(|cell| cell.get());
    println!("conflicts, shown, better than live, rests on, asks, reads: {seen:?}");
    assert!(seen[..5].iter().all(|count| *count >= 4), "{seen:?}");
}

/// A value inside what was believed of a part, at this share of the way from its low end.
fn inside(findings: &Findings, id: ValueId, share: f64) -> PartValue {
    let parts = findings.parts();
    let spread = match id {
        ValueId::NetworkResistor => parts.network_ohm,
        ValueId::NetworkCapacitor => parts.network_farad,
        ValueId::AerialCapacitor => parts.aerial,
        // Believed by its class where nothing is marked: this lies in both ranges.
        ValueId::LineCapacitor => parts
            .line_capacitor
            .unwrap_or(coldchassis_core::arrangement::Spread { low: 0.01e-6, high: 0.047e-6 }),
    };
    let value = spread.low * (spread.high / spread.low).powf(share);
    PartValue { value: value.clamp(spread.low, spread.high), measured: true }
}

#[test]
fn measuring_inside_what_was_believed_never_worsens_the_verdict() {
    let (better, not_live) = (Cell::new(0u32), Cell::new(0u32));
    let law = |(draft, shares, which): (Draft, [f64; 4], [bool; 4])| {
        let before = draft.findings();
        let mut after = before.clone();
        for ((&id, share), chosen) in ValueId::ALL.iter().zip(shares).zip(which) {
            if chosen {
                after.values.insert(id, inside(&before, id, share));
            }
        }
        let (old, new) = (treat_as(&before), treat_as(&after));
        prop_assert!(
            !new.is_worse_than(old),
            "{old:?} {new:?} {:?} {}",
            after.values,
            draft.json()
        );
        count(&better, old.is_worse_than(new));
        count(&not_live, old != Class::Live);
        Ok(())
    };
    let shares = [0.0..1.0, 0.0..1.0, 0.0..1.0, 0.0..1.0];
    let mut runner = TestRunner::new(cases(192));
    runner.run(&(draft(90), shares, any::<[bool; 4]>()), law).unwrap();
    println!("better {}, not live {}", better.get(), not_live.get());
    assert!(not_live.get() >= 8, "{}", not_live.get());
}
