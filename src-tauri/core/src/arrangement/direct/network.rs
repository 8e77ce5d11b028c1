//! The network of an arrangement at direct current, and the resistance between two probes.

use super::super::factors::{
    Arrangement, Cord, Isolation, Leg, LineCapacitorClass, LineSide, NearPin, Reach,
};
use super::super::legs::capacitor_legs;
use super::super::reading::{Probe, ReadingId};
use super::super::state::{Selector, Switch};
use super::super::values::Spread;
use super::parts::DirectParts;
use crate::circuit::{Network, Node};

const PIN_A: Node = Node::at(1);
const PIN_B: Node = Node::at(2);
const EARTH_PIN: Node = Node::at(3);
const FAR: Node = Node::at(4);
const NEAR: Node = Node::at(5);
const CHASSIS: Node = Node::at(6);
const TERMINAL: Node = Node::at(7);

/// Which end of every part's range.
#[derive(Clone, Copy, PartialEq, Eq)]
enum End {
    Least,
    Most,
}

impl End {
    const fn of(self, range: Spread) -> f64 {
        match self {
            Self::Least => range.low,
            Self::Most => range.high,
        }
    }
}

/// The range of one reading of an arrangement, Ω; infinite where the circuit is open. Nothing for the
/// tests that are no ohmmeter reading, and for a unit without a line side, which has no pins.
pub fn reading_range(
    arrangement: &Arrangement,
    reading: ReadingId,
    parts: &DirectParts,
) -> Option<Spread> {
    let line = arrangement.line?;
    let (pin, place) = reading.probes()?;
    let switch = reading.switch().unwrap_or(Switch::On);
    let ohms = |end: End| {
        let parts = if place == Probe::PinB { &pin_to_pin(parts) } else { parts };
        let net = network(arrangement.isolation, &line, switch, parts, end);
        between(&net, pin, place, arrangement, parts, end)
    };
    Some(Spread { low: ohms(End::Least), high: ohms(End::Most) })
}

/// From leg to leg over the chassis of a line-rectified set one of its two rectifiers always faces
/// backwards.
const fn pin_to_pin(parts: &DirectParts) -> DirectParts {
    let open = Spread { low: f64::INFINITY, high: f64::INFINITY };
    DirectParts { rectifier: open, ..*parts }
}

fn between(
    net: &Network,
    pin: Probe,
    place: Probe,
    arrangement: &Arrangement,
    parts: &DirectParts,
    end: End,
) -> f64 {
    let from = node(pin);
    match place {
        Probe::Part => part(net, from, pin == Probe::EarthPin, arrangement, parts, end),
        other => across(net, from, node(other)),
    }
}

const fn node(probe: Probe) -> Node {
    match probe {
        Probe::PinA => PIN_A,
        Probe::PinB => PIN_B,
        Probe::EarthPin => EARTH_PIN,
        Probe::Chassis | Probe::Part => CHASSIS,
    }
}

/// The bare metal: every piece of it in turn. From a supply pin the lowest counts, from the earth pin the
/// highest, and a piece that is joined to nothing may be among them.
fn part(
    net: &Network,
    from: Node,
    highest: bool,
    arrangement: &Arrangement,
    parts: &DirectParts,
    end: End,
) -> f64 {
    let loose = end.of(parts.loose);
    let Some(line) = arrangement.line else { return loose };
    let common = if arrangement.isolation.has_own_common() { NEAR } else { CHASSIS };
    let to = |place: Node| across(net, from, place);
    match (line.reach, highest, end) {
        (Reach::Closed, ..) => loose,
        (Reach::AerialTerminal, ..) => loose.min(to(TERMINAL)),
        // The piece that counts for the reach is among them; others may read more.
        (Reach::Exposed | Reach::Handheld, true, End::Least) => to(CHASSIS),
        (Reach::CommonExposed, true, End::Least) => to(common),
        (_, true, End::Most) => f64::INFINITY,
        (Reach::Exposed | Reach::Handheld, false, End::Least) => {
            loose.min(to(TERMINAL)).min(to(CHASSIS))
        }
        (Reach::CommonExposed, false, End::Least) => loose.min(to(CHASSIS)).min(to(common)),
        (Reach::Exposed | Reach::Handheld, false, End::Most) => to(CHASSIS),
        (Reach::CommonExposed, false, End::Most) => to(common),
    }
}

/// The resistance between two nodes, Ω.
fn across(net: &Network, from: Node, to: Node) -> f64 {
    let mut net = net.clone();
    net.hold(to, 0.0);
    net.seen_from(from).ohms.re
}

fn network(
    isolation: Isolation,
    line: &LineSide,
    switch: Switch,
    parts: &DirectParts,
    end: End,
) -> Network {
    let mut net = Network::new(0.0);
    let mut join = |a: Node, b: Node, ohms: f64| {
        if ohms.is_finite() {
            net.resistor(a, b, ohms);
        }
    };
    let (far_pin, near_pin) = match line.near_pin {
        NearPin::A => (PIN_B, PIN_A),
        NearPin::B => (PIN_A, PIN_B),
    };
    join(PIN_A, PIN_B, end.of(parts.ahead));
    for (pin, node, leg) in [(far_pin, FAR, Leg::Far), (near_pin, NEAR, Leg::Near)] {
        let contact = match (line.switch_leg.opens(leg), switch) {
            (false, _) => 0.0,
            (true, Switch::On) => end.of(parts.contact),
            (true, Switch::Off) => end.of(parts.open_switch),
        };
        join(pin, node, end.of(parts.conductor) + contact);
    }
    join(FAR, NEAR, end.of(parts.behind));
    join(FAR, NEAR, end.of(load(isolation, parts)));
    for (leg, range) in to_chassis(isolation, parts) {
        join(leg, CHASSIS, end.of(range));
    }
    let capacitor = match line.line_capacitor_class {
        LineCapacitorClass::Ordinary => parts.capacitor,
        LineCapacitorClass::ClassY => parts.class_y,
    };
    // Nobody noted where a selector stands: its capacitor may be on either leg.
    let (near, _) = capacitor_legs(line.line_capacitor, Some(Selector::Near));
    let (_, far) = capacitor_legs(line.line_capacitor, Some(Selector::Far));
    for (leg, _) in [(NEAR, near), (FAR, far)].into_iter().filter(|(_, there)| *there) {
        join(leg, CHASSIS, end.of(capacitor));
    }
    let common = if isolation.has_own_common() { NEAR } else { CHASSIS };
    join(common, TERMINAL, end.of(parts.capacitor));
    if has_earth_pin(line.cord) {
        let bond = if line.cord.is_earthed() { parts.bond } else { parts.no_bond };
        join(EARTH_PIN, CHASSIS, end.of(bond));
    }
    net
}

/// What lies across the line behind the switch.
const fn load(isolation: Isolation, parts: &DirectParts) -> Spread {
    match isolation {
        Isolation::LineTied | Isolation::LineFloated | Isolation::LineInsulated => parts.string,
        Isolation::LineRectified => parts.rectified_string,
        Isolation::HeaterTransformer => parts.heater_primary,
        Isolation::Autotransformer | Isolation::Isolating | Isolation::NoLine => parts.primary,
    }
}

/// What joins the legs to the chassis.
fn to_chassis(
    isolation: Isolation,
    parts: &DirectParts,
) -> impl Iterator<Item = (Node, Spread)> + use<> {
    let (near, far) = match isolation {
        Isolation::LineTied | Isolation::HeaterTransformer | Isolation::Autotransformer => {
            (Some(parts.joint), None)
        }
        Isolation::LineRectified => (Some(parts.rectifier), Some(parts.rectifier)),
        Isolation::LineFloated => (Some(parts.network), None),
        Isolation::LineInsulated => (Some(parts.insulation), None),
        Isolation::Isolating => (Some(parts.insulation), Some(parts.insulation)),
        Isolation::NoLine => (None, None),
    };
    [(NEAR, near), (FAR, far)].into_iter().filter_map(|(leg, range)| Some((leg, range?)))
}

/// Whether the plug has an earth pin, or the stump of one, for a probe to touch.
const fn has_earth_pin(cord: Cord) -> bool {
    !matches!(cord, Cord::TwoPinReversible | Cord::TwoPinPolarised)
}
