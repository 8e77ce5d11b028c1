//! Tubes through the one door: offered while typing, read from a list, studied, kept as a hint.

use coldchassis_core::workbench::{HeaterDrawing, HeaterPlace, Known};
use serde_json::json;

use super::bench::{Record, begin};

const FIVE: [&str; 5] = ["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"];

#[test]
fn types_are_offered_with_their_heater_and_other_names() {
    let record = Record::fixed();
    let door = record.open();
    let hits = door.find_tubes("12ax7");
    let first = hits.first().unwrap();
    assert_eq!((first.name.as_str(), first.known), ("12AX7", Known::Listed));
    assert!(first.same_as.contains("ECC83") && first.heater.contains("12.6"), "{first:?}");
    assert!(door.find_tubes("I2SK7").first().unwrap().corrected);
    assert!(door.find_tubes("").is_empty());
    assert!(door.find_tubes("1").len() <= 8);
    let rule = door.find_tubes("12ZZ9GT");
    assert!(rule.iter().any(|hit| hit.known == Known::ByRule && hit.doubt.is_some()), "{rule:?}");
    assert!(door.find_tubes("#47").iter().any(|hit| hit.name == "#47"));
}

#[test]
fn a_pasted_list_keeps_what_nobody_knows() {
    let record = Record::fixed();
    let read = record.open().read_tubes("12 sa 7, l2SK7; QQ99");
    let names: Vec<&str> = read.iter().map(|read| read.name.as_str()).collect();
    assert_eq!(names, ["12SA7", "12SK7", "QQ99"]);
    assert_eq!(read.last().unwrap().known, Known::Unknown);
    assert_eq!(read.get(1).unwrap().written, "l2SK7");
}

#[test]
fn a_study_draws_what_it_says() {
    let record = Record::fixed();
    let door = record.open();
    let string = door.study_heaters(json!(FIVE), 120.0, 60.0).unwrap();
    assert_eq!((string.reading, string.drawing), ("series_on_line", HeaterDrawing::Stack));
    assert!(string.tubes.iter().all(|tube| tube.place == HeaterPlace::String));
    assert_eq!(string.left_volts, None);
    assert!(string.sum.contains("122.8") && !string.cannot_prove.is_empty(), "{string:?}");
    let winding = door.study_heaters(json!(["12AX7", "6V6", "5Y3GT"]), 120.0, 60.0).unwrap();
    assert_eq!(winding.drawing, HeaterDrawing::SideBySide);
    assert_eq!(winding.tubes.first().unwrap().volts, Some(6.3), "its halves in parallel");
    let empty = door.study_heaters(json!([]), 120.0, 60.0).unwrap();
    assert_eq!((empty.drawing, empty.tubes.len()), (HeaterDrawing::Nothing, 0));
    assert!(empty.clashes.is_empty() && empty.figures.is_empty());
}

#[test]
fn bad_studies_are_refused_by_their_field() {
    let record = Record::fixed();
    let door = record.open();
    let field = |tubes, volts, hertz| door.study_heaters(tubes, volts, hertz).unwrap_err().field;
    assert_eq!(field(json!("12SA7"), 120.0, 60.0).as_deref(), Some("tubes"));
    assert_eq!(field(json!([7]), 120.0, 60.0).as_deref(), Some("tubes"));
    assert_eq!(field(json!([]), 0.5, 60.0).as_deref(), Some("volts"));
    assert_eq!(field(json!([]), f64::NAN, 60.0).as_deref(), Some("volts"));
    assert_eq!(field(json!([]), 120.0, 5.0).as_deref(), Some("hertz"));
}

#[test]
fn tubes_of_an_inspection_are_a_hint_beside_the_verdict() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = begin(&mut door, &["outside"]);
    let before = door.inspection(id).unwrap();
    assert_eq!(before.heaters, None);
    let after = door.set_tubes(id, json!(FIVE)).unwrap();
    let hint = after.heaters.unwrap();
    assert!(hint.contains("string") && hint.contains("Never proof"), "{hint}");
    assert_eq!(before.verdict.treat_as, after.verdict.treat_as);
    assert!(!after.tag.not_checked.iter().any(|text| text.contains("tubes")));
    assert_eq!(after.verdict.unknown_tubes, Vec::<String>::new());
    let strange = door.set_tubes(id, json!(["QWERTY"])).unwrap();
    assert_eq!(strange.verdict.unknown_tubes, ["QWERTY"]);
}
