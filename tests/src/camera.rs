//! Scenes photographed with known faults: sharp, out of focus, moved, dark, with glare, and sharp in part.
//!
//! What is shot is drawn here, so that what is wrong with each photo is known. Figures of the faults are
//! assumptions, in pixels of a photo whose longest side is 1024.

use std::f64::consts::PI;

use image::imageops::fast_blur;
use image::{Rgb, RgbImage};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Pixels from left to right.
pub const WIDTH: u32 = 1024;
/// Pixels from top to bottom.
pub const HEIGHT: u32 = 768;

/// What is wrong with a photo.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// Nothing: a steady hand, light enough.
    Sharp,
    /// Half of it is sharp, half out of focus: a plug in front of a wall.
    SharpInPart,
    /// All of it is out of focus.
    OutOfFocus,
    /// The hand moved.
    Moved,
    /// Too little light.
    Dark,
    /// A lamp or a flash is mirrored in it.
    Glare,
}

impl Fault {
    /// All of them.
    pub const ALL: [Self; 6] =
        [Self::Sharp, Self::SharpInPart, Self::OutOfFocus, Self::Moved, Self::Dark, Self::Glare];
}

/// A photo of an invented scene, by its number.
pub fn photographed(fault: Fault, seed: u64) -> RgbImage {
    let mut rng = ChaCha8Rng::seed_from_u64(seed ^ (fault as u64) << 40);
    let scene = scene(&mut rng);
    // Lens and sensor of a phone, shrunk: an edge is about a pixel wide.
    let sharp = blurred(&scene, rng.random_range(0.5..0.9));
    let seen = match fault {
        Fault::Sharp | Fault::Dark | Fault::Glare => sharp,
        Fault::SharpInPart => {
            let soft = blurred(&scene, rng.random_range(4.0..10.0));
            let edge = rng.random_range(WIDTH / 3..WIDTH * 2 / 3);
            RgbImage::from_fn(WIDTH, HEIGHT, |x, y| {
                *if x < edge { &sharp } else { &soft }.get_pixel(x, y)
            })
        }
        Fault::OutOfFocus => blurred(&scene, rng.random_range(4.0..12.0)),
        Fault::Moved => moved(&sharp, rng.random_range(12..40), rng.random_range(0.0..PI)),
    };
    let gain = match fault {
        Fault::Dark => rng.random_range(0.04..0.14),
        _ => rng.random_range(0.7..1.05),
    };
    let glare = (fault == Fault::Glare).then(|| {
        let place =
            |length: u32, rng: &mut ChaCha8Rng| rng.random_range(0.2..0.8) * f64::from(length);
        (place(WIDTH, &mut rng), place(HEIGHT, &mut rng), rng.random_range(90.0..220.0))
    });
    let noise = rng.random_range(1.0..4.0);
    RgbImage::from_fn(WIDTH, HEIGHT, |x, y| {
        let lamp = glare.map_or(0.0, |(at_x, at_y, radius): (f64, f64, f64)| {
            let far =
                ((f64::from(x) - at_x).powi(2) + (f64::from(y) - at_y).powi(2)) / radius.powi(2);
            700.0 * (-far).exp()
        });
        // Three throws make a bell curve that is good enough for a sensor's noise.
        let grain: f64 = (0..3).map(|_| rng.random_range(-1.0..1.0)).sum::<f64>() * noise;
        Rgb(seen
            .get_pixel(x, y)
            .0
            .map(|level| (f64::from(level) * gain + lamp + grain).clamp(0.0, 255.0) as u8))
    })
}

/// Panels, screws, lettering and a cord on a bench.
fn scene(rng: &mut ChaCha8Rng) -> RgbImage {
    let ground = rng.random_range(60..200);
    let mut scene = RgbImage::from_pixel(WIDTH, HEIGHT, Rgb([ground; 3]));
    for _ in 0..rng.random_range(6..14) {
        panel(&mut scene, rng);
    }
    for _ in 0..rng.random_range(4..10) {
        let (x, y) = (rng.random_range(20..WIDTH - 20), rng.random_range(20..HEIGHT - 20));
        screw(&mut scene, x, y, rng.random_range(6..18), shade(rng));
    }
    for _ in 0..rng.random_range(4..12) {
        lettering(&mut scene, rng);
    }
    scene
}

fn shade(rng: &mut ChaCha8Rng) -> u8 {
    rng.random_range(15..235)
}

fn panel(scene: &mut RgbImage, rng: &mut ChaCha8Rng) {
    let (x, y) = (rng.random_range(0..WIDTH - 80), rng.random_range(0..HEIGHT - 80));
    let (wide, high) = (rng.random_range(60..420), rng.random_range(40..320));
    let colour = Rgb([shade(rng), shade(rng), shade(rng)]);
    for y in y..(y + high).min(HEIGHT) {
        for x in x..(x + wide).min(WIDTH) {
            scene.put_pixel(x, y, colour);
        }
    }
}

fn screw(scene: &mut RgbImage, at_x: u32, at_y: u32, radius: u32, level: u8) {
    for y in at_y.saturating_sub(radius)..(at_y + radius).min(HEIGHT) {
        for x in at_x.saturating_sub(radius)..(at_x + radius).min(WIDTH) {
            let (dx, dy) = (x.abs_diff(at_x), y.abs_diff(at_y));
            if dx * dx + dy * dy < radius * radius {
                let slot = dy * 5 < radius;
                scene.put_pixel(x, y, Rgb([if slot { level / 4 } else { level }; 3]));
            }
        }
    }
}

/// Strokes of letters, upright and lying.
fn lettering(scene: &mut RgbImage, rng: &mut ChaCha8Rng) {
    let (x, y) = (rng.random_range(0..WIDTH - 260), rng.random_range(0..HEIGHT - 40));
    let (ink, stroke) = (Rgb([shade(rng); 3]), rng.random_range(2..5));
    for letter in 0..rng.random_range(4..12) {
        let left = x + letter * 20;
        for _ in 0..3 {
            let upright: bool = rng.random();
            let (wide, high) = if upright { (stroke, 22) } else { (14, stroke) };
            let (dx, dy) =
                (rng.random_range(0..12), if upright { 0 } else { rng.random_range(0..20) });
            for y in y + dy..(y + dy + high).min(HEIGHT) {
                for x in left + dx..(left + dx + wide).min(WIDTH) {
                    scene.put_pixel(x, y, ink);
                }
            }
        }
    }
}

fn blurred(picture: &RgbImage, sigma: f32) -> RgbImage {
    fast_blur(picture, sigma)
}

/// Smeared along a line, as by a hand that moved while the light came in.
fn moved(picture: &RgbImage, length: u32, angle: f64) -> RgbImage {
    let (cos, sin) = (angle.cos(), angle.sin());
    RgbImage::from_fn(WIDTH, HEIGHT, |x, y| {
        let mut sums = [0u32; 3];
        for step in 0..length {
            let along = f64::from(step) - f64::from(length) / 2.0;
            let at = |from: u32, by: f64, most: u32| {
                (f64::from(from) + along * by).round().clamp(0.0, f64::from(most - 1)) as u32
            };
            let pixel = picture.get_pixel(at(x, cos, WIDTH), at(y, sin, HEIGHT));
            for (sum, level) in sums.iter_mut().zip(pixel.0) {
                *sum += u32::from(level);
            }
        }
        Rgb(sums.map(|sum| (sum / length) as u8))
    })
}
