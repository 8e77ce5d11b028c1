//! Tables worked out from the log, so that a view need not search it.
//!
//! Each row is a function of the events about it alone. An append refreshes the rows that it touches,
//! a rebuild all rows, by the same functions.

use super::change::{
    Change, FINDING, INSPECTION_ACCESS, INSPECTION_STARTED, UNIT_CREATED, UNIT_KIND, UNIT_NAME,
    UNIT_PLACE, UNIT_STATE, UNIT_SUPPLY,
};
use super::column::{Id, json_text};
use super::error::Result;
use super::event::{Changed, Event, Key};
use super::log;
use super::number::{self, NumberClaim};
use super::{photo, queue};
use rusqlite::{Connection, Row, params};
use std::collections::BTreeSet;
use uuid::Uuid;

/// What a transaction wrote, and so which rows are to be refreshed.
#[derive(Default)]
pub(super) struct Touched {
    keys: BTreeSet<Key>,
    events: Vec<Uuid>,
    pub skipped: usize,
}

impl Touched {
    pub fn add(&mut self, event: &Event) {
        self.events.push(event.id);
        self.keys.insert(event.key());
    }

    /// Rows of the unit are refreshed without an event: some of its events are gone.
    pub fn add_unit(&mut self, unit: Uuid) {
        self.keys.insert(Key::of_unit(unit, UNIT_CREATED));
    }

    fn units(&self) -> BTreeSet<Uuid> {
        self.keys.iter().map(|key| key.unit).collect()
    }

    fn inspections(&self) -> BTreeSet<(Uuid, Uuid)> {
        let pair = |key: &Key| Some((key.unit, key.inspection?));
        self.keys.iter().filter_map(pair).collect()
    }
}

/// Refreshes what was touched, parents first.
pub(super) fn refresh(conn: &Connection, touched: Touched) -> Result<Changed> {
    let mut units = touched.units();
    let mut is_settled = true;
    for unit in &units {
        is_settled &= refresh_unit(conn, *unit)?;
    }
    refresh_below_units(conn, &touched)?;
    refresh_queue(conn, &mut units, is_settled)?;
    let inspections = touched.inspections().into_iter().map(|(_, id)| id);
    Ok(Changed {
        inspections: inspections.collect(),
        units,
        subjects: touched.keys.into_iter().map(|key| key.subject).collect(),
        events: touched.events,
        skipped: touched.skipped,
    })
}

/// Refreshes inspections, then their findings and photos.
fn refresh_below_units(conn: &Connection, touched: &Touched) -> Result<()> {
    for (unit, inspection) in touched.inspections() {
        refresh_inspection(conn, unit, inspection)?;
    }
    for key in &touched.keys {
        refresh_finding(conn, key)?;
        photo::refresh(conn, key)?;
    }
    Ok(())
}

/// Refreshes the rows of units in the queue, once no two of them have one number.
fn refresh_queue(conn: &Connection, units: &mut BTreeSet<Uuid>, is_settled: bool) -> Result<()> {
    if !is_settled {
        units.extend(number::reassign(conn)?);
    }
    for unit in units.iter() {
        queue::refresh(conn, *unit)?;
    }
    Ok(())
}

/// Refreshes what the events after a place in the log touched, and units some of whose events are gone.
/// Unit by unit, so that a long log is never in memory at once. Returns the units that changed.
pub(super) fn refresh_after(
    conn: &Connection,
    place: i64,
    purged: BTreeSet<Uuid>,
) -> Result<BTreeSet<Uuid>> {
    let mut units = purged;
    units.extend(units_after(conn, place)?);
    let mut is_settled = true;
    for unit in &units {
        is_settled &= refresh_unit(conn, *unit)?;
        let keys = keys_after(conn, *unit, place)?;
        let touched = Touched { keys, ..Touched::default() };
        refresh_below_units(conn, &touched)?;
    }
    refresh_queue(conn, &mut units, is_settled)?;
    Ok(units)
}

fn units_after(conn: &Connection, place: i64) -> Result<Vec<Uuid>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_units_after.sql"))?;
    let rows = statement.query_map([place], |row| Ok(row.get::<_, Id>(0)?.0))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

fn keys_after(conn: &Connection, unit: Uuid, place: i64) -> Result<BTreeSet<Key>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_keys_after.sql"))?;
    let rows = statement.query_map(params![Id(unit), place], key_row)?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// Works everything out anew.
pub(super) fn rebuild(conn: &Connection) -> Result<()> {
    queue::clear(conn)?;
    // Inspections and findings go with their unit.
    conn.execute(include_str!("sql/unit_drop_all.sql"), [])?;
    let touched = Touched { keys: keys(conn)?, ..Touched::default() };
    refresh(conn, touched)?;
    Ok(())
}

fn keys(conn: &Connection) -> Result<BTreeSet<Key>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_keys.sql"))?;
    let rows = statement.query_map([], key_row)?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

fn key_row(row: &Row<'_>) -> rusqlite::Result<Key> {
    Ok(Key {
        unit: row.get::<_, Id>("unit")?.0,
        inspection: row.get::<_, Option<Id>>("inspection")?.map(|id| id.0),
        subject: row.get("subject")?,
    })
}

/// Refreshes a unit's row. Tells whether its number is settled.
fn refresh_unit(conn: &Connection, unit: Uuid) -> Result<bool> {
    let before = number::claim_of(conn, unit)?;
    let Some((changed_at, demo)) = unit_totals(conn, unit)? else {
        let sql = include_str!("sql/unit_drop.sql");
        conn.prepare_cached(sql)?.execute([Id(unit)])?;
        return settle(conn, before, None);
    };
    let tombstones = tombstones(conn, unit)?;
    let is_deleted = !tombstones.is_empty();
    let created = live(conn, &Key::of_unit(unit, UNIT_CREATED))?;
    let claim = if is_deleted {
        buried_claim(unit, &tombstones, demo)
    } else {
        created.as_ref().map(|event| claim_of(event, demo))
    };
    let text = UnitText::read(conn, unit)?;
    let supply = live(conn, &Key::of_unit(unit, UNIT_SUPPLY))?;
    let state = live_speaker(conn, &Key::of_unit(unit, UNIT_STATE))?;
    let sql = include_str!("sql/unit_put.sql");
    conn.prepare_cached(sql)?.execute(params![
        Id(unit),
        claim.as_ref().map(|claim| claim.number),
        claim.as_ref().map(|claim| claim.at),
        claim.as_ref().map(|claim| Id(claim.event)),
        text.name,
        text.place,
        text.kind,
        supply.and_then(|event| json_text(event.change.as_ref())),
        text.state,
        text.search(),
        demo,
        created.map(|event| event.at),
        changed_at,
        is_deleted,
        state.as_ref().map(|event| event.at),
        state.map(|event| event.author),
    ])?;
    settle(conn, before, claim)
}

/// Whether the number needs no look at all units: the claim is as before, or new and free.
fn settle(
    conn: &Connection,
    before: Option<NumberClaim>,
    now: Option<NumberClaim>,
) -> Result<bool> {
    match (before, now) {
        (None, Some(claim)) => number::settle(conn, &claim),
        (before, now) => Ok(before == now),
    }
}

/// The words of a unit's row.
struct UnitText {
    name: Option<String>,
    place: Option<String>,
    kind: Option<String>,
    state: Option<String>,
}

impl UnitText {
    fn read(conn: &Connection, unit: Uuid) -> Result<Self> {
        let text = |subject| -> Result<Option<String>> {
            let event = live(conn, &Key::of_unit(unit, subject))?;
            let value = event.and_then(|event| event.change);
            Ok(value.and_then(|value| value.as_str().map(str::to_owned)))
        };
        Ok(Self {
            name: text(UNIT_NAME)?,
            place: text(UNIT_PLACE)?,
            kind: text(UNIT_KIND)?,
            state: text(UNIT_STATE)?,
        })
    }

    fn search(&self) -> String {
        let words = [&self.name, &self.place, &self.kind];
        let words: Vec<_> = words.into_iter().flatten().map(String::as_str).collect();
        words.join(" ").to_lowercase()
    }
}

fn unit_totals(conn: &Connection, unit: Uuid) -> Result<Option<(i64, bool)>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_totals_of_unit.sql"))?;
    let found = statement.query_row([Id(unit)], |row| {
        let at: Option<i64> = row.get("changed_at")?;
        let demo: Option<bool> = row.get("demo")?;
        Ok(at.zip(demo))
    })?;
    Ok(found)
}

fn tombstones(conn: &Connection, unit: Uuid) -> Result<Vec<Event>> {
    let mut statement = conn.prepare_cached(include_str!("sql/event_tombstones.sql"))?;
    let rows = statement.query_map([Id(unit)], Event::from_row)?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// What a creation asks for.
pub(super) fn claim_of(created: &Event, demo: bool) -> NumberClaim {
    let number = match created.typed() {
        Change::UnitCreated { number } => Some(number),
        _ => None,
    };
    NumberClaim::new(created.unit, number, created.at, created.id, demo)
}

/// What a deleted unit had asked for. Two devices may have deleted it: the earliest claim stands.
fn buried_claim(unit: Uuid, tombstones: &[Event], demo: bool) -> Option<NumberClaim> {
    let claims = tombstones.iter().filter_map(|event| match event.typed() {
        Change::UnitDeleted(claim) => Some(claim),
        _ => None,
    });
    let first = claims.min_by_key(|c| (c.created_at, c.created_event, c.number))?;
    let (at, event) = (first.created_at, first.created_event);
    Some(NumberClaim::new(unit, Some(first.number), at, event, demo))
}

/// The winner of a subject, unless it is withdrawn.
pub(super) fn live(conn: &Connection, key: &Key) -> Result<Option<Event>> {
    Ok(log::winner(conn, key)?.filter(|event| event.change.is_some()))
}

/// The event that made the change which holds: what was undone and put back keeps its author and time.
pub(super) fn live_speaker(conn: &Connection, key: &Key) -> Result<Option<Event>> {
    let Some(winner) = live(conn, key)? else {
        return Ok(None);
    };
    let speaker = log::speaker(conn, winner.clone())?;
    Ok(Some(speaker.unwrap_or(winner)))
}

fn refresh_inspection(conn: &Connection, unit: Uuid, inspection: Uuid) -> Result<()> {
    let key = |subject| Key::of_inspection(unit, inspection, subject);
    let Some(changed_at) = inspection_changed(conn, unit, inspection)? else {
        let sql = include_str!("sql/inspection_drop.sql");
        conn.prepare_cached(sql)?.execute([Id(unit), Id(inspection)])?;
        return Ok(());
    };
    let started = live_speaker(conn, &key(INSPECTION_STARTED))?;
    let access = live(conn, &key(INSPECTION_ACCESS))?;
    let sql = include_str!("sql/inspection_put.sql");
    conn.prepare_cached(sql)?.execute(params![
        Id(unit),
        Id(inspection),
        started.map(|event| event.at),
        access.and_then(|event| json_text(event.change.as_ref())),
        changed_at,
    ])?;
    Ok(())
}

fn inspection_changed(conn: &Connection, unit: Uuid, inspection: Uuid) -> Result<Option<i64>> {
    let sql = include_str!("sql/event_totals_of_inspection.sql");
    let mut statement = conn.prepare_cached(sql)?;
    // An aggregate has a row even when there is no event.
    Ok(statement.query_row([Id(unit), Id(inspection)], |row| row.get("changed_at"))?)
}

fn refresh_finding(conn: &Connection, key: &Key) -> Result<()> {
    let (Some(inspection), Some(name)) = (key.inspection, key.subject.strip_prefix(FINDING)) else {
        return Ok(());
    };
    let (winner, speaker) = (live(conn, key)?, live_speaker(conn, key)?);
    let (Some(winner), Some(speaker)) = (winner, speaker) else {
        let row = params![Id(key.unit), Id(inspection), name];
        let sql = include_str!("sql/finding_drop.sql");
        conn.prepare_cached(sql)?.execute(row)?;
        return Ok(());
    };
    let sql = include_str!("sql/finding_put.sql");
    conn.prepare_cached(sql)?.execute(params![
        Id(key.unit),
        Id(inspection),
        name,
        json_text(winner.change.as_ref()),
        speaker.author,
        speaker.at,
        Id(winner.id),
    ])?;
    Ok(())
}
