//! Writes the network of one case as ngspice text.

use super::exposure::{Exposure, Feed, Reach, SwitchLeg};
use super::unit::{Part, Unit};
use super::{Body, Case, SpiceError, or_fail};
use std::fmt::Write as _;

/// A resistor below this, Ω, is written as a current meter and a voltage of ohms × that current.
/// It is the same part, but its 10 or 100 S is then never added to the 1 nS of an open switch on
/// one node, which would leave only six digits of what a floating unit does.
const BRANCH_BELOW_OHM: f64 = 1.0;

impl Part {
    /// The part as text between two written nodes.
    fn line(&self, prefix: &str, from: &str, to: &str) -> String {
        let (kind, name) = self.name.split_at(1);
        let value = self.value;
        if kind == "R" && value < BRANCH_BELOW_OHM {
            format!(
                "V{prefix}{name} {from} {prefix}in_{name} 0\n\
                 H{prefix}{name} {prefix}in_{name} {to} V{prefix}{name} {value:e}\n"
            )
        } else {
            format!("{kind}{prefix}{name} {from} {to} {value:e}\n")
        }
    }
}

/// Each conductor behind an isolating transformer to earth, F (common practice: the most between winding and core).
const ISOLATED_STRAY_FARAD: f64 = 2e-9;

/// What drives the network.
#[derive(Clone, Copy)]
pub(super) enum Drive<'a> {
    /// The supply, with a person at a node or nobody.
    Supply(Option<&'a Body>),
    /// 1 A into a node with the supply at zero volts: the node's voltage is its impedance.
    Probe(&'a str),
}

/// The network of one case.
pub(super) struct Circuit {
    pub(super) hertz: f64,
    hot_volts: f64,
    neutral_volts: f64,
    floats: bool,
    switch_leg: SwitchLeg,
    has_terminal: bool,
    parts: Vec<Part>,
}

/// The ngspice text of one case, complete but for what to print.
///
/// Nodes: `hot`, `neutral` (outlet contacts), `feed_far`, `feed_near` (ahead of the switch),
/// `far`, `near` (after it; a leg without a switch has only its feed node), `c` (chassis), `t`
/// (aerial terminal, where there is one), 0 (earth).
///
/// # Panics
///
/// If the case does not exist in the design.
pub fn netlist(case: &Case, body: Option<&Body>) -> String {
    or_fail(netlist_of(case, body))
}

fn netlist_of(case: &Case, body: Option<&Body>) -> Result<String, SpiceError> {
    let circuit = Circuit::of_case(case)?;
    let lines = circuit.lines("", Drive::Supply(body))?;
    let hertz = circuit.hertz;
    Ok(format!(
        "* Cold Chassis: the line side of one unit\n{lines}{ANALYSIS_OPTIONS}\
         .ac lin 1 {hertz:e} {hertz:e}\n.end\n"
    ))
}

/// No operating point before the AC point: the terminal hangs on a capacitor only, and the
/// network is linear, so there is nothing to find at DC. A strict choice of pivots keeps the
/// digits that the written form of small resistors saves.
pub(super) const ANALYSIS_OPTIONS: &str = ".options noopac pivrel=0.9\n";

impl Circuit {
    /// Builds the network from the words of the design.
    pub(super) fn of_case(case: &Case) -> Result<Self, SpiceError> {
        let exposure = Exposure::of_case(case)?;
        let volts = exposure.supply.volts;
        let (hot_volts, neutral_volts) = match exposure.supply.feed {
            Feed::Direct => (volts, 0.0),
            Feed::BothHot => (volts / 2.0, -volts / 2.0),
            // Only what is between the two is held.
            Feed::Isolated => (volts, 0.0),
            // The winding's common end on the hot conductor of what goes in.
            Feed::StepDownAuto => {
                let input = exposure.supply.input_volts.unwrap_or(2.0 * volts);
                (input, input - volts)
            }
        };
        Ok(Self {
            hertz: exposure.supply.hertz,
            hot_volts,
            neutral_volts,
            floats: exposure.supply.feed == Feed::Isolated,
            switch_leg: exposure.switch_leg,
            has_terminal: exposure.reach == Reach::AerialTerminal,
            parts: Unit::new(&exposure, case).parts(),
        })
    }

    /// The nodes that this case has, each under every name it goes by.
    pub(super) fn nodes(&self) -> Vec<&'static str> {
        let mut nodes = vec!["hot", "neutral", "feed_far", "feed_near", "far", "near", "c"];
        if self.has_terminal {
            nodes.push("t");
        }
        nodes
    }

    /// The name under which a node is written: a leg without a switch is its feed node.
    pub(super) fn written(&self, node: &'static str) -> &'static str {
        match (node, self.switch_leg) {
            ("far", SwitchLeg::Near | SwitchLeg::None) => "feed_far",
            ("near", SwitchLeg::Far | SwitchLeg::None) => "feed_near",
            _ => node,
        }
    }

    /// The parts and sources as text. `prefix` keeps the nodes of many cases apart in one deck.
    pub(super) fn lines(&self, prefix: &str, drive: Drive<'_>) -> Result<String, SpiceError> {
        let at = |node: &'static str| match node {
            "0" => "0".to_owned(),
            _ => format!("{prefix}{}", self.written(node)),
        };
        let supply_scale = match drive {
            Drive::Supply(_) => 1.0,
            Drive::Probe(_) => 0.0,
        };
        let mut text = String::new();
        for (contact, volts) in [("hot", self.hot_volts), ("neutral", self.neutral_volts)] {
            let volts = volts * supply_scale;
            let node = at(contact);
            if !self.floats {
                let _ = writeln!(text, "V{prefix}{contact} {node} 0 dc 0 ac {volts:e}");
                continue;
            }
            let _ = writeln!(text, "C{prefix}stray_{contact} {node} 0 {ISOLATED_STRAY_FARAD:e}");
            if contact == "hot" {
                let other = at("neutral");
                let _ = writeln!(text, "V{prefix}{contact} {node} {other} dc 0 ac {volts:e}");
            }
        }
        for part in &self.parts {
            let [from, to] = part.ends.map(at);
            text.push_str(&part.line(prefix, &from, &to));
        }
        match drive {
            Drive::Supply(None) => {}
            Drive::Supply(Some(body)) => {
                let node = at(self.known(&body.node)?);
                let _ = writeln!(text, "R{prefix}body {node} 0 {:e}", body.ohm);
                if let Some(farad) = body.farad {
                    let _ = writeln!(text, "C{prefix}body {node} 0 {farad:e}");
                }
            }
            Drive::Probe(node) => {
                let node = at(self.known(node)?);
                let _ = writeln!(text, "I{prefix}probe 0 {node} dc 0 ac 1");
            }
        }
        Ok(text)
    }

    fn known(&self, node: &str) -> Result<&'static str, SpiceError> {
        self.nodes()
            .into_iter()
            .find(|known| *known == node)
            .ok_or_else(|| SpiceError::Case { reason: format!("it has no node {node}") })
    }
}
