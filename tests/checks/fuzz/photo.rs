//! Files that may be photos: pictures of each kind with bytes changed. What is taken in is a photo as it is kept.

use std::sync::LazyLock;

use bolero::check;
use coldchassis_core::photo::{
    Digest, LONGEST_SIDE, PhotoError, Size, THUMBNAIL_SIDE, check_kept, ingest, read_grey,
};
use coldchassis_tests::pictures::{
    animated_png, animated_webp, claiming, file, png_claiming, scene, with_chunk, with_notes,
};
use image::ImageFormat;

use super::bytes::{change, change_one};
use super::tally::{Reached, Tally, time};
use super::tape::{Tape, tapes};

static SEEDS: LazyLock<Vec<Vec<u8>>> = LazyLock::new(|| {
    let picture = scene(48, 36, 7);
    let jpeg = file(&picture, ImageFormat::Jpeg);
    let png = file(&picture, ImageFormat::Png);
    vec![
        jpeg.clone(),
        with_notes(&jpeg, 6),
        claiming(&jpeg, 1600, 1200),
        file(&scene(400, 3, 1), ImageFormat::Jpeg),
        png.clone(),
        with_chunk(&png, b"eXIf", b"II*\0\x08\0\0\0"),
        png_claiming(&png, 1 << 15, 1 << 15),
        animated_png(&picture),
        file(&picture, ImageFormat::WebP),
        animated_webp(&picture),
    ]
});

/// A picture; in most of them nothing of the first bytes, which say what kind it is, is changed.
fn picture(tape: &mut Tape<'_>) -> Vec<u8> {
    let mut bytes = tape.pick(&SEEDS).clone();
    if tape.is(40) {
        change(tape, &mut bytes, 4);
        return bytes;
    }
    let mut rest = bytes.split_off(12.min(bytes.len()));
    // The headers are short and the pixels long: half of the changes are near the beginning.
    if tape.is(128) {
        let pixels = rest.split_off(120.min(rest.len()));
        change_one(tape, &mut rest);
        rest.extend(pixels);
    } else {
        change(tape, &mut rest, 3);
    }
    bytes.extend(rest);
    bytes
}

fn take_in(bytes: &[u8]) -> Reached {
    let photo = match ingest(bytes) {
        Ok(photo) => photo,
        Err(PhotoError::NotAPicture | PhotoError::UnsupportedKind { .. }) => {
            return Reached::Nothing;
        }
        Err(_) => return Reached::Further,
    };
    for (jpeg, size, side) in [
        (&photo.jpeg, Size::Full, LONGEST_SIDE),
        (&photo.thumbnail, Size::Thumbnail, THUMBNAIL_SIDE),
    ] {
        check_kept(jpeg, size).expect("it is as it is kept");
        let seen = read_grey(jpeg).expect("it can be read again");
        assert!((1..=side).contains(&seen.width()) && (1..=side).contains(&seen.height()));
    }
    assert_eq!(photo.digest, Digest::of(&photo.jpeg));
    assert!(photo.width <= LONGEST_SIDE && photo.height <= LONGEST_SIDE);
    Reached::Taken
}

#[test]
fn photos() {
    let tally = Tally::new("photo");
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| tally.count(take_in(&picture(&mut Tape::of(bytes)))));
    tally.end(60);
}

/// Bytes that come in a bundle are kept without being decoded: whatever they are, reading them later is refused
/// at the worst.
#[test]
fn kept_photos() {
    let tally = Tally::new("photo, kept");
    let seed = ingest(&SEEDS[0]).expect("a picture").jpeg;
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        let mut jpeg = seed.clone();
        for _ in 0..=tape.below(3) {
            change_one(&mut tape, &mut jpeg);
        }
        let size = if tape.is(128) { Size::Full } else { Size::Thumbnail };
        let kept = check_kept(&jpeg, size).is_ok();
        let read = read_grey(&jpeg).is_ok();
        tally.count(match (kept, read) {
            (true, true) => Reached::Taken,
            (true, false) => Reached::Further,
            _ => Reached::Nothing,
        });
    });
    tally.end(15);
}
