//! Why a report could not be made.

/// Why a report or a tag could not be made.
#[derive(Debug, thiserror::Error)]
pub enum ReportError {
    /// A part of the document is not what the standard allows.
    #[error("the document does not hold: {0}")]
    Document(String),
    /// A photo is not a JPEG that can be passed through.
    #[error("photo {place} cannot be passed through: {why}")]
    Photo {
        /// Which, from 0.
        place: usize,
        /// What is wrong.
        why: String,
    },
    /// A drawing was read and cannot be drawn.
    #[error("drawing {0} cannot be drawn")]
    NotDrawn(usize),
    /// A size is larger than a page can be.
    #[error("a size is out of range")]
    OutOfRange,
    /// The letters that come with the program cannot be read.
    #[error("the letters cannot be read")]
    Letters,
    /// The text of a code is longer than a code holds.
    #[error("the text of the code is too long: {0} bytes")]
    CodeTooLong(usize),
}
