//! What the kills came to, counted.

use std::collections::BTreeMap;
use std::fmt;

use coldchassis_tests::killing::Stage;

/// The kills that were meant for a stage or that came in it.
#[derive(Clone, Copy, Default)]
pub struct Row {
    /// Meant for it.
    pub aimed: u64,
    /// Came while it was under way.
    pub inside: u64,
    /// Of those, what was under way was there whole afterwards.
    pub whole: u64,
    /// Of those, nothing of it was there.
    pub absent: u64,
}

/// Everything that is counted.
#[derive(Default)]
pub struct Tally {
    pub rows: BTreeMap<Stage, Row>,
    /// Kills that came between two commands.
    pub between: u64,
    /// Other things, by their name.
    counts: BTreeMap<&'static str, u64>,
}

impl Tally {
    pub fn row(&mut self, stage: Stage) -> &mut Row {
        self.rows.entry(stage).or_default()
    }

    pub fn count(&mut self, what: &'static str, more: usize) {
        *self.counts.entry(what).or_default() += more as u64;
    }

    pub fn add(&mut self, other: Self) {
        for (stage, other) in other.rows {
            let row = self.row(stage);
            row.aimed += other.aimed;
            row.inside += other.inside;
            row.whole += other.whole;
            row.absent += other.absent;
        }
        for (what, more) in other.counts {
            *self.counts.entry(what).or_default() += more;
        }
        self.between += other.between;
    }

    fn inside(&self) -> u64 {
        self.rows.values().map(|row| row.inside).sum()
    }

    pub fn kills(&self) -> u64 {
        self.inside() + self.between
    }

    /// No stage may be passed by: then nothing would be known of it.
    pub fn check_that_it_says_something(&self) {
        for stage in Stage::ALL {
            let row = self.rows.get(&stage).copied().unwrap_or_default();
            assert!(row.inside > 0, "no kill came in {stage:?}");
            let is_large = row.aimed >= 10;
            assert!(!is_large || row.inside * 3 >= row.aimed, "few kills came in {stage:?}");
        }
        let (whole, absent) =
            self.rows.values().fold((0, 0), |sum, row| (sum.0 + row.whole, sum.1 + row.absent));
        assert!(whole > 0 && absent > 0, "{whole} were there whole, {absent} not at all");
    }
}

impl fmt::Display for Tally {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(
            f,
            "{:10} {:>6} {:>7} {:>6} {:>6}",
            "stage", "aimed", "inside", "whole", "absent"
        )?;
        for (stage, row) in &self.rows {
            let Row { aimed, inside, whole, absent } = row;
            writeln!(f, "{:10} {aimed:6} {inside:7} {whole:6} {absent:6}", stage.id())?;
        }
        writeln!(
            f,
            "{} kills: {} inside, {} between two commands",
            self.kills(),
            self.inside(),
            self.between
        )?;
        for (what, count) in &self.counts {
            writeln!(f, "{count:10} {what}")?;
        }
        Ok(())
    }
}
