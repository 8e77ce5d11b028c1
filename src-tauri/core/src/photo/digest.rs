//! Names a photo by what is in it, so that the same photo is kept once and a changed file is noticed.

use std::fmt;

use sha2::{Digest as _, Sha256};

/// Hexadecimal digits of a SHA-256.
const DIGITS: usize = 64;

/// The SHA-256 of a stored photo, as 64 small hexadecimal digits.
///
/// It can hold nothing else, so a file name made of it stays in its folder.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Digest(String);

impl Digest {
    /// The digest of these bytes.
    pub fn of(bytes: &[u8]) -> Self {
        let hash = Sha256::digest(bytes);
        Self(hash.iter().map(|byte| format!("{byte:02x}")).collect())
    }

    /// Reads a digest; any other text is none.
    pub fn parse(text: &str) -> Option<Self> {
        let is_digit = |c: char| matches!(c, '0'..='9' | 'a'..='f');
        let fits = text.len() == DIGITS && text.chars().all(is_digit);
        fits.then(|| Self(text.to_owned()))
    }

    /// The 64 digits.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for Digest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
