//! What may have fooled a meter: hints beside a reading, never a reason to remove anything.

use super::findings::{Findings, Reading};
use crate::arrangement::{Probe, ReadingId};
use crate::fields::id_enum;
use crate::figure::{Figure, Mark, Source};

id_enum! {
    /// What may have fooled the meter.
    pub enum Trap {
        /// The string is still warm and reads several times its cold value.
        WarmString = "warm_string",
        /// A capacitor is charging from the meter, or was not discharged.
        Charging = "charging",
        /// A rectifier lies in the path and reads one way only.
        Diode = "diode",
        /// The meter's own current heats filaments this thin.
        ThinFilaments = "thin_filaments",
        /// Fingers on both probes read about this much.
        Fingers = "fingers",
        /// Leads and probes are part of so low a reading.
        Leads = "leads",
        /// Above a low range is not above all ranges.
        LowRange = "low_range",
        /// One dead tube, fuse or changeover switch opens the whole path.
        BrokenPath = "broken_path",
    }
}

const fn practice(value: f64, unit: &'static str) -> Figure {
    Figure::new(value, unit, Source::TypicalValues, Mark::CommonPractice)
}

/// From here on two dry fingers read the same, Ω.
const FINGERS: Figure = practice(100e3, "Ω");
/// Below this the leads count, Ω.
const LEADS: Figure = practice(2.0, "Ω");
/// From here on a silicon rectifier or a charging capacitor may be what is read, Ω.
const NO_WIRE: Figure = practice(300.0, "Ω");
/// Filaments of this current or less are warmed by a meter, A.
const THIN: Figure = practice(0.05, "A");

/// What may have fooled the meter at this reading, in the order of the list above.
pub fn traps(findings: &Findings, id: ReadingId) -> Vec<Trap> {
    let (Some((pin, place)), Some(reading)) = (id.probes(), findings.readings.get(&id)) else {
        return Vec::new();
    };
    let at_pins = pin != Probe::EarthPin;
    let is_so = |trap: &Trap| match (*trap, *reading) {
        (Trap::WarmString, Reading::Value(ohms)) => at_pins && is_warm(findings, ohms),
        (Trap::Charging | Trap::Diode, Reading::Value(ohms)) => at_pins && ohms >= NO_WIRE.value,
        (Trap::ThinFilaments, Reading::Value(_)) => at_pins && has_thin_filaments(findings),
        (Trap::Fingers, Reading::Value(ohms)) => ohms >= FINGERS.value,
        (Trap::Leads, Reading::Value(ohms)) => ohms <= LEADS.value,
        (Trap::LowRange, Reading::OverRange) => true,
        (Trap::BrokenPath, Reading::OverRange) => place == Probe::PinB,
        _ => false,
    };
    Trap::ALL.iter().copied().filter(is_so).collect()
}

/// More than the listed tubes read cold, but no more than they read hot.
fn is_warm(findings: &Findings, ohms: f64) -> bool {
    let reading = findings.heaters().and_then(|heaters| heaters.plug_reading());
    reading.is_some_and(|reading| {
        let hot = reading.hot_ohm + reading.dropper_ohm.unwrap_or_default();
        ohms > reading.cold.high && ohms <= 1.1 * hot
    })
}

fn has_thin_filaments(findings: &Findings) -> bool {
    let thin = |amperes: f64| amperes <= THIN.value;
    findings.heaters().is_some_and(|heaters| {
        heaters.parts.iter().any(|part| part.rating.amperes.is_some_and(thin))
    })
}
