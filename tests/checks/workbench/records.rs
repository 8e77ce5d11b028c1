//! The record as a whole through the one door: the queue, bundles, copies and the way back to them.

use coldchassis_core::store::WorkState;
use coldchassis_core::workbench::{
    Code, QueueAsk, QueueLine, Surroundings, UnitView, Workbench, look_at_bundle,
};
use serde_json::json;

use super::bench::{Record, foreign, new_unit};

fn open(record: &Record, device: &str) -> Workbench {
    let photos = record.path().with_file_name("photos");
    let around = Surroundings { photos: Some(photos), ..record.around(device) };
    Workbench::open(&record.path(), around).expect("the record opens")
}

fn queue(bench: &Workbench, ask: &QueueAsk) -> Vec<QueueLine> {
    bench.queue(ask).expect("a page").rows
}

fn by_id(units: impl IntoIterator<Item = UnitView>) -> Vec<UnitView> {
    let mut units: Vec<UnitView> = units.into_iter().collect();
    units.sort_by_key(|unit| unit.id);
    units
}

/// Works out every class that is due, as a shell does beside its window.
fn keep_up(bench: &mut Workbench) -> usize {
    let mut units = 0;
    loop {
        let work = bench.stale_units().expect("the record");
        if work.is_empty() {
            return units;
        }
        units += work.len();
        let judged = work.judge();
        bench.keep_judged(&judged).expect("the record");
    }
}

#[test]
fn the_queue_says_of_every_unit_what_the_list_says() {
    let record = Record::stepping(1500);
    let mut bench = open(&record, "here");
    bench.load_demo().expect("the demonstration");
    let made = bench.create_unit(&new_unit("Attic find", &["outside"])).expect("a unit");
    bench.answer(made.id, "plug", json!("two_equal_blades")).expect("an answer");
    let lines = queue(&bench, &QueueAsk::default());
    assert_eq!(lines.len(), 11);
    let list = bench.units(None).expect("a list");
    assert_eq!(by_id(lines.iter().map(|line| line.unit.clone())), by_id(list));
    assert!(bench.stale_units().expect("the record").is_empty(), "each answer keeps its class");
    let counts = bench.queue_counts().expect("counts");
    assert_eq!((counts.units, counts.states.len(), counts.classes.len()), (11, 7, 6));
    assert_eq!(counts.states[0].text, "To inspect");
    assert_eq!(counts.states.iter().map(|state| state.units).sum::<u32>(), 11);
    assert_eq!(counts.classes.iter().map(|class| class.units).sum::<u32>(), 11);
    assert_eq!(counts.classes[0].units, 0, "no class is unknown");
    assert!(bench.queue_places().expect("places").contains(&"Shelf 3".to_owned()));
}

#[test]
fn classes_that_came_in_a_bundle_are_worked_out_as_they_were_there() {
    let (here, there) = (Record::stepping(1500), Record::stepping(1500));
    let mut shop = open(&here, "here");
    for (name, plug) in
        [("One", "two_equal_blades"), ("Two", "battery_only"), ("Three", "three_pins")]
    {
        let made = shop.create_unit(&new_unit(name, &["outside"])).expect("a unit");
        shop.answer(made.id, "plug", json!(plug)).expect("an answer");
    }
    let bundle = here.path().with_file_name("out.bundle");
    let made = shop.export_work(None).expect("work").run(&bundle).expect("room");
    assert_eq!(made.units, 3);
    let mut phone = open(&there, "there");
    let work = look_at_bundle(&bundle, &phone.photo_files().expect("a folder")).expect("a bundle");
    let taken = phone.keep_bundle(work).expect("a bundle");
    assert_eq!((taken.units.len(), taken.new), (3, made.events));
    let unknown = QueueAsk { classes: vec!["unknown".to_owned()], ..QueueAsk::default() };
    assert_eq!(queue(&phone, &unknown).len(), 3);
    assert_eq!(keep_up(&mut phone), 3);
    assert!(queue(&phone, &unknown).is_empty());
    let all = QueueAsk::default();
    assert_eq!(queue(&phone, &all), queue(&shop, &all));
    let again = look_at_bundle(&bundle, &phone.photo_files().expect("a folder")).expect("it");
    let again = phone.keep_bundle(again).expect("a bundle");
    assert_eq!((again.new, again.says.len()), (0, 1), "{:?}", again.says);
}

#[test]
fn a_bundle_that_is_none_is_refused_with_the_reason() {
    let record = Record::fixed();
    let mut bench = open(&record, "here");
    bench.create_unit(&new_unit("One", &["outside"])).expect("a unit");
    let letter = record.path().with_file_name("letter");
    std::fs::write(&letter, "Dear reader").expect("a letter");
    let files = bench.photo_files().expect("a folder");
    let refused = look_at_bundle(&letter, &files).err().expect("refused");
    assert_eq!(refused.code, Code::BadInput);
    let sentence = refused.sentence(bench.words());
    assert!(sentence.starts_with("The bundle was refused; nothing was changed."), "{sentence}");
    let missing = look_at_bundle(&letter.with_file_name("gone"), &files).err().expect("refused");
    assert_eq!(missing.code, Code::Storage);
    let nobody = bench.export_work(Some(vec![foreign()])).err().expect("refused");
    assert_eq!(nobody.code, Code::NotFound);
}

#[test]
fn a_state_is_kept_and_ready_waits_for_the_proof() {
    let record = Record::stepping(10);
    let mut bench = open(&record, "here");
    let unit = bench.create_unit(&new_unit("One", &["outside"])).expect("a unit").unit.id;
    let line = bench.set_unit_state(unit, "in_repair").expect("a state");
    assert_eq!((line.state, line.state_text.as_str()), (WorkState::InRepair, "In repair"));
    assert_eq!(line.state_by, "Inspector here");
    assert!(line.state_at.is_some());
    for (state, field) in [("mended", "state"), ("ready", "state")] {
        let refused = bench.set_unit_state(unit, state).expect_err(state);
        assert_eq!((refused.code, refused.field.as_deref()), (Code::BadInput, Some(field)));
    }
    let line = bench.put_state(unit, "ready", |_| Ok(true)).expect("proven");
    assert_eq!(line.state, WorkState::Ready);
    let nobody = bench.set_unit_state(foreign(), "in_repair").expect_err("nobody");
    assert_eq!(nobody.code, Code::NotFound);
}

#[test]
fn what_is_asked_of_the_queue_is_refused_by_its_field() {
    let record = Record::fixed();
    let bench = open(&record, "here");
    let bad = || vec!["x".to_owned()];
    for (ask, field) in [
        (QueueAsk { states: bad(), ..QueueAsk::default() }, "states.0"),
        (QueueAsk { classes: bad(), ..QueueAsk::default() }, "classes.0"),
        (QueueAsk { bases: bad(), ..QueueAsk::default() }, "bases.0"),
        (QueueAsk { overlays: bad(), ..QueueAsk::default() }, "overlays.0"),
        (QueueAsk { after: Some("x".to_owned()), ..QueueAsk::default() }, "after"),
        (QueueAsk { text: "x".repeat(300), ..QueueAsk::default() }, "text"),
    ] {
        let refused = bench.queue(&ask).expect_err(field);
        assert_eq!(refused.field.as_deref(), Some(field));
    }
}

#[test]
fn a_copy_is_made_when_it_is_due_and_can_be_put_back() {
    let record = Record::stepping(10);
    let mut bench = open(&record, "here");
    assert!(bench.snapshot_work().expect("the record").is_none());
    for _ in 0..20 {
        bench.create_unit(&new_unit("One", &["outside"])).expect("a unit");
    }
    bench.snapshot_work().expect("the record").expect("due").run().expect("room");
    assert!(bench.snapshot_work().expect("the record").is_none());
    let there = bench.recovery().expect("a file").snapshots().expect("a folder");
    assert_eq!((there.len(), there[0].inspections, there[0].before_update), (1, 20, false));
    bench.create_unit(&new_unit("After", &["outside"])).expect("a unit");
    let gone = bench.restore(Some(7), false).expect_err("no such copy");
    assert_eq!(gone.code, Code::NotFound);
    assert_eq!(bench.units(None).expect("a list").len(), 21, "the record goes on");
    bench.restore(Some(1), true).expect("room");
    assert_eq!(bench.units(None).expect("a list").len(), 21, "nothing that can be read is lost");
    bench.restore(Some(1), false).expect("room");
    assert_eq!(bench.units(None).expect("a list").len(), 20, "the copy's own moment");
}

#[test]
fn a_record_without_its_beginning_is_called_damaged_where_there_are_copies() {
    let record = Record::stepping(10);
    let mut bench = open(&record, "here");
    for _ in 0..20 {
        bench.create_unit(&new_unit("One", &["outside"])).expect("a unit");
    }
    bench.snapshot_work().expect("the record").expect("due").run().expect("room");
    drop(bench);
    let mut bytes = std::fs::read(record.path()).expect("the record");
    bytes[..100].fill(0);
    std::fs::write(record.path(), bytes).expect("it can be written");
    let refused = Workbench::open(&record.path(), record.around("here")).err().expect("damaged");
    assert_eq!(refused.code, Code::Damaged);
}
