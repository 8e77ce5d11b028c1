//! Reads a findings file and single findings, naming the field of anything that is wrong.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use crate::fields::{FieldError, Fields};
use crate::supply::Supply;
use crate::words::Message;

use super::bank::{Access, Question, Shape, ValueId};
use super::findings::{Answer, Findings, Meter, PartValue, Rated, Reading};
use super::live_test::{LIVE_TEST, read_live_test};
use crate::arrangement::ReadingId;

const KEYS: &[&str] =
    &["supply", "access", "answers", "tubes", "readings", "values", "meter", LIVE_TEST];

/// What an inspector answers who cannot tell.
pub const CANT_TELL: &str = "cant_tell";

/// The most tubes anything in scope has.
const MOST_TUBES: u64 = 60;

/// The longest text of one tube type.
const LONGEST_TYPE: usize = 40;

/// No capacitor of such a unit reaches 1 F, no resistance 1 TΩ.
const FARADS: f64 = 1.0;
const OHMS: f64 = 1e12;

/// Reads a findings file.
///
/// # Errors
/// Names the field by its dotted path and says what it takes.
pub fn read_findings(value: Value) -> Result<Findings, FieldError> {
    let mut fields = Fields::of(value, "")?;
    let given = fields.take("supply");
    let supply = Supply::read(fields.required("supply", given)?, "supply")?;
    let mut findings = Findings::new(supply);
    if let Some(access) = fields.take("access") {
        findings.access = read_access(access, "access")?;
    }
    if let Some(answers) = fields.object("answers")? {
        findings.answers = read_answers(answers)?;
    }
    if let Some(tubes) = fields.take("tubes") {
        findings.tubes = read_tubes(tubes, "tubes")?;
    }
    if let Some(readings) = fields.object("readings")? {
        findings.readings = read_readings(readings)?;
    }
    if let Some(values) = fields.object("values")? {
        read_values(values, &mut findings)?;
    }
    if let Some(meter) = fields.object("meter")? {
        findings.meter = self::meter(meter)?;
    }
    if let Some(test) = fields.take(LIVE_TEST) {
        findings.live_test = read_live_test(test)?;
    }
    fields.finish(KEYS)?;
    Ok(findings)
}

/// Reads a supply and an access list given by themselves.
///
/// # Errors
/// Names the field and what it takes.
pub fn read_supply_access(
    supply: Value,
    access: Value,
) -> Result<(Supply, BTreeSet<Access>), FieldError> {
    Ok((Supply::read(supply, "supply")?, read_access(access, "access")?))
}

fn read_access(value: Value, path: &str) -> Result<BTreeSet<Access>, FieldError> {
    let wrong = || FieldError::new(path, list_of(Access::IDS));
    // A list that is longer than all there is says something twice, and may be of any length.
    let Some(items) = list_within(value, Access::IDS) else {
        return Err(wrong());
    };
    let mut access = BTreeSet::from([Access::Outside]);
    for item in items {
        access.insert(item.as_str().and_then(Access::of).ok_or_else(wrong)?);
    }
    Ok(access)
}

fn list_within(value: Value, ids: &[&str]) -> Option<Vec<Value>> {
    match value {
        Value::Array(items) if items.len() <= ids.len() => Some(items),
        _ => None,
    }
}

fn list_of(ids: &[&str]) -> Message {
    Message::new("takes-list-of").text("ids", ids.join(", "))
}

fn read_answers(fields: Fields) -> Result<BTreeMap<Question, Answer>, FieldError> {
    let (path, left) = fields.rest();
    let mut answers = BTreeMap::new();
    for (key, value) in left {
        let path = format!("{path}.{key}");
        let question = Question::of(&key).ok_or_else(|| unknown_key(&path, Question::IDS))?;
        answers.insert(question, read_answer_at(question, value, &path)?);
    }
    Ok(answers)
}

fn unknown_key(path: &str, known: &[&str]) -> FieldError {
    FieldError::new(path, Message::new("takes-known-keys").text("keys", known.join(", ")))
}

/// Reads one answer to a question.
///
/// # Errors
/// Names the field `answers.<question>` and what it takes.
pub fn read_answer(question: Question, value: Value) -> Result<Answer, FieldError> {
    read_answer_at(question, value, &format!("answers.{}", question.id()))
}

fn read_answer_at(question: Question, value: Value, path: &str) -> Result<Answer, FieldError> {
    let alone = |value: &Value| value.as_str() == Some(CANT_TELL);
    let listed =
        value.as_array().is_some_and(|items| matches!(items.as_slice(), [one] if alone(one)));
    if alone(&value) || (question.entry().shape == Shape::Several && listed) {
        return Ok(Answer::CantTell);
    }
    match question.entry().shape {
        Shape::One => read_one(question, &value, path),
        Shape::Several => read_several(question, value, path),
        Shape::Number => match value.as_u64().filter(|number| *number <= MOST_TUBES) {
            Some(number) => Ok(Answer::Number(u32::try_from(number).unwrap_or(u32::MAX))),
            None => Err(FieldError::new(
                path,
                Message::new("takes-whole-number").text("high", MOST_TUBES.to_string()),
            )),
        },
        Shape::Tubes => Err(FieldError::new(path, Message::new("takes-tubes-elsewhere"))),
    }
}

fn read_one(question: Question, value: &Value, path: &str) -> Result<Answer, FieldError> {
    let ids = question.entry().answers;
    let found = value.as_str().and_then(|text| ids.iter().find(|id| **id == text));
    found.map(|id| Answer::One(id)).ok_or_else(|| FieldError::one_of(path, &with_cant_tell(ids)))
}

fn with_cant_tell(ids: &'static [&'static str]) -> Vec<&'static str> {
    ids.iter().copied().chain([CANT_TELL]).collect()
}

fn read_several(question: Question, value: Value, path: &str) -> Result<Answer, FieldError> {
    let ids = question.entry().answers;
    let wrong = || {
        let known = ids.join(", ");
        FieldError::new(path, Message::new("takes-some-of").text("ids", known))
    };
    let Some(items) = list_within(value, ids) else {
        return Err(wrong());
    };
    let mut several = BTreeSet::new();
    for item in &items {
        let known = item.as_str().and_then(|text| ids.iter().find(|id| **id == text));
        several.insert(*known.ok_or_else(wrong)?);
    }
    let nothing = ids.first().copied().unwrap_or_default();
    if several.is_empty() {
        Err(wrong())
    } else if several.contains(nothing) && several.len() > 1 {
        Err(FieldError::new(path, Message::new("takes-alone").text("id", nothing)))
    } else {
        Ok(Answer::Several(several))
    }
}

/// Reads a list of tube types.
///
/// # Errors
/// It is no list of short texts, or too long: by the path of its field.
pub fn read_tubes(value: Value, path: &str) -> Result<Vec<String>, FieldError> {
    let wrong = || {
        FieldError::new(path, Message::new("takes-tube-types").text("high", MOST_TUBES.to_string()))
    };
    let Value::Array(items) = value else {
        return Err(wrong());
    };
    if items.len() as u64 > MOST_TUBES {
        return Err(wrong());
    }
    let text = |item: Value| match item {
        Value::String(text) if !text.trim().is_empty() && text.chars().count() <= LONGEST_TYPE => {
            Ok(text.trim().to_owned())
        }
        _ => Err(wrong()),
    };
    items.into_iter().map(text).collect()
}

fn read_readings(fields: Fields) -> Result<BTreeMap<ReadingId, Reading>, FieldError> {
    let (path, left) = fields.rest();
    let mut readings = BTreeMap::new();
    for (key, value) in left {
        let path = format!("{path}.{key}");
        let id = ReadingId::of(&key).ok_or_else(|| unknown_key(&path, ReadingId::IDS))?;
        readings.insert(id, read_reading(id, &value, &path)?);
    }
    Ok(readings)
}

/// Reads one meter reading: a number, or `OL` above the meter's range.
///
/// # Errors
/// Names the field and what it takes.
pub fn read_reading(id: ReadingId, value: &Value, path: &str) -> Result<Reading, FieldError> {
    let (high, over_range) = match id {
        ReadingId::TouchTestVolts => (1000.0, false),
        ReadingId::InsulationMegohms => (1e6, true),
        _ => (OHMS, true),
    };
    match value {
        Value::String(text) if over_range && text == "OL" => Ok(Reading::OverRange),
        Value::Number(_) => match value.as_f64() {
            Some(number) if (0.0..=high).contains(&number) => Ok(Reading::Value(number)),
            _ => Err(FieldError::new(path, crate::fields::number_range(&(0.0..=high)))),
        },
        _ if over_range => Err(FieldError::new(path, Message::new("takes-ohms-or-ol"))),
        _ => Err(FieldError::new(path, crate::fields::number_range(&(0.0..=high)))),
    }
}

fn read_values(mut fields: Fields, findings: &mut Findings) -> Result<(), FieldError> {
    if let Some(rated) = fields.object("rated")? {
        findings.rated = Some(read_rated(rated)?);
    }
    for &value in ValueId::ALL {
        if let Some(given) = fields.take(value.id()) {
            findings.values.insert(value, read_value(value, given)?);
        }
    }
    let known: Vec<&str> = ValueId::IDS.iter().copied().chain(["rated"]).collect();
    fields.finish(&known)
}

/// Reads one value of a part: `{"farads": …, "measured": …}` or `{"ohms": …, "measured": …}`.
///
/// # Errors
/// Names the field and what it takes.
pub fn read_value(id: ValueId, value: Value) -> Result<PartValue, FieldError> {
    let mut fields = Fields::of(value, &format!("values.{}", id.id()))?;
    let (unit, bound) = match id {
        ValueId::NetworkResistor => ("ohms", OHMS),
        _ => ("farads", FARADS),
    };
    let given = fields.positive_below(unit, bound)?;
    let value = fields.required(unit, given)?;
    let measured = fields.flag("measured")?.unwrap_or(false);
    fields.finish(&[unit, "measured"])?;
    Ok(PartValue { value, measured })
}

fn read_rated(mut fields: Fields) -> Result<Rated, FieldError> {
    let rated = Rated {
        volts: fields.number("volts", 1.0..=1000.0)?,
        hertz: fields.number("hertz", 0.0..=400.0)?,
        watts: fields.number("watts", 0.1..=10_000.0)?,
    };
    fields.finish(&["volts", "hertz", "watts"])?;
    Ok(rated)
}

/// Reads which meter the readings are taken with.
///
/// # Errors
/// Names the field and what it takes.
pub fn read_meter(value: Value) -> Result<Meter, FieldError> {
    meter(Fields::of(value, "meter")?)
}

fn meter(mut fields: Fields) -> Result<Meter, FieldError> {
    let usual = Meter::default();
    let meter = Meter {
        max_ohms: fields.positive_below("max_ohms", OHMS)?.unwrap_or(usual.max_ohms),
        percent: fields.number("percent", 0.0..=50.0)?.unwrap_or(usual.percent),
        digits: fields.number("digits", 0.0..=100.0)?.unwrap_or(usual.digits),
    };
    fields.finish(&["max_ohms", "percent", "digits"])?;
    Ok(meter)
}

#[cfg(test)]
mod tests {
    use super::{Answer, Question, read_findings};
    use serde_json::{Value, json};

    fn with(key: &str, value: Value) -> Value {
        let mut file = json!({"supply": {"volts": 120, "hertz": 60}});
        file[key] = value;
        file
    }

    #[test]
    fn bad_findings_are_refused_by_the_path_of_their_field() {
        for (file, field) in [
            (with("answers", json!({"plug": "round"})), "answers.plug"),
            (with("answers", json!({"plug": ["no_plug"]})), "answers.plug"),
            (with("answers", json!({"plugs": "no_plug"})), "answers.plugs"),
            (with("answers", json!({"bare_metal": []})), "answers.bare_metal"),
            (with("answers", json!({"bare_metal": "screws_or_shafts"})), "answers.bare_metal"),
            (
                with("answers", json!({"bare_metal": ["none_anywhere", "screws_or_shafts"]})),
                "answers.bare_metal",
            ),
            (with("answers", json!({"tube_count": -1})), "answers.tube_count"),
            (with("answers", json!({"tube_count": 2.5})), "answers.tube_count"),
            (with("answers", json!({"tube_list": "12SA7"})), "answers.tube_list"),
            (with("answers", json!(7)), "answers"),
            (with("access", json!(["inside"])), "access"),
            (with("access", json!(vec!["outside"; 4])), "access"),
            (with("answers", json!({"terminals": vec!["none"; 4]})), "answers.terminals"),
            (with("tubes", json!([""])), "tubes"),
            (with("readings", json!({"ohms_b_chassis_on": -1})), "readings.ohms_b_chassis_on"),
            (with("readings", json!({"ohms_b_chassis_on": "ol"})), "readings.ohms_b_chassis_on"),
            (with("readings", json!({"touch_test_volts": "OL"})), "readings.touch_test_volts"),
            (
                with("values", json!({"line_capacitor": {"farads": 1.0}})),
                "values.line_capacitor.farads",
            ),
            (
                with("values", json!({"line_capacitor": {"farads": 0}})),
                "values.line_capacitor.farads",
            ),
            (
                with("values", json!({"line_capacitor": {"ohms": 1}})),
                "values.line_capacitor.farads",
            ),
            (
                with("values", json!({"network_resistor": {"ohms": 1, "measured": "yes"}})),
                "values.network_resistor.measured",
            ),
            (with("values", json!({"rated": {"volts": 0}})), "values.rated.volts"),
            (with("meter", json!({"max_ohms": 0})), "meter.max_ohms"),
            (with("photos", json!([])), "photos"),
            (json!({}), "supply"),
            (json!([]), "file"),
        ] {
            assert_eq!(read_findings(file.clone()).unwrap_err().field, field, "{file}");
        }
    }

    #[test]
    fn cannot_tell_fits_any_question() {
        for &question in Question::ALL {
            let file = with("answers", json!({question.id(): "cant_tell"}));
            let findings = read_findings(file).unwrap();
            assert_eq!(findings.answers.get(&question), Some(&Answer::CantTell));
        }
    }
}
