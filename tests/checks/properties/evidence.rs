//! Laws of evidence: more findings leave less, their order does not matter, and each can be taken
//! back.

use std::cell::Cell;

use coldchassis_core::inspection::{
    Answer, Finding, Findings, Judge, Possible, Question, assess, possible, read_answer,
    read_findings,
};
use proptest::prelude::{any, prop_assert, prop_assert_eq, proptest};
use proptest::test_runner::{TestCaseResult, TestRunner};
use rand::seq::SliceRandom;
use rand::{RngCore, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::Value;

use crate::cases;
use crate::drafts::{Draft, answer, draft, one_more};

const METAL: [Question; 4] =
    [Question::BareMetal, Question::Back, Question::Terminals, Question::MetalJoined];

/// Whether a further finding makes the reach rules read an earlier finding about metal anew.
///
/// The rules for touchable metal are read together, not one by one: bare metal counts as joined to
/// the chassis until it is traced, so tracing it (`metal_joined` common or no) replaces what was
/// assumed of it; and a pickup terminal puts metal that was already listed, or that a missing back
/// lays bare, on the chassis or on the common where it was on the chassis only. Such a finding
/// corrects an assumption instead of adding to it, and may bring arrangements back.
fn reads_earlier_metal_anew(findings: &Findings, question: Question, answer: &Answer) -> bool {
    let says = |question, id| findings.says(question, id);
    let on_a_socket = ["instrument_jack", "socket_or_pickup"];
    let on_a_socket = on_a_socket.iter().any(|id| says(Question::BareMetal, id));
    let elsewhere = ["screws_or_shafts", "panel_or_cabinet"];
    let elsewhere = elsewhere.iter().any(|id| says(Question::BareMetal, id));
    match question {
        Question::MetalJoined => {
            let pickup = says(Question::Terminals, "pickup_or_speaker");
            (answer.says("common") && elsewhere)
                || (answer.says("no") && (on_a_socket || elsewhere || pickup))
        }
        Question::Terminals => {
            let looked = findings.known(Question::BareMetal).is_some();
            let bare_back = looked && says(Question::Back, "missing");
            answer.says("pickup_or_speaker") && !on_a_socket && (elsewhere || bare_back)
        }
        _ => false,
    }
}

#[derive(Default)]
struct Counts {
    smaller: Cell<u32>,
    alike: Cell<u32>,
    excluded: Cell<u32>,
}

impl Counts {
    /// Adds a finding and looks whether anything comes back.
    fn add(&self, draft: &Draft, question: Question, answer: Answer) -> TestCaseResult {
        let before = draft.findings();
        if reads_earlier_metal_anew(&before, question, &answer) {
            self.excluded.update(|count| count + 1);
            return Ok(());
        }
        let mut after = before.clone();
        after.answers.insert(question, answer.clone());
        let (wide, narrow) = (possible(&before), possible(&after));
        prop_assert!(narrow.is_within(&wide), "{question:?} {answer:?} to {}", draft.json());
        let count = if narrow == wide { &self.alike } else { &self.smaller };
        count.update(|count| count + 1);
        Ok(())
    }

    fn print(&self) -> [u32; 3] {
        let counts = [&self.smaller, &self.alike, &self.excluded].map(Cell::get);
        println!("smaller, alike, excluded: {counts:?}");
        counts
    }
}

#[test]
fn a_further_finding_never_brings_an_arrangement_back() {
    let counts = Counts::default();
    let law = |(draft, place, pick): (Draft, usize, u16)| match one_more(&draft, place, pick) {
        Some((question, answer)) => counts.add(&draft, question, answer),
        None => Ok(()),
    };
    let mut runner = TestRunner::new(cases(512));
    runner.run(&(draft(8), any::<usize>(), any::<u16>()), law).unwrap();
    let [smaller, alike, excluded] = counts.print();
    assert!(smaller >= 64, "{smaller}");
    assert!(excluded * 20 <= smaller + alike, "the exclusion is a narrow one: {excluded}");
}

/// The same with findings about metal only, where the reach rules meet most often.
#[test]
fn a_further_finding_about_metal_never_brings_an_arrangement_back() {
    let counts = Counts::default();
    let law = |(mut draft, pick): (Draft, u16)| {
        draft.answers.retain(|question, _| METAL.contains(question));
        for question in METAL {
            if !draft.answers.contains_key(&question) {
                let value = answer(question, pick, None);
                let answer = read_answer(question, value).expect("an answer of the bank");
                counts.add(&draft, question, answer)?;
            }
        }
        Ok(())
    };
    TestRunner::new(cases(256)).run(&(draft(24), any::<u16>()), law).unwrap();
    let [smaller, _, excluded] = counts.print();
    assert!(smaller >= 64 && excluded < smaller, "{smaller} {excluded}");
}

/// Writes a value with the members of every object and list in a random order.
fn shuffled(value: &Value, order: &mut dyn FnMut() -> u32) -> String {
    let (open, close, mut members): (_, _, Vec<(u32, String)>) = match value {
        Value::Object(fields) => {
            let member = |(key, value)| {
                let text =
                    format!("{}:{}", Value::from(String::clone(key)), shuffled(value, order));
                (order(), text)
            };
            ("{", "}", fields.iter().map(member).collect())
        }
        Value::Array(items) => {
            ("[", "]", items.iter().map(|item| (order(), item.to_string())).collect())
        }
        other => return other.to_string(),
    };
    members.sort();
    let members: Vec<String> = members.into_iter().map(|(_, text)| text).collect();
    format!("{open}{}{close}", members.join(","))
}

fn read(text: &str) -> Findings {
    read_findings(serde_json::from_str(text).expect(text)).expect(text)
}

proptest! {
    #![proptest_config(cases(128))]

    #[test]
    fn the_order_of_findings_does_not_matter(draft in draft(16), seed in any::<u64>()) {
        let mut random = ChaCha8Rng::seed_from_u64(seed);
        let plain = draft.json().to_string();
        let mixed = shuffled(&draft.json(), &mut || random.next_u32());
        prop_assert_eq!(mixed.len(), plain.len());
        let (first, other) = (read(&plain), read(&mixed));
        prop_assert_eq!(&first, &other, "{}", mixed);
        prop_assert_eq!(Possible::after(&first), Possible::after(&other));
    }

    #[test]
    fn findings_added_one_by_one_in_any_order_are_those_of_the_file(
        draft in draft(16), seed in any::<u64>(),
    ) {
        let whole = draft.findings();
        let mut answers: Vec<_> = whole.answers.iter().collect();
        answers.shuffle(&mut ChaCha8Rng::seed_from_u64(seed));
        let mut grown = Findings { answers: Default::default(), ..whole.clone() };
        for (question, answer) in answers {
            grown.answers.insert(*question, answer.clone());
        }
        prop_assert_eq!(&grown, &whole);
        prop_assert_eq!(Possible::after(&grown), Possible::after(&whole));
    }
}

/// What a judge remembers must not show: the same judge says the same after having judged others.
#[test]
fn taking_a_finding_back_restores_the_verdict() {
    let changed = Cell::new(0u32);
    let law = |(draft, value, place, pick): (Draft, Draft, usize, u16)| {
        let before = draft.findings();
        let mut judge = Judge::of(&before);
        let verdict = assess(&before, &mut judge);
        let mut after = before.clone();
        let added = one_more(&draft, place, pick);
        if let Some((question, answer)) = &added {
            after.answers.insert(*question, answer.clone());
        }
        // A value that another draft has makes the judge turn to other parts and back.
        let new_value =
            value.findings().values.into_iter().find(|(id, _)| !before.values.contains_key(id));
        after.values.extend(new_value);
        let then = assess(&after, &mut judge);
        prop_assert_eq!(&then, &assess(&after, &mut Judge::of(&after)), "{}", draft.json());
        changed.update(|count| count + u32::from(then != verdict));
        let mut back = after;
        if let Some((question, _)) = added {
            back = back.without(Finding::Answer(question));
        }
        if let Some((id, _)) = new_value {
            back = back.without(Finding::Value(id));
        }
        prop_assert_eq!(&back, &before);
        prop_assert_eq!(assess(&back, &mut judge), verdict, "{}", draft.json());
        Ok(())
    };
    let mut runner = TestRunner::new(cases(24));
    runner.run(&(draft(60), draft(1), any::<usize>(), any::<u16>()), law).unwrap();
    println!("verdicts that the finding changed: {}", changed.get());
    assert!(changed.get() >= 6, "{}", changed.get());
}
