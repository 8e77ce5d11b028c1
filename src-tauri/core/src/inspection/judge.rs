//! Classes of all arrangements for one supply and one knowledge of the parts, each worked out once.
//!
//! A changed answer needs no new judge. A changed value has the arrangements that contain the part judged
//! anew, a changed supply all. Arrangements that are electrically alike are judged once.

mod memory;

use rustc_hash::{FxHashMap, FxHashSet};

use crate::arrangement::{
    Arrangement, ArrangementId, COUNT, FaultSet, LineSide, Reach, State, all, find, twin,
};
use crate::body::LET_GO_MA;
use crate::hazard::{Class, Exposures, Grid, Level, Parts, Screen, Way, Worst};
use crate::supply::Supply;

use super::findings::Findings;
use super::set::ArrangementSet;
use memory::{keep, remembered};

/// Knows the class of every arrangement it was asked about.
#[derive(Clone, Debug)]
pub struct Judge {
    supply: Supply,
    /// A switch lifts the earth: whatever it puts on the earth conductor when it is closed counts.
    lifts: bool,
    parts: Parts,
    parts_as_read: Parts,
    screen: Screen,
    /// For the best that an arrangement can be, where a reading says more of that than of the worst.
    screen_as_read: Option<Screen>,
    usual_screen: Screen,
    at_highest: Exposures,
    at_nominal: Exposures,
    worst: Vec<Option<Class>>,
    best: Vec<Option<Class>>,
    if_read: Vec<Option<Class>>,
    usual: Vec<Option<Class>>,
    cases: Vec<Option<Worst>>,
    found: Vec<Option<f64>>,
    live_inside: Vec<Option<bool>>,
    /// By the arrangement with its metal in reach.
    earth_leakage: FxHashMap<Arrangement, Option<f64>>,
}

impl Judge {
    /// A judge for these findings' supply and values.
    pub fn of(findings: &Findings) -> Self {
        let parts = findings.parts();
        let judge = Self::with(findings.supply, parts, findings.as_read(&parts));
        Self { lifts: findings.has_earth_lift(), ..judge }
    }

    /// A judge for a supply and parts that no findings name, such as those after a repair.
    pub fn for_parts(supply: Supply, parts: Parts) -> Self {
        Self::with(supply, parts, parts)
    }

    fn with(supply: Supply, parts: Parts, parts_as_read: Parts) -> Self {
        Self {
            supply,
            lifts: false,
            parts,
            parts_as_read,
            screen: Screen::new(&supply, parts),
            screen_as_read: (parts_as_read != parts).then(|| Screen::new(&supply, parts_as_read)),
            usual_screen: Screen::new(&supply, parts_as_read.as_usual()),
            at_highest: Exposures::new(&supply, supply.volts_max, parts),
            at_nominal: Exposures::new(&supply, supply.volts, parts),
            worst: vec![None; COUNT],
            best: vec![None; COUNT],
            if_read: vec![None; COUNT],
            usual: vec![None; COUNT],
            cases: vec![None; COUNT],
            found: vec![None; COUNT],
            live_inside: vec![None; COUNT],
            earth_leakage: FxHashMap::default(),
        }
    }

    /// Whether it judges by the same supply and values as these findings.
    pub fn fits(&self, findings: &Findings) -> bool {
        let parts = findings.parts();
        self.supply == findings.supply
            && self.parts == parts
            && self.parts_as_read == findings.as_read(&parts)
    }

    /// Becomes the judge for these findings, keeping what is known of arrangements that they change nothing of.
    pub fn turn_to(&mut self, findings: &Findings) {
        if !self.fits(findings) {
            *self = self.turned_to(findings);
        }
        self.lifts = findings.has_earth_lift();
    }

    /// A judge for these findings that knows what this one knows of arrangements that they change nothing of.
    fn turned_to(&self, findings: &Findings) -> Self {
        let mut turned = Self::of(findings);
        if self.supply != turned.supply {
            return turned;
        }
        let usual = (self.parts_as_read.as_usual(), turned.parts_as_read.as_usual());
        let at_worst = (self.parts, turned.parts);
        let as_read = (self.parts_as_read, turned.parts_as_read);
        keep(&mut turned.worst, &self.worst, at_worst);
        keep(&mut turned.best, &self.best, as_read);
        keep(&mut turned.if_read, &self.if_read, as_read);
        keep(&mut turned.usual, &self.usual, usual);
        keep(&mut turned.cases, &self.cases, at_worst);
        keep(&mut turned.live_inside, &self.live_inside, at_worst);
        turned
    }

    /// The worst class an arrangement can have: worst end of its values, highest voltage.
    pub fn worst_class(&mut self, id: ArrangementId) -> Class {
        let id = self.in_worse_position(id);
        remembered(&mut self.worst, twin(id), || self.screen.worst_class(id))
    }

    /// The best class it can have: best end of its values, nominal voltage.
    pub fn best_class(&mut self, id: ArrangementId) -> Class {
        let id = self.in_worse_position(id);
        let screen = self.screen_as_read.as_mut().unwrap_or(&mut self.screen);
        remembered(&mut self.best, twin(id), || screen.best_class(id, Level::Nominal))
    }

    /// The class it could be shown to have once its values are read: best end, highest voltage.
    pub fn class_if_read(&mut self, id: ArrangementId) -> Class {
        let id = self.in_worse_position(id);
        let screen = self.screen_as_read.as_mut().unwrap_or(&mut self.screen);
        remembered(&mut self.if_read, twin(id), || screen.best_class(id, Level::Highest))
    }

    /// The class it has with usual values at the nominal voltage, for what is likely.
    pub fn usual_class(&mut self, id: ArrangementId) -> Class {
        let id = self.in_worse_position(id);
        remembered(&mut self.usual, twin(id), || self.usual_screen.best_class(id, Level::Nominal))
    }

    /// What an arrangement is judged as: with its earth lift closed, where there is one and that puts the supply on the
    /// earth conductor.
    fn in_worse_position(&self, id: ArrangementId) -> ArrangementId {
        let closed = || find(&all().get(usize::from(id.0))?.with_lift_closed()?);
        self.lifts.then(closed).flatten().unwrap_or(id)
    }

    /// The worst class over a set.
    pub fn worst_over(&mut self, set: &ArrangementSet) -> Class {
        let mut worst = Class::NoLine;
        for (id, _) in set.iter() {
            worst = worst.worse(self.worst_class(id));
            if worst == Class::Live {
                break;
            }
        }
        worst
    }

    /// The worst class over a set by other findings' values, without turning to them.
    pub fn worst_over_by(&mut self, findings: &Findings, set: &ArrangementSet) -> Class {
        let lifts = std::mem::replace(&mut self.lifts, findings.has_earth_lift());
        let worst = self.worst_over_by_values(findings, set);
        self.lifts = lifts;
        worst
    }

    fn worst_over_by_values(&mut self, findings: &Findings, set: &ArrangementSet) -> Class {
        if self.fits(findings) {
            return self.worst_over(set);
        }
        if self.supply != findings.supply {
            return Self::of(findings).worst_over(set);
        }
        let parts = findings.parts();
        let mut screen = Screen::new(&self.supply, parts);
        let mut judged = FxHashMap::default();
        let mut worst = Class::NoLine;
        for (id, arrangement) in set.iter() {
            let id = self.in_worse_position(id);
            worst = worst.worse(if self.parts.agree_on(&parts, arrangement) {
                self.worst_class(id)
            } else {
                *judged.entry(twin(id)).or_insert_with_key(|id| screen.worst_class(*id))
            });
            if worst == Class::Live {
                break;
            }
        }
        worst
    }

    /// The best class over a set.
    pub fn best_over(&mut self, set: &ArrangementSet) -> Class {
        let mut best = Class::Live;
        for (id, arrangement) in set.iter().filter(|(_, a)| a.line.is_none()).chain(set.iter()) {
            let class =
                if arrangement.line.is_none() { Class::NoLine } else { self.best_class(id) };
            if best.is_worse_than(class) {
                best = class;
            }
            // Units without a line side come first, so nothing after them can be better than two faults.
            if best == Class::NoLine || best == Class::TwoFaults {
                break;
            }
        }
        best
    }

    /// The worst arrangement of a set whose worst class is known, with its worst case.
    pub fn worst_case(
        &mut self,
        set: &ArrangementSet,
        class: Class,
    ) -> Option<(ArrangementId, Worst)> {
        let mut worst: Option<(ArrangementId, Worst)> = None;
        let mut judged = FxHashSet::default();
        for (own, _) in set.iter() {
            let id = self.in_worse_position(own);
            let Some(arrangement) = all().get(usize::from(id.0)) else { continue };
            // As found and live already: only a larger current would be worse, so what cannot carry one is not classed.
            if class == Class::Live
                && let (Some((_, worst)), Some(line)) = (worst, arrangement.line)
                && self.at_highest.ceiling_ma(line.reach) < worst.milliamperes
            {
                continue;
            }
            if self.worst_class(own) != class || !judged.insert(twin(own)) {
                continue;
            }
            let case = self.worst_case_of(id, arrangement);
            if worst.is_none_or(|(_, worst)| case.is_worse_than(&worst)) {
                worst = Some((id, case));
            }
        }
        worst
    }

    fn worst_case_of(&mut self, id: ArrangementId, arrangement: &Arrangement) -> Worst {
        // By itself: the worst case of its twin is the other way round.
        remembered(&mut self.cases, id, || {
            let highest = self.at_highest.worst(arrangement);
            if !is_earthed(arrangement) {
                return highest;
            }
            let nominal = self.at_nominal.worst(arrangement);
            if nominal.is_worse_than(&highest) { nominal } else { highest }
        })
    }

    /// Every state of an arrangement with no fault and with each single one, at the worst voltage of the supply.
    pub fn grid(&mut self, arrangement: &Arrangement) -> Grid {
        let highest = self.at_highest.grid(arrangement);
        // Behind an earth wire less can be worse: the breaker of the higher voltage would have tripped.
        if is_earthed(arrangement) {
            highest.worse(&self.at_nominal.grid(arrangement))
        } else {
            highest
        }
    }

    /// The way of the current in one state with some faults, at the worst voltage of the supply; nothing for a
    /// unit without a line side.
    pub fn way(
        &mut self,
        arrangement: &Arrangement,
        state: State,
        faults: FaultSet,
    ) -> Option<Way> {
        let highest = self.at_highest.way(arrangement, state, faults)?;
        if !is_earthed(arrangement) {
            return Some(highest);
        }
        let nominal = self.at_nominal.way(arrangement, state, faults)?;
        let worse = highest.outcome.worse(nominal.outcome);
        Some(if worse == highest.outcome { highest } else { nominal })
    }

    /// The class of an arrangement that has these faults already.
    pub fn class_with(&mut self, arrangement: &Arrangement, faults: FaultSet) -> Class {
        let highest = self.at_highest.class_with(arrangement, faults);
        if is_earthed(arrangement) {
            highest.worse(self.at_nominal.class_with(arrangement, faults))
        } else {
            highest
        }
    }

    /// The largest current with no fault over the arrangements of a class in a set, mA rms.
    pub fn leak_over(&mut self, set: &ArrangementSet, class: Class) -> f64 {
        let mut largest: f64 = 0.0;
        let mut judged = FxHashSet::default();
        for (id, arrangement) in set.iter() {
            if self.worst_class(id) == class && judged.insert(twin(id)) {
                largest = largest.max(self.at_highest.as_found_ma(arrangement));
            }
        }
        largest
    }

    /// The largest current with no fault over a set, mA rms.
    pub fn as_found_over(&mut self, set: &ArrangementSet) -> f64 {
        if let Some(largest) = self.live_as_found_over(set) {
            return largest;
        }
        let mut judged = FxHashSet::default();
        let mut largest: f64 = 0.0;
        for (id, arrangement) in set.iter().filter(|(id, _)| judged.insert(twin(*id))) {
            largest = largest.max(self.as_found_ma(id, arrangement));
        }
        largest
    }

    /// The same where something of the set is live as found: its worst case then, for all that is not live carries
    /// less than what makes it so.
    fn live_as_found_over(&mut self, set: &ArrangementSet) -> Option<f64> {
        // A lift that is judged as closed is not how it was found.
        let may_be = !self.lifts && self.worst_over(set) == Class::Live;
        let (_, worst) = may_be.then(|| self.worst_case(set, Class::Live)).flatten()?;
        let is_live = worst.class == Class::Live && worst.milliamperes >= LET_GO_MA.value;
        is_live.then_some(worst.milliamperes)
    }

    fn as_found_ma(&mut self, id: ArrangementId, arrangement: &Arrangement) -> f64 {
        remembered(&mut self.found, twin(id), || {
            let highest = self.at_highest.as_found_ma(arrangement);
            // Behind an earth wire the breaker of the higher voltage may have tripped.
            if is_earthed(arrangement) {
                highest.max(self.at_nominal.as_found_ma(arrangement))
            } else {
                highest
            }
        })
    }

    /// The sets of so many faults, one or two, each of which makes one of those live that are the worst of a set.
    pub fn live_sets_over(&mut self, set: &ArrangementSet, faults: u8) -> Vec<FaultSet> {
        let class = self.worst_over(set);
        let mut sets: Vec<FaultSet> = Vec::new();
        let mut judged = FxHashSet::default();
        for (id, arrangement) in set.iter().filter(|(_, arrangement)| arrangement.line.is_some()) {
            if self.worst_class(id) == class && judged.insert(twin(id)) {
                self.at_highest.add_live_sets(arrangement, faults, &mut sets);
                if is_earthed(arrangement) {
                    self.at_nominal.add_live_sets(arrangement, faults, &mut sets);
                }
            }
        }
        sets
    }

    /// Whether an arrangement of a set is live once a barrier is lost.
    pub fn is_live_inside(&mut self, set: &ArrangementSet) -> bool {
        set.iter().any(|(id, arrangement)| {
            remembered(&mut self.live_inside, id, || self.at_highest.is_live_inside(arrangement))
        })
    }

    /// The worst current that an earth conductor carries away over a set, mA rms; nothing where no
    /// cord is earthed. It does not depend on the reach, so each reach's twins are asked once.
    pub fn earth_leakage_ma(&mut self, set: &ArrangementSet) -> Option<f64> {
        let earthed = set.iter().filter(|(_, arrangement)| is_earthed(arrangement));
        let leaks = earthed.filter_map(|(_, arrangement)| {
            let exposed = exposed(arrangement);
            let at_highest = &mut self.at_highest;
            let work_out = || at_highest.earth_leakage_ma(&exposed);
            *self.earth_leakage.entry(exposed).or_insert_with(work_out)
        });
        leaks.reduce(f64::max)
    }
}

/// The same arrangement with its metal in reach.
fn exposed(arrangement: &Arrangement) -> Arrangement {
    let line = arrangement.line.map(|line| LineSide { reach: Reach::Exposed, ..line });
    Arrangement { line, ..*arrangement }
}

fn is_earthed(arrangement: &Arrangement) -> bool {
    arrangement.line.is_some_and(|line| line.cord.is_earthed())
}

#[cfg(test)]
mod tests;
