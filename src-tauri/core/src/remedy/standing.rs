//! Where a unit stands: its class, its margin, the worst touch current, and the faults that remain.

use super::device::Cut;
use super::setup::Setup;
use crate::arrangement::{ArrangementId, FaultSet, all};
use crate::hazard::{Class, Grid, Parts, Worst};
use crate::inspection::Judge;
use crate::supply::{Feed, Supply};

/// Where a unit stands, over everything that it may be.
#[derive(Clone, Debug, PartialEq)]
pub struct Standing {
    /// The class.
    pub class: Class,
    /// The worst case: margin, current, state and faults.
    pub worst: Worst,
    /// What it is the worst case of; nothing where the unit has no line side.
    pub of: Option<ArrangementId>,
    /// The largest current with no fault, mA rms.
    pub as_found_ma: f64,
    /// The smallest sets of faults that make it live, of everything with that class that it may be; none where it is
    /// live as found, or where not even two do.
    pub remaining: Vec<FaultSet>,
    /// Whether powering it would put the supply on the earth wire.
    pub line_on_earth: bool,
    /// What the device in the outlet makes of the worst current.
    pub cut: Option<Cut>,
}

/// Class and current with no fault alone: what a search compares.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Brief {
    /// The class.
    pub class: Class,
    /// The largest current with no fault, mA rms.
    pub as_found_ma: f64,
}

/// How much more a current with no fault has to be to be called worse: a share, and mA rms.
const WORSE_SHARE: f64 = 0.01;
const WORSE_MA: f64 = 0.001;

impl Brief {
    /// Whether this is worse than what was before: a worse class, or more current with no fault.
    pub fn is_worse_than(&self, before: &Self) -> bool {
        self.class.is_worse_than(before.class)
            || self.as_found_ma > before.as_found_ma * (1.0 + WORSE_SHARE) + WORSE_MA
    }

    /// Whether it takes two faults at least.
    pub fn is_two_faults(&self) -> bool {
        matches!(self.class, Class::TwoFaults | Class::NoLine)
    }
}

impl Standing {
    /// The largest current that is quoted, mA rms: of the worst case, and never less than what flows with no fault.
    pub fn worst_ma(&self) -> f64 {
        self.worst.milliamperes.max(self.as_found_ma)
    }

    /// Class and current with no fault.
    pub const fn brief(&self) -> Brief {
        Brief { class: self.class, as_found_ma: self.as_found_ma }
    }
}

/// Judges setups, and remembers what it worked out for each supply and each knowledge of the parts.
#[derive(Default)]
pub struct Bench {
    judges: Vec<(Supply, Parts, Judge)>,
}

/// How many supplies and knowledges of parts are remembered: those of a search, and of the feeds beside them.
const MOST_JUDGES: usize = 12;

impl Bench {
    /// The judge for a supply and parts.
    fn judge(&mut self, supply: Supply, parts: Parts) -> &mut Judge {
        let known = self.judges.iter().position(|(s, p, _)| *s == supply && *p == parts);
        let place = known.unwrap_or_else(|| {
            // Each remembers thousands of networks: the oldest makes room.
            if self.judges.len() >= MOST_JUDGES {
                self.judges.remove(0);
            }
            self.judges.push((supply, parts, Judge::for_parts(supply, parts)));
            self.judges.len() - 1
        });
        let place = place.min(self.judges.len() - 1);
        #[expect(clippy::indexing_slicing, reason = "one was pushed where there was none")]
        &mut self.judges[place].2
    }

    /// Class and current with no fault, over everything that the unit may be.
    pub fn brief(&mut self, setup: &Setup) -> Brief {
        let judge = self.judge(setup.supply, setup.parts);
        let class = judge.worst_over(&setup.set);
        Brief { class, as_found_ma: judge.as_found_over(&setup.set) }
    }

    /// All of it.
    pub fn stand(&mut self, setup: &Setup) -> Standing {
        let Brief { class, as_found_ma } = self.brief(setup);
        let judge = self.judge(setup.supply, setup.parts);
        let case = judge.worst_case(&setup.set, class);
        let (of, worst) = case.map_or((None, Worst::NO_LINE), |(id, worst)| (Some(id), worst));
        let arrangement = of.and_then(|id| all().get(usize::from(id.0)));
        let remaining = match worst.margin {
            margin @ 1..=2 if class != Class::NoLine => judge.live_sets_over(&setup.set, margin),
            _ => Vec::new(),
        };
        let cut = arrangement.zip(setup.device).map(|(arrangement, device)| {
            let feed = setup.supply.feed;
            device.cut(arrangement.isolation, feed, worst.milliamperes, worst.faults)
        });
        let line_on_earth = setup.set.iter().any(|(_, a)| a.is_line_on_earth());
        Standing { class, worst, of, as_found_ma, remaining, line_on_earth, cut }
    }

    /// Whether it is live as found straight at an outlet, whatever stands in front of it now: then nothing is measured
    /// with the plug in.
    pub fn is_live_straight(&mut self, setup: &Setup) -> bool {
        let feed = match setup.supply.feed {
            Feed::Isolated => Feed::Direct,
            feed => feed,
        };
        let straight = Setup { supply: setup.supply.fed_by(feed), ..setup.clone() };
        self.brief(&straight).class == Class::Live
    }

    /// Every state with each single fault, of the arrangement that a standing is of.
    pub fn grid(&mut self, setup: &Setup, standing: &Standing) -> Option<Grid> {
        let arrangement = all().get(usize::from(standing.of?.0))?;
        let judge = self.judge(setup.supply, setup.parts);
        arrangement.line.map(|_| judge.grid(arrangement))
    }

    /// The judge for a setup, for whoever asks about single states.
    pub fn judge_of(&mut self, setup: &Setup) -> &mut Judge {
        self.judge(setup.supply, setup.parts)
    }
}
