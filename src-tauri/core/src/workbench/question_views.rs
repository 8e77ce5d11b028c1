//! Questions as a shell shows them: in words, with the way in which each is answered.

use serde::Serialize;

use super::error::Problem;
use super::session::Workbench;
use crate::arrangement::ReadingId;
use crate::fields::FieldError;
use crate::inspection::{
    CANT_TELL, Findings, Question, Role, Shape, Step, ValueId, cautions_to_look_at, may_have_rating,
};
use crate::store::Finding;
use crate::words::{Message, Words};

/// What stands before the id of a value, to tell it from a question.
const VALUES: &str = "values.";
/// What stands before the id of a meter reading.
const READINGS: &str = "readings.";
/// The rating plate's figures, asked for like a value.
pub(super) const RATED: &str = "values.rated";
/// The rating plate was looked for in vain.
const RATED_LEFT_OPEN: &str = "left_open.rated";

/// How a question is answered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
pub enum Entry {
    /// One of the answers.
    One,
    /// One or more of the answers; the first stands alone, and so does can't tell.
    Several,
    /// A whole number.
    Count,
    /// The types of the tubes.
    Tubes,
    /// A figure in farads.
    Farads,
    /// A figure in ohms.
    Ohms,
    /// Volts, hertz and watts, each where the plate gives it.
    Rated,
    /// Ohms on a meter, or above its range.
    Reading,
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
    /// Its id; `values.` before the id of a value, `readings.` before that of a reading.
    pub id: String,
    /// The question.
    pub text: String,
    /// Why it matters.
    pub why: String,
    /// How to look.
    pub how: String,
    /// What to beware of while looking.
    pub caution: Option<String>,
    /// How it is answered.
    pub entry: Entry,
    /// Places to look at one after the other before answering that there is nothing.
    pub places: Vec<String>,
    /// The answers to choose from; can't tell comes last. Empty where a value is asked for, which is left
    /// open instead.
    pub answers: Vec<AnswerView>,
}

impl Workbench {
    /// A question by its id, or a value by its path, such as `values.line_capacitor`.
    ///
    /// # Errors
    /// There is none of that name.
    pub fn question(&self, id: &str) -> Result<QuestionView, Problem> {
        if id == RATED {
            return Ok(rated_view(&self.words));
        }
        let value = id.strip_prefix(VALUES).and_then(ValueId::of);
        if let Some(value) = value {
            return Ok(value_view(value, &self.words));
        }
        let reading = id.strip_prefix(READINGS).and_then(ReadingId::of);
        if let Some(reading) = reading.filter(|reading| reading.probes().is_some()) {
            return Ok(reading_view(reading, &self.words));
        }
        let question = Question::of(id).ok_or_else(|| {
            let keys = Question::IDS.join(", ");
            FieldError::new("question", Message::new("takes-known-keys").text("keys", keys))
        })?;
        Ok(question_view(question, &self.words))
    }
}

/// What to ask next.
pub(super) fn step_view(step: Step, words: &Words) -> QuestionView {
    match step {
        Step::Ask(question) => question_view(question, words),
        Step::Read(value) => value_view(value, words),
        Step::Measure(reading) => reading_view(reading, words),
    }
}

/// Questions that add a caution and are not answered yet. The rating plate comes first: the wrong
/// supply forbids all power.
pub(super) fn also(findings: &Findings, kept: &[Finding], words: &Words) -> Vec<QuestionView> {
    let is_rated = |kept: &Finding| kept.key == RATED || kept.key == RATED_LEFT_OPEN;
    let asked = may_have_rating(findings) && !kept.iter().any(is_rated);
    let rated = asked.then(|| rated_view(words));
    let cautions = cautions_to_look_at(findings);
    let cautions = cautions.into_iter().map(|question| question_view(question, words));
    rated.into_iter().chain(cautions).collect()
}

/// Questions that prove nothing, but hint at what is likely, and are not answered yet.
pub(super) fn hints(findings: &Findings, words: &Words) -> Vec<QuestionView> {
    let is_open = |question: &Question| {
        let has_tubes = *question == Question::TubeList && !findings.tubes.is_empty();
        !has_tubes && !findings.answers.contains_key(question)
    };
    Question::ALL
        .iter()
        .filter(|question| question.entry().role == Role::Soft && is_open(question))
        .map(|question| question_view(*question, words))
        .collect()
}

/// A question in words.
pub fn question_view(question: Question, words: &Words) -> QuestionView {
    let id = question.id();
    let properties = question.entry();
    let answer =
        |answer: &'static str| AnswerView { id: answer, text: answer_words(id, answer, words) };
    let entry = match properties.shape {
        Shape::One => Entry::One,
        Shape::Several => Entry::Several,
        Shape::Number => Entry::Count,
        Shape::Tubes => Entry::Tubes,
    };
    let given = properties.answers.iter().copied();
    QuestionView {
        answers: given.chain([CANT_TELL]).map(answer).collect(),
        places: places(question, words),
        ..asked(id.to_owned(), &format!("question-{id}"), entry, words)
    }
}

fn value_view(value: ValueId, words: &Words) -> QuestionView {
    let entry = if value == ValueId::NetworkResistor { Entry::Ohms } else { Entry::Farads };
    asked(format!("{VALUES}{}", value.id()), &format!("value-{}", value.id()), entry, words)
}

fn reading_view(reading: ReadingId, words: &Words) -> QuestionView {
    QuestionView {
        id: format!("{READINGS}{}", reading.id()),
        text: words.say_id(&format!("reading-{}", reading.id())),
        why: words.say_id("reading-asked-why"),
        how: words.say_id("reading-asked-how"),
        caution: Some(words.say_id("reading-asked-caution")),
        entry: Entry::Reading,
        places: Vec::new(),
        answers: Vec::new(),
    }
}

fn rated_view(words: &Words) -> QuestionView {
    asked(RATED.to_owned(), "value-rated", Entry::Rated, words)
}

fn asked(id: String, stem: &str, entry: Entry, words: &Words) -> QuestionView {
    QuestionView {
        id,
        text: words.say_id(stem),
        why: words.say_id(&format!("{stem}-why")),
        how: words.say_id(&format!("{stem}-how")),
        caution: words.find(&Message::new(format!("{stem}-caution"))),
        entry,
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

pub(super) fn answer_words(question: &str, answer: &str, words: &Words) -> String {
    let id = if answer == CANT_TELL {
        "answer-cant_tell".to_owned()
    } else {
        format!("answer-{question}-{answer}")
    };
    words.say_id(&id)
}
