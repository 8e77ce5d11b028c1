//! Files that are no photo: each is refused with a reason, and nothing is stored.

use coldchassis_core::photo::{PhotoError, ingest};
use coldchassis_core::workbench::Code;
use coldchassis_tests::pictures::{
    animated_png, animated_webp, claiming, file, png_claiming, quarters, scene, with_chunk,
    with_notes,
};
use image::ImageFormat;
use jpeg_encoder::{ColorType, Encoder};

use super::decoded;
use super::table::Table;

fn jpeg() -> Vec<u8> {
    file(&scene(300, 200, 1), ImageFormat::Jpeg)
}

/// A JPEG in four printing inks, with the segment that editors put in.
fn printing(kind: ColorType) -> Vec<u8> {
    let mut bytes = Vec::new();
    let pixels = [10, 200, 30, 40].repeat(64 * 48);
    Encoder::new(&mut bytes, 90).encode(&pixels, 64, 48, kind).expect("it can be written");
    assert!(bytes.windows(5).any(|part| part == b"Adobe"), "there is an APP14 segment");
    bytes
}

fn kind(name: &str) -> PhotoError {
    PhotoError::UnsupportedKind { kind: name.to_owned() }
}

/// Every file that is refused, and why.
fn refused() -> Vec<(&'static str, Vec<u8>, PhotoError)> {
    let large = |width, height| PhotoError::TooLarge { width, height };
    let png = file(&quarters(64, 48), ImageFormat::Png);
    let webp = file(&quarters(64, 48), ImageFormat::WebP);
    let jpeg = jpeg();
    let half = |bytes: &[u8]| bytes[..bytes.len() / 2].to_vec();
    let text = b"Dear reader, this is no picture, whatever I am called.".to_vec();
    vec![
        ("a text named .jpg", text, PhotoError::NotAPicture),
        ("nothing", Vec::new(), PhotoError::NotAPicture),
        ("one byte", vec![0xFF], PhotoError::NotAPicture),
        ("half a JPEG", half(&jpeg), PhotoError::Truncated),
        (
            "a JPEG without its last two bytes",
            jpeg[..jpeg.len() - 2].to_vec(),
            PhotoError::Truncated,
        ),
        ("half a JPEG with notes", half(&with_notes(&jpeg, 6)), PhotoError::Truncated),
        ("half a PNG", half(&png), PhotoError::Truncated),
        ("half a WebP", half(&webp), PhotoError::Truncated),
        ("a huge JPEG", claiming(&jpeg, 30_000, 30_000), large(30_000, 30_000)),
        ("a huge PNG", png_claiming(&png, 30_000, 30_000), large(30_000, 30_000)),
        ("a long JPEG", claiming(&jpeg, 65_000, 8), large(65_000, 8)),
        ("a JPEG of 72 megapixels", claiming(&jpeg, 9_000, 8_000), large(9_000, 8_000)),
        ("an animated PNG", animated_png(&quarters(64, 48)), PhotoError::Animated),
        ("an animated WebP", animated_webp(&quarters(64, 48)), PhotoError::Animated),
        ("an animated GIF", b"GIF89a\x40\0\x30\0\x80\0\0".to_vec(), kind("GIF")),
        ("a HEIC", b"\0\0\0\x18ftypheic\0\0\0\0mif1heic".to_vec(), kind("HEIC")),
        ("a TIFF", b"II*\0\x08\0\0\0\0\0".to_vec(), kind("TIFF")),
        ("CMYK", printing(ColorType::Cmyk), PhotoError::PrintingColours),
        ("YCCK", printing(ColorType::CmykAsYcck), PhotoError::PrintingColours),
    ]
}

#[test]
fn each_is_refused_for_its_own_reason() {
    for (what, bytes, wanted) in refused() {
        assert_eq!(ingest(&bytes), Err(wanted), "{what}");
    }
    let long = vec![0; (64 << 20) + 1];
    assert_eq!(ingest(&long), Err(PhotoError::TooLong { bytes: long.len() }));
}

#[test]
fn nothing_is_stored_of_what_is_refused() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    table.bench.add_photo(inspection, None, &jpeg()).expect("a photo");
    let (rows, files) = (table.rows(), table.files());
    for (what, bytes, error) in refused() {
        for finding in [None, Some("answers.plug")] {
            let problem = table.bench.add_photo(inspection, finding, &bytes).unwrap_err();
            assert_eq!((problem.code, problem.field.as_deref()), (Code::BadInput, Some("photo")));
            assert_eq!(problem.message, error.message(), "{what}");
            let sentence = problem.sentence(table.bench.words());
            assert!(sentence.starts_with("photo: takes "), "{what}: {sentence}");
            assert!(!sentence.contains(['{', '$']), "{what}: {sentence}");
        }
    }
    assert_eq!(table.rows(), rows);
    assert_eq!(table.files(), files);
}

#[test]
fn a_jpeg_cut_anywhere_is_refused() {
    let whole = with_notes(&jpeg(), 3);
    let kept = ingest(&whole).expect("a JPEG");
    for length in 0..whole.len() {
        let found = ingest(&whole[..length]);
        let wanted = if length < 3 { PhotoError::NotAPicture } else { PhotoError::Truncated };
        assert_eq!(found, Err(wanted), "cut after {length} of {} bytes", whole.len());
    }
    // A film clip behind the picture, as some phones append, is no damage.
    let appended = [whole.clone(), b"\0\0\0\x18ftypmp42 clip".to_vec()].concat();
    assert_eq!(ingest(&appended).expect("a JPEG"), kept);
}

#[test]
fn a_progressive_jpeg_with_restarts_is_right() {
    let picture = scene(640, 480, 2);
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, 90);
    encoder.set_progressive(true);
    encoder.set_restart_interval(4);
    encoder.encode(picture.as_raw(), 640, 480, ColorType::Rgb).expect("it can be written");
    let kept = decoded(&ingest(&bytes).expect("a JPEG").jpeg);
    assert_eq!(kept.dimensions(), (640, 480));
    assert!(ingest(&bytes[..bytes.len() * 3 / 4]).is_err());
}

#[test]
fn notes_that_unpack_to_much_are_left() {
    let png = file(&quarters(64, 48), ImageFormat::Png);
    // A profile that says it is compressed and is not: the pixels are still good.
    let odd = with_chunk(&png, b"iCCP", b"x\0\0not compressed at all");
    let photo = ingest(&odd).expect("the pixels are good");
    assert_eq!((photo.width, photo.height), (64, 48));
}

/// Whatever a card or a cable does to a file, it is refused or it is a picture; nothing breaks down.
#[test]
fn damaged_files_never_break_anything() {
    let mut state = 1_u64;
    let mut next = move |below: usize| {
        state =
            state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 33) as usize % below
    };
    let picture = scene(96, 64, 9);
    let whole: Vec<_> = [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP]
        .map(|format| file(&picture, format))
        .into_iter()
        .chain([animated_webp(&picture), with_notes(&file(&picture, ImageFormat::Jpeg), 5)])
        .collect();
    let (mut taken, mut refused) = (0, 0);
    for whole in &whole {
        for _ in 0..400 {
            let mut bytes = whole.clone();
            for _ in 0..=next(4) {
                let at = next(bytes.len());
                bytes[at] = next(256) as u8;
            }
            match ingest(&bytes) {
                Ok(photo) => {
                    assert_eq!(decoded(&photo.jpeg).dimensions(), (photo.width, photo.height));
                    taken += 1;
                }
                Err(_) => refused += 1,
            }
        }
    }
    println!("{taken} taken in, {refused} refused");
    assert!(taken > 100 && refused > 100, "{taken} {refused}");
}
