//! The least that each reading of each arrangement can be, worked out once.

use std::collections::HashMap;
use std::sync::OnceLock;

use crate::arrangement::{
    Arrangement, Cord, DirectParts, LineSide, Probe, Reach, ReadingId, all, reading_range,
};

/// By reading, without and with a motor that may lie across the line.
static LEAST: [[OnceLock<Vec<f64>>; 2]; ReadingId::OHMS] =
    [const { [const { OnceLock::new() }; 2] }; ReadingId::OHMS];

/// The least of one reading for each arrangement, in their order, Ω.
pub(super) fn least(reading: ReadingId, motor: bool) -> &'static [f64] {
    let slot = LEAST.get(reading as usize).and_then(|slots| slots.get(usize::from(motor)));
    slot.map_or(&[], |slot| slot.get_or_init(|| work_out(reading, motor)))
}

fn work_out(reading: ReadingId, motor: bool) -> Vec<f64> {
    let parts = DirectParts::as_found(motor, None);
    let mut known: HashMap<Arrangement, f64> = HashMap::new();
    let of = |arrangement: &Arrangement| {
        let alike = alike(arrangement, reading);
        *known.entry(alike).or_insert_with(|| match reading_range(&alike, reading, &parts) {
            Some(range) => range.low,
            None => without_line(reading, &parts),
        })
    };
    all().iter().map(of).collect()
}

/// One arrangement for all that read alike.
pub(super) fn alike(arrangement: &Arrangement, reading: ReadingId) -> Arrangement {
    let Some(line) = arrangement.line else { return *arrangement };
    let cord = match line.cord {
        Cord::TwoPinReversible | Cord::TwoPinPolarised => Cord::TwoPinReversible,
        cord if cord.is_earthed() => Cord::ThreePinEarthed,
        _ => Cord::ThreePinUnearthed,
    };
    let on_part = reading.probes().is_some_and(|(_, place)| place == Probe::Part);
    let reach = if on_part { line.reach } else { Reach::Closed };
    Arrangement { line: Some(LineSide { cord, reach, ..line }), ..*arrangement }
}

/// A unit without a line side may hang on a supply of its own, whose plug is then read: pin to pin says
/// nothing, its earth may be carried through, and nothing else joins a pin to the unit.
fn without_line(reading: ReadingId, parts: &DirectParts) -> f64 {
    match reading.probes() {
        Some((Probe::PinA | Probe::PinB, Probe::Chassis | Probe::Part)) => parts.loose.low,
        _ => 0.0,
    }
}
