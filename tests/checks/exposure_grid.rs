//! The grid of states and single faults, and the chart made of it, against the table that
//! `coldchassis exposure` prints, and against every end of the parts.

use std::sync::Mutex;

use coldchassis_core::arrangement::{
    Arrangement, Fault, FaultSet, Isolation, Spread, State, Values, all,
};
use coldchassis_core::body::{RcdType, gfci_trip_s, rcd_trip_s, zone};
use coldchassis_core::hazard::{Exposures, Grid, Outcome, Parts, table};
use coldchassis_core::inspection::{Findings, Judge, LONG_TOUCH_S, Verdict, assess, shown_worst};
use coldchassis_core::supply::Supply;
use coldchassis_core::words::{Words, milliamperes};
use coldchassis_core::workbench::{
    ChartCase, ChartPoint, ChartView, ExposureView, Guard, RowView, StateView, chart,
    exposure_file, person,
};
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};

const ARRANGEMENTS: usize = 200;

fn drawn(rng: &mut ChaCha8Rng) -> (&'static Arrangement, Values, Supply) {
    let with_line: Vec<&Arrangement> = all().iter().filter(|a| a.line.is_some()).collect();
    let arrangement = with_line.choose(rng).expect("arrangements");
    let mut between = |spread: Spread| spread.low * (spread.high / spread.low).powf(rng.random());
    let values = Values {
        line_capacitor_farad: Some(between(Spread::CLASS_Y)),
        network_ohm: between(Spread::NETWORK_OHM),
        network_farad: between(Spread::NETWORK_FARAD),
        aerial_farad: between(Spread::AERIAL),
        winding_farad: between(Spread::WINDING),
        ..Values::default()
    };
    let supply = *[Supply::new(120.0, 60.0), Supply::new(230.0, 50.0)].choose(rng).expect("two");
    (arrangement, values, supply)
}

fn exactly(values: &Values) -> Parts {
    Parts {
        line_capacitor: values.line_capacitor_farad.map(Spread::exactly),
        network_ohm: Spread::exactly(values.network_ohm),
        network_farad: Spread::exactly(values.network_farad),
        aerial: Spread::exactly(values.aerial_farad),
        winding: Spread::exactly(values.winding_farad),
        ..Parts::default()
    }
}

/// The file that the command line reads.
fn file(arrangement: &Arrangement, values: &Values, supply: &Supply) -> Value {
    let line = arrangement.line.expect("a line side");
    json!({
        "supply": {"volts": supply.volts, "hertz": supply.hertz},
        "isolation": arrangement.isolation.id(), "cord": line.cord.id(),
        "near_pin": line.near_pin.id(), "line_capacitor": line.line_capacitor.id(),
        "line_capacitor_class": line.line_capacitor_class.id(),
        "switch_leg": line.switch_leg.id(), "reach": line.reach.id(),
        "values": {
            "line_capacitor_farad": values.line_capacitor_farad, "network_ohm": values.network_ohm,
            "network_farad": values.network_farad, "aerial_farad": values.aerial_farad,
            "winding_farad": values.winding_farad
        }
    })
}

fn printed(arrangement: &Arrangement, values: &Values, supply: &Supply) -> ExposureView {
    let usual = person("dry", "5", None).expect("a person");
    let text = file(arrangement, values, supply).to_string();
    exposure_file(text.as_bytes(), &usual).expect("an arrangement")
}

fn agrees(grid: &Grid, printed: &ExposureView) -> usize {
    let single = printed.rows.iter().filter(|row| row.faults.len() < 2);
    let mut seen = 0;
    for row in single {
        let is_state = |state: &State| StateView::from(*state) == row.state;
        let column = grid.states.iter().position(is_state).expect("the state");
        let is_set = |set: &FaultSet| set.faults().map(Fault::id).collect::<Vec<_>>() == row.faults;
        let place = grid.faults.iter().position(is_set).expect("the fault");
        let (outcome, milliamperes) = match grid.cells[place][column] {
            Outcome::Touch { milliamperes, .. } => ("touch", milliamperes),
            Outcome::BreakerTrips => ("breaker_trips", 0.0),
            Outcome::BehindBarrier => ("behind_barrier", 0.0),
        };
        assert_eq!(outcome, row.outcome, "{:?} {:?}", row.state, row.faults);
        let off = (milliamperes - row.touch_ma).abs();
        assert!(off <= 1e-9 * row.touch_ma.max(1.0), "{milliamperes} {}", row.touch_ma);
        seen += 1;
    }
    assert_eq!(seen, grid.states.len() * grid.faults.len(), "every cell has its row");
    seen
}

#[test]
fn the_grid_is_what_the_command_line_prints() {
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    let mut cells = 0;
    for _ in 0..ARRANGEMENTS {
        let (arrangement, values, supply) = drawn(&mut rng);
        let mut exposures = Exposures::new(&supply, supply.volts, exactly(&values));
        let printed = printed(arrangement, &values, &supply);
        cells += agrees(&exposures.grid(arrangement), &printed);
    }
    println!("{cells} cells of {ARRANGEMENTS} arrangements");
    assert!(cells > 20 * ARRANGEMENTS);
}

/// What nobody has read may be anything in its range: a cell is never kinder than that, nor than at the
/// nominal voltage.
#[test]
fn no_cell_is_kinder_than_any_end_of_the_parts() {
    let mut rng = ChaCha8Rng::seed_from_u64(8);
    for _ in 0..ARRANGEMENTS {
        let (arrangement, _, supply) = drawn(&mut rng);
        let class = arrangement.line.expect("a line side").line_capacitor_class;
        let grid = Judge::of(&Findings::new(supply)).grid(arrangement);
        let parts = Parts::default();
        let corners: Vec<_> = parts.corners(arrangement).collect();
        let corner = *corners.choose(&mut rng).expect("an end");
        let volts = *[supply.volts, supply.volts_max].choose(&mut rng).expect("two");
        let there = table(arrangement, &supply, volts, &parts.values_at(corner, class));
        for row in there.rows.iter().filter(|row| row.faults.len() < 2) {
            let column = grid.states.iter().position(|state| *state == row.state).expect("a state");
            let place = grid.faults.iter().position(|set| *set == row.faults).expect("a fault");
            let cell = grid.cells[place][column];
            // A voltage at which the breaker trips is the higher of the two.
            let kinder = cell.milliamperes() < row.outcome.milliamperes() * (1.0 - 1e-9)
                && row.outcome != Outcome::BreakerTrips;
            assert!(!kinder, "{arrangement:?} {row:?} {cell:?}");
        }
    }
}

/// The row that is printed for a case of the chart.
fn row_of<'a>(printed: &'a ExposureView, case: &ChartCase) -> &'a RowView {
    let faults: Vec<&str> = case.faults.iter().map(|fault| fault.id()).collect();
    let is_it = |row: &&RowView| row.state == StateView::from(case.state) && row.faults == faults;
    printed.rows.iter().find(is_it).expect("a row")
}

/// A point stands where the rows of its cases are, without a device and behind each.
fn point_agrees(point: &ChartPoint, printed: &ExposureView, isolation: Isolation) {
    let rows: Vec<&RowView> = point.cases.iter().map(|case| row_of(printed, case)).collect();
    for row in &rows {
        assert_eq!(row.outcome, "touch", "{:?} {:?}", row.state, row.faults);
        assert_eq!(
            Words::of("en").write(&milliamperes(row.touch_ma)),
            point.figure,
            "{:?} {:?}",
            row.state,
            row.faults
        );
        assert_eq!(zone(row.touch_ma, LONG_TOUCH_S.value), point.zone);
    }
    let largest = rows.iter().map(|row| row.touch_ma).fold(0.0, f64::max);
    assert!((point.milliamperes - largest).abs() <= 1e-9 * largest, "{largest} {point:?}");
    assert_eq!(point.seconds, LONG_TOUCH_S.value);
    let neutral_open = rows.iter().any(|row| row.faults.contains(&Fault::NeutralOpen.id()));
    for cut in &point.cuts {
        let expected = match cut.device {
            // What a rectifier on the line passes is nothing that either is made for.
            _ if isolation == Isolation::LineRectified => None,
            Guard::Gfci if neutral_open => None,
            Guard::Gfci => gfci_trip_s(point.milliamperes),
            Guard::Rcd30 => rcd_trip_s(point.milliamperes, 30.0, RcdType::General),
        };
        assert_eq!(cut.seconds, expected, "{point:?}");
        let lasts = expected.unwrap_or(LONG_TOUCH_S.value);
        assert_eq!(cut.zone, zone(point.milliamperes, lasts));
        // A device never makes it worse.
        assert!(cut.zone <= point.zone);
    }
}

fn worst_single<'a>(rows: impl Iterator<Item = &'a RowView>) -> f64 {
    rows.filter(|row| row.faults.len() == 1).map(|row| row.touch_ma).fold(0.0, f64::max)
}

/// Every state as found is shown once, and of the others the worst single fault and what is quoted.
fn shows_what_it_should(view: &ChartView, verdict: &Verdict, printed: &ExposureView) {
    let beside = view.beside.iter().flat_map(|beside| &beside.cases);
    let cases: Vec<&ChartCase> =
        view.points.iter().flat_map(|point| &point.cases).chain(beside).collect();
    let shown: Vec<&RowView> = cases.iter().map(|case| row_of(printed, case)).collect();
    for row in printed.rows.iter().filter(|row| row.faults.is_empty()) {
        let times = shown.iter().filter(|shown| **shown == row).count();
        assert_eq!(times, 1, "{row:?}");
    }
    let worst = worst_single(printed.rows.iter());
    let worst_shown = worst_single(shown.iter().copied());
    assert!((worst_shown - worst).abs() <= 1e-9 * worst.max(1.0), "{worst} {worst_shown}");
    let Some(quoted) = shown_worst(verdict) else { return };
    let ids: Vec<&str> = quoted.faults.faults().map(Fault::id).collect();
    let is_quoted = |row: &&RowView| {
        Some(&row.state) == quoted.state.map(StateView::from).as_ref() && row.faults == ids
    };
    assert!(shown.iter().copied().any(|row| is_quoted(&row)), "{quoted:?}");
    let marked = view.points.iter().filter(|point| point.quoted).count();
    assert_eq!(marked, usize::from(quoted.milliamperes >= view.milliamperes[0]));
}

#[test]
fn the_chart_is_what_the_command_line_prints() {
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    let words = Words::of("en");
    let (mut points, mut beside, mut pairs) = (0, 0, 0);
    for _ in 0..ARRANGEMENTS {
        let (arrangement, values, supply) = drawn(&mut rng);
        let mut exposures = Exposures::new(&supply, supply.volts, exactly(&values));
        let printed = printed(arrangement, &values, &supply);
        let findings = Findings::new(supply);
        let worst = exposures.worst(arrangement);
        let verdict = Verdict { treat_as: worst.class, worst, ..nothing_known(&findings) };
        let grid = exposures.grid(arrangement);
        let view = chart(&findings, &verdict, arrangement, &grid, &words);
        view.points.iter().for_each(|point| point_agrees(point, &printed, arrangement.isolation));
        for case in view.beside.iter().flat_map(|beside| &beside.cases) {
            let row = row_of(&printed, case);
            assert!(row.outcome != "touch" || row.touch_ma < view.milliamperes[0], "{row:?}");
            beside += 1;
        }
        shows_what_it_should(&view, &verdict, &printed);
        points += view.points.len();
        let is_pair = |case: &ChartCase| case.faults.len() == 2;
        pairs +=
            view.points.iter().flat_map(|point| &point.cases).filter(|case| is_pair(case)).count();
    }
    println!("{points} points, {beside} cases beside them, {pairs} pairs");
    assert!(points > ARRANGEMENTS && beside > 50 && pairs > 5);
}

/// The verdict of somebody who has found nothing; only its worst case is replaced.
fn nothing_known(findings: &Findings) -> Verdict {
    static KNOWN: Mutex<Vec<(Supply, Verdict)>> = Mutex::new(Vec::new());
    let mut known = KNOWN.lock().expect("nobody panicked");
    if let Some((_, verdict)) = known.iter().find(|(supply, _)| *supply == findings.supply) {
        return verdict.clone();
    }
    let verdict = assess(findings, &mut Judge::of(findings));
    known.push((findings.supply, verdict.clone()));
    verdict
}

/// What is drawn is what is judged by: between the corners as at them.
#[test]
fn lines_and_curves_of_the_chart_part_what_they_say() {
    let supply = Supply::new(120.0, 60.0);
    let findings = Findings::new(supply);
    let arrangement = all().iter().find(|arrangement| arrangement.line.is_some()).expect("one");
    let grid = Judge::of(&findings).grid(arrangement);
    let verdict = nothing_known(&findings);
    let view = chart(&findings, &verdict, arrangement, &grid, &Words::of("en"));
    assert_eq!(view.zones.len(), view.lines.len() + 1);
    for (line, around) in view.lines.iter().zip(view.zones.windows(2)) {
        let ends = [line.points[0][1], line.points[line.points.len() - 1][1]];
        assert_eq!(ends, view.seconds, "the line goes from edge to edge");
        for pair in line.points.windows(2) {
            let [current, time] =
                [(pair[0][0] * pair[1][0]).sqrt(), (pair[0][1] * pair[1][1]).sqrt()];
            assert_eq!(zone(current * 0.999, time), around[0].id);
            assert_eq!(zone(current * 1.001, time), around[1].id);
        }
    }
    for place in &view.zones {
        assert_eq!(zone(place.at[0], place.at[1]), place.id, "its name stands in it");
    }
    for device in &view.devices {
        let [least_ma, first_s] = device.curve[0];
        assert_eq!(first_s, view.seconds[1]);
        assert!(device.curve.iter().all(|corner| corner[0] >= least_ma));
        assert_eq!(device.curve[device.curve.len() - 1][0], view.milliamperes[1]);
    }
}
