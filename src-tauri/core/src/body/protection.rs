//! How soon a protective device cuts a touch current off.

use crate::figure::{Figure, Mark, Source};

/// A class A GFCI never trips below this, mA.
pub const GFCI_NEVER_TRIPS_MA: Figure = Figure::new(4.0, "mA", Source::Ul943, Mark::Verified);

/// A class A GFCI must trip from this on, mA.
pub const GFCI_MUST_TRIP_MA: Figure = Figure::new(6.0, "mA", Source::Ul943, Mark::Verified);

/// The formula's last current, mA; beyond it the time at this current is kept.
const GFCI_LAST_MA: f64 = 264.0;

/// The longest a class A GFCI may take, in s: (20 / I)^1.43, I in mA from 6 to 264.
///
/// Nothing below 6 mA, where it need not trip. A touch between hot and neutral is not seen by it.
/// Source: UL 943 as quoted by makers of such devices (verified).
pub fn gfci_trip_s(current_ma: f64) -> Option<f64> {
    (current_ma >= GFCI_MUST_TRIP_MA.value)
        .then(|| (20.0 / current_ma.min(GFCI_LAST_MA)).powf(1.43))
}

/// The corners of those longest times, straight in logarithms between: current in mA and time in s, for
/// currents up to `most_ma` and times up to `longest_s`. It starts with the current below which nothing
/// has to trip.
pub fn gfci_curve(most_ma: f64, longest_s: f64) -> Vec<(f64, f64)> {
    let must = GFCI_MUST_TRIP_MA.value;
    let corners = [must, GFCI_LAST_MA, most_ma.max(GFCI_LAST_MA)];
    let tripping = corners.into_iter().filter_map(|ma| gfci_trip_s(ma).map(|s| (ma, s)));
    std::iter::once((must, longest_s)).chain(tripping).collect()
}

/// The rated current of an RCD that is there for people, mA: the largest that counts as one.
pub const RCD_USUAL_MA: Figure = Figure::new(30.0, "mA", Source::Iec61008, Mark::Verified);

/// The delay of a residual-current device.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RcdType {
    /// General type, no delay.
    General,
    /// Selective type S, delayed on purpose.
    Selective,
}

/// The longest an RCD may take, in s, at a multiple of its rated residual current.
///
/// Nothing below its rated current, where it need not trip. IEC 61008-1 and 61009-1: general type
/// 0.3 s at 1 ×, 0.15 s at 2 ×, 0.04 s from 5 ×; type S 0.5, 0.2, 0.15 s (0.3 and 0.04 s, 0.5 and
/// 0.15 s verified, the value at 2 × from memory).
pub fn rcd_trip_s(current_ma: f64, rated_ma: f64, kind: RcdType) -> Option<f64> {
    let multiple = current_ma / rated_ma;
    let reached = rcd_steps(kind).into_iter().rev().find(|(least, _)| multiple >= *least);
    reached.map(|(_, seconds)| seconds)
}

/// From which multiple of the rated current on an RCD takes how many s at the longest.
const fn rcd_steps(kind: RcdType) -> [(f64, f64); 3] {
    match kind {
        RcdType::General => [(1.0, 0.3), (2.0, 0.15), (5.0, 0.04)],
        RcdType::Selective => [(1.0, 0.5), (2.0, 0.2), (5.0, 0.15)],
    }
}

/// The corners of those longest times, in steps: current in mA and time in s, for currents up to
/// `most_ma` and times up to `longest_s`. It starts with the current below which nothing has to trip.
pub fn rcd_curve(rated_ma: f64, kind: RcdType, most_ma: f64, longest_s: f64) -> Vec<(f64, f64)> {
    let mut corners = Vec::new();
    let mut before = longest_s;
    for (multiple, seconds) in rcd_steps(kind) {
        corners.extend([(multiple * rated_ma, before), (multiple * rated_ma, seconds)]);
        before = seconds;
    }
    corners.push((most_ma, before));
    corners
}

#[cfg(test)]
mod tests {
    use super::{RcdType, gfci_curve, gfci_trip_s, rcd_curve, rcd_trip_s};

    #[test]
    fn no_device_is_sure_to_see_what_it_need_not_see() {
        assert_eq!(gfci_trip_s(5.9), None);
        assert_eq!(rcd_trip_s(29.9, 30.0, RcdType::General), None);
    }

    #[test]
    fn beyond_the_formula_the_time_is_not_made_shorter() {
        assert_eq!(gfci_trip_s(1000.0), gfci_trip_s(264.0));
    }

    #[test]
    fn curves_pass_through_the_times_that_they_are_of() {
        let general = RcdType::General;
        let curves = [gfci_curve(2000.0, 10.0), rcd_curve(30.0, general, 2000.0, 10.0)];
        let trips: [&dyn Fn(f64) -> Option<f64>; 2] =
            [&gfci_trip_s, &|ma| rcd_trip_s(ma, 30.0, general)];
        for (curve, trip) in curves.iter().zip(trips) {
            let (first_ma, first_s) = curve[0];
            assert_eq!((trip(first_ma * 0.999), first_s), (None, 10.0));
            // Where two corners have one current, the second is what it takes from there on.
            for pair in curve.windows(2).filter(|pair| pair[0].0 < pair[1].0) {
                assert_eq!(trip(pair[0].0), Some(pair[0].1));
                let middle = (pair[0].0 * pair[1].0).sqrt();
                let seconds = (pair[0].1 * pair[1].1).sqrt();
                assert!((trip(middle).unwrap() / seconds - 1.0).abs() < 1e-9, "{middle}");
            }
            assert_eq!(curve[curve.len() - 1].0, 2000.0);
        }
    }
}
