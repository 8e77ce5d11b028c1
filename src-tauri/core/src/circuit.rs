//! Solves a small linear network of resistors, capacitors and held voltages at one frequency.
//!
//! The method is the star–mesh transform: a node that nobody asks for is removed by joining its
//! neighbours to each other, `y_ij += y_ki·y_kj / Σ y_k`. No step subtracts a large sum from another,
//! as elimination of a matrix does on its diagonal, so a 1 GΩ open switch beside a 0.01 Ω joint keeps
//! full precision without pivoting. What is left is the port and the
//! held nodes, which is the Thévenin equivalent itself.
//!
//! Where the supply floats, all is reckoned from its middle and earth is a node like any other, joined to the middle
//! by strays: two held contacts with equal strays are the same as their middle behind both. A port is then between
//! its node and that one.
//!
//! It knows nothing of radios, and does not do inductors or dependent sources.

#![expect(
    clippy::indexing_slicing,
    reason = "a node's index is masked to the size of the arrays, so no access can be out of bounds"
)]

use std::f64::consts::TAU;

use num_complex::Complex64;

/// Most nodes a network can have, earth included.
const NODES: usize = 8;

/// A node of the network: one of eight places.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Node(u8);

impl Node {
    /// Earth, held at 0 V in every network.
    pub const EARTH: Self = Self::at(0);

    /// The node with this number; numbers are taken modulo eight.
    pub const fn at(number: u8) -> Self {
        Self(number % NODES as u8)
    }

    /// Its number.
    pub const fn number(self) -> u8 {
        self.0
    }

    // The mask tells the compiler what `at` guarantees, so that no access can be out of bounds.
    const fn index(self) -> usize {
        (self.0 as usize) & (NODES - 1)
    }

    const fn bit(self) -> u8 {
        1 << (self.0 & 7)
    }
}

/// What a port looks like from outside: an open-circuit voltage behind an impedance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thevenin {
    /// Open-circuit voltage against earth, V rms.
    pub volts: Complex64,
    /// Source impedance, Ω; infinite where nothing is connected.
    pub ohms: Complex64,
}

impl Thevenin {
    /// The voltage against earth, V rms, when `load` Ω is put across the port.
    pub fn loaded(&self, load: Complex64) -> Complex64 {
        self.volts * load / (self.ohms + load)
    }

    /// The same port seen through one more impedance, in Ω.
    pub fn through(&self, ohms: Complex64) -> Self {
        Self { volts: self.volts, ohms: self.ohms + ohms }
    }
}

/// A network of resistors and capacitors between at most eight nodes, some held at a voltage.
#[derive(Clone, Debug)]
pub struct Network {
    radians: f64,
    admittance: [[Complex64; NODES]; NODES],
    held: [f64; NODES],
    held_mask: u8,
    used_mask: u8,
    /// The node that is earth: the one that is held at 0 V, unless the supply floats.
    earth: Node,
}

const NOTHING: Complex64 = Complex64::new(0.0, 0.0);

impl Network {
    /// An empty network at `hertz`; only earth is held.
    pub fn new(hertz: f64) -> Self {
        Self {
            radians: TAU * hertz,
            admittance: [[NOTHING; NODES]; NODES],
            held: [0.0; NODES],
            held_mask: Node::EARTH.bit(),
            used_mask: Node::EARTH.bit(),
            earth: Node::EARTH,
        }
    }

    /// An empty network whose supply floats: nodes are held against its middle, and `earth` is what stands for
    /// [`Node::EARTH`] in it, joined to the middle by `farads` of strays.
    pub fn afloat(hertz: f64, earth: Node, farads: f64) -> Self {
        let mut net = Self { earth, ..Self::new(hertz) };
        let siemens = Complex64::new(0.0, net.radians * farads);
        net.admit(earth, Node::EARTH, siemens);
        net
    }

    /// What stands for a node: earth is another where the supply floats.
    fn own(&self, node: Node) -> Node {
        if node == Node::EARTH { self.earth } else { node }
    }

    /// Holds a node at `volts` rms against earth, or against the middle of a supply that floats, in phase with all
    /// others: an ideal outlet contact.
    pub fn hold(&mut self, node: Node, volts: f64) {
        self.held[node.index()] = volts;
        self.held_mask |= node.bit();
        self.used_mask |= node.bit();
    }

    /// Joins two nodes by a resistor of `ohms`.
    pub fn resistor(&mut self, a: Node, b: Node, ohms: f64) {
        self.join(a, b, Complex64::new(1.0 / ohms, 0.0));
    }

    /// Joins two nodes by a capacitor of `farads`.
    pub fn capacitor(&mut self, a: Node, b: Node, farads: f64) {
        self.join(a, b, Complex64::new(0.0, self.radians * farads));
    }

    /// The impedance of a capacitor of `farads` at this network's frequency, Ω.
    pub fn reactance(&self, farads: f64) -> Complex64 {
        Complex64::new(0.0, -1.0 / (self.radians * farads))
    }

    fn join(&mut self, a: Node, b: Node, siemens: Complex64) {
        self.admit(self.own(a), self.own(b), siemens);
    }

    fn admit(&mut self, a: Node, b: Node, siemens: Complex64) {
        if a == b {
            return;
        }
        self.admittance[a.index()][b.index()] += siemens;
        self.admittance[b.index()][a.index()] += siemens;
        self.used_mask |= a.bit() | b.bit();
    }

    /// The Thévenin equivalent between a node and earth.
    pub fn seen_from(&self, port: Node) -> Thevenin {
        let mut reduced = self.clone();
        reduced.reduce_to(port.bit() | self.earth.bit());
        if self.earth == Node::EARTH { reduced.port(port) } else { reduced.port_afloat(port) }
    }

    /// The Thévenin equivalents of two nodes, each with nothing connected to the other port.
    ///
    /// Shares the removal of all other nodes, which is most of the work.
    pub fn seen_from_both(&self, first: Node, second: Node) -> [Thevenin; 2] {
        let mut shared = self.clone();
        shared.reduce_to(first.bit() | second.bit() | self.earth.bit());
        [shared.seen_from(first), shared.seen_from(second)]
    }

    /// The voltage of a node against earth, or against the middle of a supply that floats, V rms; 0 V where nothing
    /// is connected.
    pub fn voltage(&self, node: Node) -> Complex64 {
        let node = self.own(node);
        if self.held_mask & node.bit() != 0 {
            return Complex64::new(self.held[node.index()], 0.0);
        }
        let mut reduced = self.clone();
        reduced.reduce_to(node.bit());
        reduced.port(node).volts
    }

    /// The port between a node and the earth of a supply that floats, once only the two and held nodes are left: each
    /// seen from the middle, one after the other, beside what joins the two.
    fn port_afloat(&self, port: Node) -> Thevenin {
        let [own, earth] = [self.port(port), self.port(self.earth)];
        let ohms = own.ohms + earth.ohms;
        let volts = own.volts - earth.volts;
        let between = self.admittance[port.index()][self.earth.index()];
        if ohms.re.is_infinite() || between == NOTHING {
            return Thevenin { volts, ohms };
        }
        let through = (Complex64::new(1.0, 0.0) + between * ohms).inv();
        Thevenin { volts: volts * through, ohms: ohms * through }
    }

    /// The port's own sums once only it and held nodes are left.
    fn port(&self, port: Node) -> Thevenin {
        let row = &self.admittance[port.index()];
        let mut total = NOTHING;
        let mut current = NOTHING;
        for number in 0..NODES as u8 {
            let other = Node::at(number);
            if self.held_mask & other.bit() != 0 && other != port {
                let siemens = row[other.index()];
                total += siemens;
                current += siemens * self.held[other.index()];
            }
        }
        if total == NOTHING {
            return Thevenin { volts: NOTHING, ohms: Complex64::new(f64::INFINITY, 0.0) };
        }
        let ohms = total.inv();
        Thevenin { volts: current * ohms, ohms }
    }

    /// Removes every node that is neither kept nor held.
    fn reduce_to(&mut self, keep: u8) {
        let mut left = self.used_mask & !self.held_mask & !keep;
        while left != 0 {
            let node = Node::at(left.trailing_zeros() as u8);
            left &= left - 1;
            self.remove(node);
        }
    }

    /// Star–mesh: joins the neighbours of a node to each other and takes the node out.
    fn remove(&mut self, node: Node) {
        let star = self.admittance[node.index()];
        let mut neighbours = [(Node::EARTH, NOTHING); NODES];
        let mut count = 0;
        let mut total = NOTHING;
        for number in 0..NODES as u8 {
            let other = Node::at(number);
            let siemens = star[other.index()];
            if self.used_mask & other.bit() != 0 && siemens != NOTHING {
                neighbours[count & (NODES - 1)] = (other, siemens);
                count += 1;
                total += siemens;
            }
        }
        self.used_mask &= !node.bit();
        if total == NOTHING {
            return;
        }
        let inverse = total.inv();
        let mut rest = neighbours.get(..count).unwrap_or_default();
        while let Some(((a, siemens), others)) = rest.split_first() {
            let share = siemens * inverse;
            for (b, other) in others {
                // What flows between two held nodes concerns no port.
                if self.held_mask & a.bit() == 0 || self.held_mask & b.bit() == 0 {
                    let added = share * other;
                    self.admittance[a.index()][b.index()] += added;
                    self.admittance[b.index()][a.index()] += added;
                }
            }
            rest = others;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Network, Node};
    use num_complex::Complex64;

    const HOT: Node = Node::at(1);
    const MIDDLE: Node = Node::at(2);
    const CHASSIS: Node = Node::at(3);

    #[test]
    fn a_divider_divides() {
        let mut net = Network::new(60.0);
        net.hold(HOT, 120.0);
        net.resistor(HOT, MIDDLE, 1000.0);
        net.resistor(MIDDLE, Node::EARTH, 2000.0);
        let port = net.seen_from(MIDDLE);
        assert!((port.volts - Complex64::new(80.0, 0.0)).norm() < 1e-12);
        assert!((port.ohms.re - 2000.0 / 3.0).abs() < 1e-9);
    }

    #[test]
    fn a_node_that_nobody_asks_for_is_removed_exactly() {
        let mut net = Network::new(50.0);
        net.hold(HOT, 230.0);
        net.resistor(HOT, MIDDLE, 0.05);
        net.resistor(MIDDLE, CHASSIS, 1e9);
        net.capacitor(CHASSIS, Node::EARTH, 1e-9);
        let expected_ohms = (Complex64::new(1.0 / (1e9 + 0.05), 0.0)
            + Complex64::new(0.0, std::f64::consts::TAU * 50.0 * 1e-9))
        .inv();
        let port = net.seen_from(CHASSIS);
        assert!((port.ohms - expected_ohms).norm() / expected_ohms.norm() < 1e-14);
    }

    #[test]
    fn behind_strays_alone_earth_is_as_far_as_they_are() {
        let mut net = Network::afloat(60.0, Node::at(4), 4e-9);
        net.hold(HOT, 60.0);
        net.hold(MIDDLE, -60.0);
        net.resistor(MIDDLE, CHASSIS, 10.0);
        let strays = -1.0 / (std::f64::consts::TAU * 60.0 * 4e-9);
        let chassis = net.seen_from(CHASSIS);
        assert!((chassis.volts - Complex64::new(-60.0, 0.0)).norm() < 1e-12);
        assert!((chassis.ohms - Complex64::new(10.0, strays)).norm() < 1e-9 * strays.abs());
        // An earth wire takes nearly all of it: 0.2 Ω behind 10 Ω and the strays.
        net.resistor(CHASSIS, Node::EARTH, 0.2);
        let share = Complex64::new(0.2, 0.0) / Complex64::new(10.2, strays);
        let earthed = net.seen_from(CHASSIS).volts;
        assert!((earthed - -60.0 * share).norm() < 1e-12, "{earthed}");
        // Against the middle, earth then stands nearly where the chassis does.
        assert!((net.voltage(Node::EARTH) - net.voltage(CHASSIS) + earthed).norm() < 1e-9);
    }

    #[test]
    fn nothing_connected_is_no_volts_behind_no_path() {
        let net = Network::new(60.0);
        let port = net.seen_from(CHASSIS);
        assert_eq!(port.volts, Complex64::new(0.0, 0.0));
        assert!(port.ohms.re.is_infinite());
    }
}
