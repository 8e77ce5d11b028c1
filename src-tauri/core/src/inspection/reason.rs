//! The verdict put into messages: the tag's lines, why, what may be done, what was not checked.

use crate::arrangement::{Fault, FaultSet, PlugWay, State, Switch};
use crate::body::Path;
use crate::figure::{Figure, Mark, Source};
use crate::hazard::{Class, Worst, severity};
use crate::words::{Message, milliamperes};

use super::bank::{Access, Question, Role};
use super::findings::Findings;
use super::next::Step;
use super::verdict::{Basis, Verdict};

/// The tag's line: class with its basis.
pub fn tag_line(verdict: &Verdict) -> Message {
    Message::new(format!("tag-{}-{}", verdict.treat_as.id(), verdict.basis.id()))
}

/// A class inside a sentence.
pub fn class_inline(class: Class) -> Message {
    Message::new(format!("class-{}-inline", class.id()))
}

/// Why the verdict is what it is, in a sentence.
pub fn reason(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    if findings.list().is_empty() {
        return vec![Message::new("reason-nothing-answered")];
    }
    let suffix = if verdict.basis == Basis::Shown { "" } else { "-not_ruled_out" };
    let id = |stem: &str| format!("reason-{stem}{suffix}");
    let worst = &verdict.worst;
    let current = || milliamperes(worst.milliamperes);
    let main = match (verdict.treat_as, worst.state) {
        (Class::NoLine, _) | (_, None) => Message::new("reason-no_line"),
        (Class::Live, Some(_)) if worst.milliamperes < LIVE_MA => Message::new(id("line_on_earth")),
        (Class::Live, Some(state)) => {
            let stem =
                if suffix.is_empty() { "reason-live-found" } else { "reason-live-not_ruled_out" };
            let [plug, switch] = state_words(state);
            Message::new(stem)
                .text("current", current())
                .message("plug", plug)
                .message("switch", switch)
        }
        (class, Some(_)) => {
            let stem = match (class, worst.margin) {
                (Class::TwoFaults, 3) => "three_faults",
                _ => class.id(),
            };
            let leak = verdict.as_found_ma.unwrap_or_default();
            Message::new(id(stem))
                .text("current", current())
                .text("leak", milliamperes(leak))
                .message("fault", fault_words(worst.faults))
        }
    };
    match verdict.treat_as {
        // The best that is ever said, and only with what was not checked.
        Class::TwoFaults | Class::NoLine => {
            let unchecked = not_checked(findings);
            vec![main, Message::new("no-shock-path").list("not_checked", unchecked)]
        }
        _ => vec![main],
    }
}

/// The worst case where its current says something: not for a unit without a line side, nor for one
/// that is live because it would put the supply on the earth wire.
pub fn shown_worst(verdict: &Verdict) -> Option<&Worst> {
    let on_earth = verdict.treat_as == Class::Live && verdict.worst.milliamperes < LIVE_MA;
    (verdict.worst.state.is_some() && !on_earth).then_some(&verdict.worst)
}

/// What the worst current does to a person; nothing for a unit without a line side.
pub fn severity_words(verdict: &Verdict) -> Option<Message> {
    let worst = shown_worst(verdict)?;
    // Hands that cannot let go make a touch long; the reference path is the one of the zones.
    let severity = severity(worst.milliamperes, Path::LeftHandToBothFeet, LONG_TOUCH_S.value);
    Some(Message::new(format!("severity-{}", severity.id())))
}

/// How long a touch is taken to last, s: the end of the time/current chart.
const LONG_TOUCH_S: Figure = Figure::new(10.0, "s", Source::Model, Mark::Assumption);

/// Below this a live verdict is one of a supply conductor on the earth wire, not of a current, mA.
const LIVE_MA: f64 = crate::body::LET_GO_MA.value;

/// One fault, or two joined.
fn fault_words(faults: FaultSet) -> Message {
    let named = |fault: Fault| Message::new(format!("fault-{}", fault.id()));
    let mut each = faults.faults();
    match (each.next(), each.next()) {
        (Some(first), Some(second)) => Message::new("fault-two")
            .message("first", named(first))
            .message("second", named(second)),
        (Some(only), None) => named(only),
        (None, _) => Message::new("fault-none"),
    }
}

fn state_words(state: State) -> [Message; 2] {
    let plug = match state.plug {
        PlugWay::First => "state-plug-first",
        PlugWay::Second => "state-plug-second",
    };
    let switch = match state.switch {
        Switch::On => "state-switch-on",
        Switch::Off => "state-switch-off",
    };
    [Message::new(plug), Message::new(switch)]
}

/// The state of the worst case in a sentence, with the faults it takes.
pub fn worst_state_sentence(worst: &Worst) -> Option<Message> {
    let state = state_sentence(worst.state?);
    Some(if worst.faults.is_empty() {
        state
    } else {
        Message::new("state-after-fault")
            .message("fault", fault_words(worst.faults))
            .message("state", state)
    })
}

/// A state in a sentence.
pub fn state_sentence(state: State) -> Message {
    let [plug, switch] = state_words(state);
    match state.selector {
        None => Message::new("state-sentence").message("plug", plug).message("switch", switch),
        Some(selector) => Message::new("state-sentence-selector")
            .message("plug", plug)
            .message("switch", switch)
            .message("selector", Message::new(format!("state-selector-{}", selector.id()))),
    }
}

/// What may be done now; local codes come first.
pub fn permission(verdict: &Verdict) -> Vec<Message> {
    let id = match (verdict.treat_as, verdict.basis) {
        (Class::Live, Basis::Shown) => "permission-live-shown".to_owned(),
        (Class::Live, Basis::NotRuledOut) => "permission-live-not_ruled_out".to_owned(),
        (class, _) => format!("permission-{}", class.id()),
    };
    let mut messages = vec![Message::new(id)];
    if !matches!(verdict.treat_as, Class::NoLine) {
        messages.push(Message::new("permission-limiters"));
    }
    messages.push(Message::new("permission-codes"));
    messages
}

/// The next step as a sentence: the cheapest thing that could rule the worst out.
pub fn next_step(verdict: &Verdict) -> Option<Message> {
    let question = match verdict.next? {
        Step::Ask(question) => format!("question-{}", question.id()),
        Step::Read(value) => format!("value-{}", value.id()),
    };
    Some(Message::new("next-step").message("question", Message::new(question)))
}

/// The findings that carry the verdict, each with what it would be without.
pub fn rests_on_sentences(verdict: &Verdict) -> Vec<Message> {
    verdict
        .rests_on
        .iter()
        .map(|rests| {
            Message::new("rests-on")
                .message("finding", rests.finding.words())
                .message("class", class_inline(rests.without))
        })
        .collect()
}

/// What to look at again in a conflict, a sentence for each.
pub fn conflict_sentences(verdict: &Verdict) -> Vec<Message> {
    let words = |question: &Question| Message::new(format!("finding-{}", question.id()));
    verdict
        .conflicts
        .iter()
        .map(|conflict| {
            let findings = conflict.iter().map(words).collect();
            Message::new("conflict-look-again").list("findings", findings)
        })
        .collect()
}

/// What nobody has looked at; never empty.
pub fn not_checked(findings: &Findings) -> Vec<Message> {
    let mut ids = Vec::new();
    let inside_looked = findings.answers.iter().any(|(question, answer)| {
        answer.is_known() && question.entry().access == [Access::CoverOff]
    });
    if !inside_looked {
        ids.push("not-checked-inside");
    }
    if findings.readings.is_empty() {
        ids.push("not-checked-readings");
    }
    if inside_looked && findings.known(Question::SwitchLeg).is_none() {
        ids.push("not-checked-switch_wiring");
    }
    if metal_untraced(findings) {
        ids.push("not-checked-metal");
    }
    if findings.values.is_empty() {
        ids.push("not-checked-values");
    }
    if findings.tubes.is_empty() {
        ids.push("not-checked-tubes");
    }
    ids.push("not-checked-hidden");
    ids.into_iter().map(Message::new).collect()
}

/// Bare metal counts as on the chassis until it is traced; say so where nobody has.
fn metal_untraced(findings: &Findings) -> bool {
    let bare = findings.known(Question::BareMetal).is_some()
        && !findings.says(Question::BareMetal, "none_anywhere");
    bare && findings.known(Question::MetalJoined).is_none()
}

/// The cautions of looking further that nobody has answered yet.
pub fn cautions_to_look_at(findings: &Findings) -> Vec<Question> {
    let access: Vec<Access> = findings.access.iter().copied().collect();
    Question::ALL
        .iter()
        .copied()
        .filter(|question| question.entry().role == Role::Overlay)
        .filter(|question| question.may_be_asked(&access))
        .filter(|question| !findings.answers.contains_key(question))
        .collect()
}
