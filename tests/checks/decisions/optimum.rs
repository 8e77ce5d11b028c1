//! The engine against the exact optimum, on parts of the real bank.

use coldchassis_core::inspection::{
    Access, Answer, Beliefs, Findings, Judge, Order, Question, Trial,
};
use coldchassis_core::simulation::KINDS;
use coldchassis_core::supply::Supply;
use coldchassis_tests::seeds::{add, asked, on_all_threads};
use rand::seq::index;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

const GROUPS: usize = 10;
const STEPS: usize = 8;
/// As many states as there is time for.
const LARGE_STATES: usize = 300_000;
/// More states than ten groups and eight steps have.
const STATES: usize = 5_000_000;

fn after_kind(kind: &'static str, access: &[Access]) -> Findings {
    let mut findings = Findings::new(Supply::new(120.0, 60.0));
    findings.access.extend(access);
    findings.answers.insert(Question::Kind, Answer::One(kind));
    findings
}

/// A part of the real bank: groups drawn by chance and steps that can part some of them.
fn sub_problem(whole: &[Trial], seed: u64) -> Trial {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let whole = &whole[rng.random_range(0..whole.len())];
    let (groups, steps) = whole.size();
    let wanted = rng.random_range(3..=GROUPS);
    let groups = index::sample(&mut rng, groups, wanted).into_vec();
    let wanted = rng.random_range(3..=STEPS.min(steps));
    let steps = index::sample(&mut rng, steps, wanted);
    let mut steps = steps.into_vec();
    steps.sort_unstable();
    let part = whole.part(&groups, &steps);
    if rng.random() { part } else { part.without_cant_tell() }
}

#[derive(Default)]
struct Ratios {
    count: usize,
    sum: f64,
    worst: f64,
    edges_sum: f64,
    edges_worst: f64,
    idle: usize,
}

impl Ratios {
    fn add(&mut self, other: Self) {
        self.count += other.count;
        self.sum += other.sum;
        self.worst = self.worst.max(other.worst);
        self.edges_sum += other.edges_sum;
        self.edges_worst = self.edges_worst.max(other.edges_worst);
        self.idle += other.idle;
    }

    fn weigh(&mut self, trial: &Trial) {
        let least = trial.optimum(STATES).expect("a small problem");
        if least == 0.0 {
            // Nothing to ask: no order may ask anything.
            assert_eq!(trial.seconds(Order::Engine), 0.0);
            self.idle += 1;
            return;
        }
        let ratio = trial.seconds(Order::Engine) / least;
        let edges = trial.seconds(Order::EdgesOnly) / least;
        assert!(ratio > 1.0 - 1e-9 && edges > 1.0 - 1e-9, "{ratio} {edges}");
        self.count += 1;
        self.sum += ratio;
        self.worst = self.worst.max(ratio);
        self.edges_sum += edges;
        self.edges_worst = self.edges_worst.max(edges);
    }
}

/// 60 in one run of all checks; `COLDCHASSIS_SUB_PROBLEMS` sets another number.
#[test]
fn parts_of_the_bank_take_hardly_more_than_the_least() {
    let wanted = asked("COLDCHASSIS_SUB_PROBLEMS", 60) as usize;
    let whole: Vec<Trial> = KINDS
        .iter()
        .map(|kind| {
            let findings = after_kind(kind, &[Access::CoverOff]);
            Trial::of(&findings, &mut Judge::of(&findings), &Beliefs::of(&findings))
        })
        .collect();
    let mut ratios = Ratios::default();
    let mut first = 0;
    // Those that end before they begin say nothing, and are drawn again.
    while ratios.count < wanted {
        let more = (wanted - ratios.count) as u64;
        let weigh =
            |ratios: &mut Ratios, seed: u64| ratios.weigh(&sub_problem(&whole, first + seed));
        ratios.add(on_all_threads(more, weigh, Ratios::add));
        first += more;
    }
    let count = ratios.count as f64;
    println!(
        "{} parts of the bank ({} more had nothing to ask): engine to optimum mean {:.4}, worst {:.4}; edge \
         cutting alone mean {:.4}, worst {:.4}",
        ratios.count,
        ratios.idle,
        ratios.sum / count,
        ratios.worst,
        ratios.edges_sum / count,
        ratios.edges_worst
    );
    assert!(ratios.sum / count <= 1.02, "mean {}", ratios.sum / count);
    assert!(ratios.worst <= 1.3, "worst {}", ratios.worst);
}

/// Some groups, drawn as often as they are likely, with every step that there is.
fn likely_part(whole: &Trial, groups: usize, seed: u64) -> Trial {
    let weights = whole.weights();
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let drawn = index::sample_weighted(&mut rng, weights.len(), |group| weights[group], groups);
    let steps: Vec<usize> = (0..whole.size().1).collect();
    whole.part(&drawn.expect("more groups than are drawn").into_vec(), &steps)
}

/// Larger parts with every step there is, where everybody can tell: how far any order could get beside the order
/// of the bank. 2 in one run of all checks; `COLDCHASSIS_LARGE` sets another number.
#[test]
fn beside_the_order_of_the_bank_the_optimum_of_large_parts_is_shown() {
    let wanted = asked("COLDCHASSIS_LARGE", 2);
    let groups = asked("COLDCHASSIS_LARGE_GROUPS", 20) as usize;
    let each = |sums: &mut [f64; 5], seed: u64| {
        let kind = KINDS[seed as usize % KINDS.len()];
        let findings = after_kind(kind, &[Access::CoverOff]);
        let beliefs = Beliefs::of(&findings);
        let whole = Trial::of(&findings, &mut Judge::of(&findings), &beliefs);
        let part = likely_part(&whole, groups, seed).without_cant_tell();
        let Some(least) = part.optimum(LARGE_STATES) else { return };
        let [engine, bank, information] =
            [Order::Engine, Order::Bank, Order::Information].map(|order| part.seconds(order));
        assert!(engine >= least * (1.0 - 1e-9) && bank >= least * (1.0 - 1e-9));
        add(sums, [1.0, least, engine, bank, information]);
    };
    let [count, least, engine, bank, information] = on_all_threads(wanted, each, add);
    println!(
        "{count} of {wanted} parts of {groups} groups: to bank: optimum {:.3}, engine {:.3}, information {:.3}",
        least / bank,
        engine / bank,
        information / bank
    );
    assert!(count > 0.0, "none could be searched whole");
}

/// From outside the whole bank is small enough for the optimum itself.
#[test]
fn from_outside_the_engine_takes_no_more_than_the_optimum_of_the_real_bank() {
    for &kind in KINDS {
        let findings = after_kind(kind, &[]);
        let trial = Trial::of(&findings, &mut Judge::of(&findings), &Beliefs::of(&findings));
        let least = trial.optimum(STATES).expect("six questions");
        let [engine, bank, information] =
            [Order::Engine, Order::Bank, Order::Information].map(|order| trial.seconds(order));
        println!(
            "{kind}: optimum {least:.2} s, engine {engine:.2}, bank {bank:.2}, information {information:.2}"
        );
        assert!(least > 1.0 && engine >= least - 1e-9);
        assert!(engine <= 1.02 * least, "{kind}: {engine} s against {least} s");
    }
}
