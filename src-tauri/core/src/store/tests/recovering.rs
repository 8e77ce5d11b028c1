//! Damaged files: noticed, read as far as they go, replaced.

use super::snapshots::filed;
use super::*;
use std::path::Path;

/// Renames a unit many times. Gives the intent of each.
pub(in crate::store) fn fill(device: &mut Device, times: u32) -> Vec<String> {
    let unit = device.create("Kitchen set", false);
    let mut intents = Vec::new();
    for time in 0..times {
        let stamp = device.stamp();
        let change = Change::UnitName(format!("{time} {}", "x".repeat(300)));
        device.act_as(&stamp, &of_unit(unit, vec![change])).unwrap();
        intents.push(stamp.intent.to_string());
    }
    intents
}

/// Overwrites the page of the log that holds an intent, as a worn card does.
pub(in crate::store) fn damage(path: &Path, intent: &str) {
    const PAGE: usize = 4096;
    // A leaf of a table begins with 13: SQLite's file format, section 1.6.
    const TABLE_LEAF: u8 = 13;
    let mut bytes = std::fs::read(path).unwrap();
    let holds = |page: &[u8]| {
        page[0] == TABLE_LEAF && page.windows(intent.len()).any(|part| part == intent.as_bytes())
    };
    let at = bytes.chunks(PAGE).position(holds).unwrap();
    bytes[at * PAGE..(at + 1) * PAGE].fill(0xA5);
    std::fs::write(path, bytes).unwrap();
}

/// A record with a snapshot in the middle of its work, then damaged; gives the number of events.
fn damaged(folder: &Path, after: usize) -> (Snapshots, u64) {
    let (mut device, snapshots) = filed(folder);
    let mut intents = fill(&mut device, 40);
    device.store.take_snapshot(&snapshots).unwrap();
    intents.extend(fill(&mut device, 80));
    let events = rows(&device.store, "event").len() as u64;
    device.store.close().unwrap();
    damage(&folder.join("record.db"), &intents[after]);
    (snapshots, events)
}

#[test]
fn a_file_that_was_not_closed_is_known_and_one_that_was_is_not() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (mut device, _) = filed(folder.path());
    assert!(!device.store.was_cut_off());
    device.create("Kitchen set", false);
    // As a process leaves them that is ended: nobody closes.
    let (there, log) = (
        std::fs::read(&path).unwrap(),
        std::fs::read(folder.path().join("record.db-wal")).unwrap(),
    );
    device.store.close().unwrap();
    let again = Store::open(&path).unwrap();
    assert!(!again.was_cut_off());
    again.close().unwrap();
    std::fs::write(&path, there).unwrap();
    std::fs::write(folder.path().join("record.db-wal"), log).unwrap();
    let cut_off = Store::open(&path).unwrap();
    assert!(cut_off.was_cut_off());
    cut_off.check_in_full().unwrap();
    assert_eq!(rows(&cut_off, "event").len(), 2, "what was committed is there");
}

#[test]
fn damage_is_found_by_the_full_look() {
    let folder = tempfile::tempdir().unwrap();
    damaged(folder.path(), 60);
    let store = Store::open(&folder.path().join("record.db")).unwrap();
    let found = store.check_in_full().unwrap_err();
    assert!(matches!(&found, StoreError::Damaged(detail) if !detail.is_empty()), "{found:?}");
    let reader = store.reader().unwrap().unwrap();
    assert!(matches!(reader.check_in_full(), Err(StoreError::Damaged(_))));
}

#[test]
fn the_snapshot_and_what_can_be_read_come_back_together() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, events) = damaged(folder.path(), 100);
    let snapshot = snapshots.list().unwrap().remove(0);
    let recovered = recover(&path, Some(&snapshot), true).unwrap();
    assert!(recovered.unreadable > 0 && recovered.unreadable < 20, "{recovered:?}");
    assert!(recovered.added > 60, "{recovered:?}");
    let store = Store::open(&path).unwrap();
    store.check_in_full().unwrap();
    let kept = rows(&store, "event").len() as u64;
    assert_eq!(kept + recovered.unreadable, events, "{recovered:?}");
    assert!(folder.path().join("damaged/damaged.coldchassis").exists());
    // The views are those of the events that are left.
    let before = projections(&store);
    let mut store = store;
    store.rebuild_projections().unwrap();
    assert_eq!(projections(&store), before);
}

#[test]
fn a_damaged_place_that_the_snapshot_has_costs_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, events) = damaged(folder.path(), 10);
    let snapshot = snapshots.list().unwrap().remove(0);
    let recovered = recover(&path, Some(&snapshot), true).unwrap();
    assert!(recovered.unreadable > 0);
    let store = Store::open(&path).unwrap();
    assert_eq!(rows(&store, "event").len() as u64, events);
}

#[test]
fn a_snapshot_alone_brings_back_its_own_moment() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, _) = damaged(folder.path(), 60);
    let snapshot = snapshots.list().unwrap().remove(0);
    let recovered = recover(&path, Some(&snapshot), false).unwrap();
    assert_eq!(recovered, Recovered::default());
    assert_eq!(rows(&Store::open(&path).unwrap(), "event").len(), 42);
}

#[test]
fn a_file_without_a_beginning_is_replaced_by_the_snapshot() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, _) = damaged(folder.path(), 60);
    let mut bytes = std::fs::read(&path).unwrap();
    bytes[..4096].fill(0);
    std::fs::write(&path, bytes).unwrap();
    assert!(Store::open(&path).is_err());
    let snapshot = snapshots.list().unwrap().remove(0);
    let recovered = recover(&path, Some(&snapshot), true).unwrap();
    assert_eq!((recovered.read, recovered.added), (0, 0));
    assert_eq!(rows(&Store::open(&path).unwrap(), "event").len(), 42);
}

#[test]
fn a_log_beside_the_damaged_file_is_not_put_into_the_new_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, _) = damaged(folder.path(), 60);
    std::fs::write(folder.path().join("record.db-wal"), vec![7; 9000]).unwrap();
    let snapshot = snapshots.list().unwrap().remove(0);
    recover(&path, Some(&snapshot), true).unwrap();
    assert!(!folder.path().join("record.db-wal").exists());
    Store::open(&path).unwrap().check_in_full().unwrap();
}

#[test]
fn a_damaged_snapshot_is_refused_and_the_record_stays() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, _) = damaged(folder.path(), 60);
    let snapshot = snapshots.list().unwrap().remove(0);
    let mut bytes = std::fs::read(&snapshot.path).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle..].fill(0xA5);
    std::fs::write(&snapshot.path, bytes).unwrap();
    let before = std::fs::read(&path).unwrap();
    assert!(matches!(recover(&path, Some(&snapshot), true), Err(StoreError::Damaged(_))));
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn what_can_be_read_is_given_away_without_touching_the_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, events) = damaged(folder.path(), 100);
    let before = std::fs::read(&path).unwrap();
    let (_work, alone, recovered) = readable(&path, None).unwrap();
    assert_eq!(rows(&alone, "event").len() as u64, recovered.read);
    assert_eq!(recovered.read + recovered.unreadable, events);
    let snapshot = snapshots.list().unwrap().remove(0);
    let (_work, joined, _) = readable(&path, Some(&snapshot)).unwrap();
    assert!(rows(&joined, "event").len() >= rows(&alone, "event").len());
    assert_eq!(std::fs::read(&path).unwrap(), before);
}
