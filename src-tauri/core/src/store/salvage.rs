//! Reads what can be read of a damaged file: the events, one by one where a page fails.
//!
//! Everything else is worked out from the log, so nothing else is looked for. Where the first page is gone,
//! SQLite finds no table and nothing can be read. A page can also fail without a word, as one that says it is
//! empty: what was lost is counted by the places that were not reached (see `missing`).

use super::aside::{LOG, beside};
use super::error::Result;
use super::event::Event;
use super::missing::{Beside, Reached};
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
    /// Places that are empty, and nothing tells whether something stood there.
    pub doubtful: u64,
    /// Where the log ends is not known: more may be lost than is counted.
    pub is_uncounted: bool,
}

/// Hands on every event that can be read, in order.
pub(super) fn events(file: &Path, each: impl FnMut(Event) -> Result<()>) -> Result<Found> {
    let nothing = Found { is_uncounted: true, ..Found::default() };
    let Ok(conn) = Connection::open(file) else {
        return Ok(nothing);
    };
    // An event takes some hundred bytes, so no log has as many places as its file has bytes. A larger number
    // comes from a page that makes no sense, and would be stepped to for ever.
    let most = length(file) + length(&beside(file, LOG));
    let there = Beside::of(&conn, most);
    let last = there.last();
    let bound = if last > 0 { last } else { most };
    let mut walk = Walk { each, reached: Reached::default(), place: 0, bound };
    walk.run(&conn, last)?;
    let missing = there.judge(walk.reached);
    Ok(Found {
        read: missing.read,
        unreadable: missing.lost,
        doubtful: missing.doubtful,
        is_uncounted: missing.is_uncounted,
    })
}

/// A way through the log.
struct Walk<F> {
    each: F,
    reached: Reached,
    /// All up to here was looked at.
    place: i64,
    /// No event has a place behind this one.
    bound: i64,
}

/// What became of a page of events.
enum Turned {
    /// There may be more behind it.
    Full,
    /// It was the last.
    Last,
    /// It could not be read to its end.
    Broken,
}

impl<F: FnMut(Event) -> Result<()>> Walk<F> {
    fn run(&mut self, conn: &Connection, last: i64) -> Result<()> {
        loop {
            match self.turn(conn)? {
                Turned::Full => continue,
                Turned::Last => return Ok(()),
                Turned::Broken => self.reached.is_broken = true,
            }
            if self.place >= last {
                return Ok(());
            }
            self.place += 1;
            if let Ok(Some(event)) = one(conn, self.place) {
                self.take(self.place, Ok(event))?;
            }
        }
    }

    /// Takes the events of a page, as far as it can be read.
    fn turn(&mut self, conn: &Connection) -> Result<Turned> {
        let from = self.place;
        let sql = include_str!("sql/event_salvage_page.sql");
        let Ok(mut statement) = conn.prepare_cached(sql) else {
            return Ok(Turned::Broken);
        };
        let Ok(mut rows) = statement.query([from, PAGE]) else {
            return Ok(Turned::Broken);
        };
        let mut count = 0;
        loop {
            match rows.next() {
                Ok(Some(row)) => {
                    count += 1;
                    if let Ok(at) = row.get("seq") {
                        self.take(at, Event::from_row(row))?;
                    }
                }
                Ok(None) if count < PAGE => return Ok(Turned::Last),
                // Mixed up pages may lead in a circle.
                Ok(None) if self.place > from => return Ok(Turned::Full),
                Ok(None) | Err(_) => return Ok(Turned::Broken),
            }
        }
    }

    fn take(&mut self, at: i64, event: rusqlite::Result<Event>) -> Result<()> {
        // A place that cannot be is that of a page that makes no sense; what stands there may be an event.
        let is_possible = (1..=self.bound).contains(&at);
        match event {
            Ok(event) if event.check().is_ok() => {
                if is_possible {
                    self.place = self.place.max(at);
                    self.reached.events.push(at);
                }
                (self.each)(event)
            }
            // Such a page must not lead past others: the way goes on from the last event.
            _ => {
                self.reached.others.extend(is_possible.then_some(at));
                Ok(())
            }
        }
    }
}

/// Bytes of a file; none where there is none.
fn length(file: &Path) -> i64 {
    let length = std::fs::metadata(file).map_or(0, |about| about.len());
    i64::try_from(length).unwrap_or(i64::MAX / 2)
}

fn one(conn: &Connection, at: i64) -> rusqlite::Result<Option<Event>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_salvage_one.sql"))?;
    statement.query_row([at], Event::from_row).optional()
}
