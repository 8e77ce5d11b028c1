//! Random findings files: of an honest inspector, of one who errs, and of nobody at all.

use std::collections::{BTreeMap, BTreeSet};

use coldchassis_core::arrangement::{Arrangement, Isolation, Reach};
use coldchassis_core::inspection::{
    Access, Answer, Findings, Question, Shape, ValueId, read_answer, read_findings, stays,
};
use coldchassis_core::supply::Supply;
use proptest::collection::vec;
use proptest::prelude::{Strategy, any, prop_oneof};
use proptest::sample::select;
use serde_json::{Value, json};

use crate::arrangements::{arrangement, arrangement_where, supply};

/// A findings file in parts, so that it can be written in any order.
#[derive(Clone, Debug)]
pub struct Draft {
    pub supply: Supply,
    pub access: BTreeSet<Access>,
    pub answers: BTreeMap<Question, Value>,
    pub values: BTreeMap<ValueId, Value>,
}

/// Who answers.
#[derive(Clone, Copy, Debug)]
pub enum Inspector {
    /// Says what is so of some arrangement.
    Honest,
    /// The same, but one answer in eight is anything.
    Erring,
    /// Says anything.
    Random,
}

impl Draft {
    pub fn json(&self) -> Value {
        let by_id =
            |(question, answer): (&Question, &Value)| (question.id().to_owned(), answer.clone());
        let answers: serde_json::Map<String, Value> = self.answers.iter().map(by_id).collect();
        let by_id = |(id, value): (&ValueId, &Value)| (id.id().to_owned(), value.clone());
        let values: serde_json::Map<String, Value> = self.values.iter().map(by_id).collect();
        let access: Vec<&str> = self.access.iter().map(|access| access.id()).collect();
        json!({"supply": self.supply, "access": access, "answers": answers, "values": values})
    }

    pub fn findings(&self) -> Findings {
        let file = self.json();
        read_findings(file.clone()).unwrap_or_else(|error| panic!("{error:?}: {file}"))
    }
}

/// One answer to a question, picked by a number: of this arrangement, or any.
pub fn answer(question: Question, pick: u16, truth: Option<&Arrangement>) -> Value {
    let entry = question.entry();
    if pick.is_multiple_of(10) {
        return json!("cant_tell");
    }
    let pick = usize::from(pick) / 10;
    match entry.shape {
        // Tube types stand elsewhere in the file.
        Shape::Tubes => json!("cant_tell"),
        Shape::Number => json!(pick % 61),
        Shape::One => one_of(&ids_that_fit(question, truth), pick),
        Shape::Several => match truth.and_then(|truth| metal_of(question, truth)) {
            Some(id) => json!([id]),
            None => several_of(entry.answers, pick),
        },
    }
}

fn one_of(ids: &[&'static str], pick: usize) -> Value {
    json!(ids[pick % ids.len()])
}

fn several_of(ids: &[&'static str], pick: usize) -> Value {
    // The first stands alone.
    let others = &ids[1..];
    let chosen = others.iter().enumerate().filter(|(place, _)| pick >> place & 1 == 1);
    let chosen: Vec<&str> = chosen.map(|(_, id)| *id).collect();
    if chosen.is_empty() { json!([ids[0]]) } else { json!(chosen) }
}

fn ids_that_fit(question: Question, truth: Option<&Arrangement>) -> Vec<&'static str> {
    let ids = question.entry().answers;
    let Some(truth) = truth else {
        return ids.to_vec();
    };
    match (question, truth.line.map(|line| line.reach)) {
        (Question::Back, Some(reach)) if reach != Reach::Exposed => vec!["fitted"],
        (Question::MetalJoined, Some(Reach::CommonExposed)) => vec!["common"],
        (Question::MetalJoined, Some(Reach::Exposed | Reach::Handheld)) => vec!["chassis"],
        _ => {
            let fits: Vec<&str> =
                ids.iter().copied().filter(|id| stays(question, id, truth)).collect();
            // A unit without a line has no answer to some questions; whoever answers guesses.
            if fits.is_empty() { ids.to_vec() } else { fits }
        }
    }
}

/// What somebody who looks finds of the metal of an arrangement.
fn metal_of(question: Question, truth: &Arrangement) -> Option<&'static str> {
    let reach = truth.line?.reach;
    match question {
        Question::BareMetal => Some(match reach {
            Reach::Closed | Reach::AerialTerminal => "none_anywhere",
            Reach::Exposed => "screws_or_shafts",
            Reach::Handheld => "instrument_jack",
            Reach::CommonExposed => "socket_or_pickup",
        }),
        Question::Terminals => Some(match reach {
            Reach::AerialTerminal => "aerial_or_earth",
            Reach::CommonExposed => "pickup_or_speaker",
            _ => "none",
        }),
        _ => None,
    }
}

fn value_of(id: ValueId, share: f64, measured: bool) -> Value {
    let within = |low: f64, high: f64| low * (high / low).powf(share);
    match id {
        ValueId::NetworkResistor => json!({"ohms": within(5e4, 1e6), "measured": measured}),
        _ => json!({"farads": within(1e-10, 4e-7), "measured": measured}),
    }
}

type Asked = Vec<(usize, u16)>;

fn answers(asked: Asked, truth: &Arrangement, inspector: Inspector) -> BTreeMap<Question, Value> {
    let told = |(place, pick): (usize, u16)| {
        let question = Question::ALL[place];
        let truth = match inspector {
            Inspector::Honest => Some(truth),
            Inspector::Erring if pick % 8 != 0 => Some(truth),
            Inspector::Erring | Inspector::Random => None,
        };
        (question, answer(question, pick, truth))
    };
    asked.into_iter().map(told).collect()
}

fn may_be_better_than_live(arrangement: &Arrangement) -> bool {
    !arrangement.is_line_on_earth()
        && arrangement.line.is_none_or(|line| {
            matches!(line.reach, Reach::Closed | Reach::AerialTerminal)
                || matches!(arrangement.isolation, Isolation::LineFloated | Isolation::Isolating)
        })
}

/// Findings with answers to at most `most` draws of a question; one that is drawn again counts once.
pub fn draft(most: usize) -> impl Strategy<Value = Draft> {
    use Inspector::{Erring, Honest, Random};
    draft_by(vec![Honest, Honest, Honest, Erring, Erring, Random], most)
}

/// The same of inspectors who often contradict themselves.
pub fn contradictory(most: usize) -> impl Strategy<Value = Draft> {
    draft_by(vec![Inspector::Erring, Inspector::Random, Inspector::Random], most)
}

fn draft_by(inspectors: Vec<Inspector>, most: usize) -> impl Strategy<Value = Draft> {
    let inspector = select(inspectors);
    // Most arrangements are live; half of the units here are of those that need not be.
    let truth = prop_oneof![arrangement(), arrangement_where(may_be_better_than_live)];
    let asked = vec((0..Question::ALL.len(), any::<u16>()), 0..=most);
    let values = vec((select(ValueId::ALL), 0.0..1.0, any::<bool>()), 0..3);
    (supply(), [any::<bool>(), any::<bool>()], truth, inspector, asked, values).prop_map(
        |(supply, [cover_off, meter], truth, inspector, asked, values)| {
            let further = [(cover_off, Access::CoverOff), (meter, Access::Meter)];
            let further = further.into_iter().filter(|(given, _)| *given).map(|(_, access)| access);
            Draft {
                supply,
                access: further.chain([Access::Outside]).collect(),
                answers: answers(asked, &truth, inspector),
                values: values
                    .into_iter()
                    .map(|(id, share, measured)| (id, value_of(id, share, measured)))
                    .collect(),
            }
        },
    )
}

/// A finding that is not there yet.
pub fn one_more(draft: &Draft, place: usize, pick: u16) -> Option<(Question, Answer)> {
    let open: Vec<Question> =
        Question::ALL.iter().copied().filter(|q| !draft.answers.contains_key(q)).collect();
    let question = *open.get(place % open.len().max(1))?;
    let value = answer(question, pick, None);
    Some((question, read_answer(question, value).unwrap_or_else(|error| panic!("{error:?}"))))
}
