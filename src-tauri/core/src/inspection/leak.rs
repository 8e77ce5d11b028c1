//! What a finite reading between a supply pin and the metal lets through by itself.

use super::findings::Findings;
use crate::arrangement::{Probe, Spread, WIRE_LEAST};
use crate::body::STARTLE_MA;

/// The lowest resistance read from a supply pin to one of these places, Ω; nothing where all is above
/// range or nothing was read.
fn lowest(findings: &Findings, places: &[Probe]) -> Option<Spread> {
    let to_metal = findings.readings.iter().filter(|(id, _)| {
        let probes = id.probes();
        probes.is_some_and(|(pin, place)| pin != Probe::EarthPin && places.contains(&place))
    });
    let intervals = to_metal.map(|(_, reading)| findings.meter.interval(*reading));
    intervals.filter(|read| read.high.is_finite()).min_by(|a, b| a.low.total_cmp(&b.low))
}

/// A short is no less than a wire, Ω: zero would divide.
const SHORT: f64 = WIRE_LEAST.value;

/// What readings in circuit say of the resistor between common and chassis, Ω.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InCircuit {
    /// What it may be at worst. A path below its range is a capacitor beside it that leaks or is shorted, and a
    /// person would receive through that. It may open again, so the range only grows: a short to the neutral
    /// leg could otherwise hide what the sound network lets through.
    pub at_worst: Spread,
    /// What it is as it was read. At the chassis that bounds the path from above; bare metal may be the common
    /// itself, and only says that the path may be as low.
    pub as_read: Spread,
}

/// The resistor between common and chassis in circuit, from its range by itself.
pub fn in_circuit(findings: &Findings, resistor: Spread) -> InCircuit {
    let below = |read: &Spread| read.low < resistor.low;
    let chassis = lowest(findings, &[Probe::Chassis]).filter(below);
    let metal = lowest(findings, &[Probe::Part]).filter(below);
    let grown = Spread { low: SHORT, ..resistor };
    let (at_worst, as_read) = match (chassis, metal) {
        (Some(read), _) => (grown, Spread { low: SHORT, high: read.high.max(2.0 * SHORT) }),
        (None, Some(_)) => (grown, grown),
        (None, None) => (resistor, resistor),
    };
    InCircuit { at_worst, as_read }
}

/// The current that the lowest path to the metal alone lets through at the highest supply voltage, mA,
/// where a person would startle at it; nothing below.
pub fn leak_ma(findings: &Findings) -> Option<f64> {
    let read = lowest(findings, &[Probe::Chassis, Probe::Part])?;
    let milliamperes = 1000.0 * findings.supply.volts_max / read.low.max(SHORT);
    (milliamperes >= STARTLE_MA.value).then_some(milliamperes)
}
