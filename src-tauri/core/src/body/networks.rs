//! The networks that stand in for a body when touch current is measured.
//!
//! IEC 60990 figures 3 to 5 and the 1500 Ω ∥ 0.15 µF of service manuals. Components of figures 3 and
//! 4 are verified; those of figure 5 are from memory, its topology chosen because it gives the
//! let-go weight 4.4 at 10 kHz.

use std::f64::consts::TAU;

use num_complex::Complex64;

use crate::figure::{Figure, Mark, Source};

const fn part(value: f64, unit: &'static str, mark: Mark) -> Figure {
    Figure::new(value, unit, Source::Iec60990, mark)
}

const RS: Figure = part(1500.0, "Ω", Mark::Verified);
const CS: Figure = part(0.22e-6, "F", Mark::Verified);
const RB: Figure = part(500.0, "Ω", Mark::Verified);
const R1: Figure = part(10e3, "Ω", Mark::Verified);
const C1: Figure = part(0.022e-6, "F", Mark::Verified);
const R2: Figure = part(10e3, "Ω", Mark::MemoryHigh);
const C2: Figure = part(6.2e-9, "F", Mark::MemoryHigh);
const R3: Figure = part(20e3, "Ω", Mark::MemoryHigh);
const C3: Figure = part(9.1e-9, "F", Mark::MemoryHigh);
/// The resistor of the service test network, Ω; it takes all of the watts.
pub const TOUCH_TEST_OHM: Figure = Figure::new(1500.0, "Ω", Source::Ul101, Mark::Verified);
const TEST_FARADS: Figure = Figure::new(0.15e-6, "F", Source::Ul101, Mark::Verified);

/// A measuring network of IEC 60990.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MeasuringNetwork {
    /// Figure 3: burns and direct current, no weighting.
    Unweighted,
    /// Figure 4: perception and startle, for the 0.5 mA limits.
    Perception,
    /// Figure 5: let-go, for the 3.5 to 10 mA limits.
    LetGo,
}

/// What a network shows at one frequency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Readout {
    /// Input impedance, Ω.
    pub input_ohms: Complex64,
    /// Voltage at its measuring point for each ampere in, Ω; divided by 500 it is the touch current.
    pub transfer_ohms: Complex64,
}

impl MeasuringNetwork {
    /// The network at `hertz`.
    pub fn at(self, hertz: f64) -> Readout {
        let series = parallel(real(RS), capacitor(CS, hertz));
        let (branch, share) = self.branch(hertz);
        let body = branch.map_or_else(|| real(RB), |branch| parallel(real(RB), branch));
        Readout { input_ohms: series + body, transfer_ohms: body * share }
    }

    /// The branch across the 500 Ω and the share of its voltage that is measured.
    fn branch(self, hertz: f64) -> (Option<Complex64>, Complex64) {
        let (resistor, shunt) = match self {
            Self::Unweighted => return (None, Complex64::new(1.0, 0.0)),
            Self::Perception => (R1, capacitor(C1, hertz)),
            Self::LetGo => {
                let leg = real(R3) + capacitor(C3, hertz);
                (R2, parallel(capacitor(C2, hertz), leg))
            }
        };
        let branch = real(resistor) + shunt;
        (Some(branch), shunt / branch)
    }
}

/// The impedance of the service test network, 1500 Ω ∥ 0.15 µF, at `hertz`, Ω.
pub fn touch_test_ohms(hertz: f64) -> Complex64 {
    parallel(real(TOUCH_TEST_OHM), capacitor(TEST_FARADS, hertz))
}

fn real(figure: Figure) -> Complex64 {
    Complex64::new(figure.value, 0.0)
}

fn capacitor(figure: Figure, hertz: f64) -> Complex64 {
    Complex64::new(0.0, -1.0 / (TAU * hertz * figure.value))
}

fn parallel(a: Complex64, b: Complex64) -> Complex64 {
    a * b / (a + b)
}
