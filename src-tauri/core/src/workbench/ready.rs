//! Whether a unit may be called ready: only with the proof of its repair.

use std::collections::BTreeMap;

use serde_json::Value;
use uuid::Uuid;

use super::error::{Code, Problem};
use super::kept;
use super::proof::{READY, is_ready, outcomes};
use super::repairs::{CHOSEN, after_all};
use super::session::Workbench;
use super::views::InspectionView;
use crate::hazard::Class;
use crate::inspection::{Findings, Judge, Possible, brief, found_against};
use crate::remedy::{Bench, Chosen, Outcome, ProofMark, Setup, plan};
use crate::store::{Change, Inspection, Store, WorkState};
use crate::words::Message;

/// What the key of an entry of the live test begins with.
const LIVE_TEST: &str = "live_test.";

/// All that the proof of a repair is worked out from; needs no record.
pub(super) struct Proving {
    findings: Findings,
    chosen: Chosen,
    entries: BTreeMap<String, Value>,
    /// What the inspection that the unit is shown by found, where that is a later one: a proof says nothing
    /// of what was found after it.
    since: Option<Findings>,
    /// A live test was entered after the repair was chosen.
    is_tested: bool,
}

impl Proving {
    /// Asks for the proof.
    ///
    /// # Errors
    /// Nothing was chosen, a line of the plan is open or failed, or the unit was found worse since, or what was
    /// found since forbids power.
    pub(super) fn prove(
        &self,
        bench: &mut Bench,
        judge: &mut Option<Judge>,
    ) -> Result<(), Problem> {
        let refuse = |message| Err(Problem::new(Code::BadInput, message));
        let setup = Setup::of(&self.findings, &Possible::after(&self.findings));
        let after = after_all(&setup.sized(self.chosen.limit_ma), &self.chosen.stack)?;
        let Some(repaired) = after.last() else {
            return refuse(Message::new("proof-nothing-chosen"));
        };
        let plan = plan(repaired, self.chosen.class_y_ma(), bench);
        if plan.is_live {
            return refuse(Message::new("proof-still-live"));
        }
        let outcomes = outcomes(&plan, &self.entries);
        if !is_ready(&self.chosen, &plan, &outcomes) {
            return refuse(not_ready(&outcomes));
        }
        if self.is_tested && self.findings.touch_stop().is_some() {
            return against(found_against(&self.findings, &[]));
        }
        let Some(since) = &self.since else { return Ok(()) };
        let left = bench.brief(repaired).class;
        let found = brief(since, judge.get_or_insert_with(|| Judge::of(since)));
        if found.treat_as.is_worse_than(left) {
            return refuse(found_worse(found.treat_as, left));
        }
        against(found_against(since, &found.overlays))
    }
}

impl Workbench {
    /// Marks a unit ready after its repair, or takes that back.
    ///
    /// # Errors
    /// As [`Workbench::set_unit_state`] to ready.
    pub fn mark_ready(&mut self, inspection: Uuid, ready: bool) -> Result<InspectionView, Problem> {
        if !ready {
            return self.set(inspection, Change::UnitState(WorkState::ProofOpen.id().to_owned()));
        }
        proving_of(&self.store, inspection)?.prove(&mut self.repairs, &mut self.judge)?;
        self.set(inspection, Change::UnitState(READY.to_owned()))
    }

    /// Asks for the proof that a unit may be called ready by.
    ///
    /// # Errors
    /// As [`Proving::prove`].
    pub(super) fn prove_unit(&mut self, unit: Uuid) -> Result<(), Problem> {
        let nothing = || Problem::new(Code::BadInput, Message::new("proof-nothing-chosen"));
        let proving = proving(&self.store, unit)?.ok_or_else(nothing)?;
        proving.prove(&mut self.repairs, &mut self.judge)
    }
}

/// The inspection that the proof of a unit belongs to: the last in which a repair was chosen; nothing where
/// none was.
pub(super) fn proven_in(store: &Store, unit: Uuid) -> Result<Option<Uuid>, Problem> {
    Ok(store.latest_with(unit, CHOSEN)?)
}

/// What the proof of a unit is worked out from; nothing where no repair was chosen.
pub(super) fn proving(store: &Store, unit: Uuid) -> Result<Option<Proving>, Problem> {
    proven_in(store, unit)?.map(|inspection| proving_of(store, inspection)).transpose()
}

fn proving_of(store: &Store, inspection: Uuid) -> Result<Proving, Problem> {
    let (of, unit) = kept::find(store, inspection)?;
    let kept = store.findings(inspection)?;
    let chosen = kept::chosen(&kept).cloned();
    let since = chosen.as_ref().map_or(i64::MAX, |chosen| chosen.at);
    let is_tested = kept.iter().any(|kept| kept.key.starts_with(LIVE_TEST) && kept.at >= since);
    let order = |one: &Inspection| (one.started_at, one.id);
    let last = kept::last_with_something(store, unit.id)?.filter(|last| order(last) > order(&of));
    Ok(Proving {
        findings: kept::read(store, &of, &unit)?,
        chosen: chosen.map_or(Ok(Chosen::none()), |kept| Chosen::read(kept.value))?,
        entries: kept::entries(store, inspection)?,
        since: last.map(|last| kept::read(store, &last, &unit)).transpose()?,
        is_tested,
    })
}

/// Why a unit may not be marked ready: lines are open or failed.
fn not_ready(outcomes: &[Outcome]) -> Message {
    let is_left = |one: &&Outcome| one.mark != ProofMark::Passed;
    let name = |one: &Outcome| Message::new(format!("proof-{}", one.planned.line.id()));
    Message::new("proof-not-ready")
        .list("lines", outcomes.iter().filter(is_left).map(name).collect())
}

/// Refuses where something that was found since the repair speaks against power, saying the first of it.
fn against(found: Vec<Message>) -> Result<(), Problem> {
    let Some(why) = found.into_iter().next() else { return Ok(()) };
    Err(Problem::new(Code::BadInput, Message::new("proof-held-back").message("why", why)))
}

/// Why a unit may not be marked ready: it was found worse since.
fn found_worse(found: Class, left: Class) -> Message {
    let inline = |class: Class| Message::new(format!("class-{}-inline", class.id()));
    Message::new("proof-found-worse").message("found", inline(found)).message("left", inline(left))
}
