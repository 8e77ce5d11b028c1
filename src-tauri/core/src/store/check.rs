//! Whether the file is sound, by SQLite's own look at every page.

use super::Store;
use super::error::{Result, StoreError};
use rusqlite::Connection;

impl Store {
    /// Looks at the whole file: some seconds for a large one, so for a reader beside the app.
    ///
    /// # Errors
    /// [`StoreError::Damaged`] where a page, an index or a rule of a table does not hold.
    pub fn check_in_full(&self) -> Result<()> {
        in_full(&self.conn)
    }

    /// Whether the app was ended last time before it could close the file. Then it should be looked at.
    pub const fn was_cut_off(&self) -> bool {
        self.was_cut_off
    }

    /// Another connection to the same file, which can only read, for long work beside the app; nothing
    /// where the record is only in memory.
    ///
    /// # Errors
    /// The file cannot be opened.
    pub fn reader(&self) -> Result<Option<Self>> {
        let Some(path) = self.conn.path().filter(|path| !path.is_empty()) else {
            return Ok(None);
        };
        // The header is not looked at: closing it would drop the locks of the other connection.
        let conn = Connection::open(path)?;
        super::open::configure(&conn)?;
        conn.pragma_update(None, "query_only", true)?;
        Ok(Some(Self { conn, was_cut_off: false }))
    }
}

pub(super) fn in_full(conn: &Connection) -> Result<()> {
    let mut statement = conn.prepare("PRAGMA integrity_check(1)")?;
    let found: String = statement.query_row([], |row| row.get(0))?;
    if found == "ok" { Ok(()) } else { Err(StoreError::Damaged(found)) }
}
