//! What went wrong, as data a shell can act on.

use serde::Serialize;

use crate::fields::FieldError;
use crate::store::StoreError;
use crate::words::{Message, Words};

/// The kinds of trouble a shell tells apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
pub enum Code {
    /// What was given does not fit a field.
    BadInput,
    /// There is no such unit or inspection.
    NotFound,
    /// The stored file was written by a newer version.
    NewerFile,
    /// The stored file is not one of ours.
    NotOurFile,
    /// The stored file is damaged; a snapshot, or what can be read, may be put in its place.
    Damaged,
    /// Reading or writing the stored file failed.
    Storage,
}

/// Trouble: a code, a message, and the field where there is one.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS, thiserror::Error)]
#[error("{code:?} {}", .message.id)]
pub struct Problem {
    /// What kind of trouble.
    pub code: Code,
    /// What to say.
    pub message: Message,
    /// The dotted path of the field; a long one is cut.
    pub field: Option<String>,
}

impl Problem {
    /// Trouble that no field is to blame for.
    pub const fn new(code: Code, message: Message) -> Self {
        Self { code, message, field: None }
    }

    /// The sentence for a person: the field first where there is one.
    pub fn sentence(&self, words: &Words) -> String {
        match &self.field {
            None => words.say(&self.message),
            Some(field) => words.say(
                &Message::new("error-field")
                    .text("field", printable(field))
                    .message("takes", self.message.clone()),
            ),
        }
    }
}

/// The longest field name that is repeated to a person.
const LONGEST_FIELD: usize = 80;

/// A field's name as one short line: a key of a bad file may hold anything.
fn printable(field: &str) -> String {
    let clean = field.chars().map(|c| if c.is_control() { '\u{fffd}' } else { c });
    let mut short: String = clean.clone().take(LONGEST_FIELD).collect();
    if clean.count() > LONGEST_FIELD {
        short.push('…');
    }
    short
}

impl Problem {
    /// There is no such unit.
    pub fn no_unit() -> Self {
        Self::new(Code::NotFound, Message::new("error-no-unit"))
    }

    /// There is no such inspection.
    pub fn no_inspection() -> Self {
        Self::new(Code::NotFound, Message::new("error-no-inspection"))
    }
}

impl From<StoreError> for Problem {
    fn from(error: StoreError) -> Self {
        match error {
            StoreError::NewerFile { found, known } => Self::new(
                Code::NewerFile,
                Message::new("error-newer-file")
                    .text("found", found.to_string())
                    .text("known", known.to_string()),
            ),
            StoreError::NotOurFile => {
                Self::new(Code::NotOurFile, Message::new("error-not-our-file"))
            }
            StoreError::Damaged(detail) => Self::new(
                Code::Damaged,
                Message::new("error-damaged").text("detail", printable(&detail)),
            ),
            StoreError::NoRoom => Self::new(Code::Storage, Message::new("error-no-room")),
            StoreError::ReadOnly => Self::new(Code::Storage, Message::new("error-read-only")),
            StoreError::NoSuchUnit(_) => Self::no_unit(),
            StoreError::NoSuchInspection(_) | StoreError::OtherUnit(_) => Self::no_inspection(),
            other => Self::new(
                Code::Storage,
                Message::new("error-storage").text("detail", printable(&other.to_string())),
            ),
        }
    }
}

impl From<FieldError> for Problem {
    fn from(error: FieldError) -> Self {
        let field = Some(printable(&error.field));
        Self { code: Code::BadInput, message: error.message, field }
    }
}
