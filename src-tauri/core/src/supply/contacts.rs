//! The two contacts of an outlet against earth.

use crate::figure::{Figure, Mark, Source};

/// Stray capacitance to earth of each contact behind an isolating transformer, F: the most that is usual between
/// windings and core, so that no figure is too kind.
pub const ISOLATED_STRAY: Figure =
    Figure::new(2e-9, "F", Source::TypicalValues, Mark::CommonPractice);

/// The hot and the neutral contact of an outlet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contacts {
    /// Hot and neutral against earth, V rms, in phase; of a floating outlet only their difference counts.
    pub volts: [f64; 2],
    /// Whether nothing but stray capacitance joins them to earth.
    pub floats: bool,
}

impl Contacts {
    /// Two contacts that the supply holds at these voltages against earth, V rms.
    pub const fn held(hot: f64, neutral: f64) -> Self {
        Self { volts: [hot, neutral], floats: false }
    }

    /// Two contacts with `volts` V rms between them, joined to earth by stray capacitance alone.
    pub const fn floating(volts: f64) -> Self {
        Self { volts: [volts / 2.0, -volts / 2.0], floats: true }
    }

    /// Between the two, V rms.
    pub const fn between(self) -> f64 {
        self.volts[0] - self.volts[1]
    }

    /// The most that one can come to stand at against earth, V rms: of a floating outlet all of it, once the other
    /// is earthed.
    pub fn highest(self) -> f64 {
        if self.floats {
            return self.between().abs();
        }
        self.volts[0].abs().max(self.volts[1].abs())
    }
}
