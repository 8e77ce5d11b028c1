//! Where the picture of the circuit opens, and what its walk leads through.

use coldchassis_core::arrangement::Switch;
use coldchassis_core::workbench::{CellLevel, CircuitView, WalkStep, Workbench};
use serde_json::{Value, json};
use uuid::Uuid;

use super::bench::{Record, TIED, begin};

const ON_EARTH: &[(&str, &str)] = &[
    ("plug", "three_pins"),
    ("back", "fitted"),
    ("transformer", "none"),
    ("common_to_chassis", "direct"),
    ("common_leg", "pin_b"),
    ("switch_leg", "pin_a"),
    ("earth_wire", "on_chassis"),
    ("earth_lift", "absent"),
];

fn told(door: &mut Workbench, answers: &[(&str, &str)]) -> Uuid {
    let id = begin(door, &["cover_off"]);
    for (question, answer) in answers {
        door.answer(id, question, json!(answer)).unwrap();
    }
    for question in ["bare_metal", "terminals"] {
        let none = if question == "terminals" { "none" } else { "none_anywhere" };
        door.answer(id, question, json!([none])).unwrap();
    }
    id
}

fn at(door: &mut Workbench, id: Uuid, step: &WalkStep) -> CircuitView {
    let selector = step.state.selector.map_or(Value::Null, |selector| json!(selector.id()));
    let place = json!({
        "plug": step.state.plug.id(), "switch": step.state.switch.id(), "selector": selector,
        "faults": step.faults.iter().map(|fault| fault.id()).collect::<Vec<_>>(),
    });
    door.circuit(id, place).unwrap().unwrap()
}

#[test]
fn the_walk_of_a_closed_set_leads_past_what_is_live_behind_the_knobs() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = told(&mut door, &TIED);
    let view = door.circuit(id, Value::Null).unwrap().unwrap();
    let found = view.walk.iter().filter(|step| step.faults.is_empty());
    let shown: Vec<CircuitView> = found.map(|step| at(&mut door, id, step)).collect();
    assert!(shown.iter().all(|view| view.level == CellLevel::BehindBarrier));
    // The switch is in the near leg: turned off, hot still comes through the heaters the one way round.
    let live_behind = |view: &&CircuitView| {
        view.sentences.join(" ").contains("only what covers it keeps you off live metal")
    };
    assert!(shown.iter().any(|view| view.state.switch == Switch::Off && live_behind(&view)));
    assert!(shown.iter().any(|view| !live_behind(&view)), "the least is shown beside it");
}

#[test]
fn a_set_with_the_line_on_its_earth_wire_opens_where_the_breaker_trips() {
    let record = Record::fixed();
    let mut door = record.open();
    let id = told(&mut door, ON_EARTH);
    let view = door.circuit(id, Value::Null).unwrap().unwrap();
    assert_eq!(view.level, CellLevel::BreakerTrips, "{:?} {:?}", view.state, view.faults);
    let said = view.sentences.join(" ");
    assert!(said.contains("live whatever these currents are"), "{said}");
    let trips = view.walk.iter().filter(|step| at(&mut door, id, step).level == view.level).count();
    assert!(trips > 0, "{:?}", view.walk);
    let grid = door.grid(id).unwrap();
    let cells = || grid.rows.iter().flat_map(|row| &row.cells);
    assert!(cells().count() > 5 && cells().all(|cell| !cell.quoted));
}
