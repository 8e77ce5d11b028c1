//! What can go wrong in the store. The texts are for logs; people read words chosen by the kind.

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
    /// The file could not be read.
    #[error("file: {0}")]
    Io(#[from] std::io::Error),
    /// The database refused.
    #[error("database: {0}")]
    Database(#[from] rusqlite::Error),
    /// A migration failed.
    #[error("migration: {0}")]
    Migration(#[from] rusqlite_migration::Error),
}
