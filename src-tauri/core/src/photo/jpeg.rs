//! Reads the outline of a JPEG: whether it is all there, and how many colour components it has.
//!
//! The decoder fills what is missing with grey and turns four inks into colours by a guess; a photo
//! that is evidence must do neither without a word. Markers: ITU-T T.81, table B.1 (from memory, high).

/// What a JPEG is like before it is decoded.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Outline {
    /// Components of a pixel: 1 grey, 3 colour, 4 printing inks.
    pub components: u8,
    /// The end-of-image marker was found.
    pub is_whole: bool,
    /// Nothing is in it but what pixels need: no notes of a camera, no clip behind its end.
    pub is_plain: bool,
}

const END_OF_IMAGE: u8 = 0xD9;
const START_OF_SCAN: u8 = 0xDA;

/// Looks through a JPEG up to its end-of-image marker. What follows that, such as the film clip that
/// some phones append, does not matter.
pub(super) fn outline(bytes: &[u8]) -> Outline {
    let mut found = Outline::default();
    let mut needed = true;
    let mut rest = bytes;
    while let Some((marker, after)) = next_marker(rest) {
        // A marker begins where the one before ended.
        needed &= is_needed(marker) && rest.first() == Some(&0xFF);
        match marker {
            END_OF_IMAGE => {
                let is_plain = needed && after.is_empty();
                return Outline { is_whole: true, is_plain, ..found };
            }
            // Start of image, restarts and the like stand alone.
            0x01 | 0xD0..=0xD8 => rest = after,
            _ => {
                let Some((segment, beyond)) = segment(after) else {
                    break;
                };
                if is_frame_header(marker) {
                    found.components = segment.get(5).copied().unwrap_or_default();
                }
                rest = if marker == START_OF_SCAN { after_scan(beyond) } else { beyond };
            }
        }
    }
    found
}

/// The next marker and what follows it.
fn next_marker(bytes: &[u8]) -> Option<(u8, &[u8])> {
    let at = bytes.iter().position(|byte| *byte == 0xFF)?;
    // Any number of 0xFF may stand before a marker.
    let rest = bytes.get(at..)?;
    let code = rest.iter().position(|byte| *byte != 0xFF)?;
    Some((*rest.get(code)?, rest.get(code + 1..)?))
}

/// A segment's contents, by the length in front of it, and what follows it.
fn segment(bytes: &[u8]) -> Option<(&[u8], &[u8])> {
    let (length, _) = bytes.split_first_chunk()?;
    let length = usize::from(u16::from_be_bytes(*length));
    let contents = bytes.get(2..length)?;
    Some((contents, bytes.get(length..)?))
}

/// Start of frame, whatever the coding; among them stand three markers of other meaning.
const fn is_frame_header(marker: u8) -> bool {
    matches!(marker, 0xC0..=0xCF) && !matches!(marker, 0xC4 | 0xC8 | 0xCC)
}

/// Whether pixels need what a marker begins: the two ends, restarts, the frame, tables, scans, and the
/// 18 bytes of JFIF, which say how square a pixel is.
const fn is_needed(marker: u8) -> bool {
    let is_end_or_restart = matches!(marker, 0xD0..=0xD9);
    is_end_or_restart
        || is_frame_header(marker)
        || matches!(marker, 0xC4 | 0xDA | 0xDB | 0xDD | 0xE0)
}

/// What follows the coded pixels: in them 0xFF is followed by 0, or by a restart.
fn after_scan(mut bytes: &[u8]) -> &[u8] {
    while let Some(at) = bytes.iter().position(|byte| *byte == 0xFF) {
        match bytes.get(at + 1) {
            Some(0x00 | 0xD0..=0xD7) => bytes = bytes.get(at + 2..).unwrap_or_default(),
            Some(_) => return bytes.get(at..).unwrap_or_default(),
            None => break,
        }
    }
    &[]
}
