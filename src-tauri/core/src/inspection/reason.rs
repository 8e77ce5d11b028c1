//! The verdict put into messages: the tag's lines, why, what may be done, what was not checked.

use crate::arrangement::{Fault, FaultSet, PlugWay, State, Switch};
use crate::body::Path;
use crate::figure::{Figure, Mark, Source};
use crate::hazard::{Class, Worst, severity};
use crate::supply::Feed;
use crate::words::{Message, hertz, milliamperes, volts};

use super::bank::{Access, Question, Role};
use super::decide::Step;
use super::doubt::Doubt;
use super::findings::Findings;
use super::permission::holds_back;
use super::unchecked::not_checked;
use super::verdict::{Basis, Further, Verdict};

/// The tag's line: class with its basis.
pub fn tag_line(verdict: &Verdict) -> Message {
    Message::new(format!("tag-{}-{}", verdict.treat_as.id(), verdict.basis_in_words().id()))
}

/// A class inside a sentence.
pub fn class_inline(class: Class) -> Message {
    Message::new(format!("class-{}-inline", class.id()))
}

/// Why the verdict is what it is, in a sentence.
pub fn reason(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    if findings.answers.is_empty() && findings.values.is_empty() {
        return vec![Message::new("reason-nothing-answered")];
    }
    let suffix = if verdict.basis_in_words() == Basis::Shown { "" } else { "-not_ruled_out" };
    let id = |stem: &str| format!("reason-{stem}{suffix}");
    let worst = &verdict.worst;
    let current = || milliamperes(worst.milliamperes);
    let main = match (verdict.treat_as, worst.state) {
        (Class::NoLine, _) | (_, None) => Message::new(without_line(findings, verdict)),
        (Class::Live, Some(_)) if worst.milliamperes < LIVE_MA => Message::new(id("line_on_earth")),
        (Class::Live, Some(state)) => {
            let stem =
                if suffix.is_empty() { "reason-live-found" } else { "reason-live-not_ruled_out" };
            let [plug, switch] = state_words(state, worst, findings.supply.feed);
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
    // The best that is ever said: not where something forbids power, whatever the class.
    let best = matches!(verdict.treat_as, Class::TwoFaults | Class::NoLine);
    if best && holds_back(findings, verdict).is_empty() {
        let unchecked = not_checked(findings);
        vec![main, Message::new("no-shock-path").list("not_checked", unchecked)]
    } else {
        vec![main]
    }
}

fn without_line(findings: &Findings, verdict: &Verdict) -> &'static str {
    let doubt = verdict.doubts.first().map(|doubt| match doubt {
        Doubt::LineSideFound => "reason-no_line-found",
        Doubt::PlateNamesLine => "reason-no_line-plate",
        Doubt::PlateUnread => "reason-no_line-plate-unread",
        // Of a unit without a line side only the first is ever doubted.
        Doubt::CordNotRuledOut
        | Doubt::UntracedMetal
        | Doubt::EarthLift
        | Doubt::EarthPinUnseen
        | Doubt::AerialBeside
        | Doubt::AerialUnseen => "reason-no_line-cord",
    });
    if let Some(doubt) = doubt {
        doubt
    } else if findings.says(Question::Plug, "outside_supply") {
        "reason-no_line-outside"
    } else {
        "reason-no_line"
    }
}

/// The worst case where its current says something: not for a unit without a line side, nor for one
/// that is live because it would put the supply on the earth wire.
pub fn shown_worst(verdict: &Verdict) -> Option<&Worst> {
    let on_earth = verdict.treat_as == Class::Live && verdict.worst.milliamperes < LIVE_MA;
    (verdict.worst.state.is_some() && !on_earth).then_some(&verdict.worst)
}

/// Whether this is the position, with these faults, that the verdict quotes.
pub fn is_quoted(verdict: &Verdict, state: State, faults: FaultSet) -> bool {
    shown_worst(verdict).is_some_and(|worst| worst.state == Some(state) && worst.faults == faults)
}

/// How many faults the worst current takes; nothing where it flows as found.
pub fn after_faults(verdict: &Verdict) -> Option<Message> {
    match shown_worst(verdict)?.faults.faults().count() {
        0 => None,
        1 => Some(Message::new("after-one-fault")),
        _ => Some(Message::new("after-two-faults")),
    }
}

/// The supply that the worst current is worked out for.
pub fn supply_sentence(findings: &Findings, verdict: &Verdict) -> Option<Message> {
    shown_worst(verdict)?;
    let supply = findings.supply;
    let message = Message::new("tag-supply")
        .text("volts", volts(supply.volts))
        .text("hertz", hertz(supply.hertz))
        .text("highest", volts(supply.volts_max));
    Some(message)
}

/// What the worst current does to a person; nothing for a unit without a line side.
pub fn severity_words(verdict: &Verdict) -> Option<Message> {
    shown_worst(verdict).map(|worst| severity_sentence(worst.milliamperes))
}

/// What a touch current, mA rms, does to a person.
pub fn severity_sentence(milliamperes: f64) -> Message {
    // Hands that cannot let go make a touch long; the reference path is the one of the zones.
    let severity = severity(milliamperes, Path::LeftHandToBothFeet, LONG_TOUCH_S.value);
    Message::new(format!("severity-{}", severity.id()))
}

/// How long a touch is taken to last, s: the end of the time/current chart.
pub const LONG_TOUCH_S: Figure = Figure::new(10.0, "s", Source::Model, Mark::Assumption);

/// Below this a live verdict is one of a supply conductor on the earth wire, not of a current, mA.
const LIVE_MA: f64 = crate::body::LET_GO_MA.value;

/// One fault, or two joined, inside a sentence.
pub fn fault_words(faults: FaultSet) -> Message {
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

/// Plug and switch in words. Which pin is hot is only said where that is so and helps: not on two hot
/// contacts, not behind a reversed outlet, and a plug that fits one way needs no way named.
fn state_words(state: State, worst: &Worst, feed: Feed) -> [Message; 2] {
    let says_pin = feed == Feed::Direct && !worst.faults.has(Fault::OutletReversed);
    let plug = match (worst.fits_one_way, state.plug, says_pin) {
        (true, ..) => "state-plug-only",
        (false, PlugWay::First, true) => "state-plug-first",
        (false, PlugWay::Second, true) => "state-plug-second",
        (false, PlugWay::First, false) => "state-plug-one-way",
        (false, PlugWay::Second, false) => "state-plug-other-way",
    };
    let switch = match state.switch {
        Switch::On => "state-switch-on",
        Switch::Off => "state-switch-off",
    };
    [Message::new(plug), Message::new(switch)]
}

/// The state of the worst case in a sentence, with the faults it takes.
pub fn worst_state_sentence(worst: &Worst, feed: Feed) -> Option<Message> {
    let state = state_sentence(worst, feed)?;
    Some(if worst.faults.is_empty() {
        state
    } else {
        Message::new("state-after-fault")
            .message("fault", fault_words(worst.faults))
            .message("state", state)
    })
}

/// The state of the worst case in a sentence.
fn state_sentence(worst: &Worst, feed: Feed) -> Option<Message> {
    let state = worst.state?;
    let [plug, switch] = state_words(state, worst, feed);
    Some(match state.selector {
        None => Message::new("state-sentence").message("plug", plug).message("switch", switch),
        Some(selector) => Message::new("state-sentence-selector")
            .message("plug", plug)
            .message("switch", switch)
            .message("selector", Message::new(format!("state-selector-{}", selector.id()))),
    })
}

/// The next step as a sentence, or why there is none.
pub fn next_or_stop(verdict: &Verdict) -> Message {
    match verdict.next {
        Some(next) => Message::new("next-step").message("question", step_words(next.step)),
        None => Message::new(stop_id(verdict)),
    }
}

fn step_words(step: Step) -> Message {
    Message::new(match step {
        Step::Ask(question) => format!("question-{}", question.id()),
        Step::Read(value) => format!("value-{}", value.id()),
        Step::Measure(reading) => format!("reading-{}", reading.id()),
    })
}

/// Why the next step is the next, in classes that it can rule out.
pub fn next_reason(verdict: &Verdict) -> Option<Message> {
    let next = verdict.next?;
    let traces = next.step == Step::Ask(Question::MetalJoined);
    if let Some(doubt) = next.clears {
        return Some(Message::new(clears(doubt)));
    }
    let id = match (next.classes, next.rules_out) {
        _ if matches!(next.step, Step::Read(_)) => "next-reason-figure",
        _ if next.step == Step::Ask(Question::TubeList) => "next-reason-likely",
        (_, 0) if traces => "next-reason-traced",
        (1, _) => "next-reason-one-class",
        (_, 0) => "next-reason-together",
        (_, 1) => "next-reason-one",
        _ => "next-reason-several",
    };
    let message = Message::new(id);
    // As many as the screen shows beside it.
    let classes = verdict.classes.len().max(next.classes);
    Some(message.text("classes", classes.to_string()).text("out", next.rules_out.to_string()))
}

fn clears(doubt: Doubt) -> &'static str {
    match doubt {
        Doubt::UntracedMetal => "next-reason-metal",
        // The last two are there only once the plug is answered.
        Doubt::CordNotRuledOut | Doubt::LineSideFound | Doubt::PlateNamesLine => "next-reason-cord",
        Doubt::PlateUnread => "next-reason-plate",
        Doubt::EarthLift => "next-reason-lift",
        Doubt::EarthPinUnseen => "next-reason-pin",
        // Never asked for: the terminals have been looked at.
        Doubt::AerialBeside => "next-reason-metal",
        Doubt::AerialUnseen => "next-reason-aerial",
    }
}

fn stop_id(verdict: &Verdict) -> &'static str {
    if !verdict.conflicts.is_empty() {
        "nothing-left-conflict"
    } else if let Some(doubt) = verdict.doubts.first() {
        match doubt {
            Doubt::UntracedMetal => "nothing-left-untraced",
            Doubt::CordNotRuledOut => "nothing-left-cord",
            Doubt::LineSideFound => "nothing-left-line",
            Doubt::PlateUnread => "nothing-left-plate-unread",
            Doubt::PlateNamesLine => "nothing-left-plate",
            Doubt::EarthLift => "nothing-left-lift",
            Doubt::EarthPinUnseen => "nothing-left-pin",
            Doubt::AerialBeside => "nothing-left-aerial",
            Doubt::AerialUnseen => "nothing-left-aerial-unseen",
        }
    } else if verdict.treat_as == verdict.could_be {
        "nothing-left-shown"
    } else {
        "nothing-left"
    }
}

/// What one step more of access could show, a sentence for each.
pub fn further_sentences(verdict: &Verdict) -> Vec<Message> {
    let sentence = |further: &Further| {
        let id = match further.access.as_slice() {
            [Access::CoverOff] => "further-cover_off",
            [Access::Meter] => "further-meter",
            [] => "further-measured",
            _ => "further-cover_off-meter",
        };
        Message::new(id).message("class", class_inline(further.best))
    };
    verdict.further.iter().map(sentence).collect()
}

/// That hints can still move what is likely, where nothing left to ask betters the verdict.
pub fn go_on(findings: &Findings, verdict: &Verdict) -> Option<Message> {
    let open = Question::ALL.iter().any(|question| {
        question.entry().role == Role::Soft
            && !findings.answers.contains_key(question)
            && (*question != Question::TubeList || findings.tubes.is_empty())
    });
    let can_move = verdict.classes.len() > 1 && verdict.conflicts.is_empty();
    (verdict.next.is_none() && open && can_move).then(|| Message::new("go-on-hints"))
}

/// The findings that carry the verdict, each with what it would be without.
pub fn rests_on_sentences(verdict: &Verdict) -> Vec<Message> {
    let id = if verdict.rests_on.len() == 1 { "rests-on-one" } else { "rests-on" };
    verdict
        .rests_on
        .iter()
        .map(|rests| {
            Message::new(id)
                .message("finding", rests.finding.words())
                .message("class", class_inline(rests.without))
        })
        .collect()
}

/// What to look at again in a conflict, a sentence for each.
pub fn conflict_sentences(verdict: &Verdict) -> Vec<Message> {
    verdict
        .conflicts
        .iter()
        .map(|conflict| {
            let findings = conflict.iter().map(|finding| finding.words()).collect();
            Message::new("conflict-look-again").list("findings", findings)
        })
        .collect()
}
