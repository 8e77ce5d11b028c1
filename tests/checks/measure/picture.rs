//! Draws the plug's part of the photo: sides, tips, shading, blur, grain, and a JPEG as it is kept.

use image::ImageFormat;
use jpeg_encoder::{ColorType, Encoder};
use rand::Rng;
use rand_chacha::ChaCha8Rng;

use super::finger::bell;
use super::plug::Pin;
use super::scene::{Scene, card};
use super::space::{Pixel, dot, minus};

/// How far around the pins the photo is drawn, px. Nobody looks at the pixels further away.
const AROUND: f64 = 40.0;
/// Samples along each side of a pixel that an edge crosses.
const FINE: u32 = 6;
/// Quality of the JPEG that is kept of a photo.
const QUALITY: u8 = 85;

/// A grey part of a photo.
pub struct Picture {
    /// Where its first pixel is in the photo, px.
    pub from: [u32; 2],
    /// Its columns and rows.
    pub size: [u32; 2],
    /// Its pixels, row by row.
    pub grey: Vec<u8>,
}

/// A flat surface as it is seen, and how bright it is.
struct Surface {
    /// Its sides: `[a, b, c]` such that a x + b y + c is how far (x, y) is inside, px.
    sides: Vec<[f64; 3]>,
    grey: f64,
}

impl Surface {
    /// A surface with these corners, in order.
    fn new(mut corners: Vec<Pixel>, grey: f64) -> Self {
        if turn(&corners) < 0.0 {
            corners.reverse();
        }
        let next = corners.iter().cycle().skip(1);
        let sides = corners.iter().zip(next).map(|(from, to)| side(*from, *to)).collect();
        Self { sides, grey }
    }

    /// How far a place is inside, px; negative outside. Exact near the edges.
    fn inside(&self, [x, y]: Pixel) -> f64 {
        self.sides.iter().map(|[a, b, c]| a * x + b * y + c).fold(f64::INFINITY, f64::min)
    }
}

/// The side from one corner to the next, for corners that go round the way [`turn`] counts.
fn side(from: Pixel, to: Pixel) -> [f64; 3] {
    let [x, y] = [to[0] - from[0], to[1] - from[1]];
    let long = x.hypot(y);
    let [a, b] = [-y / long, x / long];
    [a, b, -a * from[0] - b * from[1]]
}

/// Twice the area within corners; negative when they go round the other way.
fn turn(corners: &[Pixel]) -> f64 {
    let next = corners.iter().cycle().skip(1);
    corners.iter().zip(next).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum()
}

/// The plug's part of a scene's photo.
pub fn drawn(scene: &Scene, lot: &mut ChaCha8Rng) -> Picture {
    let surfaces = surfaces(scene, lot);
    let table = lot.random_range(40.0..150.0);
    let (from, size) = window(scene);
    let slope = [0, 1].map(|_| lot.random_range(-0.0004..0.0004));
    let mut pixels = Vec::new();
    for y in 0..size[1] {
        for x in 0..size[0] {
            let at = [f64::from(from[0] + x) + 0.5, f64::from(from[1] + y) + 0.5];
            let light = 1.0 + slope[0] * f64::from(x) + slope[1] * f64::from(y);
            pixels.push(light * pixel(&surfaces, table, at));
        }
    }
    let blur = lot.random_range(0.6..1.6);
    let pixels = blurred(&blurred(&pixels, size[0] as usize, blur), size[1] as usize, blur);
    let grain = lot.random_range(1.5..5.0);
    let grey: Vec<u8> = pixels.iter().map(|level| (level + grain * bell(lot)) as u8).collect();
    Picture { from, size, grey: kept(&grey, size) }
}

/// The first pixel of the part that is drawn, and its size.
fn window(scene: &Scene) -> ([u32; 2], [u32; 2]) {
    let tips = scene.plug.pins.iter().flat_map(|pin| &pin.tip);
    let seen: Vec<Pixel> = tips.map(|corner| scene.camera.sees(*corner)).collect();
    let side = |axis: usize| {
        let low = seen.iter().map(|at| at[axis]).fold(f64::INFINITY, f64::min) - AROUND;
        let high = seen.iter().map(|at| at[axis]).fold(0.0, f64::max) + AROUND;
        (low.max(0.0) as u32, high.min(scene.size[axis]) as u32)
    };
    let (left, right) = side(0);
    let (top, bottom) = side(1);
    ([left, top], [right - left, bottom - top])
}

/// What is seen, from what lies deepest to what hides the rest.
fn surfaces(scene: &Scene, lot: &mut ChaCha8Rng) -> Vec<Surface> {
    let seen = |corners: &[[f64; 3]], grey: f64| {
        Surface::new(corners.iter().map(|at| scene.camera.sees(*at)).collect(), grey)
    };
    let dark = lot.random_bool(0.7);
    let face = if dark { lot.random_range(15.0..80.0) } else { lot.random_range(150.0..215.0) };
    // Metal is not seen where it is as bright as what is behind it; a person would turn it to the light.
    let tip = if dark { lot.random_range(120.0..235.0) } else { lot.random_range(50.0..115.0) };
    let shades = [0, 1].map(|_| tip * lot.random_range(0.4..1.25));
    let mut all = vec![seen(&scene.plug.face, face), seen(&card(), lot.random_range(190.0..245.0))];
    // A plane between the pins has the camera on one side: what is on that side hides the other.
    let to_camera = minus(scene.camera.centre, scene.plug.middle);
    let [first, second] = &scene.plug.pins;
    let order =
        if dot(to_camera, scene.plug.apart) < 0.0 { [second, first] } else { [first, second] };
    for pin in order {
        all.extend(
            sides(scene, pin, shades).into_iter().map(|(corners, grey)| seen(&corners, grey)),
        );
        all.push(seen(&pin.tip, tip));
    }
    all
}

/// The sides of a pin that face the camera, with their brightness; round pins have many.
fn sides(scene: &Scene, pin: &Pin, shades: [f64; 2]) -> Vec<([[f64; 3]; 4], f64)> {
    let upper = pin.tip.iter().zip(pin.tip.iter().cycle().skip(1));
    let lower = pin.foot.iter().zip(pin.foot.iter().cycle().skip(1));
    let all = upper.zip(lower).enumerate();
    let shown = all.filter_map(|(place, ((a, b), (c, d)))| {
        let middle = [0, 1, 2].map(|axis| (a[axis] + b[axis] + c[axis] + d[axis]) / 4.0);
        let inner = [0, 1, 2].map(|axis| {
            pin.tip.iter().chain(&pin.foot).map(|at| at[axis]).sum::<f64>()
                / (2 * pin.tip.len()) as f64
        });
        let normal = super::space::cross(minus(*b, *a), minus(*c, *a));
        let outward = dot(normal, minus(middle, inner));
        let facing = dot(normal, minus(scene.camera.centre, middle));
        (outward * facing > 0.0).then_some(([*a, *b, *d, *c], shade(pin, place, shades)))
    });
    shown.collect()
}

/// Broad and narrow sides of a blade follow each other; a round pin goes slowly from one to the other.
fn shade(pin: &Pin, place: usize, [broad, narrow]: [f64; 2]) -> f64 {
    if pin.tip.len() == 4 {
        return if place.is_multiple_of(2) { broad } else { narrow };
    }
    let round = (place as f64 / pin.tip.len() as f64 * std::f64::consts::TAU).cos();
    broad + (narrow - broad) * (round + 1.0) / 2.0
}

/// How bright a pixel is: where an edge crosses it, the mean of many places in it.
fn pixel(surfaces: &[Surface], table: f64, at: Pixel) -> f64 {
    for surface in surfaces.iter().rev() {
        let inside = surface.inside(at);
        if inside > 1.0 {
            return surface.grey;
        }
        if inside > -1.0 {
            return fine(surfaces, table, at);
        }
    }
    table
}

fn fine(surfaces: &[Surface], table: f64, at: Pixel) -> f64 {
    let place = |step: u32| (f64::from(step) + 0.5) / f64::from(FINE) - 0.5;
    let places = (0..FINE * FINE).map(|n| [at[0] + place(n % FINE), at[1] + place(n / FINE)]);
    let levels = places.map(|at| {
        let top = surfaces.iter().rev().find(|surface| surface.inside(at) > 0.0);
        top.map_or(table, |surface| surface.grey)
    });
    levels.sum::<f64>() / f64::from(FINE * FINE)
}

/// Pixels blurred by a bell curve along their rows, and turned: what was a row is a column.
fn blurred(pixels: &[f64], width: usize, sigma: f64) -> Vec<f64> {
    let reach = (3.0 * sigma).ceil() as usize;
    let weight = |off: usize| (-(off as f64 / sigma).powi(2) / 2.0).exp();
    let weights: Vec<f64> = (0..=2 * reach).map(|n| weight(n.abs_diff(reach))).collect();
    let whole: f64 = weights.iter().sum();
    let height = pixels.len() / width;
    let mut turned = vec![0.0; pixels.len()];
    for (y, row) in pixels.chunks(width).enumerate() {
        for x in 0..width {
            let near = weights
                .iter()
                .enumerate()
                .map(|(n, weight)| weight * row[(x + n).saturating_sub(reach).min(width - 1)]);
            turned[x * height + y] = near.sum::<f64>() / whole;
        }
    }
    turned
}

/// What is left of pixels after they were kept as a JPEG.
fn kept(grey: &[u8], [width, height]: [u32; 2]) -> Vec<u8> {
    let mut file = Vec::new();
    let encoder = Encoder::new(&mut file, QUALITY);
    encoder.encode(grey, width as u16, height as u16, ColorType::Luma).expect("it is encoded");
    let read = image::load_from_memory_with_format(&file, ImageFormat::Jpeg);
    read.expect("it can be read").into_luma8().into_raw()
}
