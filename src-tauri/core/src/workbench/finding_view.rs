//! What was found, as a shell lists it.

use serde::Serialize;
use serde_json::Value;

use super::proof::is_of_repair;
use super::reading_words::meter_line;
use crate::inspection::{Answer, CANT_TELL, Findings, LIVE_TEST, Question, ReadingId, TouchPart};
use crate::store::Finding;
use crate::words::{Message, Quantity, Words, farads, hertz, ohms, volts, watts};

/// One finding in the list of what was found.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct FindingView {
    /// Its path, such as `answers.plug`.
    pub path: String,
    /// What was asked.
    pub name: String,
    /// What was found, in words.
    pub found: String,
    /// The question that asks for it again; none for a reading.
    pub question: Option<String>,
    /// The ids of the answers given, where there are answers to choose from.
    pub answers: Vec<String>,
    /// What was found, as it is kept.
    pub value: Value,
    /// Who found it.
    pub author: String,
    /// When, UTC milliseconds.
    #[ts(type = "number")]
    pub at: i64,
}

/// Findings in the order of the bank, then tubes, values and readings.
pub(super) fn in_order(kept: &[Finding]) -> impl Iterator<Item = &Finding> {
    let place = |finding: &&Finding| match finding.key.split_once('.') {
        Some(("answers", id)) => {
            (0, Question::ALL.iter().position(|question| question.id() == id).unwrap_or(usize::MAX))
        }
        Some(("values" | "left_open", _)) => (2, 0),
        Some(_) => (3, 0),
        None => (1, 0),
    };
    // Repairs and their proof are shown by themselves.
    let mut kept: Vec<&Finding> = kept.iter().filter(|kept| !is_of_repair(&kept.key)).collect();
    // Stable: within a group the record's own order stays.
    kept.sort_by_key(place);
    kept.into_iter()
}

pub(super) fn finding_view(kept: &Finding, findings: &Findings, words: &Words) -> FindingView {
    let question = kept.key.strip_prefix("answers.").and_then(Question::of);
    let name = match (question, kept.key.split_once('.')) {
        (Some(question), _) => format!("finding-{}", question.id()),
        (None, Some(("left_open", reading))) if ReadingId::of(reading).is_some() => {
            format!("finding-{reading}")
        }
        (None, Some(("values" | "left_open", value))) => format!("finding-value-{value}"),
        (None, Some((LIVE_TEST, part))) => format!("finding-live_test-{part}"),
        (None, Some((_, reading))) => format!("finding-{reading}"),
        (None, None) => format!("finding-{}", kept.key),
    };
    let found =
        match question.and_then(|question| Some((question, findings.answers.get(&question)?))) {
            Some((question, answer)) => answer_text(question, answer, words),
            None if kept.key == "meter" => meter_line(&findings.meter, words),
            None => reading_text(&kept.key, &kept.value)
                .map(|figure| words.write(&figure))
                .or_else(|| live_test_text(&kept.key, &kept.value, words))
                .unwrap_or_else(|| figure_text(&kept.value, words)),
        };
    FindingView {
        path: kept.key.clone(),
        name: words.say_id(&name),
        found,
        question: asked_by(&kept.key),
        answers: answer_ids(&kept.value),
        value: kept.value.clone(),
        author: kept.author.clone(),
        at: kept.at,
    }
}

/// The question that asks for a finding again.
fn asked_by(key: &str) -> Option<String> {
    match key.split_once('.') {
        Some(("answers", question)) => Some(question.to_owned()),
        Some(("left_open", reading)) if ReadingId::of(reading).is_some() => {
            Some(format!("readings.{reading}"))
        }
        Some(("values" | "left_open", value)) => Some(format!("values.{value}")),
        None if key == "tubes" => Some(Question::TubeList.id().to_owned()),
        _ => None,
    }
}

/// The ids of the answers in what is kept; none in a figure.
fn answer_ids(value: &Value) -> Vec<String> {
    match value {
        Value::String(id) => vec![id.clone()],
        Value::Array(ids) => ids.iter().filter_map(Value::as_str).map(str::to_owned).collect(),
        Value::Bool(_) => vec![CANT_TELL.to_owned()],
        _ => Vec::new(),
    }
}

/// A reading with its unit; nothing where it is no figure, or no reading.
fn reading_text(key: &str, value: &Value) -> Option<Quantity> {
    let reading = key.strip_prefix("readings.")?;
    let figure = value.as_f64()?;
    Some(match reading {
        "touch_test_volts" => volts(figure),
        "insulation_megohms" => ohms(figure * 1e6),
        _ => ohms(figure),
    })
}

/// What is kept of a live touch test; nothing of anything else.
fn live_test_text(key: &str, value: &Value, words: &Words) -> Option<String> {
    match TouchPart::of_finding(key)? {
        TouchPart::Qualified => Some(words.say_id("answer-live_test-qualified")),
        TouchPart::Tripped(_) => Some(words.say_id("touch-tripped")),
        TouchPart::Protection => {
            value.as_str().map(|id| words.say_id(&format!("touch-protection-{id}")))
        }
        _ => value.as_f64().map(|figure| words.write(&volts(figure))),
    }
}

/// A value, rating plate or list of tubes as a person writes it.
fn figure_text(value: &Value, words: &Words) -> String {
    let figure = |name: &str| value.get(name).and_then(Value::as_f64);
    let parts = [
        figure("farads").map(farads),
        figure("ohms").map(ohms),
        figure("volts").map(volts),
        figure("hertz").map(hertz),
        figure("watts").map(watts),
    ];
    let parts = parts.iter().flatten().map(|part| words.write(part));
    let plain = |value: &Value| value.as_str().map_or_else(|| value.to_string(), str::to_owned);
    let list = match value {
        Value::Object(_) => parts.collect::<Vec<_>>().join(", "),
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
