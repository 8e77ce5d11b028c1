//! The guided inspection at a terminal: one question at a time, each answer kept as it is given.

use std::io::BufRead;

use coldchassis_core::fields::FieldError;
use coldchassis_core::words::{Message, Words};
use coldchassis_core::workbench::{
    Entry, InspectionView, NewUnit, Problem, QuestionView, Workbench, presets,
};
use serde_json::{Map, Value, json};

use crate::{figures, print};

/// What a person typed.
enum Typed {
    Answer(Value),
    Value(Value),
    Rated(Value),
    Reading(Value),
    LeaveOpen,
    Undo,
    Quit,
}

/// The unit to inspect, refused before any record is opened where something about it is wrong.
pub fn new_unit(
    supply: &str,
    access: Vec<String>,
    name: String,
    words: &Words,
) -> Result<NewUnit, Problem> {
    let known = presets(words);
    let preset = known.iter().find(|preset| preset.id == supply);
    let preset = preset.ok_or_else(|| {
        let ids: Vec<&str> = known.iter().map(|preset| preset.id).collect();
        FieldError::one_of("supply", &ids)
    })?;
    let new = NewUnit { name, supply: json!(preset.supply), access, ..NewUnit::default() };
    new.check()?;
    Ok(new)
}

/// Inspects a unit until the person stops or nothing more can better the verdict.
pub fn inspect(bench: &mut Workbench, new: &NewUnit) -> Result<(), Problem> {
    let mut view = bench.create_unit(new)?;
    let say =
        |bench: &Workbench, id: &str| print::text(&print::paragraph(&bench.words().say_id(id)));
    say(bench, "caution-unplug-first")?;
    say(bench, "guide-keys")?;
    let mut also = false;
    loop {
        let question = match &view.question {
            Some(question) => question.clone(),
            None => match view.also.first() {
                Some(question) => question.clone(),
                None => break,
            },
        };
        if view.question.is_none() && !also {
            also = true;
            // Why asking stops, in the words of the tag.
            print::text(&print::paragraph(&view.tag.next))?;
            say(bench, "guide-also")?;
        }
        if let (Some(_), Some(reason)) = (&view.question, &view.tag.next_reason) {
            print::text(&print::paragraph(reason))?;
        }
        match ask(bench, &view, &question)? {
            Some(next) => view = next,
            None => break,
        }
    }
    print::text(&print::tag(&view.tag, bench.words()))
}

/// Asks one question until it is answered; nothing where the person stops.
fn ask(
    bench: &mut Workbench,
    view: &InspectionView,
    question: &QuestionView,
) -> Result<Option<InspectionView>, Problem> {
    print::text(&print::question(question, bench.words()))?;
    loop {
        let Some(line) = read_line(bench)? else { return Ok(None) };
        let done = match typed(&line, question, bench.words().decimal_mark()) {
            Some(Typed::Quit) => return Ok(None),
            Some(Typed::Undo) => bench.undo(view.id).map(|undone| undone.or(Some(view.clone()))),
            Some(Typed::Answer(answer)) => bench.answer(view.id, &question.id, answer).map(Some),
            Some(Typed::Value(value)) => bench.set_value(view.id, part(question), value).map(Some),
            Some(Typed::Rated(rated)) => bench.set_rated(view.id, rated).map(Some),
            Some(Typed::Reading(reading)) => {
                bench.set_reading(view.id, part(question), reading).map(Some)
            }
            Some(Typed::LeaveOpen) => bench.leave_open(view.id, part(question)).map(Some),
            None => {
                print::text(&bench.words().say_id("guide-not-understood"))?;
                continue;
            }
        };
        match done {
            Ok(after) => {
                if let Some(after) = &after {
                    print::text(&print::answered("", after, bench.words()))?;
                }
                return Ok(after);
            }
            // A bad answer is said and asked again; what was answered before stays.
            Err(problem) if problem.field.is_some() => {
                print::text(&problem.sentence(bench.words()))?;
            }
            Err(problem) => return Err(problem),
        }
    }
}

/// One line from the person; nothing at the end of input.
fn read_line(bench: &Workbench) -> Result<Option<String>, Problem> {
    let unreadable =
        |_| Problem::from(FieldError::new("file", Message::new("takes-readable-file")));
    if print::prompt(&bench.words().say_id("guide-prompt")).is_err() {
        // Nobody is there any more: what was answered is kept.
        return Ok(None);
    }
    let mut line = String::new();
    let read = std::io::stdin().lock().read_line(&mut line).map_err(unreadable)?;
    Ok((read > 0).then(|| line.trim().to_owned()))
}

fn typed(line: &str, question: &QuestionView, mark: &str) -> Option<Typed> {
    match line {
        "q" => return Some(Typed::Quit),
        "u" => return Some(Typed::Undo),
        "?" => return cannot_tell(question),
        _ => {}
    }
    if question.entry == Entry::Rated {
        return rated(line, mark);
    }
    match question.entry {
        Entry::Farads | Entry::Ohms => return value(line, question, mark),
        Entry::Reading => return reading(line, mark),
        _ => {}
    }
    let chosen: Option<Vec<&str>> = line
        .split([',', ' '])
        .filter(|part| !part.is_empty())
        .map(|part| {
            let number: usize = part.parse().ok()?;
            question.answers.get(number.checked_sub(1)?).map(|answer| answer.id)
        })
        .collect();
    match chosen?.as_slice() {
        [] => None,
        ["cant_tell"] => Some(Typed::Answer(json!("cant_tell"))),
        several if question.entry == Entry::Several => Some(Typed::Answer(json!(several))),
        [one] => Some(Typed::Answer(json!(one))),
        _ => None,
    }
}

/// What a value or a reading is of: its id without the group.
fn part(question: &QuestionView) -> &str {
    question.id.split_once('.').map_or(question.id.as_str(), |(_, part)| part)
}

/// A value that cannot be read is left open, and not asked again; so is a reading.
fn cannot_tell(question: &QuestionView) -> Option<Typed> {
    let is_figure = question.id.contains('.');
    Some(if is_figure { Typed::LeaveOpen } else { Typed::Answer(json!("cant_tell")) })
}

/// Ohms as a meter shows them, or above its range.
fn reading(line: &str, mark: &str) -> Option<Typed> {
    let over_range = line.eq_ignore_ascii_case("ol");
    let reading = if over_range { json!("OL") } else { json!(figures::parse(line, mark)?) };
    Some(Typed::Reading(reading))
}

/// Volts, hertz and watts in this order, each a figure or a dash.
fn rated(line: &str, mark: &str) -> Option<Typed> {
    let mut given = Map::new();
    for (name, part) in ["volts", "hertz", "watts"].into_iter().zip(line.split_whitespace()) {
        if part != "-" {
            given.insert(name.to_owned(), json!(figures::parse(part, mark)?));
        }
    }
    let is_whole = line.split_whitespace().count() <= 3 && !given.is_empty();
    is_whole.then_some(Typed::Rated(Value::Object(given)))
}

/// A figure as typed; an `m` before it says that it was measured.
fn value(line: &str, question: &QuestionView, mark: &str) -> Option<Typed> {
    let (measured, figure) = match line.strip_prefix("m ") {
        Some(figure) => (true, figure),
        None => (false, line),
    };
    let unit = if question.entry == Entry::Ohms { "ohms" } else { "farads" };
    let figure = figures::parse(figure, mark)?;
    Some(Typed::Value(json!({unit: figure, "measured": measured})))
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use super::{Typed, rated};

    fn read(line: &str) -> Option<Value> {
        match rated(line, ".") {
            Some(Typed::Rated(rated)) => Some(rated),
            _ => None,
        }
    }

    #[test]
    fn a_rating_plate_is_read_in_its_order_with_gaps() {
        assert_eq!(read("117 60 35"), Some(json!({"volts": 117.0, "hertz": 60.0, "watts": 35.0})));
        assert_eq!(read("230"), Some(json!({"volts": 230.0})));
        assert_eq!(read("- 50 -"), Some(json!({"hertz": 50.0})));
        for bad in ["", "- - -", "117 sixty", "117 60 35 2", "-117"] {
            assert_eq!(read(bad), None, "{bad}");
        }
    }
}
