//! Sets of truthful findings that a literal reading of the evidence table takes too kindly.
//!
//! Each is a place where the words of the table leave out what the unit truly is. A core that
//! reads the table more widely there must pass on these sets too; a check can count them apart.

use serde_json::Value;

use super::PhysicalUnit;
use super::factors::{CapacitorClass, LineCapacitor, Reach};
use super::parts::{AerialPost, Bond, EarthWire};

/// Why a literal reading may under-warn for one set of findings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Gap {
    /// Metal on a common of its own can be touched, but what was told is only bare metal of other
    /// kinds, or a missing back: read as chassis metal alone.
    CommonUnheard,
    /// Only an aerial post is joined to the line, but loose screws were told and never traced:
    /// read as chassis metal, which can be further from the line than the post.
    AerialUnheard,
    /// An earth lift switch on a set whose chassis is on the line: read as never earthed, though
    /// its other position puts the line on earth.
    LiftedLineOnEarth,
    /// A part is within ±20 % of its marking and outside the usual range, and was not read.
    ValueUnread,
}

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

fn is(chosen: &[(String, Value)], id: &str, answer: &str) -> bool {
    told(chosen, id).is_some_and(|value| value == answer)
}

fn lists(chosen: &[(String, Value)], id: &str, answer: &str) -> bool {
    let list = told(chosen, id).and_then(Value::as_array);
    list.is_some_and(|list| list.iter().any(|value| value == answer))
}

impl PhysicalUnit {
    /// Where the literal table may under-warn for this unit with these findings.
    pub fn gaps(&self, chosen: &[(String, Value)]) -> Vec<Gap> {
        let factors = self.factors();
        if factors == super::Factors::NO_LINE {
            return Vec::new();
        }
        let found = [
            (Gap::CommonUnheard, self.common_unheard(chosen)),
            (Gap::AerialUnheard, self.aerial_unheard(chosen)),
            (
                Gap::LiftedLineOnEarth,
                self.earth_wire == EarthWire::LiftSwitch
                    && factors.cord.is_earthed()
                    && (is(chosen, "earth_lift", "present")
                        || is(chosen, "earth_wire", "not_on_chassis")),
            ),
            (Gap::ValueUnread, self.value_unread(chosen)),
        ];
        found.into_iter().filter_map(|(gap, holds)| holds.then_some(gap)).collect()
    }

    fn common_unheard(&self, chosen: &[(String, Value)]) -> bool {
        let bare =
            told(chosen, "bare_metal").is_some() && !lists(chosen, "bare_metal", "none_anywhere");
        let heard = lists(chosen, "bare_metal", "instrument_jack")
            || lists(chosen, "bare_metal", "socket_or_pickup")
            || lists(chosen, "terminals", "pickup_or_speaker")
            || (bare && is(chosen, "metal_joined", "common"));
        self.reach() == Reach::CommonExposed && !heard && (bare || is(chosen, "back", "missing"))
    }

    fn aerial_unheard(&self, chosen: &[(String, Value)]) -> bool {
        let only_loose = ["screws_or_shafts", "panel_or_cabinet"]
            .iter()
            .any(|answer| lists(chosen, "bare_metal", answer))
            && !lists(chosen, "bare_metal", "instrument_jack")
            && !lists(chosen, "bare_metal", "socket_or_pickup")
            && !lists(chosen, "terminals", "pickup_or_speaker");
        self.reach() == Reach::AerialTerminal
            && self.isolation().common_is_apart()
            && only_loose
            && !is(chosen, "metal_joined", "no")
    }

    /// The parts that count in the true arrangement, and were not read though out of range.
    fn value_unread(&self, chosen: &[(String, Value)]) -> bool {
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
