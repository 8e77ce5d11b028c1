//! Lays views out for a terminal.

use std::collections::BTreeMap;
use std::io::{ErrorKind, Write};

use coldchassis_core::words::{Message, Words, milliamperes, tenths, volts};
use coldchassis_core::workbench::{
    Code, Entry, ExposureView, Figures, InspectionView, Problem, QuestionView, RangeView, Row,
    RowView, Tag, UnitView,
};
use serde::Serialize;

/// Width of a tag, columns: fits a phone's terminal turned sideways.
const COLUMNS: usize = 72;

/// Prints a view as JSON, numbers in full.
pub fn json(view: &impl Serialize) -> Result<(), Problem> {
    let text = serde_json::to_string_pretty(view)
        .map_err(|_| Problem::new(Code::Storage, Message::new("error-cannot-print")))?;
    self::text(&text)
}

/// Prints a prompt without a line end.
pub fn prompt(text: &str) -> std::io::Result<()> {
    let mut out = std::io::stdout();
    write!(out, "{text} ")?;
    out.flush()
}

/// Prints text; a reader that has gone away is no trouble.
pub fn text(text: &str) -> Result<(), Problem> {
    match writeln!(std::io::stdout(), "{text}") {
        Ok(()) => Ok(()),
        Err(error) if error.kind() == ErrorKind::BrokenPipe => Ok(()),
        Err(_) => Err(Problem::new(Code::Storage, Message::new("error-cannot-print"))),
    }
}

/// The hang tag as text.
pub fn tag(tag: &Tag, words: &Words) -> String {
    let mut lines = Vec::new();
    lines.push(format!("+{}+", "-".repeat(COLUMNS - 2)));
    lines.push(framed(&format!("(o)  {}", tag.signal_word)));
    lines.push(framed(&tag.title));
    lines.push(format!("+{}+", "-".repeat(COLUMNS - 2)));
    let mut section = |title: Option<&str>, items: &[String], mark: &str| {
        if items.is_empty() {
            return;
        }
        if let Some(title) = title {
            lines.push(String::new());
            lines.push(words.say_id(title));
        }
        for item in items {
            lines.extend(wrapped(item, mark));
        }
    };
    section(None, &tag.conflicts, "! ");
    section(None, &tag.reason, "");
    let worst = tag.after.iter().chain(&tag.current).chain(&tag.state);
    let worst = worst.cloned().collect::<Vec<_>>().join("  ");
    let worst = [(!worst.is_empty()).then_some(worst), tag.severity.clone(), tag.supply.clone()];
    section(Some("tag-worst"), &worst.into_iter().flatten().collect::<Vec<_>>(), "  ");
    section(None, &tag.could_be.iter().chain(&tag.likely).cloned().collect::<Vec<_>>(), "");
    let allowed: Vec<String> = tag.permission.iter().chain(&tag.standing).cloned().collect();
    section(Some("tag-permission"), &allowed, "  - ");
    section(Some("tag-cautions"), &tag.overlays, "  - ");
    let next: Vec<String> = std::iter::once(&tag.next)
        .chain(&tag.next_reason)
        .chain(&tag.further)
        .chain(&tag.go_on)
        .cloned()
        .collect();
    section(Some("tag-next"), &next, "  ");
    section(Some("tag-rests-on"), &tag.rests_on, "  - ");
    section(Some("not-checked-intro"), &tag.not_checked, "  - ");
    section(Some("tag-figures"), &tag.figures.iter().cloned().collect::<Vec<_>>(), "  ");
    lines.join("\n")
}

fn framed(text: &str) -> String {
    let room = COLUMNS - 4;
    wrap(text, room)
        .into_iter()
        .map(|line| format!("| {line}{} |", " ".repeat(room.saturating_sub(line.chars().count()))))
        .collect::<Vec<_>>()
        .join("\n")
}

/// Lines of a text behind a mark; those after the first are indented as far.
pub fn wrapped(text: &str, mark: &str) -> Vec<String> {
    let indent = " ".repeat(mark.chars().count());
    wrap(text, COLUMNS - indent.len())
        .into_iter()
        .enumerate()
        .map(|(place, line)| format!("{}{line}", if place == 0 { mark } else { &indent }))
        .collect()
}

/// Breaks text at blanks; a no-break space keeps a figure with its unit.
fn wrap(text: &str, columns: usize) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split(' ') {
        let Some(line) = lines.last_mut() else {
            continue;
        };
        if line.is_empty() {
            line.push_str(word);
        } else if line.chars().count() + 1 + word.chars().count() <= columns {
            line.push(' ');
            line.push_str(word);
        } else {
            lines.push(word.to_owned());
        }
    }
    lines
}

/// A paragraph with a blank line before it.
pub fn paragraph(text: &str) -> String {
    format!("\n{}", wrap(text, COLUMNS).join("\n"))
}

/// A question with why, how and its numbered answers.
pub fn question(question: &QuestionView, words: &Words) -> String {
    let mut lines = vec![paragraph(&format!("? {}", question.text))];
    lines.extend(wrapped(&question.why, "  "));
    lines.extend(wrapped(&question.how, "  "));
    for place in &question.places {
        lines.push(format!("  [ ] {place}"));
    }
    if let Some(caution) = &question.caution {
        lines.extend(wrapped(caution, "  ! "));
    }
    for (place, answer) in question.answers.iter().enumerate() {
        lines.push(format!("  {:2}  {}", place + 1, answer.text));
    }
    if question.answers.is_empty() {
        let how = match question.entry {
            Entry::Rated => "guide-rated",
            Entry::Reading => "guide-reading",
            _ => "guide-figure",
        };
        lines.push(format!("  {}", words.say_id(how)));
    }
    lines.join("\n")
}

/// What inspections take, a line for each access, kind and order.
pub fn simulated(figures: &Figures, words: &Words) -> String {
    let access = |id: &&str| Message::new(format!("reach-by-{id}"));
    let line = |row: &Row| {
        words.say(
            &Message::new("simulate-row")
                .list("access", row.access.iter().map(access).collect())
                .message("kind", Message::new(format!("answer-kind-{}", row.kind)))
                .message("order", Message::new(format!("order-{}", row.order)))
                .text("seconds", tenths(row.seconds))
                .text("error", tenths(row.error))
                .text("steps", tenths(row.steps)),
        )
    };
    let intro = Message::new("simulate-intro")
        .text("units", figures.units.to_string())
        .text("seed", figures.seed.to_string());
    let lines = figures.rows.iter().map(line);
    std::iter::once(words.say(&intro)).chain(lines).collect::<Vec<_>>().join("\n")
}

/// What was answered and what it leaves.
pub fn answered(found: &str, after: &InspectionView, words: &Words) -> String {
    let classes = after.classes.iter();
    let classes =
        classes.map(|class| Message::new(format!("class-{}-short", class.id()))).collect();
    let left = Message::new("guide-still-possible")
        .list("classes", classes)
        .text("count", after.verdict.consistent.to_string());
    let found = if found.is_empty() { String::new() } else { format!("  > {found}\n") };
    format!("{found}  {}", words.say(&left))
}

/// The units of a record, a line each.
pub fn units(units: &[UnitView], words: &Words) -> String {
    if units.is_empty() {
        return words.say_id("list-empty");
    }
    let line = |unit: &UnitView| {
        let class = unit.treat_as.as_ref().map_or_else(
            || words.say_id("list-not-judged"),
            |class| {
                let basis = unit.basis.as_deref().unwrap_or("not_ruled_out");
                words.say_id(&format!("tag-{class}-{basis}"))
            },
        );
        format!("{}  {}  {}  {}", unit.label, class, unit.name, unit.place)
    };
    units.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// An exposure table as text.
pub fn exposure(view: &ExposureView, words: &Words) -> String {
    let mut lines = vec![
        words.say(
            &Message::new("exposure-summary")
                .message("class", Message::new(format!("class-{}", view.class)))
                .text("margin", view.margin.to_string())
                .text("current", milliamperes(view.as_found_ma)),
        ),
        String::new(),
    ];
    lines.extend(view.rows.iter().map(|row| exposure_row(row, words)));
    lines.join("\n")
}

fn exposure_row(row: &RowView, words: &Words) -> String {
    let outcome = match (row.outcome, row.open_circuit_v) {
        ("touch", Some(open)) => {
            let [current, open] =
                [milliamperes(row.touch_ma), volts(open)].map(|one| words.write(&one));
            format!("{current:>10} {open:>10}")
        }
        (outcome, _) => format!("{:>21}", words.say_id(&format!("outcome-{outcome}"))),
    };
    let faults: Vec<Message> =
        row.faults.iter().map(|fault| Message::new(format!("fault-{fault}"))).collect();
    let faults = if faults.is_empty() {
        words.say_id("exposure-as-found")
    } else {
        words.say(&Message::new("list").list("items", faults))
    };
    let state = words.say(
        &Message::new("exposure-state")
            .message("plug", Message::new(format!("exposure-{}", row.state.plug)))
            .message("switch", Message::new(format!("state-switch-{}", row.state.switch)))
            .message(
                "selector",
                match row.state.selector {
                    Some(selector) => Message::new(format!("exposure-selector-{selector}")),
                    None => Message::new("exposure-no-selector"),
                },
            ),
    );
    format!("{state:24} {outcome}  {faults}")
}

/// Predicted readings as text, a line for each.
pub fn readings(readings: &BTreeMap<&'static str, RangeView>, words: &Words) -> String {
    if readings.is_empty() {
        return words.say_id("readings-no-pins");
    }
    let line = |(id, range): (&&'static str, &RangeView)| {
        let title = words.say_id(&format!("reading-title-{id}"));
        format!("{title:40} {}", range.text(words))
    };
    readings.iter().map(line).collect::<Vec<_>>().join("\n")
}
