//! One branch of a network: which part it stands for, what it joins, and what it is.

use num_complex::Complex64;

use super::part::Part;
use crate::circuit::{Network, Node};

/// A resistor or capacitor between two nodes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Branch {
    /// What it stands for.
    pub part: Part,
    /// One end.
    pub from: Node,
    /// The other end.
    pub to: Node,
    element: Element,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Element {
    /// Ω.
    Resistor(f64),
    /// F.
    Capacitor(f64),
}

impl Branch {
    /// A resistor of `ohms`.
    pub const fn resistor(part: Part, from: Node, to: Node, ohms: f64) -> Self {
        Self { part, from, to, element: Element::Resistor(ohms) }
    }

    /// A capacitor of `farads`.
    pub const fn capacitor(part: Part, from: Node, to: Node, farads: f64) -> Self {
        Self { part, from, to, element: Element::Capacitor(farads) }
    }

    /// Adds it to a network.
    pub fn add_to(&self, net: &mut Network) {
        match self.element {
            Element::Resistor(ohms) => net.resistor(self.from, self.to, ohms),
            Element::Capacitor(farads) => net.capacitor(self.from, self.to, farads),
        }
    }

    /// Its admittance in a network at that network's frequency, S.
    pub fn siemens(&self, net: &Network) -> Complex64 {
        match self.element {
            Element::Resistor(ohms) => Complex64::new(1.0 / ohms, 0.0),
            Element::Capacitor(farads) => net.reactance(farads).inv(),
        }
    }
}
