//! Classes of all arrangements for one supply and one knowledge of the parts, each worked out once.
//!
//! A changed answer needs no new judge; a changed supply or value does.

use crate::arrangement::{Arrangement, ArrangementId, COUNT, all};
use crate::hazard::{Class, Exposures, Parts, Worst};
use crate::supply::Supply;

use super::findings::Findings;
use super::set::ArrangementSet;

/// Knows the class of every arrangement it was asked about.
#[derive(Clone, Debug)]
pub struct Judge {
    supply: Supply,
    parts: Parts,
    at_highest: Exposures,
    at_nominal: Exposures,
    worst: Vec<Option<Class>>,
    best: Vec<Option<Class>>,
    if_read: Vec<Option<Class>>,
}

impl Judge {
    /// A judge for these findings' supply and values.
    pub fn of(findings: &Findings) -> Self {
        let (supply, parts) = (findings.supply, findings.parts());
        Self {
            supply,
            parts,
            at_highest: Exposures::new(&supply, supply.volts_max, parts),
            at_nominal: Exposures::new(&supply, supply.volts, parts),
            worst: vec![None; COUNT],
            best: vec![None; COUNT],
            if_read: vec![None; COUNT],
        }
    }

    /// Whether it judges by the same supply and values as these findings.
    pub fn fits(&self, findings: &Findings) -> bool {
        self.supply == findings.supply && self.parts == findings.parts()
    }

    /// Becomes the judge for these findings, keeping what is known where supply and values are the same.
    pub fn turn_to(&mut self, findings: &Findings) {
        if !self.fits(findings) {
            *self = Self::of(findings);
        }
    }

    /// The worst class an arrangement can have: worst end of its values, highest voltage.
    ///
    /// On an earthed chassis a fault that trips the breaker at the highest voltage may not trip it at
    /// the nominal one and then touch is worse, so there the nominal voltage is judged as well.
    pub fn worst_class(&mut self, id: ArrangementId) -> Class {
        remembered(&mut self.worst, id, |arrangement| {
            let highest = self.at_highest.worst_class(arrangement);
            if is_earthed(arrangement) && highest == Class::TwoFaults {
                highest.worse(self.at_nominal.worst_class(arrangement))
            } else {
                highest
            }
        })
    }

    /// The best class it can have: best end of its values, nominal voltage.
    pub fn best_class(&mut self, id: ArrangementId) -> Class {
        remembered(&mut self.best, id, |arrangement| {
            self.at_nominal.best_class(arrangement)
        })
    }

    /// The class it could be shown to have once its values are read: best end, highest voltage.
    pub fn class_if_read(&mut self, id: ArrangementId) -> Class {
        remembered(&mut self.if_read, id, |arrangement| {
            self.at_highest.best_class(arrangement)
        })
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

    /// The best class over a set.
    pub fn best_over(&mut self, set: &ArrangementSet) -> Class {
        let mut best = Class::Live;
        for (id, arrangement) in set
            .iter()
            .filter(|(_, a)| a.line.is_none())
            .chain(set.iter())
        {
            let class = if arrangement.line.is_none() {
                Class::NoLine
            } else {
                self.best_class(id)
            };
            if best.is_worse_than(class) {
                best = class;
            }
            if best == Class::NoLine {
                break;
            }
        }
        best
    }

    /// The worst case of the worst arrangement of a set whose worst class is known.
    pub fn worst_case(&mut self, set: &ArrangementSet, class: Class) -> Option<Worst> {
        let mut worst: Option<Worst> = None;
        for (id, arrangement) in set.iter() {
            if self.worst_class(id) != class {
                continue;
            }
            let mut case = self.at_highest.worst(arrangement);
            if is_earthed(arrangement) {
                let nominal = self.at_nominal.worst(arrangement);
                if nominal.class.is_worse_than(case.class) {
                    case = nominal;
                }
            }
            if worst.is_none_or(|worst| case.is_worse_than(&worst)) {
                worst = Some(case);
            }
        }
        worst
    }

    /// The largest current with no fault over the arrangements of a class in a set, mA rms.
    pub fn leak_over(&mut self, set: &ArrangementSet, class: Class) -> f64 {
        let mut largest: f64 = 0.0;
        for (id, arrangement) in set.iter() {
            if self.worst_class(id) == class {
                largest = largest.max(self.at_highest.as_found_ma(arrangement));
            }
        }
        largest
    }

    /// Outcomes at the highest voltage, for the overlays.
    pub const fn at_highest(&mut self) -> &mut Exposures {
        &mut self.at_highest
    }
}

fn is_earthed(arrangement: &Arrangement) -> bool {
    arrangement.line.is_some_and(|line| line.cord.is_earthed())
}

fn remembered(
    memory: &mut [Option<Class>],
    id: ArrangementId,
    work_out: impl FnOnce(&'static Arrangement) -> Class,
) -> Class {
    let place = usize::from(id.0);
    if let Some(Some(known)) = memory.get(place) {
        return *known;
    }
    // An id that is not an arrangement's cannot be made; the worst stands in for it.
    let Some(arrangement) = all().get(place) else {
        return Class::Live;
    };
    let class = work_out(arrangement);
    if let Some(slot) = memory.get_mut(place) {
        *slot = Some(class);
    }
    class
}
