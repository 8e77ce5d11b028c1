//! `coldchassis remedies`: every modification before and after, for scripts and for people.

use super::accepted::{FINDINGS, json, keys};
use super::program::accepted;

const STANDING: [&str; 8] = [
    "as_found_ma",
    "class",
    "line_on_earth",
    "margin",
    "remaining",
    "trip",
    "worst_state",
    "worst_touch_ma",
];

/// A radio with everything looked at: tied, the switch in the near leg, bare screws.
const TIED: &str = r#"
{"supply": {"volts": 120, "hertz": 60, "volts_max": 120}, "access": ["outside", "cover_off"],
 "answers": {"plug": "two_equal_blades", "bare_metal": ["screws_or_shafts"], "back": "fitted",
             "terminals": ["none"], "transformer": "none", "common_to_chassis": "direct",
             "common_leg": "pin_b", "switch_leg": "pin_b"}}
"#;

#[test]
fn every_modification_is_printed_before_and_after() {
    let study = json("remedies", TIED);
    assert_eq!(
        keys(&study),
        ["before", "modifications", "over", "shortest", "shortest_in_unit", "worst_arrangement"]
    );
    assert_eq!(study["over"], 1);
    let all = study["modifications"].as_array().expect("a list");
    assert_eq!(all.len(), 14);
    for one in all {
        assert_eq!(keys(&one["before"]), STANDING, "{one}");
        assert_eq!(one["after"].is_null(), one["refused"].is_string(), "{one}");
    }
    let named = |id: &str| all.iter().find(|one| one["modification"] == id).expect("it is there");
    let plug = named("polarised_plug");
    assert_eq!(
        (&plug["before"]["class"], &plug["after"]["class"]),
        (&"live".into(), &"live".into())
    );
    assert_eq!(plug["after"]["worst_state"]["switch"], "off");
    assert_eq!(named("three_wire_cord")["refused"], "line_on_earth");
    assert_eq!(study["shortest_in_unit"]["steps"].as_array().map(Vec::len), Some(2));
}

/// Of what is not known the worst is quoted, and the worst arrangement by itself where that is kinder.
#[test]
fn what_is_not_known_makes_no_figure_kinder() {
    let study = json("remedies", FINDINGS);
    assert!(study["over"].as_u64().is_some_and(|count| count > 1), "{study}");
    let rank = |class: &str| {
        ["live", "leaky", "one_fault", "two_faults", "no_line"].iter().position(|c| *c == class)
    };
    let mut by_itself = 0;
    for one in study["modifications"].as_array().expect("a list") {
        let (over, worst) = (&one["after"], &one["after"]["of_worst"]);
        if over.is_null() || worst.is_null() {
            continue;
        }
        let [over, worst] = [over, worst].map(|s| rank(s["class"].as_str().expect("a class")));
        assert!(over <= worst, "{one}");
        by_itself += 1;
    }
    println!("{by_itself} modifications come to more for the worst arrangement by itself");
}

#[test]
fn the_same_is_said_to_a_person_and_local_codes_come_first() {
    let text = accepted(&["remedies", "/dev/stdin"], TIED.as_bytes());
    let first = text.lines().next().unwrap_or_default();
    assert!(first.starts_with("! Local codes"), "{first}");
    assert!(text.contains("Polarised plug") && text.contains("not offered"), "{text}");
    assert!(!text.contains("{ $"), "{text}");
}
