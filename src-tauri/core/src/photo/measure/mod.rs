//! Measures on a photo that shows a bank card: millimetres between two points, and what kind of
//! blades a plug has.
//!
//! The card's corners give the plane it lies in ([`CardView`]); a point that is tapped is drawn to
//! the edge beside it ([`snap()`]); two points give millimetres with a bound ([`CardView::length`]);
//! the edges of two blades give an answer that is offered ([`read_blades`]).
//!
//! An answer is only ever offered: a person looks at the plug and answers the question themselves.
//! What cannot be told is said not to be told. Whoever takes equal blades for polarised ones, or the
//! other way round, reasons on from there about what may be live.
//!
//! What this does not do: it corrects no lens that bends straight lines, and finds no card and no
//! plug by itself.
//!
//! Places in a photo are in px from its upper left corner, so that the middle of the first pixel is
//! at (0.5, 0.5).

mod blades;
mod card;
mod error;
mod homography;
mod length;
mod pose;
mod snap;

#[cfg(test)]
mod tests;

pub use blades::{BladeReading, Says, Why, read_blades};
pub use card::{CARD_LONG_MM, CARD_SHORT_MM, CardView};
pub use error::MeasureError;
pub use homography::Point;
pub use length::{Above, Length, Spot, TAP_PX};
pub use snap::{Grey, snap};
