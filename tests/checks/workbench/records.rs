//! The record as a whole through the one door: the queue, bundles, copies and the way back to them.

use coldchassis_core::remedy::Comparison;
use coldchassis_core::store::{Event, Store, UnitFilter, WorkState};
use coldchassis_core::workbench::{
    Code, QueueAsk, QueueLine, Surroundings, UnitView, Workbench, look_at_bundle,
};
use serde_json::json;

use super::bench::{Record, TIED, foreign, new_unit};

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
    let mut keeper = bench.keeper().expect("the record").expect("a record in a file");
    loop {
        let judged = keeper.judge().expect("the record");
        if judged.is_empty() {
            return units;
        }
        units += judged.len();
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
    assert_eq!(bench.pending().expect("the record"), 0, "each answer keeps its class");
    let counts = bench.queue_counts().expect("counts");
    assert_eq!((counts.units, counts.states.len(), counts.classes.len()), (11, 7, 6));
    assert_eq!(counts.states[0].text, "To inspect");
    assert_eq!(counts.states.iter().map(|state| state.units).sum::<u32>(), 11);
    assert_eq!(counts.classes.iter().map(|class| class.units).sum::<u32>(), 11);
    assert_eq!(counts.classes[0].units, 0, "no class is unknown");
    assert!(bench.queue_places("").expect("places").contains(&"Shelf 3".to_owned()));
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
    assert_eq!((queue(&phone, &unknown).len(), phone.pending().expect("the record")), (3, 3));
    assert!(phone.units(None).expect("a list").iter().all(|unit| unit.treat_as.is_none()));
    assert_eq!(keep_up(&mut phone), 3);
    assert_eq!((queue(&phone, &unknown).len(), phone.pending().expect("the record")), (0, 0));
    let all = QueueAsk::default();
    assert_eq!(queue(&phone, &all), queue(&shop, &all));
    let listed = |bench: &Workbench| by_id(bench.units(None).expect("a list"));
    assert_eq!(listed(&phone), listed(&shop), "the list has the classes too");
    let again = look_at_bundle(&bundle, &phone.photo_files().expect("a folder")).expect("it");
    let again = phone.keep_bundle(again).expect("a bundle");
    assert_eq!((again.new, again.says.len()), (0, 1), "{:?}", again.says);
}

/// What came in a bundle is worked out beside the workbench while somebody works at it.
#[test]
fn a_class_that_is_worked_out_while_something_is_found_is_let_go() {
    let (here, there) = (Record::stepping(1500), Record::stepping(1500));
    let mut shop = open(&here, "here");
    let made = shop.create_unit(&new_unit("One", &["outside"])).expect("a unit");
    shop.answer(made.id, "plug", json!("two_equal_blades")).expect("an answer");
    let bundle = here.path().with_file_name("out.bundle");
    shop.export_work(None).expect("work").run(&bundle).expect("room");
    let mut phone = open(&there, "there");
    let work = look_at_bundle(&bundle, &phone.photo_files().expect("a folder")).expect("a bundle");
    phone.keep_bundle(work).expect("a bundle");
    let mut keeper = phone.keeper().expect("the record").expect("a record in a file");
    let judged = keeper.judge().expect("the record");
    assert_eq!(judged.len(), 1);
    phone.answer(made.id, "plug", json!("battery_only")).expect("an answer");
    let before = queue(&phone, &QueueAsk::default());
    let class = before[0].unit.treat_as.as_deref();
    assert!(class.is_some_and(|class| class != "live"), "{class:?}");
    phone.keep_judged(&judged).expect("the record");
    assert_eq!(queue(&phone, &QueueAsk::default()), before);
    assert_eq!(keep_up(&mut phone), 0);
    let memory = Workbench::in_memory(here.around("memory")).expect("a record");
    assert!(memory.keeper().expect("a record").is_none());
}

#[test]
fn a_shell_that_does_one_thing_at_a_time_keeps_up_between_commands() {
    let record = Record::stepping(1500);
    let mut bench = open(&record, "here");
    let made = bench.create_unit(&new_unit("One", &["outside"])).expect("a unit");
    bench.answer(made.id, "plug", json!("battery_only")).expect("an answer");
    drop(bench);
    let file = rusqlite::Connection::open(record.path()).expect("SQLite");
    file.execute_batch(
        "UPDATE standing SET engine_version = '0'; UPDATE queue SET engine_version = '0';",
    )
    .expect("an older engine");
    drop(file);
    let mut bench = open(&record, "here");
    assert_eq!(bench.pending().expect("the record"), 1);
    assert_eq!(bench.keep_up().expect("the record"), 1);
    assert_eq!((bench.pending().expect("it"), bench.keep_up().expect("it")), (0, 0));
}

#[test]
fn findings_are_found_by_the_words_that_a_person_sees() {
    let record = Record::stepping(1500);
    let mut bench = open(&record, "here");
    let mut make = |name: &str, answers: &[(&str, serde_json::Value)]| {
        let made = bench.create_unit(&new_unit(name, &["outside", "cover_off"])).expect("a unit");
        for (question, answer) in answers {
            bench.answer(made.id, question, answer.clone()).expect("it fits");
        }
        made.unit.id
    };
    let metal = json!(["screws_or_shafts", "instrument_jack"]);
    let alike = make("One", &[("plug", json!("two_equal_blades")), ("bare_metal", metal)]);
    let wider =
        make("Two", &[("plug", json!("two_polarised_blades")), ("iron_seen", json!("small"))]);
    let joined =
        make("Three", &[("line_capacitor", json!("pin_a_leg")), ("cord", json!("cant_tell"))]);
    let found = |text: &str| {
        let ask = QueueAsk { text: text.to_owned(), newest: true, ..QueueAsk::default() };
        queue(&bench, &ask).into_iter().map(|line| line.unit.id).collect::<Vec<_>>()
    };
    for (text, units) in [
        ("both alike", vec![alike]),
        ("one wider", vec![wider]),
        // Another than the first of several answers.
        ("microphone", vec![alike]),
        ("matchbox", vec![wider]),
        // A question by its name, whatever was answered, but not where nobody could tell.
        ("capacitor from line to chassis", vec![joined]),
        ("the plug", vec![wider, alike]),
        ("cord", vec![]),
        // By id as before, and beside a name.
        ("two_equal", vec![alike]),
        ("three leg of pin a", vec![joined]),
        ("one matchbox", vec![wider]),
        ("two matchbox", vec![wider]),
        ("three matchbox", vec![]),
    ] {
        assert_eq!(found(text), units, "{text}");
    }
}

/// All that the demonstration does, done to units that are real: every kind of finding has to leave and be
/// taken in, or a bundle of one odd unit would be refused whole.
#[test]
fn whatever_the_demonstration_holds_can_be_carried() {
    let (demo, here, there) =
        (Record::stepping(1500), Record::stepping(1500), Record::stepping(1500));
    let mut bench = open(&demo, "here");
    bench.load_demo().expect("the demonstration");
    let radio = bench.create_unit(&new_unit("Mended", &["outside", "cover_off"])).expect("a unit");
    for (question, answer) in TIED {
        bench.answer(radio.id, question, json!(answer)).expect("it fits");
    }
    bench.answer(radio.id, "bare_metal", json!(["screws_or_shafts"])).expect("it fits");
    bench.leave_open(radio.id, "rated").expect("it was looked for");
    let stack = json!({"steps": ["polarised_plug", "switch_to_hot_leg"], "limit_ma": 0.5});
    bench.choose_remedies(radio.id, stack).expect("offered");
    for line in bench.proof(radio.id).expect("a plan").lines {
        let entry = match (line.unit.as_str(), line.positions.as_slice()) {
            ("", _) => json!({"holds": true}),
            (_, []) if line.comparison == Comparison::AtLeast => json!({"over_range": true}),
            (_, []) => json!({"read": 0.3}),
            (_, [first, ..]) => json!({"positions": {first.id(): 0.1}}),
        };
        bench.enter_proof(radio.id, line.id.id(), entry).expect("it fits");
    }
    drop(bench);
    let invented = Store::open(&demo.path()).expect("the record");
    let mut real = Store::open(&here.path()).expect("a record");
    for unit in invented.units(&UnitFilter::default()).expect("the record") {
        let events = invented.events(unit.id).expect("the record").into_iter();
        let events = events.map(|event| Event { demo: false, ..event });
        real.append_foreign(events).expect("they fit");
    }
    drop((invented, real));
    let mut shop = open(&here, "here");
    keep_up(&mut shop);
    let bundle = here.path().with_file_name("out.bundle");
    shop.export_work(None).expect("work").run(&bundle).expect("room");

    let mut phone = open(&there, "there");
    let work = look_at_bundle(&bundle, &phone.photo_files().expect("a folder")).expect("a bundle");
    phone.keep_bundle(work).expect("every finding is taken in");
    keep_up(&mut phone);
    let lines = queue(&phone, &QueueAsk::default());
    assert_eq!(lines, queue(&shop, &QueueAsk::default()));
    for id in lines.into_iter().filter_map(|line| line.unit.inspection) {
        let (away, home) = (phone.inspection(id).expect("it"), shop.inspection(id).expect("it"));
        assert_eq!((away.verdict, away.findings), (home.verdict, home.findings));
        assert_eq!(phone.proof(id).expect("it"), shop.proof(id).expect("it"));
        assert_eq!(phone.remedies(id).expect("it"), shop.remedies(id).expect("it"));
    }
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
fn a_state_is_kept_with_its_time_and_person() {
    let record = Record::stepping(10);
    let mut bench = open(&record, "here");
    let unit = bench.create_unit(&new_unit("One", &["outside"])).expect("a unit").unit.id;
    let line = bench.set_unit_state(unit, "in_repair").expect("a state");
    assert_eq!((line.state, line.state_text.as_str()), (WorkState::InRepair, "In repair"));
    assert_eq!(line.state_by, "Inspector here");
    assert!(line.state_at.is_some());
    let refused = bench.set_unit_state(unit, "mended").expect_err("no state");
    assert_eq!((refused.code, refused.field.as_deref()), (Code::BadInput, Some("state")));
    let refused = bench.set_unit_state(unit, "ready").expect_err("nothing was repaired");
    assert_eq!(refused.message.id, "proof-nothing-chosen");
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

#[test]
fn the_inspection_that_was_begun_last_counts_whatever_the_clocks_say() {
    let record = Record::stepping(1000);
    let mut ahead = {
        let around = record.around("ahead");
        let Surroundings { clock, .. } = around;
        let around = Surroundings {
            clock: Box::new(move || clock() + 20 * 3_600_000),
            ..record.around("ahead")
        };
        Workbench::open(&record.path(), around).expect("the record opens")
    };
    let first = ahead.create_unit(&new_unit("Shelf radio", &["outside"])).expect("a unit");
    ahead.answer(first.id, "plug", json!("battery_only")).expect("it fits");
    drop(ahead);
    let mut bench = open(&record, "here");
    let again = bench.start_inspection(first.unit.id, &["outside".to_owned()]).expect("again");
    bench.answer(again.id, "plug", json!("two_equal_blades")).expect("it fits");
    let rows = queue(&bench, &QueueAsk::default());
    assert_eq!(rows[0].unit.inspection, Some(again.id));
    let others = bench.inspection(again.id).expect("it").others;
    assert_eq!(others.len(), 1);
    assert!(others[0].unit.treat_as.is_some(), "the class of the other one is told");
    // Whoever reads of the first one is told of the second.
    let early = bench.report_text(first.id).expect("a text");
    let late = bench.report_text(again.id).expect("a text");
    assert!(early.contains("A later inspection of"), "{early}");
    assert!(!late.contains("A later inspection of"), "{late}");
    assert!(late.contains("Inspected 20"), "{late}");
}

#[test]
fn an_undo_in_the_inspection_leaves_what_was_said_in_the_queue() {
    let record = Record::stepping(1000);
    let mut bench = open(&record, "here");
    let made = bench.create_unit(&new_unit("Shelf radio", &["outside"])).expect("a unit");
    bench.answer(made.id, "plug", json!("two_equal_blades")).expect("it fits");
    bench.set_unit_state(made.unit.id, "do_not_power").expect("a state");
    bench.undo(made.id).expect("undone");
    assert!(bench.inspection(made.id).expect("it").findings.is_empty());
    assert_eq!(queue(&bench, &QueueAsk::default())[0].state, WorkState::DoNotPower);
}

#[test]
fn a_unit_that_is_deleted_is_gone_from_lists_and_copies_and_no_bundle_brings_it_back() {
    let record = Record::stepping(1000);
    let mut bench = open(&record, "here");
    let name = "Radio of somebody who wants it forgotten";
    let made = bench.create_unit(&new_unit(name, &["outside"])).expect("a unit");
    let other = bench.create_unit(&new_unit("Another", &["outside"])).expect("a unit");
    let sent = record.path().with_file_name("sent.coldbundle");
    bench.export_work(None).expect("a record in a file").run(&sent).expect("room");
    bench.delete_unit(made.unit.id).expect("it is there");
    assert_eq!(bench.delete_unit(made.unit.id).expect_err("gone").code, Code::NotFound);
    assert_eq!(bench.inspection(made.id).expect_err("gone").code, Code::NotFound);
    let rows = queue(&bench, &QueueAsk::default());
    assert_eq!(rows.iter().map(|row| row.unit.id).collect::<Vec<_>>(), [other.unit.id]);
    let files = bench.photo_files().expect("a folder");
    let work = look_at_bundle(&sent, &files).expect("a bundle");
    bench.keep_bundle(work).expect("a bundle");
    assert_eq!(queue(&bench, &QueueAsk::default()).len(), 1);
    drop(bench);
    let folder = record.path().parent().expect("a folder").to_owned();
    let paths = std::fs::read_dir(folder).expect("a folder").map(|one| one.expect("it").path());
    for path in paths.filter(|path| path.is_file()) {
        let bytes = std::fs::read(&path).expect("a file");
        let is_there = bytes.windows(name.len()).any(|part| part == name.as_bytes());
        assert!(!is_there || path == sent, "{} still has it", path.display());
    }
}
