//! The insulation test: where it must not be used, and what its value means.
//!
//! Some hundred volts go from both supply pins, joined, to the metal. That says something of a unit whose
//! line side is meant to be apart from the metal, and harms or misleads in any other.

use super::bank::Access;
use super::conflict::Possible;
use super::findings::{Findings, Reading};
use crate::arrangement::{Isolation, LineCapacitor, LineCapacitorClass, Reach, ReadingId};
use crate::fields::id_enum;
use crate::figure::{Figure, Mark, Source};

/// Insulation below this is rejected, of any unit, MΩ.
const LEAST: Figure = Figure::new(1.0, "MΩ", Source::ApplianceTesting, Mark::Verified);

/// Insulation of a unit without an earth wire, the least, MΩ.
const LEAST_UNEARTHED: Figure = Figure::new(2.0, "MΩ", Source::ApplianceTesting, Mark::Verified);

/// The voltage of the test, V d.c.
pub const INSULATION_VOLTS: Figure =
    Figure::new(500.0, "V", Source::ApplianceTesting, Mark::Verified);

/// What stands against the test.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct InsulationGate {
    /// Ways of building, still possible, that join the metal to the line or nearly so.
    pub ways: Vec<Isolation>,
    /// An ordinary capacitor from the line to the metal is still possible.
    pub capacitor: bool,
    /// The findings contradict each other.
    pub conflict: bool,
    /// There is no line side at all.
    pub no_line: bool,
    /// No metal can be touched that it could be held to.
    pub no_metal: bool,
    /// There is no meter.
    pub no_meter: bool,
}

impl InsulationGate {
    /// Whether a value that was read all the same says nothing of this unit.
    pub const fn says_nothing(&self) -> bool {
        self.conflict || self.no_line || self.no_metal || !self.ways.is_empty()
    }
}

/// What stands against the test for these findings.
pub fn insulation_gate(findings: &Findings) -> InsulationGate {
    let possible = Possible::after(findings);
    let mut gate = InsulationGate { conflict: possible.is_conflict(), ..InsulationGate::default() };
    for (_, arrangement) in possible.considered.iter() {
        if !matches!(arrangement.isolation, Isolation::Isolating | Isolation::NoLine) {
            gate.ways.push(arrangement.isolation);
        }
        gate.capacitor |= arrangement.line.is_some_and(|line| {
            line.line_capacitor != LineCapacitor::None
                && line.line_capacitor_class == LineCapacitorClass::Ordinary
        });
    }
    gate.no_line = possible.considered.iter().all(|(_, a)| a.isolation == Isolation::NoLine);
    gate.no_metal = possible
        .considered
        .iter()
        .all(|(_, a)| a.line.is_none_or(|line| line.reach == Reach::Closed));
    gate.no_meter = !findings.access.contains(&Access::Meter);
    gate.ways.sort_unstable();
    gate.ways.dedup();
    gate
}

id_enum! {
    /// What a value of the test means.
    pub enum InsulationMeaning {
        /// Too little for any unit.
        Rejected = "rejected",
        /// Enough for an earthed unit, too little for one without an earth wire.
        EarthedOnly = "earthed_only",
        /// Enough for either.
        Enough = "enough",
    }
}

/// What the value that was kept means; nothing where there is none.
pub fn insulation_meaning(findings: &Findings) -> Option<InsulationMeaning> {
    let megohms = match *findings.readings.get(&ReadingId::InsulationMegohms)? {
        Reading::OverRange => f64::INFINITY,
        Reading::Value(megohms) => megohms,
    };
    Some(match megohms {
        low if low < LEAST.value => InsulationMeaning::Rejected,
        low if low < LEAST_UNEARTHED.value => InsulationMeaning::EarthedOnly,
        _ => InsulationMeaning::Enough,
    })
}
