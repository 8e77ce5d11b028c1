//! Opens kept photos again, to be measured on or given away.

use image::{GrayImage, RgbImage};

use super::error::PhotoError;
use super::ingest::decode;
use super::shrink::jpeg;

/// The pixels of a kept photo, which lies as it was held.
///
/// # Errors
/// It is no picture that is kept, or damaged.
pub fn read_rgb(bytes: &[u8]) -> Result<RgbImage, PhotoError> {
    decode(bytes).map(|(pixels, _)| pixels)
}

/// The grey levels of a kept photo.
///
/// # Errors
/// As [`read_rgb`].
pub fn read_grey(bytes: &[u8]) -> Result<GrayImage, PhotoError> {
    Ok(image::imageops::grayscale(&read_rgb(bytes)?))
}

/// A picture as a JPEG of the kind that is kept.
///
/// # Errors
/// It is larger than a photo may be.
pub fn write_jpeg(picture: &RgbImage) -> Result<Vec<u8>, PhotoError> {
    jpeg(picture)
}
