//! The same verdict in German: words of the language, class and figures as in English.

use super::program::{Ran, run_with};

/// A shelf radio that was looked at from outside, with a leak that has a figure.
const FINDINGS: &str = r#"{"supply": {"volts": 120, "hertz": 60}, "access": ["cover_off"],
    "answers": {"plug": "two_equal_blades", "bare_metal": ["screws_or_shafts"], "back": "fitted",
    "terminals": ["none"], "transformer": "separate_traced", "switch_leg": "pin_a",
    "line_capacitor": "pin_b_leg", "line_capacitor_class": "ordinary"},
    "values": {"line_capacitor": {"farads": 4.7e-8, "measured": true}}}"#;

/// What it prints in German, looked at by a person.
const GOLDEN: &str = include_str!("../../golden/german/assess.txt");

fn assessed(settings: &[(&str, &str)], more: &[&str]) -> Ran {
    let arguments: Vec<&str> = ["assess", "/dev/stdin"].iter().chain(more).copied().collect();
    let ran = run_with(settings, &arguments, FINDINGS.as_bytes());
    assert_eq!(ran.code, Some(0), "{}", ran.err);
    ran
}

/// The figures of a text, with a point for the decimal mark.
fn figures(text: &str, decimal_mark: char) -> Vec<String> {
    let mut figures: Vec<String> = text
        .split(|c: char| !(c.is_ascii_digit() || c == '.' || c == ','))
        .map(|figure| figure.trim_matches(['.', ',']).replace(decimal_mark, "."))
        .filter(|figure| !figure.is_empty())
        .collect();
    figures.sort();
    figures
}

#[test]
fn a_verdict_in_german_is_as_it_was_when_somebody_read_it() {
    assert_eq!(assessed(&[], &["--lang", "de"]).out, GOLDEN);
}

#[test]
fn its_figures_are_those_of_english_with_a_decimal_comma() {
    let (english, german) = (assessed(&[], &[]).out, assessed(&[], &["--lang", "de"]).out);
    assert!(english.contains("2.2") || english.contains('.'), "{english}");
    assert_eq!(figures(&english, '.'), figures(&german, ','));
    assert!(!figures(&german, ',').is_empty());
}

#[test]
fn what_a_script_reads_is_the_same_in_every_language() {
    let english = assessed(&[], &["--json"]).out;
    assert_eq!(assessed(&[], &["--json", "--lang", "de"]).out, english);
    assert_eq!(assessed(&[("LANG", "de_DE.UTF-8")], &["--json"]).out, english);
}

#[test]
fn the_language_is_what_was_asked_for_else_the_systems() {
    let german = assessed(&[], &["--lang", "de"]).out;
    let english = assessed(&[], &[]).out;
    for settings in [
        [("LANG", "de_DE.UTF-8")].as_slice(),
        &[("LC_ALL", "de_AT"), ("LANG", "en_GB.UTF-8")],
        &[("LC_MESSAGES", "de_CH.UTF-8"), ("LANG", "en_GB.UTF-8")],
    ] {
        let said = assessed(settings, &[]).out;
        assert_eq!(said.lines().nth(1), german.lines().nth(1), "{settings:?}");
    }
    assert_eq!(assessed(&[("LANG", "de_DE.UTF-8")], &["--lang", "en"]).out, english);
}

#[test]
fn what_is_refused_is_refused_in_german() {
    let ran = run_with(&[], &["assess", "/dev/stdin", "--lang", "de"], b"");
    assert_eq!(ran.code, Some(2));
    assert!(ran.err.contains("verlangt ein JSON-Objekt"), "{}", ran.err);
}
