//! Parts of a unit whose real value is outside the usual range, and that nobody has read.

use serde_json::Value;

use super::PhysicalUnit;
use super::factors::{CapacitorClass, LineCapacitor, Reach};
use super::parts::{AerialPost, Bond};

/// Usual ranges, F and Ω: the project's table of typical values (network capacitor seen in print,
/// the others common practice).
pub(super) const NETWORK_FARAD: (f64, f64) = (0.05e-6, 0.25e-6);
pub(super) const NETWORK_OHM: (f64, f64) = (150e3, 470e3);
pub(super) const LINE_FARAD: (f64, f64) = (0.01e-6, 0.1e-6);
pub(super) const CLASS_Y_FARAD: (f64, f64) = (1e-9, 47e-9);
pub(super) const AERIAL_FARAD: (f64, f64) = (1e-9, 0.1e-6);
pub(super) const WINDING_FARAD: (f64, f64) = (0.1e-9, 2e-9);

/// The answer given to a question, if one was given and it was not "can't tell".
fn told<'a>(chosen: &'a [(String, Value)], id: &str) -> Option<&'a Value> {
    let (_, answer) = chosen.iter().find(|(key, _)| key == id)?;
    (answer != "cant_tell").then_some(answer)
}

impl PhysicalUnit {
    /// Whether a part that counts in the true arrangement is out of the usual range and was not read. What the
    /// usual range says of it may be too kind; no question can be blamed for that.
    pub fn is_unusual_unread(&self, chosen: &[(String, Value)]) -> bool {
        self.ranged_values().into_iter().any(|(id, real, (low, high))| {
            told(chosen, id).is_none() && !(low..=high).contains(&real)
        })
    }

    /// Every part of this unit that has a range: findings key, real value and range, F or Ω.
    pub fn ranged_values(&self) -> Vec<(&'static str, f64, (f64, f64))> {
        let factors = self.factors();
        let mut parts = Vec::new();
        let line = self.leg_capacitor.filter(|_| factors.line_capacitor != LineCapacitor::None);
        if let Some(capacitor) = line {
            let ordinary = factors.line_capacitor_class == CapacitorClass::Ordinary;
            let range = if ordinary { LINE_FARAD } else { CLASS_Y_FARAD };
            parts.push(("values.line_capacitor", capacitor.part.farad, range));
        }
        if let (Reach::AerialTerminal, Some(AerialPost::ThroughCapacitor(part))) =
            (factors.reach, self.aerial_post)
        {
            parts.push(("values.aerial_capacitor", part.farad, AERIAL_FARAD));
        }
        if let (true, Bond::Network { ohm, capacitor, .. }) =
            (factors.isolation.common_is_apart(), self.bond)
        {
            parts.push(("values.network_resistor", ohm, NETWORK_OHM));
            parts.push(("values.network_capacitor", capacitor.farad, NETWORK_FARAD));
        }
        parts
    }
}
