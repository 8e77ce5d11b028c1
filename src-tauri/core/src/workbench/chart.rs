//! Touch current against time: what the currents of the worst arrangement do to a person, and how soon
//! a protective device cuts them off.

use std::ops::RangeInclusive;

use uuid::Uuid;

use super::chart_devices::{cut_s, device};
use super::chart_views::{
    ChartBeside, ChartCase, ChartCut, ChartLine, ChartPoint, ChartView, ChartZone, Guard,
};
use super::error::Problem;
use super::grid::{CellLevel, WorstLeft, notes_on};
use super::session::Workbench;
use crate::arrangement::{Arrangement, FaultSet, Isolation, PlugWay, Selector, State, Switch};
use crate::body::{Curve, Path, Zone, curve_ma, curve_mark, curve_points, zone};
use crate::figure::{Figure, Mark, Source};
use crate::hazard::{Class, Grid, Outcome, Row};
use crate::inspection::{Findings, LONG_TOUCH_S, Verdict, fault_words, is_quoted, shown_worst};
use crate::words::{Message, Words, hertz, milliamperes, number, seconds};

/// The least current on the chart, mA: a fifth of what can be felt.
const LEAST_MA: Figure = Figure::new(0.1, "mA", Source::Model, Mark::Assumption);

/// The most current on the chart, mA, unless one of the unit's is larger: above the last line.
const MOST_MA: Figure = Figure::new(2000.0, "mA", Source::Model, Mark::Assumption);

/// How far above the largest current the chart goes where that is beyond its usual end.
const HEADROOM: f64 = 1.2;

/// The shortest time on the chart, s: that of the lines.
const SHORTEST_S: Figure = Figure::new(0.01, "s", Source::Iec60479_1, Mark::MemoryHigh);

/// The frequencies that the lines are for, Hz. IEC 60479-1 (from memory).
const LINES_HERTZ: RangeInclusive<f64> = 15.0..=100.0;

impl Workbench {
    /// The chart of the worst arrangement that an inspection leaves.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn chart(&mut self, inspection: Uuid) -> Result<ChartView, Problem> {
        let Some(left) = self.worst_left(inspection)? else {
            let notes = vec![self.words.say_id("grid-no-line")];
            return Ok(ChartView { notes, ..ChartView::default() });
        };
        let WorstLeft { findings, verdict, arrangement, grid } = left;
        Ok(chart(&findings, &verdict, arrangement, &grid, &self.words))
    }
}

/// The chart of an arrangement whose grid is known: the states as found, the worst single fault, and
/// what the verdict quotes.
pub fn chart(
    findings: &Findings,
    verdict: &Verdict,
    arrangement: &Arrangement,
    grid: &Grid,
    words: &Words,
) -> ChartView {
    Says { findings, verdict, isolation: arrangement.isolation, words }.view(arrangement, grid)
}

/// One of the states shown.
struct Case {
    state: State,
    faults: FaultSet,
    /// The touch current, mA rms; 0 where nobody is in a circuit.
    milliamperes: f64,
    /// Why there is no current.
    none: Option<CellLevel>,
}

impl Case {
    fn of(row: Row) -> Self {
        let none = match row.outcome {
            Outcome::Touch { .. } => None,
            Outcome::BreakerTrips => Some(CellLevel::BreakerTrips),
            Outcome::BehindBarrier => Some(CellLevel::BehindBarrier),
        };
        let milliamperes = row.outcome.milliamperes();
        Self { state: row.state, faults: row.faults, milliamperes, none }
    }

    fn is_on_chart(&self) -> bool {
        self.milliamperes >= LEAST_MA.value
    }
}

struct Says<'a> {
    findings: &'a Findings,
    verdict: &'a Verdict,
    isolation: Isolation,
    words: &'a Words,
}

impl Says<'_> {
    fn view(&self, arrangement: &Arrangement, grid: &Grid) -> ChartView {
        let (on, off): (Vec<Case>, Vec<Case>) =
            self.cases(grid).into_iter().partition(Case::is_on_chart);
        let largest = on.iter().map(|case| case.milliamperes).fold(0.0, f64::max);
        let most = MOST_MA.value.max(largest * HEADROOM);
        ChartView {
            notes: self.notes(arrangement),
            milliamperes: [LEAST_MA.value, most],
            seconds: [SHORTEST_S.value, LONG_TOUCH_S.value],
            lines: Curve::ALL.iter().map(|curve| self.line(*curve)).collect(),
            zones: Zone::ALL.iter().map(|zone| self.zone(*zone, most)).collect(),
            devices: Guard::ALL
                .iter()
                .map(|guard| {
                    let feed = self.findings.supply.feed;
                    device(*guard, self.isolation, feed, most, self.words)
                })
                .collect(),
            points: merged(on.iter().map(|case| self.point(case)).collect()),
            beside: gathered(off.iter().map(|case| self.beside(case)).collect()),
            basis: self.basis(),
        }
    }

    /// Every state as found, the worst that one fault does, and what the verdict quotes.
    fn cases(&self, grid: &Grid) -> Vec<Case> {
        let rows: Vec<Row> = grid.rows().collect();
        let found = rows.iter().filter(|row| row.faults.is_empty());
        let mut cases: Vec<Case> = found.map(|row| Case::of(*row)).collect();
        let quoted = rows.iter().find(|row| is_quoted(self.verdict, row.state, row.faults));
        let quoted = quoted.filter(|row| !row.faults.is_empty());
        // Several often come to the same: what the verdict quotes stands for them.
        let single = rows.iter().filter(|row| !row.faults.is_empty());
        let worst = quoted.into_iter().chain(single).reduce(worse);
        if let Some(worst) = worst.filter(|row| matches!(row.outcome, Outcome::Touch { .. })) {
            cases.push(Case::of(*worst));
        }
        let is_worst = |row: &&Row| worst.is_some_and(|worst| is_same(worst, row));
        if let Some(quoted) = quoted.filter(|row| !is_worst(row)) {
            cases.push(Case::of(*quoted));
        }
        cases.extend(self.quoted_pair());
        cases
    }

    /// The case of two faults that the verdict quotes: the grid has none of those.
    fn quoted_pair(&self) -> Option<Case> {
        let worst = shown_worst(self.verdict).filter(|worst| worst.faults.len() > 1)?;
        let milliamperes = worst.milliamperes;
        Some(Case { state: worst.state?, faults: worst.faults, milliamperes, none: None })
    }

    fn point(&self, case: &Case) -> ChartPoint {
        ChartPoint {
            cases: vec![self.named(case)],
            milliamperes: case.milliamperes,
            figure: self.words.write(&milliamperes(case.milliamperes)),
            seconds: LONG_TOUCH_S.value,
            zone: zone(case.milliamperes, LONG_TOUCH_S.value),
            cuts: Guard::ALL.iter().map(|guard| self.cut(*guard, case)).collect(),
            quoted: is_quoted(self.verdict, case.state, case.faults),
        }
    }

    fn cut(&self, device: Guard, case: &Case) -> ChartCut {
        let cut_s = cut_s(
            device,
            self.isolation,
            self.findings.supply.feed,
            case.milliamperes,
            case.faults,
        );
        let time = match cut_s {
            Some(longest) => Message::new("chart-at-most").text("time", seconds(longest)),
            None => Message::new("chart-need-not-trip"),
        };
        ChartCut {
            device,
            seconds: cut_s,
            time: self.words.say(&time),
            zone: zone(case.milliamperes, cut_s.unwrap_or(LONG_TOUCH_S.value)),
        }
    }

    fn beside(&self, case: &Case) -> ChartBeside {
        let cell = |level: CellLevel| self.words.say(&Message::new(format!("cell-{}", level.id())));
        let what = match case.none {
            Some(CellLevel::BreakerTrips) => Message::new("chart-breaker-trips"),
            Some(_) => Message::new("chart-out-of-reach"),
            None => Message::new("chart-too-little").text("least", milliamperes(LEAST_MA.value)),
        };
        ChartBeside {
            cases: vec![self.named(case)],
            word: case
                .none
                .map_or_else(|| self.words.write(&milliamperes(case.milliamperes)), cell),
            what: self.words.say(&what),
        }
    }

    fn named(&self, case: &Case) -> ChartCase {
        let fault = if case.faults.is_empty() {
            Message::new("grid-as-found")
        } else {
            Message::new("chart-after").message("fault", fault_words(case.faults))
        };
        let name = Message::new("chart-case")
            .message("fault", fault)
            .message("position", self.position(case.state));
        let faults = case.faults.faults().collect();
        ChartCase { state: case.state, faults, name: self.words.say(&name) }
    }

    fn position(&self, state: State) -> Message {
        let switch = Message::new(match state.switch {
            Switch::On => "chart-switch-on",
            Switch::Off => "chart-switch-off",
        });
        let selector = state.selector.map(|selector| match selector {
            Selector::Near => "chart-ground-near",
            Selector::Far => "chart-ground-far",
        });
        let switches = match selector {
            None => switch,
            Some(selector) => Message::new("chart-switches")
                .message("switch", switch)
                .message("selector", Message::new(selector)),
        };
        let way = match state.plug {
            PlugWay::First => "grid-way-first",
            PlugWay::Second => "grid-way-second",
        };
        if self.verdict.worst.fits_one_way {
            switches
        } else {
            Message::new("chart-position")
                .message("way", Message::new(way))
                .message("switches", switches)
        }
    }

    fn line(&self, curve: Curve) -> ChartLine {
        let points = curve_points(curve);
        let note = Message::new(format!("chart-line-{}", curve.id()))
            .message("mark", Message::new(format!("chart-mark-{}", mark_id(curve_mark(curve)))));
        ChartLine {
            id: curve,
            note: self.words.say(&note),
            points: points.iter().map(|&(time_s, current_ma)| [current_ma, time_s]).collect(),
        }
    }

    fn zone(&self, zone: Zone, most_ma: f64) -> ChartZone {
        let id = zone.id();
        ChartZone {
            id: zone,
            name: self.words.say(&Message::new(format!("chart-zone-{id}"))),
            brief: self.words.say(&Message::new(format!("chart-zone-{id}-brief"))),
            what: self.words.say(&Message::new(format!("chart-zone-{id}-what"))),
            at: name_place(zone, most_ma),
        }
    }

    fn notes(&self, arrangement: &Arrangement) -> Vec<String> {
        let notes = notes_on(self.findings, self.verdict, arrangement);
        notes.iter().map(|note| self.words.say(note)).collect()
    }

    fn basis(&self) -> Vec<String> {
        let pairs = matches!(self.verdict.treat_as, Class::OneFault | Class::TwoFaults);
        let shown = Message::new(if pairs { "chart-shown-pairs" } else { "chart-shown" });
        let lasts = Message::new("chart-lasts").text("time", seconds(LONG_TOUCH_S.value));
        let supply = self.findings.supply.hertz;
        let off = (!LINES_HERTZ.contains(&supply)).then(|| {
            Message::new("chart-other-hertz")
                .text("hertz", hertz(supply))
                .text("low", hertz(*LINES_HERTZ.start()))
                .text("high", hertz(*LINES_HERTZ.end()))
        });
        let hands = number(Path::HandToHand.heart_factor().value);
        let path = Message::new("chart-path").text("factor", hands);
        let whose = Message::new("caution-body-figures");
        let basis = off.into_iter().chain([shown, lasts, path, whose]);
        basis.map(|one| self.words.say(&one)).collect()
    }
}

/// The row with more current, the first where both have the same.
fn worse<'a>(one: &'a Row, other: &'a Row) -> &'a Row {
    if other.outcome.milliamperes() > one.outcome.milliamperes() { other } else { one }
}

fn is_same(one: &Row, other: &Row) -> bool {
    one.state == other.state && one.faults == other.faults
}

/// One point for what is written alike, the largest current first.
fn merged(points: Vec<ChartPoint>) -> Vec<ChartPoint> {
    let mut merged: Vec<ChartPoint> = Vec::new();
    for point in points {
        let known = merged.iter_mut().find(|known| is_alike(known, &point));
        if let Some(known) = known {
            known.quoted |= point.quoted;
            if point.milliamperes > known.milliamperes {
                known.milliamperes = point.milliamperes;
                known.cuts = point.cuts;
            }
            known.cases.extend(point.cases);
        } else {
            merged.push(point);
        }
    }
    merged.sort_by(|one, other| other.milliamperes.total_cmp(&one.milliamperes));
    merged
}

/// Whether two points are written alike, with the devices too.
fn is_alike(one: &ChartPoint, other: &ChartPoint) -> bool {
    let mut cuts = one.cuts.iter().zip(&other.cuts);
    one.figure == other.figure
        && one.zone == other.zone
        && cuts.all(|(one, other)| one.time == other.time && one.zone == other.zone)
}

/// One line for what has no point for the same reason.
fn gathered(all: Vec<ChartBeside>) -> Vec<ChartBeside> {
    let mut gathered: Vec<ChartBeside> = Vec::new();
    for one in all {
        let known = gathered.iter_mut().find(|known| known.word == one.word);
        if let Some(known) = known {
            known.cases.extend(one.cases);
        } else {
            gathered.push(one);
        }
    }
    gathered
}

/// Where the name of a zone has room, mA and s: beside every line and clear of the devices' curves.
fn name_place(zone: Zone, most_ma: f64) -> [f64; 2] {
    let (below, above, time_s, share) = match zone {
        Zone::Ac1 => (None, Some(Curve::A), 0.095, 0.5),
        Zone::Ac2 => (Some(Curve::A), Some(Curve::B), 0.095, 0.5),
        Zone::Ac3 => (Some(Curve::B), Some(Curve::C1), 0.12, 0.7),
        Zone::Ac41 => (Some(Curve::C1), Some(Curve::C2), 0.095, 0.5),
        Zone::Ac42 => (Some(Curve::C2), Some(Curve::C3), 4.5, 0.6),
        Zone::Ac43 => (Some(Curve::C3), None, 1.0, 0.7),
    };
    let low = below.map_or(LEAST_MA.value, |curve| curve_ma(curve, time_s));
    let high = above.map_or(most_ma, |curve| curve_ma(curve, time_s));
    [low * (high / low).powf(share), time_s]
}

fn mark_id(mark: Mark) -> &'static str {
    match mark {
        Mark::Verified => "verified",
        Mark::MemoryHigh => "memory_high",
        Mark::MemoryMedium => "memory_medium",
        _ => "memory_low",
    }
}
