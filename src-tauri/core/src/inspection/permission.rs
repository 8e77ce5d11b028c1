//! What may be done now. Local codes come first.

use super::bank::Question;
use super::doubt::Doubt;
use super::findings::Findings;
use super::insulation::{InsulationMeaning, insulation_meaning};
use super::leak::leak_ma;
use super::live_test::Stop;
use super::overlay::OverlayId;
use super::verdict::{Basis, Verdict};
use crate::hazard::Class;
use crate::words::{Message, milliamperes};

/// What may be done now, the first first.
pub fn permission(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    let id = match (verdict.treat_as, verdict.basis) {
        (Class::Live, Basis::Shown) => "permission-live-shown".to_owned(),
        (Class::Live, Basis::NotRuledOut) => "permission-live-not_ruled_out".to_owned(),
        (class, _) => {
            let held_back = holds_back(findings, verdict);
            if !held_back.is_empty() {
                return held_back;
            }
            format!("permission-{}", class.id())
        }
    };
    look_first(findings, verdict).into_iter().chain([Message::new(id)]).collect()
}

/// What holds for every unit with a line side, whatever the class.
pub fn standing(verdict: &Verdict) -> Vec<Message> {
    let limiters = !matches!(verdict.treat_as, Class::NoLine);
    let limiters = limiters.then(|| Message::new("permission-limiters"));
    limiters.into_iter().chain([Message::new("permission-codes")]).collect()
}

/// What forbids power whatever the class, or speaks against the class: empty where nothing does.
pub fn holds_back(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    touch_stopped(findings).into_iter().chain(forbids_power(findings, verdict)).collect()
}

fn touch_stopped(findings: &Findings) -> Option<Message> {
    let id = findings.touch_stop().map(|stop| match stop {
        Stop::Tripped => "permission-touch_tripped",
        Stop::AboveLimit => "permission-touch_test",
        Stop::Alone => "permission-touch_stopped",
    });
    id.map(Message::new)
}

/// What was found or measured that forbids power, whatever the class and however little else is known.
pub fn found_against(findings: &Findings, overlays: &[OverlayId]) -> Vec<Message> {
    let cautions: Vec<OverlayId> = overlays.iter().copied().filter(is_found_bad).collect();
    touch_stopped(findings).into_iter().chain(seen_or_felt(findings, &cautions)).collect()
}

/// The same but for the touch test itself: what forbids to plug it in even for that.
pub fn forbids_power(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    let forbids = |overlay: &OverlayId| *overlay == OverlayId::LineOnEarth || is_found_bad(overlay);
    let overlays = verdict.overlays.iter().map(|overlay| overlay.id);
    let cautions: Vec<OverlayId> = overlays.filter(forbids).collect();
    let conflict = (!verdict.conflicts.is_empty()).then(|| Message::new("permission-conflict"));
    // Enough behind a proven earth wire only.
    let unearthed = insulation_meaning(findings) == Some(InsulationMeaning::EarthedOnly)
        && !is_earthed(findings, verdict);
    let unearthed = unearthed.then(|| Message::new("permission-insulation_unearthed"));
    let doubts = verdict.doubts.iter().copied().map(doubtful);
    conflict
        .into_iter()
        .chain(seen_or_felt(findings, &cautions))
        .chain(unearthed)
        .chain(doubts)
        .chain(leak(findings))
        .collect()
}

/// Cautions that say not to power it, by their names: on a tag of paper none stands below. Then what a person felt,
/// and what an insulation test came to.
fn seen_or_felt(findings: &Findings, cautions: &[OverlayId]) -> impl Iterator<Item = Message> {
    let name = |overlay: &OverlayId| Message::new(format!("overlay-{}-name", overlay.id()));
    let names: Vec<Message> = cautions.iter().map(name).collect();
    let cautions = (!names.is_empty())
        .then(|| Message::new("permission-cautions-first").list("cautions", names));
    // Current has gone through a person: whatever explains it may not be among the answers.
    let felt = findings.says(Question::Tingle, "reported");
    let rejected = insulation_meaning(findings) == Some(InsulationMeaning::Rejected);
    [
        cautions,
        felt.then(|| Message::new("permission-tingle")),
        rejected.then(|| Message::new("permission-insulation")),
    ]
    .into_iter()
    .flatten()
}

/// Whether a caution that forbids power is of what was found, not of what may still be.
fn is_found_bad(overlay: &OverlayId) -> bool {
    matches!(overlay, OverlayId::DamagedCord | OverlayId::FilterCapacitors | OverlayId::WrongSupply)
}

fn doubtful(doubt: Doubt) -> Message {
    Message::new(match doubt {
        Doubt::UntracedMetal => "permission-doubt-untraced",
        Doubt::CordNotRuledOut => "permission-doubt-cord",
        Doubt::LineSideFound => "permission-doubt-line",
        Doubt::PlateUnread => "permission-doubt-plate-unread",
        Doubt::PlateNamesLine => "permission-doubt-plate",
        Doubt::EarthLift => "permission-doubt-lift",
        Doubt::EarthPinUnseen => "permission-doubt-pin",
        Doubt::AerialBeside => "permission-doubt-aerial",
        Doubt::AerialUnseen => "permission-doubt-aerial-unseen",
    })
}

/// Whether an earth wire was found on the chassis, on a plug that has a pin for it, and nothing speaks against it.
fn is_earthed(findings: &Findings, verdict: &Verdict) -> bool {
    findings.says(Question::EarthWire, "on_chassis")
        && findings.shows_earth_pin()
        && verdict.conflicts.is_empty()
}

/// A finite reading from a pin to the metal lets current through by itself, whatever the class says.
fn leak(findings: &Findings) -> Option<Message> {
    let leak = leak_ma(findings)?;
    Some(if leak > MOST_SHOWN {
        Message::new("permission-leak-wire")
    } else {
        Message::new("permission-leak").text("current", milliamperes(leak))
    })
}

/// Beyond this, 10 A, a path is as good as a wire and its current says nothing, mA.
const MOST_SHOWN: f64 = 1e4;

/// What would forbid power and can be seen from outside, where nobody has looked: not looking must not
/// give the kinder tag.
fn look_first(findings: &Findings, verdict: &Verdict) -> Option<Message> {
    if matches!(verdict.treat_as, Class::Live | Class::NoLine) {
        return None;
    }
    let cord = findings.known(Question::Cord).is_none().then_some("finding-cord");
    let rated = findings.rated.is_none().then_some("finding-value-rated");
    let open: Vec<Message> = [cord, rated].into_iter().flatten().map(Message::new).collect();
    (!open.is_empty()).then(|| Message::new("permission-look-first").list("findings", open))
}
