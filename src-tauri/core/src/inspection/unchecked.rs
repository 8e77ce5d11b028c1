//! What nobody has looked at: the other half of every verdict.

use super::bank::{Access, Question, Role};
use super::findings::Findings;
use super::reach::is_bare_metal_found;
use crate::words::Message;

/// What nobody has looked at; never empty.
pub fn not_checked(findings: &Findings) -> Vec<Message> {
    let inside_looked = findings.answers.iter().any(|(question, answer)| {
        answer.is_known() && question.entry().access == [Access::CoverOff]
    });
    let batteries = findings.says(Question::Plug, "battery_only");
    let unswitched = inside_looked && findings.known(Question::SwitchLeg).is_none();
    let unread = findings.values.is_empty() && !batteries;
    let unmeasured = !findings.readings.keys().any(|reading| reading.probes().is_some());
    [
        (findings.says(Question::Plug, "outside_supply"), "not-checked-supply"),
        (!inside_looked, "not-checked-inside"),
        (unmeasured && !batteries, "not-checked-readings"),
        (unswitched && !batteries, "not-checked-switch_wiring"),
        (metal_untraced(findings), "not-checked-metal"),
        (aerial_beside_metal(findings), "not-checked-aerial"),
        (unread, "not-checked-values"),
        (findings.tubes.is_empty(), "not-checked-tubes"),
    ]
    .into_iter()
    .filter(|(is_so, _)| *is_so)
    .map(|(_, id)| Message::new(id))
    .chain(cautions_open(findings, inside_looked))
    .chain([Message::new("not-checked-hidden")])
    .collect()
}

/// What adds a caution of its own and was not looked at, or looked at in vain. What is inside counts
/// with the inside, until that is looked at.
fn cautions_open(findings: &Findings, inside_looked: bool) -> Vec<Message> {
    if findings.says(Question::Plug, "battery_only") {
        return Vec::new();
    }
    let mut access = vec![Access::Outside];
    if inside_looked {
        access.push(Access::CoverOff);
    }
    let questions = Question::ALL.iter().copied();
    let open = questions
        .filter(|question| question.entry().role == Role::Overlay)
        .filter(|question| question.may_be_asked(&access))
        .filter(|question| findings.known(*question).is_none())
        .map(|question| Message::new(format!("finding-{}", question.id())));
    let unread = findings.rated.is_none() && may_have_rating(findings);
    let rated = unread.then(|| Message::new("finding-value-rated"));
    rated.into_iter().chain(open).collect()
}

/// One reach is judged at a time: bare metal hides what an aerial terminal beside it could carry.
fn aerial_beside_metal(findings: &Findings) -> bool {
    let touchable = is_bare_metal_found(findings) || findings.says(Question::Back, "missing");
    touchable && findings.says(Question::Terminals, "aerial_or_earth")
}

/// Bare metal counts as on the chassis until it is traced; say so where nobody has.
fn metal_untraced(findings: &Findings) -> bool {
    is_bare_metal_found(findings) && findings.known(Question::MetalJoined).is_none()
}

/// The cautions of looking further that nobody has answered yet.
pub fn cautions_to_look_at(findings: &Findings) -> Vec<Question> {
    // A unit without a cord has none of what belongs to one.
    let of_line = [Question::Cord, Question::CordWires, Question::AccessoryOutlet, Question::Fuse];
    let no_cord = findings.says(Question::Plug, "battery_only");
    Question::ALL
        .iter()
        .copied()
        .filter(|question| question.entry().role == Role::Overlay)
        .filter(|question| findings.may_ask(*question))
        .filter(|question| !(no_cord && of_line.contains(question)))
        .collect()
}

/// Whether there may be a rating of the supply to be read: not where there is no plate, nor on a unit without
/// a supply.
pub fn may_have_rating(findings: &Findings) -> bool {
    let none = [
        (Question::RatingPlate, "none"),
        (Question::RatingPlate, "battery"),
        (Question::Plug, "battery_only"),
    ];
    !none.iter().any(|(question, answer)| findings.says(*question, answer))
}
