//! A picture in linear light, and shapes with edges one pixel wide to put on it.

use rand::Rng;

/// Red, green and blue in linear light; 1 is a white sheet of paper.
pub type Light = [f32; 3];

/// A picture in linear light, row by row.
#[derive(Clone)]
pub struct Canvas {
    pub width: usize,
    pub height: usize,
    pub light: Vec<f32>,
}

impl Canvas {
    pub fn new(width: usize, height: usize, paint: impl Fn(f32, f32) -> Light) -> Self {
        let at = |i: usize| paint((i % width) as f32 + 0.5, (i / width) as f32 + 0.5);
        let light = (0..width * height).flat_map(at).collect();
        Self { width, height, light }
    }

    /// Paints where `distance` is below 0, inside the box `[left, top, right, bottom]` only.
    pub fn paint(
        &mut self,
        bounds: [f32; 4],
        distance: impl Fn(f32, f32) -> f32,
        paint: impl Fn(f32, f32) -> Light,
    ) {
        let within = |value: f32, most: usize| value.clamp(0.0, most as f32) as usize;
        let [left, top, right, bottom] = bounds;
        for y in within(top, self.height)..within(bottom + 1.0, self.height) {
            for x in within(left, self.width)..within(right + 1.0, self.width) {
                let (px, py) = (x as f32 + 0.5, y as f32 + 0.5);
                let cover = (0.5 - distance(px, py)).clamp(0.0, 1.0);
                if cover > 0.0 {
                    let at = (y * self.width + x) * 3;
                    let pixel = &mut self.light[at..at + 3];
                    for (below, over) in pixel.iter_mut().zip(paint(px, py)) {
                        *below += (over - *below) * cover;
                    }
                }
            }
        }
    }

    /// A line with round ends.
    pub fn line(&mut self, from: [f32; 2], to: [f32; 2], width: f32, light: Light) {
        let half = width / 2.0;
        let bounds = [
            from[0].min(to[0]) - half - 1.0,
            from[1].min(to[1]) - half - 1.0,
            from[0].max(to[0]) + half + 1.0,
            from[1].max(to[1]) + half + 1.0,
        ];
        self.paint(bounds, |x, y| to_line([x, y], from, to) - half, |_, _| light);
    }

    /// A disc; its paint may look at the place in units of the radius.
    pub fn disc(&mut self, at: [f32; 2], radius: f32, paint: impl Fn(f32, f32) -> Light) {
        let reach = radius + 1.0;
        let bounds = [at[0] - reach, at[1] - reach, at[0] + reach, at[1] + reach];
        self.paint(
            bounds,
            |x, y| (x - at[0]).hypot(y - at[1]) - radius,
            |x, y| paint((x - at[0]) / radius, (y - at[1]) / radius),
        );
    }

    /// A turned box with round corners; its paint looks at the place from -1 to 1 along both sides.
    pub fn plate(&mut self, plate: &Plate, paint: impl Fn(f32, f32) -> Light) {
        let Plate { at, half, turn, round } = *plate;
        let reach = half[0].hypot(half[1]) + 1.0;
        let bounds = [at[0] - reach, at[1] - reach, at[0] + reach, at[1] + reach];
        let (sin, cos) = turn.sin_cos();
        let inside = |x: f32, y: f32| {
            let (x, y) = (x - at[0], y - at[1]);
            [x * cos + y * sin, y * cos - x * sin]
        };
        let distance = |x: f32, y: f32| {
            let [x, y] = inside(x, y);
            let (x, y) = (x.abs() - half[0] + round, y.abs() - half[1] + round);
            x.max(0.0).hypot(y.max(0.0)) + x.max(y).min(0.0) - round
        };
        self.paint(bounds, distance, |x, y| {
            let [x, y] = inside(x, y);
            paint(x / half[0], y / half[1])
        });
    }
}

/// A box: its middle, half its sides, its turn in radians and the radius of its corners.
#[derive(Clone, Copy)]
pub struct Plate {
    pub at: [f32; 2],
    pub half: [f32; 2],
    pub turn: f32,
    pub round: f32,
}

impl Plate {
    /// The place in the picture of a place from -1 to 1 along both sides.
    pub fn point(&self, along: f32, across: f32) -> [f32; 2] {
        let (sin, cos) = self.turn.sin_cos();
        let (x, y) = (along * self.half[0], across * self.half[1]);
        [self.at[0] + x * cos - y * sin, self.at[1] + x * sin + y * cos]
    }
}

fn to_line(point: [f32; 2], from: [f32; 2], to: [f32; 2]) -> f32 {
    let (dx, dy) = (to[0] - from[0], to[1] - from[1]);
    let (x, y) = (point[0] - from[0], point[1] - from[1]);
    let along = ((x * dx + y * dy) / (dx * dx + dy * dy).max(1e-6)).clamp(0.0, 1.0);
    (x - along * dx).hypot(y - along * dy)
}

/// Smooth noise from 0 to 1 with one value for each whole number in both directions.
pub struct Noise(u32);

impl Noise {
    pub fn drawn(random: &mut impl Rng) -> Self {
        Self(random.random())
    }

    fn value(&self, x: i32, y: i32) -> f32 {
        let mut hash = self.0 ^ (x as u32).wrapping_mul(0x9E37_79B1);
        hash =
            (hash ^ (hash >> 15)).wrapping_mul(0x85EB_CA77) ^ (y as u32).wrapping_mul(0xC2B2_AE3D);
        hash = (hash ^ (hash >> 13)).wrapping_mul(0x27D4_EB2F);
        ((hash ^ (hash >> 16)) >> 8) as f32 / (1 << 24) as f32
    }

    pub fn at(&self, x: f32, y: f32) -> f32 {
        let (left, top) = (x.floor(), y.floor());
        let ease = |t: f32| t * t * (3.0 - 2.0 * t);
        let (u, v) = (ease(x - left), ease(y - top));
        let (left, top) = (left as i32, top as i32);
        let row = |y: i32| self.value(left, y) * (1.0 - u) + self.value(left + 1, y) * u;
        row(top) * (1.0 - v) + row(top + 1) * v
    }
}

pub fn scaled(light: Light, by: f32) -> Light {
    light.map(|part| part * by)
}
