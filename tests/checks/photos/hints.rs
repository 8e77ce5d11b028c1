//! Hints to take a photo again, on photos with known faults: calibrated on other numbers than those here.

use coldchassis_core::photo::{Hint, Quality};
use coldchassis_tests::camera::{Fault, photographed};
use coldchassis_tests::pictures::file;
use image::ImageFormat;

use super::table::Table;

/// Photos of each kind in a plain run; `COLDCHASSIS_PHOTOS` sets more.
const PHOTOS: u64 = 20;
/// Numbers of these photos begin here: those below are for calibrating.
const FIRST: u64 = 1_000;
/// The share of photos of a kind that must get exactly the hints that belong to it.
const RIGHT: f64 = 0.95;

fn wanted(fault: Fault) -> &'static [Hint] {
    match fault {
        Fault::Sharp | Fault::SharpInPart => &[],
        Fault::OutOfFocus | Fault::Moved => &[Hint::Blurred],
        Fault::Dark => &[Hint::Dark],
        Fault::Glare => &[Hint::Glare],
    }
}

/// What is too dark or burnt out may be called blurred as well: that is not wrong.
fn is_right(fault: Fault, hints: &[Hint]) -> bool {
    let wanted = wanted(fault);
    wanted.iter().all(|hint| hints.contains(hint))
        && (!wanted.is_empty() || hints.is_empty())
        && (!wanted.contains(&Hint::Blurred) || hints == wanted)
}

#[test]
fn photos_get_the_hints_that_belong_to_their_faults() {
    let photos = std::env::var("COLDCHASSIS_PHOTOS").ok().and_then(|text| text.parse().ok());
    let photos: u64 = photos.unwrap_or(PHOTOS);
    let mut failed = Vec::new();
    for fault in Fault::ALL {
        let right = (FIRST..FIRST + photos).filter(|seed| {
            let quality = Quality::of(&photographed(fault, *seed));
            let right = is_right(fault, &quality.hints());
            if !right {
                println!("{fault:?} {seed}: {quality:?}");
            }
            right
        });
        let share = right.count() as f64 / photos as f64;
        println!("{fault:?}: {share:.3} of {photos}");
        if share < RIGHT {
            failed.push(format!("{fault:?} {share:.3}"));
        }
    }
    assert!(failed.is_empty(), "{failed:?}");
}

#[test]
fn a_photo_that_is_taken_in_says_why_it_might_be_taken_again_and_is_kept_all_the_same() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    for (fault, hints) in [(Fault::OutOfFocus, 1), (Fault::Sharp, 0)] {
        let jpeg = file(&photographed(fault, FIRST), ImageFormat::Jpeg);
        table.bench.add_photo(inspection, None, &jpeg).expect("added");
        let view = table.bench.inspection(inspection).expect("an inspection");
        assert_eq!(view.photos.last().expect("the photo").hints.len(), hints, "{fault:?}");
    }
    let view = table.bench.inspection(inspection).expect("an inspection");
    assert!(view.photos[0].hints[0].contains("blurred"), "{:?}", view.photos[0].hints);
}
