//! Photos of an inspection: the rows that name files, worked out from the log like findings.
//!
//! A photo is several subjects, its adding, caption, marks and the photo of before, so that changing one never
//! undoes the other. The order of all is one subject of the inspection.

use super::Store;
use super::change::{Change, PHOTO, PHOTO_ORDER};
use super::column::Id;
use super::error::Result;
use super::event::Key;
use super::projection::{live, live_speaker};
use rusqlite::{Connection, Row, params};
use serde::{Deserialize, Serialize};
use serde_json::{Value, json};
use std::collections::BTreeSet;
use uuid::Uuid;

/// What the log keeps of a photo when it is added.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct PhotoRow {
    /// The path of the finding it shows; none: the unit as a whole.
    pub finding: Option<String>,
    /// The SHA-256 of its file, 64 hexadecimal digits.
    pub sha256: String,
    /// Pixels from left to right.
    pub width: u32,
    /// Pixels from top to bottom.
    pub height: u32,
    /// What its pixels hint at, such as `blurred`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub hints: Vec<String>,
}

impl PhotoRow {
    /// As [`Change::PhotoAdded`] takes it.
    pub fn value(&self) -> Value {
        json!(self)
    }

    /// Reads what an event says. A row that could name no file, or one elsewhere, is none.
    pub fn read(value: &Value) -> Option<Self> {
        let row = Self::deserialize(value).ok()?;
        let is_digit = |c: char| matches!(c, '0'..='9' | 'a'..='f');
        let is_name = row.sha256.len() == 64 && row.sha256.chars().all(is_digit);
        (is_name && row.width > 0 && row.height > 0).then_some(row)
    }
}

/// A photo as it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photo {
    /// Its id.
    pub id: Uuid,
    /// The inspection.
    pub inspection: Uuid,
    /// The path of the finding it shows; none: the unit as a whole.
    pub finding: Option<String>,
    /// The SHA-256 of its file, 64 hexadecimal digits.
    pub sha256: String,
    /// Pixels from left to right.
    pub width: u32,
    /// Pixels from top to bottom.
    pub height: u32,
    /// Its caption; empty where there is none.
    pub caption: String,
    /// What is drawn on it, a list.
    pub marks: Value,
    /// The photo of before that it belongs to.
    pub before: Option<Uuid>,
    /// What its pixels hint at, such as `blurred`.
    pub hints: Vec<String>,
    /// Who added it.
    pub author: String,
    /// When it was added, UTC milliseconds.
    pub at: i64,
}

impl Store {
    /// The photos of an inspection, in the order that was given them, and as they were added after that.
    pub fn photos(&self, inspection: Uuid) -> Result<Vec<Photo>> {
        let Some(inspection) = self.inspection(inspection)? else {
            return Ok(Vec::new());
        };
        let sql = include_str!("sql/photo_of_inspection.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        let place = [Id(inspection.unit), Id(inspection.id)];
        let rows = statement.query_map(place, photo_row)?;
        let mut photos: Vec<Photo> = rows.collect::<rusqlite::Result<_>>()?;
        let key = Key::of_inspection(inspection.unit, inspection.id, PHOTO_ORDER);
        let order = live(&self.conn, &key)?.map(|event| event.typed());
        if let Some(Change::PhotosOrdered(order)) = order {
            let place = |photo: &Photo| order.iter().position(|id| *id == photo.id);
            photos.sort_by_key(|photo| place(photo).unwrap_or(usize::MAX));
        }
        Ok(photos)
    }

    /// The SHA-256 of every photo that the log names, also of those that an undo can bring back.
    /// Files of other names may go.
    pub fn photo_digests(&self) -> Result<BTreeSet<String>> {
        let mut statement = self.conn.prepare_cached(include_str!("sql/photo_digests.sql"))?;
        let rows = statement.query_map([], |row| row.get(0))?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }
}

fn photo_row(row: &Row<'_>) -> rusqlite::Result<Photo> {
    Ok(Photo {
        id: row.get::<_, Id>("id")?.0,
        inspection: row.get::<_, Id>("inspection")?.0,
        finding: row.get("finding")?,
        sha256: row.get("sha256")?,
        width: row.get("width")?,
        height: row.get("height")?,
        caption: row.get("caption")?,
        marks: list(&row.get::<_, String>("marks")?),
        before: row.get::<_, Option<Id>>("before")?.map(|id| id.0),
        hints: Vec::deserialize(list(&row.get::<_, String>("hints")?)).unwrap_or_default(),
        author: row.get("author")?,
        at: row.get("at")?,
    })
}

/// A list that the log keeps; an empty one where it is none.
fn list(text: &str) -> Value {
    serde_json::from_str(text).ok().filter(Value::is_array).unwrap_or_else(|| json!([]))
}

/// The photo that a subject is about, spelled as this version spells it.
fn photo_of(subject: &str) -> Option<Uuid> {
    let (id, _) = subject.strip_prefix(PHOTO)?.split_once('.')?;
    Uuid::try_parse(id).ok().filter(|photo| photo.to_string() == id)
}

/// Refreshes the row of the photo that a subject is about, if it is about one.
pub(super) fn refresh(conn: &Connection, key: &Key) -> Result<()> {
    let (Some(inspection), Some(photo)) = (key.inspection, photo_of(&key.subject)) else {
        return Ok(());
    };
    let subject = |what| {
        let subject = format!("{PHOTO}{photo}.{what}");
        Key::of_inspection(key.unit, inspection, &subject)
    };
    let added = live(conn, &subject("added"))?.and_then(|event| event.change);
    let row = added.as_ref().and_then(PhotoRow::read);
    let (Some(row), Some(speaker)) = (row, live_speaker(conn, &subject("added"))?) else {
        let sql = include_str!("sql/photo_drop.sql");
        let place = [Id(key.unit), Id(inspection), Id(photo)];
        conn.prepare_cached(sql)?.execute(place)?;
        return Ok(());
    };
    let caption = live(conn, &subject("captioned"))?.and_then(|event| event.change);
    let caption = caption.as_ref().and_then(Value::as_str).unwrap_or_default();
    let marks = live(conn, &subject("marked"))?.and_then(|event| event.change);
    let marks = marks.filter(Value::is_array).unwrap_or_else(|| json!([]));
    let before = match live(conn, &subject("paired"))?.map(|event| event.typed()) {
        Some(Change::PhotoPaired { before, .. }) => Some(Id(before)),
        _ => None,
    };
    let sql = include_str!("sql/photo_put.sql");
    conn.prepare_cached(sql)?.execute(params![
        Id(key.unit),
        Id(inspection),
        Id(photo),
        row.finding,
        row.sha256,
        row.width,
        row.height,
        caption,
        speaker.author,
        speaker.at,
        marks.to_string(),
        before,
        json!(row.hints).to_string(),
    ])?;
    Ok(())
}
