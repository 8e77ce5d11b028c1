//! Body impedance, path factors and heart-current factors of IEC 60479-1.

use std::collections::BTreeSet;

use coldchassis_core::body::{Area, Body, Impedance, Path, Percentile, Skin};

use crate::rows::{Row, rows};

const PERCENTILES: [(&str, Percentile); 3] = [
    ("Z_5pct_ohm", Percentile::Five),
    ("Z_50pct_ohm", Percentile::Fifty),
    ("Z_95pct_ohm", Percentile::NinetyFive),
];

fn skin(row: &Row) -> Skin {
    match row.text("skin") {
        "dry" => Skin::Dry,
        "water-wet" => Skin::Wet,
        "saltwater-wet" => Skin::Saltwater,
        other => panic!("{}: skin {other}", row.cite()),
    }
}

fn area(row: &Row) -> Area {
    match row.text("contact_area") {
        "large ~10000 mm2" => Area::Large,
        "medium ~1000 mm2" => Area::Medium,
        "small ~100 mm2" => Area::Small,
        other => panic!("{}: area {other}", row.cite()),
    }
}

fn impedance(row: &Row, percentile: Percentile) -> Impedance {
    Impedance::of(Body { percentile, skin: skin(row), area: area(row) })
}

#[test]
fn body_impedance_at_every_row_of_the_newer_editions() {
    let all = rows("body_impedance_ac.csv", 83);
    let newer: Vec<&Row> = all.iter().filter(|row| row.text("edition") == "2005/2018").collect();
    assert_eq!(newer.len(), 74);
    let mut checked = 0;
    for row in newer {
        let volts = row.number("touch_V_rms");
        for (column, percentile) in PERCENTILES {
            row.within(column, impedance(row, percentile).ohms(volts), row.number(column), 0.0);
            checked += 1;
        }
    }
    assert_eq!(checked, 222);
}

#[test]
fn body_impedance_is_linear_between_rows_and_held_at_both_ends() {
    let all = rows("body_impedance_ac.csv", 83);
    let newer: Vec<&Row> = all.iter().filter(|row| row.text("edition") == "2005/2018").collect();
    let (mut between, mut ends) = (0, 0);
    for table in newer.chunk_by(|a, b| a.text("table") == b.text("table")) {
        for (column, percentile) in PERCENTILES {
            for pair in table.windows(2) {
                let middle = |what| f64::midpoint(pair[0].number(what), pair[1].number(what));
                let ohms = impedance(pair[0], percentile).ohms(middle("touch_V_rms"));
                pair[0].within(&format!("{column} up to the next"), ohms, middle(column), 1e-9);
                between += 1;
            }
            for (row, factor) in [(table[0], 0.5), (table[table.len() - 1], 2.0)] {
                let beyond = impedance(row, percentile).ohms(factor * row.number("touch_V_rms"));
                row.within(&format!("{column} beyond"), beyond, row.number(column), 0.0);
                ends += 1;
            }
        }
    }
    assert_eq!((between, ends), (198, 48));
}

/// The paths of the model that a row speaks of; nothing for a path the model does not have.
fn heart_paths(row: &Row) -> &'static [Path] {
    match row.text("path") {
        "left hand to left foot / right foot / both feet" => {
            &[Path::LeftHandToBothFeet, Path::LeftHandToOneFoot]
        }
        "both hands to both feet" => &[Path::BothHandsToBothFeet],
        "left hand to right hand" => &[Path::HandToHand],
        "right hand to left foot / right foot / both feet" => &[Path::RightHandToBothFeet],
        "chest to right hand" => &[Path::RightHandToChest],
        "chest to left hand" => &[Path::LeftHandToChest],
        "seat to left / right / both hands" => &[Path::HandsToSeat],
        "left foot to right foot" => &[Path::FootToFoot],
        "back to right hand" | "back to left hand" => &[],
        other => panic!("{}: path {other}", row.cite()),
    }
}

#[test]
fn heart_current_factor_of_every_path() {
    let (mut seen, mut left_out) = (BTreeSet::new(), 0);
    for row in rows("heart_current_factor.csv", 10) {
        left_out += usize::from(heart_paths(&row).is_empty());
        for path in heart_paths(&row) {
            row.states(&format!("heart factor {path:?}"), path.heart_factor(), row.number("F"));
            seen.insert(format!("{path:?}"));
        }
    }
    assert_eq!((seen.len(), left_out), (Path::ALL.len(), 2));
}

fn impedance_paths(row: &Row) -> &'static [Path] {
    match row.text("path") {
        "hand to hand" => &[Path::HandToHand],
        "hand to one foot" => &[Path::LeftHandToOneFoot],
        "hand to both feet" => &[Path::LeftHandToBothFeet, Path::RightHandToBothFeet],
        "both hands to both feet" => &[Path::BothHandsToBothFeet],
        "one hand to trunk/chest/seat" => {
            &[Path::LeftHandToChest, Path::RightHandToChest, Path::HandsToSeat]
        }
        "foot to foot" => &[Path::FootToFoot],
        "both hands to one foot" | "both hands to trunk" => &[],
        other => panic!("{}: path {other}", row.cite()),
    }
}

#[test]
fn impedance_factor_of_every_path() {
    let column = "factor_of_ZT_hand_to_hand";
    let (mut seen, mut left_out, mut notes) = (BTreeSet::new(), 0, 0);
    for row in rows("body_path_factors.csv", 9) {
        // The last row is a remark about skin and carries no factor.
        let Some(factor) = row.maybe(column) else {
            notes += 1;
            continue;
        };
        left_out += usize::from(impedance_paths(&row).is_empty());
        for path in impedance_paths(&row) {
            row.states(&format!("path factor {path:?}"), path.impedance_factor(), factor);
            seen.insert(format!("{path:?}"));
        }
    }
    assert_eq!((seen.len(), left_out, notes), (Path::ALL.len(), 2, 1));
}
