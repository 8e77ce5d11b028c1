//! Stored energy and charge, and how long a resistor takes to bleed it.

use coldchassis_core::body::{LOW_VOLTS, StoredCharge};

use crate::rows::rows;

#[test]
fn energy_charge_and_bleed_time_of_every_example() {
    for row in rows("stored_energy_examples.csv", 12) {
        let bled = |ohms| StoredCharge {
            farads: row.number("C_uF") * 1e-6,
            volts: row.number("U_V"),
            bleed_ohms: Some(ohms),
        };
        let charge = bled(220e3);
        row.agrees("E_J", charge.joules(), 3);
        row.agrees("Q_uC", charge.coulombs() * 1e6, 0);
        let slow = charge.seconds_to(LOW_VOLTS.value).expect("it is bled");
        row.agrees("t_to_60V_through_220k_s", slow, 1);
        let quick = bled(1e3).seconds_to(10.0).expect("it is bled");
        row.agrees("t_to_10V_through_1k_ms", quick * 1e3, 1);
    }
}
