//! Which arrangements, states and faults exist.

use super::*;
use crate::spice::exposure::Exposure;
use crate::spice::netlist::{Circuit, Drive};
use crate::spice::random::{CORDS, ISOLATIONS, SWITCH_LEGS, line_capacitors, near_pins, reaches};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeSet;

/// The design counts 6,945 arrangements, one of which has no line and so no network.
#[test]
fn the_choices_make_as_many_arrangements_as_the_design_counts() {
    let count: usize = ISOLATIONS
        .iter()
        .map(|isolation| {
            CORDS.len()
                * near_pins(isolation).len()
                * line_capacitors(isolation).len()
                * SWITCH_LEGS.len()
                * reaches(isolation).len()
        })
        .sum();
    assert_eq!(count, 6944);
}

#[test]
fn random_cases_are_possible_and_reach_every_part_of_the_design() {
    let mut rng = ChaCha8Rng::seed_from_u64(3);
    let cases = random_cases(&mut rng, 600);
    let mut seen = BTreeSet::new();
    for case in &cases {
        Exposure::of_case(case).expect("a drawn case exists");
        assert!(case.faults.len() <= 2);
        seen.extend(case.faults.iter().cloned());
        for factor in ["isolation", "cord", "line_capacitor", "switch_leg", "reach"] {
            seen.insert(format!("{factor} {}", case.exposure[factor]));
        }
        seen.insert(format!("{} {} {:?}", case.plug, case.switch, case.selector));
        seen.insert(format!("{}", case.exposure["supply"]["feed"]));
    }
    // 13 faults; 7 isolations, 7 cords, 5 places of a capacitor, 4 switches, 5 reaches;
    // 2 × 2 × 3 states; 4 feeds.
    assert_eq!(seen.len(), 13 + 7 + 7 + 5 + 4 + 5 + 12 + 4, "{seen:?}");
}

#[test]
fn faults_exist_where_the_design_says() {
    let floated = case("line_floated", "b")
        .with("reach", "aerial_terminal")
        .with("line_capacitor", "both_legs");
    assert_eq!(
        existing_faults(&floated.exposure),
        [
            "lost_barrier",
            "stray_far",
            "stray_near",
            "near_capacitor_shorted",
            "far_capacitor_shorted",
            "network_capacitor_shorted",
            "aerial_capacitor_shorted",
            "neutral_open"
        ]
    );
    let earthed = case("isolating", "b")
        .with("cord", "three_pin_earthed")
        .with("line_capacitor", "selector")
        .with("line_capacitor_class", "class_y");
    assert_eq!(
        existing_faults(&earthed.exposure),
        [
            "stray_far",
            "stray_near",
            "insulation_breakdown",
            "earth_open",
            "outlet_reversed",
            "neutral_open"
        ]
    );
}

#[test]
fn what_the_design_does_not_have_is_refused() {
    let plain = || case("line_tied", "b");
    let mut no_values = plain();
    no_values.exposure["values"] = json!({});
    let mut selector = plain();
    selector.selector = Some("near".into());
    let refused = [
        (plain().fault("network_capacitor_shorted"), "network_capacitor_shorted"),
        (plain().fault("stray"), "stray"),
        (plain().with("cord", "two_pin_polarised").second(), "plug"),
        (plain().with("isolation", "no_line"), "no_line"),
        (selector, "selector"),
        (no_values, "line_capacitor_farad"),
    ];
    for (case, word) in refused {
        let error = Exposure::of_case(&case).expect_err("no such case").to_string();
        assert!(error.contains(word), "{error}");
    }
    let circuit = Circuit::of_case(&plain()).expect("a plain case exists");
    assert!(circuit.lines("", Drive::Probe("t")).is_err(), "it has no aerial terminal");
}
