//! Copies of the record: made, checked, let go.

use super::*;
use std::path::Path;

/// A device whose record is in a folder, and its snapshots.
pub(in crate::store) fn filed(folder: &Path) -> (Device, Snapshots) {
    let path = folder.join("record.db");
    let device = Device::with(Store::open(&path).unwrap(), "bench", 1);
    (device, Snapshots::of(&path))
}

fn numbers(snapshots: &Snapshots) -> Vec<u32> {
    snapshots.list().unwrap().iter().map(|snapshot| snapshot.number).collect()
}

#[test]
fn a_snapshot_is_the_whole_record_in_one_file() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    let unit = device.create("Kitchen set", false);
    let inspection = device.inspect(unit);
    device.find((unit, inspection), "answers.plug", json!("two_equal_blades"));
    assert!(numbers(&snapshots).is_empty());
    let made = device.store.take_snapshot(&snapshots).unwrap();
    assert_eq!((made.number, made.inspections, made.before_migration_from), (1, 1, None));
    let names: Vec<_> = std::fs::read_dir(folder.path().join("snapshots")).unwrap().collect();
    assert_eq!(names.len(), 1, "{names:?}");
    let copy = folder.path().join("copy.db");
    std::fs::copy(&made.path, &copy).unwrap();
    let copied = Store::open(&copy).unwrap();
    assert_eq!(rows(&copied, "event"), rows(&device.store, "event"));
    assert_eq!(projections(&copied), projections(&device.store));
}

#[test]
fn the_oldest_go_and_other_files_stay() {
    let folder = tempfile::tempdir().unwrap();
    let (device, snapshots) = filed(folder.path());
    device.store.take_snapshot(&snapshots).unwrap();
    let letter = folder.path().join("snapshots/letter.txt");
    std::fs::write(&letter, "dear").unwrap();
    for _ in 0..7 {
        device.store.take_snapshot(&snapshots).unwrap();
    }
    assert_eq!(numbers(&snapshots), [8, 7, 6, 5, 4]);
    assert!(letter.exists());
}

#[test]
fn one_is_due_after_enough_inspections() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    let unit = device.create("Kitchen set", false);
    for _ in 1..INSPECTIONS_APART {
        device.inspect(unit);
        assert!(!device.store.is_snapshot_due(&snapshots).unwrap());
    }
    device.inspect(unit);
    assert!(device.store.is_snapshot_due(&snapshots).unwrap());
    device.store.take_snapshot(&snapshots).unwrap();
    assert!(!device.store.is_snapshot_due(&snapshots).unwrap());
}

#[test]
fn after_an_older_one_was_put_back_the_next_is_due_by_its_own_inspections() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (mut device, snapshots) = filed(folder.path());
    let unit = device.create("Kitchen set", false);
    device.inspect(unit);
    device.store.take_snapshot(&snapshots).unwrap();
    for _ in 0..2 * INSPECTIONS_APART {
        device.inspect(unit);
    }
    device.store.take_snapshot(&snapshots).unwrap();
    device.store.close().unwrap();
    let older = snapshots.list().unwrap().remove(1);
    let recovered = recover(&path, Some(&older), false).unwrap();
    assert_eq!((older.inspections, recovered.inspections), (1, 1));
    let mut device =
        Device { at: 9_000_000, ..Device::with(Store::open(&path).unwrap(), "bench", 2) };
    for _ in 1..INSPECTIONS_APART {
        device.inspect(unit);
        assert!(!device.store.is_snapshot_due(&snapshots).unwrap());
    }
    device.inspect(unit);
    assert!(device.store.is_snapshot_due(&snapshots).unwrap());
    // From there on it goes by that one.
    device.store.take_snapshot(&snapshots).unwrap();
    for _ in 0..INSPECTIONS_APART {
        assert!(!device.store.is_snapshot_due(&snapshots).unwrap());
        device.inspect(unit);
    }
    assert!(device.store.is_snapshot_due(&snapshots).unwrap());
}

/// Makes the record one of the first schema.
pub(in crate::store) fn age(path: &Path) {
    let old = Connection::open(path).unwrap();
    old.execute_batch(super::opening::BACK_TO_THE_FIRST).unwrap();
}

#[test]
fn a_migration_is_preceded_by_a_snapshot_of_the_old_form() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    device.create("Kitchen set", false);
    drop(device);
    let path = folder.path().join("record.db");
    age(&path);
    drop(Store::open(&path).unwrap());
    let made = snapshots.list().unwrap();
    assert_eq!(made.len(), 1);
    assert_eq!(made[0].before_migration_from, Some(1));
    let copy = Connection::open(&made[0].path).unwrap();
    let version: u32 = copy.query_row("PRAGMA user_version", [], |row| row.get(0)).unwrap();
    assert_eq!(version, 1);
    assert_eq!(rows_of(&copy, "event").len(), 2);
}

#[test]
fn without_a_snapshot_nothing_is_brought_up() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    drop(Store::open(&path).unwrap());
    age(&path);
    // A file stands where the folder would be.
    std::fs::write(folder.path().join("snapshots"), "in the way").unwrap();
    assert!(Store::open(&path).is_err());
    let header = std::fs::read(&path).unwrap();
    assert_eq!(header[60..64], 1_u32.to_be_bytes());
    std::fs::remove_file(folder.path().join("snapshots")).unwrap();
    Store::open(&path).unwrap();
}

#[test]
fn a_damaged_record_pushes_no_snapshot_out() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    let intents = super::recovering::fill(&mut device, 60);
    for _ in 0..5 {
        device.store.take_snapshot(&snapshots).unwrap();
    }
    device.store.checkpoint().unwrap();
    drop(device);
    super::recovering::damage(&folder.path().join("record.db"), &intents[30]);
    let store = Store::open(&folder.path().join("record.db")).unwrap();
    assert!(matches!(store.take_snapshot(&snapshots), Err(StoreError::Damaged(_))));
    assert_eq!(numbers(&snapshots), [5, 4, 3, 2, 1]);
    let left = std::fs::read_dir(folder.path().join("snapshots")).unwrap().count();
    assert_eq!(left, 5, "nothing half-made is left");
}

#[test]
fn a_deletion_reaches_the_snapshots() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    let unit = device.create("Widow Quillfeather", false);
    device.create("Another", false);
    device.store.take_snapshot(&snapshots).unwrap();
    device.store.take_snapshot(&snapshots).unwrap();
    let holds = || {
        let made = snapshots.list().unwrap();
        made.iter().any(|made| {
            let bytes = std::fs::read(&made.path).unwrap();
            bytes.windows(18).any(|part| part == b"Widow Quillfeather")
        })
    };
    assert!(holds());
    device.delete(unit).unwrap();
    device.store.renew_snapshots(&snapshots).unwrap();
    assert!(!holds());
    assert_eq!(numbers(&snapshots), [3]);
}

#[test]
fn a_reader_makes_one_while_the_app_writes() {
    let folder = tempfile::tempdir().unwrap();
    let (mut device, snapshots) = filed(folder.path());
    device.create("Before", false);
    let reader = device.store.reader().unwrap().unwrap();
    let worker = std::thread::spawn(move || reader.take_snapshot(&snapshots).unwrap());
    for _ in 0..50 {
        device.create("During", false);
    }
    let made = worker.join().unwrap();
    let copy = Connection::open(&made.path).unwrap();
    assert!(!rows_of(&copy, "event").is_empty());
    assert!(Store::open_in_memory().unwrap().reader().unwrap().is_none());
}

#[test]
fn a_reader_cannot_write() {
    let folder = tempfile::tempdir().unwrap();
    let (device, _) = filed(folder.path());
    let mut reader = Device::with(device.store.reader().unwrap().unwrap(), "bench", 2);
    let unit = reader.id();
    let action = of_unit(unit, vec![Change::UnitCreated { number: 1 }]);
    assert!(matches!(reader.act(&action), Err(StoreError::ReadOnly)));
}
