//! Readings, values and tests of the bench as they are typed one after the other, with everything that is shown
//! of them.

use std::sync::atomic::{AtomicU64, Ordering};

use bolero::check;
use coldchassis_core::arrangement::ReadingId;
use coldchassis_core::inspection::{Question, ValueId};
use coldchassis_core::workbench::{
    Code, InspectionView, NewUnit, Problem, Surroundings, Workbench,
};
use serde_json::{Value, json};
use uuid::Uuid;

use super::findings::check_said;
use super::ids::{access, answer, meter, reading, supply, touch, tubes, value};
use super::json::wild;
use super::tally::{Reached, Tally, time};
use super::tape::{Tape, tapes};

static AT: AtomicU64 = AtomicU64::new(1_764_320_400_000);

/// What a workbench needs around it; each moment is another.
pub fn around(photos: Option<std::path::PathBuf>) -> Surroundings {
    Surroundings {
        clock: Box::new(|| i64::try_from(AT.fetch_add(3, Ordering::Relaxed)).expect("a time")),
        ids: Box::new(Uuid::now_v7),
        device: "here".to_owned(),
        photos,
        author: "Odo Trinket".to_owned(),
        locale: "en".to_owned(),
    }
}

/// A workbench whose record is gone when it is dropped.
pub fn bench() -> Workbench {
    Workbench::in_memory(around(None)).expect("a workbench")
}

type Done = Result<InspectionView, Problem>;

/// One thing that is typed: mostly as it fits, now and then anything at all.
fn act(bench: &mut Workbench, tape: &mut Tape<'_>, id: Uuid) -> Done {
    let or_wild = |tape: &mut Tape<'_>, fits: Value| if tape.is(32) { wild(tape) } else { fits };
    match tape.below(14) {
        0..4 => {
            let which = *tape.pick(ReadingId::ALL);
            let fits = reading(tape, which);
            let given = or_wild(tape, fits);
            bench.set_reading(id, which.id(), given)
        }
        4..6 => {
            let which = *tape.pick(Question::ALL);
            let fits = answer(tape, which);
            let given = or_wild(tape, fits);
            bench.answer(id, which.id(), given)
        }
        6 => {
            let which = *tape.pick(ValueId::ALL);
            let fits = value(tape, which);
            let given = or_wild(tape, fits);
            bench.set_value(id, which.id(), given)
        }
        7 => {
            let fits = meter(tape);
            let given = or_wild(tape, fits);
            bench.set_meter(id, given)
        }
        8 | 9 => {
            let (part, fits) = touch(tape);
            let given = or_wild(tape, fits);
            bench.set_live_test(id, &part, given)
        }
        10 => {
            let known: Vec<&str> = ReadingId::IDS.iter().chain(ValueId::IDS).copied().collect();
            bench.leave_open(id, tape.pick::<&str>(&known))
        }
        11 => {
            let view = bench.inspection(id)?;
            let paths: Vec<String> = view.findings.into_iter().map(|found| found.path).collect();
            if paths.is_empty() {
                bench.inspection(id)
            } else {
                bench.withdraw(id, tape.pick::<String>(&paths))
            }
        }
        12 => {
            let fits = tubes(tape);
            let given = or_wild(tape, fits);
            bench.set_tubes(id, given)
        }
        _ if tape.is(128) => bench.set_supply(id, supply(tape)),
        _ => {
            let access: Vec<String> = serde_json::from_value(access(tape)).expect("a list");
            bench.set_access(id, &access)
        }
    }
}

/// Everything that is shown of the readings.
fn look(bench: &mut Workbench, tape: &mut Tape<'_>, id: Uuid) {
    let whole = "it is shown";
    check_said(&json!(bench.meter_readings(id).expect(whole)).to_string());
    check_said(&json!(bench.insulation_test(id).expect(whole)).to_string());
    check_said(&json!(bench.touch_test(id).expect(whole)).to_string());
    match tape.below(8) {
        0 => check_said(&json!(bench.grid(id).expect(whole)).to_string()),
        1 => {
            let chart = bench.chart(id).expect(whole);
            check_said(&json!(chart).to_string());
        }
        2 => check_said(&json!(bench.circuit(id, Value::Null).expect(whole)).to_string()),
        3 => check_said(&json!(bench.feeds(id).expect(whole)).to_string()),
        4 => check_said(&bench.report_text(id).expect(whole)),
        _ => {}
    }
    let charge = json!({
        "farads": tape.figure(1e-15, 0.9), "volts": tape.figure(1e-9, 9999.0), "bleed_ohms": tape.figure(1e-9, 9e11),
    });
    check_said(&json!(bench.stored_charge(charge).expect(whole)).to_string());
}

#[test]
fn readings_as_they_are_typed() {
    let tally = Tally::new("readings");
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        let mut bench = bench();
        let all = ["outside", "cover_off", "meter"].map(str::to_owned).to_vec();
        let new = NewUnit { supply: supply(&mut tape), access: all, ..NewUnit::default() };
        let id = bench.create_unit(&new).expect("a unit").id;
        let mut taken = false;
        for _ in 0..=tape.below(7) {
            match act(&mut bench, &mut tape, id) {
                Ok(view) => {
                    taken = true;
                    let worst = view.verdict.worst_touch_ma;
                    assert!(worst.is_finite() && worst >= 0.0, "{worst} mA");
                    check_said(&json!(view).to_string());
                }
                Err(problem) => assert_eq!(problem.code, Code::BadInput, "{problem:?}"),
            }
        }
        look(&mut bench, &mut tape, id);
        tally.count(if taken { Reached::Taken } else { Reached::Nothing });
    });
    tally.end(80);
}
