//! The parts of the world to choose from, with what is usual there.

use serde::Serialize;

use crate::supply::{PRESETS, Preset, Region};
use crate::words::{Message, Words, hertz, volts};

/// A part of the world in words.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RegionView {
    /// Its id.
    pub id: Region,
    /// Its name.
    pub name: String,
    /// The country in a locale, so that the words name the protection that is usual there: `en-US`.
    pub country: &'static str,
    /// The ids of the presets of its outlets; one of them is taken for granted only where there is no other.
    pub presets: &'static [&'static str],
    /// What is usual there, a sentence each: supply, plugs, wire colours, protection.
    pub facts: Vec<String>,
}

/// The parts of the world to choose from.
pub fn regions(words: &Words) -> Vec<RegionView> {
    Region::ALL.iter().map(|region| view(*region, words)).collect()
}

fn view(region: Region, words: &Words) -> RegionView {
    let own = |what: &str| Message::new(format!("region-{what}-{}", region.id()));
    let wire = |what: &str| Message::new(format!("wire-{what}-{}", region.wires().id()));
    let wires = Message::new("region-wires")
        .message("line", wire("line"))
        .message("neutral", wire("neutral"))
        .message("earth", wire("earth"));
    let named = PRESETS.iter().filter(|preset| region.presets().contains(&preset.id));
    let supplies = named.map(|Preset { supply, .. }| {
        Message::new("region-one-supply")
            .text("volts", volts(supply.volts))
            .text("hertz", hertz(supply.hertz))
    });
    let supplies = supplies.collect();
    let supply = Message::new("region-supply").list("supplies", supplies);
    let facts = [supply, own("plugs"), wires, own("protection")];
    RegionView {
        id: region,
        name: words.say(&own("name")),
        country: region.country(),
        presets: region.presets(),
        facts: facts.iter().map(|fact| words.say(fact)).collect(),
    }
}
