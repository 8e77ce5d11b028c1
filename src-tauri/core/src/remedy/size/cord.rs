//! Which conductors a cord takes.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::fields::id_enum;

id_enum! {
    /// How conductors are counted where the unit is used.
    pub enum Measure {
        /// AWG.
        Awg = "awg",
        /// mm².
        Mm2 = "mm2",
    }
}

/// A row of `data/cords.csv`.
#[derive(Clone, Debug, Deserialize)]
pub struct CordRow {
    /// The size as it is printed on the cord.
    pub size: String,
    /// Its section, mm².
    pub mm2: f64,
    /// What it may carry, as printed: two figures where a third conductor makes it less.
    #[serde(rename = "ampacity_A")]
    pub ampacity: String,
    /// For what.
    pub condition: String,
    /// How far the row was checked.
    pub confidence: String,
}

/// A cord.
#[derive(Clone, Debug, PartialEq)]
pub struct CordSize {
    /// The size as it is printed on the cord.
    pub size: String,
    /// Its section, mm².
    pub mm2: f64,
    /// What it may carry with so many conductors, A.
    pub amperes: f64,
    /// How far that was checked.
    pub mark: String,
}

static ROWS: LazyLock<Vec<CordRow>> = LazyLock::new(|| {
    let text = include_str!("../../../data/cords.csv");
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
});

/// Every row of the table.
pub fn cord_rows() -> &'static [CordRow] {
    &ROWS
}

/// The thinnest that is sold for portable units: 18 AWG (quoted), 0.75 mm² (from memory); mm².
const THINNEST_AWG_MM2: f64 = 0.8;
const THINNEST_MM2: f64 = 0.75;

impl CordRow {
    fn is_of(&self, measure: Measure) -> bool {
        let thinnest = match measure {
            Measure::Awg => self.size.ends_with("AWG") && self.mm2 >= THINNEST_AWG_MM2,
            Measure::Mm2 => self.size.ends_with("mm2") && self.mm2 >= THINNEST_MM2,
        };
        thinnest && self.amperes(2).is_some()
    }

    /// What it may carry, A: the first figure, the lower of two where there are three conductors. A figure in
    /// brackets is for short cords and not taken.
    fn amperes(&self, conductors: u8) -> Option<f64> {
        let first = |text: &str| text.split_whitespace().next().and_then(|text| text.parse().ok());
        let mut parts = self.ampacity.split('/').filter_map(first);
        let two: f64 = parts.next()?;
        match (conductors > 2, parts.next(), self.size.ends_with("AWG")) {
            (false, ..) => Some(two),
            (true, Some(three), _) => Some(three.min(two)),
            // The metric table does not tell them apart; of the other a figure for two says nothing of three.
            (true, None, is_awg) => (!is_awg).then_some(two),
        }
    }
}

/// The thinnest cord that carries a current in A with so many conductors; nothing where the table has none.
pub fn cord_for(measure: Measure, amperes: f64, conductors: u8) -> Option<CordSize> {
    let fits = |row: &&CordRow| {
        row.is_of(measure) && row.amperes(conductors).is_some_and(|carries| carries >= amperes)
    };
    let row = ROWS.iter().filter(fits).min_by(|one, other| one.mm2.total_cmp(&other.mm2))?;
    Some(CordSize {
        size: row.size.clone(),
        mm2: row.mm2,
        amperes: row.amperes(conductors)?,
        mark: row.confidence.clone(),
    })
}
