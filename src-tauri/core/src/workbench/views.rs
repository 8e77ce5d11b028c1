//! What a shell shows: plain data, already in the inspector's language.

use serde::Serialize;
use serde_json::{Value, json};
use uuid::Uuid;

use super::file_views::AssessView;
use super::finding_view::{FindingView, finding_view, in_order};
use super::heaters::heater_hint;
use super::photos::PhotoView;
use super::question_views::{QuestionView, also, hints, step_view};
use super::tag::{Tag, tag};
use super::upkeep::ENGINE;
use crate::hazard::{Class, Signal};
use crate::inspection::{Findings, Verdict};
use crate::store::{Finding, Inspection, Unit, Verdict as Kept};
use crate::supply::{PRESETS, Supply};
use crate::words::Words;

/// One line of the list of units.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct UnitView {
    /// Its id.
    pub id: Uuid,
    /// Its number for people, `U-0042`.
    pub label: String,
    /// What people call it.
    pub name: String,
    /// Where it stands.
    pub place: String,
    /// What kind it is.
    pub kind: Option<String>,
    /// It belongs to the demonstration.
    pub demo: bool,
    /// Its last inspection.
    pub inspection: Option<Uuid>,
    /// The class of the last verdict.
    pub treat_as: Option<String>,
    /// Its basis.
    pub basis: Option<String>,
    /// The sign that goes with that class.
    pub signal: Option<Signal>,
    /// When anything about it was last changed, UTC milliseconds.
    #[ts(type = "number")]
    pub changed_at: i64,
}

/// An inspection as it stands.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct InspectionView {
    /// The inspection.
    pub id: Uuid,
    /// The unit.
    pub unit: UnitView,
    /// What it is to be plugged into.
    pub supply: Supply,
    /// How far the inspector may go.
    pub access: Vec<&'static str>,
    /// What was found.
    pub findings: Vec<FindingView>,
    /// The photos, in the order in which they were added.
    pub photos: Vec<PhotoView>,
    /// Something was done on this device that an undo takes back.
    pub can_undo: bool,
    /// The other inspections of the unit, newest first.
    pub others: Vec<OtherView>,
    /// The verdict for scripts.
    pub verdict: AssessView,
    /// The verdict for people.
    pub tag: Tag,
    /// What the list of tubes reads as, as a hint; nothing where there is no list.
    pub heaters: Option<String>,
    /// The classes still possible, worst first.
    pub classes: Vec<Class>,
    /// What to ask next; nothing when asking can no longer better the verdict.
    pub question: Option<QuestionView>,
    /// Questions that add a caution and are not answered yet.
    pub also: Vec<QuestionView>,
    /// Questions that only hint at what is likely and are not answered yet.
    pub hints: Vec<QuestionView>,
}

/// Another inspection of the same unit.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct OtherView {
    /// When it began, UTC milliseconds.
    #[ts(type = "number")]
    pub at: i64,
    /// The unit with that inspection's class.
    pub unit: UnitView,
}

/// A supply to choose.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct PresetView {
    /// Its id.
    pub id: &'static str,
    /// In words.
    pub text: String,
    /// The supply.
    pub supply: Supply,
}

/// The supplies to choose from: what a unit is plugged into, not what its plate says.
pub fn presets(words: &Words) -> Vec<PresetView> {
    PRESETS
        .iter()
        .filter(|preset| preset.of_outlet)
        .map(|preset| PresetView {
            id: preset.id,
            text: words.say_id(&format!("preset-{}", preset.id)),
            supply: preset.supply,
        })
        .collect()
}

/// What a snapshot was made of; one made of something else says nothing any more, and no class is
/// better than a kinder one. What came from another device may be of an earlier time, so its place in the log counts.
pub(super) fn made_of(unit: &Unit, place: i64) -> Value {
    json!({"place": place, "supply": unit.supply, "engine": ENGINE})
}

pub(super) fn unit_view(
    unit: &Unit,
    inspection: Option<&Inspection>,
    kept: Option<&Kept>,
    place: i64,
) -> UnitView {
    let current = inspection.map(|_| made_of(unit, place));
    let kept = kept.filter(|kept| kept.verdict.get("made_of") == current.as_ref());
    let field = |name: &str| {
        let value = kept.and_then(|kept| kept.verdict.get(name));
        value.and_then(serde_json::Value::as_str).map(str::to_owned)
    };
    UnitView {
        id: unit.id,
        label: unit.label(),
        name: unit.name.clone().unwrap_or_default(),
        place: unit.place.clone().unwrap_or_default(),
        kind: unit.kind.clone(),
        demo: unit.demo,
        inspection: inspection.map(|inspection| inspection.id),
        signal: field("treat_as").and_then(|class| Class::of(&class)).map(Class::signal),
        treat_as: field("treat_as"),
        basis: field("basis"),
        changed_at: unit.changed_at,
    }
}

pub(super) fn inspection_view(
    unit: UnitView,
    findings: &Findings,
    verdict: &Verdict,
    kept: &[Finding],
    words: &Words,
) -> InspectionView {
    InspectionView {
        id: unit.inspection.unwrap_or_default(),
        supply: findings.supply,
        access: findings.access.iter().map(|access| access.id()).collect(),
        findings: in_order(kept).map(|kept| finding_view(kept, findings, words)).collect(),
        photos: Vec::new(),
        can_undo: false,
        others: Vec::new(),
        verdict: AssessView::from(verdict),
        tag: tag(findings, verdict, words),
        heaters: heater_hint(findings, words),
        classes: verdict.classes.clone(),
        question: verdict.next.map(|next| step_view(next.step, words)),
        also: also(findings, kept, words),
        hints: hints(findings, words),
        unit,
    }
}
