//! Classes of all arrangements for one supply and one knowledge of the parts, each worked out once.
//!
//! A changed answer needs no new judge. A changed value has the arrangements that contain the part judged
//! anew, a changed supply all. Arrangements that are electrically alike are judged once.

use rustc_hash::{FxHashMap, FxHashSet};

use crate::arrangement::{
    Arrangement, ArrangementId, COUNT, FaultSet, LineSide, Reach, State, all, find, twin,
};
use crate::hazard::{Class, Exposures, Grid, Level, Parts, Screen, Way, Worst};
use crate::supply::Supply;

use super::findings::Findings;
use super::set::ArrangementSet;

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
    live_inside: Vec<Option<bool>>,
    /// By the arrangement with its metal in reach.
    earth_leakage: FxHashMap<Arrangement, Option<f64>>,
}

impl Judge {
    /// A judge for these findings' supply and values.
    pub fn of(findings: &Findings) -> Self {
        let (supply, parts) = (findings.supply, findings.parts());
        let parts_as_read = findings.as_read(&parts);
        Self {
            supply,
            lifts: findings.has_earth_lift(),
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
        if self.is_live_by_lift(id) {
            return Class::Live;
        }
        remembered(&mut self.worst, twin(id), || self.screen.worst_class(id))
    }

    /// The best class it can have: best end of its values, nominal voltage.
    pub fn best_class(&mut self, id: ArrangementId) -> Class {
        if self.is_live_by_lift(id) {
            return Class::Live;
        }
        let screen = self.screen_as_read.as_mut().unwrap_or(&mut self.screen);
        remembered(&mut self.best, twin(id), || screen.best_class(id, Level::Nominal))
    }

    /// The class it could be shown to have once its values are read: best end, highest voltage.
    pub fn class_if_read(&mut self, id: ArrangementId) -> Class {
        if self.is_live_by_lift(id) {
            return Class::Live;
        }
        let screen = self.screen_as_read.as_mut().unwrap_or(&mut self.screen);
        remembered(&mut self.if_read, twin(id), || screen.best_class(id, Level::Highest))
    }

    /// The class it has with usual values at the nominal voltage, for what is likely.
    pub fn usual_class(&mut self, id: ArrangementId) -> Class {
        if self.is_live_by_lift(id) {
            return Class::Live;
        }
        remembered(&mut self.usual, twin(id), || self.usual_screen.best_class(id, Level::Nominal))
    }

    /// Whether closing its earth lift puts the supply on the earth conductor, which is live by definition.
    fn is_live_by_lift(&self, id: ArrangementId) -> bool {
        self.lifts && all().get(usize::from(id.0)).is_some_and(|a| a.with_lift_closed().is_some())
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
            let by_lift = self.is_live_by_lift(id);
            worst = worst.worse(if by_lift || self.parts.agree_on(&parts, arrangement) {
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
        for (id, arrangement) in set.iter() {
            if self.worst_class(id) != class || !judged.insert(twin(id)) {
                continue;
            }
            let (id, arrangement) = self.with_lift(id, arrangement);
            // As found and live already: only a larger current would be worse.
            if class == Class::Live
                && let (Some((_, worst)), Some(line)) = (worst, arrangement.line)
                && self.at_highest.ceiling_ma(line.reach) < worst.milliamperes
            {
                continue;
            }
            let case = self.worst_case_of(id, arrangement);
            if worst.is_none_or(|(_, worst)| case.is_worse_than(&worst)) {
                worst = Some((id, case));
            }
        }
        worst
    }

    /// What an arrangement is when its earth lift is closed, where that is the worse position.
    fn with_lift<'a>(
        &self,
        id: ArrangementId,
        arrangement: &'a Arrangement,
    ) -> (ArrangementId, &'a Arrangement)
    where
        'static: 'a,
    {
        let closed = arrangement.with_lift_closed().filter(|_| self.lifts);
        let closed = closed.and_then(|closed| find(&closed));
        let of =
            |id: ArrangementId| all().get(usize::from(id.0)).map(|arrangement| (id, arrangement));
        closed.and_then(of).unwrap_or((id, arrangement))
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

/// Takes over what was known of the arrangements that two knowledges of the parts judge alike.
fn keep<T: Copy>(memory: &mut [Option<T>], known: &[Option<T>], (then, now): (Parts, Parts)) {
    for ((slot, known), arrangement) in memory.iter_mut().zip(known).zip(all()) {
        if known.is_some() && then.agree_on(&now, arrangement) {
            *slot = *known;
        }
    }
}

fn remembered<T: Copy>(
    memory: &mut [Option<T>],
    id: ArrangementId,
    work_out: impl FnOnce() -> T,
) -> T {
    let slot = memory.get_mut(usize::from(id.0));
    if let Some(Some(known)) = slot {
        return *known;
    }
    let found = work_out();
    if let Some(slot) = slot {
        *slot = Some(found);
    }
    found
}

#[cfg(test)]
mod tests {
    use super::{ArrangementSet, Judge};
    use crate::arrangement::{ArrangementId, ReadingId, all};
    use crate::inspection::{Access, Findings, PartValue, Reading, ValueId};
    use crate::supply::Supply;

    #[test]
    fn a_judge_that_turned_to_other_values_judges_as_a_new_one_does() {
        let mut findings = Findings::new(Supply::new(120.0, 60.0));
        findings.access = Access::ALL.iter().copied().collect();
        let mut turned = Judge::of(&findings);
        let changes: [fn(&mut Findings); 7] = [
            |f| value(f, ValueId::LineCapacitor, 2.2e-9),
            |f| value(f, ValueId::NetworkResistor, 470e3),
            |f| value(f, ValueId::AerialCapacitor, 1e-9),
            |f| value(f, ValueId::NetworkCapacitor, 0.25e-6),
            |f| f.tubes = vec!["12SA7".to_owned(), "50L6GT".to_owned()],
            |f| reading(f, ReadingId::OhmsAChassisOn, 90e3),
            |f| f.values.retain(|value, _| *value != ValueId::LineCapacitor),
        ];
        for (turn, change) in changes.into_iter().enumerate() {
            // A part of what is known before each turn, another part after it.
            for id in (turn..all().len()).step_by(5) {
                everything(&mut turned, ArrangementId(id as u16));
            }
            change(&mut findings);
            turned.turn_to(&findings);
            let mut anew = Judge::of(&findings);
            for id in (turn..all().len()).step_by(3) {
                let id = ArrangementId(id as u16);
                assert_eq!(
                    everything(&mut turned, id),
                    everything(&mut anew, id),
                    "{turn}, {id:?}"
                );
            }
        }
    }

    #[test]
    fn a_judge_says_what_one_of_other_values_would() {
        let mut findings = Findings::new(Supply::new(120.0, 60.0));
        value(&mut findings, ValueId::LineCapacitor, 1e-9);
        value(&mut findings, ValueId::NetworkCapacitor, 1e-9);
        let mut judge = Judge::of(&findings);
        let mut differ = 0;
        for of in [ValueId::LineCapacitor, ValueId::NetworkCapacitor] {
            let mut other = findings.clone();
            other.values.remove(&of);
            for (place, arrangement) in all().iter().enumerate().step_by(7) {
                let set = ArrangementSet::of(|a| a == arrangement);
                let by_other = judge.worst_over_by(&other, &set);
                let id = ArrangementId(place as u16);
                assert_eq!(by_other, Judge::of(&other).worst_class(id), "{arrangement:?}");
                differ += usize::from(by_other != judge.worst_class(id));
            }
        }
        assert!(differ > 10, "{differ}");
    }

    fn value(findings: &mut Findings, of: ValueId, value: f64) {
        findings.values.insert(of, PartValue { value, measured: true });
    }

    fn reading(findings: &mut Findings, of: ReadingId, value: f64) {
        findings.readings.insert(of, Reading::Value(value));
    }

    fn everything(judge: &mut Judge, id: ArrangementId) -> String {
        let classes = [
            judge.worst_class(id),
            judge.best_class(id),
            judge.class_if_read(id),
            judge.usual_class(id),
        ];
        let case = all().get(usize::from(id.0)).map(|a| judge.worst_case_of(id, a));
        format!("{classes:?} {case:?}")
    }
}
