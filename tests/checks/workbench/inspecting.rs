//! Units, their inspections, and how a view follows what is said.

use coldchassis_core::inspection::{Access, Question};
use coldchassis_core::workbench::{Code, NewUnit, UnitView};
use serde_json::{Value, json};

use super::bench::{Found, Record, answer_some, begin, foreign, json_of, new_unit, owned, seen};

const OUTSIDE: &[&str] = &["outside"];
const COVER_OFF: &[&str] = &["outside", "cover_off"];

#[test]
fn the_verdict_is_that_of_the_same_findings_as_a_file() {
    let record = Record::fixed();
    let mut door = record.open();
    let new = NewUnit { kind: Some("table_radio".to_owned()), ..new_unit("Brown set", COVER_OFF) };
    let view = door.create_unit(&new).unwrap();
    let mut found = Found::nothing(COVER_OFF).with("answers.kind", json!("table_radio"));
    found.assert_agrees(&door, &view);
    let mut seen = vec![view.verdict.treat_as];
    for (question, answer) in [
        ("plug", json!("two_polarised_blades")),
        ("bare_metal", json!(["screws_or_shafts", "panel_or_cabinet"])),
        ("back", json!("fitted")),
        ("terminals", json!(["none"])),
        ("selector", json!("absent")),
        ("earth_lift", json!("cant_tell")),
        ("metal_joined", json!("chassis")),
        ("transformer", json!("separate_traced")),
        ("line_capacitor", json!("pin_a_leg")),
        ("line_capacitor_class", json!("ordinary")),
        ("tube_count", json!(5)),
    ] {
        let view = door.answer(view.id, question, answer.clone()).unwrap();
        found = found.with(&format!("answers.{question}"), answer);
        found.assert_agrees(&door, &view);
        seen.push(view.verdict.treat_as);
    }
    let value = json!({"farads": 4.7e-9, "measured": true});
    let view = door.set_value(view.id, "line_capacitor", value.clone()).unwrap();
    found = found.with("values.line_capacitor", value);
    found.assert_agrees(&door, &view);
    let view = door.set_tubes(view.id, json!(["12SA7", "50L6GT"])).unwrap();
    found = found.with("tubes", json!(["12SA7", "50L6GT"]));
    found.assert_agrees(&door, &view);
    let view = door.set_rated(view.id, json!({"volts": 230, "hertz": 50})).unwrap();
    found = found.with("values.rated", json!({"volts": 230, "hertz": 50}));
    found.assert_agrees(&door, &view);
    let view = door.set_reading(view.id, "ohms_b_chassis_on", json!("OL")).unwrap();
    found = found.with("readings.ohms_b_chassis_on", json!("OL"));
    found.assert_agrees(&door, &view);
    seen.push(view.verdict.treat_as);
    assert_ne!(seen.first(), seen.last(), "the answers move the verdict");
}

#[test]
fn what_a_command_gives_is_what_the_record_shows() {
    let record = Record::stepping(7);
    let mut door = record.open();
    let inspection = begin(&mut door, COVER_OFF);
    let given = json_of(&answer_some(&mut door, inspection));
    assert_eq!(seen(&mut door, inspection), given);
}

#[test]
fn a_changed_answer_takes_the_place_of_the_one_before() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, COVER_OFF);
    let before = door.answer(inspection, "bare_metal", json!(["none_anywhere"])).unwrap();
    let after = door.answer(inspection, "bare_metal", json!(["instrument_jack"])).unwrap();
    assert_ne!(before.verdict, after.verdict);
    assert_eq!(after.findings.len(), 1);
    let found = Found::nothing(COVER_OFF).with("answers.bare_metal", json!(["instrument_jack"]));
    found.assert_agrees(&door, &after);
}

#[test]
fn withdrawing_a_finding_gives_the_view_without_it() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, COVER_OFF);
    answer_some(&mut door, inspection);
    let before = seen(&mut door, inspection);
    let value = json!({"farads": 1e-9, "measured": true});
    door.answer(inspection, "transformer", json!("separate_traced")).unwrap();
    door.set_value(inspection, "line_capacitor", value).unwrap();
    door.set_tubes(inspection, json!(["6V6"])).unwrap();
    door.set_rated(inspection, json!({"volts": 230})).unwrap();
    door.set_reading(inspection, "ohms_a_b_on", json!(31.5)).unwrap();
    let between = seen(&mut door, inspection);
    for part in ["verdict", "classes", "tag", "findings"] {
        assert_ne!(between[part], before[part], "{part} has moved");
    }
    for path in [
        "values.line_capacitor",
        "tubes",
        "values.rated",
        "readings.ohms_a_b_on",
        "answers.transformer",
    ] {
        door.withdraw(inspection, path).unwrap();
    }
    assert_eq!(seen(&mut door, inspection), before);
}

fn line(view: &UnitView) -> (&str, &str, &str, Option<&str>) {
    (&view.label, &view.name, &view.place, view.treat_as.as_deref())
}

#[test]
fn the_list_shows_each_unit_with_its_last_verdict() {
    let record = Record::stepping(10);
    let mut door = record.open();
    assert_eq!(door.units(None).unwrap(), []);
    let first = begin(&mut door, COVER_OFF);
    let last = answer_some(&mut door, first);
    let treat_as = last.verdict.treat_as;
    let units = door.units(None).unwrap();
    assert_eq!(
        units.iter().map(line).collect::<Vec<_>>(),
        [("U-0001", "Brown set", "Shelf 3", Some(treat_as))]
    );
    assert_eq!(units[0].basis.as_deref(), Some(last.verdict.basis));
    assert_eq!(units[0].inspection, Some(first));
    assert_eq!(units[0], last.unit);

    let battery = door.create_unit(&new_unit("  White set ", OUTSIDE)).unwrap().id;
    let shown = door.answer(battery, "plug", json!("battery_only")).unwrap();
    assert_ne!(shown.verdict.treat_as, treat_as, "two units, two verdicts");
    let units = door.units(None).unwrap();
    assert_eq!(
        units.iter().map(line).collect::<Vec<_>>(),
        [
            ("U-0002", "White set", "Shelf 3", Some(shown.verdict.treat_as)),
            ("U-0001", "Brown set", "Shelf 3", Some(treat_as)),
        ]
    );
    let found = |text| door.units(Some(text)).unwrap().into_iter().map(|unit| unit.label);
    assert_eq!(found("brown").collect::<Vec<_>>(), ["U-0001"]);
    assert_eq!(found("u-0002").collect::<Vec<_>>(), ["U-0002"]);
    assert_eq!(found("green").collect::<Vec<_>>(), [""; 0]);
    door.rename(first, "Red set").unwrap();
    assert_eq!(door.units(Some("red")).unwrap().len(), 1);
}

#[test]
fn two_inspections_of_a_unit_share_its_supply_and_nothing_they_found() {
    let record = Record::stepping(10);
    let mut door = record.open();
    let first = begin(&mut door, COVER_OFF);
    let before = answer_some(&mut door, first);
    let second = door.start_inspection(before.unit.id, &owned(OUTSIDE)).unwrap();
    assert_ne!(second.id, first);
    assert_eq!(second.unit.id, before.unit.id);
    assert_eq!(second.findings, []);
    Found::nothing(OUTSIDE).assert_agrees(&door, &second);

    let view = door.answer(second.id, "plug", json!("battery_only")).unwrap();
    let units = door.units(None).unwrap();
    assert_eq!(units.len(), 1);
    assert_eq!(units[0].inspection, Some(second.id), "the list shows the last one begun");
    assert_eq!(units[0].treat_as.as_deref(), Some(view.verdict.treat_as));

    let after = door.inspection(first).unwrap();
    assert_eq!(after.verdict, before.verdict);
    assert_eq!(after.findings, before.findings);
    assert_eq!(after.access, before.access);

    let supply = json!({"volts": 230, "hertz": 50, "volts_max": 253});
    door.set_supply(second.id, supply.clone()).unwrap();
    let mut found = Found::nothing(COVER_OFF)
        .with("answers.plug", json!("two_polarised_blades"))
        .with("answers.bare_metal", json!(["screws_or_shafts"]))
        .with("answers.back", json!("fitted"))
        .with("answers.line_capacitor", json!("pin_a_leg"))
        .with("answers.tube_count", json!(5));
    found.supply = supply;
    let on_230 = door.inspection(first).unwrap();
    assert_ne!(on_230.verdict, before.verdict, "the supply is the unit's");
    found.assert_agrees(&door, &on_230);
}

#[test]
fn unknown_and_foreign_ids_are_not_found() {
    let record = Record::stepping(1);
    let mut door = record.open();
    let inspection = begin(&mut door, COVER_OFF);
    let view = answer_some(&mut door, inspection);
    let (before, rows) = (seen(&mut door, inspection), record.rows());
    let mut wrong = Vec::new();
    // A unit's id is no inspection's, and the other way round.
    for id in [foreign(), view.unit.id] {
        for (name, result) in [
            ("inspection", door.inspection(id).map(|_| ())),
            ("answer", door.answer(id, "plug", json!("battery_only")).map(|_| ())),
            (
                "set_value",
                door.set_value(id, "line_capacitor", json!({"farads": 1e-9})).map(|_| ()),
            ),
            ("set_rated", door.set_rated(id, json!({"volts": 120})).map(|_| ())),
            ("set_tubes", door.set_tubes(id, json!(["6V6"])).map(|_| ())),
            ("set_reading", door.set_reading(id, "ohms_a_b_on", json!(10)).map(|_| ())),
            ("withdraw", door.withdraw(id, "answers.plug").map(|_| ())),
            ("set_access", door.set_access(id, &[]).map(|_| ())),
            ("set_supply", door.set_supply(id, json!({"volts": 120, "hertz": 60})).map(|_| ())),
            ("rename", door.rename(id, "New name").map(|_| ())),
            ("undo", door.undo(id).map(|_| ())),
        ] {
            match result {
                Err(problem) if problem.code == Code::NotFound && problem.field.is_none() => {}
                other => wrong.push(format!("{name}: {other:?}")),
            }
        }
    }
    for id in [foreign(), inspection] {
        match door.start_inspection(id, &[]) {
            Err(problem) if problem.code == Code::NotFound => {}
            other => wrong.push(format!("start_inspection: {other:?}")),
        }
    }
    assert_eq!(seen(&mut door, inspection), before);
    assert_eq!(record.rows(), rows);
    assert!(wrong.is_empty(), "not refused as not found:\n{}", wrong.join("\n"));
}

fn question_of(view: &Value) -> Option<Question> {
    Question::of(view["question"]["id"].as_str()?)
}

#[test]
fn access_opens_the_questions_that_need_it() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, &[]);
    let mut asked = 0;
    while let Some(question) = question_of(&seen(&mut door, inspection)) {
        assert!(question.may_be_asked(&[Access::Outside]), "{} from outside", question.id());
        door.answer(inspection, question.id(), json!("cant_tell")).unwrap();
        asked += 1;
    }
    assert!(asked > 0, "nothing was asked from outside");
    let outside = door.inspection(inspection).unwrap();
    assert_eq!((outside.access, outside.question), (vec!["outside"], None));

    let opened = door.set_access(inspection, &owned(&["cover_off"])).unwrap();
    assert_eq!(opened.access, OUTSIDE.iter().chain(&["cover_off"]).copied().collect::<Vec<_>>());
    assert!(question_of(&json_of(&opened)).is_some(), "nothing is asked with the cover off");
    let also: Vec<&str> = opened.also.iter().map(|question| question.id.as_str()).collect();
    for caution in ["fuse", "filter_capacitors", "materials"] {
        assert!(also.contains(&caution), "{caution} is not among {also:?}");
        assert!(!outside.also.iter().any(|question| question.id == caution), "{caution} outside");
    }

    let closed = door.set_access(inspection, &[]).unwrap();
    assert_eq!(closed.question, None);
    assert_eq!(closed.verdict, outside.verdict);

    // Whatever is still to be seen from outside, the inside is asked for as well.
    door.set_access(inspection, &owned(&["cover_off"])).unwrap();
    let inside = |question: &Question| !question.may_be_asked(&[Access::Outside]);
    while let Some(question) = question_of(&seen(&mut door, inspection)) {
        if inside(&question) {
            return;
        }
        door.answer(inspection, question.id(), json!("cant_tell")).unwrap();
    }
    panic!("nothing inside was asked for with the cover off");
}
