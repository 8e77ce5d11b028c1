//! Plugs that stand with their pins up: flat blades as NEMA WD 6 has them, and some that are not.

use std::f64::consts::TAU;

use rand::Rng;
use rand_chacha::ChaCha8Rng;

use super::space::{Vector, cross, minus, plus, times, turned};

/// Width of a blade and of the wider one of a polarised plug, mm; each may differ by [`TOLERANCE`].
/// NEMA WD 6, nominal, from memory, high.
const NARROW: f64 = 6.35;
const WIDE: f64 = 7.92;
/// 0.010 in, mm. NEMA WD 6, from memory, high.
const TOLERANCE: f64 = 0.25;
/// From blade to blade, mm. NEMA WD 6, from memory, high.
const APART: f64 = 12.70;
/// Thickness of a blade, mm: up to 0.060 in. NEMA WD 6, maximum verified; the minimum an estimate.
const THICKNESS: [f64; 2] = [1.40, 1.52];
/// Length of a blade, mm. NEMA WD 6, from memory, medium.
const LENGTH: [f64; 2] = [15.9, 18.3];
/// Height of the tips above the card, mm: what the targets ask for.
const HEIGHT: [f64; 2] = [5.0, 15.0];
/// The most a plug leans, degrees: who stands it up by eye does no better. Our estimate.
const LEAN: f64 = 5.0;
/// Corners of a round pin as it is drawn.
const ROUND: u32 = 32;

/// What a lot of plugs is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Kind {
    /// Two flat blades: of one width, or one wider, one time in two.
    EitherBlades,
    /// Two round pins: their diameter and how far apart they are, mm.
    Round { diameter: f64, apart: f64 },
    /// Two flat blades of one width, but this far apart, mm.
    Apart(f64),
    /// Two flat blades, each turned by this much against the other's direction, degrees.
    Slanted(f64),
}

/// What can be said of a plug.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Answer {
    /// Both blades have one width.
    Equal,
    /// One is wider: the first or the second.
    Polarised(usize),
    /// It cannot be told.
    Open,
}

/// A pin from its tip down.
pub struct Pin {
    /// The corners of its tip, in order.
    pub tip: Vec<Vector>,
    /// The corners of its foot, in the same order.
    pub foot: Vec<Vector>,
    /// The middles of the two edges between which its width is measured, at the tip.
    pub ends: [Vector; 2],
    /// Its width, mm.
    pub width: f64,
}

/// A plug with its two pins.
pub struct Plug {
    /// Halfway between the tips.
    pub middle: Vector,
    /// The pins.
    pub pins: [Pin; 2],
    /// The corners of the face that the pins come out of.
    pub face: Vec<Vector>,
    /// From the first pin to the second, a unit vector.
    pub apart: Vector,
    /// What the plug is: `Open` when it has none of the blades that are asked for.
    pub answer: Answer,
}

impl Plug {
    /// A plug of a kind that stands at this place, its tips above the card's plane.
    pub fn drawn(kind: Kind, at: [f64; 2], lot: &mut ChaCha8Rng) -> Self {
        let middle = [at[0], at[1], lot.random_range(HEIGHT[0]..HEIGHT[1])];
        let yaw = lot.random_range(0.0..TAU);
        let about = lot.random_range(0.0..TAU);
        let lean = lot.random_range(0.0..LEAN).to_radians();
        let leaned = |v: Vector| turned(v, [about.cos(), about.sin(), 0.0], lean);
        let along = leaned([yaw.cos(), yaw.sin(), 0.0]);
        let up = leaned([0.0, 0.0, 1.0]);
        let apart = cross(up, along);
        let length = lot.random_range(LENGTH[0]..LENGTH[1]);
        let polarised = kind == Kind::EitherBlades && lot.random_bool(0.5);
        let wider = if lot.random_bool(0.5) { 0 } else { 1 };
        let distance = match kind {
            Kind::Round { apart, .. } | Kind::Apart(apart) => apart,
            Kind::EitherBlades | Kind::Slanted(_) => APART,
        };
        let pins = [0, 1].map(|which| {
            let side = if which == 0 { -0.5 } else { 0.5 };
            let centre = plus(middle, times(apart, side * distance));
            let off = lot.random_range(-TOLERANCE..TOLERANCE);
            let width = off + if polarised && which == wider { WIDE } else { NARROW };
            match kind {
                Kind::Round { diameter, .. } => round(centre, diameter, [along, apart, up], length),
                Kind::Slanted(angle) => {
                    let along = turned(along, up, side.signum() * angle.to_radians());
                    flat(centre, width, [along, cross(up, along), up], length, lot)
                }
                _ => flat(centre, width, [along, apart, up], length, lot),
            }
        });
        let foot = plus(middle, times(up, -length));
        let face = [[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]].map(|[a, b]| {
            plus(foot, plus(times(along, 11.0 * a), times(apart, (distance / 2.0 + 7.0) * b)))
        });
        let answer = match (kind, polarised) {
            (Kind::EitherBlades, true) => Answer::Polarised(wider),
            (Kind::EitherBlades, false) => Answer::Equal,
            _ => Answer::Open,
        };
        Self { middle, pins, face: face.to_vec(), apart, answer }
    }
}

fn flat(
    centre: Vector,
    width: f64,
    [along, apart, up]: [Vector; 3],
    length: f64,
    lot: &mut ChaCha8Rng,
) -> Pin {
    let thickness = lot.random_range(THICKNESS[0]..THICKNESS[1]);
    let (long, thick) = (times(along, width / 2.0), times(apart, thickness / 2.0));
    let left = minus(centre, long);
    let right = plus(centre, long);
    let tip = vec![minus(left, thick), minus(right, thick), plus(right, thick), plus(left, thick)];
    Pin { foot: lowered(&tip, up, length), tip, ends: [left, right], width }
}

fn round(centre: Vector, width: f64, [along, apart, up]: [Vector; 3], length: f64) -> Pin {
    let at = |angle: f64| {
        let [x, y] = [angle.cos(), angle.sin()].map(|part| part * width / 2.0);
        plus(centre, plus(times(along, x), times(apart, y)))
    };
    let tip: Vec<Vector> =
        (0..ROUND).map(|corner| at(TAU * f64::from(corner) / f64::from(ROUND))).collect();
    let ends = [at(TAU / 2.0), at(0.0)];
    Pin { foot: lowered(&tip, up, length), tip, ends, width }
}

fn lowered(tip: &[Vector], up: Vector, length: f64) -> Vec<Vector> {
    tip.iter().map(|corner| minus(*corner, times(up, length))).collect()
}
