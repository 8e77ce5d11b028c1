//! Impedance of the body from hand to hand, by touch voltage, share of people, skin and contact area.
//!
//! IEC 60479-1 (2005 and 2018) tables 1 to 8 at 50/60 Hz; values between rows are linear in the
//! touch voltage, and both ends are held. The impedance is taken as resistive, which for the large
//! contact areas of the model is cautious by less than the spread between people.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::fields::id_enum;

id_enum! {
    /// Which share of people has a lower impedance than the figure, in percent.
    #[derive(Default)]
    pub enum Percentile {
        /// 5 % of people have less: the figure for verdicts.
        #[default]
        Five = "5",
        /// Half of people have less.
        Fifty = "50",
        /// 95 % of people have less.
        NinetyFive = "95",
    }
}

id_enum! {
    /// The state of the skin at the contacts.
    #[derive(Default)]
    pub enum Skin {
        /// Dry.
        #[default]
        Dry = "dry",
        /// Wet with fresh water.
        Wet = "wet",
        /// Wet with salt water or sweat.
        Saltwater = "saltwater",
    }
}

/// The contact area at each hand or foot.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Area {
    /// About 10,000 mm²: a whole hand round metal.
    #[default]
    Large,
    /// About 1,000 mm².
    Medium,
    /// About 100 mm²: a fingertip.
    Small,
}

/// Whose body, with what skin, touching with how much area.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Body {
    /// Share of people with less impedance.
    pub percentile: Percentile,
    /// State of the skin.
    pub skin: Skin,
    /// Contact area.
    pub area: Area,
}

/// Most rows a table has.
const ROWS: usize = 13;

/// Impedance from hand to hand as straight lines between touch voltages.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Impedance {
    volts: [f64; ROWS],
    ohms: [f64; ROWS],
    // Ω/V of the line that ends at this row; kept because every touch current asks for it.
    slopes: [f64; ROWS],
    rows: usize,
}

impl Impedance {
    /// The table for a body; the 5 % dry large-area one is what verdicts use.
    ///
    /// Small areas with salt water have no table: the large-area one stands in, which warns more.
    pub fn of(body: Body) -> Self {
        let table = |area: Area| {
            TABLES.iter().find(|(s, a, _)| (*s, *a) == (body.skin, area)).map(|(_, _, t)| t)
        };
        table(body.area).or_else(|| table(Area::Large)).map_or(Self::EMPTY, |table| {
            match body.percentile {
                Percentile::Five => table.five,
                Percentile::Fifty => table.fifty,
                Percentile::NinetyFive => table.ninety_five,
            }
        })
    }

    const EMPTY: Self =
        Self { volts: [0.0; ROWS], ohms: [0.0; ROWS], slopes: [0.0; ROWS], rows: 0 };

    /// Impedance hand to hand in Ω at a touch voltage in V rms.
    pub fn ohms(&self, volts: f64) -> f64 {
        self.line(volts).0
    }

    /// Impedance in Ω and how it changes with the touch voltage, Ω/V (0 where the table is held).
    pub fn line(&self, volts: f64) -> (f64, f64) {
        let mut last = 0.0;
        let rows = self.volts.iter().zip(&self.ohms).zip(&self.slopes).take(self.rows);
        for ((&row_volts, &row_ohms), &slope) in rows {
            if volts < row_volts {
                return (row_ohms + slope * (volts - row_volts), slope);
            }
            last = row_ohms;
        }
        (last, 0.0)
    }

    fn push(&mut self, volts: f64, ohms: f64) {
        let before = self.rows.checked_sub(1);
        let slope = before.map_or(0.0, |row| {
            let volts_before = self.volts.get(row).copied().unwrap_or_default();
            let ohms_before = self.ohms.get(row).copied().unwrap_or_default();
            (ohms - ohms_before) / (volts - volts_before)
        });
        if let (Some(v), Some(z), Some(s)) = (
            self.volts.get_mut(self.rows),
            self.ohms.get_mut(self.rows),
            self.slopes.get_mut(self.rows),
        ) {
            (*v, *z, *s) = (volts, ohms, slope);
            self.rows += 1;
        }
    }
}

struct Table {
    five: Impedance,
    fifty: Impedance,
    ninety_five: Impedance,
}

#[derive(Deserialize)]
struct Row {
    edition: String,
    contact_area: String,
    skin: String,
    #[serde(rename = "touch_V_rms")]
    volts: String,
    #[serde(rename = "Z_5pct_ohm")]
    five: f64,
    #[serde(rename = "Z_50pct_ohm")]
    fifty: f64,
    #[serde(rename = "Z_95pct_ohm")]
    ninety_five: f64,
}

impl Row {
    fn skin(&self) -> Option<Skin> {
        match self.skin.as_str() {
            "dry" => Some(Skin::Dry),
            "water-wet" => Some(Skin::Wet),
            "saltwater-wet" => Some(Skin::Saltwater),
            _ => None,
        }
    }

    fn area(&self) -> Option<Area> {
        match self.contact_area.split(' ').next()? {
            "large" => Some(Area::Large),
            "medium" => Some(Area::Medium),
            "small" => Some(Area::Small),
            _ => None,
        }
    }
}

/// The edition whose lower 5 % values are the cautious ones.
const EDITION: &str = "2005/2018";

static TABLES: LazyLock<Vec<(Skin, Area, Table)>> = LazyLock::new(|| {
    let text = include_str!("../../data/body_impedance_ac.csv");
    let mut tables: Vec<(Skin, Area, Table)> = Vec::new();
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    for row in reader.deserialize::<Row>().filter_map(Result::ok) {
        let (Some(skin), Some(area), Ok(volts)) = (row.skin(), row.area(), row.volts.parse())
        else {
            continue;
        };
        if row.edition != EDITION {
            continue;
        }
        add(&mut tables, skin, area, volts, &row);
    }
    tables
});

fn add(tables: &mut Vec<(Skin, Area, Table)>, skin: Skin, area: Area, volts: f64, row: &Row) {
    if !tables.iter().any(|(s, a, _)| (*s, *a) == (skin, area)) {
        let empty = Impedance::EMPTY;
        tables.push((skin, area, Table { five: empty, fifty: empty, ninety_five: empty }));
    }
    if let Some((_, _, table)) = tables.iter_mut().find(|(s, a, _)| (*s, *a) == (skin, area)) {
        table.five.push(volts, row.five);
        table.fifty.push(volts, row.fifty);
        table.ninety_five.push(volts, row.ninety_five);
    }
}

#[cfg(test)]
mod tests {
    use super::{Area, Body, Impedance, Percentile, Skin};

    // IEC 60479-1:2005/2018 table 1, 5 % dry large area: 990 Ω at 100 V, 900 Ω at 125 V (from memory).
    #[test]
    fn between_rows_it_is_linear_and_both_ends_are_held() {
        let table = Impedance::of(Body::default());
        assert_eq!(table.ohms(100.0), 990.0);
        assert!((table.ohms(112.5) - 945.0).abs() < 1e-9);
        assert_eq!(table.ohms(0.0), 1750.0);
        assert_eq!(table.ohms(5000.0), 575.0);
        assert_eq!(table.line(10.0).1, 0.0);
        assert!((table.line(110.0).1 + 3.6).abs() < 1e-12);
    }

    #[test]
    fn every_choice_of_skin_and_area_of_the_tables_is_there() {
        for (skin, area) in [
            (Skin::Dry, Area::Large),
            (Skin::Wet, Area::Large),
            (Skin::Saltwater, Area::Large),
            (Skin::Dry, Area::Medium),
            (Skin::Wet, Area::Medium),
            (Skin::Saltwater, Area::Medium),
            (Skin::Dry, Area::Small),
            (Skin::Wet, Area::Small),
        ] {
            for percentile in [Percentile::Five, Percentile::Fifty, Percentile::NinetyFive] {
                let ohms = Impedance::of(Body { percentile, skin, area }).ohms(50.0);
                assert!(ohms > 500.0 && ohms < 1e6, "{skin:?} {area:?} {percentile:?}: {ohms}");
            }
        }
    }

    #[test]
    fn a_table_that_is_not_known_takes_the_one_that_warns_more() {
        let body = Body { skin: Skin::Saltwater, area: Area::Small, ..Body::default() };
        let large = Body { skin: Skin::Saltwater, ..Body::default() };
        assert_eq!(Impedance::of(body), Impedance::of(large));
    }
}
