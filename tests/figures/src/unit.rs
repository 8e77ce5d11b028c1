//! What a figure counts.

use std::time::Duration;

use serde::{Deserialize, Serialize};

/// What a figure counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Unit {
    /// Seconds.
    Seconds,
    /// Thousandths of a second.
    Millis,
    /// Millionths of a second.
    Micros,
    /// Millions of bytes.
    Megabytes,
    /// Millions of bytes in a second.
    MegabytesPerSecond,
}

impl Unit {
    /// How it is written.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Seconds => "s",
            Self::Millis => "ms",
            Self::Micros => "µs",
            Self::Megabytes => "MB",
            Self::MegabytesPerSecond => "MB/s",
        }
    }

    /// A time in this unit.
    ///
    /// # Panics
    /// When this is no unit of time.
    pub fn of(self, time: Duration) -> f64 {
        let seconds = time.as_secs_f64();
        match self {
            Self::Seconds => seconds,
            Self::Millis => seconds * 1e3,
            Self::Micros => seconds * 1e6,
            Self::Megabytes | Self::MegabytesPerSecond => panic!("{} is no time", self.symbol()),
        }
    }

    /// A figure with its unit, to three digits that count.
    pub fn write(self, figure: f64) -> String {
        format!("{} {}", three_digits(figure), self.symbol())
    }
}

/// A number to three digits that count, or to the last whole one.
pub(crate) fn three_digits(figure: f64) -> String {
    let places = match figure.abs() {
        size if size >= 99.95 => 0,
        size if size >= 9.995 => 1,
        size if size >= 0.9995 => 2,
        _ => 3,
    };
    format!("{figure:.places$}")
}
