//! What an earth bond may read.

use super::tables::figure;

/// A limit of an earth bond.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BondLimit {
    /// What the conductor of the cord itself has, Ω.
    pub lead_ohms: f64,
    /// The most that may be read, Ω.
    pub most_ohms: f64,
}

/// A copper conductor of `metres` and `mm2`, Ω at 20 °C.
pub fn lead_ohms(metres: f64, mm2: f64) -> f64 {
    figure("copper") * metres / mm2
}

/// 0.1 Ω besides the lead, as portable appliances are tested in service (as published by test houses).
pub fn bond_limit_portable(metres: f64, mm2: f64) -> BondLimit {
    let lead_ohms = lead_ohms(metres, mm2);
    BondLimit { lead_ohms, most_ohms: figure("bond_limit") + lead_ohms }
}

/// 0.3 Ω up to 5 m and 0.1 Ω for each 7.5 m begun beyond, 1 Ω at the most (DIN VDE 0701-0702 as quoted).
pub fn bond_limit_vde(metres: f64, mm2: f64) -> BondLimit {
    const FIRST_M: f64 = 5.0;
    const EACH_M: f64 = 7.5;
    let more = ((metres - FIRST_M) / EACH_M).ceil().max(0.0);
    let most_ohms = (figure("bond_cord") + more * figure("bond_more")).min(figure("bond_most"));
    BondLimit { lead_ohms: lead_ohms(metres, mm2), most_ohms }
}
