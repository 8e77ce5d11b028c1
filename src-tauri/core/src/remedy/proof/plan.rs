//! Which lines a repair has to be shown by, and with which limits.

use super::line::{Comparison, ProofLine, Who, row_of};
use crate::arrangement::{Arrangement, Isolation, NearPin, Reach, SwitchLeg};
use crate::hazard::Class;
use crate::inspection::{ArrangementSet, TouchPosition};
use crate::remedy::setup::Setup;
use crate::remedy::size::lead_ohms;
use crate::remedy::standing::Bench;
use crate::supply::Feed;

/// A line of a plan, with its limit for this unit.
#[derive(Clone, Debug, PartialEq)]
pub struct Planned {
    /// The line.
    pub line: ProofLine,
    /// The limit; nothing where it holds or does not.
    pub limit: Option<f64>,
    /// Its unit.
    pub unit: &'static str,
    /// How what is read is compared with it.
    pub comparison: Comparison,
    /// Where the limit comes from: an id of `data/sources.csv`.
    pub source: &'static str,
    /// How far it was checked.
    pub mark: &'static str,
    /// Who may do it.
    pub who: Who,
    /// The positions of plug and switch that are read, each by itself; none where one reading is enough.
    pub positions: Vec<TouchPosition>,
}

/// The lines that a repair has to be shown by.
#[derive(Clone, Debug, PartialEq)]
pub struct ProofPlan {
    /// The lines, in the order in which they are done: with the plug out first.
    pub lines: Vec<Planned>,
    /// It is live as found straight at an outlet even then: no line is done with the plug in.
    pub is_live_straight: bool,
    /// It is live as found where it is plugged in: whatever is shown, it is not ready.
    pub is_live: bool,
}

/// Insulation without an earth wire, MΩ (as published by test houses).
const UNEARTHED_MEGOHM: f64 = 2.0;

/// Length and section of a cord whose own resistance is counted, m and mm²: a short one, so that no limit is too wide.
const CORD_M: f64 = 2.0;
const CORD_MM2: f64 = 0.75;

/// What 1 mA puts across the body's network at line frequency, V: 1500 Ω (UL 101, as quoted in print).
const VOLTS_PER_MA: f64 = 1.5;

/// Where a limit comes from that is stricter than the standard's.
const CHOSEN_LIMIT: &str = "class_y_limit";
const CHOSEN_MARK: &str = "assumption";

/// The plan for a unit as it is to be after its repairs, whatever of it is not known. Where class Y was sized for a
/// limit in mA below that of the standard, the metal has to keep to that limit.
pub fn plan(repaired: &Setup, class_y_ma: Option<f64>, bench: &mut Bench) -> ProofPlan {
    let is_live = bench.brief(repaired).class == Class::Live;
    let is_live_straight = is_live || bench.is_live_straight(repaired);
    let planned = |line: &ProofLine| {
        needed(*line, repaired).then(|| planned(*line, class_y_ma, &repaired.set))
    };
    let is_done = |planned: &Planned| !is_live_straight || planned.who != Who::QualifiedLive;
    let lines = ProofLine::ALL.iter().filter_map(planned).flatten().filter(is_done).collect();
    ProofPlan { lines, is_live_straight, is_live }
}

fn planned(line: ProofLine, class_y_ma: Option<f64>, set: &ArrangementSet) -> Option<Planned> {
    let row = row_of(line)?;
    let unearthed = set.iter().any(|(_, a)| !is_earthed(a));
    let limit = match line {
        ProofLine::EarthBond => row.limit.map(|limit| limit + lead_ohms(CORD_M, CORD_MM2)),
        ProofLine::Insulation if unearthed => Some(UNEARTHED_MEGOHM),
        _ => row.limit,
    };
    let chosen = match line {
        ProofLine::ChassisVoltsLoaded => class_y_ma.map(|limit| limit * VOLTS_PER_MA),
        ProofLine::LeakageFirst | ProofLine::LeakageSecond => class_y_ma,
        _ => None,
    };
    let stricter = chosen.filter(|chosen| limit.is_some_and(|limit| *chosen < limit));
    Some(Planned {
        line,
        limit: stricter.or(limit),
        unit: &row.unit,
        comparison: row.comparison(),
        source: if stricter.is_some() { CHOSEN_LIMIT } else { &row.source },
        mark: if stricter.is_some() { CHOSEN_MARK } else { &row.mark },
        who: row.who(),
        positions: if line == ProofLine::ChassisVoltsLoaded { positions(set) } else { Vec::new() },
    })
}

/// The positions of plug and switch that the metal can be touched in.
fn positions(set: &ArrangementSet) -> Vec<TouchPosition> {
    let second = set.iter().any(|(_, a)| is_read_both_ways(a));
    let off =
        set.iter().any(|(_, a)| a.line.is_some_and(|line| line.switch_leg != SwitchLeg::None));
    let is_there = |position: &&TouchPosition| match position {
        TouchPosition::FirstOn => true,
        TouchPosition::FirstOff => off,
        TouchPosition::SecondOn => second,
        TouchPosition::SecondOff => second && off,
    };
    TouchPosition::ALL.iter().filter(is_there).copied().collect()
}

/// Whether the metal is read with the plug the other way round too: where it goes in so, and through a reversing
/// lead where the chassis is on windings of its own. A tied chassis on a plug that goes in one way is not plugged in
/// the other.
fn is_read_both_ways(arrangement: &Arrangement) -> bool {
    arrangement.line.is_some_and(|line| line.cord.is_reversible())
        || arrangement.isolation == Isolation::Isolating
}

fn is_earthed(arrangement: &Arrangement) -> bool {
    arrangement.line.is_some_and(|line| line.cord.is_earthed())
}

/// Whether something that the unit may be after its repairs needs a line.
fn needed(line: ProofLine, repaired: &Setup) -> bool {
    let any = |holds: fn(&Arrangement) -> bool| repaired.set.iter().any(|(_, a)| holds(a));
    let touched = any(|a| a.line.is_some_and(|line| line.reach != Reach::Closed));
    match line {
        ProofLine::EarthBond => any(is_earthed),
        ProofLine::FuseLeg => repaired.fused,
        ProofLine::FrontTransformer => repaired.supply.feed == Feed::Isolated,
        ProofLine::DeviceTest => repaired.device.is_some(),
        ProofLine::CordPull | ProofLine::OutletProven => any(|a| a.line.is_some()),
        // One way in and the common on one pin: which pin it is decides.
        ProofLine::WideBladeNearLeg => any(|a| {
            a.line.is_some_and(|line| {
                !line.cord.is_reversible()
                    && line.near_pin == NearPin::B
                    && a.isolation != Isolation::Isolating
                    && a.isolation != Isolation::LineRectified
            })
        }),
        ProofLine::HotBladeOpenOff => any(|a| {
            a.line.is_some_and(|line| {
                !line.cord.is_reversible()
                    && matches!(line.switch_leg, SwitchLeg::Far | SwitchLeg::Both)
            })
        }),
        // Nothing comes back to earth behind an isolating transformer: it is read straight at an outlet. Of metal that
        // is out of reach there is nothing to read.
        ProofLine::ChassisVoltsLoaded | ProofLine::LeakageFirst => touched,
        ProofLine::LeakageSecond => {
            any(|a| a.line.is_some_and(|line| line.reach != Reach::Closed && is_read_both_ways(a)))
        }
        ProofLine::LostBarrier => any(|a| {
            a.line.is_some_and(|line| matches!(line.reach, Reach::Closed | Reach::AerialTerminal))
        }),
        // Never on a chassis that may be joined to the line: the test would be on the line itself.
        ProofLine::Insulation => {
            any(|a| a.isolation == Isolation::Isolating)
                && !any(|a| a.line.is_some() && a.isolation != Isolation::Isolating)
        }
    }
}
