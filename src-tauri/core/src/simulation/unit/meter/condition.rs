//! The state of a unit's parts at the moment when somebody holds a meter to it.

use rand::Rng;

use super::super::PhysicalUnit;
use super::super::chance::{any, one_of, over_decades};
use super::super::conductor::{Conductor, Pair};
use super::super::factors::Isolation;
use super::super::parts::{
    AerialPost, Bond, EarthWire, Feed, HeaterSource, LegCapacitor, PlateSource,
};
use super::ranges::*;

/// The switch of a motor.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OwnSwitch {
    /// It has none.
    None,
    /// It has one, and that stands open.
    Open,
    /// It has one, and that stands closed.
    Closed,
    /// It is the switch that the inspector works, taken for the set's, which stands open unnoticed.
    Worked,
}

/// A motor across the line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Motor {
    /// Its winding, Ω.
    pub ohm: f64,
    /// It is fed ahead of the power switch.
    pub ahead: bool,
    /// Its own switch.
    pub own_switch: OwnSwitch,
}

/// The parts of one unit as a meter finds them, Ω; infinite is open.
#[derive(Clone, Debug, PartialEq)]
pub struct Condition {
    /// Cord conductor and fuse, from the blade to the inside.
    pub cord_ohm: Pair<f64>,
    /// Closed contact of the power switch, in the legs that it opens.
    pub contact_ohm: Pair<f64>,
    /// Heater string or winding, between the legs. With an outside supply: its primary.
    pub load_ohm: f64,
    /// Plate supply that charges up while it is measured, between the legs.
    pub charging_ohm: f64,
    /// The motor, unless its winding is the load.
    pub motor: Option<Motor>,
    /// Common to its conductor.
    pub common_ohm: f64,
    /// Common to chassis.
    pub bond_ohm: f64,
    /// Each leg to the common through a rectifier that faces this meter.
    pub rectifier_ohm: Pair<f64>,
    /// Each leg to the chassis through the insulation of a winding.
    pub insulation_ohm: Pair<f64>,
    /// Each leg to the chassis through a line capacitor.
    pub capacitor_ohm: Pair<f64>,
    /// The leg on which the panel switch stands.
    pub selector_leg: Conductor,
    /// Common to aerial post through its capacitor.
    pub aerial_ohm: f64,
    /// Earth contact to chassis.
    pub earth_ohm: f64,
}

impl Condition {
    /// A unit as it is found: some part may be broken or leaky.
    pub fn random(unit: &PhysicalUnit, rng: &mut impl Rng) -> Self {
        let mut found = Self::sound(unit, rng);
        found.leak(unit, rng);
        found.break_parts(unit, rng);
        found
    }

    /// The same with nothing broken or leaky. Heaters may be warm and contacts burnt.
    pub fn sound(unit: &PhysicalUnit, rng: &mut impl Rng) -> Self {
        let (load_ohm, motor) = load_and_motor(unit, rng);
        let separate = unit.plates_from == PlateSource::SeparateWinding;
        let bridge = unit.plates_from == PlateSource::LineBridgeOrDoubler;
        let half_wave = unit.plates_from == PlateSource::LineHalfWave;
        Self {
            cord_ohm: Pair::each(|conductor| cord(unit, conductor, rng)),
            contact_ohm: Pair::each(|_| contact(rng)),
            load_ohm,
            charging_ohm: sometimes(half_wave, CHARGES, CHARGING, rng),
            motor,
            common_ohm: over_decades(JOINT, rng),
            bond_ohm: match unit.bond {
                Bond::Direct => over_decades(JOINT, rng),
                Bond::Network { ohm, .. } => ohm,
                Bond::Insulated => over_decades(SOUND_INSULATION, rng),
            },
            rectifier_ohm: if bridge { rectifiers(rng) } else { Pair::alike(f64::INFINITY) },
            insulation_ohm: if separate {
                Pair::each(|_| over_decades(SOUND_INSULATION, rng))
            } else {
                Pair::alike(f64::INFINITY)
            },
            capacitor_ohm: Pair::alike(f64::INFINITY),
            selector_leg: Conductor::random(rng),
            aerial_ohm: f64::INFINITY,
            earth_ohm: earth(unit, rng),
        }
    }

    /// A unit with one part failed short and nothing else broken: its state and the fault's id.
    pub fn failed(unit: &PhysicalUnit, rng: &mut impl Rng) -> Option<(Self, &'static str)> {
        let fault = one_of(&faults(unit), rng)?;
        let mut found = Self::sound(unit, rng);
        let short = over_decades(SHORT, rng);
        let near = unit.near_conductor();
        match fault {
            "near_capacitor_shorted" => found.capacitor_ohm[near] = short,
            "far_capacitor_shorted" => found.capacitor_ohm[near.other()] = short,
            "selector_capacitor_shorted" => found.capacitor_ohm[found.selector_leg] = short,
            "insulation_breakdown" if unit.isolation() == Isolation::Isolating => {
                found.insulation_ohm[near.other()] = short;
            }
            // The network's capacitor, or the insulation between common and chassis.
            _ => found.bond_ohm = beside(found.bond_ohm, short),
        }
        Some((found, fault))
    }

    /// The inspector works the motor's switch and takes it for the set's.
    pub fn wrong_switch(&self) -> bool {
        self.motor.is_some_and(|motor| motor.own_switch == OwnSwitch::Worked)
    }

    fn leak(&mut self, unit: &PhysicalUnit, rng: &mut impl Rng) {
        self.bond_ohm = match unit.bond {
            Bond::Direct => self.bond_ohm,
            Bond::Network { ohm, .. } => network(ohm, rng),
            Bond::Insulated => over_decades(INSULATION, rng),
        };
        if unit.plates_from == PlateSource::SeparateWinding {
            self.insulation_ohm = Pair::each(|_| over_decades(INSULATION, rng));
        }
        if let Some(LegCapacitor { from, class_y, .. }) = unit.leg_capacitor {
            let leak = if class_y { CLASS_Y_LEAK } else { ORDINARY_LEAK };
            let on_selector = from == Pair::alike(false);
            for leg in Conductor::BOTH {
                if from[leg] || (on_selector && leg == self.selector_leg) {
                    self.capacitor_ohm[leg] = over_decades(leak, rng);
                }
            }
        }
        let through = matches!(unit.aerial_post, Some(AerialPost::ThroughCapacitor(_)));
        self.aerial_ohm = sometimes(through, AERIAL_LEAKS, ORDINARY_LEAK, rng);
    }

    fn break_parts(&mut self, unit: &PhysicalUnit, rng: &mut impl Rng) {
        let string = unit.feed == Feed::Line && has_string(unit);
        if rng.random_bool(if string { STRING_OPEN } else { OPEN }) {
            match &mut self.motor {
                // Its winding is the load, and it has gone to a switch of its own.
                Some(motor) if unit.heaters_from == HeaterSource::MotorWinding => {
                    motor.ohm = f64::INFINITY;
                }
                _ => self.load_ohm = f64::INFINITY,
            }
        }
        if rng.random_bool(OPEN) {
            let conductor = unit.fuse_in.filter(|_| rng.random_bool(0.5));
            self.cord_ohm[conductor.unwrap_or(Conductor::random(rng))] = f64::INFINITY;
        }
    }
}

/// Two resistances side by side, Ω.
fn beside(first: f64, second: f64) -> f64 {
    (first.recip() + second.recip()).recip()
}

fn sometimes(there: bool, odds: f64, range: Range, rng: &mut impl Rng) -> f64 {
    if there && rng.random_bool(odds) { over_decades(range, rng) } else { f64::INFINITY }
}

fn cord(unit: &PhysicalUnit, conductor: Conductor, rng: &mut impl Rng) -> f64 {
    let fused = unit.fuse_in == Some(conductor);
    rng.random_range(CORD.0..CORD.1) + if fused { over_decades(FUSE, rng) } else { 0.0 }
}

fn contact(rng: &mut impl Rng) -> f64 {
    over_decades(if rng.random_bool(BURNT) { BURNT_CONTACT } else { CONTACT }, rng)
}

fn earth(unit: &PhysicalUnit, rng: &mut impl Rng) -> f64 {
    let joined = match unit.earth_wire {
        EarthWire::OnChassis => true,
        EarthWire::LiftSwitch => rng.random_bool(0.5),
        EarthWire::Absent | EarthWire::Loose => false,
    };
    if joined { over_decades(EARTH, rng) } else { f64::INFINITY }
}

/// The heaters hang on the line by themselves.
fn has_string(unit: &PhysicalUnit) -> bool {
    !on_iron(unit) && unit.heaters_from == HeaterSource::LineString
}

fn on_iron(unit: &PhysicalUnit) -> bool {
    matches!(unit.plates_from, PlateSource::TappedWinding | PlateSource::SeparateWinding)
}

/// What is between the legs, and the motor. A motor that heats the tubes is the load itself, and where
/// the inspector works its switch in place of the set's, it is that motor ahead of the set's switch.
fn load_and_motor(unit: &PhysicalUnit, rng: &mut impl Rng) -> (f64, Option<Motor>) {
    let heats = !on_iron(unit) && unit.heaters_from == HeaterSource::MotorWinding;
    let load = load(unit, rng);
    let motor = (unit.motor && unit.feed == Feed::Line).then(|| motor(unit, rng));
    match motor {
        Some(motor) if heats && motor.own_switch == OwnSwitch::Worked => {
            (f64::INFINITY, Some(Motor { ohm: load, ..motor }))
        }
        _ if heats => (load, None),
        _ => (load, motor),
    }
}

fn load(unit: &PhysicalUnit, rng: &mut impl Rng) -> f64 {
    let winding = if unit.supply_volts < HIGH_VOLTS { 1.0 } else { HIGH_WINDING };
    match (unit.feed, unit.heaters_from) {
        (Feed::OutsideSupply, _) => over_decades(OUTSIDE_PRIMARY, rng),
        (Feed::Batteries, _) => f64::INFINITY,
        _ if on_iron(unit) => {
            let amplifier = unit.kind == "instrument_amplifier" && rng.random_bool(0.5);
            winding * over_decades(if amplifier { AMPLIFIER_PRIMARY } else { PRIMARY }, rng)
        }
        (_, HeaterSource::LineString) => string(unit, rng),
        (_, HeaterSource::Transformer) => winding * over_decades(HEATER_PRIMARY, rng),
        (_, HeaterSource::MotorWinding) => over_decades(TAPPED_MOTOR, rng),
        (_, HeaterSource::LowVoltage) => f64::INFINITY,
    }
}

fn string(unit: &PhysicalUnit, rng: &mut impl Rng) -> f64 {
    let warm = if rng.random_bool(WARM) {
        rng.random_range(WARM_OVER_COLD.0..WARM_OVER_COLD.1)
    } else {
        1.0
    };
    let mut heaters = 0.0;
    for tube in unit.line_up.tubes {
        let within = 1.0 + HEATER_WITHIN * rng.random_range(-1.0..=1.0);
        let ratio = rng.random_range(HOT_OVER_COLD.0..HOT_OVER_COLD.1);
        heaters += tube.volts / tube.amperes * within / ratio * warm;
    }
    heaters + unit.line_up.dropper_ohm * rng.random_range(DROPPER.0..DROPPER.1)
}

fn motor(unit: &PhysicalUnit, rng: &mut impl Rng) -> Motor {
    if unit.kind == "table_radio" {
        let ohm = over_decades(CLOCK_MOTOR, rng);
        return Motor { ohm, ahead: true, own_switch: OwnSwitch::None };
    }
    let ohm = over_decades(MOTOR, rng);
    let (ahead, own_switch) = if rng.random_bool(WRONG_SWITCH) {
        (true, OwnSwitch::Worked)
    } else {
        let others = [OwnSwitch::None, OwnSwitch::Open, OwnSwitch::Closed];
        (rng.random_bool(0.5), any(OwnSwitch::None, &others, rng))
    };
    Motor { ohm, ahead, own_switch }
}

fn network(ohm: f64, rng: &mut impl Rng) -> f64 {
    let aged = ohm * rng.random_range(AGED.0..AGED.1);
    let resistor = if rng.random_bool(RESISTOR_OPEN) { f64::INFINITY } else { aged };
    let fate: f64 = rng.random();
    let capacitor = if fate < NETWORK_SHORTS {
        over_decades(SHORT, rng)
    } else if fate < NETWORK_SHORTS + NETWORK_LEAKS {
        over_decades(NETWORK_LEAK, rng)
    } else {
        f64::INFINITY
    };
    beside(resistor, capacitor)
}

/// A vacuum rectifier is open when cold; silicon shows something from one leg or both, or nothing.
fn rectifiers(rng: &mut impl Rng) -> Pair<f64> {
    let silicon = rng.random_bool(SILICON);
    let surge = rng.random_range(SURGE.0..SURGE.1);
    Pair::each(|_| surge + sometimes(silicon, 0.5, SILICON_SHOWS, rng))
}

/// The single faults of this unit by which a part is shorted, as the design has them.
fn faults(unit: &PhysicalUnit) -> Vec<&'static str> {
    if unit.feed != Feed::Line {
        return Vec::new();
    }
    let (isolation, near) = (unit.isolation(), unit.near_conductor());
    let mut faults = Vec::new();
    let ordinary = unit.leg_capacitor.filter(|part| !part.class_y);
    if let Some(capacitor) = ordinary.filter(|_| isolation.has_line_capacitor()) {
        if capacitor.from[near] {
            faults.push("near_capacitor_shorted");
        }
        if capacitor.from[near.other()] {
            faults.push("far_capacitor_shorted");
        }
        if capacitor.from == Pair::alike(false) {
            faults.push("selector_capacitor_shorted");
        }
    }
    match isolation {
        Isolation::LineFloated => faults.push("network_capacitor_shorted"),
        Isolation::LineInsulated | Isolation::Isolating => faults.push("insulation_breakdown"),
        _ => {}
    }
    faults
}
