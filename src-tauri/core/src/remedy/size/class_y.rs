//! How large a class Y capacitor from the line to touched metal may be.

use std::f64::consts::TAU;

use super::series::{Series, below};
use super::tables::figure;
use crate::supply::Supply;

/// A class Y capacitor under a limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassY {
    /// The largest that keeps to the limit, F: I / (2πf·U).
    pub most_farad: f64,
    /// The next value of the E6 series that keeps to it with its tolerance, F; nothing where none does.
    pub farad: Option<f64>,
    /// What that lets through at the highest voltage at the most, mA rms.
    pub leaks_ma: f64,
}

/// The smallest that is sold as class Y, F (common practice).
const SMALLEST_FARAD: f64 = 0.1e-9;

/// The largest capacitance that lets no more than `limit_ma` through at `volts` and `hertz`, F.
///
/// The body is left out: beside such a capacitor it is nothing, and leaving it out is never too kind.
pub fn most_farads(limit_ma: f64, volts: f64, hertz: f64) -> f64 {
    limit_ma / 1e3 / (TAU * hertz * volts)
}

/// The value to choose on a supply at its highest voltage, for so many capacitors whose currents add up: two where
/// one goes from each leg and the switch leaves both legs hot.
pub fn class_y(limit_ma: f64, supply: &Supply, together: u8) -> ClassY {
    let volts = supply.highest_contact(supply.volts_max);
    let most_farad = most_farads(limit_ma, volts, supply.hertz) / f64::from(together.max(1));
    let over = 1.0 + figure("class_y_tolerance");
    let farad = below(Series::E6, most_farad / over).filter(|farad| *farad >= SMALLEST_FARAD);
    let each = farad.unwrap_or(0.0) * over * TAU * supply.hertz * volts * 1e3;
    ClassY { most_farad, farad, leaks_ma: each * f64::from(together.max(1)) }
}
