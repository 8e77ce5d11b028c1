//! The current through a person at a port, with a body whose impedance falls as the voltage rises.

use crate::body::Impedance;
use crate::circuit::Thevenin;

/// Relative change of the touch voltage at which the iteration stops.
const CLOSE_ENOUGH: f64 = 1e-12;

/// More steps than bisection alone would need.
const STEPS: usize = 64;

/// The touch current in A rms through `factor` × the body's impedance hand to hand.
///
/// Solves V = |V_th|·r(V) / |Z_th + r(V)| for the touch voltage V by Newton's method inside a
/// bracket. The right side falls as V rises, because r does and a passive Z_th has no negative
/// resistance, so there is exactly one solution between 0 and |V_th|.
pub fn touch_amperes(body: &Impedance, factor: f64, source: &Thevenin) -> f64 {
    let open = source.volts.norm();
    if open == 0.0 || source.ohms.re.is_infinite() {
        return 0.0;
    }
    let ohms = touch_ohms(body, factor, source);
    open / (source.ohms.re + ohms).hypot(source.ohms.im)
}

/// What a person puts between the port and earth there, Ω.
pub(super) fn touch_ohms(body: &Impedance, factor: f64, source: &Thevenin) -> f64 {
    let open = source.volts.norm();
    let (mut low, mut high) = (0.0, open);
    let mut volts = open;
    for _ in 0..STEPS {
        let (ohms, slope) = body.line(volts);
        let (body_ohms, body_slope) = (factor * ohms, factor * slope);
        let resistance = source.ohms.re + body_ohms;
        let total_squared = resistance * resistance + source.ohms.im * source.ohms.im;
        let total = total_squared.sqrt();
        let divided = open * body_ohms / total;
        let error = divided - volts;
        if error.abs() <= CLOSE_ENOUGH * open {
            break;
        }
        if error > 0.0 {
            low = volts;
        } else {
            high = volts;
        }
        let divided_slope =
            open * body_slope * (total_squared - body_ohms * resistance) / (total_squared * total);
        let next = volts - error / (divided_slope - 1.0);
        volts = if next > low && next < high { next } else { f64::midpoint(low, high) };
    }
    factor * body.ohms(volts)
}

#[cfg(test)]
mod tests {
    use super::touch_amperes;
    use crate::body::{Body, Impedance};
    use crate::circuit::Thevenin;
    use num_complex::Complex64;

    #[test]
    fn a_stiff_source_gives_its_voltage_over_the_impedance_at_that_voltage() {
        let body = Impedance::of(Body::default());
        let source = Thevenin { volts: Complex64::new(100.0, 0.0), ohms: Complex64::new(0.0, 0.0) };
        // 990 Ω at 100 V (IEC 60479-1 table 1, 5 %, from memory), 0.75 of it to both feet.
        assert!((touch_amperes(&body, 0.75, &source) - 100.0 / 742.5).abs() < 1e-12);
    }

    #[test]
    fn the_solution_satisfies_its_own_equation() {
        let body = Impedance::of(Body::default());
        for ohms in [1.0, 50.0, 300.0, 1000.0, 5000.0] {
            for volts in [10.0, 40.0, 120.0, 230.0, 900.0] {
                let source = Thevenin {
                    volts: Complex64::new(0.0, volts),
                    ohms: Complex64::new(ohms, -0.5 * ohms),
                };
                let current = touch_amperes(&body, 0.5, &source);
                let touch_volts = current * 0.5 * body.ohms(current * 0.5 * 575.0);
                let r = 0.5 * body.ohms(solve(current, &body));
                let again = volts / (source.ohms + r).norm();
                assert!((current - again).abs() / again < 1e-9, "{ohms} {volts} {touch_volts}");
            }
        }
    }

    /// The touch voltage that belongs to a current, by plain fixed point.
    fn solve(current: f64, body: &Impedance) -> f64 {
        let mut volts = current * 0.5 * 1000.0;
        for _ in 0..500 {
            volts = 0.5 * (volts + current * 0.5 * body.ohms(volts));
        }
        volts
    }
}
