//! How the checks find things on the screens: by the words that a person reads there.
//!
//! The words themselves are looked up in the Fluent files, so that better wording breaks no check.

use std::path::{Path, PathBuf};

/// Elements that can be tapped.
pub const TAPPED: &str = "button, a[href], summary, [role=button], [role=checkbox], label";
/// The tag with the verdict.
pub const TAG: &str = "article";
/// The heading of the screen.
pub const HEADING: &str = "h1";
/// What is still possible, as it is read out.
pub const STILL_POSSIBLE: &str = "[role=status]";

/// A message of the screens, such as `list-new`.
///
/// # Panics
/// When there is no such message.
pub fn words(id: &str) -> String {
    message(&root().join("ui/src/lib/words/en.ftl"), id)
}

/// An answer to a question, as the core words it.
///
/// # Panics
/// When there is no such answer.
pub fn answer(question: &str, answer: &str) -> String {
    let id = if answer == "cant_tell" {
        "answer-cant_tell".to_owned()
    } else {
        format!("answer-{question}-{answer}")
    };
    message(&root().join("src-tauri/core/words/en/answers.ftl"), &id)
}

/// The question on the screen, out of its address: `plug` of `#/i/…/q/plug`.
pub fn question(address: &str) -> Option<&str> {
    match address.split('/').collect::<Vec<_>>()[..] {
        [_, "i", _, "q" | "also" | "change", question] => Some(question),
        _ => None,
    }
}

/// The inspection on the screen, out of its address.
pub fn inspection(address: &str) -> Option<&str> {
    match address.split('/').collect::<Vec<_>>()[..] {
        [_, "i", inspection, ..] => Some(inspection),
        _ => None,
    }
}

/// The folder of the whole project.
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// The messages looked for here are of one line.
fn message(file: &Path, id: &str) -> String {
    let text = std::fs::read_to_string(file);
    let text = text.unwrap_or_else(|error| panic!("{}: {error}", file.display()));
    let found = text.lines().find_map(|line| line.strip_prefix(id)?.strip_prefix(" = "));
    found.unwrap_or_else(|| panic!("{} has no {id}", file.display())).to_owned()
}
