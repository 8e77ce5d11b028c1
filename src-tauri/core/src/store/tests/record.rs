//! Appending, who wins, and what guards the log.

use super::*;

#[test]
fn an_action_is_stored_whole_and_says_what_it_changed() {
    let (mut device, unit, inspection) = bench();
    let changes = vec![
        Change::UnitPlace("Shelf 3".to_owned()),
        finding("answers.plug", json!("two_equal_blades")),
        finding("readings.ohms_b_chassis_on", json!(0.4)),
    ];
    let action = in_inspection(unit, inspection, changes);
    let changed = device.act(&action).unwrap();
    assert_eq!(changed.events.len(), 3);
    assert!(changed.units.contains(&unit) && changed.inspections.contains(&inspection));
    assert!(changed.subjects.contains("finding.answers.plug"));
    let found = device.store.unit(unit).unwrap().unwrap();
    assert_eq!(found.name.as_deref(), Some("Kitchen radio"));
    assert_eq!(found.place.as_deref(), Some("Shelf 3"));
    assert_eq!(found.label(), "U-0001");
    assert_eq!(found.changed_at, device.at);
    let findings = device.store.findings(inspection).unwrap();
    assert_eq!(findings.len(), 2);
    assert_eq!(findings[0].author, "Inspector of bench");
    assert_eq!(findings[1].value, json!(0.4));
    let latest = device.store.latest_inspection(unit).unwrap().unwrap();
    assert_eq!((latest.id, latest.access), (inspection, Some(json!(["outside"]))));
}

#[test]
fn a_bad_change_leaves_nothing_of_its_action() {
    let (mut device, unit, inspection) = bench();
    let (events, views) = (rows(&device.store, "event"), projections(&device.store));
    let good = finding("answers.plug", json!("no_plug"));
    let bad = finding("answers.with space", json!("x"));
    let action = in_inspection(unit, inspection, vec![good.clone(), bad]);
    let refused = device.act(&action).unwrap_err();
    assert!(matches!(refused, StoreError::BadEvent { field: "subject", .. }));
    let twice = in_inspection(unit, inspection, vec![good.clone(), good.clone()]);
    assert!(matches!(device.act(&twice), Err(StoreError::Repeated(_))));
    let astray = device.act(&of_unit(unit, vec![good]));
    assert!(matches!(astray, Err(StoreError::NeedsInspection(_))));
    assert_eq!(rows(&device.store, "event"), events);
    assert_eq!(projections(&device.store), views);
}

#[test]
fn only_what_is_there_can_be_changed_and_only_once_created() {
    let (mut device, unit, inspection) = bench();
    let (other, nobody) = (device.create("Other", false), device.id());
    let name = vec![Change::UnitName("x".to_owned())];
    let missing = device.act(&of_unit(nobody, name.clone()));
    assert!(matches!(missing, Err(StoreError::NoSuchUnit(id)) if id == nobody));
    let missing = device.act(&in_inspection(unit, nobody, name.clone()));
    assert!(matches!(missing, Err(StoreError::NoSuchInspection(id)) if id == nobody));
    let again = device.act(&of_unit(unit, vec![Change::UnitCreated { number: 9 }]));
    assert!(matches!(again, Err(StoreError::AlreadyThere(id)) if id == unit));
    let again = device.act(&in_inspection(unit, inspection, vec![Change::InspectionStarted]));
    assert!(matches!(again, Err(StoreError::AlreadyThere(id)) if id == inspection));
    let astray = device.act(&in_inspection(other, inspection, name));
    assert!(matches!(astray, Err(StoreError::OtherUnit(id)) if id == inspection));
    for subject in ["unit.created", "unit.deleted"] {
        let subject = subject.to_owned();
        let reserved = device.act(&of_unit(unit, vec![Change::Withdrawn { subject }]));
        assert!(matches!(reserved, Err(StoreError::Reserved(_))));
    }
}

#[test]
fn the_same_intent_twice_is_stored_once() {
    let (mut device, unit, inspection) = bench();
    let stamp = device.stamp();
    let change = finding("answers.back", json!("fitted"));
    let action = in_inspection(unit, inspection, vec![change]);
    assert_eq!(device.act_as(&stamp, &action).unwrap().events.len(), 1);
    let events = rows(&device.store, "event");
    assert_eq!(device.act_as(&stamp, &action).unwrap(), Changed::default());
    assert_eq!(rows(&device.store, "event"), events);
    let sent = device.outgoing();
    let again = device.store.append_foreign(sent.clone()).unwrap();
    assert_eq!((again.events.len(), again.skipped), (0, sent.len()));
    assert_eq!(rows(&device.store, "event"), events);
}

#[test]
fn a_repeated_id_of_our_own_is_refused() {
    let (mut device, unit, _) = bench();
    let taken = device.outgoing()[0].id;
    let (stamp, action) = (device.stamp(), of_unit(unit, vec![Change::UnitKind("x".into())]));
    let refused = device.store.append(&stamp, &action, &mut || taken);
    assert!(matches!(refused, Err(StoreError::BadEvent { field: "id", .. })));
}

#[test]
fn what_supersedes_wins_even_when_its_clock_is_behind() {
    let (mut device, unit, inspection) = bench();
    device.find((unit, inspection), "answers.plug", json!("three_pins"));
    device.at -= 500_000;
    device.find((unit, inspection), "answers.plug", json!("no_plug"));
    assert_eq!(device.values(inspection), answers(&[("plug", "no_plug")]));
}

#[test]
fn side_by_side_the_later_wins_and_then_the_larger_id() {
    let (mut here, unit, inspection) = bench();
    let mut there = Device::new("phone", 2);
    there.store.append_foreign(here.outgoing()).unwrap();
    there.at = here.at;
    let place = (unit, inspection);
    here.find(place, "answers.back", json!("fitted"));
    there.find(place, "answers.back", json!("missing"));
    there.at += 5;
    there.find(place, "answers.fuse", json!("none"));
    here.at += 50;
    here.find(place, "answers.fuse", json!("pin_a_leg"));
    here.store.append_foreign(there.outgoing()).unwrap();
    there.store.append_foreign(here.outgoing()).unwrap();
    // `back` was answered in the same millisecond: the phone's ids are the larger ones.
    let expected = answers(&[("back", "missing"), ("fuse", "pin_a_leg")]);
    assert_eq!(here.values(inspection), expected);
    assert_eq!(there.values(inspection), expected);
}

#[test]
fn a_correction_beats_all_that_its_author_saw() {
    let (mut here, unit, inspection) = bench();
    let mut there = Device::new("phone", 2);
    there.store.append_foreign(here.outgoing()).unwrap();
    let place = (unit, inspection);
    (here.at, there.at) = (5_000_000, 6_000_000);
    here.find(place, "answers.back", json!("fitted"));
    there.find(place, "answers.back", json!("missing"));
    here.store.append_foreign(there.outgoing()).unwrap();
    here.at = 4_000_000;
    here.find(place, "answers.back", json!("cant_tell"));
    there.store.append_foreign(here.outgoing()).unwrap();
    assert_eq!(here.values(inspection), answers(&[("back", "cant_tell")]));
    assert_eq!(there.values(inspection), answers(&[("back", "cant_tell")]));
}

#[test]
fn a_withdrawn_finding_is_gone() {
    let (mut device, unit, inspection) = bench();
    device.find((unit, inspection), "tubes", json!(["35Z5GT"]));
    let subject = "finding.tubes".to_owned();
    let withdrawal = vec![Change::Withdrawn { subject }];
    device.act(&in_inspection(unit, inspection, withdrawal)).unwrap();
    assert_eq!(device.values(inspection), []);
}

#[test]
fn the_triggers_refuse_any_other_change_of_the_log() {
    let (device, unit, _) = bench();
    let before = rows(&device.store, "event");
    for sql in [
        "UPDATE event SET author = ''",
        "DELETE FROM event",
        "INSERT OR REPLACE INTO event (id, device, author, at, unit, subject, intent)
         SELECT id, device, '', at, unit, subject, intent FROM event",
    ] {
        let refused = device.store.conn.execute(sql, []).unwrap_err().to_string();
        assert!(refused.contains("an event is never"), "{refused}");
    }
    let sql = "INSERT INTO purge_permit (unit) VALUES ('another')";
    device.store.conn.execute(sql, []).unwrap();
    assert!(device.store.conn.execute("DELETE FROM event", []).is_err());
    assert_eq!(rows(&device.store, "event"), before);
    assert!(device.store.unit(unit).unwrap().is_some());
}

#[test]
fn changes_come_back_as_they_were_stored() {
    let photo = v7(1, 2, 3);
    let claim = Claim { number: 7, created_at: 12, created_event: photo };
    let (text, value) = ("x".to_owned(), json!({"volts": 120.0}));
    let changes = [
        Change::UnitCreated { number: 42 },
        Change::UnitName(text.clone()),
        Change::UnitPlace(text.clone()),
        Change::UnitKind(text.clone()),
        Change::UnitSupply(value.clone()),
        Change::UnitState(text.clone()),
        Change::UnitDeleted(claim),
        Change::InspectionStarted,
        Change::InspectionAccess(vec![text.clone()]),
        finding("values.line_capacitor", json!({"farads": 4.7e-8, "measured": true})),
        Change::PhotoAdded { photo, row: value.clone() },
        Change::PhotoCaptioned { photo, text: text.clone() },
        Change::PhotoMarked { photo, marks: value.clone() },
        Change::Withdrawn { subject: "unit.name".to_owned() },
        Change::Other { subject: "unit.owner_from_later".to_owned(), value },
        Change::Other { subject: "unit.name".to_owned(), value: json!(5) },
    ];
    for change in changes {
        let read = Change::read(&change.subject(), change.value().as_ref());
        assert_eq!(read, change);
        let wire = serde_json::to_string(&change).unwrap();
        assert_eq!(serde_json::from_str::<Change>(&wire).unwrap(), change);
    }
}

#[test]
fn what_a_later_version_sets_is_kept_and_passed_on() {
    let (mut device, unit, _) = bench();
    let subject = "unit.colour_from_later".to_owned();
    let change = Change::Other { subject, value: json!({"hue": 3}) };
    device.act(&of_unit(unit, vec![change.clone()])).unwrap();
    let kept = device.outgoing().into_iter().map(|event| event.typed());
    assert!(kept.collect::<Vec<_>>().contains(&change));
}

#[test]
fn units_are_found_by_words_number_kind_and_state() {
    let mut device = Device::new("bench", 1);
    let first = device.create("Übungsradio blue", false);
    let second = device.create("Stage amplifier", false);
    let changes = vec![
        Change::UnitKind("instrument_amplifier".to_owned()),
        Change::UnitState("repaired".to_owned()),
    ];
    device.act(&of_unit(second, changes)).unwrap();
    let find = |filter: UnitFilter| -> Vec<Uuid> {
        let units = device.store.units(&filter).unwrap();
        units.into_iter().map(|unit| unit.id).collect()
    };
    let text = |text: &str| UnitFilter { text: Some(text.to_owned()), ..UnitFilter::default() };
    assert_eq!(find(UnitFilter::default()), [second, first]);
    assert_eq!(find(text("BLUE übung")), [first]);
    assert_eq!(find(text("u-0002")), [second]);
    assert!(find(text("blue stage")).is_empty());
    let kind = Some("instrument_amplifier".to_owned());
    assert_eq!(find(UnitFilter { kind, ..UnitFilter::default() }), [second]);
    let state = Some("sold".to_owned());
    assert!(find(UnitFilter { state, ..UnitFilter::default() }).is_empty());
}

#[test]
fn verdicts_are_kept_as_they_were() {
    let (mut device, _, inspection) = bench();
    let verdict = |version: &str, class: &str| Verdict {
        inspection,
        engine_version: version.to_owned(),
        at: 5,
        verdict: json!({"treat_as": class}),
    };
    let kept = [verdict("0.1.0", "live"), verdict("0.2.0", "one_fault")];
    for verdict in &kept {
        device.store.save_verdict(verdict).unwrap();
    }
    device.store.rebuild_projections().unwrap();
    assert_eq!(device.store.verdicts(inspection).unwrap(), kept);
    let astray = Verdict { inspection: device.id(), ..verdict("0.1.0", "live") };
    let refused = device.store.save_verdict(&astray);
    assert!(matches!(refused, Err(StoreError::NoSuchInspection(_))));
}
