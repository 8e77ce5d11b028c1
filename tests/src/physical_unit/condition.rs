//! The state of a unit's parts at the moment when somebody holds a meter to it.
//!
//! Heaters cold or still warm, contacts clean or burnt, capacitors sound or leaky, a wire broken
//! somewhere. Ranges: `cold_hot` measurements for heaters, the others common practice or, where marked, assumptions.

use rand::Rng;

use super::PhysicalUnit;
use super::generate::over_decades;
use super::parts::{Bond, HeaterSource, PlateSource};

/// Hot over cold of a heater (measurements: 5 to 9).
const HOT_OVER_COLD: (f64, f64) = (5.0, 9.0);
/// How far a heater is from its rating (measurements: 5 to 10 % is normal).
const HEATER_WITHIN: f64 = 0.1;
/// Closed switch contact, Ω (assumption: burnt at the high end).
const CONTACT: (f64, f64) = (0.02, 100.0);
/// Cord conductor with plug and probe contact, Ω (common practice).
const CONDUCTOR: (f64, f64) = (0.05, 1.0);
/// A good joint, Ω (common practice).
const JOINT: (f64, f64) = (0.01, 1.0);
/// Leak of an ordinary paper capacitor, Ω (common practice).
const LEAK: (f64, f64) = (100e3, 1e9);
/// Tired to good insulation, Ω (common practice; below 1 MΩ it would be rejected).
const INSULATION: (f64, f64) = (0.5e6, 1e9);
/// Power primaries on 100 to 130 V, Ω (common practice); four times that on twice the voltage.
const PRIMARY: (f64, f64) = (0.8, 60.0);
/// Primaries for heaters only, Ω (common practice).
const HEATER_PRIMARY: (f64, f64) = (15.0, 150.0);
/// Turntable and tape motors, Ω (common practice).
const MOTOR: (f64, f64) = (15.0, 200.0);
/// Clock motors, Ω (assumption).
const CLOCK: (f64, f64) = (400.0, 2000.0);
/// How often a wire or a load is broken, a switch of another kind stands open (assumptions).
const BROKEN: f64 = 0.03;
const STRING_OPEN: f64 = 0.1;
const OTHER_SWITCH: f64 = 0.15;

/// Where a motor is joined to the line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum MotorAt {
    /// Ahead of every switch.
    Ahead,
    /// Behind the power switch.
    Behind,
    /// Behind a switch of its own, which the inspector works in place of the set's: that stands open.
    OwnSwitchWorked,
}

/// The parts of a unit as a meter finds them; infinite is open.
#[derive(Clone, Debug)]
pub struct Condition {
    pub(super) conductor: [f64; 2],
    pub(super) contact: [f64; 2],
    pub(super) load: f64,
    pub(super) beside_load: f64,
    pub(super) motor: Option<(MotorAt, f64)>,
    pub(super) to_common: f64,
    pub(super) bond: f64,
    pub(super) insulation: [f64; 2],
    pub(super) rectifier: [f64; 2],
    pub(super) leg_capacitor: [f64; 2],
    pub(super) post_capacitor: f64,
    pub(super) earth: f64,
    pub(super) lift_closed: bool,
}

impl Condition {
    /// How a unit is found: heater spread, contacts, leaks and breaks.
    pub fn random(unit: &PhysicalUnit, rng: &mut impl Rng) -> Self {
        let mut found = Self::sound(unit, rng);
        found.leak(unit, rng);
        found.break_something(unit, rng);
        found
    }

    /// The same with nothing leaky and nothing broken.
    pub fn sound(unit: &PhysicalUnit, rng: &mut impl Rng) -> Self {
        let low_line = unit.supply_volts < 150.0;
        let winding = if low_line { 1.0 } else { 4.0 };
        let load = match (unit.plates_from, unit.heaters_from) {
            (PlateSource::SeparateWinding | PlateSource::TappedWinding, _) => {
                winding * over_decades(PRIMARY, rng)
            }
            (_, HeaterSource::Transformer | HeaterSource::MotorWinding) => {
                winding * over_decades(HEATER_PRIMARY, rng)
            }
            _ => string(unit, rng),
        };
        let bond = match unit.bond {
            Bond::Direct => over_decades(JOINT, rng),
            Bond::Network { ohm, .. } => ohm * rng.random_range(0.9..2.0),
            Bond::Insulated => f64::INFINITY,
        };
        Self {
            conductor: [0; 2].map(|_| over_decades(CONDUCTOR, rng)),
            contact: [0; 2].map(|_| over_decades((CONTACT.0, 1.0), rng)),
            load,
            beside_load: f64::INFINITY,
            motor: motor(unit, rng),
            to_common: over_decades(JOINT, rng),
            bond,
            insulation: [f64::INFINITY; 2],
            rectifier: [0; 2].map(|_| rectifier(rng)),
            leg_capacitor: [f64::INFINITY; 2],
            post_capacitor: f64::INFINITY,
            earth: over_decades((0.05, 1.5), rng),
            lift_closed: rng.random_bool(0.5),
        }
    }

    fn leak(&mut self, unit: &PhysicalUnit, rng: &mut impl Rng) {
        self.contact = [0; 2].map(|_| over_decades(CONTACT, rng));
        self.insulation = [0; 2].map(|_| over_decades(INSULATION, rng));
        if unit.bond == Bond::Insulated {
            self.bond = over_decades(INSULATION, rng);
        }
        if let Some(capacitor) = unit.leg_capacitor {
            let leak = if capacitor.class_y { (100e6, 1e9) } else { LEAK };
            self.leg_capacitor = [0; 2].map(|_| over_decades(leak, rng));
        }
        self.post_capacitor = over_decades(LEAK, rng);
        if matches!(unit.bond, Bond::Network { .. }) {
            self.bond = match rng.random_range(0..20) {
                0 => over_decades((0.05, 2.0), rng),
                1 | 2 => f64::INFINITY,
                3 | 4 => over_decades((10e3, 1e6), rng),
                _ => self.bond,
            };
        }
        // A silicon rectifier and its filter may show beside the load.
        if rng.random_bool(0.2) {
            self.beside_load = over_decades((1e3, 10e6), rng);
        }
    }

    fn break_something(&mut self, unit: &PhysicalUnit, rng: &mut impl Rng) {
        let open = if unit.heaters_from == HeaterSource::LineString { STRING_OPEN } else { BROKEN };
        if rng.random_bool(open) {
            self.load = f64::INFINITY;
        }
        for conductor in &mut self.conductor {
            if rng.random_bool(BROKEN) {
                *conductor = f64::INFINITY;
            }
        }
    }
}

fn string(unit: &PhysicalUnit, rng: &mut impl Rng) -> f64 {
    let warm = if rng.random_bool(0.7) { 1.0 } else { rng.random_range(1.0..3.0) };
    let cold = |ohms: f64, rng: &mut _| {
        let spread = 1.0 + HEATER_WITHIN * Rng::random_range(rng, -1.0..=1.0);
        let ratio: f64 = Rng::random_range(rng, HOT_OVER_COLD.0..HOT_OVER_COLD.1);
        (ohms * spread / ratio * warm).min(ohms * spread)
    };
    let tubes = unit.line_up.tubes.iter();
    let heaters: f64 = tubes.map(|tube| cold(tube.volts / tube.amperes, rng)).sum();
    heaters + unit.line_up.dropper_ohm * rng.random_range(1.0..1.1)
}

fn motor(unit: &PhysicalUnit, rng: &mut impl Rng) -> Option<(MotorAt, f64)> {
    // The winding that feeds the heaters is the load itself.
    if !unit.motor || unit.heaters_from == HeaterSource::MotorWinding {
        return None;
    }
    if unit.kind == "table_radio" {
        return Some((MotorAt::Ahead, over_decades(CLOCK, rng)));
    }
    let at = match rng.random_range(0.0..1.0) {
        share if share < OTHER_SWITCH => MotorAt::OwnSwitchWorked,
        share if share < 0.5 => MotorAt::Ahead,
        _ => MotorAt::Behind,
    };
    Some((at, over_decades(MOTOR, rng)))
}

/// A vacuum rectifier is open when cold; a silicon one shows something or nothing, by the meter and the
/// way round; a surge resistor is in its path.
fn rectifier(rng: &mut impl Rng) -> f64 {
    let silicon = rng.random_bool(0.4);
    if silicon {
        over_decades((300.0, 2e6), rng) + rng.random_range(0.0..100.0)
    } else {
        f64::INFINITY
    }
}
