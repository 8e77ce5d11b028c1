//! From what has been found to a verdict: questions, evidence, what is still possible, what to ask next.
//!
//! Evidence is set logic over the arrangements: conclusive answers remove some, soft ones only move
//! what is likely. The verdict is the worst class that is left. Nothing here stores anything.

mod bank;
mod conflict;
mod decide;
mod doubt;
mod evidence;
mod file;
mod findings;
mod insulation;
mod judge;
mod leak;
mod live_test;
mod measured;
mod meter;
mod overlay;
mod permission;
mod prior;
mod reach;
mod reason;
mod set;
mod traps;
mod unchecked;
mod verdict;

pub use crate::arrangement::ReadingId;
pub use bank::{Access, Cost, Entry, Question, Role, Shape, ValueId, bank, cost_of, value_cost};
pub use conflict::Possible;
pub use decide::{Beliefs, Foreseen, HandStep, Next, Order, Step, Trial, cost};
pub use doubt::Doubt;
pub use evidence::{possible, stays};
pub use file::{
    CANT_TELL, read_answer, read_findings, read_meter, read_reading, read_supply_access,
    read_tubes, read_value,
};
pub use findings::{Answer, Finding, Findings, Meter, PartValue, Rated, Reading};
pub use insulation::{
    INSULATION_VOLTS, InsulationGate, InsulationMeaning, insulation_gate, insulation_meaning,
};
pub use judge::Judge;
pub use live_test::{
    Floating, LIVE_TEST, LiveTest, Protection, Stop, TouchForecast, TouchGate, TouchPart,
    TouchPosition, floating, read_live_test, touch_gate,
};
pub use measured::{Unproven, proven_path};
pub use overlay::{Overlay, OverlayId};
pub use permission::{found_against, permission, standing};
pub use reach::is_metal_found;
pub use reason::{
    LONG_TOUCH_S, after_faults, class_inline, conflict_sentences, fault_words, further_sentences,
    go_on, is_quoted, next_or_stop, next_reason, reason, rests_on_sentences, severity_sentence,
    severity_words, shown_worst, supply_sentence, tag_line, worst_state_sentence,
};
pub use set::ArrangementSet;
pub use traps::{Trap, traps};
pub use unchecked::{cautions_to_look_at, may_have_rating, not_checked};
pub use verdict::{
    Basis, Brief, Further, Likely, RestsOn, Verdict, assess, assess_by, assess_next, brief,
    next_step, treat_as,
};
