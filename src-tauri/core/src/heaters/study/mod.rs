//! A list of tubes against a line voltage: how the heaters can be fed, and how they add up.

mod clash;
mod fit;
mod sort;

use super::catalogue::{HeaterKind, Rating, Use};
use super::dropper::Dropper;
use super::string::{NO_DROPPER, OVER, UNDER};
use super::tube::Tube;
use crate::fields::id_enum;

pub use clash::Clash;

id_enum! {
    /// What a list of tubes reads as.
    pub enum Reading {
        /// One string straight on the line.
        SeriesOnLine = "series_on_line",
        /// One string, with something in series that takes up the rest of the line.
        SeriesWithDropper = "series_with_dropper",
        /// Heaters in parallel, on a winding of a transformer.
        ParallelTransformer = "parallel_transformer",
        /// Battery tubes.
        Battery = "battery",
        /// It could be more than one of these, or none.
        Undecided = "undecided",
    }
}

impl Reading {
    /// Whether it is a string.
    pub const fn is_series(self) -> bool {
        matches!(self, Self::SeriesOnLine | Self::SeriesWithDropper)
    }
}

/// How one part is fed, as far as the list lets it be guessed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
#[ts(rename = "HeaterPlace")]
pub enum Place {
    /// In the string.
    String,
    /// In one of several equal branches of the string.
    Branch,
    /// On the line by itself.
    OwnBranch,
    /// In parallel with others, on a winding or battery.
    Winding,
    /// It has no heater.
    NoHeater,
    /// It counts in no sum: a lamp at a tap.
    Aside,
    /// It cannot stand where the others do.
    Clash,
    /// Nothing is known of its voltage.
    Unknown,
}

/// One tube of the list with its heater as it is taken here.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// The tube.
    pub tube: Tube,
    /// Its heater in the connection that fits the others.
    pub rating: Rating,
    /// How it is fed.
    pub place: Place,
}

impl Part {
    /// Whether it is in the string, or has no say in it.
    pub fn is_in_string_or_aside(&self) -> bool {
        matches!(self.place, Place::String | Place::NoHeater | Place::Aside)
    }

    /// Whether its heater is connected in the other way than usual: its halves in parallel or in series.
    pub fn is_other_connection(&self) -> bool {
        self.tube.other.is_some_and(|other| other == self.rating && other != self.tube.rating)
    }
}

/// What a list of tubes says against a line voltage.
#[derive(Clone, Debug, PartialEq)]
pub struct Study {
    /// The tubes, in the order of the list.
    pub parts: Vec<Part>,
    /// What the list reads as.
    pub reading: Reading,
    /// The line voltage, V.
    pub line_volts: f64,
    /// Heater volts of all that counts, V.
    pub sum_volts: f64,
    /// Volts along one path of the string, V: less than the sum where it branches.
    pub path_volts: f64,
    /// The current of the string, or of all heaters in parallel, A; nothing where undecided or unknown.
    pub amperes: Option<f64>,
    /// Whether all heaters draw one current.
    pub fits_series: bool,
    /// What cannot be as listed.
    pub clashes: Vec<Clash>,
    /// How many equal branches the string has.
    pub branches: u32,
    /// The string stands behind the rectifier: filaments of battery tubes in a set for line and battery.
    pub is_rectified: bool,
}

/// Studies a list of tubes against a line voltage, V.
pub fn study<T: AsRef<str>>(types: &[T], line_volts: f64) -> Study {
    let tubes = lamps_named(types.iter().map(|name| Tube::of(name.as_ref())).collect());
    let sorted = sort::sort(&tubes, line_volts);
    let parts: Vec<Part> = tubes
        .into_iter()
        .zip(sorted.ratings)
        .zip(sorted.places)
        .map(|((tube, rating), place)| Part { tube, rating, place })
        .collect();
    let study = Study {
        parts,
        reading: Reading::Undecided,
        line_volts,
        sum_volts: 0.0,
        path_volts: 0.0,
        amperes: sorted.amperes,
        fits_series: sorted.fits_series,
        clashes: Vec::new(),
        branches: sorted.branches,
        is_rectified: sorted.is_rectified,
    };
    study.summed().read(sorted.feed)
}

/// Labels name dial lamps by bare numbers that old tubes have as well. Beside tubes of a string such a
/// number is the lamp, where the tube of that number cannot stand in the string.
fn lamps_named(tubes: Vec<Tube>) -> Vec<Tube> {
    let is_string = |tube: &&Tube| tube.usual == Use::Series && tube.kind == HeaterKind::Heater;
    let Some(amperes) = tubes.iter().find(is_string).and_then(|tube| tube.rating.amperes) else {
        return tubes;
    };
    let as_lamp = |tube: Tube| {
        let lamp = tube.as_lamp().filter(|_| clash::odd_current(&tube, amperes).is_some());
        lamp.unwrap_or(tube)
    };
    tubes.into_iter().map(as_lamp).collect()
}

impl Study {
    fn summed(mut self) -> Self {
        let volts = |places: &[Place]| -> f64 {
            let there = self.parts.iter().filter(|part| places.contains(&part.place));
            // Not a sum: that of nothing is -0.
            there.filter_map(|part| part.rating.volts).fold(0.0, |sum, volts| sum + volts)
        };
        let along = volts(&[Place::String, Place::Winding, Place::Clash]);
        let branched = volts(&[Place::Branch]);
        self.sum_volts = along + branched;
        self.path_volts = along + branched / f64::from(self.branches.max(1));
        self
    }

    /// Names the reading, and what clashes.
    fn read(mut self, feed: sort::Feed) -> Self {
        let share = self.path_volts / self.line_volts;
        self.reading = match feed {
            sort::Feed::Series if self.is_rectified => Reading::SeriesWithDropper,
            sort::Feed::Series if share > OVER.value + ROUNDING => Reading::Undecided,
            // What is missing could make up the line.
            sort::Feed::Series if share < UNDER.value - ROUNDING && !self.is_complete() => {
                Reading::Undecided
            }
            sort::Feed::Series if share < UNDER.value - ROUNDING => Reading::SeriesWithDropper,
            sort::Feed::Series => Reading::SeriesOnLine,
            sort::Feed::Parallel => Reading::ParallelTransformer,
            sort::Feed::Battery => Reading::Battery,
            sort::Feed::Undecided => Reading::Undecided,
        };
        self.clashes = clash::clashes(&self, feed);
        if feed == sort::Feed::Undecided {
            self.break_out();
        }
        self.amperes = match self.reading {
            Reading::SeriesOnLine | Reading::SeriesWithDropper => self.amperes,
            Reading::ParallelTransformer | Reading::Battery => self.total_amperes(),
            Reading::Undecided => None,
        };
        self
    }

    /// Puts what clashes beside what does not.
    fn break_out(&mut self) {
        let others = self.clashes.iter().find_map(|clash| match clash {
            Clash::Current { others, .. } => Some(*others),
            Clash::Over { .. } => None,
        });
        for part in self.parts.iter_mut().filter(|part| part.place == Place::String) {
            if others.is_some_and(|others| clash::odd_current(&part.tube, others).is_some()) {
                part.place = Place::Clash;
            }
        }
    }

    /// All heaters in parallel, A; nothing where one is not known.
    fn total_amperes(&self) -> Option<f64> {
        if self.parts.iter().any(|part| part.place == Place::Unknown) {
            return None;
        }
        self.in_place(Place::Winding).map(|part| part.rating.amperes).sum()
    }

    /// The parts in one place.
    pub fn in_place(&self, place: Place) -> impl Iterator<Item = &Part> {
        self.parts.iter().filter(move |part| part.place == place)
    }

    /// Whether the voltage of every part that counts is known.
    pub fn is_complete(&self) -> bool {
        !self.parts.is_empty() && self.parts.iter().all(|part| part.place != Place::Unknown)
    }

    /// Whether some of it was made for strings, or for the line itself: ordinary windings have no such.
    pub fn has_string_tubes(&self) -> bool {
        self.parts.iter().any(|part| {
            matches!(part.tube.usual, Use::Series | Use::Line)
                && part.tube.kind != HeaterKind::Resistor
        })
    }

    /// Whether more of it is known than not.
    pub fn is_mostly_known(&self) -> bool {
        2 * self.in_place(Place::Unknown).count() < self.parts.len()
    }

    /// Whether so little of the line is left that heaters stand it without a dropper.
    pub fn needs_no_dropper(&self) -> bool {
        self.line_volts - self.path_volts <= NO_DROPPER.value * self.line_volts
    }

    /// Whether something in the list takes up whatever voltage is left.
    pub fn has_barretter(&self) -> bool {
        self.parts.iter().any(|part| part.tube.kind == HeaterKind::Barretter)
    }

    /// The dropper that takes up the rest of the line; nothing where none is needed, one of the list does
    /// it, or a figure is missing.
    pub fn dropper(&self) -> Option<Dropper> {
        let known = self.reading.is_series() && self.is_complete() && !self.is_rectified;
        let amperes = self.amperes.filter(|_| known && !self.has_barretter())?;
        Dropper::of(self.line_volts, self.path_volts, amperes)
    }

    /// The dropper that a heater on the line by itself needs; nothing where it stands the whole line.
    pub fn own_dropper(&self, part: &Part) -> Option<Dropper> {
        let volts = part.rating.volts?;
        if volts >= self.line_volts * UNDER.value {
            return None;
        }
        Dropper::of(self.line_volts, volts, part.rating.amperes?)
    }

    /// The tubes whose heater voltage is not known, as they were entered.
    pub fn unknown(&self) -> Vec<String> {
        self.in_place(Place::Unknown).map(|part| part.tube.entered.clone()).collect()
    }
}

/// Shares that are the same but for rounding.
const ROUNDING: f64 = 1e-9;
