//! Puts a snapshot, and what can be read of a damaged file, in the place of that file.
//!
//! The damaged file is copied aside before anything else, and every step can be cut off by a dead battery:
//! until the last one the damaged file stands where it stood.

use super::error::{Result, StoreError};
use super::event::Event;
use super::snapshot::{Snapshot, flush_folder};
use super::{Store, salvage};
use std::fs::{self, File};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

/// The folder that a damaged file is kept in, beside the record: one, the last.
const DAMAGED: &str = "damaged";
/// What SQLite keeps beside a file.
const SIDES: [&str; 2] = ["-wal", "-shm"];
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
}

/// Puts the record together anew beside its damaged file, from a snapshot where there is one, and what
/// can be read. The record must not be open in this process.
///
/// # Errors
/// The snapshot is damaged or of a newer version, or the folder cannot be written. The damaged file is
/// left then.
pub fn recover(record: &Path, snapshot: Option<&Snapshot>, readable: bool) -> Result<Recovered> {
    let folder = record.parent().unwrap_or_else(|| Path::new(""));
    let aside = set_aside(record, folder)?;
    let work = tempfile::Builder::new().prefix(".recovering-").tempdir_in(folder)?;
    let made = work.path().join("record");
    if let Some(snapshot) = snapshot {
        fs::copy(&snapshot.path, &made)?;
    }
    let recovered = fill(&made, snapshot.is_some(), readable.then_some(aside.as_path()))?;
    File::options().write(true).open(&made)?.sync_all()?;
    // What SQLite had not yet put into the damaged file must not be put into the new one.
    for side in SIDES {
        remove_if_there(&beside(record, side))?;
    }
    fs::rename(&made, record)?;
    flush_folder(folder)?;
    Ok(recovered)
}

/// What can be read of a damaged record, as a store in memory joined to a snapshot where there is one:
/// for giving it away. The damaged file is left as it is.
///
/// # Errors
/// The folder for temporary files cannot be written, or the snapshot is of a newer version.
pub fn readable(
    record: &Path,
    snapshot: Option<&Snapshot>,
) -> Result<(tempfile::TempDir, Store, Recovered)> {
    let folder = record.parent().unwrap_or_else(|| Path::new(""));
    let work = tempfile::Builder::new().prefix(".reading-").tempdir_in(folder)?;
    let aside = copy_to(record, work.path())?;
    let made = work.path().join("record");
    if let Some(snapshot) = snapshot {
        fs::copy(&snapshot.path, &made)?;
    }
    let recovered = fill(&made, snapshot.is_some(), Some(&aside))?;
    let store = Store::open(&made)?;
    Ok((work, store, recovered))
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
    }
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

/// Copies the damaged file and what SQLite keeps beside it.
fn set_aside(record: &Path, folder: &Path) -> Result<PathBuf> {
    let aside = folder.join(DAMAGED);
    match fs::remove_dir_all(&aside) {
        Err(error) if error.kind() != ErrorKind::NotFound => return Err(error.into()),
        _ => {}
    }
    fs::create_dir_all(&aside)?;
    let copied = copy_to(record, &aside)?;
    flush_folder(&aside)?;
    Ok(copied)
}

fn copy_to(record: &Path, folder: &Path) -> Result<PathBuf> {
    let to = folder.join("damaged.coldchassis");
    for side in ["", SIDES[0]] {
        let from = beside(record, side);
        match fs::copy(&from, beside(&to, side)) {
            Err(error) if error.kind() == ErrorKind::NotFound => {}
            copied => _ = copied?,
        }
    }
    Ok(to)
}

fn beside(file: &Path, ending: &str) -> PathBuf {
    let mut name = file.as_os_str().to_owned();
    name.push(ending);
    name.into()
}

fn remove_if_there(path: &Path) -> io::Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}
