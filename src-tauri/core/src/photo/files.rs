//! The folder of photos: `<sha256>.jpg` and `<sha256>.thumb.jpg`.
//!
//! A file is on the disk, under its own name and whole, before anything may name it: it is written
//! beside, flushed, then renamed. So a row of the record never names a file that is not there.

use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use super::digest::Digest;
use super::ingest::Ingested;

/// What a photo's name ends in.
const PHOTO: &str = ".jpg";
/// What a thumbnail's name ends in.
const THUMBNAIL: &str = ".thumb.jpg";
/// What the name of a file begins with while it is written.
const ARRIVING: &str = ".arriving-";

/// Which of the two pictures of a photo.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Size {
    /// At most 2048 px.
    Full,
    /// At most 320 px.
    Thumbnail,
}

impl Size {
    const fn ending(self) -> &'static str {
        match self {
            Self::Full => PHOTO,
            Self::Thumbnail => THUMBNAIL,
        }
    }
}

/// The folder that photos are kept in.
#[derive(Clone, Debug)]
pub struct Files {
    folder: PathBuf,
}

impl Files {
    /// Photos in a folder; it is made when the first one comes.
    pub const fn of(folder: PathBuf) -> Self {
        Self { folder }
    }

    /// Keeps a photo; it is on the disk when this returns. The same photo again changes nothing.
    ///
    /// # Errors
    /// The folder cannot be written to.
    pub fn put(&self, photo: &Ingested) -> io::Result<()> {
        fs::create_dir_all(&self.folder)?;
        // The photo comes last: where it is, its thumbnail is.
        let thumbnail = self.write(&photo.digest, Size::Thumbnail, &photo.thumbnail)?;
        let full = self.write(&photo.digest, Size::Full, &photo.jpeg)?;
        if thumbnail || full { flush_folder(&self.folder) } else { Ok(()) }
    }

    /// The bytes of a picture; nothing where it is not there.
    ///
    /// # Errors
    /// It is there and cannot be read.
    pub fn read(&self, digest: &Digest, size: Size) -> io::Result<Option<Vec<u8>>> {
        match fs::read(self.path(digest, size)) {
            Ok(bytes) => Ok(Some(bytes)),
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error),
        }
    }

    /// Whether both pictures of a photo are there.
    pub fn has(&self, digest: &Digest) -> bool {
        let is_there = |size| self.path(digest, size).is_file();
        is_there(Size::Full) && is_there(Size::Thumbnail)
    }

    /// Writes a picture beside its place, for [`Files::settle`]; nothing where it is there already as it
    /// should be. Dropped without that, it is gone.
    ///
    /// # Errors
    /// The folder cannot be written to.
    pub fn stage(&self, digest: &Digest, size: Size, bytes: &[u8]) -> io::Result<Option<Staged>> {
        let path = self.path(digest, size);
        if fs::read(&path).is_ok_and(|there| there == bytes) {
            return Ok(None);
        }
        fs::create_dir_all(&self.folder)?;
        let mut file = tempfile::Builder::new().prefix(ARRIVING).tempfile_in(&self.folder)?;
        file.write_all(bytes)?;
        // Closed: a thousand of them may wait, and a process may have a thousand files open.
        let (digest, beside) = (digest.clone(), file.into_temp_path());
        Ok(Some(Staged { digest, size, beside }))
    }

    /// Puts staged pictures in their places; they are on the disk when this returns.
    ///
    /// # Errors
    /// The folder cannot be written to; those that came new before that are taken away again.
    pub fn settle(&self, staged: Vec<Staged>) -> io::Result<()> {
        flush(&staged)?;
        let (mut put, mut is_any) = (Vec::<PathBuf>::new(), false);
        for Staged { digest, size, beside } in staged {
            let path = self.path(&digest, size);
            // One that replaced another belongs to a photo that is here: without it, that would be damaged.
            let is_new = !path.exists();
            if let Err(error) = beside.persist(&path) {
                put.iter().for_each(|path| drop(remove_if_there(path)));
                return Err(error.error);
            }
            if is_new {
                put.push(path);
            }
            is_any = true;
        }
        if is_any { flush_folder(&self.folder) } else { Ok(()) }
    }

    /// Removes both pictures of a photo.
    ///
    /// # Errors
    /// One is there and cannot be removed.
    pub fn remove(&self, digest: &Digest) -> io::Result<()> {
        remove_if_there(&self.path(digest, Size::Full))?;
        remove_if_there(&self.path(digest, Size::Thumbnail))
    }

    /// Removes what no row names and what was never finished, if it was last written before a moment.
    /// Files of other names are left alone. Tells how many went.
    ///
    /// # Errors
    /// The folder cannot be read, or a file cannot be removed.
    pub fn sweep(&self, named: &BTreeSet<Digest>, before: SystemTime) -> io::Result<usize> {
        self.sweep_those(|name| is_loose(name, named), before)
    }

    /// As [`Files::sweep`], but only what was never finished.
    ///
    /// # Errors
    /// As [`Files::sweep`].
    pub fn sweep_unfinished(&self, before: SystemTime) -> io::Result<usize> {
        self.sweep_those(|name| name.starts_with(ARRIVING), before)
    }

    fn sweep_those(
        &self,
        is_meant: impl Fn(&str) -> bool,
        before: SystemTime,
    ) -> io::Result<usize> {
        let entries = match fs::read_dir(&self.folder) {
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(0),
            entries => entries?,
        };
        let mut count = 0;
        for entry in entries {
            let entry = entry?;
            let name = entry.file_name();
            let goes = name.to_str().is_some_and(&is_meant);
            // A younger file may be one whose row is about to be written.
            if goes && entry.metadata()?.modified()? < before {
                remove_if_there(&entry.path())?;
                count += 1;
            }
        }
        Ok(count)
    }

    fn path(&self, digest: &Digest, size: Size) -> PathBuf {
        self.folder.join(format!("{digest}{}", size.ending()))
    }

    /// Writes a picture, unless it is there as it should be. Tells whether it was written.
    fn write(&self, digest: &Digest, size: Size, bytes: &[u8]) -> io::Result<bool> {
        let path = self.path(digest, size);
        // Compared whole: a file damaged by a worn card is mended by taking the photo in again.
        if fs::read(&path).is_ok_and(|there| there == bytes) {
            return Ok(false);
        }
        let mut file = tempfile::Builder::new().prefix(ARRIVING).tempfile_in(&self.folder)?;
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        file.persist(&path).map_err(|error| error.error)?;
        Ok(true)
    }
}

/// A picture that is written but not in its place.
#[derive(Debug)]
pub struct Staged {
    digest: Digest,
    size: Size,
    beside: tempfile::TempPath,
}

impl Staged {
    /// The photo that it is of.
    pub const fn digest(&self) -> &Digest {
        &self.digest
    }
}

/// Threads that flush files: a file system writes several waiting files in one go.
const FLUSHING: usize = 8;

/// Makes written files outlive a dead battery.
fn flush(staged: &[Staged]) -> io::Result<()> {
    let flush_all = |staged: &[Staged]| -> io::Result<()> {
        for picture in staged {
            // Windows flushes only what may be written.
            File::options().write(true).open(&picture.beside)?.sync_all()?;
        }
        Ok(())
    };
    let share = staged.len().div_ceil(FLUSHING).max(1);
    std::thread::scope(|scope| {
        let mut waiting = Vec::new();
        for part in staged.chunks(share) {
            match std::thread::Builder::new().spawn_scoped(scope, move || flush_all(part)) {
                Ok(thread) => waiting.push(thread),
                // Where the system gives no thread, it is flushed here.
                Err(_) => flush_all(part)?,
            }
        }
        let failed = || io::Error::from(ErrorKind::Other);
        waiting.into_iter().try_for_each(|thread| thread.join().unwrap_or_else(|_| Err(failed())))
    })
}

fn is_loose(name: &str, named: &BTreeSet<Digest>) -> bool {
    // The longer ending first: it ends in the shorter one.
    let stem = name.strip_suffix(THUMBNAIL).or_else(|| name.strip_suffix(PHOTO));
    match stem.and_then(Digest::parse) {
        Some(digest) => !named.contains(&digest),
        None => name.starts_with(ARRIVING),
    }
}

fn remove_if_there(path: &Path) -> io::Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// Makes new names outlive a dead battery; Windows does so by itself and cannot open a folder.
fn flush_folder(folder: &Path) -> io::Result<()> {
    if cfg!(unix) { File::open(folder)?.sync_all() } else { Ok(()) }
}
