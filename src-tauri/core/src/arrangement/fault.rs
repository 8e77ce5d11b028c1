//! Single failures, and the sets of up to two that are computed.

use super::factors::{Arrangement, Isolation, LineCapacitor, LineCapacitorClass, LineSide, Reach};
use crate::fields::id_enum;
use crate::supply::Feed;

id_enum! {
    /// One failure.
    pub enum Fault {
        /// A knob, the back or a cover is off: the chassis can be touched.
        LostBarrier = "lost_barrier",
        /// The conductor of the far leg lies on the chassis, ahead of the switch.
        StrayFar = "stray_far",
        /// The conductor of the near leg lies on the chassis, ahead of the switch.
        StrayNear = "stray_near",
        /// The line capacitor on the near leg is shorted.
        NearCapacitorShorted = "near_capacitor_shorted",
        /// The line capacitor on the far leg is shorted.
        FarCapacitorShorted = "far_capacitor_shorted",
        /// The line capacitor on the selector is shorted.
        SelectorCapacitorShorted = "selector_capacitor_shorted",
        /// The capacitor between common and chassis is shorted.
        NetworkCapacitorShorted = "network_capacitor_shorted",
        /// The capacitor to the aerial terminal is shorted.
        AerialCapacitorShorted = "aerial_capacitor_shorted",
        /// Insulation between line and chassis has broken down.
        InsulationBreakdown = "insulation_breakdown",
        /// The bond to earth is open.
        EarthOpen = "earth_open",
        /// Hot and neutral are swapped at the outlet.
        OutletReversed = "outlet_reversed",
        /// The supply's neutral is cut, and other loads pull it towards hot.
        NeutralOpen = "neutral_open",
        /// Behind an isolating transformer, one of its output conductors has come to earth.
        FeedEarthed = "feed_earthed",
    }
}

impl Fault {
    const fn bit(self) -> u16 {
        1 << self as u16
    }

    /// Whether the fault can happen to this arrangement on this feed.
    pub fn exists(self, arrangement: &Arrangement, feed: Feed) -> bool {
        let Some(line) = arrangement.line else {
            return false;
        };
        let isolation = arrangement.isolation;
        match self {
            Self::LostBarrier => matches!(line.reach, Reach::Closed | Reach::AerialTerminal),
            Self::StrayFar | Self::StrayNear => true,
            Self::NearCapacitorShorted => ordinary_on(&line, LineCapacitor::NearLeg),
            Self::FarCapacitorShorted => ordinary_on(&line, LineCapacitor::FarLeg),
            Self::SelectorCapacitorShorted => {
                line.line_capacitor == LineCapacitor::Selector && is_ordinary(&line)
            }
            Self::NetworkCapacitorShorted => isolation == Isolation::LineFloated,
            Self::AerialCapacitorShorted => line.reach == Reach::AerialTerminal,
            Self::InsulationBreakdown => {
                matches!(isolation, Isolation::Isolating | Isolation::LineInsulated)
            }
            Self::EarthOpen => line.cord.is_earthed(),
            // Without a neutral of its own an outlet has no wrong way round: both are states there.
            Self::OutletReversed => !line.cord.is_reversible() && feed.has_fixed_neutral(),
            Self::NeutralOpen => feed == Feed::Direct,
            Self::FeedEarthed => feed == Feed::Isolated,
        }
    }
}

fn is_ordinary(line: &LineSide) -> bool {
    line.line_capacitor_class == LineCapacitorClass::Ordinary
}

/// Class Y does not short as a single fault, so only an ordinary capacitor counts.
fn ordinary_on(line: &LineSide, leg: LineCapacitor) -> bool {
    (line.line_capacitor == leg || line.line_capacitor == LineCapacitor::BothLegs)
        && is_ordinary(line)
}

/// A set of faults.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct FaultSet(u16);

impl FaultSet {
    /// No fault: as found.
    pub const NONE: Self = Self(0);

    /// A set of the given faults.
    pub fn of(faults: &[Fault]) -> Self {
        Self(faults.iter().fold(0, |bits, fault| bits | fault.bit()))
    }

    /// Whether the set has this fault.
    pub const fn has(self, fault: Fault) -> bool {
        self.0 & fault.bit() != 0
    }

    /// The set with one more fault.
    #[must_use]
    pub const fn with(self, fault: Fault) -> Self {
        Self(self.0 | fault.bit())
    }

    /// How many faults.
    pub const fn len(self) -> usize {
        self.0.count_ones() as usize
    }

    /// Whether it is as found.
    pub const fn is_empty(self) -> bool {
        self.0 == 0
    }

    /// The faults, in the order of the design.
    pub fn faults(self) -> impl Iterator<Item = Fault> {
        Fault::ALL.iter().copied().filter(move |fault| self.has(*fault))
    }
}

/// The existing sets of none, one and two faults: none first, then by size, each in the design's order.
pub fn fault_sets(arrangement: &Arrangement, feed: Feed) -> Vec<FaultSet> {
    let existing: Vec<Fault> =
        Fault::ALL.iter().copied().filter(|fault| fault.exists(arrangement, feed)).collect();
    let mut sets = vec![FaultSet::NONE];
    sets.extend(existing.iter().map(|&fault| FaultSet::NONE.with(fault)));
    for (place, &first) in existing.iter().enumerate() {
        let later = existing.iter().skip(place + 1);
        sets.extend(later.map(|&second| FaultSet::NONE.with(first).with(second)));
    }
    sets
}
