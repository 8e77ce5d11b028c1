//! Supplies to choose from, with the highest voltage their own standard or practice allows.

use super::{Feed, Supply};
use crate::figure::{Mark, Source};

/// A supply by name.
#[derive(Clone, Copy, Debug)]
pub struct Preset {
    /// The id; the message `preset-<id>` names it for a person.
    pub id: &'static str,
    /// An outlet of today gives it; else it stands on old rating plates only, and its highest voltage is
    /// lower than what is behind the outlets there now.
    pub of_outlet: bool,
    /// The supply.
    pub supply: Supply,
    /// Where its highest voltage comes from.
    pub source: Source,
    /// How far that was checked.
    pub mark: Mark,
}

const fn preset(
    id: &'static str,
    volts: f64,
    volts_max: f64,
    hertz: f64,
    source: Source,
    mark: Mark,
) -> Preset {
    let supply = Supply { volts, hertz, volts_max, feed: Feed::Direct, input_volts: None };
    Preset { id, of_outlet: true, supply, source, mark }
}

const fn of_plates(preset: Preset) -> Preset {
    Preset { of_outlet: false, ..preset }
}

/// All presets: today's supplies first, then those printed on old rating plates.
pub const PRESETS: [Preset; 8] = [
    // Service range B, the wider one.
    preset("120v_60hz", 120.0, 127.0, 60.0, Source::AnsiC84_1, Mark::MemoryHigh),
    preset("230v_50hz", 230.0, 253.0, 50.0, Source::Iec60038, Mark::Verified),
    preset("240v_50hz", 240.0, 254.4, 50.0, Source::Iec60038, Mark::Verified),
    preset("100v_50hz", 100.0, 107.0, 50.0, Source::Iec60038, Mark::MemoryHigh),
    preset("100v_60hz", 100.0, 107.0, 60.0, Source::Iec60038, Mark::MemoryHigh),
    // Plates of the 1930s to the 1960s, with the range of their time.
    of_plates(preset("110v_60hz", 110.0, 125.0, 60.0, Source::TypicalValues, Mark::MemoryMedium)),
    of_plates(preset("115v_60hz", 115.0, 125.0, 60.0, Source::TypicalValues, Mark::MemoryMedium)),
    of_plates(preset("117v_60hz", 117.0, 125.0, 60.0, Source::TypicalValues, Mark::MemoryMedium)),
];
