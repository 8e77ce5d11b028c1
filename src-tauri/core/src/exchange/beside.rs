//! A file in a folder of the person's, while it is written: under a name of ours, beside its place.
//!
//! What a process that was ended left there is in no folder of ours, where a sweep would find it: the next
//! file that is written to that folder clears it away.

use std::fs;
use std::io;
use std::path::Path;
use std::time::{Duration, SystemTime};

use tempfile::NamedTempFile;

/// What the name of a file begins with while it is written.
const WRITING: &str = ".coldchassis-";
/// How long one may be written to: a bundle of 30 GB is through sooner.
const LONGEST: Duration = Duration::from_secs(6 * 3600);

/// A new file beside the place that it is meant for. Dropped before it is put there, it is gone.
///
/// # Errors
/// The folder cannot be written to.
pub fn beside(to: &Path) -> io::Result<NamedTempFile> {
    let folder = to.parent().filter(|folder| !folder.as_os_str().is_empty());
    let folder = folder.unwrap_or_else(|| Path::new("."));
    let file = tempfile::Builder::new().prefix(WRITING).tempfile_in(folder)?;
    // The time by the clock of the file system that the others are on.
    let before = file.as_file().metadata()?.modified()?.checked_sub(LONGEST);
    // Not our folder: what cannot be cleared away there must not keep the new file out.
    clear(folder, before.unwrap_or(SystemTime::UNIX_EPOCH)).ok();
    Ok(file)
}

fn clear(folder: &Path, before: SystemTime) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let is_ours = entry.file_name().to_str().is_some_and(|name| name.starts_with(WRITING));
        if is_ours && entry.metadata()?.modified()? < before {
            fs::remove_file(entry.path())?;
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs::File;

    #[test]
    fn what_an_ended_process_left_goes_and_what_is_young_or_of_others_stays() {
        let folder = tempfile::tempdir().unwrap();
        let path = |name: &str| folder.path().join(name);
        for (name, hours) in [(".coldchassis-a1", 7), (".coldchassis-b2", 5), (".other", 7)] {
            let file = File::create(path(name)).unwrap();
            file.set_modified(SystemTime::now() - Duration::from_secs(hours * 3600)).unwrap();
        }
        let made = beside(&path("all.bundle")).unwrap();
        assert!(!path(".coldchassis-a1").exists(), "it was left there for ever");
        assert!(path(".coldchassis-b2").exists() && path(".other").exists());
        assert_eq!(made.path().parent(), Some(folder.path()));
        drop(made);
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 2);
    }
}
