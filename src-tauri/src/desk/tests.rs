//! The desk keeps answering, whatever becomes of the record.

use std::sync::Arc;
use std::time::Instant;

use coldchassis_core::words::Message;
use coldchassis_core::workbench::{NewUnit, look_at_bundle};
use serde_json::json;

use super::*;

fn unit() -> NewUnit {
    NewUnit { supply: json!({"volts": 120, "hertz": 60}), ..NewUnit::default() }
}

#[test]
fn a_record_of_another_program_is_answered_every_time_and_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let record = folder.path().join("record.coldchassis");
    std::fs::write(&record, "a letter to a friend").unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    for _ in 0..2 {
        let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
        assert_eq!(trouble.code, Code::NotOurFile);
        assert!(trouble.sentence.contains("not a record"), "{}", trouble.sentence);
    }
    assert_eq!(std::fs::read_to_string(&record).unwrap(), "a letter to a friend");
}

#[test]
fn a_folder_that_could_not_be_used_is_tried_again() {
    let home = tempfile::tempdir().unwrap();
    let folder = home.path().join("data");
    std::fs::write(&folder, "a file where the folder has to be").unwrap();
    let desk = Desk::at(Ok(folder.clone()));
    let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
    assert_eq!(trouble.code, Code::Storage);
    std::fs::remove_file(&folder).unwrap();
    desk.with(|bench| bench.create_unit(&unit())).unwrap();
    assert_eq!(desk.with(|bench| bench.units(None)).unwrap().len(), 1);
}

/// Twenty inspections, so that a copy of the record is made beside them.
fn shop(desk: &Desk) {
    for _ in 0..20 {
        desk.with(|bench| bench.create_unit(&unit())).unwrap();
    }
    desk.keep_up(true).unwrap();
    assert_eq!(desk.recovery(|recovery| recovery.snapshots()).unwrap().len(), 1);
}

#[test]
fn a_copy_that_could_not_be_made_is_told_until_one_is_made() {
    let folder = tempfile::tempdir().unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    let copies = folder.path().join("snapshots");
    std::fs::write(&copies, "a file where the copies have to be").unwrap();
    for _ in 0..20 {
        desk.with(|bench| bench.create_unit(&unit())).unwrap();
    }
    assert_eq!(desk.copy_trouble(), None);
    for first in [true, false] {
        let failed = desk.keep_up(first).unwrap_err();
        assert_eq!(desk.copy_trouble(), Some(failed));
    }
    std::fs::remove_file(&copies).unwrap();
    desk.keep_up(false).unwrap();
    assert_eq!(desk.copy_trouble(), None);
    assert_eq!(desk.recovery(|recovery| recovery.snapshots()).unwrap().len(), 1);
}

#[test]
fn a_damaged_record_is_answered_and_a_copy_of_it_put_back() {
    let folder = tempfile::tempdir().unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    shop(&desk);
    let record = folder.path().join("record.coldchassis");
    desk.closed(|_| {
        let mut bytes = std::fs::read(&record).unwrap();
        bytes[..100].fill(0);
        std::fs::write(&record, bytes).unwrap();
        Ok(())
    })
    .unwrap();
    let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
    assert_eq!(trouble.code, Code::Damaged, "{trouble:?}");
    desk.closed(|recovery| recovery.restore(Some(1), true)).unwrap();
    assert_eq!(desk.with(|bench| bench.units(None)).unwrap().len(), 20);
}

#[test]
fn damage_that_is_found_beside_the_window_shuts_the_record() {
    let folder = tempfile::tempdir().unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    shop(&desk);
    let found = Problem::new(Code::Damaged, Message::new("error-damaged"));
    desk.long(|| Err(found)).unwrap_err();
    let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
    assert_eq!(trouble.code, Code::Damaged);
    desk.closed(|recovery| recovery.restore(Some(1), true)).unwrap();
    desk.with(|bench| bench.units(None)).unwrap();
}

/// Waits until every class is worked out, for less than a round.
fn all_judged(desk: &Desk) {
    let start = Instant::now();
    while desk.with(|bench| bench.pending()).unwrap() > 0 {
        assert!(start.elapsed() < ROUND / 2, "nobody was woken");
        std::thread::sleep(Duration::from_millis(10));
    }
}

#[test]
fn classes_that_come_in_or_are_put_back_are_worked_out_at_once() {
    let (away, here) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let other = Desk::at(Ok(away.path().to_owned()));
    shop(&other);
    let bundle = away.path().join("out.coldbundle");
    other.with(|bench| bench.export_work(None)).unwrap().run(&bundle).unwrap();
    let desk = Arc::new(Desk::at(Ok(here.path().to_owned())));
    let beside = Arc::clone(&desk);
    // It rests by the time that the bundle is taken in, and ends with the process.
    std::thread::spawn(move || beside.keep_on());
    std::thread::sleep(Duration::from_millis(500));
    let files = desk.with(|bench| bench.photo_files()).unwrap();
    let work = look_at_bundle(&bundle, &files).unwrap();
    let taken = desk.with(|bench| bench.keep_bundle(work)).unwrap();
    assert_eq!(taken.units.len(), 20);
    desk.wake();
    all_judged(&desk);
    // What can be read of the file has no classes: they are this device's own to work out.
    desk.closed(|recovery| recovery.restore(None, true)).unwrap();
    assert_eq!(desk.with(|bench| bench.units(None)).unwrap().len(), 20);
    all_judged(&desk);
}

#[test]
fn whoever_comes_upon_damage_shuts_the_record() {
    let folder = tempfile::tempdir().unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    shop(&desk);
    let found = Problem::new(Code::Damaged, Message::new("error-damaged"));
    desk.with::<()>(|_| Err(found)).unwrap_err();
    let trouble = desk.with(|bench| bench.create_unit(&unit())).unwrap_err();
    assert_eq!(trouble.code, Code::Damaged, "nothing more is written");
    desk.closed(|recovery| recovery.restore(Some(1), true)).unwrap();
    assert_eq!(desk.with(|bench| bench.units(None)).unwrap().len(), 20);
}

/// Who put a new unit into a state.
fn author(desk: &Desk) -> String {
    let made = desk.with(|bench| bench.create_unit(&unit())).unwrap();
    let state = desk.with(|bench| bench.set_unit_state(made.unit.id, "in_repair"));
    state.unwrap().state_by
}

#[test]
fn the_inspector_stays_the_same_whatever_is_done_to_the_record() {
    let folder = tempfile::tempdir().unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    shop(&desk);
    desk.set_inspector("Odalind Quist".to_owned(), "en".to_owned()).unwrap();
    assert_eq!(author(&desk), "Odalind Quist");
    desk.closed(|recovery| recovery.restore(Some(1), true)).unwrap();
    assert_eq!(author(&desk), "Odalind Quist", "after a copy was put back");
    let to = folder.path().join("out.coldbundle");
    desk.closed(|recovery| recovery.export_readable(device::now(), &to)).unwrap();
    assert_eq!(author(&desk), "Odalind Quist", "after what can be read was given away");
    desk.with::<()>(|_| panic!("broken inside")).unwrap_err();
    assert_eq!(author(&desk), "Odalind Quist", "after a failure from inside");
    desk.set_inspector("x".repeat(201), "en".to_owned()).unwrap_err();
    desk.closed(|_| Ok(())).unwrap();
    assert_eq!(author(&desk), "Odalind Quist", "a name that was refused is nobody's");
}

#[test]
fn whoever_says_their_name_before_the_record_can_be_opened_is_known_then() {
    let home = tempfile::tempdir().unwrap();
    let folder = home.path().join("data");
    std::fs::write(&folder, "a file where the folder has to be").unwrap();
    let desk = Desk::at(Ok(folder.clone()));
    desk.set_inspector("Odalind Quist".to_owned(), "en".to_owned()).unwrap_err();
    std::fs::remove_file(&folder).unwrap();
    assert_eq!(author(&desk), "Odalind Quist");
}

#[test]
fn a_missing_folder_is_answered() {
    let desk = Desk::at(Err(device::storage("no home".to_owned())));
    let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
    assert_eq!(trouble.code, Code::Storage);
    assert!(trouble.sentence.contains("no home"), "{}", trouble.sentence);
}

#[test]
fn a_command_that_fails_from_inside_is_answered_and_the_next_one_works() {
    let folder = tempfile::tempdir().unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    let made = desk.with(|bench| bench.create_unit(&unit())).unwrap();
    let trouble = desk.with::<()>(|_| panic!("broken inside")).unwrap_err();
    assert_eq!(trouble.code, Code::Storage);
    assert!(trouble.sentence.contains("broken inside"), "{}", trouble.sentence);
    assert_eq!(desk.with(|bench| bench.inspection(made.id)).unwrap().id, made.id);
}

#[test]
fn trouble_has_the_shape_that_the_screens_read() {
    let folder = tempfile::tempdir().unwrap();
    let desk = Desk::at(Ok(folder.path().to_owned()));
    let bad = NewUnit { supply: json!({"volts": 0, "hertz": 60}), ..NewUnit::default() };
    let trouble = json!(desk.with(|bench| bench.create_unit(&bad)).unwrap_err());
    assert_eq!(trouble["code"], "bad_input");
    assert_eq!(trouble["field"], "supply.volts");
    assert!(trouble["sentence"].as_str().unwrap().starts_with("supply.volts"));
    assert_eq!(trouble.as_object().unwrap().len(), 3);
}
