//! What takes up the line voltage that the heaters leave: a resistor, or a capacitor on alternating current.

use std::f64::consts::PI;

use crate::figure::{Figure, Mark, Source};

/// A resistor is chosen for so many times what it has to dissipate (1.5 to 2).
pub const RATED_FACTOR: Figure = Figure::new(2.0, "1", Source::TypicalValues, Mark::CommonPractice);

/// A dropper between the line and a string of heaters.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dropper {
    /// What it takes up, V.
    pub volts: f64,
    /// Its resistance, Ω.
    pub ohms: f64,
    /// What it dissipates, W.
    pub watts: f64,
}

impl Dropper {
    /// The resistor that leaves `sum` volts of `line` to heaters of this current; nothing where they
    /// need all of it.
    pub fn of(line: f64, sum: f64, amperes: f64) -> Option<Self> {
        let volts = line - sum;
        let fits = volts > NO_DROP && amperes > 0.0;
        fits.then(|| Self { volts, ohms: volts / amperes, watts: volts * amperes })
    }

    /// What it should be rated for, W.
    pub fn watts_to_choose(&self) -> f64 {
        self.watts * RATED_FACTOR.value
    }
}

/// Less than this is no drop, V: figures on labels are rounded to a tenth.
const NO_DROP: f64 = 0.05;

/// The capacitor in series with a string in place of a dropper: F and the volts across it.
///
/// Its voltage stands a quarter of a period behind, so it adds in quadrature: Vc = √(V² − S²), and
/// C = I / (2πf·Vc).
pub fn series_capacitor(line: f64, sum: f64, amperes: f64, hertz: f64) -> Option<(f64, f64)> {
    let squares = line * line - sum * sum;
    let usable = squares > 0.0 && line - sum > NO_DROP && amperes > 0.0 && hertz > 0.0;
    usable.then(|| {
        let volts = squares.sqrt();
        (amperes / (2.0 * PI * hertz * volts), volts)
    })
}

#[cfg(test)]
mod tests {
    use super::{Dropper, series_capacitor};

    // 62.6 V of 300 mA heaters on 117 V: 54.4 V, 181 Ω, 16 W, as a page on line-cord sets works it out.
    #[test]
    fn a_line_cord_takes_up_what_is_left() {
        let dropper = Dropper::of(117.0, 62.6, 0.3).unwrap();
        assert!((dropper.ohms - 181.3).abs() < 0.1 && (dropper.watts - 16.3).abs() < 0.1);
        assert_eq!(Dropper::of(117.0, 117.0, 0.09), None);
    }

    // 68.9 V at 0.3 A on 117 V 60 Hz: 94.6 V, 8.4 µF (computed).
    #[test]
    fn a_capacitor_adds_in_quadrature() {
        let (farads, volts) = series_capacitor(117.0, 68.9, 0.3, 60.0).unwrap();
        assert!((volts - 94.6).abs() < 0.1 && (farads - 8.4e-6).abs() < 0.05e-6);
    }
}
