//! Sorts the tubes of a list into a string, branches, windings and what stands aside.

use super::Place;
use super::fit::{
    alike, drawing, has_own_winding, is_line_rectifier, one_current, one_voltage, several_windings,
    standing,
};
use crate::heaters::catalogue::{HeaterKind, Rating, Rectifier, Use};
use crate::heaters::string::{OVER, UNDER};
use crate::heaters::tube::Tube;

/// How the heaters are fed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Feed {
    Series,
    Parallel,
    Battery,
    Undecided,
}

/// Where each tube was put.
pub(super) struct Sorted {
    pub(super) feed: Feed,
    pub(super) places: Vec<Place>,
    pub(super) ratings: Vec<Rating>,
    pub(super) amperes: Option<f64>,
    pub(super) fits_series: bool,
    pub(super) branches: u32,
    pub(super) is_rectified: bool,
}

pub(super) fn sort(tubes: &[Tube], line: f64) -> Sorted {
    let mut sorted = Sorted {
        feed: Feed::Undecided,
        places: tubes.iter().map(first_place).collect(),
        ratings: tubes.iter().map(|tube| tube.rating).collect(),
        amperes: None,
        fits_series: false,
        branches: 1,
        is_rectified: false,
    };
    let counted: Vec<usize> = sorted.all_in(Place::String);
    let heaters: Vec<&Tube> = counted.iter().filter_map(|&place| tubes.get(place)).collect();
    let unknown = tubes.iter().filter(|tube| is_unknown(tube)).count();
    let series = one_current(&heaters);
    sorted.fits_series = series.is_some();
    // Resistors alone are no heaters.
    let is_heated = heaters.iter().any(|tube| tube.kind != HeaterKind::Resistor);
    if !is_heated || unknown > heaters.len() {
        sorted.mark_unknown(tubes);
        return sorted;
    }
    if !sorted.as_battery(tubes, &counted, &heaters) {
        let series = series.map(|common| common.amperes);
        match (series, one_voltage(&heaters)) {
            (Some(amperes), None) => sorted.as_string(tubes, &counted, amperes),
            (None, Some(volts)) => sorted.as_parallel(tubes, &counted, Some(volts)),
            (Some(amperes), Some(volts)) => match of_both(&heaters) {
                Feed::Series => sorted.as_string(tubes, &counted, amperes),
                Feed::Parallel => sorted.as_parallel(tubes, &counted, Some(volts)),
                _ => {}
            },
            (None, None) => sorted.as_parts(tubes, &counted, line),
        }
    }
    sorted.lamps(tubes);
    sorted.resistors(tubes);
    sorted.mark_unknown(tubes);
    sorted
}

fn is_unknown(tube: &Tube) -> bool {
    tube.kind == HeaterKind::Heater && tube.rating.is_unknown()
}

/// Where a tube stands before it is known how the others are fed.
fn first_place(tube: &Tube) -> Place {
    match tube.kind {
        HeaterKind::ColdCathode => Place::NoHeater,
        HeaterKind::Lamp => Place::Aside,
        HeaterKind::Barretter if tube.usual == Use::Parallel => Place::Aside,
        _ if is_unknown(tube) => Place::Unknown,
        _ => Place::String,
    }
}

/// What heaters are that fit both a string and a winding: a rectifier tells, or what most are used in.
fn of_both(heaters: &[&Tube]) -> Feed {
    let is = |usual: Use| heaters.iter().any(|tube| tube.usual == usual);
    if heaters.iter().any(|tube| is_line_rectifier(tube)) || is(Use::Series) || is(Use::Line) {
        Feed::Series
    } else if heaters.iter().any(|tube| tube.rectifier == Rectifier::Full) || is(Use::Parallel) {
        Feed::Parallel
    } else {
        Feed::Undecided
    }
}

impl Sorted {
    fn all_in(&self, wanted: Place) -> Vec<usize> {
        let places = self.places.iter().enumerate();
        places.filter(|(_, place)| **place == wanted).map(|(nth, _)| nth).collect()
    }

    fn put(&mut self, nth: usize, place: Place, rating: Option<Rating>) {
        if let Some(was) = self.places.get_mut(nth) {
            *was = place;
        }
        if let (Some(was), Some(rating)) = (self.ratings.get_mut(nth), rating) {
            *was = rating;
        }
    }

    fn as_string(&mut self, tubes: &[Tube], counted: &[usize], amperes: Option<f64>) {
        self.feed = Feed::Series;
        self.amperes = amperes;
        for &nth in counted {
            let rating =
                tubes.get(nth).zip(amperes).and_then(|(tube, amperes)| drawing(tube, amperes));
            self.put(nth, Place::String, rating);
        }
    }

    fn as_parallel(&mut self, tubes: &[Tube], counted: &[usize], volts: Option<f64>) {
        self.feed = Feed::Parallel;
        for &nth in counted {
            let tube = tubes.get(nth).filter(|tube| !has_own_winding(tube));
            let rating = tube.zip(volts).and_then(|(tube, volts)| standing(tube, volts));
            self.put(nth, Place::Winding, rating);
        }
    }

    /// Battery tubes: by themselves a battery set; with a line rectifier a set for both, whose filaments
    /// are a string behind the rectifier.
    fn as_battery(&mut self, tubes: &[Tube], counted: &[usize], heaters: &[&Tube]) -> bool {
        let (rectifiers, others): (Vec<&Tube>, Vec<&Tube>) =
            heaters.iter().copied().partition(|tube| tube.rectifier != Rectifier::None);
        if others.is_empty() || !others.iter().all(|tube| tube.usual == Use::Battery) {
            return false;
        }
        let starts_cold =
            |tube: &Tube| tube.kind == HeaterKind::ColdCathode && is_line_rectifier(tube);
        if rectifiers.is_empty() && !tubes.iter().any(starts_cold) {
            self.feed = Feed::Battery;
            counted.iter().for_each(|&nth| self.put(nth, Place::Winding, None));
            return true;
        }
        let Some(common) = one_current(&others) else { return false };
        if !rectifiers.iter().all(|tube| is_line_rectifier(tube)) {
            return false;
        }
        self.as_string(tubes, counted, common.amperes);
        self.put_rectifiers_aside(tubes, counted);
        self.is_rectified = true;
        true
    }

    fn put_rectifiers_aside(&mut self, tubes: &[Tube], counted: &[usize]) {
        for &nth in counted {
            if tubes.get(nth).is_some_and(is_line_rectifier) {
                self.put(nth, Place::OwnBranch, None);
            }
        }
    }

    /// Heaters that share neither: one on the line by itself, a rectifier with its own dropper, equal
    /// branches, or several windings.
    fn as_parts(&mut self, tubes: &[Tube], counted: &[usize], line: f64) {
        let fills_line = |tube: &Tube| {
            let share = tube.rating.volts.unwrap_or_default() / line;
            tube.usual == Use::Line && (UNDER.value..=OVER.value).contains(&share)
        };
        if self.without(tubes, counted, fills_line)
            || self.without(tubes, counted, is_line_rectifier)
        {
            return;
        }
        let heaters: Vec<&Tube> = counted.iter().filter_map(|&nth| tubes.get(nth)).collect();
        if !self.as_branches(tubes, counted) && several_windings(&heaters) {
            self.as_parallel(tubes, counted, None);
        }
    }

    /// Leaves out what stands apart, where the rest then fits one current.
    fn without(
        &mut self,
        tubes: &[Tube],
        counted: &[usize],
        apart: impl Fn(&Tube) -> bool,
    ) -> bool {
        let (out, rest): (Vec<usize>, Vec<usize>) =
            counted.iter().partition(|&&nth| tubes.get(nth).is_some_and(&apart));
        let heaters: Vec<&Tube> = rest.iter().filter_map(|&nth| tubes.get(nth)).collect();
        // Low-voltage heaters beside a rectifier can stand on a winding as well.
        let is_string = heaters.iter().any(|tube| matches!(tube.usual, Use::Series | Use::Line));
        let Some(common) = one_current(&heaters).filter(|_| !out.is_empty() && is_string) else {
            return false;
        };
        self.as_string(tubes, &rest, common.amperes);
        out.iter().for_each(|&nth| self.put(nth, Place::OwnBranch, None));
        true
    }

    /// Heaters of half or a third of the current in as many equal branches, in series with the others.
    fn as_branches(&mut self, tubes: &[Tube], counted: &[usize]) -> bool {
        let amperes = |nth: &usize| tubes.get(*nth).and_then(|tube| tube.rating.amperes);
        let volts =
            |nth: &usize| tubes.get(*nth).and_then(|tube| tube.rating.volts).unwrap_or_default();
        let Some(currents) = counted.iter().map(amperes).collect::<Option<Vec<f64>>>() else {
            return false;
        };
        let full = currents.iter().copied().fold(0.0, f64::max);
        let heaters = || counted.iter().filter_map(|&nth| tubes.get(nth));
        // Battery filaments take a third of a string's current by chance.
        let is_string = heaters().any(|tube| tube.usual == Use::Series)
            && heaters().all(|tube| tube.usual != Use::Battery);
        for branches in [2_u32, 3] {
            let (through, shared): (Vec<usize>, Vec<usize>) =
                counted.iter().partition(|nth| amperes(nth).is_some_and(|own| alike(own, full)));
            let part = full / f64::from(branches);
            let all_part =
                shared.iter().all(|nth| amperes(nth).is_some_and(|own| alike(own, part)));
            let share: Vec<f64> = shared.iter().map(volts).collect();
            if is_string && all_part && !shared.is_empty() && parts_equally(share, branches) {
                self.as_string(tubes, &through, Some(full));
                shared.iter().for_each(|&nth| self.put(nth, Place::Branch, None));
                self.branches = branches;
                return true;
            }
        }
        false
    }

    /// A lamp of the string's current stands in the string, unless a tube has a tap for it.
    fn lamps(&mut self, tubes: &[Tube]) {
        let tapped = tubes.iter().any(|tube| tube.listed.is_some_and(|listed| listed.tapped));
        let Some(amperes) = self.amperes.filter(|_| self.feed == Feed::Series && !tapped) else {
            return;
        };
        for (nth, tube) in tubes.iter().enumerate() {
            let fits = tube.rating.amperes.is_some_and(|own| alike(own, amperes));
            if tube.kind == HeaterKind::Lamp && fits {
                self.put(nth, Place::String, None);
            }
        }
    }

    /// A resistor that is known by its ohms takes up what the string's current makes across it.
    fn resistors(&mut self, tubes: &[Tube]) {
        for (nth, tube) in tubes.iter().enumerate() {
            let Some(ohms) = tube.ohms else { continue };
            let amperes = self.amperes.filter(|_| self.feed == Feed::Series);
            let rating = amperes.map(|amperes| Rating::of(amperes * ohms, amperes));
            let place = if rating.is_some() { Place::String } else { Place::Aside };
            self.put(nth, place, rating);
        }
    }

    /// What counts, but has no voltage, is unknown; a barretter takes any.
    fn mark_unknown(&mut self, tubes: &[Tube]) {
        for (nth, tube) in tubes.iter().enumerate() {
            let volts = self.ratings.get(nth).and_then(|rating| rating.volts);
            let counts = matches!(tube.kind, HeaterKind::Heater | HeaterKind::Filament);
            if counts && volts.is_none() {
                self.put(nth, Place::Unknown, None);
            }
        }
    }
}

/// Whether volts fall into so many equal sums: the largest goes to the smallest sum, in turn.
fn parts_equally(mut volts: Vec<f64>, branches: u32) -> bool {
    volts.sort_by(|a, b| b.total_cmp(a));
    let mut sums: Vec<f64> = vec![0.0; branches as usize];
    for own in volts {
        if let Some(least) = sums.iter_mut().min_by(|a, b| a.total_cmp(b)) {
            *least += own;
        }
    }
    let most = sums.iter().copied().fold(0.0, f64::max);
    sums.iter().all(|sum| alike(*sum, most))
}
