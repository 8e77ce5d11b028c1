//! Findings that fit, by the bank of questions: what a person could give, in any combination.

use coldchassis_core::arrangement::ReadingId;
use coldchassis_core::inspection::{Access, CANT_TELL, Question, Shape, TouchPart, ValueId};
use coldchassis_core::supply::Feed;
use serde_json::{Map, Value, json};

use super::tape::Tape;

/// Types of tubes: usual ones, rectifiers, ballasts, and what nobody knows.
pub const TUBES: [&str; 16] = [
    "12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT", "6V6GT", "5Y3GT", "UCH81", "UY85", "1R5", "3V4",
    "117Z3", "K55B", "QQ99", "12ZZ9", "EL84",
];

/// An answer that a question takes.
pub fn answer(tape: &mut Tape<'_>, question: Question) -> Value {
    let ids = question.entry().answers;
    if tape.is(24) {
        return json!(CANT_TELL);
    }
    match question.entry().shape {
        Shape::One => json!(*tape.pick(ids)),
        Shape::Number => json!(tape.below(61)),
        Shape::Tubes => json!(CANT_TELL),
        Shape::Several => {
            let (nothing, some) = ids.split_first().expect("answers");
            let several: Vec<&str> = some.iter().copied().filter(|_| tape.is(96)).collect();
            if several.is_empty() { json!([nothing]) } else { json!(several) }
        }
    }
}

/// What a meter may show.
pub fn reading(tape: &mut Tape<'_>, id: ReadingId) -> Value {
    let most = match id {
        ReadingId::TouchTestVolts => 1000.0,
        ReadingId::InsulationMegohms => 1e6,
        _ => 1e12,
    };
    match tape.below(6) {
        0 => json!(0),
        1 if id != ReadingId::TouchTestVolts => json!("OL"),
        2 => json!(tape.figure(0.01, 10.0)),
        3 => json!(most),
        _ => json!(tape.figure(1e-3, most)),
    }
}

pub fn value(tape: &mut Tape<'_>, id: ValueId) -> Value {
    let measured = tape.is(128);
    match id {
        ValueId::NetworkResistor => json!({"ohms": tape.figure(1e-6, 9e11), "measured": measured}),
        _ => json!({"farads": tape.figure(1e-15, 0.9), "measured": measured}),
    }
}

pub fn supply(tape: &mut Tape<'_>) -> Value {
    let volts = tape.figure(1.0, 1000.0);
    let mut supply = json!({"volts": volts, "hertz": tape.figure(15.0, 400.0)});
    if tape.is(128) {
        supply["volts_max"] = json!(volts * (1.0 + 0.25 * f64::from(tape.byte()) / 256.0));
    }
    if tape.is(128) {
        let feed = *tape.pick(Feed::ALL);
        supply["feed"] = json!(feed.id());
        if feed == Feed::StepDownAuto && tape.is(128) {
            supply["input_volts"] =
                json!(volts + (1000.0 - volts) * f64::from(tape.byte()) / 256.0);
        }
    }
    supply
}

pub fn meter(tape: &mut Tape<'_>) -> Value {
    json!({
        "max_ohms": tape.figure(1e-3, 9e11),
        "percent": tape.pick(&[0.0, 0.1, 1.0, 20.0, 50.0]),
        "digits": tape.pick(&[0.0, 0.5, 1.0, 2.0, 100.0]),
    })
}

/// A part of a live touch test, with its value.
pub fn touch(tape: &mut Tape<'_>) -> (String, Value) {
    let parts: Vec<TouchPart> = TouchPart::all().collect();
    let part = *tape.pick(&parts);
    let value = match part {
        TouchPart::Qualified | TouchPart::Tripped(_) => json!(true),
        TouchPart::Protection => json!(tape.pick(&["gfci", "rcd", "isolating"])),
        _ => json!(tape.figure(1e-4, 1000.0)),
    };
    (part.key(), value)
}

pub fn access(tape: &mut Tape<'_>) -> Value {
    let some = Access::ALL.iter().filter(|_| tape.is(160)).map(|access| access.id());
    json!(some.collect::<Vec<_>>())
}

pub fn tubes(tape: &mut Tape<'_>) -> Value {
    let count = tape.below(9);
    json!((0..count).map(|_| *tape.pick(&TUBES)).collect::<Vec<_>>())
}

/// Puts one finding that fits into a findings file.
pub fn put(tape: &mut Tape<'_>, file: &mut Value) {
    let mut into = |group: &str, key: &str, value: Value| {
        let is_group = file.get(group).is_some_and(Value::is_object);
        if !is_group {
            file[group] = Value::Object(Map::new());
        }
        file[group][key] = value;
    };
    match tape.below(12) {
        0..5 => {
            let question = *tape.pick(Question::ALL);
            into("answers", question.id(), answer(tape, question));
        }
        5..8 => {
            let id = *tape.pick(ReadingId::ALL);
            into("readings", id.id(), reading(tape, id));
        }
        8 => {
            let id = *tape.pick(ValueId::ALL);
            into("values", id.id(), value(tape, id));
        }
        9 => {
            let (key, value) = touch(tape);
            into("live_test", &key, value);
        }
        10 => file["tubes"] = tubes(tape),
        _ => match tape.below(4) {
            0 => file["supply"] = supply(tape),
            1 => file["meter"] = meter(tape),
            2 => file["access"] = access(tape),
            _ => into("values", "rated", json!({"volts": tape.figure(1.0, 1000.0)})),
        },
    }
}
