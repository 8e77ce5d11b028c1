//! Tubes and their heaters: offers types while a person types, reads lists, studies them.

use std::ops::RangeInclusive;

use serde::Serialize;
use serde_json::Value;

use super::error::Problem;
use super::heater_views::{HeaterDrawing, HeaterView, TubeHit, TubeRead};
use super::heater_words::{HeaterWords, clash_message};
use super::session::Workbench;
use super::tube_words::{hit, hit_of, row};
use crate::fields::{FieldError, number_range};
use crate::heaters::{
    Known, OVER, Reading, Study, Tube, UNDER, lamps_like, read_label, study, suggest,
};
use crate::inspection::{Findings, read_tubes};
use crate::supply::{HERTZ, VOLTS};
use crate::words::{Message, Words};

/// At most so many types are offered while a person types.
const OFFERED: usize = 8;

/// A study of heaters for scripts.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct HeaterFigures {
    /// Heater volts that count, V.
    pub sum_v: f64,
    /// Current of the string, or of all heaters in parallel, A.
    pub current_a: Option<f64>,
    /// Whether all heaters draw one current.
    pub fits_series: bool,
    /// What the list reads as.
    pub reading: &'static str,
    /// The dropper that takes up the rest of the line, Ω.
    pub dropper_ohm: Option<f64>,
    /// What cannot be as listed.
    pub clashes: Vec<String>,
    /// Tubes of which no heater voltage is known.
    pub unknown: Vec<String>,
}

impl Workbench {
    /// Types that may be meant by what was typed so far, the likeliest first.
    pub fn find_tubes(&self, text: &str) -> Vec<TubeHit> {
        let mut hits: Vec<TubeHit> =
            suggest(text, OFFERED).iter().map(|suggestion| hit(suggestion, &self.words)).collect();
        let tube = Tube::of(text);
        let lamps = lamps_like(text);
        hits.truncate(OFFERED - lamps.len().min(OFFERED - 1));
        // A number that is a tube as well comes first as the tube.
        let place = hits.len().min(1);
        let lamps: Vec<TubeHit> =
            lamps.iter().take(OFFERED - 1).map(|lamp| hit_of(lamp, &self.words)).collect();
        hits.splice(place..place, lamps);
        if tube.known == Known::ByRule {
            hits.truncate(OFFERED - 1);
            // What is typed is a whole number of the list only where it is offered as such.
            let place = if hits.iter().any(|hit| !hit.corrected) { hits.len() } else { 0 };
            hits.insert(place, hit_of(&tube, &self.words));
        }
        hits
    }

    /// The tubes of a whole list, as it is pasted.
    pub fn read_tubes(&self, text: &str) -> Vec<TubeRead> {
        let read = read_label(text).into_iter();
        read.map(|read| TubeRead {
            name: if read.tube.known == Known::Unknown {
                read.written.clone()
            } else {
                read.tube.name.clone()
            },
            known: read.tube.known,
            written: read.written,
        })
        .collect()
    }

    /// What a list of tubes says against a supply of these volts and hertz.
    ///
    /// # Errors
    /// A field that does not fit, by its name.
    pub fn study_heaters(
        &self,
        tubes: Value,
        volts: f64,
        hertz: f64,
    ) -> Result<HeaterView, Problem> {
        let study = studied(tubes, volts, hertz)?;
        Ok(view(&study, hertz, &self.words))
    }
}

/// A study of tubes for scripts, and the same in words.
///
/// # Errors
/// A field that does not fit, by its name.
pub fn heater_figures(
    tubes: Vec<String>,
    volts: f64,
    hertz: f64,
    words: &Words,
) -> Result<(HeaterFigures, HeaterView), Problem> {
    let study = studied(Value::from(tubes), volts, hertz)?;
    let figures = HeaterFigures {
        sum_v: study.sum_volts,
        current_a: study.amperes,
        fits_series: study.fits_series,
        reading: study.reading.id(),
        dropper_ohm: study.dropper().map(|dropper| dropper.ohms),
        clashes: study.clashes.iter().map(|clash| words.say(&clash_message(clash))).collect(),
        unknown: study.unknown(),
    };
    Ok((figures, view(&study, hertz, words)))
}

fn studied(tubes: Value, volts: f64, hertz: f64) -> Result<Study, FieldError> {
    let within = |field: &str, value: f64, range: RangeInclusive<f64>| {
        let fits = range.contains(&value).then_some(());
        fits.ok_or_else(|| FieldError::new(field, number_range(&range)))
    };
    within("volts", volts, VOLTS)?;
    within("hertz", hertz, HERTZ)?;
    Ok(study(&read_tubes(tubes, "tubes")?, volts))
}

/// What the list of tubes of an inspection reads as, in a line.
pub(super) fn heater_hint(findings: &Findings, words: &Words) -> Option<String> {
    let study = findings.heaters()?;
    let told = HeaterWords { study: &study, hertz: findings.supply.hertz, words };
    let hint = Message::new("heaters-hint")
        .text("heading", told.heading())
        .text("suggests", told.suggests());
    Some(words.say(&hint))
}

fn view(study: &Study, hertz: f64, words: &Words) -> HeaterView {
    let told = HeaterWords { study, hertz, words };
    let drawing = match study.reading {
        _ if study.parts.is_empty() => HeaterDrawing::Nothing,
        Reading::ParallelTransformer | Reading::Battery => HeaterDrawing::SideBySide,
        _ => HeaterDrawing::Stack,
    };
    HeaterView {
        tubes: study.parts.iter().map(|part| row(part, words)).collect(),
        reading: study.reading.id(),
        heading: told.heading(),
        sum: told.sum(),
        suggests: told.suggests(),
        cannot_prove: told.cannot_prove(),
        clashes: told.clashes(),
        drawing,
        line_volts: study.line_volts,
        low_volts: study.line_volts * UNDER.value,
        high_volts: study.line_volts * OVER.value,
        sum_volts: study.sum_volts,
        left_volts: told.left(),
        caution: told.caution(),
        figures: told.figures(),
        unknown: study.unknown(),
    }
}
