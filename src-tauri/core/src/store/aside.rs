//! Keeps files that were replaced, in a folder beside the record, so that no choice of a worried person is final.
//!
//! Each in a folder of its own under a number that counts up. Tries that follow each other are one series:
//! its first file is the one that was found damaged, and stays as long as the series goes on.

use super::error::{Result, StoreError};
use super::snapshot::flush_folder;
use std::fs::{self, DirEntry, File};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};
use tempfile::TempDir;

/// What the name of SQLite's write-ahead log ends in.
pub(super) const LOG: &str = "-wal";
/// What that of its rollback journal ends in: one lies there where a migration was cut off.
pub(super) const JOURNAL: &str = "-journal";
/// The folder's name, beside the record.
pub(super) const FOLDER: &str = "damaged";
/// What a file is called in its own folder.
const FILE: &str = "damaged.coldchassis";
/// What the name of a folder begins with while it is filled.
pub(super) const ARRIVING: &str = ".arriving-";
/// How many are kept; the first of the series besides.
const KEPT: usize = 3;
/// Tries that are no more than so many days apart are one series.
const SERIES_DAYS: u64 = 7;

/// Whether a file that was replaced lies beside a record. Where that cannot be looked for, one may.
pub fn is_replaced_kept(record: &Path) -> bool {
    match fs::read_dir(Aside::of(record).folder) {
        Err(error) => error.kind() != ErrorKind::NotFound,
        Ok(mut entries) => entries.any(|entry| entry.map_or(true, |entry| !is_arriving(&entry))),
    }
}

/// The folder of files that were replaced.
pub(super) struct Aside {
    folder: PathBuf,
}

/// A file that was copied, and is gone again unless it is kept.
pub(super) struct Copied {
    folder: TempDir,
}

impl Copied {
    pub fn file(&self) -> PathBuf {
        self.folder.path().join(FILE)
    }
}

/// A file that is kept.
struct Kept {
    number: u32,
    path: PathBuf,
    at: SystemTime,
}

impl Aside {
    pub fn of(record: &Path) -> Self {
        Self { folder: record.parent().unwrap_or_else(|| Path::new("")).join(FOLDER) }
    }

    /// Copies a record and what SQLite keeps beside it; it is on the disk when this returns.
    pub fn copy(&self, record: &Path) -> Result<Copied> {
        fs::create_dir_all(&self.folder)?;
        self.clear();
        let folder = tempfile::Builder::new().prefix(ARRIVING).tempdir_in(&self.folder)?;
        copy_into(record, folder.path())?;
        flush_folder(folder.path())?;
        Ok(Copied { folder })
    }

    /// Keeps what was copied under the next number, and lets old ones go.
    pub fn keep(&self, copied: Copied) -> Result<()> {
        let last = self.list()?.first().map_or(0, |kept| kept.number);
        let path = self.folder.join(format!("{:06}", last.saturating_add(1)));
        fs::rename(copied.folder.path(), path)?;
        flush_folder(&self.folder)?;
        let kept = self.list()?;
        let times: Vec<SystemTime> = kept.iter().map(|kept| kept.at).collect();
        for old in surplus(&times).into_iter().filter_map(|at| kept.get(at)) {
            // What cannot be removed now, the next recovery removes.
            fs::remove_dir_all(&old.path).ok();
        }
        Ok(())
    }

    /// What is kept, the newest first.
    fn list(&self) -> Result<Vec<Kept>> {
        let read = |entry: DirEntry| {
            let number = entry.file_name().to_str()?.parse().ok()?;
            let at = entry.metadata().ok().filter(fs::Metadata::is_dir)?.modified().ok()?;
            Some(Kept { number, path: entry.path(), at })
        };
        let entries = fs::read_dir(&self.folder)?;
        let mut kept: Vec<Kept> = entries.filter_map(|entry| read(entry.ok()?)).collect();
        kept.sort_by_key(|kept| std::cmp::Reverse(kept.number));
        Ok(kept)
    }

    /// Removes what a recovery that was cut off left half-copied.
    fn clear(&self) {
        let entries = fs::read_dir(&self.folder).into_iter().flatten().flatten();
        for entry in entries.filter(is_arriving) {
            fs::remove_dir_all(entry.path()).ok();
        }
    }
}

fn is_arriving(entry: &DirEntry) -> bool {
    entry.file_name().to_string_lossy().starts_with(ARRIVING)
}

/// Copies a record, its log and its journal into a folder.
pub(super) fn copy_into(record: &Path, folder: &Path) -> Result<PathBuf> {
    let to = folder.join(FILE);
    for side in ["", LOG, JOURNAL] {
        let copy = beside(&to, side);
        match fs::copy(beside(record, side), &copy) {
            Err(error) if error.kind() == ErrorKind::NotFound => {}
            Err(error) => return Err(StoreError::from(error)),
            Ok(_) => File::options().write(true).open(copy)?.sync_all()?,
        }
    }
    Ok(to)
}

/// A file whose name goes on after that of another.
pub(super) fn beside(file: &Path, ending: &str) -> PathBuf {
    let mut name = file.as_os_str().to_owned();
    name.push(ending);
    name.into()
}

/// Which of the kept may go, by when they were kept, the newest first.
fn surplus(times: &[SystemTime]) -> Vec<usize> {
    let series = Duration::from_secs(SERIES_DAYS * 24 * 3600);
    // A clock that was set back parts nothing.
    let is_near = |(later, earlier): &(&SystemTime, &SystemTime)| {
        later.duration_since(**earlier).map_or(true, |apart| apart <= series)
    };
    let first = times.iter().zip(times.iter().skip(1)).take_while(is_near).count();
    (KEPT..times.len()).filter(|at| *at != first).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    /// Days from a start, the newest first.
    fn kept(days: &[u64]) -> Vec<usize> {
        let time = |day: &u64| SystemTime::UNIX_EPOCH + Duration::from_secs((100 + day) * 86_400);
        surplus(&days.iter().map(time).collect::<Vec<_>>())
    }

    #[test]
    fn the_last_and_the_first_of_the_series_stay() {
        assert!(kept(&[]).is_empty());
        assert!(kept(&[2, 1, 0]).is_empty());
        assert!(kept(&[3, 2, 1, 0]).is_empty(), "the fourth is the first of the series");
        assert_eq!(kept(&[4, 3, 2, 1, 0]), [3]);
        assert!(kept(&[21, 14, 7, 0]).is_empty(), "a week apart is still a series");
    }

    #[test]
    fn the_first_of_a_series_that_is_over_goes_when_others_follow() {
        assert_eq!(kept(&[62, 61, 60, 1, 0]), [3, 4]);
        assert_eq!(kept(&[63, 62, 61, 60, 1, 0]), [4, 5], "60 is the first now");
        assert_eq!(kept(&[40, 20, 10, 0]), [3]);
    }

    #[test]
    fn a_clock_that_was_set_back_parts_no_series() {
        assert_eq!(kept(&[0, 90, 89, 88, 87]), [3]);
    }

    #[test]
    fn what_was_left_half_copied_is_cleared_and_is_nothing_kept() {
        let folder = tempfile::tempdir().unwrap();
        let record = folder.path().join("record.db");
        fs::write(&record, "record").unwrap();
        assert!(!is_replaced_kept(&record));
        let left = folder.path().join(FOLDER).join(".arriving-x1");
        fs::create_dir_all(&left).unwrap();
        assert!(!is_replaced_kept(&record));
        let aside = Aside::of(&record);
        drop(aside.copy(&record).unwrap());
        assert!(!left.exists());
        assert!(!is_replaced_kept(&record), "not kept after all");
        aside.keep(aside.copy(&record).unwrap()).unwrap();
        assert!(is_replaced_kept(&record));
        let kept = folder.path().join("damaged/000001/damaged.coldchassis");
        assert_eq!(fs::read_to_string(kept).unwrap(), "record");
    }
}
