//! Writes a bundle.

use std::collections::BTreeSet;
use std::io::{self, BufWriter, Seek, Write};
use std::path::Path;

use uuid::Uuid;
use zip::result::ZipError;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

use super::beside::beside;
use super::error::BundleError;
use super::lines::{Measured, is_of};
use super::manifest::{Manifest, Part};
use super::parts::{EVENTS, MANIFEST, PartName};
use crate::photo::{Digest, Files, Size};
use crate::store::{Change, Event, Leaving, PhotoRow, Store, StoreError};

/// Level of packing for events: the quickest, which makes them a tenth; more time would win little.
const LEVEL: i64 = 1;

/// What is in a bundle that was written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Exported {
    /// Units, with those that were deleted and leave only a tombstone.
    pub units: u64,
    /// Of those, the deleted ones.
    pub deleted: u64,
    /// Events.
    pub events: u64,
    /// Photos.
    pub photos: u64,
    /// Photos that stand in a unit but whose file is gone or damaged.
    pub lost: u64,
    /// Bytes of the bundle.
    pub bytes: u64,
}

/// Writes a bundle to a file, whole or not at all.
///
/// `at` is the time, UTC milliseconds.
///
/// # Errors
/// The record or a photo cannot be read, or the file not be written; what stood under that name is left.
pub fn export(
    store: &Store,
    photos: Option<&Files>,
    which: &Leaving,
    at: i64,
    to: &Path,
) -> Result<Exported, BundleError> {
    let beside = beside(to)?;
    let mut file = BufWriter::with_capacity(1 << 18, beside.as_file());
    let exported = write_bundle(store, photos, which, at, &mut file)?;
    file.flush()?;
    drop(file);
    beside.as_file().sync_all()?;
    let bytes = beside.as_file().metadata()?.len();
    beside.persist(to).map_err(|error| error.error)?;
    Ok(Exported { bytes, ..exported })
}

/// Writes a bundle anywhere.
///
/// # Errors
/// As [`export`].
pub fn write_bundle(
    store: &Store,
    photos: Option<&Files>,
    which: &Leaving,
    at: i64,
    to: impl Write + Seek,
) -> Result<Exported, BundleError> {
    store.reading(|store| {
        let mut bundle = Writing { zip: ZipWriter::new(to), manifest: Manifest::new(at) };
        let mut exported = Exported::default();
        let named = bundle.events(store, which, &mut exported)?;
        let standing = store.photos_leaving(which)?;
        for digest in standing.iter().filter_map(|text| Digest::parse(text)) {
            match bundle.photo(photos, &digest)? {
                true => exported.photos += 1,
                false => exported.lost += 1,
            }
        }
        bundle.finish(named)?;
        Ok(exported)
    })
}

struct Writing<W: Write + Seek> {
    zip: ZipWriter<W>,
    manifest: Manifest,
}

impl<W: Write + Seek> Writing<W> {
    /// Writes the events. Gives the photos that they name.
    fn events(
        &mut self,
        store: &Store,
        which: &Leaving,
        exported: &mut Exported,
    ) -> Result<BTreeSet<String>, BundleError> {
        let packed = options(CompressionMethod::Deflated).compression_level(Some(LEVEL));
        // Nobody knows beforehand how long they get.
        self.zip.start_file(EVENTS, packed.large_file(true)).map_err(zipping)?;
        let mut lines = Measured::new(BufWriter::with_capacity(1 << 16, &mut self.zip));
        let (mut units, mut deleted) = (BTreeSet::<Uuid>::new(), BTreeSet::<Uuid>::new());
        let mut named = BTreeSet::new();
        for event in store.leaving(which) {
            let event = event?;
            serde_json::to_writer(&mut lines, &event).map_err(io::Error::from)?;
            lines.write_all(b"\n")?;
            self.manifest.events += 1;
            units.insert(event.unit);
            deleted.extend(event.is_tombstone().then_some(event.unit));
            self.manifest.lost.extend(store.lost_of(&event)?);
            named.extend(photo_of(&event));
        }
        lines.flush()?;
        let (bytes, sha256) = lines.finish();
        self.manifest.units = units.len() as u64;
        exported.units = self.manifest.units;
        exported.deleted = deleted.len() as u64;
        exported.events = self.manifest.events;
        self.manifest.parts.push(Part { name: EVENTS.to_owned(), bytes, sha256 });
        Ok(named)
    }

    /// Writes both pictures of a photo, or neither where one is gone or is not what its name says.
    fn photo(&mut self, files: Option<&Files>, digest: &Digest) -> Result<bool, BundleError> {
        let read = |size| files.map_or(Ok(None), |files| files.read(digest, size));
        let (Some(full), Some(small)) = (read(Size::Full)?, read(Size::Thumbnail)?) else {
            return Ok(false);
        };
        if !is_of(&full, digest.as_str()) {
            return Ok(false);
        }
        self.part(PartName::of_picture(digest, Size::Full), &full, digest.to_string())?;
        let sha256 = Digest::of(&small).to_string();
        self.part(PartName::of_picture(digest, Size::Thumbnail), &small, sha256)?;
        Ok(true)
    }

    fn part(&mut self, name: String, bytes: &[u8], sha256: String) -> Result<(), BundleError> {
        let stored = options(CompressionMethod::Stored);
        self.zip.start_file(name.as_str(), stored).map_err(zipping)?;
        self.zip.write_all(bytes)?;
        self.manifest.parts.push(Part { name, bytes: bytes.len() as u64, sha256 });
        Ok(())
    }

    /// Writes the manifest, which stands last because only now it is known.
    fn finish(mut self, named: BTreeSet<String>) -> Result<(), BundleError> {
        let parts: BTreeSet<&String> =
            self.manifest.parts.iter().map(|part| &part.sha256).collect();
        let left_out = named.iter().filter(|sha256| !parts.contains(sha256)).cloned().collect();
        self.manifest.left_out = left_out;
        let packed = options(CompressionMethod::Deflated).compression_level(Some(LEVEL));
        self.zip.start_file(MANIFEST, packed).map_err(zipping)?;
        let mut text = BufWriter::new(&mut self.zip);
        serde_json::to_writer_pretty(&mut text, &self.manifest).map_err(io::Error::from)?;
        text.flush()?;
        drop(text);
        self.zip.finish().map_err(zipping)?.flush()?;
        Ok(())
    }
}

/// The photo that an event adds.
fn photo_of(event: &Event) -> Option<String> {
    match event.typed() {
        Change::PhotoAdded { row, .. } => PhotoRow::read(&row).map(|row| row.sha256),
        _ => None,
    }
}

/// Every part has the same time: the same record gives the same bytes.
fn options(method: CompressionMethod) -> SimpleFileOptions {
    SimpleFileOptions::default()
        .compression_method(method)
        .last_modified_time(DateTime::default())
        .unix_permissions(0o644)
}

fn zipping(error: ZipError) -> BundleError {
    match error {
        ZipError::Io(error) => BundleError::Io(error),
        other => BundleError::Store(StoreError::Io(io::Error::other(other.to_string()))),
    }
}
