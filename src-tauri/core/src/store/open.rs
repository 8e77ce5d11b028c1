//! Opening a file: look before touching, then settings, then migrations.

use super::aside::{JOURNAL, LOG};
use super::error::{Result, StoreError};
use super::snapshot::Snapshots;
use super::{Store, projection, queue};
use include_dir::{Dir, include_dir};
use rusqlite::config::DbConfig;
use rusqlite::{Connection, ErrorCode};
use rusqlite_migration::Migrations;
use std::fs::File;
use std::io::{ErrorKind, Read, Write};
use std::path::Path;
use std::time::Duration;

static MIGRATIONS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/../../migrations");

/// The schema that this version writes: the number of the last migration.
pub const SCHEMA_VERSION: u32 = 4;

/// `application_id` of our files, as the first migration sets it.
const APPLICATION_ID: u32 = u32::from_be_bytes(*b"CCHS");

/// What every SQLite file begins with. This and the places below: SQLite's file format, section 1.3,
/// seen in a copy of its table; a test finds them in a file that SQLite has written.
const MAGIC: &[u8; 16] = b"SQLite format 3\0";
/// Bytes in the header of a file.
const HEADER: usize = 100;
/// Where the header keeps `user_version`.
const USER_VERSION: usize = 60;
/// Where the header keeps `application_id`.
const APPLICATION: usize = 68;

/// What SQLite keeps beside a file while it is open: its log, and in a migration its rollback journal.
const SIDES: [&str; 2] = [LOG, JOURNAL];

/// Statements kept ready: the store has about fifty.
const STATEMENTS: usize = 64;
/// How long to wait for another process that writes: a commit takes some 10 ms even on a slow phone.
const BUSY: Duration = Duration::from_secs(5);

impl Store {
    /// Opens the file, creating it if there is none, and brings it to this version's schema.
    ///
    /// A file of a newer version, or of another application, is refused and not touched. Other
    /// processes may have the file open, but this one only once: on POSIX systems the look at the
    /// header would drop the locks of its other connection.
    ///
    /// Before an older file is brought up, a snapshot of it is made (see [`Snapshots`]).
    pub fn open(path: &Path) -> Result<Self> {
        Self::open_there(path).map_err(|error| explained(error, path))
    }

    fn open_there(path: &Path) -> Result<Self> {
        look(path)?;
        // The last connection that closes takes them away; where one is, nobody closed.
        let was_cut_off = SIDES.iter().any(|side| is_beside(path, side));
        let conn = Connection::open(path)?;
        configure(&conn)?;
        let found = check(version(&conn)?)?;
        if (1..SCHEMA_VERSION).contains(&found) {
            Snapshots::of(path).take(&conn, Some(found))?;
        }
        Ok(Self { was_cut_off, ..Self::start(conn, found)? })
    }

    /// A store that is gone when it is dropped.
    pub fn open_in_memory() -> Result<Self> {
        let conn = Connection::open_in_memory()?;
        configure(&conn)?;
        Self::start(conn, 0)
    }

    /// A store that is empty and cannot be written: what stands in for one that is being replaced.
    pub fn closed() -> Result<Self> {
        let closed = Self::open_in_memory()?;
        closed.conn.pragma_update(None, "query_only", true)?;
        Ok(closed)
    }

    /// Closes the file and says whether that went well.
    pub fn close(self) -> Result<()> {
        self.conn.close().map_err(|(_, error)| error.into())
    }

    fn start(mut conn: Connection, found: u32) -> Result<Self> {
        if found < SCHEMA_VERSION {
            migrate(&mut conn)?;
        }
        let transaction = conn.transaction()?;
        // What an older version worked out lacks what this one shows besides.
        if queue::is_missing(&transaction)? {
            projection::rebuild(&transaction)?;
        }
        transaction.commit()?;
        // Readers do not wait for the writer, and a commit is one append to the log.
        conn.pragma_update(None, "journal_mode", "WAL")?;
        conn.set_prepared_statement_cache_capacity(STATEMENTS);
        Ok(Self { conn, was_cut_off: false })
    }
}

/// Reads the schema version from the file's header; 0 when there is nothing yet.
///
/// Plain bytes are read, because SQLite would make side files for a file in WAL mode even to look.
/// The header never lags behind the log, see [`migrate`]; it may be ahead of what was kept, see [`version`].
fn look(path: &Path) -> Result<u32> {
    let mut file = match File::open(path) {
        Err(e) if e.kind() == ErrorKind::NotFound => return Ok(0),
        opened => opened?,
    };
    let mut header = Vec::with_capacity(HEADER);
    Read::by_ref(&mut file).take(HEADER as u64).read_to_end(&mut header)?;
    if header.is_empty() {
        return Ok(0);
    }
    let is_ours = header.starts_with(MAGIC) && word(&header, APPLICATION) == Some(APPLICATION_ID);
    match word(&header, USER_VERSION) {
        Some(found) if is_ours => check(found),
        _ => Err(StoreError::NotOurFile),
    }
}

/// The schema version as SQLite reads it. It first puts back what a migration that was cut off had put into the
/// file: then the version that [`look`] saw in the header was never kept.
fn version(conn: &Connection) -> Result<u32> {
    Ok(conn.pragma_query_value(None, "user_version", |row| row.get(0))?)
}

/// What is behind an error that says only that a file could not be opened or written: SQLite needs to make
/// others beside it.
fn explained(error: StoreError, path: &Path) -> StoreError {
    let is_vague = matches!(&error, StoreError::Database(error) if matches!(
        error.sqlite_error_code(),
        Some(ErrorCode::CannotOpen | ErrorCode::SystemIoFailure)
    ));
    let folder = path.parent().filter(|_| is_vague);
    let tried = folder.map_or(Ok(()), write_something);
    tried.err().map(StoreError::from).filter(is_clear).unwrap_or(error)
}

const fn is_clear(error: &StoreError) -> bool {
    matches!(error, StoreError::NoRoom | StoreError::ReadOnly)
}

/// As much as SQLite takes for the index of its log.
fn write_something(folder: &Path) -> std::io::Result<()> {
    let mut file = tempfile::tempfile_in(folder)?;
    file.write_all(&[0; 32 << 10])?;
    file.sync_all()
}

/// Whether something with that ending lies beside the file and is not empty.
fn is_beside(path: &Path, ending: &str) -> bool {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    std::fs::metadata(name).is_ok_and(|log| log.len() > 0)
}

fn check(found: u32) -> Result<u32> {
    let known = SCHEMA_VERSION;
    if found > known {
        return Err(StoreError::NewerFile { found, known });
    }
    Ok(found)
}

fn word(header: &[u8], at: usize) -> Option<u32> {
    let bytes = header.get(at..)?.first_chunk()?;
    Some(u32::from_be_bytes(*bytes))
}

/// Settings of the connection.
pub(super) fn configure(conn: &Connection) -> Result<()> {
    // Two processes may have the file open: the window and the command line.
    conn.busy_timeout(BUSY)?;
    // An answer that was shown as taken must outlive a dead battery. NORMAL may lose the last commits.
    conn.pragma_update(None, "synchronous", "FULL")?;
    // On Apple systems only this reaches the medium; elsewhere it has no effect.
    conn.pragma_update(None, "fullfsync", true)?;
    conn.pragma_update(None, "checkpoint_fullfsync", true)?;
    // Off by default in SQLite: a finding without its inspection would be a slip of ours.
    conn.pragma_update(None, "foreign_keys", true)?;
    // Without it INSERT OR REPLACE deletes rows past the triggers that guard the log.
    conn.pragma_update(None, "recursive_triggers", true)?;
    // What is purged is overwritten, not just unlinked.
    conn.pragma_update(None, "secure_delete", true)?;
    // Android has no folder for temporary files.
    conn.pragma_update(None, "temp_store", "MEMORY")?;
    // A file from somewhere else must not run functions through its schema.
    conn.pragma_update(None, "trusted_schema", false)?;
    // A damaged page is reported rather than misread.
    conn.pragma_update(None, "cell_size_check", true)?;
    // No statement of ours needs to write the schema table or switch the journal off.
    conn.set_db_config(DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true)?;
    Ok(())
}

/// Applies what is missing, each migration whole or not at all.
///
/// This runs with a rollback journal, so that the new version stands in the file's own header at once
/// and an older app that looks there refuses the file, even after a crash.
fn migrate(conn: &mut Connection) -> Result<()> {
    conn.pragma_update(None, "journal_mode", "DELETE")?;
    migrations()?.to_latest(conn)?;
    Ok(())
}

pub(super) fn migrations() -> Result<Migrations<'static>> {
    Ok(Migrations::from_directory(&MIGRATIONS)?)
}
