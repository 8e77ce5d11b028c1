//! What a process that was ended left beside the record.

use super::snapshots::{age, filed};
use super::*;
use std::fs::{self, File};
use std::path::Path;
use std::time::{Duration, SystemTime};

const HOUR: Duration = Duration::from_secs(3600);

fn old(path: &Path) {
    File::open(path).unwrap().set_modified(SystemTime::now() - 2 * HOUR).unwrap();
}

#[test]
fn what_was_never_finished_goes_once_it_is_old() {
    let folder = tempfile::tempdir().unwrap();
    let (device, snapshots) = filed(folder.path());
    device.store.take_snapshot(&snapshots).unwrap();
    let path = |name: &str| folder.path().join(name);
    let left = [
        "snapshots/.arriving-a1",
        "snapshots/.arriving-a1-journal",
        ".recovering-b2/record",
        ".reading-c3/damaged.coldchassis",
    ];
    let kept = [".recovery-plan", "snapshots/letter.txt", "damaged/damaged.coldchassis"];
    for name in left.iter().chain(&kept) {
        fs::create_dir_all(path(name).parent().unwrap()).unwrap();
        fs::write(path(name), "x").unwrap();
    }
    let record = path("record.db");
    let before = SystemTime::now() - HOUR;
    assert_eq!(sweep(&record, before).unwrap(), 0, "all of it may be worked on");
    for name in [".recovering-b2", ".reading-c3"].iter().chain(&left[..2]).chain(&kept) {
        old(&path(name));
    }
    assert_eq!(sweep(&record, before).unwrap(), 4);
    assert!(left.iter().all(|name| !path(name).exists()));
    assert!(kept.iter().all(|name| path(name).exists()));
    assert_eq!(snapshots.list().unwrap().len(), 1);
    assert_eq!(sweep(&path("nowhere/record.db"), before).unwrap(), 0, "no folder yet");
}

#[test]
fn a_copy_that_holds_what_was_deleted_since_is_found() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    let unit = device.create("Widow Quillfeather", false);
    device.create("Kitchen set", false);
    device.store.take_snapshot(&snapshots).unwrap();
    assert!(!device.store.has_outdated(&snapshots).unwrap(), "nothing was deleted");
    // As a process leaves it that is ended right after: the copies are not made anew, and the log is empty.
    device.delete(unit).unwrap();
    let reader = device.store.reader().unwrap().unwrap();
    assert!(reader.has_outdated(&snapshots).unwrap());
    reader.renew_snapshots(&snapshots).unwrap();
    assert!(!reader.has_outdated(&snapshots).unwrap());
    let [only] = snapshots.list().unwrap().try_into().unwrap();
    assert_eq!(only.number, 2);
    let bytes = fs::read(&only.path).unwrap();
    assert!(!bytes.windows(5).any(|part| part == b"Quill"));
}

/// A rollback journal as SQLite leaves it where a process ends while the pages of a transaction go into the
/// file: the pages of before. SQLite's file format, section 3.
fn journal(pages_before: &[u8]) -> Vec<u8> {
    const PAGE: usize = 4096;
    const SECTOR: usize = 512;
    const NONCE: u32 = 7;
    let count = u32::try_from(pages_before.len() / PAGE).unwrap();
    let word = |number: usize| u32::try_from(number).unwrap().to_be_bytes();
    let mut bytes = vec![0xd9, 0xd5, 0x05, 0xf9, 0x20, 0xa1, 0x63, 0xd7];
    let header = [count.to_be_bytes(), NONCE.to_be_bytes(), count.to_be_bytes()];
    bytes.extend(header.into_iter().chain([word(SECTOR), word(PAGE)]).flatten());
    bytes.resize(SECTOR, 0);
    for (at, page) in pages_before.chunks(PAGE).enumerate() {
        let counted = (1..=PAGE / 200).map(|step| u32::from(page[PAGE - 200 * step]));
        bytes.extend(word(at + 1));
        bytes.extend(page);
        bytes.extend(counted.fold(NONCE, u32::wrapping_add).to_be_bytes());
    }
    bytes
}

/// The file as it lies in a folder that nobody has open.
fn closed(path: &Path) -> Vec<u8> {
    let conn = Connection::open(path).unwrap();
    // As a migration has it.
    conn.pragma_update(None, "journal_mode", "DELETE").unwrap();
    conn.close().unwrap();
    fs::read(path).unwrap()
}

#[test]
fn a_migration_that_was_ended_is_done_at_the_next_start() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    let unit = device.create("Kitchen set", false);
    drop(device);
    let path = folder.path().join("record.db");
    age(&path);
    let before = closed(&path);
    drop(Store::open(&path).unwrap());
    let after = closed(&path);
    assert_eq!((before[63], u32::from(after[63])), (1, SCHEMA_VERSION), "the header's version");
    fs::write(&path, after).unwrap();
    fs::write(folder.path().join("record.db-journal"), journal(&before)).unwrap();
    let store = Store::open(&path).unwrap();
    assert!(store.was_cut_off());
    assert_eq!(store.unit(unit).unwrap().unwrap().name.as_deref(), Some("Kitchen set"));
    store.check_in_full().unwrap();
    let copies = snapshots.list().unwrap();
    let from: Vec<_> = copies.iter().map(|copy| copy.before_migration_from).collect();
    assert_eq!(from, [Some(1), Some(1)], "the old form was put back, and copied once more");
}

/// The very first start, ended while its pages went into the file: there was no page before.
#[test]
fn a_first_start_that_was_ended_is_done_at_the_next() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    drop(Store::open(&path).unwrap());
    let after = closed(&path);
    fs::write(&path, after).unwrap();
    fs::write(folder.path().join("record.db-journal"), journal(&[])).unwrap();
    let store = Store::open(&path).unwrap();
    assert!(store.units(&UnitFilter::default()).unwrap().is_empty());
}
