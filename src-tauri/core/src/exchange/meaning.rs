//! Whether an event says what events say: a value that no person could have given would keep the unit
//! from being opened.

use serde_json::{Map, Value, json};

use super::AHEAD_MS;
use super::error::BundleError;
use crate::inspection::read_findings;
use crate::photo::read_marks;
use crate::remedy::{Chosen, ProofLine, check_entry};
use crate::store::{Change, Event, PhotoRow};

/// The longest name, place or caption, characters: ten times what is taken from a person.
const LONGEST_TEXT: usize = 2000;
/// The longest name of a device or of who found it, characters.
const LONGEST_NAME: usize = 400;
/// The repairs that were chosen, and what was entered for their proof: kept beside the findings, and no part
/// of a findings file either.
const CHOSEN: &str = "remedies";
const PROOF: &str = "proof";
/// Findings that say something was looked for in vain. They are the record's own: no findings file has them.
const LEFT_OPEN: &str = "left_open";

/// Checks an event of a line; `now` is this device's time, UTC milliseconds.
pub(super) fn check(event: &Event, line: u64, now: i64) -> Result<(), BundleError> {
    if event.at > now.saturating_add(AHEAD_MS) {
        return Err(BundleError::Future { line });
    }
    let bad = |field: &str| Err(BundleError::BadEvent { line, field: field.to_owned() });
    if event.demo {
        return bad("demo");
    }
    if is_longer(&event.device, LONGEST_NAME) {
        return bad("device");
    }
    if is_longer(&event.author, LONGEST_NAME) {
        return bad("author");
    }
    if !is_placed(event) {
        return bad("inspection");
    }
    match fits(event) {
        Ok(true) => Ok(()),
        Ok(false) => bad(&event.subject),
        Err(error) => Err(BundleError::BadFinding { line, error }),
    }
}

fn is_longer(text: &str, most: usize) -> bool {
    text.chars().nth(most).is_some()
}

/// Whether what belongs to an inspection names one, and what belongs to the unit names none.
fn is_placed(event: &Event) -> bool {
    match event.subject.split('.').next() {
        Some("unit") => event.inspection.is_none(),
        Some("inspection" | "finding") => event.inspection.is_some(),
        _ => true,
    }
}

/// Whether what it sets can be read. What this version does not know at all may be anything.
fn fits(event: &Event) -> Result<bool, crate::fields::FieldError> {
    let fits = match event.typed() {
        Change::Other { subject, .. } => !Change::knows(&subject),
        Change::UnitName(text)
        | Change::UnitPlace(text)
        | Change::UnitKind(text)
        | Change::UnitState(text)
        | Change::PhotoCaptioned { text, .. } => !is_longer(&text, LONGEST_TEXT),
        Change::UnitSupply(supply) => {
            read_findings(json!({"supply": supply}))?;
            true
        }
        Change::InspectionAccess(access) => {
            read_findings(json!({"supply": any_supply(), "access": access}))?;
            true
        }
        Change::Finding { key, value } => finding(&key, value)?,
        Change::PhotoAdded { row, .. } => PhotoRow::read(&row).is_some(),
        Change::PhotoMarked { marks, .. } => {
            read_marks(marks)?;
            true
        }
        _ => true,
    };
    Ok(fits)
}

/// A supply to read findings beside: their file needs one.
fn any_supply() -> Value {
    json!({"volts": 120, "hertz": 60})
}

/// Reads a finding as if it was the only one.
fn finding(key: &str, value: Value) -> Result<bool, crate::fields::FieldError> {
    let mut file = Map::new();
    match key.split_once('.') {
        Some((LEFT_OPEN, _)) => return Ok(value == json!(true)),
        None if key == CHOSEN => return Chosen::read(value).map(|_| true),
        Some((PROOF, line)) => {
            return check_entry(value).map(|()| ProofLine::of(line).is_some());
        }
        // Two findings may not have one name, and these are not findings.
        None if matches!(key, "supply" | "access") => return Ok(false),
        Some((group, key)) => {
            file.insert(group.to_owned(), json!({key: value}));
        }
        None => {
            file.insert(key.to_owned(), value);
        }
    }
    if file.contains_key("supply") || file.contains_key("access") {
        return Ok(false);
    }
    file.insert("supply".to_owned(), any_supply());
    read_findings(Value::Object(file))?;
    Ok(true)
}
