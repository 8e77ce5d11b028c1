//! What an ohmmeter shows on a physical unit that is unplugged.

use std::collections::BTreeMap;

use rand::Rng;
use serde_json::{Value, json};

use super::PhysicalUnit;
use super::condition::{Condition, MotorAt};
use super::ohms::Resistors;
use super::parts::{AerialPost, EarthContact, EarthWire, Feed, MetalNode, PlateSource};

const BLADE: [usize; 2] = [0, 1];
const EARTH: usize = 2;
const LEG: [usize; 2] = [3, 4];
const COMMON: usize = 5;
const CHASSIS: usize = 6;
const POST: usize = 7;
const LOOSE: usize = 8;

/// A meter.
#[derive(Clone, Copy, Debug)]
pub struct Meter {
    /// The highest resistance it shows, Ω.
    pub max_ohms: f64,
    /// Accuracy, % of the reading.
    pub percent: f64,
    /// Accuracy, digits of the last place.
    pub digits: f64,
    /// What the display counts to.
    pub counts: f64,
}

impl Meter {
    /// The meter that is meant where nothing is said of it.
    pub const USUAL: Self = Self { max_ohms: 2e6, percent: 1.0, digits: 2.0, counts: 2000.0 };

    /// One of a few kinds.
    pub fn random(rng: &mut impl Rng) -> Self {
        let kinds = [
            Self::USUAL,
            Self { max_ohms: 20e6, percent: 0.8, digits: 3.0, counts: 2000.0 },
            Self { max_ohms: 60e6, percent: 0.5, digits: 3.0, counts: 6000.0 },
            Self { max_ohms: 40e6, percent: 1.5, digits: 5.0, counts: 4000.0 },
        ];
        kinds[rng.random_range(0..kinds.len())]
    }

    /// As a findings file says it.
    pub fn json(&self) -> Value {
        json!({"max_ohms": self.max_ohms, "percent": self.percent, "digits": self.digits})
    }

    /// What it shows, within its accuracy and rounded to its last place.
    pub fn shows(&self, ohms: f64, rng: &mut impl Rng) -> Value {
        let mut range = self.counts / 10.0;
        while range < ohms && range < self.max_ohms {
            range *= 10.0;
        }
        let digit = range / self.counts;
        // Rounding is one half digit of the accuracy it has.
        let off = ohms * self.percent / 100.0 + (self.digits - 0.5) * digit;
        let shown = ((ohms + off * rng.random_range(-1.0..=1.0)) / digit).round() * digit;
        if shown.is_finite() && shown <= self.max_ohms {
            json!(shown.max(0.0))
        } else {
            json!("OL")
        }
    }
}

impl PhysicalUnit {
    /// What an honest inspector reads, every reading that can be taken, by its id.
    pub fn readings(
        &self,
        condition: &Condition,
        meter: &Meter,
        rng: &mut impl Rng,
    ) -> Vec<(String, Value)> {
        let truth = self.true_ohms(condition, rng.random_range(30.0..800.0));
        truth.into_iter().map(|(id, ohms)| (id.to_owned(), meter.shows(ohms, rng))).collect()
    }

    /// The resistances themselves, Ω; `outside_primary` is that of an outside supply, where there is one.
    pub fn true_ohms(
        &self,
        condition: &Condition,
        outside_primary: f64,
    ) -> BTreeMap<&'static str, f64> {
        let mut found = BTreeMap::new();
        if self.feed == Feed::Batteries {
            return found;
        }
        let (pin_b, pieces) = (self.lettered_b(), self.pieces());
        for (on, ids) in [
            (true, ["ohms_a_chassis_on", "ohms_b_chassis_on", "ohms_a_part_on", "ohms_b_part_on"]),
            (
                false,
                ["ohms_a_chassis_off", "ohms_b_chassis_off", "ohms_a_part_off", "ohms_b_part_off"],
            ),
        ] {
            let net = self.network(condition, on, outside_primary);
            let [a, b] = [BLADE[1 - pin_b], BLADE[pin_b]];
            found.insert(ids[0], net.between(a, CHASSIS));
            found.insert(ids[1], net.between(b, CHASSIS));
            if !pieces.is_empty() {
                for (id, pin) in [(ids[2], a), (ids[3], b)] {
                    let each = pieces.iter().map(|piece| net.between(pin, *piece));
                    found.insert(id, each.fold(f64::INFINITY, f64::min));
                }
            }
            found.insert(if on { "ohms_a_b_on" } else { "ohms_a_b_off" }, net.between(a, b));
            if on && self.has_earth_contact() {
                found.insert("ohms_earth_chassis", net.between(EARTH, CHASSIS));
                if !pieces.is_empty() {
                    let each = pieces.iter().map(|piece| net.between(EARTH, *piece));
                    found.insert("ohms_earth_part", each.fold(0.0, f64::max));
                }
            }
        }
        found
    }

    /// The blade that the inspector calls B; without the plug only the tape tells.
    fn lettered_b(&self) -> usize {
        if self.plug_lost { self.taped_pin } else { self.pin_b() }
    }

    fn has_earth_contact(&self) -> bool {
        let contact = self.plug.as_ref().map_or(EarthContact::None, |plug| plug.earth);
        matches!(contact, EarthContact::Pin | EarthContact::SideClips) && !self.plug_lost
    }

    /// Every bare piece that a probe can touch with the cover on.
    fn pieces(&self) -> Vec<usize> {
        let node = |node: MetalNode| match node {
            MetalNode::Nothing => LOOSE,
            MetalNode::Chassis => CHASSIS,
            MetalNode::Common => COMMON,
        };
        let bare = self.bare_metal.iter().map(|metal| node(metal.node));
        let terminals = self.terminals.iter().map(|terminals| node(terminals.node));
        let post = self.aerial_post.iter().map(|post| match post {
            AerialPost::ThroughCapacitor(_) => POST,
            AerialPost::Straight(joined) => node(*joined),
            AerialPost::CoilOnly => LOOSE,
        });
        let behind = (!self.back_fitted).then_some(CHASSIS);
        bare.chain(terminals).chain(post).chain(behind).collect()
    }

    fn network(&self, condition: &Condition, on: bool, outside_primary: f64) -> Resistors {
        let mut net = Resistors::new(9);
        if self.feed == Feed::OutsideSupply {
            net.join(BLADE[0], BLADE[1], outside_primary);
            return net;
        }
        // The motor's own switch is worked; the set's stands open.
        let elsewhere = matches!(condition.motor, Some((MotorAt::OwnSwitchWorked, _)));
        for conductor in 0..2 {
            let closed = on && !elsewhere;
            let switch = match (self.switch_opens[conductor], closed) {
                (false, _) => 0.0,
                (true, true) => condition.contact[conductor],
                (true, false) => f64::INFINITY,
            };
            net.join(BLADE[conductor], LEG[conductor], condition.conductor[conductor] + switch);
        }
        match condition.motor {
            Some((MotorAt::Ahead, ohms)) => net.join(BLADE[0], BLADE[1], ohms),
            Some((MotorAt::Behind, ohms)) => net.join(LEG[0], LEG[1], ohms),
            Some((MotorAt::OwnSwitchWorked, ohms)) if on => net.join(BLADE[0], BLADE[1], ohms),
            _ => {}
        }
        net.join(LEG[0], LEG[1], condition.load);
        net.join(LEG[0], LEG[1], condition.beside_load);
        self.join_common(&mut net, condition);
        self.join_capacitors(&mut net, condition);
        self.join_earth(&mut net, condition);
        net
    }

    fn join_common(&self, net: &mut Resistors, condition: &Condition) {
        if let Some(conductor) = self.common_conductor {
            net.join(LEG[conductor], COMMON, condition.to_common);
        } else if self.plates_from == PlateSource::LineBridgeOrDoubler {
            // From leg to leg one of the two faces backwards, so at most one of them shows.
            let shown = usize::from(condition.rectifier[1] < condition.rectifier[0]);
            net.join(LEG[shown], COMMON, condition.rectifier[shown]);
        } else {
            for (leg, insulation) in LEG.into_iter().zip(condition.insulation) {
                net.join(leg, CHASSIS, insulation);
            }
        }
        net.join(COMMON, CHASSIS, condition.bond);
    }

    fn join_capacitors(&self, net: &mut Resistors, condition: &Condition) {
        if let Some(capacitor) = self.leg_capacitor {
            // On the panel switch: on whichever leg that stands.
            let on_switch = capacitor.from == [false, false];
            for leg in 0..2 {
                if capacitor.from[leg] || (on_switch && leg == usize::from(condition.lift_closed)) {
                    net.join(LEG[leg], CHASSIS, condition.leg_capacitor[leg]);
                }
            }
        }
        if matches!(self.aerial_post, Some(AerialPost::ThroughCapacitor(_))) {
            net.join(COMMON, POST, condition.post_capacitor);
        }
    }

    fn join_earth(&self, net: &mut Resistors, condition: &Condition) {
        let bonded = match self.earth_wire {
            EarthWire::OnChassis => true,
            EarthWire::LiftSwitch => condition.lift_closed,
            EarthWire::Loose | EarthWire::Absent => false,
        };
        if bonded {
            net.join(EARTH, CHASSIS, condition.earth);
        }
    }
}

/// A part of the readings, as an inspector in a hurry takes them.
pub fn random_readings(readings: &[(String, Value)], rng: &mut impl Rng) -> Vec<(String, Value)> {
    let thoroughness = [0.3, 0.6, 0.9, 1.0][rng.random_range(0..4)];
    readings.iter().filter(|_| rng.random_bool(thoroughness)).cloned().collect()
}

#[cfg(test)]
mod checks {
    use std::collections::BTreeSet;

    use rand::SeedableRng;
    use rand_chacha::ChaCha8Rng;

    use super::super::factors::{Factors, Isolation, Reach, SwitchLeg};
    use super::*;

    fn built(isolation: Isolation, switch_leg: SwitchLeg) -> (PhysicalUnit, Condition) {
        let mut rng = ChaCha8Rng::seed_from_u64(7);
        let wanted = Factors { isolation, switch_leg, reach: Reach::Exposed, ..Factors::NO_LINE };
        let mut unit = PhysicalUnit::of(wanted, &mut rng);
        unit.motor = false;
        let condition = Condition::sound(&unit, &mut rng);
        (unit, condition)
    }

    #[test]
    fn a_tied_set_reads_through_its_wires_its_switch_and_its_string() {
        let (unit, condition) = built(Isolation::LineTied, SwitchLeg::Near);
        let ohms = unit.true_ohms(&condition, 0.0);
        let near = unit.near_conductor();
        let wires = condition.conductor[near] + condition.contact[near] + condition.to_common;
        let direct = wires + condition.bond;
        let of = |id: &str| ohms[id];
        assert!((of("ohms_b_chassis_on") - direct).abs() < 1e-6);
        assert!(of("ohms_b_chassis_off").is_infinite());
        let far = condition.conductor[1 - near] + condition.load + condition.to_common;
        assert!((of("ohms_a_chassis_off") - far - condition.bond).abs() < 1e-6);
        assert!(of("ohms_a_b_on") > condition.load && of("ohms_a_b_off").is_infinite());
        // The metal is the chassis, or the common that the chassis hangs on.
        let part = of("ohms_b_part_on");
        assert!((part - direct).abs() < 1e-6 || (part - wires).abs() < 1e-6, "{part}");
    }

    #[test]
    fn a_sound_isolating_set_is_open_to_the_metal_and_closed_from_pin_to_pin() {
        let (unit, condition) = built(Isolation::Isolating, SwitchLeg::Both);
        let ohms = unit.true_ohms(&condition, 0.0);
        for (id, ohms) in &ohms {
            assert_eq!(ohms.is_finite(), *id == "ohms_a_b_on", "{id}: {ohms}");
        }
    }

    #[test]
    fn a_meter_stays_within_its_accuracy_and_ends_at_its_range() {
        let mut rng = ChaCha8Rng::seed_from_u64(8);
        for ohms in [0.04, 0.4, 3.1, 120.0, 199.9, 5_000.0, 220e3, 1.9e6] {
            for _ in 0..200 {
                let shown = Meter::USUAL.shows(ohms, &mut rng);
                let digit = [0.1, 1.0, 10.0, 100.0, 1000.0].into_iter();
                let digit =
                    digit.zip([200.0, 2e3, 2e4, 2e5, 2e6]).find(|(_, range)| ohms <= *range);
                let most = ohms * 0.01 + 2.0 * digit.expect("a range").0;
                assert!(shown.as_f64().is_none_or(|shown| (shown - ohms).abs() <= most + 1e-9));
            }
        }
        assert_eq!(Meter::USUAL.shows(2.5e6, &mut rng), "OL");
        assert_eq!(Meter::USUAL.shows(f64::INFINITY, &mut rng), "OL");
    }

    #[test]
    fn every_reading_comes_up_and_each_both_open_and_not() {
        let mut rng = ChaCha8Rng::seed_from_u64(9);
        let (mut open, mut closed) = (BTreeSet::new(), BTreeSet::new());
        for _ in 0..3000 {
            let unit = PhysicalUnit::random(&mut rng);
            let condition = Condition::random(&unit, &mut rng);
            for (id, value) in unit.readings(&condition, &Meter::random(&mut rng), &mut rng) {
                if value == "OL" {
                    open.insert(id)
                } else {
                    closed.insert(id)
                };
            }
        }
        assert_eq!((open.len(), closed.len()), (12, 12));
    }
}
