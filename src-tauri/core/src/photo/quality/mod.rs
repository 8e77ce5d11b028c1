//! Says whether a photo had better be taken again: blurred, dark, or lost in a reflection.
//!
//! A hint and never more: whoever stands in front of the unit may have no other light, and a blurred
//! photo of the right thing is worth more than none. So nothing here refuses anything.
//!
//! The thresholds were chosen on photos that were drawn, not taken (`tests/checks/photo_quality`): each
//! stands in the middle between what the lots that are to get its hint measure and what the others do.
//! How often a hint is right on photos from the field is not known; they are our own estimates.

mod edges;
mod light;
mod plane;

use image::RgbImage;

use crate::fields::id_enum;
use plane::Plane;

/// Below this sharpness a photo is called blurred.
const BLURRED_BELOW: f64 = 0.47;

/// From this dark share on a photo is called dark.
const DARK_FROM: f64 = 0.9;

/// From this glare share on a photo is said to have glare.
const GLARE_FROM: f64 = 0.03;

id_enum! {
    /// Why a photo had better be taken again.
    pub enum QualityHint {
        /// Out of focus, or the hand moved.
        Blurred = "blurred",
        /// Too little light to tell things apart.
        Dark = "dark",
        /// A lamp's reflection hides a part.
        Glare = "glare",
    }
}

/// What a photo's pixels say about how it was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quality {
    /// How much of the steepness of its edges a known blur takes, from 0 to 1: about 0.6 for a sharp
    /// photo, 0.3 and less for a blurred one, in pixels of the photo itself. Nothing where there are
    /// too few edges to tell, as on a bare wall: that is then not called blurred.
    pub sharpness: Option<f64>,
    /// The share of the photo that is below a quarter of full level, from 0 to 1; glare left out.
    pub dark_share: f64,
    /// The share of the photo in white spots that are larger than a glint, from 0 to 1.
    pub glare_share: f64,
}

impl Quality {
    /// Measures a photo as it is kept. A blur of less than about 2 px of 2048 is not seen.
    pub fn of(picture: &RgbImage) -> Self {
        let plane = Plane::of(picture);
        Self {
            sharpness: edges::sharpness(&plane),
            dark_share: light::dark_share(&plane),
            glare_share: light::glare_share(&plane),
        }
    }

    /// What to say of the photo; nothing where it is good enough.
    pub fn hints(&self) -> Vec<QualityHint> {
        let holds = |hint: &QualityHint| match hint {
            QualityHint::Blurred => self.sharpness.is_some_and(|value| value < BLURRED_BELOW),
            QualityHint::Dark => self.dark_share >= DARK_FROM,
            QualityHint::Glare => self.glare_share >= GLARE_FROM,
        };
        QualityHint::ALL.iter().copied().filter(holds).collect()
    }
}
