//! Findings files that have to be refused, and those at the edge that have to be taken.

use super::program::accepted;
use super::refused::{Bad, Written, all_refused, bad, strange_keys, supplies, twice};

fn base() -> Written {
    Written::of(&[("supply", r#"{"volts": 120, "hertz": 60}"#)])
}

/// A key with a bad value, and the field to blame.
type Pair = (&'static str, &'static str, &'static str);

fn table(pairs: &[Pair]) -> Vec<Bad> {
    pairs.iter().map(|&(key, value, field)| bad(base().with(key, value).text(), field)).collect()
}

/// Questions with one answer, of section 8 of the design.
const ONE_ANSWER: [&str; 23] = [
    "plug",
    "back",
    "selector",
    "earth_lift",
    "kind",
    "rating_plate",
    "iron_seen",
    "tingle",
    "rewired",
    "cord",
    "cord_wires",
    "accessory_outlet",
    "metal_joined",
    "transformer",
    "common_to_chassis",
    "common_leg",
    "switch_leg",
    "line_capacitor",
    "line_capacitor_class",
    "earth_wire",
    "fuse",
    "filter_capacitors",
    "tube_list",
];

/// Questions with several, and an answer that stands alone.
const SEVERAL: [(&str, &str); 3] =
    [("bare_metal", "none_anywhere"), ("terminals", "none"), ("materials", "none")];

const OHM_READINGS: [&str; 12] = [
    "ohms_a_chassis_on",
    "ohms_a_chassis_off",
    "ohms_b_chassis_on",
    "ohms_b_chassis_off",
    "ohms_earth_chassis",
    "ohms_a_part_on",
    "ohms_a_part_off",
    "ohms_b_part_on",
    "ohms_b_part_off",
    "ohms_earth_part",
    "ohms_a_b_on",
    "ohms_a_b_off",
];

const PARTS: [(&str, &str, &str); 4] = [
    ("line_capacitor", "farads", "ohms"),
    ("network_capacitor", "farads", "ohms"),
    ("aerial_capacitor", "farads", "ohms"),
    ("network_resistor", "ohms", "farads"),
];

fn inside(object: &str, key: &str, value: &str) -> String {
    base().with(object, &format!("{{\"{key}\": {value}}}")).text()
}

#[test]
fn a_bad_supply_is_refused() {
    all_refused("assess", &supplies(&base()));
}

#[test]
fn keys_that_are_not_there_or_stand_twice_are_refused() {
    let mut bad_keys = strange_keys(&base());
    bad_keys.extend(twice(&base()));
    let many =
        base().with("answers", r#"{"plug": "no_plug", "back": "fitted", "plug": "no_plug"}"#);
    bad_keys.push(bad(many.text(), "answers.plug"));
    let deep = r#"{"line_capacitor": {"farads": 1e-8, "farads": 1e-8}}"#;
    bad_keys.push(bad(base().with("values", deep).text(), "values.line_capacitor.farads"));
    all_refused("assess", &bad_keys);
}

#[test]
fn every_answer_of_a_wrong_kind_is_refused_by_its_question() {
    let mut cases = Vec::new();
    for question in ONE_ANSWER {
        for value in
            ["null", "true", "7", "[]", "{}", r#""""#, r#""banana""#, r#"["cant_tell"]"#, "1e9"]
        {
            cases.push(bad(inside("answers", question, value), format!("answers.{question}")));
        }
    }
    for (question, alone) in SEVERAL {
        let two = format!(r#"["{alone}", "banana"]"#);
        let text = format!(r#""{alone}""#);
        let with_doubt = format!(r#"["cant_tell", "{alone}"]"#);
        for value in [
            "null",
            "true",
            "7",
            "[]",
            "{}",
            "[7]",
            "[null]",
            "[[]]",
            r#"[""]"#,
            &two,
            &text,
            &with_doubt,
        ] {
            cases.push(bad(inside("answers", question, value), format!("answers.{question}")));
        }
    }
    for value in ["null", "true", "-1", "61", "2.5", "1e2", r#""5""#, "[]", "[5]", "{}"] {
        cases.push(bad(inside("answers", "tube_count", value), "answers.tube_count"));
    }
    all_refused("assess", &cases);
}

#[test]
fn answers_that_do_not_fit_together_or_are_not_asked_are_refused() {
    all_refused(
        "assess",
        &table(&[
            ("answers", "null", "answers"),
            ("answers", "[]", "answers"),
            ("answers", r#""plug""#, "answers"),
            ("answers", "5", "answers"),
            ("answers", r#"{"plugs": "no_plug"}"#, "answers.plugs"),
            ("answers", r#"{"Plug": "no_plug"}"#, "answers.Plug"),
            ("answers", r#"{"plug": "No_plug"}"#, "answers.plug"),
            ("answers", r#"{"plug": "no_plug "}"#, "answers.plug"),
            ("answers", r#"{"plug": "\u001b[31mno_plug"}"#, "answers.plug"),
            ("answers", r#"{"plug\n\u001b[31m": "no_plug"}"#, "answers.plug\u{fffd}\u{fffd}[31m"),
            ("answers", r#"{"answers.plug": "no_plug"}"#, "answers.answers.plug"),
            (
                "answers",
                r#"{"bare_metal": ["none_anywhere", "instrument_jack"]}"#,
                "answers.bare_metal",
            ),
            ("answers", r#"{"terminals": ["none", "aerial_or_earth"]}"#, "answers.terminals"),
            ("answers", r#"{"materials": ["none", "radium"]}"#, "answers.materials"),
            ("access", "null", "access"),
            ("access", r#""outside""#, "access"),
            ("access", r#"["roof"]"#, "access"),
            ("access", r#"["outside", 1]"#, "access"),
            ("access", r#"["outside", null]"#, "access"),
            ("access", r#"{"outside": true}"#, "access"),
            ("access", r#"["out\u001b[31mside\n"]"#, "access"),
        ]),
    );
}

#[test]
fn bad_lists_of_tubes_are_refused() {
    let mut cases = table(&[
        ("tubes", "null", "tubes"),
        ("tubes", "5", "tubes"),
        ("tubes", r#""12SA7""#, "tubes"),
        ("tubes", r#"{"12SA7": 1}"#, "tubes"),
        ("tubes", r#"[""]"#, "tubes"),
        ("tubes", r#"["  "]"#, "tubes"),
        ("tubes", "[12]", "tubes"),
        ("tubes", r#"["12SA7", null]"#, "tubes"),
        ("tubes", r#"[["12SA7"]]"#, "tubes"),
    ]);
    for (length, many) in [(10_000, 1), (41, 1), (5, 61), (5, 100_000)] {
        let one = format!("\"{}\"", "x".repeat(length));
        let list = format!("[{}]", vec![one; many].join(","));
        cases.push(bad(base().with("tubes", &list).text(), "tubes"));
    }
    all_refused("assess", &cases);
}

#[test]
fn bad_readings_are_refused() {
    let mut cases = table(&[
        ("readings", "null", "readings"),
        ("readings", "[]", "readings"),
        ("readings", "0.4", "readings"),
        ("readings", r#"{"ohms": 1}"#, "readings.ohms"),
        ("readings", r#"{"ohms_b_chassis": 1}"#, "readings.ohms_b_chassis"),
        ("readings", r#"{"insulation_megohms": -1}"#, "readings.insulation_megohms"),
        ("readings", r#"{"insulation_megohms": 1000001}"#, "readings.insulation_megohms"),
        ("readings", r#"{"touch_test_volts": "OL"}"#, "readings.touch_test_volts"),
        ("readings", r#"{"touch_test_volts": 1000.1}"#, "readings.touch_test_volts"),
        ("readings", r#"{"touch_test_volts": -0.1}"#, "readings.touch_test_volts"),
    ]);
    for reading in OHM_READINGS {
        for value in ["null", "true", "-1", "1e13", r#""ol""#, r#""0.4""#, r#""""#, "[]", "{}"] {
            cases.push(bad(inside("readings", reading, value), format!("readings.{reading}")));
        }
    }
    all_refused("assess", &cases);
}

#[test]
fn bad_values_of_parts_are_refused() {
    let mut cases = table(&[
        ("values", "null", "values"),
        ("values", "[]", "values"),
        ("values", r#"{"capacitor": {"farads": 1e-8}}"#, "values.capacitor"),
        ("values", r#"{"line_capacitor_farad": 4.7e-8}"#, "values.line_capacitor_farad"),
        ("values", r#"{"rated": null}"#, "values.rated"),
        ("values", r#"{"rated": {"volts": 0}}"#, "values.rated.volts"),
        ("values", r#"{"rated": {"volts": "110"}}"#, "values.rated.volts"),
        ("values", r#"{"rated": {"hertz": -1}}"#, "values.rated.hertz"),
        ("values", r#"{"rated": {"hertz": 401}}"#, "values.rated.hertz"),
        ("values", r#"{"rated": {"watts": 0}}"#, "values.rated.watts"),
        ("values", r#"{"rated": {"watts": true}}"#, "values.rated.watts"),
        ("values", r#"{"rated": {"amperes": 1}}"#, "values.rated.amperes"),
        ("meter", "null", "meter"),
        ("meter", r#"{"max_ohms": 0}"#, "meter.max_ohms"),
        ("meter", r#"{"max_ohms": 1e12}"#, "meter.max_ohms"),
        ("meter", r#"{"max_ohms": "OL"}"#, "meter.max_ohms"),
        ("meter", r#"{"percent": -1}"#, "meter.percent"),
        ("meter", r#"{"percent": "1"}"#, "meter.percent"),
        ("meter", r#"{"digits": -1}"#, "meter.digits"),
        ("meter", r#"{"digits": null}"#, "meter.digits"),
        ("meter", r#"{"maker": 1}"#, "meter.maker"),
    ]);
    for (part, unit, other) in PARTS {
        let bound = if unit == "ohms" { "1e12" } else { "1" };
        let field = format!("values.{part}.{unit}");
        for number in ["0", "-1e-9", "null", "true", r#""47n""#, "[1e-8]", "1e300", bound] {
            let value = format!("{{\"{unit}\": {number}}}");
            cases.push(bad(inside("values", part, &value), field.clone()));
        }
        for value in ["{}".to_owned(), r#"{"measured": true}"#.to_owned()] {
            cases.push(bad(inside("values", part, &value), field.clone()));
        }
        for value in ["null", "4.7e-8", "[]", r#""47n""#] {
            cases.push(bad(inside("values", part, value), format!("values.{part}")));
        }
        for measured in ["null", "1", "0", r#""true""#] {
            let value = format!("{{\"{unit}\": 1e-8, \"measured\": {measured}}}");
            cases.push(bad(inside("values", part, &value), format!("values.{part}.measured")));
        }
        for key in [other, "maker"] {
            let value = format!("{{\"{unit}\": 1e-8, \"{key}\": 1}}");
            cases.push(bad(inside("values", part, &value), format!("values.{part}.{key}")));
        }
    }
    all_refused("assess", &cases);
}

#[test]
fn what_is_just_within_bounds_is_taken() {
    let taken = [
        ("supply", r#"{"volts": 1, "hertz": 15, "volts_max": 1}"#),
        ("supply", r#"{"volts": 1000, "hertz": 400, "volts_max": 1250}"#),
        ("supply", r#"{"volts": 120.0, "hertz": 6e1, "volts_max": 150, "feed": "both_hot"}"#),
        ("answers", "{}"),
        ("answers", r#"{"bare_metal": "cant_tell", "tube_count": "cant_tell"}"#),
        ("answers", r#"{"tube_list": "cant_tell", "materials": ["asbestos", "radium"]}"#),
        ("answers", r#"{"tube_count": 0}"#),
        ("answers", r#"{"tube_count": 60}"#),
        ("readings", r#"{"ohms_a_b_on": 0, "ohms_a_b_off": "OL", "touch_test_volts": 1000}"#),
        ("values", r#"{"line_capacitor": {"farads": 0.999}}"#),
        ("values", r#"{"network_resistor": {"ohms": 9.9e11, "measured": false}}"#),
        ("values", r#"{"rated": {}}"#),
        ("meter", r#"{"max_ohms": 2e6, "percent": 1, "digits": 2}"#),
    ];
    for (key, value) in taken {
        accepted(&["assess", "/dev/stdin", "--json"], base().with(key, value).text().as_bytes());
    }
    let tubes = format!("[{}]", vec![format!("\"{}\"", "x".repeat(40)); 60].join(","));
    let file = base().with("tubes", &tubes).text();
    accepted(&["assess", "/dev/stdin", "--json"], file.as_bytes());
}
