//! Why something cannot be measured on a photo.

use thiserror::Error;

/// Why something cannot be measured. The texts are for logs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum MeasureError {
    /// The photo has no size.
    #[error("size: not above zero")]
    Size,
    /// A corner of the card is outside the photo or no number.
    #[error("corners: {corner} is outside the photo")]
    CornerOutside {
        /// Which of the four, from 0.
        corner: usize,
    },
    /// The corners do not go round the card: its sides cross, or one corner is pushed in.
    #[error("corners: not in order round the card")]
    CornersCrossed,
    /// A side of the card is so short that a tap's error is a large part of it.
    #[error("corners: too close together")]
    CardTooSmall,
    /// No camera sees a bank card with its corners there.
    #[error("corners: not those of an ID-1 card")]
    NotACard,
    /// The camera leans so far that either side of the card could be the long one.
    #[error("corners: either side could be the long one")]
    LongSideUnclear,
    /// An end of what is measured is no number, or beyond where the card's plane is seen.
    #[error("ends: not in the plane of the card")]
    EndOutside,
    /// The ends of what is measured are one point.
    #[error("ends: too close together")]
    EndsTooClose,
    /// The heights above the card are no numbers, in the wrong order, or reach up to the camera.
    #[error("above: not between the card and the camera")]
    Height,
    /// The rows of the grey picture are not as long as its size says.
    #[error("grey: not of its size")]
    Grey,
}
