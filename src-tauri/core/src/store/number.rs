//! Numbers of units for people: U-0042 is written on a tag, so a number must not move.
//!
//! A creation takes the largest number plus one. Two devices without a network can take the same: the
//! earlier creation keeps it, the later one is shown with the next free number. Which is which follows
//! from the claims alone, whatever order they arrived in.

use super::column::Id;
use super::error::Result;
use rusqlite::{Connection, OptionalExtension, Row, params};
use std::collections::{BTreeMap, BTreeSet};
use uuid::Uuid;

/// The largest number a creation may ask for: nine digits still fit on a tag.
const LARGEST: u32 = 999_999_999;

/// What a unit asked for, and what ranks it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct NumberClaim {
    pub unit: Uuid,
    /// 0: nothing that can be given.
    pub number: u32,
    pub at: i64,
    pub event: Uuid,
    pub demo: bool,
}

impl NumberClaim {
    pub fn new(unit: Uuid, number: Option<u32>, at: i64, event: Uuid, demo: bool) -> Self {
        let number = number.filter(|n| *n <= LARGEST).unwrap_or(0);
        Self { unit, number, at, event, demo }
    }

    fn rank(&self) -> (i64, Uuid, Uuid) {
        (self.at, self.event, self.unit)
    }
}

/// Gives each unit its number. Demonstration units come last: they are on this device only, and
/// must not move a number that other devices show too.
pub(super) fn assign(claims: &[NumberClaim]) -> BTreeMap<Uuid, u32> {
    let mut given = BTreeMap::new();
    let mut taken = BTreeSet::new();
    for demo in [false, true] {
        let mut group: Vec<_> = claims.iter().filter(|claim| claim.demo == demo).collect();
        group.sort_by_key(|claim| claim.rank());
        let (kept, moved): (Vec<_>, Vec<_>) =
            group.into_iter().partition(|claim| claim.number > 0 && taken.insert(claim.number));
        given.extend(kept.iter().map(|claim| (claim.unit, claim.number)));
        for claim in moved {
            let free = (claim.number.saturating_add(1)..).find(|n| taken.insert(*n));
            given.extend(free.map(|number| (claim.unit, number)));
        }
    }
    given
}

/// The number that the next creation should ask for.
pub(super) fn next(conn: &Connection) -> Result<u32> {
    let mut statement = conn.prepare_cached(include_str!("sql/unit_largest_number.sql"))?;
    let largest: u32 = statement.query_row([], |row| row.get(0))?;
    Ok(largest.saturating_add(1))
}

/// Settles a unit whose claim is new without looking at all others, if nobody has that number.
/// Tells whether that was enough.
pub(super) fn settle(conn: &Connection, claim: &NumberClaim) -> Result<bool> {
    let sql = include_str!("sql/unit_has_number.sql");
    if claim.number == 0 || conn.prepare_cached(sql)?.exists([claim.number])? {
        return Ok(false);
    }
    set(conn, claim.unit, Some(claim.number))?;
    Ok(true)
}

/// Gives every unit its number anew. Returns the units whose number moved.
pub(super) fn reassign(conn: &Connection) -> Result<Vec<Uuid>> {
    let shown = shown(conn)?;
    let claims: Vec<_> = shown.iter().filter_map(|unit| unit.claim.clone()).collect();
    let given = assign(&claims);
    let moved = |unit: &&Shown| unit.number != given.get(&unit.id).copied();
    let moved: Vec<_> = shown.iter().filter(moved).map(|unit| unit.id).collect();
    // All are cleared first: no two may have the same number, not even for a moment.
    for unit in &moved {
        set(conn, *unit, None)?;
    }
    for unit in &moved {
        set(conn, *unit, given.get(unit).copied())?;
    }
    Ok(moved)
}

/// The claim that a unit's row holds.
pub(super) fn claim_of(conn: &Connection, unit: Uuid) -> Result<Option<NumberClaim>> {
    let mut statement = conn.prepare_cached(include_str!("sql/unit_claim.sql"))?;
    let found = statement.query_row([Id(unit)], claim_from_row).optional()?;
    Ok(found.flatten())
}

struct Shown {
    id: Uuid,
    number: Option<u32>,
    claim: Option<NumberClaim>,
}

fn shown(conn: &Connection) -> Result<Vec<Shown>> {
    let mut statement = conn.prepare_cached(include_str!("sql/unit_claims.sql"))?;
    let rows = statement.query_map([], |row| {
        Ok(Shown {
            id: row.get::<_, Id>("id")?.0,
            number: row.get("number")?,
            claim: claim_from_row(row)?,
        })
    })?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

fn claim_from_row(row: &Row<'_>) -> rusqlite::Result<Option<NumberClaim>> {
    let Some(number) = row.get("claim")? else {
        return Ok(None);
    };
    Ok(Some(NumberClaim {
        unit: row.get::<_, Id>("id")?.0,
        number,
        at: row.get("claim_at")?,
        event: row.get::<_, Id>("claim_event")?.0,
        demo: row.get("demo")?,
    }))
}

fn set(conn: &Connection, unit: Uuid, number: Option<u32>) -> Result<()> {
    let sql = include_str!("sql/unit_set_number.sql");
    conn.prepare_cached(sql)?.execute(params![Id(unit), number])?;
    Ok(())
}
