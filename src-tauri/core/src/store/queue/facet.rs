//! Words of the index that no person types: one for each thing that can be filtered by, and for each answer
//! that was found.
//!
//! The record keeps ids, and a person searches by the words of a language. Which ids a word stands for is
//! for others to say, so that what is indexed holds for every language.

use sha2::{Digest, Sha256};
use std::fmt::Write;

/// What they begin with: a letter that no alphabet has, so that nothing a person types begins one, and the
/// index of beginnings has them apart.
const FIRST: char = '\u{e000}';
/// Bytes of a digest: among a hundred thousand values two are alike by a chance of one in ten thousand.
const BYTES: usize = 6;

/// The word for a value of a kind: a digest, so that any text makes one word.
pub(super) fn facet(kind: &str, value: &str) -> String {
    let folded = value.trim().to_lowercase();
    let digest = Sha256::digest(format!("{kind} {folded}"));
    digest.iter().take(BYTES).fold(FIRST.to_string(), |mut word, byte| {
        // Writing to a text cannot fail.
        let _ = write!(word, "{byte:02x}");
        word
    })
}

/// What a word that is searched for can mean among findings: any answer under a key, or one of them.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Meaning {
    key: String,
    answer: Option<String>,
}

impl Meaning {
    /// Any answer under a key, such as `answers.plug`.
    pub fn any(key: &str) -> Self {
        Self { key: key.to_owned(), answer: None }
    }

    /// One answer under a key, by its id.
    pub fn answer(key: &str, id: &str) -> Self {
        Self { key: key.to_owned(), answer: Some(id.to_owned()) }
    }

    pub(super) fn facet(&self) -> String {
        match &self.answer {
            None => facet("finding", &self.key),
            Some(id) => facet("answer", &format!("{} {id}", self.key)),
        }
    }
}
