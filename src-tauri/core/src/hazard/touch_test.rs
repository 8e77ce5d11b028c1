//! What a live touch test reads: the voltage across 1500 Ω ∥ 0.15 µF between bare metal and a proven earth.
//!
//! The network stands in for a person who only just feels something. It is held between metal and earth
//! by a qualified person, behind a protection, both ways round, switch on and off.

use std::f64::consts::TAU;

use num_complex::Complex64;
use serde::Serialize;

use crate::arrangement::{Arrangement, FaultSet, State, Touched, Values, Wiring, states, touched};
use crate::body::{TOUCH_LIMIT_VOLTS, TOUCH_TEST_OHM, touch_test_ohms};
use crate::circuit::Thevenin;
use crate::figure::{Figure, Mark, Source};
use crate::supply::{Contacts, Supply};

/// Input resistance of a usual digital meter, Ω.
const METER_OHM: Figure = Figure::new(10e6, "Ω", Source::TypicalValues, Mark::CommonPractice);
/// Its input capacitance with leads, F.
const METER_FARAD: Figure = Figure::new(100e-12, "F", Source::TypicalValues, Mark::CommonPractice);
/// Above this a meter of high impedance ends the test before it begins, V rms.
pub const STOP_VOLTS: Figure = Figure::new(30.0, "V", Source::Iec62368_1, Mark::MemoryHigh);

/// The metal that the network is held to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum TestedMetal {
    /// Metal on the chassis.
    Chassis,
    /// Metal on a common of its own.
    Common,
    /// The aerial or earth terminal.
    Aerial,
}

/// One predicted reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TouchReading {
    /// The state of the unit.
    pub state: State,
    /// The metal.
    pub metal: TestedMetal,
    /// Across the network, V rms.
    pub volts: f64,
    /// Through it, mA rms.
    pub milliamperes: f64,
    /// In its resistor, W.
    pub watts: f64,
    /// What a meter of 10 MΩ shows on the same metal without the network, V rms: mostly a ghost.
    pub ghost_volts: f64,
}

impl TouchReading {
    /// Whether it is above the limit of 0.75 V.
    pub fn is_above(&self) -> bool {
        self.volts > TOUCH_LIMIT_VOLTS.value
    }
}

/// What the test reads of an arrangement whose parts have these values, at `volts` of the supply, in every
/// state; nothing where no metal can be touched.
pub fn touch_test(
    arrangement: &Arrangement,
    supply: &Supply,
    volts: f64,
    values: &Values,
) -> Vec<TouchReading> {
    let Some(line) = arrangement.line else { return Vec::new() };
    let what = touched(&line, FaultSet::NONE);
    let contacts = supply.contacts(volts);
    let in_state = |state: State| {
        let wiring = Wiring::of(arrangement, state, FaultSet::NONE);
        let read = move |wiring| in_wiring(wiring, what, state, values, supply.hertz, contacts);
        wiring.into_iter().flat_map(read)
    };
    states(arrangement, supply.feed).flat_map(in_state).collect()
}

/// What the test reads of one network.
pub(super) fn in_wiring(
    wiring: Wiring,
    what: Touched,
    state: State,
    values: &Values,
    hertz: f64,
    contacts: Contacts,
) -> impl Iterator<Item = TouchReading> + use<> {
    let (first, second) = match what {
        Touched::Nothing => (None, None),
        Touched::Chassis(_) => (Some(TestedMetal::Chassis), None),
        Touched::Aerial => (None, Some(TestedMetal::Aerial)),
        Touched::ChassisAndAerial => (Some(TestedMetal::Chassis), Some(TestedMetal::Aerial)),
        Touched::ChassisAndCommon => (Some(TestedMetal::Chassis), Some(TestedMetal::Common)),
    };
    let ports = wiring.ports(what, values, hertz, contacts);
    let chassis = first.map(|metal| (metal, ports.chassis));
    let other = ports.second.zip(second).map(|(port, metal)| (metal, port));
    let of = move |(metal, port): (TestedMetal, Thevenin)| reading(state, metal, &port, hertz);
    chassis.into_iter().chain(other).map(of)
}

fn reading(state: State, metal: TestedMetal, port: &Thevenin, hertz: f64) -> TouchReading {
    let network = touch_test_ohms(hertz);
    let volts = port.loaded(network).norm();
    TouchReading {
        state,
        metal,
        volts,
        milliamperes: 1000.0 * volts / network.norm(),
        watts: volts * volts / TOUCH_TEST_OHM.value,
        ghost_volts: port.loaded(meter_ohms(hertz)).norm(),
    }
}

/// The impedance of a usual digital meter at `hertz`, Ω.
fn meter_ohms(hertz: f64) -> Complex64 {
    Complex64::new(1.0 / METER_OHM.value, TAU * hertz * METER_FARAD.value).inv()
}

/// What a capacitor of `farads` alone lets through to the network from `line_volts` against earth, V rms.
pub fn volts_through(farads: f64, line_volts: f64, hertz: f64) -> f64 {
    let reactance = Complex64::new(0.0, -1.0 / (TAU * hertz * farads));
    let network = touch_test_ohms(hertz);
    line_volts * (network / (network + reactance)).norm()
}

/// The line capacitor that alone gives a reading, F, from a leg that stands at `line_volts` against earth;
/// nothing where no capacitor gives it.
pub fn implied_farads(reading_volts: f64, line_volts: f64, hertz: f64) -> Option<f64> {
    if reading_volts <= 0.0 || reading_volts >= line_volts {
        return None;
    }
    // |V| = U·|Z|/|Z − jX|, solved for the reactance X; Z = a + jb, b below zero.
    let network = touch_test_ohms(hertz);
    let whole = line_volts * network.norm() / reading_volts;
    let reactance = network.im + (whole * whole - network.re * network.re).sqrt();
    (reactance > 0.0).then(|| 1.0 / (TAU * hertz * reactance))
}

#[cfg(test)]
mod tests {
    use num_complex::Complex64;
    use proptest::prelude::{prop_assert, proptest};

    use super::{TestedMetal, implied_farads, touch_test, volts_through};
    use crate::arrangement::{Values, read_exposure};
    use serde_json::json;

    fn readings(change: &[(&str, &str)]) -> Vec<super::TouchReading> {
        let mut file = json!({
            "supply": {"volts": 120, "hertz": 60}, "isolation": "isolating",
            "cord": "two_pin_reversible", "near_pin": "b", "line_capacitor": "near_leg",
            "line_capacitor_class": "ordinary", "switch_leg": "none", "reach": "exposed",
        });
        for (key, value) in change {
            file[*key] = json!(value);
        }
        let file = read_exposure(file).unwrap();
        touch_test(&file.arrangement, &file.supply, 120.0, &Values::default())
    }

    /// 0.047 µF from the hot leg and two windings of 0.5 nF, by hand: 120 V behind (C + 0.5 nF), beside it
    /// 0.5 nF from neutral, into 1495 Ω at −4.8°. With 0.0475 µF alone it would be 3.20 V.
    #[test]
    fn a_line_capacitor_reads_as_worked_by_hand() {
        let radians = std::f64::consts::TAU * 60.0;
        let admittance = |farads: f64| Complex64::new(0.0, radians * farads);
        let hot = admittance(47.5e-9);
        let rest = admittance(0.5e-9)
            + Complex64::new(1.0 / 1500.0, radians * 0.15e-6)
            + Complex64::new(1e-8, 0.0);
        // The primary of 240 Ω takes half an ampere, and that a few hundredths of a volt in the cord.
        let leg = 120.0 * 240.05 / 240.1;
        let by_hand = (hot / (hot + rest) * leg).norm();
        let worst = readings(&[]).iter().map(|one| one.volts).fold(0.0, f64::max);
        assert!((worst / by_hand - 1.0).abs() < 1e-4, "{worst} {by_hand}");
        assert!((by_hand - 3.21).abs() < 0.03, "{by_hand}");
    }

    #[test]
    fn a_tied_chassis_puts_the_whole_line_on_the_network_and_its_resistor_in_danger() {
        let tied = readings(&[("isolation", "line_tied"), ("line_capacitor", "none")]);
        let worst = tied.iter().map(|one| one.watts).fold(0.0, f64::max);
        assert!((worst - 9.6).abs() < 0.05, "{worst} W of 120²/1500");
        assert!(tied.iter().any(super::TouchReading::is_above));
    }

    #[test]
    fn nothing_in_reach_reads_nothing_and_an_own_common_is_read_too() {
        assert!(readings(&[("reach", "closed")]).is_empty());
        let both = readings(&[
            ("isolation", "line_floated"),
            ("line_capacitor", "none"),
            ("reach", "common_exposed"),
        ]);
        assert!(both.iter().any(|one| one.metal == TestedMetal::Common));
        assert!(both.iter().any(|one| one.metal == TestedMetal::Chassis));
        let post = readings(&[
            ("isolation", "line_tied"),
            ("line_capacitor", "none"),
            ("reach", "aerial_terminal"),
        ]);
        assert!(post.iter().all(|one| one.metal == TestedMetal::Aerial));
    }

    /// A sound isolating unit without a capacitor reads far below the limit, and still a ghost of tens of
    /// volts on a meter of high impedance.
    #[test]
    fn a_ghost_is_high_where_the_network_reads_next_to_nothing() {
        let sound = readings(&[("line_capacitor", "none")]);
        let worst = sound.iter().max_by(|a, b| a.volts.total_cmp(&b.volts)).unwrap();
        assert!(worst.volts < 0.1 && worst.ghost_volts > 30.0, "{worst:?}");
    }

    proptest! {
        #[test]
        fn the_implied_capacitor_gives_the_reading_back(
            farads in 1e-10_f64..1e-6, volts in 90.0_f64..260.0, hertz in 40.0_f64..70.0,
        ) {
            let reading = volts_through(farads, volts, hertz);
            let implied = implied_farads(reading, volts, hertz).unwrap();
            prop_assert!((implied / farads - 1.0).abs() < 1e-6);
        }
    }
}
