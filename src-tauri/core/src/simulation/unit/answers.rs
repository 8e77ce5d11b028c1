//! What an honest inspector answers in front of a physical unit.

use std::collections::BTreeSet;

use rand::Rng;
use serde_json::{Map, Value, json};

use super::PhysicalUnit;
use super::chance::{any, one_of};
use super::conductor::{Conductor, Pair};
use super::factors::Isolation;
use super::parts::{
    AerialPost, Bond, CordState, EarthContact, EarthWire, Feed, HeaterSource, MetalNode,
    PlateSource,
};

/// How often a choice between equally truthful answers falls on the rarer one (assumption).
pub(super) const RARER: f64 = 0.2;
/// How often "can't tell" stands in for an answer in a subset (assumption).
const CANT_TELL: f64 = 0.03;
/// Prefix of the keys that go to `values` of a findings file.
const VALUES: &str = "values.";
/// Key of the tube list, which the findings file holds at its top level.
pub(super) const TUBES: &str = "tubes";

/// Answers in the order of asking.
pub(super) type Answers = Vec<(String, Value)>;

pub(super) fn tell(answers: &mut Answers, id: &str, answer: impl Into<Value>) {
    answers.push((id.to_owned(), answer.into()));
}

impl PhysicalUnit {
    /// Truthful answers to every question that can be put to this unit, and the values of its
    /// parts: keys are question ids, `tubes`, and `values.<name>`.
    ///
    /// Where two answers are both true, `rng` picks one.
    pub fn answers(&self, rng: &mut impl Rng) -> Vec<(String, Value)> {
        let mut answers = Vec::new();
        tell(&mut answers, "plug", self.plug_answer());
        self.tell_metal(rng, &mut answers);
        self.tell_iron(rng, &mut answers);
        self.tell_joints(&mut answers);
        if self.isolation() != Isolation::NoLine {
            self.tell_conductors(&mut answers);
            self.tell_cord(rng, &mut answers);
        }
        self.tell_soft(rng, &mut answers);
        self.tell_condition(&mut answers);
        self.tell_values(rng, &mut answers);
        answers
    }

    /// The findings file of a part of the answers.
    pub fn findings(&self, chosen: &[(String, Value)], supply: &Value, access: &[&str]) -> Value {
        let (mut answers, mut values) = (Map::new(), Map::new());
        let mut file = Map::new();
        file.insert("supply".to_owned(), supply.clone());
        file.insert("access".to_owned(), json!(access));
        for (id, answer) in chosen {
            if id == TUBES {
                file.insert(TUBES.to_owned(), answer.clone());
            } else if let Some(name) = id.strip_prefix(VALUES) {
                values.insert(name.to_owned(), answer.clone());
            } else {
                answers.insert(id.clone(), answer.clone());
            }
        }
        file.insert("answers".to_owned(), Value::Object(answers));
        file.insert("values".to_owned(), Value::Object(values));
        Value::Object(file)
    }

    fn plug_answer(&self) -> &'static str {
        match (self.feed, &self.plug) {
            (Feed::Batteries, _) => "battery_only",
            (Feed::OutsideSupply, _) => "outside_supply",
            (Feed::Line, Some(plug)) if !self.plug_lost => match plug.earth {
                EarthContact::Pin => "three_pins",
                EarthContact::Stump => "earth_pin_missing",
                EarthContact::SideClips => "three_pins_reversible",
                EarthContact::None if plug.wide_blade().is_some() => "two_polarised_blades",
                EarthContact::None => "two_equal_blades",
            },
            (Feed::Line, _) => "no_plug",
        }
    }

    /// The pin letter of a conductor. Without the plug only the tape tells.
    pub(super) fn letter(&self, conductor: Conductor) -> &'static str {
        let pin_b = if self.plug_lost { self.taped_pin } else { self.pin_b() };
        if conductor == pin_b { "b" } else { "a" }
    }

    fn pin(&self, conductor: Conductor) -> String {
        format!("pin_{}", self.letter(conductor))
    }

    fn tell_metal(&self, rng: &mut impl Rng, answers: &mut Answers) {
        tell(answers, "bare_metal", self.bare_metal_answer(rng));
        tell(answers, "back", if self.back_fitted { "fitted" } else { "missing" });
        let mut terminals = Vec::new();
        if self.aerial_post.is_some() {
            terminals.push("aerial_or_earth");
        }
        if self.terminals.is_some() {
            terminals.push("pickup_or_speaker");
        }
        tell(answers, "terminals", if terminals.is_empty() { vec!["none"] } else { terminals });
        if let Some(joined) = self.metal_joined_answer(rng) {
            tell(answers, "metal_joined", joined);
        }
    }

    /// A complete look: metal at sockets, jacks and terminals is in it too.
    fn bare_metal_answer(&self, rng: &mut impl Rng) -> Vec<&'static str> {
        let mut found: BTreeSet<&'static str> =
            self.bare_metal.iter().map(|metal| metal.place.answer()).collect();
        if self.bare_metal.iter().any(|metal| metal.held) {
            // The answer names other metal that is held in use beside the jacks.
            found.insert("instrument_jack");
        }
        let post = match self.aerial_post {
            Some(AerialPost::Straight(_)) => true,
            // Behind its capacitor the post has its own answer under `terminals`; some inspectors
            // will still list its screw as bare metal.
            Some(AerialPost::ThroughCapacitor(_)) => rng.random_bool(RARER),
            Some(AerialPost::CoilOnly) | None => false,
        };
        if post || self.terminals.is_some_and(|terminals| terminals.bare) {
            found.insert("socket_or_pickup");
        }
        if found.is_empty() { vec!["none_anywhere"] } else { found.into_iter().collect() }
    }

    /// `None` where there is no metal to trace.
    fn metal_joined_answer(&self, rng: &mut impl Rng) -> Option<&'static str> {
        let nodes = self.wired_nodes();
        let found = |node| nodes.contains(&node);
        // A wire from common to chassis makes them one node, and either word is true.
        let one_node = self.bond == Bond::Direct;
        if found(MetalNode::Chassis) || found(MetalNode::Common) {
            let common = if one_node {
                rng.random_bool(if found(MetalNode::Common) { 1.0 - RARER } else { RARER })
            } else {
                found(MetalNode::Common)
            };
            return Some(if common { "common" } else { "chassis" });
        }
        let screw_behind_capacitor =
            matches!(self.aerial_post, Some(AerialPost::ThroughCapacitor(_)));
        (!nodes.is_empty() || screw_behind_capacitor).then_some("no")
    }

    fn tell_iron(&self, rng: &mut impl Rng, answers: &mut Answers) {
        tell(answers, "transformer", self.transformer_answer(rng));
        let (mains_iron, small_iron) = self.iron();
        let seen = match (mains_iron, small_iron) {
            (true, _) => "large",
            (false, true) => "small",
            (false, false) => "none_visible",
        };
        // From outside iron can hide behind the chassis, so "none visible" is always truthful.
        tell(answers, "iron_seen", if rng.random_bool(RARER) { "none_visible" } else { seen });
    }

    /// Whether there is a large transformer, and whether there is any smaller iron.
    fn iron(&self) -> (bool, bool) {
        let large =
            matches!(self.plates_from, PlateSource::TappedWinding | PlateSource::SeparateWinding);
        let heaters =
            matches!(self.heaters_from, HeaterSource::Transformer | HeaterSource::MotorWinding);
        (large, heaters || self.motor || self.output_transformer)
    }

    fn transformer_answer(&self, rng: &mut impl Rng) -> &'static str {
        let truthful: &[&'static str] = match (self.isolation(), self.heaters_from) {
            (Isolation::Isolating, _) => &["separate_traced", "separate_traced", "not_traced"],
            (Isolation::Autotransformer, _) => &["shared_lead", "shared_lead", "not_traced"],
            // One lead of the heater winding goes to the common, and the common is on the line.
            (Isolation::HeaterTransformer, HeaterSource::MotorWinding) => {
                &["heaters_only_traced", "motor_winding", "shared_lead", "not_traced"]
            }
            (Isolation::HeaterTransformer, _) => {
                &["heaters_only_traced", "shared_lead", "not_traced"]
            }
            // The motor of a battery player is no mains motor, and still not "none".
            (Isolation::NoLine, _) if self.motor => &["not_traced"],
            _ if self.motor => &["motor_winding", "not_traced"],
            _ => &["none", "none", "not_traced"],
        };
        one_of(truthful, rng).unwrap_or("not_traced")
    }

    fn tell_joints(&self, answers: &mut Answers) {
        let bond = match self.bond {
            Bond::Direct => "direct",
            Bond::Network { .. } => "through_network",
            Bond::Insulated => "not_joined",
        };
        tell(answers, "common_to_chassis", bond);
        let leg = self.common_conductor.map(|conductor| self.pin(conductor));
        tell(answers, "common_leg", leg.unwrap_or("neither".to_owned()));
        tell(answers, "selector", if self.polarity_switch { "present" } else { "absent" });
    }

    fn tell_conductors(&self, answers: &mut Answers) {
        let switch = match self.switch_opens {
            Pair(true, true) => "both".to_owned(),
            Pair(true, false) => self.pin(Conductor::First),
            Pair(false, true) => self.pin(Conductor::Second),
            Pair(false, false) => "none".to_owned(),
        };
        tell(answers, "switch_leg", switch);
        let capacitor = match self.leg_capacitor.map(|capacitor| capacitor.from) {
            None => "none".to_owned(),
            Some(Pair(true, true)) => "both_legs".to_owned(),
            Some(Pair(true, false)) => format!("{}_leg", self.pin(Conductor::First)),
            Some(Pair(false, true)) => format!("{}_leg", self.pin(Conductor::Second)),
            Some(Pair(false, false)) => "on_selector".to_owned(),
        };
        tell(answers, "line_capacitor", capacitor);
        if let Some(capacitor) = self.leg_capacitor {
            let class = if capacitor.class_y { "class_y" } else { "ordinary" };
            tell(answers, "line_capacitor_class", class);
        }
        let fuse = self.fuse_in.map(|conductor| format!("{}_leg", self.pin(conductor)));
        tell(answers, "fuse", fuse.unwrap_or("none".to_owned()));
    }

    fn tell_cord(&self, rng: &mut impl Rng, answers: &mut Answers) {
        // A wire that ends on a lift switch is on the chassis or not as the switch stands: nobody can tell.
        // The question asks for a wire from a whole earth contact; without the plug nobody can tell.
        let on_chassis = self.earth_wire == EarthWire::OnChassis;
        let contact = self.plug.as_ref().map_or(EarthContact::None, |plug| plug.earth);
        let whole = matches!(contact, EarthContact::Pin | EarthContact::SideClips);
        let lift = self.earth_wire == EarthWire::LiftSwitch;
        if !(lift || on_chassis && self.plug_lost) {
            let earthed = on_chassis && whole;
            tell(answers, "earth_wire", if earthed { "on_chassis" } else { "not_on_chassis" });
        }
        tell(answers, "earth_lift", if lift { "present" } else { "absent" });
        let states = match self.cord_state {
            CordState::Sound => "sound",
            CordState::Cracked => "cracked",
            CordState::Spliced => "spliced",
            CordState::ClothOrRubber => "cloth_or_rubber",
        };
        tell(answers, "cord", states);
        let two_pins = self.plug.as_ref().is_some_and(|plug| plug.earth == EarthContact::None);
        let third = self.resistance_cord || self.earth_wire == EarthWire::OnChassis;
        let odd = two_pins && !self.plug_lost && third && !rng.random_bool(RARER);
        tell(answers, "cord_wires", if odd { "three_wires_two_pins" } else { "ordinary" });
        tell(answers, "accessory_outlet", if self.accessory_outlet { "present" } else { "absent" });
    }
}

/// A part of the answers, as an inspector in a hurry leaves them: some left out, a few "can't tell".
pub fn random_subset(answers: &[(String, Value)], rng: &mut impl Rng) -> Vec<(String, Value)> {
    let thoroughness = any(0.1, &[0.3, 0.6, 0.85, 1.0], rng);
    let mut chosen = Vec::new();
    for (id, answer) in answers {
        if !rng.random_bool(thoroughness) {
            continue;
        }
        let question = id != TUBES && !id.starts_with(VALUES);
        let unsure = question && rng.random_bool(CANT_TELL);
        chosen.push((id.clone(), if unsure { json!("cant_tell") } else { answer.clone() }));
    }
    chosen
}
