//! Takes photos in: whatever a camera gave becomes one plain form, or is refused with a reason.
//!
//! A picture is decoded within limits, turned the way it was held, shrunk to a 2048 px JPEG and a
//! 320 px thumbnail, and named by the SHA-256 of the first. Only pixels pass: where and when it was
//! taken, and with what, stays behind.
//!
//! What it shows is looked at in [`measure`] alone, where a person points at a card and a plug.
//!
//! Invariants: nothing of the record; no name that could lead out
//! of the folder can be made.

mod digest;
mod draw_marks;
mod error;
mod files;
mod format;
mod ingest;
mod jpeg;
mod kept;
mod marks;
pub mod measure;
mod quality;
mod reopen;
mod shrink;
mod turn;

#[cfg(test)]
mod tests;

pub use digest::Digest;
pub use draw_marks::draw_on;
pub use error::PhotoError;
pub use files::{Files, Size, Staged};
pub use ingest::{Ingested, LONGEST_SIDE, MOST_BYTES, MOST_PIXELS, THUMBNAIL_SIDE, ingest};
pub use kept::{MOST_KEPT_BYTES, check_kept};
pub use marks::{Mark, read_marks};
pub use quality::{Hint, Quality};
pub use reopen::{read_grey, read_rgb, write_jpeg};
