//! A string of heaters on a voltage: how much current it takes there, and what counts as fitting a line.

use crate::figure::{Figure, Mark, Source};

/// The least sum of a string that stands straight on the line, as a share of the line voltage.
pub const UNDER: Figure = Figure::new(0.75, "1", Source::Model, Mark::Assumption);
/// The most, likewise. Heaters stand 10 % for a while; more on a label is no string on this line.
pub const OVER: Figure = Figure::new(1.08, "1", Source::Model, Mark::Assumption);

/// What may be left of the line without a dropper, as a share of it: half of what heaters stand.
pub const NO_DROPPER: Figure = Figure::new(0.05, "1", Source::Model, Mark::Assumption);

/// The current of a string as a share of its rated current, on a voltage that it is not rated for.
///
/// Solves V = S·x² + I·R·x, for a heater's voltage goes with the square of its current (a measured
/// 12BH7A: current goes with V^0.49). `sum` is the rated heater voltage in V, `amperes` its rated
/// current, `ohms` what is in series with it. Nothing where the figures are not above zero.
pub fn voltage_share(sum: f64, amperes: f64, ohms: f64, volts: f64) -> Option<f64> {
    let drop = amperes * ohms;
    let usable = sum > 0.0 && amperes > 0.0 && ohms >= 0.0 && volts >= 0.0;
    // This form of the root does not subtract two near numbers when the drop is large.
    let root = (drop * drop + 4.0 * sum * volts).sqrt();
    let share = 2.0 * volts / (drop + root);
    (usable && share.is_finite()).then_some(share)
}

#[cfg(test)]
mod tests {
    use super::voltage_share;

    // Worked by hand from the same law: 122.8 V straight on 120 V takes 148 mA of 150; 97.6 V behind
    // 129 Ω on 125 V takes 155.5 mA.
    #[test]
    fn a_string_takes_less_on_less() {
        let near = |x: f64, y: f64| (x - y).abs() < 5e-4;
        assert!(near(voltage_share(122.8, 0.15, 0.0, 120.0).unwrap(), 0.989));
        assert!(near(voltage_share(97.6, 0.15, 129.0, 125.0).unwrap(), 1.037));
        assert_eq!(voltage_share(0.0, 0.15, 0.0, 120.0), None);
    }
}
