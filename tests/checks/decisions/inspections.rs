//! Whole inspections of physical units, asked by the engine.

use std::collections::BTreeMap;

use coldchassis_core::inspection::{
    Beliefs, Cost, Doubt, Findings, Judge, Order, Step, assess, assess_by, cost, read_supply_access,
};
use coldchassis_core::simulation::unit::PhysicalUnit;
use coldchassis_core::simulation::{
    ACCESS, Inspector, Slip, Slips, inspect, one_wrong_answer, permits, simulate, true_class,
};
use coldchassis_tests::seeds::{asked, on_all_threads};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::json;

fn start(unit: &PhysicalUnit, rng: &mut impl Rng) -> Findings {
    let access = ACCESS[rng.random_range(0..ACCESS.len())];
    let ids: Vec<&str> = access.iter().map(|access| access.id()).collect();
    let (supply, access) = read_supply_access(unit.supply(), json!(ids)).expect("a valid supply");
    Findings { access, ..Findings::new(supply) }
}

#[derive(Default)]
struct Guided {
    count: u64,
    steps: usize,
    empty: usize,
    too_kind: usize,
    untraced: usize,
    unusual: usize,
    first: Option<String>,
}

impl Guided {
    fn add(&mut self, other: Self) {
        self.count += other.count;
        self.steps += other.steps;
        self.empty += other.empty;
        self.too_kind += other.too_kind;
        self.untraced += other.untraced;
        self.unusual += other.unusual;
        self.first = self.first.take().or(other.first);
    }

    fn inspect(&mut self, seed: u64) {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let findings = start(&unit, &mut rng);
        let mut judge = Judge::of(&findings);
        let mut inspector = Inspector::of(&unit, Slips::CannotTell, seed);
        let run = inspect(findings, &mut inspector, &mut judge, Order::Engine);
        let mut once: Vec<Step> = run.steps.clone();
        once.sort_unstable();
        once.dedup();
        assert_eq!(once.len(), run.steps.len(), "seed {seed}: {:?}", run.steps);
        let verdict = assess(&run.findings, &mut judge);
        let told = told(&run.findings);
        let truth = true_class(&unit).expect("a valid file");
        self.count += 1;
        self.steps += run.steps.len();
        if !verdict.conflicts.is_empty() {
            self.empty += 1;
            let line = format!("seed {seed}: {:?} {:?}", verdict.conflicts, run.findings);
            self.first.get_or_insert(line);
        }
        if truth.is_worse_than(verdict.treat_as) {
            // Metal that nobody could trace is said to be so, and nobody may plug the unit in.
            if verdict.doubts.contains(&Doubt::UntracedMetal) && !permits(&run.findings, &verdict) {
                self.untraced += 1;
            } else if unit.is_unusual_unread(&told) {
                self.unusual += 1;
            } else {
                self.too_kind += 1;
                let line =
                    format!("seed {seed}: {truth:?}, treat as {:?} {told:?}", verdict.treat_as);
                self.first.get_or_insert(line);
            }
        }
    }
}

/// The answers as the physical units tell them.
fn told(findings: &Findings) -> Vec<(String, serde_json::Value)> {
    use coldchassis_core::inspection::Answer;
    let value = |answer: &Answer| match answer {
        Answer::CantTell => json!("cant_tell"),
        Answer::One(id) => json!(id),
        Answer::Several(ids) => json!(ids),
        Answer::Number(number) => json!(number),
    };
    let answers = findings.answers.iter().map(|(q, answer)| (q.id().to_owned(), value(answer)));
    let values = findings.values.iter().map(|(id, value)| {
        (format!("values.{}", id.id()), json!({"farads": value.value, "measured": value.measured}))
    });
    answers.chain(values).collect()
}

/// 1,000 in one run of all checks; `COLDCHASSIS_GUIDED` sets another number.
#[test]
fn no_honest_guided_inspection_ends_better_than_the_unit_or_with_nothing_possible() {
    let count = asked("COLDCHASSIS_GUIDED", 1_000);
    let guided = on_all_threads(count, Guided::inspect, Guided::add);
    println!(
        "{} guided inspections, {:.1} steps each: {} in conflict, {} too kind, {} held back for untraced metal, {} with a part out of \
         its usual range that was not read",
        guided.count,
        guided.steps as f64 / guided.count as f64,
        guided.empty,
        guided.too_kind,
        guided.untraced,
        guided.unusual
    );
    assert_eq!(guided.count, count);
    assert!(guided.steps as u64 > count, "hardly anything was asked");
    assert_eq!((guided.empty, guided.too_kind), (0, 0), "{:?}", guided.first);
    assert!((guided.untraced as f64) < 0.01 * count as f64 + 3.0, "{} untraced", guided.untraced);
    assert!((guided.unusual as f64) < 0.001 * count as f64 + 1.0, "{} unusual", guided.unusual);
}

/// Beliefs of all sorts order the questions and change nothing else.
#[test]
fn other_beliefs_change_no_treat_as_and_no_could_be() {
    let mut moved = 0;
    for seed in 0..60 {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let mut findings = start(&unit, &mut rng);
        let mut judge = Judge::of(&findings);
        let mut inspector = Inspector::of(&unit, Slips::CannotTell, seed);
        for _ in 0..4 {
            let usual = assess(&findings, &mut judge);
            let weights = Beliefs::of(&findings)
                .weights()
                .iter()
                .map(|_| rng.random::<f64>().powi(8))
                .collect();
            let factor: f64 = rng.random_range(0.2..5.0);
            let odd = Beliefs::new(weights, move |step| {
                let usual = cost(step);
                let cant_tell_rate = (usual.cant_tell_rate * factor).min(0.9);
                Cost { seconds: usual.seconds.powf(factor), cant_tell_rate, ..usual.clone() }
            });
            let other = assess_by(&findings, &mut judge, &odd, Order::Engine);
            assert_eq!((usual.treat_as, usual.could_be), (other.treat_as, other.could_be));
            assert_eq!((usual.basis, usual.consistent), (other.basis, other.consistent));
            // Stopping rests on what is possible, not on what is likely.
            assert_eq!(usual.next.is_some(), other.next.is_some(), "seed {seed}");
            moved += usize::from(usual.next != other.next);
            let Some(next) = usual.next else { break };
            inspector.take(next.step, &mut findings);
        }
    }
    println!("another next step {moved} times");
    assert!(moved > 20, "the beliefs hardly bear on anything: {moved}");
}

#[derive(Default)]
struct Slipped {
    count: usize,
    conflict: usize,
    named: usize,
    too_kind: usize,
    permitted: usize,
    anyway: usize,
    by_question: BTreeMap<String, [usize; 2]>,
}

impl Slipped {
    fn add(&mut self, other: Self) {
        self.count += other.count;
        self.conflict += other.conflict;
        self.named += other.named;
        self.too_kind += other.too_kind;
        self.permitted += other.permitted;
        self.anyway += other.anyway;
        for (question, [all, bad]) in other.by_question {
            let sums = self.by_question.entry(question).or_default();
            sums[0] += all;
            sums[1] += bad;
        }
    }

    fn slip(&mut self, slip: Slip) {
        self.count += 1;
        self.conflict += usize::from(slip.conflict);
        self.named += usize::from(slip.named);
        self.anyway += usize::from(slip.too_kind && slip.too_kind_anyway);
        let bad = slip.too_kind && !slip.too_kind_anyway;
        self.too_kind += usize::from(bad);
        self.permitted += usize::from(bad && !slip.forbidden);
        let sums = self.by_question.entry(slip.step.name()).or_default();
        sums[0] += 1;
        sums[1] += usize::from(bad);
    }
}

/// 300 in one run of all checks; `COLDCHASSIS_SLIPS` sets another number. It reports, and holds what a wrong
/// answer can do to what was measured when it was written.
#[test]
fn one_wrong_answer_is_reported_as_it_is() {
    let count = asked("COLDCHASSIS_SLIPS", 300);
    let each = |slipped: &mut Slipped, seed: u64| {
        if let Some(slip) = one_wrong_answer(seed) {
            slipped.slip(slip);
        }
    };
    let slipped = on_all_threads(count, each, Slipped::add);
    println!(
        "{} of {count} with one wrong answer: {} caught as a conflict, {} named by what the verdict rests on, {} \
         better than the unit because of it, {} of them with leave to plug it in, {} better with the true answer too",
        slipped.count,
        slipped.conflict,
        slipped.named,
        slipped.too_kind,
        slipped.permitted,
        slipped.anyway
    );
    for (question, [all, bad]) in &slipped.by_question {
        println!("  {question}: {bad} of {all}");
    }
    assert!(slipped.count as u64 > count / 2);
}

#[test]
fn the_engine_beats_other_orders_with_the_cover_off() {
    let units = asked("COLDCHASSIS_SIMULATED", 12);
    let figures = simulate(units, 1);
    for row in &figures.rows {
        println!(
            "{:30} {:22} {:22} {:7.1} s ± {:5.1}, {:4.1} steps",
            row.access.join("+"),
            row.kind,
            row.order,
            row.seconds,
            row.error,
            row.steps
        );
    }
    let total = |access: usize, order: &str| -> f64 {
        let of = |row: &&coldchassis_core::simulation::Row| {
            row.access.len() == access && row.order == order
        };
        figures.rows.iter().filter(of).map(|row| row.seconds).sum()
    };
    for access in 1..=3 {
        let engine = total(access, "engine");
        println!(
            "access {access}: engine to bank {:.3}, to information {:.3}, to information per second {:.3}, to \
             random {:.3}",
            engine / total(access, "bank"),
            engine / total(access, "information"),
            engine / total(access, "information_per_second"),
            engine / total(access, "random")
        );
    }
    for access in 2..=3 {
        assert!(total(access, "engine") <= total(access, "information"), "{access}");
        assert!(total(access, "engine") < total(access, "bank"), "{access}");
    }
}
