//! Hand-worked cases: each figure is worked out here with series and parallel parts, then asked
//! of ngspice.

use super::*;

#[test]
fn a_body_on_the_hot_common_is_a_divider() {
    let loads = parallel(&[819.0, 1500.0]);
    let legs = 1.0 / 0.05 + 1.0 / (loads + 0.05) + 1.0 / (0.01 + BODY_OHM);
    let near = 120.0 / 0.05 / legs;
    let expected = near * BODY_OHM / (0.01 + BODY_OHM);
    assert_near(touched(case("line_tied", "a"), "c"), impedance(expected), 1e-10);
}

#[test]
fn an_open_near_switch_leaves_the_common_on_hot_through_cold_heaters() {
    let case =
        case("line_tied", "b").with("cord", "two_pin_polarised").with("switch_leg", "near").off();
    // The 1 GΩ of the open contact takes less than a part in a million.
    let expected = 120.0 * BODY_OHM / (0.05 + 819.0 / 6.8 + 0.01 + BODY_OHM);
    assert_near(touched(case, "c"), impedance(expected), 1e-6);
}

#[test]
fn an_open_far_switch_is_one_gigohm() {
    let case = case("line_tied", "a").with("switch_leg", "far").second().off();
    // Near is on neutral; what comes through the open contact drops over 0.05 Ω of conductor.
    let voltages = run_batch(&[(case, None)]);
    let expected = 120.0 * 0.05 / (0.05 + 1e9 + 819.0 / 6.8 + 0.05);
    assert_near(voltages[0]["c"], impedance(expected), 1e-6);
    let far = 120.0 * (819.0 / 6.8 + 0.05) / (0.05 + 1e9 + 819.0 / 6.8 + 0.05);
    assert_near(voltages[0]["far"], impedance(far), 1e-6);
    assert_near(voltages[0]["feed_far"], impedance(120.0), 1e-9);
}

/// Rows of the computed leakage table: V, Hz, Ω, F, mA into 1 kΩ, printed to a microampere.
#[test]
fn a_floated_chassis_leaks_what_the_table_says() {
    for (volts, hertz, ohm, farad, expected_ma) in [
        (120.0, 60.0, 220e3, 0.1e-6, 4.533),
        (120.0, 60.0, 150e3, 0.05e-6, 2.383),
        (230.0, 50.0, 220e3, 0.1e-6, 7.264),
        (230.0, 50.0, 470e3, 0.25e-6, 17.977),
    ] {
        let mut case = case("line_floated", "a");
        case.exposure["supply"] = json!({"volts": volts, "hertz": hertz, "feed": "direct"});
        case.exposure["values"]["network_ohm"] = json!(ohm);
        case.exposure["values"]["network_farad"] = json!(farad);
        let found = touched(case, "c");
        let network = in_parallel(impedance(ohm), capacitor_ohm(farad, hertz));
        let by_hand = volts * BODY_OHM / (network + BODY_OHM);
        // The hand formula leaves out the drop of the loads over 0.05 Ω: a part in ten thousand.
        assert_near(found, by_hand, 1.1e-4);
        let milliamperes = found.norm() / BODY_OHM * 1e3;
        assert!(
            (milliamperes - expected_ma).abs() < 1.1e-4 * expected_ma + 0.0005,
            "{milliamperes} mA at {volts} V"
        );
    }
}

#[test]
fn a_floated_chassis_has_its_network_as_thevenin_impedance() {
    let loads = parallel(&[819.0, 1500.0]);
    let network = in_parallel(impedance(220e3), capacitor_ohm(0.1e-6, 60.0));
    let supply = parallel(&[0.05, loads + 0.05]);
    let seen = thevenin_batch(&[case("line_floated", "a")], "c")[0];
    assert_near(seen.impedance_ohm, network + supply, 1e-9);
    let near = 120.0 * (loads + 0.05) / (loads + 0.1);
    assert_near(seen.open_circuit_v, impedance(near), 1e-9);
}

#[test]
fn a_shorted_network_puts_the_chassis_on_the_line() {
    let shorted = case("line_floated", "a").fault("network_capacitor_shorted");
    let expected = 120.0 * BODY_OHM / (0.1 + 0.05 + BODY_OHM);
    assert_near(touched(shorted, "c"), impedance(expected), 1.1e-4);
}

#[test]
fn an_insulated_chassis_leaks_through_strays_only() {
    let strays = in_parallel(impedance(100e6), capacitor_ohm(0.2e-9, 60.0));
    let expected = 120.0 * BODY_OHM / (strays + BODY_OHM);
    assert_near(touched(case("line_insulated", "a"), "c"), expected, 1.1e-4);
    let broken = case("line_insulated", "a").fault("insulation_breakdown");
    assert_near(touched(broken, "c"), impedance(120.0), 3e-4);
}

#[test]
fn the_common_itself_is_live_behind_a_floated_chassis() {
    let case = case("line_floated", "a").with("reach", "common_exposed");
    assert_near(touched(case, "near"), impedance(120.0), 2e-4);
}

#[test]
fn a_rectified_chassis_is_on_the_hot_rail_either_way_round() {
    for way in [case("line_rectified", "b"), case("line_rectified", "b").second()] {
        let expected = 120.0 * BODY_OHM / (10.0 + 0.05 + BODY_OHM);
        assert_near(touched(way, "c"), impedance(expected), 1.1e-4);
    }
}

#[test]
fn two_line_capacitors_and_the_windings_divide_the_line() {
    let mut both = case("isolating", "b").with("line_capacitor", "both_legs");
    both.exposure["values"]["primary_ohm"] = json!(1e5);
    let each = capacitor_ohm(47e-9 + 0.5e-9, 60.0);
    // Far is on hot; the 100 MΩ of insulation stands beside the far capacitor.
    let far = in_parallel(each, impedance(100e6));
    let source = in_parallel(far, each);
    let open = 120.0 * each / (far + each);
    let expected = open * BODY_OHM / (source + BODY_OHM);
    assert_near(touched(both.clone(), "c"), expected, 1e-6);
    let shorted = both.fault("far_capacitor_shorted");
    assert_near(untouched(shorted), impedance(120.0), 1e-5);
}

#[test]
fn the_selector_chooses_the_leg() {
    let selector = |side: &str| {
        let mut case = case("isolating", "b").with("line_capacitor", "selector");
        case.selector = Some(side.into());
        case
    };
    // Far is on hot, so the far side pulls the chassis up and the near side holds it down.
    let up = untouched(selector("far")).norm();
    let down = untouched(selector("near")).norm();
    assert!((up - 120.0 * 47.5 / 48.0).abs() < 0.05, "{up} V");
    assert!((down - 120.0 * 0.5 / 48.0).abs() < 0.05, "{down} V");
    let shorted = selector("far").fault("selector_capacitor_shorted");
    assert_near(untouched(shorted), impedance(120.0), 1e-3);
}

#[test]
fn an_earth_wire_holds_a_hot_chassis_down_until_it_opens() {
    let wired_backwards =
        case("line_tied", "b").with("cord", "three_pin_earthed").fault("outlet_reversed");
    let loads = parallel(&[819.0, 1500.0]);
    let legs = 1.0 / 0.05 + 1.0 / (loads + 0.05) + 1.0 / 0.21;
    let near = 120.0 / 0.05 / legs;
    assert_near(untouched(wired_backwards.clone()), impedance(near * 0.2 / 0.21), 1e-10);
    let opened = wired_backwards.fault("earth_open");
    assert_near(untouched(opened), impedance(120.0), 2e-4);
}

#[test]
fn a_cut_neutral_pulls_the_neutral_pin_up_through_other_loads() {
    // Near is on neutral. To hot: the loads and far conductor, and 100 Ω and near conductor.
    let loads = parallel(&[819.0, 1500.0]);
    let source = parallel(&[loads + 0.05, 100.0 + 0.05]) + 0.01;
    let expected = 120.0 * BODY_OHM / (source + BODY_OHM);
    let cut = case("line_tied", "b").fault("neutral_open");
    assert_near(touched(cut, "c"), impedance(expected), 1e-10);
    // With the outlet reversed the near pin is on hot, and the far pin is the one cut off.
    let reversed = case("line_tied", "b")
        .with("cord", "two_pin_polarised")
        .fault("outlet_reversed")
        .fault("neutral_open");
    let source = parallel(&[0.05, loads + 0.05 + 100.0]) + 0.01;
    let expected = 120.0 * BODY_OHM / (source + BODY_OHM);
    assert_near(touched(reversed, "c"), impedance(expected), 1e-10);
}

#[test]
fn both_contacts_are_hot_on_a_two_phase_feed() {
    let mut case = case("line_tied", "b");
    case.exposure["supply"]["feed"] = json!("both_hot");
    let voltages = &run_batch(&[(case.clone(), None)])[0];
    assert_near(voltages["hot"], impedance(60.0), 1e-12);
    assert_near(voltages["neutral"], impedance(-60.0), 1e-12);
    let loads = parallel(&[819.0, 1500.0]);
    let near = -60.0 + 120.0 * 0.05 / (0.1 + loads);
    assert_near(voltages["c"], impedance(near), 1e-10);
    // Neither contact is a neutral that could be cut.
    assert!(!existing_faults(&case.exposure).contains(&"neutral_open"));
}

#[test]
fn a_stray_conductor_lies_ahead_of_the_switch() {
    // Near is on neutral and the far leg's switch is open: the stray conductor still feeds the
    // chassis from hot, and the near leg takes the short circuit.
    let case = case("line_tied", "b").with("switch_leg", "far").off().fault("stray_far");
    let heater = 819.0 / 6.8 + 1e9;
    // The stray conductor comes straight from the contact, beside the far conductor.
    let legs = 1.0 / 0.11 + 1.0 / (0.05 + heater) + 1.0 / 0.05;
    let near = 120.0 * (1.0 / 0.11 + 1.0 / (0.05 + heater)) / legs;
    let expected = near + (120.0 - near) * 0.01 / 0.11;
    assert_near(untouched(case), impedance(expected), 1e-9);
}

#[test]
fn an_aerial_terminal_is_reached_through_its_capacitor() {
    let tied = case("line_tied", "a").with("reach", "aerial_terminal");
    let expected = 120.0 * BODY_OHM / (capacitor_ohm(1e-8, 60.0) + BODY_OHM);
    assert_near(touched(tied.clone(), "t"), expected, 1.1e-4);
    // Nobody there: the terminal hangs on the capacitor alone and follows the common.
    let voltages = &run_batch(&[(tied.clone(), None)])[0];
    assert_near(voltages["t"], voltages["c"], 1e-9);
    let shorted = tied.fault("aerial_capacitor_shorted");
    assert_near(touched(shorted, "t"), impedance(120.0), 3e-4);
    // A floated set has its terminal on the common, not on the chassis.
    let floated = case("line_floated", "a").with("reach", "aerial_terminal");
    assert_near(touched(floated, "t"), expected, 1.1e-4);
}

#[test]
fn a_heater_transformer_has_a_primary_and_no_plate_load() {
    for (isolation, plug_off) in [("heater_transformer", false), ("autotransformer", true)] {
        let mut case = case(isolation, "b").with("switch_leg", "near");
        let primary = if plug_off { 10.0 } else { 240.0 };
        case.switch = if plug_off { "off" } else { "on" }.into();
        let contact = if plug_off { 1e9 } else { 0.05 };
        let to_neutral = parallel(&[contact + 0.05, 0.01 + BODY_OHM]);
        let near = 120.0 * to_neutral / (0.05 + primary + to_neutral);
        let expected = near * BODY_OHM / (0.01 + BODY_OHM);
        assert_near(touched(case, "c"), impedance(expected), 1e-9);
    }
}

#[test]
fn each_fault_puts_its_own_leg_on_the_metal() {
    let isolating = || case("isolating", "b");
    // Far is on hot and near on neutral: a fault from far lifts the chassis, one from near holds
    // it at what the load leaves over 0.05 Ω of neutral conductor.
    let low = impedance(120.0 * 0.05 / (0.05 + 240.0 + 0.05));
    let high = impedance(120.0) - low;
    assert_near(untouched(isolating().fault("insulation_breakdown")), high, 1e-6);
    assert_near(untouched(isolating().fault("stray_far")), impedance(120.0), 1e-6);
    let held = untouched(isolating().fault("stray_near")).norm();
    assert!(held < 1e-4, "{held} V on the neutral contact");
}

#[test]
fn a_shorted_aerial_capacitor_of_a_floated_set_reaches_the_common() {
    let floated = case("line_floated", "a")
        .with("reach", "aerial_terminal")
        .fault("aerial_capacitor_shorted");
    assert_near(touched(floated, "t"), impedance(120.0), 3e-4);
}

#[test]
fn without_a_switch_off_is_the_same_as_on() {
    let on = untouched(case("line_tied", "b"));
    assert_near(untouched(case("line_tied", "b").off()), on, 1e-12);
}
