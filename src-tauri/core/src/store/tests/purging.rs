//! Deletion, tombstones and the demonstration.

use super::*;
use std::path::Path;

const SECRETS: [&str; 6] = [
    "Widow Quillfeather",
    "Attic of the mill",
    "Inspector of bench",
    "scratched remark",
    "5f2d0c9a77",
    "hairline verdict",
];

/// Words as the index keeps them, each the beginning of no other.
const INDEXED: [&str; 2] = ["quillfeather", "scratched"];

fn fill(device: &mut Device) -> (Uuid, Uuid) {
    let unit = device.create(SECRETS[0], false);
    let inspection = device.inspect(unit);
    let photo = device.id();
    let changes = vec![
        Change::UnitPlace(SECRETS[1].to_owned()),
        finding("notes.plug", json!(SECRETS[3])),
        Change::PhotoAdded { photo, row: json!({"file": SECRETS[4]}) },
    ];
    device.act(&in_inspection(unit, inspection, changes)).unwrap();
    let verdict = Verdict {
        inspection,
        engine_version: "0.1.0".to_owned(),
        at: 1,
        verdict: json!({"why": SECRETS[5]}),
    };
    device.store.save_verdict(&verdict).unwrap();
    (unit, inspection)
}

fn holds(folder: &Path, text: &str) -> bool {
    let files = std::fs::read_dir(folder).unwrap();
    let bytes = files.map(|file| std::fs::read(file.unwrap().path()).unwrap());
    let found = |bytes: Vec<u8>| bytes.windows(text.len()).any(|part| part == text.as_bytes());
    bytes.into_iter().any(found)
}

fn has_row_text(store: &Store, text: &str) -> bool {
    let tables = ["event", "unit", "inspection", "finding", "photo", "verdict"];
    let mut rows = tables.iter().flat_map(|table| rows(store, table));
    rows.any(|row| row.contains(text))
}

#[test]
fn a_deleted_unit_leaves_nothing_personal_in_the_file() {
    let folder = tempfile::tempdir().unwrap();
    let store = Store::open(&folder.path().join("record.db")).unwrap();
    let mut device = Device::with(store, "bench", 1);
    let (unit, inspection) = fill(&mut device);
    for text in SECRETS {
        assert!(has_row_text(&device.store, text), "{text} was never there");
        assert!(holds(folder.path(), text), "{text} was never in the file");
    }
    for word in INDEXED {
        assert!(holds(folder.path(), word), "{word} was never in the index");
    }
    // A row that was written anew leaves nothing behind either.
    device.rename(unit, "Quillfeather, Widow").unwrap();
    let changed = device.delete(unit).unwrap();
    assert!(changed.units.contains(&unit));
    for word in INDEXED {
        assert!(!holds(folder.path(), word), "{word} is left in the index");
    }
    for text in SECRETS {
        assert!(!has_row_text(&device.store, text), "{text} is left in a row");
        assert!(!holds(folder.path(), text), "{text} is left in the file");
    }
    assert_eq!(device.store.unit(unit).unwrap(), None);
    assert_eq!(device.store.findings(inspection).unwrap(), []);
    assert_eq!(device.store.verdicts(inspection).unwrap(), []);
    assert_eq!(rows(&device.store, "event").len(), 1);
    assert!(rows(&device.store, "purge_permit").is_empty());
    assert!(device.store.conn.execute("DELETE FROM event", []).is_err());
}

#[test]
fn what_comes_later_for_a_deleted_unit_stays_out() {
    let (mut here, unit, inspection) = bench();
    let mut there = Device::new("phone", 2);
    let before = here.outgoing();
    there.store.append_foreign(before.clone()).unwrap();
    there.find((unit, inspection), "answers.back", json!("fitted"));
    here.delete(unit).unwrap();
    let (events, views) = (rows(&here.store, "event"), projections(&here.store));
    let sent = there.outgoing();
    let changed = here.store.append_foreign(sent.clone()).unwrap();
    assert_eq!((changed.events.len(), changed.skipped), (0, sent.len()));
    assert_eq!(rows(&here.store, "event"), events);
    assert_eq!(projections(&here.store), views);
    // The tombstone purges the other device as well.
    there.store.append_foreign(here.outgoing()).unwrap();
    assert_eq!(there.store.unit(unit).unwrap(), None);
    assert_eq!(there.store.events(unit).unwrap(), here.store.events(unit).unwrap());
}

#[test]
fn a_tombstone_cannot_be_purged_or_deleted_again() {
    let (mut device, unit, _) = bench();
    device.delete(unit).unwrap();
    assert!(matches!(device.delete(unit), Err(StoreError::NoSuchUnit(_))));
    let conn = &device.store.conn;
    let sql = "INSERT INTO purge_permit (unit) SELECT unit FROM event";
    conn.execute(sql, []).unwrap();
    assert!(conn.execute("DELETE FROM event", []).is_err());
}

#[test]
fn other_units_are_not_touched_by_a_purge() {
    let (mut device, unit, _) = bench();
    let other = device.create("Hall radio", false);
    let events = device.store.events(other).unwrap();
    device.delete(unit).unwrap();
    assert_eq!(device.store.events(other).unwrap(), events);
    assert_eq!(device.name_of(other).as_deref(), Some("Hall radio"));
}

#[test]
fn the_demonstration_never_leaves_and_is_removed_whole() {
    let (mut device, unit, _) = bench();
    let real = (device.outgoing(), projections(&device.store));
    let demo = device.create("Demonstration", true);
    let inspection = device.inspect(demo);
    device.find((demo, inspection), "answers.back", json!("fitted"));
    device.undo(demo, None).unwrap();
    assert!(device.store.unit(demo).unwrap().unwrap().demo);
    assert_eq!(device.outgoing(), real.0);
    let changed = device.store.remove_demo().unwrap();
    assert!(changed.units.contains(&demo));
    assert_eq!(device.store.events(demo).unwrap(), []);
    assert_eq!(projections(&device.store), real.1);
    assert!(device.store.unit(unit).unwrap().is_some());
}

#[test]
fn a_deleted_demonstration_unit_leaves_no_tombstone() {
    let mut device = Device::new("bench", 1);
    let demo = device.create("Demonstration", true);
    device.delete(demo).unwrap();
    assert!(rows(&device.store, "event").is_empty());
    assert!(projections(&device.store).is_empty());
}

#[test]
fn events_that_call_themselves_demonstration_are_not_taken_in() {
    let (here, unit, _) = bench();
    let mut there = Device::new("phone", 2);
    let sent = here.outgoing().into_iter();
    let flagged = sent.map(|event| Event { demo: true, ..event });
    let changed = there.store.append_foreign(flagged).unwrap();
    assert!(changed.events.is_empty() && changed.skipped > 0);
    assert_eq!(there.store.unit(unit).unwrap(), None);
}

#[test]
fn one_bad_event_and_nothing_is_taken_in() {
    let (here, _, _) = bench();
    let mut there = Device::new("phone", 2);
    let mut sent = here.outgoing();
    let last = sent.len() - 1;
    sent[last].at = -1;
    let refused = there.store.append_foreign(sent).unwrap_err();
    assert!(matches!(refused, StoreError::BadEvent { field: "at", .. }));
    assert!(rows(&there.store, "event").is_empty());
}

#[test]
fn the_exchange_pages_through_a_long_log() {
    let (mut device, unit, inspection) = bench();
    for count in 0..600 {
        device.find((unit, inspection), "answers.tube_count", json!(count));
    }
    let sent = device.outgoing();
    assert_eq!(sent.len(), rows(&device.store, "event").len());
    let ids: BTreeSet<_> = sent.iter().map(|event| event.id).collect();
    assert_eq!(ids.len(), sent.len());
}
