//! Questions by their ids, what they hint at, and values that were looked for in vain.

use coldchassis_core::workbench::{Code, Entry, InspectionView};
use serde_json::json;

use super::bench::{Record, begin};

fn paths(view: &InspectionView) -> Vec<&str> {
    view.findings.iter().map(|finding| finding.path.as_str()).collect()
}

fn ids(questions: &[coldchassis_core::workbench::QuestionView]) -> Vec<&str> {
    questions.iter().map(|question| question.id.as_str()).collect()
}

#[test]
fn a_value_and_a_vain_look_for_it_never_stand_side_by_side() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["cover_off"]);
    let open = door.leave_open(id, "line_capacitor").unwrap();
    assert_eq!(paths(&open), ["left_open.line_capacitor"]);
    let finding = open.findings.first().unwrap();
    assert_eq!(finding.question.as_deref(), Some("values.line_capacitor"));
    assert_eq!(finding.answers, ["cant_tell"]);
    let kept = door.set_value(id, "line_capacitor", json!({"farads": 4.7e-8})).unwrap();
    assert_eq!(paths(&kept), ["values.line_capacitor"]);
    assert_eq!(kept.findings.first().unwrap().value, json!({"farads": 4.7e-8}));
    // One undo takes the whole action back.
    let undone = door.undo(id).unwrap().unwrap();
    assert_eq!(paths(&undone), ["left_open.line_capacitor"]);
    let open_again = door.set_value(id, "line_capacitor", json!({"farads": 4.7e-8})).unwrap();
    assert_eq!(paths(&open_again), ["values.line_capacitor"]);
    assert_eq!(paths(&door.leave_open(id, "line_capacitor").unwrap()), paths(&open));
}

#[test]
fn the_rating_plate_is_asked_for_until_it_is_read_or_left_open() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["outside"]);
    let start = door.inspection(id).unwrap();
    assert_eq!(start.also.first().map(|question| question.entry), Some(Entry::Rated));
    let open = door.leave_open(id, "rated").unwrap();
    assert!(!ids(&open.also).contains(&"values.rated"), "{:?}", ids(&open.also));
    let rated = door.set_rated(id, json!({"volts": 230})).unwrap();
    assert_eq!(paths(&rated), ["values.rated"]);
    assert!(!ids(&rated.also).contains(&"values.rated"));
    assert!(rated.verdict.overlays.contains(&"wrong_supply"), "{:?}", rated.verdict.overlays);
    let refused = door.leave_open(id, "nothing").unwrap_err();
    assert_eq!((refused.code, refused.field.as_deref()), (Code::BadInput, Some("values.nothing")));
}

#[test]
fn hints_go_when_they_are_answered_and_no_hint_is_a_caution() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["outside"]);
    let start = door.inspection(id).unwrap();
    let hints = ids(&start.hints);
    assert!(hints.contains(&"tingle") && hints.contains(&"tube_list"), "{hints:?}");
    assert!(hints.iter().all(|hint| !ids(&start.also).contains(hint)), "{hints:?}");
    let after = door.answer(id, "tingle", json!("cant_tell")).unwrap();
    assert!(!ids(&after.hints).contains(&"tingle"));
    let after = door.set_tubes(id, json!(["12SA7"])).unwrap();
    assert!(!ids(&after.hints).contains(&"tube_list"));
    let tubes = after.findings.iter().find(|finding| finding.path == "tubes").unwrap();
    assert_eq!(tubes.question.as_deref(), Some("tube_list"));
}

#[test]
fn a_question_is_found_by_its_id_and_a_stranger_is_named() {
    let door = Record::fixed().open();
    assert_eq!(door.question("plug").unwrap().entry, Entry::One);
    assert_eq!(door.question("bare_metal").unwrap().entry, Entry::Several);
    assert_eq!(door.question("tube_count").unwrap().entry, Entry::Count);
    assert_eq!(door.question("tube_list").unwrap().entry, Entry::Tubes);
    assert_eq!(door.question("values.network_resistor").unwrap().entry, Entry::Ohms);
    assert_eq!(door.question("values.aerial_capacitor").unwrap().entry, Entry::Farads);
    assert_eq!(door.question("values.rated").unwrap().entry, Entry::Rated);
    let refused = door.question("values.plug").unwrap_err();
    assert_eq!((refused.code, refused.field.as_deref()), (Code::BadInput, Some("question")));
}

#[test]
fn findings_carry_the_name_of_who_found_them_then() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["outside"]);
    door.set_inspector("  Odalind Quist ", "en").unwrap();
    door.answer(id, "back", json!("fitted")).unwrap();
    door.set_inspector("Tibor Vantongel", "xx").unwrap();
    let view = door.answer(id, "plug", json!("three_pins")).unwrap();
    let by = |path: &str| {
        view.findings.iter().find(|finding| finding.path == path).unwrap().author.as_str()
    };
    assert_eq!(by("answers.back"), "Odalind Quist");
    assert_eq!(by("answers.plug"), "Tibor Vantongel");
    let refused = door.set_inspector(&"x".repeat(201), "en").unwrap_err();
    assert_eq!(refused.field.as_deref(), Some("author"));
    let after = door.answer(id, "selector", json!("absent")).unwrap();
    assert_eq!(after.findings.last().unwrap().author, "Tibor Vantongel");
}

#[test]
fn a_unit_can_be_renamed_and_moved_and_both_undone() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["outside"]);
    let before = door.inspection(id).unwrap().unit;
    door.rename(id, "Shelf set").unwrap();
    let after = door.set_place(id, " Stall 9 ").unwrap().unit;
    assert_eq!((after.name.as_str(), after.place.as_str()), ("Shelf set", "Stall 9"));
    assert_eq!(door.set_place(id, &"x".repeat(201)).unwrap_err().field.as_deref(), Some("place"));
    door.undo(id).unwrap();
    let undone = door.undo(id).unwrap().unwrap().unit;
    assert_eq!((undone.name, undone.place), (before.name, before.place));
}

#[test]
fn readings_are_listed_with_their_unit() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["meter"]);
    for (reading, value, shown) in [
        ("ohms_a_b_on", json!(120.0), "120\u{a0}Ω"),
        ("ohms_a_part_on", json!("OL"), "OL"),
        ("insulation_megohms", json!(20.0), "20\u{a0}MΩ"),
        ("touch_test_volts", json!(0.3), "0.3\u{a0}V"),
    ] {
        let view = door.set_reading(id, reading, value).unwrap();
        let path = format!("readings.{reading}");
        let finding = view.findings.iter().find(|finding| finding.path == path).unwrap();
        assert_eq!(finding.found, shown);
        assert_eq!(finding.question, None);
    }
}

#[test]
fn findings_stand_in_the_order_of_the_questions() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["outside"]);
    door.set_reading(id, "ohms_a_b_on", json!(120)).unwrap();
    door.set_value(id, "line_capacitor", json!({"farads": 4.7e-8})).unwrap();
    door.set_tubes(id, json!(["12SA7"])).unwrap();
    door.answer(id, "earth_lift", json!("absent")).unwrap();
    let view = door.answer(id, "plug", json!("three_pins")).unwrap();
    let wanted = [
        "answers.plug",
        "answers.earth_lift",
        "tubes",
        "values.line_capacitor",
        "readings.ohms_a_b_on",
    ];
    assert_eq!(paths(&view), wanted);
}

#[test]
fn an_inspection_only_begun_hides_nothing_and_earlier_ones_stay_in_reach() {
    let record = Record::stepping(1000);
    let mut door = record.open();
    let first = begin(&mut door, &["outside"]);
    let unit = door.answer(first, "plug", json!("battery_only")).unwrap().unit;
    let second = door.start_inspection(unit.id, &["outside".to_owned()]).unwrap();
    let others: Vec<_> = second.others.iter().map(|other| other.unit.inspection).collect();
    assert_eq!(others, [Some(first)]);
    assert_eq!(second.others.first().unwrap().unit.treat_as.as_deref(), Some("no_line"));
    assert!(!second.can_undo, "nothing was done in it yet");
    let listed = door.units(None).unwrap();
    assert_eq!(
        listed.first().unwrap().inspection,
        Some(first),
        "it is empty: a slip of the finger"
    );
    assert_eq!(listed.first().unwrap().treat_as.as_deref(), Some("no_line"));
    door.answer(second.id, "plug", json!("three_pins")).unwrap();
    assert_eq!(door.units(None).unwrap().first().unwrap().inspection, Some(second.id));
    let back = door.inspection(first).unwrap();
    let others: Vec<_> = back.others.iter().map(|other| other.unit.inspection).collect();
    assert_eq!(others, [Some(second.id)]);
    assert!(back.can_undo);
}

#[test]
fn undo_is_offered_exactly_where_it_does_something() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["outside"]);
    assert!(!door.inspection(id).unwrap().can_undo, "the making of a unit is not undone");
    let supply = json!({"volts": 230, "hertz": 50});
    assert!(door.set_supply(id, supply).unwrap().can_undo);
    assert!(door.answer(id, "plug", json!("three_pins")).unwrap().can_undo);
    assert!(door.withdraw(id, "answers.plug").unwrap().can_undo, "the only finding is gone");
    let mut undone = 0;
    while door.inspection(id).unwrap().can_undo {
        assert!(door.undo(id).unwrap().is_some());
        undone += 1;
    }
    assert_eq!(undone, 3);
    assert_eq!(door.undo(id).unwrap(), None);
}
