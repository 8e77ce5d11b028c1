//! Plug kinds, wire colours and outlet faults as tables of facts, each row with its mark.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::fields::id_enum;

/// A kind of plug with its dimensions.
#[derive(Clone, Debug, Deserialize)]
pub struct PlugKind {
    /// The name the standard gives it.
    #[serde(rename = "type")]
    pub kind: String,
    /// Where it is used.
    pub region: String,
    /// Number and shape of its pins.
    pub pins: String,
    /// Width of flat or diameter of round pins, mm, as printed.
    pub width_or_dia_mm: String,
    /// Whether it goes in both ways round.
    pub reversible: String,
    /// How far the row was checked.
    pub confidence: String,
}

/// The colours of line, neutral and earth in one region and time.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
pub struct WireColours {
    /// Where they were used.
    pub region: String,
    /// When.
    pub period: String,
    /// The line conductor.
    pub line: String,
    /// The neutral conductor.
    pub neutral: String,
    /// The earth conductor; red in some old European cords.
    pub earth: String,
    /// How far the row was checked.
    pub confidence: String,
}

/// A miswired outlet and what a three-lamp tester shows of it.
#[derive(Clone, Debug, Deserialize)]
pub struct OutletFault {
    /// What is wrong.
    pub fault: String,
    /// The lamp from hot to neutral.
    pub lamp_hot_neutral: String,
    /// The lamp from hot to earth.
    pub lamp_hot_ground: String,
    /// The lamp from neutral to earth.
    pub lamp_neutral_ground: String,
    /// What the tester says.
    pub tester_reading: String,
    /// How far the row was checked.
    pub confidence: String,
}

/// The plug kinds, NEMA WD 6, CEE 7, BS, AS/NZS and JIS.
pub fn plug_kinds() -> &'static [PlugKind] {
    static ROWS: LazyLock<Vec<PlugKind>> =
        LazyLock::new(|| rows(include_str!("../../data/plugs.csv")));
    &ROWS
}

/// The wire colours by region and time.
pub fn wire_colours() -> &'static [WireColours] {
    static ROWS: LazyLock<Vec<WireColours>> =
        LazyLock::new(|| rows(include_str!("../../data/wire_colours.csv")));
    &ROWS
}

id_enum! {
    /// The colours that new cords have somewhere, each a row of the table with words of its own.
    pub enum WireCode {
        /// United States and Canada.
        NorthAmerica = "north_america",
        /// IEC 60445: Europe, Australia and most of the world.
        Iec = "iec",
        /// Japan.
        Japan = "japan",
    }
}

impl WireCode {
    /// Its row of the table.
    pub fn colours(self) -> Option<&'static WireColours> {
        let region = match self {
            Self::NorthAmerica => "US/Canada",
            Self::Iec => "IEC 60445 (60446)",
            Self::Japan => "Japan",
        };
        wire_colours().iter().find(|row| row.region == region)
    }
}

/// The faults of outlets, those that no lamp shows included.
pub fn outlet_faults() -> &'static [OutletFault] {
    static ROWS: LazyLock<Vec<OutletFault>> =
        LazyLock::new(|| rows(include_str!("../../data/receptacle_faults.csv")));
    &ROWS
}

fn rows<T: for<'de> Deserialize<'de>>(text: &str) -> Vec<T> {
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
}

#[cfg(test)]
mod tests {
    use super::{WireCode, outlet_faults, plug_kinds, wire_colours};
    use crate::words::Words;

    #[test]
    fn every_row_of_the_tables_is_read() {
        for (read, text) in [
            (plug_kinds().len(), include_str!("../../data/plugs.csv")),
            (wire_colours().len(), include_str!("../../data/wire_colours.csv")),
            (outlet_faults().len(), include_str!("../../data/receptacle_faults.csv")),
        ] {
            assert_eq!(read, text.lines().filter(|line| !line.trim().is_empty()).count() - 1);
        }
    }

    #[test]
    fn the_words_of_wire_colours_say_what_the_table_says() {
        let words = Words::of("en");
        for code in WireCode::ALL {
            let row = code.colours().unwrap();
            for (wire, colours) in
                [("line", &row.line), ("neutral", &row.neutral), ("earth", &row.earth)]
            {
                assert_eq!(&words.say_id(&format!("wire-{wire}-{}", code.id())), colours);
            }
        }
    }

    #[test]
    fn a_reversed_bootleg_earth_is_seen_by_no_lamp_tester() {
        let fault = outlet_faults()
            .iter()
            .find(|row| row.fault == "reverse-polarity bootleg ground")
            .unwrap();
        assert_eq!(fault.tester_reading, "READS CORRECT");
    }
}
