//! Bundles for a shell: written to and read from files that a person chose.

use std::collections::BTreeSet;
use std::io::ErrorKind;
use std::path::Path;

use serde::Serialize;
use uuid::Uuid;

use super::error::{Code, Problem};
use super::giving::barred;
use super::session::Workbench;
use crate::exchange::{Arrived, BundleError, Exported, arrive, export};
use crate::photo::Files;
use crate::store::{Leaving, Snapshots, Store, StoreError};
use crate::words::{Message, Words};

/// A bundle that was written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct BundleView {
    /// Units in it, but for deleted ones.
    #[ts(type = "number")]
    pub units: u64,
    /// Events in it.
    #[ts(type = "number")]
    pub events: u64,
    /// Photos in it.
    #[ts(type = "number")]
    pub photos: u64,
    /// Its length, bytes.
    #[ts(type = "number")]
    pub bytes: u64,
    /// In a sentence or two.
    pub says: Vec<String>,
}

/// A bundle that was taken in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct ImportView {
    /// The units that changed.
    pub units: Vec<Uuid>,
    /// Events that are new here.
    #[ts(type = "number")]
    pub new: u64,
    /// Events that were known already.
    #[ts(type = "number")]
    pub known: u64,
    /// Photos that are new here.
    #[ts(type = "number")]
    pub photos: u64,
    /// In a sentence or two.
    pub says: Vec<String>,
}

/// A bundle to be written, beside the workbench.
pub struct ExportWork {
    reader: Store,
    files: Option<Files>,
    which: Leaving,
    at: i64,
    locale: String,
}

impl ExportWork {
    /// Writes the bundle, whole or not at all.
    ///
    /// # Errors
    /// It cannot be written, or the record not be read.
    pub fn run(self, to: &Path) -> Result<BundleView, Problem> {
        let made = export(&self.reader, self.files.as_ref(), &self.which, self.at, to);
        Ok(bundle_view(&made.map_err(unwritten)?, &Words::of(&self.locale)))
    }
}

/// A bundle whose photos were looked at; its events come next.
pub struct ImportWork {
    arrived: Arrived,
}

impl Workbench {
    /// A bundle of some units, or of all.
    ///
    /// # Errors
    /// There is no such unit, or the record is only in memory.
    pub fn export_work(&self, units: Option<Vec<Uuid>>) -> Result<ExportWork, Problem> {
        let which = match units {
            None => Leaving::All,
            Some(units) => Leaving::Units(self.known(units)?),
        };
        let only_in_memory = || Problem::new(Code::Storage, Message::new("error-only-in-memory"));
        Ok(ExportWork {
            reader: self.store.reader()?.ok_or_else(only_in_memory)?,
            files: self.around.photos.clone().map(Files::of),
            which,
            at: (self.around.clock)(),
            locale: self.around.locale.clone(),
        })
    }

    fn known(&self, units: Vec<Uuid>) -> Result<BTreeSet<Uuid>, Problem> {
        for unit in &units {
            self.store.unit(*unit)?.ok_or_else(Problem::no_unit)?;
        }
        Ok(units.into_iter().collect())
    }

    /// Deletes a unit for good, with all that was found of it, its photos, and the copies of the record that
    /// hold them. Only that there was one is kept, so that no bundle brings it back.
    ///
    /// # Errors
    /// There is no such unit, or the record cannot be written; nothing is deleted then.
    pub fn delete_unit(&mut self, unit: Uuid) -> Result<(), Problem> {
        self.store.unit(unit)?.ok_or_else(Problem::no_unit)?;
        let before = self.store.photo_digests()?;
        let stamp = self.stamp();
        self.store.delete_unit(&stamp, unit, &mut self.around.ids)?;
        self.forget(&before);
        Ok(())
    }

    /// Removes what a deletion leaves beside the record: files of photos, and copies with what was deleted.
    fn forget(&self, photos: &BTreeSet<String>) {
        self.free_files(photos);
        if let Some(record) = &self.record {
            // The deletion is done whatever comes of this; the next snapshot tries again.
            self.store.renew_snapshots(&Snapshots::of(record)).ok();
        }
    }

    /// The folder of photos, which a bundle's are written to before anything else is done with it.
    ///
    /// # Errors
    /// There is none.
    pub fn photo_files(&self) -> Result<Files, Problem> {
        self.files()
    }

    /// Takes in a bundle that was looked at.
    ///
    /// # Errors
    /// Why it is refused; nothing is changed then.
    pub fn keep_bundle(&mut self, work: ImportWork) -> Result<ImportView, Problem> {
        let files = self.files()?;
        let before = self.store.photo_digests()?;
        let taken = work.arrived.take_in(&mut self.store, &files, (self.around.clock)())?;
        if taken.deleted > 0 {
            self.forget(&before);
        }
        let says = import_says(&taken, self.words());
        Ok(ImportView {
            units: taken.units.into_iter().collect(),
            new: taken.new,
            known: taken.known,
            photos: taken.photos,
            says,
        })
    }
}

/// Looks at a bundle and writes its photos beside their places; needs no record.
///
/// # Errors
/// Why it is refused; nothing is changed then.
pub fn look_at_bundle(from: &Path, files: &Files) -> Result<ImportWork, Problem> {
    Ok(ImportWork { arrived: arrive(files, from)? })
}

pub(super) fn bundle_view(made: &Exported, words: &Words) -> BundleView {
    let units = made.units - made.deleted;
    let whole = Message::new("bundle-made").count("units", units).count("photos", made.photos);
    let deleted = Message::new("bundle-made-deleted").count("units", made.deleted);
    let lost = Message::new("bundle-made-lost").count("photos", made.lost);
    let rest = [some(made.deleted, deleted), some(made.lost, lost)];
    let says = std::iter::once(whole).chain(rest.into_iter().flatten());
    BundleView {
        units,
        events: made.events,
        photos: made.photos,
        bytes: made.bytes,
        says: says.map(|message| words.say(&message)).collect(),
    }
}

fn import_says(taken: &crate::exchange::Imported, words: &Words) -> Vec<String> {
    // A photo whose file was gone here can be new though its event is known.
    let whole = if taken.new == 0 && taken.photos == 0 {
        Message::new("bundle-nothing-new")
    } else {
        Message::new("bundle-taken-in")
            .count("units", taken.units.len() as u64)
            .count("photos", taken.photos)
    };
    let late = Message::new("bundle-late").count("events", taken.late);
    let without = Message::new("bundle-without").count("photos", taken.without_photo);
    let deleted = Message::new("bundle-deleted").count("units", taken.deleted);
    let rest =
        [some(taken.deleted, deleted), some(taken.late, late), some(taken.without_photo, without)];
    std::iter::once(whole).chain(rest.into_iter().flatten()).map(|m| words.say(&m)).collect()
}

fn some(count: u64, message: Message) -> Option<Message> {
    (count > 0).then_some(message)
}

/// Why a bundle could not be written: most often for want of room in the place that was chosen for it.
pub(super) fn unwritten(error: BundleError) -> Problem {
    let reason = match &error {
        BundleError::Io(error) => barred(error.kind()),
        _ => None,
    };
    reason.map_or_else(|| error.into(), |message| Problem::new(Code::Storage, message))
}

impl From<BundleError> for Problem {
    fn from(error: BundleError) -> Self {
        if error.is_refusal() {
            let message = Message::new("bundle-refused").message("reason", error.message());
            return Self::new(Code::BadInput, message);
        }
        match error {
            BundleError::Store(error) => error.into(),
            // Only what is written finds no room: the photos of a bundle, in their folder.
            BundleError::Io(error) if has_no_room(error.kind()) => StoreError::from(error).into(),
            other => {
                let message = Message::new("bundle-failed").message("reason", other.message());
                Self::new(Code::Storage, message)
            }
        }
    }
}

const fn has_no_room(kind: ErrorKind) -> bool {
    matches!(
        kind,
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded | ErrorKind::ReadOnlyFilesystem
    )
}

#[cfg(test)]
mod tests {
    use std::io;

    use super::*;

    fn of(kind: ErrorKind) -> BundleError {
        BundleError::Io(io::Error::from(kind))
    }

    #[test]
    fn no_room_is_said_of_the_place_that_has_none() {
        for (kind, here, there) in [
            (ErrorKind::StorageFull, "error-no-room", "file-no-room"),
            (ErrorKind::QuotaExceeded, "error-no-room", "file-no-room"),
            (ErrorKind::ReadOnlyFilesystem, "error-read-only", "file-barred"),
            (ErrorKind::PermissionDenied, "bundle-failed", "file-barred"),
            (ErrorKind::NotFound, "bundle-failed", "file-no-folder"),
            (ErrorKind::Other, "bundle-failed", "bundle-failed"),
        ] {
            let (taken, given) = (Problem::from(of(kind)), unwritten(of(kind)));
            assert_eq!((taken.code, taken.message.id.as_str()), (Code::Storage, here), "{kind:?}");
            assert_eq!((given.code, given.message.id.as_str()), (Code::Storage, there), "{kind:?}");
        }
        let refused = unwritten(BundleError::Store(StoreError::NoRoom));
        assert_eq!(refused.message.id, "error-no-room", "the record's own folder has none");
    }

    #[test]
    fn one_and_several_are_told_apart_and_deleted_units_are_not_counted() {
        let words = Words::of("en");
        let made = Exported { units: 3, deleted: 2, photos: 1, lost: 1, ..Exported::default() };
        let view = bundle_view(&made, &words);
        assert_eq!(view.units, 1);
        assert_eq!(
            view.says,
            [
                "The bundle has one unit and one photo.",
                "It also tells of 2 deleted units, so that they go where it is taken in.",
                "One photo is not in it: its file is gone or damaged on this device.",
            ]
        );
        let mended = crate::exchange::Imported { photos: 2, known: 9, ..Default::default() };
        assert_eq!(import_says(&mended, &words), ["Taken in: no unit changed, 2 new photos."]);
    }
}
