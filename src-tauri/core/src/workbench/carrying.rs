//! Bundles for a shell: written to and read from files that a person chose.

use std::collections::BTreeSet;
use std::path::Path;

use serde::Serialize;
use uuid::Uuid;

use super::error::{Code, Problem};
use super::session::Workbench;
use crate::exchange::{Arrived, BundleError, Exported, arrive, export};
use crate::photo::Files;
use crate::store::{Leaving, Snapshots, Store};
use crate::words::{Message, Words};

/// A bundle that was written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct BundleView {
    /// Units in it.
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
        let made = export(&self.reader, self.files.as_ref(), &self.which, self.at, to)?;
        Ok(bundle_view(&made, &Words::of(&self.locale)))
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
            self.free_files(&before);
            if let Some(record) = &self.record {
                // The deletion is done whatever comes of this; the next snapshot tries again.
                self.store.renew_snapshots(&Snapshots::of(record)).ok();
            }
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
    let whole = Message::new("bundle-made")
        .text("units", made.units.to_string())
        .text("photos", made.photos.to_string());
    let lost = (made.lost > 0)
        .then(|| Message::new("bundle-made-lost").text("photos", made.lost.to_string()));
    BundleView {
        units: made.units,
        events: made.events,
        photos: made.photos,
        bytes: made.bytes,
        says: std::iter::once(whole).chain(lost).map(|message| words.say(&message)).collect(),
    }
}

fn import_says(taken: &crate::exchange::Imported, words: &Words) -> Vec<String> {
    let some = |count: u64, message: Message| (count > 0).then_some(message);
    let whole = if taken.new == 0 {
        Message::new("bundle-nothing-new")
    } else {
        Message::new("bundle-taken-in")
            .text("units", taken.units.len().to_string())
            .text("photos", taken.photos.to_string())
    };
    let late = Message::new("bundle-late").text("events", taken.late.to_string());
    let without = Message::new("bundle-without").text("photos", taken.without_photo.to_string());
    let rest = [some(taken.late, late), some(taken.without_photo, without)];
    std::iter::once(whole).chain(rest.into_iter().flatten()).map(|m| words.say(&m)).collect()
}

impl From<BundleError> for Problem {
    fn from(error: BundleError) -> Self {
        if error.is_refusal() {
            let message = Message::new("bundle-refused").message("reason", error.message());
            return Self::new(Code::BadInput, message);
        }
        match error {
            BundleError::Store(error) => error.into(),
            other => {
                let message = Message::new("bundle-failed").message("reason", other.message());
                Self::new(Code::Storage, message)
            }
        }
    }
}
