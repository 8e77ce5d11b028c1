//! Random arrangements, supplies and parts.

use coldchassis_core::arrangement::{Arrangement, Fault, FaultSet, Spread, Values, all};
use coldchassis_core::hazard::Parts;
use coldchassis_core::supply::{Feed, Supply};
use proptest::prelude::{Just, Strategy, any, prop_oneof};
use proptest::sample::select;

pub fn arrangement() -> impl Strategy<Value = Arrangement> {
    select(all())
}

/// Arrangements of one sort, each as likely as the other.
pub fn arrangement_where(holds: fn(&Arrangement) -> bool) -> impl Strategy<Value = Arrangement> {
    let kept: Vec<Arrangement> = all().iter().copied().filter(holds).collect();
    assert!(!kept.is_empty());
    select(kept)
}

pub fn supply() -> impl Strategy<Value = Supply> {
    let hertz = prop_oneof![Just(50.0), Just(60.0), 15.0..400.0];
    (90.0..260.0, hertz, 1.0..1.25, any::<bool>()).prop_map(|(volts, hertz, ratio, both_hot)| {
        Supply {
            volts,
            hertz,
            volts_max: volts * ratio,
            feed: if both_hot { Feed::BothHot } else { Feed::Direct },
            input_volts: None,
        }
    })
}

/// A value within these decades.
fn decades(low: f64, high: f64) -> impl Strategy<Value = f64> {
    (low..high).prop_map(|decade| 10f64.powf(decade))
}

/// A range within these decades, or one value that is known.
fn spread(low: f64, high: f64) -> impl Strategy<Value = Spread> {
    (decades(low, high), prop_oneof![Just(1.0), 1.0..10.0])
        .prop_map(|(value, ratio)| Spread { low: value, high: value * ratio })
}

pub fn parts() -> impl Strategy<Value = Parts> {
    let line_capacitor = proptest::option::of(spread(-9.5, -6.5));
    let network = (spread(4.5, 6.5), spread(-8.5, -6.5));
    let others = (spread(-9.5, -6.5), spread(-10.5, -8.5), decades(2.0, 3.5));
    (line_capacitor, any::<bool>(), network, others).prop_map(
        |(line_capacitor, line_capacitor_usual, network, others)| Parts {
            line_capacitor,
            network_ohm: network.0,
            network_farad: network.1,
            aerial: others.0,
            winding: others.1,
            heater_ohm: others.2,
            line_capacitor_usual,
            network_class_y: false,
        },
    )
}

pub fn values() -> impl Strategy<Value = Values> {
    (
        proptest::option::of(decades(-9.5, -6.5)),
        [decades(4.5, 6.5), decades(2.0, 3.5), decades(2.5, 4.0), decades(1.0, 3.0)],
        [decades(-8.5, -6.5), decades(-9.5, -6.5), decades(-10.5, -8.5)],
        decades(-1.0, 1.0),
    )
        .prop_map(|(line_capacitor_farad, ohms, farads, earth_ohm)| Values {
            line_capacitor_farad,
            network_ohm: ohms[0],
            heater_ohm: ohms[1],
            load_ohm: ohms[2],
            primary_ohm: ohms[3],
            network_farad: farads[0],
            aerial_farad: farads[1],
            winding_farad: farads[2],
            earth_ohm,
        })
}

/// Every set of at most `most` faults that can happen to an arrangement, counted out bit by bit.
pub fn sets_of_faults(arrangement: &Arrangement, feed: Feed, most: u32) -> Vec<FaultSet> {
    let possible: Vec<Fault> =
        Fault::ALL.iter().copied().filter(|fault| fault.exists(arrangement, feed)).collect();
    (0u32..1 << possible.len())
        .filter(|bits| bits.count_ones() <= most)
        .map(|bits| {
            let chosen = possible.iter().enumerate().filter(|(place, _)| bits >> place & 1 == 1);
            FaultSet::of(&chosen.map(|(_, fault)| *fault).collect::<Vec<_>>())
        })
        .collect()
}
