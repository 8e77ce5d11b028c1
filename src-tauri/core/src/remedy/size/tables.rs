//! The figures and preferred values that parts are sized by, as tables of facts with their marks.

use std::sync::LazyLock;

use serde::Deserialize;

/// A figure of `data/sizing.csv`.
#[derive(Clone, Debug, Deserialize)]
pub struct SizingFigure {
    /// Its name.
    pub figure: String,
    /// The number.
    pub value: f64,
    /// Its unit.
    pub unit: String,
    /// Where it comes from: an id of `data/sources.csv`.
    pub source: String,
    /// How far it was checked.
    pub mark: String,
    /// What it is.
    pub note: String,
}

/// A series of `data/preferred.csv`.
#[derive(Clone, Debug, Deserialize)]
pub struct Preferred {
    /// Its name.
    pub series: String,
    /// The unit of its values.
    pub unit: String,
    /// The values, from the smallest, with blanks between.
    values: String,
    /// How far it was checked.
    pub mark: String,
    /// Where it comes from.
    pub note: String,
}

impl Preferred {
    /// The values, from the smallest.
    pub fn values(&self) -> Vec<f64> {
        self.values.split(' ').filter_map(|value| value.parse().ok()).collect()
    }
}

static FIGURES: LazyLock<Vec<SizingFigure>> = LazyLock::new(|| {
    let text = include_str!("../../../data/sizing.csv");
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
});

static PREFERRED: LazyLock<Vec<Preferred>> = LazyLock::new(|| {
    let text = include_str!("../../../data/preferred.csv");
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
});

/// Every figure.
pub fn figures() -> &'static [SizingFigure] {
    &FIGURES
}

/// A figure by its name. One that is not there is not a number, and nothing sized by it is either.
pub fn figure(name: &str) -> f64 {
    let row = FIGURES.iter().find(|row| row.figure == name);
    row.map_or(f64::NAN, |row| row.value)
}

/// Every series of preferred values.
pub fn preferred() -> &'static [Preferred] {
    &PREFERRED
}

#[cfg(test)]
mod tests {
    use super::{FIGURES, PREFERRED, figure};
    use crate::figure::Source;

    #[test]
    fn every_row_is_read_and_names_a_source_that_is_known() {
        for (read, text) in [
            (FIGURES.len(), include_str!("../../../data/sizing.csv")),
            (PREFERRED.len(), include_str!("../../../data/preferred.csv")),
        ] {
            assert_eq!(read, text.lines().count() - 1);
        }
        for row in FIGURES.iter() {
            assert!(Source::ALL.iter().any(|source| source.id() == row.source), "{row:?}");
        }
        for series in PREFERRED.iter() {
            let values = series.values();
            assert_eq!(values.len(), series.values.split(' ').count(), "{series:?}");
            assert!(values.windows(2).all(|pair| pair[0] < pair[1]), "{series:?}");
        }
        assert!(figure("no such figure").is_nan());
    }

    /// Every name that the sizing asks for stands in the table: what is not there would be no number.
    #[test]
    fn every_figure_that_is_asked_for_is_there() {
        let sources = [
            include_str!("bond.rs"),
            include_str!("class_y.rs"),
            include_str!("cord.rs"),
            include_str!("dropper.rs"),
            include_str!("fuse.rs"),
            include_str!("transformer.rs"),
        ];
        let mut asked = 0;
        for source in sources {
            for name in source.split("figure(\"").skip(1).filter_map(|rest| rest.split('"').next())
            {
                assert!(!figure(name).is_nan(), "{name}");
                asked += 1;
            }
        }
        assert!(asked > 10, "{asked}");
    }
}
