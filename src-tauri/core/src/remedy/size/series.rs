//! Preferred values: the next above, the next below, the nearest.

use super::tables::preferred;
use crate::fields::id_enum;

id_enum! {
    /// A series of preferred values.
    pub enum Series {
        /// Six for each decade, 20 %.
        E6 = "e6",
        /// Twelve for each decade, 10 %.
        E12 = "e12",
        /// Twenty-four for each decade, 5 %.
        E24 = "e24",
        /// Fuses of IEC 60127, A.
        FuseIec = "fuse_iec",
        /// Fuses of UL 248-14, A.
        FuseUl = "fuse_ul",
        /// Isolating transformers, VA.
        Transformer = "transformer",
        /// Wire-wound resistors, W.
        Dropper = "dropper",
    }
}

/// Values that differ by less than this share are the same: a sum of decimals is never exact.
const SAME: f64 = 1e-9;

impl Series {
    /// Whether it goes on in every decade.
    const fn repeats(self) -> bool {
        matches!(self, Self::E6 | Self::E12 | Self::E24)
    }

    /// Its values around a number, from the smallest.
    fn around(self, number: f64) -> Vec<f64> {
        let row = preferred().iter().find(|row| row.series == self.id());
        let values = row.map(|row| row.values()).unwrap_or_default();
        if !self.repeats() || number <= 0.0 || !number.is_finite() {
            return values;
        }
        let decade = number.log10().floor() as i32;
        let in_decade = |decade: i32| {
            let power = 10f64.powi(decade);
            values.iter().map(move |value| value * power).collect::<Vec<_>>()
        };
        (decade - 1..=decade + 1).flat_map(in_decade).collect()
    }
}

/// The smallest value that is not below a number; nothing beyond the end of a series that has one.
pub fn above(series: Series, number: f64) -> Option<f64> {
    series.around(number).into_iter().find(|value| *value >= number * (1.0 - SAME))
}

/// The largest value that is not above a number.
pub fn below(series: Series, number: f64) -> Option<f64> {
    series.around(number).into_iter().rev().find(|value| *value <= number * (1.0 + SAME))
}

/// The value that is the nearest by ratio.
pub fn nearest(series: Series, number: f64) -> Option<f64> {
    let off = |value: &f64| (value / number).ln().abs();
    series.around(number).into_iter().min_by(|one, other| off(one).total_cmp(&off(other)))
}

#[cfg(test)]
mod tests {
    use super::{Series, above, below, nearest};

    #[test]
    fn a_decade_ends_where_the_next_begins() {
        assert_eq!(above(Series::E6, 6.9), Some(10.0));
        assert_eq!(below(Series::E6, 0.99), Some(0.68));
        assert_eq!(nearest(Series::E12, 97.0), Some(100.0));
        assert_eq!(above(Series::FuseIec, 0.25), Some(0.25));
        assert_eq!(above(Series::FuseIec, 11.0), None);
        assert_eq!(below(Series::FuseIec, 0.01), None);
    }
}
