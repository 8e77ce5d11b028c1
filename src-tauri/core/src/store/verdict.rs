//! Snapshots of what the engine said, with the version that said it: they are never worked out anew,
//! so that a record still shows what people acted on.

use super::column::{Id, Json};
use super::error::{Result, StoreError};
use super::{Store, view};
use rusqlite::{OptionalExtension, Row, params};
use serde_json::Value;
use uuid::Uuid;

/// What the engine said of an inspection at one moment.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// The inspection.
    pub inspection: Uuid,
    /// The version of the engine.
    pub engine_version: String,
    /// When, UTC milliseconds.
    pub at: i64,
    /// What it said.
    pub verdict: Value,
}

impl Store {
    /// Keeps a snapshot.
    pub fn save_verdict(&mut self, verdict: &Verdict) -> Result<()> {
        self.transact(|conn| {
            let inspection = view::inspection(conn, verdict.inspection)?;
            let inspection = inspection.ok_or(StoreError::NoSuchInspection(verdict.inspection))?;
            let sql = include_str!("sql/verdict_insert.sql");
            conn.prepare_cached(sql)?.execute(params![
                Id(inspection.unit),
                Id(inspection.id),
                verdict.engine_version,
                verdict.at,
                verdict.verdict.to_string(),
            ])?;
            Ok(())
        })
    }

    /// The last snapshot of an inspection.
    pub fn latest_verdict(&self, inspection: Uuid) -> Result<Option<Verdict>> {
        let sql = include_str!("sql/verdict_latest.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        Ok(statement.query_row([Id(inspection)], from_row).optional()?)
    }

    /// All snapshots of an inspection, in the order in which they were kept.
    pub fn verdicts(&self, inspection: Uuid) -> Result<Vec<Verdict>> {
        let sql = include_str!("sql/verdict_of_inspection.sql");
        let mut statement = self.conn.prepare_cached(sql)?;
        let rows = statement.query_map([Id(inspection)], from_row)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }
}

fn from_row(row: &Row<'_>) -> rusqlite::Result<Verdict> {
    Ok(Verdict {
        inspection: row.get::<_, Id>("inspection")?.0,
        engine_version: row.get("engine_version")?,
        at: row.get("at")?,
        verdict: row.get::<_, Json>("verdict")?.0,
    })
}
