//! Hints to take a photo again: made photos, sharp, blurred, dark and with glare, and how often the
//! right thing is said of them.
//!
//! The lots and the shares that have to be right were kept before the code that they judge was
//! written. Thresholds are chosen on one half of the seeds and judged on the other.
//!
//! What this does not do: no photo of a real thing is judged. How often a hint is right in the field
//! is not known from this.

#[path = "photo_quality/camera.rs"]
mod camera;
#[path = "photo_quality/canvas.rs"]
mod canvas;
#[path = "photo_quality/lots.rs"]
mod lots;
#[path = "photo_quality/scene.rs"]
mod scene;

use coldchassis_core::photo::{Quality, QualityHint};
use coldchassis_tests::seeds::{asked, on_all_threads};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

use lots::{Faults, LOTS, Lot, made, taken};

/// Seeds of the half that thresholds are chosen on.
const CALIBRATION: u64 = 0x0CA1_0000_0000;

/// Seeds of the half that they are judged on.
const CHECK: u64 = 0x0C4E_0000_0000;

/// Photos of each lot in a run; `COLDCHASSIS_QUALITY` asks for more.
const PHOTOS: u64 = 24;

/// The least share of a lot's photos of which the right thing is said.
const RIGHT: f64 = 0.95;

/// The measures of a lot's photos.
fn measured(lot: &Lot, half: u64, count: u64) -> Vec<Quality> {
    let each = |all: &mut Vec<Quality>, seed| {
        let made = made(lot.faults, half + seed);
        assert!(
            !lot.wanted.contains(&QualityHint::Glare) || made.glare > 0.05,
            "{}, {seed}: glare of {} is no clear one",
            lot.name,
            made.glare
        );
        all.push(Quality::of(&made.photo));
    };
    on_all_threads(count, each, |all, part| all.extend(part))
}

fn is_right(lot: &Lot, quality: &Quality) -> bool {
    let hints = quality.hints();
    lot.wanted.iter().all(|hint| hints.contains(hint))
        && !lot.unwanted.iter().any(|hint| hints.contains(hint))
}

#[test]
fn each_lot_of_the_check_half_is_hinted_at_as_it_should_be() {
    let count = asked("COLDCHASSIS_QUALITY", PHOTOS);
    let mut wrong = Vec::new();
    for lot in &LOTS {
        let measures = measured(lot, CHECK, count);
        let right = measures.iter().filter(|quality| is_right(lot, quality)).count();
        let share = right as f64 / measures.len() as f64;
        println!("{:>18}: {right} of {} right", lot.name, measures.len());
        if share < RIGHT {
            wrong.push(format!("{}: {right} of {}", lot.name, measures.len()));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn a_hint_is_about_the_picture_and_not_about_its_size_or_turn() {
    for (lot, seed) in [(&LOTS[0], 3), (&LOTS[5], 4), (&LOTS[9], 5), (&LOTS[11], 6)] {
        let photo = made(lot.faults, CHECK + seed).photo;
        let hints = Quality::of(&photo).hints();
        for turned in [image::imageops::rotate90(&photo), image::imageops::flip_vertical(&photo)] {
            assert_eq!(Quality::of(&turned).hints(), hints, "{}", lot.name);
        }
    }
    for (width, height) in [(1, 1), (1, 2048), (2048, 1), (2, 2), (3, 1000), (16, 16)] {
        let grey = image::RgbImage::from_pixel(width, height, image::Rgb([120; 3]));
        assert_eq!(Quality::of(&grey).hints(), [], "{width} x {height}");
    }
}

/// What the thresholds are chosen by: run with `--ignored --nocapture`.
///
/// For each lot of the calibration half, the 2 %, 5 %, 50 %, 95 % and 98 % quantiles of each measure. A
/// threshold stands in the middle between the lots that are to get the hint and those that are not.
#[test]
#[ignore = "prints what thresholds are chosen by and judges nothing"]
fn calibration() {
    let count = asked("COLDCHASSIS_QUALITY", 60);
    for lot in &LOTS {
        let all = measured(lot, CALIBRATION, count);
        println!("{}", lot.name);
        let sharpness = all.iter().filter_map(|quality| quality.sharpness).collect::<Vec<_>>();
        println!("  judged {} of {}", sharpness.len(), all.len());
        quantiles("sharpness", sharpness);
        quantiles("dark_share", all.iter().map(|quality| quality.dark_share).collect());
        quantiles("glare_share", all.iter().map(|quality| quality.glare_share).collect());
    }
}

fn quantiles(name: &str, mut values: Vec<f64>) {
    values.sort_by(f64::total_cmp);
    let at = |share: f64| values.get((share * values.len() as f64) as usize).copied();
    let text = [0.02, 0.05, 0.5, 0.95, 0.98].map(|share| match at(share) {
        Some(value) => format!("{value:8.4}"),
        None => "       -".to_owned(),
    });
    println!("  {name:>12} {}", text.join(" "));
}

/// How often each hint is given as a fault grows: run with `--ignored --nocapture`.
#[test]
#[ignore = "prints how hints grow with each fault and judges nothing"]
fn curves() {
    let count = asked("COLDCHASSIS_QUALITY", 24);
    let steps = [0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 6.0, 8.0];
    for sigma in steps {
        curve("focus, px", sigma, count, &|| Faults { sigma, ..Faults::default() });
    }
    for way in [0.0, 2.0, 4.0, 6.0, 8.0, 10.0, 12.0, 16.0, 24.0] {
        let sigma = 0.5;
        curve("way, px", way, count, &|| Faults { way, sigma, ..Faults::default() });
    }
    for stops in [0.0, 1.0, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0] {
        let (stops, sigma) = (-stops, 0.5);
        curve("stops", stops, count, &|| Faults { stops, sigma, ..Faults::default() });
    }
    for share in [0.0, 0.005, 0.01, 0.02, 0.03, 0.04, 0.05, 0.07, 0.1] {
        let sigma = 0.5;
        curve("lamp", share, count, &|| Faults { lamps: vec![share], sigma, ..Faults::default() });
    }
}

fn curve(what: &str, value: f32, count: u64, faults: &(dyn Fn() -> Faults + Sync)) {
    let each = |counts: &mut [u32; 3], seed| {
        let mut random = ChaCha8Rng::seed_from_u64(CALIBRATION + seed);
        let hints = Quality::of(&taken(faults(), &mut random).photo).hints();
        for (count, hint) in counts.iter_mut().zip(QualityHint::ALL) {
            *count += u32::from(hints.contains(hint));
        }
    };
    let add = |to: &mut [u32; 3], part: [u32; 3]| {
        to.iter_mut().zip(part).for_each(|(to, add)| *to += add);
    };
    let [blurred, dark, glare] = on_all_threads(count, each, add);
    println!("{what:>10} {value:6.3}: blurred {blurred}, dark {dark}, glare {glare} of {count}");
}
