//! JSON with something in it changed: replaced, left out, renamed, doubled, swapped.

use serde_json::{Map, Value, json};

use super::tape::Tape;

const NUMBERS: [f64; 16] = [
    0.0, -0.0, 1.0, -1.0, 0.5, 2.0, 5e-324, 1e-300, 1e-12, 1e-6, 1e6, 1e12, 1e15, 1.797e308,
    -1e308, 255.0,
];
const TEXTS: [&str; 14] = [
    "",
    " ",
    "OL",
    "cant_tell",
    "none",
    "present",
    "pin_a",
    "outside",
    "NaN",
    "1e400",
    "\u{0}",
    "\u{202e}x",
    "ÄÖ🔌",
    "0190a5d6-0000-7000-8000-000000000000",
];

/// A value that has nothing to do with what stood there.
pub fn wild(tape: &mut Tape<'_>) -> Value {
    match tape.below(9) {
        0 => Value::Null,
        1 => json!(tape.is(128)),
        2 => json!(*tape.pick(&NUMBERS)),
        3 => json!(tape.figure(1e-15, 1e15)),
        4 => json!(tape.below(1 << 20) as u64 * 1_000_003),
        5 => json!(i64::MIN + i64::from(tape.byte())),
        6 => json!(*tape.pick(&TEXTS)),
        7 => json!(tape.pick(&TEXTS).repeat(1 + 16 * usize::from(tape.byte()))),
        _ => {
            let count = tape.below(4);
            let items = (0..count).map(|_| json!(*tape.pick(&TEXTS))).collect();
            if tape.is(128) { Value::Array(items) } else { json!({"x": items}) }
        }
    }
}

/// Changes one thing somewhere in a value.
pub fn change(tape: &mut Tape<'_>, value: &mut Value) {
    let places = places(value);
    let place = tape.pick(&places).clone();
    let other = tape.pick(&places).clone();
    let other = value.pointer(&other).cloned().unwrap_or_default();
    let new = wild(tape);
    let how = tape.below(8);
    let (parent, key) = place.rsplit_once('/').unwrap_or(("", ""));
    let here = value.pointer_mut(&place).expect("it is there");
    match (how, here) {
        (0, here) => *here = new,
        (1, here) => *here = other,
        (2, Value::Number(number)) => {
            let factor = *tape.pick(&[-1.0, 0.0, 0.1, 10.0, 1e6, 1e-6, 1.0 + f64::EPSILON]);
            *value.pointer_mut(&place).expect("it is there") =
                json!(number.as_f64().unwrap_or(1.0) * factor);
        }
        (2 | 3, Value::String(text)) => {
            let cut = tape.below(text.chars().count() + 1);
            *text = text.chars().take(cut).chain(tape.pick(&TEXTS).chars()).collect();
        }
        (4, Value::Array(items)) => {
            items.extend(items.clone());
        }
        (5, Value::Array(items)) => items.truncate(tape.below(items.len() + 1)),
        (4 | 5, Value::Object(fields)) => {
            fields.insert((*tape.pick(&TEXTS)).to_owned(), new);
        }
        (6 | 7, _) => without(value, parent, key, (how == 7).then_some(other)),
        (_, here) => *here = new,
    }
}

/// Leaves out what stands under a key, or puts something else beside it.
fn without(value: &mut Value, parent: &str, key: &str, instead: Option<Value>) {
    let key = key.replace("~1", "/").replace("~0", "~");
    match value.pointer_mut(parent) {
        Some(Value::Object(fields)) => {
            fields.remove(&key);
            if let Some(instead) = instead {
                fields.insert(format!("{key}s"), instead);
            }
        }
        Some(Value::Array(items)) => {
            let place = key.parse().unwrap_or(0);
            if place < items.len() {
                items.remove(place);
            }
        }
        _ => *value = Value::Object(Map::new()),
    }
}

/// The place of everything in a value, as JSON pointers.
fn places(value: &Value) -> Vec<String> {
    let mut all = vec![String::new()];
    let mut next = 0;
    while next < all.len() {
        let place = all[next].clone();
        match value.pointer(&place) {
            Some(Value::Object(fields)) => {
                let keys = fields.keys().map(|key| key.replace('~', "~0").replace('/', "~1"));
                all.extend(keys.map(|key| format!("{place}/{key}")));
            }
            Some(Value::Array(items)) => {
                all.extend((0..items.len()).map(|item| format!("{place}/{item}")));
            }
            _ => {}
        }
        next += 1;
    }
    all
}
