//! Tests of the parts that a whole photo does not show.

use super::jpeg::{Outline, outline};
use super::shrink::shrunk;
use super::*;
use fast_image_resize::images::Image;
use fast_image_resize::{FilterType, PixelType, ResizeAlg, ResizeOptions, Resizer};
use image::{Rgb, RgbImage};

#[test]
fn a_digest_is_64_small_hexadecimal_digits_and_nothing_else() {
    // FIPS 180-4, example of a one-block message: "abc"; from memory, high, and known to `sha256sum`.
    let abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    assert_eq!(Digest::of(b"abc").as_str(), abc);
    assert_eq!(Digest::parse(abc), Some(Digest::of(b"abc")));
    let wide = "０".repeat(64);
    let long = "0".repeat(65);
    for bad in ["", "..", "../../etc/passwd", &abc.to_uppercase(), &wide, &long, &"0".repeat(63)] {
        assert_eq!(Digest::parse(bad), None, "{bad}");
    }
    assert_eq!(Digest::parse(&format!("{}/", "0".repeat(63))), None);
}

#[test]
fn an_outline_needs_the_end_of_the_image_itself() {
    let frame = [0xFF, 0xC0, 0, 11, 8, 0, 1, 0, 1, 3, 1, 0x11, 0];
    let scan = [0xFF, 0xDA, 0, 2, 0x12, 0xFF, 0x00, 0x34, 0xFF, 0xD3, 0x56];
    let end = [0xFF, 0xD9];
    // A thumbnail's end inside the notes is not the picture's.
    let notes = [0xFF, 0xE1, 0, 6, 0xFF, 0xD8, 0xFF, 0xD9];
    let of = |parts: &[&[u8]]| outline(&parts.concat());
    let start: &[u8] = &[0xFF, 0xD8];
    let whole = Outline { components: 3, is_whole: true, is_plain: false };
    let plain = Outline { is_plain: true, ..whole };
    assert_eq!(of(&[start, &frame, &scan, &end]), plain);
    assert_eq!(of(&[start, &notes, &frame, &scan, &[0xFF, 0xFF], &end, b"more"]), whole);
    // Anything before, between or behind what pixels need.
    for odd in [
        [start, &notes, &frame, &scan, &end],
        [start, &frame, &scan, &end, b"more"],
        [b"GIF", start, &frame, &scan, &end],
        [start, b"between", &frame, &scan, &end],
    ] {
        assert_eq!(of(&odd), whole, "{odd:?}");
    }
    assert!(!of(&[start, &notes, &frame, &scan]).is_whole);
    assert!(!of(&[start, &notes]).is_whole);
    assert!(!of(&[start, &frame, &scan, &[0xFF]]).is_whole);
    assert_eq!(of(&[]), Outline::default());
    assert_eq!(of(&[start, &[0xFF, 0xC0, 0, 0]]), Outline::default());
}

#[test]
fn the_folder_is_only_made_when_the_first_photo_comes() {
    let folder = tempfile::tempdir().unwrap();
    let photos = folder.path().join("data").join("photos");
    let files = Files::of(photos.clone());
    let digest = Digest::of(b"abc");
    assert_eq!(files.read(&digest, Size::Full).unwrap(), None);
    assert!(!files.has(&digest));
    files.remove(&digest).unwrap();
    assert!(!photos.exists());
    let photo = Ingested {
        digest: digest.clone(),
        jpeg: b"abc".to_vec(),
        thumbnail: b"a".to_vec(),
        width: 1,
        height: 1,
        hints: Vec::new(),
    };
    files.put(&photo).unwrap();
    assert!(files.has(&digest));
    assert_eq!(files.read(&digest, Size::Full).unwrap().as_deref(), Some(&b"abc"[..]));
    assert_eq!(files.read(&digest, Size::Thumbnail).unwrap().as_deref(), Some(&b"a"[..]));
    files.remove(&digest).unwrap();
    assert_eq!(std::fs::read_dir(&photos).unwrap().count(), 0);
}

#[test]
fn a_picture_made_in_bands_is_the_same_as_one_made_at_once() {
    for (width, height, side) in
        [(900, 1300, 700), (1300, 900, 641), (500, 501, 500), (7, 900, 320)]
    {
        // Fine steps in both directions, so that a row out of place shows.
        let picture = RgbImage::from_fn(width, height, |x, y| {
            Rgb([(x * 37 % 256) as u8, (y * 91 % 256) as u8, ((x ^ y) % 256) as u8])
        });
        let banded = shrunk(&picture, side).unwrap().unwrap();
        let (to_width, to_height) = banded.dimensions();
        let raw = picture.clone().into_raw();
        let source = Image::from_vec_u8(width, height, raw, PixelType::U8x3).unwrap();
        let mut whole = Image::new(to_width, to_height, PixelType::U8x3);
        let sharp = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::Lanczos3));
        Resizer::new().resize(&source, &mut whole, &sharp).unwrap();
        let pairs = banded.as_raw().iter().zip(whole.buffer());
        let furthest = pairs.map(|(a, b)| a.abs_diff(*b)).max().unwrap();
        // Where a band begins is rounded in the last bit of a double.
        assert!(furthest <= 1, "{width} x {height}: {furthest} apart");
    }
}
