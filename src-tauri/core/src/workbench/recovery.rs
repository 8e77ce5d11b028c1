//! A damaged record for a shell: the copies that are there, one put back, what can be read given away.

use std::path::{Path, PathBuf};

use serde::Serialize;

use super::carrying::{BundleView, bundle_view, unwritten};
use super::error::{Code, Problem};
use super::reports::when;
use super::session::Workbench;
use crate::exchange::export;
use crate::photo::Files;
use crate::store::{Leaving, Readable, Recovered, Snapshot, Snapshots, Store, readable, recover};
use crate::words::{Message, Words};

/// A copy of the record.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct SnapshotView {
    /// What to ask for it by.
    pub number: u32,
    /// When it was made, UTC milliseconds.
    #[ts(type = "number")]
    pub at: i64,
    /// Inspections in it.
    #[ts(type = "number")]
    pub inspections: u64,
    /// Its length, bytes.
    #[ts(type = "number")]
    pub bytes: u64,
    /// It was made before an update of the program brought the record to a new form.
    pub before_update: bool,
}

/// A record that was put together anew.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct RecoveredView {
    /// Events that could be read of the damaged file.
    #[ts(type = "number")]
    pub read: u64,
    /// Of those, the ones that the copy had not.
    #[ts(type = "number")]
    pub added: u64,
    /// Places that could not be read.
    #[ts(type = "number")]
    pub unreadable: u64,
    /// Places of which nothing tells whether something stood there.
    #[ts(type = "number")]
    pub doubtful: u64,
    /// More may be lost than is counted.
    pub uncounted: bool,
    /// In a sentence or two.
    pub says: Vec<String>,
}

/// The way back from a damaged record. The record must not be open while it is used.
pub struct Recovery {
    record: PathBuf,
    photos: Option<PathBuf>,
    words: Words,
}

impl Recovery {
    /// The way back for the record at a path, with its folder of photos.
    pub fn of(record: &Path, photos: Option<PathBuf>, locale: &str) -> Self {
        Self { record: record.to_owned(), photos, words: Words::of(locale) }
    }

    /// The copies that are there, the newest first.
    ///
    /// # Errors
    /// Their folder cannot be read.
    pub fn snapshots(&self) -> Result<Vec<SnapshotView>, Problem> {
        let view = |snapshot: Snapshot| SnapshotView {
            number: snapshot.number,
            at: snapshot.at,
            inspections: snapshot.inspections,
            bytes: snapshot.bytes,
            before_update: snapshot.before_migration_from.is_some(),
        };
        Ok(Snapshots::of(&self.record).list()?.into_iter().map(view).collect())
    }

    /// Puts a copy in the record's place, or an empty record where no copy is named, joined with what can
    /// be read of the file that stood there. That file is kept beside.
    ///
    /// # Errors
    /// There is no such copy, it is damaged, or there is no room; the record is left as it was.
    pub fn restore(
        &self,
        number: Option<u32>,
        with_readable: bool,
    ) -> Result<RecoveredView, Problem> {
        let snapshot = number.map(|number| self.find(number)).transpose()?;
        let done = recover(&self.record, snapshot.as_ref(), with_readable)?;
        Ok(self.view(&done, snapshot.is_some(), with_readable))
    }

    /// Writes a bundle of what can be read of the damaged file, joined with the newest copy that is sound.
    ///
    /// # Errors
    /// Nothing can be read, nor is there anything in a copy, or the bundle cannot be written; the damaged file
    /// is left as it was.
    pub fn export_readable(&self, at: i64, to: &Path) -> Result<BundleView, Problem> {
        // Copies that cannot be looked for are no reason to give nothing away.
        let there = Snapshots::of(&self.record).list().unwrap_or_default();
        let found = readable(&self.record, &there)?;
        if found.store.leaving(&Leaving::All).next().is_none() {
            return Err(Problem::new(Code::Damaged, Message::new("error-nothing-readable")));
        }
        let files = self.photos.clone().map(Files::of);
        let made = export(&found.store, files.as_ref(), &Leaving::All, at, to);
        let mut view = bundle_view(&made.map_err(unwritten)?, &self.words);
        view.says.extend(self.basis(&found));
        Ok(view)
    }

    /// What a bundle of what could be read rests on.
    fn basis(&self, found: &Readable) -> Vec<String> {
        let basis = match &found.snapshot {
            Some(copy) => Message::new("bundle-rests-on-copy").text("time", when(copy.at)),
            None => Message::new("bundle-rests-on-file"),
        };
        let lost = what_is_lost(&found.recovered, found.snapshot.is_some());
        std::iter::once(basis).chain(lost).map(|message| self.words.say(&message)).collect()
    }

    fn find(&self, number: u32) -> Result<Snapshot, Problem> {
        let there = Snapshots::of(&self.record).list()?;
        let found = there.into_iter().find(|snapshot| snapshot.number == number);
        found.ok_or_else(|| Problem::new(Code::NotFound, Message::new("error-no-snapshot")))
    }

    fn view(&self, done: &Recovered, from_copy: bool, with_readable: bool) -> RecoveredView {
        let basis = if from_copy {
            Message::new("recovered-from-copy")
        } else {
            Message::new("recovered-from-nothing")
        };
        let read = with_readable.then(|| what_was_read(done, from_copy));
        let says = std::iter::once(basis).chain(read).chain(what_is_lost(done, from_copy));
        RecoveredView {
            read: done.read,
            added: done.added,
            unreadable: done.unreadable,
            doubtful: done.doubtful,
            uncounted: done.is_uncounted,
            says: says.map(|message| self.words.say(&message)).collect(),
        }
    }
}

/// What was read of the file that stood there.
fn what_was_read(done: &Recovered, from_copy: bool) -> Message {
    match (done.read, from_copy) {
        (0, _) => Message::new("recovered-nothing-read"),
        (_, true) => Message::new("recovered-added").count("events", done.added),
        (_, false) => Message::new("recovered-read").count("events", done.added),
    }
}

/// What may be lost, and how sure that is.
fn what_is_lost(done: &Recovered, from_copy: bool) -> Vec<Message> {
    let gone = if from_copy {
        Message::new("recovered-gone").count("places", done.unreadable)
    } else {
        Message::new("recovered-gone-for-good").count("places", done.unreadable)
    };
    let doubtful = Message::new("recovered-doubtful").count("places", done.doubtful);
    let uncounted = Message::new("recovered-uncounted");
    [
        (done.unreadable > 0).then_some(gone),
        (done.doubtful > 0).then_some(doubtful),
        done.is_uncounted.then_some(uncounted),
    ]
    .into_iter()
    .flatten()
    .collect()
}

impl Workbench {
    /// The way back to an earlier copy; nothing where the record is only in memory.
    pub fn recovery(&self) -> Option<Recovery> {
        let record = self.record.as_deref()?;
        Some(Recovery::of(record, self.around.photos.clone(), &self.around.locale))
    }

    /// Puts a copy in the record's place and goes on with that.
    ///
    /// # Errors
    /// As [`Recovery::restore`]. Where the record cannot be opened after that, every later command fails.
    pub fn restore(
        &mut self,
        number: Option<u32>,
        with_readable: bool,
    ) -> Result<RecoveredView, Problem> {
        let only_in_memory = || Problem::new(Code::Storage, Message::new("error-only-in-memory"));
        let recovery = self.recovery().ok_or_else(only_in_memory)?;
        // Nothing can be written while there is no record.
        let open = std::mem::replace(&mut self.store, Store::closed()?);
        open.close()?;
        let done = recovery.restore(number, with_readable);
        self.store = Store::open(&recovery.record)?;
        self.judge = None;
        done
    }
}

/// Whether a file that is not one of ours stands where a record stood that copies were made of: then its
/// beginning is damaged.
pub(super) fn damaged_beginning(record: &Path) -> Option<Problem> {
    let was_ours = Snapshots::of(record).list().is_ok_and(|there| !there.is_empty());
    let message = Message::new("error-damaged-beginning");
    was_ours.then(|| Problem::new(Code::Damaged, message))
}
