//! What a finite reading between a supply pin and the metal lets through by itself.

use super::findings::Findings;
use crate::arrangement::{Probe, Spread, Switch};
use crate::body::STARTLE_MA;

/// The lowest resistance read from a supply pin to chassis or bare metal with the switch on, Ω; nothing
/// where all is above range or nothing was read.
pub fn lowest_path(findings: &Findings) -> Option<Spread> {
    let to_metal = findings.readings.iter().filter(|(id, _)| {
        let from_pin =
            matches!(id.probes(), Some((Probe::PinA | Probe::PinB, Probe::Chassis | Probe::Part)));
        from_pin && id.switch() == Some(Switch::On)
    });
    let intervals = to_metal.map(|(_, reading)| findings.meter.interval(*reading));
    intervals.filter(|read| read.high.is_finite()).min_by(|a, b| a.low.total_cmp(&b.low))
}

/// The resistor between common and chassis, as far as a reading in circuit says: a path below its range is
/// a capacitor beside it that leaks or is shorted, and that is what a person would receive through, Ω.
pub fn narrowed(findings: &Findings, resistor: Spread) -> Spread {
    match lowest_path(findings) {
        // Zero would divide: a short is a hundredth of an ohm at least.
        Some(read) if read.low < resistor.low => {
            Spread { low: read.low.max(0.01), high: resistor.high.min(read.high.max(0.02)) }
        }
        _ => resistor,
    }
}

/// The current that the lowest path alone lets through at the highest supply voltage, mA, where a person
/// would startle at it; nothing below.
pub fn leak_ma(findings: &Findings) -> Option<f64> {
    let read = lowest_path(findings)?;
    let milliamperes = 1000.0 * findings.supply.volts_max / read.low.max(0.01);
    (milliamperes >= STARTLE_MA.value).then_some(milliamperes)
}
