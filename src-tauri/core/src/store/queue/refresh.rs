//! Keeps a unit's row of the queue and its text: worked out from the unit's other rows.

use super::facet::{Meaning, facet};
use super::place;
use super::state::WorkState;
use crate::store::column::{Id, Json};
use crate::store::error::Result;
use rusqlite::{Connection, OptionalExtension, Row, params};
use serde_json::Value;
use std::collections::BTreeSet;
use uuid::Uuid;

/// An answer that says nothing, and so nothing to search for.
const CANT_TELL: &str = "cant_tell";

/// Works the row of a unit out, or takes it away where the unit is not shown.
pub(in crate::store) fn refresh(conn: &Connection, unit: Uuid) -> Result<()> {
    let kept = kept_place(conn, unit)?;
    let Some(shown) = Shown::read(conn, unit)? else {
        return kept.map_or(Ok(()), |place| drop_row(conn, place));
    };
    let text = text(conn, unit, &shown)?;
    let wanted = place::of(shown.rank, shown.created_at, shown.number);
    let place = free_place(conn, wanted, kept)?;
    if let Some(kept) = kept.filter(|kept| *kept != place) {
        drop_row(conn, kept)?;
    }
    put_row(conn, unit, place, &shown)?;
    put_text(conn, place, &text)
}

/// Takes all rows away.
pub(in crate::store) fn clear(conn: &Connection) -> Result<()> {
    conn.execute(include_str!("../sql/unit_text_drop_all.sql"), [])?;
    conn.execute(include_str!("../sql/queue_drop_all.sql"), [])?;
    Ok(())
}

/// Whether there are no rows though units are shown: the record is from before the queue.
pub(in crate::store) fn is_missing(conn: &Connection) -> Result<bool> {
    let is_there = |sql: &str| -> Result<bool> { Ok(conn.prepare(sql)?.exists([])?) };
    let has_rows = is_there(include_str!("../sql/queue_is_there.sql"))?;
    Ok(!has_rows && is_there(include_str!("../sql/unit_is_shown.sql"))?)
}

/// A unit that is shown, with what the engine makes of it where that still holds.
struct Shown {
    number: u32,
    name: String,
    place: String,
    kind: String,
    state: WorkState,
    demo: bool,
    created_at: i64,
    inspection: Option<Uuid>,
    engine_version: Option<String>,
    class: Option<String>,
    rank: i64,
    basis: Option<String>,
    overlays: Vec<String>,
}

impl Shown {
    fn read(conn: &Connection, unit: Uuid) -> Result<Option<Self>> {
        let mut statement = conn.prepare_cached(include_str!("../sql/queue_source.sql"))?;
        Ok(statement.query_row([Id(unit)], Self::from_row).optional()?)
    }

    fn from_row(row: &Row<'_>) -> rusqlite::Result<Self> {
        let text = |column: &str| -> rusqlite::Result<String> {
            Ok(row.get::<_, Option<String>>(column)?.unwrap_or_default())
        };
        let overlays = row.get::<_, Option<Json>>("overlays")?.map(|json| json.0);
        let overlays = overlays.as_ref().and_then(Value::as_array).into_iter().flatten();
        Ok(Self {
            number: row.get("number")?,
            name: text("name")?,
            place: text("place")?,
            kind: text("kind")?,
            state: WorkState::of_unit(row.get::<_, Option<String>>("state")?.as_deref())
                .with_proof(row.get::<_, Option<bool>>("proven")?.unwrap_or(false)),
            demo: row.get("demo")?,
            created_at: row.get("created_at")?,
            inspection: row.get::<_, Option<Id>>("inspection")?.map(|id| id.0),
            engine_version: row.get("engine_version")?,
            class: row.get("class")?,
            rank: row.get::<_, Option<i64>>("rank")?.unwrap_or(0).clamp(0, place::LAST_RANK),
            basis: row.get("basis")?,
            overlays: overlays.filter_map(Value::as_str).map(str::to_owned).collect(),
        })
    }

    fn facets(&self) -> String {
        let mut facets = facet("state", self.state.id());
        let mut add = |kind: &str, value: &str| {
            facets.push(' ');
            facets.push_str(&facet(kind, value));
        };
        if let Some(basis) = &self.basis {
            add("basis", basis);
        }
        for overlay in &self.overlays {
            add("overlay", overlay);
        }
        if !self.place.is_empty() {
            add("place", &self.place);
        }
        if !self.kind.is_empty() {
            add("kind", &self.kind);
        }
        facets
    }
}

struct Text {
    words: String,
    facets: String,
}

/// All that can be searched for: names, notes, tubes and findings. What was found stands there as it is
/// kept, and as facets, for a word that means it in some language.
fn text(conn: &Connection, unit: Uuid, shown: &Shown) -> Result<Text> {
    let mut words = format!("U-{:04} {}", shown.number, shown.number);
    for text in [&shown.name, &shown.place, &shown.kind] {
        words.push(' ');
        words.push_str(text);
    }
    let mut meanings = BTreeSet::new();
    let mut statement = conn.prepare_cached(include_str!("../sql/queue_findings.sql"))?;
    let mut rows = statement.query([Id(unit)])?;
    while let Some(row) = rows.next()? {
        let key: String = row.get("key")?;
        let value = row.get::<_, Json>("value")?.0;
        let mut said = Vec::new();
        collect(&value, &mut said);
        if !said.is_empty() {
            said.insert(0, key.rsplit('.').next().unwrap_or(&key));
            words.push(' ');
            words.push_str(&said.join(" "));
            let ids = said.iter().skip(1).filter(|text| is_id(text));
            meanings.extend(ids.map(|id| Meaning::answer(&key, id)));
            meanings.insert(Meaning::any(&key));
        }
    }
    let mut statement = conn.prepare_cached(include_str!("../sql/queue_captions.sql"))?;
    let captions = statement.query_map([Id(unit)], |row| row.get::<_, String>(0))?;
    for caption in captions {
        words.push(' ');
        words.push_str(&caption?);
    }
    let mut facets = shown.facets();
    for meaning in meanings {
        facets.push(' ');
        facets.push_str(&meaning.facet());
    }
    Ok(Text { words, facets })
}

/// Whether a text can be the id of an answer: what a person writes has no facet.
fn is_id(text: &str) -> bool {
    text.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'_')
}

/// The texts in a value.
fn collect<'a>(value: &'a Value, said: &mut Vec<&'a str>) {
    match value {
        Value::String(text) if text != CANT_TELL => said.push(text),
        Value::Array(values) => values.iter().for_each(|value| collect(value, said)),
        Value::Object(fields) => fields.values().for_each(|value| collect(value, said)),
        _ => {}
    }
}

pub(super) fn kept_place(conn: &Connection, unit: Uuid) -> Result<Option<i64>> {
    let mut statement = conn.prepare_cached(include_str!("../sql/queue_place.sql"))?;
    Ok(statement.query_row([Id(unit)], |row| row.get(0)).optional()?)
}

/// The wanted place, or the next after it that is free, or the unit's own.
fn free_place(conn: &Connection, wanted: i64, own: Option<i64>) -> Result<i64> {
    let mut statement = conn.prepare_cached(include_str!("../sql/queue_is_taken.sql"))?;
    let mut place = wanted;
    while own != Some(place) && statement.exists([place])? {
        place += 1;
    }
    Ok(place)
}

fn drop_row(conn: &Connection, place: i64) -> Result<()> {
    conn.prepare_cached(include_str!("../sql/queue_drop.sql"))?.execute([place])?;
    conn.prepare_cached(include_str!("../sql/unit_text_drop.sql"))?.execute([place])?;
    Ok(())
}

fn put_row(conn: &Connection, unit: Uuid, place: i64, shown: &Shown) -> Result<()> {
    conn.prepare_cached(include_str!("../sql/queue_put.sql"))?.execute(params![
        place,
        Id(unit),
        shown.state.id(),
        shown.class,
        shown.basis,
        Value::from(shown.overlays.clone()).to_string(),
        shown.inspection.map(Id),
        shown.engine_version,
        shown.demo,
    ])?;
    Ok(())
}

fn put_text(conn: &Connection, place: i64, text: &Text) -> Result<()> {
    let mut statement = conn.prepare_cached(include_str!("../sql/unit_text_of.sql"))?;
    let kept: Option<(String, String)> =
        statement.query_row([place], |row| Ok((row.get(0)?, row.get(1)?))).optional()?;
    match kept {
        Some((words, facets)) if words == text.words && facets == text.facets => return Ok(()),
        Some(_) => {
            conn.prepare_cached(include_str!("../sql/unit_text_drop.sql"))?.execute([place])?;
        }
        None => {}
    }
    let sql = include_str!("../sql/unit_text_put.sql");
    conn.prepare_cached(sql)?.execute(params![place, text.words, text.facets])?;
    Ok(())
}
