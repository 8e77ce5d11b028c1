//! The proof of a repair: which lines, when a line is passed, and when a unit is ready.

use coldchassis_core::arrangement::{Cord, Isolation, LineSide, Reach};
use coldchassis_core::hazard::Parts;
use coldchassis_core::remedy::{
    Modification, Outcome, ProofLine, ProofMark, ProofPlan, Setup, evaluate, plan, read_entry,
};
use coldchassis_core::supply::Supply;
use serde_json::{Value, json};

use crate::must_show::{LINE, built};

fn after(isolation: Isolation, line: LineSide, stack: &[Modification]) -> ProofPlan {
    let setup = Setup::one(&built(isolation, line), Supply::new(120.0, 60.0), Parts::default());
    plan(&setup.after_all(stack).expect("offered").pop().unwrap_or(setup))
}

fn lines(plan: &ProofPlan) -> Vec<ProofLine> {
    plan.lines.iter().map(|planned| planned.line).collect()
}

fn entered(plan: &ProofPlan, line: ProofLine, entry: Value) -> Outcome {
    let planned = plan.lines.iter().find(|planned| planned.line == line).expect("it is planned");
    evaluate(planned, Some(read_entry(planned, entry).expect("it fits")))
}

#[test]
fn a_tied_set_is_shown_by_its_plug_its_switch_and_its_barrier() {
    let stack =
        [Modification::PolarisedPlug, Modification::SwitchToHotLeg, Modification::ReachClosed];
    let plan = after(Isolation::LineTied, LINE, &stack);
    assert_eq!(
        lines(&plan),
        [
            ProofLine::CordPull,
            ProofLine::WideBladeNearLeg,
            ProofLine::HotBladeOpenOff,
            ProofLine::LostBarrier,
            ProofLine::OutletProven
        ]
    );
    // Nothing to touch, nothing to read; and no insulation test on a chassis that is on the line.
    assert!(!lines(&plan).contains(&ProofLine::Insulation));
}

#[test]
fn an_amplifier_with_an_earth_is_shown_by_its_bond_and_its_leakage() {
    let line = LineSide { reach: Reach::Handheld, ..LINE };
    let plan = after(Isolation::Isolating, line, &[Modification::ThreeWireCord]);
    let expected = [
        ProofLine::EarthBond,
        ProofLine::ChassisVoltsLoaded,
        ProofLine::LeakageSecond,
        ProofLine::Insulation,
    ];
    assert!(expected.iter().all(|line| lines(&plan).contains(line)), "{:?}", lines(&plan));
    // 0.1 Ω and 2 m of 0.75 mm² at 0.0172 Ω·mm²/m (as published by test houses; copper from memory).
    let bond = entered(&plan, ProofLine::EarthBond, json!({"read": 0.14}));
    assert_eq!(bond.mark, ProofMark::Passed);
    let bond = entered(&plan, ProofLine::EarthBond, json!({"read": 0.15}));
    assert_eq!(bond.mark, ProofMark::Failed);
    let open = entered(&plan, ProofLine::EarthBond, json!({"over_range": true}));
    assert_eq!(open.mark, ProofMark::Failed);
    // 1 MΩ with an earth wire, 2 MΩ without (as published by test houses).
    let insulation = |plan, read| entered(plan, ProofLine::Insulation, json!({"read": read})).mark;
    assert_eq!(insulation(&plan, 1.5), ProofMark::Passed);
    let two_wire = after(Isolation::Isolating, line, &[]);
    assert_eq!(insulation(&two_wire, 1.5), ProofMark::Failed);
    assert_eq!(insulation(&two_wire, 2.0), ProofMark::Passed);
}

#[test]
fn a_reading_for_each_position_is_open_until_all_are_there_and_failed_at_the_first_above() {
    let plan = after(Isolation::Isolating, LINE, &[]);
    let volts = |read: Value| {
        entered(&plan, ProofLine::ChassisVoltsLoaded, json!({"positions": read})).mark
    };
    assert_eq!(volts(json!({"first_on": 0.1})), ProofMark::Open);
    assert_eq!(volts(json!({"first_on": 0.76})), ProofMark::Failed);
    let all = json!({"first_on": 0.1, "first_off": 0.2, "second_on": 0.75, "second_off": 0});
    assert_eq!(volts(all), ProofMark::Passed);
}

#[test]
fn an_entry_that_does_not_fit_its_line_is_refused_by_its_field() {
    let plan = after(Isolation::Isolating, LINE, &[Modification::ThreeWireCord]);
    for (line, entry, field) in [
        (ProofLine::EarthBond, json!({"holds": true}), "entry"),
        (ProofLine::EarthBond, json!({"read": -1}), "entry.read"),
        (ProofLine::EarthBond, json!({"read": 1, "over_range": true}), "entry"),
        (ProofLine::EarthBond, json!({"positions": {"first_on": 1}}), "entry.positions"),
        (ProofLine::CordPull, json!({"read": 1}), "entry"),
        (ProofLine::CordPull, json!({"holds": "yes"}), "entry.holds"),
        (ProofLine::ChassisVoltsLoaded, json!({"read": 0.1}), "entry"),
        (
            ProofLine::ChassisVoltsLoaded,
            json!({"positions": {"sideways": 1}}),
            "entry.positions.sideways",
        ),
        (ProofLine::CordPull, json!({}), "entry"),
        (ProofLine::CordPull, json!(true), "entry"),
    ] {
        let planned = plan.lines.iter().find(|planned| planned.line == line).expect("planned");
        let refused = read_entry(planned, entry.clone()).expect_err("refused");
        assert_eq!(refused.field, field, "{line:?} {entry}");
    }
}

#[test]
fn every_line_has_a_limit_or_has_to_hold_and_says_who_may_do_it() {
    for cord in [Cord::TwoPinReversible, Cord::ThreePinEarthed] {
        let plan = after(Isolation::Isolating, LineSide { cord, ..LINE }, &[]);
        for planned in &plan.lines {
            assert_eq!(planned.limit.is_some(), !planned.unit.is_empty(), "{planned:?}");
            assert!(!planned.source.is_empty() && !planned.mark.is_empty());
        }
    }
}
