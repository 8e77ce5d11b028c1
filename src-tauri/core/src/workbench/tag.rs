//! The hang tag as data: every line of the verdict, in the inspector's language.

use serde::Serialize;

use crate::hazard::{Class, Signal};
use crate::inspection::{
    Basis, Findings, OverlayId, Verdict, after_faults, class_inline, conflict_sentences,
    further_sentences, go_on, next_or_stop, next_reason, not_checked, permission, reason,
    rests_on_sentences, severity_words, shown_worst, standing, supply_sentence, tag_line,
    worst_state_sentence,
};
use crate::words::{Message, Words, milliamperes, percent};

/// The verdict in words.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct Tag {
    /// The class to act on.
    pub class: Class,
    /// The signal word's id.
    pub signal: Signal,
    /// The signal word.
    pub signal_word: String,
    /// Whether the class is called shown, for the list of units.
    #[serde(skip)]
    pub basis: &'static str,
    /// Class with its basis.
    pub title: String,
    /// Why, in a sentence or two.
    pub reason: Vec<String>,
    /// The worst touch current with its unit; nothing for a unit without a line side.
    pub current: Option<String>,
    /// How many faults it takes; nothing where it flows as found.
    pub after: Option<String>,
    /// The supply it is worked out for.
    pub supply: Option<String>,
    /// The state it holds in.
    pub state: Option<String>,
    /// What such a current does to a person.
    pub severity: Option<String>,
    /// Whose body the figures are for.
    pub figures: Option<String>,
    /// What it could still be, where that is better.
    pub could_be: Option<String>,
    /// What soft evidence points to, as not proof.
    pub likely: Option<String>,
    /// What may be done now.
    pub permission: Vec<String>,
    /// What holds besides, whatever the class.
    pub standing: Vec<String>,
    /// What to look at next, or that nothing is left.
    pub next: String,
    /// Why that is next, where something is.
    pub next_reason: Option<String>,
    /// What one step more of access could show, where nothing is left at this one.
    pub further: Vec<String>,
    /// That hints can still move what is likely, where nothing left betters the verdict.
    pub go_on: Option<String>,
    /// What to look at again.
    pub conflicts: Vec<String>,
    /// The cautions beside the class.
    pub overlays: Vec<String>,
    /// What the verdict rests on.
    pub rests_on: Vec<String>,
    /// What was not checked.
    pub not_checked: Vec<String>,
}

/// Puts a verdict into words.
pub fn tag(findings: &Findings, verdict: &Verdict, words: &Words) -> Tag {
    let say = |message: &Message| words.say(message);
    let say_all = |messages: Vec<Message>| messages.iter().map(say).collect::<Vec<_>>();
    let signal = verdict.treat_as.signal();
    Tag {
        class: verdict.treat_as,
        signal,
        signal_word: words.say_id(&format!("signal-{}", signal.id())),
        basis: verdict.basis_in_words().id(),
        title: say(&tag_line(verdict)),
        reason: say_all(reason(findings, verdict)),
        current: shown_worst(verdict).map(|worst| words.write(&milliamperes(worst.milliamperes))),
        after: after_faults(verdict).as_ref().map(say),
        supply: supply_sentence(findings, verdict).as_ref().map(say),
        state: shown_worst(verdict)
            .and_then(|worst| worst_state_sentence(worst, findings.supply.feed))
            .as_ref()
            .map(say),
        severity: severity_words(verdict).as_ref().map(say),
        figures: shown_worst(verdict).map(|_| words.say_id("caution-body-figures")),
        could_be: (verdict.could_be != verdict.treat_as).then(|| {
            say(&Message::new("could-be").message("class", class_inline(verdict.could_be)))
        }),
        likely: likely(verdict, words),
        permission: say_all(permission(findings, verdict)),
        standing: say_all(standing(verdict)),
        next: say(&next_or_stop(verdict)),
        next_reason: next_reason(verdict).as_ref().map(say),
        further: say_all(further_sentences(verdict)),
        go_on: go_on(findings, verdict).as_ref().map(say),
        conflicts: conflicts(verdict, words),
        overlays: overlays(verdict, words),
        rests_on: say_all(rests_on_sentences(verdict)),
        not_checked: say_all(not_checked(findings)),
    }
}

/// A share from which a class is called very likely.
const VERY_LIKELY: f64 = 0.9;

fn likely(verdict: &Verdict, words: &Words) -> Option<String> {
    // What is shown already needs no likelihood.
    let likely = verdict.likely.filter(|_| verdict.basis != Basis::Shown)?;
    let id = if likely.share >= VERY_LIKELY { "likely-very" } else { "likely-likely" };
    let message = Message::new(id).message("class", class_inline(likely.class));
    Some(words.say(&message.text("share", percent(likely.share))))
}

fn conflicts(verdict: &Verdict, words: &Words) -> Vec<String> {
    if verdict.conflicts.is_empty() {
        return Vec::new();
    }
    let intro = words.say_id("conflict-intro");
    let each = conflict_sentences(verdict).into_iter().map(|message| words.say(&message));
    std::iter::once(intro).chain(each).collect()
}

fn overlays(verdict: &Verdict, words: &Words) -> Vec<String> {
    let say = |overlay: &crate::inspection::Overlay| {
        let id = format!("overlay-{}", overlay.id.id());
        words.say(&match (overlay.id, overlay.milliamperes) {
            (_, Some(leak)) => Message::new(id).text("current", milliamperes(leak)),
            (OverlayId::EarthCarriesLeakage, None) => Message::new("overlay-earth_carries_fault"),
            (_, None) => Message::new(id),
        })
    };
    verdict.overlays.iter().map(say).collect()
}
