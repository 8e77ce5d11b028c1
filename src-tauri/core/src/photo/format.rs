//! Tells what kind of picture a file is by its first bytes; its name may say anything.

use image::ImageFormat;

use super::error::PhotoError;

/// The kinds that are taken in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Format {
    Jpeg,
    Png,
    WebP,
}

/// What a phone writes by default but no free decoder here reads: the brand in the file's first box.
/// Source: ISO/IEC 14496-12 (box), 23008-12 (brands); from memory, medium.
const HEIF_BRANDS: [&[u8]; 6] = [b"heic", b"heix", b"hevc", b"heim", b"mif1", b"msf1"];

/// The kind of a file.
pub(super) fn format_of(bytes: &[u8]) -> Result<Format, PhotoError> {
    if is_heif(bytes) {
        return Err(PhotoError::UnsupportedKind { kind: "HEIC".to_owned() });
    }
    match image::guess_format(bytes) {
        Ok(ImageFormat::Jpeg) => Ok(Format::Jpeg),
        Ok(ImageFormat::Png) => Ok(Format::Png),
        Ok(ImageFormat::WebP) => Ok(Format::WebP),
        Ok(other) => Err(PhotoError::UnsupportedKind { kind: name(other) }),
        Err(_) => Err(PhotoError::NotAPicture),
    }
}

fn is_heif(bytes: &[u8]) -> bool {
    let is_box = bytes.get(4..8) == Some(b"ftyp".as_slice());
    is_box && bytes.get(8..12).is_some_and(|brand| HEIF_BRANDS.contains(&brand))
}

fn name(format: ImageFormat) -> String {
    format.extensions_str().first().map(|name| name.to_uppercase()).unwrap_or_default()
}
