//! What the screens are told when a command fails.

use coldchassis_core::words::Words;
use coldchassis_core::workbench::{Code, Problem};
use serde::Serialize;

/// A failure as the screens get it: what kind, which field, and the sentence a person reads.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Trouble {
    /// What kind of trouble.
    pub code: Code,
    /// The dotted path of the field, where one is to blame.
    pub field: Option<String>,
    /// What to say, in the inspector's language.
    pub sentence: String,
}

impl Trouble {
    /// A problem, put into words.
    pub fn of(problem: &Problem, words: &Words) -> Self {
        let sentence = problem.sentence(words);
        Self { code: problem.code, field: problem.field.clone(), sentence }
    }
}
