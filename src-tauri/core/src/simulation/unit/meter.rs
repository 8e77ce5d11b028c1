//! What an honest inspector's ohmmeter shows on a physical unit that is unplugged.
//!
//! The parts are joined as they really are, at direct current, in the state in which the meter finds them
//! ([`Condition`]). Nothing here knows how the core predicts a reading.

mod circuit;
mod condition;
mod display;
mod ranges;

#[cfg(test)]
mod tests;

use std::collections::BTreeMap;

use rand::Rng;
use serde_json::Value;

use super::PhysicalUnit;
use super::chance::any;
use super::conductor::{Conductor, Pair};
use super::parts::{AerialPost, EarthContact, Feed, MetalNode};
use circuit::Circuit;
use ranges::{PROBES, WIRE};

pub use condition::{Condition, Motor, OwnSwitch};
pub use display::Meter;

const BLADE: Pair<usize> = Pair(0, 1);
/// Behind cord and fuse, ahead of the switch.
const INSIDE: Pair<usize> = Pair(2, 3);
/// Behind the switch.
const LEG: Pair<usize> = Pair(4, 5);
const EARTH: usize = 6;
const COMMON: usize = 7;
const CHASSIS: usize = 8;
const POST: usize = 9;

/// Ids of what is read with the switch in one place, from pin A and from pin B.
struct Ids {
    chassis: [&'static str; 2],
    part: [&'static str; 2],
    pins: &'static str,
}

const ON: Ids = Ids {
    chassis: ["ohms_a_chassis_on", "ohms_b_chassis_on"],
    part: ["ohms_a_part_on", "ohms_b_part_on"],
    pins: "ohms_a_b_on",
};
const OFF: Ids = Ids {
    chassis: ["ohms_a_chassis_off", "ohms_b_chassis_off"],
    part: ["ohms_a_part_off", "ohms_b_part_off"],
    pins: "ohms_a_b_off",
};

impl PhysicalUnit {
    /// Resistance of every reading that can be taken on this unit, Ω, by the reading's id; infinite is open.
    pub fn true_ohms(&self, condition: &Condition) -> BTreeMap<&'static str, f64> {
        let mut ohms = BTreeMap::new();
        let no_cord = self.feed == Feed::Line && self.plug.is_none();
        if self.feed == Feed::Batteries || no_cord {
            return ohms;
        }
        let pieces = self.pieces();
        for (ids, on) in [(ON, true), (OFF, false)] {
            let circuit = self.circuit(condition, on);
            for ((blade, chassis), part) in self.pins().into_iter().zip(ids.chassis).zip(ids.part) {
                ohms.insert(chassis, circuit.ohms(blade, CHASSIS));
                if let Some(least) = over(&pieces, |piece| to(&circuit, blade, piece), f64::min) {
                    ohms.insert(part, least);
                }
            }
            ohms.insert(ids.pins, circuit.ohms(BLADE.0, BLADE.1));
        }
        if self.has_earth_contact() {
            let circuit = self.circuit(condition, false);
            ohms.insert("ohms_earth_chassis", circuit.ohms(EARTH, CHASSIS));
            if let Some(most) = over(&pieces, |piece| to(&circuit, EARTH, piece), f64::max) {
                ohms.insert("ohms_earth_part", most);
            }
        }
        ohms
    }

    /// What the meter shows at every reading that can be taken: reading id, and ohms or `"OL"`.
    pub fn readings(
        &self,
        condition: &Condition,
        meter: &Meter,
        rng: &mut impl Rng,
    ) -> Vec<(String, Value)> {
        let mut show = |ohm: f64| meter.shows(ohm + rng.random_range(PROBES.0..PROBES.1), rng);
        let ohms = self.true_ohms(condition).into_iter();
        ohms.map(|(id, ohm)| (id.to_owned(), show(ohm))).collect()
    }

    /// The blades that the inspector calls A and B.
    fn pins(&self) -> [usize; 2] {
        let Pair(first, second) = BLADE;
        if self.letter(Conductor::First) == "a" { [first, second] } else { [second, first] }
    }

    fn has_earth_contact(&self) -> bool {
        let plug = self.plug.as_ref().filter(|_| self.feed == Feed::Line && !self.plug_lost);
        plug.is_some_and(|plug| matches!(plug.earth, EarthContact::Pin | EarthContact::SideClips))
    }

    /// The node of each piece of metal that a probe reaches with the cover on; `None` where it is joined to
    /// nothing. A terminal is reached even where a finger is too thick for it.
    fn pieces(&self) -> Vec<Option<usize>> {
        let node = |node| match node {
            MetalNode::Nothing => None,
            MetalNode::Chassis => Some(CHASSIS),
            MetalNode::Common => Some(COMMON),
        };
        let metal = self.bare_metal.iter().map(|metal| node(metal.node));
        let terminals = self.terminals.iter().map(|terminals| node(terminals.node));
        let post = self.aerial_post.iter().map(|post| match *post {
            AerialPost::ThroughCapacitor(_) => Some(POST),
            AerialPost::Straight(joined) => node(joined),
            AerialPost::CoilOnly => None,
        });
        let chassis = (!self.back_fitted).then_some(Some(CHASSIS));
        metal.chain(terminals).chain(post).chain(chassis).collect()
    }

    /// The parts as they are joined with the switch that the inspector works on or off.
    fn circuit(&self, condition: &Condition, on: bool) -> Circuit {
        let mut circuit = Circuit::new();
        if self.feed == Feed::OutsideSupply {
            circuit.join(BLADE.0, BLADE.1, condition.load_ohm);
            return circuit;
        }
        self.join_line(&mut circuit, condition, on);
        circuit.join(LEG.0, LEG.1, condition.load_ohm);
        circuit.join(LEG.0, LEG.1, condition.charging_ohm);
        if let Some(conductor) = self.common_conductor {
            circuit.join(LEG[conductor], COMMON, condition.common_ohm);
        }
        for conductor in Conductor::BOTH {
            let leg = LEG[conductor];
            circuit.join(leg, COMMON, condition.rectifier_ohm[conductor]);
            circuit.join(leg, CHASSIS, condition.insulation_ohm[conductor]);
            circuit.join(leg, CHASSIS, condition.capacitor_ohm[conductor]);
        }
        circuit.join(COMMON, CHASSIS, condition.bond_ohm);
        circuit.join(COMMON, POST, condition.aerial_ohm);
        circuit.join(EARTH, CHASSIS, condition.earth_ohm);
        circuit
    }

    /// Cord, power switch and motor.
    fn join_line(&self, circuit: &mut Circuit, condition: &Condition, on: bool) {
        let closed = on && !condition.wrong_switch();
        for conductor in Conductor::BOTH {
            circuit.join(BLADE[conductor], INSIDE[conductor], condition.cord_ohm[conductor]);
            let switch = match (self.switch_opens[conductor], closed) {
                (false, _) => WIRE,
                (true, true) => condition.contact_ohm[conductor],
                (true, false) => f64::INFINITY,
            };
            circuit.join(INSIDE[conductor], LEG[conductor], switch);
        }
        if let Some(motor) = condition.motor {
            let runs = match motor.own_switch {
                OwnSwitch::None | OwnSwitch::Closed => true,
                OwnSwitch::Open => false,
                OwnSwitch::Worked => on,
            };
            let Pair(from, to) = if motor.ahead { INSIDE } else { LEG };
            circuit.join(from, to, if runs { motor.ohm } else { f64::INFINITY });
        }
    }
}

fn to(circuit: &Circuit, from: usize, piece: Option<usize>) -> f64 {
    piece.map_or(f64::INFINITY, |node| circuit.ohms(from, node))
}

/// The lowest or highest over all pieces; `None` where there is no piece.
fn over(
    pieces: &[Option<usize>],
    ohm: impl Fn(Option<usize>) -> f64,
    choose: fn(f64, f64) -> f64,
) -> Option<f64> {
    pieces.iter().map(|piece| ohm(*piece)).reduce(choose)
}

/// A part of the readings, as an inspector in a hurry takes them.
pub fn random_readings(readings: &[(String, Value)], rng: &mut impl Rng) -> Vec<(String, Value)> {
    let thoroughness = any(0.1, &[0.3, 0.6, 0.85, 1.0], rng);
    readings.iter().filter(|_| rng.random_bool(thoroughness)).cloned().collect()
}
