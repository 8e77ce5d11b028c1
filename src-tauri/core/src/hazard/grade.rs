//! The worst case of an arrangement whose parts are only known within ranges.

use crate::arrangement::{Arrangement, Fault, FaultSet, LineSide, Reach, State, states};
use crate::body::LET_GO_MA;

use super::class::Class;
use super::exposure::{Corner, Exposures, Touch};

/// What the verdict quotes of an arrangement: its worst case.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Worst {
    /// The class.
    pub class: Class,
    /// The fault margin; 3 is three or more.
    pub margin: u8,
    /// Touch current, mA rms.
    pub milliamperes: f64,
    /// The state; nothing for a unit without a line side.
    pub state: Option<State>,
    /// The faults.
    pub faults: FaultSet,
    /// Whether its plug fits one way only.
    pub fits_one_way: bool,
}

impl Worst {
    /// Whether this case is worse: by class, then fewest faults, then largest current.
    pub fn is_worse_than(&self, other: &Self) -> bool {
        if self.class != other.class {
            return self.class.is_worse_than(other.class);
        }
        if self.margin != other.margin {
            return self.margin < other.margin;
        }
        self.milliamperes > other.milliamperes
    }
}

/// The largest current of a number of faults, and where it is.
#[derive(Clone)]
struct Largest {
    milliamperes: f64,
    state: Option<State>,
    faults: FaultSet,
}

impl Exposures {
    /// The worst case of an arrangement at the worst corner of its parts: with no fault where that makes it live,
    /// else with the fewest that do.
    pub fn worst(&mut self, arrangement: &Arrangement) -> Worst {
        if arrangement.line.is_none() {
            return Worst::NO_LINE;
        }
        let corners: Vec<Corner> = self.parts().corners(arrangement).collect();
        let found = self.largest_at_each(arrangement, &corners, &[FaultSet::NONE]);
        let live = |at: &Largest| arrangement.is_line_on_earth() || at.is_live();
        let cases = found.iter().filter(|at| live(at)).map(|at| at.as_worst(Class::Live, 0));
        let one_way = |line: LineSide| !line.cord.goes_in_both_ways(self.feed());
        let fits_one_way = arrangement.line.is_some_and(one_way);
        let worst =
            worst_of(cases).unwrap_or_else(|| self.worst_fault(arrangement, &corners, &found));
        Worst { fits_one_way, ..worst }
    }

    /// The same for one that no corner makes live as found. Pairs of faults, which are many, are tried only where
    /// no single one makes it live at any corner.
    fn worst_fault(
        &mut self,
        arrangement: &Arrangement,
        corners: &[Corner],
        found: &[Largest],
    ) -> Worst {
        let [one, two] = self.sets_by_size(arrangement);
        let as_worst = |margin: u8, at: &Largest, found: &Largest| {
            at.as_worst(Class::from_margin(margin, found.milliamperes), margin)
        };
        let single = self.largest_at_each(arrangement, corners, &one);
        let live = single.iter().zip(found).filter(|(at, _)| at.is_live());
        if let Some(worst) = worst_of(live.map(|(at, found)| as_worst(1, at, found))) {
            return worst;
        }
        let pairs = self.largest_at_each(arrangement, corners, &two);
        let cases = pairs.iter().zip(found);
        let cases = cases.map(|(at, found)| as_worst(if at.is_live() { 2 } else { 3 }, at, found));
        worst_of(cases).unwrap_or(Worst::NO_LINE)
    }

    /// The largest current of some sets of faults at each corner. The network of a state with faults is put together
    /// once, and asked once for all corners that come to the same.
    fn largest_at_each(
        &mut self,
        arrangement: &Arrangement,
        corners: &[Corner],
        sets: &[FaultSet],
    ) -> Vec<Largest> {
        let mut largest = vec![Largest::NONE; corners.len()];
        for state in states(arrangement, self.feed()) {
            for &faults in sets {
                let touch = Touch::of(arrangement, state, faults);
                let mut known = [None; Corner::MOST];
                for (corner, largest) in corners.iter().zip(&mut largest) {
                    let milliamperes = touch.as_ref().map_or(0.0, |touch| {
                        let place = touch.relevant(*corner).place();
                        if let Some(Some(known)) = known.get(place) {
                            return *known;
                        }
                        let current = self.outcome_of(touch, *corner).milliamperes();
                        if let Some(known) = known.get_mut(place) {
                            *known = Some(current);
                        }
                        current
                    });
                    if milliamperes > largest.milliamperes {
                        *largest = Largest { milliamperes, state: Some(state), faults };
                    }
                }
            }
        }
        largest
    }

    /// The class of an arrangement that has these faults already: at the worst corner, counting further ones.
    pub fn class_with(&mut self, arrangement: &Arrangement, faults: FaultSet) -> Class {
        let [single, _] = self.sets_by_size(arrangement);
        let one_more: Vec<FaultSet> = single
            .iter()
            .flat_map(|set| set.faults())
            .filter(|fault| !faults.has(*fault))
            .map(|fault| faults.with(fault))
            .collect();
        let corners: Vec<Corner> = self.parts().corners(arrangement).collect();
        let found = self.largest_at_each(arrangement, &corners, &[faults]);
        let more = self.largest_at_each(arrangement, &corners, &one_more);
        let classes = found.iter().zip(&more).map(|(found, more)| {
            if arrangement.is_line_on_earth() || found.is_live() {
                return Class::Live;
            }
            Class::from_margin(if more.is_live() { 1 } else { 2 }, found.milliamperes)
        });
        classes.reduce(Class::worse).unwrap_or(Class::NoLine)
    }

    /// The largest current with no fault, over the corners of its parts, mA rms.
    pub fn as_found_ma(&mut self, arrangement: &Arrangement) -> f64 {
        // Behind a barrier nobody is in a circuit, whatever the earth conductor carries.
        if arrangement.line.is_none_or(|line| line.reach == Reach::Closed) {
            return 0.0;
        }
        self.over_corners(arrangement, &[FaultSet::NONE])
    }

    /// Whether losing a barrier lets 5 mA through; nothing where no barrier is left to lose.
    pub fn is_live_inside(&mut self, arrangement: &Arrangement) -> bool {
        if !Fault::LostBarrier.exists(arrangement, self.feed()) {
            return false;
        }
        let lost = [FaultSet::NONE.with(Fault::LostBarrier)];
        self.over_corners(arrangement, &lost) >= LET_GO_MA.value
    }

    /// The current that the earth conductor carries away, mA rms: what a person would receive from
    /// this metal with the earth open; nothing for a cord without earth.
    pub fn earth_leakage_ma(&mut self, arrangement: &Arrangement) -> Option<f64> {
        arrangement.line.filter(|line| line.cord.is_earthed())?;
        let open = [FaultSet::NONE.with(Fault::EarthOpen)];
        Some(self.over_corners(arrangement, &open))
    }

    fn over_corners(&mut self, arrangement: &Arrangement, sets: &[FaultSet]) -> f64 {
        let corners: Vec<Corner> = self.parts().corners(arrangement).collect();
        let largest = self.largest_at_each(arrangement, &corners, sets);
        largest.iter().map(|at| at.milliamperes).fold(0.0, f64::max)
    }
}

impl Worst {
    /// The case of a unit without a line side.
    pub const NO_LINE: Self = Self {
        class: Class::NoLine,
        margin: 3,
        milliamperes: 0.0,
        state: None,
        faults: FaultSet::NONE,
        fits_one_way: false,
    };
}

/// The worst of some cases, the first where several are.
fn worst_of(cases: impl Iterator<Item = Worst>) -> Option<Worst> {
    cases.reduce(|worst, case| if case.is_worse_than(&worst) { case } else { worst })
}

impl Largest {
    const NONE: Self = Self { milliamperes: -1.0, state: None, faults: FaultSet::NONE };

    fn is_live(&self) -> bool {
        self.milliamperes >= LET_GO_MA.value
    }

    fn as_worst(&self, class: Class, margin: u8) -> Worst {
        Worst {
            class,
            margin,
            milliamperes: self.milliamperes.max(0.0),
            state: self.state,
            faults: self.faults,
            fits_one_way: false,
        }
    }
}

impl Exposures {
    /// The sets of one fault and of two.
    fn sets_by_size(&self, arrangement: &Arrangement) -> [Vec<FaultSet>; 2] {
        let mut sets = self.fault_sets(arrangement);
        sets.retain(|set| !set.is_empty());
        let pairs = sets.iter().copied().filter(|set| set.len() == 2).collect();
        sets.retain(|set| set.len() == 1);
        [sets, pairs]
    }

    /// Adds the sets of so many faults, one or two, each of which makes an arrangement live at some corner, to those
    /// that are known already. Those are not looked at again.
    pub fn add_live_sets(
        &mut self,
        arrangement: &Arrangement,
        faults: u8,
        known: &mut Vec<FaultSet>,
    ) {
        let corners: Vec<Corner> = self.parts().corners_from_high(arrangement).collect();
        let sets = self.fault_sets(arrangement);
        for set in sets.into_iter().filter(|set| set.len() == usize::from(faults)) {
            if !known.contains(&set) && self.is_live_with(arrangement, &corners, set) {
                known.push(set);
            }
        }
    }

    /// Whether some faults make an arrangement live in some state at one of these corners.
    fn is_live_with(
        &mut self,
        arrangement: &Arrangement,
        corners: &[Corner],
        faults: FaultSet,
    ) -> bool {
        states(arrangement, self.feed()).any(|state| {
            let Some(touch) = Touch::of(arrangement, state, faults) else { return false };
            corners
                .iter()
                .any(|corner| self.outcome_of(&touch, *corner).milliamperes() >= LET_GO_MA.value)
        })
    }
}
