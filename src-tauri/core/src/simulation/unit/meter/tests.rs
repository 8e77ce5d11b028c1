//! Meter readings of physical units against what paper says of them: nothing here knows the rest of the core.

mod parts;

use std::collections::{BTreeMap, BTreeSet};

use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use serde_json::json;

use super::super::*;
use super::*;

const IDS: [&str; 12] = [
    "ohms_a_b_off",
    "ohms_a_b_on",
    "ohms_a_chassis_off",
    "ohms_a_chassis_on",
    "ohms_a_part_off",
    "ohms_a_part_on",
    "ohms_b_chassis_off",
    "ohms_b_chassis_on",
    "ohms_b_part_off",
    "ohms_b_part_on",
    "ohms_earth_chassis",
    "ohms_earth_part",
];

pub(super) fn rng(seed: u64) -> ChaCha8Rng {
    ChaCha8Rng::seed_from_u64(seed)
}

/// A unit without motor, line capacitor or metal that can be touched; near is on pin B.
pub(super) fn unit(isolation: Isolation, switch_leg: SwitchLeg) -> PhysicalUnit {
    let cord = Cord::TwoPinPolarised;
    let wanted = Factors { isolation, cord, switch_leg, ..Factors::NO_LINE };
    let mut unit = PhysicalUnit::of(wanted, &mut rng(1));
    unit.motor = false;
    unit.leg_capacitor = None;
    unit.bare_metal.clear();
    unit.terminals = None;
    unit.aerial_post = None;
    unit.back_fitted = true;
    unit
}

/// A condition of round figures, Ω: cord 0.1 and 0.2, contacts 1 and 2, string 120, joints 0.05.
pub(super) fn round(unit: &PhysicalUnit) -> Condition {
    let near = unit.near_conductor();
    let on_near = |near_ohm, far_ohm| {
        if near == Conductor::First { Pair(near_ohm, far_ohm) } else { Pair(far_ohm, near_ohm) }
    };
    Condition {
        cord_ohm: on_near(0.1, 0.2),
        contact_ohm: on_near(1.0, 2.0),
        load_ohm: 120.0,
        charging_ohm: f64::INFINITY,
        motor: None,
        common_ohm: 0.05,
        bond_ohm: 0.05,
        rectifier_ohm: Pair::alike(f64::INFINITY),
        insulation_ohm: Pair::alike(f64::INFINITY),
        capacitor_ohm: Pair::alike(f64::INFINITY),
        selector_leg: Conductor::First,
        aerial_ohm: f64::INFINITY,
        earth_ohm: f64::INFINITY,
    }
}

#[track_caller]
pub(super) fn near(found: f64, expected: f64) {
    let same = found == expected || (found / expected - 1.0).abs() < 1e-7;
    assert!(same, "{found} Ω, on paper {expected} Ω");
}

#[test]
fn a_tied_set_with_its_switch_in_the_near_leg() {
    let unit = unit(Isolation::LineTied, SwitchLeg::Near);
    let ohms = unit.true_ohms(&round(&unit));
    near(ohms["ohms_b_chassis_on"], 0.1 + 1.0 + 0.05 + 0.05);
    near(ohms["ohms_b_chassis_off"], f64::INFINITY);
    near(ohms["ohms_a_chassis_on"], 0.2 + 0.01 + 120.0 + 0.1);
    near(ohms["ohms_a_chassis_off"], 0.2 + 0.01 + 120.0 + 0.1);
    near(ohms["ohms_a_b_on"], 0.1 + 1.0 + 120.0 + 0.01 + 0.2);
    near(ohms["ohms_a_b_off"], f64::INFINITY);
    assert_eq!(ohms.len(), 6, "two blades and nothing to touch: {ohms:?}");
}

#[test]
fn a_tied_set_with_its_switch_in_the_far_leg_and_the_tape_on_the_other_pin() {
    let mut unit = unit(Isolation::LineTied, SwitchLeg::Far);
    let ohms = unit.true_ohms(&round(&unit));
    near(ohms["ohms_b_chassis_off"], 0.1 + 0.01 + 0.1);
    near(ohms["ohms_a_chassis_on"], 0.2 + 2.0 + 120.0 + 0.1);
    near(ohms["ohms_a_chassis_off"], f64::INFINITY);
    // The plug is cut off, and the tape is on the other wire.
    unit.plug_lost = true;
    unit.taped_pin = unit.near_conductor().other();
    let taped = unit.true_ohms(&round(&unit));
    near(taped["ohms_a_chassis_off"], ohms["ohms_b_chassis_off"]);
    near(taped["ohms_b_chassis_on"], ohms["ohms_a_chassis_on"]);
}

#[test]
fn a_motor_ahead_is_a_way_round_the_open_switch() {
    let unit = unit(Isolation::LineTied, SwitchLeg::Near);
    let mut condition = round(&unit);
    let motor = Motor { ohm: 30.0, ahead: true, own_switch: OwnSwitch::None };
    condition.motor = Some(motor);
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_b_chassis_off"], 0.1 + 30.0 + 0.01 + 120.0 + 0.1);
    near(ohms["ohms_a_b_off"], 0.1 + 30.0 + 0.2);
    near(ohms["ohms_a_b_on"], 0.3 + 1.0 / (1.0 / 30.0 + 1.0 / 121.01));

    // Behind the switch it is beside the string; behind an open switch of its own it is not there.
    condition.motor = Some(Motor { ahead: false, ..motor });
    near(unit.true_ohms(&condition)["ohms_a_b_on"], 0.3 + 1.01 + 24.0);
    condition.motor = Some(Motor { own_switch: OwnSwitch::Open, ..motor });
    assert_eq!(unit.true_ohms(&condition), unit.true_ohms(&round(&unit)));
    // A broken cord cuts it off like everything else.
    condition.motor = Some(motor);
    condition.cord_ohm[Conductor::First] = f64::INFINITY;
    assert!(unit.true_ohms(&condition)["ohms_a_b_on"].is_infinite());
}

#[test]
fn the_wrong_switch_changes_pin_to_pin_and_leaves_the_chassis_cut_off() {
    let unit = unit(Isolation::LineTied, SwitchLeg::Both);
    let mut condition = round(&unit);
    condition.motor = Some(Motor { ohm: 30.0, ahead: true, own_switch: OwnSwitch::Worked });
    assert!(condition.wrong_switch());
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_a_b_on"], 30.3);
    for (id, ohm) in &ohms {
        assert_eq!(ohm.is_finite(), *id == "ohms_a_b_on", "{id}: {ohm}");
    }
}

#[test]
fn a_floated_set_reads_its_network_and_its_shorted_capacitor() {
    let unit = unit(Isolation::LineFloated, SwitchLeg::None);
    let mut condition = round(&unit);
    condition.bond_ohm = 220e3;
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_b_chassis_on"], 220e3 + 0.1 + 0.01 + 0.05);
    near(ohms["ohms_a_chassis_on"], 220e3 + 0.2 + 0.01 + 120.0 + 0.05);
    let (failed, fault) = Condition::failed(&unit, &mut rng(2)).unwrap();
    assert_eq!(fault, "network_capacitor_shorted");
    assert!(failed.bond_ohm <= 2.0);
}

#[test]
fn a_rectified_set_reads_through_what_its_rectifiers_show() {
    let unit = unit(Isolation::LineRectified, SwitchLeg::None);
    let mut condition = round(&unit);
    let ohms = unit.true_ohms(&condition);
    assert!(ohms["ohms_a_chassis_on"].is_infinite() && ohms["ohms_b_chassis_on"].is_infinite());
    condition.rectifier_ohm[unit.near_conductor()] = 1000.0;
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_b_chassis_on"], 0.1 + 0.01 + 1000.0 + 0.05);
    near(ohms["ohms_a_chassis_on"], 0.2 + 0.01 + 120.0 + 1000.0 + 0.05);
}

#[test]
fn separate_windings_are_open_to_the_chassis_until_they_break_down() {
    let mut unit = unit(Isolation::Isolating, SwitchLeg::Far);
    unit.bond = Bond::Direct;
    let ohms = unit.true_ohms(&Condition::sound(&unit, &mut rng(3)));
    for (id, ohm) in &ohms {
        assert!(*id == "ohms_a_b_on" || *ohm > 20e6, "{id}: {ohm}");
    }
    assert!(ohms["ohms_a_b_on"] < 250.0 * 4.0);
    let (failed, fault) = Condition::failed(&unit, &mut rng(4)).unwrap();
    assert_eq!(fault, "insulation_breakdown");
    let ohms = unit.true_ohms(&failed);
    let short = failed.insulation_ohm[unit.near_conductor().other()];
    assert!(short <= 2.0 && ohms["ohms_a_chassis_on"] < 105.0);
    assert!(ohms["ohms_a_chassis_off"] > 20e6 && ohms["ohms_b_chassis_off"] < 250.0 * 4.0);
}

#[test]
fn the_inspector_keeps_the_lowest_from_a_pin_and_the_highest_from_the_earth() {
    let mut unit = unit(Isolation::LineInsulated, SwitchLeg::None);
    let mut condition = round(&unit);
    condition.bond_ohm = 1e6;
    condition.earth_ohm = 0.5;
    unit.plug.as_mut().unwrap().earth = EarthContact::SideClips;
    assert!(!unit.true_ohms(&condition).contains_key("ohms_earth_part"));
    let metal = |node| BareMetal { place: Place::Screw, node, held: false };
    unit.bare_metal = vec![metal(MetalNode::Chassis)];
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_earth_part"], 0.5);
    near(ohms["ohms_a_part_on"], ohms["ohms_a_chassis_on"]);
    unit.bare_metal.push(metal(MetalNode::Common));
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_earth_chassis"], 0.5);
    near(ohms["ohms_earth_part"], 0.5 + 1e6);
    let [low, high] = [ohms["ohms_a_part_on"], ohms["ohms_b_part_on"]];
    assert!(
        (low.min(high) - 0.1 - 0.01 - 0.05).abs() < 1e-9 || (low.min(high) - 0.26).abs() < 1e-9
    );
    unit.bare_metal.push(metal(MetalNode::Nothing));
    let loose = unit.true_ohms(&condition);
    assert!(loose["ohms_earth_part"].is_infinite());
    near(loose["ohms_a_part_on"], ohms["ohms_a_part_on"]);
    unit.plug_lost = true;
    assert!(!unit.true_ohms(&condition).contains_key("ohms_earth_chassis"));
}

#[test]
fn a_post_is_read_through_its_capacitor_and_the_chassis_behind_a_missing_back() {
    let mut unit = unit(Isolation::LineTied, SwitchLeg::None);
    let part = Capacitor { farad: 1e-8, marked_farad: 1e-8 };
    unit.aerial_post = Some(AerialPost::ThroughCapacitor(part));
    let mut condition = round(&unit);
    assert!(unit.true_ohms(&condition)["ohms_b_part_on"].is_infinite());
    condition.aerial_ohm = 500e3;
    near(unit.true_ohms(&condition)["ohms_b_part_on"], 500e3 + 0.1 + 0.01 + 0.05);
    unit.back_fitted = false;
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_b_part_on"], ohms["ohms_b_chassis_on"]);
}

#[test]
fn batteries_have_no_pins_and_an_outside_supply_only_its_primary() {
    let mut rng = rng(5);
    let (mut batteries, mut outside) = (0, 0);
    for _ in 0..400 {
        let unit = PhysicalUnit::of(Factors::NO_LINE, &mut rng);
        let ohms = unit.true_ohms(&Condition::random(&unit, &mut rng));
        assert!(Condition::failed(&unit, &mut rng).is_none());
        if unit.feed == Feed::Batteries {
            batteries += 1;
            assert!(ohms.is_empty());
            continue;
        }
        outside += 1;
        near(ohms["ohms_a_b_on"], ohms["ohms_a_b_off"]);
        for (id, ohm) in ohms {
            let pins = id.starts_with("ohms_a_b_");
            assert!(ohm.is_infinite() || (pins && (30.0..=800.0).contains(&ohm)), "{id}: {ohm}");
        }
    }
    assert!(batteries > 50 && outside > 50);
}

/// The last place of a display that can show this, Ω.
fn last_place(shown: f64, counts: f64) -> f64 {
    let mut place = 0.1;
    while place * counts <= shown * (1.0 + 1e-12) {
        place *= 10.0;
    }
    place
}

#[test]
fn what_is_shown_is_within_the_accuracy_of_what_is_shown() {
    let mut rng = rng(6);
    let (mut farthest, mut coarser): (f64, usize) = (0.0, 0);
    for _ in 0..200_000 {
        let meter = Meter::random(&mut rng);
        let ohm = 10_f64.powf(rng.random_range(-2.0..8.5));
        let (share, counts) = (meter.percent / 100.0, f64::from(meter.counts));
        let within = |shown: f64, place: f64| shown * share + f64::from(meter.digits) * place;
        let Some(shown) = meter.shows(ohm, &mut rng).as_f64() else {
            let place = last_place(meter.max_ohms * 0.999, counts);
            let most = ohm + within(ohm, place);
            assert!(most >= meter.max_ohms * 0.999, "{ohm} Ω is OL on {meter:?}");
            continue;
        };
        assert!(shown <= meter.max_ohms, "{shown} on {meter:?}");
        let mut place = last_place(shown, counts);
        // The range below could not hold it, and this one shows it a little lower.
        if (shown - ohm).abs() > within(shown, place) {
            assert!(ohm + within(ohm, place) >= place * counts, "{ohm} Ω as {shown}: {meter:?}");
            place *= 10.0;
            coarser += 1;
        }
        let part = (shown - ohm).abs() / within(shown, place);
        assert!(part <= 1.0 + 1e-9, "{ohm} Ω shown as {shown} by {meter:?}");
        let places = shown / place;
        assert!((places - places.round()).abs() < 1e-6, "{shown} has too many places");
        farthest = farthest.max(part);
    }
    assert!(farthest > 0.95, "the meter is too good: {farthest}");
    assert!(coarser < 1_000, "{coarser}");
    assert_eq!(Meter::default().shows(2.1e6, &mut rng), json!("OL"));
    assert_eq!(Meter::default().shows(f64::INFINITY, &mut rng), json!("OL"));
    let expected = json!({"max_ohms": 2e6, "percent": 1.0, "digits": 2});
    assert_eq!(Meter::default().json(), expected);
}

#[test]
fn every_reading_comes_up_open_and_closed_and_a_subset_is_a_part() {
    let mut rng = rng(7);
    let mut seen: BTreeMap<String, [usize; 2]> = BTreeMap::new();
    let mut shorter = 0;
    for _ in 0..10_000 {
        let unit = PhysicalUnit::random(&mut rng);
        let condition = Condition::random(&unit, &mut rng);
        let readings = unit.readings(&condition, &Meter::random(&mut rng), &mut rng);
        for (id, value) in &readings {
            seen.entry(id.clone()).or_default()[usize::from(value == "OL")] += 1;
        }
        let chosen = random_readings(&readings, &mut rng);
        shorter += usize::from(chosen.len() < readings.len());
        assert!(chosen.iter().all(|item| readings.contains(item)));
    }
    assert_eq!(seen.keys().map(String::as_str).collect::<Vec<_>>(), IDS);
    assert!(seen.values().flatten().all(|count| *count > 50), "{seen:?}");
    assert!(shorter > 5_000);
}

#[test]
fn every_fault_comes_up_and_only_where_the_unit_has_the_part() {
    let mut rng = rng(8);
    let mut seen = BTreeSet::new();
    for _ in 0..10_000 {
        let unit = PhysicalUnit::random(&mut rng);
        let Some((condition, fault)) = Condition::failed(&unit, &mut rng) else { continue };
        seen.insert(fault);
        let factors = unit.factors();
        let ordinary = factors.line_capacitor_class == CapacitorClass::Ordinary;
        let there = match (fault, factors.line_capacitor) {
            ("near_capacitor_shorted", LineCapacitor::NearLeg | LineCapacitor::BothLegs)
            | ("far_capacitor_shorted", LineCapacitor::FarLeg | LineCapacitor::BothLegs)
            | ("selector_capacitor_shorted", LineCapacitor::Selector) => ordinary,
            ("network_capacitor_shorted", _) => factors.isolation == Isolation::LineFloated,
            ("insulation_breakdown", _) => {
                matches!(factors.isolation, Isolation::Isolating | Isolation::LineInsulated)
            }
            _ => false,
        };
        assert!(there, "{fault} on {factors:?}");
        let parts =
            condition.capacitor_ohm.both().into_iter().chain(condition.insulation_ohm.both());
        let shorted = parts.filter(|ohm| *ohm <= 2.0).count();
        let apart = factors.isolation.common_is_apart();
        assert_eq!(shorted + usize::from(apart && condition.bond_ohm <= 2.0), 1, "{fault}");
    }
    assert_eq!(seen.len(), 5, "{seen:?}");
}

#[test]
fn a_motor_is_in_a_unit_that_can_have_one_and_every_switch_of_it_comes_up() {
    let mut rng = rng(9);
    let (mut switches, mut wrong, mut wired) = (BTreeSet::new(), 0, 0);
    for _ in 0..20_000 {
        let unit = PhysicalUnit::random(&mut rng);
        let kinds = ["record_player", "console_radio", "other", "table_radio"];
        assert!(!unit.motor || kinds.contains(&unit.kind), "{}", unit.kind);
        let clock = unit.motor && unit.kind == "table_radio";
        assert!(!clock || unit.heaters_from != HeaterSource::MotorWinding);
        let condition = Condition::random(&unit, &mut rng);
        if let Some(motor) = condition.motor {
            switches.insert(format!("{:?} {}", motor.own_switch, motor.ahead));
            assert!(!clock || (motor.ahead && motor.own_switch == OwnSwitch::None));
        }
        wrong += usize::from(condition.wrong_switch());
        wired += usize::from(unit.motor && !clock && unit.feed == Feed::Line);
        assert!(!condition.wrong_switch() || (unit.motor && !clock));
    }
    assert_eq!(switches.len(), 7, "{switches:?}");
    assert!((0.12..0.18).contains(&(wrong as f64 / wired as f64)), "{wrong} of {wired}");
}

#[test]
fn parts_lie_in_their_ranges_and_a_sound_unit_has_nothing_open() {
    let mut rng = rng(10);
    for _ in 0..10_000 {
        let unit = PhysicalUnit::random(&mut rng);
        if unit.feed != Feed::Line {
            continue;
        }
        let sound = Condition::sound(&unit, &mut rng);
        assert!(sound.cord_ohm.both().iter().all(|ohm| *ohm <= 2.5));
        let moved = sound.wrong_switch() && unit.heaters_from == HeaterSource::MotorWinding;
        assert!(sound.load_ohm.is_finite() || moved);
        if unit.isolation().has_heater_string() {
            // Cold to warm is never more than the hot string with its spread.
            let hot = unit.line_up.string_ohm();
            assert!((hot / 10.1..hot * 1.1).contains(&sound.load_ohm), "{}", sound.load_ohm);
        }
        if let Bond::Network { ohm, .. } = unit.bond {
            assert_eq!(sound.bond_ohm, ohm);
        }
        let found = Condition::random(&unit, &mut rng);
        let part = unit.leg_capacitor.filter(|part| part.class_y).is_some();
        assert!(!part || found.capacitor_ohm.both().iter().all(|ohm| *ohm >= 100e6));
        let both = unit.leg_capacitor.is_some_and(|part| part.from == Pair(true, true));
        let there = found.capacitor_ohm.both().iter().filter(|ohm| ohm.is_finite()).count();
        let expected = unit.leg_capacitor.map_or(0, |_| 1 + usize::from(both));
        assert_eq!(there, expected);
    }
}
