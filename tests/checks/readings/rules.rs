//! What single readings and groups of them say, each by hand.

use std::collections::BTreeSet;

use coldchassis_core::arrangement::{Arrangement, Isolation, NearPin, Reach, SwitchLeg};
use coldchassis_core::hazard::Class;
use coldchassis_core::inspection::{
    ArrangementSet, Judge, PartValue, Trap, Unproven, ValueId, assess, possible, proven_path,
    read_findings, traps,
};
use serde_json::{Value, json};

fn findings(answers: Value, readings: Value) -> coldchassis_core::inspection::Findings {
    let file = json!({
        "supply": {"volts": 120, "hertz": 60},
        "access": ["outside", "cover_off", "meter"],
        "answers": answers,
        "readings": readings,
    });
    read_findings(file).expect("a valid file")
}

fn left(answers: Value, readings: Value) -> ArrangementSet {
    possible(&findings(answers, readings))
}

fn isolations(set: &ArrangementSet) -> BTreeSet<Isolation> {
    set.iter().map(|(_, arrangement)| arrangement.isolation).collect()
}

const JOINED: [Isolation; 3] =
    [Isolation::LineTied, Isolation::HeaterTransformer, Isolation::Autotransformer];

#[test]
fn a_wire_from_a_pin_to_the_chassis_leaves_only_what_has_one() {
    let set = left(json!({"plug": "two_equal_blades"}), json!({"ohms_b_chassis_on": 0.3}));
    assert_eq!(
        isolations(&set),
        [
            Isolation::LineTied,
            Isolation::LineFloated,
            Isolation::HeaterTransformer,
            Isolation::Autotransformer,
        ]
        .into(),
        "a shorted network reads like a wire"
    );
    let tied: Vec<_> = set.iter().filter(|(_, a)| a.isolation == Isolation::LineTied).collect();
    assert!(!tied.is_empty());
    for (_, arrangement) in tied {
        assert_eq!(arrangement.line.map(|line| line.near_pin), Some(NearPin::B));
    }
}

/// Without the plug the names of the pins are those of a piece of tape.
#[test]
fn without_a_plug_a_wire_does_not_say_which_pin_it_is() {
    let set = left(json!({"plug": "no_plug"}), json!({"ohms_b_chassis_on": 0.3}));
    let tied = set.iter().filter(|(_, a)| a.isolation == Isolation::LineTied);
    let pins: BTreeSet<_> = tied.filter_map(|(_, a)| a.line.map(|line| line.near_pin)).collect();
    assert_eq!(pins.len(), 2);
    assert!(!isolations(&set).contains(&Isolation::Isolating));
}

#[test]
fn a_wire_that_the_switch_opens_is_the_switched_leg() {
    let set = left(
        json!({"plug": "two_equal_blades"}),
        json!({"ohms_b_chassis_on": 0.3, "ohms_b_chassis_off": "OL"}),
    );
    for (_, arrangement) in set.iter().filter(|(_, a)| a.isolation == Isolation::LineTied) {
        let leg = arrangement.line.map(|line| line.switch_leg);
        assert!(matches!(leg, Some(SwitchLeg::Near | SwitchLeg::Both)), "{leg:?}");
    }
    let set = left(json!({"plug": "two_equal_blades"}), json!({"ohms_b_chassis_off": 0.3}));
    for (_, arrangement) in set.iter().filter(|(_, a)| a.isolation == Isolation::LineTied) {
        let leg = arrangement.line.map(|line| line.switch_leg);
        assert!(matches!(leg, Some(SwitchLeg::Far | SwitchLeg::None)), "{leg:?}");
    }
}

#[test]
fn open_says_nothing_until_pin_to_pin_proves_the_path() {
    let open = json!({"ohms_a_chassis_on": "OL", "ohms_b_chassis_on": "OL"});
    let with = |on: Value, off: Value, answers: Value| {
        let mut readings = open.clone();
        readings["ohms_a_b_on"] = on;
        readings["ohms_a_b_off"] = off;
        let tied = isolations(&left(answers.clone(), readings.clone()));
        let proven = proven_path(&findings(answers, readings));
        (JOINED.iter().filter(|isolation| tied.contains(isolation)).count(), proven.err())
    };
    let amplifier = || json!({"kind": "instrument_amplifier"});
    let open = || json!("OL");
    assert_eq!(with(json!(120), open(), amplifier()), (0, None));
    assert_eq!(with(open(), open(), amplifier()), (3, Some(Unproven::Open)));
    assert_eq!(with(json!(120), json!(121), amplifier()), (3, Some(Unproven::Unchanged)));
    assert_eq!(with(json!(120), open(), json!({})), (3, Some(Unproven::Motor)));
    assert_eq!(with(json!(120), open(), json!({"kind": "record_player"})).1, Some(Unproven::Motor));
    // One word for a motor outweighs one against it.
    let both = json!({"kind": "instrument_amplifier", "transformer": "motor_winding"});
    assert_eq!(with(json!(120), open(), both).1, Some(Unproven::Motor));
    let tied = isolations(&left(amplifier(), json!({"ohms_a_chassis_on": "OL"})));
    assert!(JOINED.iter().all(|isolation| tied.contains(isolation)), "pin to pin was not read");
}

#[test]
fn open_never_removes_a_floated_or_a_rectified_chassis() {
    let all_open = json!({
        "ohms_a_b_on": 120, "ohms_a_b_off": "OL",
        "ohms_a_chassis_on": "OL", "ohms_b_chassis_on": "OL",
        "ohms_a_chassis_off": "OL", "ohms_b_chassis_off": "OL",
    });
    let set = isolations(&left(json!({"kind": "table_radio"}), all_open));
    for isolation in [Isolation::LineFloated, Isolation::LineRectified, Isolation::LineInsulated] {
        assert!(set.contains(&isolation), "{isolation:?}");
    }
}

#[test]
fn metal_that_reads_open_counts_as_traced_to_nothing_where_the_chassis_would_show() {
    let answers = json!({
        "kind": "instrument_amplifier", "plug": "two_equal_blades",
        "bare_metal": ["screws_or_shafts"], "back": "fitted", "terminals": ["none"],
    });
    let open = json!({
        "ohms_a_b_on": 120, "ohms_a_b_off": "OL", "ohms_a_part_on": "OL", "ohms_b_part_on": "OL",
        "ohms_a_part_off": "OL", "ohms_b_part_off": "OL",
    });
    let set = left(answers.clone(), open.clone());
    for (_, arrangement) in set.iter() {
        let reach = arrangement.line.expect("a line side").reach;
        let tied = JOINED.contains(&arrangement.isolation);
        assert_eq!(reach, if tied { Reach::Closed } else { Reach::Exposed }, "{arrangement:?}");
    }
    assert!(set.iter().any(|(_, a)| a.isolation == Isolation::LineTied));
    // One of the four missing, and nothing is traced.
    let mut three = open;
    three.as_object_mut().expect("an object").remove("ohms_b_part_off");
    let set = left(answers, three);
    assert!(set.iter().any(|(_, a)| {
        a.isolation == Isolation::LineTied && a.line.is_some_and(|l| l.reach == Reach::Exposed)
    }));
}

/// An aerial terminal that nobody has looked for hangs on the common by a capacitor, and reads open as well.
#[test]
fn open_metal_leaves_metal_on_the_common_until_the_terminals_were_looked_at() {
    let left = |terminals: Option<&str>| {
        let mut answers = json!({
            "kind": "instrument_amplifier", "plug": "two_equal_blades", "transformer": "none",
            "bare_metal": ["screws_or_shafts", "socket_or_pickup"], "back": "fitted",
        });
        if let Some(terminals) = terminals {
            answers["terminals"] = json!([terminals]);
        }
        let open = json!({
            "ohms_a_b_on": 120, "ohms_a_b_off": "OL", "ohms_a_part_on": "OL",
            "ohms_b_part_on": "OL", "ohms_a_part_off": "OL", "ohms_b_part_off": "OL",
        });
        let set = left(answers, open);
        set.iter().any(|(_, a)| a.line.is_some_and(|line| line.reach == Reach::CommonExposed))
    };
    assert!(left(None));
    assert!(left(Some("aerial_or_earth")));
    assert!(!left(Some("none")));
}

#[test]
fn continuity_to_the_earth_pin_proves_the_chassis_and_without_a_lift_switch_its_bond() {
    let bonded = |answers: Value| {
        let set = left(answers, json!({"ohms_earth_part": 0.3}));
        let lines: Vec<_> = set.iter().filter_map(|(_, a)| a.line).collect();
        assert!(lines.iter().all(|line| line.reach != Reach::Closed));
        lines.iter().all(|line| line.cord.is_earthed())
    };
    assert!(bonded(json!({"plug": "three_pins", "earth_lift": "absent"})));
    assert!(!bonded(json!({"plug": "three_pins"})), "a lift switch may be closed just now");
    let open = |answers: Value| {
        let set = left(answers, json!({"ohms_earth_chassis": "OL"}));
        let earthed = |a: &Arrangement| a.line.is_some_and(|line| line.cord.is_earthed());
        // What is no earth to count on goes either way; the line on it only where no lift can be closed.
        assert!(set.iter().all(|(_, a)| !earthed(a) || a.is_line_on_earth()));
        set.iter().all(|(_, a)| !earthed(a))
    };
    assert!(open(json!({"plug": "three_pins", "earth_lift": "absent"})));
    assert!(!open(json!({"plug": "three_pins"})), "a lift switch may be open just now");
}

/// A network of which only a resistor was drawn, and whose capacitor is shorted: what was read is what a
/// person receives through.
#[test]
fn a_floated_chassis_that_reads_like_a_wire_is_treated_as_live() {
    let answers = json!({
        "plug": "two_equal_blades", "bare_metal": ["screws_or_shafts"], "back": "fitted",
        "terminals": ["none"], "transformer": "none", "common_to_chassis": "through_network",
        "metal_joined": "chassis", "common_leg": "pin_b", "line_capacitor": "none",
    });
    let class = |readings: Value| {
        let mut found = findings(answers.clone(), readings);
        let capacitor = PartValue { value: 5e-8, measured: true };
        found.values.insert(ValueId::NetworkCapacitor, capacitor);
        assess(&found, &mut Judge::of(&found)).treat_as
    };
    assert_ne!(class(json!({})), Class::Live);
    assert_eq!(class(json!({"ohms_b_chassis_on": 0.4})), Class::Live);
    assert_ne!(class(json!({"ohms_b_chassis_on": 230e3})), Class::Live);
}

#[test]
fn traps_are_named_where_they_may_have_been_fallen_into() {
    let of = |readings: Value, id: &str| {
        let mut file = json!({
            "supply": {"volts": 120, "hertz": 60},
            "tubes": ["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"],
        });
        file["readings"] = readings;
        let found = read_findings(file).expect("a valid file");
        let id = coldchassis_core::inspection::ReadingId::of(id).expect("a reading");
        traps(&found, id)
    };
    assert_eq!(of(json!({"ohms_a_b_on": 120}), "ohms_a_b_on"), []);
    assert_eq!(
        of(json!({"ohms_a_b_on": 400}), "ohms_a_b_on"),
        [Trap::WarmString, Trap::Charging, Trap::Diode]
    );
    assert_eq!(of(json!({"ohms_a_b_on": "OL"}), "ohms_a_b_on"), [Trap::LowRange, Trap::BrokenPath]);
    assert!(of(json!({"ohms_a_part_on": 3e5}), "ohms_a_part_on").contains(&Trap::Fingers));
    assert_eq!(of(json!({"ohms_earth_part": 0.4}), "ohms_earth_part"), [Trap::Leads]);
}
