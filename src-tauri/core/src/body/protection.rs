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
    let steps: [(f64, f64); 3] = match kind {
        RcdType::General => [(5.0, 0.04), (2.0, 0.15), (1.0, 0.3)],
        RcdType::Selective => [(5.0, 0.15), (2.0, 0.2), (1.0, 0.5)],
    };
    steps.into_iter().find(|(least, _)| multiple >= *least).map(|(_, seconds)| seconds)
}

#[cfg(test)]
mod tests {
    use super::{RcdType, gfci_trip_s, rcd_trip_s};

    #[test]
    fn no_device_is_sure_to_see_what_it_need_not_see() {
        assert_eq!(gfci_trip_s(5.9), None);
        assert_eq!(rcd_trip_s(29.9, 30.0, RcdType::General), None);
    }

    #[test]
    fn beyond_the_formula_the_time_is_not_made_shorter() {
        assert_eq!(gfci_trip_s(1000.0), gfci_trip_s(264.0));
    }
}
