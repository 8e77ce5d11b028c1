//! The proof of a repair: which lines, when a line is passed, and when a unit is ready.

use coldchassis_core::arrangement::{Cord, Isolation, LineSide, Reach};
use coldchassis_core::hazard::Parts;
use coldchassis_core::remedy::{
    Bench, Chosen, Modification, Outcome, ProofLine, ProofMark, ProofPlan, Setup, Who, evaluate,
    plan, read_entry,
};
use coldchassis_core::supply::Supply;
use serde_json::{Value, json};

use crate::must_show::{LINE, built};

fn after(isolation: Isolation, line: LineSide, stack: &[Modification]) -> ProofPlan {
    let setup = Setup::one(&built(isolation, line), Supply::new(120.0, 60.0), Parts::default());
    limited(setup, stack, None)
}

fn limited(setup: Setup, stack: &[Modification], class_y_ma: Option<f64>) -> ProofPlan {
    let repaired = setup.after_all(stack).expect("offered").pop().unwrap_or(setup);
    plan(&repaired, class_y_ma, &mut Bench::default())
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
fn what_is_done_with_the_plug_in_comes_after_all_that_is_done_with_it_out() {
    for isolation in [Isolation::Isolating, Isolation::LineTied, Isolation::LineFloated] {
        for reach in [Reach::Exposed, Reach::AerialTerminal] {
            let plan = after(isolation, LineSide { reach, ..LINE }, &[]);
            let live: Vec<bool> =
                plan.lines.iter().map(|planned| planned.who == Who::QualifiedLive).collect();
            assert!(live.is_sorted(), "{:?}", lines(&plan));
            assert_eq!(live.contains(&true), !plan.is_live_straight, "{:?}", lines(&plan));
            assert!(isolation != Isolation::Isolating || live.contains(&true));
        }
    }
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

/// Whether a line is done with the plug in.
fn is_live(planned: &coldchassis_core::remedy::Planned) -> bool {
    planned.who == Who::QualifiedLive
}

#[test]
fn what_is_live_after_its_repair_is_never_plugged_in_for_a_test() {
    let exposed = LineSide { reach: Reach::Exposed, ..LINE };
    let earthed = LineSide { cord: Cord::ThreePinEarthed, ..exposed };
    for line in [exposed, earthed] {
        let plan = after(Isolation::LineTied, line, &[Modification::FuseInHotLeg]);
        assert!(plan.is_live && plan.is_live_straight, "{line:?}");
        assert!(!plan.lines.iter().any(is_live), "{:?}", lines(&plan));
        assert!(lines(&plan).contains(&ProofLine::FuseLeg));
    }
    // A transformer in front betters it only there: the unit itself is not read straight at an outlet.
    let front = [Modification::IsolatingTransformerInFront];
    let plan = after(Isolation::LineTied, exposed, &front);
    assert!(!plan.is_live && plan.is_live_straight);
    assert!(!plan.lines.iter().any(is_live), "{:?}", lines(&plan));
    assert!(lines(&plan).contains(&ProofLine::FrontTransformer));
    // One on windings of its own may be.
    let plan = after(Isolation::Isolating, exposed, &front);
    assert!(!plan.is_live_straight && plan.lines.iter().any(is_live));
}

#[test]
fn what_was_done_to_the_outlet_is_shown_too() {
    let devices = [Modification::GfciOutlet, Modification::RcdOutlet, Modification::RcdAcOutlet];
    for device in devices {
        let plan = after(Isolation::Isolating, LINE, &[device]);
        assert!(lines(&plan).contains(&ProofLine::DeviceTest), "{device:?}");
    }
    let plan = after(Isolation::Isolating, LINE, &[Modification::ThreeWireCord]);
    assert!(!lines(&plan).contains(&ProofLine::DeviceTest));
}

#[test]
fn where_outlets_take_a_plug_both_ways_round_it_is_counted_with_both() {
    let amplifier = built(Isolation::Isolating, LINE);
    for (volts, expected) in
        [(120.0, Cord::ThreePinEarthed), (230.0, Cord::ThreePinReversibleEarthed)]
    {
        let setup = Setup::one(&amplifier, Supply::new(volts, 50.0), Parts::default());
        let earthed = setup.after(Modification::ThreeWireCord).expect("offered");
        let cords: Vec<Cord> =
            earthed.set.iter().filter_map(|(_, a)| a.line.map(|line| line.cord)).collect();
        assert_eq!(cords, [expected], "{volts} V");
        assert_eq!(setup.after(Modification::PolarisedPlug).is_ok(), volts < 130.0, "{volts} V");
    }
}

#[test]
fn a_stricter_limit_for_class_y_is_the_limit_of_the_metal_too() {
    let line = LineSide { reach: Reach::Handheld, ..LINE };
    let setup =
        Setup::one(&built(Isolation::Isolating, line), Supply::new(230.0, 50.0), Parts::default());
    let fitted = [Modification::LineCapacitorClassY, Modification::ThreeWireCord];
    let without = [Modification::ThreeWireCord];
    // 0.25 mA through 1500 Ω is 0.375 V; 0.5 mA and 0.75 V are the standard's (UL 101, as quoted in print).
    for (steps, limit_ma, volts, milliamperes, source) in [
        (&fitted[..], 0.25, 0.375, 0.25, "class_y_limit"),
        (&fitted[..], 0.5, 0.75, 0.5, "ul_101"),
        (&fitted[..], 0.75, 0.75, 0.5, "ul_101"),
        (&without[..], 0.25, 0.75, 0.5, "ul_101"),
    ] {
        let chosen = Chosen { stack: steps.to_vec(), limit_ma };
        let plan = limited(setup.clone(), &without, chosen.class_y_ma());
        for (line, limit) in [
            (ProofLine::ChassisVoltsLoaded, volts),
            (ProofLine::LeakageFirst, milliamperes),
            (ProofLine::LeakageSecond, milliamperes),
        ] {
            let planned = plan.lines.iter().find(|one| one.line == line).expect("planned");
            assert_eq!((planned.limit, planned.source), (Some(limit), source), "{line:?}");
        }
    }
}
