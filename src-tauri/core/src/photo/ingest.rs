//! From the bytes of a file to the two JPEGs that are kept.

use std::io::Cursor;
use std::thread;

use image::codecs::jpeg::JpegDecoder;
use image::codecs::png::PngDecoder;
use image::codecs::webp::WebPDecoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageError, Limits, RgbImage};

use super::digest::Digest;
use super::error::PhotoError;
use super::format::{Format, format_of};
use super::jpeg::outline;
use super::quality::{Hint, Quality};
use super::shrink::{SIDE_LIMIT, jpeg, shrunk};
use super::turn::turned;

/// The longest side of a kept photo, px.
pub const LONGEST_SIDE: u32 = 2048;

/// The longest side of a thumbnail, px.
pub const THUMBNAIL_SIDE: u32 = 320;

/// The most pixels that are decoded: 64 million, 192 MB as 8-bit colour. Cameras of phones give 12 or
/// 50; more than this could get the app closed by the system for its memory.
pub const MOST_PIXELS: u64 = 64_000_000;

/// The most bytes of a file: 64 MiB, several times a 50-megapixel JPEG.
pub const MOST_BYTES: usize = 64 << 20;

/// The most bytes of decoded pixels: the pixels above, each of four 8-bit channels.
const MOST_DECODED: u64 = MOST_PIXELS * 4;

/// A photo as it is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ingested {
    /// The SHA-256 of [`Ingested::jpeg`]: the photo's name.
    pub digest: Digest,
    /// The photo.
    pub jpeg: Vec<u8>,
    /// The thumbnail, a JPEG too.
    pub thumbnail: Vec<u8>,
    /// Pixels of the photo from left to right.
    pub width: u32,
    /// Pixels of the photo from top to bottom.
    pub height: u32,
    /// What speaks for taking it again.
    pub hints: Vec<Hint>,
}

/// Takes a picture in. Nothing of it but its pixels is in what comes out.
///
/// # Errors
/// It is no picture, damaged, too large, or of a kind that is not taken in.
pub fn ingest(bytes: &[u8]) -> Result<Ingested, PhotoError> {
    if bytes.len() > MOST_BYTES {
        return Err(PhotoError::TooLong { bytes: bytes.len() });
    }
    let (pixels, orientation) = decode(bytes)?;
    let photo = shrunk(&pixels, LONGEST_SIDE)?.unwrap_or(pixels);
    // Turned when it is small: the full picture takes 25 times as long.
    let photo = turned(photo, orientation);
    let Coded { jpeg, thumbnail, hints } = coded(&photo)?;
    let digest = Digest::of(&jpeg);
    let (width, height) = photo.dimensions();
    Ok(Ingested { digest, jpeg, thumbnail, width, height, hints })
}

/// What is made of a photo's pixels.
struct Coded {
    jpeg: Vec<u8>,
    thumbnail: Vec<u8>,
    hints: Vec<Hint>,
}

/// The JPEG of a photo, with its thumbnail and hints, which are made beside it.
fn coded(photo: &RgbImage) -> Result<Coded, PhotoError> {
    let small = || {
        let small = shrunk(photo, THUMBNAIL_SIDE)?;
        let thumbnail = jpeg(small.as_ref().unwrap_or(photo))?;
        Ok((thumbnail, Quality::of(photo).hints()))
    };
    thread::scope(|scope| {
        let beside = thread::Builder::new().spawn_scoped(scope, small);
        let jpeg = jpeg(photo)?;
        // Where the system gives no thread, it is made after.
        let beside = beside.ok().and_then(|beside| beside.join().ok());
        let (thumbnail, hints) = beside.unwrap_or_else(small)?;
        Ok(Coded { jpeg, thumbnail, hints })
    })
}

/// The pixels as they lie in the file, and how to turn them.
pub(super) fn decode(bytes: &[u8]) -> Result<(RgbImage, Orientation), PhotoError> {
    match format_of(bytes)? {
        Format::Jpeg => decode_jpeg(bytes),
        Format::Png => decode_png(bytes),
        Format::WebP => decode_webp(bytes),
    }
}

fn decode_jpeg(bytes: &[u8]) -> Result<(RgbImage, Orientation), PhotoError> {
    let decoder = JpegDecoder::new(Cursor::new(bytes)).map_err(damaged)?;
    check_size(&decoder)?;
    let outline = outline(bytes);
    if !outline.is_whole {
        return Err(PhotoError::Truncated);
    }
    if outline.components == 4 {
        return Err(PhotoError::PrintingColours);
    }
    read(decoder)
}

fn decode_png(bytes: &[u8]) -> Result<(RgbImage, Orientation), PhotoError> {
    let mut limits = Limits::no_limits();
    limits.max_alloc = Some(MOST_DECODED);
    let decoder = PngDecoder::with_limits(Cursor::new(bytes), limits).map_err(damaged)?;
    check_size(&decoder)?;
    if decoder.is_apng().map_err(damaged)? {
        return Err(PhotoError::Animated);
    }
    read(decoder)
}

fn decode_webp(bytes: &[u8]) -> Result<(RgbImage, Orientation), PhotoError> {
    let decoder = WebPDecoder::new(Cursor::new(bytes)).map_err(damaged)?;
    check_size(&decoder)?;
    if decoder.has_animation() {
        return Err(PhotoError::Animated);
    }
    read(decoder)
}

/// Refuses by the header, before anything is set aside for the pixels.
fn check_size(decoder: &impl ImageDecoder) -> Result<(), PhotoError> {
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    let fits = width.max(height) <= SIDE_LIMIT
        && pixels <= MOST_PIXELS
        && decoder.total_bytes() <= MOST_DECODED;
    if fits { Ok(()) } else { Err(PhotoError::TooLarge { width, height }) }
}

fn read(mut decoder: impl ImageDecoder) -> Result<(RgbImage, Orientation), PhotoError> {
    // Reading the pixels consumes the decoder. A note that cannot be read turns nothing.
    let orientation = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let picture = DynamicImage::from_decoder(decoder).map_err(damaged)?;
    Ok((opaque(picture), orientation))
}

/// A decoder that gives up: the first bytes were those of a picture, so the rest is at fault.
fn damaged(error: ImageError) -> PhotoError {
    match error {
        ImageError::Unsupported(_) => PhotoError::UnusualCoding,
        _ => PhotoError::Truncated,
    }
}

/// Colours without transparency: what can be seen through is white, as on paper.
fn opaque(picture: DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.into_rgb8();
    }
    let seen = picture.into_rgba8();
    RgbImage::from_fn(seen.width(), seen.height(), |x, y| {
        let [red, green, blue, alpha] = seen.get_pixel(x, y).0;
        let over_white = |colour: u8| {
            let (colour, alpha) = (u32::from(colour), u32::from(alpha));
            let mixed = (colour * alpha + 255 * (255 - alpha) + 127) / 255;
            u8::try_from(mixed).unwrap_or(u8::MAX)
        };
        image::Rgb([over_white(red), over_white(green), over_white(blue)])
    })
}
