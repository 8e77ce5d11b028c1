//! What the unit is plugged into: volts, hertz and which contacts are hot; plugs, outlets, wire colours.
//!
//! It does not know what is plugged in.

mod contacts;
mod preset;
mod region;
mod tables;

use serde::Serialize;
use serde_json::Value;

use crate::fields::{FieldError, Fields, id_enum};
use crate::figure::{Figure, Mark, Source};
use crate::words::Message;

pub use contacts::{Contacts, ISOLATED_STRAY};
pub use preset::{PRESETS, Preset};
pub use region::Region;
pub use tables::{
    OutletFault, PlugKind, WireCode, WireColours, outlet_faults, plug_kinds, wire_colours,
};

/// How far above nominal a supply may be where nothing is said: 1.1 times.
pub const HIGHEST_RATIO: Figure = Figure::new(1.1, "1", Source::Iec60038, Mark::Verified);

/// What goes into a step-down autotransformer where nobody says so, as a multiple of what comes out: 100 V sets
/// on 200 V, 120 V sets on 240 V.
pub const STEP_DOWN_RATIO: Figure =
    Figure::new(2.0, "1", Source::TypicalValues, Mark::CommonPractice);

/// The largest `volts_max` that is believed, as a multiple of `volts`.
const BELIEVED_RATIO: Figure = Figure::new(1.25, "1", Source::Model, Mark::Assumption);

id_enum! {
    /// Which outlet contacts carry voltage against earth.
    #[derive(Default)]
    pub enum Feed {
        /// One hot contact, one neutral near earth.
        #[default]
        Direct = "direct",
        /// Both contacts hot, each at half the volts: two-phase or unearthed systems.
        BothHot = "both_hot",
        /// Behind an isolating transformer that feeds nothing else: neither contact is joined to earth.
        Isolated = "isolated",
        /// Behind a step-down autotransformer: either contact can be at its input voltage.
        StepDownAuto = "step_down_auto",
    }
}

impl Feed {
    /// Whether one contact is the neutral, so that a plug that goes in one way only keeps a pin on it.
    pub const fn has_fixed_neutral(self) -> bool {
        matches!(self, Self::Direct | Self::BothHot)
    }
}

/// Nominal voltages that a supply can have, V rms.
pub const VOLTS: std::ops::RangeInclusive<f64> = 1.0..=1000.0;
/// Frequencies that a supply can have, Hz.
pub const HERTZ: std::ops::RangeInclusive<f64> = 15.0..=400.0;

/// A supply: what is between the contacts of the outlet.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct Supply {
    /// Nominal voltage between the contacts, V rms, 1 to 1000.
    pub volts: f64,
    /// Frequency, Hz, 15 to 400.
    pub hertz: f64,
    /// The highest voltage to be expected, V rms, up to 1.25 × volts.
    pub volts_max: f64,
    /// Which contacts are hot.
    pub feed: Feed,
    /// What goes into a step-down autotransformer, V rms, from volts to 1000; twice the volts where nobody says so.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub input_volts: Option<f64>,
}

impl Supply {
    /// A supply with one hot contact, up to 1.1 times its nominal volts.
    pub fn new(volts: f64, hertz: f64) -> Self {
        let volts_max = volts * HIGHEST_RATIO.value;
        Self { volts, hertz, volts_max, feed: Feed::Direct, input_volts: None }
    }

    /// Reads a supply from an input file and refuses what is not covered.
    ///
    /// # Errors
    /// Names the field: volts 1 to 1000, hertz 15 to 400, volts_max from volts to 1.25 × volts.
    pub fn read(value: Value, path: &str) -> Result<Self, FieldError> {
        let mut fields = Fields::of(value, path)?;
        let given = fields.number("volts", VOLTS)?;
        let volts = fields.required("volts", given)?;
        let hertz = read_hertz(&mut fields)?;
        let feed = read_feed(&mut fields)?;
        let volts_max = fields
            .number("volts_max", volts..=volts * BELIEVED_RATIO.value)?
            .unwrap_or(volts * HIGHEST_RATIO.value);
        let input_volts = read_input_volts(&mut fields, feed, volts)?;
        fields.finish(&["volts", "hertz", "volts_max", "feed", "input_volts"])?;
        Ok(Self { volts, hertz, volts_max, feed, input_volts })
    }

    /// The hot and the neutral contact at a voltage between them, V rms.
    pub fn contacts(&self, volts: f64) -> Contacts {
        match self.feed {
            Feed::Direct => Contacts::held(volts, 0.0),
            Feed::BothHot => Contacts::held(volts / 2.0, -volts / 2.0),
            Feed::Isolated => Contacts::floating(volts),
            Feed::StepDownAuto => {
                let input = volts * self.step_down_ratio();
                Contacts::held(input, input - volts)
            }
        }
    }

    /// Input over output of the autotransformer in front, 1 or more.
    fn step_down_ratio(&self) -> f64 {
        self.input_volts.map_or(STEP_DOWN_RATIO.value, |input| input / self.volts)
    }

    /// The most that a contact can stand at against earth, at a voltage between the two, V rms.
    pub fn highest_contact(&self, volts: f64) -> f64 {
        self.contacts(volts).highest()
    }

    /// The same supply by another feed, at the same volts between the contacts.
    #[must_use]
    pub const fn fed_by(self, feed: Feed) -> Self {
        Self { feed, input_volts: None, ..self }
    }
}

/// The input of an autotransformer: only where there is one.
fn read_input_volts(
    fields: &mut Fields,
    feed: Feed,
    volts: f64,
) -> Result<Option<f64>, FieldError> {
    if feed == Feed::StepDownAuto {
        return fields.number("input_volts", volts..=*VOLTS.end());
    }
    match fields.take("input_volts") {
        None => Ok(None),
        Some(_) => Err(FieldError::new(
            fields.path("input_volts"),
            Message::new("takes-only-with-step-down"),
        )),
    }
}

fn read_hertz(fields: &mut Fields) -> Result<f64, FieldError> {
    let value = fields.take("hertz");
    let path = fields.path("hertz");
    let value = fields.required("hertz", value)?;
    match value.as_f64() {
        Some(0.0) => Err(FieldError::new(path, Message::new("takes-no-direct-current"))),
        Some(hertz) if HERTZ.contains(&hertz) => Ok(hertz),
        _ => Err(FieldError::new(path, crate::fields::number_range(&HERTZ))),
    }
}

fn read_feed(fields: &mut Fields) -> Result<Feed, FieldError> {
    let Some(value) = fields.take("feed") else {
        return Ok(Feed::Direct);
    };
    let path = fields.path("feed");
    match value.as_str() {
        Some("dc") => Err(FieldError::new(path, Message::new("takes-no-direct-current"))),
        other => other.and_then(Feed::of).ok_or_else(|| FieldError::one_of(path, Feed::IDS)),
    }
}

#[cfg(test)]
mod tests {
    use super::{Feed, Supply};
    use serde_json::json;

    #[test]
    fn direct_current_is_said_to_be_not_covered() {
        for bad in
            [json!({"volts": 110, "hertz": 0}), json!({"volts": 110, "hertz": 50, "feed": "dc"})]
        {
            let error = Supply::read(bad, "supply").unwrap_err();
            assert_eq!(error.message.id, "takes-no-direct-current");
        }
    }

    #[test]
    fn bad_figures_are_refused_by_name() {
        for (bad, field) in [
            (json!({"hertz": 60}), "supply.volts"),
            (json!({"volts": -120, "hertz": 60}), "supply.volts"),
            (json!({"volts": "120", "hertz": 60}), "supply.volts"),
            (json!({"volts": 120, "hertz": 14.9}), "supply.hertz"),
            (json!({"volts": 120, "hertz": 60, "volts_max": 119}), "supply.volts_max"),
            (json!({"volts": 120, "hertz": 60, "volts_max": 151}), "supply.volts_max"),
            (json!({"volts": 120, "hertz": 60, "input_volts": 240}), "supply.input_volts"),
            (
                json!({"volts": 120, "hertz": 60, "feed": "step_down_auto", "input_volts": 110}),
                "supply.input_volts",
            ),
            (json!({"volts": 120, "hertz": 60, "phase": 1}), "supply.phase"),
        ] {
            assert_eq!(Supply::read(bad, "supply").unwrap_err().field, field);
        }
    }

    #[test]
    fn both_hot_halves_the_volts_against_earth() {
        let both_hot = Supply::new(230.0, 50.0).fed_by(Feed::BothHot);
        assert_eq!(both_hot.contacts(230.0).volts, [115.0, -115.0]);
    }

    #[test]
    fn behind_an_autotransformer_a_contact_stands_at_its_input() {
        let file = json!({"volts": 120, "hertz": 60, "feed": "step_down_auto", "input_volts": 230});
        let known = Supply::read(file, "supply").unwrap();
        assert_eq!(known.contacts(120.0).volts, [230.0, 110.0]);
        assert_eq!(known.highest_contact(132.0), 253.0);
        let unknown = Supply::new(120.0, 60.0).fed_by(Feed::StepDownAuto);
        assert_eq!(unknown.contacts(120.0).volts, [240.0, 120.0]);
    }

    #[test]
    fn behind_an_isolating_transformer_a_contact_may_still_come_to_stand_at_all_of_it() {
        assert_eq!(Supply::new(120.0, 60.0).fed_by(Feed::Isolated).highest_contact(120.0), 120.0);
    }
}
