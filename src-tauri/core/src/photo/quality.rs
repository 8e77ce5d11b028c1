//! Whether a photo is worth taking again: blurred, too dark, or burnt out in part. A hint, never a refusal.
//!
//! Measured on grey pixels, the longest side at most 1024 px, in tiles of 24 px. An edge whose levels
//! differ by C and that is blurred by a bell curve of width σ has a slope of at most C / (σ √2π): tiles with
//! enough contrast tell σ by that. A photo counts as sharp when its sharpest tiles are, because a plug in front of
//! a wall is sharp in part. Thresholds are calibrated on made photos (`tests/src/camera.rs`).

use std::f64::consts::TAU;

use image::RgbImage;

use super::shrink::shrunk;
use crate::fields::id_enum;

id_enum! {
    /// What speaks for taking a photo again.
    pub enum Hint {
        /// Nothing in it is sharp.
        Blurred = "blurred",
        /// Even its brightest parts are dark.
        Dark = "dark",
        /// A part of it is burnt out.
        Glare = "glare",
    }
}

/// The longest side that is measured, px.
const SIDE: u32 = 1024;
/// The side of a tile, px.
const TILE: usize = 24;
/// The least difference of levels along a line of a tile that tells of sharpness, of 255.
const CONTRAST: u8 = 48;
/// So many tiles of each thousand that have contrast are the sharpest ones, and at least so many tiles.
const SHARPEST: (usize, usize) = (80, 8);
/// Above this width of the sharpest edges a photo is blurred, px. Calibrated.
const BLURRED_PX: f64 = 1.7;
/// Below this level of its brightest twentieth a photo is dark, of 255. Calibrated.
const DARK_LEVEL: u8 = 60;
/// From this level a pixel counts as burnt out, of 255.
const BURNT_LEVEL: u8 = 250;
/// From this share of tiles that are burnt out all over a photo has glare. Calibrated.
const BURNT_SHARE: f64 = 0.012;

/// What the pixels of a photo say of how it was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quality {
    /// The width σ of its sharpest edges, px of the measured size; nothing where nothing has contrast.
    pub edge_px: Option<f64>,
    /// The level that 19 of 20 pixels are below, of 255.
    pub bright_level: u8,
    /// The share of tiles that are burnt out all over.
    pub burnt_share: f64,
}

impl Quality {
    /// Measures a photo.
    pub fn of(photo: &RgbImage) -> Self {
        let small = shrunk(photo, SIDE).ok().flatten();
        let grey = Grey::of(small.as_ref().unwrap_or(photo));
        let tiles: Vec<Tile> = grey.tiles().collect();
        let burnt = tiles.iter().filter(|tile| tile.darkest >= BURNT_LEVEL).count();
        Self {
            edge_px: sharpest(&tiles),
            bright_level: grey.level_above(0.95),
            burnt_share: burnt as f64 / tiles.len().max(1) as f64,
        }
    }

    /// What speaks for taking it again.
    pub fn hints(&self) -> Vec<Hint> {
        let dark = self.bright_level < DARK_LEVEL;
        // In the dark there is no contrast to tell sharpness by.
        let blurred = self.edge_px.map_or(!dark, |edge| edge > BLURRED_PX);
        let glare = self.burnt_share >= BURNT_SHARE;
        let hints = [(Hint::Blurred, blurred), (Hint::Dark, dark), (Hint::Glare, glare)];
        hints.into_iter().filter(|(_, holds)| *holds).map(|(hint, _)| hint).collect()
    }
}

/// The width of the sharpest edges, px.
fn sharpest(tiles: &[Tile]) -> Option<f64> {
    let mut worst_of_both: Option<f64> = None;
    for along in [0, 1] {
        let mut edges: Vec<f64> =
            tiles.iter().filter_map(|tile| tile.edges.get(along).copied().flatten()).collect();
        edges.sort_by(f64::total_cmp);
        let (share, least) = SHARPEST;
        let place = (edges.len() * share / 1000).max(least);
        // A hand that moves leaves edges along its way sharp: the worse direction counts.
        if let Some(edge) = edges.get(place) {
            worst_of_both = Some(worst_of_both.map_or(*edge, |worst| worst.max(*edge)));
        }
    }
    worst_of_both
}

struct Grey {
    width: usize,
    levels: Vec<u8>,
}

/// What a square of the photo says.
struct Tile {
    darkest: u8,
    /// The width of its sharpest edge across, and down, px; nothing without contrast.
    edges: [Option<f64>; 2],
}

impl Grey {
    fn of(photo: &RgbImage) -> Self {
        // Weights of ITU-R BT.601 in 256ths, from memory.
        let level = |pixel: &image::Rgb<u8>| {
            let [red, green, blue] = pixel.0.map(u32::from);
            ((77 * red + 150 * green + 29 * blue) >> 8) as u8
        };
        Self { width: photo.width() as usize, levels: photo.pixels().map(level).collect() }
    }

    /// The level that a share of the pixels is below.
    fn level_above(&self, share: f64) -> u8 {
        let mut counts = [0usize; 256];
        for level in &self.levels {
            if let Some(count) = counts.get_mut(usize::from(*level)) {
                *count += 1;
            }
        }
        let below = (self.levels.len() as f64 * share) as usize;
        let mut so_far = 0;
        let reached = counts.iter().position(|count| {
            so_far += count;
            so_far > below
        });
        reached.and_then(|level| u8::try_from(level).ok()).unwrap_or(u8::MAX)
    }

    fn tiles(&self) -> impl Iterator<Item = Tile> + '_ {
        let rows: Vec<&[u8]> = self.levels.chunks_exact(self.width.max(1)).collect();
        let across = self.width / TILE;
        let down = rows.len() / TILE;
        (0..down * across).map(move |place| {
            let (left, top) = (place % across * TILE, place / across * TILE);
            let square: Vec<&[u8]> = rows
                .iter()
                .skip(top)
                .take(TILE)
                .filter_map(|row| row.get(left..left + TILE))
                .collect();
            Tile::of(&square)
        })
    }
}

impl Tile {
    fn of(rows: &[&[u8]]) -> Self {
        let darkest = rows.iter().flat_map(|row| row.iter()).min().copied().unwrap_or_default();
        let columns: Vec<Vec<u8>> = (0..TILE)
            .map(|x| rows.iter().filter_map(|row| row.get(x)).copied().collect())
            .collect();
        let columns: Vec<&[u8]> = columns.iter().map(Vec::as_slice).collect();
        Self { darkest, edges: [edge(rows), edge(&columns)] }
    }
}

/// The width of the sharpest edge along some lines that lie beside each other, px.
fn edge(lines: &[&[u8]]) -> Option<f64> {
    let triples = lines.windows(3).filter_map(|three| match three {
        [above, here, below] => Some(smoothed(above, here, below)),
        _ => None,
    });
    let widths = triples.filter_map(|line| {
        let (low, high) = (line.iter().min()?, line.iter().max()?);
        let contrast = high - low;
        // Over two pixels, which halves the grain again.
        let steepest = line.windows(3).map(|three| match three {
            [left, _, right] => left.abs_diff(*right),
            _ => 0,
        });
        let steepest = f64::from(steepest.max()?) / 2.0;
        let enough = contrast >= 4 * u16::from(CONTRAST);
        enough.then(|| f64::from(contrast) / (steepest * TAU.sqrt()))
    });
    widths.min_by(f64::total_cmp)
}

/// A line with its neighbours, 1 : 2 : 1, which halves the grain; four times the levels.
fn smoothed(above: &[u8], here: &[u8], below: &[u8]) -> Vec<u16> {
    let levels = above.iter().zip(here).zip(below);
    levels
        .map(|((above, here), below)| u16::from(*above) + 2 * u16::from(*here) + u16::from(*below))
        .collect()
}
