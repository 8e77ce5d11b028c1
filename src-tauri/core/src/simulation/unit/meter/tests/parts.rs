//! Each part by itself moves the readings that it lies across, and no others.

use super::*;

const APART: [Isolation; 3] =
    [Isolation::LineFloated, Isolation::LineInsulated, Isolation::Isolating];

/// The same unit with an ordinary capacitor from these conductors to the chassis.
fn with_capacitor(isolation: Isolation, from: Pair<bool>) -> PhysicalUnit {
    let mut unit = unit(isolation, SwitchLeg::None);
    let part = Capacitor { farad: 5e-8, marked_farad: 5e-8 };
    unit.leg_capacitor = Some(LegCapacitor { from, part, class_y: false });
    unit
}

#[test]
fn a_line_capacitor_leaks_from_its_own_leg() {
    let unit = unit(Isolation::Isolating, SwitchLeg::None);
    let leg = unit.near_conductor();
    let mut condition = round(&unit);
    condition.capacitor_ohm[leg] = 300e3;
    let ohms = unit.true_ohms(&condition);
    near(ohms["ohms_b_chassis_on"], 0.1 + 0.01 + 300e3);
    near(ohms["ohms_a_chassis_on"], 0.2 + 0.01 + 120.0 + 300e3);
    condition.capacitor_ohm = Pair::alike(f64::INFINITY);
    condition.capacitor_ohm[leg.other()] = 300e3;
    near(unit.true_ohms(&condition)["ohms_a_chassis_on"], 0.2 + 0.01 + 300e3);
}

#[test]
fn on_a_tied_set_the_same_capacitor_lies_across_the_line() {
    let unit = unit(Isolation::LineTied, SwitchLeg::None);
    let mut condition = round(&unit);
    condition.capacitor_ohm[unit.near_conductor().other()] = 119.9;
    near(unit.true_ohms(&condition)["ohms_a_b_on"], 0.1 + 0.2 + 0.02 + 60.0);
}

#[test]
fn a_plate_supply_that_charges_is_beside_the_load() {
    let unit = unit(Isolation::LineTied, SwitchLeg::None);
    let mut condition = round(&unit);
    condition.charging_ohm = 240.0;
    near(unit.true_ohms(&condition)["ohms_a_b_on"], 0.1 + 0.2 + 0.02 + 80.0);
}

#[test]
fn a_leak_is_on_the_leg_of_its_capacitor_or_of_the_panel_switch() {
    let mut rng = rng(11);
    for leg in Conductor::BOTH {
        let mut from = Pair::alike(false);
        from[leg] = true;
        let unit = with_capacitor(Isolation::Isolating, from);
        let found = Condition::random(&unit, &mut rng);
        assert!(
            found.capacitor_ohm[leg].is_finite() && found.capacitor_ohm[leg.other()].is_infinite()
        );
    }
    let unit = with_capacitor(Isolation::Isolating, Pair::alike(false));
    let mut stood = Pair::alike(0);
    for _ in 0..200 {
        let found = Condition::random(&unit, &mut rng);
        assert!(found.capacitor_ohm[found.selector_leg].is_finite());
        assert!(found.capacitor_ohm[found.selector_leg.other()].is_infinite());
        stood[found.selector_leg] += 1;
    }
    assert!(stood.both().iter().all(|count| *count > 50), "{stood:?}");
}

#[test]
fn a_shorted_capacitor_is_the_one_that_the_fault_names() {
    let mut rng = rng(12);
    let mut seen = [0, 0, 0];
    for round in 0..600 {
        let from = Pair::alike(round % 2 == 0);
        let unit = with_capacitor(APART[round % 3], from);
        let (failed, fault) = Condition::failed(&unit, &mut rng).unwrap();
        let near = unit.near_conductor();
        let (place, leg) = match fault {
            "near_capacitor_shorted" => (0, near),
            "far_capacitor_shorted" => (1, near.other()),
            "selector_capacitor_shorted" => (2, failed.selector_leg),
            _ => continue,
        };
        seen[place] += 1;
        assert!(failed.capacitor_ohm[leg] <= 2.0, "{fault}: {failed:?}");
        assert!(failed.capacitor_ohm[leg.other()].is_infinite(), "{fault}: {failed:?}");
    }
    assert!(seen.iter().all(|count| *count > 30), "{seen:?}");
}

#[test]
fn cords_and_fuses_break_now_and_then_and_a_fuse_oftener_than_its_wire() {
    let mut rng = rng(13);
    let mut unit = unit(Isolation::LineTied, SwitchLeg::None);
    unit.fuse_in = Some(Conductor::Second);
    let mut open = Pair::alike(0);
    for _ in 0..20_000 {
        let found = Condition::random(&unit, &mut rng);
        for conductor in Conductor::BOTH {
            open[conductor] += usize::from(found.cord_ohm[conductor].is_infinite());
        }
    }
    // 3 % of 20,000; a quarter of them in the conductor without the fuse.
    assert!((500..700).contains(&(open.0 + open.1)), "{open:?}");
    assert!((110..190).contains(&open.0), "{open:?}");
}

#[test]
fn probes_add_their_own_contact_to_every_reading() {
    let mut rng = rng(14);
    let unit = unit(Isolation::LineTied, SwitchLeg::Near);
    let condition = round(&unit);
    let meter = Meter { percent: 0.0, digits: 1, ..Meter::default() };
    let mut sum = 0.0;
    for _ in 0..2_000 {
        let readings = unit.readings(&condition, &meter, &mut rng);
        let (_, shown) = readings.iter().find(|(id, _)| id == "ohms_b_chassis_on").unwrap();
        let shown = shown.as_f64().unwrap();
        assert!((1.05..1.65).contains(&shown), "{shown} Ω of 1.2 Ω, probes up to 0.3 Ω");
        sum += shown;
    }
    // 1.2 Ω and half of the probes' 0.3 Ω.
    assert!((sum / 2_000.0 - 1.35).abs() < 0.03, "{}", sum / 2_000.0);
}
