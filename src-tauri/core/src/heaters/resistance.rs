//! What an ohmmeter reads across cold heaters, and how far that can be off.

use super::catalogue::{HeaterKind, Rating};
use super::dropper::Dropper;
use super::study::{Part, Place, Study};
use crate::figure::{Figure, Mark, Source};

/// Hot resistance of a heater as a multiple of cold, at most.
pub const HEATER_RATIO_MOST: Figure = ratio(9.0);
/// The same: usual, and the widest seen (5 to 9).
const HEATER: [Figure; 3] = [ratio(5.0), ratio(6.8), HEATER_RATIO_MOST];
/// The same of a filament that is the cathode (3.5 to 6: battery tubes 3.5 to 5, rectifiers 4 to 6).
const FILAMENT: [Figure; 3] = [remembered(3.5), remembered(4.5), remembered(6.0)];
/// The same of a dial lamp, whose filament is the hottest (9 to 12).
const LAMP: [Figure; 3] = [remembered(9.0), remembered(10.5), remembered(12.0)];
/// The same of a resistor of nichrome.
const RESISTOR: [Figure; 3] = [remembered(1.0), remembered(1.0), remembered(1.1)];

const fn ratio(value: f64) -> Figure {
    Figure::new(value, "1", Source::HeaterMeasurements, Mark::Verified)
}

const fn remembered(value: f64) -> Figure {
    Figure::new(value, "1", Source::HeaterMeasurements, Mark::MemoryMedium)
}

/// A resistance with its range, Ω.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct ColdRange {
    /// The least.
    pub low: f64,
    /// The usual.
    pub usual: f64,
    /// The most.
    pub high: f64,
}

impl ColdRange {
    fn of(ohms: f64, kind: HeaterKind) -> Self {
        let [least, usual, most] = match kind {
            HeaterKind::Filament => FILAMENT,
            HeaterKind::Lamp => LAMP,
            HeaterKind::Resistor => RESISTOR,
            _ => HEATER,
        };
        Self { low: ohms / most.value, usual: ohms / usual.value, high: ohms / least.value }
    }

    fn in_series(self, other: Self) -> Self {
        Self {
            low: self.low + other.low,
            usual: self.usual + other.usual,
            high: self.high + other.high,
        }
    }

    fn in_parallel(self, other: Self) -> Self {
        let joined = |a: f64, b: f64| if a + b > 0.0 { a * b / (a + b) } else { 0.0 };
        Self {
            low: joined(self.low, other.low),
            usual: joined(self.usual, other.usual),
            high: joined(self.high, other.high),
        }
    }

    fn over(self, branches: f64) -> Self {
        Self { low: self.low / branches, usual: self.usual / branches, high: self.high / branches }
    }
}

/// What a meter reads from pin to pin of the plug, switch on, everything cold and all tubes in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlugReading {
    /// Cold, with the dropper that the sum asks for, Ω.
    pub cold: ColdRange,
    /// The heaters of the string alone when hot, Ω.
    pub hot_ohm: f64,
    /// The dropper counted in, Ω.
    pub dropper_ohm: Option<f64>,
}

impl Part {
    /// The resistance of this part when hot, Ω.
    pub fn hot_ohm(&self) -> Option<f64> {
        let Rating { volts, amperes } = self.rating;
        let by_rating = || Some(volts? / amperes.filter(|amperes| *amperes > 0.0)?);
        self.tube.ohms.or_else(by_rating)
    }

    fn cold(&self) -> Option<ColdRange> {
        Some(ColdRange::of(self.hot_ohm()?, self.tube.kind))
    }
}

impl Study {
    /// The heaters of one string when hot, Ω: the sum of V/I. Nothing where they are not one string, or
    /// a figure is missing.
    pub fn string_ohm(&self) -> Option<f64> {
        let one_string =
            self.reading.is_series() && self.parts.iter().all(Part::is_in_string_or_aside);
        if !one_string || !self.is_complete() {
            return None;
        }
        let ohms: Option<Vec<f64>> = self.in_place(Place::String).map(Part::hot_ohm).collect();
        ohms.map(|ohms| ohms.iter().sum()).filter(|sum| *sum > 0.0)
    }

    /// What a meter reads from pin to pin; nothing where the list does not say.
    pub fn plug_reading(&self) -> Option<PlugReading> {
        if !self.reading.is_series() || !self.is_complete() {
            return None;
        }
        let own: Option<Vec<ColdRange>> =
            self.in_place(Place::OwnBranch).map(|part| self.own_branch(part)).collect();
        let main = if self.is_rectified { None } else { Some(self.main_string()?) };
        let hot_ohm = if self.is_rectified { 0.0 } else { self.hot_main()? };
        let all = own?.into_iter().chain(main);
        let cold = all.reduce(ColdRange::in_parallel)?;
        let dropper_ohm = main.and(self.needed_dropper()).map(|dropper| dropper.ohms);
        Some(PlugReading { cold, hot_ohm, dropper_ohm })
    }

    fn needed_dropper(&self) -> Option<Dropper> {
        self.dropper().filter(|_| !self.needs_no_dropper())
    }

    /// A heater on the line by itself, with the dropper that it needs there.
    fn own_branch(&self, part: &Part) -> Option<ColdRange> {
        let cold = part.cold()?;
        Some(match self.own_dropper(part) {
            Some(dropper) => cold.in_series(ColdRange::of(dropper.ohms, HeaterKind::Resistor)),
            None => cold,
        })
    }

    fn main_string(&self) -> Option<ColdRange> {
        let sum = |place| -> Option<ColdRange> {
            let parts = self.in_place(place).map(Part::cold).collect::<Option<Vec<_>>>()?;
            Some(parts.into_iter().fold(ColdRange::default(), ColdRange::in_series))
        };
        // Equal branches side by side: the whole of them over the square of their number.
        let branches = f64::from(self.branches.max(1));
        let heaters = sum(Place::String)?.in_series(sum(Place::Branch)?.over(branches * branches));
        Some(match self.needed_dropper() {
            Some(dropper) => heaters.in_series(ColdRange::of(dropper.ohms, HeaterKind::Resistor)),
            None => heaters,
        })
    }

    fn hot_main(&self) -> Option<f64> {
        let sum = |place| -> Option<f64> {
            Some(self.in_place(place).map(Part::hot_ohm).collect::<Option<Vec<_>>>()?.iter().sum())
        };
        let branches = f64::from(self.branches.max(1));
        Some(sum(Place::String)? + sum(Place::Branch)? / (branches * branches))
    }
}
