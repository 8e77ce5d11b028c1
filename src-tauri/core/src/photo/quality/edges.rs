//! How sharp the edges of a picture are.
//!
//! A known blur takes away much of the steepness of a sharp edge, and little of that of an edge that is
//! blurred already: what share it takes tells the one from the other, whatever the contrast and the
//! light (known as re-blurring; from memory, medium). It is asked at the ridges of edges only, so that
//! the slow shading of round bodies does not count as blur.
//!
//! A moving hand leaves the edges that lie along its way sharp. So edges are told apart by their
//! direction, and the picture is as sharp as its least sharp direction.

use std::f32::consts::PI;

use super::plane::Plane;

/// Directions that edges are told apart by, each 22.5° wide.
const DIRECTIONS: usize = 8;

/// Side of the parts in which edges are looked at together, px of the judged picture.
const PART: usize = 96;

/// The fewest places of one direction that say something in a part.
const FEWEST_PLACES: u32 = 10;

/// The fewest parts that say something of a direction.
const FEWEST_PARTS: usize = 4;

/// Which part speaks for a direction: this share of them is sharper. A subject in focus in front of a
/// room that is not is a sharp photo.
const SHARPER: f64 = 0.3;

/// How steep an edge must be beside the steepest hundredth of the picture.
const STEEP_SHARE: f32 = 0.2;

/// The least an edge must rise over two pixels, levels: below that it is grain.
const LEAST_RISE: f32 = 3.0;

/// The steepness of the edges of one direction in one part.
#[derive(Clone, Copy, Default)]
struct Edges {
    places: u32,
    before: f64,
    after: f64,
}

/// The share of its edges' steepness that a known blur takes, from 0 to 1, in the direction where it is
/// least; nothing where there are too few edges to tell.
pub(super) fn sharpness(plane: &Plane) -> Option<f64> {
    let parts = parts(plane);
    let of_direction = |direction: usize| {
        let edges = parts.iter().filter_map(|part| part.get(direction));
        let telling = edges.filter(|edges| edges.places >= FEWEST_PLACES && edges.before > 0.0);
        spokesman(telling.map(|edges| (1.0 - edges.after / edges.before).clamp(0.0, 1.0)).collect())
    };
    (0..DIRECTIONS).filter_map(of_direction).min_by(f64::total_cmp)
}

/// The value that speaks for many parts; nothing where they are too few.
fn spokesman(mut shares: Vec<f64>) -> Option<f64> {
    shares.sort_by(|a, b| b.total_cmp(a));
    let is_enough = shares.len() >= FEWEST_PARTS;
    shares.get((shares.len() as f64 * SHARPER) as usize).copied().filter(|_| is_enough)
}

/// The edges of each part, by direction.
fn parts(plane: &Plane) -> Vec<[Edges; DIRECTIONS]> {
    let fine = plane.smoothed();
    let coarse = fine.smoothed().smoothed().smoothed();
    let steepness = coarse.steepness();
    let columns = plane.width.div_ceil(PART);
    let mut parts = vec![[Edges::default(); DIRECTIONS]; columns * plane.height.div_ceil(PART)];
    let least = least_steepness(&steepness);
    for (y, row) in steepness.levels.chunks_exact(plane.width.max(1)).enumerate() {
        for (x, steep) in row.iter().enumerate().filter(|(_, steep)| **steep >= least) {
            let slope = coarse.slope(x, y);
            if !is_ridge(&steepness, x, y, slope) {
                continue;
            }
            let part = parts.get_mut(y / PART * columns + x / PART);
            if let Some(edges) = part.and_then(|part| part.get_mut(direction(slope))) {
                let [right, down] = fine.slope(x, y);
                edges.places += 1;
                edges.before += f64::from(right * right + down * down);
                edges.after += f64::from(*steep);
            }
        }
    }
    parts
}

/// What counts as an edge in this picture: the square of its slope.
fn least_steepness(steepness: &Plane) -> f32 {
    // Every seventh place stands for all.
    let mut sample: Vec<f32> = steepness.levels.iter().step_by(7).copied().collect();
    let hundredth = sample.len() - sample.len().div_ceil(100);
    let steepest = match sample.is_empty() {
        true => 0.0,
        false => *sample.select_nth_unstable_by(hundredth, f32::total_cmp).1,
    };
    (steepest * STEEP_SHARE * STEEP_SHARE).max(LEAST_RISE * LEAST_RISE)
}

/// Whether no neighbour across the edge is steeper.
fn is_ridge(steepness: &Plane, x: usize, y: usize, [right, down]: [f32; 2]) -> bool {
    let here = steepness.at(x, y);
    let length = right.hypot(down);
    // A step and a half, so that on a slant it is the corner that is asked.
    let step = |part: f32| (part / length * 1.5).round() as isize;
    let ahead = |by: isize, at: usize| at.checked_add_signed(by).unwrap_or(usize::MAX >> 32);
    let neighbour =
        |sign: isize| steepness.at(ahead(sign * step(right), x), ahead(sign * step(down), y));
    here >= neighbour(1) && here >= neighbour(-1)
}

/// The direction of an edge from its slope: opposite slopes are one direction.
fn direction([right, down]: [f32; 2]) -> usize {
    let turn = down.atan2(right).rem_euclid(PI) / PI;
    (turn * DIRECTIONS as f32).round() as usize % DIRECTIONS
}
