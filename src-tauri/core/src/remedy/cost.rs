//! What each modification costs in minutes and in parts: `data/remedies.csv`, all of it common practice.

use std::sync::LazyLock;

use serde::Deserialize;

use super::modification::Modification;

/// What a modification costs.
#[derive(Clone, Debug, Default, Deserialize)]
pub struct Cost {
    /// The modification's id.
    pub modification: String,
    /// Minutes of somebody who has done it before.
    pub minutes: f64,
    /// Parts, in US dollars or euros of 2024; they hardly differ beside how rough this is.
    pub price: f64,
    /// How far the row was checked.
    pub mark: String,
    /// What is counted.
    pub note: String,
}

static COSTS: LazyLock<Vec<Cost>> = LazyLock::new(|| {
    let text = include_str!("../../data/remedies.csv");
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
});

/// The cost of a modification.
pub fn cost_of(modification: Modification) -> Cost {
    let row = COSTS.iter().find(|row| row.modification == modification.id());
    row.cloned().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::{COSTS, Modification, cost_of};

    #[test]
    fn every_modification_has_its_row_and_there_are_no_others() {
        let rows: Vec<&str> = COSTS.iter().map(|row| row.modification.as_str()).collect();
        assert_eq!(rows, Modification::IDS);
        assert!(Modification::ALL.iter().all(|one| cost_of(*one).minutes > 0.0));
        assert!(COSTS.iter().all(|row| row.mark == "common practice, no source"));
    }
}
