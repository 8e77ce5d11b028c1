//! What inspections take, played through on synthetic units.

use std::ops::RangeInclusive;

use super::error::Problem;
use crate::fields::FieldError;
use crate::simulation::{Figures, simulate};
use crate::words::Message;

/// How many units make sense: for each of 108 lines, some milliseconds each.
const UNITS: RangeInclusive<u64> = 1..=100_000;

/// Inspects synthetic units in each order of asking.
///
/// # Errors
/// More units than that, or none.
pub fn simulated(units: u64, seed: u64) -> Result<Figures, Problem> {
    if !UNITS.contains(&units) {
        let message = Message::new("takes-number-from-to")
            .text("low", UNITS.start().to_string())
            .text("high", UNITS.end().to_string());
        return Err(FieldError::new("units", message).into());
    }
    Ok(simulate(units, seed))
}
