//! The statements on the log itself: append, find, and who wins.

use super::column::{Id, json_text};
use super::error::{Result, StoreError};
use super::event::{Event, Key, Stamp};
use rusqlite::{Connection, OptionalExtension, Params, params};
use serde_json::Value;
use uuid::Uuid;

/// Writes an event. Tells whether it was new.
pub(super) fn insert(conn: &Connection, event: &Event) -> Result<bool> {
    event.check()?;
    let sql = include_str!("sql/event_insert.sql");
    let rows = conn.prepare_cached(sql)?.execute(params![
        Id(event.id),
        event.device,
        event.author,
        event.at,
        Id(event.unit),
        event.inspection.map(Id),
        event.subject,
        json_text(event.change.as_ref()),
        event.supersedes.map(Id),
        Id(event.intent),
        event.undoes.map(Id),
        event.restores.map(Id),
        event.demo,
    ])?;
    Ok(rows == 1)
}

/// Writes an event of this device, whose id nobody can have used.
pub(super) fn append(conn: &Connection, event: &Event) -> Result<()> {
    if insert(conn, event)? {
        return Ok(());
    }
    let (id, field) = (event.id, "id");
    Err(StoreError::BadEvent { id, field })
}

/// Makes the event that will win its subject.
pub(super) fn draft(
    conn: &Connection,
    stamp: &Stamp,
    key: Key,
    change: Option<Value>,
    id: Uuid,
) -> Result<Event> {
    let heads = heads(conn, &key)?;
    // Superseding the winner is enough, unless another device's event stands beside it: then a
    // clock that runs behind would lose to what the person has just overruled.
    let rival = heads.get(1).map(|rival| rival.at.saturating_add(1));
    Ok(Event {
        id,
        device: stamp.device.clone(),
        author: stamp.author.clone(),
        at: rival.map_or(stamp.at, |at| at.max(stamp.at)),
        unit: key.unit,
        inspection: key.inspection,
        subject: key.subject,
        change,
        supersedes: heads.first().map(|winner| winner.id),
        intent: stamp.intent,
        undoes: None,
        restores: None,
        demo: is_demo(conn, key.unit)?,
    })
}

/// The winner of a subject and the runner-up: events that no other of the same subject
/// supersedes, the largest (time, id) first.
fn heads(conn: &Connection, key: &Key) -> Result<Vec<Event>> {
    let found = params![Id(key.unit), key.inspection.map(Id), key.subject];
    list(conn, include_str!("sql/event_heads.sql"), found)
}

/// The event that holds for a subject.
pub(super) fn winner(conn: &Connection, key: &Key) -> Result<Option<Event>> {
    Ok(heads(conn, key)?.into_iter().next())
}

/// The event that speaks through another, if it is there and of the same subject.
pub(super) fn speaker(conn: &Connection, event: Event) -> Result<Option<Event>> {
    match event.spoken_by() {
        None => Ok(None),
        Some(id) if id == event.id => Ok(Some(event)),
        Some(id) => Ok(by_id(conn, id)?.filter(|other| other.key() == event.key())),
    }
}

pub(super) fn by_id(conn: &Connection, id: Uuid) -> Result<Option<Event>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_by_id.sql"))?;
    Ok(statement.query_row([Id(id)], Event::from_row).optional()?)
}

pub(super) fn of_intent(
    conn: &Connection,
    unit: Uuid,
    device: &str,
    intent: Uuid,
) -> Result<Vec<Event>> {
    let found = params![Id(unit), device, Id(intent)];
    list(conn, include_str!("sql/event_of_intent.sql"), found)
}

pub(super) fn of_unit(conn: &Connection, unit: Uuid) -> Result<Vec<Event>> {
    list(conn, include_str!("sql/event_of_unit.sql"), [Id(unit)])
}

/// A page of what may leave this device, after a place in the log.
pub(super) fn page(conn: &Connection, after: i64, rows: i64) -> Result<Vec<(i64, Event)>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_for_exchange.sql"))?;
    let found =
        statement.query_map([after, rows], |row| Ok((row.get("seq")?, Event::from_row(row)?)))?;
    Ok(found.collect::<rusqlite::Result<_>>()?)
}

/// What may leave this device of one unit.
pub(super) fn leaving(conn: &Connection, unit: Uuid) -> Result<Vec<Event>> {
    list(conn, include_str!("sql/event_of_unit_for_exchange.sql"), [Id(unit)])
}

/// The place of the last event in the log; 0 when there is none.
pub(super) fn last_place(conn: &Connection) -> Result<i64> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_last_place.sql"))?;
    Ok(statement.query_row([], |row| row.get(0))?)
}

pub(super) fn is_there(conn: &Connection, id: Uuid) -> Result<bool> {
    exists(conn, include_str!("sql/event_is_there.sql"), [Id(id)])
}

pub(super) fn has_intent(conn: &Connection, intent: Uuid) -> Result<bool> {
    exists(conn, include_str!("sql/event_has_intent.sql"), [Id(intent)])
}

pub(super) fn is_buried(conn: &Connection, unit: Uuid) -> Result<bool> {
    exists(conn, include_str!("sql/event_is_buried.sql"), [Id(unit)])
}

pub(super) fn is_demo(conn: &Connection, unit: Uuid) -> Result<bool> {
    exists(conn, include_str!("sql/unit_is_demo.sql"), [Id(unit)])
}

/// Whether a device other than this one has written about the unit.
pub(super) fn has_other_device(conn: &Connection, unit: Uuid, device: &str) -> Result<bool> {
    let found = params![Id(unit), device];
    exists(conn, include_str!("sql/event_other_device.sql"), found)
}

fn exists(conn: &Connection, sql: &str, params: impl Params) -> Result<bool> {
    Ok(conn.prepare_cached(sql)?.exists(params)?)
}

fn list(conn: &Connection, sql: &str, params: impl Params) -> Result<Vec<Event>> {
    let mut statement = conn.prepare_cached(sql)?;
    let found = statement.query_map(params, Event::from_row)?;
    Ok(found.collect::<rusqlite::Result<_>>()?)
}
