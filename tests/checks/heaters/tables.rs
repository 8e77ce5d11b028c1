//! Rows of the reference tables on heaters, each able to say where its figures come from.

use std::path::Path;

use serde::Deserialize;
use serde::de::DeserializeOwned;

/// All rows of a table under `tests/reference`, and how many there have to be.
pub fn rows<T: DeserializeOwned>(table: &str, expected: usize) -> Vec<T> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("reference").join(table);
    let mut reader = csv::Reader::from_path(&path).unwrap_or_else(|e| panic!("{table}: {e}"));
    let rows: Vec<T> =
        reader.deserialize().map(|row| row.unwrap_or_else(|e| panic!("{table}: {e}"))).collect();
    assert_eq!(rows.len(), expected, "rows of {table}");
    rows
}

/// A line-up of one unit, with the sums as the reference works them out.
#[derive(Debug, Deserialize)]
pub struct LineUp {
    pub id: String,
    tubes: String,
    pub architecture: String,
    /// The line or battery voltage, V.
    pub supply_v: f64,
    /// Rated heater volts of all that counts, V.
    pub sum_heater_v: f64,
    pub heater_wiring: String,
    /// The current of the string, A.
    pub string_a: Option<f64>,
    /// Heaters that are connected in the other way, or count in no sum: `TYPE=6.3;TYPE=excluded`.
    pub overrides: String,
    /// Volts along one path where the string branches, V.
    pub path_v_if_branched: Option<f64>,
    /// How far the sum is over the line, %.
    pub sum_vs_supply_pct: Option<f64>,
    /// What is left for a dropper, V; below zero where the sum is over the line.
    pub dropper_v: Option<f64>,
    pub dropper_ohm: Option<f64>,
    pub dropper_w: Option<f64>,
    /// All heaters in parallel, A.
    pub parallel_total_a: Option<f64>,
    /// Where the line-up was seen.
    attested: String,
}

impl LineUp {
    pub fn tubes(&self) -> Vec<&str> {
        self.tubes.split(';').collect()
    }

    /// The row, its tubes and where they come from, for the message of a check.
    pub fn cite(&self) -> String {
        format!("{} {} [{}; {}]", self.id, self.tubes, self.architecture, self.attested)
    }
}

/// The line-ups: one hundred.
pub fn line_ups() -> Vec<LineUp> {
    rows("heater_line_ups.csv", 100)
}
