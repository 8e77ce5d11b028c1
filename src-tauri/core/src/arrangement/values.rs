//! The parts of the line side: what is assumed of each, and how far it may be from that.

use crate::figure::{Figure, Mark, Source};

const fn usual(value: f64, unit: &'static str) -> Figure {
    Figure::new(value, unit, Source::TypicalValues, Mark::CommonPractice)
}

const fn chosen(value: f64, unit: &'static str) -> Figure {
    Figure::new(value, unit, Source::Model, Mark::Assumption)
}

/// What the model assumes where nothing is known.
pub mod defaults {
    use super::{Figure, Mark, Source, chosen, usual};

    /// Conductor from an outlet contact to a leg, and a closed switch contact: each, Ω.
    pub const CONDUCTOR: Figure = chosen(0.05, "Ω");
    /// Open switch contact, Ω.
    pub const OPEN_SWITCH: Figure = chosen(1e9, "Ω");
    /// Joint between the near leg and a chassis that is the common, Ω.
    pub const JOINT: Figure = chosen(0.01, "Ω");
    /// From a line-rectified chassis to the rail that is hot, Ω.
    pub const RECTIFIER: Figure = chosen(10.0, "Ω");
    /// A part failed short, or a stray conductor on the chassis, Ω.
    pub const SHORT: Figure = chosen(0.1, "Ω");
    /// What pulls an open neutral towards hot, Ω.
    pub const NEUTRAL_PULL: Figure = chosen(100.0, "Ω");
    /// Leakage of a line-insulated chassis and of a winding, Ω.
    pub const INSULATION: Figure = chosen(100e6, "Ω");
    /// Stray capacitance of a line-insulated chassis, F.
    pub const STRAY: Figure = chosen(0.2e-9, "F");
    /// Series heater string, hot: 122.8 V at 0.15 A, Ω.
    pub const HEATERS: Figure = Figure::new(819.0, "Ω", Source::HeaterMeasurements, Mark::Computed);
    /// Hot resistance of heaters as a multiple of cold.
    pub const HEATER_RATIO: Figure =
        Figure::new(6.8, "1", Source::HeaterMeasurements, Mark::Verified);
    /// Plate-supply load of a running five-tube set, about 25 to 35 W, Ω.
    pub const LOAD: Figure = usual(1500.0, "Ω");
    /// Transformer primary, running, Ω.
    pub const PRIMARY: Figure = usual(240.0, "Ω");
    /// Transformer primary, off: its direct-current resistance, Ω.
    pub const PRIMARY_OFF: Figure = usual(10.0, "Ω");
    /// Each winding end to the chassis, F; 0.1 to 2 nF.
    pub const WINDING: Figure = usual(0.5e-9, "F");
    /// Resistor between common and chassis, Ω; 150 to 470 kΩ.
    pub const NETWORK_OHM: Figure = usual(220e3, "Ω");
    /// Capacitor between common and chassis, F; 0.05 to 0.25 µF.
    pub const NETWORK_FARAD: Figure =
        Figure::new(0.1e-6, "F", Source::TypicalValues, Mark::Verified);
    /// Ordinary line capacitor, F; 0.01 to 0.1 µF.
    pub const LINE_CAPACITOR: Figure =
        Figure::new(0.047e-6, "F", Source::TypicalValues, Mark::Verified);
    /// Class-Y line capacitor, F; 1 to 47 nF.
    pub const CLASS_Y: Figure = usual(2.2e-9, "F");
    /// Capacitor to the aerial terminal, F; 1 nF to 0.1 µF.
    pub const AERIAL: Figure = usual(0.01e-6, "F");
    /// Earth path from the chassis to the supply's earth, Ω.
    pub const EARTH: Figure = usual(0.2, "Ω");
}

/// The parts' values of one unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Values {
    /// Line capacitor, F; nothing takes what is usual for its class.
    pub line_capacitor_farad: Option<f64>,
    /// Resistor between common and chassis, Ω.
    pub network_ohm: f64,
    /// Capacitor between common and chassis, F.
    pub network_farad: f64,
    /// Capacitor to the aerial terminal, F.
    pub aerial_farad: f64,
    /// Heater string, hot, Ω.
    pub heater_ohm: f64,
    /// Plate-supply load, Ω.
    pub load_ohm: f64,
    /// Each winding end to the chassis, F.
    pub winding_farad: f64,
    /// Transformer primary, running, Ω.
    pub primary_ohm: f64,
    /// Earth path, Ω.
    pub earth_ohm: f64,
}

impl Default for Values {
    fn default() -> Self {
        Self {
            line_capacitor_farad: None,
            network_ohm: defaults::NETWORK_OHM.value,
            network_farad: defaults::NETWORK_FARAD.value,
            aerial_farad: defaults::AERIAL.value,
            heater_ohm: defaults::HEATERS.value,
            load_ohm: defaults::LOAD.value,
            winding_farad: defaults::WINDING.value,
            primary_ohm: defaults::PRIMARY.value,
            earth_ohm: defaults::EARTH.value,
        }
    }
}

/// How far an old part is believed to be from its marking, as a share.
pub const MARKED_WITHIN: Figure = usual(0.2, "1");

/// The lowest and the highest a part's value may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// The lowest.
    pub low: f64,
    /// The highest.
    pub high: f64,
}

impl Spread {
    /// Ordinary line capacitor, F (0.047 µF verified; range common practice).
    pub const LINE_CAPACITOR: Self = Self { low: 0.01e-6, high: 0.1e-6 };
    /// Class-Y line capacitor, F (common practice; its value is printed on it).
    pub const CLASS_Y: Self = Self { low: 1e-9, high: 47e-9 };
    /// Resistor between common and chassis, Ω (common practice).
    pub const NETWORK_OHM: Self = Self { low: 150e3, high: 470e3 };
    /// Capacitor between common and chassis, F (verified).
    pub const NETWORK_FARAD: Self = Self { low: 0.05e-6, high: 0.25e-6 };
    /// Capacitor to the aerial terminal, F (common practice).
    pub const AERIAL: Self = Self { low: 1e-9, high: 0.1e-6 };
    /// Winding end to chassis, F (common practice).
    pub const WINDING: Self = Self { low: 0.1e-9, high: 2e-9 };

    /// A value that is known exactly.
    pub const fn exactly(value: f64) -> Self {
        Self { low: value, high: value }
    }

    /// A value read off a marking.
    pub fn marked(value: f64) -> Self {
        Self { low: value * (1.0 - MARKED_WITHIN.value), high: value * (1.0 + MARKED_WITHIN.value) }
    }

    /// From the lower of two low ends to the higher of two high ones.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self { low: self.low.min(other.low), high: self.high.max(other.high) }
    }

    /// Half way between the ends.
    pub const fn middle(self) -> f64 {
        f64::midpoint(self.low, self.high)
    }

    /// The two ends; one where they are the same.
    pub fn ends(self) -> impl Iterator<Item = f64> + Clone {
        let count = if self.low == self.high { 1 } else { 2 };
        [self.low, self.high].into_iter().take(count)
    }
}
