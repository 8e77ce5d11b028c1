//! Ohmmeter readings: what an arrangement was to read, and the readings of an inspection one by one.

use std::collections::BTreeMap;

use serde::Serialize;
use serde_json::{Value, json};
use uuid::Uuid;

use super::commands::found;
use super::error::Problem;
use super::reading_views::ReadingsView;
use super::reading_words::ReadingWords;
use super::session::Workbench;
use super::views::InspectionView;
use crate::arrangement::{DirectParts, ReadingId, Spread, read_exposure, reading_range};
use crate::fields;
use crate::inspection::{Meter, read_meter};
use crate::words::{Message, Words, ohms};

/// The range of one reading; nothing for an end above the range of a usual meter.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RangeView {
    /// The least, Ω.
    pub low_ohm: Option<f64>,
    /// The most, Ω.
    pub high_ohm: Option<f64>,
}

impl RangeView {
    /// A range as a meter with this highest resistance shows it.
    pub(super) fn of(range: Spread, max_ohms: f64) -> Self {
        let shown = |ohms: f64| Some(ohms).filter(|ohms| *ohms <= max_ohms);
        Self { low_ohm: shown(range.low), high_ohm: shown(range.high) }
    }

    /// The range in words, such as `0.1 Ω to 100 Ω`.
    pub fn text(self, words: &Words) -> String {
        let end = |ohm: Option<f64>| {
            ohm.map_or_else(
                || words.say_id("reading-over-range"),
                |value| words.write(&ohms(value)),
            )
        };
        match (self.low_ohm, self.high_ohm) {
            (None, _) => end(None),
            (low, high) => words
                .say(&Message::new("reading-range").text("low", end(low)).text("high", end(high))),
        }
    }
}

/// What an ohmmeter reads of the arrangement in an input file, each reading by its id; empty for a unit
/// without a line side, which has no pins.
///
/// # Errors
/// Bad input, by its field.
pub fn readings_file(text: &[u8]) -> Result<BTreeMap<&'static str, RangeView>, Problem> {
    let file = read_exposure(fields::parse(text)?)?;
    let parts = DirectParts::sound(&file.values);
    let max_ohms = Meter::default().max_ohms;
    let range = |id: ReadingId| {
        let range = reading_range(&file.arrangement, id, &parts)?;
        Some((id.id(), RangeView::of(range, max_ohms)))
    };
    Ok(ReadingId::ohmmeter().filter_map(range).collect())
}

impl Workbench {
    /// The readings of an inspection: how to take each, and what those taken say.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn meter_readings(&self, inspection: Uuid) -> Result<ReadingsView, Problem> {
        let (inspection, unit) = self.find(inspection)?;
        let findings = self.read(&inspection, &unit)?;
        Ok(ReadingWords::new(&findings, &self.words).page())
    }

    /// Says which meter the readings are taken with: its highest resistance, accuracy in percent and digits.
    ///
    /// # Errors
    /// A figure does not fit, by its field.
    pub fn set_meter(&mut self, inspection: Uuid, meter: Value) -> Result<InspectionView, Problem> {
        let meter = read_meter(meter)?;
        let kept = json!({
            "max_ohms": meter.max_ohms, "percent": meter.percent, "digits": meter.digits,
        });
        self.set(inspection, found("meter", kept))
    }
}
