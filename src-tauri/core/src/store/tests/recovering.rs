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
    let mut bytes = std::fs::read(path).unwrap();
    let holds = |page: &[u8]| {
        page[0] == TABLE_LEAF && page.windows(intent.len()).any(|part| part == intent.as_bytes())
    };
    let at = bytes.chunks(PAGE).position(holds).unwrap();
    bytes[at * PAGE..(at + 1) * PAGE].fill(0xA5);
    std::fs::write(path, bytes).unwrap();
}

/// Pages of SQLite's file format, section 1.6, by their first byte.
const TABLE_LEAF: u8 = 13;
const INDEX_LEAF: u8 = 10;
const INDEX_INTERIOR: u8 = 2;

/// Changes each page that is of one of some kinds and holds a text; gives how many.
fn change_pages(path: &Path, kinds: &[u8], text: &str, change: impl Fn(&mut [u8])) -> usize {
    let mut bytes = std::fs::read(path).unwrap();
    let holds =
        |page: &[u8]| page.windows(text.len().max(1)).any(|part| part.starts_with(text.as_bytes()));
    // The first page begins with the header of the file.
    let pages = bytes.chunks_mut(4096).skip(1);
    let pages: Vec<_> = pages.filter(|page| kinds.contains(&page[0]) && holds(page)).collect();
    let count = pages.len();
    pages.into_iter().for_each(change);
    std::fs::write(path, bytes).unwrap();
    count
}

/// Writes over the page of the log that holds an intent but for its head: it is read, and makes no sense.
fn garble(path: &Path, intent: &str) {
    let count = change_pages(path, &[TABLE_LEAF], intent, |page| page[8..].fill(0x5A));
    assert_eq!(count, 1);
}

/// Writes over every page of every index.
fn damage_indexes(path: &Path) {
    let kinds = [INDEX_LEAF, INDEX_INTERIOR];
    assert!(change_pages(path, &kinds, "", |page| page.fill(0xA5)) > 3);
}

/// A record of which nothing was taken away but a deleted unit; gives its intents, and how many events are left.
fn with_a_deletion(path: &Path) -> (Vec<String>, u64) {
    let mut device = Device::with(Store::open(path).unwrap(), "bench", 1);
    let mut intents = fill(&mut device, 40);
    let gone = device.create("Gone", false);
    for time in 0..30 {
        device.rename(gone, &format!("{time}")).unwrap();
    }
    intents.extend(fill(&mut device, 40));
    device.delete(gone).unwrap();
    let events = rows(&device.store, "event").len() as u64;
    device.store.close().unwrap();
    (intents, events)
}

#[test]
fn what_a_deleted_unit_left_empty_is_not_called_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (intents, events) = with_a_deletion(&path);
    let sound = readable(&path, &[]).unwrap().recovered;
    assert_eq!((sound.read, sound.unreadable, sound.doubtful), (events, 0, 0));
    assert!(!sound.is_uncounted);
    damage(&path, &intents[50]);
    let found = readable(&path, &[]).unwrap().recovered;
    assert!(found.unreadable > 0, "{found:?}");
    assert_eq!((found.read + found.unreadable, found.doubtful), (events, 0), "{found:?}");
}

#[test]
fn a_page_that_makes_no_sense_is_counted_as_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (intents, events) = with_a_deletion(&path);
    garble(&path, &intents[20]);
    let found = readable(&path, &[]).unwrap().recovered;
    assert!(found.unreadable > 0, "{found:?}");
    assert_eq!((found.read + found.unreadable, found.doubtful), (events, 0), "{found:?}");
}

#[test]
fn where_no_index_can_be_read_every_gap_is_in_doubt() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (intents, events) = with_a_deletion(&path);
    garble(&path, &intents[20]);
    damage(&path, &intents[60]);
    damage_indexes(&path);
    let found = readable(&path, &[]).unwrap().recovered;
    // The deleted unit had its two first events, thirty names, and has a tombstone.
    assert_eq!((found.unreadable, found.doubtful), (0, events - found.read + 32), "{found:?}");
    assert!(events - found.read > 2, "{found:?}");
    assert!(!found.is_uncounted, "the counter of places is there");
}

#[test]
fn of_a_file_that_tells_nothing_the_loss_is_not_counted() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    with_a_deletion(&path);
    let mut bytes = std::fs::read(&path).unwrap();
    bytes[..4096].fill(0);
    std::fs::write(&path, bytes).unwrap();
    let found = readable(&path, &[]).unwrap().recovered;
    assert!(found.is_uncounted && found.read == 0, "{found:?}");
    // An empty record is no loss.
    let fresh = folder.path().join("fresh/record.db");
    std::fs::create_dir(fresh.parent().unwrap()).unwrap();
    Store::open(&fresh).unwrap().close().unwrap();
    assert_eq!(readable(&fresh, &[]).unwrap().recovered, Recovered::default());
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
    assert!(folder.path().join("damaged/000001/damaged.coldchassis").exists());
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
    assert!(recovered.is_uncounted);
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

/// A record as a battery leaves it that dies while a migration writes: changed pages, and a journal of what they were.
fn cut_off_in_a_migration(path: &Path) {
    let conn = rusqlite::Connection::open(path).unwrap();
    conn.execute_batch(
        "PRAGMA journal_mode = DELETE; PRAGMA cache_size = 1; PRAGMA cache_spill = 1; BEGIN IMMEDIATE;
         CREATE TABLE halfway (text); WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n LIMIT 4000)
         INSERT INTO halfway SELECT hex(zeroblob(200)) FROM n;",
    )
    .unwrap();
    let beside = |side: &str| path.with_file_name(format!("record.db{side}"));
    let left = ["", "-journal"].map(|side| std::fs::read(beside(side)).unwrap());
    drop(conn);
    for (side, bytes) in ["", "-journal"].into_iter().zip(left) {
        std::fs::write(beside(side), bytes).unwrap();
    }
}

#[test]
fn a_journal_beside_the_damaged_file_is_read_with_it_and_not_put_into_the_new_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let mut device = Device::with(Store::open(&path).unwrap(), "bench", 1);
    fill(&mut device, 40);
    let events = rows(&device.store, "event").len() as u64;
    device.store.close().unwrap();
    cut_off_in_a_migration(&path);
    let journal = folder.path().join("record.db-journal");
    assert!(std::fs::metadata(&journal).unwrap().len() > 512);
    let recovered = recover(&path, None, true).unwrap();
    assert_eq!((recovered.read, recovered.unreadable), (events, 0), "{recovered:?}");
    assert!(!journal.exists());
    for sound in [path, folder.path().join("damaged/000001/damaged.coldchassis")] {
        let store = Store::open(&sound).unwrap();
        store.check_in_full().unwrap();
        assert_eq!(rows(&store, "event").len() as u64, events, "{}", sound.display());
    }
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
    assert!(!is_replaced_kept(&path), "nothing was replaced");
}

#[test]
fn a_second_try_keeps_the_file_that_was_found_damaged() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, _) = damaged(folder.path(), 60);
    let found = std::fs::read(&path).unwrap();
    let snapshot = snapshots.list().unwrap().remove(0);
    let kept = |number: u32| folder.path().join(format!("damaged/{number:06}/damaged.coldchassis"));
    for number in 1..=6 {
        recover(&path, Some(&snapshot), false).unwrap();
        assert_eq!(std::fs::read(kept(1)).unwrap(), found);
        assert!(kept(number).exists());
    }
    assert_eq!([2, 3, 4, 5].map(|number| kept(number).exists()), [false, false, true, true]);
}

#[test]
fn what_can_be_read_is_given_away_without_touching_the_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, events) = damaged(folder.path(), 100);
    let before = std::fs::read(&path).unwrap();
    let Readable { store: alone, recovered, snapshot, .. } = &readable(&path, &[]).unwrap();
    assert_eq!(rows(alone, "event").len() as u64, recovered.read);
    assert_eq!(recovered.read + recovered.unreadable, events);
    assert_eq!(*snapshot, None);
    let there = snapshots.list().unwrap();
    let joined = readable(&path, &there).unwrap();
    assert_eq!(joined.snapshot.as_ref(), there.first());
    assert!(rows(&joined.store, "event").len() >= rows(alone, "event").len());
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn what_can_be_read_rests_on_the_newest_snapshot_that_is_sound() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let (snapshots, _) = damaged(folder.path(), 100);
    let older = snapshots.list().unwrap().remove(0);
    let spoil = |name: &str, bytes: &[u8]| {
        std::fs::write(folder.path().join("snapshots").join(name), bytes).unwrap();
    };
    let sound = std::fs::read(&older.path).unwrap();
    let mut spoilt = sound.clone();
    let middle = spoilt.len() / 2;
    spoilt[middle..].fill(0xA5);
    spoil("000002-0.coldchassis", &spoilt);
    spoil("000003-0.coldchassis", b"a letter");
    let there = snapshots.list().unwrap();
    assert_eq!(there.len(), 3);
    let found = readable(&path, &there).unwrap();
    assert_eq!(found.snapshot.unwrap().number, 1);
    spoil("000001-0.coldchassis", &spoilt);
    let found = readable(&path, &there).unwrap();
    assert_eq!(found.snapshot, None);
    assert!(found.recovered.read > 100);
}
