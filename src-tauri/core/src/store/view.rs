//! What can be read: units, inspections and findings as they stand, and the log itself.

use super::column::{Id, Json};
use super::error::Result;
use super::event::Event;
use super::{Store, log};
use rusqlite::{Connection, OptionalExtension, Row, params};
use serde_json::{Value, json};
use uuid::Uuid;

/// A unit as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Unit {
    /// Its id.
    pub id: Uuid,
    /// Its number for people.
    pub number: u32,
    /// Its name.
    pub name: Option<String>,
    /// Where it stands.
    pub place: Option<String>,
    /// What kind it is.
    pub kind: Option<String>,
    /// The supply that it is to be used on.
    pub supply: Option<Value>,
    /// How far the work on it has come.
    pub state: Option<String>,
    /// It belongs to the demonstration.
    pub demo: bool,
    /// When it was created, UTC milliseconds.
    pub created_at: i64,
    /// When anything about it was last changed, UTC milliseconds.
    pub changed_at: i64,
    /// When its state was said, UTC milliseconds.
    pub state_at: Option<i64>,
    /// Who said it.
    pub state_by: Option<String>,
}

impl Unit {
    /// The number as people write it: `U-0042`.
    pub fn label(&self) -> String {
        format!("U-{:04}", self.number)
    }
}

/// Which units are wanted; nothing set: all.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct UnitFilter {
    /// Words that all stand in the name, place, kind or number.
    pub text: Option<String>,
    /// The kind.
    pub kind: Option<String>,
    /// The state.
    pub state: Option<String>,
}

impl UnitFilter {
    /// The words of the text, as a JSON list.
    pub(super) fn words(&self) -> String {
        let words = self.text.as_deref().unwrap_or_default().to_lowercase();
        // SQLite ends a text at a NUL here and there, so none is asked for.
        let words = words.split(|c: char| c.is_whitespace() || c.is_control());
        json!(words.filter(|word| !word.is_empty()).collect::<Vec<_>>()).to_string()
    }
}

/// An inspection as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Inspection {
    /// Its id.
    pub id: Uuid,
    /// The unit that is looked at.
    pub unit: Uuid,
    /// When it began, UTC milliseconds.
    pub started_at: i64,
    /// How far the inspector may go.
    pub access: Option<Value>,
    /// When anything about it was last changed, UTC milliseconds.
    pub changed_at: i64,
}

/// A finding as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// The inspection.
    pub inspection: Uuid,
    /// Such as `answers.plug`.
    pub key: String,
    /// The answer or value.
    pub value: Value,
    /// Who found it.
    pub author: String,
    /// When, UTC milliseconds.
    pub at: i64,
    /// The event that sets it.
    pub event: Uuid,
}

impl Store {
    /// Units, the last changed first.
    pub fn units(&self, filter: &UnitFilter) -> Result<Vec<Unit>> {
        let sql = include_str!("sql/unit_search.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        let asked = params![filter.words(), filter.kind, filter.state];
        let rows = statement.query_map(asked, unit_row)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// One unit.
    pub fn unit(&self, unit: Uuid) -> Result<Option<Unit>> {
        self::unit(&self.conn, unit)
    }

    /// One inspection.
    pub fn inspection(&self, inspection: Uuid) -> Result<Option<Inspection>> {
        self::inspection(&self.conn, inspection)
    }

    /// The inspections of a unit, the last begun first.
    pub fn inspections(&self, unit: Uuid) -> Result<Vec<Inspection>> {
        let sql = include_str!("sql/inspection_of_unit.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        let rows = statement.query_map([Id(unit)], inspection_row)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// The inspection of a unit that was begun last.
    pub fn latest_inspection(&self, unit: Uuid) -> Result<Option<Inspection>> {
        Ok(self.inspections(unit)?.into_iter().next())
    }

    /// The inspection of a unit that was begun last of those in which something was found under a key.
    pub fn latest_with(&self, unit: Uuid, key: &str) -> Result<Option<Uuid>> {
        let sql = include_str!("sql/inspection_latest_with.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        let found = statement.query_row(params![Id(unit), key], |row| row.get::<_, Id>(0));
        Ok(found.optional()?.map(|id| id.0))
    }

    /// The findings of an inspection, by key.
    pub fn findings(&self, inspection: Uuid) -> Result<Vec<Finding>> {
        let Some(inspection) = self.inspection(inspection)? else {
            return Ok(Vec::new());
        };
        let sql = include_str!("sql/finding_of_inspection.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        let place = [Id(inspection.unit), Id(inspection.id)];
        let rows = statement.query_map(place, finding_row)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// All events about a unit, by time; of a deleted unit its tombstone.
    pub fn events(&self, unit: Uuid) -> Result<Vec<Event>> {
        log::of_unit(&self.conn, unit)
    }
}

pub(super) fn unit(conn: &Connection, unit: Uuid) -> Result<Option<Unit>> {
    let mut statement = conn.prepare_cached(include_str!("sql/unit_by_id.sql"))?;
    Ok(statement.query_row([Id(unit)], unit_row).optional()?)
}

pub(super) fn inspection(conn: &Connection, inspection: Uuid) -> Result<Option<Inspection>> {
    let mut statement = conn.prepare_cached(include_str!("sql/inspection_by_id.sql"))?;
    let found = statement.query_row([Id(inspection)], inspection_row);
    Ok(found.optional()?)
}

fn json(row: &Row<'_>, column: &str) -> rusqlite::Result<Option<Value>> {
    Ok(row.get::<_, Option<Json>>(column)?.map(|json| json.0))
}

pub(super) fn unit_row(row: &Row<'_>) -> rusqlite::Result<Unit> {
    Ok(Unit {
        id: row.get::<_, Id>("id")?.0,
        number: row.get("number")?,
        name: row.get("name")?,
        place: row.get("place")?,
        kind: row.get("kind")?,
        supply: json(row, "supply")?,
        state: row.get("state")?,
        demo: row.get("demo")?,
        created_at: row.get("created_at")?,
        changed_at: row.get("changed_at")?,
        state_at: row.get("state_at")?,
        state_by: row.get("state_by")?,
    })
}

fn inspection_row(row: &Row<'_>) -> rusqlite::Result<Inspection> {
    Ok(Inspection {
        id: row.get::<_, Id>("id")?.0,
        unit: row.get::<_, Id>("unit")?.0,
        started_at: row.get("started_at")?,
        access: json(row, "access")?,
        changed_at: row.get("changed_at")?,
    })
}

fn finding_row(row: &Row<'_>) -> rusqlite::Result<Finding> {
    Ok(Finding {
        inspection: row.get::<_, Id>("inspection")?.0,
        key: row.get("key")?,
        value: row.get::<_, Json>("value")?.0,
        author: row.get("author")?,
        at: row.get("at")?,
        event: row.get::<_, Id>("event")?.0,
    })
}
