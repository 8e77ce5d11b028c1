//! Pictures as cameras, phones and mistakes make them, for the checks of photos.
//!
//! Containers are put together by hand from their standards, so that the checks do not lean on the
//! code that reads them.

use std::io::Cursor;

use image::{ImageFormat, Rgb, RgbImage};

/// Red, top left as the pixels lie in the file.
pub const RED: [u8; 3] = [220, 20, 20];
/// Green, top right.
pub const GREEN: [u8; 3] = [20, 200, 20];
/// Blue, bottom left.
pub const BLUE: [u8; 3] = [20, 20, 220];
/// White, bottom right.
pub const WHITE: [u8; 3] = [240, 240, 240];

/// A picture of four quarters, each of its own colour.
pub fn quarters(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        Rgb(match (x < width / 2, y < height / 2) {
            (true, true) => RED,
            (false, true) => GREEN,
            (true, false) => BLUE,
            (false, false) => WHITE,
        })
    })
}

/// A picture like those of a camera: slopes, edges and grain, another for each seed.
pub fn scene(width: u32, height: u32, seed: u32) -> RgbImage {
    let mut state = seed.wrapping_mul(2_654_435_761) | 1;
    RgbImage::from_fn(width, height, |x, y| {
        // A linear congruential generator: the grain of a sensor, the same each time.
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let grain = (state >> 27) as i32 - 16;
        let slope = (x * 160 / width + y * 60 / height) as i32;
        let edge = if (x / 37 + y / 53 + seed).is_multiple_of(2) { 30 } else { 0 };
        let level = |plus: i32| (slope + edge + grain + plus).clamp(0, 255) as u8;
        Rgb([level(20), level(10), level(0)])
    })
}

/// A picture as a file of some format.
///
/// # Panics
/// The format cannot hold it.
pub fn file(picture: &RgbImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = Vec::new();
    picture.write_to(&mut Cursor::new(&mut bytes), format).expect("it can be written");
    bytes
}

/// The camera that the planted notes name.
pub const CAMERA: &str = "Quibbard Pocket 7";

/// Notes of a camera in the TIFF form that EXIF uses: which way it was held, what it is, and where it
/// was. Tags: EXIF 2.3 (CIPA DC-008), from memory, high; an independent reader confirms them.
pub fn notes(orientation: u16) -> Vec<u8> {
    let make_at: u32 = 8 + 2 + 3 * 12 + 4;
    let position_at = make_at + CAMERA.len() as u32 + 1;
    let degrees_at = position_at + 2 + 4 * 12 + 4;
    let mut notes = b"II*\0\x08\0\0\0".to_vec();
    notes.extend(3_u16.to_le_bytes());
    entry(&mut notes, 0x010F, 2, CAMERA.len() as u32 + 1, &make_at.to_le_bytes());
    entry(&mut notes, 0x0112, 3, 1, &[orientation as u8, 0, 0, 0]);
    entry(&mut notes, 0x8825, 4, 1, &position_at.to_le_bytes());
    notes.extend([0; 4]);
    notes.extend(CAMERA.bytes());
    notes.push(0);
    notes.extend(4_u16.to_le_bytes());
    entry(&mut notes, 1, 2, 2, b"N\0\0\0");
    entry(&mut notes, 2, 5, 3, &degrees_at.to_le_bytes());
    entry(&mut notes, 3, 2, 2, b"E\0\0\0");
    entry(&mut notes, 4, 5, 3, &(degrees_at + 24).to_le_bytes());
    notes.extend([0; 4]);
    for part in [47_u32, 1, 22, 1, 3456, 100, 8, 1, 32, 1, 1234, 100] {
        notes.extend(part.to_le_bytes());
    }
    notes
}

fn entry(notes: &mut Vec<u8>, tag: u16, kind: u16, count: u32, value: &[u8; 4]) {
    notes.extend(tag.to_le_bytes());
    notes.extend(kind.to_le_bytes());
    notes.extend(count.to_le_bytes());
    notes.extend(value);
}

/// A JPEG with a segment put in right after its start.
///
/// # Panics
/// The contents are longer than a segment.
pub fn with_segment(jpeg: &[u8], marker: u8, contents: &[u8]) -> Vec<u8> {
    let length = u16::try_from(contents.len() + 2).expect("a segment is short");
    let mut bytes = jpeg[..2].to_vec();
    bytes.extend([0xFF, marker]);
    bytes.extend(length.to_be_bytes());
    bytes.extend(contents);
    bytes.extend(&jpeg[2..]);
    bytes
}

/// A JPEG with the notes of a camera.
pub fn with_notes(jpeg: &[u8], orientation: u16) -> Vec<u8> {
    let mut contents = b"Exif\0\0".to_vec();
    contents.extend(notes(orientation));
    with_segment(jpeg, 0xE1, &contents)
}

/// A JPEG whose header says another size than it has.
///
/// # Panics
/// It has no frame header.
pub fn claiming(jpeg: &[u8], width: u16, height: u16) -> Vec<u8> {
    let is_frame = |pair: &[u8]| pair[0] == 0xFF && matches!(pair[1], 0xC0..=0xC2);
    let at = jpeg.windows(2).position(is_frame).expect("a frame header");
    let mut bytes = jpeg.to_vec();
    bytes[at + 5..at + 7].copy_from_slice(&height.to_be_bytes());
    bytes[at + 7..at + 9].copy_from_slice(&width.to_be_bytes());
    bytes
}

/// A PNG whose header says another size than it has.
pub fn png_claiming(png: &[u8], width: u32, height: u32) -> Vec<u8> {
    let mut bytes = png.to_vec();
    bytes[16..20].copy_from_slice(&width.to_be_bytes());
    bytes[20..24].copy_from_slice(&height.to_be_bytes());
    let sum = crc32(&bytes[12..29]);
    bytes[29..33].copy_from_slice(&sum.to_be_bytes());
    bytes
}

/// A PNG with a chunk put in right after its header.
pub fn with_chunk(png: &[u8], kind: &[u8; 4], contents: &[u8]) -> Vec<u8> {
    let mut chunk = kind.to_vec();
    chunk.extend(contents);
    let mut bytes = png[..33].to_vec();
    bytes.extend((contents.len() as u32).to_be_bytes());
    bytes.extend(&chunk);
    bytes.extend(crc32(&chunk).to_be_bytes());
    bytes.extend(&png[33..]);
    bytes
}

/// A PNG that says it is an animation of two frames.
pub fn animated_png(picture: &RgbImage) -> Vec<u8> {
    with_chunk(&file(picture, ImageFormat::Png), b"acTL", &[0, 0, 0, 2, 0, 0, 0, 0])
}

/// A WebP animation of two frames.
pub fn animated_webp(picture: &RgbImage) -> Vec<u8> {
    let still = file(picture, ImageFormat::WebP);
    let coded = &still[12..];
    let size = |length: u32| (length - 1).to_le_bytes();
    let mut canvas = vec![0b10, 0, 0, 0];
    canvas.extend(&size(picture.width())[..3]);
    canvas.extend(&size(picture.height())[..3]);
    let mut frame = vec![0; 6];
    frame.extend(&size(picture.width())[..3]);
    frame.extend(&size(picture.height())[..3]);
    frame.extend([100, 0, 0, 0]);
    frame.extend(coded);
    let mut body = b"WEBP".to_vec();
    for (kind, contents) in [(b"VP8X", &canvas), (b"ANIM", &vec![0; 6])] {
        riff(&mut body, kind, contents);
    }
    riff(&mut body, b"ANMF", &frame);
    riff(&mut body, b"ANMF", &frame);
    let mut bytes = Vec::new();
    riff(&mut bytes, b"RIFF", &body);
    bytes
}

fn riff(into: &mut Vec<u8>, kind: &[u8; 4], contents: &[u8]) {
    into.extend(kind);
    into.extend((contents.len() as u32).to_le_bytes());
    into.extend(contents);
    if contents.len() % 2 == 1 {
        into.push(0);
    }
}

/// The check sum of a PNG chunk (ISO/IEC 15948, annex D).
fn crc32(bytes: &[u8]) -> u32 {
    let step = |sum: u32, byte: &u8| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
            if sum & 1 == 1 { (sum >> 1) ^ 0xEDB8_8320 } else { sum >> 1 }
        })
    };
    !bytes.iter().fold(u32::MAX, step)
}
