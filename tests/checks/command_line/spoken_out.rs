//! Without `--json` a person can read it: the class in words, no ids of messages, no placeholders.

use std::collections::BTreeSet;
use std::path::Path;

use super::accepted::{ARRANGEMENT, FINDINGS};
use super::program::{accepted, run_with};

/// The ids of all messages: words with a hyphen at the start of a line of the Fluent files.
fn message_ids() -> BTreeSet<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/words/en");
    let mut ids = BTreeSet::new();
    let entries = std::fs::read_dir(folder).expect("the words");
    let paths = entries.map(|entry| entry.expect("an entry").path());
    for file in paths.filter(|path| path.is_file()) {
        let text = std::fs::read_to_string(file).expect("readable");
        let defined = text.lines().filter_map(|line| line.split_once(" ="));
        ids.extend(
            defined.map(|(id, _)| id.to_owned()).filter(|id| id.contains('-') && !id.contains(' ')),
        );
    }
    assert!(ids.len() > 200, "only {} messages found", ids.len());
    ids
}

/// Fails on what a person should never see.
pub fn readable(text: &str) {
    let ids = message_ids();
    let ends = |c: char| !(c.is_alphanumeric() || c == '-' || c == '_');
    let raw: Vec<&str> = text.split(ends).filter(|word| ids.contains(*word)).collect();
    assert_eq!(raw, Vec::<&str>::new(), "{text}");
    for sign in ["{$", "{ $", "{ ", " }", "NaN", "inf ", "null"] {
        assert!(!text.contains(sign), "{sign} in {text}");
    }
    assert!(!text.chars().any(|c| c.is_control() && c != '\n'), "{text:?}");
    assert!(text.lines().count() > 1 && text.ends_with('\n'), "{text}");
}

#[test]
fn a_verdict_is_a_tag_with_its_class_in_words() {
    for (rest, title, signal) in [
        ("", "Treat as live: not ruled out", "DANGER"),
        (
            r#", "answers": {"plug": "battery_only", "rating_plate": "none"}"#,
            "No line voltage inside: shown",
            "NOTICE",
        ),
        (
            r#", "answers": {"plug": "battery_only", "rating_plate": "ac_only"}"#,
            "No line voltage inside: not shown",
            "NOTICE",
        ),
        (
            r#", "answers": {"plug": "two_equal_blades", "earth_wire": "on_chassis"}"#,
            "Treat as live: not ruled out",
            "DANGER",
        ),
    ] {
        let file = format!(r#"{{"supply": {{"volts": 120, "hertz": 60}}{rest}}}"#);
        let text = accepted(&["assess", "/dev/stdin"], file.as_bytes());
        readable(&text);
        assert!(text.contains(title) && text.contains(signal), "{text}");
    }
    let text = accepted(&["assess", "/dev/stdin"], FINDINGS.as_bytes());
    readable(&text);
    assert!(text.contains("Live: shown"), "{text}");
}

#[test]
fn an_exposure_table_starts_with_its_class_in_words() {
    for (from, to, label) in [
        ("", "", "Leaks as found, one fault from live"),
        ("\"isolating\"", "\"no_line\"", "No line voltage inside"),
        ("\"near_leg\"", "\"none\"", "One fault from live"),
        ("\"two_pin_reversible\"", "\"three_pin_earthed\"", "Two faults from live"),
        ("\"volts\": 120", "\"volts\": 480", "Live as found"),
    ] {
        let text = accepted(&["exposure", "/dev/stdin"], ARRANGEMENT.replace(from, to).as_bytes());
        readable(&text);
        assert!(text.starts_with(label), "{label}: {text}");
    }
}

#[test]
fn every_outcome_fault_and_selector_is_in_words() {
    let closed = ARRANGEMENT
        .replace("isolating", "line_floated")
        .replace("near_leg", "selector")
        .replace("exposed", "aerial_terminal");
    let text = accepted(&["exposure", "/dev/stdin"], closed.as_bytes());
    readable(&text);
    let tripping = r#"{"supply": {"volts": 120, "hertz": 60}, "isolation": "line_tied",
        "cord": "three_pin_earthed", "near_pin": "a", "line_capacitor": "none",
        "line_capacitor_class": "ordinary", "switch_leg": "far", "reach": "closed"}"#;
    let text = accepted(&["exposure", "/dev/stdin"], tripping.as_bytes());
    readable(&text);
    assert!(text.contains("breaker trips") && text.contains("behind a barrier"), "{text}");
}

#[test]
fn every_language_setting_gives_words() {
    let english = accepted(&["exposure", "/dev/stdin"], ARRANGEMENT.as_bytes());
    for language in ["", "C", "C.UTF-8", "en_US.UTF-8", "fr_FR.UTF-8", "xx", "../en", "{$x}"] {
        let arguments = ["exposure", "/dev/stdin"];
        let ran = run_with(&[("LANG", language)], &arguments, ARRANGEMENT.as_bytes());
        assert_eq!(ran.code, Some(0), "{language}");
        assert_eq!(ran.out, english, "no words of its own: {language}");
    }
}
