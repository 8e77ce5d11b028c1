//! Hints to take a photo again, on photos with known faults: calibrated on other numbers than those here.

use coldchassis_core::photo::{Hint, Quality};
use coldchassis_tests::camera::{Fault, photographed};

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

#[test]
fn photos_get_the_hints_that_belong_to_their_faults() {
    let photos = std::env::var("COLDCHASSIS_PHOTOS").ok().and_then(|text| text.parse().ok());
    let photos: u64 = photos.unwrap_or(PHOTOS);
    let mut failed = Vec::new();
    for fault in Fault::ALL {
        let right = (FIRST..FIRST + photos).filter(|seed| {
            let hints = Quality::of(&photographed(fault, *seed)).hints();
            // What is too dark or burnt out may be called blurred as well: that is not wrong.
            wanted(fault).iter().all(|hint| hints.contains(hint))
                && (!wanted(fault).is_empty() || hints.is_empty())
                && (!wanted(fault).contains(&Hint::Blurred) || hints == wanted(fault))
        });
        let share = right.count() as f64 / photos as f64;
        println!("{fault:?}: {share:.3} of {photos}");
        if share < RIGHT {
            failed.push(format!("{fault:?} {share:.3}"));
        }
    }
    assert!(failed.is_empty(), "{failed:?}");
}
