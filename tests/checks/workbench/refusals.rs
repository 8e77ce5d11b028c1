//! Bad input: named by its field, nothing stored, nothing changed.

use coldchassis_core::workbench::{Code, InspectionView, NewUnit, Problem, Workbench};
use serde_json::{Value, json};
use uuid::Uuid;

use super::bench::{Record, answer_some, begin, new_unit, owned, seen};

/// What is given to a command, and the field that is to blame.
type Bad = (&'static str, Value, &'static str);

fn answers() -> Vec<Bad> {
    vec![
        ("plug", json!("round"), "answers.plug"),
        ("plug", json!(""), "answers.plug"),
        ("plug", json!(["battery_only"]), "answers.plug"),
        ("plug", json!({"is": "battery_only"}), "answers.plug"),
        ("plug", json!(1), "answers.plug"),
        ("plug", Value::Null, "answers.plug"),
        ("plugs", json!("battery_only"), "answers.plugs"),
        ("Plug", json!("battery_only"), "answers.Plug"),
        ("bare_metal", json!([]), "answers.bare_metal"),
        ("bare_metal", json!("screws_or_shafts"), "answers.bare_metal"),
        ("bare_metal", json!(["knobs"]), "answers.bare_metal"),
        ("bare_metal", json!(["none_anywhere", "screws_or_shafts"]), "answers.bare_metal"),
        ("bare_metal", json!(["cant_tell", "screws_or_shafts"]), "answers.bare_metal"),
        ("bare_metal", Value::Null, "answers.bare_metal"),
        ("tube_count", json!(-1), "answers.tube_count"),
        ("tube_count", json!(61), "answers.tube_count"),
        ("tube_count", json!(2.5), "answers.tube_count"),
        ("tube_count", json!("five"), "answers.tube_count"),
        ("tube_list", json!(["12SA7"]), "answers.tube_list"),
    ]
}

fn values() -> Vec<Bad> {
    vec![
        ("line_capacitor", json!({"farads": 0}), "values.line_capacitor.farads"),
        ("line_capacitor", json!({"farads": 1.0}), "values.line_capacitor.farads"),
        ("line_capacitor", json!({"farads": "47n"}), "values.line_capacitor.farads"),
        ("line_capacitor", json!({"ohms": 10}), "values.line_capacitor.farads"),
        ("line_capacitor", json!({"farads": 1e-9, "ohms": 1}), "values.line_capacitor.ohms"),
        (
            "line_capacitor",
            json!({"farads": 1e-9, "measured": "yes"}),
            "values.line_capacitor.measured",
        ),
        ("line_capacitor", json!(1e-9), "values.line_capacitor"),
        ("line_capacitor", Value::Null, "values.line_capacitor"),
        ("network_resistor", json!({"ohms": 1e12}), "values.network_resistor.ohms"),
        ("network_resistor", json!({"farads": 1e-9}), "values.network_resistor.ohms"),
        ("choke", json!({"ohms": 1}), "values.choke"),
        ("rated", json!({"volts": 120}), "values.rated"),
    ]
}

fn readings() -> Vec<Bad> {
    vec![
        ("ohms_a_b_on", json!(-1), "readings.ohms_a_b_on"),
        ("ohms_a_b_on", json!(2e12), "readings.ohms_a_b_on"),
        ("ohms_a_b_on", json!("ol"), "readings.ohms_a_b_on"),
        ("ohms_a_b_on", json!("12"), "readings.ohms_a_b_on"),
        ("ohms_a_b_on", json!([12]), "readings.ohms_a_b_on"),
        ("ohms_a_b_on", Value::Null, "readings.ohms_a_b_on"),
        ("touch_test_volts", json!("OL"), "readings.touch_test_volts"),
        ("touch_test_volts", json!(1001), "readings.touch_test_volts"),
        ("ohms", json!(12), "readings.ohms"),
    ]
}

fn supplies() -> Vec<(Value, &'static str)> {
    vec![
        (Value::Null, "supply"),
        (json!("120 V"), "supply"),
        (json!({}), "supply.volts"),
        (json!({"volts": 120}), "supply.hertz"),
        (json!({"volts": 0.5, "hertz": 60}), "supply.volts"),
        (json!({"volts": 1001, "hertz": 60}), "supply.volts"),
        (json!({"volts": 120, "hertz": 0}), "supply.hertz"),
        (json!({"volts": 120, "hertz": 14}), "supply.hertz"),
        (json!({"volts": 120, "hertz": 401}), "supply.hertz"),
        (json!({"volts": 120, "hertz": 60, "feed": "dc"}), "supply.feed"),
        (json!({"volts": 120, "hertz": 60, "feed": "ac"}), "supply.feed"),
        (json!({"volts": 120, "hertz": 60, "volts_max": 119}), "supply.volts_max"),
        (json!({"volts": 120, "hertz": 60, "volts_max": 151}), "supply.volts_max"),
        (json!({"volts": 120, "hertz": 60, "amps": 15}), "supply.amps"),
    ]
}

fn tubes() -> Vec<Value> {
    let too_many = vec!["6V6"; 61];
    vec![
        Value::Null,
        json!("12SA7"),
        json!([""]),
        json!(["  "]),
        json!([12]),
        json!(["6".repeat(41)]),
        json!(too_many),
    ]
}

fn rated() -> Vec<(Value, &'static str)> {
    vec![
        (Value::Null, "values.rated"),
        (json!(120), "values.rated"),
        (json!({"volts": 0}), "values.rated.volts"),
        (json!({"hertz": 401}), "values.rated.hertz"),
        (json!({"watts": 0}), "values.rated.watts"),
        (json!({"amps": 1}), "values.rated.amps"),
    ]
}

/// A record with something in it, and what it was before the bad input.
struct Watched {
    record: Record,
    door: Workbench,
    inspection: Uuid,
    unit: Uuid,
    before: Value,
    list: Value,
    rows: (i64, i64),
    tried: usize,
}

impl Watched {
    fn new() -> Self {
        let record = Record::stepping(3);
        let mut door = record.open();
        let inspection = begin(&mut door, &["outside", "cover_off"]);
        let value = json!({"farads": 4.7e-9, "measured": true});
        door.set_value(inspection, "line_capacitor", value).unwrap();
        let unit = answer_some(&mut door, inspection).unit.id;
        let before = seen(&mut door, inspection);
        let list = serde_json::to_value(door.units(None).unwrap()).unwrap();
        let rows = record.rows();
        Self { record, door, inspection, unit, before, list, rows, tried: 0 }
    }

    /// Fails unless the command is refused by this field and leaves everything as it was.
    fn refuses(
        &mut self,
        what: &str,
        field: &str,
        command: impl FnOnce(&mut Workbench, Uuid) -> Result<InspectionView, Problem>,
    ) {
        let problem = match command(&mut self.door, self.inspection) {
            Err(problem) => problem,
            Ok(view) => panic!("{what} was taken: {:?}", view.findings),
        };
        assert_eq!(problem.code, Code::BadInput, "{what}: {problem:?}");
        assert_eq!(problem.field.as_deref(), Some(field), "{what}: {problem:?}");
        let sentence = problem.sentence(self.door.words());
        assert!(sentence.starts_with(&format!("{field}: ")), "{what}: {sentence}");
        assert!(!sentence.contains(&problem.message.id), "{what} has no words: {sentence}");
        assert_eq!(seen(&mut self.door, self.inspection), self.before, "{what}");
        let list = serde_json::to_value(self.door.units(None).unwrap()).unwrap();
        assert_eq!(list, self.list, "{what}");
        assert_eq!(self.record.rows(), self.rows, "{what} stored something");
        self.tried += 1;
    }
}

#[test]
fn bad_findings_are_refused_by_their_field_and_change_nothing() {
    let mut watched = Watched::new();
    for (question, answer, field) in answers() {
        let what = format!("answer {question} {answer}");
        watched.refuses(&what, field, |door, id| door.answer(id, question, answer));
    }
    for (value, given, field) in values() {
        let what = format!("value {value} {given}");
        watched.refuses(&what, field, |door, id| door.set_value(id, value, given));
    }
    for (reading, given, field) in readings() {
        let what = format!("reading {reading} {given}");
        watched.refuses(&what, field, |door, id| door.set_reading(id, reading, given));
    }
    for given in tubes() {
        let what = format!("tubes {given}");
        watched.refuses(&what, "tubes", |door, id| door.set_tubes(id, given));
    }
    for (given, field) in rated() {
        let what = format!("rated {given}");
        watched.refuses(&what, field, |door, id| door.set_rated(id, given));
    }
    for path in ["answers.fuse", "answers", "plug", "supply", "values.network_resistor", "tubes"] {
        let what = format!("withdraw {path}");
        watched.refuses(&what, path, |door, id| door.withdraw(id, path));
    }
    assert!(watched.tried > 50, "{}", watched.tried);
}

#[test]
fn a_bad_supply_access_or_name_is_refused_by_its_field_and_changes_nothing() {
    let mut watched = Watched::new();
    for (supply, field) in supplies() {
        let what = format!("supply {supply}");
        let again = supply.clone();
        watched.refuses(&what, field, |door, id| door.set_supply(id, supply));
        let new = NewUnit { supply: again, ..new_unit("New", &[]) };
        watched.refuses(&format!("new, {what}"), field, |door, _| door.create_unit(&new));
    }
    for access in [&["inside"][..], &["outside", "Meter"], &[""]] {
        let what = format!("access {access:?}");
        let (access, unit) = (owned(access), watched.unit);
        watched.refuses(&what, "access", |door, id| door.set_access(id, &access));
        watched.refuses(&what, "access", |door, _| door.start_inspection(unit, &access));
        let new = NewUnit { access, ..new_unit("New", &[]) };
        watched.refuses(&format!("new, {what}"), "access", |door, _| door.create_unit(&new));
    }
    let long = "ä".repeat(201);
    watched.refuses("name", "name", |door, id| door.rename(id, &long));
    let new = new_unit(&long, &[]);
    watched.refuses("new, name", "name", |door, _| door.create_unit(&new));
    let new = NewUnit { place: long, ..new_unit("New", &[]) };
    watched.refuses("new, place", "place", |door, _| door.create_unit(&new));
    let new = NewUnit { kind: Some("toaster".to_owned()), ..new_unit("New", &[]) };
    watched.refuses("new, kind", "answers.kind", |door, _| door.create_unit(&new));

    let next = watched.door.create_unit(&new_unit("New", &[])).unwrap();
    assert_eq!(next.unit.label, "U-0002", "no number was used up");
}

#[test]
fn the_longest_name_is_taken_and_trimmed() {
    let record = Record::fixed();
    let mut door = record.open();
    let inspection = begin(&mut door, &[]);
    let name = "ä".repeat(200);
    let view = door.rename(inspection, &format!("  {name}\n")).unwrap();
    assert_eq!(view.unit.name, name);
}
