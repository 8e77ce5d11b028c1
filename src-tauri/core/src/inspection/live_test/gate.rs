//! What stands before a live touch test: what forbids it, and what is to be looked at first.

use super::super::bank::Question;
use super::super::findings::Findings;
use super::super::permission::forbids_power;
use super::super::verdict::{Basis, Verdict};
use crate::hazard::Class;
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

/// What stands before the test for these findings.
pub fn touch_gate(findings: &Findings, verdict: &Verdict) -> TouchGate {
    let refused = refused(findings, verdict);
    let first = if refused.is_empty() { look_first(findings) } else { None };
    TouchGate { refused, first }
}

fn refused(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    let why = |id: &str| vec![Message::new(id)];
    if verdict.treat_as == Class::NoLine {
        return why("touch-refused-no_line");
    }
    if !verdict.conflicts.is_empty() {
        return why("touch-refused-conflict");
    }
    match (verdict.treat_as, verdict.basis) {
        (Class::Live, Basis::Shown) => return why("touch-refused-live"),
        (Class::Live, Basis::NotRuledOut) => return why("touch-refused-may_be_live"),
        _ => {}
    }
    let no_plug =
        findings.says(Question::Plug, "no_plug").then(|| Message::new("touch-refused-no_plug"));
    no_plug.into_iter().chain(forbids_power(findings, verdict)).collect()
}

/// What would forbid power and can be seen unplugged, where nobody has looked yet. A plate that was looked
/// for in vain is no reason to wait for ever.
fn look_first(findings: &Findings) -> Option<&'static str> {
    let cord = findings.answers.contains_key(&Question::Cord);
    let plate = findings.rated.is_some()
        || findings.plate_left_open
        || findings.says(Question::RatingPlate, "none");
    match (cord, plate) {
        (false, _) => Some(Question::Cord.id()),
        (_, false) => Some("values.rated"),
        _ => None,
    }
}
