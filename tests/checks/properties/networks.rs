//! Laws of passive networks: what they cannot do, whatever they are made of.

use coldchassis_core::body::{Body, Impedance};
use coldchassis_core::circuit::{Network, Node, Thevenin};
use coldchassis_core::hazard::touch_amperes;
use num_complex::Complex64;
use proptest::collection::vec;
use proptest::prelude::{
    Just, Strategy, TestCaseError, any, prop_assert, prop_assert_eq, prop_oneof, proptest,
};

use crate::cases;

/// Nodes 1 and 2 are held, 3 to 7 are free, 0 is earth.
const HELD: [u8; 2] = [1, 2];
const FREE: std::ops::Range<u8> = 3..8;

#[derive(Clone, Copy, Debug)]
enum Part {
    Resistor(f64),
    Capacitor(f64),
}

#[derive(Clone, Debug)]
struct Drawing {
    hertz: f64,
    held: [f64; 2],
    parts: Vec<(u8, u8, Part)>,
}

impl Drawing {
    fn network(&self) -> Network {
        let mut net = self.unheld();
        for (node, volts) in HELD.into_iter().zip(self.held) {
            net.hold(Node::at(node), volts);
        }
        net
    }

    fn unheld(&self) -> Network {
        let mut net = Network::new(self.hertz);
        for &(a, b, part) in &self.parts {
            match part {
                Part::Resistor(ohms) => net.resistor(Node::at(a), Node::at(b), ohms),
                Part::Capacitor(farads) => net.capacitor(Node::at(a), Node::at(b), farads),
            }
        }
        net
    }

    fn siemens(&self, part: Part) -> Complex64 {
        match part {
            Part::Resistor(ohms) => Complex64::new(1.0 / ohms, 0.0),
            Part::Capacitor(farads) => {
                Complex64::new(0.0, std::f64::consts::TAU * self.hertz * farads)
            }
        }
    }

    fn voltages(&self) -> [Complex64; 8] {
        let net = self.network();
        std::array::from_fn(|node| net.voltage(Node::at(node as u8)))
    }

    /// A current that rounding alone can explain, A.
    fn rounding(&self) -> f64 {
        let most: f64 = self.parts.iter().map(|(_, _, part)| self.siemens(*part).norm()).sum();
        1e-9 * most * self.highest().max(1.0)
    }

    fn highest(&self) -> f64 {
        self.held[0].abs().max(self.held[1].abs())
    }
}

fn resistor(decades: std::ops::Range<f64>) -> impl Strategy<Value = Part> {
    decades.prop_map(|decade| Part::Resistor(10f64.powf(decade)))
}

fn capacitor() -> impl Strategy<Value = Part> {
    (-11.0..-5.0).prop_map(|decade| Part::Capacitor(10f64.powf(decade)))
}

/// Both kinds of part, from a joint to an open switch.
fn either() -> impl Strategy<Value = Part> {
    prop_oneof![resistor(-2.0..9.0), capacitor()]
}

/// Resistors near the impedances of the capacitors, so that phases mix.
fn alike() -> impl Strategy<Value = Part> {
    prop_oneof![resistor(2.0..8.0), capacitor()]
}

fn drawing(part: impl Strategy<Value = Part>) -> impl Strategy<Value = Drawing> {
    let parts = vec((0u8..8, 0u8..8, part), 1..24);
    (15.0..400.0, [-400.0..400.0, -400.0..400.0], parts).prop_map(|(hertz, held, parts)| Drawing {
        hertz,
        held,
        parts,
    })
}

/// The current that leaves each node through the parts, A.
fn currents(drawing: &Drawing, volts: &[Complex64; 8]) -> [Complex64; 8] {
    let mut out = [Complex64::new(0.0, 0.0); 8];
    for &(a, b, part) in &drawing.parts {
        let current = (volts[a as usize] - volts[b as usize]) * drawing.siemens(part);
        out[a as usize] += current;
        out[b as usize] -= current;
    }
    out
}

/// The transfer impedance from one free node to another: driven through a resistor, read as voltage.
fn transfer_ohms(drawing: &Drawing, from: u8, to: u8, ohms: f64) -> Complex64 {
    let mut net = drawing.unheld();
    // The same resistor stays at both nodes, so that the network is the same both ways.
    net.resistor(Node::at(HELD[0]), Node::at(from), ohms);
    net.resistor(Node::at(HELD[1]), Node::at(to), ohms);
    net.hold(Node::at(HELD[0]), 1.0);
    net.hold(Node::at(HELD[1]), 0.0);
    net.voltage(Node::at(to)) * ohms
}

fn without_held(mut drawing: Drawing) -> Drawing {
    drawing.parts.retain(|(a, b, _)| !HELD.contains(a) && !HELD.contains(b));
    drawing
}

fn close(a: Complex64, b: Complex64, relative: f64) -> bool {
    (a - b).norm() <= relative * a.norm().max(b.norm())
}

fn within_the_held(drawing: &Drawing) -> Result<(), TestCaseError> {
    let [first, second] = drawing.held;
    let (low, high) = (first.min(second).min(0.0), first.max(second).max(0.0));
    let slack = 1e-9 * drawing.highest();
    for volts in drawing.voltages() {
        prop_assert!(low - slack <= volts.re && volts.re <= high + slack, "{volts}");
        prop_assert!(volts.im.abs() <= slack, "{volts}");
    }
    Ok(())
}

proptest! {
    #![proptest_config(cases(256))]

    #[test]
    fn a_port_has_no_negative_resistance_and_is_never_inductive(drawing in drawing(either())) {
        let net = drawing.network();
        for port in FREE {
            let ohms = net.seen_from(Node::at(port)).ohms;
            if ohms.re.is_finite() {
                prop_assert!(ohms.re >= -1e-12 * ohms.norm(), "node {port}: {ohms}");
                prop_assert!(ohms.im <= 1e-12 * ohms.norm(), "node {port}: {ohms}");
            }
        }
    }

    #[test]
    fn no_current_is_made_or_lost_at_a_free_node(drawing in drawing(either())) {
        let out = currents(&drawing, &drawing.voltages());
        for node in FREE {
            let lost = out[node as usize].norm();
            prop_assert!(lost <= drawing.rounding(), "node {node}: {lost} A");
        }
    }

    // Tellegen: what the held nodes deliver is what the resistors burn, and never less than nothing.
    #[test]
    fn a_network_delivers_no_power_of_its_own(drawing in drawing(alike())) {
        let volts = drawing.voltages();
        let out = currents(&drawing, &volts);
        let fed: Complex64 = HELD.iter().map(|&n| volts[n as usize] * out[n as usize].conj()).sum();
        let burnt: Complex64 = drawing.parts.iter().map(|&(a, b, part)| {
            let across = (volts[a as usize] - volts[b as usize]).norm_sqr();
            drawing.siemens(part).conj() * across
        }).sum();
        let slack = drawing.rounding() * drawing.highest();
        prop_assert!(fed.re >= -slack, "{fed} W");
        prop_assert!((fed - burnt).norm() <= slack, "fed {fed}, burnt {burnt}");
    }

    // The maximum principle needs parts of one kind: see the witness below.
    #[test]
    fn resistors_alone_stay_between_the_held_voltages(drawing in drawing(resistor(-2.0..9.0))) {
        within_the_held(&drawing)?;
    }

    #[test]
    fn capacitors_alone_stay_between_the_held_voltages(drawing in drawing(capacitor())) {
        within_the_held(&drawing)?;
    }

    // With one free node the voltage is a mean whose weights lie in one quarter of the plane.
    #[test]
    fn a_single_free_node_stays_within_the_highest_held_voltage(mut drawing in drawing(either())) {
        for (a, b, _) in &mut drawing.parts {
            (*a, *b) = (FREE.start, *b % FREE.start);
        }
        let volts = drawing.network().voltage(Node::at(FREE.start)).norm();
        prop_assert!(volts <= drawing.highest() * (1.0 + 1e-12), "{volts}");
    }

    #[test]
    fn what_one_node_does_to_another_the_other_does_to_it(
        drawing in drawing(either()).prop_map(without_held),
        decade in 0.0..6.0,
        from in FREE,
        step in 1u8..5,
    ) {
        let to = FREE.start + (from - FREE.start + step) % 5;
        let ohms = 10f64.powf(decade);
        let there = transfer_ohms(&drawing, from, to, ohms);
        let back = transfer_ohms(&drawing, to, from, ohms);
        // Both are read as a difference of up to 1 V from rounding in the last places.
        let slack = 1e-12 * ohms;
        prop_assert!((there - back).norm() <= slack + 1e-9 * there.norm(), "{there} {back}");
    }

    #[test]
    fn two_ports_seen_together_are_the_two_seen_alone(
        drawing in drawing(either()), first in FREE, second in FREE,
    ) {
        let net = drawing.network();
        let [first, second] = [first, second].map(Node::at);
        let both = net.seen_from_both(first, second);
        for (seen, node) in both.into_iter().zip([first, second]) {
            let alone = net.seen_from(node);
            if alone.ohms.re.is_infinite() {
                prop_assert_eq!(seen, alone);
                continue;
            }
            prop_assert!(close(seen.ohms, alone.ohms, 1e-9), "{seen:?} {alone:?}");
            let apart = (seen.volts - alone.volts).norm();
            prop_assert!(apart <= 1e-9 * drawing.highest(), "{seen:?} {alone:?}");
        }
    }

    #[test]
    fn a_person_receives_no_more_than_a_short_or_a_stiff_source_would_give(
        drawing in drawing(either()), port in FREE, factor in prop_oneof![Just(0.5), 0.25..1.0],
    ) {
        let body = Impedance::of(Body::default());
        let source: Thevenin = drawing.network().seen_from(Node::at(port));
        let current = touch_amperes(&body, factor, &source);
        let open = source.volts.norm();
        prop_assert!(current >= 0.0);
        if open > 0.0 {
            prop_assert!(current <= open / source.ohms.norm() * (1.0 + 1e-9));
            prop_assert!(current <= open / (factor * body.ohms(open)) * (1.0 + 1e-9));
        }
    }

    #[test]
    fn twice_the_volts_give_twice_the_volts(drawing in drawing(either()), negative in any::<bool>()) {
        let times = if negative { -2.0 } else { 2.0 };
        let scaled = Drawing { held: drawing.held.map(|volts| times * volts), ..drawing.clone() };
        for (one, other) in drawing.voltages().into_iter().zip(scaled.voltages()) {
            prop_assert!((one * times - other).norm() <= 1e-12 * drawing.highest());
        }
    }
}

/// Why the maximum principle is not claimed for resistors and capacitors together: a passive
/// network of both can lift a node above every held voltage.
///
/// A first section turns the phase back by 45°; a second, too light to load it, couples that by a
/// capacitor onto a node held up by a resistor: |1 + j·(1 − j)/2| / |1 + j| = √5 / 2.
#[test]
fn resistors_and_capacitors_together_can_lift_a_node_above_the_held_voltage() {
    let hertz = 50.0;
    let farads = |ohms: f64| 1.0 / (std::f64::consts::TAU * hertz * ohms);
    let (light, heavy) = (1e9, 1.0);
    let drawing = Drawing {
        hertz,
        held: [1.0, 0.0],
        parts: vec![
            (1, 3, Part::Resistor(heavy)),
            (3, 0, Part::Capacitor(farads(heavy))),
            (1, 4, Part::Resistor(light)),
            (3, 4, Part::Capacitor(farads(light))),
        ],
    };
    let lifted = drawing.network().voltage(Node::at(4)).norm();
    assert!((lifted - 5f64.sqrt() / 2.0).abs() < 1e-8, "{lifted}");
}
