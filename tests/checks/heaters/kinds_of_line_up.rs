//! What the line-ups read as, by how they are really built.

use std::collections::BTreeMap;

use coldchassis_core::heaters::{OVER, Reading, UNDER, study};

use super::tables::{LineUp, line_ups};

fn reading(row: &LineUp) -> Reading {
    study(&row.tubes(), row.supply_v).reading
}

/// The rows of which this holds, each with what it reads as.
fn those(wanted: impl Fn(&LineUp) -> bool) -> Vec<(LineUp, Reading)> {
    let rows = line_ups().into_iter().filter(wanted);
    rows.map(|row| (reading(&row), row)).map(|(reading, row)| (row, reading)).collect()
}

fn listed(rows: &[(LineUp, Reading)], wanted: impl Fn(Reading) -> bool) -> String {
    let rows = rows.iter().filter(|(_, reading)| wanted(*reading));
    let lines: Vec<String> =
        rows.map(|(row, reading)| format!("{}: {}", row.cite(), reading.id())).collect();
    format!("{} rows\n{}", lines.len(), lines.join("\n"))
}

/// At least this share reads as wanted, and none as what would be a blunder.
fn mostly(
    rows: &[(LineUp, Reading)],
    least: f64,
    wanted: impl Fn(Reading) -> bool,
    never: impl Fn(Reading) -> bool,
) {
    let right = rows.iter().filter(|(_, reading)| wanted(*reading)).count();
    let share = right as f64 / rows.len() as f64;
    let others = listed(rows, |reading| !wanted(reading));
    assert!(share >= least, "{right} of {} as wanted; others: {others}", rows.len());
    let blunders = listed(rows, &never);
    assert!(!rows.iter().any(|(_, reading)| never(*reading)), "blunders: {blunders}");
}

fn is_transformerless(row: &LineUp) -> bool {
    row.architecture.starts_with("transformerless")
}

#[test]
fn a_string_that_about_meets_the_line_reads_as_one_on_the_line() {
    let least = (UNDER.value - 1.0) * 100.0 - 0.05;
    let most = (OVER.value - 1.0) * 100.0 + 0.05;
    assert!((least + 25.05).abs() < 1e-9 && (most - 8.05).abs() < 1e-9, "{least} to {most} %");
    let rows = those(|row| {
        let near = row.sum_vs_supply_pct.is_some_and(|percent| (least..=most).contains(&percent));
        is_transformerless(row) && row.heater_wiring == "series" && near
    });
    assert_eq!(rows.len(), 35, "rows within 25 % under to 8 % over the line");
    mostly(&rows, 1.0, |reading| reading == Reading::SeriesOnLine, |_| false);
}

#[test]
fn a_string_far_under_the_line_reads_as_one_with_a_dropper() {
    let rows = those(|row| {
        let far = row.sum_vs_supply_pct.is_some_and(|percent| percent < -25.05);
        is_transformerless(row) && row.heater_wiring == "series" && far
    });
    assert_eq!(rows.len(), 16, "rows more than 25 % under the line");
    mostly(&rows, 1.0, |reading| reading == Reading::SeriesWithDropper, |_| false);
}

#[test]
fn sets_without_a_transformer_read_as_strings() {
    let rows = those(is_transformerless);
    assert_eq!(rows.len(), 53);
    let blunder = |reading| matches!(reading, Reading::ParallelTransformer | Reading::Battery);
    mostly(&rows, 0.85, Reading::is_series, blunder);
}

#[test]
fn sets_with_a_transformer_read_as_parallel() {
    let rows = those(|row| row.architecture == "ac-transformer");
    assert_eq!(rows.len(), 17);
    let blunder = |reading: Reading| reading.is_series() || reading == Reading::Battery;
    mostly(&rows, 0.8, |reading| reading == Reading::ParallelTransformer, blunder);
}

// A string behind an isolating transformer, or on the line beside one, has the tubes of a set without any:
// the list alone cannot tell, and a reading is no proof.
#[test]
fn a_list_cannot_tell_a_string_that_has_a_transformer_all_the_same() {
    let rows = those(|row| row.architecture.starts_with("ac-transformer "));
    assert_eq!(rows.len(), 2);
    mostly(&rows, 1.0, Reading::is_series, |_| false);
}

// The other way round: heaters on a small transformer, the rest of the set straight on the line.
#[test]
fn a_list_cannot_tell_a_transformer_for_heaters_alone() {
    let rows = those(|row| row.architecture == "filament-transformer-only");
    assert_eq!(rows.len(), 2);
    mostly(&rows, 1.0, |reading| reading == Reading::ParallelTransformer, |_| false);
}

/// What each kind of line-up reads as, counted: kind, string on the line, string with a dropper,
/// parallel, battery, undecided.
const COUNTS: [(&str, [usize; 5]); 18] = [
    ("TRAP current clash", [0, 0, 0, 0, 1]),
    ("ac-transformer", [0, 0, 17, 0, 0]),
    ("ac-transformer (1:1 isolation, series string)", [1, 0, 0, 0, 0]),
    ("ac-transformer with line-fed heaters", [1, 0, 0, 0, 0]),
    ("autotransformer", [0, 1, 0, 0, 0]),
    ("battery", [0, 0, 0, 5, 0]),
    ("car-radio vibrator", [0, 0, 1, 0, 0]),
    ("doubler", [0, 1, 0, 0, 0]),
    ("filament-and-B+ from motor/auto winding", [0, 1, 0, 0, 0]),
    ("filament-transformer-only", [0, 0, 2, 0, 0]),
    ("three-way portable", [0, 6, 0, 1, 0]),
    ("transformerless-100mA", [2, 0, 0, 0, 0]),
    ("transformerless-117V-heater", [3, 1, 0, 0, 0]),
    ("transformerless-150mA", [28, 1, 0, 0, 0]),
    ("transformerless-200mA", [0, 3, 0, 0, 0]),
    ("transformerless-300mA-with-dropper", [2, 12, 0, 0, 0]),
    ("transformerless-mixed 150/300 mA", [0, 1, 0, 0, 0]),
    ("u-series-100mA", [0, 9, 0, 0, 0]),
];

#[test]
fn every_kind_of_line_up_reads_as_counted() {
    let mut counted: BTreeMap<String, [usize; 5]> = BTreeMap::new();
    for (row, reading) in those(|_| true) {
        let place = Reading::ALL.iter().position(|other| *other == reading).expect("a reading");
        counted.entry(row.architecture).or_default()[place] += 1;
    }
    let table: Vec<String> =
        counted.iter().map(|(kind, counts)| format!("{kind}: {counts:?}")).collect();
    let pinned: BTreeMap<String, [usize; 5]> =
        COUNTS.iter().map(|(kind, counts)| ((*kind).to_owned(), *counts)).collect();
    let order: Vec<&str> = Reading::ALL.iter().map(|reading| reading.id()).collect();
    assert_eq!(counted, pinned, "\n{order:?}\n{}", table.join("\n"));
}
