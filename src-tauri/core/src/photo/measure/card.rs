//! A bank card in a photo: its plane, and where the camera was.

use super::error::MeasureError;
use super::homography::{Homography, Point};
use super::length::TAP_PX;
use super::pose::{Pose, misfit, pose};

/// Long side of an ID-1 card, mm. ISO/IEC 7810:2019, from memory, high.
pub const CARD_LONG_MM: f64 = 85.60;

/// Short side of an ID-1 card, mm. ISO/IEC 7810:2019, from memory, high.
pub const CARD_SHORT_MM: f64 = 53.98;

/// How much larger or smaller a card may be, as a part of its size: 0.13 mm of the long side.
/// ISO/IEC 7810:2019 (85.47 to 85.72 mm for unused cards), from memory, medium.
pub(super) const CARD_PART: f64 = 0.0015;

/// The shortest side that is taken for a card's, px: a tap's error is then 3 % of it. Our estimate.
const SHORTEST_SIDE_PX: f64 = 60.0;

/// Field of view along the diagonal that a phone's photo usually has, degrees: main cameras have 75 to
/// 84 (28 to 24 mm in terms of 35 mm film), less where the edges are cut for a steady picture. Common
/// practice.
const USUAL_FIELD: [f64; 2] = [55.0, 85.0];

/// Fields of view that a photo may have when it was zoomed or taken with a wide lens, degrees. Our
/// estimate.
const ANY_FIELD: [f64; 2] = [30.0, 100.0];

/// Focal lengths that are tried from one end of a range to the other.
const TRIED: u32 = 40;

/// A sum of squares in sigmas that two numbers exceed once in 10,000 times by chance alone.
const CHANCE: f64 = 18.4;

/// How much worse than the best a focal length may fit, in squares of sigmas: 95 % of the chances.
const NEARLY: f64 = 4.0;

/// How much better one side has to fit as the long one, in squares of sigmas: three sigmas.
const CLEARLY: f64 = 9.0;

/// A card in a photo.
#[derive(Clone, Debug)]
pub struct CardView {
    /// The map of the corners as they were tapped.
    pub(super) map: Homography,
    /// The maps when one corner was tapped a sigma too low and too high, in each of its places.
    pub(super) nudged: Vec<[Homography; 2]>,
    /// Where the camera was, for the middle of the focal lengths that fit.
    pub(super) pose: Pose,
    /// The least and the greatest height of the camera above the card that fits, mm.
    pub(super) heights_mm: [f64; 2],
}

impl CardView {
    /// The card with these corners, in order round it, either way and from any; all in px, with the
    /// width and height of the photo.
    ///
    /// # Errors
    /// The corners are outside the photo, not in order, too close together or not those of a card, or
    /// it is unclear which side is the long one.
    pub fn new(size: [f64; 2], corners: [Point; 4]) -> Result<Self, MeasureError> {
        check(size, &corners)?;
        let [wide, high] = size;
        let photo =
            Photo { middle: Point::new(wide / 2.0, high / 2.0), diagonal: wide.hypot(high) };
        let [a, b, c, d] = corners;
        let one = Seen::of([a, b, c, d]).ok_or(MeasureError::CornersCrossed)?;
        let other = Seen::of([b, c, d, a]).ok_or(MeasureError::CornersCrossed)?;
        for field in [USUAL_FIELD, ANY_FIELD] {
            let [first, second] = [&one, &other].map(|seen| seen.best(&photo, field));
            if first.min(second) > CHANCE {
                continue;
            }
            if (first - second).abs() < CLEARLY {
                return Err(MeasureError::LongSideUnclear);
            }
            let seen = if first < second { one } else { other };
            return Ok(seen.view(&photo, field));
        }
        Err(MeasureError::NotACard)
    }

    /// The least and the greatest height of the camera above the card that fits, mm.
    pub fn camera_height_mm(&self) -> [f64; 2] {
        self.heights_mm
    }
}

fn check(size: [f64; 2], corners: &[Point; 4]) -> Result<(), MeasureError> {
    let [wide, high] = size;
    if !size.iter().all(|side| side.is_finite() && *side > 0.0) {
        return Err(MeasureError::Size);
    }
    let shown = |at: &Point| (0.0..=wide).contains(&at.x) && (0.0..=high).contains(&at.y);
    if let Some(corner) = corners.iter().position(|at| !shown(at)) {
        return Err(MeasureError::CornerOutside { corner });
    }
    let [a, b, c, d] = *corners;
    let sides = [b.minus(a), c.minus(b), d.minus(c), a.minus(d)];
    if sides.iter().any(|side| side.long() < SHORTEST_SIDE_PX) {
        return Err(MeasureError::CardTooSmall);
    }
    let [s, t, u, v] = sides;
    let turns = [s.cross(t), t.cross(u), u.cross(v), v.cross(s)];
    let one_way = turns.iter().all(|turn| *turn > 0.0) || turns.iter().all(|turn| *turn < 0.0);
    if one_way { Ok(()) } else { Err(MeasureError::CornersCrossed) }
}

/// What is taken for granted of a photo.
struct Photo {
    middle: Point,
    diagonal: f64,
}

impl Photo {
    /// The focal length of a field of view along the diagonal (degrees), px.
    fn focal(&self, field: f64) -> f64 {
        self.diagonal / 2.0 / (field.to_radians() / 2.0).tan()
    }

    /// Focal lengths from the shortest to the longest of a range of fields.
    fn focals(&self, [narrow, wide]: [f64; 2]) -> impl Iterator<Item = f64> {
        let (shortest, longest) = (self.focal(wide), self.focal(narrow));
        let step = (longest / shortest).ln() / f64::from(TRIED);
        (0..=TRIED).map(move |n| shortest * (step * f64::from(n)).exp())
    }
}

/// Corners of which the first side is taken for the long one.
struct Seen {
    map: Homography,
    nudged: Vec<[Homography; 2]>,
}

impl Seen {
    fn of(corners: [Point; 4]) -> Option<Self> {
        let map = |corners| Homography::of_rectangle(CARD_LONG_MM, CARD_SHORT_MM, corners);
        let mut nudged = Vec::new();
        for corner in 0..corners.len() {
            for nudge in [Point::new(TAP_PX, 0.0), Point::new(0.0, TAP_PX)] {
                let moved = |by: f64| {
                    let mut corners = corners;
                    corners.iter_mut().skip(corner).take(1).for_each(|at| {
                        *at = at.plus(nudge.times(by));
                    });
                    map(corners)
                };
                nudged.push([moved(-1.0)?, moved(1.0)?]);
            }
        }
        Some(Self { map: map(corners)?, nudged })
    }

    /// How badly a focal length fits, in squares of sigmas of the taps.
    fn unfit(&self, photo: &Photo, focal: f64) -> f64 {
        let [x, y] = misfit(&self.map, photo.middle, focal);
        let (mut xx, mut xy, mut yy) = (0.0, 0.0, 0.0);
        for [low, high] in &self.nudged {
            let [a, b] = misfit(low, photo.middle, focal);
            let [c, d] = misfit(high, photo.middle, focal);
            let (dx, dy) = ((c - a) / 2.0, (d - b) / 2.0);
            xx += dx * dx;
            xy += dx * dy;
            yy += dy * dy;
        }
        (yy * x * x - 2.0 * xy * x * y + xx * y * y) / (xx * yy - xy * xy)
    }

    /// How badly the best focal length of a range of fields fits.
    fn best(&self, photo: &Photo, field: [f64; 2]) -> f64 {
        photo.focals(field).map(|focal| self.unfit(photo, focal)).fold(f64::INFINITY, f64::min)
    }

    /// The card, with the focal lengths of a range that fit nearly as well as the best.
    fn view(self, photo: &Photo, field: [f64; 2]) -> CardView {
        let most = self.best(photo, field) + NEARLY;
        let fit = photo.focals(field).filter(|focal| self.unfit(photo, *focal) <= most);
        let (shortest, longest) = fit
            .fold((f64::INFINITY, 0.0_f64), |(low, high), focal| (low.min(focal), high.max(focal)));
        let at = |focal| pose(&self.map, photo.middle, focal);
        let heights_mm = [at(shortest).height_mm, at(longest).height_mm];
        let pose = at((shortest * longest).sqrt());
        CardView { map: self.map, nudged: self.nudged, pose, heights_mm }
    }
}
