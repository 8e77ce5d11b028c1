//! Reads what can be read of a damaged file: the events, one by one where a page fails.
//!
//! Everything else is worked out from the log, so nothing else is looked for. Where the first page is gone,
//! SQLite finds no table and nothing can be read.

use super::error::Result;
use super::event::Event;
use rusqlite::{Connection, OptionalExtension};
use std::path::Path;

/// Events that are read at once while nothing fails.
const PAGE: i64 = 200;

/// What was found in a damaged file.
#[derive(Debug, Default)]
pub(super) struct Found {
    pub read: u64,
    /// Places in the log that cannot be read, or hold what is no event.
    pub unreadable: u64,
}

/// Hands on every event that can be read, in order.
pub(super) fn events(file: &Path, mut each: impl FnMut(Event) -> Result<()>) -> Result<Found> {
    let mut found = Found::default();
    let Ok(conn) = Connection::open(file) else {
        return Ok(found);
    };
    let Some(last) = last_place(&conn) else {
        return Ok(found);
    };
    let mut place = 0;
    while place < last {
        match page(&conn, place) {
            Ok(events) if events.is_empty() => break,
            Ok(events) => {
                for (at, event) in events {
                    place = at;
                    take(event, &mut found, &mut each)?;
                }
            }
            Err(_) => {
                place += 1;
                match one(&conn, place) {
                    Ok(Some(event)) => take(Ok(event), &mut found, &mut each)?,
                    Ok(None) => {}
                    Err(_) => found.unreadable += 1,
                }
            }
        }
    }
    Ok(found)
}

fn take(
    event: rusqlite::Result<Event>,
    found: &mut Found,
    each: &mut impl FnMut(Event) -> Result<()>,
) -> Result<()> {
    match event {
        Ok(event) if event.check().is_ok() => {
            found.read += 1;
            each(event)
        }
        _ => {
            found.unreadable += 1;
            Ok(())
        }
    }
}

/// The last place in the log, by the log itself or by the counter of places.
fn last_place(conn: &Connection) -> Option<i64> {
    let of = |sql: &str| conn.query_row(sql, [], |row| row.get::<_, Option<i64>>(0));
    let by_log = of("SELECT max(seq) FROM event");
    let found = by_log.or_else(|_| of("SELECT seq FROM sqlite_sequence WHERE name = 'event'"));
    found.ok().flatten()
}

type Placed = (i64, rusqlite::Result<Event>);

fn page(conn: &Connection, after: i64) -> rusqlite::Result<Vec<Placed>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_salvage_page.sql"))?;
    let rows = statement.query_map([after, PAGE], |row| {
        let at = row.get("seq")?;
        Ok((at, Event::from_row(row)))
    })?;
    rows.collect()
}

fn one(conn: &Connection, at: i64) -> rusqlite::Result<Option<Event>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_salvage_one.sql"))?;
    statement.query_row([at], Event::from_row).optional()
}
