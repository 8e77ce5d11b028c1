//! The way a current takes through the body, and what that means for the heart.

use crate::fields::id_enum;
use crate::figure::{Figure, Mark, Source};

id_enum! {
    /// A current path between two contacts.
    pub enum Path {
        /// Hand to hand: the reference of the impedance tables.
        HandToHand = "hand_to_hand",
        /// Left hand to both feet: the reference of the zones.
        LeftHandToBothFeet = "left_hand_to_both_feet",
        /// Right hand to both feet.
        RightHandToBothFeet = "right_hand_to_both_feet",
        /// Left hand to one foot.
        LeftHandToOneFoot = "left_hand_to_one_foot",
        /// Both hands to both feet: something held in both hands.
        BothHandsToBothFeet = "both_hands_to_both_feet",
        /// Left hand to the chest.
        LeftHandToChest = "left_hand_to_chest",
        /// Right hand to the chest.
        RightHandToChest = "right_hand_to_chest",
        /// Hands to the seat.
        HandsToSeat = "hands_to_seat",
        /// Left foot to right foot.
        FootToFoot = "foot_to_foot",
    }
}

const fn ratio(value: f64, mark: Mark) -> Figure {
    Figure::new(value, "1", Source::Iec60479_1, mark)
}

impl Path {
    /// The path's impedance as a share of that from hand to hand.
    pub const fn impedance_factor(self) -> Figure {
        match self {
            Self::HandToHand => ratio(1.0, Mark::MemoryHigh),
            Self::LeftHandToBothFeet | Self::RightHandToBothFeet => ratio(0.75, Mark::MemoryHigh),
            Self::LeftHandToOneFoot => ratio(0.8, Mark::Verified),
            Self::BothHandsToBothFeet | Self::LeftHandToChest | Self::RightHandToChest => {
                ratio(0.5, Mark::MemoryHigh)
            }
            Self::HandsToSeat => ratio(0.5, Mark::MemoryHigh),
            Self::FootToFoot => ratio(1.0, Mark::MemoryMedium),
        }
    }

    /// The heart-current factor: how much current on the reference path does the same to the heart.
    pub const fn heart_factor(self) -> Figure {
        let value = match self {
            Self::HandToHand => 0.4,
            Self::LeftHandToBothFeet | Self::LeftHandToOneFoot | Self::BothHandsToBothFeet => 1.0,
            Self::RightHandToBothFeet => 0.8,
            Self::LeftHandToChest => 1.5,
            Self::RightHandToChest => 1.3,
            Self::HandsToSeat => 0.7,
            Self::FootToFoot => 0.04,
        };
        ratio(value, Mark::Verified)
    }
}

/// How a person meets the metal, and so which paths have to be expected.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Posture {
    /// Touched in passing: one hand, with feet or the other hand on earth.
    Touching,
    /// Held in use: strings, a microphone, a panel; both hands may be on it.
    Holding,
}

impl Posture {
    /// The paths to be expected.
    pub const fn paths(self) -> &'static [Path] {
        match self {
            Self::Touching => &[Path::LeftHandToBothFeet, Path::HandToHand],
            Self::Holding => {
                &[Path::BothHandsToBothFeet, Path::LeftHandToBothFeet, Path::HandToHand]
            }
        }
    }

    /// The path of least impedance, which carries the most current.
    pub const fn worst_path(self) -> Path {
        match self {
            Self::Touching => Path::LeftHandToBothFeet,
            Self::Holding => Path::BothHandsToBothFeet,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Posture;

    #[test]
    fn the_worst_path_is_the_one_of_least_impedance() {
        for posture in [Posture::Touching, Posture::Holding] {
            let least = posture
                .paths()
                .iter()
                .map(|path| path.impedance_factor().value)
                .fold(f64::INFINITY, f64::min);
            assert_eq!(posture.worst_path().impedance_factor().value, least);
        }
    }
}
