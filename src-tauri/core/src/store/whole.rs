//! Whether what arrived hangs together: no event may speak of what is neither here nor came with it.
//!
//! What an event replaces, puts back or undoes may still come, from a third device; but where it is
//! there, it must be of the same subject. The views do not need these checks, people do: a file that
//! fails them was not written by this program.

use super::column::Id;
use super::error::{Result, StoreError};
use rusqlite::{Connection, OptionalExtension};
use uuid::Uuid;

/// Each statement finds an event that is at fault, by the field that is.
const CHECKS: [(&str, &str); 5] = [
    ("unit", include_str!("sql/whole_units.sql")),
    ("inspection", include_str!("sql/whole_inspections.sql")),
    ("supersedes", include_str!("sql/whole_supersedes.sql")),
    ("restores", include_str!("sql/whole_restores.sql")),
    ("supersedes", include_str!("sql/whole_heads.sql")),
];

/// Checks the events after a place in the log.
pub(super) fn check(conn: &Connection, place: i64) -> Result<()> {
    for (field, sql) in CHECKS {
        let at_fault = |row: &rusqlite::Row<'_>| Ok(row.get::<_, Id>(0)?.0);
        let found: Option<Uuid> =
            conn.prepare_cached(sql)?.query_row([place], at_fault).optional()?;
        if let Some(id) = found {
            return Err(StoreError::Dangling { id, field });
        }
    }
    Ok(())
}
