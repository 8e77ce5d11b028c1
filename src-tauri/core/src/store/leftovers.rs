//! Finds what a process that was ended left beside the record: what it never finished, which goes, and copies
//! from before a deletion that it did not come to make anew.

use super::Store;
use super::column::Id;
use super::error::Result;
use super::snapshot::{self, Snapshot, Snapshots};
use super::{aside, recovery};
use rusqlite::{Connection, OpenFlags};
use std::fs;
use std::io::{self, ErrorKind};
use std::path::Path;
use std::time::SystemTime;
use uuid::Uuid;

/// Folders beside the record, the first its own, and what the names of unfinished things in them begin with:
/// of a recovery, of a look at a damaged file, of a snapshot with what SQLite keeps beside it, of a file that is set aside.
const UNFINISHED: [(&str, &[&str]); 3] = [
    (".", &[recovery::RECOVERING, recovery::READING]),
    (snapshot::FOLDER, &[snapshot::ARRIVING]),
    (aside::FOLDER, &[aside::ARRIVING]),
];

/// Removes what was never finished beside a record, if it was last written before a moment. Tells how many
/// files and folders went.
///
/// # Errors
/// A folder cannot be read, or something not be removed.
pub fn sweep(record: &Path, before: SystemTime) -> Result<usize> {
    let beside = record.parent().unwrap_or_else(|| Path::new(""));
    let mut count = 0;
    for (folder, beginnings) in UNFINISHED {
        let entries = match fs::read_dir(beside.join(folder)) {
            Err(error) if error.kind() == ErrorKind::NotFound => continue,
            entries => entries?,
        };
        for entry in entries {
            let entry = entry?;
            let name = entry.file_name();
            let is =
                |beginning: &&str| name.to_str().is_some_and(|name| name.starts_with(beginning));
            // A younger one may be worked on.
            if beginnings.iter().any(is) && entry.metadata()?.modified()? < before {
                remove(&entry.path())?;
                count += 1;
            }
        }
    }
    Ok(count)
}

fn remove(path: &Path) -> io::Result<()> {
    if path.is_dir() { fs::remove_dir_all(path) } else { fs::remove_file(path) }
}

impl Store {
    /// Whether one of the snapshots holds a unit that was deleted since: a process that was ended right after
    /// a deletion leaves those.
    ///
    /// # Errors
    /// The record or the folder cannot be read.
    pub fn has_outdated(&self, of: &Snapshots) -> Result<bool> {
        let deleted = deleted_units(&self.conn)?;
        // One that cannot be looked at holds nothing that anybody could read.
        let holds = |one: &Snapshot| holds_any(&one.path, &deleted).unwrap_or(false);
        Ok(!deleted.is_empty() && of.list()?.iter().any(holds))
    }
}

fn deleted_units(conn: &Connection) -> Result<Vec<Uuid>> {
    let mut statement = conn.prepare_cached(include_str!("sql/unit_deleted.sql"))?;
    let rows = statement.query_map([], |row| Ok(row.get::<_, Id>(0)?.0))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// Whether a snapshot holds more of one of these units than its tombstone.
fn holds_any(snapshot: &Path, units: &[Uuid]) -> Result<bool> {
    let conn = Connection::open_with_flags(snapshot, OpenFlags::SQLITE_OPEN_READ_ONLY)?;
    conn.pragma_update(None, "trusted_schema", false)?;
    let mut statement = conn.prepare(include_str!("sql/event_besides_tombstone.sql"))?;
    for unit in units {
        if statement.exists([Id(*unit)])? {
            return Ok(true);
        }
    }
    Ok(false)
}
