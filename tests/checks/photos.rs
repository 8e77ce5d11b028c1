//! Photos: what a camera or a mistake gives, what is kept of it, and that a failure keeps nothing.

#[path = "photos/hints.rs"]
mod hints;
#[path = "photos/keeping.rs"]
mod keeping;
#[path = "photos/marking.rs"]
mod marking;
#[path = "photos/refusals.rs"]
mod refusals;
#[path = "photos/table.rs"]
mod table;

use coldchassis_core::photo::{LONGEST_SIDE, THUMBNAIL_SIDE, ingest};
use coldchassis_tests::pictures::{
    BLUE, CAMERA, GREEN, RED, WHITE, file, notes, quarters, scene, with_notes, with_segment,
};
use image::codecs::png::PngEncoder;
use image::{ImageEncoder, ImageFormat, Rgba, RgbaImage};

fn decoded(jpeg: &[u8]) -> image::RgbImage {
    assert_eq!(image::guess_format(jpeg).expect("a format"), ImageFormat::Jpeg);
    image::load_from_memory(jpeg).expect("what is kept can be read").into_rgb8()
}

/// The colour in the middle of a quarter: `right` and `low` say which.
fn quarter(picture: &image::RgbImage, right: bool, low: bool) -> [u8; 3] {
    let at = |length: u32, far: bool| if far { length * 3 / 4 } else { length / 4 };
    picture.get_pixel(at(picture.width(), right), at(picture.height(), low)).0
}

fn is_near(found: [u8; 3], wanted: [u8; 3]) -> bool {
    found.iter().zip(wanted).all(|(a, b)| a.abs_diff(b) < 12)
}

/// Where the first row and the first column of a file belong, by orientation: EXIF 2.3, tag 0x0112.
const ORIENTATIONS: [(u16, Side, Side); 8] = [
    (1, Side::Top, Side::Left),
    (2, Side::Top, Side::Right),
    (3, Side::Bottom, Side::Right),
    (4, Side::Bottom, Side::Left),
    (5, Side::Left, Side::Top),
    (6, Side::Right, Side::Top),
    (7, Side::Right, Side::Bottom),
    (8, Side::Left, Side::Bottom),
];

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Side {
    Top,
    Bottom,
    Left,
    Right,
}

impl Side {
    fn opposite(self) -> Self {
        match self {
            Self::Top => Self::Bottom,
            Self::Bottom => Self::Top,
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

/// Whether the picture stands as it was seen, when it was stored with its first row and column there.
fn check_turned(picture: &image::RgbImage, row: Side, column: Side, what: &str) {
    for (colour, row, column) in [
        (RED, row, column),
        (GREEN, row, column.opposite()),
        (BLUE, row.opposite(), column),
        (WHITE, row.opposite(), column.opposite()),
    ] {
        let sides = [row, column];
        let (right, low) = (sides.contains(&Side::Right), sides.contains(&Side::Bottom));
        let found = quarter(picture, right, low);
        assert!(is_near(found, colour), "{what}: {sides:?} is {found:?}, not {colour:?}");
    }
}

#[test]
fn every_orientation_stands_upright() {
    for (stored, kept, small) in
        [((96, 64), (96, 64), (96, 64)), ((3000, 2000), (2048, 1365), (320, 213))]
    {
        let plain = file(&quarters(stored.0, stored.1), ImageFormat::Jpeg);
        for (orientation, row, column) in ORIENTATIONS {
            let photo = ingest(&with_notes(&plain, orientation)).expect("a JPEG");
            let is_upended = orientation > 4;
            let turned = |(w, h): (u32, u32)| if is_upended { (h, w) } else { (w, h) };
            assert_eq!((photo.width, photo.height), turned(kept), "{orientation}");
            let (full, thumbnail) = (decoded(&photo.jpeg), decoded(&photo.thumbnail));
            assert_eq!(full.dimensions(), turned(kept), "{orientation}");
            assert_eq!(thumbnail.dimensions(), turned(small), "{orientation}");
            check_turned(&full, row, column, &format!("{orientation}"));
            check_turned(&thumbnail, row, column, &format!("thumbnail {orientation}"));
        }
    }
}

#[test]
fn an_orientation_in_a_png_counts_too() {
    let picture = quarters(96, 64);
    let mut bytes = Vec::new();
    let mut encoder = PngEncoder::new(&mut bytes);
    encoder.set_exif_metadata(notes(6)).expect("PNG has a place for it");
    encoder
        .write_image(picture.as_raw(), 96, 64, image::ExtendedColorType::Rgb8)
        .expect("it can be written");
    let photo = ingest(&bytes).expect("a PNG");
    assert_eq!((photo.width, photo.height), (64, 96));
    check_turned(&decoded(&photo.jpeg), Side::Right, Side::Top, "PNG");
}

#[test]
fn an_orientation_that_is_none_turns_nothing() {
    let plain = file(&quarters(96, 64), ImageFormat::Jpeg);
    for orientation in [0, 9, 255] {
        let photo = ingest(&with_notes(&plain, orientation)).expect("a JPEG");
        check_turned(&decoded(&photo.jpeg), Side::Top, Side::Left, "no orientation");
    }
    let broken = with_segment(&plain, 0xE1, b"Exif\0\0II*\0\xFF\xFF\xFF\xFFnonsense");
    let photo = ingest(&broken).expect("a JPEG");
    check_turned(&decoded(&photo.jpeg), Side::Top, Side::Left, "broken notes");
}

fn contains(bytes: &[u8], text: &str) -> bool {
    bytes.windows(text.len()).any(|part| part == text.as_bytes())
}

/// The markers of a JPEG up to its coded pixels.
fn markers(jpeg: &[u8]) -> Vec<u8> {
    let (mut at, mut found) = (2, Vec::new());
    while jpeg[at] == 0xFF && jpeg[at + 1] != 0xDA {
        found.push(jpeg[at + 1]);
        at += 2 + usize::from(u16::from_be_bytes([jpeg[at + 2], jpeg[at + 3]]));
    }
    found
}

#[test]
fn nothing_of_where_when_and_with_what_is_left() {
    let plain = file(&scene(2500, 1800, 7), ImageFormat::Jpeg);
    let mut source = with_notes(&plain, 6);
    source =
        with_segment(&source, 0xE1, b"http://ns.adobe.com/xap/1.0/\0<x:xmpmeta lat='47,22N'/>");
    source = with_segment(&source, 0xED, b"Photoshop 3.0\0 city of Zwellin");
    source = with_segment(&source, 0xFE, b"a comment of Quibbard");
    let secrets =
        ["Exif", "GPS", CAMERA, "Quibbard", "ns.adobe.com", "xmpmeta", "Photoshop", "Zwellin"];

    // The reader finds the notes in the source, or finding nothing later would say nothing.
    let read = |bytes: &[u8]| {
        exif::Reader::new().read_from_container(&mut std::io::Cursor::new(bytes.to_vec()))
    };
    let there = read(&with_notes(&plain, 6)).expect("the notes can be read");
    for tag in [exif::Tag::Orientation, exif::Tag::Make, exif::Tag::GPSLatitude] {
        assert!(there.get_field(tag, exif::In::PRIMARY).is_some(), "{tag}");
    }
    let latitude = there.get_field(exif::Tag::GPSLatitude, exif::In::PRIMARY).expect("it is there");
    assert_eq!(latitude.display_value().to_string(), "47 deg 22 min 34.56 sec");
    assert!(["Exif", CAMERA, "xmpmeta", "Photoshop"].iter().all(|text| contains(&source, text)));

    let photo = ingest(&source).expect("a JPEG");
    for (what, kept) in [("photo", &photo.jpeg), ("thumbnail", &photo.thumbnail)] {
        assert!(matches!(read(kept), Err(exif::Error::NotFound(_))), "{what} has notes");
        for secret in secrets {
            assert!(!contains(kept, secret), "{what} says {secret}");
        }
        let markers = markers(kept);
        let notes = markers.iter().filter(|marker| matches!(marker, 0xE1..=0xEF | 0xFE));
        assert_eq!(notes.count(), 0, "{what}: {markers:02X?}");
    }
}

#[test]
fn a_photo_is_at_most_2048_pixels_and_a_small_one_stays_as_it_is() {
    assert_eq!((LONGEST_SIDE, THUMBNAIL_SIDE), (2048, 320));
    for (given, kept, small) in [
        ((4000, 3000), (2048, 1536), (320, 240)),
        ((3000, 4000), (1536, 2048), (240, 320)),
        ((2049, 2048), (2048, 2047), (320, 320)),
        ((2048, 1), (2048, 1), (320, 1)),
        ((6000, 1), (2048, 1), (320, 1)),
        ((321, 200), (321, 200), (320, 199)),
        ((320, 320), (320, 320), (320, 320)),
        ((1, 1), (1, 1), (1, 1)),
    ] {
        let photo = ingest(&file(&scene(given.0, given.1, 1), ImageFormat::Jpeg)).expect("a JPEG");
        assert_eq!((photo.width, photo.height), kept, "{given:?}");
        assert_eq!(decoded(&photo.jpeg).dimensions(), kept, "{given:?}");
        assert_eq!(decoded(&photo.thumbnail).dimensions(), small, "{given:?}");
    }
}

#[test]
fn jpeg_png_and_webp_give_the_same_picture() {
    let picture = scene(700, 500, 3);
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
        let photo = ingest(&file(&picture, format)).expect("a picture");
        let kept = decoded(&photo.jpeg);
        let pairs = kept.as_raw().iter().zip(picture.as_raw());
        let apart: u64 = pairs.map(|(a, b)| u64::from(a.abs_diff(*b))).sum();
        let mean = apart as f64 / kept.as_raw().len() as f64;
        println!("{format:?}: {mean:.2} of 255 apart on average");
        assert!(mean < 8.0, "{format:?}: {mean}");
    }
}

#[test]
fn grey_and_see_through_pictures_are_right() {
    let grey = image::GrayImage::from_pixel(40, 30, image::Luma([90]));
    for format in [ImageFormat::Jpeg, ImageFormat::Png] {
        let mut bytes = Vec::new();
        grey.write_to(&mut std::io::Cursor::new(&mut bytes), format).expect("it can be written");
        let photo = ingest(&bytes).expect("a grey picture");
        assert!(is_near(decoded(&photo.jpeg).get_pixel(20, 15).0, [90, 90, 90]));
    }
    let glass = RgbaImage::from_fn(40, 30, |x, _| Rgba([200, 0, 0, if x < 20 { 0 } else { 255 }]));
    for format in [ImageFormat::Png, ImageFormat::WebP] {
        let mut bytes = Vec::new();
        glass.write_to(&mut std::io::Cursor::new(&mut bytes), format).expect("it can be written");
        let kept = decoded(&ingest(&bytes).expect("a picture").jpeg);
        assert!(is_near(kept.get_pixel(5, 15).0, [255, 255, 255]), "{:?}", kept.get_pixel(5, 15));
        assert!(is_near(kept.get_pixel(35, 15).0, [200, 0, 0]), "{:?}", kept.get_pixel(35, 15));
    }
}

#[test]
fn the_name_is_the_sha_256_of_the_photo() {
    let bytes = file(&scene(500, 400, 5), ImageFormat::Jpeg);
    let (first, again) = (ingest(&bytes).expect("a JPEG"), ingest(&bytes).expect("a JPEG"));
    assert_eq!(first, again);
    // `sha256sum` is another implementation.
    let folder = tempfile::tempdir().expect("a temporary folder");
    let path = folder.path().join("photo");
    std::fs::write(&path, &first.jpeg).expect("it can be written");
    let output = std::process::Command::new("sha256sum").arg(&path).output().expect("sha256sum");
    let sum = String::from_utf8(output.stdout).expect("text");
    assert_eq!(sum.split_whitespace().next(), Some(first.digest.as_str()));
    let other = ingest(&file(&scene(500, 400, 6), ImageFormat::Jpeg)).expect("a JPEG");
    assert_ne!(other.digest, first.digest);
}
