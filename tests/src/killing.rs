//! What a worker that is to be killed says, and the check that kills it reads: one line for each thing.

use std::io::Write;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

/// What a worker can be in the middle of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// Opening a record of this version's form.
    Open,
    /// Making a unit.
    Create,
    /// Answering a question.
    Answer,
    /// Taking the last thing back.
    Undo,
    /// Naming, placing, captioning, removing a photo, beginning another inspection.
    Edit,
    /// Keeping a photo: its files, then its row.
    Photo,
    /// Looking at a bundle, which writes its photos beside their places.
    Look,
    /// Taking the bundle's events in.
    Import,
    /// Taking in a bundle that deletes units, with their photos and the older copies.
    Delete,
    /// Opening a record of the first form.
    Migrate,
    /// Making a copy of the record.
    Snapshot,
    /// Writing a bundle.
    Export,
    /// Putting a copy and what can be read in the record's place.
    Restore,
}

impl Stage {
    /// All of them.
    pub const ALL: [Self; 13] = [
        Self::Open,
        Self::Create,
        Self::Answer,
        Self::Undo,
        Self::Edit,
        Self::Photo,
        Self::Look,
        Self::Import,
        Self::Delete,
        Self::Migrate,
        Self::Snapshot,
        Self::Export,
        Self::Restore,
    ];

    /// Its name, as in `snapshot`.
    ///
    /// # Panics
    /// Never: it is a plain word.
    pub fn id(self) -> String {
        let name = serde_json::to_value(self).expect("a word");
        name.as_str().expect("a word").to_owned()
    }

    /// The stage of a name.
    pub fn of(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|stage| stage.id() == id)
    }
}

/// One line of a worker.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Said {
    /// It goes to work, on a unit where the stage is about one.
    Begins(Stage, Option<Uuid>),
    /// It drew an id, for a unit, an inspection, a photo, an action or an event.
    Drew(Uuid),
    /// What it began returned with success: from now on it may not be lost. After so many microseconds,
    /// with what was returned.
    Did(Stage, u64, Value),
}

impl Said {
    /// Says it, so that it is out of this process when this returns.
    ///
    /// # Panics
    /// When nobody listens any more.
    pub fn out_loud(&self) {
        let line = serde_json::to_string(self).expect("plain data");
        let mut out = std::io::stdout().lock();
        writeln!(out, "{line}").and_then(|()| out.flush()).expect("somebody listens");
    }

    /// Reads a line; nothing where it was cut off.
    pub fn read(line: &str) -> Option<Self> {
        serde_json::from_str(line).ok()
    }
}

/// The folder of a worker: its record with everything beside it.
#[derive(Clone, Debug)]
pub struct Home(pub PathBuf);

impl Home {
    /// The record.
    pub fn record(&self) -> PathBuf {
        self.0.join("record.coldchassis")
    }

    /// The folder of the photos.
    pub fn photos(&self) -> PathBuf {
        self.0.join("photos")
    }

    /// The folder of the copies.
    pub fn snapshots(&self) -> PathBuf {
        self.0.join("snapshots")
    }

    /// The folder that bundles are written to: a person's own.
    pub fn given(&self) -> PathBuf {
        self.0.join("given")
    }

    /// The bundle that is written there, over and over.
    pub fn bundle(&self) -> PathBuf {
        self.given().join("all.bundle")
    }
}

/// What workers are given, in a folder of its own.
#[derive(Clone, Debug)]
pub struct Given(pub PathBuf);

impl Given {
    /// A picture, by its number.
    pub fn picture(&self, number: u32) -> PathBuf {
        self.0.join(format!("picture-{number:02}.jpg"))
    }

    /// A bundle of some units, by its number.
    pub fn bundle(&self, number: u32) -> PathBuf {
        self.0.join(format!("units-{number:02}.bundle"))
    }

    /// The bundle that deletes the units of the bundle of the same number.
    pub fn deleting(&self, number: u32) -> PathBuf {
        self.0.join(format!("gone-{number:02}.bundle"))
    }
}

/// How many pictures there are.
pub const PICTURES: u32 = 60;

/// The number of a copy of the record, and what follows the number of inspections in its name; nothing where
/// a file is no such copy.
pub fn snapshot_name(path: &Path) -> Option<(u32, String)> {
    let name = path.file_name()?.to_str()?;
    let (number, rest) = name.split_once('-')?;
    let after = rest.trim_start_matches(|c: char| c.is_ascii_digit());
    let is_copy = after.ends_with(".coldchassis") && after.len() < rest.len();
    number.parse().ok().filter(|_| is_copy).map(|number| (number, after.to_owned()))
}
