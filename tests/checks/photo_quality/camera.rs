//! What a camera does to a scene: focus, a moving hand, too little light, a lamp's reflection, the
//! sensor's noise, and the JPEG that the photo is kept as.

use coldchassis_core::photo::ingest;
use image::{ImageFormat, RgbImage};
use jpeg_encoder::{ColorType, Encoder};
use rand::Rng;
use rand_chacha::ChaCha8Rng;

use super::canvas::Canvas;

/// Quality of the camera's own JPEG, before the photo is taken in. Common practice.
const CAMERA_QUALITY: u8 = 95;

/// Electrons at white in a pixel of the kept photo, our own estimate: a phone's small pixels in a dim
/// room, a few of them to one of these.
const WHITE_ELECTRONS: f32 = 4000.0;

/// Noise of reading a pixel out, as a share of white; our own estimate.
const READ_NOISE: f32 = 0.0015;

/// Spreads light by a Gaussian of this standard deviation, px.
pub fn out_of_focus(canvas: &mut Canvas, sigma: f32) {
    if sigma < 0.05 {
        return;
    }
    if sigma > 2.5 {
        // Three running means are a Gaussian to within a few percent, whatever its width.
        let width = ((4.0 * sigma * sigma + 1.0).sqrt() / 2.0).round() as usize;
        (0..3).for_each(|_| mean(canvas, width));
        return;
    }
    let reach = (sigma * 3.5).ceil() as isize;
    let weight = |k: isize| (-0.5 * (k as f32 / sigma).powi(2)).exp();
    let sum: f32 = (-reach..=reach).map(weight).sum();
    let taps = |across: bool| {
        let at = |k: isize| if across { [k, 0] } else { [0, k] };
        (-reach..=reach).map(move |k| (at(k), weight(k) / sum)).collect::<Vec<_>>()
    };
    spread(canvas, &taps(true));
    spread(canvas, &taps(false));
}

/// Spreads light along a straight way of this length, px, in this direction, radians.
pub fn moved(canvas: &mut Canvas, length: f32, direction: f32) {
    const STEPS: usize = 96;
    if length < 0.05 {
        return;
    }
    let (sin, cos) = direction.sin_cos();
    let mut taps = std::collections::BTreeMap::<[isize; 2], f32>::new();
    for step in 0..STEPS {
        let along = ((step as f32 + 0.5) / STEPS as f32 - 0.5) * length;
        let (x, y) = (along * cos, along * sin);
        for (dx, wx) in [(0, 1.0 - (x - x.floor())), (1, x - x.floor())] {
            for (dy, wy) in [(0, 1.0 - (y - y.floor())), (1, y - y.floor())] {
                let at = [x.floor() as isize + dx, y.floor() as isize + dy];
                *taps.entry(at).or_default() += wx * wy / STEPS as f32;
            }
        }
    }
    spread(canvas, &taps.into_iter().collect::<Vec<_>>());
}

/// Each place becomes a weighted sum of the places around it; the rim goes on beyond the rim.
fn spread(canvas: &mut Canvas, taps: &[([isize; 2], f32)]) {
    let (width, height) = (canvas.width as isize, canvas.height as isize);
    let mut out = vec![0.0_f32; canvas.light.len()];
    for (y, row) in out.chunks_exact_mut(canvas.width * 3).enumerate() {
        for ([dx, dy], weight) in taps {
            let from = (y as isize + dy).clamp(0, height - 1) * width;
            let source = &canvas.light[from as usize * 3..(from + width) as usize * 3];
            let (skip, lead) = (dx.max(&0).unsigned_abs() * 3, (-dx).max(0).unsigned_abs() * 3);
            let inner = row.len() - skip - lead;
            let pairs = row[lead..lead + inner].iter_mut().zip(&source[skip..skip + inner]);
            pairs.for_each(|(to, from)| *to += weight * from);
            for at in (0..lead).chain(row.len() - skip..row.len()) {
                let x = (at as isize / 3 + dx).clamp(0, width - 1) as usize;
                row[at] += weight * source[x * 3 + at % 3];
            }
        }
    }
    canvas.light = out;
}

/// A running mean over a square of `2 · reach + 1` px.
fn mean(canvas: &mut Canvas, reach: usize) {
    let (width, height) = (canvas.width, canvas.height);
    let share = 1.0 / (2 * reach + 1) as f32;
    let mut across = vec![0.0_f32; canvas.light.len()];
    for (row, to) in canvas.light.chunks_exact(width * 3).zip(across.chunks_exact_mut(width * 3)) {
        for part in 0..3 {
            let at = |x: isize| row[x.clamp(0, width as isize - 1) as usize * 3 + part];
            let reach = reach as isize;
            let mut sum: f32 = (-reach..=reach).map(at).sum();
            for x in 0..width {
                to[x * 3 + part] = sum * share;
                let x = x as isize;
                sum += at(x + reach + 1) - at(x - reach);
            }
        }
    }
    let row = |y: isize| {
        let y = y.clamp(0, height as isize - 1) as usize;
        &across[y * width * 3..(y + 1) * width * 3]
    };
    let mut sum = vec![0.0_f32; width * 3];
    let around = reach as isize;
    (-around..=around).for_each(|y| sum.iter_mut().zip(row(y)).for_each(|(to, add)| *to += add));
    for (y, to) in canvas.light.chunks_exact_mut(width * 3).enumerate() {
        let y = y as isize;
        to.iter_mut().zip(&sum).for_each(|(to, sum)| *to = sum * share);
        let (next, last) = (row(y + around + 1), row(y - around));
        sum.iter_mut().zip(next.iter().zip(last)).for_each(|(to, (add, less))| *to += add - less);
    }
}

/// What a camera sets by itself: a middle level for the whole, and what is bright not beyond white.
pub fn metered(canvas: &mut Canvas, stops: f32) {
    let mut levels: Vec<f32> = canvas.light.iter().skip(1).step_by(3 * 97).copied().collect();
    levels.sort_by(f32::total_cmp);
    let mean = levels.iter().sum::<f32>() / levels.len() as f32;
    let bright = levels[levels.len() * 99 / 100];
    let gain = (0.2 / mean).min(0.85 / bright) * stops.exp2();
    canvas.light.iter_mut().for_each(|part| *part *= gain);
}

/// A lamp's reflection: light beyond white in an ellipse, and less and less of it around.
#[derive(Clone, Copy, Debug)]
pub struct Lamp {
    pub at: [f32; 2],
    pub radii: [f32; 2],
    pub turn: f32,
}

impl Lamp {
    /// A reflection that covers this share of a picture.
    pub fn drawn(share: f32, size: (usize, usize), random: &mut ChaCha8Rng) -> Self {
        let area = share * (size.0 * size.1) as f32;
        let long = random.random_range(1.0..2.2_f32);
        let radius = (area / std::f32::consts::PI).sqrt();
        let radii = [radius * long.sqrt(), radius / long.sqrt()];
        let inside = |length: usize| {
            let length = length as f32;
            let rim = radii[0].min(length * 0.4);
            random.random_range(rim..length - rim)
        };
        let [x, y] = [size.0, size.1].map(inside);
        Self { at: [x, y], radii, turn: random.random_range(0.0..3.2) }
    }

    /// How far out a place is: below 1 inside the ellipse.
    fn out(&self, x: f32, y: f32) -> f32 {
        let (sin, cos) = self.turn.sin_cos();
        let (x, y) = (x - self.at[0], y - self.at[1]);
        ((x * cos + y * sin) / self.radii[0]).hypot((y * cos - x * sin) / self.radii[1])
    }
}

/// Adds the reflections to a metered picture; tells which share of it they alone drive beyond white.
pub fn glaring(canvas: &mut Canvas, lamps: &[Lamp]) -> f32 {
    let width = canvas.width;
    let mut beyond = 0;
    for (i, pixel) in canvas.light.chunks_exact_mut(3).enumerate() {
        let (x, y) = ((i % width) as f32 + 0.5, (i / width) as f32 + 0.5);
        let out = lamps.iter().map(|lamp| lamp.out(x, y)).fold(f32::MAX, f32::min);
        if out < 3.0 {
            // The rim falls from twice white to a veil within a tenth of the radius.
            let core = 2.0 / (1.0 + ((out - 1.0) * 25.0).exp());
            let veil = 0.12 * (-(out * out) / 1.5).exp();
            for (part, tint) in pixel.iter_mut().zip([1.0, 0.98, 0.93]) {
                *part += (core + veil) * tint;
            }
            beyond += usize::from(core >= 1.1);
        }
    }
    beyond as f32 / (canvas.light.len() / 3) as f32
}

/// The photo as it is kept, with the noise of the sensor, coded by the camera and again when taken in.
pub fn kept(canvas: &Canvas, random: &mut ChaCha8Rng) -> RgbImage {
    let size = |length: usize| u32::try_from(length).expect("a side of a picture");
    let codes = codes();
    let level = |light: f32, noise: f32| {
        let sigma = (light.max(0.0) / WHITE_ELECTRONS + READ_NOISE * READ_NOISE).sqrt();
        let seen = (light + sigma * noise).clamp(0.0, 1.0);
        codes[(seen * (codes.len() - 1) as f32) as usize]
    };
    let raw = canvas.light.iter().map(|light| level(*light, normal(random))).collect();
    let picture = RgbImage::from_raw(size(canvas.width), size(canvas.height), raw);
    let photo = ingest(&camera_file(&picture.expect("the right size"))).expect("a JPEG");
    let kept = image::load_from_memory_with_format(&photo.jpeg, ImageFormat::Jpeg);
    kept.expect("what is kept can be read").into_rgb8()
}

fn camera_file(picture: &RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    let side = |length: u32| u16::try_from(length).expect("a side of a JPEG");
    let (width, height) = (side(picture.width()), side(picture.height()));
    let encoder = Encoder::new(&mut bytes, CAMERA_QUALITY);
    encoder.encode(picture.as_raw(), width, height, ColorType::Rgb).expect("it can be written");
    bytes
}

/// Levels of sRGB for steps of linear light (IEC 61966-2-1, from memory, high).
fn codes() -> Vec<u8> {
    let level = |step: u32| {
        let light = step as f32 / 65_535.0;
        let code = if light <= 0.003_130_8 {
            12.92 * light
        } else {
            1.055 * light.powf(1.0 / 2.4) - 0.055
        };
        (code * 255.0).round() as u8
    };
    (0..=65_535).map(level).collect()
}

/// Nearly a normal deviate: four uniform ones in one draw, standard deviation 1.
fn normal(random: &mut ChaCha8Rng) -> f32 {
    let bits: u64 = random.random();
    let sum: u64 = (0..4).map(|part| (bits >> (16 * part)) & 0xFFFF).sum();
    // The variance of a uniform deviate of width 1 is 1/12; of four, 1/3.
    (sum as f32 / 65_535.0 - 2.0) * 1.732
}
