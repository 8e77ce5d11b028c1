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
    let found = |overlay: &OverlayId| {
        matches!(
            overlay,
            OverlayId::DamagedCord | OverlayId::FilterCapacitors | OverlayId::WrongSupply
        )
    };
    let rejected = insulation_meaning(findings) == Some(InsulationMeaning::Rejected);
    let others = [
        (findings.says(Question::Tingle, "reported"), Message::new("permission-tingle")),
        (rejected, Message::new("permission-insulation")),
    ];
    let cautions: Vec<OverlayId> = overlays.iter().copied().filter(found).collect();
    let cautions = (!cautions.is_empty()).then(|| cautions_first(&cautions));
    let others = others.into_iter().filter(|(is_so, _)| *is_so).map(|(_, message)| message);
    touch_stopped(findings).into_iter().chain(cautions).chain(others).collect()
}

/// The same but for the touch test itself: what forbids to plug it in even for that.
pub fn forbids_power(findings: &Findings, verdict: &Verdict) -> Vec<Message> {
    let insulation = insulation_meaning(findings);
    let forbidding = forbidding(verdict);
    let cautions = (!forbidding.is_empty()).then(|| cautions_first(&forbidding));
    let conflict = !verdict.conflicts.is_empty();
    let conflict = conflict.then(|| Message::new("permission-conflict"));
    let found = [
        // Current has gone through a person: whatever explains it may not be among the answers.
        (findings.says(Question::Tingle, "reported"), "permission-tingle"),
        (insulation == Some(InsulationMeaning::Rejected), "permission-insulation"),
        // Enough behind a proven earth wire only.
        (
            insulation == Some(InsulationMeaning::EarthedOnly) && !is_earthed(findings, verdict),
            "permission-insulation_unearthed",
        ),
    ]
    .into_iter()
    .filter(|(is_so, _)| *is_so)
    .map(|(_, id)| Message::new(id));
    let first = conflict.into_iter().chain(cautions).chain(found);
    first.chain(verdict.doubts.iter().copied().map(doubtful)).chain(leak(findings)).collect()
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

/// The cautions that forbid power, by their names: on a tag of paper no caution stands below.
fn cautions_first(cautions: &[OverlayId]) -> Message {
    let name = |overlay: &OverlayId| Message::new(format!("overlay-{}-name", overlay.id()));
    Message::new("permission-cautions-first").list("cautions", cautions.iter().map(name).collect())
}

/// Those of the cautions beside the class that forbid power.
fn forbidding(verdict: &Verdict) -> Vec<OverlayId> {
    let forbids = |overlay: &OverlayId| {
        matches!(
            overlay,
            OverlayId::LineOnEarth
                | OverlayId::DamagedCord
                | OverlayId::FilterCapacitors
                | OverlayId::WrongSupply
        )
    };
    verdict.overlays.iter().map(|overlay| overlay.id).filter(forbids).collect()
}

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
