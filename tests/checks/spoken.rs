//! Says the verdicts of random findings and looks for anything that did not become a sentence.

use std::collections::{BTreeMap, BTreeSet};

use coldchassis_core::inspection::{
    Findings, Judge, Question, Shape, ValueId, Verdict, after_faults, assess, conflict_sentences,
    next_or_stop, not_checked, permission, read_findings, reason, rests_on_sentences, standing,
    supply_sentence, tag_line, worst_state_sentence,
};
use coldchassis_core::simulation::unit::{PhysicalUnit, random_subset};
use coldchassis_core::supply::Supply;
use coldchassis_core::words::{Argument, Message, Words};
use coldchassis_core::workbench::tag;
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Map, Value, json};

use super::english::English;
use super::named_messages::is_id;

/// Truthful stories of whole units, which seldom contradict themselves.
const STORIES: u64 = 60;

/// Answers drawn blindly, which often do.
const BLIND: u64 = 240;

fn story(rng: &mut ChaCha8Rng) -> Value {
    let unit = PhysicalUnit::random(rng);
    let answers = unit.answers(rng);
    let told = if rng.random_bool(0.5) { answers } else { random_subset(&answers, rng) };
    unit.findings(&told, &unit.supply(), &["outside", "cover_off", "meter"])
}

fn blind(rng: &mut ChaCha8Rng) -> Value {
    let share = *[0.05, 0.15, 0.5].choose(rng).expect("a share");
    let mut answers = Map::new();
    for question in Question::ALL {
        if rng.random_bool(share) {
            answers.insert(question.id().to_owned(), answer(*question, rng));
        }
    }
    let mut values = Map::new();
    for value in ValueId::ALL {
        if rng.random_bool(share) {
            let figure = if *value == ValueId::NetworkResistor { "ohms" } else { "farads" };
            let size = if figure == "ohms" { 2.2e5 } else { 4.7e-8 };
            let measured = rng.random_bool(0.5);
            values.insert(value.id().to_owned(), json!({figure: size, "measured": measured}));
        }
    }
    let (volts, hertz) = *[(120, 60), (230, 50), (100, 50)].choose(rng).expect("a supply");
    let feed = if rng.random_bool(0.2) { "both_hot" } else { "direct" };
    values.insert("rated".to_owned(), json!({"volts": 117, "hertz": 60}));
    json!({
        "supply": {"volts": volts, "hertz": hertz, "feed": feed},
        "access": if rng.random_bool(0.5) { vec!["cover_off"] } else { vec!["meter"] },
        "answers": answers,
        "values": values,
    })
}

fn answer(question: Question, rng: &mut ChaCha8Rng) -> Value {
    let one = question.entry().answers.choose(rng);
    match (question.entry().shape, one) {
        (Shape::One, Some(one)) => json!(one),
        (Shape::Several, Some(one)) => json!([one]),
        (Shape::Number, _) => json!(rng.random_range(0..9)),
        _ => json!("cant_tell"),
    }
}

/// Everything that is said of a verdict, as messages.
fn messages(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    let mut all = vec![tag_line(verdict)];
    all.extend(reason(findings, verdict));
    all.extend(permission(findings, verdict));
    all.extend(standing(verdict));
    all.extend(after_faults(verdict));
    all.extend(supply_sentence(findings, verdict));
    all.push(next_or_stop(verdict));
    all.extend(rests_on_sentences(verdict));
    all.extend(conflict_sentences(verdict));
    all.extend(not_checked(findings));
    all.extend(worst_state_sentence(&verdict.worst, findings.supply.feed));
    all
}

/// What is wrong with a message and those inside it; each id is put on the list of those said.
fn wrong_message(message: &Message, english: &English, said: &mut BTreeSet<String>) -> Vec<String> {
    let mut wrong = Vec::new();
    said.insert(message.id.clone());
    if !english.has(&message.id) {
        wrong.push(format!("there is no message {}", message.id));
    }
    for variable in english.variables(&message.id) {
        if !message.arguments.iter().any(|(name, _)| *name == variable) {
            wrong.push(format!("{} gets no {variable}", message.id));
        }
    }
    for (_, argument) in &message.arguments {
        let inner: &[Message] = match argument {
            Argument::Text(_) | Argument::Figure(_) | Argument::Count(_) => &[],
            Argument::Message(message) => std::slice::from_ref(message),
            Argument::List(messages) => messages,
        };
        wrong.extend(inner.iter().flat_map(|message| wrong_message(message, english, said)));
    }
    wrong
}

/// The first part of every id: a word of a sentence that begins so is an id that nobody put in words.
fn openings(english: &English) -> BTreeSet<&str> {
    english.ids().filter_map(|id| id.split('-').next()).collect()
}

/// What in a spoken text is no sentence: a placeholder, an id, nothing at all.
fn wrong_text(text: &str, openings: &BTreeSet<&str>) -> Option<String> {
    let belongs = |c: char| c.is_ascii_alphanumeric() || c == '_' || c == '-';
    let is_unspoken = |word: &str| {
        word.contains('_')
            || is_id(word) && word.split('-').next().is_some_and(|first| openings.contains(first))
    };
    let wrong = text.trim().is_empty()
        || text.contains(['{', '}'])
        || text.split(|c| !belongs(c)).any(is_unspoken);
    wrong.then(|| format!("not a sentence: {text:?}"))
}

fn texts(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::String(text) => found.push(text.clone()),
        Value::Array(items) => items.iter().for_each(|item| texts(item, found)),
        Value::Object(fields) => {
            // These two are ids by contract.
            let spoken = fields.iter().filter(|(key, _)| *key != "class" && *key != "signal");
            spoken.for_each(|(_, value)| texts(value, found));
        }
        _ => {}
    }
}

#[test]
fn random_verdicts_are_said_in_full() {
    let english = super::english();
    let (words, openings) = (Words::of("en"), openings(&english));
    let mut rng = ChaCha8Rng::seed_from_u64(20_260_301);
    let (mut wrong, mut said) = (BTreeMap::<String, String>::new(), BTreeSet::new());
    // One judge for all: it keeps what it knows from verdict to verdict on the same supply and parts.
    let mut judge = Judge::of(&Findings::new(Supply::new(120.0, 60.0)));
    let (mut kinds, mut conflicts, mut sentences) = (BTreeSet::new(), 0, 0);
    for place in 0..STORIES + BLIND {
        let file = if place < STORIES { story(&mut rng) } else { blind(&mut rng) };
        let findings = read_findings(file.clone()).expect("random findings are a valid file");
        let verdict = assess(&findings, &mut judge);
        kinds.insert((verdict.treat_as.id(), verdict.basis.id()));
        conflicts += usize::from(!verdict.conflicts.is_empty());
        for message in messages(&findings, &verdict) {
            for trouble in wrong_message(&message, &english, &mut said) {
                wrong.entry(trouble).or_insert_with(|| file.to_string());
            }
        }
        let mut spoken = Vec::new();
        let tag = serde_json::to_value(tag(&findings, &verdict, &words)).expect("a tag is JSON");
        texts(&tag, &mut spoken);
        sentences += spoken.len();
        for trouble in spoken.iter().filter_map(|text| wrong_text(text, &openings)) {
            wrong.entry(trouble).or_insert_with(|| file.to_string());
        }
    }
    println!("{sentences} texts, {} messages, {conflicts} conflicts, {kinds:?}", said.len());
    let reasons: Vec<&String> = said.iter().filter(|id| id.starts_with("reason-")).collect();
    println!("reasons said: {reasons:?}");
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(conflicts >= 10 && kinds.len() >= 7, "too few kinds of verdict to show anything");
}

#[test]
fn planted_text_that_was_not_put_in_words_is_found() {
    let english = English::of(["fault-none = no fault\nreason-x = { $fault }\n"]);
    let openings = openings(&english);
    for bad in
        ["It leaks {$current}.", "One fault: fault-earth_open", "fault-none", "not_ruled_out", ""]
    {
        assert!(wrong_text(bad, &openings).is_some(), "{bad}");
    }
    for good in ["Is there an earth-lift switch?", "2.17\u{a0}mA", "GFCI/RCD, three-lamp tester."] {
        assert_eq!(wrong_text(good, &openings), None);
    }
    let lost = Message::new("reason-x").message("fault", Message::new("fault-lost"));
    let unfilled = Message::new("reason-x").text("flaut", "a");
    let fine = Message::new("reason-x").message("fault", Message::new("fault-none"));
    for (message, count) in [(lost, 1), (unfilled, 1), (fine, 0)] {
        let wrong = wrong_message(&message, &english, &mut BTreeSet::new());
        assert_eq!(wrong.len(), count, "{wrong:?}");
    }
}
