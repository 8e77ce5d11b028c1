//! Takes a bundle in: everything is looked at first, then all of it is kept in one go.
//!
//! The order is fixed: what the zip says of itself, the manifest, each photo written beside its place,
//! then the events in one transaction, and at its end the photos in their places. What fails on the way
//! leaves the record and the photos as they were.

use std::collections::BTreeSet;
use std::fs::File;
use std::io::Read;
use std::path::Path;

use uuid::Uuid;

use super::archive::Archive;
use super::error::BundleError;
use super::lines::{Lines, is_of};
use super::manifest::{Manifest, Part};
use super::parts::{EVENTS, PartName};
use super::{MOST_EVENTS, MOST_PHOTOS, meaning};
use crate::photo::{Digest, Files, MOST_KEPT_BYTES, Size, Staged, check_kept};
use crate::store::{Change, Event, PhotoRow, Store};

/// What taking a bundle in came to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Imported {
    /// Units that changed, also those that only got another number, and those that are gone.
    pub units: BTreeSet<Uuid>,
    /// Events that are new here.
    pub new: u64,
    /// Events that were known already.
    pub known: u64,
    /// Events of units that were deleted here; they were left aside.
    pub late: u64,
    /// Units that were deleted elsewhere, and so here too.
    pub deleted: u64,
    /// Photos that are new here.
    pub photos: u64,
    /// Photos that events name but that the bundle left out and that are not here either.
    pub without_photo: u64,
}

/// A bundle that was looked at, its photos written beside their places. Dropped, it leaves nothing.
pub struct Arrived {
    archive: Archive,
    manifest: Manifest,
    photos: Photos,
}

/// Looks at a bundle and writes its photos beside their places: the long part, which needs no record.
///
/// # Errors
/// Why it is refused, or what could not be read or written.
pub fn arrive(files: &Files, from: &Path) -> Result<Arrived, BundleError> {
    let mut archive = Archive::open(File::open(from)?)?;
    let manifest = archive.manifest()?;
    if manifest.events > MOST_EVENTS || manifest.parts.len() as u64 > 2 * MOST_PHOTOS + 1 {
        return Err(BundleError::TooMany);
    }
    let photos = Photos::stage(&mut archive, &manifest, files)?;
    Ok(Arrived { archive, manifest, photos })
}

impl Arrived {
    /// Takes it in; `now` is this device's time, UTC milliseconds.
    ///
    /// # Errors
    /// As [`import`].
    pub fn take_in(
        mut self,
        store: &mut Store,
        files: &Files,
        now: i64,
    ) -> Result<Imported, BundleError> {
        take_in(store, files, &mut self.archive, &self.manifest, self.photos, now)
    }
}

/// Takes a bundle in; `now` is this device's time, UTC milliseconds.
///
/// # Errors
/// Why it is refused, or what could not be read or written. Nothing is changed then.
pub fn import(
    store: &mut Store,
    files: &Files,
    from: &Path,
    now: i64,
) -> Result<Imported, BundleError> {
    arrive(files, from)?.take_in(store, files, now)
}

/// The photos of a bundle, written but not in their places.
struct Photos {
    in_bundle: BTreeSet<String>,
    staged: Vec<Staged>,
}

impl Photos {
    fn stage(
        archive: &mut Archive,
        manifest: &Manifest,
        files: &Files,
    ) -> Result<Self, BundleError> {
        let mut photos = Self { in_bundle: BTreeSet::new(), staged: Vec::new() };
        let parts = manifest.by_name();
        for part in &manifest.parts {
            let Some(PartName::Picture(digest, size)) = PartName::parse(&part.name) else {
                continue;
            };
            let bytes = picture(archive, part, &digest, size)?;
            photos.staged.extend(files.stage(&digest, size, &bytes)?);
            let other = match size {
                Size::Full => Size::Thumbnail,
                Size::Thumbnail => Size::Full,
            };
            // A photo and its thumbnail come together.
            let other = PartName::of_picture(&digest, other);
            if !parts.contains_key(other.as_str()) {
                return Err(BundleError::Missing(other));
            }
            photos.in_bundle.insert(digest.to_string());
        }
        Ok(photos)
    }

    /// Puts those in their places that events name.
    fn settle(self, named: &BTreeSet<String>, files: &Files) -> Result<u64, BundleError> {
        let wanted = |staged: &Staged| named.contains(staged.digest().as_str());
        let (staged, _left): (Vec<_>, Vec<_>) = self.staged.into_iter().partition(wanted);
        let new: BTreeSet<String> = staged.iter().map(|one| one.digest().to_string()).collect();
        files.settle(staged)?;
        Ok(new.len() as u64)
    }
}

fn picture(
    archive: &mut Archive,
    part: &Part,
    digest: &Digest,
    size: Size,
) -> Result<Vec<u8>, BundleError> {
    let bytes = archive.read(&part.name, MOST_KEPT_BYTES)?;
    let is_named = size == Size::Thumbnail || part.sha256 == digest.as_str();
    if !is_named || bytes.len() as u64 != part.bytes || !is_of(&bytes, &part.sha256) {
        return Err(BundleError::WrongHash(part.name.clone()));
    }
    let name = || part.name.clone();
    check_kept(&bytes, size).map_err(|error| BundleError::BadPhoto { name: name(), error })?;
    Ok(bytes)
}

fn take_in(
    store: &mut Store,
    files: &Files,
    archive: &mut Archive,
    manifest: &Manifest,
    photos: Photos,
    now: i64,
) -> Result<Imported, BundleError> {
    let lines = Lines::new(archive.part(EVENTS)?);
    let here = |sha256: &String| Digest::parse(sha256).is_some_and(|digest| files.has(&digest));
    let mut events = Events {
        lines: Some(lines),
        manifest,
        in_bundle: &photos.in_bundle.clone(),
        here: &here,
        now,
        units: BTreeSet::new(),
        photos: BTreeSet::new(),
    };
    let mut settled = 0;
    let taken = store.union(&mut events, &manifest.lost, |arrived| {
        settled = photos.settle(arrived, files)?;
        Ok::<_, BundleError>(())
    })?;
    let without = |sha256: &&String| !events.in_bundle.contains(*sha256) && !here(sha256);
    Ok(Imported {
        units: taken.units,
        new: taken.new as u64,
        known: taken.known as u64,
        late: taken.late as u64,
        deleted: taken.deleted as u64,
        photos: settled,
        without_photo: events.photos.iter().filter(without).count() as u64,
    })
}

/// The events of a bundle, each looked at as it passes, and all of them at their end.
struct Events<'a, R> {
    /// Nothing after the end, or after a fault.
    lines: Option<Lines<R>>,
    manifest: &'a Manifest,
    in_bundle: &'a BTreeSet<String>,
    here: &'a dyn Fn(&String) -> bool,
    now: i64,
    units: BTreeSet<Uuid>,
    /// The photos that they name.
    photos: BTreeSet<String>,
}

impl<R: Read> Events<'_, R> {
    fn read(&mut self) -> Result<Option<Event>, BundleError> {
        let Some(lines) = &mut self.lines else {
            return Ok(None);
        };
        let Some(event) = lines.next()? else {
            return self.end().map(|()| None);
        };
        meaning::check(&event, lines.line(), self.now)?;
        self.units.insert(event.unit);
        if let Change::PhotoAdded { row, .. } = event.typed() {
            self.photos.extend(PhotoRow::read(&row).map(|row| row.sha256));
        }
        Ok(Some(event))
    }

    /// Holds what passed against the manifest.
    fn end(&mut self) -> Result<(), BundleError> {
        let Some(lines) = self.lines.take() else {
            return Ok(());
        };
        let part = self.manifest.events_part()?;
        let found = lines.line();
        if (part.bytes, part.sha256.clone()) != lines.finish() {
            return Err(BundleError::WrongHash(part.name.clone()));
        }
        let units = self.units.len() as u64;
        for (said, found) in [(self.manifest.events, found), (self.manifest.units, units)] {
            if said != found {
                return Err(BundleError::WrongCount { said, found });
            }
        }
        self.photos()
    }

    /// No photo may come without an event, and no event name one that is nowhere.
    fn photos(&self) -> Result<(), BundleError> {
        let left_out: BTreeSet<&String> = self.manifest.left_out.iter().collect();
        let loose = self.in_bundle.difference(&self.photos).next();
        let nowhere = |sha256: &&String| {
            let comes = self.in_bundle.contains(*sha256) || left_out.contains(*sha256);
            !comes && !(self.here)(sha256)
        };
        let at_fault = loose.or_else(|| self.photos.iter().find(nowhere));
        at_fault.map_or(Ok(()), |sha256| Err(BundleError::Photo(sha256.clone())))
    }
}

impl<R: Read> Iterator for Events<'_, R> {
    type Item = Result<Event, BundleError>;

    fn next(&mut self) -> Option<Self::Item> {
        let read = self.read();
        if read.is_err() {
            self.lines = None;
        }
        read.transpose()
    }
}
