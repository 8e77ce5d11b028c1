//! The worked values of the design: every row computed through the whole chain from an arrangement
//! file to the class.
//!
//! Sources: body impedance IEC 60479-1:2005/2018 table 1, 5 %, dry, large area, and path factors of
//! its figure 3 (from memory, high confidence); capacitor and winding values common practice or
//! verified in `tests/reference/leakage_examples.csv` (computed). The values were worked out apart
//! from this code, to 2 % or 0.002 mA.

use coldchassis_core::arrangement::read_exposure;
use coldchassis_core::hazard::{Class, Table, table};
use serde_json::{Value, json};

struct Case {
    name: &'static str,
    file: Value,
    as_found_ma: f64,
    single_fault_ma: f64,
    margin: u8,
    class: Class,
}

fn file(changes: Value) -> Value {
    let mut file = json!({
        "supply": {"volts": 120, "hertz": 60}, "isolation": "line_tied",
        "cord": "two_pin_reversible", "near_pin": "b", "line_capacitor": "none",
        "line_capacitor_class": "ordinary", "switch_leg": "far", "reach": "exposed"
    });
    let Value::Object(changes) = changes else { unreachable!("changes are an object") };
    for (key, value) in changes {
        file[key] = value;
    }
    file
}

fn case(
    name: &'static str,
    changes: Value,
    as_found_ma: f64,
    single_fault_ma: f64,
    margin: u8,
    class: Class,
) -> Case {
    Case { name, file: file(changes), as_found_ma, single_fault_ma, margin, class }
}

fn line_tied() -> Vec<Case> {
    use Class::{Live, OneFault, TwoFaults};
    let polarised = "two_pin_polarised";
    vec![
        case("switch near, reversible", json!({"switch_leg": "near"}), 174.2, 174.3, 0, Live),
        case(
            "the same, closed",
            json!({"switch_leg": "near", "reach": "closed"}),
            0.0,
            174.2,
            1,
            OneFault,
        ),
        case(
            "switch near, polarised: live when off",
            json!({"switch_leg": "near", "cord": polarised}),
            140.4,
            174.3,
            0,
            Live,
        ),
        case("switch far, polarised", json!({"cord": polarised}), 0.009, 174.3, 1, OneFault),
        case(
            "the same, closed",
            json!({"cord": polarised, "reach": "closed"}),
            0.0,
            0.009,
            2,
            TwoFaults,
        ),
        case(
            "the same exposed, near pin a",
            json!({"cord": polarised, "near_pin": "a"}),
            174.3,
            174.3,
            0,
            Live,
        ),
        case("third pin cut", json!({"cord": "three_pin_cut"}), 174.3, 174.3, 0, Live),
        case("three-pin earthed", json!({"cord": "three_pin_earthed"}), 0.007, 0.217, 0, Live),
        case(
            "line rectified, polarised",
            json!({"isolation": "line_rectified", "cord": polarised}),
            170.6,
            174.3,
            0,
            Live,
        ),
        case(
            "aerial terminal",
            json!({"switch_leg": "near", "reach": "aerial_terminal"}),
            0.452,
            174.2,
            1,
            OneFault,
        ),
        case("autotransformer", json!({"isolation": "autotransformer"}), 174.3, 174.3, 0, Live),
        case(
            "230 V, both contacts hot",
            json!({"cord": polarised, "supply": {"volts": 230, "hertz": 50, "feed": "both_hot"}}),
            163.8,
            163.8,
            0,
            Live,
        ),
    ]
}

fn floated_and_insulated() -> Vec<Case> {
    use Class::{Leaky, Live};
    let floated = json!({"isolation": "line_floated", "switch_leg": "near"});
    let with = |key: &str, value: Value| {
        let mut changes = floated.clone();
        changes[key] = value;
        changes
    };
    vec![
        case("line floated", floated.clone(), 4.52, 174.3, 1, Leaky),
        case(
            "line floated, 230 V 50 Hz",
            with("supply", json!({"volts": 230, "hertz": 50})),
            7.25,
            396.7,
            0,
            Live,
        ),
        case(
            "line floated, common exposed",
            with("reach", json!("common_exposed")),
            261.3,
            261.4,
            0,
            Live,
        ),
        case(
            "line insulated, far-leg capacitor",
            json!({"isolation": "line_insulated", "switch_leg": "near", "line_capacitor": "far_leg"}),
            2.135,
            174.3,
            1,
            Leaky,
        ),
    ]
}

fn isolating() -> Vec<Case> {
    use Class::{Leaky, OneFault, TwoFaults};
    let with = |mut changes: Value| {
        changes["isolation"] = json!("isolating");
        changes
    };
    let near = "near_leg";
    vec![
        case("near-leg capacitor", with(json!({"line_capacitor": near})), 2.171, 174.3, 1, Leaky),
        case(
            "the same, handheld",
            with(json!({"line_capacitor": near, "reach": "handheld"})),
            2.171,
            261.4,
            1,
            Leaky,
        ),
        case("capacitor cut out", with(json!({})), 0.045, 174.3, 1, OneFault),
        case(
            "class Y 2.2 nF",
            with(json!({"line_capacitor": near, "line_capacitor_class": "class_y"})),
            0.145,
            174.3,
            1,
            OneFault,
        ),
        case(
            "both legs, switch both",
            with(json!({"line_capacitor": "both_legs", "switch_leg": "both"})),
            2.146,
            174.3,
            1,
            Leaky,
        ),
        case(
            "both legs, switch far",
            with(json!({"line_capacitor": "both_legs"})),
            4.293,
            174.3,
            1,
            Leaky,
        ),
        case(
            "three-pin earthed",
            with(json!({"cord": "three_pin_earthed"})),
            0.0,
            0.023,
            2,
            TwoFaults,
        ),
        case(
            "three-pin earthed, far-leg capacitor",
            with(json!({"cord": "three_pin_earthed", "line_capacitor": "far_leg"})),
            0.0,
            2.148,
            2,
            TwoFaults,
        ),
    ]
}

fn compute(case: &Case) -> (Table, f64) {
    let exposure = read_exposure(case.file.clone()).expect(case.name);
    let table =
        table(&exposure.arrangement, &exposure.supply, exposure.supply.volts, &exposure.values);
    let single = table
        .rows
        .iter()
        .filter(|row| row.faults.len() == 1)
        .map(|row| row.outcome.milliamperes())
        .fold(0.0, f64::max);
    (table, single)
}

fn near(computed: f64, worked: f64) -> bool {
    (computed - worked).abs() <= (0.02 * worked).max(0.002)
}

#[test]
fn every_worked_value_of_the_design_is_reproduced() {
    let cases: Vec<Case> =
        line_tied().into_iter().chain(floated_and_insulated()).chain(isolating()).collect();
    assert_eq!(cases.len(), 24);
    for case in cases {
        let (table, single) = compute(&case);
        println!(
            "{:40} as found {:8.3} (worked {:7.3})  single fault {:8.3} (worked {:7.3})  margin {} {:?}",
            case.name,
            table.as_found_ma,
            case.as_found_ma,
            single,
            case.single_fault_ma,
            table.margin,
            table.class
        );
        assert!(near(table.as_found_ma, case.as_found_ma), "{}: {}", case.name, table.as_found_ma);
        assert!(near(single, case.single_fault_ma), "{}: {single}", case.name);
        assert_eq!((table.margin, table.class), (case.margin, case.class), "{}", case.name);
    }
}
