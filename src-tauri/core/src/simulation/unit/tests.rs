//! The physical units against themselves: nothing here knows the rest of the core.

use std::collections::{BTreeMap, BTreeSet};

use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};

use super::parts::{Bond, MetalNode};
use super::*;

fn rng(seed: u64) -> ChaCha8Rng {
    ChaCha8Rng::seed_from_u64(seed)
}

#[test]
fn there_are_as_many_arrangements_as_the_design_says() {
    let every: BTreeSet<Factors> = Factors::all().into_iter().collect();
    assert_eq!(every.len(), 6945);
}

#[test]
fn every_arrangement_can_be_built_and_read_back_from_its_parts() {
    let mut rng = rng(1);
    for wanted in Factors::all() {
        for _ in 0..20 {
            let unit = PhysicalUnit::of(wanted, &mut rng);
            assert_eq!(unit.factors(), wanted, "{unit:#?}");
        }
    }
}

#[test]
fn random_units_are_every_arrangement_and_no_other() {
    let every: BTreeSet<Factors> = Factors::all().into_iter().collect();
    let mut rng = rng(2);
    let mut seen = BTreeSet::new();
    for _ in 0..400_000 {
        let factors = PhysicalUnit::random(&mut rng).factors();
        assert!(every.contains(&factors), "{factors:?}");
        seen.insert(factors);
    }
    assert_eq!(seen.len(), every.len());
}

/// The ids of the design's question bank, copied from there by hand.
const ONE_ANSWER: &[(&str, &[&str])] = &[
    (
        "plug",
        &[
            "two_equal_blades",
            "two_polarised_blades",
            "three_pins",
            "earth_pin_missing",
            "three_pins_reversible",
            "battery_only",
            "outside_supply",
            "no_plug",
        ],
    ),
    ("back", &["fitted", "missing"]),
    ("selector", &["absent", "present"]),
    ("earth_lift", &["present", "absent"]),
    ("metal_joined", &["chassis", "common", "no"]),
    (
        "transformer",
        &[
            "none",
            "heaters_only_traced",
            "separate_traced",
            "shared_lead",
            "motor_winding",
            "not_traced",
        ],
    ),
    ("common_to_chassis", &["direct", "through_network", "not_joined"]),
    ("common_leg", &["pin_a", "pin_b", "neither"]),
    ("switch_leg", &["pin_a", "pin_b", "both", "none"]),
    ("line_capacitor", &["none", "pin_a_leg", "pin_b_leg", "both_legs", "on_selector"]),
    ("line_capacitor_class", &["ordinary", "class_y"]),
    ("earth_wire", &["on_chassis", "not_on_chassis"]),
    (
        "kind",
        &[
            "table_radio",
            "console_radio",
            "portable_radio",
            "record_player",
            "instrument_amplifier",
            "other",
        ],
    ),
    ("rating_plate", &["ac_dc", "ac_only", "ac_dc_battery", "battery", "none"]),
    ("iron_seen", &["none_visible", "small", "large"]),
    ("tingle", &["reported", "not_reported"]),
    ("rewired", &["looks_original", "reworked"]),
    ("cord", &["sound", "cracked", "spliced", "cloth_or_rubber"]),
    ("cord_wires", &["ordinary", "three_wires_two_pins"]),
    ("accessory_outlet", &["present", "absent"]),
    ("fuse", &["pin_a_leg", "pin_b_leg", "none"]),
    ("filter_capacitors", &["sound", "swollen_or_leaking"]),
];
const SEVERAL_ANSWERS: &[(&str, &[&str])] = &[
    (
        "bare_metal",
        &[
            "none_anywhere",
            "screws_or_shafts",
            "panel_or_cabinet",
            "instrument_jack",
            "socket_or_pickup",
        ],
    ),
    ("terminals", &["none", "aerial_or_earth", "pickup_or_speaker"]),
    ("materials", &["none", "asbestos", "selenium", "pcb", "radium"]),
];
const VALUES: &[&str] = &[
    "values.line_capacitor",
    "values.network_capacitor",
    "values.aerial_capacitor",
    "values.network_resistor",
    "values.rated",
];

fn assert_in_the_bank(id: &str, answer: &Value) {
    if let Some((_, known)) = ONE_ANSWER.iter().find(|(name, _)| *name == id) {
        assert!(known.iter().any(|known| answer == known), "{id}: {answer}");
    } else if let Some((_, known)) = SEVERAL_ANSWERS.iter().find(|(name, _)| *name == id) {
        let list = answer.as_array().unwrap();
        assert!(!list.is_empty(), "{id} is an empty list");
        assert!(list.iter().all(|one| known.iter().any(|known| one == known)), "{id}: {answer}");
        let alone = list.iter().any(|one| one == "none" || one == "none_anywhere");
        assert!(!alone || list.len() == 1, "{id}: {answer}");
    } else if id == "tube_count" {
        assert!(answer.as_u64().is_some());
    } else if id == "tubes" {
        assert!(answer.as_array().unwrap().iter().all(Value::is_string));
    } else {
        assert!(VALUES.contains(&id), "{id} is no question of the design");
        assert!(answer.is_object());
    }
}

#[test]
fn answers_use_only_ids_of_the_design_and_between_them_all_of_them() {
    let mut rng = rng(3);
    let mut given: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for _ in 0..20_000 {
        let answers = PhysicalUnit::random(&mut rng).answers(&mut rng);
        let names: BTreeSet<&String> = answers.iter().map(|(id, _)| id).collect();
        assert_eq!(names.len(), answers.len(), "a question is answered twice");
        for (id, answer) in &answers {
            assert_in_the_bank(id, answer);
            let several = answer.as_array().cloned().unwrap_or(vec![answer.clone()]);
            let texts = several.iter().filter_map(Value::as_str).map(str::to_owned);
            given.entry(id.clone()).or_default().extend(texts);
        }
    }
    for (id, known) in ONE_ANSWER.iter().chain(SEVERAL_ANSWERS) {
        assert_eq!(given[*id].len(), known.len(), "{id}: only {:?}", given[*id]);
    }
}

/// One plain unit to break on purpose: polarised plug, common on pin B, chassis is the common.
fn plain_tied_set() -> PhysicalUnit {
    let wanted = Factors {
        isolation: Isolation::LineTied,
        cord: Cord::TwoPinPolarised,
        switch_leg: SwitchLeg::Far,
        reach: Reach::Closed,
        ..Factors::NO_LINE
    };
    let mut unit = PhysicalUnit::of(wanted, &mut rng(4));
    unit.bare_metal.clear();
    unit.terminals = None;
    unit.aerial_post = None;
    unit
}

fn answer(unit: &PhysicalUnit, id: &str) -> Option<Value> {
    unit.answers(&mut rng(5)).into_iter().find(|(key, _)| key == id).map(|(_, answer)| answer)
}

#[test]
fn a_plug_wired_backwards_moves_the_common_to_pin_a() {
    let mut unit = plain_tied_set();
    assert_eq!(answer(&unit, "plug").unwrap(), "two_polarised_blades");
    assert_eq!(answer(&unit, "common_leg").unwrap(), "pin_b");
    assert_eq!(answer(&unit, "switch_leg").unwrap(), "pin_a");
    let plug = unit.plug.as_mut().unwrap();
    plug.blade_mm = Pair(plug.blade_mm.1, plug.blade_mm.0);
    assert_eq!(answer(&unit, "common_leg").unwrap(), "pin_a");
    assert_eq!(answer(&unit, "switch_leg").unwrap(), "pin_b");
    assert_eq!(unit.factors().near_pin, Pin::A);
    assert_eq!(unit.factors().switch_leg, SwitchLeg::Far);
}

#[test]
fn a_filed_blade_lets_the_plug_in_both_ways() {
    let mut unit = plain_tied_set();
    unit.plug.as_mut().unwrap().blade_mm = Pair(6.3, 6.4);
    assert_eq!(answer(&unit, "plug").unwrap(), "two_equal_blades");
    assert_eq!(unit.factors().cord, Cord::TwoPinReversible);
}

#[test]
fn an_earth_wire_bonds_only_through_a_whole_pin() {
    let mut unit = plain_tied_set();
    unit.earth_wire = EarthWire::OnChassis;
    assert_eq!(unit.factors().cord, Cord::TwoPinPolarised);
    let mut cord_with = |earth| {
        unit.plug.as_mut().unwrap().earth = earth;
        (unit.factors().cord, answer(&unit, "plug").unwrap())
    };
    assert_eq!(cord_with(EarthContact::Pin), (Cord::ThreePinEarthed, "three_pins".into()));
    assert_eq!(cord_with(EarthContact::Stump), (Cord::ThreePinCut, "earth_pin_missing".into()));
    let clips = (Cord::ThreePinReversibleEarthed, "three_pins_reversible".into());
    assert_eq!(cord_with(EarthContact::SideClips), clips);
}

#[test]
fn reach_follows_the_node_of_the_metal() {
    let mut unit = plain_tied_set();
    let jack = |node| BareMetal { place: Place::InstrumentJack, node, held: false };
    unit.bare_metal = vec![jack(MetalNode::Nothing)];
    assert_eq!(unit.reach(), Reach::Closed);
    assert_eq!(answer(&unit, "metal_joined").unwrap(), "no");
    unit.bare_metal = vec![jack(MetalNode::Common)];
    assert_eq!(unit.reach(), Reach::Handheld);
    unit.bond = Bond::Insulated;
    assert_eq!(unit.isolation(), Isolation::LineInsulated);
    assert_eq!(unit.reach(), Reach::CommonExposed);
    assert_eq!(answer(&unit, "metal_joined").unwrap(), "common");
    unit.bare_metal = vec![jack(MetalNode::Chassis)];
    assert_eq!(unit.reach(), Reach::Handheld);
    assert_eq!(answer(&unit, "metal_joined").unwrap(), "chassis");
    unit.bare_metal.clear();
    assert_eq!(unit.reach(), Reach::Closed);
    unit.back_fitted = false;
    assert_eq!(unit.reach(), Reach::Exposed);
}

#[test]
fn metal_held_in_use_is_told_with_the_jacks() {
    let mut unit = plain_tied_set();
    let panel = |held| BareMetal { place: Place::ControlPanel, node: MetalNode::Chassis, held };
    unit.bare_metal = vec![panel(false)];
    assert_eq!(answer(&unit, "bare_metal").unwrap(), json!(["panel_or_cabinet"]));
    assert_eq!(unit.reach(), Reach::Exposed);
    unit.bare_metal = vec![panel(true)];
    assert_eq!(
        answer(&unit, "bare_metal").unwrap(),
        json!(["instrument_jack", "panel_or_cabinet"])
    );
    assert_eq!(unit.reach(), Reach::Handheld);
}

#[test]
fn power_sources_tell_the_isolation() {
    let mut unit = plain_tied_set();
    unit.heaters_from = HeaterSource::MotorWinding;
    assert_eq!(unit.isolation(), Isolation::HeaterTransformer);
    unit.plates_from = PlateSource::TappedWinding;
    assert_eq!(unit.isolation(), Isolation::Autotransformer);
    unit.plates_from = PlateSource::SeparateWinding;
    assert_eq!(unit.isolation(), Isolation::Isolating);
    unit.feed = Feed::OutsideSupply;
    assert_eq!(unit.isolation(), Isolation::NoLine);
    assert_eq!(answer(&unit, "plug").unwrap(), "outside_supply");
}

#[test]
fn values_are_in_range_or_named_as_unusual_and_markings_within_a_fifth() {
    let mut rng = rng(6);
    let mut read = 0;
    for _ in 0..20_000 {
        let unit = PhysicalUnit::random(&mut rng);
        let answers = unit.answers(&mut rng);
        for (id, real, (low, high)) in unit.ranged_values() {
            let inside = (low..=high).contains(&real);
            assert!(inside || unit.is_unusual_unread(&[]));
            let (_, value) = answers.iter().find(|(key, _)| key == id).unwrap();
            let unit_name = if id.ends_with("resistor") { "ohms" } else { "farads" };
            let told = value[unit_name].as_f64().unwrap();
            let slack = if value["measured"] == true { 0.0 } else { 0.2 };
            assert!((real / told - 1.0).abs() <= slack + 1e-12, "{id}: {real} told as {value}");
            read += 1;
        }
        assert!(!unit.is_unusual_unread(&answers));
    }
    assert!(read > 10_000);
}

#[test]
fn findings_file_puts_each_key_in_its_place() {
    let mut rng = rng(7);
    let unit = PhysicalUnit::random(&mut rng);
    let chosen = vec![
        ("plug".to_owned(), Value::from("three_pins")),
        ("tubes".to_owned(), Value::from(vec!["12SA7"])),
        ("values.network_resistor".to_owned(), serde_json::json!({"ohms": 220e3})),
    ];
    let supply = serde_json::json!({"volts": 120});
    let file = unit.findings(&chosen, &supply, &["outside", "cover_off"]);
    let expected = serde_json::json!({
        "supply": {"volts": 120}, "access": ["outside", "cover_off"],
        "answers": {"plug": "three_pins"}, "tubes": ["12SA7"],
        "values": {"network_resistor": {"ohms": 220000.0}},
    });
    assert_eq!(file, expected);
}

#[test]
fn subsets_are_answers_or_cannot_tell() {
    let mut rng = rng(8);
    let (mut shorter, mut unsure) = (0, 0);
    let named = ONE_ANSWER.iter().chain(SEVERAL_ANSWERS).map(|(id, _)| *id);
    let questions: BTreeSet<&str> = named.chain(["tube_count"]).collect();
    for _ in 0..2_000 {
        let answers = PhysicalUnit::random(&mut rng).answers(&mut rng);
        let chosen = random_subset(&answers, &mut rng);
        shorter += usize::from(chosen.len() < answers.len());
        for item in &chosen {
            let cannot = item.1 == "cant_tell" && questions.contains(item.0.as_str());
            unsure += usize::from(cannot);
            assert!(cannot || answers.contains(item), "{item:?}");
        }
    }
    assert!(shorter > 1_000 && unsure > 500);
}

#[test]
fn the_nasty_ones_come_up() {
    let mut rng = rng(9);
    let (mut unusual, mut lifts, mut untraced) = (0, 0, 0);
    let (mut second_paths, mut lost_plugs, mut lined_earths) = (0, 0, 0);
    for _ in 0..50_000 {
        let unit = PhysicalUnit::random(&mut rng);
        let chosen = random_subset(&unit.answers(&mut rng), &mut rng);
        let factors = unit.factors();
        unusual += usize::from(unit.is_unusual_unread(&chosen));
        // A switch whose other position puts the line on earth; metal on a common of its own, and only metal of
        // other sorts was told.
        lifts += usize::from(unit.earth_wire == EarthWire::LiftSwitch && factors.cord.is_earthed());
        let told = |id: &str| chosen.iter().any(|(key, _)| key == id);
        untraced += usize::from(
            factors.reach == Reach::CommonExposed && told("bare_metal") && !told("metal_joined"),
        );
        second_paths += usize::from(unit.touch_paths_as_told(&chosen).len() > 1);
        lost_plugs += usize::from(unit.plug_lost);
        lined_earths +=
            usize::from(factors.isolation.chassis_on_line() && factors.cord.is_earthed());
    }
    assert!(unusual > 20 && lifts > 100 && untraced > 100, "{unusual} {lifts} {untraced}");
    assert!(second_paths > 100 && lost_plugs > 100 && lined_earths > 1_000);
}
