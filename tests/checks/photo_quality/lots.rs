//! The lots of made photos: what was done to each, and what is to be said of it.

use coldchassis_core::photo::QualityHint::{self, Blurred, Dark, Glare};
use image::RgbImage;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

use super::camera::{Lamp, glaring, kept, metered, moved, out_of_focus};
use super::canvas::Canvas;
use super::scene::{bare, scene};

/// What happens to a scene on its way to a photo.
#[derive(Clone, Debug, Default)]
pub struct Faults {
    /// Standard deviation of the focus blur, px.
    pub sigma: f32,
    /// Way of the hand, px.
    pub way: f32,
    /// Exposure beside what the camera would set, stops.
    pub stops: f32,
    /// Shares of the picture that lamps cover.
    pub lamps: Vec<f32>,
    /// Share of the width that stays in focus; all of it where there is none.
    pub focused: Option<f32>,
    /// A bare surface instead of a scene.
    pub is_bare: bool,
}

/// A lot: what is drawn for it, and what is to be said.
pub struct Lot {
    pub name: &'static str,
    pub faults: fn(&mut ChaCha8Rng) -> Faults,
    /// Hints that each photo of the lot is to get.
    pub wanted: &'static [QualityHint],
    /// Hints that none is to get.
    pub unwanted: &'static [QualityHint],
}

/// The lots that are judged. Between "sharp" (at most 0.8 px) and "blurred" (from 3 px, or a way of
/// 10 px) nothing is asked for: there either answer helps.
pub const LOTS: [Lot; 14] = [
    Lot { name: "sharp", faults: sharp, wanted: &[], unwanted: &[Blurred, Dark, Glare] },
    Lot { name: "sharp, glints", faults: glints, wanted: &[], unwanted: &[Blurred, Dark, Glare] },
    Lot { name: "sharp, dim", faults: dim, wanted: &[], unwanted: &[Blurred, Glare] },
    Lot { name: "sharp in part", faults: in_part, wanted: &[], unwanted: &[Blurred, Dark, Glare] },
    Lot { name: "bare surface", faults: surface, wanted: &[], unwanted: &[Blurred, Dark, Glare] },
    Lot { name: "out of focus", faults: soft, wanted: &[Blurred], unwanted: &[Dark, Glare] },
    Lot { name: "far out of focus", faults: softest, wanted: &[Blurred], unwanted: &[Dark, Glare] },
    Lot { name: "moved", faults: shaken, wanted: &[Blurred], unwanted: &[Dark, Glare] },
    Lot { name: "moved and soft", faults: both, wanted: &[Blurred], unwanted: &[Dark, Glare] },
    Lot { name: "dark", faults: dark, wanted: &[Dark], unwanted: &[Blurred, Glare] },
    Lot { name: "dim and blurred", faults: dim_soft, wanted: &[Blurred], unwanted: &[Glare] },
    Lot { name: "glare", faults: glare, wanted: &[Glare], unwanted: &[Blurred, Dark] },
    Lot {
        name: "glare, blurred",
        faults: glare_soft,
        wanted: &[Glare, Blurred],
        unwanted: &[Dark],
    },
    Lot { name: "glare, dark", faults: glare_dark, wanted: &[Glare, Dark], unwanted: &[Blurred] },
];

fn sharp(random: &mut ChaCha8Rng) -> Faults {
    Faults {
        sigma: random.random_range(0.0..0.8),
        way: random.random_range(0.0..1.5),
        stops: random.random_range(-0.5..0.25),
        ..Faults::default()
    }
}

fn glints(random: &mut ChaCha8Rng) -> Faults {
    let lamps = (0..random.random_range(1..5)).map(|_| random.random_range(0.0002..0.0025));
    Faults { lamps: lamps.collect(), ..sharp(random) }
}

fn dim(random: &mut ChaCha8Rng) -> Faults {
    Faults { stops: random.random_range(-2.5..-1.0), ..sharp(random) }
}

fn in_part(random: &mut ChaCha8Rng) -> Faults {
    let sigma = random.random_range(4.0..8.0);
    Faults { sigma, focused: Some(random.random_range(0.35..0.7)), ..sharp(random) }
}

fn surface(random: &mut ChaCha8Rng) -> Faults {
    Faults { sigma: random.random_range(0.0..8.0), is_bare: true, ..sharp(random) }
}

fn soft(random: &mut ChaCha8Rng) -> Faults {
    Faults { sigma: random.random_range(3.0..8.0), ..sharp(random) }
}

fn softest(random: &mut ChaCha8Rng) -> Faults {
    Faults { sigma: random.random_range(8.0..25.0), ..sharp(random) }
}

fn shaken(random: &mut ChaCha8Rng) -> Faults {
    Faults { way: random.random_range(10.0..24.0), ..sharp(random) }
}

fn both(random: &mut ChaCha8Rng) -> Faults {
    let (sigma, way) = (random.random_range(2.0..4.0), random.random_range(8.0..24.0));
    Faults { sigma, way, ..sharp(random) }
}

fn dark(random: &mut ChaCha8Rng) -> Faults {
    Faults { stops: random.random_range(-5.0..-3.5), ..sharp(random) }
}

fn dim_soft(random: &mut ChaCha8Rng) -> Faults {
    Faults { stops: random.random_range(-2.0..-1.0), ..soft(random) }
}

fn glare(random: &mut ChaCha8Rng) -> Faults {
    let count = random.random_range(1..4_u8);
    let each = random.random_range(0.065..0.25_f32) / f32::from(count);
    Faults { lamps: vec![each.max(0.03); usize::from(count)], ..sharp(random) }
}

fn glare_soft(random: &mut ChaCha8Rng) -> Faults {
    Faults { sigma: random.random_range(3.0..8.0), ..glare(random) }
}

fn glare_dark(random: &mut ChaCha8Rng) -> Faults {
    // The veil around a large reflection lights a dark picture up: here it stays small.
    Faults { lamps: vec![random.random_range(0.06..0.1)], ..dark(random) }
}

/// A made photo, and what is true of it.
pub struct Made {
    pub photo: RgbImage,
    /// Share of the picture that lamps alone drive beyond white.
    pub glare: f32,
    pub faults: Faults,
}

/// The photo of a lot with this seed.
pub fn made(faults: fn(&mut ChaCha8Rng) -> Faults, seed: u64) -> Made {
    let mut random = ChaCha8Rng::seed_from_u64(seed);
    let drawn = faults(&mut random);
    taken(drawn, &mut random)
}

/// Takes a photo of a new scene.
pub fn taken(faults: Faults, random: &mut ChaCha8Rng) -> Made {
    let mut canvas = if faults.is_bare { bare(random) } else { scene(random) };
    metered(&mut canvas, faults.stops);
    let size = (canvas.width, canvas.height);
    let lamps: Vec<Lamp> =
        faults.lamps.iter().map(|share| Lamp::drawn(*share, size, random)).collect();
    // After the exposure: a lamp is beyond white in a dark picture too.
    let glare = glaring(&mut canvas, &lamps);
    blur(&mut canvas, &faults, random);
    Made { photo: kept(&canvas, random), glare, faults }
}

fn blur(canvas: &mut Canvas, faults: &Faults, random: &mut ChaCha8Rng) {
    let near = faults.focused.map(|share| (canvas.clone(), share));
    out_of_focus(canvas, faults.sigma);
    if let Some((mut near, share)) = near {
        out_of_focus(&mut near, 0.6);
        let width = canvas.width;
        let wide = (share * width as f32) as usize;
        let left = random.random_range(0..=width - wide);
        let rows = canvas.light.chunks_exact_mut(width * 3).zip(near.light.chunks_exact(width * 3));
        rows.for_each(|(row, near)| {
            let part = left * 3..(left + wide) * 3;
            row[part.clone()].copy_from_slice(&near[part]);
        });
    }
    moved(canvas, faults.way, random.random_range(0.0..std::f32::consts::PI));
}
