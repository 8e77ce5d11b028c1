//! Stored charge and the insulation test: where they may be used, and what they say.

use serde_json::json;

use super::bench::{Record, begin};
use super::touch_test::{leaky, looked_at, say};

#[test]
fn a_charge_that_does_not_fit_is_refused_by_its_field() {
    let record = Record::fixed();
    let door = record.open();
    for (charge, field) in [
        (json!({"volts": 300}), "farads"),
        (json!({"farads": 2e-5, "volts": 0}), "volts"),
        (json!({"farads": 2e-5, "volts": 300, "bleed_ohms": -1}), "bleed_ohms"),
        (json!({"farads": 2e-5, "volts": 300, "ohms": 1}), "ohms"),
    ] {
        assert_eq!(door.stored_charge(charge).unwrap_err().field.as_deref(), Some(field));
    }
}

#[test]
fn the_insulation_test_is_for_a_line_side_apart_from_the_metal_only() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["cover_off", "meter"]);
    door.answer(id, "plug", json!("two_equal_blades")).unwrap();
    let view = door.insulation_test(id).unwrap();
    let tied = say("way-line_tied");
    assert!(view.refused[0].contains(&tied) && view.first.is_some(), "{view:?}");
    door.answer(id, "transformer", json!("separate_traced")).unwrap();
    let view = door.insulation_test(id).unwrap();
    assert!(view.refused.is_empty(), "{view:?}");
    assert_eq!(view.first, Some(say("insulation-lift-capacitor")));
    door.answer(id, "line_capacitor", json!("none")).unwrap();
    let view = door.insulation_test(id).unwrap();
    assert!(view.refused.is_empty() && view.first.is_none());
    for (megohms, meaning) in
        [(0.9, "rejected"), (1.0, "earthed_only"), (1.9, "earthed_only"), (2.0, "enough")]
    {
        door.set_reading(id, "insulation_megohms", json!(megohms)).unwrap();
        let means = door.insulation_test(id).unwrap().means;
        assert_eq!(means[0], say(&format!("insulation-means-{meaning}")), "{megohms} MΩ");
    }
    let tag = door.set_reading(id, "insulation_megohms", json!(1.5)).unwrap().tag;
    // Which class it is does not matter here: what forbids power stands first where it is not live.
    let live = tag.permission.contains(&say("permission-live-not_ruled_out"));
    assert!(live || tag.permission == [say("permission-insulation_unearthed")]);
    door.set_reading(id, "insulation_megohms", json!("OL")).unwrap();
    let view = door.insulation_test(id).unwrap();
    assert_eq!(view.means.first(), Some(&say("insulation-over-range")));
    assert_eq!(view.kept.as_deref(), Some("OL"));
    // A value that was good says nothing once the metal may belong to the line, or a capacitor hides it.
    door.answer(id, "line_capacitor", json!("cant_tell")).unwrap();
    let view = door.insulation_test(id).unwrap();
    assert!(view.means.contains(&say("insulation-capacitor-apart")));
    door.answer(id, "transformer", json!("cant_tell")).unwrap();
    let view = door.insulation_test(id).unwrap();
    assert_eq!(view.means[0], say("insulation-says-nothing"));
    door.answer(id, "transformer", json!("separate_traced")).unwrap();
    door.answer(id, "plug", json!("battery_only")).unwrap();
    assert_eq!(door.insulation_test(id).unwrap().refused, [say("insulation-refused-conflict")]);
}

#[test]
fn insulation_between_one_and_two_megohms_is_enough_behind_an_earth_wire_only() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = leaky(&mut door);
    looked_at(&mut door, id);
    let tag = door.set_reading(id, "insulation_megohms", json!(1.5)).unwrap().tag;
    assert_eq!(tag.permission, [say("permission-insulation_unearthed")]);
    door.answer(id, "plug", json!("three_pins")).unwrap();
    let tag = door.answer(id, "earth_wire", json!("on_chassis")).unwrap().tag;
    assert!(!tag.permission.contains(&say("permission-insulation_unearthed")));
    // The wire counts only on a plug that has a pin for it.
    for plug in ["two_equal_blades", "earth_pin_missing"] {
        let tag = door.answer(id, "plug", json!(plug)).unwrap().tag;
        assert!(!tag.permission.contains(&say("permission-one_fault")), "{plug}: {tag:?}");
    }
    door.answer(id, "plug", json!("three_pins")).unwrap();
    door.answer(id, "bare_metal", json!(["none_anywhere"])).unwrap();
    door.answer(id, "metal_joined", json!("no")).unwrap();
    assert_eq!(
        door.insulation_test(id).unwrap().refused,
        [say("insulation-refused-no_metal")],
        "nothing to hold it to"
    );
}

/// 50 µF at 450 V through 220 kΩ: 5.06 J, 22.5 mC, 22.2 s to 60 V (the project's table), half as much again
/// for an electrolytic one.
#[test]
fn a_stored_charge_is_given_with_what_it_may_be_at_most() {
    let record = Record::fixed();
    let door = record.open();
    let charge = json!({"farads": 5e-5, "volts": 450, "bleed_ohms": 220_000});
    let view = door.stored_charge(charge).unwrap();
    let figures: Vec<&str> = view.figures.iter().map(|one| one.figure.as_str()).collect();
    assert!(
        figures[0].contains("5.06\u{a0}J") && figures[0].contains("7.59\u{a0}J"),
        "{figures:?}"
    );
    assert!(figures[1].contains("22.5\u{a0}mC"), "{figures:?}");
    let low = view.levels.iter().find(|level| level.volts == 60.0).unwrap();
    assert!(low.time.contains("22.2\u{a0}s") && low.time.contains("39.9\u{a0}s"), "{}", low.time);
    let reached: Vec<bool> = view.limits.iter().map(|limit| limit.reached).collect();
    // Gravest first: 33.75 mC, 7.59 J.
    assert_eq!(reached, [false, false, false, true, true, true]);
    assert!(!view.not_ruled_out.is_empty());
    let kept = door.stored_charge(json!({"farads": 5e-5, "volts": 450})).unwrap();
    assert!(kept.curve.is_empty() && view.curve.len() > 40);
    assert!(kept.levels.iter().all(|level| level.time == say("charge-never")));
    let small = door.stored_charge(json!({"farads": 5e-8, "volts": 170})).unwrap();
    assert!(small.limits.iter().all(|limit| !limit.reached));
    assert_eq!(small.levels[0].time, say("charge-never"));
}
