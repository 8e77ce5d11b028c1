//! Physical units against the evidence logic: whatever truthful part of the story is told, treat as is
//! never better than the class the unit really has.
//!
//! The units answer out of their own parts and know nothing of the evidence table. 20,000 by default;
//! `COLDCHASSIS_UNITS` sets another number (`make truth` runs a million).

use std::collections::BTreeMap;

use coldchassis_core::arrangement::read_exposure;
use coldchassis_core::hazard::{Class, table};
use coldchassis_core::inspection::{Judge, Verdict, assess, read_findings};
use coldchassis_tests::physical_unit::{Gap, PhysicalUnit, random_subset};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

fn units() -> u64 {
    std::env::var("COLDCHASSIS_UNITS").ok().and_then(|text| text.parse().ok()).unwrap_or(20_000)
}

/// The class the unit really has, with its own values, at its own supply.
fn truth(unit: &PhysicalUnit, told: &[(String, serde_json::Value)]) -> Class {
    let file =
        read_exposure(unit.arrangement_as_told(told)).expect("a unit is a valid arrangement");
    table(&file.arrangement, &file.supply, file.supply.volts, &file.values).class
}

#[derive(Default)]
struct Counts {
    told: usize,
    conflicts: usize,
    shown: usize,
    better: usize,
    better_in_gap: BTreeMap<Gap, usize>,
    by_class: BTreeMap<Class, usize>,
}

#[test]
fn no_truthful_story_makes_a_unit_look_better_than_it_is() {
    let mut counts = Counts::default();
    let mut worst_case = None;
    for seed in 0..units() {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let told = random_subset(&unit.answers(&mut rng), &mut rng);
        let findings = unit.findings(&told, &unit.supply(), &["outside", "cover_off"]);
        let findings_text = findings.to_string();
        let findings = read_findings(findings).expect("truthful findings are a valid file");
        let verdict = assess(&findings, &mut Judge::of(&findings));
        let truth = truth(&unit, &told);
        count(&mut counts, &verdict, truth);
        if truth.is_worse_than(verdict.treat_as) {
            let gaps = unit.gaps(&told);
            for &gap in &gaps {
                *counts.better_in_gap.entry(gap).or_default() += 1;
            }
            if gaps.is_empty() {
                counts.better += 1;
                if counts.better <= 12 {
                    println!(
                        "{seed} {truth:?} {:?} {}\n   {}",
                        verdict.treat_as,
                        unit.arrangement_as_told(&told),
                        findings_text
                    );
                }
                worst_case.get_or_insert((seed, truth, verdict.treat_as, told));
            }
        }
    }
    report(&counts);
    assert!(counts.better == 0, "{} too kind, first {worst_case:?}", counts.better);
}

fn count(counts: &mut Counts, verdict: &Verdict, truth: Class) {
    counts.told += 1;
    counts.conflicts += usize::from(!verdict.conflicts.is_empty());
    counts.shown += usize::from(verdict.basis.id() == "shown");
    *counts.by_class.entry(truth).or_default() += 1;
}

fn report(counts: &Counts) {
    println!(
        "{} stories: {} shown, {} in conflict, {} too kind, true classes {:?}",
        counts.told, counts.shown, counts.conflicts, counts.better, counts.by_class
    );
    println!("too kind inside a named gap of the evidence table: {:?}", counts.better_in_gap);
}
