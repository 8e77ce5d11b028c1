//! Whether what arrived hangs together: no event may speak of what is neither here nor came with it.
//!
//! What an event replaces or puts back comes with it, because the events of a unit travel together; unless
//! it is told to be lost, from a device whose file was damaged. Where it is there, it must be of the same
//! subject. What an undo took back is not asked for: nothing is worked out from it on another device. The
//! views do not need these checks, people do: a file that fails them was not written by this program.

use super::column::Id;
use super::error::{Result, StoreError};
use rusqlite::{Connection, OptionalExtension};
use std::collections::BTreeSet;
use uuid::Uuid;

/// Each statement finds an event that is at fault, by the field that is.
const CHECKS: [(&str, &str); 6] = [
    ("unit", include_str!("sql/whole_units.sql")),
    ("inspection", include_str!("sql/whole_inspections.sql")),
    ("inspection", include_str!("sql/whole_elsewhere.sql")),
    ("supersedes", include_str!("sql/whole_supersedes.sql")),
    ("restores", include_str!("sql/whole_restores.sql")),
    ("supersedes", include_str!("sql/whole_heads.sql")),
];

/// Checks the events after a place in the log; `lost` are those that others may name and that are nowhere.
pub(super) fn check(conn: &Connection, place: i64, lost: &BTreeSet<Uuid>) -> Result<()> {
    for (field, sql) in CHECKS {
        let at_fault = |row: &rusqlite::Row<'_>| Ok(row.get::<_, Id>(0)?.0);
        let found: Option<Uuid> =
            conn.prepare_cached(sql)?.query_row([place], at_fault).optional()?;
        if let Some(id) = found {
            return Err(StoreError::Dangling { id, field });
        }
    }
    named(conn, place, lost)
}

fn named(conn: &Connection, place: i64, lost: &BTreeSet<Uuid>) -> Result<()> {
    let mut statement = conn.prepare_cached(include_str!("sql/whole_named.sql"))?;
    let mut rows = statement.query([place])?;
    while let Some(row) = rows.next()? {
        let named = row.get::<_, Id>("named")?.0;
        if !lost.contains(&named) {
            let of_restores = row.get::<_, String>("field")? == "restores";
            let field = if of_restores { "restores" } else { "supersedes" };
            return Err(StoreError::Dangling { id: row.get::<_, Id>("id")?.0, field });
        }
    }
    Ok(())
}
