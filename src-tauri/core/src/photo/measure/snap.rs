//! Draws a tapped point to the edge beside it.
//!
//! A finger misses by some pixels, a blade is some 70 wide: tapped alone, its width is known to 4 %.
//! The edge itself is there in the picture to less than a pixel.

use super::error::MeasureError;
use super::homography::Point;
use super::length::{Spot, TAP_PX};

/// How far an edge is looked for on either side of a tap, px: three sigmas of the tap.
const REACH_PX: f64 = 3.0 * TAP_PX;

/// Distance of the places that are looked at along the line, px.
const STEP_PX: f64 = 0.25;

/// Lines beside the one through both taps that are averaged, on each side, 1 px from each other: grain
/// averages out, and a blade is thicker than that. Our estimate.
const BESIDE: i32 = 3;

/// The shortest line whose ends are drawn to edges, px: the blade of a shorter one is thinner than the
/// lines that are averaged, and the edges of one end come in reach of the other. Our estimate.
const SHORTEST_PX: f64 = 5.0 * REACH_PX;

/// How a slope is measured: differences across these distances to either side, px, with their weights.
/// The derivative of a bell curve of sigma 1 px, for a slope of 1 to give 1.
const SLOPE: [(f64, f64); 4] = [(0.5, 0.1051), (1.0, 0.1445), (1.5, 0.1160), (2.0, 0.0645)];

/// The least slope that is taken for an edge and not for grain, levels per px. Our estimate.
const LEAST_SLOPE: f64 = 2.5;

/// How far an edge that was found may be off, px, one sigma, if it is the one that was meant. Our
/// estimate, so that drawn photos (`tests/checks/measure.rs`) bear out the sigmas that are stated.
const EDGE_PX: f64 = 0.6;

/// How likely it is that the edge that was meant is too faint to be found, as the slope that an edge
/// right at the tap would need to be as likely, levels per px. Our estimate, as for [`EDGE_PX`].
const UNSEEN_SLOPE: f64 = 0.5;

/// The grey levels of a part of a photo.
#[derive(Clone, Copy, Debug)]
pub struct Grey<'a> {
    from: [u32; 2],
    width: u32,
    pixels: &'a [u8],
}

impl<'a> Grey<'a> {
    /// The part that begins `from` this pixel of the photo and has rows of `width` pixels.
    ///
    /// # Errors
    /// The pixels are not whole rows.
    pub fn new(from: [u32; 2], width: u32, pixels: &'a [u8]) -> Result<Self, MeasureError> {
        let rows = usize::try_from(width).ok().filter(|width| *width > 0);
        let whole = rows.is_some_and(|width| pixels.len().is_multiple_of(width));
        if whole { Ok(Self { from, width, pixels }) } else { Err(MeasureError::Grey) }
    }

    fn pixel(&self, x: f64, y: f64) -> Option<f64> {
        if !(0.0..f64::from(self.width)).contains(&x) || y < 0.0 {
            return None;
        }
        // Both are whole, not negative and below 2^32: the conversion loses nothing.
        let place = (y as usize).checked_mul(self.width as usize)?.checked_add(x as usize)?;
        self.pixels.get(place).map(|level| f64::from(*level))
    }

    /// The level at a place of the photo, between the four pixels around it.
    fn level(&self, at: Point) -> Option<f64> {
        let [left, top] = self.from.map(f64::from);
        let (x, y) = (at.x - left - 0.5, at.y - top - 0.5);
        let (x0, y0) = (x.floor(), y.floor());
        let (right, low) = (x - x0, y - y0);
        let row =
            |y: f64| Some(self.pixel(x0, y)? * (1.0 - right) + self.pixel(x0 + 1.0, y)? * right);
        Some(row(y0)? * (1.0 - low) + row(y0 + 1.0)? * low)
    }
}

/// Draws the two ends of a line to the edges beside them, along the line. An end without an edge in
/// reach stays as it was tapped, and so do both ends of a short line.
///
/// Several edges may be in reach, such as those of a blade's tip and of its foot: the steepest and
/// nearest is taken, and the others, and the chance that the right one is too faint to be found, count
/// in its sigma.
pub fn snap(grey: &Grey<'_>, ends: [Point; 2]) -> [Spot; 2] {
    let [from, to] = ends;
    let line = to.minus(from);
    let long = line.long();
    // A number that is none is no line either.
    if long.is_nan() || long < SHORTEST_PX {
        return ends.map(Spot::tapped);
    }
    let along = line.times(1.0 / long);
    ends.map(|end| drawn(grey, end, along).unwrap_or(Spot::tapped(end)))
}

/// An edge that a line crosses.
struct Edge {
    /// Where, from the tap, px.
    place: f64,
    /// How likely it is the one that was meant: how steep it is, times how likely a finger misses by
    /// as much.
    weight: f64,
}

fn drawn(grey: &Grey<'_>, tap: Point, along: Point) -> Option<Spot> {
    let edges = edges(&slopes(grey, tap, along)?);
    let best = edges.iter().max_by(|a, b| a.weight.total_cmp(&b.weight))?;
    if best.weight < UNSEEN_SLOPE {
        return None;
    }
    let others = edges.iter().map(|edge| edge.weight * (edge.place - best.place).powi(2));
    let unseen = UNSEEN_SLOPE * (best.place * best.place + TAP_PX * TAP_PX);
    let whole = UNSEEN_SLOPE + edges.iter().map(|edge| edge.weight).sum::<f64>();
    let spread = (unseen + others.sum::<f64>()) / whole;
    let sigma_px = (EDGE_PX * EDGE_PX + spread).sqrt();
    Some(Spot { at: tap.plus(along.times(best.place)), sigma_px })
}

/// Places along the line, from the tap, px, and how steep the picture is there, levels per px.
fn slopes(grey: &Grey<'_>, tap: Point, along: Point) -> Option<Vec<(f64, f64)>> {
    let aside = Point::new(-along.y, along.x);
    let mean = |place: f64| {
        let lines = (-BESIDE..=BESIDE).map(|line| {
            grey.level(tap.plus(along.times(place)).plus(aside.times(f64::from(line))))
        });
        Some(lines.sum::<Option<f64>>()? / f64::from(2 * BESIDE + 1))
    };
    let steps = (REACH_PX / STEP_PX) as i32;
    let places = (-steps..=steps).map(|step| f64::from(step) * STEP_PX);
    let slope = |place: f64| {
        let apart = |by: f64| Some(mean(place + by)? - mean(place - by)?);
        let slopes = SLOPE.iter().map(|(by, weight)| Some(weight * apart(*by)?));
        Some((place, slopes.sum::<Option<f64>>()?.abs()))
    };
    places.map(slope).collect()
}

/// The places where the picture is steeper than on either side.
fn edges(slopes: &[(f64, f64)]) -> Vec<Edge> {
    let peak = |three: &[(f64, f64)]| {
        let [(_, before), (place, slope), (_, after)] = three else { return None };
        if *slope < LEAST_SLOPE || slope < before || slope <= after {
            return None;
        }
        // The top of the parabola through the three.
        let bend = before - 2.0 * slope + after;
        let place = place + STEP_PX * (before - after) / (2.0 * bend);
        let missed = place / TAP_PX;
        Some(Edge { place, weight: slope * (-missed * missed / 2.0).exp() })
    };
    slopes.windows(3).filter_map(peak).collect()
}
