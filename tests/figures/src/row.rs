//! One figure of a bench, or the spread of many measurements, beside its bound and its peer.

use std::collections::BTreeMap;
use std::fmt;
use std::fs::OpenOptions;
use std::io::Write;
use std::time::Duration;

use serde::{Deserialize, Serialize};

use super::machine;
use super::unit::{Unit, three_digits};

/// The file that rows are added to, where it is set.
const FILE: &str = "COLDCHASSIS_FIGURES";
/// From so many measurements on their 95th percentile says something, and from so many the 99th.
const ENOUGH: [usize; 2] = [20, 100];

/// Which of many measurements.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum At {
    /// The least.
    Least,
    /// Half are at most this; a figure that was measured once is its own median.
    Median,
    /// 95 of 100 are at most this.
    P95,
    /// 99 of 100 are at most this.
    P99,
    /// The most.
    Most,
    /// The median, over that of the peer.
    Ratio,
}

impl At {
    /// Those that are measured, in the order in which they are written.
    pub const MEASURED: [Self; 5] = [Self::Least, Self::Median, Self::P95, Self::P99, Self::Most];

    /// How it is written.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Least => "least",
            Self::Median => "median",
            Self::P95 => "p95",
            Self::P99 => "p99",
            Self::Most => "most",
            Self::Ratio => "of its peer",
        }
    }
}

/// On which side of a bound a figure has to stay.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Limit {
    /// No more.
    AtMost,
    /// No less.
    AtLeast,
}

/// What was asked for.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Bound {
    /// Of which measurement.
    pub at: At,
    /// On which side.
    pub limit: Limit,
    /// In the unit of the row; a ratio has none.
    pub figure: f64,
    /// The number of the issue that asks for it.
    pub issue: u8,
}

/// Another program that did the same in the same run.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Peer {
    /// What it is called.
    pub name: String,
    /// What it took, in the unit of the row.
    pub median: f64,
}

/// What was measured of one thing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Row {
    /// The heading that it stands under.
    pub bench: String,
    /// What was measured.
    pub name: String,
    /// What the figures count.
    pub unit: Unit,
    /// How many measurements.
    pub count: usize,
    /// The measurements that are told of.
    pub figures: BTreeMap<At, f64>,
    /// What was asked for, if anything.
    pub bound: Option<Bound>,
    /// What another program took for the same.
    pub peer: Option<Peer>,
    /// What else has to be known to read it.
    pub note: String,
    /// How many processes wanted to run, over the last minute.
    pub load: Option<f64>,
}

impl Row {
    /// Many measurements of one thing.
    pub fn new(
        bench: &str,
        name: impl Into<String>,
        unit: Unit,
        measured: impl IntoIterator<Item = f64>,
    ) -> Self {
        let mut sorted: Vec<f64> = measured.into_iter().collect();
        sorted.sort_by(f64::total_cmp);
        let told = |at: &At| match at {
            At::Median => true,
            At::P95 => sorted.len() >= ENOUGH[0],
            At::P99 => sorted.len() >= ENOUGH[1],
            At::Least | At::Most | At::Ratio => sorted.len() > 1,
        };
        let figure = |at: At| (at, rank(&sorted, at));
        let figures = At::MEASURED.into_iter().filter(told).map(figure).collect();
        Self {
            bench: bench.to_owned(),
            name: name.into(),
            unit,
            count: sorted.len(),
            figures,
            bound: None,
            peer: None,
            note: String::new(),
            load: machine::load(),
        }
    }

    /// Many times that one thing took.
    pub fn times(bench: &str, name: impl Into<String>, unit: Unit, times: &[Duration]) -> Self {
        Self::new(bench, name, unit, times.iter().map(|time| unit.of(*time)))
    }

    /// One figure.
    pub fn one(bench: &str, name: impl Into<String>, unit: Unit, figure: f64) -> Self {
        Self::new(bench, name, unit, [figure])
    }

    /// What an issue asks for at most.
    #[must_use]
    pub fn at_most(self, at: At, figure: f64, issue: u8) -> Self {
        Self { bound: Some(Bound { at, limit: Limit::AtMost, figure, issue }), ..self }
    }

    /// What an issue asks for at least.
    #[must_use]
    pub fn at_least(self, at: At, figure: f64, issue: u8) -> Self {
        Self { bound: Some(Bound { at, limit: Limit::AtLeast, figure, issue }), ..self }
    }

    /// What another program took for the same in the same run.
    #[must_use]
    pub fn beside(self, name: impl Into<String>, median: f64) -> Self {
        Self { peer: Some(Peer { name: name.into(), median }), ..self }
    }

    /// What else has to be known to read it.
    #[must_use]
    pub fn note(self, note: impl Into<String>) -> Self {
        Self { note: note.into(), ..self }
    }

    /// One of its measurements.
    pub fn at(&self, at: At) -> Option<f64> {
        match at {
            At::Ratio => self.ratio(),
            _ => self.figures.get(&at).copied(),
        }
    }

    /// The median over that of the peer.
    pub fn ratio(&self) -> Option<f64> {
        Some(self.at(At::Median)? / self.peer.as_ref()?.median)
    }

    /// How much of its bound it takes: more than 1 is beyond it. Nothing where it has none, or what is bounded was
    /// not measured.
    pub fn share(&self) -> Option<f64> {
        let bound = self.bound?;
        let figure = self.at(bound.at)?;
        Some(match bound.limit {
            Limit::AtMost => figure / bound.figure,
            Limit::AtLeast => bound.figure / figure,
        })
    }

    /// Whether it stays within its bound, if it has one.
    pub fn is_within(&self) -> bool {
        self.bound.is_none() || self.share().is_some_and(|share| share <= 1.0)
    }

    /// Prints it, adds it to the file if one is named, and says whether it stays within its bound.
    ///
    /// # Panics
    /// When the file cannot be written: a run without its figures must not pass for one.
    pub fn tell(&self) -> bool {
        println!("{self}");
        if let Some(path) = std::env::var_os(FILE) {
            let line = serde_json::to_string(self).expect("a row is plain data");
            let file = OpenOptions::new().create(true).append(true).open(path);
            writeln!(file.expect("the file of figures"), "{line}").expect("room for a line");
        }
        self.is_within()
    }

    /// Its bound in words, with the issue that asks for it.
    pub fn bound_in_words(&self) -> String {
        self.bound.map_or_else(String::new, |bound| {
            let side = match bound.limit {
                Limit::AtMost => "at most",
                Limit::AtLeast => "at least",
            };
            let figure = match bound.at {
                At::Ratio => three_digits(bound.figure),
                _ => self.unit.write(bound.figure),
            };
            let over = if self.is_within() { "" } else { ", OVER" };
            format!("{} {side} {figure} (issue {}{over})", bound.at.name(), bound.issue)
        })
    }

    /// The ratio in words: small ones as one to so many.
    pub fn ratio_in_words(&self) -> String {
        self.ratio().map_or_else(String::new, |ratio| {
            if ratio < 0.1 { format!("1/{:.0}", 1.0 / ratio) } else { three_digits(ratio) }
        })
    }
}

impl fmt::Display for Row {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{}: {}", self.bench, self.name)?;
        if self.count > 1 {
            write!(to, ", {} times", self.count)?;
        }
        let named = |(at, figure): (&At, &f64)| {
            let figure = self.unit.write(*figure);
            if self.count > 1 { format!("{} {figure}", at.name()) } else { figure }
        };
        let figures: Vec<String> = self.figures.iter().map(named).collect();
        write!(to, ": {}", figures.join(", "))?;
        if let Some(peer) = &self.peer {
            let (theirs, ratio) = (self.unit.write(peer.median), self.ratio_in_words());
            write!(to, "; {} {theirs}, ratio {ratio}", peer.name)?;
        }
        for more in [&self.bound_in_words(), &self.note] {
            if !more.is_empty() {
                write!(to, "; {more}")?;
            }
        }
        Ok(())
    }
}

/// The measurement that so large a part of all does not exceed (nearest rank).
fn rank(sorted: &[f64], at: At) -> f64 {
    let part = match at {
        At::Least => 0.0,
        At::Median | At::Ratio => 0.5,
        At::P95 => 0.95,
        At::P99 => 0.99,
        At::Most => 1.0,
    };
    let place = (part * sorted.len() as f64).ceil() as usize;
    sorted.get(place.saturating_sub(1)).copied().unwrap_or(f64::NAN)
}

/// The rows of a file that benches wrote.
///
/// # Errors
/// A line is no row: which.
pub fn read(text: &str) -> Result<Vec<Row>, String> {
    let row = |(place, line): (usize, &str)| {
        serde_json::from_str(line).map_err(|error| format!("line {}: {error}", place + 1))
    };
    text.lines().enumerate().map(row).collect()
}

#[cfg(test)]
mod tests {
    use super::{At, Row, read};
    use crate::Unit;

    #[test]
    fn ranks_are_those_that_so_many_do_not_exceed() {
        let row = Row::new("Bench", "steps", Unit::Millis, (1..=200).rev().map(f64::from));
        let figures = At::MEASURED.map(|at| row.at(at));
        assert_eq!(figures, [1.0, 100.0, 190.0, 198.0, 200.0].map(Some));
    }

    #[test]
    fn few_measurements_have_no_percentiles() {
        let row = Row::new("Bench", "steps", Unit::Millis, (0..19).map(f64::from));
        assert_eq!((row.at(At::P95), row.at(At::P99)), (None, None));
        assert_eq!(row.at(At::Median), Some(9.0));
        let one = Row::one("Bench", "size", Unit::Megabytes, 12.0);
        assert_eq!(one.figures.len(), 1);
    }

    #[test]
    fn a_bound_is_kept_or_broken() {
        let row = |figure| Row::one("Bench", "size", Unit::Megabytes, figure);
        assert!(row(15.0).at_most(At::Median, 15.0, 10).is_within());
        assert!(!row(15.1).at_most(At::Median, 15.0, 10).is_within());
        assert!(!row(99.0).at_least(At::Median, 100.0, 9).is_within());
        // What was bounded and not measured is not within.
        assert!(!row(1.0).at_most(At::P99, 15.0, 10).is_within());
        let halved = row(5.0).beside("the other", 10.0).at_most(At::Ratio, 0.5, 3);
        assert_eq!((halved.ratio(), halved.share()), (Some(0.5), Some(1.0)));
        assert!(halved.is_within());
    }

    #[test]
    fn a_row_is_read_as_it_was_written() {
        let row = Row::new("Bench", "steps", Unit::Micros, [1.0, 2.5]).beside("the other", 3.0);
        let row = row.at_most(At::Most, 2.0, 4).note("with the cover off");
        let line = serde_json::to_string(&row).expect("plain data");
        assert_eq!(read(&line), Ok(vec![row.clone()]));
        assert!(read("{}").is_err());
        let shown = row.to_string();
        assert!(shown.contains("most 2.50 µs") && shown.contains("issue 4, OVER"), "{shown}");
    }
}
