//! What the engine makes of units, kept so that a list need not ask it.

use super::refresh::refresh;
use crate::store::column::{Id, json_text};
use crate::store::error::Result;
use crate::store::{Inspection, Store};
use rusqlite::{Connection, params};
use serde_json::{Value, json};
use uuid::Uuid;

/// What the engine makes of an inspection as it stood.
#[derive(Clone, Debug, PartialEq)]
pub struct Standing {
    /// The unit.
    pub unit: Uuid,
    /// The inspection.
    pub inspection: Uuid,
    /// The version of the engine.
    pub engine_version: String,
    /// The place in the log of the last event that it was worked out from: [`Store::place_of`]. Times would not
    /// do: what another device sends may be older than what stands here.
    pub place: i64,
    /// The supply it was worked out for.
    pub supply: Option<Value>,
    /// The class; none where what was found cannot be read.
    pub class: Option<String>,
    /// The rank of the class, from the worst, 1 to 7; 0 where there is none.
    pub rank: u8,
    /// Whether the class is shown.
    pub basis: Option<String>,
    /// The cautions beside it.
    pub overlays: Vec<String>,
    /// Its repair is proven, so that it may be called ready.
    pub proven: bool,
}

/// A unit whose class has to be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stale {
    /// The unit.
    pub unit: Uuid,
    /// The inspection that its class is to be of.
    pub inspection: Uuid,
}

impl Store {
    /// Keeps what was worked out. What no longer holds, because something was found or deleted meanwhile, is
    /// let go.
    ///
    /// # Errors
    /// The database refuses; none is kept then.
    pub fn keep_standings(&mut self, standings: &[Standing]) -> Result<()> {
        self.transact_lazily(|conn| {
            for standing in standings {
                if !holds(conn, standing)? {
                    continue;
                }
                let sql = include_str!("../sql/standing_put.sql");
                conn.prepare_cached(sql)?.execute(params![
                    Id(standing.unit),
                    Id(standing.inspection),
                    standing.engine_version,
                    standing.place,
                    json_text(standing.supply.as_ref()),
                    standing.class,
                    standing.rank,
                    standing.basis,
                    json!(standing.overlays).to_string(),
                    standing.proven,
                ])?;
                refresh(conn, standing.unit)?;
            }
            Ok(())
        })
    }

    /// The place in the log of the last event of an inspection of a unit; 0 where there is none.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn place_of(&self, unit: Uuid) -> Result<i64> {
        place_of(&self.conn, unit)
    }

    /// The place in the log of the last event of an inspection; 0 where there is none.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn place_in(&self, inspection: &Inspection) -> Result<i64> {
        let sql = include_str!("../sql/event_place_of_inspection.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        Ok(statement.query_row([Id(inspection.unit), Id(inspection.id)], |row| row.get(0))?)
    }

    /// How many units have a class that is not known, or by another version of the engine.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn pending(&self, engine_version: &str) -> Result<u32> {
        let mut statement = self.conn.prepare_cached(include_str!("../sql/queue_pending.sql"))?;
        Ok(statement.query_row([engine_version], |row| row.get(0))?)
    }

    /// Units whose class is not known, or by another version of the engine: at most so many.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn stale(&self, engine_version: &str, most: u32) -> Result<Vec<Stale>> {
        let mut statement = self.conn.prepare_cached(include_str!("../sql/queue_stale.sql"))?;
        let rows = statement.query_map(params![engine_version, most], |row| {
            let (unit, inspection) = (row.get::<_, Id>(0)?.0, row.get::<_, Id>(1)?.0);
            Ok(Stale { unit, inspection })
        })?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }
}

fn place_of(conn: &Connection, unit: Uuid) -> Result<i64> {
    let mut statement = conn.prepare_cached(include_str!("../sql/event_place_of_unit.sql"))?;
    Ok(statement.query_row([Id(unit)], |row| row.get(0))?)
}

/// Whether a unit is still what a standing was worked out from.
fn holds(conn: &Connection, standing: &Standing) -> Result<bool> {
    let unit = crate::store::view::unit(conn, standing.unit)?;
    let is_same = unit.is_some_and(|unit| unit.supply == standing.supply);
    Ok(is_same && place_of(conn, standing.unit)? == standing.place)
}
