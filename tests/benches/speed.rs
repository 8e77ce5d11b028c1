//! How fast the core is, and how that compares with an outside solver on the same circuits in the same run.
//!
//! Prints each figure beside its bound; judges nothing, for what else the machine does counts. One core, release build:
//! `make bench`.

use std::hint::black_box;
use std::time::{Duration, Instant};

use coldchassis_core::arrangement::{Arrangement, Values, all, read_exposure};
use coldchassis_core::hazard::table;
use coldchassis_core::inspection::{
    Access, Answer, Findings, Foreseen, Judge, PartValue, Question, Shape, Step, ValueId, assess,
    assess_next,
};
use coldchassis_core::simulation::{ACCESS, Inspector, KINDS, Slips, unit_of_kind};
use coldchassis_core::supply::Supply;
use coldchassis_figures::{At, Row, Unit};
use coldchassis_tests::pace::best_of_five;
use coldchassis_tests::spice::{random_cases, thevenin_batch};
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

const BENCH: &str = "Verdicts";
const SEED: u64 = 20_260_301;

fn main() {
    // Tables from data files are read once; that is not what is measured.
    let supply = Supply::new(120.0, 60.0);
    black_box(assess(&Findings::new(supply), &mut Judge::of(&Findings::new(supply))));
    tables(&supply);
    changes();
    guided();
    first_turns();
    outside();
}

/// The full table of every arrangement, each computed on its own.
fn tables(supply: &Supply) {
    let values = Values::default();
    let start = Instant::now();
    for arrangement in all() {
        black_box(table(black_box(arrangement), supply, supply.volts, &values));
    }
    let cold = Unit::Millis.of(start.elapsed());
    let name = format!("all {} tables, each anew", all().len());
    Row::one(BENCH, name, Unit::Millis, cold).at_most(At::Median, 150.0, 2).tell();
    let timed = |arrangement: &Arrangement| {
        best_of_five(|| {
            black_box(table(black_box(arrangement), supply, supply.volts, &values));
        })
    };
    let times: Vec<Duration> = all().iter().map(timed).collect();
    let row = Row::times(BENCH, "table of each arrangement", Unit::Micros, &times);
    row.note("each the best of five").at_most(At::Most, 80.0, 2).tell();
}

/// One change to a random inspection, to the new verdict.
fn changes() {
    let mut rng = ChaCha8Rng::seed_from_u64(SEED);
    let mut times: [(&str, Vec<Duration>); 4] =
        [("answer", vec![]), ("value", vec![]), ("supply", vec![]), ("tube list", vec![])];
    for _ in 0..500 {
        let mut findings = random_findings(&mut rng);
        let mut judge = Judge::of(&findings);
        assess(&findings, &mut judge);
        for (kind, times) in &mut times {
            change(&mut findings, kind, &mut rng);
            let start = Instant::now();
            black_box(assess(black_box(&findings), &mut judge));
            times.push(start.elapsed());
        }
    }
    for (kind, times) in times {
        let row = Row::times(BENCH, format!("changed {kind} to verdict"), Unit::Millis, &times);
        row.at_most(At::P99, 10.0, 2).tell();
    }
}

/// Every turn of guided inspections: from a new answer, value or reading to the verdict and the next question.
fn guided() {
    let mut all = Vec::new();
    let mut after: [(&str, Vec<Duration>); 3] =
        [("an answer", vec![]), ("a value", vec![]), ("a reading", vec![])];
    for access in ACCESS {
        let mut times = Vec::new();
        for seed in 0..20 {
            for &kind in KINDS {
                let unit = unit_of_kind(kind, &mut ChaCha8Rng::seed_from_u64(seed));
                let mut findings = Findings::new(Supply::new(120.0, 60.0));
                findings.access = access.iter().copied().collect();
                let mut inspector = Inspector::of(&unit, Slips::CannotTell, seed);
                let (mut judge, mut foreseen) = (Judge::of(&findings), Foreseen::default());
                assess_next(&findings, &mut judge, &mut foreseen);
                findings.answers.insert(Question::Kind, Answer::One(kind));
                let mut step = Step::Ask(Question::Kind);
                loop {
                    let start = Instant::now();
                    let verdict =
                        black_box(assess_next(black_box(&findings), &mut judge, &mut foreseen));
                    let took = start.elapsed();
                    times.push(took);
                    let [answer, value, reading] = &mut after;
                    let (_, after) = match step {
                        Step::Ask(_) => answer,
                        Step::Read(_) => value,
                        Step::Measure(_) => reading,
                    };
                    after.push(took);
                    let Some(next) = verdict.next else { break };
                    step = next.step;
                    inspector.take(next.step, &mut findings);
                }
            }
        }
        let ids: Vec<&str> = access.iter().map(|access| access.id()).collect();
        all.extend(times.clone());
        tell_turns(&ids.join("+"), &times);
    }
    for (what, times) in after {
        tell_turns(&format!("after {what}"), &times);
    }
    tell_turns("all of these", &all);
}

fn tell_turns(which: &str, times: &[Duration]) {
    let name = format!("next question and verdict, {which}");
    let row = Row::times(BENCH, name, Unit::Millis, times);
    let bounded = |row: Row| row.at_most(At::P99, 5.0, 6);
    if row.at(At::P99).is_some() { bounded(row) } else { row }.tell();
}

/// The turn with the most to choose from, after the kind is told; each the best of 30, so that other work on the
/// machine says little.
fn first_turns() {
    for access in ACCESS {
        let turns = KINDS.iter().map(|kind| {
            let mut findings = Findings::new(Supply::new(120.0, 60.0));
            findings.access = access.iter().copied().collect();
            findings.answers.insert(Question::Kind, Answer::One(kind));
            let mut judge = Judge::of(&findings);
            let runs = (0..30).map(|_| {
                let start = Instant::now();
                black_box(assess(black_box(&findings), &mut judge));
                start.elapsed()
            });
            runs.min().unwrap_or_default()
        });
        let ids: Vec<&str> = access.iter().map(|access| access.id()).collect();
        let name = format!("first turn, {}", ids.join("+"));
        let turns: Vec<Duration> = turns.collect();
        let row = Row::times(BENCH, name, Unit::Millis, &turns);
        row.note("each the best of thirty").at_most(At::Most, 5.0, 6).tell();
    }
}

fn change(findings: &mut Findings, kind: &str, rng: &mut ChaCha8Rng) {
    match kind {
        "answer" => {
            let question = *Question::ALL.choose(rng).expect("there are questions");
            if let Some(answer) = random_answer(question, rng) {
                findings.answers.insert(question, answer);
            }
        }
        "value" => {
            let value = *ValueId::ALL.choose(rng).expect("there are values");
            let (low, high) =
                if value == ValueId::NetworkResistor { (150e3, 470e3) } else { (1e-9, 0.25e-6) };
            let value_of_part = rng.random_range(low..high);
            findings
                .values
                .insert(value, PartValue { value: value_of_part, measured: rng.random() });
        }
        "supply" => findings.supply = random_supply(rng),
        _ => findings.tubes = vec!["12SA7".to_owned(); rng.random_range(1..6)],
    }
}

fn random_supply(rng: &mut ChaCha8Rng) -> Supply {
    Supply::new(rng.random_range(90.0..260.0), if rng.random() { 50.0 } else { 60.0 })
}

fn random_findings(rng: &mut ChaCha8Rng) -> Findings {
    let mut findings = Findings::new(random_supply(rng));
    findings.access.insert(Access::CoverOff);
    let share: f64 = rng.random();
    for &question in Question::ALL {
        if rng.random_bool(share)
            && let Some(answer) = random_answer(question, rng)
        {
            findings.answers.insert(question, answer);
        }
    }
    findings
}

fn random_answer(question: Question, rng: &mut ChaCha8Rng) -> Option<Answer> {
    let entry = question.entry();
    let id = *entry.answers.choose(rng)?;
    match entry.shape {
        Shape::One => Some(Answer::One(id)),
        Shape::Several => Some(Answer::Several([id].into())),
        Shape::Number | Shape::Tubes => None,
    }
}

/// Thévenin equivalents of the chassis, here and by ngspice.
fn outside() {
    let cases = random_cases(&mut ChaCha8Rng::seed_from_u64(SEED), 1000);
    let start = Instant::now();
    black_box(thevenin_batch(&cases, "c"));
    let theirs = start.elapsed();
    let files: Vec<_> = cases
        .iter()
        .map(|case| read_exposure(case.exposure.clone()).expect("a random case is a valid file"))
        .collect();
    let start = Instant::now();
    let mut rows = 0_u32;
    for file in &files {
        let table = table(&file.arrangement, &file.supply, file.supply.volts, &file.values);
        rows += table.rows.len() as u32;
    }
    let ours = start.elapsed();
    let per_row = Unit::Micros.of(ours) / f64::from(rows);
    let per_case = Unit::Micros.of(theirs) / cases.len() as f64;
    let name = format!("a row with body and outcome, of {rows}");
    let row = Row::one(BENCH, name, Unit::Micros, per_row);
    row.beside("ngspice, whole process, a Thévenin equivalent", per_case).tell();
}
