//! What a person reads: every text there, in words, never an id in its place.

use std::collections::BTreeSet;

use coldchassis_core::inspection::{Question, Shape, ValueId};
use coldchassis_core::words::Words;
use coldchassis_core::workbench::{Entry, QuestionView, presets, question_view};
use serde_json::{Value, json};

use super::bench::{Record, answer_some, begin, json_of, new_unit};

/// An id stands where words should: `answer-plug-no_plug`, `no_plug`, or a placeholder left open.
fn is_no_text(text: &str) -> bool {
    let is_id = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || "-_.".contains(c);
    let is_json = text.starts_with(['{', '[', '"']);
    let is_id = text.contains(['-', '_']) && text.chars().all(is_id);
    text.trim().is_empty() || is_id || is_json || text.contains(['{', '}'])
}

fn assert_worded(question: &QuestionView) {
    let id = &question.id;
    for text in [&question.text, &question.why, &question.how] {
        assert!(!is_no_text(text) && text.contains(' '), "{id}: {text:?}");
    }
    assert!(question.caution.as_deref().is_none_or(|text| !is_no_text(text)), "{id}: caution");
    for answer in &question.answers {
        assert!(!is_no_text(&answer.text) && answer.text != answer.id, "{id}: {answer:?}");
    }
    let texts: BTreeSet<&str> = question.answers.iter().map(|a| a.text.as_str()).collect();
    assert_eq!(texts.len(), question.answers.len(), "{id}: two answers read alike");
}

#[test]
fn an_id_is_told_from_a_text() {
    for bad in
        ["", " ", "answer-plug-no_plug", "no_plug", "Up to { $high }", r#"["6V6"]"#, "\"OL\""]
    {
        assert!(is_no_text(bad), "{bad}");
    }
    for good in ["Yes", "Pin A", "the earth-lift switch", "12SA7, 6V6", "5", "AC/DC and battery"] {
        assert!(!is_no_text(good), "{good}");
    }
}

#[test]
fn every_question_is_in_words_and_ends_with_cannot_tell() {
    let words = Words::of("en");
    for &question in Question::ALL {
        let view = question_view(question, &words);
        assert_eq!(view.id, question.id());
        assert_worded(&view);
        assert_eq!(view.answers.last().map(|answer| answer.id), Some("cant_tell"), "{}", view.id);
        let entry = question.entry();
        assert_eq!(view.entry == Entry::Several, entry.shape == Shape::Several, "{}", view.id);
        let ids: Vec<&str> = view.answers.iter().map(|answer| answer.id).collect();
        assert_eq!(ids.len(), entry.answers.len() + 1, "{}", view.id);
        assert_eq!(ids[..entry.answers.len()], *entry.answers, "{}", view.id);
    }
}

#[test]
fn every_answer_offered_is_taken() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, &["cover_off"]);
    let words = Words::of("en");
    for &question in Question::ALL {
        let view = question_view(question, &words);
        for answer in &view.answers {
            let alone = view.entry != Entry::Several || answer.id == "cant_tell";
            let given = if alone { json!(answer.id) } else { json!([answer.id]) };
            let after = door.answer(inspection, &view.id, given).unwrap();
            let path = format!("answers.{}", view.id);
            let found = after.findings.iter().find(|found| found.path == path).unwrap();
            assert_eq!(found.found, answer.text);
        }
    }
}

#[test]
fn every_value_that_is_asked_for_is_in_words() {
    // What is left open once each of these is answered so, is a value.
    let mut asked = BTreeSet::new();
    for answers in values_that_matter() {
        let record = Record::fixed();
        let mut door = record.open();
        let mut view = door.create_unit(&new_unit("Set", &["cover_off"])).unwrap();
        while let Some(question) = view.question.clone() {
            assert_worded(&question);
            if question.id.starts_with("values.") {
                assert!(
                    question.answers.is_empty() && question.entry != Entry::Several,
                    "{question:?}"
                );
                let value = question.id.trim_start_matches("values.");
                let given = json!({"farads": 1e-9, "measured": true});
                let given = if value == "network_resistor" { json!({"ohms": 1e6}) } else { given };
                asked.insert(value.to_owned());
                view = door.set_value(view.id, value, given).unwrap();
            } else {
                let answer = answers.get(&question.id).cloned().unwrap_or(json!("cant_tell"));
                view = door.answer(view.id, &question.id, answer).unwrap();
            }
        }
    }
    println!("values asked for: {asked:?}");
    assert!(asked.len() >= 3, "only {asked:?} of {:?}", ValueId::IDS);
}

fn values_that_matter() -> [Value; 3] {
    let common = json!({
        "plug": "two_equal_blades", "bare_metal": ["screws_or_shafts"], "back": "fitted",
        "terminals": ["none"], "selector": "absent", "earth_lift": "absent",
        "metal_joined": "chassis", "transformer": "separate_traced",
        "line_capacitor": "pin_a_leg", "line_capacitor_class": "ordinary",
        "switch_leg": "pin_a", "earth_wire": "not_on_chassis",
    });
    let with = |changes: Value| {
        let mut answers = common.clone();
        for (question, answer) in changes.as_object().unwrap() {
            answers[question] = answer.clone();
        }
        answers
    };
    [
        common.clone(),
        with(json!({"transformer": "none", "common_to_chassis": "through_network",
            "common_leg": "pin_b", "line_capacitor": "none"})),
        with(json!({"transformer": "none", "common_to_chassis": "not_joined",
            "common_leg": "pin_b", "line_capacitor": "none", "bare_metal": ["none_anywhere"],
            "terminals": ["aerial_or_earth"]})),
    ]
}

/// Every text of a view that is for a person, with where it stands.
fn texts(view: &Value) -> Vec<(String, &str)> {
    let mut texts = Vec::new();
    for (name, part) in view["tag"].as_object().unwrap() {
        if name == "class" || name == "signal" {
            continue;
        }
        let listed = part.as_array().into_iter().flatten().chain([part]);
        texts.extend(listed.filter_map(|text| Some((format!("tag.{name}"), text.as_str()?))));
    }
    for found in view["findings"].as_array().unwrap() {
        let path = found["path"].as_str().unwrap();
        for part in ["name", "found"] {
            texts.push((format!("{path} {part}"), found[part].as_str().unwrap()));
        }
    }
    texts
}

#[test]
fn the_tag_and_what_was_found_are_in_words() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, &["cover_off"]);
    answer_some(&mut door, inspection);
    door.answer(inspection, "materials", json!(["asbestos", "radium"])).unwrap();
    door.set_value(inspection, "line_capacitor", json!({"farads": 4.7e-9})).unwrap();
    door.set_value(inspection, "network_resistor", json!({"ohms": 2.2e5})).unwrap();
    door.set_reading(inspection, "ohms_a_b_on", json!("OL")).unwrap();
    door.set_rated(inspection, json!({"volts": 230, "hertz": 50})).unwrap();
    let view = json_of(&door.set_tubes(inspection, json!(["12SA7", "50L6GT"])).unwrap());
    let texts = texts(&view);
    assert!(texts.len() > 25, "{}", texts.len());
    let wrong: Vec<_> = texts.iter().filter(|(_, text)| is_no_text(text)).collect();
    assert!(wrong.is_empty(), "not in words: {wrong:#?}");
}

#[test]
fn every_supply_to_choose_is_in_words_and_is_taken() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, &[]);
    let presets = presets(&Words::of("en"));
    assert!(presets.len() >= 5, "the outlets of today");
    for preset in presets {
        assert!(!is_no_text(&preset.text) && preset.text.contains(' '), "{preset:?}");
        let supply = serde_json::to_value(preset.supply).unwrap();
        assert_eq!(door.set_supply(inspection, supply).unwrap().supply, preset.supply);
    }
}
