//! What an answer has to be: a view, or a refusal with its kind, its field and a sentence.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::{Duration, Instant};

use coldchassis_tests::bridge::Desk;
use serde_json::Value;

/// Longer is taken for a hang. A report takes a second where the core is not optimised.
const PATIENCE: Duration = Duration::from_secs(60);
/// The kinds of refusals.
const CODES: [&str; 6] =
    ["bad_input", "not_found", "newer_file", "not_our_file", "damaged", "storage"];
/// What a person can be made to read, and the longest name of a field, characters.
const LONGEST_SENTENCE: usize = 2000;
const LONGEST_FIELD: usize = 100;

/// Runs a command and checks that it is answered as it should be.
pub fn answer(desk: &Desk, command: &str, arguments: &Value) -> Value {
    let start = Instant::now();
    let ran = catch_unwind(AssertUnwindSafe(|| desk.run(command, arguments)));
    let what = format!("{command} {}", short(&arguments.to_string()));
    let Ok(answer) = ran else { panic!("{what} failed from inside") };
    let took = start.elapsed();
    assert!(took < PATIENCE, "{what} took {took:?}");
    let fault = fault(&answer);
    assert!(fault.is_none(), "{what}: {fault:?} in {}", short(&answer.to_string()));
    answer
}

/// As [`answer`], of a command that has to be done.
pub fn done(desk: &Desk, command: &str, arguments: &Value) -> Value {
    let mut answer = answer(desk, command, arguments);
    assert!(is_done(&answer), "{command} {}: {answer}", short(&arguments.to_string()));
    answer["ok"].take()
}

/// As [`answer`], of a command that has to be refused; gives the refusal.
pub fn refused(desk: &Desk, command: &str, arguments: &Value) -> Value {
    let mut answer = answer(desk, command, arguments);
    let what = || format!("{command} {}", short(&arguments.to_string()));
    assert!(!is_done(&answer), "{} was done: {}", what(), short(&answer.to_string()));
    answer["problem"].take()
}

pub fn is_done(answer: &Value) -> bool {
    answer.get("ok").is_some()
}

/// What is wrong with the form of an answer.
fn fault(answer: &Value) -> Option<&'static str> {
    let fields = answer.as_object()?;
    if fields.len() != 1 {
        return Some("not one field");
    }
    if is_done(answer) {
        return None;
    }
    let Some(problem) = fields.get("problem").and_then(Value::as_object) else {
        return Some("no refusal");
    };
    let text = |name: &str| problem.get(name).and_then(Value::as_str);
    if problem.len() != 3 || !text("code").is_some_and(|code| CODES.contains(&code)) {
        return Some("no code");
    }
    match problem.get("field") {
        Some(Value::Null) => {}
        Some(Value::String(field)) if field.chars().count() <= LONGEST_FIELD => {}
        _ => return Some("no field"),
    }
    let sentence = text("sentence").unwrap_or_default();
    let length = sentence.chars().count();
    // An id without words has no space in it, and a placeholder that nothing fills shows its name.
    let is_said = sentence.contains(' ') && !sentence.contains("{$");
    if !is_said || length > LONGEST_SENTENCE { Some("no sentence") } else { None }
}

/// The beginning of a text.
pub fn short(text: &str) -> String {
    text.chars().take(300).collect()
}
