//! Giving events to another device and taking its events in.

use super::error::Result;
use super::event::{Changed, Event};
use super::projection::{self, Touched};
use super::{Store, log, purge};
use rusqlite::Connection;
use std::collections::VecDeque;

/// Rows read at once: enough to be quick, few enough to stay small.
const PAGE: i64 = 500;

/// The events that may leave this device, in the order in which they came.
pub struct Outgoing<'a> {
    store: &'a Store,
    page: VecDeque<(i64, Event)>,
    after: i64,
}

impl Iterator for Outgoing<'_> {
    type Item = Result<Event>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.page.is_empty() {
            match log::page(&self.store.conn, self.after, PAGE) {
                Ok(page) => self.page = page.into(),
                Err(e) => return Some(Err(e)),
            }
        }
        let (seq, event) = self.page.pop_front()?;
        self.after = seq;
        Some(Ok(event))
    }
}

impl Store {
    /// All events but those of the demonstration.
    pub fn events_for_exchange(&self) -> Outgoing<'_> {
        Outgoing { store: self, page: VecDeque::new(), after: 0 }
    }

    /// Takes in events of other devices: all that are good, or none.
    ///
    /// It is a union: what is known already is skipped, and the order makes no difference. A tombstone
    /// purges the unit here too; other events of a deleted unit are left aside, and so are events that
    /// call themselves demonstration.
    pub fn append_foreign<I>(&mut self, events: I) -> Result<Changed>
    where
        I: IntoIterator<Item = Event>,
    {
        let mut is_purge = false;
        let changed = self.transact(|conn| {
            let mut touched = Touched::default();
            for event in events {
                if !take_in(conn, &event)? {
                    touched.skipped += 1;
                    continue;
                }
                touched.add(&event);
                is_purge |= event.is_tombstone();
            }
            projection::refresh(conn, touched)
        })?;
        if is_purge {
            self.wipe();
        }
        Ok(changed)
    }
}

fn take_in(conn: &Connection, event: &Event) -> Result<bool> {
    let is_late = !event.is_tombstone() && log::is_buried(conn, event.unit)?;
    if event.demo || is_late || !log::insert(conn, event)? {
        return Ok(false);
    }
    if event.is_tombstone() {
        purge::purge(conn, event.unit)?;
    }
    Ok(true)
}
