//! The rows of an exposure table: which there are, in which order, and how the summary follows.
//!
//! States and faults were worked out by hand from sections 4 and 5 of the design.

use serde_json::{Value, json};

use super::accepted::{ARRANGEMENT, json};

/// An arrangement, its states and its faults, each in the order of the design.
struct Case {
    name: &'static str,
    factors: [&'static str; 7],
    feed: &'static str,
    states: &'static [[&'static str; 3]],
    faults: &'static [&'static str],
}

const ONE_WAY: &[[&str; 3]] = &[["first", "on", ""], ["first", "off", ""]];
const BOTH_WAYS: &[[&str; 3]] =
    &[["first", "on", ""], ["first", "off", ""], ["second", "on", ""], ["second", "off", ""]];
const ONE_WAY_SELECTOR: &[[&str; 3]] = &[
    ["first", "on", "near"],
    ["first", "on", "far"],
    ["first", "off", "near"],
    ["first", "off", "far"],
];
const BOTH_WAYS_SELECTOR: &[[&str; 3]] = &[
    ["first", "on", "near"],
    ["first", "on", "far"],
    ["first", "off", "near"],
    ["first", "off", "far"],
    ["second", "on", "near"],
    ["second", "on", "far"],
    ["second", "off", "near"],
    ["second", "off", "far"],
];

/// Factors: isolation, cord, near pin, line capacitor, its class, switch leg, reach.
const CASES: &[Case] = &[
    Case {
        name: "the example of the contract",
        factors: ["isolating", "two_pin_reversible", "b", "near_leg", "ordinary", "far", "exposed"],
        feed: "direct",
        states: BOTH_WAYS,
        faults: &[
            "stray_far",
            "stray_near",
            "near_capacitor_shorted",
            "insulation_breakdown",
            "neutral_open",
        ],
    },
    Case {
        name: "no neutral to break where both contacts are hot",
        factors: ["line_tied", "two_pin_polarised", "b", "none", "ordinary", "far", "exposed"],
        feed: "both_hot",
        states: ONE_WAY,
        faults: &["stray_far", "stray_near", "outlet_reversed"],
    },
    Case {
        name: "a selector and an aerial terminal; states on and off even without a switch",
        factors: [
            "line_floated",
            "two_pin_polarised",
            "b",
            "selector",
            "ordinary",
            "none",
            "aerial_terminal",
        ],
        feed: "direct",
        states: ONE_WAY_SELECTOR,
        faults: &[
            "lost_barrier",
            "stray_far",
            "stray_near",
            "selector_capacitor_shorted",
            "network_capacitor_shorted",
            "aerial_capacitor_shorted",
            "outlet_reversed",
            "neutral_open",
        ],
    },
    Case {
        name: "a cut third pin goes in both ways",
        factors: [
            "line_insulated",
            "three_pin_cut",
            "a",
            "selector",
            "class_y",
            "both",
            "common_exposed",
        ],
        feed: "direct",
        states: BOTH_WAYS_SELECTOR,
        faults: &["stray_far", "stray_near", "insulation_breakdown", "neutral_open"],
    },
    Case {
        name: "a capacitor on each leg shorts alone",
        factors: [
            "isolating",
            "three_pin_reversible_earthed",
            "b",
            "both_legs",
            "ordinary",
            "near",
            "handheld",
        ],
        feed: "direct",
        states: BOTH_WAYS,
        faults: &[
            "stray_far",
            "stray_near",
            "near_capacitor_shorted",
            "far_capacitor_shorted",
            "insulation_breakdown",
            "earth_open",
            "neutral_open",
        ],
    },
    Case {
        name: "closed and earthed",
        factors: ["line_tied", "three_pin_earthed", "a", "none", "ordinary", "far", "closed"],
        feed: "direct",
        states: ONE_WAY,
        faults: &[
            "lost_barrier",
            "stray_far",
            "stray_near",
            "earth_open",
            "outlet_reversed",
            "neutral_open",
        ],
    },
    Case {
        name: "an earth pin without a bond cannot lose it",
        factors: [
            "autotransformer",
            "three_pin_unearthed",
            "b",
            "none",
            "ordinary",
            "both",
            "exposed",
        ],
        feed: "direct",
        states: ONE_WAY,
        faults: &["stray_far", "stray_near", "outlet_reversed", "neutral_open"],
    },
];

fn table(case: &Case) -> Value {
    let [isolation, cord, near_pin, capacitor, class, switch, reach] = case.factors;
    let file = json!({
        "supply": {"volts": 120, "hertz": 60, "feed": case.feed}, "isolation": isolation,
        "cord": cord, "near_pin": near_pin, "line_capacitor": capacitor,
        "line_capacitor_class": class, "switch_leg": switch, "reach": reach
    });
    json("exposure", &file.to_string())
}

/// States, each with no fault, then single faults, then pairs.
fn expected(case: &Case) -> Vec<Value> {
    let mut sets = vec![json!([])];
    sets.extend(case.faults.iter().map(|fault| json!([fault])));
    for (place, first) in case.faults.iter().enumerate() {
        sets.extend(case.faults[place + 1..].iter().map(|second| json!([first, second])));
    }
    let mut rows = Vec::new();
    for [plug, switch, selector] in case.states {
        let selector = if selector.is_empty() { Value::Null } else { json!(selector) };
        let state = json!({"plug": plug, "switch": switch, "selector": selector});
        rows.extend(sets.iter().map(|faults| json!([state, faults])));
    }
    rows
}

fn rows(table: &Value) -> &Vec<Value> {
    table["rows"].as_array().expect("rows")
}

fn milliamperes(row: &Value) -> f64 {
    row["touch_ma"].as_f64().expect("a number")
}

fn count(row: &Value) -> usize {
    row["faults"].as_array().expect("a list").len()
}

#[test]
fn there_is_a_row_for_each_state_and_set_of_faults_in_the_order_of_the_design() {
    // States × (1 + n + n (n - 1) / 2), counted by hand.
    for (case, number) in CASES.iter().zip([64, 14, 148, 88, 116, 44, 22]) {
        let found = table(case);
        let found: Vec<Value> =
            rows(&found).iter().map(|row| json!([row["state"], row["faults"]])).collect();
        assert_eq!(found.len(), number, "{}", case.name);
        assert_eq!(found, expected(case), "{}", case.name);
    }
}

#[test]
fn the_summary_follows_from_the_rows() {
    for case in CASES {
        let table = table(case);
        let as_found =
            rows(&table).iter().filter(|row| count(row) == 0).map(milliamperes).fold(0.0, f64::max);
        assert_eq!(table["as_found_ma"].as_f64(), Some(as_found), "{}", case.name);
        let fewest = rows(&table).iter().filter(|row| milliamperes(row) >= 5.0).map(count).min();
        // A supply conductor on the earth wire has margin 0 by definition.
        let on_earth = case.factors[..2] == ["line_tied", "three_pin_earthed"];
        let margin = if on_earth { 0 } else { fewest.unwrap_or(3) };
        assert_eq!(table["margin"], margin, "{}", case.name);
        let class = match (margin, as_found) {
            (0, _) => "live",
            (1, 0.5..) => "leaky",
            (1, _) => "one_fault",
            _ => "two_faults",
        };
        assert_eq!(table["class"], class, "{}", case.name);
    }
}

/// The row of a closed, earthed set in its first state with these faults.
fn outcome(table: &Value, switch: &str, faults: &[&str]) -> Value {
    let wanted = |row: &&Value| row["state"]["switch"] == switch && row["faults"] == json!(faults);
    rows(table).iter().find(wanted).expect("such a row").clone()
}

#[test]
fn open_circuit_volts_are_null_where_nobody_is_touched() {
    let table = table(&CASES[5]);
    // The hot contact feeds the near leg, which is the chassis and the earth wire: 120 V over less
    // than 0.8 Ω is more than 150 A. The switch is in the far leg and changes nothing.
    for switch in ["on", "off"] {
        for (faults, outcome_id) in [
            (&[][..], "breaker_trips"),
            (&["lost_barrier"], "breaker_trips"),
            (&["neutral_open"], "breaker_trips"),
            (&["earth_open"], "behind_barrier"),
            (&["outlet_reversed"], "behind_barrier"),
            (&["lost_barrier", "earth_open"], "touch"),
            (&["lost_barrier", "outlet_reversed"], "touch"),
        ] {
            let row = outcome(&table, switch, faults);
            assert_eq!(row["outcome"], outcome_id, "{switch} {faults:?}");
            assert_eq!(row["open_circuit_v"].is_null(), outcome_id != "touch", "{faults:?}");
        }
        let live = outcome(&table, switch, &["lost_barrier", "earth_open"]);
        assert!((live["open_circuit_v"].as_f64().expect("volts") - 120.0).abs() < 0.1);
        assert!((milliamperes(&live) - 174.3).abs() < 174.3 * 0.02, "{live}");
    }
    for case in CASES {
        for row in rows(&self::table(case)) {
            let touched = row["outcome"] == "touch";
            assert_eq!(touched, row["open_circuit_v"].is_number(), "{}: {row}", case.name);
            assert!(touched || row["touch_ma"] == 0.0, "{}: {row}", case.name);
        }
    }
}

#[test]
fn a_unit_without_a_line_side_has_no_rows_and_needs_no_other_factor() {
    let expected = json!({"class": "no_line", "margin": 3, "as_found_ma": 0.0, "rows": []});
    let bare = r#"{"supply": {"volts": 120, "hertz": 60}, "isolation": "no_line"}"#;
    assert_eq!(json("exposure", bare), expected);
    // What would be impossible elsewhere is ignored here.
    let full = ARRANGEMENT
        .replace("\"isolating\"", "\"no_line\"")
        .replace("\"near_pin\": \"b\"", "\"near_pin\": \"a\"")
        .replace("\"exposed\"", "\"common_exposed\"");
    assert_eq!(json("exposure", &full), expected);
    let some = full.replace("\"cord\": \"two_pin_reversible\", ", "");
    assert_ne!(some, full);
    assert_eq!(json("exposure", &some), expected);
}
