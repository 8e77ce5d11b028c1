//! Arrangements with any values of their parts on any supply: figures make sense, and more volts never touch less.

use std::sync::LazyLock;

use bolero::check;
use coldchassis_core::arrangement::{Arrangement, all};
use coldchassis_core::hazard::Person;
use coldchassis_core::workbench::{ExposureView, exposure_file, person, readings_file};
use serde_json::{Value, json};

use super::findings::check_refusal;
use super::ids::supply;
use super::json::change;
use super::tally::{Reached, Tally, time};
use super::tape::{Tape, tapes};

/// The parts by the name of their value, with what is below the highest that is taken.
const PARTS: [(&str, f64, f64); 9] = [
    ("line_capacitor_farad", 1e-15, 0.99),
    ("network_ohm", 1e-9, 9.9e11),
    ("network_farad", 1e-15, 0.99),
    ("aerial_farad", 1e-15, 0.99),
    ("heater_ohm", 1e-9, 9.9e11),
    ("load_ohm", 1e-9, 9.9e11),
    ("winding_farad", 1e-15, 0.99),
    ("primary_ohm", 1e-9, 9.9e11),
    ("earth_ohm", 1e-9, 9.9e11),
];

/// Less than a body has on any path, Ω: no source, only far below every row of the tables.
const LEAST_BODY_OHM: f64 = 100.0;

static ANYBODY: LazyLock<Person> =
    LazyLock::new(|| person("dry", "5", None).expect("the person of the design"));

fn file(tape: &mut Tape<'_>) -> Value {
    let arrangement = tape.pick(all());
    let mut file = of(arrangement);
    file["supply"] = supply(tape);
    let mut values = json!({});
    for (name, low, high) in PARTS {
        if tape.is(100) {
            values[name] = json!(match tape.below(5) {
                0 => low,
                1 => high,
                _ => tape.figure(low, high),
            });
        }
    }
    file["values"] = values;
    if tape.is(40) {
        change(tape, &mut file);
    }
    file
}

fn of(arrangement: &Arrangement) -> Value {
    let mut file = json!({"isolation": arrangement.isolation.id()});
    if let Some(line) = &arrangement.line {
        for (name, id) in [
            ("cord", line.cord.id()),
            ("near_pin", line.near_pin.id()),
            ("line_capacitor", line.line_capacitor.id()),
            ("line_capacitor_class", line.line_capacitor_class.id()),
            ("switch_leg", line.switch_leg.id()),
            ("reach", line.reach.id()),
        ] {
            file[name] = json!(id);
        }
    }
    file
}

fn expose(file: &Value) -> Option<ExposureView> {
    let exposed = exposure_file(file.to_string().as_bytes(), &ANYBODY);
    let view = exposed.map_err(|problem| check_refusal(&problem)).ok()?;
    let supply = &file["supply"];
    let volts = supply["volts"].as_f64().expect("volts");
    let input = supply["input_volts"].as_f64().unwrap_or(2.0 * volts);
    let most = 1000.0 * volts.max(input) / LEAST_BODY_OHM;
    assert!(view.margin <= 3 && view.as_found_ma.is_finite() && view.as_found_ma >= 0.0, "{file}");
    for row in &view.rows {
        let current = row.touch_ma;
        assert!(
            (0.0..=most).contains(&current),
            "{current} mA of at most {most}: {row:?} in {file}"
        );
        let open = row.open_circuit_v;
        assert!(open.is_none_or(|open| open.is_finite() && open >= 0.0), "{row:?} in {file}");
        assert!(row.outcome == "touch" || current == 0.0, "{row:?} in {file}");
    }
    let worst = view.rows.iter().filter(|row| row.faults.is_empty()).map(|row| row.touch_ma);
    assert!(worst.fold(0.0, f64::max) <= view.as_found_ma + 1e-9, "{file}");
    Some(view)
}

/// The circuit is linear and a body conducts the better the more volts it has: more volts, no less current.
fn rises(file: &Value, view: &ExposureView, factor: f64) {
    let mut more = file.clone();
    for key in ["volts", "volts_max", "input_volts"] {
        if let Some(volts) = file["supply"][key].as_f64() {
            more["supply"][key] = json!(volts * factor);
        }
    }
    // Beyond 1000 V it is refused.
    let Some(raised) = expose(&more) else { return };
    assert_eq!(view.rows.len(), raised.rows.len());
    for (row, raised) in view.rows.iter().zip(&raised.rows) {
        // More volts may trip the breaker where fewer did not; never the other way round.
        if raised.outcome == "touch" {
            assert_eq!(row.outcome, "touch", "{row:?} {raised:?} in {file}");
            // Below this, mA, what two shorts leave of a current is the rounding of the sums.
            let least = row.touch_ma * (1.0 - 1e-9) - 1e-12;
            assert!(raised.touch_ma >= least, "{row:?} {raised:?} with {factor} times in {file}");
        }
    }
}

#[test]
fn arrangements() {
    let tally = Tally::new("arrangement");
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        let factor = 1.0 + f64::from(tape.byte()) / 64.0;
        let file = file(&mut tape);
        let view = expose(&file);
        if let Some(view) = &view {
            rises(&file, view, factor);
        }
        drop(readings_file(file.to_string().as_bytes()).map(|ranges| {
            for (id, range) in ranges {
                let ends = [range.low_ohm, range.high_ohm];
                let fits = |ohm: &f64| ohm.is_finite() && *ohm >= 0.0;
                assert!(ends.iter().flatten().all(fits), "{id} {range:?} in {file}");
                let turned = range.low_ohm.is_none() && range.high_ohm.is_some();
                assert!(!turned, "{id} {range:?} in {file}");
                if let [Some(low), Some(high)] = ends {
                    assert!(low <= high, "{id} {range:?} in {file}");
                }
            }
        }));
        tally.count(if view.is_some() { Reached::Taken } else { Reached::Nothing });
    });
    tally.end(70);
}
