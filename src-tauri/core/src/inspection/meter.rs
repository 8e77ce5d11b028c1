//! How far a meter's figure may be from the resistance it was held to.

use super::findings::{Meter, Reading};
use crate::arrangement::Spread;

impl Meter {
    /// What the last place of the display stands for at a reading, Ω: a 2000-count meter on its smallest
    /// range that shows it, from 200 Ω up (the coarsest in common use, so no finer one is doubted). Near the
    /// end of a range an automatic one may already stand on the next.
    fn digit(ohms: f64) -> f64 {
        let mut range = 200.0;
        while range * 0.9 < ohms && range < 1e12 {
            range *= 10.0;
        }
        range / 2000.0
    }

    /// The resistances that a reading may stand for, Ω; above range has no upper end.
    pub fn interval(&self, reading: Reading) -> Spread {
        let share = self.percent / 100.0;
        match reading {
            Reading::OverRange => {
                Spread { low: self.max_ohms * (1.0 - share), high: f64::INFINITY }
            }
            Reading::Value(ohms) => {
                let off = ohms * share + self.digits * Self::digit(ohms);
                Spread { low: (ohms - off).max(0.0), high: ohms + off }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::findings::{Meter, Reading};

    #[test]
    fn a_reading_is_off_by_its_share_and_by_digits_of_its_range() {
        let meter = Meter::default();
        let interval = meter.interval(Reading::Value(0.4));
        assert!((interval.low - 0.196).abs() < 1e-12 && (interval.high - 0.604).abs() < 1e-12);
        // 220 kΩ on a 2 MΩ range: the last place is 1 kΩ.
        let interval = meter.interval(Reading::Value(220e3));
        assert!((interval.low - 215.8e3).abs() < 1e-6 && (interval.high - 224.2e3).abs() < 1e-6);
        let open = meter.interval(Reading::OverRange);
        assert!((open.low - 1.98e6).abs() < 1e-6 && open.high.is_infinite());
        assert_eq!(meter.interval(Reading::Value(0.1)).low, 0.0);
    }
}
