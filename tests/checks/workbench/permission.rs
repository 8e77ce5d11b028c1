//! What a tag allows: never more than what nobody has looked at, or what somebody has felt, leaves.

use coldchassis_core::words::Words;
use coldchassis_core::workbench::{InspectionView, Tag, Workbench};
use serde_json::{Value, json};
use uuid::Uuid;

use super::bench::{Record, begin};

fn say(id: &str) -> String {
    Words::of("en").say_id(id)
}

/// An earthed set with separate windings, all traced: two faults from live, shown.
fn traced(door: &mut Workbench) -> (Uuid, InspectionView) {
    let id = begin(door, &["cover_off", "meter"]);
    let answers: [(&str, Value); 8] = [
        ("plug", json!("three_pins")),
        ("bare_metal", json!(["panel_or_cabinet"])),
        ("metal_joined", json!("chassis")),
        ("earth_wire", json!("on_chassis")),
        ("transformer", json!("separate_traced")),
        ("line_capacitor", json!("none")),
        ("switch_leg", json!("pin_a")),
        ("earth_lift", json!("absent")),
    ];
    for (question, answer) in answers {
        door.answer(id, question, answer).unwrap();
    }
    let view = door.inspection(id).unwrap();
    assert_eq!(view.unit.treat_as.as_deref(), Some("two_faults"));
    (id, view)
}

fn looked_at(door: &mut Workbench, id: Uuid) -> Tag {
    door.answer(id, "cord", json!("sound")).unwrap();
    door.set_rated(id, json!({"volts": 120, "hertz": 60})).unwrap().tag
}

fn has_no_shock_path(tag: &Tag) -> bool {
    let begin = say("no-shock-path").split('.').next().unwrap().to_owned();
    tag.reason.iter().any(|line| line.starts_with(&begin))
}

#[test]
fn not_looking_at_the_cord_and_the_plate_gives_no_kinder_tag() {
    let record = Record::fixed();
    let mut door = record.open();
    let (id, view) = traced(&mut door);
    let first = view.tag.permission.first().unwrap();
    assert!(first.contains(&say("finding-cord")), "{first}");
    assert!(first.contains(&say("finding-value-rated")), "{first}");
    for open in ["finding-cord", "finding-value-rated", "finding-filter_capacitors"] {
        assert!(view.tag.not_checked.contains(&say(open)), "{:?}", view.tag.not_checked);
    }
    let tag = looked_at(&mut door, id);
    assert_eq!(tag.permission, [say("permission-two_faults")]);
    assert!(has_no_shock_path(&tag));
    assert!(!tag.not_checked.contains(&say("finding-cord")));
    assert!(tag.not_checked.contains(&say("finding-filter_capacitors")));
}

#[test]
fn a_tingle_or_a_test_beyond_its_limit_holds_the_permission_back() {
    for (reading, value, wanted) in [
        ("tingle", 0.0, "permission-tingle"),
        ("touch_test_volts", 0.8, "permission-touch_test"),
        ("insulation_megohms", 0.9, "permission-insulation"),
    ] {
        let record = Record::fixed();
        let mut door = record.open();
        let (id, _) = traced(&mut door);
        let before = looked_at(&mut door, id);
        let tag = if reading == "tingle" {
            door.answer(id, "tingle", json!("reported")).unwrap().tag
        } else {
            door.set_reading(id, reading, json!(value)).unwrap().tag
        };
        assert_eq!(tag.permission, [say(wanted)]);
        assert!(!has_no_shock_path(&tag) && has_no_shock_path(&before));
    }
    let record = Record::fixed();
    let mut door = record.open();
    let (id, _) = traced(&mut door);
    looked_at(&mut door, id);
    let tag = door.answer(id, "tingle", json!("not_reported")).unwrap().tag;
    assert_eq!(tag.permission, [say("permission-two_faults")], "no tingle proves nothing");
}

#[test]
fn the_figure_says_its_faults_and_its_supply() {
    let record = Record::fixed();
    let mut door = record.open();
    let (id, view) = traced(&mut door);
    assert_eq!(view.tag.after, Some(say("after-two-faults")));
    let supply = view.tag.supply.unwrap();
    assert!(supply.contains("120\u{a0}V") && supply.contains("127\u{a0}V"), "{supply}");
    let other = door.set_supply(id, json!({"volts": 230, "hertz": 50, "volts_max": 253})).unwrap();
    let supply = other.tag.supply.unwrap();
    assert!(supply.contains("230\u{a0}V") && supply.contains("253\u{a0}V"), "{supply}");
    let live = begin(&mut door, &["outside"]);
    assert_eq!(door.inspection(live).unwrap().tag.after, None);
    let battery = door.answer(live, "plug", json!("battery_only")).unwrap().tag;
    assert_eq!((battery.after, battery.supply), (None, None));
}
