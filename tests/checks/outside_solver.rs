//! The core's networks against an outside circuit solver, ngspice.
//!
//! The netlists are built from the design's own words, not from the core, so that a wrong joint shows
//! as well as a wrong sum. Chassis, common and aerial terminal are compared open and with a body of
//! 1 kΩ (IEEE 80), and their Thévenin equivalents.

use coldchassis_core::arrangement::{
    Fault, FaultSet, PlugWay, Selector, State, Switch, Wiring, read_exposure,
};
use coldchassis_core::body::BODY_RESISTANCE_OHM;
use coldchassis_core::circuit::Thevenin;
use coldchassis_core::hazard::{TestedMetal, touch_test};
use coldchassis_tests::spice::{Body, Case, random_cases, run_batch, thevenin_batch};
use num_complex::Complex64;
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

/// More than the 300 asked for, so that every isolation meets every kind of fault.
const CASES: usize = 600;

const RELATIVE: f64 = 1e-6;

/// Below this a voltage is rounding of the outside solver, V.
const NOTHING_VOLTS: f64 = 1e-9;

/// The same where strays alone join the supply to earth, as a share of the supply: the outside solver reckons from
/// earth, which is megohms away, and keeps eight digits of what stands between.
const NOTHING_AFLOAT: f64 = 1e-8;

/// The core's equivalents of a case: chassis, common, aerial terminal.
fn ours(case: &Case) -> [Thevenin; 3] {
    let file = read_exposure(case.exposure.clone()).expect("a random case is a valid file");
    let state = State {
        plug: PlugWay::of(&case.plug).expect("a plug way"),
        switch: Switch::of(&case.switch).expect("a switch position"),
        selector: case.selector.as_deref().map(|id| Selector::of(id).expect("a selector")),
    };
    let faults: Vec<Fault> = case.faults.iter().map(|id| Fault::of(id).expect("a fault")).collect();
    let wiring =
        Wiring::of(&file.arrangement, state, FaultSet::of(&faults)).expect("it has a line side");
    let contacts = file.supply.contacts(file.supply.volts);
    wiring.all_ports(&file.values, file.supply.hertz, contacts)
}

fn common_node(case: &Case) -> &'static str {
    match case.exposure["isolation"].as_str() {
        Some("line_floated" | "line_insulated") => "near",
        _ => "c",
    }
}

fn has_aerial(case: &Case) -> bool {
    case.exposure["reach"] == "aerial_terminal"
}

/// The nodes of a case by name, with the core's equivalent.
fn nodes(case: &Case) -> Vec<(&'static str, Thevenin)> {
    let [chassis, common, aerial] = ours(case);
    let mut nodes = vec![("c", chassis), (common_node(case), common)];
    if has_aerial(case) {
        nodes.push(("t", aerial));
    }
    nodes
}

fn error(case: &Case, ours: Complex64, theirs: Complex64) -> f64 {
    let difference = (ours - theirs).norm();
    if difference <= nothing(case) { 0.0 } else { difference / theirs.norm() }
}

fn nothing(case: &Case) -> f64 {
    let supply = &case.exposure["supply"];
    let afloat = supply["feed"] == "isolated";
    if afloat { NOTHING_AFLOAT * supply["volts"].as_f64().unwrap_or(0.0) } else { NOTHING_VOLTS }
}

#[test]
fn node_voltages_open_and_with_a_body_agree_with_ngspice() {
    let cases = random_cases(&mut ChaCha8Rng::seed_from_u64(20_260_214), CASES);
    let open: Vec<_> = cases.iter().map(|case| (case.clone(), None)).collect();
    let (mut worst, mut compared) = (0.0_f64, 0);
    for (case, voltages) in cases.iter().zip(run_batch(&open)) {
        for (node, port) in nodes(case) {
            worst = worst.max(check(case, node, port.volts, voltages[node]));
            compared += 1;
        }
    }
    let body = Complex64::new(BODY_RESISTANCE_OHM.value, 0.0);
    for node in ["c", "near", "t"] {
        let touching: Vec<_> = cases
            .iter()
            .filter(|case| nodes(case).iter().any(|(name, _)| *name == node))
            .map(|case| {
                let body = Body { node: node.to_owned(), ohm: body.re, farad: None };
                (case.clone(), Some(body))
            })
            .collect();
        for ((case, _), voltages) in touching.iter().zip(run_batch(&touching)) {
            let nodes = nodes(case);
            let (_, port) = nodes.iter().find(|(name, _)| *name == node).expect("it is there");
            worst = worst.max(check(case, node, port.loaded(body), voltages[node]));
            compared += 1;
        }
    }
    println!("{compared} node voltages of {CASES} cases, largest relative difference {worst:.2e}");
}

fn check(case: &Case, node: &str, ours: Complex64, theirs: Complex64) -> f64 {
    let error = error(case, ours, theirs);
    assert!(error < RELATIVE, "{node} of {case:?}: {ours} here, {theirs} there ({error:.2e})");
    error
}

#[test]
fn thevenin_equivalents_agree_with_ngspice() {
    let cases = random_cases(&mut ChaCha8Rng::seed_from_u64(20_260_215), CASES);
    let (mut worst, mut compared) = (0.0_f64, 0);
    for node in ["c", "near", "t"] {
        let with: Vec<Case> = cases
            .iter()
            .filter(|case| nodes(case).iter().any(|(name, _)| *name == node))
            .cloned()
            .collect();
        for (case, theirs) in with.iter().zip(thevenin_batch(&with, node)) {
            let nodes = nodes(case);
            let (_, port) = nodes.iter().find(|(name, _)| *name == node).expect("it is there");
            worst = worst.max(check(case, node, port.volts, theirs.open_circuit_v));
            worst = worst.max(check(case, node, port.ohms, theirs.impedance_ohm));
            compared += 2;
        }
    }
    println!("{compared} figures of {CASES} cases, largest relative difference {worst:.2e}");
}

/// The node of the outside netlist that a touch test is held to.
fn tested_node(case: &Case, metal: TestedMetal) -> &'static str {
    match metal {
        TestedMetal::Chassis => "c",
        TestedMetal::Common => common_node(case),
        TestedMetal::Aerial => "t",
    }
}

/// The live touch test as the screens foretell it, against the outside solver with the network of the
/// service manuals (1500 Ω beside 0.15 µF, verified) at the metal.
#[test]
fn touch_test_readings_agree_with_ngspice() {
    let mut cases = random_cases(&mut ChaCha8Rng::seed_from_u64(20_260_216), CASES);
    cases.iter_mut().for_each(|case| case.faults.clear());
    let readings: Vec<_> = cases
        .iter()
        .flat_map(|case| {
            let file = read_exposure(case.exposure.clone()).expect("a valid file");
            let all = touch_test(&file.arrangement, &file.supply, file.supply.volts, &file.values);
            let here = |one: &coldchassis_core::hazard::TouchReading| {
                one.state.plug.id() == case.plug
                    && one.state.switch.id() == case.switch
                    && one.state.selector.map(Selector::id) == case.selector.as_deref()
            };
            all.into_iter().filter(here).map(|one| (case.clone(), one)).collect::<Vec<_>>()
        })
        .collect();
    let held: Vec<_> = readings
        .iter()
        .map(|(case, reading)| {
            let node = tested_node(case, reading.metal).to_owned();
            (case.clone(), Some(Body { node, ohm: 1500.0, farad: Some(0.15e-6) }))
        })
        .collect();
    let mut worst = 0.0_f64;
    for ((case, reading), voltages) in readings.iter().zip(run_batch(&held)) {
        let theirs = voltages[tested_node(case, reading.metal)].norm();
        let off = (reading.volts - theirs).abs();
        let error = if off <= nothing(case) { 0.0 } else { off / theirs };
        assert!(error < RELATIVE, "{case:?}: {reading:?} here, {theirs} there ({error:.2e})");
        assert!((reading.watts - theirs * theirs / 1500.0).abs() <= 1e-5 * reading.watts + 1e-15);
        worst = worst.max(off);
    }
    assert!(readings.len() > 300, "{} readings", readings.len());
    let highest = readings.iter().map(|(_, one)| one.volts).fold(0.0, f64::max);
    println!("{} touch tests up to {highest:.1} V, off by at most {worst:.2e} V", readings.len());
}
