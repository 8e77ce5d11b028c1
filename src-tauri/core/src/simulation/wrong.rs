//! What one wrong answer does to a verdict.

use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

use super::figures::ACCESS;
use super::inspector::{Inspector, Slips};
use super::run::{inspect, true_class};
use super::unit::PhysicalUnit;
use crate::inspection::{
    Findings, Judge, Order, Step, Verdict, assess, permission, read_supply_access,
};
use serde_json::json;

/// How an inspection with one wrong answer ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Slip {
    /// What was answered wrongly.
    pub step: Step,
    /// The findings contradict each other.
    pub conflict: bool,
    /// The verdict names the wrong finding as one that carries it.
    pub named: bool,
    /// Treat as is better than the unit is.
    pub too_kind: bool,
    /// The tag forbids to plug it in all the same.
    pub forbidden: bool,
    /// It was so without the wrong answer too.
    pub too_kind_anyway: bool,
}

/// Whether the tag lets anybody plug it in, as its class allows.
pub fn permits(findings: &Findings, verdict: &Verdict) -> bool {
    let allowed = format!("permission-{}", verdict.treat_as.id());
    permission(findings, verdict).iter().any(|message| message.id == allowed)
}

/// Inspects a random unit twice, the second time with one of the answers wrong; nothing where there was
/// nothing to answer wrongly.
pub fn one_wrong_answer(seed: u64) -> Option<Slip> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let unit = PhysicalUnit::random(&mut rng);
    let access = ACCESS.get(rng.random_range(0..ACCESS.len()))?;
    let ids: Vec<&str> = access.iter().map(|access| access.id()).collect();
    let (supply, access) = read_supply_access(unit.supply(), json!(ids)).ok()?;
    let start = Findings { access, ..Findings::new(supply) };
    let mut judge = Judge::of(&start);
    let mut inspector = Inspector::of(&unit, Slips::CannotTell, seed);
    let honest = inspect(start.clone(), &mut inspector, &mut judge, Order::Engine);
    let turn = rng.random_range(0..honest.steps.len().max(1));
    let mut inspector = Inspector::of(&unit, Slips::WrongAt(turn), seed);
    let run = inspect(start, &mut inspector, &mut judge, Order::Engine);
    let step = run.wrong?;
    let truth = true_class(&unit)?;
    let before = assess(&honest.findings, &mut judge);
    let verdict = assess(&run.findings, &mut judge);
    Some(Slip {
        step,
        conflict: !verdict.conflicts.is_empty(),
        named: verdict.rests_on.iter().any(|rests| rests.finding == step.finding()),
        too_kind: truth.is_worse_than(verdict.treat_as),
        forbidden: !permits(&run.findings, &verdict),
        too_kind_anyway: truth.is_worse_than(before.treat_as),
    })
}
