//! Values that an argument is not meant to have, by its type.

use std::path::PathBuf;

use serde_json::{Value, json};
use uuid::Uuid;

use super::stage::Stage;
use super::texts::TEXTS;

/// A value, and whether every command has to refuse it there.
pub struct Wrong {
    pub value: Value,
    pub is_refused: bool,
}

fn wrong(value: Value, is_refused: bool) -> Wrong {
    Wrong { value, is_refused }
}

/// A text of a megabyte.
pub fn huge() -> String {
    "x".repeat(1 << 20)
}

/// Lists in lists, as deep as JSON is read.
fn deep() -> Value {
    (0..100).fold(json!(1), |inside, _| json!([inside]))
}

/// JSON of every kind, and too much of each.
pub fn junk() -> Vec<Value> {
    let keys = (0..2000).map(|key| (format!("key {key}"), json!(key)));
    vec![
        Value::Null,
        json!(true),
        json!(0),
        json!(-1),
        json!(-0.0),
        json!(1e-320),
        json!(1e308),
        json!(u64::MAX),
        json!(i64::MIN),
        json!(""),
        json!("cant_tell"),
        json!("OL"),
        json!(huge()),
        json!([]),
        json!([null]),
        json!([[], {}]),
        json!(vec![0; 20_000]),
        json!(["outside"]),
        json!(vec!["outside"; 20_000]),
        json!(vec!["screws_or_shafts"; 20_000]),
        json!(vec![huge(); 3]),
        deep(),
        json!({}),
        json!({"": ""}),
        json!({"__proto__": {"x": 1}}),
        json!({"$ne": null}),
        Value::Object(keys.collect()),
        Value::Object([(huge(), json!(1))].into_iter().collect()),
    ]
}

/// Ids of nothing, and of something of another kind.
fn foreign(stage: &Stage, name: &str) -> Vec<Uuid> {
    let ids = &stage.ids;
    let mut foreign = vec![Uuid::nil(), Uuid::max(), Uuid::now_v7(), ids.gone[0], ids.gone[1]];
    if name != "unit" && name != "units" {
        foreign.push(ids.unit);
    }
    if name != "inspection" {
        foreign.push(ids.inspection);
    }
    if !matches!(name, "photo" | "before" | "order") {
        foreign.push(ids.photos[0]);
    }
    foreign
}

fn places(stage: &Stage) -> Vec<PathBuf> {
    let plain = stage.given("plain");
    std::fs::write(&plain, "a letter").expect("it can be written");
    let folder = stage.folder.path();
    vec![
        folder.to_owned(),
        stage.given("missing").join("a.coldbundle"),
        plain.join("below.coldbundle"),
        stage.given(&"n".repeat(5000)),
        stage.given("nul\0nul"),
        stage.given("\u{202e}new\nline \u{1b}[31m ' \" ; rm -rf.coldbundle"),
    ]
}

/// Values for an argument of a type: of any other type, too much, and ids of nothing.
pub fn of_kind(stage: &Stage, name: &str, kind: &str) -> Vec<Wrong> {
    let inner = kind.strip_prefix("Option<").and_then(|rest| rest.strip_suffix('>'));
    let may_be_null = inner.is_some();
    let of = inner.unwrap_or(kind);
    let fits = |value: &Value| match of {
        "Value" => true,
        "String" | "PathBuf" | "Uuid" | "TagPaper" => value.is_string(),
        "bool" => value.is_boolean(),
        "f64" => value.is_number(),
        "u32" => value.is_u64(),
        "Vec<Uuid>" | "Vec<String>" => value.is_array(),
        "NewUnit" | "QueueAsk" | "ReportAsk" => value.is_object() || value.is_array(),
        new => panic!("a new type of an argument: say what fits {new}"),
    };
    let is_place = of == "PathBuf";
    // What is a path must not lead out of the stage.
    let plain = junk().into_iter().filter(|value| !(is_place && value.is_string()));
    let plain = plain.filter(|value| of != "bool" || !value.is_boolean());
    let mut all: Vec<Wrong> = plain
        .map(|value| {
            let may_fit = fits(&value) || (may_be_null && value.is_null());
            wrong(value, !may_fit)
        })
        .collect();
    match of {
        "Uuid" => all.extend(foreign(stage, name).into_iter().map(|id| wrong(json!(id), true))),
        "Vec<Uuid>" => {
            all.extend(foreign(stage, name).into_iter().map(|id| wrong(json!([id]), true)));
            all.push(wrong(json!(vec![Uuid::nil(); 20_000]), true));
        }
        "String" | "Value" => all.extend(TEXTS.iter().map(|text| wrong(json!(text), false))),
        "PathBuf" => all.extend(places(stage).into_iter().map(|path| wrong(json!(path), false))),
        "TagPaper" => all.push(wrong(json!("Label62"), true)),
        _ => {}
    }
    all
}

/// A sample with something wrong inside it: a part replaced, left out, or one too many.
pub fn spoilt(sample: &Value) -> Vec<Value> {
    spoilt_within(sample, &junk())
}

fn spoilt_within(sample: &Value, junk: &[Value]) -> Vec<Value> {
    match sample {
        Value::Object(fields) => {
            let mut all = Vec::new();
            let mut more = fields.clone();
            more.insert("more".to_owned(), json!(1));
            all.push(Value::Object(more));
            for (name, inside) in fields {
                let mut fewer = fields.clone();
                fewer.remove(name);
                all.push(Value::Object(fewer));
                for value in parts(inside, junk) {
                    let mut other = fields.clone();
                    other.insert(name.clone(), value);
                    all.push(Value::Object(other));
                }
            }
            all
        }
        Value::Array(items) => {
            let mut all = vec![Value::Array(items.iter().chain(items).cloned().collect())];
            for (place, inside) in items.iter().enumerate() {
                for value in parts(inside, junk) {
                    let mut other = items.clone();
                    other[place] = value;
                    all.push(Value::Array(other));
                }
            }
            all
        }
        _ => Vec::new(),
    }
}

/// What a part of a sample is replaced with: deeper down nothing long, of which there would be too much.
fn parts(inside: &Value, junk: &[Value]) -> Vec<Value> {
    let far = match inside {
        Value::Number(_) => vec![json!(i64::MAX), json!(1e-300)],
        Value::String(_) => vec![
            json!(i64::MAX.to_string()),
            json!(i64::MIN.to_string()),
            json!("9223372036854775808"),
            json!(format!("<svg xmlns='http://www.w3.org/2000/svg'>{}", "<g>".repeat(50_000))),
            json!("<svg xmlns='http://www.w3.org/2000/svg'><image href='/dev/zero'/></svg>"),
        ],
        _ => Vec::new(),
    };
    let brief: Vec<Value> =
        junk.iter().filter(|value| value.to_string().len() < 2000).cloned().collect();
    junk.iter().cloned().chain(far).chain(spoilt_within(inside, &brief)).collect()
}
