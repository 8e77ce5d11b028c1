//! What can go wrong in the store. The texts are for logs; people read words chosen by the kind.

use rusqlite::ErrorCode;
use std::io::ErrorKind;
use thiserror::Error;
use uuid::Uuid;

/// Result of a store operation.
pub type Result<T> = std::result::Result<T, StoreError>;

/// Why the store did not do what was asked. Nothing was changed when it is returned.
#[derive(Debug, Error)]
pub enum StoreError {
    /// The file was written by a newer version of the app.
    #[error("file has schema {found}, this version knows {known}")]
    NewerFile {
        /// Schema version in the file.
        found: u32,
        /// Newest schema version known here.
        known: u32,
    },
    /// The file is no SQLite file, or one of another application.
    #[error("not a file of this application")]
    NotOurFile,
    /// There is no such unit, or it was deleted.
    #[error("no unit {0}")]
    NoSuchUnit(Uuid),
    /// There is no such inspection, or it was withdrawn.
    #[error("no inspection {0}")]
    NoSuchInspection(Uuid),
    /// The id that was to be created is taken.
    #[error("{0} is there already")]
    AlreadyThere(Uuid),
    /// The inspection belongs to another unit.
    #[error("inspection {0} is of another unit")]
    OtherUnit(Uuid),
    /// The change needs an inspection and none was given.
    #[error("{0} needs an inspection")]
    NeedsInspection(String),
    /// One action changes the same subject twice.
    #[error("{0} is changed twice in one action")]
    Repeated(String),
    /// The subject is set by the store alone.
    #[error("{0} is set by the store alone")]
    Reserved(String),
    /// An event cannot be stored as it is.
    #[error("event {id}: bad {field}")]
    BadEvent {
        /// The event.
        id: Uuid,
        /// The field that is wrong.
        field: &'static str,
    },
    /// An event is known here with other contents: one of the two was tampered with.
    #[error("event {0} is known with other contents")]
    Contradicts(Uuid),
    /// An event names what is neither here nor comes with it.
    #[error("event {id}: {field} is not there")]
    Dangling {
        /// The event.
        id: Uuid,
        /// The field that names it.
        field: &'static str,
    },
    /// The file is damaged: a page makes no sense, or a rule of a table does not hold.
    #[error("damaged: {0}")]
    Damaged(String),
    /// There is no room left where the file is.
    #[error("no room left")]
    NoRoom,
    /// The file or its folder may only be read.
    #[error("may only be read")]
    ReadOnly,
    /// The file could not be read.
    #[error("file: {0}")]
    Io(std::io::Error),
    /// The database refused.
    #[error("database: {0}")]
    Database(rusqlite::Error),
    /// A migration failed.
    #[error("migration: {0}")]
    Migration(#[from] rusqlite_migration::Error),
}

impl From<std::io::Error> for StoreError {
    fn from(error: std::io::Error) -> Self {
        match error.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => Self::NoRoom,
            ErrorKind::ReadOnlyFilesystem | ErrorKind::PermissionDenied => Self::ReadOnly,
            _ => Self::Io(error),
        }
    }
}

impl From<rusqlite::Error> for StoreError {
    fn from(error: rusqlite::Error) -> Self {
        match error.sqlite_error_code() {
            Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase) => {
                Self::Damaged(error.to_string())
            }
            Some(ErrorCode::DiskFull) => Self::NoRoom,
            Some(ErrorCode::ReadOnly | ErrorCode::PermissionDenied) => Self::ReadOnly,
            _ => Self::Database(error),
        }
    }
}
