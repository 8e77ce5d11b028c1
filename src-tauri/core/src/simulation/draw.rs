//! Units as often as a kind has them by the estimates of the engine.

use rand::Rng;

use super::unit::{
    CapacitorClass, Cord, Factors, HeaterSource, Isolation, LineCapacitor, PhysicalUnit, Pin,
    Reach, SwitchLeg,
};
use crate::arrangement::{Arrangement, all};
use crate::inspection::{Answer, Beliefs, Findings, Question};
use crate::supply::Supply;

/// The kinds of units, by the ids of the question.
pub const KINDS: &[&str] = Question::Kind.entry().answers;

/// A unit of a kind, for a supply of 120 V and 60 Hz. Its arrangement comes up as often as the estimates say.
pub fn unit_of_kind(kind: &'static str, rng: &mut impl Rng) -> PhysicalUnit {
    let supply = Supply::new(120.0, 60.0);
    let mut findings = Findings::new(supply);
    findings.answers.insert(Question::Kind, Answer::One(kind));
    let beliefs = Beliefs::of(&findings);
    let total: f64 = beliefs.weights().iter().sum();
    let mut left = rng.random::<f64>() * total;
    let mut wanted = Factors::NO_LINE;
    for (arrangement, weight) in all().iter().zip(beliefs.weights()) {
        if left < *weight {
            wanted = factors(arrangement).unwrap_or(Factors::NO_LINE);
            break;
        }
        left -= weight;
    }
    let mut unit = PhysicalUnit::of(wanted, rng);
    // What was drawn decides, not what usually has such parts: only a motor for nothing is left out.
    unit.motor &= unit.heaters_from == HeaterSource::MotorWinding || kind == "record_player";
    unit.kind = kind;
    unit.supply_volts = supply.volts;
    unit.supply_hertz = supply.hertz;
    unit.supply_both_hot = false;
    unit
}

/// An arrangement in the words of the physical units, by the ids that both write in files.
fn factors(arrangement: &Arrangement) -> Option<Factors> {
    let isolation = Isolation::ALL.iter().find(|i| i.id() == arrangement.isolation.id())?;
    let Some(line) = arrangement.line else { return Some(Factors::NO_LINE) };
    Some(Factors {
        isolation: *isolation,
        cord: *Cord::ALL.iter().find(|cord| cord.id() == line.cord.id())?,
        near_pin: *Pin::ALL.iter().find(|pin| pin.id() == line.near_pin.id())?,
        line_capacitor: *LineCapacitor::ALL.iter().find(|c| c.id() == line.line_capacitor.id())?,
        line_capacitor_class: *CapacitorClass::ALL
            .iter()
            .find(|class| class.id() == line.line_capacitor_class.id())?,
        switch_leg: *SwitchLeg::ALL.iter().find(|leg| leg.id() == line.switch_leg.id())?,
        reach: *Reach::ALL.iter().find(|reach| reach.id() == line.reach.id())?,
    })
}
