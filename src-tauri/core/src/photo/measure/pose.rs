//! Where the camera was, from the card's picture and a focal length.
//!
//! Pixels are taken to be square, and the camera's axis to meet the photo in its middle: so it is when
//! a photo was shrunk as a whole, and roughly when it was cut.

use super::homography::{Homography, Point};

/// Where a camera was above the plane of the card.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pose {
    /// The point of the plane below it, mm.
    pub(super) foot: Point,
    /// Its height above the plane, mm.
    pub(super) height_mm: f64,
}

/// The card's two directions and its origin as the camera has them, each times the same unknown.
struct Columns {
    across: [f64; 3],
    down: [f64; 3],
    origin: [f64; 3],
}

impl Columns {
    fn of(map: &Homography, middle: Point, focal: f64) -> Self {
        let [right, low, depth] = map.to_photo;
        let column = |x: f64, y: f64, w: f64| [x - middle.x * w, y - middle.y * w, focal * w];
        let ([a, b, c], [d, e, f], [g, h, i]) = (right, low, depth);
        Self { across: column(a, d, g), down: column(b, e, h), origin: column(c, f, i) }
    }
}

/// How far a map is from what a camera of this focal length (px) can see: the cosine between the
/// card's sides, and the logarithm of how much longer one is drawn than the other. Both are 0 for
/// the true one.
pub(super) fn misfit(map: &Homography, middle: Point, focal: f64) -> [f64; 2] {
    let Columns { across, down, .. } = Columns::of(map, middle, focal);
    let (a, d) = (long(across), long(down));
    [dot(across, down) / (a * d), (a / d).ln()]
}

/// Where a camera of this focal length (px) was.
pub(super) fn pose(map: &Homography, middle: Point, focal: f64) -> Pose {
    let Columns { across, down, origin } = Columns::of(map, middle, focal);
    let (a, d) = (long(across), long(down));
    let scale = (a * d).sqrt();
    let up = cross(across, down);
    Pose {
        foot: Point::new(-dot(origin, across) / (a * scale), -dot(origin, down) / (d * scale)),
        height_mm: (dot(origin, up) / (long(up) * scale)).abs(),
    }
}

fn dot([a, b, c]: [f64; 3], [x, y, z]: [f64; 3]) -> f64 {
    a * x + b * y + c * z
}

fn cross([a, b, c]: [f64; 3], [x, y, z]: [f64; 3]) -> [f64; 3] {
    [b * z - c * y, c * x - a * z, a * y - b * x]
}

fn long(vector: [f64; 3]) -> f64 {
    dot(vector, vector).sqrt()
}
