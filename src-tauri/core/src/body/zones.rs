//! The time/current zones of alternating current: from no reaction to fibrillation.
//!
//! IEC 60479-1 figure 20, left hand to feet, 15 to 100 Hz. The lines are straight in log time and
//! log current between the rows of `time_current_curves.csv`, and held at both ends.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::fields::id_enum;
use crate::figure::Mark;

id_enum! {
    /// A line between two zones, from the least current up.
    pub enum Curve {
        /// Perception.
        A = "a",
        /// Muscles may not let go.
        B = "b",
        /// Fibrillation becomes possible.
        C1 = "c1",
        /// Fibrillation in about 5 % of cases.
        C2 = "c2",
        /// Fibrillation in about half the cases.
        C3 = "c3",
    }
}

id_enum! {
    /// What a current does to most people in the time it lasts.
    pub enum Zone {
        /// AC-1: perhaps felt, usually no reaction.
        Ac1 = "ac_1",
        /// AC-2: felt, muscles may jerk, usually no harm.
        Ac2 = "ac_2",
        /// AC-3: muscles cramp, breathing is hard, the heart may be disturbed.
        Ac3 = "ac_3",
        /// AC-4.1: up to about 5 % fibrillate.
        Ac41 = "ac_4_1",
        /// AC-4.2: up to about half fibrillate.
        Ac42 = "ac_4_2",
        /// AC-4.3: more than half fibrillate.
        Ac43 = "ac_4_3",
    }
}

#[derive(Deserialize)]
struct Row {
    current_kind: String,
    curve: String,
    time_s: f64,
    #[serde(rename = "current_mA_rms_or_dc")]
    current_ma: f64,
    confidence: String,
}

/// A line as the table has it.
struct Line {
    curve: Curve,
    /// Time in s and current in mA, from the shortest time on.
    points: Vec<(f64, f64)>,
    /// The weakest mark of its points.
    mark: Mark,
}

impl Line {
    fn of(curve: Curve, rows: &[Row]) -> Self {
        let is_own = |row: &&Row| row.current_kind == "AC" && row.curve == curve.id();
        let own: Vec<&Row> = rows.iter().filter(is_own).collect();
        let marks = own.iter().map(|row| mark(&row.confidence));
        Self {
            curve,
            points: own.iter().map(|row| (row.time_s, row.current_ma)).collect(),
            // Declared from the best on.
            mark: marks.max_by_key(|mark| *mark as u8).unwrap_or(Mark::MemoryLow),
        }
    }
}

fn mark(confidence: &str) -> Mark {
    match confidence.rsplit('-').next() {
        Some("verified") => Mark::Verified,
        Some("high") => Mark::MemoryHigh,
        Some("medium") => Mark::MemoryMedium,
        _ => Mark::MemoryLow,
    }
}

static LINES: LazyLock<Vec<Line>> = LazyLock::new(|| {
    let text = include_str!("../../data/time_current_curves.csv");
    let rows: Vec<Row> =
        csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect();
    Curve::ALL.iter().map(|curve| Line::of(*curve, &rows)).collect()
});

fn line(curve: Curve) -> Option<&'static Line> {
    LINES.iter().find(|line| line.curve == curve)
}

/// The points that a line is straight between in logarithms: time in s and current in mA rms, from
/// the shortest time on, as the rows of the table have them.
pub fn curve_points(curve: Curve) -> &'static [(f64, f64)] {
    let Some(line) = line(curve) else { return &[] };
    &line.points
}

/// How far a line was checked: the weakest mark of its points.
pub fn curve_mark(curve: Curve) -> Mark {
    line(curve).map_or(Mark::MemoryLow, |line| line.mark)
}

/// The current of a line in mA rms for a time in s.
pub fn curve_ma(curve: Curve, time_s: f64) -> f64 {
    let mut before: Option<(f64, f64)> = None;
    for &(row_s, row_ma) in curve_points(curve) {
        if time_s <= row_s {
            let Some((low_s, low_ma)) = before else {
                return row_ma;
            };
            let share = (time_s / low_s).ln() / (row_s / low_s).ln();
            return low_ma * (row_ma / low_ma).powf(share);
        }
        before = Some((row_s, row_ma));
    }
    before.map_or(0.0, |(_, current_ma)| current_ma)
}

/// The zone of a current in mA rms on the path left hand to feet that lasts `time_s` seconds.
///
/// For another path multiply the current by that path's heart-current factor first; the lines a and
/// b speak of muscles, not of the heart, so pass the current itself where they matter.
pub fn zone(current_ma: f64, time_s: f64) -> Zone {
    let above = |curve| current_ma >= curve_ma(curve, time_s);
    if above(Curve::C3) {
        Zone::Ac43
    } else if above(Curve::C2) {
        Zone::Ac42
    } else if above(Curve::C1) {
        Zone::Ac41
    } else if above(Curve::B) {
        Zone::Ac3
    } else if above(Curve::A) {
        Zone::Ac2
    } else {
        Zone::Ac1
    }
}

#[cfg(test)]
mod tests {
    use super::{Curve, Zone, curve_ma, curve_mark, curve_points, zone};
    use crate::figure::Mark;

    // IEC 60479-1 figure 20, c1: 500 mA at 10 ms, 50 mA at 1 s, 40 mA from 3 s (from memory, high).
    #[test]
    fn lines_pass_through_their_points_and_are_straight_in_logs_between() {
        assert!((curve_ma(Curve::C1, 0.01) - 500.0).abs() < 1e-9);
        assert!((curve_ma(Curve::C1, 1.0) - 50.0).abs() < 1e-9);
        let between = curve_ma(Curve::C1, 2f64.sqrt());
        assert!((between - (50.0f64 * 43.0).sqrt()).abs() < 1e-9);
        assert_eq!(curve_ma(Curve::C1, 100.0), curve_ma(Curve::C1, 10.0));
        assert_eq!(curve_ma(Curve::B, 0.001), 200.0);
    }

    #[test]
    fn a_line_is_as_sure_as_the_weakest_of_its_points() {
        assert_eq!(curve_mark(Curve::A), Mark::Verified);
        // One of its points was seen in print, the others are from memory.
        assert_eq!(curve_mark(Curve::B), Mark::MemoryLow);
        assert_eq!(curve_points(Curve::A), [(0.01, 0.5), (10.0, 0.5)]);
    }

    #[test]
    fn a_touch_of_a_live_chassis_can_stop_the_heart_within_a_second() {
        assert_eq!(zone(174.0, 1.0), Zone::Ac43);
        assert_eq!(zone(174.0, 0.025), Zone::Ac3);
        assert_eq!(zone(0.4, 10.0), Zone::Ac1);
        assert_eq!(zone(4.5, 10.0), Zone::Ac2);
    }
}
