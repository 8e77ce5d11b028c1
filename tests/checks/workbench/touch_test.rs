//! The live touch test: what stands before it, what is kept of it, and that it makes no unit look kinder.

use coldchassis_core::words::Words;
use coldchassis_core::workbench::{InspectionView, Workbench};
use serde_json::{Value, json};
use uuid::Uuid;

use super::bench::{Record, begin};

pub fn say(id: &str) -> String {
    Words::of("en").say_id(id)
}

/// A two-pin set with separate windings and a measured capacitor of 0.047 µF from a leg: it leaks.
pub fn leaky(door: &mut Workbench) -> Uuid {
    let id = begin(door, &["cover_off", "meter"]);
    let answers: [(&str, Value); 9] = [
        ("plug", json!("two_equal_blades")),
        ("bare_metal", json!(["panel_or_cabinet"])),
        ("back", json!("fitted")),
        ("metal_joined", json!("chassis")),
        ("transformer", json!("separate_traced")),
        ("line_capacitor", json!("pin_a_leg")),
        ("line_capacitor_class", json!("ordinary")),
        ("switch_leg", json!("pin_a")),
        ("terminals", json!(["none"])),
    ];
    for (question, answer) in answers {
        door.answer(id, question, answer).unwrap();
    }
    let value = json!({"farads": 4.7e-8, "measured": true});
    let view = door.set_value(id, "line_capacitor", value).unwrap();
    assert_eq!(view.unit.treat_as.as_deref(), Some("leaky"));
    id
}

pub fn looked_at(door: &mut Workbench, id: Uuid) {
    door.answer(id, "cord", json!("sound")).unwrap();
    door.answer(id, "filter_capacitors", json!("sound")).unwrap();
    door.set_rated(id, json!({"volts": 120, "hertz": 60})).unwrap();
}

/// The leaky set, everything looked at that could forbid the test, behind a protection.
fn behind(record: &Record, protection: &str) -> (Workbench, Uuid) {
    let mut door = record.open();
    let id = leaky(&mut door);
    looked_at(&mut door, id);
    taken(&mut door, id, protection);
    (door, id)
}

/// What is kept of a test, by part.
fn keep(door: &mut Workbench, id: Uuid, parts: &[(&str, Value)]) -> InspectionView {
    let mut last = None;
    for (part, value) in parts {
        last = Some(door.set_live_test(id, part, value.clone()).unwrap());
    }
    last.unwrap()
}

fn next(door: &mut Workbench, id: Uuid) -> Option<&'static str> {
    door.touch_test(id).unwrap().next.map(|next| next.id())
}

fn taken(door: &mut Workbench, id: Uuid, protection: &str) -> InspectionView {
    door.set_live_test(id, "qualified", json!(true)).unwrap();
    door.set_live_test(id, "protection", json!(protection)).unwrap()
}

#[test]
fn a_unit_that_may_be_live_is_not_plugged_in_for_a_test() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["meter"]);
    let view = door.touch_test(id).unwrap();
    assert_eq!(view.refused, [say("touch-refused-may_be_live")]);
    door.answer(id, "plug", json!("two_equal_blades")).unwrap();
    door.answer(id, "transformer", json!("none")).unwrap();
    door.answer(id, "common_to_chassis", json!("direct")).unwrap();
    door.answer(id, "bare_metal", json!(["panel_or_cabinet"])).unwrap();
    door.answer(id, "metal_joined", json!("chassis")).unwrap();
    assert_eq!(door.touch_test(id).unwrap().refused, [say("touch-refused-live")]);
    door.answer(id, "earth_wire", json!("on_chassis")).unwrap();
    let refused = door.touch_test(id).unwrap().refused;
    assert_eq!(refused, [say("touch-refused-conflict")]);
}

#[test]
fn cord_and_plate_are_looked_at_first_and_a_plate_that_is_not_there_is_no_refusal_for_ever() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = leaky(&mut door);
    let first = |door: &mut Workbench| door.touch_test(id).unwrap().first;
    assert_eq!(first(&mut door), Some("cord"));
    door.answer(id, "cord", json!("cant_tell")).unwrap();
    assert_eq!(first(&mut door), Some("cord"), "a cord of which nobody can tell is not plugged in");
    door.answer(id, "cord", json!("sound")).unwrap();
    assert_eq!(first(&mut door), Some("filter_capacitors"), "the cover is off");
    door.answer(id, "filter_capacitors", json!("sound")).unwrap();
    assert_eq!(first(&mut door), Some("values.rated"));
    door.set_rated(id, json!({"watts": 50})).unwrap();
    assert_eq!(first(&mut door), Some("values.rated"), "watts say nothing of the supply");
    door.leave_open(id, "rated").unwrap();
    assert_eq!(first(&mut door), None);
    assert!(door.touch_test(id).unwrap().refused.is_empty());
    door.answer(id, "cord", json!("cracked")).unwrap();
    let refused = "Do not power it until this is settled: the damaged cord.";
    assert_eq!(door.touch_test(id).unwrap().refused, [refused]);
    door.answer(id, "cord", json!("sound")).unwrap();
    door.answer(id, "tingle", json!("reported")).unwrap();
    assert_eq!(door.touch_test(id).unwrap().refused, [say("permission-tingle")]);
}

/// 0.047 µF from the hot leg reads 3.2 V by hand (see the core's own check); cold, through the other leg,
/// next to nothing, and that is what the switch and the plug change.
#[test]
fn what_it_was_to_read_holds_the_hand_worked_reading() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = leaky(&mut door);
    looked_at(&mut door, id);
    let view = door.touch_test(id).unwrap();
    assert_eq!(view.positions.len(), 4, "a plug that goes in both ways");
    let on = view.positions.iter().find(|one| one.id.id() == "first_on").unwrap();
    let (low, high) = (on.low_volts.unwrap(), on.high_volts.unwrap());
    assert!(low < 0.3 && high > 3.21 && high < 3.21 * 127.0 / 120.0 * 1.1, "{low} to {high}");
    // The ghost by hand: 127 V over 2 nF of winding into 51.1 nF, and the neutral leg's own drop in 0.1 Ω of
    // cord and switch: 4.97 V + 0.05 V. On a meter alone the capacitor holds the metal near the line; a ghost is only what keeps the limit.
    assert!(on.expected_alone.contains("126\u{a0}V"), "{}", on.expected_alone);
    assert!(view.ghost.contains("5.02\u{a0}V"), "{}", view.ghost);
    door.answer(id, "plug", json!("two_polarised_blades")).unwrap();
    assert_eq!(door.touch_test(id).unwrap().positions.len(), 2, "one way only");
}

#[test]
fn a_test_is_kept_step_by_step_and_taken_back_one_by_one() {
    let record = Record::fixed();
    let (mut door, id) = behind(&record, "gfci");
    keep(&mut door, id, &[("earth_volts", json!(119))]);
    assert_eq!(next(&mut door, id), Some("first_off"), "the switch is off at first");
    keep(&mut door, id, &[("check_first_off", json!(1.3))]);
    assert_eq!(next(&mut door, id), Some("first_off"), "the check alone is no reading");
    let tag = keep(&mut door, id, &[("first_off", json!(0.03))]).tag;
    assert!(!tag.permission.contains(&say("permission-touch_test")));
    assert_eq!(next(&mut door, id), Some("first_on"));
    // By hand: 0.03 V of 120 V across 1494.6 Ω wants 5.98 MΩ: 0.444 nF.
    let together = door.touch_test(id).unwrap().together;
    assert!(together[0].contains("0.03\u{a0}V") && together[1].contains("0.444"), "{together:?}");
    // A lower one of another piece of metal changes nothing; a higher one does.
    keep(&mut door, id, &[("first_off", json!(0.01))]);
    assert_eq!(door.touch_test(id).unwrap().positions[0].volts, Some(0.03));
    keep(&mut door, id, &[("first_off", json!(0.04))]);
    assert_eq!(door.touch_test(id).unwrap().positions[0].volts, Some(0.04));
    // It survives a new start; an undo takes back the last.
    let mut door = record.open();
    assert_eq!(door.touch_test(id).unwrap().positions[0].volts, Some(0.04));
    door.undo(id).unwrap().unwrap();
    assert_eq!(door.touch_test(id).unwrap().positions[0].volts, Some(0.03));
    door.withdraw(id, "live_test.first_off").unwrap();
    assert!(door.touch_test(id).unwrap().together.is_empty());
}

#[test]
fn above_thirty_volts_alone_it_ends_unless_low_impedance_clears_it_and_nothing_is_allowed_meanwhile()
 {
    let record = Record::fixed();
    let (mut door, id) = behind(&record, "gfci");
    let tag = keep(&mut door, id, &[("check_first_off", json!(117))]).tag;
    assert_eq!(tag.permission, [say("permission-touch_stopped")]);
    let view = door.touch_test(id).unwrap();
    assert!(view.stopped.is_some() && view.positions[0].wants_low && !view.positions[0].is_checked);
    assert_eq!(next(&mut door, id), Some("first_off"), "low impedance may be tried");
    keep(&mut door, id, &[("low_first_off", json!(60))]);
    assert_eq!(next(&mut door, id), None);
    let tag = keep(&mut door, id, &[("low_first_off", json!(6.3))]).tag;
    assert!(!tag.permission.contains(&say("permission-touch_stopped")));
    assert!(door.touch_test(id).unwrap().positions[0].is_checked);
    // A new check that shows too much wants low impedance anew, and so does one whose clearing went.
    keep(&mut door, id, &[("check_first_off", json!(118))]);
    assert!(door.touch_test(id).unwrap().positions[0].wants_low);
    keep(&mut door, id, &[("low_first_off", json!(6.3))]);
    // A low reading elsewhere is no good news while it stands still.
    keep(&mut door, id, &[("check_first_on", json!(50)), ("first_on", json!(0.1))]);
    let together = door.touch_test(id).unwrap().together;
    assert!(together[0].starts_with(&say("touch-alone-says")[..20]), "{together:?}");
    // Choosing the protection again, the same or another, clears nothing.
    for protection in ["gfci", "rcd"] {
        let tag = taken(&mut door, id, protection).tag;
        assert_eq!(tag.permission, [say("permission-touch_stopped")], "{protection}");
    }
}

#[test]
fn above_the_limit_or_at_a_trip_it_ends_and_no_later_reading_hides_that() {
    let record = Record::fixed();
    let (mut door, id) = behind(&record, "gfci");
    let after = keep(&mut door, id, &[("check_first_off", json!(5)), ("first_off", json!(119))]);
    assert_eq!(after.tag.permission, [say("permission-touch_test")]);
    assert_eq!(after.unit.treat_as.as_deref(), Some("leaky"), "a test changes no class");
    let view = door.touch_test(id).unwrap();
    assert_eq!(view.stopped, Some(say("touch-stopped-above")));
    assert_eq!(next(&mut door, id), None);
    assert!(view.positions[0].says.contains(&say("touch-apart")), "the network raises nothing");
    let after = keep(&mut door, id, &[("first_off", json!(0.1))]);
    assert_eq!(after.tag.permission, [say("permission-touch_test")]);
    door.withdraw(id, "live_test.first_off").unwrap();
    let after =
        keep(&mut door, id, &[("tripped_first_off", json!(true)), ("first_off", json!(0.1))]);
    assert_eq!(after.tag.permission, [say("permission-touch_tripped")]);
    let view = door.touch_test(id).unwrap();
    assert_eq!(view.together[0], say("touch-tripped-says"));
    assert_eq!(view.positions[0].says, [say("touch-tripped-says")]);
}

#[test]
fn another_protection_takes_back_what_says_nothing_behind_it() {
    let record = Record::fixed();
    let (mut door, id) = behind(&record, "isolating");
    let parts =
        [("earth_volts", json!(119)), ("check_first_off", json!(1)), ("first_off", json!(0.01))];
    keep(&mut door, id, &parts);
    keep(&mut door, id, &[("first_on", json!(0.9))]);
    let tag = taken(&mut door, id, "gfci").tag;
    assert_eq!(tag.permission, [say("permission-touch_test")], "what was above the limit stays");
    let view = door.touch_test(id).unwrap();
    assert!(view.earth.is_none() && view.positions[0].check.is_none());
    assert_eq!((view.positions[0].volts, view.positions[1].volts), (None, Some(0.9)));
    let back = door.undo(id).unwrap().unwrap();
    assert!(back.findings.iter().any(|found| found.path == "live_test.first_off"));
}

#[test]
fn a_dead_meter_or_no_earth_is_no_good_news() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = leaky(&mut door);
    looked_at(&mut door, id);
    // Nothing but windings: a few tens of volts are to be expected on the meter alone.
    door.answer(id, "line_capacitor", json!("none")).unwrap();
    taken(&mut door, id, "gfci");
    keep(&mut door, id, &[("earth_volts", json!(0.4))]);
    let view = door.touch_test(id).unwrap();
    assert!(!view.earth_proven && view.earth_why.is_some());
    keep(&mut door, id, &[("earth_volts", json!(118))]);
    let view = door.touch_test(id).unwrap();
    assert!(view.earth_proven && view.earth_why.is_none());
    keep(&mut door, id, &[("check_first_on", json!(0)), ("first_on", json!(0))]);
    let view = door.touch_test(id).unwrap();
    assert_eq!(view.together[0], say("touch-together-doubt"));
    assert!(view.positions[1].says.contains(&say("touch-less")));
    // Without the meter alone before it a low one counts for nothing.
    door.withdraw(id, "live_test.check_first_on").unwrap();
    let view = door.touch_test(id).unwrap();
    assert!(view.positions[1].says.contains(&say("touch-unchecked")));
    assert_eq!(view.together[0], say("touch-together-doubt"));
}

#[test]
fn where_both_wires_are_hot_half_the_supply_is_on_metal_and_resistor() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = leaky(&mut door);
    let supply = json!({"volts": 230, "hertz": 50, "volts_max": 253, "feed": "both_hot"});
    door.set_supply(id, supply).unwrap();
    looked_at(&mut door, id);
    door.set_rated(id, json!({"volts": 230, "hertz": 50})).unwrap();
    // 126.5²/1500 W, by hand.
    let tools = door.touch_test(id).unwrap().tools;
    assert!(tools[1].contains("10.7\u{a0}W"), "{tools:?}");
    keep(&mut door, id, &[("earth_volts", json!(115))]);
    assert!(door.touch_test(id).unwrap().earth_proven);
}

#[test]
fn behind_an_isolating_transformer_a_low_reading_is_said_to_prove_nothing() {
    let record = Record::fixed();
    let (mut door, id) = behind(&record, "isolating");
    let parts =
        [("earth_volts", json!(119)), ("check_first_off", json!(1)), ("first_off", json!(0.1))];
    keep(&mut door, id, &parts);
    let view = door.touch_test(id).unwrap();
    let why = view.proves_nothing.unwrap();
    assert!(why.contains("0.135\u{a0}V") && why.contains("2\u{a0}nF"), "{why}");
    assert_eq!(view.together[0], why);
    assert!(!view.together.iter().skip(1).any(|line| line.contains("nF")));
    // A high one counts all the same.
    let tag = keep(&mut door, id, &[("first_on", json!(0.8))]).tag;
    assert_eq!(tag.permission, [say("permission-touch_test")]);
}

#[test]
fn what_was_read_before_the_plug_was_named_is_still_shown() {
    let record = Record::fixed();
    let (mut door, id) = behind(&record, "gfci");
    keep(&mut door, id, &[("check_second_on", json!(90))]);
    door.answer(id, "plug", json!("two_polarised_blades")).unwrap();
    let view = door.touch_test(id).unwrap();
    let ids: Vec<&str> = view.positions.iter().map(|position| position.id.id()).collect();
    assert_eq!(ids, ["first_off", "first_on", "second_on"]);
    assert!(view.stopped.is_some() && view.positions[2].ends);
    assert_eq!(view.next, None, "the stop stands though its position is gone");
}

#[test]
fn a_low_reading_counts_for_nothing_without_earth_permission_or_its_own_supply() {
    let record = Record::fixed();
    let (mut door, id) = behind(&record, "gfci");
    // Physical: the one way round the capacitor hangs on neutral, the other way on hot, and low impedance
    // clears the ghost that it is not. With a true earth the hot side reads 3.2 V.
    let parts = [
        ("earth_volts", json!(119)),
        ("check_first_off", json!(1.3)),
        ("first_off", json!(0.03)),
        ("check_first_on", json!(1.3)),
        ("first_on", json!(0.03)),
        ("check_second_off", json!(1.3)),
        ("second_off", json!(0.04)),
        ("check_second_on", json!(1.3)),
        ("second_on", json!(0.04)),
    ];
    keep(&mut door, id, &parts);
    let together = |door: &mut Workbench| door.touch_test(id).unwrap().together;
    assert_eq!(
        together(&mut door)[0],
        say("touch-together-doubt"),
        "one way round has to read 3 V"
    );
    door.withdraw(id, "live_test.second_on").unwrap();
    let read = together(&mut door);
    assert!(read[0].contains("0.04\u{a0}V") && read[1].contains("nF"), "{read:?}");
    // Without the earth, on another supply, or where it may not be plugged in: no good news.
    keep(&mut door, id, &[("earth_volts", json!(3))]);
    assert_eq!(together(&mut door)[0], say("touch-together-doubt"));
    keep(&mut door, id, &[("earth_volts", json!(119))]);
    door.answer(id, "transformer", json!("none")).unwrap();
    assert_eq!(together(&mut door), Vec::<String>::new());
    door.answer(id, "transformer", json!("separate_traced")).unwrap();
    door.set_supply(id, json!({"volts": 230, "hertz": 50, "volts_max": 253})).unwrap();
    door.set_supply(id, json!({"volts": 120, "hertz": 60, "volts_max": 127})).unwrap();
    let view = door.touch_test(id).unwrap();
    assert!(view.refused.is_empty() && view.earth.is_none());
    assert!(view.together.is_empty(), "what was read at the other voltage is taken back");
    // What was only told counts if it is bad.
    door.set_reading(id, "touch_test_volts", json!(0.5)).unwrap();
    assert!(together(&mut door)[0].starts_with("0.5\u{a0}V"), "{:?}", together(&mut door));
    door.set_reading(id, "touch_test_volts", json!(5)).unwrap();
    assert_eq!(door.touch_test(id).unwrap().stopped, Some(say("touch-stopped-above")));
}

#[test]
fn what_does_not_fit_is_refused_by_its_field_and_nothing_is_lost() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = leaky(&mut door);
    door.set_live_test(id, "first_on", json!(0.3)).unwrap();
    for (part, value, field) in [
        ("first_on", json!(-1), "live_test.first_on"),
        ("first_on", json!("OL"), "live_test.first_on"),
        ("qualified", json!(false), "live_test.qualified"),
        ("protection", json!("none"), "live_test.protection"),
        ("third_on", json!(1), "live_test.third_on"),
    ] {
        let refused = door.set_live_test(id, part, value).unwrap_err();
        assert_eq!(refused.field.as_deref(), Some(field));
    }
    let kept = door.touch_test(id).unwrap().positions;
    assert!(kept.iter().any(|position| position.volts == Some(0.3)));
}
