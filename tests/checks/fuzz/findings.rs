//! Findings files: golden ones with findings put in that fit, and with anything at all changed.

use std::path::PathBuf;
use std::sync::LazyLock;

use bolero::check;
use coldchassis_core::words::Words;
use coldchassis_core::workbench::{
    AssessView, Problem, assess_file, exposure_file, person, readings_file, remedies_file, tag,
};
use serde_json::{Value, json};

use super::ids::put;
use super::json::change;
use super::tally::{Reached, Tally, time};
use super::tape::{Tape, tapes};

static GOLDEN: LazyLock<Vec<Value>> = LazyLock::new(|| {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("golden");
    let files = std::fs::read_dir(folder).expect("the golden folder");
    let files = files.map(|entry| entry.expect("an entry").path());
    let mut files: Vec<_> =
        files.filter(|path| path.extension().is_some_and(|end| end == "toml")).collect();
    files.sort();
    let findings = files.iter().map(|path| {
        let text = std::fs::read_to_string(path).expect("it can be read");
        toml::from_str::<Value>(&text).expect("TOML")["findings"].take()
    });
    findings.collect()
});
static WORDS: LazyLock<Words> = LazyLock::new(|| Words::of("en"));

/// A findings file: how many findings are put in, and how many things changed, the tape says.
fn file(tape: &mut Tape<'_>) -> Value {
    let mut file = if tape.is(64) {
        json!({"supply": {"volts": 120, "hertz": 60}})
    } else {
        tape.pick(&GOLDEN).clone()
    };
    for _ in 0..tape.below(12) {
        put(tape, &mut file);
    }
    // Half of the files are left as a person could have written them.
    if tape.is(128) {
        for _ in 0..=tape.below(3) {
            change(tape, &mut file);
        }
    }
    file
}

/// Fails where a refusal names no field or has no sentence.
pub fn check_refusal(problem: &Problem) {
    let field = problem.field.as_deref().expect("a file is refused by a field");
    // A key of a file may be the empty text, and is named all the same.
    assert!(field.chars().count() <= 81, "{field:?}");
    let sentence = problem.sentence(&WORDS);
    assert!(sentence.contains(' ') && !sentence.contains("{$"), "{sentence:?}");
}

/// Fails where a figure in a text is none.
pub fn check_said(text: &str) {
    assert!(!text.contains("NaN"), "{text}");
    let words = text.split(|c: char| !c.is_alphanumeric());
    assert!(words.into_iter().all(|word| word != "inf"), "{text}");
    assert!(!text.contains("{$") && !text.contains("{ $"), "{text}");
}

fn assess(text: &[u8]) -> Reached {
    let (findings, verdict) = match assess_file(text) {
        Ok(assessed) => assessed,
        Err(problem) => {
            check_refusal(&problem);
            return Reached::Nothing;
        }
    };
    let view = AssessView::from(&verdict);
    let worst = view.worst_touch_ma;
    assert!(worst.is_finite() && worst >= 0.0, "{worst} mA");
    assert!(view.margin <= 3, "margin {}", view.margin);
    assert!(!verdict.could_be.is_worse_than(verdict.treat_as), "{view:?}");
    let share = verdict.likely.map_or(1.0, |likely| likely.share);
    assert!((0.0..=1.0 + 1e-9).contains(&share), "{share}");
    assert_eq!(view.consistent == 0, !view.conflicts.is_empty(), "{view:?}");
    let said = json!(tag(&findings, &verdict, &WORDS)).to_string();
    check_said(&said);
    Reached::Taken
}

#[test]
fn findings_files() {
    let tally = Tally::new("findings");
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        let text = file(&mut tape).to_string().into_bytes();
        tally.count(assess(&text));
        // The other doors that take a file read the same, or refuse it.
        if tape.is(24) {
            drop(remedies_file(&text).map_err(|problem| check_refusal(&problem)));
        }
        drop(readings_file(&text).map_err(|problem| check_refusal(&problem)));
        let anybody = person("dry", "5", None).expect("the person of the design");
        drop(exposure_file(&text, &anybody).map_err(|problem| check_refusal(&problem)));
    });
    tally.end(45);
}

/// A findings file as bytes: JSON with bytes flipped, put in, left out.
#[test]
fn bytes_of_findings_files() {
    let tally = Tally::new("findings, as bytes");
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        let mut text = tape.pick(&GOLDEN).to_string().into_bytes();
        super::bytes::change(&mut tape, &mut text, 3);
        tally.count(assess(&text));
    });
    tally.end(5);
}
