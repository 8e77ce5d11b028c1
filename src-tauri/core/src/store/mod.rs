//! Keeps the record: an append-only log of human changes in SQLite, and views worked out from it.
//!
//! Each human action is one transaction that appends [`Event`]s and returns what [`Changed`]. For each
//! (unit, inspection, subject) the winner is, among the events that no other of the same subject
//! supersedes, the one with the largest (time, id): two devices that have the same events show the
//! same, whatever order they got them in. Undo appends. Deleting leaves a tombstone and purges the rest.
//!
//! Invariants: no clock, no random source and no network here (times and ids are passed in); nothing
//! of what a finding means; no row of the log is ever changed, and none deleted but by a purge.

mod aside;
mod change;
mod check;
mod column;
mod error;
mod event;
mod exchange;
mod leftovers;
mod log;
mod missing;
mod number;
mod open;
mod photo;
mod projection;
mod purge;
mod queue;
mod recovery;
mod salvage;
mod snapshot;
mod undo;
mod verdict;
mod view;
mod whole;

#[cfg(test)]
mod tests;

pub use aside::is_replaced_kept;
pub use change::{Change, Claim};
pub use error::{Result, StoreError};
pub use event::{Action, Changed, Event, Stamp};
pub use exchange::{Leaving, Outgoing, TakenIn};
pub use leftovers::sweep;
pub use open::SCHEMA_VERSION;
pub use photo::{Photo, PhotoRow};
pub use queue::{
    Cursor, Meaning, Page, QueueCount, QueueFilter, QueueOrder, QueueRow, Stale, Standing,
    WorkState,
};
pub use recovery::{Readable, Recovered, readable, recover};
pub use snapshot::{INSPECTIONS_APART, Snapshot, Snapshots};
pub use undo::Scope;
pub use verdict::Verdict;
pub use view::{Finding, Inspection, Unit, UnitFilter};

use change::Level;
use event::Key;
use projection::Touched;
use rusqlite::{Connection, TransactionBehavior};
use std::collections::BTreeSet;
use uuid::Uuid;

/// Where new ids come from: UUID v7, each call another one.
pub type Ids<'a> = &'a mut dyn FnMut() -> Uuid;

/// The record on this device.
#[derive(Debug)]
pub struct Store {
    conn: Connection,
    was_cut_off: bool,
}

impl Store {
    /// Stores one human action. It is on the disk when this returns.
    ///
    /// An intent that is known already changes nothing, so a double tap is stored once.
    pub fn append(&mut self, stamp: &Stamp, action: &Action, ids: Ids<'_>) -> Result<Changed> {
        self.transact(|conn| {
            if log::has_intent(conn, stamp.intent)? {
                return Ok(Changed::default());
            }
            check_target(conn, action)?;
            let mut touched = Touched::default();
            for (key, change) in keyed(action)? {
                let draft = log::draft(conn, stamp, key, change.value(), ids())?;
                let demo = draft.demo || (action.demo && creates_unit(action));
                let event = Event { demo, ..draft };
                log::append(conn, &event)?;
                touched.add(&event);
            }
            projection::refresh(conn, touched)
        })
    }

    /// The number that the next unit should ask for when it is created.
    pub fn next_number(&self) -> Result<u32> {
        number::next(&self.conn)
    }

    /// Works every view out anew from the log.
    pub fn rebuild_projections(&mut self) -> Result<()> {
        self.transact(projection::rebuild)
    }

    /// Reads as if nothing was written meanwhile.
    pub fn reading<T, E: From<StoreError>>(
        &self,
        run: impl FnOnce(&Self) -> std::result::Result<T, E>,
    ) -> std::result::Result<T, E> {
        // Dropped at the end, which rolls back: nothing was written.
        let _transaction = self.conn.unchecked_transaction().map_err(StoreError::from)?;
        run(self)
    }

    /// Runs a change whole or not at all.
    fn transact<T>(&mut self, run: impl FnOnce(&Connection) -> Result<T>) -> Result<T> {
        self.transact_with(run)
    }

    /// As [`Store::transact`], without waiting for the disk: for what can be worked out anew. What a person
    /// does after it waits for this too, so that nothing of theirs is ever lost with it.
    fn transact_lazily<T>(&mut self, run: impl FnOnce(&Connection) -> Result<T>) -> Result<T> {
        self.conn.pragma_update(None, "synchronous", "NORMAL")?;
        let done = self.transact(run);
        self.conn.pragma_update(None, "synchronous", "FULL")?;
        done
    }

    /// Runs a change whole or not at all; it may fail for reasons that are not the store's.
    fn transact_with<T, E: From<StoreError>>(
        &mut self,
        run: impl FnOnce(&Connection) -> std::result::Result<T, E>,
    ) -> std::result::Result<T, E> {
        // Immediate: what is read here must still hold when it is written.
        let behavior = TransactionBehavior::Immediate;
        let transaction =
            self.conn.transaction_with_behavior(behavior).map_err(StoreError::from)?;
        let done = run(&transaction)?;
        transaction.commit().map_err(StoreError::from)?;
        Ok(done)
    }
}

/// The changes with the keys they are stored under.
fn keyed(action: &Action) -> Result<Vec<(Key, &Change)>> {
    let mut seen = BTreeSet::new();
    let mut keyed = Vec::new();
    for change in &action.changes {
        let key = key(action, change)?;
        if !seen.insert(key.clone()) {
            return Err(StoreError::Repeated(key.subject));
        }
        keyed.push((key, change));
    }
    Ok(keyed)
}

fn key(action: &Action, change: &Change) -> Result<Key> {
    let subject = change.subject();
    if is_reserved(change, &subject) {
        return Err(StoreError::Reserved(subject));
    }
    let inspection = match change.level() {
        Level::Unit => None,
        Level::Either => action.inspection,
        Level::Inspection if action.inspection.is_none() => {
            return Err(StoreError::NeedsInspection(subject));
        }
        Level::Inspection => action.inspection,
    };
    Ok(Key { unit: action.unit, inspection, subject })
}

/// A unit is deleted and its number given in one way only.
fn is_reserved(change: &Change, subject: &str) -> bool {
    match change {
        Change::UnitCreated { .. } => false,
        _ => matches!(subject, change::UNIT_CREATED | change::UNIT_DELETED),
    }
}

fn creates_unit(action: &Action) -> bool {
    let is_creation = |change: &Change| matches!(change, Change::UnitCreated { .. });
    action.changes.iter().any(is_creation)
}

/// A unit and an inspection must be there, or be created by this very action.
fn check_target(conn: &Connection, action: &Action) -> Result<()> {
    let unit = action.unit;
    let is_there = view::unit(conn, unit)?.is_some();
    match (is_there, creates_unit(action)) {
        (true, true) => return Err(StoreError::AlreadyThere(unit)),
        (false, false) => return Err(StoreError::NoSuchUnit(unit)),
        // A tombstone is for ever.
        (false, true) if log::is_buried(conn, unit)? => return Err(StoreError::NoSuchUnit(unit)),
        _ => {}
    }
    match action.inspection {
        Some(inspection) => check_inspection(conn, action, inspection),
        None => Ok(()),
    }
}

fn check_inspection(conn: &Connection, action: &Action, inspection: Uuid) -> Result<()> {
    let starts = action.changes.contains(&Change::InspectionStarted);
    match view::inspection(conn, inspection)? {
        Some(found) if found.unit != action.unit => Err(StoreError::OtherUnit(inspection)),
        Some(_) if starts => Err(StoreError::AlreadyThere(inspection)),
        None if !starts => Err(StoreError::NoSuchInspection(inspection)),
        _ => Ok(()),
    }
}
