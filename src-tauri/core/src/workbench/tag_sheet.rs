//! What a hang tag says of a unit.

use super::views::InspectionView;
use crate::hazard::Signal;
use crate::report::HangTag;
use crate::words::Words;

/// The tag of a unit as its inspection stands.
pub(super) fn hang_tag(view: &InspectionView, made: &str, words: &Words) -> HangTag {
    let tag = &view.tag;
    HangTag {
        label: view.unit.label.clone(),
        name: view.unit.name.clone(),
        signal_word: tag.signal_word.clone(),
        is_notice: tag.signal == Signal::Notice,
        title: tag.title.clone(),
        reason: tag.reason.join(" "),
        permission: tag.permission.join(" "),
        code: code(view),
        signature: words.say_id("report-signature"),
        made: made.to_owned(),
    }
}

/// What the code says, read without a network: number and id, signal word and class. So short that its squares are large.
fn code(view: &InspectionView) -> String {
    let (label, id, tag) = (&view.unit.label, view.unit.id, &view.tag);
    format!("{label} {id}\n{}: {}", tag.signal_word, tag.title)
}
