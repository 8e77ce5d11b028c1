//! Why a file was not taken in as a photo.

use thiserror::Error;

use super::ingest::{MOST_BYTES, MOST_PIXELS};
use super::shrink::SIDE_LIMIT;
use crate::words::Message;

/// Why a file was not taken in. The texts are for logs; people read [`PhotoError::message`].
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum PhotoError {
    /// It is no picture of any kind known here, whatever its name says.
    #[error("not a picture")]
    NotAPicture,
    /// It begins as a picture, then breaks off or makes no sense.
    #[error("truncated or damaged")]
    Truncated,
    /// It has more pixels than a phone can hold at once.
    #[error("{width} x {height} pixels")]
    TooLarge {
        /// Pixels from left to right, as the file says.
        width: u32,
        /// Pixels from top to bottom, as the file says.
        height: u32,
    },
    /// It is longer than any photo.
    #[error("{bytes} bytes")]
    TooLong {
        /// Bytes of the file.
        bytes: usize,
    },
    /// It is a picture of a kind that is not taken in.
    #[error("a {kind} file")]
    UnsupportedKind {
        /// The kind, such as `HEIC`.
        kind: String,
    },
    /// It is an animation.
    #[error("animated")]
    Animated,
    /// Its colours are those of four printing inks.
    #[error("CMYK")]
    PrintingColours,
    /// Its kind is known, but not this way of writing it.
    #[error("coded in an unusual way")]
    UnusualCoding,
}

impl PhotoError {
    /// What a photo has to be, for a person.
    pub fn message(&self) -> Message {
        match self {
            Self::NotAPicture => Message::new("takes-photo-picture"),
            Self::Truncated => Message::new("takes-photo-whole"),
            Self::TooLarge { width, height } => Message::new("takes-photo-pixels")
                .text("megapixels", (MOST_PIXELS / 1_000_000).to_string())
                .text("side", SIDE_LIMIT.to_string())
                .text("width", width.to_string())
                .text("height", height.to_string()),
            Self::TooLong { .. } => {
                Message::new("takes-photo-bytes").text("megabytes", (MOST_BYTES >> 20).to_string())
            }
            Self::UnsupportedKind { kind } => {
                Message::new("takes-photo-kind").text("kind", kind.clone())
            }
            Self::Animated => Message::new("takes-photo-still"),
            Self::UnusualCoding => Message::new("takes-photo-usual-coding"),
            Self::PrintingColours => Message::new("takes-photo-screen-colours"),
        }
    }
}
