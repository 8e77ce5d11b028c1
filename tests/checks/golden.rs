//! Golden inspections: findings a technician can read, and the verdict worked out by hand for them.
//!
//! The format is described in `tests/golden/README.md`. Currents were worked out apart from the core,
//! from IEC 60479-1:2005/2018 table 1 (5 %, dry, large area; from memory, high confidence).

use std::collections::BTreeSet;
use std::path::PathBuf;

use coldchassis_core::workbench::{AssessView, assess_file};
use serde_json::Value;

const KEYS: [&str; 10] = [
    "treat_as",
    "could_be",
    "basis",
    "margin",
    "worst_touch_ma",
    "overlays",
    "conflicts",
    "rests_on",
    "consistent",
    "next_question",
];

fn golden_files() -> Vec<PathBuf> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("golden");
    let mut files: Vec<PathBuf> = std::fs::read_dir(folder)
        .expect("the golden folder is there")
        .map(|entry| entry.expect("its entries can be read").path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "toml"))
        .collect();
    files.sort();
    files
}

/// What differs between an expectation and the verdict; nothing where they agree.
fn difference(key: &str, expected: &Value, found: &Value) -> Option<String> {
    let same = match key {
        "worst_touch_ma" => {
            let (expected, found) = (expected.as_f64()?, found.as_f64()?);
            (expected - found).abs() <= (0.02 * expected).max(0.002)
        }
        "rests_on" => as_set(expected) == as_set(found),
        _ => expected == found,
    };
    (!same).then(|| format!("{key}: expected {expected}, found {found}"))
}

fn as_set(list: &Value) -> BTreeSet<String> {
    list.as_array().into_iter().flatten().map(Value::to_string).collect()
}

#[test]
fn every_golden_inspection_gives_its_verdict() {
    let files = golden_files();
    assert!(files.len() >= 30, "{} golden inspections", files.len());
    let mut wrong = Vec::new();
    for file in &files {
        let text = std::fs::read_to_string(file).expect("a golden inspection can be read");
        let golden: Value = toml::from_str(&text).expect("a golden inspection is TOML");
        let findings = golden["findings"].to_string();
        let name = file.file_stem().expect("it has a name").to_string_lossy();
        let (_, verdict) =
            assess_file(findings.as_bytes()).unwrap_or_else(|e| panic!("{name}: {e:?}"));
        let found = serde_json::to_value(AssessView::from(&verdict)).expect("a view is JSON");
        let expect = golden["expect"].as_object().expect("it expects something");
        assert!(!expect.is_empty(), "{name} expects nothing");
        for (key, expected) in expect {
            assert!(KEYS.contains(&key.as_str()), "{name} expects an unknown {key}");
            if let Some(difference) = difference(key, expected, &found[key]) {
                wrong.push(format!("{name}: {difference}"));
            }
        }
    }
    println!("{} golden inspections", files.len());
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}
