//! What the unit is plugged into: volts, hertz and which contacts are hot; plugs, outlets, wire colours.
//!
//! It does not know what is plugged in.

mod preset;
mod tables;

use serde::Serialize;
use serde_json::Value;

use crate::fields::{FieldError, Fields, id_enum};
use crate::figure::{Figure, Mark, Source};
use crate::words::Message;

pub use preset::{PRESETS, Preset};
pub use tables::{OutletFault, PlugKind, WireColours, outlet_faults, plug_kinds, wire_colours};

/// How far above nominal a supply may be where nothing is said: 1.1 times.
pub const HIGHEST_RATIO: Figure = Figure::new(1.1, "1", Source::Iec60038, Mark::Verified);

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
    }
}

impl Feed {
    /// The voltages of the hot and the neutral contact against earth, for `volts` between them.
    pub fn contacts(self, volts: f64) -> [f64; 2] {
        match self {
            Self::Direct => [volts, 0.0],
            Self::BothHot => [volts / 2.0, -volts / 2.0],
        }
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
}

impl Supply {
    /// A supply with one hot contact, up to 1.1 times its nominal volts.
    pub fn new(volts: f64, hertz: f64) -> Self {
        Self { volts, hertz, volts_max: volts * HIGHEST_RATIO.value, feed: Feed::Direct }
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
        fields.finish(&["volts", "hertz", "volts_max", "feed"])?;
        Ok(Self { volts, hertz, volts_max, feed })
    }

    /// The voltages of the hot and the neutral contact at a voltage between them, V rms.
    pub fn contacts(&self, volts: f64) -> [f64; 2] {
        self.feed.contacts(volts)
    }

    /// The most that a contact stands at against earth, at a voltage between the two, V rms.
    pub fn highest_contact(&self, volts: f64) -> f64 {
        self.contacts(volts).iter().fold(0.0, |high, volts| volts.abs().max(high))
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
        Some("isolated" | "step_down_auto") => Err(FieldError::new(
            path,
            Message::new("takes-feed-not-yet").text("ids", Feed::IDS.join(", ")),
        )),
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
            (json!({"volts": 120, "hertz": 60, "feed": "isolated"}), "supply.feed"),
            (json!({"volts": 120, "hertz": 60, "phase": 1}), "supply.phase"),
        ] {
            assert_eq!(Supply::read(bad, "supply").unwrap_err().field, field);
        }
    }

    #[test]
    fn both_hot_halves_the_volts_against_earth() {
        assert_eq!(Feed::BothHot.contacts(230.0), [115.0, -115.0]);
    }
}
