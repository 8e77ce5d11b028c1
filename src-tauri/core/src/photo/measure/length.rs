//! Millimetres between two points of a photo, and how far they may be off.

use super::card::{CARD_PART, CardView};
use super::error::MeasureError;
use super::homography::{Homography, Point};

/// How far a tap misses along each axis, px, one sigma: a finger that drags a point under a loupe. Our
/// estimate.
pub const TAP_PX: f64 = 2.0;

/// Sigmas on either side that hold 95 % of the chances.
pub(super) const SIGMAS: f64 = 2.0;

/// A point of a photo and how well it is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// Where it is, px.
    pub at: Point,
    /// How far it may be off along each axis, px, one sigma.
    pub sigma_px: f64,
}

impl Spot {
    /// A point as a finger left it.
    pub const fn tapped(at: Point) -> Self {
        Self { at, sigma_px: TAP_PX }
    }
}

/// Where what is measured lies above the card's plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Above {
    /// The least height, mm.
    pub least_mm: f64,
    /// The greatest height, mm.
    pub most_mm: f64,
    /// How far it may lean out of being level with the card, degrees.
    pub lean_deg: f64,
}

impl Above {
    /// In the plane of the card: printed on it, or flat beside it.
    pub const ON_CARD: Self = Self { least_mm: 0.0, most_mm: 0.0, lean_deg: 0.0 };

    /// The tips of a plug's blades beside a card that lies on something as high as a book, stood up by
    /// eye. Our estimate.
    pub const BLADES: Self = Self { least_mm: 5.0, most_mm: 15.0, lean_deg: 5.0 };

    fn is_below(&self, height_mm: f64) -> bool {
        let ordered = 0.0 <= self.least_mm && self.least_mm <= self.most_mm;
        // Above half the camera's height the correction is as large as what it corrects.
        ordered && self.most_mm < height_mm / 2.0 && (0.0..=45.0).contains(&self.lean_deg)
    }
}

/// A length with its bound.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Length {
    /// The length, mm.
    pub millimetres: f64,
    /// How far it may be off, mm: 95 of 100 lengths are closer, at any height that was allowed for.
    pub bound_mm: f64,
}

impl Length {
    /// Whether a length between two, mm, is within the bound.
    pub fn may_be_within(&self, least_mm: f64, most_mm: f64) -> bool {
        self.millimetres + self.bound_mm >= least_mm && self.millimetres - self.bound_mm <= most_mm
    }
}

impl CardView {
    /// The length between two points. Its bound counts the taps on the corners and on the ends, the
    /// height above the card, the camera's distance, the leaning, and the card's own tolerance.
    ///
    /// What is higher than the card is nearer to the camera and seems larger by the part that its
    /// height is of the camera's; the length is corrected for the middle of the heights.
    ///
    /// # Errors
    /// An end is not in the plane, both are one point, or the heights do not make sense.
    pub fn length(&self, ends: [Spot; 2], above: Above) -> Result<Length, MeasureError> {
        let [lowest, highest] = self.heights_mm;
        if !above.is_below(lowest) {
            return Err(MeasureError::Height);
        }
        let flat = self.flat(ends)?;
        let sigma =
            self.sigma(ends, |map, [p, q]| Some(map.plane(q)?.minus(map.plane(p)?).long()))?;
        let shown = [1.0 - above.most_mm / lowest, 1.0 - above.least_mm / highest];
        let part = (shown[0] + shown[1]) / 2.0;
        let height_part = (shown[1] - shown[0]) / 2.0;
        let lean_part = above.lean_deg.to_radians() / SIGMAS * self.slope(&flat).abs();
        let by_chance = (part * sigma).hypot(part * flat.millimetres * lean_part);
        let by_level = 1.0 - above.lean_deg.to_radians().cos();
        Ok(Length {
            millimetres: part * flat.millimetres,
            bound_mm: SIGMAS * by_chance
                + flat.millimetres * (height_part + part * (CARD_PART + by_level)),
        })
    }

    /// The two points as if they lay in the plane of the card.
    pub(super) fn flat(&self, [from, to]: [Spot; 2]) -> Result<Flat, MeasureError> {
        let ends = [self.plane(from)?, self.plane(to)?];
        let across = ends[1].minus(ends[0]);
        let millimetres = across.long();
        // An end may be off by its sigma; a direction needs more than that.
        if from.at.minus(to.at).long() < 2.0 * from.sigma_px.hypot(to.sigma_px) {
            return Err(MeasureError::EndsTooClose);
        }
        Ok(Flat {
            middle: ends[0].plus(ends[1]).times(0.5),
            along: across.times(1.0 / millimetres),
            millimetres,
        })
    }

    fn plane(&self, spot: Spot) -> Result<Point, MeasureError> {
        let known = spot.at.is_finite() && spot.sigma_px.is_finite() && spot.sigma_px > 0.0;
        let plane = known.then(|| self.map.plane(spot.at)).flatten();
        plane.ok_or(MeasureError::EndOutside)
    }

    /// How much further along a line something seems to reach for each millimetre that it is higher.
    pub(super) fn slope(&self, flat: &Flat) -> f64 {
        let away = flat.middle.minus(self.pose.foot).times(1.0 / self.pose.height_mm);
        away.dot(flat.along)
    }

    /// One sigma of a figure, from the taps on the corners and the spots it is worked out from.
    ///
    /// Each tap is moved by its sigma to either side; what the figure then moves by adds up in squares.
    pub(super) fn sigma<const N: usize>(
        &self,
        spots: [Spot; N],
        figure: impl Fn(&Homography, [Point; N]) -> Option<f64>,
    ) -> Result<f64, MeasureError> {
        let places = spots.map(|spot| spot.at);
        let effect = |low: Option<f64>, high: Option<f64>| Some((high? - low?) / 2.0);
        let corners =
            self.nudged.iter().map(|[low, high]| effect(figure(low, places), figure(high, places)));
        let moved = |which: usize, by: Point| {
            let mut places = places;
            places.iter_mut().skip(which).take(1).for_each(|place| *place = place.plus(by));
            figure(&self.map, places)
        };
        let axes = [Point::new(1.0, 0.0), Point::new(0.0, 1.0)];
        let ends = spots.iter().enumerate().flat_map(|(which, spot)| {
            axes.map(|axis| {
                let by = axis.times(spot.sigma_px);
                effect(moved(which, by.times(-1.0)), moved(which, by))
            })
        });
        let squares: Option<f64> =
            corners.chain(ends).map(|effect| effect.map(|effect| effect * effect)).sum();
        squares.map(f64::sqrt).ok_or(MeasureError::EndOutside)
    }
}

/// Two points as if they lay in the plane of the card.
pub(super) struct Flat {
    /// Halfway between them, mm.
    pub(super) middle: Point,
    /// From the first to the second, of length 1.
    pub(super) along: Point,
    /// How far they are apart.
    pub(super) millimetres: f64,
}
