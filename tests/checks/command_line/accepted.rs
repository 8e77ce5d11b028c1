//! The examples of the contract are taken, and give every promised key and no other, in full.

use coldchassis_core::workbench::{self, AssessView};
use serde_json::Value;

use super::program::accepted;

/// The findings file of the contract, word for word.
pub const FINDINGS: &str = r#"
{"supply": {"volts": 120, "hertz": 60, "volts_max": 127, "feed": "direct"}, "access": ["outside", "cover_off"],
 "answers": {"plug": "two_equal_blades", "bare_metal": ["screws_or_shafts"], "back": "fitted", "tube_count": 5},
 "tubes": ["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"],
 "readings": {"ohms_b_chassis_on": 0.4, "ohms_a_chassis_on": "OL"},
 "values": {"line_capacitor": {"farads": 4.7e-8, "measured": true}}}
"#;

/// The arrangement file of the contract, word for word.
pub const ARRANGEMENT: &str = r#"
{"supply": {"volts": 120, "hertz": 60}, "isolation": "isolating", "cord": "two_pin_reversible", "near_pin": "b",
 "line_capacitor": "near_leg", "line_capacitor_class": "ordinary", "switch_leg": "far", "reach": "exposed",
 "values": {"line_capacitor_farad": 4.7e-8, "network_ohm": 220000, "network_farad": 1e-7, "aerial_farad": 1e-8,
            "heater_ohm": 819, "load_ohm": 1500, "winding_farad": 5e-10, "primary_ohm": 240, "earth_ohm": 0.2}}
"#;

/// Runs a command on a file through a pipe and reads the JSON it prints.
pub fn json(command: &str, file: &str) -> Value {
    let text = accepted(&[command, "/dev/stdin", "--json"], file.as_bytes());
    assert!(text.ends_with("}\n"), "one object and a line end: {text}");
    serde_json::from_str(&text).expect("JSON")
}

/// The keys of an object, sorted.
pub fn keys(value: &Value) -> Vec<&str> {
    let mut keys: Vec<&str> =
        value.as_object().expect("an object").keys().map(String::as_str).collect();
    keys.sort_unstable();
    keys
}

fn ids(value: &Value) -> Vec<&str> {
    let items = value.as_array().expect("a list").iter();
    items.map(|item| item.as_str().expect("an id")).collect()
}

const CLASSES: [&str; 5] = ["live", "leaky", "one_fault", "two_faults", "no_line"];

fn check_assessment(verdict: &Value) {
    let promised = [
        "basis",
        "conflicts",
        "consistent",
        "could_be",
        "likely",
        "margin",
        "next_question",
        "overlays",
        "rests_on",
        "treat_as",
        "unknown_tubes",
        "worst_state",
        "worst_touch_ma",
    ];
    assert_eq!(keys(verdict), promised);
    let class = |value: &Value| CLASSES.contains(&value.as_str().expect("an id"));
    assert!(class(&verdict["treat_as"]) && class(&verdict["could_be"]));
    assert!(["shown", "not_ruled_out"].contains(&verdict["basis"].as_str().expect("an id")));
    assert!(verdict["margin"].as_u64().expect("a number") <= 3);
    assert!(verdict["worst_touch_ma"].as_f64().expect("a number") >= 0.0);
    assert!(verdict["consistent"].as_u64().expect("a number") <= 6945);
    assert!(verdict["next_question"].is_null() || verdict["next_question"].is_string());
    ids(&verdict["overlays"]);
    ids(&verdict["unknown_tubes"]);
    if !verdict["likely"].is_null() {
        assert_eq!(keys(&verdict["likely"]), ["class", "share"]);
        assert!(class(&verdict["likely"]["class"]));
        assert!((0.7..=1.0).contains(&verdict["likely"]["share"].as_f64().expect("a share")));
    }
    if !verdict["worst_state"].is_null() {
        assert_eq!(keys(&verdict["worst_state"]), ["faults", "plug", "selector", "switch"]);
        assert!(ids(&verdict["worst_state"]["faults"]).len() <= 2);
    }
    for conflict in verdict["conflicts"].as_array().expect("a list") {
        assert!(ids(conflict).len() > 1, "one finding alone contradicts nothing: {conflict}");
    }
    for rests in verdict["rests_on"].as_array().expect("a list") {
        assert_eq!(keys(rests), ["finding", "without"]);
        assert!(rests["finding"].is_string() && class(&rests["without"]));
    }
}

/// Findings of one supply, with the rest as given.
fn findings(rest: &str) -> Value {
    let verdict =
        json("assess", &format!(r#"{{"supply": {{"volts": 120, "hertz": 60}}, {rest}}}"#));
    check_assessment(&verdict);
    verdict
}

#[test]
fn the_findings_of_the_contract_give_every_promised_key() {
    let verdict = json("assess", FINDINGS);
    check_assessment(&verdict);
    // Bare screws, a plug that goes in both ways, and 0.4 Ω from a pin to the chassis: nothing kinder is left.
    assert_eq!(verdict["treat_as"], "live");
    assert_eq!(verdict["basis"], "shown");
    assert_eq!(verdict["worst_state"]["faults"], Value::Array(Vec::new()));
}

#[test]
fn only_the_supply_is_required() {
    let verdict = json("assess", r#"{"supply": {"volts": 120, "hertz": 60}}"#);
    check_assessment(&verdict);
    assert_eq!(verdict["consistent"], 6945, "nothing is ruled out yet");
    let outside =
        json("assess", r#"{"supply": {"volts": 120, "hertz": 60}, "access": ["outside"]}"#);
    assert_eq!(verdict, outside, "outside is always included");
}

#[test]
fn every_optional_part_of_a_verdict_has_its_promised_keys() {
    let told = findings(r#""answers": {"plug": "battery_only"}"#);
    assert_eq!(told["next_question"], "rating_plate", "one answer alone is checked by another");
    let batteries = findings(r#""answers": {"plug": "battery_only", "rating_plate": "battery"}"#);
    assert_eq!(batteries["treat_as"], "no_line");
    assert_eq!(batteries["worst_touch_ma"], 0.0);
    assert!(batteries["worst_state"].is_null() && batteries["next_question"].is_null());
    assert_eq!(batteries["likely"]["class"], "no_line");
    assert_eq!(batteries["rests_on"][0]["finding"], "plug");
    assert_eq!(batteries["rests_on"][0]["without"], "live");

    let clash = findings(
        r#""access": ["cover_off"], "answers": {"plug": "two_equal_blades", "earth_wire": "on_chassis"}"#,
    );
    assert_eq!(clash["consistent"], 0);
    assert_eq!(clash["basis"], "not_ruled_out");
    let mut conflict = ids(&clash["conflicts"][0]);
    conflict.sort_unstable();
    assert_eq!(conflict, ["earth_wire", "plug"]);
    assert_eq!(clash["conflicts"].as_array().map(Vec::len), Some(1));

    let tubes = findings(r#""tubes": ["99XX99"]"#);
    assert_eq!(ids(&tubes["unknown_tubes"]), ["99XX99"], "no catalogue has it");
}

#[test]
fn the_arrangement_of_the_contract_gives_every_promised_key() {
    let table = json("exposure", ARRANGEMENT);
    assert_eq!(keys(&table), ["as_found_ma", "class", "margin", "rows"]);
    assert_eq!(table["class"], "leaky");
    assert_eq!(table["margin"], 1);
    // 120 V through 0.047 µF and a body: 2.171 mA in the worked values of the design.
    let as_found = table["as_found_ma"].as_f64().expect("a number");
    assert!((as_found - 2.171).abs() < 0.002, "{as_found}");
    for row in table["rows"].as_array().expect("rows") {
        let promised = ["faults", "open_circuit_v", "outcome", "state", "touch_ma"];
        assert_eq!(keys(row), promised);
        assert_eq!(keys(&row["state"]), ["plug", "selector", "switch"]);
    }
}

/// The number printed on each line that starts with this key, as text.
fn printed<'a>(text: &'a str, key: &str) -> Vec<&'a str> {
    let start = format!("\"{key}\": ");
    let numbers = text.lines().filter_map(|line| line.trim().strip_prefix(start.as_str()));
    numbers.map(|number| number.trim_end_matches(',')).collect()
}

/// Reading back what was printed gives the very same bits.
fn same(printed: &[&str], computed: &[f64]) {
    let read: Vec<u64> =
        printed.iter().map(|text| text.parse::<f64>().expect("a number").to_bits()).collect();
    let computed: Vec<u64> = computed.iter().map(|number| number.to_bits()).collect();
    assert_eq!(read, computed, "{printed:?}");
}

#[test]
fn numbers_are_printed_in_full() {
    let text = accepted(&["exposure", "/dev/stdin", "--json"], ARRANGEMENT.as_bytes());
    let person = workbench::person("dry", "5", None).expect("a person");
    let table = workbench::exposure_file(ARRANGEMENT.as_bytes(), &person).expect("a table");
    let touch: Vec<f64> = table.rows.iter().map(|row| row.touch_ma).collect();
    let volts: Vec<f64> = table.rows.iter().filter_map(|row| row.open_circuit_v).collect();
    same(&printed(&text, "touch_ma"), &touch);
    same(&printed(&text, "open_circuit_v"), &volts);
    same(&printed(&text, "as_found_ma"), &[table.as_found_ma]);
    let full = printed(&text, "touch_ma").iter().filter(|number| number.len() > 14).count();
    assert!(full > 32, "only {full} of 64 currents have more than a dozen figures");

    let text = accepted(&["assess", "/dev/stdin", "--json"], FINDINGS.as_bytes());
    let (_, verdict) = workbench::assess_file(FINDINGS.as_bytes()).expect("a verdict");
    same(&printed(&text, "worst_touch_ma"), &[AssessView::from(&verdict).worst_touch_ma]);
}

#[test]
fn values_without_effect_are_ignored_and_volts_max_does_not_count() {
    let table = json("exposure", ARRANGEMENT);
    let other = ARRANGEMENT
        .replace(r#""hertz": 60"#, r#""hertz": 60, "volts_max": 150"#)
        .replace(r#""network_ohm": 220000, "#, r#""network_ohm": 5, "#)
        .replace(r#""aerial_farad": 1e-8"#, r#""aerial_farad": 0.5"#);
    assert_ne!(other, ARRANGEMENT);
    assert_eq!(json("exposure", &other), table, "an isolating set has neither part");
    let stronger = ARRANGEMENT.replace("4.7e-8", "9.4e-8");
    assert_ne!(json("exposure", &stronger)["as_found_ma"], table["as_found_ma"]);
}
