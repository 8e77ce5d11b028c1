//! The lines that a proof plan can have: `data/proof.csv`.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::fields::id_enum;

id_enum! {
    /// One thing to be shown after a repair, in the order of doing: plug out, then the outlet, then plugged in.
    pub enum ProofLine {
        /// The earth bond, while the cord is flexed.
        EarthBond = "earth_bond",
        /// The cord holds when it is pulled.
        CordPull = "cord_pull",
        /// The wide blade leads to the near leg.
        WideBladeNearLeg = "wide_blade_near_leg",
        /// The hot blade is open when switched off.
        HotBladeOpenOff = "hot_blade_open_off",
        /// The fuse is in the leg that leads to the hot blade.
        FuseLeg = "fuse_leg",
        /// No barrier comes off by hand.
        LostBarrier = "lost_barrier",
        /// The insulation from both pins to the chassis.
        Insulation = "insulation",
        /// The transformer in front isolates.
        FrontTransformer = "front_transformer",
        /// The GFCI or RCD trips by its own button.
        DeviceTest = "device_test",
        /// The outlet is wired right.
        OutletProven = "outlet_proven",
        /// The voltage of the metal across the touch network, in every position.
        ChassisVoltsLoaded = "chassis_volts_loaded",
        /// The leakage with the plug the first way round.
        LeakageFirst = "leakage_first",
        /// The leakage with the plug the other way round.
        LeakageSecond = "leakage_second",
    }
}

id_enum! {
    /// Who may do it.
    pub enum Who {
        /// Anybody, with the plug out.
        Anyone = "anyone",
        /// A qualified person, with the plug out.
        Qualified = "qualified",
        /// A qualified person, with the unit plugged in behind a protection.
        QualifiedLive = "qualified_live",
        /// Whoever may work on the building's wiring.
        Electrician = "electrician",
    }
}

id_enum! {
    /// How what is read is compared with the limit.
    pub enum Comparison {
        /// No more than the limit.
        AtMost = "at_most",
        /// No more than the limit and the lead's own resistance.
        AtMostWithLead = "at_most_with_lead",
        /// The limit or more; above the range of the meter counts as more.
        AtLeast = "at_least",
        /// It holds or it does not.
        Yes = "yes",
    }
}

/// A row of the table.
#[derive(Clone, Debug, Deserialize)]
pub struct ProofRow {
    /// The line's id.
    pub line: String,
    /// The limit; nothing where it holds or does not.
    pub limit: Option<f64>,
    /// Its unit.
    pub unit: String,
    comparison: String,
    /// Where the limit comes from: an id of `data/sources.csv`.
    pub source: String,
    /// How far it was checked.
    pub mark: String,
    who: String,
    /// How it is read.
    pub note: String,
}

impl ProofRow {
    /// How what is read is compared.
    pub fn comparison(&self) -> Comparison {
        Comparison::of(&self.comparison).unwrap_or(Comparison::Yes)
    }

    /// Who may do it.
    pub fn who(&self) -> Who {
        Who::of(&self.who).unwrap_or(Who::Qualified)
    }
}

static ROWS: LazyLock<Vec<ProofRow>> = LazyLock::new(|| {
    let text = include_str!("../../../data/proof.csv");
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
});

/// The row of a line; nothing where the table has none.
pub fn row_of(line: ProofLine) -> Option<&'static ProofRow> {
    ROWS.iter().find(|row| row.line == line.id())
}

#[cfg(test)]
mod tests {
    use super::{Comparison, ProofLine, ROWS, Who};
    use crate::figure::Source;

    #[test]
    fn every_line_has_its_row_with_a_known_source() {
        let rows: Vec<&str> = ROWS.iter().map(|row| row.line.as_str()).collect();
        assert_eq!(rows, ProofLine::IDS);
        for row in ROWS.iter() {
            assert!(Source::ALL.iter().any(|source| source.id() == row.source), "{row:?}");
            assert!(Comparison::of(&row.comparison).is_some() && Who::of(&row.who).is_some());
            assert_eq!(row.limit.is_none(), row.comparison() == Comparison::Yes, "{row:?}");
        }
    }
}
