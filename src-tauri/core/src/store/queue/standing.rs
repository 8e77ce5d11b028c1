//! What the engine makes of units, kept so that a list need not ask it.

use super::refresh::refresh;
use crate::store::Store;
use crate::store::column::{Id, json_text};
use crate::store::error::Result;
use rusqlite::params;
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
    /// When the inspection was last changed before it was worked out.
    pub changed_at: i64,
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
    /// Keeps what was worked out. What no longer holds is kept too, and believed by nobody.
    ///
    /// # Errors
    /// The database refuses; none is kept then.
    pub fn keep_standings(&mut self, standings: &[Standing]) -> Result<()> {
        self.transact(|conn| {
            for standing in standings {
                // Whoever was deleted meanwhile has no row to hang on to.
                if crate::store::view::unit(conn, standing.unit)?.is_none() {
                    continue;
                }
                let sql = include_str!("../sql/standing_put.sql");
                conn.prepare_cached(sql)?.execute(params![
                    Id(standing.unit),
                    Id(standing.inspection),
                    standing.engine_version,
                    standing.changed_at,
                    json_text(standing.supply.as_ref()),
                    standing.class,
                    standing.rank,
                    standing.basis,
                    json!(standing.overlays).to_string(),
                ])?;
                refresh(conn, standing.unit)?;
            }
            Ok(())
        })
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
