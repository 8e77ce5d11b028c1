//! Puts a snapshot, and what can be read of a damaged file, in the place of that file.
//!
//! The damaged file is copied aside before anything else, and every step can be cut off by a dead battery:
//! until the last one the damaged file stands where it stood.

use super::aside::{Aside, JOURNAL, LOG, beside, copy_into};
use super::error::{Result, StoreError};
use super::event::Event;
use super::snapshot::{Snapshot, Snapshots, flush_folder};
use super::{Store, salvage};
use std::fs::{self, File};
use std::io::{self, ErrorKind};
use std::path::Path;
use tempfile::TempDir;

/// What SQLite keeps beside a file.
const SIDES: [&str; 3] = [LOG, "-shm", JOURNAL];
/// What the name of a folder begins with while a record is put together in it.
pub(super) const RECOVERING: &str = ".recovering-";
/// What it begins with while a damaged file is read in it.
pub(super) const READING: &str = ".reading-";
/// Events that are taken over at once.
const BATCH: usize = 500;

/// What a recovery came to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Recovered {
    /// Events that could be read of the damaged file.
    pub read: u64,
    /// Of those, the ones that the snapshot had not.
    pub added: u64,
    /// Places in its log that could not be read.
    pub unreadable: u64,
    /// Places in its log of which nothing tells whether something stood there: what was deleted leaves such
    /// places too.
    pub doubtful: u64,
    /// Where its log ends is not known: more may be lost than is counted.
    pub is_uncounted: bool,
    /// Inspections that are begun in what was put together.
    pub inspections: u64,
}

/// Puts the record together anew beside its damaged file, from a snapshot where there is one, and what
/// can be read. The record must not be open in this process.
///
/// # Errors
/// The snapshot is damaged or of a newer version, or the folder cannot be written. The damaged file is
/// left then.
pub fn recover(record: &Path, snapshot: Option<&Snapshot>, readable: bool) -> Result<Recovered> {
    let folder = record.parent().unwrap_or_else(|| Path::new(""));
    let aside = Aside::of(record);
    let copied = aside.copy(record)?;
    let work = tempfile::Builder::new().prefix(RECOVERING).tempdir_in(folder)?;
    let made = work.path().join("record");
    if let Some(snapshot) = snapshot {
        fs::copy(&snapshot.path, &made)?;
    }
    let recovered = fill(&made, snapshot.is_some(), readable.then(|| copied.file()).as_deref())?;
    File::options().write(true).open(&made)?.sync_all()?;
    aside.keep(copied)?;
    // Without the note the next copy is made later than it should be: no reason to leave a person without
    // the record.
    Snapshots::of(record).note_put_back(recovered.inspections).ok();
    // What SQLite had not yet put into the damaged file must not be put into the new one.
    for side in SIDES {
        remove_if_there(&beside(record, side))?;
    }
    fs::rename(&made, record)?;
    flush_folder(folder)?;
    Ok(recovered)
}

/// What can be read of a damaged record, for giving it away.
pub struct Readable {
    /// It, joined to a snapshot where one can be used; gone when this is dropped.
    pub store: Store,
    /// What was read.
    pub recovered: Recovered,
    /// The snapshot.
    pub snapshot: Option<Snapshot>,
    _folder: TempDir,
}

/// Reads what can be read of a damaged record. The first of the snapshots that can be used is joined to it,
/// or none. The damaged file is left as it is.
///
/// # Errors
/// The folder for temporary files cannot be written, or is full.
pub fn readable(record: &Path, snapshots: &[Snapshot]) -> Result<Readable> {
    for snapshot in snapshots {
        match readable_with(record, Some(snapshot)) {
            // The copy may be sound: whoever makes room gets more.
            Err(StoreError::NoRoom) => return Err(StoreError::NoRoom),
            Err(_) => {}
            found => return found,
        }
    }
    readable_with(record, None)
}

fn readable_with(record: &Path, snapshot: Option<&Snapshot>) -> Result<Readable> {
    let parent = record.parent().unwrap_or_else(|| Path::new(""));
    let folder = tempfile::Builder::new().prefix(READING).tempdir_in(parent)?;
    let made = folder.path().join("record");
    if let Some(snapshot) = snapshot {
        fs::copy(&snapshot.path, &made)?;
    }
    let damaged = copy_into(record, folder.path())?;
    let recovered = fill(&made, snapshot.is_some(), Some(&damaged))?;
    let (store, snapshot) = (Store::open(&made)?, snapshot.cloned());
    Ok(Readable { store, recovered, snapshot, _folder: folder })
}

/// Opens what was copied, or a new record, and adds what can be read.
fn fill(made: &Path, is_copy: bool, damaged: Option<&Path>) -> Result<Recovered> {
    let mut store = Store::open(made)?;
    if is_copy {
        store.check_in_full()?;
    }
    let mut recovered = Recovered::default();
    if let Some(damaged) = damaged {
        let mut batch = Vec::new();
        let found = salvage::events(damaged, |event| {
            batch.push(event);
            if batch.len() >= BATCH {
                add(&mut store, std::mem::take(&mut batch), &mut recovered)?;
            }
            Ok(())
        })?;
        add(&mut store, batch, &mut recovered)?;
        recovered.read = found.read;
        recovered.unreadable += found.unreadable;
        recovered.doubtful = found.doubtful;
        recovered.is_uncounted = found.is_uncounted;
    }
    recovered.inspections = store.inspections_begun()?;
    store.checkpoint()?;
    store.close()?;
    Ok(recovered)
}

/// Adds events; where one of them does not fit, each by itself, so that it keeps none of the others out.
fn add(store: &mut Store, batch: Vec<Event>, recovered: &mut Recovered) -> Result<()> {
    let whole = store.append_foreign(batch.iter().cloned());
    if let Ok(changed) = whole {
        recovered.added += changed.events.len() as u64;
        return Ok(());
    }
    for event in batch {
        match store.append_foreign([event]) {
            Ok(changed) => recovered.added += changed.events.len() as u64,
            Err(StoreError::BadEvent { .. } | StoreError::Contradicts(_)) => {
                recovered.unreadable += 1;
            }
            Err(error) => return Err(error),
        }
    }
    Ok(())
}

fn remove_if_there(path: &Path) -> io::Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}
