//! Taking back a human action, and doing it again.
//!
//! Nothing is taken out of the log: an undo appends events that put back what held before, and says
//! which action it undoes. A redo is the undo of an undo. Only actions of the device that asks are
//! taken back, and only where they still hold: what somebody else has answered since stays.

use super::change::UNIT_CREATED;
use super::column::Id;
use super::error::Result;
use super::event::{Changed, Event, Key, Stamp};
use super::projection::{self, Touched};
use super::{Ids, Store, log, purge};
use rusqlite::{Connection, params};
use uuid::Uuid;

/// Where an undo looks: a unit with all its inspections, or one inspection only.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Scope {
    /// The unit.
    pub unit: Uuid,
    /// The inspection, when only its actions are meant.
    pub inspection: Option<Uuid>,
}

impl Store {
    /// The action that [`Store::undo`] would take back next.
    pub fn next_undo(&self, scope: Scope, device: &str) -> Result<Option<Uuid>> {
        undoable(&self.conn, scope, device)
    }

    /// The undo that [`Store::redo`] would take back next.
    pub fn next_redo(&self, scope: Scope, device: &str) -> Result<Option<Uuid>> {
        redoable(&self.conn, scope, device)
    }

    /// Takes back the last action of this device that was not taken back yet.
    ///
    /// Taking back the creation of a unit deletes it, and cannot be redone. It is refused (`None`)
    /// while another device's events stand in the unit, or a later action.
    pub fn undo(&mut self, stamp: &Stamp, scope: Scope, ids: Ids<'_>) -> Result<Option<Changed>> {
        let mut is_purge = false;
        let changed = self.transact(|conn| {
            if log::has_intent(conn, stamp.intent)? {
                return Ok(Some(Changed::default()));
            }
            let Some(intent) = undoable(conn, scope, &stamp.device)? else {
                return Ok(None);
            };
            let events = log::of_intent(conn, scope.unit, &stamp.device, intent)?;
            is_purge = creates(&events);
            let changed = if is_purge {
                purge::bury(conn, stamp, scope.unit, Some(intent), ids)
            } else {
                reverse(conn, stamp, intent, &events, ids)
            };
            changed.map(Some)
        })?;
        if is_purge {
            self.wipe();
        }
        Ok(changed)
    }

    /// Does the action again that was undone last, unless something new was done since.
    pub fn redo(&mut self, stamp: &Stamp, scope: Scope, ids: Ids<'_>) -> Result<Option<Changed>> {
        self.transact(|conn| {
            if log::has_intent(conn, stamp.intent)? {
                return Ok(Some(Changed::default()));
            }
            let Some(intent) = redoable(conn, scope, &stamp.device)? else {
                return Ok(None);
            };
            let events = log::of_intent(conn, scope.unit, &stamp.device, intent)?;
            reverse(conn, stamp, intent, &events, ids).map(Some)
        })
    }
}

fn undoable(conn: &Connection, scope: Scope, device: &str) -> Result<Option<Uuid>> {
    for intent in candidates(conn, include_str!("sql/undo_candidates.sql"), scope, device)? {
        let events = log::of_intent(conn, scope.unit, device, intent)?;
        let is_open = if creates(&events) {
            may_uncreate(conn, scope.unit, device, intent)?
        } else {
            !steps(conn, &events)?.is_empty()
        };
        if is_open {
            return Ok(Some(intent));
        }
    }
    Ok(None)
}

fn redoable(conn: &Connection, scope: Scope, device: &str) -> Result<Option<Uuid>> {
    for intent in candidates(conn, include_str!("sql/redo_candidates.sql"), scope, device)? {
        let events = log::of_intent(conn, scope.unit, device, intent)?;
        if !steps(conn, &events)?.is_empty() {
            return Ok(Some(intent));
        }
    }
    Ok(None)
}

/// Actions that may be taken back, the last first.
fn candidates(conn: &Connection, sql: &str, scope: Scope, device: &str) -> Result<Vec<Uuid>> {
    let mut statement = conn.prepare_cached(sql)?;
    let place = params![Id(scope.unit), scope.inspection.map(Id), device];
    let rows = statement.query_map(place, |row| Ok(row.get::<_, Id>(0)?.0))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

fn creates(events: &[Event]) -> bool {
    let is_creation = |event: &Event| event.subject == UNIT_CREATED && event.change.is_some();
    events.iter().any(is_creation)
}

/// A creation is only taken back when it is all that is left of the unit.
fn may_uncreate(conn: &Connection, unit: Uuid, device: &str, intent: Uuid) -> Result<bool> {
    let whole = Scope { unit, inspection: None };
    let sql = include_str!("sql/undo_candidates.sql");
    let is_last = candidates(conn, sql, whole, device)?.first() == Some(&intent);
    Ok(is_last && !log::has_other_device(conn, unit, device)?)
}

/// One subject to put back.
struct Step {
    key: Key,
    /// What held before; none when the subject was not set.
    before: Option<Event>,
}

/// What taking these events back would do, leaving aside what does not hold any more.
fn steps(conn: &Connection, events: &[Event]) -> Result<Vec<Step>> {
    let mut steps = Vec::new();
    for event in events {
        let key = event.key();
        let holds = log::winner(conn, &key)?;
        if holds.is_none_or(|winner| winner.spoken_by() != event.spoken_by()) {
            continue;
        }
        let before = before(conn, event)?;
        steps.push(Step { key, before });
    }
    Ok(steps)
}

/// What held before an event.
fn before(conn: &Connection, event: &Event) -> Result<Option<Event>> {
    let Some(id) = event.supersedes else {
        return Ok(None);
    };
    let Some(replaced) = log::by_id(conn, id)? else {
        return Ok(None);
    };
    log::speaker(conn, replaced)
}

fn reverse(
    conn: &Connection,
    stamp: &Stamp,
    intent: Uuid,
    events: &[Event],
    ids: Ids<'_>,
) -> Result<Changed> {
    let mut touched = Touched::default();
    for Step { key, before } in steps(conn, events)? {
        let restores = before.as_ref().map(|event| event.id);
        let change = before.and_then(|event| event.change);
        let draft = log::draft(conn, stamp, key, change, ids())?;
        let event = Event { undoes: Some(intent), restores, ..draft };
        log::append(conn, &event)?;
        touched.add(&event);
    }
    projection::refresh(conn, touched)
}
