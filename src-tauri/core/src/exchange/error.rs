//! Why a bundle was refused. The texts are for logs; people read [`BundleError::message`].

use std::io;

use thiserror::Error;

use super::{MOST_EVENTS, MOST_LINE_BYTES, MOST_PACKED, MOST_PHOTOS};
use crate::fields::FieldError;
use crate::photo::PhotoError;
use crate::store::StoreError;
use crate::words::Message;

/// The longest name of a part that is repeated to a person.
const LONGEST_NAME: usize = 80;

/// Why a bundle was refused, or could not be written. Nothing was changed when it is returned.
#[derive(Debug, Error)]
pub enum BundleError {
    /// It is no zip, or one that is cut short or damaged.
    #[error("not a bundle: {0}")]
    NotABundle(String),
    /// It is of a newer version.
    #[error("bundle of version {found}, this version knows {known}")]
    Newer {
        /// The version of the bundle.
        found: u64,
        /// The newest version known here.
        known: u64,
    },
    /// The manifest is missing, or makes no sense.
    #[error("manifest: {0}")]
    BadManifest(String),
    /// A part has a name that no part has: one that leads elsewhere, or of something unknown.
    #[error("part {0:?}")]
    BadName(String),
    /// A part is a link to another file, or no plain file at all.
    #[error("{0:?} is no plain file")]
    NotAFile(String),
    /// Two parts have one name, or share bytes.
    #[error("parts that are there twice or overlap")]
    Twice,
    /// A part is locked, or packed in another way than bundles are.
    #[error("{0:?} is packed in another way")]
    OtherPacking(String),
    /// A part would unpack to far more than it is.
    #[error("{0:?} unpacks to too much")]
    Bomb(String),
    /// A part is longer than any such part.
    #[error("{0:?} is too long")]
    TooLong(String),
    /// There are more parts or events than any bundle has.
    #[error("too many parts or events")]
    TooMany,
    /// The manifest names a part that is not there.
    #[error("{0:?} is missing")]
    Missing(String),
    /// A part is there that the manifest does not name.
    #[error("{0:?} is not in the manifest")]
    Unlisted(String),
    /// A part is not what the manifest says: other bytes, or another number of them.
    #[error("{0:?} is not what the manifest says")]
    WrongHash(String),
    /// The manifest counts other events or units than there are.
    #[error("manifest counts {said}, there are {found}")]
    WrongCount {
        /// What the manifest says.
        said: u64,
        /// What is there.
        found: u64,
    },
    /// A line is no event.
    #[error("line {line}: {detail}")]
    BadLine {
        /// The line, from 1.
        line: u64,
        /// What the reader says.
        detail: String,
    },
    /// An event sets something that does not fit.
    #[error("line {line}: {field}")]
    BadEvent {
        /// The line, from 1.
        line: u64,
        /// The field that does not fit.
        field: String,
    },
    /// A finding does not fit.
    #[error("line {line}: {error}")]
    BadFinding {
        /// The line, from 1.
        line: u64,
        /// Which field, and what it takes.
        error: FieldError,
    },
    /// An event was made after now.
    #[error("line {line}: from the future")]
    Future {
        /// The line, from 1.
        line: u64,
    },
    /// An event names a photo that is neither here nor in the bundle, or a photo is of no event.
    #[error("photo {0}")]
    Photo(String),
    /// A photo is no photo as it is kept here.
    #[error("{name:?}: {error}")]
    BadPhoto {
        /// The part.
        name: String,
        /// What is wrong with it.
        error: PhotoError,
    },
    /// The record refused.
    #[error(transparent)]
    Store(#[from] StoreError),
    /// A file could not be read or written.
    #[error("file: {0}")]
    Io(#[from] io::Error),
}

impl BundleError {
    /// Whether the bundle is to blame, not this device.
    pub const fn is_refusal(&self) -> bool {
        let of_record = matches!(
            self,
            Self::Store(
                StoreError::Dangling { .. }
                    | StoreError::Contradicts(_)
                    | StoreError::BadEvent { .. }
            )
        );
        of_record || !matches!(self, Self::Store(_) | Self::Io(_))
    }

    /// What is wrong with the bundle, for a person; it stands after the sentence that it was refused.
    pub fn message(&self) -> Message {
        match self {
            Self::NotABundle(_) => Message::new("bundle-not-one"),
            Self::Newer { found, known } => Message::new("bundle-newer")
                .text("found", found.to_string())
                .text("known", known.to_string()),
            Self::BadManifest(detail) => {
                Message::new("bundle-manifest").text("detail", short(detail))
            }
            Self::BadName(name) => Message::new("bundle-name").text("name", short(name)),
            Self::NotAFile(name) => Message::new("bundle-link").text("name", short(name)),
            Self::Twice => Message::new("bundle-twice"),
            Self::OtherPacking(name) => Message::new("bundle-packing").text("name", short(name)),
            Self::Bomb(name) => Message::new("bundle-bomb")
                .text("name", short(name))
                .text("times", MOST_PACKED.to_string()),
            Self::TooLong(name) => Message::new("bundle-too-long").text("name", short(name)),
            Self::TooMany => Message::new("bundle-too-many")
                .text("events", MOST_EVENTS.to_string())
                .text("photos", MOST_PHOTOS.to_string()),
            Self::Missing(name) => Message::new("bundle-missing").text("name", short(name)),
            Self::Unlisted(name) => Message::new("bundle-unlisted").text("name", short(name)),
            Self::WrongHash(name) => Message::new("bundle-wrong-hash").text("name", short(name)),
            Self::WrongCount { said, found } => Message::new("bundle-wrong-count")
                .text("said", said.to_string())
                .text("found", found.to_string()),
            Self::BadPhoto { name, error } => Message::new("bundle-bad-photo")
                .text("name", short(name))
                .message("takes", error.message()),
            Self::Photo(digest) => Message::new("bundle-photo").text("name", short(digest)),
            Self::Store(error) => of_store(error),
            Self::Io(error) => Message::new("bundle-io").text("detail", short(&error.to_string())),
            in_a_line => of_line(in_a_line),
        }
    }
}

fn of_line(error: &BundleError) -> Message {
    match error {
        BundleError::BadEvent { line, field } => {
            Message::new("bundle-event").text("line", line.to_string()).text("field", short(field))
        }
        BundleError::BadFinding { line, error } => Message::new("bundle-finding")
            .text("line", line.to_string())
            .text("field", short(&error.field))
            .message("takes", error.message.clone()),
        BundleError::Future { line } => {
            Message::new("bundle-future").text("line", line.to_string())
        }
        BundleError::BadLine { line, .. } => Message::new("bundle-line")
            .text("line", line.to_string())
            .text("most", MOST_LINE_BYTES.to_string()),
        other => Message::new("bundle-io").text("detail", short(&other.to_string())),
    }
}

fn of_store(error: &StoreError) -> Message {
    match error {
        StoreError::Dangling { id, field } => {
            Message::new("bundle-dangling").text("event", id.to_string()).text("field", *field)
        }
        StoreError::BadEvent { id, field } => {
            Message::new("bundle-bad-event").text("event", id.to_string()).text("field", *field)
        }
        StoreError::Contradicts(id) => {
            Message::new("bundle-contradicts").text("event", id.to_string())
        }
        other => Message::new("bundle-io").text("detail", short(&other.to_string())),
    }
}

/// A name as one short line: a bad file may hold anything.
fn short(name: &str) -> String {
    let clean = name.chars().map(|c| if c.is_control() { '\u{fffd}' } else { c });
    let mut short: String = clean.clone().take(LONGEST_NAME).collect();
    if clean.count() > LONGEST_NAME {
        short.push('…');
    }
    short
}
