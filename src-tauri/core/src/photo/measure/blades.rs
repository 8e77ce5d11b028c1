//! Equal or polarised: what the widths of a plug's two blades say.
//!
//! The ratio decides: both blades are as high above the card, so that the height, the camera's
//! distance and the card itself fall out of it. Millimetres only tell whether these are such blades
//! at all.

use super::card::CardView;
use super::error::MeasureError;
use super::length::{Above, Flat, Length, SIGMAS, Spot, TAP_PX};

/// Widths of the narrow blade, mm: 6.35 ± 0.25. NEMA WD 6 (`data/plugs.csv`): the greatest verified,
/// nominal width and tolerance from memory, high.
const NARROW_MM: [f64; 2] = [6.10, 6.60];

/// Widths of the wide blade of a polarised plug, mm: 7.92 ± 0.25. NEMA WD 6 (`data/plugs.csv`): the
/// greatest verified, nominal width and tolerance from memory, high.
const WIDE_MM: [f64; 2] = [7.67, 8.17];

/// From blade to blade, mm. NEMA WD 6 (`data/plugs.csv`), from memory, high.
const APART_MM: f64 = 12.70;

/// How far blades may be bent together or apart, mm. Our estimate.
const BENT_MM: f64 = 1.0;

/// The most by which two blades may point in different ways and still count as parallel, degrees:
/// four sigmas of the taps on blades 70 px wide; those that are meant to be slanted differ by 60. Our
/// estimate.
const PARALLEL_DEG: f64 = 15.0;

/// How much more likely one kind has to be than the other, as a logarithm: 20 to 1. Our choice.
const CLEARLY: f64 = 3.0;

/// What two blades are, or that it cannot be told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Says {
    /// Both have one width: the plug goes in both ways round.
    Equal,
    /// One is wider.
    Polarised {
        /// Which: 0 for the first, 1 for the second.
        wider: usize,
    },
    /// It cannot be told.
    CannotTell(Why),
}

/// Why it cannot be told what blades are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// The widths are known too roughly: nearer, sharper or straighter on it could be told.
    TooRough,
    /// The ratio is that of neither.
    NeitherRatio,
    /// The widths in millimetres are not those of such blades.
    OtherWidths,
    /// The blades are not parallel, or not as far apart as such blades are.
    OtherPlaces,
}

/// What was read of two blades. It is offered as an answer and never set by itself.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BladeReading {
    /// The greater width over the smaller.
    pub ratio: f64,
    /// How far the ratio may be off: 95 of 100 are closer.
    pub ratio_bound: f64,
    /// The widths, in the order of the blades.
    pub widths: [Length; 2],
    /// From the middle of one blade to that of the other.
    pub apart: Length,
    /// What the blades are.
    pub says: Says,
}

/// Reads two blades, each from the two ends of its width.
///
/// # Errors
/// An end is not in the plane of the card, ends are too close together, or the heights do not make
/// sense.
pub fn read_blades(
    card: &CardView,
    blades: [[Spot; 2]; 2],
    above: Above,
) -> Result<BladeReading, MeasureError> {
    let [first, second] = blades;
    let widths = [card.length(first, above)?, card.length(second, above)?];
    let flats = [card.flat(first)?, card.flat(second)?];
    let apart = card.length([middle(first), middle(second)], above)?;
    let log = (flats[0].millimetres / flats[1].millimetres).ln();
    let sigma = log_sigma(card, blades, &flats, above)?;
    let says = match by_ratio(log, sigma) {
        Says::CannotTell(why) => Says::CannotTell(why),
        _ if !are_beside(&flats, apart) => Says::CannotTell(Why::OtherPlaces),
        says if !have_widths(says, &widths) => Says::CannotTell(Why::OtherWidths),
        says => says,
    };
    let ratio = log.abs().exp();
    let ratio_bound = ratio * (SIGMAS * sigma).exp_m1();
    Ok(BladeReading { ratio, ratio_bound, widths, apart, says })
}

/// The middle of a blade's width. Along the edges that bound the width a finger misses as ever,
/// however well the edges were found.
fn middle([from, to]: [Spot; 2]) -> Spot {
    Spot { at: from.at.plus(to.at).times(0.5), sigma_px: TAP_PX / 2.0_f64.sqrt() }
}

/// One sigma of the logarithm of the ratio.
fn log_sigma(
    card: &CardView,
    [[a, b], [c, d]]: [[Spot; 2]; 2],
    [first, second]: &[Flat; 2],
    above: Above,
) -> Result<f64, MeasureError> {
    let by_taps = card.sigma([a, b, c, d], |map, [a, b, c, d]| {
        let width = |from, to| Some(map.plane(to)?.minus(map.plane(from)?).long());
        Some((width(a, b)? / width(c, d)?).ln())
    })?;
    // A plug that leans has one blade higher, and the camera sees the two from different sides.
    let lean = above.lean_deg.to_radians() / SIGMAS;
    let between = second.middle.minus(first.middle).long() / card.pose.height_mm;
    let same_way = first.along.dot(second.along).signum();
    let sides = card.slope(first) - same_way * card.slope(second);
    Ok((by_taps * by_taps + (lean * between).powi(2) + (lean * sides).powi(2)).sqrt())
}

/// What the ratio says by itself, from its logarithm and one sigma of that: the kind that it may be
/// of, if it is that much more likely than the other.
fn by_ratio(log: f64, sigma: f64) -> Says {
    let seen = log.abs();
    let equal = Kind::of(NARROW_MM, NARROW_MM);
    let polarised = Kind::of(WIDE_MM, NARROW_MM);
    let for_equal = equal.likelihood(seen, sigma) - polarised.likelihood(seen, sigma);
    let [equal, polarised] = [equal, polarised].map(|kind| kind.reaches(seen, SIGMAS * sigma));
    if equal && for_equal >= CLEARLY {
        Says::Equal
    } else if polarised && for_equal <= -CLEARLY {
        Says::Polarised { wider: usize::from(log < 0.0) }
    } else if equal || polarised {
        Says::CannotTell(Why::TooRough)
    } else {
        Says::CannotTell(Why::NeitherRatio)
    }
}

/// The logarithms of the ratios of a kind of plug.
#[derive(Clone, Copy)]
struct Kind {
    middle: f64,
    /// One sigma of plugs of this kind: that of two widths anywhere within their tolerance.
    sigma: f64,
    least: f64,
    most: f64,
}

impl Kind {
    fn of([wide, wide_most]: [f64; 2], [narrow, narrow_most]: [f64; 2]) -> Self {
        let (greater, smaller) = (wide + wide_most, narrow + narrow_most);
        let parts = ((wide_most - wide) / greater).hypot((narrow_most - narrow) / smaller);
        Self {
            middle: (greater / smaller).ln(),
            sigma: parts / 3.0_f64.sqrt(),
            least: (wide / narrow_most).ln(),
            most: (wide_most / narrow).ln(),
        }
    }

    /// The logarithm of how likely it is that such a plug is seen like this.
    fn likelihood(self, seen: f64, sigma: f64) -> f64 {
        let all = self.sigma.hypot(sigma);
        -((seen - self.middle) / all).powi(2) / 2.0 - all.ln()
    }

    /// Whether a plug within the tolerances could be seen like this.
    fn reaches(self, seen: f64, bound: f64) -> bool {
        self.least - bound <= seen && seen <= self.most + bound
    }
}

fn have_widths(says: Says, widths: &[Length; 2]) -> bool {
    let wider = match says {
        Says::Polarised { wider } => Some(wider),
        _ => None,
    };
    widths.iter().enumerate().all(|(which, width)| {
        let [least, most] = if wider == Some(which) { WIDE_MM } else { NARROW_MM };
        width.may_be_within(least, most)
    })
}

fn are_beside([first, second]: &[Flat; 2], apart: Length) -> bool {
    let turned = first.along.cross(second.along).abs().min(1.0).asin().to_degrees();
    turned <= PARALLEL_DEG && apart.may_be_within(APART_MM - BENT_MM, APART_MM + BENT_MM)
}
