//! Whether a file from elsewhere is a photo as it is kept here.

use std::io::Cursor;

use image::ImageDecoder;
use image::codecs::jpeg::JpegDecoder;

use super::error::PhotoError;
use super::files::Size;
use super::format::{Format, format_of};
use super::ingest::{LONGEST_SIDE, THUMBNAIL_SIDE};
use super::jpeg::outline;

/// The most bytes of a kept photo: 16 MiB, as many as its pixels can take uncompressed and more than
/// any JPEG of them does.
pub const MOST_KEPT_BYTES: u64 = 16 << 20;

/// Checks that bytes are a JPEG such as is made here: whole, no longer than the longest side, with
/// nothing of a camera's notes in it. Its pixels are not decoded.
///
/// # Errors
/// It is none.
pub fn check_kept(bytes: &[u8], size: Size) -> Result<(), PhotoError> {
    if format_of(bytes)? != Format::Jpeg {
        return Err(PhotoError::NotAPicture);
    }
    let outline = outline(bytes);
    if !outline.is_whole {
        return Err(PhotoError::Truncated);
    }
    if !outline.is_plain || !matches!(outline.components, 1 | 3) {
        return Err(PhotoError::UnusualCoding);
    }
    let decoder = JpegDecoder::new(Cursor::new(bytes)).map_err(|_| PhotoError::Truncated)?;
    let (width, height) = decoder.dimensions();
    let longest = match size {
        Size::Full => LONGEST_SIDE,
        Size::Thumbnail => THUMBNAIL_SIDE,
    };
    let fits = width.max(height) <= longest;
    if fits { Ok(()) } else { Err(PhotoError::TooLarge { width, height }) }
}
