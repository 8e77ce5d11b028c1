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
pub const STILL_POSSIBLE: &str = ".still [role=status]";

/// A message of the screens, such as `list-new`.
///
/// # Panics
/// When there is no such message.
pub fn words(id: &str) -> String {
    message(&root().join("ui/src/lib/words/en.ftl"), id)
}

/// A message of one screen's own file, such as `papers-made` of `papers`.
///
/// # Panics
/// When there is no such message.
pub fn screen_words(file: &str, id: &str) -> String {
    message(&root().join(format!("ui/src/lib/words/en.{file}.ftl")), id)
}

/// A message of the core, such as `takes-photo-picture` of `photo`.
///
/// # Panics
/// When there is no such message.
pub fn core_words(file: &str, id: &str) -> String {
    message(&root().join(format!("src-tauri/core/words/en/{file}.ftl")), id)
}

/// An answer to a question, as the core words it.
///
/// # Panics
/// When there is no such answer.
pub fn answer(question: &str, answer: &str) -> String {
    if answer == "cant_tell" {
        return core_words("answers", "answer-cant_tell");
    }
    core_words("answers", &format!("answer-{question}-{answer}"))
}

/// How far the inspector may go, as its box is named: what it is, then its note.
///
/// # Panics
/// When there is no such access.
pub fn access(id: &str) -> String {
    format!("{} {}", words(&format!("access-{id}")), words(&format!("access-{id}-note")))
}

/// The button that opens the photo of a finding.
///
/// # Panics
/// When there is no such finding.
pub fn open_photo(question: &str) -> String {
    let of = core_words("answers", &format!("finding-{question}"));
    words("photo-open").replace("{ $of }", &of)
}

/// The question on the screen, out of its address: `plug` of `#/i/…/q/plug`.
pub fn question(address: &str) -> Option<&str> {
    match address.split('/').collect::<Vec<_>>()[..] {
        [_, "i", _, "q" | "also" | "hint" | "change", question] => Some(question),
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
