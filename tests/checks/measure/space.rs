//! Vectors in space and a pinhole camera. Millimetres; the card lies in the plane z = 0.

/// A point or a direction, mm.
pub type Vector = [f64; 3];

/// A place in a photo, px from its upper left corner.
pub type Pixel = [f64; 2];

pub fn plus(a: Vector, b: Vector) -> Vector {
    [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}

pub fn times(a: Vector, by: f64) -> Vector {
    a.map(|part| part * by)
}

pub fn minus(a: Vector, b: Vector) -> Vector {
    plus(a, times(b, -1.0))
}

pub fn dot(a: Vector, b: Vector) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

pub fn cross(a: Vector, b: Vector) -> Vector {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

pub fn unit(a: Vector) -> Vector {
    times(a, 1.0 / dot(a, a).sqrt())
}

/// A vector turned about a unit axis (Rodrigues).
pub fn turned(a: Vector, axis: Vector, angle: f64) -> Vector {
    let along = times(axis, dot(axis, a) * (1.0 - angle.cos()));
    plus(plus(times(a, angle.cos()), times(cross(axis, a), angle.sin())), along)
}

/// A camera without a lens: straight lines stay straight.
pub struct Camera {
    /// Where it is.
    pub centre: Vector,
    /// To the right and down in the photo, and where it looks: unit vectors, each square to the others.
    pub axes: [Vector; 3],
    /// Focal length, px.
    pub focal: f64,
    /// Where its axis meets the photo, px.
    pub middle: Pixel,
}

impl Camera {
    /// Where a point is seen.
    pub fn sees(&self, point: Vector) -> Pixel {
        let from = minus(point, self.centre);
        let [right, down, depth] = self.axes.map(|axis| dot(axis, from));
        let scale = self.focal / depth;
        [self.middle[0] + scale * right, self.middle[1] + scale * down]
    }
}
