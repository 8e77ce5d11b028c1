//! The proof of a repair, line by line, and the re-inspection beside the first.

use std::collections::BTreeMap;

use serde::Serialize;
use serde_json::{Map, Value};
use uuid::Uuid;

use super::commands::found;
use super::error::Problem;
use super::kept;
use super::remedy_words::name;
use super::repairs::{CHOSEN, Case, after_all};
use super::session::Workbench;
use super::views::{InspectionView, UnitView, unit_view};
use crate::fields::FieldError;
use crate::hazard::Class;
use crate::inspection::TouchPosition;
use crate::remedy::{
    Chosen, Comparison, Entered, Outcome, Planned, ProofLine, ProofMark, ProofPlan, Setup, Who,
    evaluate, plan, read_entry,
};
use crate::store::{Inspection, Unit, WorkState};
use crate::words::{Message, Quantity, Words, milliamperes, number, ohms, volts};

/// What the keys of proof entries begin with.
pub(super) const PROOF: &str = "proof";

/// The state of a unit whose repair is proven.
pub(super) const READY: &str = WorkState::Ready.id();

/// One line of the plan.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ProofLineView {
    /// Which.
    pub id: ProofLine,
    /// What is to be shown.
    pub name: String,
    /// How it is done.
    pub how: String,
    /// The limit in words.
    pub limit: String,
    /// Its unit, as it is entered; nothing where it holds or does not.
    pub unit: String,
    /// How what is read is compared.
    pub comparison: Comparison,
    /// The positions of plug and switch that are read, each by itself.
    pub positions: Vec<TouchPosition>,
    /// What they are called.
    pub position_names: Vec<String>,
    /// Where the limit comes from, and how far it was checked.
    pub source: String,
    /// What to mind.
    pub caution: String,
    /// Who may do it.
    pub who: Who,
    /// The same in words.
    pub who_says: String,
    /// What was entered, as it is kept; nothing yet.
    pub entry: Option<Value>,
    /// What was entered, in words.
    pub entered: Option<String>,
    /// What it comes to.
    pub mark: ProofMark,
    /// The same in words.
    pub mark_says: String,
    /// The line that has to be shown before it; nothing where its turn has come.
    pub waits_for: Option<ProofLine>,
}

/// An inspection of before beside this one.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ComparedView {
    /// The first inspection of the unit.
    pub first: UnitView,
    /// When it began, UTC milliseconds.
    #[ts(type = "number")]
    pub at: i64,
    /// Its class and this one's.
    pub classes: [Class; 2],
    /// What changed, in sentences.
    pub sentences: Vec<String>,
    /// It is worse than it was.
    pub worse: bool,
}

/// The proof of a repair.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ProofView {
    /// What comes first.
    pub cautions: Vec<String>,
    /// The steps of the stack that is proven, by name; none where none was chosen.
    pub chosen: Vec<String>,
    /// The lines.
    pub lines: Vec<ProofLineView>,
    /// How many are open, passed and failed.
    pub counts: [usize; 3],
    /// No line is open or failed.
    pub ready: bool,
    /// It was marked ready, and still is.
    pub marked_ready: bool,
    /// How far it is, in a sentence.
    pub says: String,
    /// The first inspection beside this one; nothing where this is the first.
    pub compared: Option<ComparedView>,
}

impl Workbench {
    /// The proof plan for the stack that was chosen, with what was entered.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn proof(&mut self, inspection: Uuid) -> Result<ProofView, Problem> {
        let case = self.case(inspection)?;
        let kept = kept::entries(&self.store, inspection)?;
        let plan = self.plan_of(&case)?;
        let outcomes = outcomes(&plan, &kept);
        let (found, unit) = self.find(inspection)?;
        let compared = self.compared(&found, &unit, &case)?;
        let ready = is_ready(&case.chosen, &plan, &outcomes);
        // As the queue says it: by the last repair that was chosen, and by what was found since.
        let is_marked = ready && unit.state.as_deref() == Some(READY);
        let marked_ready = is_marked && self.prove_unit(unit.id).is_ok();
        let says = ProofWords { words: &self.words };
        let line = |one: &Outcome| {
            let entry = kept.get(one.planned.line.id());
            says.line(one, entry, before(&one.planned, &outcomes))
        };
        let lines = outcomes.iter().map(line);
        let count = |mark| outcomes.iter().filter(|one| one.mark == mark).count();
        let counts = [ProofMark::Open, ProofMark::Passed, ProofMark::Failed].map(count);
        let held = plan.is_live_straight.then_some("proof-never-live");
        let id = |id: &&str| self.words.say_id(id);
        Ok(ProofView {
            cautions: held.iter().chain(&CAUTIONS).map(id).collect(),
            chosen: case.chosen.stack.iter().map(|step| self.words.say(&name(*step))).collect(),
            lines: lines.collect(),
            counts,
            ready,
            marked_ready,
            says: says.progress(counts, case.chosen.stack.is_empty()),
            compared,
        })
    }

    /// Enters what was measured for a line.
    ///
    /// # Errors
    /// The line is none of this plan's or not its turn yet, or the entry does not fit it; what was entered before
    /// stays.
    pub fn enter_proof(
        &mut self,
        inspection: Uuid,
        line: &str,
        entry: Value,
    ) -> Result<InspectionView, Problem> {
        let case = self.case(inspection)?;
        let plan = self.plan_of(&case)?;
        let ids: Vec<&str> = plan.lines.iter().map(|planned| planned.line.id()).collect();
        let planned = plan.lines.iter().find(|planned| planned.line.id() == line);
        let planned = planned.ok_or_else(|| FieldError::one_of("line", &ids))?;
        read_entry(planned, entry.clone())?;
        let outcomes = outcomes(&plan, &kept::entries(&self.store, inspection)?);
        if let Some(first) = before(planned, &outcomes) {
            let name = Message::new(format!("proof-{}", first.id()));
            let message = Message::new("takes-line-in-turn").message("line", name);
            return Err(FieldError::new("line", message).into());
        }
        // A clock that was set back must not make it an entry of before the repair was chosen.
        let kept = self.store.findings(inspection)?;
        let chosen = kept::chosen(&kept).map_or(0, |kept| kept.at);
        self.set_after(inspection, found(&format!("{PROOF}.{line}"), entry), chosen)
    }

    fn plan_of(&mut self, case: &Case) -> Result<ProofPlan, Problem> {
        Ok(plan(&repaired(case)?, case.chosen.class_y_ma(), &mut self.repairs))
    }

    /// The first inspection of the unit beside this one.
    fn compared(
        &mut self,
        inspection: &Inspection,
        unit: &Unit,
        case: &Case,
    ) -> Result<Option<ComparedView>, Problem> {
        let all = self.store.inspections(unit.id)?;
        let first = all.into_iter().min_by_key(|one| (one.started_at, one.id));
        let Some(first) = first.filter(|first| first.id != inspection.id) else { return Ok(None) };
        let before = self.read(&first, unit)?;
        let verdict = self.verdict_on(&before);
        let classes = [verdict.treat_as, case.verdict.treat_as];
        let kept = self.store.latest_verdict(first.id)?;
        let place = self.store.place_in(&first)?;
        let currents = [&verdict, &case.verdict].map(|one| one.worst.milliamperes);
        let says = ProofWords { words: &self.words };
        Ok(Some(ComparedView {
            at: first.started_at,
            first: unit_view(unit, Some(&first), kept.as_ref(), place),
            sentences: says.compared(classes, currents),
            worse: classes[1].is_worse_than(classes[0]),
            classes,
        }))
    }
}

/// The unit as it is to be after the stack that was chosen.
fn repaired(case: &Case) -> Result<Setup, Problem> {
    let after = after_all(&case.setup, &case.chosen.stack)?;
    Ok(after.into_iter().next_back().unwrap_or_else(|| case.setup.clone()))
}

/// What the entries come to, line by line.
pub(super) fn outcomes(plan: &ProofPlan, entries: &BTreeMap<String, Value>) -> Vec<Outcome> {
    let outcome = |planned: &Planned| {
        let entered = entries.get(planned.line.id()).cloned();
        // One that fits the line no longer, because another stack was chosen since, is as good as none.
        evaluate(planned, entered.and_then(|entry| read_entry(planned, entry).ok()))
    };
    plan.lines.iter().map(outcome).collect()
}

/// The line that has to be shown before one that is done at live parts: no such line is done while any has failed,
/// or one with the plug out is open.
fn before(planned: &Planned, outcomes: &[Outcome]) -> Option<ProofLine> {
    let is_live = |one: &Planned| one.who == Who::QualifiedLive;
    if !is_live(planned) {
        return None;
    }
    let has_failed =
        |one: &&Outcome| one.mark == ProofMark::Failed && one.planned.line != planned.line;
    let is_open = |one: &&Outcome| one.mark == ProofMark::Open && !is_live(&one.planned);
    let bar = outcomes.iter().find(has_failed).or_else(|| outcomes.iter().find(is_open));
    bar.map(|one| one.planned.line)
}

/// Something was repaired, it is no longer live as found, and no line of its proof is open or failed.
pub(super) fn is_ready(chosen: &Chosen, plan: &ProofPlan, outcomes: &[Outcome]) -> bool {
    !chosen.stack.is_empty()
        && !plan.is_live
        && outcomes.iter().all(|one| one.mark == ProofMark::Passed)
}

/// Takes what is no finding out of what a findings file is put together from.
pub(super) fn take_repairs(file: &mut Map<String, Value>) {
    file.remove(PROOF);
    file.remove(CHOSEN);
}

/// Whether something that is kept is about a repair, not about what was found.
pub(super) fn is_of_repair(key: &str) -> bool {
    key == CHOSEN || key.split('.').next() == Some(PROOF)
}

const CAUTIONS: [&str; 4] =
    ["repair-caution-codes", "repair-caution-who", "repair-caution-unplug", "proof-caution-live"];

/// Puts a proof into words.
struct ProofWords<'a> {
    words: &'a Words,
}

impl ProofWords<'_> {
    fn line(
        &self,
        outcome: &Outcome,
        entry: Option<&Value>,
        waits_for: Option<ProofLine>,
    ) -> ProofLineView {
        let Planned { line, limit, unit, comparison, source, mark, who, positions } =
            &outcome.planned;
        let say = |id: String| self.words.say(&Message::new(id));
        let names = positions.iter().map(|one| say(format!("touch-position-{}", one.id())));
        ProofLineView {
            id: *line,
            name: say(format!("proof-{}", line.id())),
            how: say(format!("proof-{}-how", line.id())),
            limit: self.limit(*comparison, *limit, unit),
            unit: (*unit).to_owned(),
            comparison: *comparison,
            positions: positions.clone(),
            position_names: names.collect(),
            source: self.source(source, mark),
            caution: say(format!("proof-{}-caution", line.id())),
            who: *who,
            who_says: say(format!("proof-who-{}", who.id())),
            entry: outcome.entered.as_ref().and(entry).cloned(),
            entered: outcome.entered.as_ref().map(|entered| self.entered(entered, unit)),
            mark: outcome.mark,
            mark_says: say(format!("proof-mark-{}", outcome.mark.id())),
            waits_for,
        }
    }

    fn limit(&self, comparison: Comparison, limit: Option<f64>, unit: &str) -> String {
        let figure = limit.map(|limit| with_unit(limit, unit)).unwrap_or_default();
        self.words.say(&match comparison {
            Comparison::Yes => Message::new("proof-limit-yes"),
            Comparison::AtLeast => Message::new("proof-limit-least").text("limit", figure),
            Comparison::AtMost => Message::new("proof-limit-most").text("limit", figure),
            Comparison::AtMostWithLead => Message::new("proof-limit-lead").text("limit", figure),
        })
    }

    fn source(&self, source: &str, mark: &str) -> String {
        let mark = mark.split([',', ' ', '-']).next().unwrap_or_default();
        let text = Message::new("proof-source")
            .message("source", Message::new(format!("source-{source}")))
            .message("mark", Message::new(format!("source-mark-{mark}")));
        self.words.say(&text)
    }

    fn entered(&self, entered: &Entered, unit: &str) -> String {
        match entered {
            Entered::Read(read) => self.words.write(&with_unit(*read, unit)),
            Entered::OverRange => self.words.say_id("reading-over-range"),
            Entered::Holds(true) => self.words.say_id("proof-holds"),
            Entered::Holds(false) => self.words.say_id("proof-holds-not"),
            Entered::Positions(read) => {
                let each = read.iter().map(|(position, read)| {
                    let name = Message::new(format!("touch-position-{}", position.id()));
                    Message::new("proof-position")
                        .message("position", name)
                        .text("read", with_unit(*read, unit))
                });
                self.words.say(&Message::new("list").list("items", each.collect()))
            }
        }
    }

    fn progress(&self, counts: [usize; 3], nothing: bool) -> String {
        let [open, passed, failed] = counts.map(|count| count.to_string());
        self.words.say(&match counts {
            _ if nothing => Message::new("proof-nothing-chosen"),
            [0, _, 0] => Message::new("proof-all-passed"),
            _ => Message::new("proof-progress")
                .text("open", open)
                .text("passed", passed)
                .text("failed", failed),
        })
    }

    fn compared(&self, classes: [Class; 2], currents: [f64; 2]) -> Vec<String> {
        let [before, now] =
            classes.map(|class| Message::new(format!("class-{}-inline", class.id())));
        let [before_ma, now_ma] = currents.map(milliamperes);
        let sentence = Message::new("proof-compared")
            .message("before", before)
            .message("now", now)
            .text("before_current", before_ma)
            .text("now_current", now_ma);
        let turn = match classes {
            [before, now] if now.is_worse_than(before) => "proof-compared-worse",
            [before, now] if before.is_worse_than(now) => "proof-compared-better",
            _ => "proof-compared-same",
        };
        vec![self.words.say(&sentence), self.words.say_id(turn)]
    }
}

/// A figure with the unit of its line.
fn with_unit(figure: f64, unit: &str) -> Quantity {
    match unit {
        "Ω" => ohms(figure),
        "MΩ" => ohms(figure * 1e6),
        "V" => volts(figure),
        "mA" => milliamperes(figure),
        _ => number(figure),
    }
}
