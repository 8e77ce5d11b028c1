//! `heaters` prints every promised key and no other, says the same to a person, and refuses by the field.

use serde_json::{Value, json};

use super::accepted::keys;
use super::program::{accepted, fault_of_refusal, run};

fn heaters(types: &[&str], more: &[&str]) -> Value {
    let arguments = [&["heaters"], types, more, &["--json"]].concat();
    let text = accepted(&arguments, b"");
    assert!(text.ends_with("}\n"), "one object and a line end: {text}");
    serde_json::from_str(&text).expect("JSON")
}

/// The example of the contract: five tubes of 150 mA, 122.8 V on 120 V.
const FIVE: [&str; 5] = ["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"];

#[test]
fn the_example_of_the_contract_is_printed() {
    let printed = heaters(&FIVE, &["--volts", "120"]);
    let promised =
        ["clashes", "current_a", "dropper_ohm", "fits_series", "reading", "sum_v", "unknown"];
    assert_eq!(keys(&printed), promised);
    assert_eq!(
        printed,
        json!({"sum_v": 122.8, "current_a": 0.15, "fits_series": true, "reading": "series_on_line",
            "dropper_ohm": null, "clashes": [], "unknown": []})
    );
    assert_eq!(heaters(&FIVE, &[]), printed, "120 V is what is taken where none is given");
}

// 62.6 V at 0.3 A on 117 V needs 181 Ω, as a page on line-cord sets works it out (seen in print).
#[test]
fn figures_are_printed_in_full() {
    let printed = heaters(&["6SC7", "6SJ7", "25L6GT", "25Z6GT"], &["--volts", "117"]);
    let ohms = printed["dropper_ohm"].as_f64().expect("a number");
    assert!((ohms - 54.4 / 0.3).abs() < 1e-9, "{ohms}");
}

#[test]
fn clashes_and_strangers_are_named() {
    let printed = heaters(&["12SA7", "12SK7", "12SQ7", "25L6GT", "25L6GT"], &[]);
    let clash = printed["clashes"][0].as_str().expect("a sentence");
    assert!(clash.contains("25L6GT") && clash.contains("0.3") && clash.contains("0.15"), "{clash}");
    assert_eq!(heaters(&["12SA7", "QWERTY"], &[])["unknown"], json!(["QWERTY"]));
    let over = heaters(&["50L6GT", "50L6GT", "35Z5GT", "12SA7"], &[]);
    assert_eq!((&over["reading"], &over["fits_series"]), (&json!("undecided"), &json!(true)));
    let clash = over["clashes"][0].as_str().expect("a sentence");
    assert!(clash.contains("147.6") && clash.contains("120"), "{clash}");
}

#[test]
fn a_person_reads_the_same() {
    let page = accepted(&["heaters", "12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"], b"");
    for part in ["122.8", "12SA7", "35Z5GT", "Ω", "prove"] {
        assert!(page.contains(part), "{part} in {page}");
    }
}

#[test]
fn bad_input_is_refused_by_its_field() {
    let many = vec!["12SA7"; 61];
    let long = "1".repeat(41);
    let table: [(&[&str], &[&str], &str); 8] = [
        (&["12SA7"], &["--volts", "0"], "volts"),
        (&["12SA7"], &["--volts", "1001"], "volts"),
        (&["12SA7"], &["--volts", "NaN"], "volts"),
        (&["12SA7"], &["--volts", "inf"], "volts"),
        (&["12SA7"], &["--hertz", "0"], "hertz"),
        (&[""], &[], "tubes"),
        (&[&long], &[], "tubes"),
        (&many, &[], "tubes"),
    ];
    for (types, more, field) in table {
        for json in [&["--json"][..], &[]] {
            let arguments = [&["heaters"], types, more, json].concat();
            let fault = fault_of_refusal(&run(&arguments, b""), field);
            assert_eq!(fault, None, "{arguments:?}");
        }
    }
}
