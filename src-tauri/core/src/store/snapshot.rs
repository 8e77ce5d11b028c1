//! Copies of the whole record in a folder beside it, for the day its file is damaged.
//!
//! Before a migration and every [`INSPECTIONS_APART`] inspections. A copy is made by SQLite's own backup,
//! so that it is one moment's record whatever is written meanwhile; it is checked in full before it may
//! push an older one out. A deletion is a promise: copies from before it go.

use super::error::{Result, StoreError};
use super::{Store, check};
use rusqlite::Connection;
use rusqlite::backup::{Backup, StepResult};
use std::fs::{self, File};
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::time::{Duration, UNIX_EPOCH};

/// How many inspections may be begun between two snapshots: a day or two of a shop's intake.
pub const INSPECTIONS_APART: u64 = 20;
/// How many snapshots are kept.
const KEPT: usize = 5;
/// How many of those that were made before a migration are kept beside them.
const KEPT_FROM_BEFORE: usize = 2;
/// The folder's name, beside the record.
pub(super) const FOLDER: &str = "snapshots";
/// What the names of snapshots end in.
const ENDING: &str = ".coldchassis";
/// What the name of a file begins with while it is written.
pub(super) const ARRIVING: &str = ".arriving-";
/// The note that a record was put in place, in the folder: the newest snapshot then, and how many inspections
/// the record began with.
const PUT_BACK: &str = "put_back";
/// How long a backup waits for another process that writes.
const PAUSE: Duration = Duration::from_millis(20);

/// A copy of the record.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Snapshot {
    /// Counts up from 1.
    pub number: u32,
    /// How many inspections had been begun.
    pub inspections: u64,
    /// The schema that it was to be brought from, when it was made before a migration.
    pub before_migration_from: Option<u32>,
    /// Where it is.
    pub path: PathBuf,
    /// Its length, bytes.
    pub bytes: u64,
    /// When it was made by the file system's clock, UTC milliseconds.
    pub at: i64,
}

impl Snapshot {
    /// Reads what a file's name says; other files are none.
    fn read(entry: &fs::DirEntry) -> Option<Self> {
        let name = entry.file_name().into_string().ok()?;
        let mut words = name.strip_suffix(ENDING)?.split('-');
        let (number, inspections) = (words.next()?, words.next()?);
        let before_migration_from = match (words.next(), words.next()) {
            (Some("before"), Some(form)) => Some(form.parse().ok()?),
            (None, None) => None,
            _ => return None,
        };
        let about = entry.metadata().ok()?;
        let age = about.modified().ok()?.duration_since(UNIX_EPOCH).ok()?;
        Some(Self {
            number: number.parse().ok()?,
            inspections: inspections.parse().ok()?,
            before_migration_from,
            path: entry.path(),
            bytes: about.len(),
            at: i64::try_from(age.as_millis()).ok()?,
        })
    }
}

/// The folder of snapshots of a record.
#[derive(Clone, Debug)]
pub struct Snapshots {
    folder: PathBuf,
}

impl Snapshots {
    /// The snapshots of the record at a path; their folder is made when the first one is.
    pub fn of(record: &Path) -> Self {
        let beside = record.parent().unwrap_or_else(|| Path::new(""));
        Self { folder: beside.join(FOLDER) }
    }

    /// What is there, the newest first. One that cannot be looked at is left out.
    ///
    /// # Errors
    /// The folder is there and cannot be read.
    pub fn list(&self) -> Result<Vec<Snapshot>> {
        let entries = match fs::read_dir(&self.folder) {
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
            entries => entries?,
        };
        let entries: Vec<_> = entries.collect::<io::Result<_>>()?;
        let mut found: Vec<_> = entries.iter().filter_map(Snapshot::read).collect();
        found.sort_by_key(|snapshot| std::cmp::Reverse(snapshot.number));
        Ok(found)
    }

    /// Makes a snapshot through a connection, then lets the oldest go.
    pub(super) fn take(&self, conn: &Connection, before: Option<u32>) -> Result<Snapshot> {
        let there = self.list()?;
        let number = there.first().map_or(1, |newest| newest.number.saturating_add(1));
        let inspections = begun(conn)?;
        let from = before.map(|form| format!("-before-{form}")).unwrap_or_default();
        let path = self.folder.join(format!("{number:06}-{inspections}{from}{ENDING}"));
        fs::create_dir_all(&self.folder)?;
        let beside = tempfile::Builder::new().prefix(ARRIVING).tempfile_in(&self.folder)?;
        let beside = beside.into_temp_path();
        copy(conn, &beside)?;
        File::options().write(true).open(&beside)?.sync_all()?;
        beside.persist(&path).map_err(|error| error.error)?;
        flush_folder(&self.folder)?;
        self.rotate()?;
        let made = self.list()?.into_iter().find(|snapshot| snapshot.number == number);
        made.ok_or_else(|| StoreError::Io(ErrorKind::NotFound.into()))
    }

    /// Takes note that a record was put in place that had so many inspections begun: the snapshots that are there
    /// may hold more, of a record that is no more.
    pub(super) fn note_put_back(&self, inspections: u64) -> Result<()> {
        let Some(newest) = self.list()?.into_iter().next() else {
            return Ok(());
        };
        let mut note = tempfile::Builder::new().prefix(ARRIVING).tempfile_in(&self.folder)?;
        writeln!(note, "{} {inspections}", newest.number)?;
        note.persist(self.folder.join(PUT_BACK)).map_err(|error| error.error)?;
        Ok(())
    }

    /// How many inspections the record had begun when it was last secured: at the newest snapshot, or when it
    /// was put in place after that.
    fn last_secured(&self) -> Result<u64> {
        let Some(newest) = self.list()?.into_iter().next() else {
            return Ok(0);
        };
        let note = fs::read_to_string(self.folder.join(PUT_BACK)).unwrap_or_default();
        let put_back = note.trim_end().split_once(' ').and_then(|(number, inspections)| {
            let is_after = number.parse() == Ok(newest.number);
            inspections.parse::<u64>().ok().filter(|_| is_after)
        });
        Ok(put_back.map_or(newest.inspections, |begun| begun.min(newest.inspections)))
    }

    fn rotate(&self) -> Result<()> {
        let (before, regular): (Vec<_>, Vec<_>) =
            self.list()?.into_iter().partition(|one| one.before_migration_from.is_some());
        let mut old = regular.iter().skip(KEPT).chain(before.iter().skip(KEPT_FROM_BEFORE));
        old.try_for_each(|snapshot| fs::remove_file(&snapshot.path))?;
        Ok(())
    }

    /// Removes all but the newest.
    fn forget(&self) -> Result<()> {
        let mut old = self.list()?.into_iter().skip(1);
        old.try_for_each(|snapshot| fs::remove_file(snapshot.path))?;
        Ok(())
    }
}

impl Store {
    /// Makes a snapshot and lets the oldest go. Others can write meanwhile.
    ///
    /// # Errors
    /// The record is damaged, or the folder cannot be written; the snapshots that are there stay.
    pub fn take_snapshot(&self, into: &Snapshots) -> Result<Snapshot> {
        into.take(&self.conn, None)
    }

    /// Whether enough was done since the last snapshot for another.
    ///
    /// # Errors
    /// The record or the folder cannot be read.
    pub fn is_snapshot_due(&self, of: &Snapshots) -> Result<bool> {
        Ok(begun(&self.conn)? >= of.last_secured()?.saturating_add(INSPECTIONS_APART))
    }

    /// How many inspections were begun, of units that are still there.
    pub(super) fn inspections_begun(&self) -> Result<u64> {
        begun(&self.conn)
    }

    /// Makes a snapshot and removes all older ones: they hold units that were deleted since.
    ///
    /// # Errors
    /// As [`Store::take_snapshot`]; the older ones stay then.
    pub fn renew_snapshots(&self, of: &Snapshots) -> Result<()> {
        if of.list()?.is_empty() {
            return Ok(());
        }
        of.take(&self.conn, None)?;
        of.forget()
    }
}

fn begun(conn: &Connection) -> Result<u64> {
    let sql = include_str!("sql/inspection_count.sql");
    let count: u32 = conn.prepare_cached(sql)?.query_row([], |row| row.get(0))?;
    Ok(count.into())
}

/// Copies the record and checks the copy in full: a damaged one must not push a good one out.
fn copy(conn: &Connection, to: &Path) -> Result<()> {
    let mut made = Connection::open(to)?;
    {
        let backup = Backup::new(conn, &mut made)?;
        // All in one step, so that it need not begin anew when something is written meanwhile.
        while !matches!(backup.step(-1)?, StepResult::Done) {
            std::thread::sleep(PAUSE);
        }
    }
    // One file, that can be looked at without making others beside it.
    made.pragma_update(None, "journal_mode", "DELETE")?;
    check::in_full(&made)
}

/// Makes new names outlive a dead battery; Windows does so by itself and cannot open a folder.
pub(super) fn flush_folder(folder: &Path) -> Result<()> {
    if cfg!(unix) {
        File::open(folder)?.sync_all()?;
    }
    Ok(())
}
