//! The grid of states and single faults against the table that `coldchassis exposure` prints, and against
//! every end of the parts.

use coldchassis_core::arrangement::{Arrangement, Fault, FaultSet, Spread, State, Values, all};
use coldchassis_core::hazard::{Exposures, Grid, Outcome, Parts, table};
use coldchassis_core::inspection::{Findings, Judge};
use coldchassis_core::supply::Supply;
use coldchassis_core::workbench::{ExposureView, StateView, exposure_file, person};
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
