//! The way a current takes through a network: from an outlet contact to whoever touches it, or to earth.
//!
//! Of all ways the one whose weakest branch carries the most; of those the shortest. Where branches
//! share a current, the others carry the rest of it.

use num_complex::Complex64;

use super::branch::Branch;
use super::part::Part;
use super::values::{Values, defaults};
use super::wiring::{AERIAL, CHASSIS, CUT_PIN, HOT, NEAR, NEUTRAL, Wiring};
use crate::circuit::{Network, Node};
use crate::supply::Contacts;

/// Currents that differ by less than this share are taken as the same: the shorter way is drawn then.
const SAME: f64 = 1e-6;

/// A network with whoever touches it, and what flows in each of its branches.
struct Flow {
    /// Both ends, the part and its current, A rms.
    branches: Vec<(Node, Node, Part, f64)>,
    sources: Vec<Node>,
}

/// A way found so far.
#[derive(Clone)]
struct Found {
    parts: Vec<Part>,
    /// What its weakest branch carries, A rms.
    weakest: f64,
}

impl Wiring {
    /// The parts a current passes from the outlet to a touched node with `ohms` Ω from there to earth, in that
    /// order; without anybody, to the chassis and its earth wire. Nothing where no current flows.
    pub fn way(
        self,
        values: &Values,
        hertz: f64,
        contacts: Contacts,
        person: Option<(Part, f64)>,
    ) -> Vec<Part> {
        let goal = person.map_or(CHASSIS, |(touched, _)| self.node_of(touched));
        let flow = self.flow(values, hertz, contacts, person);
        let mut best = None;
        for source in &flow.sources {
            let start = Found { parts: vec![contact(*source)], weakest: f64::INFINITY };
            flow.search(*source, goal, 1 << source.number(), &start, &mut best);
        }
        let Some(Found { mut parts, .. }) = best else { return Vec::new() };
        if goal == NEAR {
            parts.push(Part::Common);
        }
        if self.is_earthed() && parts.contains(&Part::Chassis) {
            parts.push(Part::EarthWire);
        }
        parts.extend(person.map(|_| Part::Person));
        parts
    }

    /// What stands for a node that can be touched.
    fn node_of(self, touched: Part) -> Node {
        match touched {
            Part::AerialTerminal => AERIAL,
            Part::Common => self.common(),
            _ => CHASSIS,
        }
    }

    fn flow(
        self,
        values: &Values,
        hertz: f64,
        contacts: Contacts,
        person: Option<(Part, f64)>,
    ) -> Flow {
        let mut net = self.network(values, hertz, contacts);
        let mut branches = self.branches(values);
        if let Some((touched, ohms)) = person {
            if touched == Part::AerialTerminal {
                let aerial = self.aerial_branch(values);
                aerial.add_to(&mut net);
                branches.push(aerial);
            }
            net.resistor(self.node_of(touched), Node::EARTH, ohms);
        }
        let [hot, neutral] = contacts.volts;
        let held = [(HOT, hot), (NEUTRAL, neutral)];
        let sources = held.into_iter().filter(|(_, volts)| *volts != 0.0).map(|(node, _)| node);
        Flow { branches: currents(&net, &branches), sources: sources.collect() }
    }

    fn aerial_branch(self, values: &Values) -> Branch {
        let common = self.common();
        if self.is_aerial_shorted() {
            Branch::resistor(Part::AerialCapacitor, common, AERIAL, defaults::SHORT.value)
        } else {
            Branch::capacitor(Part::AerialCapacitor, common, AERIAL, values.aerial_farad)
        }
    }

    /// Every branch of its network.
    fn branches(self, values: &Values) -> Vec<Branch> {
        let mut branches = Vec::new();
        self.each_branch(values, &mut |branch| branches.push(branch));
        branches
    }
}

/// What flows in each part, A rms: branches of one part side by side are one.
fn currents(net: &Network, branches: &[Branch]) -> Vec<(Node, Node, Part, f64)> {
    let mut sums: Vec<(Node, Node, Part, Complex64)> = Vec::new();
    for branch in branches {
        let volts = net.voltage(branch.from) - net.voltage(branch.to);
        let amperes = volts * branch.siemens(net);
        let alike = sums.iter_mut().find(|(from, to, part, _)| {
            (*from, *to, *part) == (branch.from, branch.to, branch.part)
        });
        match alike {
            Some((.., sum)) => *sum += amperes,
            None => sums.push((branch.from, branch.to, branch.part, amperes)),
        }
    }
    sums.into_iter().map(|(from, to, part, amperes)| (from, to, part, amperes.norm())).collect()
}

impl Flow {
    /// Follows every way from a node that passes no node twice, and keeps the best that ends at the goal.
    fn search(&self, at: Node, goal: Node, passed: u8, way: &Found, best: &mut Option<Found>) {
        if at == goal {
            if best.as_ref().is_none_or(|best| way.is_better_than(best)) {
                *best = Some(way.clone());
            }
            return;
        }
        for (from, to, part, amperes) in &self.branches {
            let next = match (*from == at, *to == at) {
                (true, _) => *to,
                (_, true) => *from,
                _ => continue,
            };
            // A contact or earth is an end, not a way through.
            let is_end = [Node::EARTH, HOT, NEUTRAL].contains(&next);
            if is_end || passed >> next.number() & 1 == 1 || *amperes == 0.0 {
                continue;
            }
            let mut more = way.clone();
            more.parts.extend(passage(*part, *from == at));
            more.parts.extend(place(next));
            more.weakest = more.weakest.min(*amperes);
            self.search(next, goal, passed | 1 << next.number(), &more, best);
        }
    }
}

impl Found {
    fn is_better_than(&self, other: &Self) -> bool {
        let margin = SAME * other.weakest;
        if (self.weakest - other.weakest).abs() > margin {
            self.weakest > other.weakest
        } else {
            self.parts.len() < other.parts.len()
        }
    }
}

const fn contact(source: Node) -> Part {
    if source.number() == NEUTRAL.number() { Part::NeutralContact } else { Part::HotContact }
}

/// A branch as the parts that are passed: a leg is its conductor and its switch contact.
fn passage(part: Part, inwards: bool) -> Vec<Part> {
    let mut parts = match part {
        Part::FarConductor => vec![part, Part::FarSwitch],
        Part::NearConductor => vec![part, Part::NearSwitch],
        part => vec![part],
    };
    if !inwards {
        parts.reverse();
    }
    parts
}

/// What a node itself is called, where it is something.
const fn place(node: Node) -> Option<Part> {
    match node.number() {
        number if number == CHASSIS.number() => Some(Part::Chassis),
        number if number == AERIAL.number() => Some(Part::AerialTerminal),
        number if number == CUT_PIN.number() => Some(Part::NeutralContact),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::{Contacts, Part, Wiring};
    use crate::arrangement::{
        Arrangement, Cord, Fault, FaultSet, Isolation, LineCapacitor, LineCapacitorClass, LineSide,
        NearPin, PlugWay, Reach, State, Switch, SwitchLeg, Values,
    };

    const OUTLET: Contacts = Contacts::held(120.0, 0.0);

    fn tied(switch_leg: SwitchLeg) -> Arrangement {
        let line = LineSide {
            cord: Cord::TwoPinReversible,
            near_pin: NearPin::B,
            line_capacitor: LineCapacitor::None,
            line_capacitor_class: LineCapacitorClass::Ordinary,
            switch_leg,
            reach: Reach::Exposed,
        };
        Arrangement { isolation: Isolation::LineTied, line: Some(line) }
    }

    fn way(of: &Arrangement, plug: PlugWay, switch: Switch, faults: FaultSet) -> Vec<Part> {
        let state = State { plug, switch, selector: None };
        let wiring = Wiring::of(of, state, faults).expect("a line side");
        wiring.way(&Values::default(), 60.0, OUTLET, Some((Part::Chassis, 742.5)))
    }

    #[test]
    fn a_hot_near_leg_goes_straight_to_the_hand() {
        let found = way(&tied(SwitchLeg::Far), PlugWay::Second, Switch::On, FaultSet::NONE);
        let expected = [
            Part::HotContact,
            Part::NearConductor,
            Part::NearSwitch,
            Part::NearChassis,
            Part::Chassis,
            Part::Person,
        ];
        assert_eq!(found, expected);
    }

    #[test]
    fn with_the_switch_in_the_near_leg_off_the_current_comes_through_the_heaters() {
        let found = way(&tied(SwitchLeg::Near), PlugWay::First, Switch::Off, FaultSet::NONE);
        let expected = [
            Part::HotContact,
            Part::FarConductor,
            Part::FarSwitch,
            Part::Load,
            Part::NearChassis,
            Part::Chassis,
            Part::Person,
        ];
        assert_eq!(found, expected);
    }

    #[test]
    fn a_loose_wire_is_the_way() {
        let faults = FaultSet::NONE.with(Fault::StrayFar);
        let found = way(&tied(SwitchLeg::Far), PlugWay::First, Switch::Off, faults);
        assert_eq!(found, [Part::HotContact, Part::StrayFar, Part::Chassis, Part::Person]);
    }
}
