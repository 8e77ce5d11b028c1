//! How much of a picture is too dark to read, and how much is lost to a lamp's reflection.

use super::plane::Plane;

/// Below this level little can be told apart; our own estimate.
const DARK: f32 = 64.0;

/// From this level on a place is white and shows nothing; JPEG leaves it a little below 255.
const WHITE: f32 = 250.0;

/// Side of the cells that glare is looked for in, px of the judged picture.
const CELL: usize = 4;

/// The least share of the picture that a white spot must have to count: glints on screws and print on
/// white paper are in the nature of things. Our own estimate.
const LEAST_SPOT: f64 = 0.0025;

/// The share of the picture that is dark, of what is not white.
pub(super) fn dark_share(plane: &Plane) -> f64 {
    let seen = plane.levels.iter().filter(|level| **level < WHITE);
    let (mut all, mut dark) = (0_u32, 0_u32);
    for level in seen {
        all += 1;
        dark += u32::from(*level < DARK);
    }
    if all == 0 { 0.0 } else { f64::from(dark) / f64::from(all) }
}

/// The share of the picture in white spots that hang together.
pub(super) fn glare_share(plane: &Plane) -> f64 {
    let step = CELL.min(plane.width).min(plane.height).max(1);
    let cells = plane.cells(step);
    let all = cells.levels.len() as f64;
    let mut white: Vec<bool> = cells.levels.iter().map(|level| *level >= WHITE).collect();
    let mut covered = 0.0;
    for start in 0..white.len() {
        let size = spot(&mut white, cells.width, start);
        if size as f64 >= all * LEAST_SPOT {
            covered += size as f64 / all;
        }
    }
    covered
}

/// Cells of the spot around a cell; they are white no more.
fn spot(white: &mut [bool], width: usize, start: usize) -> usize {
    let mut size = 0;
    let mut open = vec![start];
    while let Some(at) = open.pop() {
        if !white.get_mut(at).is_some_and(std::mem::take) {
            continue;
        }
        size += 1;
        open.extend([at.wrapping_sub(width), at + width]);
        if at % width > 0 {
            open.push(at - 1);
        }
        if at % width + 1 < width {
            open.push(at + 1);
        }
    }
    size
}
