//! Body current that does not make 99.5 % of hearts fibrillate, by IEEE Std 80.

use crate::figure::{Figure, Mark, Source};

/// The body resistance IEEE 80 uses, Ω.
pub const BODY_RESISTANCE_OHM: Figure = Figure::new(1000.0, "Ω", Source::Ieee80, Mark::Verified);

/// The body weight a limit is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// 50 kg.
    Kg50,
    /// 70 kg.
    Kg70,
}

impl Weight {
    /// Tolerable current for one second, mA; the square root of time divides it.
    const fn one_second(self) -> Figure {
        match self {
            Self::Kg50 => Figure::new(116.0, "mA", Source::Ieee80, Mark::MemoryHigh),
            Self::Kg70 => Figure::new(157.0, "mA", Source::Ieee80, Mark::MemoryHigh),
        }
    }
}

/// The tolerable current in mA for a time of 0.03 to 3 s; nothing outside, where the law is not given.
pub fn tolerable_ma(weight: Weight, time_s: f64) -> Option<f64> {
    (0.03..=3.0).contains(&time_s).then(|| weight.one_second().value / time_s.sqrt())
}
