//! Pixels to fewer pixels, and to a JPEG.

use std::error::Error;
use std::fmt;
use std::thread;

use fast_image_resize::images::{Image, ImageRef};
use fast_image_resize::{FilterType, PixelType, ResizeAlg, ResizeOptions, Resizer};
use image::RgbImage;
use jpeg_encoder::{ColorType, Encoder};

use super::error::PhotoError;

/// The longest side that is decoded, px: 20,000 is beyond any phone's panorama.
pub(super) const SIDE_LIMIT: u32 = 20_000;

/// JPEG quality: print on a capacitor stays readable, a photo stays below about a megabyte.
/// Common practice.
const QUALITY: u8 = 85;

/// Rows of the small picture that are made at once. What lies between the two passes of a band stays
/// in the processor's cache; that of a whole picture is 18 MB which the system has to hand out anew,
/// and that takes as long as the work itself.
const BAND: usize = 64;

/// Bytes of a pixel.
const CHANNELS: usize = 3;

/// The picture so that no side is longer than `side`; a smaller one stays as it is.
pub(super) fn shrunk(picture: &RgbImage, side: u32) -> Result<Option<RgbImage>, PhotoError> {
    let (width, height) = picture.dimensions();
    if width.max(height) <= side {
        return Ok(None);
    }
    let (to_width, to_height) = fit(width, height, side);
    let mut small = RgbImage::new(to_width, to_height);
    let done = fill(picture, &mut small);
    done.map_err(|_| PhotoError::TooLarge { width, height })?;
    Ok(Some(small))
}

/// What goes wrong on the way, on either thread.
type Failure = Box<dyn Error + Send + Sync>;

/// Fills a small picture with a large one: the upper half here, the lower beside it.
fn fill(picture: &RgbImage, small: &mut RgbImage) -> Result<(), Failure> {
    let (to_width, to_height) = small.dimensions();
    let row = usize::try_from(to_width)? * CHANNELS;
    let scale = f64::from(picture.height()) / f64::from(to_height);
    let bands = usize::try_from(to_height)?.div_ceil(BAND);
    let (upper, lower) = small.split_at_mut((bands / 2) * BAND * row);
    let middle = f64::from(u32::try_from(upper.len() / row)?) * scale;
    thread::scope(|scope| {
        let below = || fill_part(picture, lower, to_width, middle, scale);
        let below = thread::Builder::new().spawn_scoped(scope, below)?;
        let above = fill_part(picture, upper, to_width, 0.0, scale);
        // It cannot panic; if it did, the picture would be refused.
        let below = below.join().unwrap_or_else(|_| Err(fmt::Error.into()));
        above.and(below)
    })
}

/// Fills rows of a small picture from `top` on of a large one, band by band.
fn fill_part(
    picture: &RgbImage,
    rows: &mut [u8],
    to_width: u32,
    mut top: f64,
    scale: f64,
) -> Result<(), Failure> {
    let (width, height) = picture.dimensions();
    let source = ImageRef::new(width, height, picture.as_raw(), PixelType::U8x3)?;
    let sharp = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::Lanczos3));
    let row = usize::try_from(to_width)? * CHANNELS;
    let mut resizer = Resizer::new();
    for band in rows.chunks_mut(row * BAND) {
        let rows = u32::try_from(band.len() / row)?;
        let mut target = Image::from_slice_u8(to_width, rows, band, PixelType::U8x3)?;
        // The filter still looks beyond the band, up to the edge of the picture: no seam is left.
        let tall = (f64::from(rows) * scale).min(f64::from(height) - top);
        let part = sharp.crop(0.0, top, f64::from(width), tall);
        resizer.resize(&source, &mut target, &part)?;
        top += tall;
    }
    Ok(())
}

/// Width and height with the longer one at `side`, the shorter in proportion and never 0.
fn fit(width: u32, height: u32, side: u32) -> (u32, u32) {
    let longest = u64::from(width.max(height)).max(1);
    let scaled = |length: u32| {
        let rounded = (u64::from(length) * u64::from(side) + longest / 2) / longest;
        u32::try_from(rounded).unwrap_or(side).clamp(1, side)
    };
    (scaled(width), scaled(height))
}

/// The JPEG of a picture: pixels and nothing else.
pub(super) fn jpeg(picture: &RgbImage) -> Result<Vec<u8>, PhotoError> {
    let (width, height) = picture.dimensions();
    let side =
        |length: u32| u16::try_from(length).map_err(|_| PhotoError::TooLarge { width, height });
    let mut bytes = Vec::new();
    let encoder = Encoder::new(&mut bytes, QUALITY);
    let done = encoder.encode(picture.as_raw(), side(width)?, side(height)?, ColorType::Rgb);
    done.map_err(|_| PhotoError::TooLarge { width, height })?;
    Ok(bytes)
}
