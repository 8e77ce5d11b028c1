//! What has to be solved to class each arrangement, worked out once for all supplies.
//!
//! Many arrangements, states and faults share one network. Each distinct one has a place of its own
//! in the memory of a [`Screen`](super::Screen); what is touched of it is a [`Probe`]. An arrangement
//! is two lists of probes, as found and with each single fault.

use std::ops::Range;
use std::sync::LazyLock;

use rustc_hash::FxHashMap;

use crate::arrangement::{
    Arrangement, ArrangementId, Fault, FaultSet, LineSide, Touched, Wiring, all, states, touched,
    twin,
};
use crate::supply::Feed;

use super::exposure::{Corner, relevant_to};

/// One network with what is touched of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) struct Probe {
    /// The network, its aerial capacitor sound.
    pub wiring: Wiring,
    /// What is touched.
    pub touched: Touched,
    /// Whether the aerial capacitor is shorted.
    pub aerial_shorted: bool,
    /// The parts whose ends make a difference to the network.
    relevant: u8,
    /// Its network's first place in the memory, which has one for each of its corners.
    place: usize,
}

impl Probe {
    /// Its network's place in the memory at a corner.
    pub fn place_at(&self, corner: Corner) -> usize {
        self.place + corner.packed(self.relevant)
    }
}

/// The probes of one arrangement.
#[derive(Clone, Debug, Default)]
pub(super) struct Lists {
    /// As found, a probe for each state.
    pub found: Range<usize>,
    /// With each single fault that can matter.
    pub single: Range<usize>,
}

/// All probes of a feed.
pub(super) struct Plan {
    probes: Vec<Probe>,
    order: Vec<u32>,
    lists: Vec<Lists>,
    places: usize,
    feed: Feed,
}

impl Plan {
    /// The plan of a feed.
    pub fn of(feed: Feed) -> &'static Self {
        static DIRECT: LazyLock<Plan> = LazyLock::new(|| Plan::build(Feed::Direct));
        static BOTH_HOT: LazyLock<Plan> = LazyLock::new(|| Plan::build(Feed::BothHot));
        static ISOLATED: LazyLock<Plan> = LazyLock::new(|| Plan::build(Feed::Isolated));
        static STEP_DOWN: LazyLock<Plan> = LazyLock::new(|| Plan::build(Feed::StepDownAuto));
        match feed {
            Feed::Direct => &DIRECT,
            Feed::BothHot => &BOTH_HOT,
            Feed::Isolated => &ISOLATED,
            Feed::StepDownAuto => &STEP_DOWN,
        }
    }

    /// How many places the memory needs.
    pub const fn places(&self) -> usize {
        self.places
    }

    /// The lists of an arrangement.
    pub fn lists(&self, id: ArrangementId) -> Lists {
        self.lists.get(usize::from(twin(id).0)).cloned().unwrap_or_default()
    }

    /// The probes of a list.
    pub fn probes(&self, list: &Range<usize>) -> impl Iterator<Item = &Probe> {
        let order = self.order.get(list.clone()).unwrap_or_default();
        order.iter().filter_map(|place| self.probes.get(*place as usize))
    }

    fn build(feed: Feed) -> Self {
        let (probes, order, lists) = (Vec::new(), Vec::new(), Vec::new());
        let mut plan = Self { probes, order, lists, places: 0, feed };
        let mut known = Known::default();
        for (id, arrangement) in (0u16..).map(ArrangementId).zip(all()) {
            let lists = if twin(id) == id {
                plan.add(arrangement, feed, &mut known)
            } else {
                Lists::default()
            };
            plan.lists.push(lists);
        }
        plan
    }

    fn add(&mut self, arrangement: &Arrangement, feed: Feed, known: &mut Known) -> Lists {
        let Some(line) = arrangement.line else { return Lists::default() };
        let single: Vec<FaultSet> = Fault::ALL
            .iter()
            .filter(|fault| fault.exists(arrangement, feed))
            .map(|fault| FaultSet::NONE.with(*fault))
            .collect();
        let found = self.add_sets(arrangement, &line, &[FaultSet::NONE], known);
        Lists { found, single: self.add_sets(arrangement, &line, &single, known) }
    }

    fn add_sets(
        &mut self,
        arrangement: &Arrangement,
        line: &LineSide,
        sets: &[FaultSet],
        known: &mut Known,
    ) -> Range<usize> {
        let start = self.order.len();
        for state in states(arrangement, self.feed) {
            for &faults in sets {
                let touched = touched(line, faults);
                // Behind a barrier nobody is in a circuit, earthed or not.
                if touched == Touched::Nothing {
                    continue;
                }
                if let Some(wiring) = Wiring::of(arrangement, state, faults) {
                    let probe = self.probe(wiring, touched, known);
                    if !self.order.get(start..).unwrap_or_default().contains(&probe) {
                        self.order.push(probe);
                    }
                }
            }
        }
        start..self.order.len()
    }

    fn probe(&mut self, wiring: Wiring, touched: Touched, known: &mut Known) -> u32 {
        let aerial_shorted = wiring.is_aerial_shorted();
        let wiring = wiring.with_sound_aerial();
        let relevant = relevant_to(wiring);
        let place = *known.places.entry(wiring).or_insert_with(|| {
            let place = self.places;
            self.places += 1 << relevant.count_ones();
            place
        });
        let probe = Probe { wiring, touched, aerial_shorted, relevant, place };
        *known.probes.entry(probe).or_insert_with(|| {
            self.probes.push(probe);
            self.probes.len() as u32 - 1
        })
    }
}

/// What has a place already.
#[derive(Default)]
struct Known {
    places: FxHashMap<Wiring, usize>,
    probes: FxHashMap<Probe, u32>,
}
