//! No room and no right to write: a message, and what was committed stays.

use super::snapshots::filed;
use super::*;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Writes names until it is refused. Gives how many were stored, and the refusal.
fn until_refused(device: &mut Device, unit: Uuid) -> (u32, StoreError) {
    for time in 0..10_000 {
        let name = format!("{time} {}", "x".repeat(2000));
        if let Err(refused) = device.rename(unit, &name) {
            return (time, refused);
        }
    }
    panic!("never refused");
}

fn check_kept(device: &mut Device, unit: Uuid, stored: u32) {
    let name = device.name_of(unit).unwrap();
    assert!(stored == 0 || name.starts_with(&format!("{} ", stored - 1)), "{name:.20}");
    assert_eq!(rows(&device.store, "event").len() as u32, stored + 2);
    device.store.check_in_full().unwrap();
}

/// A page limit of SQLite: shows the error and the state, not what a file system does.
#[test]
fn a_full_file_is_refused_and_the_committed_state_stays() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, _) = filed(folder.path());
    let unit = device.create("Kitchen set", false);
    let pages: u32 =
        device.store.conn.query_row("PRAGMA page_count", [], |row| row.get(0)).unwrap();
    let limit = |device: &Device, pages: u32| {
        device.store.conn.pragma_update(None, "max_page_count", pages).unwrap();
    };
    limit(&device, pages + 20);
    let (stored, refused) = until_refused(&mut device, unit);
    assert!(matches!(refused, StoreError::NoRoom), "{refused:?}");
    assert!(stored > 3, "{stored}");
    check_kept(&mut device, unit, stored);
    limit(&device, pages + 1000);
    device.rename(unit, "There is room again").unwrap();
}

/// A folder on a file system of its own; nothing where this user may mount none.
struct Mounted(
    PathBuf,
    #[allow(dead_code, reason = "removed when it is dropped")] tempfile::TempDir,
);

impl Mounted {
    fn new(arguments: &[&str]) -> Option<Self> {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().to_owned();
        let mounted = Command::new("mount").args(arguments).arg(&path).output();
        if mounted.is_ok_and(|done| done.status.success()) {
            return Some(Self(path, folder));
        }
        eprintln!("skipped: no file system can be mounted here");
        None
    }

    fn remount(&self, options: &str) {
        let done = Command::new("mount").args(["-o", options]).arg(&self.0).status().unwrap();
        assert!(done.success());
    }
}

impl Drop for Mounted {
    fn drop(&mut self) {
        Command::new("umount").arg(&self.0).status().unwrap();
    }
}

fn filed_on(folder: &Path) -> (Device, Uuid) {
    let (mut device, _) = filed(folder);
    let unit = device.create("Kitchen set", false);
    (device, unit)
}

/// A real file system of 2 MB that runs full; needs the right to mount.
#[test]
fn a_full_disk_is_refused_and_the_committed_state_stays() {
    let Some(small) = Mounted::new(&["-t", "tmpfs", "-o", "size=2m", "tmpfs"]) else { return };
    let (mut device, unit) = filed_on(&small.0);
    let (stored, refused) = until_refused(&mut device, unit);
    assert!(matches!(refused, StoreError::NoRoom), "{refused:?}");
    assert!(stored > 3, "{stored}");
    assert_eq!(rows(&device.store, "event").len() as u32, stored + 2);
    let snapshot = device.store.take_snapshot(&Snapshots::of(&small.0.join("record.db")));
    assert!(matches!(snapshot, Err(StoreError::NoRoom)), "{snapshot:?}");
    // Closed or not, it opens again when there is room.
    drop(device);
    small.remount("remount,size=8m");
    let store = Store::open(&small.0.join("record.db")).unwrap();
    let mut device = Device { at: 9_000_000, ..Device::with(store, "bench", 3) };
    check_kept(&mut device, unit, stored);
    device.rename(unit, "There is room again").unwrap();
}

/// A real file system that may only be read; needs the right to mount.
#[test]
fn a_folder_that_may_only_be_read_is_refused_and_stays() {
    let Some(disk) = Mounted::new(&["-t", "tmpfs", "-o", "size=8m", "tmpfs"]) else { return };
    let (device, _) = filed_on(&disk.0);
    drop(device);
    let path = disk.0.join("record.db");
    let before = std::fs::read(&path).unwrap();
    disk.remount("remount,ro");
    let refused = Store::open(&path).and_then(|mut store| store.rebuild_projections());
    assert!(matches!(refused, Err(StoreError::ReadOnly)), "{refused:?}");
    let fresh = Store::open(&disk.0.join("other.db"));
    assert!(matches!(fresh, Err(StoreError::ReadOnly)), "{fresh:?}");
    assert_eq!(std::fs::read(&path).unwrap(), before);
    disk.remount("remount,rw");
    Store::open(&path).unwrap().check_in_full().unwrap();
}
