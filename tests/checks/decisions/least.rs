//! The least that any order could take, unit by unit.

use coldchassis_core::inspection::{Answer, Findings, Judge, Order, Question};
use coldchassis_core::simulation::{
    ACCESS, Inspector, KINDS, Slips, inspect, least_seconds, unit_of_kind,
};
use coldchassis_core::supply::Supply;
use coldchassis_tests::seeds::{add, asked, on_all_threads};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

/// 2 of each kind in one run of all checks; `COLDCHASSIS_LEAST` sets another number.
#[test]
fn no_order_takes_less_than_whoever_knew_beforehand() {
    let units = asked("COLDCHASSIS_LEAST", 2);
    for access in ACCESS.iter().take(2) {
        let mut findings = Findings::new(Supply::new(120.0, 60.0));
        findings.access = access.iter().copied().collect();
        let each = |sums: &mut [f64; 3], place: u64| {
            let kind = KINDS[place as usize % KINDS.len()];
            let seed = 1_000_003 + place / KINDS.len() as u64;
            let mut findings = findings.clone();
            findings.answers.insert(Question::Kind, Answer::One(kind));
            let unit = unit_of_kind(kind, &mut ChaCha8Rng::seed_from_u64(seed));
            let mut judge = Judge::of(&findings);
            let inspector = || Inspector::of(&unit, Slips::CannotTell, seed);
            let least = least_seconds(&findings, &mut inspector(), &mut judge);
            let [engine, bank] = [Order::Engine, Order::Bank].map(|order| {
                let run = inspect(findings.clone(), &mut inspector(), &mut judge, order);
                assert!(run.seconds >= least, "{kind} {seed}: {} s, {least} s", run.seconds);
                run.seconds
            });
            add(sums, [least, engine, bank]);
        };
        let count = units * KINDS.len() as u64;
        let [least, engine, bank] = on_all_threads(count, each, add);
        let count = count as f64;
        println!(
            "access {}: least {:.1} s, engine {:.1} s, bank {:.1} s; to bank: least {:.3}, engine {:.3}",
            access.len(),
            least / count,
            engine / count,
            bank / count,
            least / bank,
            engine / bank
        );
        assert!(least > 0.0);
    }
}
