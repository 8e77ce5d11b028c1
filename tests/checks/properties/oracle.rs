//! Classes and worst cases worked out outcome by outcome, without the core's short cuts.

use coldchassis_core::arrangement::{Arrangement, FaultSet, states};
use coldchassis_core::body::{LET_GO_MA, STARTLE_MA};
use coldchassis_core::hazard::{Class, Corner, Exposures, Worst};
use coldchassis_core::inspection::{Answer, ArrangementSet, Findings, Question};

use crate::arrangements::sets_of_faults;

/// Judges arrangements for the supply and the values of some findings.
pub struct Oracle {
    /// A switch lifts the earth: closed, it puts a set with the chassis on the line on the earth wire.
    lifts: bool,
    highest: Exposures,
    nominal: Exposures,
}

fn is_earthed(arrangement: &Arrangement) -> bool {
    arrangement.line.is_some_and(|line| line.cord.is_earthed())
}

/// The largest current with no fault and with one, mA.
fn largest(exposures: &mut Exposures, arrangement: &Arrangement, corner: Corner) -> [f64; 2] {
    let mut largest = [0.0_f64; 2];
    for faults in sets_of_faults(arrangement, exposures.feed(), 1) {
        for state in states(arrangement, exposures.feed()) {
            let outcome = exposures.outcome(arrangement, state, faults, corner);
            let most = &mut largest[FaultSet::len(faults)];
            *most = most.max(outcome.milliamperes());
        }
    }
    largest
}

fn class_at(exposures: &mut Exposures, arrangement: &Arrangement, corner: Corner) -> Class {
    if arrangement.line.is_none() {
        return Class::NoLine;
    }
    let [found, single] = largest(exposures, arrangement, corner);
    if arrangement.is_line_on_earth() || found >= LET_GO_MA.value {
        Class::Live
    } else if single < LET_GO_MA.value {
        Class::TwoFaults
    } else if found >= STARTLE_MA.value {
        Class::Leaky
    } else {
        Class::OneFault
    }
}

fn classes(exposures: &mut Exposures, arrangement: &Arrangement) -> Vec<Class> {
    let corners: Vec<Corner> = exposures.parts().corners(arrangement).collect();
    corners.into_iter().map(|corner| class_at(exposures, arrangement, corner)).collect()
}

impl Oracle {
    pub fn of(findings: &Findings) -> Self {
        let (supply, parts) = (findings.supply, findings.parts());
        Self {
            lifts: findings.answers.get(&Question::EarthLift) == Some(&Answer::One("present")),
            highest: Exposures::new(&supply, supply.volts_max, parts),
            nominal: Exposures::new(&supply, supply.volts, parts),
        }
    }

    /// At the highest voltage; where a breaker that trips there may hold at the nominal one, at both.
    fn worst_class(&mut self, arrangement: &Arrangement) -> Class {
        if self.lifts && arrangement.with_lift_closed().is_some() {
            return Class::Live;
        }
        let mut all = classes(&mut self.highest, arrangement);
        if is_earthed(arrangement) {
            all.extend(classes(&mut self.nominal, arrangement));
        }
        // Classes are declared worst first.
        all.into_iter().min().expect("every arrangement has a corner")
    }

    fn best_class(&mut self, arrangement: &Arrangement) -> Class {
        if self.lifts && arrangement.with_lift_closed().is_some() {
            return Class::Live;
        }
        let all = classes(&mut self.nominal, arrangement);
        all.into_iter().max().expect("every arrangement has a corner")
    }

    pub fn treat_as(&mut self, set: &ArrangementSet) -> Class {
        let mut worst = Class::NoLine;
        for (_, arrangement) in set.iter() {
            worst = worst.worse(self.worst_class(arrangement));
            if worst == Class::Live {
                break;
            }
        }
        worst
    }

    pub fn could_be(&mut self, set: &ArrangementSet) -> Class {
        let best = set.iter().map(|(_, arrangement)| self.best_class(arrangement)).max();
        best.expect("something is always left")
    }

    /// The worst case over a set: by class, then fewest faults, then largest current.
    pub fn worst_case(&mut self, set: &ArrangementSet) -> Worst {
        let mut worst: Option<Worst> = None;
        for (_, arrangement) in set.iter() {
            let closed = arrangement.with_lift_closed().filter(|_| self.lifts);
            let arrangement = closed.as_ref().unwrap_or(arrangement);
            let mut cases = vec![self.highest.worst(arrangement)];
            if is_earthed(arrangement) {
                cases.push(self.nominal.worst(arrangement));
            }
            for case in cases {
                if worst.is_none_or(|worst| case.is_worse_than(&worst)) {
                    worst = Some(case);
                }
            }
        }
        worst.expect("something is always left")
    }
}
