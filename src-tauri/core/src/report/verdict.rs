//! The verdict as a tag at the head of a report: read in ten seconds.

use super::flow::{Flow, PAD, fit};
use super::letters::Weight;
use super::page::{Area, BLACK, GREY, Mark, Role};
use super::pen::Style;
use super::sheet::Verdict;

const SIGNAL: Style = Style { size: 26.0, weight: Weight::Bold, ink: BLACK };
const TITLE: Style = Style { size: 17.0, weight: Weight::Bold, ink: BLACK };
const FIGURE: Style = Style { size: 15.0, weight: Weight::Bold, ink: BLACK };
const NAME: Style = Style { size: 11.0, weight: Weight::Regular, ink: GREY };
const FRAME: f32 = 2.5;
/// The share of the width that a photo beside the words takes.
const PHOTO: f32 = 0.36;

/// Sets the tag; the words beside the photo, then the frame around both.
pub(super) fn set<'a>(flow: &mut Flow<'a>, verdict: &'a Verdict) {
    let (x, width) = flow.inner();
    let top = flow.y;
    let left = x + 2.0 * PAD;
    let photo = verdict.photo.as_ref();
    let wide = if photo.is_some() { width * PHOTO } else { 0.0 };
    let words = width - 4.0 * PAD - wide - if photo.is_some() { PAD } else { 0.0 };
    // The eye of a tag, through which the string goes.
    let middle = [x + width / 2.0, top + 13.0];
    flow.pen.put(None, Mark::Disc { middle, radius: 5.0, line: 1.5, ink: BLACK });
    let mut y = top + 26.0;
    let name = format!("{}  {}", verdict.label, verdict.name);
    y = flow.pen.say(Role::Paragraph, &name, (left, y, width - 4.0 * PAD), NAME) + 2.0;
    let beside = y;
    let indent = if verdict.is_notice { 0.0 } else { 32.0 };
    if !verdict.is_notice {
        flow.pen.triangle([left + 13.0, y + 17.0], 13.0);
    }
    y = flow.pen.say(
        Role::Title(verdict.signal_word.clone()),
        &verdict.signal_word,
        (left + indent, y, words - indent),
        SIGNAL,
    );
    y = flow.pen.say(Role::Paragraph, &verdict.title, (left, y + 2.0, words), TITLE) + 4.0;
    if let Some([figure, of]) = &verdict.current {
        y = flow.pen.say(Role::Paragraph, figure, (left, y, words), FIGURE);
        y = flow.pen.say(Role::Paragraph, of, (left, y, words), Style::NOTE) + 4.0;
    }
    for reason in &verdict.reason {
        y = flow.pen.say(Role::Paragraph, reason, (left, y, words), Style::BODY) + 3.0;
    }
    if !verdict.permission.is_empty() {
        y = flow.pen.say(
            Role::Heading(verdict.now.clone()),
            &verdict.now,
            (left, y + 4.0, words),
            Style::STRONG,
        ) + 1.0;
    }
    for permission in &verdict.permission {
        y = flow.pen.say(Role::Paragraph, permission, (left, y, words), Style::STRONG) + 3.0;
    }
    if let Some(photo) = photo {
        let size = fit(photo, wide, 1.4 * wide);
        let area =
            Area { x: x + width - 2.0 * PAD - size.0, y: beside, width: size.0, height: size.1 };
        flow.photo(photo, area);
        let caption = (area.x, area.y + area.height + 2.0, size.0);
        y = y.max(flow.pen.say(Role::Paragraph, &photo.caption, caption, Style::NOTE));
    }
    let area = Area { x, y: top, width, height: y + PAD - top };
    flow.pen.frame(area, FRAME, BLACK);
    flow.y = y + 2.5 * PAD;
}
