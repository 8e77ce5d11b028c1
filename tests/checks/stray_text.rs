//! No sentence that a person reads is written outside the Fluent files.
//!
//! In Rust, and in the scripts of the user interface, a stray is a literal in which two words follow
//! each other; in its markup, any letter between tags or in an attribute that is read out or shown.
//! A single word in Rust (`"Cancel"`) is not seen: ids look the same.

mod literals;
mod markup;
mod shipped;
mod sources;

use std::collections::BTreeSet;

use markup::{strays_in_markup, strays_in_script};

/// Literals of two words and more that nobody reads: file, literal, and why it may stay.
const NOT_FOR_READING: [(&str, &str, &str); 12] = [
    ("inspection/prior.rs", "any other kind", CONDITION),
    ("inspection/prior.rs", "one-way plug", CONDITION),
    ("inspection/prior.rs", "isolating and instrument_amplifier", CONDITION),
    ("inspection/prior.rs", "isolating and other kinds", CONDITION),
    ("inspection/prior.rs", "line_floated or line_insulated", CONDITION),
    ("inspection/prior.rs", "series-heater sets", CONDITION),
    ("inspection/prior.rs", "transformer sets", CONDITION),
    ("inspection/bank.rs", "value line_capacitor", COST),
    ("inspection/bank.rs", "value network_capacitor", COST),
    ("inspection/bank.rs", "value aerial_capacitor", COST),
    ("inspection/bank.rs", "value network_resistor", COST),
    ("store/open.rs", "SQLite format 3\0", "opens every SQLite file"),
];
const CONDITION: &str = "names a condition in data/priors_factors.csv";
const COST: &str = "names a row of data/questions.csv";

/// Two words in a row: a space between, perhaps a mark, the second in small letters.
fn has_words(text: &str) -> bool {
    let words: Vec<&str> = text.split_whitespace().collect();
    words.windows(2).any(|pair| {
        let [first, second] = pair else { return false };
        let first = first.trim_end_matches([',', ';', ':', '.', '!', '?']);
        let ends = first.chars().rev().take_while(|c| c.is_alphabetic()).count();
        let begins = second.chars().take_while(|c| c.is_lowercase()).count();
        ends >= 2 && begins >= 2
    })
}

/// SQL is for the database; what it opens with, and what must then follow.
fn is_sql(text: &str) -> bool {
    const OPENINGS: [(&str, &str); 14] = [
        ("SELECT ", ""),
        ("INSERT ", " INTO "),
        ("UPDATE ", " SET "),
        ("DELETE FROM ", ""),
        ("WITH ", " AS "),
        ("CREATE TABLE ", ""),
        ("CREATE INDEX ", ""),
        ("CREATE TRIGGER ", ""),
        ("ALTER TABLE ", ""),
        ("DROP TABLE ", ""),
        ("ATTACH DATABASE ", ""),
        ("VACUUM ", "INTO "),
        ("EXPLAIN QUERY PLAN ", ""),
        ("PRAGMA ", ""),
    ];
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    OPENINGS.iter().any(|(opening, then)| text.starts_with(opening) && text.contains(then))
}

fn may_stay(path: &str, text: &str) -> bool {
    is_sql(text)
        || NOT_FOR_READING.iter().any(|(file, literal, _)| path.ends_with(file) && text == *literal)
}

fn strays_in_rust(path: &str, text: &str) -> Vec<String> {
    if shipped::is_test_file(path) {
        return Vec::new();
    }
    literals::literals(path, text)
        .into_iter()
        .filter(|literal| has_words(&literal.text) && !may_stay(path, &literal.text))
        .map(|literal| format!("{path}:{}: {:?}", literal.line, literal.text))
        .collect()
}

fn strays_in_ui(path: &str, text: &str) -> Vec<String> {
    if path.ends_with(".test.ts") || path.ends_with(".spec.ts") {
        return Vec::new();
    }
    let found = if path.ends_with(".ts") { strays_in_script(text) } else { strays_in_markup(text) };
    found.into_iter().map(|(line, stray)| format!("{path}:{line}: {stray:?}")).collect()
}

#[test]
fn no_rust_file_holds_a_sentence() {
    let files = sources::files("src-tauri", &["rs"]);
    assert!(files.len() > 50, "only {} files: the core has moved", files.len());
    let strays: Vec<String> =
        files.iter().flat_map(|file| strays_in_rust(&file.path, &file.text)).collect();
    println!("{} Rust files", files.len());
    assert!(strays.is_empty(), "write these into the Fluent files:\n{}", strays.join("\n"));
}

#[test]
fn what_may_stay_is_still_there() {
    let mut found = BTreeSet::new();
    for file in sources::files("src-tauri", &["rs"]) {
        if !shipped::is_test_file(&file.path) {
            let texts = literals::literals(&file.path, &file.text);
            found.extend(texts.into_iter().map(|literal| (file.path.clone(), literal.text)));
        }
    }
    for (file, literal, _) in NOT_FOR_READING {
        let there = found.iter().any(|(path, text)| path.ends_with(file) && text == literal);
        assert!(there, "{file} no longer has {literal:?}: take it off the list");
    }
}

#[test]
fn no_ui_file_holds_text() {
    let files = sources::files("ui/src", &["svelte", "ts"]);
    let has_ui = sources::root().join("ui/package.json").exists();
    assert!(!has_ui || !files.is_empty(), "there is a user interface, but not under ui/src");
    let strays: Vec<String> =
        files.iter().flat_map(|file| strays_in_ui(&file.path, &file.text)).collect();
    println!("{} files of the user interface", files.len());
    assert!(strays.is_empty(), "write these into the Fluent files:\n{}", strays.join("\n"));
}

#[test]
fn a_planted_sentence_is_found_wherever_it_stands() {
    for planted in [
        r#"const A: &str = "Unplug it first";"#,
        r#"fn f() -> String { format!("the metal is at {volts} volts now") }"#,
        r#"fn f() { eprintln!("File not found: {}", 1) }"#,
        r#"fn f() { debug_assert!(true, "never happens"); }"#,
        r#"fn f() { let _ = vec![("a", "cannot be read")]; }"#,
        "const A: &str = \"Stop, \\\n    unplug\";",
        r##"const A: &str = r#"line "one" then two"#;"##,
        r#"const A: &[u8] = b"cannot be read";"#,
        r#"id_enum! { /// What it is.
            pub enum E { A = "live as found" } }"#,
        r#"#[cfg(not(test))] const A: &str = "cannot be read";"#,
        r#"mod inner { impl A { fn f() -> &'static str { "cannot be read" } } }"#,
        r#"const A: &str = "UPDATE your records";"#,
        r#"const A: &str = "any other kind";"#,
    ] {
        let strays = strays_in_rust("src-tauri/core/src/planted.rs", planted);
        assert_eq!(strays.len(), 1, "{planted}: {strays:?}");
    }
}

#[test]
fn what_is_no_sentence_is_left_alone() {
    for fine in [
        "//! Reads files.\n/// Reads a file.\nconst A: u8 = 1;",
        r#"#[error("no unit {0}")] struct A;"#,
        r#"#[expect(clippy::all, reason = "told to")] struct A;"#,
        r#"id_enum! { /// What it is.
            pub enum E { A = "live" } }"#,
        r#"#[cfg(test)] mod tests { const A: &str = "cannot be read"; }"#,
        r#"#[test] fn f() { panic!("cannot be read") }"#,
        r#"impl A { #[cfg(test)] fn f() -> &'static str { "cannot be read" } }"#,
        r#"const A: &str = "PRAGMA journal_mode = wal";"#,
        r#"const A: &str = "SELECT id FROM unit WHERE name = ?1";"#,
        r#"fn f() -> String { format!("{a:>10} {b:>10} mA") }"#,
        r#"const A: &[&str] = &["not_ruled_out", "takes-one-of", "JSON"];"#,
    ] {
        let strays = strays_in_rust("src-tauri/core/src/planted.rs", fine);
        assert!(strays.is_empty(), "{fine}: {strays:?}");
    }
    let test_file = r#"const A: &str = "cannot be read";"#;
    assert!(strays_in_rust("src-tauri/core/src/store/tests/opening.rs", test_file).is_empty());
}
