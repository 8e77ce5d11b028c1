//! Physical units against the evidence logic: whatever truthful part of the story is told, treat as is
//! never better than the class the unit really has.
//!
//! The units answer out of their own parts and know nothing of the evidence table. 20,000 by default;
//! `COLDCHASSIS_UNITS` sets another number (`make truth` runs a million).

use std::collections::BTreeMap;

use coldchassis_core::arrangement::read_exposure;
use coldchassis_core::hazard::{Class, table};
use coldchassis_core::inspection::{Basis, Judge, assess, read_findings};
use coldchassis_core::simulation::unit::{Gap, PhysicalUnit, random_subset};
use coldchassis_tests::seeds::{asked, on_all_threads};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

fn units() -> u64 {
    asked("COLDCHASSIS_UNITS", 20_000)
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
    too_kind: usize,
    in_gap: BTreeMap<Gap, usize>,
    by_class: BTreeMap<Class, usize>,
    first: Option<String>,
}

impl Counts {
    fn add(&mut self, other: Self) {
        self.told += other.told;
        self.conflicts += other.conflicts;
        self.shown += other.shown;
        self.too_kind += other.too_kind;
        for (gap, count) in other.in_gap {
            *self.in_gap.entry(gap).or_default() += count;
        }
        for (class, count) in other.by_class {
            *self.by_class.entry(class).or_default() += count;
        }
        self.first = self.first.take().or(other.first);
    }

    /// Tells a part of one unit's story and holds the verdict against the unit.
    fn tell(&mut self, seed: u64) {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let told = random_subset(&unit.answers(&mut rng), &mut rng);
        let file = unit.findings(&told, &unit.supply(), &["outside", "cover_off"]);
        let findings = read_findings(file.clone()).expect("truthful findings are a valid file");
        let verdict = assess(&findings, &mut Judge::of(&findings));
        let truth = truth(&unit, &told);
        self.told += 1;
        self.conflicts += usize::from(!verdict.conflicts.is_empty());
        self.shown += usize::from(verdict.basis == Basis::Shown);
        *self.by_class.entry(truth).or_default() += 1;
        if !truth.is_worse_than(verdict.treat_as) {
            return;
        }
        let gaps = unit.gaps(&told);
        for &gap in &gaps {
            *self.in_gap.entry(gap).or_default() += 1;
        }
        if gaps.is_empty() || !is_mended_by_the_whole_story(&unit, &gaps, &mut rng) {
            self.too_kind += 1;
            let unit = unit.arrangement_as_told(&told);
            self.first.get_or_insert(format!(
                "seed {seed}: {truth:?}, treat as {:?}, {gaps:?}\n{unit}\n{file}",
                verdict.treat_as
            ));
        }
    }
}

/// Whether a gap is one of telling only: with the whole story told the unit is judged for what it is.
///
/// Two gaps are of the model itself, whatever is told: a second reach beside the first, and the other
/// position of an earth lift. They are counted and held below a bound.
fn is_mended_by_the_whole_story(unit: &PhysicalUnit, gaps: &[Gap], rng: &mut ChaCha8Rng) -> bool {
    if gaps.iter().any(|gap| matches!(gap, Gap::AerialUnheard | Gap::LiftedLineOnEarth)) {
        return true;
    }
    let whole = unit.answers(rng);
    let file = unit.findings(&whole, &unit.supply(), &["outside", "cover_off", "meter"]);
    let findings = read_findings(file).expect("truthful findings are a valid file");
    let verdict = assess(&findings, &mut Judge::of(&findings));
    !truth(unit, &whole).is_worse_than(verdict.treat_as)
}

/// The most that may be too kind inside the gaps, as a share of the stories; 0.55 % was measured when
/// the check was written.
const MOST_IN_GAPS: f64 = 0.01;

#[test]
fn no_truthful_story_makes_a_unit_look_better_than_it_is() {
    let units = units();
    let counts = on_all_threads(units, Counts::tell, Counts::add);
    println!(
        "{} stories: {} shown, {} in conflict, {} too kind; true classes {:?}",
        counts.told, counts.shown, counts.conflicts, counts.too_kind, counts.by_class
    );
    println!("too kind inside a named gap of the evidence table: {:?}", counts.in_gap);
    assert_eq!(counts.told as u64, units);
    assert!(counts.too_kind == 0, "{:?}", counts.first);
    let in_gaps: usize = counts.in_gap.values().sum();
    assert!((in_gaps as f64) < MOST_IN_GAPS * units as f64, "{in_gaps} in gaps");
}
