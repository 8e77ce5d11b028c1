//! How large an isolating transformer has to be.

use super::series::{Series, above};
use super::tables::figure;
use crate::fields::id_enum;

id_enum! {
    /// What makes the plate supply.
    pub enum Rectifier {
        /// One half wave, a capacitor behind it: series-heater sets.
        HalfWave = "half_wave",
        /// A bridge, a capacitor behind it.
        Bridge = "bridge",
        /// A full-wave doubler.
        Doubler = "doubler",
    }
}

/// What a transformer has to carry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TransformerSize {
    /// What is needed, VA.
    pub needed_va: f64,
    /// The next size that is stocked, VA; nothing where none is that large.
    pub stock_va: Option<f64>,
}

impl TransformerSize {
    fn of(needed_va: f64) -> Self {
        Self { needed_va, stock_va: above(Series::Transformer, needed_va) }
    }
}

impl Rectifier {
    /// Direct current over the alternating current that it takes.
    fn share(self) -> f64 {
        match self {
            Self::HalfWave => figure("half_wave"),
            Self::Bridge => figure("bridge"),
            Self::Doubler => figure("doubler"),
        }
    }

    /// The alternating current of a winding that feeds so much direct current, A rms.
    pub fn winding_amperes(self, direct_amperes: f64) -> f64 {
        direct_amperes / self.share()
    }
}

/// From heaters in W and the plate supply's direct current in A, on a line of `volts`.
///
/// Heater watts and the volts times amperes of the rectifier are added as they are: their peaks do not quite fall
/// together, so that is never too small.
pub fn from_parts(
    volts: f64,
    heater_watts: f64,
    plate_amperes: f64,
    rectifier: Rectifier,
) -> TransformerSize {
    TransformerSize::of(heater_watts + volts * rectifier.winding_amperes(plate_amperes))
}

/// From the watts of the rating plate, where nothing else is known: the more of what is usual.
pub fn from_nameplate(watts: f64) -> TransformerSize {
    TransformerSize::of(watts * figure("nameplate_high"))
}
