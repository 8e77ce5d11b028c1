//! Cold readings from pin to pin of the plug, the current of a string on any voltage, and droppers.
//!
//! The table of readings is computed from ratios of hot to cold resistance: 6.8 usual (seen in print), 5
//! to 9 at the ends (from memory). It takes a dropper as it is; the study takes one of nichrome as up to
//! a tenth lower when cold, so that its lower ends are lower by that, and no others differ.

use std::f64::consts::PI;

use coldchassis_core::heaters::{PlugReading, Study, series_capacitor, study, voltage_share};
use num_complex::Complex64;
use proptest::prelude::*;
use serde::Deserialize;

use super::tables::rows;

#[derive(Debug, Deserialize)]
struct Row {
    set: String,
    tubes: String,
    line_v: f64,
    rated_sum_v: f64,
    hot_ohm: f64,
    cold_ohm: f64,
    cold_low_ohm: f64,
    cold_high_ohm: f64,
    dropper_ohm: Option<f64>,
    reading_low_ohm: Option<f64>,
    reading_high_ohm: Option<f64>,
    skipped: String,
    mark: String,
}

impl Row {
    fn study(&self) -> Study {
        study(&self.tubes.split(';').collect::<Vec<_>>(), self.line_v)
    }

    fn reading(&self) -> PlugReading {
        self.study().plug_reading().unwrap_or_else(|| panic!("{}: no reading", self.cite()))
    }

    fn dropper(&self) -> f64 {
        self.dropper_ohm.unwrap_or_default()
    }

    fn cite(&self) -> String {
        format!("{}: {} [{}]", self.set, self.tubes, self.mark)
    }
}

fn all() -> Vec<Row> {
    let (skipped, rows): (Vec<Row>, Vec<Row>) = rows::<Row>("heater_plug_readings.csv", 15)
        .into_iter()
        .partition(|row| !row.skipped.is_empty());
    assert_eq!(skipped.len(), 2, "rows left out: {skipped:?}");
    rows
}

/// Whether a figure is the printed one, which is rounded to an ohm.
#[track_caller]
fn is(row: &Row, what: &str, ours: f64, printed: f64, share: f64) {
    let off = (ours - printed).abs() > 0.6_f64.max(printed * share);
    assert!(!off, "{}: {what} {ours:.2} ohm, not {printed} ohm", row.cite());
}

#[test]
fn a_cold_string_has_the_printed_resistance() {
    for row in all() {
        let cold = row.reading().cold;
        // A dropper is computed from the rounded sum in either place, hence a hundredth.
        is(&row, "usually", cold.usual, row.cold_ohm + row.dropper(), 0.01);
        is(&row, "at most", cold.high, row.cold_high_ohm + row.dropper(), 0.01);
        let least = row.cold_low_ohm + row.dropper() / 1.1;
        is(&row, "at least", cold.low, least, 0.01);
    }
}

#[test]
fn a_hot_string_has_the_sum_of_its_heaters() {
    for row in all().iter().filter(|row| !row.tubes.contains("117Z3")) {
        is(row, "hot", row.study().string_ohm().unwrap_or_default(), row.hot_ohm, 0.002);
        is(row, "hot", row.reading().hot_ohm, row.hot_ohm, 0.002);
        assert!((row.study().path_volts - row.rated_sum_v).abs() < 0.05, "{}", row.cite());
    }
}

// The printed range is rounded outward to fives and tens, and its droppers stay as they are: our range
// covers it but for that rounding, and is wider by no more than the dropper's tenth.
#[test]
fn the_printed_range_of_the_meter_is_covered() {
    let rows = all();
    let printed: Vec<&Row> = rows.iter().filter(|row| row.reading_low_ohm.is_some()).collect();
    assert_eq!(printed.len(), 11);
    for row in printed {
        let cold = row.reading().cold;
        let (low, high) =
            (row.reading_low_ohm.unwrap_or_default(), row.reading_high_ohm.unwrap_or_default());
        let range = format!(
            "{}: {:.0} to {:.0} ohm, printed {low} to {high}",
            row.cite(),
            cold.low,
            cold.high
        );
        assert!(cold.low <= low * 1.03 && cold.high >= high * 0.97, "too narrow: {range}");
        assert!(cold.low >= low * 0.9 && cold.high <= high * 1.03, "too wide: {range}");
    }
}

// A page on a Japanese output tube: about 40 ohm cold each, two in series on 100 V.
#[test]
fn two_measured_output_tubes_lie_in_the_range() {
    let cold = study(&["50CA10", "50CA10"], 100.0).plug_reading().expect("a string").cold;
    assert!(cold.low < 80.0 && 80.0 < cold.high, "{cold:?}");
    assert!((cold.usual / 80.0 - 1.0).abs() < 0.06, "{cold:?}");
}

/// Share of the rated voltage, and the current of one 12BH7A on it, A: measured, seen on a Japanese page.
const MEASURED: [(f64, f64); 6] =
    [(0.5, 0.2359), (0.7, 0.2742), (0.8, 0.2945), (0.9, 0.3125), (1.0, 0.3322), (1.1, 0.3455)];

#[test]
fn a_measured_heater_follows_the_square_root_to_one_and_a_half_percent() {
    let rated = 0.3322;
    let errors: Vec<f64> = MEASURED
        .iter()
        .map(|(volts, amperes)| {
            let share =
                voltage_share(12.6, rated, 0.0, 12.6 * volts).expect("a heater on a voltage");
            share * rated / amperes - 1.0
        })
        .collect();
    let most = errors.iter().fold(0.0_f64, |most, error| most.max(error.abs()));
    assert!(most < 0.015, "off by up to {:.2} %: {errors:?}", most * 100.0);
    assert!(most > 0.005, "the law is no better than this: {errors:?}");
}

// The reference fits the same series with a power of 0.49.
#[test]
fn the_measured_power_is_about_one_half() {
    let points: Vec<(f64, f64)> = MEASURED.iter().map(|(v, i)| (v.ln(), i.ln())).collect();
    let mean =
        |pick: fn(&(f64, f64)) -> f64| points.iter().map(pick).sum::<f64>() / points.len() as f64;
    let (x, y) = (mean(|p| p.0), mean(|p| p.1));
    let above: f64 = points.iter().map(|p| (p.0 - x) * (p.1 - y)).sum();
    let power = above / points.iter().map(|p| (p.0 - x).powi(2)).sum::<f64>();
    assert!((power - 0.49).abs() < 0.01, "{power}");
}

/// The share at which heaters and dropper take up all of the voltage, by halving.
fn by_halving(sum: f64, amperes: f64, ohms: f64, volts: f64) -> f64 {
    let taken = |x: f64| sum * x * x + amperes * ohms * x;
    let (mut low, mut high) = (0.0, 1.0);
    while taken(high) < volts {
        high *= 2.0;
    }
    for _ in 0..200 {
        let middle = (low + high) / 2.0;
        if taken(middle) < volts { low = middle } else { high = middle }
    }
    (low + high) / 2.0
}

proptest! {
    #![proptest_config(super::cases(2000))]

    #[test]
    fn the_current_of_a_string_is_that_of_halving(
        sum in 0.5..500.0_f64, amperes in 0.01..5.0_f64, ohms in 0.0..20_000.0_f64, volts in 0.0..500.0_f64,
    ) {
        let ours = voltage_share(sum, amperes, ohms, volts).expect("all above zero");
        let theirs = by_halving(sum, amperes, ohms, volts);
        prop_assert!((ours - theirs).abs() <= 1e-9 * theirs.max(1e-6), "{ours} {theirs}");
    }

    #[test]
    fn a_resistor_that_the_sum_asks_for_gives_the_rated_current(
        sum in 5.0..200.0_f64, amperes in 0.02..1.0_f64, more in 0.1..200.0_f64,
    ) {
        let line = sum + more;
        let share = voltage_share(sum, amperes, more / amperes, line).expect("all above zero");
        prop_assert!((share - 1.0).abs() < 1e-9, "{share}");
    }

    #[test]
    fn a_string_takes_more_on_more_and_less_behind_more(
        sum in 5.0..300.0_f64, amperes in 0.02..2.0_f64, ohms in 0.0..2000.0_f64, volts in 1.0..300.0_f64,
    ) {
        let share = |ohms, volts| voltage_share(sum, amperes, ohms, volts).expect("all above zero");
        prop_assert!(share(ohms, volts * 1.1) > share(ohms, volts));
        prop_assert!(share(ohms + 10.0, volts) < share(ohms, volts));
    }

    // Phasors: the current is real, so the heaters' voltage is, and the capacitor's is along -j.
    #[test]
    fn heaters_and_a_capacitor_add_up_to_the_line_as_phasors(
        sum in 5.0..230.0_f64, amperes in 0.02..1.0_f64, more in 0.1..200.0_f64, hertz in 15.0..400.0_f64,
    ) {
        let line = sum + more;
        let (farads, volts) = series_capacitor(line, sum, amperes, hertz).expect("room for a drop");
        let across = Complex64::new(amperes, 0.0) / Complex64::new(0.0, 2.0 * PI * hertz * farads);
        prop_assert!((across.norm() - volts).abs() < 1e-9 * line);
        let whole = Complex64::new(sum, 0.0) + across;
        prop_assert!((whole.norm() - line).abs() < 1e-9 * line, "{} of {line}", whole.norm());
    }
}

#[test]
fn what_is_not_above_zero_has_no_answer() {
    for (sum, amperes, ohms, volts) in [
        (0.0, 0.15, 0.0, 120.0),
        (-1.0, 0.15, 0.0, 120.0),
        (120.0, 0.0, 0.0, 120.0),
        (120.0, 0.15, -1.0, 120.0),
        (120.0, 0.15, 0.0, -1.0),
        (f64::NAN, 0.15, 0.0, 120.0),
        (120.0, f64::INFINITY, 0.0, 120.0),
        (120.0, 0.15, 0.0, f64::NAN),
        (120.0, 0.15, f64::INFINITY, 120.0),
    ] {
        let share = voltage_share(sum, amperes, ohms, volts);
        assert!(
            share.is_none_or(|share| share == 0.0),
            "{sum} {amperes} {ohms} {volts}: {share:?}"
        );
    }
    assert_eq!(series_capacitor(117.0, 117.0, 0.3, 60.0), None);
    assert_eq!(series_capacitor(117.0, 130.0, 0.3, 60.0), None);
    assert_eq!(series_capacitor(117.0, 68.9, 0.0, 60.0), None);
    assert_eq!(series_capacitor(117.0, 68.9, 0.3, 0.0), None);
}
