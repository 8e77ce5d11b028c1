//! Deleting for good: a tombstone stays, everything a person wrote about the unit goes.
//!
//! The triggers on the log refuse every other deletion. A purge opens them for one unit by naming it in
//! `purge_permit`, and closes them again in the same transaction. That is narrower than dropping the
//! triggers for a moment: other units and tombstones stay guarded even if a statement here is wrong.

use super::change::{Change, Claim, UNIT_CREATED, UNIT_DELETED};
use super::column::Id;
use super::error::{Result, StoreError};
use super::event::{Changed, Event, Key, Stamp};
use super::projection::{self, Touched};
use super::{Ids, Store, log};
use rusqlite::Connection;
use uuid::Uuid;

impl Store {
    /// Deletes a unit. Its events, findings, verdicts and photo rows are gone from the file; photo
    /// files are not this module's. What another device sends of it later is left aside.
    pub fn delete_unit(&mut self, stamp: &Stamp, unit: Uuid, ids: Ids<'_>) -> Result<Changed> {
        let changed = self.transact(|conn| {
            if log::has_intent(conn, stamp.intent)? {
                return Ok(Changed::default());
            }
            bury(conn, stamp, unit, None, ids)
        })?;
        self.wipe();
        Ok(changed)
    }

    /// Removes the demonstration, without a tombstone: no other device has ever heard of it.
    pub fn remove_demo(&mut self) -> Result<Changed> {
        let changed = self.transact(|conn| {
            let mut touched = Touched::default();
            for unit in demo_units(conn)? {
                purge(conn, unit)?;
                touched.add_unit(unit);
            }
            let changed = projection::refresh(conn, touched)?;
            Ok(Changed { subjects: Default::default(), ..changed })
        })?;
        self.wipe();
        Ok(changed)
    }

    /// Moves what was committed from the write-ahead log into the file, and empties the log.
    ///
    /// For a purge, which must leave nothing behind, and for an app that is sent to the background.
    /// Another connection that is reading may hold it up; then the log is emptied later.
    pub fn checkpoint(&self) -> Result<()> {
        let sql = "PRAGMA wal_checkpoint(TRUNCATE)";
        self.conn.query_row(sql, [], |_| Ok(()))?;
        Ok(())
    }

    /// Moves what was committed into the file as far as nobody is held up by it: for a reader beside the app,
    /// so that no command has to.
    pub fn tidy(&self) -> Result<()> {
        let sql = "PRAGMA wal_checkpoint(PASSIVE)";
        self.conn.query_row(sql, [], |_| Ok(()))?;
        Ok(())
    }

    /// Drops what a purge left in the write-ahead log.
    pub(super) fn wipe(&self) {
        // The purge is committed whatever comes of this: an error here would say that it was not.
        // SQLite empties the log at the latest when the file is closed.
        self.checkpoint().ok();
    }
}

/// Writes the tombstone and purges the unit.
pub(super) fn bury(
    conn: &Connection,
    stamp: &Stamp,
    unit: Uuid,
    undoes: Option<Uuid>,
    ids: Ids<'_>,
) -> Result<Changed> {
    let tombstone = tombstone(conn, stamp, unit, undoes, ids())?;
    let mut touched = Touched::default();
    if tombstone.demo {
        touched.add_unit(unit);
    } else {
        log::append(conn, &tombstone)?;
        touched.add(&tombstone);
    }
    purge(conn, unit)?;
    projection::refresh(conn, touched)
}

fn tombstone(
    conn: &Connection,
    stamp: &Stamp,
    unit: Uuid,
    undoes: Option<Uuid>,
    id: Uuid,
) -> Result<Event> {
    let created = log::winner(conn, &Key::of_unit(unit, UNIT_CREATED))?;
    let created = created.filter(|event| event.change.is_some());
    let created = created.ok_or(StoreError::NoSuchUnit(unit))?;
    let claim = Claim {
        number: projection::claim_of(&created, created.demo).number,
        created_at: created.at,
        created_event: created.id,
    };
    let key = Key::of_unit(unit, UNIT_DELETED);
    let change = Change::UnitDeleted(claim).value();
    let draft = log::draft(conn, stamp, key, change, id)?;
    Ok(Event {
        // A tombstone is passed on for ever: it carries nobody's name.
        author: String::new(),
        undoes,
        ..draft
    })
}

/// Deletes all of a unit but its tombstones; a demonstration unit's go too.
pub(super) fn purge(conn: &Connection, unit: Uuid) -> Result<()> {
    for sql in [
        include_str!("sql/purge_permit.sql"),
        include_str!("sql/purge_events.sql"),
        include_str!("sql/purge_inspections.sql"),
        include_str!("sql/purge_verdicts.sql"),
        include_str!("sql/purge_standings.sql"),
        include_str!("sql/purge_close.sql"),
    ] {
        conn.prepare_cached(sql)?.execute([Id(unit)])?;
    }
    Ok(())
}

fn demo_units(conn: &Connection) -> Result<Vec<Uuid>> {
    let mut statement = conn.prepare_cached(include_str!("sql/unit_demo.sql"))?;
    let rows = statement.query_map([], |row| Ok(row.get::<_, Id>(0)?.0))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}
