//! The thresholds of verdicts, and the limits of standards as a table.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::figure::{Figure, Mark, Source};

/// From here on people startle: the perception line and the limit for two-wire appliances, mA.
pub const STARTLE_MA: Figure = Figure::new(0.5, "mA", Source::Iec60479_1, Mark::Verified);

/// From here on somebody may not be able to let go, children included, mA.
pub const LET_GO_MA: Figure = Figure::new(5.0, "mA", Source::ShockSurveys, Mark::Verified);

/// The limit of the touch test, mA.
pub const TOUCH_LIMIT_MA: Figure = Figure::new(0.5, "mA", Source::Ul101, Mark::Verified);

/// The limit of the touch test across 1500 Ω ∥ 0.15 µF, V rms.
pub const TOUCH_LIMIT_VOLTS: Figure = Figure::new(0.75, "V", Source::Ul101, Mark::Verified);

/// Charge of one pulse of 10 ms to 5 s from which fibrillation must be expected, C.
pub const FIBRILLATION_CHARGE: Figure = Figure::new(0.1, "C", Source::ShockSurveys, Mark::Verified);

/// A limit as a standard states it.
#[derive(Clone, Debug, Deserialize)]
pub struct Limit {
    /// The standard.
    pub standard: String,
    /// Its clause.
    pub clause: String,
    /// What is limited.
    pub quantity: String,
    /// The limit, with its unit.
    pub limit: String,
    /// How far the row was checked.
    pub confidence: String,
    /// Where it was seen.
    pub source: String,
}

/// The limits of touch current, insulation and earth continuity of many standards.
pub fn limits() -> &'static [Limit] {
    static ROWS: LazyLock<Vec<Limit>> = LazyLock::new(|| {
        let text = include_str!("../../data/limits.csv");
        csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
    });
    &ROWS
}

#[cfg(test)]
mod tests {
    use super::limits;

    #[test]
    fn every_limit_is_read() {
        let rows = include_str!("../../data/limits.csv").lines().count() - 1;
        assert_eq!(limits().len(), rows);
    }
}
