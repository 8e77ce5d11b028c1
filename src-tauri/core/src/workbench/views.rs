//! What a shell shows: plain data, already in the inspector's language.

use serde::Serialize;
use serde_json::{Value, json};
use uuid::Uuid;

use super::file_views::AssessView;
use super::photos::PhotoView;
use super::tag::{Tag, tag};
use crate::hazard::Class;
use crate::inspection::{
    Answer, CANT_TELL, Findings, Question, Shape, Step, ValueId, Verdict, cautions_to_look_at,
};
use crate::store::{Finding, Inspection, Unit, Verdict as Kept};
use crate::supply::{PRESETS, Supply};
use crate::words::{Message, Words, farads, hertz, ohms, volts, watts};

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
    /// When anything about it was last changed, UTC milliseconds.
    #[ts(type = "number")]
    pub changed_at: i64,
}

/// One answer to choose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct AnswerView {
    /// Its id.
    pub id: &'static str,
    /// In words.
    pub text: String,
}

/// A question as it is asked.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct QuestionView {
    /// Its id; `values.` before the id of a value.
    pub id: String,
    /// The question.
    pub text: String,
    /// Why it matters.
    pub why: String,
    /// How to look.
    pub how: String,
    /// What to beware of while looking.
    pub caution: Option<String>,
    /// Whether more than one answer may be given.
    pub several: bool,
    /// Places to look at one after the other before answering that there is nothing.
    pub places: Vec<String>,
    /// The answers to choose from; can't tell comes last. Empty where a figure is asked for.
    pub answers: Vec<AnswerView>,
}

/// One finding in the list of what was found.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct FindingView {
    /// Its path, such as `answers.plug`.
    pub path: String,
    /// What was asked.
    pub name: String,
    /// What was found, in words.
    pub found: String,
    /// Who found it.
    pub author: String,
    /// When, UTC milliseconds.
    #[ts(type = "number")]
    pub at: i64,
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
    /// The verdict for scripts.
    pub verdict: AssessView,
    /// The verdict for people.
    pub tag: Tag,
    /// The classes still possible, worst first.
    pub classes: Vec<Class>,
    /// What to ask next; nothing when asking can no longer better the verdict.
    pub question: Option<QuestionView>,
    /// Questions that add a caution and are not answered yet.
    pub also: Vec<QuestionView>,
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

/// The supplies to choose from.
pub fn presets(words: &Words) -> Vec<PresetView> {
    PRESETS
        .iter()
        .map(|preset| PresetView {
            id: preset.id,
            text: words.say_id(&format!("preset-{}", preset.id)),
            supply: preset.supply,
        })
        .collect()
}

/// What a snapshot was made of; one made of something else says nothing any more, and no class is
/// better than a kinder one.
pub(super) fn made_of(unit: &Unit, inspection: &Inspection) -> Value {
    json!({"changed_at": inspection.changed_at, "supply": unit.supply})
}

pub(super) fn unit_view(
    unit: &Unit,
    inspection: Option<&Inspection>,
    kept: Option<&Kept>,
) -> UnitView {
    let current = inspection.map(|inspection| made_of(unit, inspection));
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
        findings: kept.iter().map(|kept| finding_view(kept, findings, words)).collect(),
        photos: Vec::new(),
        verdict: AssessView::from(verdict),
        tag: tag(findings, verdict, words),
        classes: verdict.classes.clone(),
        question: verdict.next.map(|step| step_view(step, words)),
        also: cautions_to_look_at(findings)
            .into_iter()
            .map(|question| question_view(question, words))
            .collect(),
        unit,
    }
}

fn step_view(step: Step, words: &Words) -> QuestionView {
    match step {
        Step::Ask(question) => question_view(question, words),
        Step::Read(value) => value_view(value, words),
    }
}

/// A question in words.
pub fn question_view(question: Question, words: &Words) -> QuestionView {
    let id = question.id();
    let entry = question.entry();
    let answer =
        |answer: &'static str| AnswerView { id: answer, text: answer_words(id, answer, words) };
    let chosen = matches!(entry.shape, Shape::One | Shape::Several);
    let given = entry.answers.iter().copied().filter(|_| chosen);
    QuestionView {
        answers: given.chain([CANT_TELL]).map(answer).collect(),
        several: entry.shape == Shape::Several,
        places: places(question, words),
        ..asked(id.to_owned(), &format!("question-{id}"), words)
    }
}

fn value_view(value: ValueId, words: &Words) -> QuestionView {
    asked(format!("values.{}", value.id()), &format!("value-{}", value.id()), words)
}

fn asked(id: String, stem: &str, words: &Words) -> QuestionView {
    QuestionView {
        id,
        text: words.say_id(stem),
        why: words.say_id(&format!("{stem}-why")),
        how: words.say_id(&format!("{stem}-how")),
        caution: words.find(&Message::new(format!("{stem}-caution"))),
        several: false,
        places: Vec::new(),
        answers: Vec::new(),
    }
}

/// Where bare metal can be, in the order of looking.
const PLACES: [&str; 6] = ["shafts", "screws", "trim", "sockets", "tonearm", "cabinet"];

fn places(question: Question, words: &Words) -> Vec<String> {
    let place = |place: &&str| words.say_id(&format!("place-{place}"));
    if question == Question::BareMetal { PLACES.iter().map(place).collect() } else { Vec::new() }
}

fn answer_words(question: &str, answer: &str, words: &Words) -> String {
    let id = if answer == CANT_TELL {
        "answer-cant_tell".to_owned()
    } else {
        format!("answer-{question}-{answer}")
    };
    words.say_id(&id)
}

fn finding_view(kept: &Finding, findings: &Findings, words: &Words) -> FindingView {
    let question = kept.key.strip_prefix("answers.").and_then(Question::of);
    let name = match (question, kept.key.split_once('.')) {
        (Some(question), _) => format!("finding-{}", question.id()),
        (None, Some(("values" | "left_open", value))) => format!("finding-value-{value}"),
        (None, Some((_, reading))) => format!("finding-{reading}"),
        (None, None) => format!("finding-{}", kept.key),
    };
    let found =
        match question.and_then(|question| Some((question, findings.answers.get(&question)?))) {
            Some((question, answer)) => answer_text(question, answer, words),
            None => figure_text(&kept.value, words),
        };
    FindingView {
        path: kept.key.clone(),
        name: words.say_id(&name),
        found,
        author: kept.author.clone(),
        at: kept.at,
    }
}

/// A value, reading, rating plate or list of tubes as a person writes it.
fn figure_text(value: &Value, words: &Words) -> String {
    let figure = |name: &str| value.get(name).and_then(Value::as_f64);
    let parts = [
        figure("farads").map(farads),
        figure("ohms").map(ohms),
        figure("volts").map(volts),
        figure("hertz").map(hertz),
        figure("watts").map(watts),
    ];
    let plain = |value: &Value| value.as_str().map_or_else(|| value.to_string(), str::to_owned);
    let list = match value {
        Value::Object(_) => parts.into_iter().flatten().collect::<Vec<_>>().join(", "),
        Value::Array(items) => items.iter().map(plain).collect::<Vec<_>>().join(", "),
        Value::Bool(_) => words.say_id("answer-cant_tell"),
        other => plain(other),
    };
    match value.get("measured").and_then(Value::as_bool) {
        Some(true) => words.say(&Message::new("value-measured").text("value", list)),
        _ if figure("farads").is_some() || figure("ohms").is_some() => {
            words.say(&Message::new("value-marked").text("value", list))
        }
        _ => list,
    }
}

fn answer_text(question: Question, answer: &Answer, words: &Words) -> String {
    let say = |id: &str| Message::new(format!("answer-{}-{id}", question.id()));
    match answer {
        Answer::CantTell => words.say_id("answer-cant_tell"),
        Answer::One(id) => words.say(&say(id)),
        Answer::Several(ids) => {
            let list = ids.iter().map(|id| say(id)).collect();
            words.say(&Message::new("list").list("items", list))
        }
        Answer::Number(number) => number.to_string(),
    }
}
