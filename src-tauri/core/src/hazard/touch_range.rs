//! What a live touch test was to read over several arrangements and the whole range of their parts.

use rustc_hash::FxHashMap;

use crate::arrangement::{Arrangement, FaultSet, Spread, Switch, Wiring, states, touched};
use crate::body::TOUCH_LIMIT_VOLTS;
use crate::supply::Supply;

use super::exposure::Parts;
use super::touch_test::{TouchReading, in_wiring};

/// What the test was to read with the switch in one position, whichever way round the plug is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TouchRange {
    /// Across the network, V rms.
    pub volts: Spread,
    /// On a meter of 10 MΩ without the network, V rms.
    pub alone: Spread,
    /// The most of that on metal that keeps the limit across the network: a ghost, V rms.
    pub ghost_volts: f64,
}

impl TouchRange {
    /// The range of one reading, up to `more` times its voltage.
    fn of(read: &TouchReading, more: f64) -> Self {
        let up = |volts: f64| Spread { low: volts, high: volts * more };
        let is_ghost = read.volts * more <= TOUCH_LIMIT_VOLTS.value;
        let ghost_volts = if is_ghost { read.ghost_volts * more } else { 0.0 };
        Self { volts: up(read.volts), alone: up(read.ghost_volts), ghost_volts }
    }

    /// The range of both.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        let join =
            |a: Spread, b: Spread| Spread { low: a.low.min(b.low), high: a.high.max(b.high) };
        Self {
            volts: join(self.volts, other.volts),
            alone: join(self.alone, other.alone),
            ghost_volts: self.ghost_volts.max(other.ghost_volts),
        }
    }
}

/// What the test was to read over several arrangements.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TouchRanges {
    /// With the switch on; nothing where no metal can be touched.
    pub on: Option<TouchRange>,
    /// With the switch off.
    pub off: Option<TouchRange>,
    /// The least that the highest reading of all positions can be, V rms: with each of them read, less than that
    /// is a fault of the test.
    pub least_most: f64,
}

/// The ranges from the nominal to the highest voltage and from end to end of what is known of the parts.
/// Networks are taken as they are found, without a fault.
pub fn touch_ranges<'a>(
    arrangements: impl Iterator<Item = &'a Arrangement>,
    supply: &Supply,
    parts: &Parts,
) -> TouchRanges {
    let contacts = supply.contacts(supply.volts);
    let more = supply.volts_max / supply.volts;
    let mut known: FxHashMap<_, Option<TouchRange>> = FxHashMap::default();
    let mut ranges = TouchRanges { on: None, off: None, least_most: f64::INFINITY };
    for arrangement in arrangements {
        let Some(line) = arrangement.line else { continue };
        let what = touched(&line, FaultSet::NONE);
        for corner in parts.corners(arrangement) {
            let values = parts.values_at(corner, line.line_capacitor_class);
            let mut most = 0.0_f64;
            for state in states(arrangement, supply.feed) {
                let Some(wiring) = Wiring::of(arrangement, state, FaultSet::NONE) else { continue };
                let read = *known.entry((wiring.bits(), what, corner)).or_insert_with(|| {
                    // The network is linear: what it reads rises with the voltage alone.
                    in_wiring(wiring, what, state, &values, supply.hertz, contacts)
                        .map(|read| TouchRange::of(&read, more))
                        .reduce(TouchRange::and)
                });
                let Some(read) = read else { continue };
                most = most.max(read.volts.high / more);
                let range =
                    if state.switch == Switch::On { &mut ranges.on } else { &mut ranges.off };
                *range = Some(range.map_or(read, |known| known.and(read)));
            }
            ranges.least_most = ranges.least_most.min(most);
        }
    }
    if ranges.least_most.is_infinite() {
        ranges.least_most = 0.0;
    }
    ranges
}

#[cfg(test)]
mod tests {
    use proptest::prelude::{prop_assert, proptest};

    use super::super::{Parts, touch_test};
    use super::touch_ranges;
    use crate::arrangement::{Spread, Switch, Values, all};
    use crate::supply::{Feed, Supply};

    fn supply() -> Supply {
        Supply {
            volts: 120.0,
            hertz: 60.0,
            volts_max: 132.0,
            feed: Feed::Direct,
            input_volts: None,
        }
    }

    proptest! {
        /// The test worked out for one set of values lies in the range, for any values between the ends: the
        /// ends of the parts are the ends of what is read, to a thousandth of a volt.
        #[test]
        fn any_values_between_the_ends_read_within_the_range(
            which in 1..6944_usize, share in proptest::array::uniform5(0.0_f64..1.0), more in 1.0_f64..1.1,
        ) {
            let arrangement = &all()[which];
            let parts = Parts::default();
            let between = |spread: Spread, at: usize| spread.low + share[at] * (spread.high - spread.low);
            let class = arrangement.line.unwrap().line_capacitor_class;
            let capacitor = match class {
                crate::arrangement::LineCapacitorClass::Ordinary => Spread::LINE_CAPACITOR,
                crate::arrangement::LineCapacitorClass::ClassY => Spread::CLASS_Y,
            };
            let values = Values {
                line_capacitor_farad: Some(between(capacitor, 0)),
                network_ohm: between(parts.network_ohm, 1),
                network_farad: between(parts.network_farad, 2),
                aerial_farad: between(parts.aerial, 3),
                winding_farad: between(parts.winding, 4),
                ..Values::default()
            };
            let ranges = touch_ranges(std::iter::once(arrangement), &supply(), &parts);
            let mut most = 0.0_f64;
            for read in touch_test(arrangement, &supply(), 120.0 * more, &values) {
                let is_on = read.state.switch == Switch::On;
                let range = if is_on { ranges.on } else { ranges.off }.unwrap();
                most = most.max(read.volts);
                let slack = 1e-3 + 0.02 * read.volts;
                prop_assert!(read.volts >= range.volts.low - slack, "{read:?} {range:?}");
                prop_assert!(read.volts <= range.volts.high + slack, "{read:?} {range:?}");
            }
            prop_assert!(most >= ranges.least_most * 0.98 - 1e-3, "{most} {ranges:?}");
        }
    }
}
