//! The map between a flat rectangle and its picture.

/// A point: px in a photo, or mm in the plane of the card.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

impl Point {
    /// The point at these places.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    pub(super) fn minus(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y)
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }

    pub(super) fn times(self, by: f64) -> Self {
        Self::new(self.x * by, self.y * by)
    }

    pub(super) fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// The area between two directions: positive when `other` is clockwise of this one in a photo.
    pub(super) fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    pub(super) fn long(self) -> f64 {
        self.x.hypot(self.y)
    }

    pub(super) fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite()
    }
}

/// Rows of three: maps (x, y, 1) to (x w, y w, w).
pub(super) type Matrix = [[f64; 3]; 3];

/// A rectangle in space and its picture.
#[derive(Clone, Debug)]
pub(super) struct Homography {
    /// From the rectangle's plane, mm, to the photo, px.
    pub(super) to_photo: Matrix,
    /// Back.
    to_plane: Matrix,
}

impl Homography {
    /// The map of the rectangle (0, 0), (`wide`, 0), (`wide`, `high`), (0, `high`) to four corners.
    ///
    /// Four corners determine it: the eight equations fall apart into three of two unknowns each, so
    /// that no large system has to be solved. `None` when three corners are in line.
    pub(super) fn of_rectangle(wide: f64, high: f64, corners: [Point; 4]) -> Option<Self> {
        let [p0, p1, p2, p3] = corners;
        let (side, other) = (p1.minus(p2), p3.minus(p2));
        let skew = p0.minus(p1).plus(p2).minus(p3);
        let area = side.cross(other);
        let g = skew.cross(other) / area;
        let h = side.cross(skew) / area;
        let across = p1.minus(p0).plus(p1.times(g)).times(1.0 / wide);
        let down = p3.minus(p0).plus(p3.times(h)).times(1.0 / high);
        let to_photo =
            [[across.x, down.x, p0.x], [across.y, down.y, p0.y], [g / wide, h / high, 1.0]];
        Some(Self { to_photo, to_plane: inverse(&to_photo)? })
    }

    /// The point of the plane that a place in the photo shows; `None` at the horizon and beyond.
    pub(super) fn plane(&self, place: Point) -> Option<Point> {
        let [x, y, w] = map(&self.to_plane, place);
        let point = Point::new(x / w, y / w);
        (w > 0.0 && point.is_finite()).then_some(point)
    }
}

fn map(matrix: &Matrix, point: Point) -> [f64; 3] {
    matrix.map(|[a, b, c]| a * point.x + b * point.y + c)
}

/// The inverse by cofactors; `None` when there is none.
fn inverse(&[[a, b, c], [d, e, f], [g, h, i]]: &Matrix) -> Option<Matrix> {
    let cofactors = [
        [e * i - f * h, c * h - b * i, b * f - c * e],
        [f * g - d * i, a * i - c * g, c * d - a * f],
        [d * h - e * g, b * g - a * h, a * e - b * d],
    ];
    let whole = a * cofactors[0][0] + b * cofactors[1][0] + c * cofactors[2][0];
    let inverse = cofactors.map(|row| row.map(|part| part / whole));
    inverse.iter().flatten().all(|part| part.is_finite()).then_some(inverse)
}
