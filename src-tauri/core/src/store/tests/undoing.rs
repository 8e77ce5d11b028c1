//! Undo and redo.

use super::*;

#[test]
fn each_undo_takes_back_one_action_and_each_redo_does_it_again() {
    let (mut device, unit, inspection) = bench();
    let place = (unit, inspection);
    device.find(place, "answers.plug", json!("three_pins"));
    let original = device.store.findings(inspection).unwrap()[0].clone();
    device.find(place, "answers.plug", json!("no_plug"));
    let changes = vec![
        finding("answers.back", json!("fitted")),
        finding("answers.plug", json!("battery_only")),
    ];
    device.act(&in_inspection(unit, inspection, changes)).unwrap();

    let changed = device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(changed.events.len(), 2);
    assert_eq!(device.values(inspection), answers(&[("plug", "no_plug")]));
    device.undo(unit, Some(inspection)).unwrap();
    let restored = device.store.findings(inspection).unwrap()[0].clone();
    assert_eq!(restored.value, original.value);
    assert_eq!((restored.author, restored.at), (original.author, original.at));
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.values(inspection), []);

    device.redo(unit, Some(inspection)).unwrap();
    assert_eq!(device.values(inspection), answers(&[("plug", "three_pins")]));
    device.redo(unit, Some(inspection)).unwrap();
    device.redo(unit, Some(inspection)).unwrap();
    let all = answers(&[("back", "fitted"), ("plug", "battery_only")]);
    assert_eq!(device.values(inspection), all);
    assert_eq!(device.redo(unit, Some(inspection)), None);
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.values(inspection), answers(&[("plug", "no_plug")]));
}

#[test]
fn after_something_new_there_is_nothing_to_redo() {
    let (mut device, unit, inspection) = bench();
    let scope = Scope { unit, inspection: Some(inspection) };
    device.find((unit, inspection), "answers.back", json!("fitted"));
    device.undo(unit, Some(inspection)).unwrap();
    assert!(device.store.next_redo(scope, "bench").unwrap().is_some());
    device.find((unit, inspection), "answers.fuse", json!("none"));
    assert_eq!(device.store.next_redo(scope, "bench").unwrap(), None);
    assert_eq!(device.redo(unit, Some(inspection)), None);
    assert_eq!(device.values(inspection), answers(&[("fuse", "none")]));
}

#[test]
fn the_same_undo_twice_takes_back_one_action() {
    let (mut device, unit, inspection) = bench();
    let place = (unit, inspection);
    device.find(place, "answers.back", json!("fitted"));
    device.find(place, "answers.fuse", json!("none"));
    let (stamp, id) = (device.stamp(), device.id());
    let scope = Scope { unit, inspection: None };
    for _ in 0..2 {
        device.store.undo(&stamp, scope, &mut || id).unwrap().unwrap();
    }
    assert_eq!(device.values(inspection), answers(&[("back", "fitted")]));
}

#[test]
fn an_undone_start_hides_the_inspection_and_a_redo_shows_it() {
    let (mut device, unit, inspection) = bench();
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.store.latest_inspection(unit).unwrap(), None);
    assert_eq!(device.store.inspection(inspection).unwrap(), None);
    device.redo(unit, Some(inspection)).unwrap();
    assert!(device.store.inspection(inspection).unwrap().is_some());
}

#[test]
fn an_inspection_is_undone_apart_from_the_unit() {
    let (mut device, unit, inspection) = bench();
    device.find((unit, inspection), "answers.back", json!("fitted"));
    device.rename(unit, "Hall radio").unwrap();
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.values(inspection), []);
    assert_eq!(device.name_of(unit).as_deref(), Some("Hall radio"));
    device.undo(unit, None).unwrap();
    assert_eq!(device.name_of(unit).as_deref(), Some("Kitchen radio"));
}

#[test]
fn undoing_the_creation_leaves_a_tombstone_alone() {
    let mut device = Device::new("bench", 1);
    let unit = device.create("Kitchen radio", false);
    device.undo(unit, None).unwrap();
    assert_eq!(device.store.unit(unit).unwrap(), None);
    let left = device.store.events(unit).unwrap();
    assert_eq!(left.len(), 1);
    assert!(matches!(left[0].typed(), Change::UnitDeleted(_)));
    assert_eq!(device.undo(unit, None), None);
    assert_eq!(device.redo(unit, None), None);
    assert!(matches!(device.rename(unit, "x"), Err(StoreError::NoSuchUnit(_))));
}

#[test]
fn a_creation_is_not_undone_under_later_work() {
    let mut here = Device::new("bench", 1);
    let (unit, inspection) = (here.id(), here.id());
    let changes = vec![Change::UnitCreated { number: 1 }, Change::InspectionStarted];
    here.act(&in_inspection(unit, inspection, changes)).unwrap();
    here.rename(unit, "Hall radio").unwrap();
    assert_eq!(here.undo(unit, Some(inspection)), None);
    here.undo(unit, None).unwrap();
    let mut there = Device::new("phone", 2);
    there.store.append_foreign(here.outgoing()).unwrap();
    there.rename(unit, "Stage radio").unwrap();
    here.store.append_foreign(there.outgoing()).unwrap();
    assert_eq!(here.undo(unit, None), None);
    assert_eq!(here.name_of(unit).as_deref(), Some("Stage radio"));
}

#[test]
fn only_this_devices_actions_are_undone_and_only_while_they_hold() {
    let (mut here, unit, inspection) = bench();
    let mut there = Device::new("phone", 2);
    let place = (unit, inspection);
    here.find(place, "answers.fuse", json!("none"));
    here.find(place, "answers.back", json!("fitted"));
    there.store.append_foreign(here.outgoing()).unwrap();
    assert_eq!(there.undo(unit, None), None);
    there.at = here.at + 100;
    there.find(place, "answers.back", json!("missing"));
    here.store.append_foreign(there.outgoing()).unwrap();
    // `back` was answered anew by the phone, so the action before it is the one to take back.
    let changed = here.undo(unit, None).unwrap();
    assert!(changed.subjects.contains("finding.answers.fuse"));
    assert_eq!(here.values(inspection), answers(&[("back", "missing")]));
}
