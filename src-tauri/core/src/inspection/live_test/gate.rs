//! What stands before a live touch test: what forbids it, and what is to be looked at first.

use super::super::bank::{Access, Question};
use super::super::findings::Findings;
use super::super::permission::forbids_power;
use super::super::verdict::{Basis, Verdict};
use crate::hazard::Class;
use crate::supply::Feed;
use crate::words::Message;

/// Whether a unit may be plugged in for the test at all.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TouchGate {
    /// Why not; empty where nothing speaks against it.
    pub refused: Vec<Message>,
    /// What to look at before, by the question's id; only where nothing is refused.
    pub first: Option<&'static str>,
}

impl TouchGate {
    /// Whether the test may begin.
    pub const fn is_open(&self) -> bool {
        self.refused.is_empty() && self.first.is_none()
    }
}

/// What stands before the test for these findings; `metal` is whether anything can be touched at all.
pub fn touch_gate(findings: &Findings, verdict: &Verdict, metal: bool) -> TouchGate {
    let refused = refused(findings, verdict, metal);
    let first = if refused.is_empty() { look_first(findings) } else { None };
    TouchGate { refused, first }
}

fn refused(findings: &Findings, verdict: &Verdict, metal: bool) -> Vec<Message> {
    let says = |answer| findings.says(Question::Plug, answer);
    let class = |basis| verdict.treat_as == Class::Live && verdict.basis == basis;
    let alone = [
        // Nothing comes back to earth there, so the test would read nothing whatever the unit is.
        (findings.supply.feed == Feed::Isolated, "touch-refused-isolated"),
        (verdict.treat_as == Class::NoLine, "touch-refused-no_line"),
        (!verdict.conflicts.is_empty(), "touch-refused-conflict"),
        (class(Basis::Shown), "touch-refused-live"),
        (class(Basis::NotRuledOut), "touch-refused-may_be_live"),
        (says("no_plug"), "touch-refused-no_plug"),
        (says("outside_supply"), "touch-refused-outside_supply"),
    ];
    if let Some((_, id)) = alone.into_iter().find(|(is_so, _)| *is_so) {
        return vec![Message::new(id)];
    }
    let forbidden = forbids_power(findings, verdict);
    if !forbidden.is_empty() {
        return forbidden;
    }
    let meter = findings.access.contains(&Access::Meter);
    let missing = [(!metal, "touch-refused-no_metal"), (!meter, "touch-refused-no_meter")];
    missing.into_iter().filter(|(is_so, _)| *is_so).map(|(_, id)| Message::new(id)).collect()
}

/// What would forbid power and can be seen unplugged, where nobody has looked yet. A cord of which nobody
/// can tell is not plugged in; a plate that was looked for in vain is no reason to wait for ever.
fn look_first(findings: &Findings) -> Option<&'static str> {
    let cover_off = findings.access.contains(&Access::CoverOff);
    let plate = findings.rated.is_some_and(|rated| rated.volts.is_some())
        || findings.plate_left_open
        || findings.says(Question::RatingPlate, "none");
    [
        (findings.known(Question::Cord).is_some(), Question::Cord.id()),
        (
            !cover_off || findings.answers.contains_key(&Question::FilterCapacitors),
            Question::FilterCapacitors.id(),
        ),
        (plate, "values.rated"),
    ]
    .into_iter()
    .find(|(is_done, _)| !is_done)
    .map(|(_, id)| id)
}
