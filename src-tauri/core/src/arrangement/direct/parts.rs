//! How far each part's resistance may be from the usual when an ohmmeter looks at the cold, unplugged
//! unit.
//!
//! Two sets: what sound parts read, which is what a person is shown, and the widest that parts of a unit
//! as found may read, which is all that evidence may rest on: leaky capacitors, tired insulation,
//! dirty contacts, and, until the path is proven, a break anywhere.

use super::super::values::{Spread, Values, defaults};
use crate::figure::{Figure, Mark, Source};
use crate::heaters::HEATER_RATIO_MOST;

const fn chosen(value: f64) -> Figure {
    Figure::new(value, "Ω", Source::Model, Mark::Assumption)
}

const fn usual(value: f64) -> Figure {
    Figure::new(value, "Ω", Source::TypicalValues, Mark::CommonPractice)
}

/// A wire, a joint or a probe on clean metal is never less, Ω.
pub const WIRE_LEAST: Figure = chosen(0.01);
/// Cord conductor with fuse and probe contact, at most, Ω.
const WIRE_MOST: Figure = chosen(3.0);
/// Closed contact of an old power switch, at most, Ω.
const CONTACT_MOST: Figure = chosen(100.0);
/// Joint between common and chassis, at most: rivets and spot welds, Ω.
const JOINT_MOST: Figure = chosen(3.0);
/// Cold series string, at least: 117 V at 0.6 A behind a series diode is 15 Ω when all of it is heaters,
/// rounded down, Ω.
const STRING_LEAST: Figure = chosen(10.0);
/// Primary of a transformer for heaters only, or a motor with a heater tap, at least: 60 VA at 100 V, Ω.
const HEATER_PRIMARY_LEAST: Figure = chosen(5.0);
/// The same, at most: a small one on 230 V, Ω.
const HEATER_PRIMARY_MOST: Figure = usual(600.0);
/// Primary of a power transformer, at least: a large amplifier on 100 V, Ω.
const PRIMARY_LEAST: Figure = chosen(0.3);
/// The same, sound: 1.5 Ω for an amplifier on 117 V, Ω.
const PRIMARY_LOW: Figure = usual(1.0);
/// The same, at most: a small set on 230 V, Ω.
const PRIMARY_MOST: Figure = usual(250.0);
/// Rectifier on the line, forward, with its surge resistor, at least; cold tubes and diodes below their
/// knee are open, Ω.
const RECTIFIER_LEAST: Figure = chosen(1.0);
/// Insulation that is tired but not broken down, at least: its leak stays below 0.5 mA at 250 V, Ω.
const INSULATION_LEAST: Figure = chosen(0.5e6);
/// Sound dry insulation of a winding, at least, Ω.
const INSULATION_SOUND: Figure = usual(20e6);
/// Leaky paper capacitor, at least; below it counts as shorted, Ω.
const LEAKY_CAPACITOR: Figure = chosen(100e3);
/// Capacitor of class Y, at least, Ω.
const CLASS_Y_LEAST: Figure = chosen(1e6);
/// Motor across the line, at least, Ω.
pub const MOTOR_LEAST: Figure = chosen(3.0);
/// Anything else across the line ahead of the switch, such as a clock or a lamp, at least, Ω.
const AHEAD_LEAST: Figure = chosen(100.0);
/// Bond from earth pin to chassis, at most when sound, Ω.
pub const BOND_SOUND: Figure = chosen(2.0);
/// The same when corroded but still a bond, Ω.
pub const BOND_MOST: Figure = chosen(1e3);
/// How far a single heater may be from its rating, as a share.
const HEATER_WITHIN: Figure = Figure::new(0.1, "1", Source::HeaterMeasurements, Mark::Verified);

/// From a least value up to an open circuit.
const fn from(least: Figure) -> Spread {
    Spread { low: least.value, high: f64::INFINITY }
}

const fn between(least: Figure, most: Figure) -> Spread {
    Spread { low: least.value, high: most.value }
}

/// No path at all.
const OPEN: Spread = Spread { low: f64::INFINITY, high: f64::INFINITY };

/// The resistance of every part at direct current, the least and the most, Ω; infinite where open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DirectParts {
    /// Cord conductor, fuse and probe contact.
    pub conductor: Spread,
    /// Closed contact of the power switch.
    pub contact: Spread,
    /// Open contact of the power switch.
    pub open_switch: Spread,
    /// Series heater string, with its dropper.
    pub string: Spread,
    /// What a line-rectified set has across the line: a string, or a transformer for its heaters.
    pub rectified_string: Spread,
    /// Primary of a power transformer.
    pub primary: Spread,
    /// Primary of a transformer for heaters only, or such a motor.
    pub heater_primary: Spread,
    /// Whatever lies across the line ahead of the power switch.
    pub ahead: Spread,
    /// Whatever lies across the line behind it, beside the load.
    pub behind: Spread,
    /// Joint between near leg and a chassis that is the common.
    pub joint: Spread,
    /// From each leg to a line-rectified chassis.
    pub rectifier: Spread,
    /// Network between common and chassis.
    pub network: Spread,
    /// Insulation between common and chassis, and of windings.
    pub insulation: Spread,
    /// Ordinary line capacitor, and the one at the aerial terminal.
    pub capacitor: Spread,
    /// Class-Y line capacitor.
    pub class_y: Spread,
    /// Bond from the earth pin to the chassis.
    pub bond: Spread,
    /// From the earth pin to a chassis that is not bonded to it: a lift switch may be closed just now, and
    /// the wire of a pin that was cut off may still be on the chassis.
    pub no_bond: Spread,
    /// Metal that is joined to nothing.
    pub loose: Spread,
}

impl DirectParts {
    /// What sound parts of these values read: heaters from cold to just switched off, the switch contact
    /// up to 100 Ω. The network is that of the evidence: its resistor may be open and its capacitor shorted.
    pub fn sound(values: &Values) -> Self {
        let heaters = Spread {
            low: values.heater_ohm * (1.0 - HEATER_WITHIN.value) / HEATER_RATIO_MOST.value,
            high: values.heater_ohm * (1.0 + HEATER_WITHIN.value),
        };
        Self {
            conductor: between(WIRE_LEAST, WIRE_MOST),
            contact: between(WIRE_LEAST, CONTACT_MOST),
            open_switch: Spread::exactly(defaults::OPEN_SWITCH.value),
            string: heaters,
            rectified_string: heaters,
            primary: between(PRIMARY_LOW, PRIMARY_MOST),
            heater_primary: between(HEATER_PRIMARY_LEAST, HEATER_PRIMARY_MOST),
            ahead: OPEN,
            behind: OPEN,
            joint: between(WIRE_LEAST, JOINT_MOST),
            rectifier: from(RECTIFIER_LEAST),
            network: from(WIRE_LEAST),
            insulation: from(INSULATION_SOUND),
            capacitor: OPEN,
            class_y: OPEN,
            bond: between(WIRE_LEAST, BOND_SOUND),
            no_bond: OPEN,
            loose: OPEN,
        }
    }

    /// The widest that parts of a unit as found may read; `motor` where one may lie across the line, and
    /// `path` the most that the way through cord, switch and load may have, once it is proven, Ω.
    pub fn as_found(motor: bool, path: Option<f64>) -> Self {
        let most = path.unwrap_or(f64::INFINITY);
        let up_to = |least: Figure| Spread { low: least.value, high: most };
        let wire = path.map_or(f64::INFINITY, |_| WIRE_MOST.value);
        Self {
            conductor: Spread { low: WIRE_LEAST.value, high: wire },
            contact: Spread { low: WIRE_LEAST.value, high: most.max(CONTACT_MOST.value) },
            open_switch: Spread::exactly(defaults::OPEN_SWITCH.value),
            string: up_to(STRING_LEAST),
            rectified_string: up_to(HEATER_PRIMARY_LEAST),
            primary: up_to(PRIMARY_LEAST),
            heater_primary: up_to(HEATER_PRIMARY_LEAST),
            ahead: from(if motor { MOTOR_LEAST } else { AHEAD_LEAST }),
            behind: if motor { from(MOTOR_LEAST) } else { OPEN },
            joint: between(WIRE_LEAST, JOINT_MOST),
            rectifier: from(RECTIFIER_LEAST),
            network: from(WIRE_LEAST),
            insulation: from(INSULATION_LEAST),
            capacitor: from(LEAKY_CAPACITOR),
            class_y: from(CLASS_Y_LEAST),
            bond: between(WIRE_LEAST, BOND_MOST),
            no_bond: from(WIRE_LEAST),
            loose: from(INSULATION_LEAST),
        }
    }
}
