//! The meter itself.

use rand::Rng;
use serde_json::{Value, json};

use super::super::chance::any;

/// The last place of the lowest range, Ω: a 2000-count meter starts at 200 Ω, a 6000-count one at 600 Ω.
const LAST_PLACE_OHM: f64 = 0.1;

/// A digital ohmmeter that finds its range by itself.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Meter {
    /// The highest resistance that it shows, Ω.
    pub max_ohms: f64,
    /// Accuracy: percent of the reading.
    pub percent: f64,
    /// Accuracy: digits of the last place.
    pub digits: u32,
    /// What its display counts to.
    pub counts: u32,
}

/// The meter of the design where nothing is said.
impl Default for Meter {
    fn default() -> Self {
        Self { max_ohms: 2e6, percent: 1.0, digits: 2, counts: 2000 }
    }
}

impl Meter {
    /// One of the meters that people carry (common practice).
    pub fn random(rng: &mut impl Rng) -> Self {
        if rng.random_bool(0.3) {
            return Self::default();
        }
        let counts = any(2000, &[2000, 4000, 6000], rng);
        let decades = any(1e4, &[1e5], rng);
        Self {
            max_ohms: f64::from(counts) * LAST_PLACE_OHM * decades,
            percent: any(0.5, &[0.8, 1.0, 1.5, 2.0], rng),
            digits: rng.random_range(1..=5),
            counts,
        }
    }

    /// The meter as a findings file has it.
    pub fn json(&self) -> Value {
        json!({"max_ohms": self.max_ohms, "percent": self.percent, "digits": self.digits})
    }

    /// What it shows of a resistance, Ω, within its accuracy; `"OL"` above its range.
    pub fn shows(&self, ohm: f64, rng: &mut impl Rng) -> Value {
        let error = rng.random_range(-1.0..=1.0);
        let mut decade = 1.0;
        loop {
            let place = LAST_PLACE_OHM * decade;
            let top = f64::from(self.counts) * place;
            let shown = self.places(ohm, place, error);
            // Tenths by division, so that three of them are written as 0.3.
            let shown_ohm = if decade < 10.0 { shown / 10.0 } else { shown * (decade / 10.0) };
            if shown < f64::from(self.counts) && shown_ohm <= self.max_ohms {
                return json!(shown_ohm);
            }
            if !ohm.is_finite() || top >= self.max_ohms {
                return json!("OL");
            }
            decade *= 10.0;
        }
    }

    /// The display in last places, for one error from -1 to 1 of its accuracy. The accuracy counts from what
    /// is shown, and the rounding is in it.
    fn places(&self, ohm: f64, place: f64, error: f64) -> f64 {
        let (places, digits, share) = (ohm / place, f64::from(self.digits), self.percent / 100.0);
        if !places.is_finite() {
            return f64::INFINITY;
        }
        let (least, most) = ((places - digits) / (1.0 + share), (places + digits) / (1.0 - share));
        let shown = least + (most - least) * (error + 1.0) / 2.0;
        let (least, most) = (least.ceil(), most.floor());
        // A meter of no doubtful digit may have no whole number of places within its accuracy.
        let shown = if least <= most { shown.round().clamp(least, most) } else { shown.round() };
        shown.max(0.0)
    }
}

#[cfg(test)]
mod tests {
    use rand::SeedableRng;
    use rand_chacha::ChaCha8Rng;

    use super::Meter;

    #[test]
    fn a_meter_that_doubts_no_digit_shows_the_nearest_place() {
        let meter = Meter { digits: 0, ..Meter::default() };
        let mut draw = ChaCha8Rng::seed_from_u64(1);
        for (ohm, shown) in [(0.0, 0.0), (0.04, 0.0), (0.12, 0.1), (0.36, 0.4)] {
            assert_eq!(meter.shows(ohm, &mut draw), shown, "{ohm}");
        }
    }
}
