//! Tests of the store, and the device they act on.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod disk;
mod leftovers;
mod numbering;
mod opening;
mod photos;
mod properties;
mod purging;
mod queue;
mod queue_index;
mod record;
mod recovering;
mod snapshots;
mod undoing;

use super::*;
use serde_json::{Value, json};

/// A device with a store, a clock that is set by hand and ids that can be repeated.
pub(super) struct Device {
    pub store: Store,
    pub name: &'static str,
    pub at: i64,
    tag: u8,
    drawn: u32,
}

impl Device {
    pub fn new(name: &'static str, tag: u8) -> Self {
        Self::with(Store::open_in_memory().unwrap(), name, tag)
    }

    pub fn with(store: Store, name: &'static str, tag: u8) -> Self {
        Self { store, name, at: 1_000_000, tag, drawn: 0 }
    }

    pub fn id(&mut self) -> Uuid {
        self.drawn += 1;
        v7(self.at, self.tag, self.drawn)
    }

    pub fn stamp(&mut self) -> Stamp {
        self.at += 10;
        Stamp {
            at: self.at,
            device: self.name.to_owned(),
            author: format!("Inspector of {}", self.name),
            intent: self.id(),
        }
    }

    pub fn act(&mut self, action: &Action) -> Result<Changed> {
        let stamp = self.stamp();
        self.act_as(&stamp, action)
    }

    pub fn act_as(&mut self, stamp: &Stamp, action: &Action) -> Result<Changed> {
        let (at, tag) = (self.at, self.tag);
        let drawn = &mut self.drawn;
        let ids = &mut || {
            *drawn += 1;
            v7(at, tag, *drawn)
        };
        self.store.append(stamp, action, ids)
    }

    pub fn create(&mut self, name: &str, demo: bool) -> Uuid {
        let unit = self.id();
        let number = self.store.next_number().unwrap();
        let changes = vec![Change::UnitCreated { number }, Change::UnitName(name.to_owned())];
        let action = Action { unit, inspection: None, changes, demo };
        self.act(&action).unwrap();
        unit
    }

    pub fn inspect(&mut self, unit: Uuid) -> Uuid {
        let inspection = self.id();
        let access = Change::InspectionAccess(vec!["outside".to_owned()]);
        let changes = vec![Change::InspectionStarted, access];
        self.act(&in_inspection(unit, inspection, changes)).unwrap();
        inspection
    }

    pub fn find(&mut self, place: (Uuid, Uuid), key: &str, value: Value) -> Changed {
        let change = finding(key, value);
        let action = in_inspection(place.0, place.1, vec![change]);
        self.act(&action).unwrap()
    }

    pub fn rename(&mut self, unit: Uuid, name: &str) -> Result<Changed> {
        self.act(&of_unit(unit, vec![Change::UnitName(name.to_owned())]))
    }

    pub fn undo(&mut self, unit: Uuid, inspection: Option<Uuid>) -> Option<Changed> {
        let (stamp, scope) = (self.stamp(), Scope { unit, inspection });
        let (at, tag) = (self.at, self.tag);
        let drawn = &mut self.drawn;
        let ids = &mut || {
            *drawn += 1;
            v7(at, tag, *drawn)
        };
        self.store.undo(&stamp, scope, ids).unwrap()
    }

    pub fn redo(&mut self, unit: Uuid, inspection: Option<Uuid>) -> Option<Changed> {
        let (stamp, scope) = (self.stamp(), Scope { unit, inspection });
        let (at, tag) = (self.at, self.tag);
        let drawn = &mut self.drawn;
        let ids = &mut || {
            *drawn += 1;
            v7(at, tag, *drawn)
        };
        self.store.redo(&stamp, scope, ids).unwrap()
    }

    pub fn delete(&mut self, unit: Uuid) -> Result<Changed> {
        let (stamp, id) = (self.stamp(), self.id());
        self.store.delete_unit(&stamp, unit, &mut || id)
    }

    pub fn outgoing(&self) -> Vec<Event> {
        let events: Result<Vec<_>> = self.store.leaving(&Leaving::All).collect();
        events.unwrap()
    }

    pub fn values(&self, inspection: Uuid) -> Vec<(String, Value)> {
        let findings = self.store.findings(inspection).unwrap();
        findings.into_iter().map(|f| (f.key, f.value)).collect()
    }

    pub fn name_of(&self, unit: Uuid) -> Option<String> {
        self.store.unit(unit).unwrap().and_then(|unit| unit.name)
    }

    pub fn numbers(&self) -> Vec<(Uuid, u32)> {
        let units = self.store.units(&UnitFilter::default()).unwrap();
        let mut numbers: Vec<_> = units.iter().map(|unit| (unit.id, unit.number)).collect();
        numbers.sort();
        numbers
    }
}

/// A UUID v7 that depends on nothing else.
pub(super) fn v7(at: i64, tag: u8, drawn: u32) -> Uuid {
    let mut rest = [tag; 10];
    rest[6..].copy_from_slice(&drawn.to_be_bytes());
    uuid::Builder::from_unix_timestamp_millis(u64::try_from(at).unwrap(), &rest).into_uuid()
}

pub(super) fn finding(key: &str, value: Value) -> Change {
    let key = key.to_owned();
    Change::Finding { key, value }
}

pub(super) fn of_unit(unit: Uuid, changes: Vec<Change>) -> Action {
    Action { unit, inspection: None, changes, demo: false }
}

pub(super) fn in_inspection(unit: Uuid, inspection: Uuid, changes: Vec<Change>) -> Action {
    Action { inspection: Some(inspection), ..of_unit(unit, changes) }
}

/// A device with a unit and an inspection of it.
pub(super) fn bench() -> (Device, Uuid, Uuid) {
    let mut device = Device::new("bench", 1);
    let unit = device.create("Kitchen radio", false);
    let inspection = device.inspect(unit);
    (device, unit, inspection)
}

/// Every row of the tables that are worked out from the log, as text.
pub(super) fn projections(store: &Store) -> Vec<String> {
    let tables = ["unit", "inspection", "finding", "photo"];
    // Where units of one moment change numbers, one may stand beside its place: the rest is fixed.
    let queue = "(SELECT queue.unit, state, class, basis, overlays, inspection, engine_version, demo, words, facets
        FROM queue JOIN unit_text ON unit_text.rowid = queue.place)";
    tables.iter().chain([&queue]).flat_map(|t| rows(store, t)).collect()
}

/// Every row of a table, as text, in a fixed order.
pub(super) fn rows(store: &Store, table: &str) -> Vec<String> {
    rows_of(&store.conn, table)
}

pub(super) fn rows_of(conn: &Connection, table: &str) -> Vec<String> {
    let sql = format!("SELECT * FROM {table}");
    let mut statement = conn.prepare(&sql).unwrap();
    let columns = statement.column_count();
    let cell = |row: &rusqlite::Row<'_>, at| row.get::<_, rusqlite::types::Value>(at).unwrap();
    let row = |row: &rusqlite::Row<'_>| {
        let cells = (0..columns).map(|at| format!("{:?}", cell(row, at)));
        Ok(format!("{table}: {}", cells.collect::<Vec<_>>().join(" | ")))
    };
    let mut rows: Vec<_> = statement.query_map([], row).unwrap().flatten().collect();
    rows.sort();
    rows
}

pub(super) fn answers(pairs: &[(&str, &str)]) -> Vec<(String, Value)> {
    let pair = |(key, value): &(&str, &str)| (format!("answers.{key}"), json!(value));
    pairs.iter().map(pair).collect()
}
