//! What is usual in a part of the world: its supplies, plugs, wire colours and the names of protection.
//!
//! A region only sets up what a new unit starts with. It judges nothing: where a unit is plugged in is asked.

use super::tables::WireCode;
use crate::fields::id_enum;

id_enum! {
    /// A part of the world with outlets of one kind.
    pub enum Region {
        /// United States and Canada.
        NorthAmerica = "north_america",
        /// Europe without Britain and Ireland.
        Europe = "europe",
        /// Britain and Ireland.
        Britain = "britain",
        /// Japan.
        Japan = "japan",
        /// Australia and New Zealand.
        Australia = "australia",
    }
}

impl Region {
    /// The ids of the presets of its outlets, the usual one first; Japan has two, and the town decides.
    pub const fn presets(self) -> &'static [&'static str] {
        match self {
            Self::NorthAmerica => &["120v_60hz"],
            Self::Europe | Self::Britain | Self::Australia => &["230v_50hz"],
            Self::Japan => &["100v_50hz", "100v_60hz"],
        }
    }

    /// The colours of the wires in its new cords.
    pub const fn wires(self) -> WireCode {
        match self {
            Self::NorthAmerica => WireCode::NorthAmerica,
            Self::Europe | Self::Britain | Self::Australia => WireCode::Iec,
            Self::Japan => WireCode::Japan,
        }
    }

    /// The country in a locale that makes the words name its protection, as in `en-US`.
    pub const fn country(self) -> &'static str {
        match self {
            Self::NorthAmerica => "US",
            Self::Europe => "EU",
            Self::Britain => "GB",
            Self::Japan => "JP",
            Self::Australia => "AU",
        }
    }

    /// The kinds of plug of its outlets, by their names in the table.
    pub const fn plugs(self) -> &'static [&'static str] {
        match self {
            Self::NorthAmerica => &["NEMA 1-15P polarised", "NEMA 5-15P"],
            Self::Europe => &["CEE 7/16 Europlug", "CEE 7/4 Schuko", "CEE 7/6 / socket E"],
            Self::Britain => &["BS 1363"],
            Self::Japan => &["JIS C 8303 2-pin"],
            Self::Australia => &["AS/NZS 3112 10 A"],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Region;
    use crate::supply::{PRESETS, plug_kinds};

    #[test]
    fn a_region_names_only_what_the_tables_have() {
        for region in Region::ALL {
            for id in region.presets() {
                assert!(PRESETS.iter().any(|preset| preset.id == *id && preset.of_outlet), "{id}");
            }
            for kind in region.plugs() {
                assert!(plug_kinds().iter().any(|row| row.kind == *kind), "{kind}");
            }
            assert!(region.wires().colours().is_some(), "{region:?}");
        }
    }

    #[test]
    fn its_supply_is_the_usual_one_of_the_region() {
        let first = |region: Region| {
            let id = region.presets().first().unwrap();
            let supply = PRESETS.iter().find(|preset| preset.id == *id).unwrap().supply;
            (supply.volts, supply.hertz)
        };
        assert_eq!(first(Region::NorthAmerica), (120.0, 60.0));
        assert_eq!(first(Region::Europe), (230.0, 50.0));
        assert_eq!(first(Region::Britain), (230.0, 50.0));
        assert_eq!(first(Region::Australia), (230.0, 50.0));
        assert_eq!(Region::Japan.presets(), ["100v_50hz", "100v_60hz"]);
    }
}
