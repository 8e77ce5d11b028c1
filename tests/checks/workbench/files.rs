//! The record as a file: what is in it comes back, and what is not ours is left alone.

use coldchassis_core::workbench::{Code, Workbench};
use serde_json::json;

use super::bench::{Record, answer_some, begin, json_of, seen};

#[test]
fn answers_are_there_after_the_record_was_closed() {
    let record = Record::stepping(5);
    let mut door = record.open();
    let inspection = begin(&mut door, &["outside", "cover_off", "meter"]);
    answer_some(&mut door, inspection);
    let value = json!({"farads": 4.7e-9, "measured": true});
    door.set_value(inspection, "line_capacitor", value).unwrap();
    door.set_reading(inspection, "ohms_a_b_on", json!("OL")).unwrap();
    let before = json_of(&door.set_tubes(inspection, json!(["12SA7"])).unwrap());
    let list = door.units(None).unwrap();
    drop(door);
    let mut door = record.open();
    assert_eq!(seen(&mut door, inspection), before);
    assert_eq!(door.units(None).unwrap(), list);
    let next = begin(&mut door, &[]);
    assert_eq!(door.inspection(next).unwrap().unit.label, "U-0002");
}

#[test]
fn every_answer_is_on_the_disk_when_it_is_given() {
    let record = Record::stepping(5);
    let mut door = record.open();
    let inspection = begin(&mut door, &[]);
    door.answer(inspection, "plug", json!("no_plug")).unwrap();
    // Nothing is closed first: as after a dead battery.
    let taken = rusqlite::Connection::open(record.path()).unwrap().query_row(
        "SELECT value FROM finding WHERE key = 'answers.plug'",
        [],
        |row| row.get::<_, String>(0),
    );
    assert_eq!(taken.unwrap(), r#""no_plug""#);
}

/// What opening a file that is not to be opened gives; its folder must stay as it was.
fn refused(record: &Record) -> Code {
    let before = record.bytes();
    let problem = match Workbench::open(&record.path(), record.around("here")) {
        Err(problem) => problem,
        Ok(_) => panic!("the file was opened"),
    };
    assert!(record.bytes() == before, "the file was touched");
    let words = coldchassis_core::words::Words::of("en");
    assert!(words.has(&problem.message.id), "{problem:?}");
    assert_eq!(problem.field, None);
    problem.code
}

#[test]
fn a_file_of_a_newer_version_is_refused_and_not_touched() {
    let record = Record::fixed();
    begin(&mut record.open(), &[]);
    let file = rusqlite::Connection::open(record.path()).unwrap();
    let version: i64 = file.pragma_query_value(None, "user_version", |row| row.get(0)).unwrap();
    file.pragma_update(None, "user_version", version + 1).unwrap();
    drop(file);
    assert_eq!(refused(&record), Code::NewerFile);

    // The same file opens once the version is what it was: nothing else was in the way.
    let file = rusqlite::Connection::open(record.path()).unwrap();
    file.pragma_update(None, "user_version", version).unwrap();
    drop(file);
    assert_eq!(record.open().units(None).unwrap().len(), 1);
}

#[test]
fn a_file_that_is_no_record_is_refused_and_not_touched() {
    let texts: [&[u8]; 3] = [b"name,place\n", &[0; 4096], b"SQLite format 3\0"];
    for text in texts {
        let record = Record::fixed();
        std::fs::write(record.path(), text).unwrap();
        assert_eq!(refused(&record), Code::NotOurFile);
    }
    let record = Record::fixed();
    let other = rusqlite::Connection::open(record.path()).unwrap();
    other.execute_batch("CREATE TABLE event (id TEXT); PRAGMA user_version = 1;").unwrap();
    drop(other);
    assert_eq!(refused(&record), Code::NotOurFile);
}
