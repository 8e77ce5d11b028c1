//! One row of the log, and what it changes.

use super::change::Change;
use super::column::{Id, Json};
use super::error::{Result, StoreError};
use rusqlite::Row;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use std::collections::BTreeSet;
use uuid::Uuid;

/// Last millisecond of the year 9999: later times are slips.
const LAST_AT: i64 = 253_402_300_799_999;

/// One human change as it was recorded. This is also what devices give each other.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Event {
    /// UUID v7.
    pub id: Uuid,
    /// The device it was made on.
    pub device: String,
    /// Who made it; empty in a tombstone.
    pub author: String,
    /// When, UTC milliseconds.
    pub at: i64,
    /// The unit it is about.
    pub unit: Uuid,
    /// The inspection it was made in.
    pub inspection: Option<Uuid>,
    /// What it sets.
    pub subject: String,
    /// To what; nothing when the subject is withdrawn.
    pub change: Option<Value>,
    /// The event of the same subject that it replaces: the winner its author saw.
    pub supersedes: Option<Uuid>,
    /// The human action it is part of.
    pub intent: Uuid,
    /// The human action that it undoes.
    pub undoes: Option<Uuid>,
    /// For an undo: the event whose change it puts back; none when there was nothing before.
    pub restores: Option<Uuid>,
    /// It belongs to a demonstration unit.
    pub demo: bool,
}

impl Event {
    /// The change as a type.
    pub fn typed(&self) -> Change {
        Change::read(&self.subject, self.change.as_ref())
    }

    /// The event that speaks through this one: itself, or what it puts back.
    pub(super) fn spoken_by(&self) -> Option<Uuid> {
        if self.undoes.is_some() { self.restores } else { Some(self.id) }
    }

    pub(super) fn key(&self) -> Key {
        Key { unit: self.unit, inspection: self.inspection, subject: self.subject.clone() }
    }

    pub(super) fn from_row(row: &Row<'_>) -> rusqlite::Result<Self> {
        Ok(Self {
            id: row.get::<_, Id>("id")?.0,
            device: row.get("device")?,
            author: row.get("author")?,
            at: row.get("at")?,
            unit: row.get::<_, Id>("unit")?.0,
            inspection: id(row, "inspection")?,
            subject: row.get("subject")?,
            change: row.get::<_, Option<Json>>("change")?.map(|json| json.0),
            supersedes: id(row, "supersedes")?,
            intent: row.get::<_, Id>("intent")?.0,
            undoes: id(row, "undoes")?,
            restores: id(row, "restores")?,
            demo: row.get("demo")?,
        })
    }

    /// Refuses what the table would refuse, but names the field.
    pub(super) fn check(&self) -> Result<()> {
        let bad = [
            (!(0..=LAST_AT).contains(&self.at), "at"),
            (self.device.is_empty(), "device"),
            (!is_subject(&self.subject), "subject"),
            (self.change.as_ref().is_some_and(Value::is_null), "change"),
            (self.supersedes == Some(self.id), "supersedes"),
            (self.undoes == Some(self.intent), "undoes"),
            (self.restores == Some(self.id), "restores"),
            (self.restores.is_some() && self.undoes.is_none(), "restores"),
            (self.is_tombstone() && self.change.is_none(), "change"),
            (self.is_tombstone() && self.inspection.is_some(), "inspection"),
        ];
        let id = self.id;
        match bad.into_iter().find(|(is_bad, _)| *is_bad) {
            Some((_, field)) => Err(StoreError::BadEvent { id, field }),
            None => Ok(()),
        }
    }

    /// Whether it deletes its unit.
    pub fn is_tombstone(&self) -> bool {
        self.subject == super::change::UNIT_DELETED
    }
}

fn id(row: &Row<'_>, column: &str) -> rusqlite::Result<Option<Uuid>> {
    Ok(row.get::<_, Option<Id>>(column)?.map(|id| id.0))
}

/// Dotted words of letters, digits, `_` and `-`: subjects are ids, never text of a person.
fn is_subject(text: &str) -> bool {
    let word = |c: char| c.is_ascii_alphanumeric() || matches!(c, '_' | '-' | '.');
    (1..=200).contains(&text.len()) && text.chars().all(word)
}

/// What a winner is looked for.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Key {
    pub unit: Uuid,
    pub inspection: Option<Uuid>,
    pub subject: String,
}

impl Key {
    pub fn of_unit(unit: Uuid, subject: &str) -> Self {
        Self { unit, inspection: None, subject: subject.to_owned() }
    }

    pub fn of_inspection(unit: Uuid, inspection: Uuid, subject: &str) -> Self {
        Self { unit, inspection: Some(inspection), subject: subject.to_owned() }
    }
}

/// Who acts, when and on what. The store has no clock and no random source of its own.
#[derive(Clone, Debug, PartialEq)]
pub struct Stamp {
    /// When, UTC milliseconds.
    pub at: i64,
    /// The device; undo only takes back what was done on the same one.
    pub device: String,
    /// Who; may be empty.
    pub author: String,
    /// Names this human action. The same one a second time changes nothing.
    pub intent: Uuid,
}

/// One human action on one unit: all of it is stored, or nothing.
#[derive(Clone, Debug, PartialEq)]
pub struct Action {
    /// The unit.
    pub unit: Uuid,
    /// The inspection, needed for inspection and finding changes; unit changes leave it aside.
    pub inspection: Option<Uuid>,
    /// What is changed; no subject twice.
    pub changes: Vec<Change>,
    /// Only looked at when the unit is created: it belongs to the demonstration.
    pub demo: bool,
}

/// What a call changed, for a shell to refresh from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Changed {
    /// The events written, in order.
    pub events: Vec<Uuid>,
    /// The subjects written.
    pub subjects: BTreeSet<String>,
    /// Units that changed, also those that only got another number, and those that are gone.
    pub units: BTreeSet<Uuid>,
    /// Inspections that changed.
    pub inspections: BTreeSet<Uuid>,
    /// Given events that were left aside: already known, of a deleted unit, or demonstration.
    pub skipped: usize,
}
