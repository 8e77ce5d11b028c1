//! Opening, refusing and reopening files.

use super::super::open::migrations;
use super::*;
use rusqlite::Connection;
use std::collections::BTreeMap;
use std::ffi::OsString;
use std::path::Path;

/// Makes a record one of the first schema, with what it holds.
pub(super) const BACK_TO_THE_FIRST: &str = "ALTER TABLE photo DROP COLUMN hints;
    ALTER TABLE photo DROP COLUMN before; ALTER TABLE photo DROP COLUMN marks;
    DROP INDEX unit_by_place; DROP TABLE unit_text; DROP TABLE queue; DROP TABLE standing;
    ALTER TABLE unit DROP COLUMN state_at; ALTER TABLE unit DROP COLUMN state_by;
    PRAGMA user_version = 1;";

type Folder = BTreeMap<OsString, Vec<u8>>;

fn contents(folder: &Path) -> Folder {
    let files = std::fs::read_dir(folder).unwrap().map(|file| file.unwrap());
    let file = |file: std::fs::DirEntry| (file.file_name(), std::fs::read(file.path()).unwrap());
    files.map(file).collect()
}

fn pragma(conn: &Connection, name: &str) -> String {
    let value: rusqlite::types::Value =
        conn.query_row(&format!("PRAGMA {name}"), [], |row| row.get(0)).unwrap();
    match value {
        rusqlite::types::Value::Integer(number) => number.to_string(),
        rusqlite::types::Value::Text(text) => text,
        other => panic!("{other:?}"),
    }
}

#[test]
fn the_schema_version_is_pinned_to_the_migrations() {
    let mut conn = Connection::open_in_memory().unwrap();
    migrations().unwrap().to_latest(&mut conn).unwrap();
    assert_eq!(pragma(&conn, "user_version"), SCHEMA_VERSION.to_string());
    assert_eq!(SCHEMA_VERSION, 4, "a new migration needs a new number here and an old-to-new test");
    migrations().unwrap().validate().unwrap();
}

/// A record of the first schema opens, keeps its photos, and takes what the second adds.
#[test]
fn a_record_of_the_first_schema_is_brought_up_to_date() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let mut device = Device::with(Store::open(&path).unwrap(), "bench", 1);
    let unit = device.create("Kitchen set", false);
    let inspection = device.inspect(unit);
    let photo = device.id();
    let finding = Some("answers.plug".to_owned());
    let sha256 = "a".repeat(64);
    let row = PhotoRow { finding, sha256, width: 4, height: 3, hints: Vec::new() };
    let added = Change::PhotoAdded { photo, row: row.value() };
    device.act(&in_inspection(unit, inspection, vec![added])).unwrap();
    let state = Change::UnitState("in_repair".to_owned());
    device.act(&of_unit(unit, vec![state])).unwrap();
    drop(device);
    let old = Connection::open(&path).unwrap();
    old.execute_batch(BACK_TO_THE_FIRST).unwrap();
    drop(old);
    let store = Store::open(&path).unwrap();
    let photos = store.photos(inspection).unwrap();
    assert_eq!(photos.len(), 1);
    assert_eq!((photos[0].marks.clone(), photos[0].before), (json!([]), None));
    let filter = QueueFilter { text: "kitch".to_owned(), ..QueueFilter::default() };
    let page = store.queue(&filter, QueueOrder::Hazard, None, 50).unwrap();
    assert_eq!(page.rows.len(), 1, "the queue that the third brings is filled");
    assert_eq!(page.rows[0].unit.state_by.as_deref(), Some("Inspector of bench"));
}

/// A record of the third schema, whose queue the fourth works out anew with what stands in it.
#[test]
fn the_queue_of_a_record_of_the_third_schema_is_worked_out_anew() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let mut device = Device::with(Store::open(&path).unwrap(), "bench", 1);
    for name in ["Kitchen set", "Gramophone"] {
        let unit = device.create(name, false);
        let inspection = device.inspect(unit);
        device.find((unit, inspection), "answers.back", json!("missing"));
    }
    let before = (rows(&device.store, "queue"), rows(&device.store, "unit_text"));
    drop(device);
    let old = Connection::open(&path).unwrap();
    let back = "UPDATE queue SET place = place >> 12; UPDATE unit_text SET facets = 'f0', rowid = rowid >> 12;
        PRAGMA user_version = 3;";
    old.execute_batch(back).unwrap();
    drop(old);
    let store = Store::open(&path).unwrap();
    assert_eq!((rows(&store, "queue"), rows(&store, "unit_text")), before);
}

#[test]
fn the_settings_hold() {
    let folder = tempfile::tempdir().unwrap();
    let store = Store::open(&folder.path().join("record.db")).unwrap();
    for (name, value) in [
        ("journal_mode", "wal"),
        ("synchronous", "2"),
        ("foreign_keys", "1"),
        ("recursive_triggers", "1"),
        ("secure_delete", "1"),
        ("temp_store", "2"),
        ("trusted_schema", "0"),
        ("cell_size_check", "1"),
        ("busy_timeout", "5000"),
    ] {
        assert_eq!(pragma(&store.conn, name), value, "{name}");
    }
}

#[test]
fn the_version_stands_in_the_header_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let _open = Store::open(&path).unwrap();
    let header = std::fs::read(&path).unwrap();
    assert!(header.starts_with(b"SQLite format 3\0"));
    assert_eq!(header[60..64], SCHEMA_VERSION.to_be_bytes());
    assert_eq!(header[68..72], *b"CCHS");
}

#[test]
fn a_newer_file_is_refused_and_left_as_it_was() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    drop(Store::open(&path).unwrap());
    let newer = Connection::open(&path).unwrap();
    newer.pragma_update(None, "user_version", 99).unwrap();
    assert_eq!(pragma(&newer, "journal_mode"), "wal");
    drop(newer);
    let before = contents(folder.path());
    let refused = Store::open(&path).unwrap_err();
    assert!(matches!(refused, StoreError::NewerFile { found: 99, known: SCHEMA_VERSION }));
    assert_eq!(contents(folder.path()), before);
    assert_eq!(before.len(), 1);
}

#[test]
fn a_newer_file_is_refused_while_its_own_app_has_it_open() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    drop(Store::open(&path).unwrap());
    let newer = Connection::open(&path).unwrap();
    newer.pragma_update(None, "user_version", 99).unwrap();
    newer.pragma_update(None, "wal_checkpoint", "TRUNCATE").unwrap();
    newer.execute("CREATE TABLE later (x)", []).unwrap();
    let before = contents(folder.path());
    assert_eq!(before.len(), 3, "the file, its log and its index");
    assert!(matches!(Store::open(&path), Err(StoreError::NewerFile { .. })));
    assert_eq!(contents(folder.path()), before);
}

#[test]
fn files_of_others_are_refused_and_left_as_they_were() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    std::fs::write(path("letter"), "Dear reader, this is no database.").unwrap();
    std::fs::write(path("long"), vec![b'x'; 10_000]).unwrap();
    std::fs::write(path("magic"), b"SQLite format 3\0").unwrap();
    let foreign = Connection::open(path("foreign")).unwrap();
    foreign.execute("CREATE TABLE stamps (x)", []).unwrap();
    drop(foreign);
    let before = contents(folder.path());
    for name in ["letter", "long", "magic", "foreign"] {
        let refused = Store::open(&path(name)).unwrap_err();
        assert!(matches!(refused, StoreError::NotOurFile), "{name}: {refused}");
    }
    assert_eq!(contents(folder.path()), before);
    assert!(matches!(Store::open(folder.path()), Err(StoreError::Io(_))));
}

#[test]
fn an_empty_file_is_a_new_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    std::fs::write(&path, "").unwrap();
    assert_eq!(Store::open(&path).unwrap().next_number().unwrap(), 1);
}

#[test]
fn an_older_file_in_wal_mode_is_brought_up() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let old = Connection::open(&path).unwrap();
    let id = i32::from_be_bytes(*b"CCHS");
    old.pragma_update(None, "application_id", id).unwrap();
    old.pragma_update(None, "journal_mode", "WAL").unwrap();
    drop(old);
    let _open = Store::open(&path).unwrap();
    assert_eq!(std::fs::read(&path).unwrap()[60..64], SCHEMA_VERSION.to_be_bytes());
}

#[test]
fn reopening_keeps_everything() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("record.db");
    let mut device = Device::with(Store::open(&path).unwrap(), "bench", 1);
    let unit = device.create("Kitchen radio", false);
    let inspection = device.inspect(unit);
    device.find((unit, inspection), "values.line_capacitor", json!({"farads": 4.7e-8}));
    let before = (rows(&device.store, "event"), projections(&device.store));
    // Another connection sees it before the first is closed: it was committed.
    let beside = Connection::open(&path).unwrap();
    assert_eq!(rows_of(&beside, "event"), before.0);
    drop(beside);
    drop(device);
    let store = Store::open(&path).unwrap();
    assert_eq!((rows(&store, "event"), projections(&store)), before);
}
