//! Wrong usage is refused before anything is read or written.

use super::accepted::ARRANGEMENT;
use super::program::{accepted, fault_of_refusal, run};

#[test]
fn a_command_line_that_makes_no_sense_is_refused() {
    for arguments in [
        &[][..],
        &["frob"],
        &["Assess"],
        &["assess"],
        &["exposure"],
        &["list"],
        &["assess", "--json"],
        &["assess", ""],
        &["assess", "a.json", "b.json"],
        &["assess", "a.json", "--yaml"],
        &["assess", "a.json", "--json=yes"],
        &["assess", "a.json", "--skin", "dry"],
        &["exposure", "a.json", "--skin"],
        &["demo", "extra"],
        &["demo", "--json"],
        &["inspect", "extra"],
        &["inspect", "--record"],
        &["list", "a", "b"],
        &["--json"],
    ] {
        let ran = run(arguments, b"");
        assert_eq!(ran.code, Some(2), "{arguments:?}: {}", ran.err);
        assert_eq!(ran.out, "", "{arguments:?}");
        assert!(!ran.err.is_empty(), "{arguments:?}");
    }
}

#[test]
fn options_with_a_bad_value_are_refused_by_name() {
    for (option, value) in [
        ("skin", "oiled"),
        ("skin", ""),
        ("percentile", "7"),
        ("percentile", "5.0"),
        ("path", "nose_to_toe"),
        ("path", "a\nb\u{1b}[31m"),
    ] {
        let named = format!("--{option}={value}");
        for arguments in
            [&["exposure", "/dev/stdin", "--json", &named][..], &["exposure", "/dev/stdin", &named]]
        {
            let ran = run(arguments, ARRANGEMENT.as_bytes());
            assert_eq!(fault_of_refusal(&ran, option), None, "{arguments:?}");
        }
    }
}

#[test]
fn bad_options_of_an_inspection_are_refused_by_name() {
    let long = "x".repeat(10_000);
    for (option, value) in [
        ("supply", "nowhere"),
        ("supply", ""),
        ("access", "roof"),
        ("access", "cover_off,roof"),
        ("name", long.as_str()),
    ] {
        let named = format!("--{option}={value}");
        let ran = run(&["inspect", &named], b"");
        assert_eq!(fault_of_refusal(&ran, option), None, "{named:.40}");
    }
}

#[test]
fn a_refused_inspection_makes_no_record() {
    let long = format!("--name={}", "x".repeat(10_000));
    for option in ["--supply=nowhere", "--access=roof", &long] {
        // The run itself fails if a file is left behind.
        assert_eq!(run(&["inspect", "--record", "new", option], b"").code, Some(2), "{option:.40}");
    }
}

#[test]
fn help_and_version_are_not_errors() {
    for arguments in [&["--help"][..], &["--version"], &["help"], &["assess", "--help"]] {
        assert!(!accepted(arguments, b"").is_empty());
    }
}
