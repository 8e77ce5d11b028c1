//! Giving events to another device and taking its events in.

use super::column::Id;
use super::error::{Result, StoreError};
use super::event::{Changed, Event};
use super::photo::PhotoRow;
use super::projection::{self, Touched};
use super::{Change, Store, log, purge, whole};
use rusqlite::Connection;
use std::collections::{BTreeMap, BTreeSet, VecDeque};
use uuid::Uuid;

/// Rows read at once: enough to be quick, few enough to stay small.
const PAGE: i64 = 500;

/// Which units are to leave this device.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Leaving {
    /// All of them, and the tombstones of those that were deleted.
    All,
    /// These.
    Units(BTreeSet<Uuid>),
}

/// The events that may leave this device, in the order in which they came; of chosen units unit by unit.
pub struct Outgoing<'a> {
    store: &'a Store,
    page: VecDeque<Event>,
    left: Left,
}

/// Where an [`Outgoing`] goes on.
enum Left {
    After(i64),
    Units(std::collections::btree_set::IntoIter<Uuid>),
}

impl Outgoing<'_> {
    fn turn(&mut self) -> Result<()> {
        let conn = &self.store.conn;
        match &mut self.left {
            Left::After(place) => {
                let page = log::page(conn, *place, PAGE)?;
                *place = page.last().map_or(*place, |(seq, _)| *seq);
                self.page = page.into_iter().map(|(_, event)| event).collect();
            }
            Left::Units(units) => {
                while self.page.is_empty() {
                    let Some(unit) = units.next() else { break };
                    self.page = log::leaving(conn, unit)?.into();
                }
            }
        }
        Ok(())
    }
}

impl Iterator for Outgoing<'_> {
    type Item = Result<Event>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.page.is_empty()
            && let Err(e) = self.turn()
        {
            return Some(Err(e));
        }
        self.page.pop_front().map(Ok)
    }
}

/// What a union of logs came to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TakenIn {
    /// Units that changed, also those that only got another number, and those that are gone.
    pub units: BTreeSet<Uuid>,
    /// Events that are new here.
    pub new: usize,
    /// Events that were known already.
    pub known: usize,
    /// Events of units that were deleted here; they were left aside.
    pub late: usize,
    /// Units that were deleted elsewhere, and so here too.
    pub deleted: usize,
}

impl Store {
    /// The events that are to leave, never those of the demonstration.
    pub fn leaving(&self, which: &Leaving) -> Outgoing<'_> {
        let left = match which {
            Leaving::All => Left::After(0),
            Leaving::Units(units) => Left::Units(units.clone().into_iter()),
        };
        Outgoing { store: self, page: VecDeque::new(), left }
    }

    /// The events that an event replaces or puts back but that are not here: a damaged file cost them.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn lost_of(&self, event: &Event) -> Result<Vec<Uuid>> {
        let mut lost = Vec::new();
        for named in [event.supersedes, event.restores].into_iter().flatten() {
            if !log::is_there(&self.conn, named)? {
                lost.push(named);
            }
        }
        Ok(lost)
    }

    /// The SHA-256 of the photos that stand in units that are to leave. One that was removed stays here,
    /// though an undo can bring it back.
    pub fn photos_leaving(&self, which: &Leaving) -> Result<BTreeSet<String>> {
        let sql = include_str!("sql/photo_digests_leaving.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        let mut of = |unit: Option<Uuid>| -> Result<Vec<String>> {
            let rows = statement.query_map([unit.map(Id)], |row| row.get(0))?;
            Ok(rows.collect::<rusqlite::Result<_>>()?)
        };
        let mut digests = BTreeSet::new();
        match which {
            Leaving::All => digests.extend(of(None)?),
            Leaving::Units(units) => {
                for unit in units {
                    digests.extend(of(Some(*unit))?);
                }
            }
        }
        Ok(digests)
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
                if event.demo || arrive(conn, &event)? != Arrival::New {
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

    /// Makes the union with another device's log, of any length: one event at a time is in memory.
    ///
    /// As [`Store::append_foreign`], but what arrives must hang together (see
    /// [`StoreError::Dangling`]); of the events that others name only those in `lost` may be missing.
    /// Before it is kept `settle` is given the SHA-256 of every photo
    /// that an arrived event of a unit that is not deleted here names. Where `settle` or an event
    /// fails, nothing is kept.
    pub fn union<E, I>(
        &mut self,
        events: I,
        lost: &BTreeSet<Uuid>,
        settle: impl FnOnce(&BTreeSet<String>) -> std::result::Result<(), E>,
    ) -> std::result::Result<TakenIn, E>
    where
        E: From<StoreError>,
        I: IntoIterator<Item = std::result::Result<Event, E>>,
    {
        let mut is_purge = false;
        let taken = self.transact_with(|conn| {
            let place = log::last_place(conn)?;
            let mut taken = TakenIn::default();
            let mut purged = BTreeSet::new();
            let mut photos: BTreeMap<Uuid, BTreeSet<String>> = BTreeMap::new();
            for event in events {
                let event = event?;
                match arrive(conn, &event)? {
                    Arrival::New => taken.new += 1,
                    Arrival::Known => taken.known += 1,
                    Arrival::Late => {
                        taken.late += 1;
                        continue;
                    }
                }
                if let Some(photo) = photo_of(&event) {
                    photos.entry(event.unit).or_default().insert(photo);
                }
                if event.is_tombstone() {
                    purged.insert(event.unit);
                    photos.remove(&event.unit);
                }
            }
            is_purge = !purged.is_empty();
            taken.deleted = purged.len();
            whole::check(conn, place, lost)?;
            taken.units = projection::refresh_after(conn, place, purged)?;
            settle(&photos.into_values().flatten().collect())?;
            Ok::<_, E>(taken)
        })?;
        if is_purge {
            self.wipe();
        }
        Ok(taken)
    }
}

/// The photo that an event adds.
fn photo_of(event: &Event) -> Option<String> {
    match event.typed() {
        Change::PhotoAdded { row, .. } => PhotoRow::read(&row).map(|row| row.sha256),
        _ => None,
    }
}

/// How an event of another device was met.
#[derive(PartialEq, Eq)]
enum Arrival {
    New,
    Known,
    /// Its unit was deleted here.
    Late,
}

fn arrive(conn: &Connection, event: &Event) -> Result<Arrival> {
    if !event.is_tombstone() && log::is_buried(conn, event.unit)? {
        return Ok(Arrival::Late);
    }
    if !log::insert(conn, event)? {
        // One id with two contents would make the views depend on which came first.
        let known = log::by_id(conn, event.id)?.is_some_and(|known| known == *event);
        return if known { Ok(Arrival::Known) } else { Err(StoreError::Contradicts(event.id)) };
    }
    if event.is_tombstone() {
        purge::purge(conn, event.unit)?;
    }
    Ok(Arrival::New)
}
