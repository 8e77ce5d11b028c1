//! One level for each pixel, and the few things that are done to a whole picture of them.

use image::RgbImage;

/// The longest side of the picture that is judged, px. Half of a kept photo: the sensor's noise and
/// the blocks of a JPEG fade, while a blur of 3 px of the photo still shows.
const LONGEST_SIDE: usize = 1024;

/// Weights of red, green and blue in a level, of 256 (ITU-R BT.601, from memory, high).
const WEIGHTS: [u32; 3] = [77, 150, 29];

/// Levels from 0 to 255 as they are coded (sRGB), row by row.
pub(super) struct Plane {
    pub width: usize,
    pub height: usize,
    pub levels: Vec<f32>,
}

impl Plane {
    /// The levels of a picture, each the mean of a square, so that no side is longer than 1024.
    pub fn of(picture: &RgbImage) -> Self {
        let size = |length: u32| usize::try_from(length).unwrap_or_default();
        let (width, height) = (size(picture.width()), size(picture.height()));
        let step = width.max(height).div_ceil(LONGEST_SIDE).max(1);
        let (columns, rows) = (width.div_ceil(step), height.div_ceil(step));
        let mut levels = Vec::with_capacity(columns * rows);
        let mut sums = vec![0_u32; width];
        for band in picture.as_raw().chunks((width * 3 * step).max(1)) {
            sums.fill(0);
            for row in band.chunks_exact(width * 3) {
                let pixels = row.as_chunks::<3>().0.iter().map(weighed);
                sums.iter_mut().zip(pixels).for_each(|(sum, level)| *sum += level);
            }
            let tall = band.len() / (width * 3);
            // The last column and row may be of fewer pixels.
            let mean =
                |cell: &[u32]| cell.iter().sum::<u32>() as f32 / (256 * cell.len() * tall) as f32;
            levels.extend(sums.chunks(step).map(mean));
        }
        Self { width: columns, height: rows, levels }
    }

    /// The level of a place; 0 outside.
    pub fn at(&self, x: usize, y: usize) -> f32 {
        let is_inside = x < self.width;
        let level = self.levels.get(y * self.width + x).filter(|_| is_inside);
        level.copied().unwrap_or_default()
    }

    /// A row; beyond the rim the nearest one.
    fn row(&self, y: usize) -> &[f32] {
        let from = y.min(self.height.saturating_sub(1)) * self.width;
        self.levels.get(from..from + self.width).unwrap_or_default()
    }

    /// Each level mixed with its neighbours, 1 : 2 : 1 in both directions: a blur of 0.7 px.
    pub fn smoothed(&self) -> Self {
        let mut across = Vec::with_capacity(self.levels.len());
        for row in self.levels.chunks_exact(self.width.max(1)) {
            let (Some(first), Some(last)) = (row.first(), row.last()) else {
                continue;
            };
            let (here, after) = (from(row, 1), from(row, 2));
            across.push(mixed(*first, *first, here.first().copied().unwrap_or(*first)));
            let inner = row.iter().zip(here).zip(after);
            across.extend(inner.map(|((a, b), c)| mixed(*a, *b, *c)));
            if let [.., before, _] = row {
                across.push(mixed(*before, *last, *last));
            }
        }
        let across = Self { width: self.width, height: self.height, levels: across };
        let mut levels = Vec::with_capacity(self.levels.len());
        for y in 0..self.height {
            let (above, here, below) =
                (across.row(y.saturating_sub(1)), across.row(y), across.row(y + 1));
            let rows = above.iter().zip(here).zip(below);
            levels.extend(rows.map(|((a, b), c)| mixed(*a, *b, *c)));
        }
        Self { levels, ..across }
    }

    /// How much the level changes over two pixels to the right and down; 0 outside.
    pub fn slope(&self, x: usize, y: usize) -> [f32; 2] {
        let (Some(left), Some(above)) = (x.checked_sub(1), y.checked_sub(1)) else {
            return [0.0; 2];
        };
        [self.at(x + 1, y) - self.at(left, y), self.at(x, y + 1) - self.at(x, above)]
    }

    /// The square of the slope of each place; 0 on the rim, where there is no neighbour.
    pub fn steepness(&self) -> Self {
        let mut levels = Vec::with_capacity(self.levels.len());
        for y in 0..self.height {
            if y == 0 || y + 1 == self.height || self.width < 3 {
                levels.extend(std::iter::repeat_n(0.0, self.width));
                continue;
            }
            let (above, below) = (from(self.row(y - 1), 1), from(self.row(y + 1), 1));
            let (left, right) = (self.row(y), from(self.row(y), 2));
            let slopes = left.iter().zip(right).zip(above.iter().zip(below));
            levels.push(0.0);
            levels.extend(slopes.map(|((left, right), (above, below))| {
                let (x, y) = (right - left, below - above);
                x * x + y * y
            }));
            levels.push(0.0);
        }
        Self { width: self.width, height: self.height, levels }
    }

    /// The mean level of squares of `step` px; what is left over at the rim is left out.
    pub fn cells(&self, step: usize) -> Self {
        let (width, height) = (self.width / step, self.height / step);
        let mut levels = vec![0.0; width * height];
        let bands = levels.chunks_exact_mut(width.max(1));
        for (sums, band) in bands.zip(self.levels.chunks_exact((self.width * step).max(1))) {
            for row in band.chunks_exact(self.width) {
                for (sum, cell) in sums.iter_mut().zip(row.chunks_exact(step)) {
                    *sum += cell.iter().sum::<f32>() / (step * step) as f32;
                }
            }
        }
        Self { width, height, levels }
    }
}

fn weighed(pixel: &[u8; 3]) -> u32 {
    let ([red, green, blue], [of_red, of_green, of_blue]) = (*pixel, WEIGHTS);
    u32::from(red) * of_red + u32::from(green) * of_green + u32::from(blue) * of_blue
}

/// What follows the first few of a row.
fn from(row: &[f32], skipped: usize) -> &[f32] {
    row.get(skipped..).unwrap_or_default()
}

const fn mixed(before: f32, here: f32, after: f32) -> f32 {
    (before + 2.0 * here + after) * 0.25
}
