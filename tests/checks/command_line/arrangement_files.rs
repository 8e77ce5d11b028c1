//! Arrangement files that have to be refused, and those at the edge that have to be taken.

use super::program::accepted;
use super::refused::{Bad, Written, all_refused, bad, strange_keys, supplies, twice};

/// A line floated set with everything given.
fn base() -> Written {
    Written::of(&[
        ("supply", r#"{"volts": 120, "hertz": 60}"#),
        ("isolation", r#""line_floated""#),
        ("cord", r#""two_pin_reversible""#),
        ("near_pin", r#""b""#),
        ("line_capacitor", r#""far_leg""#),
        ("line_capacitor_class", r#""ordinary""#),
        ("switch_leg", r#""near""#),
        ("reach", r#""exposed""#),
    ])
}

const FACTORS: [&str; 7] = [
    "isolation",
    "cord",
    "near_pin",
    "line_capacitor",
    "line_capacitor_class",
    "switch_leg",
    "reach",
];

/// The values with the bound that each stays below.
const VALUES: [(&str, &str); 9] = [
    ("line_capacitor_farad", "1"),
    ("network_ohm", "1e12"),
    ("network_farad", "1"),
    ("aerial_farad", "1"),
    ("heater_ohm", "1e12"),
    ("load_ohm", "1e12"),
    ("winding_farad", "1"),
    ("primary_ohm", "1e12"),
    ("earth_ohm", "1e12"),
];

fn changed(changes: &[(&str, &str)], field: &str) -> Bad {
    let file = changes.iter().fold(base(), |file, (key, id)| file.with(key, &format!("\"{id}\"")));
    bad(file.text(), field)
}

#[test]
fn a_bad_supply_is_refused() {
    all_refused("exposure", &supplies(&base()));
}

#[test]
fn keys_that_are_not_there_or_stand_twice_are_refused() {
    let mut keys = strange_keys(&base());
    keys.extend(twice(&base()));
    keys.push(bad(base().and("reach", r#""closed""#).text(), "reach"));
    keys.push(bad(
        base().with("values", r#"{"load_ohm": 1, "load_ohm": 1}"#).text(),
        "values.load_ohm",
    ));
    // What belongs to a findings file.
    for key in ["access", "answers", "tubes", "readings", "meter"] {
        keys.push(bad(base().with(key, "{}").text(), key));
    }
    all_refused("exposure", &keys);
}

#[test]
fn every_factor_has_to_be_there_and_known() {
    let mut cases = Vec::new();
    for factor in FACTORS {
        cases.push(bad(base().without(factor).text(), factor));
        for value in ["null", "true", "0", "[]", "{}", r#""""#, r#""banana""#, r#"["none"]"#] {
            cases.push(bad(base().with(factor, value).text(), factor));
        }
        let shouted = base().with(factor, r#""EXPOSED\u001b[31m\n""#);
        cases.push(bad(shouted.text(), factor));
    }
    cases.push(bad("{}", "supply"));
    cases.push(bad(r#"{"supply": {"volts": 120, "hertz": 60}}"#, "isolation"));
    all_refused("exposure", &cases);
}

#[test]
fn arrangements_that_cannot_exist_are_refused_by_the_factor_that_is_wrong() {
    let mut cases = vec![
        changed(&[("isolation", "isolating"), ("near_pin", "a")], "near_pin"),
        changed(&[("isolation", "isolating"), ("reach", "common_exposed")], "reach"),
        changed(
            &[("line_capacitor", "none"), ("line_capacitor_class", "class_y")],
            "line_capacitor_class",
        ),
    ];
    // Where the chassis is the common, there is nothing for a line capacitor to go between.
    for isolation in ["line_tied", "line_rectified", "heater_transformer", "autotransformer"] {
        for capacitor in ["near_leg", "far_leg", "both_legs", "selector"] {
            cases.push(changed(
                &[("isolation", isolation), ("line_capacitor", capacitor)],
                "line_capacitor",
            ));
        }
        let bare = [("isolation", isolation), ("line_capacitor", "none")];
        cases.push(changed(&[bare[0], bare[1], ("reach", "common_exposed")], "reach"));
        cases.push(changed(
            &[bare[0], bare[1], ("line_capacitor_class", "class_y")],
            "line_capacitor_class",
        ));
    }
    all_refused("exposure", &cases);
}

#[test]
fn bad_values_are_refused() {
    let mut cases = Vec::new();
    for value in ["null", "[]", "5", r#""47n""#] {
        cases.push(bad(base().with("values", value).text(), "values"));
    }
    for (key, field) in [
        ("line_capacitor", "values.line_capacitor"),
        ("Load_ohm", "values.Load_ohm"),
        ("load_ohm.x", "values.load_ohm.x"),
        (r"\u001b[2J\n", "values.\u{fffd}[2J\u{fffd}"),
    ] {
        cases.push(bad(base().with("values", &format!("{{\"{key}\": 1e-9}}")).text(), field));
    }
    for (key, bound) in VALUES {
        for number in
            [bound, "0", "-0.0", "-1e-9", "1e300", "null", "true", r#""1e-9""#, "[1e-9]", "{}"]
        {
            let value = format!("{{\"{key}\": {number}}}");
            cases.push(bad(base().with("values", &value).text(), format!("values.{key}")));
        }
        for number in ["NaN", "-Infinity", "1e999"] {
            let value = format!("{{\"{key}\": {number}}}");
            cases.push(bad(base().with("values", &value).text(), "file"));
        }
    }
    all_refused("exposure", &cases);
}

#[test]
fn what_is_just_within_bounds_is_taken() {
    let taken = |file: Written| {
        accepted(&["exposure", "/dev/stdin", "--json"], file.text().as_bytes());
    };
    taken(base());
    taken(base().with("values", "{}"));
    for (key, bound) in VALUES {
        let below = if bound == "1" { "0.999" } else { "9.9e11" };
        taken(base().with("values", &format!("{{\"{key}\": {below}}}")));
        taken(base().with("values", &format!("{{\"{key}\": 1e-12}}")));
    }
    taken(base().with("supply", r#"{"volts": 1, "hertz": 15, "volts_max": 1.25}"#));
    taken(base().with("supply", r#"{"volts": 1000, "hertz": 400, "feed": "both_hot"}"#));
    taken(base().with("reach", r#""common_exposed""#));
    taken(base().with("line_capacitor_class", r#""class_y""#));
}
