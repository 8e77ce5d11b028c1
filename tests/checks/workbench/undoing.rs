//! Undo: each command taken back leaves the view that was before it, whole.

use coldchassis_core::workbench::{InspectionView, Problem, Workbench};
use serde_json::json;
use uuid::Uuid;

use super::bench::{Record, answer_some, begin, json_of, owned, seen};

const ACCESS: &[&str] = &["outside", "cover_off"];

type Command = fn(&mut Workbench, Uuid) -> Result<InspectionView, Problem>;

/// Every command on an inspection, each changing something.
const COMMANDS: &[(&str, Command)] = &[
    ("a first answer", |door, id| door.answer(id, "transformer", json!("separate_traced"))),
    ("a changed answer", |door, id| door.answer(id, "bare_metal", json!(["none_anywhere"]))),
    ("a first value", |door, id| door.set_value(id, "network_capacitor", json!({"farads": 1e-9}))),
    ("a changed value", |door, id| {
        door.set_value(id, "line_capacitor", json!({"farads": 1e-7, "measured": true}))
    }),
    ("the rating plate", |door, id| door.set_rated(id, json!({"volts": 230, "hertz": 50}))),
    ("the tubes", |door, id| door.set_tubes(id, json!(["12SA7", "50L6GT"]))),
    ("a reading", |door, id| door.set_reading(id, "ohms_b_chassis_on", json!(0.4))),
    ("a withdrawn answer", |door, id| door.withdraw(id, "answers.bare_metal")),
    ("a withdrawn value", |door, id| door.withdraw(id, "values.line_capacitor")),
    ("access", |door, id| door.set_access(id, &[])),
    ("the supply", |door, id| door.set_supply(id, json!({"volts": 230, "hertz": 50}))),
    ("the name", |door, id| door.rename(id, "Green set")),
];

fn inspected(door: &mut Workbench) -> Uuid {
    let inspection = begin(door, ACCESS);
    door.set_value(inspection, "line_capacitor", json!({"farads": 4.7e-9})).unwrap();
    answer_some(door, inspection);
    inspection
}

#[test]
fn each_command_taken_back_gives_the_view_before_it() {
    let mut wrong = Vec::new();
    for (name, command) in COMMANDS {
        let record = Record::fixed();
        let mut door = record.open();
        let inspection = inspected(&mut door);
        let before = seen(&mut door, inspection);
        let between = json_of(&command(&mut door, inspection).expect(name));
        assert_ne!(between, before, "{name} changes the view");
        match door.undo(inspection).unwrap() {
            Some(view) if json_of(&view) == before => {}
            Some(view) => {
                let was: Vec<_> = view.findings.iter().map(|found| &found.path).collect();
                let (unit, supply) = (&view.unit.name, view.supply.volts);
                wrong.push(format!("{name}: left {unit}, {supply} V, {was:?}"));
            }
            None => wrong.push(format!("{name}: nothing to undo")),
        }
    }
    assert!(wrong.is_empty(), "undo did not restore the view:\n{}", wrong.join("\n"));
}

#[test]
fn undo_twice_takes_back_two_commands() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, ACCESS);
    let first = json_of(&door.answer(inspection, "plug", json!("battery_only")).unwrap());
    let second = json_of(&door.answer(inspection, "plug", json!("no_plug")).unwrap());
    door.set_value(inspection, "line_capacitor", json!({"farads": 1e-9})).unwrap();
    assert_eq!(json_of(&door.undo(inspection).unwrap().unwrap()), second);
    assert_eq!(json_of(&door.undo(inspection).unwrap().unwrap()), first);
    // Something new after an undo, and back again.
    door.answer(inspection, "plug", json!("three_pins")).unwrap();
    assert_eq!(json_of(&door.undo(inspection).unwrap().unwrap()), first);
    let empty = door.undo(inspection).unwrap().unwrap();
    assert_eq!(empty.findings, []);
}

#[test]
fn what_is_put_back_keeps_its_author_and_time() {
    let record = Record::stepping(1000);
    let mut door = record.open();
    let inspection = begin(&mut door, ACCESS);
    let before = door.answer(inspection, "plug", json!("battery_only")).unwrap().findings;
    let changed = door.answer(inspection, "plug", json!("no_plug")).unwrap().findings;
    assert!(changed[0].at > before[0].at);
    assert_eq!(door.undo(inspection).unwrap().unwrap().findings, before);
    door.withdraw(inspection, "answers.plug").unwrap();
    assert_eq!(door.undo(inspection).unwrap().unwrap().findings, before);
}

#[test]
fn an_undo_is_kept_with_its_verdict() {
    let record = Record::stepping(5);
    let mut door = record.open();
    let inspection = inspected(&mut door);
    door.answer(inspection, "plug", json!("battery_only")).unwrap();
    let undone = door.undo(inspection).unwrap().unwrap();
    drop(door);
    let mut door = record.open();
    assert_eq!(seen(&mut door, inspection), json_of(&undone));
    let listed = door.units(None).unwrap();
    assert_eq!(listed[0].treat_as.as_deref(), Some(undone.verdict.treat_as));
}

#[test]
fn with_nothing_of_its_own_to_undo_a_device_changes_nothing() {
    let record = Record::stepping(5);
    let inspection = inspected(&mut record.open());
    let mut other = record.open_on("there");
    let (before, rows) = (seen(&mut other, inspection), record.rows());
    assert_eq!(other.undo(inspection).unwrap(), None);
    assert_eq!(seen(&mut other, inspection), before);
    assert_eq!(record.rows(), rows);

    // Its own answer it takes back, and then there is nothing again.
    other.answer(inspection, "plug", json!("battery_only")).unwrap();
    let undone = other.undo(inspection).unwrap().unwrap();
    assert_eq!(json_of(&undone)["findings"], before["findings"]);
    assert_eq!(other.undo(inspection).unwrap(), None);
    assert_eq!(json_of(&undone), seen(&mut other, inspection));
}

#[test]
fn undo_in_one_inspection_leaves_the_other() {
    let record = Record::fixed();
    let mut door = record.open();
    let first = inspected(&mut door);
    let unit = door.inspection(first).unwrap().unit.id;
    let second = door.start_inspection(unit, &owned(ACCESS)).unwrap().id;
    door.answer(second, "plug", json!("battery_only")).unwrap();
    let kept = seen(&mut door, second);
    let undone = door.undo(first).unwrap().unwrap();
    assert!(!undone.findings.iter().any(|found| found.path == "answers.tube_count"));
    assert_eq!(seen(&mut door, second)["findings"], kept["findings"]);
    assert_eq!(seen(&mut door, second)["verdict"], kept["verdict"]);
}

#[test]
fn the_start_of_an_inspection_and_the_unit_itself_are_never_taken_back() {
    let record = Record::fixed();
    let mut door = record.open();
    let first = begin(&mut door, &[]);
    let unit = door.inspection(first).unwrap().unit.id;
    let (before, rows) = (seen(&mut door, first), record.rows());
    assert_eq!(door.undo(first).unwrap(), None);
    assert_eq!((seen(&mut door, first), record.rows()), (before, rows));

    let second = door.start_inspection(unit, &[]).unwrap().id;
    let (before, rows) = (seen(&mut door, second), record.rows());
    assert_eq!(door.undo(second).unwrap(), None);
    assert_eq!((seen(&mut door, second), record.rows()), (before, rows));
    assert_eq!(door.undo(first).unwrap(), None, "the other inspection's start is not this one's");
}
