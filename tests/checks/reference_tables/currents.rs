//! Leakage currents, the capacitance that a limit allows, and the measuring networks of IEC 60990.

use coldchassis_core::body::{MeasuringNetwork, touch_test_ohms};
use coldchassis_core::circuit::{Network, Node, Thevenin};
use num_complex::Complex64;

use crate::rows::{Row, rows};

const HOT: Node = Node::at(1);
const METAL: Node = Node::at(2);
const INSIDE: Node = Node::at(3);
const MEASURED: Node = Node::at(4);

/// Metal that a resistor and a capacitor join to the hot contact.
fn leaking_metal(row: &Row) -> Thevenin {
    let mut net = Network::new(row.number("f_Hz"));
    net.hold(HOT, row.number("V_rms"));
    if let Some(ohms) = row.maybe("R_ohm_parallel") {
        net.resistor(HOT, METAL, ohms);
    }
    net.capacitor(HOT, METAL, row.number("C_nF") * 1e-9);
    net.seen_from(METAL)
}

fn volts_and_milliamperes(metal: &Thevenin, load: Complex64) -> (f64, f64) {
    let volts = metal.loaded(load);
    (volts.norm(), 1e3 * (volts / load).norm())
}

#[test]
fn leakage_through_every_resistor_and_capacitor_of_the_examples() {
    let mut checked = 0;
    for row in rows("leakage_examples.csv", 36) {
        let metal = leaking_metal(&row);
        row.agrees("I_short_mA", 1e3 * (metal.volts / metal.ohms).norm(), 3);
        let (volts, current) = volts_and_milliamperes(&metal, touch_test_ohms(row.number("f_Hz")));
        row.agrees("I_service_net_mA", current, 3);
        row.agrees("U_service_net_V", volts, 2);
        let (_, current) = volts_and_milliamperes(&metal, Complex64::new(1000.0, 0.0));
        row.agrees("I_into_1000ohm_mA", current, 3);
        checked += 4;
    }
    assert_eq!(checked, 144);
}

#[test]
fn a_capacitor_at_its_limit_lets_the_limit_through() {
    for row in rows("max_line_capacitance.csv", 45) {
        let mut net = Network::new(row.number("f_Hz"));
        net.hold(HOT, row.number("V_rms"));
        net.capacitor(HOT, METAL, row.number("C_max_nF") * 1e-9);
        let metal = net.seen_from(METAL);
        let limit = row.number("limit_mA");
        // The capacitance is printed to 0.01 nF, so the current is known to half of that.
        let rounding = limit * 0.005 / row.number("C_max_nF");
        row.within("limit_mA", 1e3 * (metal.volts / metal.ohms).norm(), limit, rounding);
    }
}

#[test]
fn measuring_networks_at_every_frequency() {
    let mut checked = 0;
    for row in rows("measuring_network_transfer.csv", 14) {
        let hertz = row.number("f_Hz");
        let unweighted = MeasuringNetwork::Unweighted.at(hertz);
        let perception = MeasuringNetwork::Perception.at(hertz);
        let let_go = MeasuringNetwork::LetGo.at(hertz);
        // Both networks share the series part, and the unweighted one ends in its 500 Ω alone.
        let series = unweighted.input_ohms - unweighted.transfer_ohms;
        row.agrees("Zin_fig4_ohm", perception.input_ohms.norm(), 1);
        row.agrees("U1_per_A_ohm", (perception.input_ohms - series).norm(), 1);
        row.agrees("U2_per_A_ohm", perception.transfer_ohms.norm(), 2);
        row.agrees("weight_500_over_U2", 500.0 / perception.transfer_ohms.norm(), 3);
        row.agrees("U3_per_A_ohm", let_go.transfer_ohms.norm(), 2);
        row.agrees("weight_500_over_U3", 500.0 / let_go.transfer_ohms.norm(), 3);
        row.agrees("Z_1500_par_0p15uF_ohm", touch_test_ohms(hertz).norm(), 1);
        assert_eq!(unweighted.transfer_ohms, Complex64::new(500.0, 0.0), "{}", row.cite());
        checked += 7;
    }
    assert_eq!(checked, 98);
}

/// The perception network drawn with the circuit solver: 1500 Ω ∥ 0.22 µF, then 500 Ω across which
/// 10 kΩ and 0.022 µF divide (IEC 60990 figure 4, verified).
fn drawn_perception_network(hertz: f64) -> Network {
    let mut net = Network::new(hertz);
    net.hold(HOT, 1.0);
    net.resistor(HOT, INSIDE, 1500.0);
    net.capacitor(HOT, INSIDE, 0.22e-6);
    net.resistor(INSIDE, Node::EARTH, 500.0);
    net.resistor(INSIDE, MEASURED, 10e3);
    net.capacitor(MEASURED, Node::EARTH, 0.022e-6);
    net
}

#[test]
fn the_perception_network_drawn_as_a_circuit_gives_the_same_figures() {
    for row in rows("measuring_network_transfer.csv", 14) {
        let hertz = row.number("f_Hz");
        let net = drawn_perception_network(hertz);
        let series = Complex64::new(1500.0, 0.0).inv() + net.reactance(0.22e-6).inv();
        let amperes = (Complex64::new(1.0, 0.0) - net.voltage(INSIDE)) * series;
        row.agrees("Zin_fig4_ohm", amperes.inv().norm(), 1);
        row.agrees("U1_per_A_ohm", (net.voltage(INSIDE) / amperes).norm(), 1);
        row.agrees("U2_per_A_ohm", (net.voltage(MEASURED) / amperes).norm(), 2);
    }
}
