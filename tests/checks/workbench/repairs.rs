//! Repairs of an inspection: chosen, proven, taken back, and the picture after them.

use coldchassis_core::hazard::Class;
use coldchassis_core::remedy::{Modification, ProofMark};
use coldchassis_core::store::WorkState;
use coldchassis_core::workbench::{Code, NewUnit, QueueAsk, Workbench};
use serde_json::{Value, json};
use uuid::Uuid;

use crate::bench::{Record, TIED};

/// A radio with its chassis on the line, the switch in that leg, bare screws.
fn radio(bench: &mut Workbench) -> Uuid {
    let supply = json!({"volts": 120, "hertz": 60, "volts_max": 120});
    let access = vec!["outside".to_owned(), "cover_off".to_owned()];
    let new = NewUnit { supply, access, ..NewUnit::default() };
    let id = bench.create_unit(&new).expect("a unit").id;
    look(bench, id);
    id
}

fn look(bench: &mut Workbench, id: Uuid) {
    for (question, answer) in TIED {
        bench.answer(id, question, json!(answer)).expect("it fits");
    }
    bench.answer(id, "bare_metal", json!(["screws_or_shafts"])).expect("it fits");
    bench.answer(id, "terminals", json!(["none"])).expect("it fits");
}

fn whole() -> Value {
    json!({"steps": ["polarised_plug", "switch_to_hot_leg", "reach_closed"]})
}

/// Enters a figure that passes for every line of the proof.
fn pass(bench: &mut Workbench, id: Uuid) {
    let proof = bench.proof(id).expect("a plan");
    for line in &proof.lines {
        let entry = match line.unit.as_str() {
            "" => json!({"holds": true}),
            _ if line.id.id() == "hot_blade_open_off" => json!({"over_range": true}),
            _ if !line.positions.is_empty() => {
                let all = line.positions.iter().map(|one| (one.id().to_owned(), json!(0.3)));
                json!({"positions": all.collect::<serde_json::Map<_, _>>()})
            }
            _ => json!({"read": 0.3}),
        };
        bench.enter_proof(id, line.id.id(), entry).expect("it fits");
    }
}

#[test]
fn a_stack_is_shown_before_and_after_on_the_grid_and_the_picture() {
    let mut bench = Workbench::in_memory(Record::fixed().around("here")).expect("a bench");
    let id = radio(&mut bench);
    let all = bench.remedies(id).expect("repairs");
    assert_eq!(all.before.class, Class::Live);
    assert!(all.cautions[0].starts_with("Local codes"));
    let shortest = all.in_unit.expect("there is a way");
    assert_eq!(shortest.steps.len(), 2, "{shortest:?}");

    let repair = bench.remedy_stack(id, whole()).expect("it is offered");
    assert_eq!((repair.before.class, repair.after.class), (Class::Live, Class::TwoFaults));
    assert_eq!(repair.steps.len(), 3);
    assert!(repair.steps.iter().all(|step| step.worse.is_none()), "{:?}", repair.steps);
    assert_eq!(repair.grid_before.columns.len(), 4);
    assert_eq!(repair.grid_after.columns.len(), 2, "the plug goes in one way only");
    assert!(repair.parts.iter().any(|part| part.size.is_some()), "{:?}", repair.parts);
    let picture = bench.circuit_repaired(id, whole(), Value::Null).expect("a picture");
    let picture = picture.expect("a line side");
    assert_eq!(picture.class, Class::TwoFaults);
    assert!(!picture.flips.plug);
    // The picture before is that of the inspection.
    let empty = bench.circuit_repaired(id, json!([]), Value::Null).expect("a picture");
    assert_eq!(empty, bench.circuit(id, Value::Null).expect("a picture"));
}

#[test]
fn a_step_that_is_not_offered_is_refused_by_its_place() {
    let mut bench = Workbench::in_memory(Record::fixed().around("here")).expect("a bench");
    let id = radio(&mut bench);
    for (stack, field) in [
        (json!({"steps": ["polarised_plug", "three_wire_cord"]}), "stack.1"),
        (json!(["three_wire_cord"]), "stack.0"),
        (json!({"steps": ["magic"]}), "stack"),
        (json!({"steps": [], "limit_ma": 5}), "stack.limit_ma"),
        (json!("polarised_plug"), "stack"),
    ] {
        let refused = bench.choose_remedies(id, stack.clone()).expect_err("refused");
        assert_eq!(refused.field.as_deref(), Some(field), "{stack}");
        assert_eq!(bench.remedies(id).expect("repairs").chosen, []);
    }
}

#[test]
fn what_was_chosen_and_proven_is_kept_closes_line_by_line_and_can_be_taken_back() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    let class = bench.inspection(id).expect("it").verdict;
    bench.choose_remedies(id, whole()).expect("offered");
    // A repair is no finding: the verdict and the list of findings are as before.
    let after = bench.inspection(id).expect("it");
    assert_eq!(after.verdict, class);
    assert!(
        !after
            .findings
            .iter()
            .any(|one| one.path.starts_with("rem") || one.path.starts_with("proof"))
    );
    drop(bench);
    let mut bench = record.open();
    let proof = bench.proof(id).expect("a plan");
    assert!(!proof.ready && proof.counts[0] == proof.lines.len());
    let refused = bench.mark_ready(id, true).expect_err("lines are open");
    assert_eq!(refused.code, Code::BadInput);

    pass(&mut bench, id);
    let proof = bench.proof(id).expect("a plan");
    assert!(proof.ready, "{:?}", proof.lines);
    bench.mark_ready(id, true).expect("every line is passed");
    assert!(bench.proof(id).expect("a plan").marked_ready);

    // A line that fails afterwards takes it away again.
    bench.enter_proof(id, "cord_pull", json!({"holds": false})).expect("it fits");
    let proof = bench.proof(id).expect("a plan");
    assert!(!proof.ready && !proof.marked_ready && proof.counts[2] == 1);
    bench.undo(id).expect("undone");
    assert!(bench.proof(id).expect("a plan").marked_ready);
    bench.withdraw(id, "proof.cord_pull").expect("taken back");
    let open = bench.proof(id).expect("a plan");
    let line = open.lines.iter().find(|line| line.id.id() == "cord_pull").expect("it");
    assert_eq!((line.mark, line.entry.clone()), (ProofMark::Open, None));

    bench.choose_remedies(id, json!([])).expect("taken back");
    assert!(bench.remedies(id).expect("repairs").chosen.is_empty());
    bench.undo(id).expect("undone");
    assert_eq!(bench.remedies(id).expect("repairs").chosen[0], Modification::PolarisedPlug);
}

#[test]
fn ready_needs_the_proof_by_whichever_door_it_is_asked_for() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    let unit = bench.inspection(id).expect("it").unit.id;
    let state = |bench: &Workbench| {
        let page = bench.queue(&QueueAsk::default()).expect("a page");
        page.rows.into_iter().find(|row| row.unit.id == unit).expect("the unit").state
    };
    bench.choose_remedies(id, whole()).expect("offered");
    let refused = bench.set_unit_state(unit, "ready").expect_err("lines are open");
    assert_eq!((refused.code, refused.message.id.as_str()), (Code::BadInput, "proof-not-ready"));
    assert_eq!(state(&bench), WorkState::ToInspect);
    pass(&mut bench, id);
    assert_eq!(bench.set_unit_state(unit, "ready").expect("proven").state, WorkState::Ready);

    // A line that fails afterwards takes that away, as long as it fails.
    bench.enter_proof(id, "cord_pull", json!({"holds": false})).expect("it fits");
    assert_eq!(state(&bench), WorkState::ProofOpen);
    bench.undo(id).expect("undone");
    assert_eq!(state(&bench), WorkState::Ready);
    bench.set_unit_state(unit, "in_repair").expect("nothing proves that");

    // A later inspection that finds the chassis on the line takes the proof's word away.
    let later = bench.start_inspection(unit, &["outside".to_owned()]).expect("another").id;
    assert_eq!(bench.set_unit_state(unit, "ready").expect("nothing found").state, WorkState::Ready);
    bench.set_unit_state(unit, "in_repair").expect("nothing proves that");
    bench.answer(later, "plug", json!("two_equal_blades")).expect("it fits");
    for refused in [
        bench.set_unit_state(unit, "ready").expect_err("worse"),
        bench.mark_ready(id, true).expect_err("worse"),
    ] {
        assert_eq!(refused.message.id, "proof-found-worse", "{}", refused.sentence(bench.words()));
    }
    assert_eq!(state(&bench), WorkState::InRepair);
    // The row shows what was found last, and leads to the proof that is asked for.
    let row = bench.queue(&QueueAsk::default()).expect("a page").rows.remove(0);
    assert_eq!((row.unit.inspection, row.proof), (Some(later), Some(id)));
}

#[test]
fn what_forbids_power_takes_ready_away_though_the_class_stays() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    let unit = bench.inspection(id).expect("it").unit.id;
    bench.choose_remedies(id, whole()).expect("offered");
    pass(&mut bench, id);
    bench.mark_ready(id, true).expect("proven");
    let marked = |bench: &mut Workbench| bench.proof(id).expect("a plan").marked_ready;
    let held = |bench: &mut Workbench| {
        let refused = bench.set_unit_state(unit, "ready").expect_err("somebody was hurt");
        assert_eq!(refused.message.id, "proof-held-back", "{}", refused.sentence(bench.words()));
        assert!(!marked(bench));
        let page = bench.queue(&QueueAsk::default()).expect("a page");
        assert_eq!(page.rows[0].state, WorkState::ProofOpen);
    };
    assert!(marked(&mut bench));
    // In the inspection of the repair itself, by a live test that is of after it.
    bench.set_live_test(id, "qualified", json!(true)).expect("it fits");
    bench.set_live_test(id, "tripped_first_off", json!(true)).expect("it fits");
    held(&mut bench);
    bench.withdraw(id, "live_test.tripped_first_off").expect("taken back");
    assert!(marked(&mut bench));
    // In a later one, by what somebody felt: nothing of the class changes by it.
    let later = bench.start_inspection(unit, &["outside".to_owned()]).expect("another").id;
    bench.answer(later, "plug", json!("no_plug")).ok();
    bench.answer(later, "tingle", json!("reported")).expect("it fits");
    let refused = bench.set_unit_state(unit, "ready").expect_err("somebody was hurt");
    assert!(
        ["proof-held-back", "proof-found-worse"].contains(&refused.message.id.as_str()),
        "{}",
        refused.sentence(bench.words())
    );
    assert!(!marked(&mut bench));
}

#[test]
fn a_mark_that_is_taken_back_leaves_the_proof_open() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    bench.choose_remedies(id, whole()).expect("offered");
    pass(&mut bench, id);
    bench.mark_ready(id, true).expect("proven");
    bench.mark_ready(id, false).expect("taken back");
    let page = bench.queue(&QueueAsk::default()).expect("a page");
    assert_eq!(page.rows[0].state, WorkState::ProofOpen);
    bench.mark_ready(id, true).expect("proven still");
}

#[test]
fn a_proof_is_of_the_repair_that_was_chosen_and_of_no_other() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    bench.choose_remedies(id, whole()).expect("offered");
    pass(&mut bench, id);
    assert!(bench.proof(id).expect("a plan").ready);
    let other = json!({"steps": ["polarised_plug", "switch_to_hot_leg"]});
    bench.choose_remedies(id, other).expect("offered");
    let proof = bench.proof(id).expect("a plan");
    assert_eq!(proof.counts, [proof.lines.len(), 0, 0], "nothing is shown of it yet");
    bench.undo(id).expect("undone");
    assert!(bench.proof(id).expect("a plan").ready, "what was shown of the first stands again");
}

#[test]
fn nothing_is_entered_of_live_parts_before_all_that_is_done_with_the_plug_out() {
    let mut bench = Workbench::in_memory(Record::fixed().around("here")).expect("a bench");
    let id = radio(&mut bench);
    let open = json!({"steps": ["polarised_plug", "switch_to_hot_leg"]});
    bench.choose_remedies(id, open).expect("offered");
    let leakage =
        |bench: &mut Workbench| bench.enter_proof(id, "leakage_first", json!({"read": 0.3}));
    let refused = leakage(&mut bench).expect_err("the cord was not pulled");
    assert_eq!(refused.field.as_deref(), Some("line"));
    assert_eq!(refused.message.id, "takes-line-in-turn");
    assert_eq!(bench.proof(id).expect("a plan").counts[1], 0);
    pass(&mut bench, id);
    bench.enter_proof(id, "cord_pull", json!({"holds": false})).expect("it fits");
    leakage(&mut bench).expect_err("a line has failed");
    bench.enter_proof(id, "cord_pull", json!({"holds": true})).expect("it fits");
    leakage(&mut bench).expect("it is its turn");
}

#[test]
fn a_unit_that_stays_live_is_not_ready_whatever_is_entered() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    bench.choose_remedies(id, json!({"steps": ["fuse_in_hot_leg"]})).expect("offered");
    pass(&mut bench, id);
    let proof = bench.proof(id).expect("a plan");
    assert_eq!(proof.counts, [0, proof.lines.len(), 0]);
    assert!(
        !proof.ready && proof.cautions[0].contains("Do not plug it in"),
        "{:?}",
        proof.cautions
    );
    let refused = bench.mark_ready(id, true).expect_err("it is live");
    assert_eq!(refused.message.id, "proof-still-live");
}

#[test]
fn a_line_that_is_not_planned_is_refused() {
    let mut bench = Workbench::in_memory(Record::fixed().around("here")).expect("a bench");
    let id = radio(&mut bench);
    bench.choose_remedies(id, whole()).expect("offered");
    let refused = bench.enter_proof(id, "earth_bond", json!({"read": 0.1})).expect_err("none");
    assert_eq!(refused.field.as_deref(), Some("line"));
    let refused = bench.enter_proof(id, "cord_pull", json!({"read": 0.1})).expect_err("no figure");
    assert_eq!(refused.field.as_deref(), Some("entry"));
    assert_eq!(bench.proof(id).expect("a plan").counts[1], 0);
}

#[test]
fn the_re_inspection_is_compared_with_the_first() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    assert_eq!(bench.proof(id).expect("a plan").compared, None);
    let unit = bench.inspection(id).expect("it").unit.id;
    let access = ["outside".to_owned(), "cover_off".to_owned()];
    let again = bench.start_inspection(unit, &access).expect("another").id;
    look(&mut bench, again);
    bench.answer(again, "plug", json!("two_polarised_blades")).expect("it fits");
    bench.answer(again, "switch_leg", json!("pin_a")).expect("it fits");
    let compared = bench.proof(again).expect("a plan").compared.expect("the first");
    assert_eq!(compared.classes, [Class::Live, Class::OneFault]);
    assert!(!compared.worse);
}

#[test]
fn where_it_is_plugged_in_is_a_question_of_its_own() {
    let record = Record::stepping(1000);
    let mut bench = record.open();
    let id = radio(&mut bench);
    let feeds = bench.feeds(id).expect("feeds");
    let class = |feed: &str| {
        let one = feeds.feeds.iter().find(|one| one.id.id() == feed).expect("it");
        one.standing.class
    };
    assert_eq!(class("direct"), Class::Live);
    assert_eq!(class("isolated"), Class::OneFault);
    assert_eq!(class("step_down_auto"), Class::Live);
    let view = bench.set_feed(id, json!({"feed": "step_down_auto", "input_volts": 230}));
    assert_eq!(view.expect("it fits").supply.input_volts, Some(230.0));
    assert_eq!(bench.feeds(id).expect("feeds").input_volts, 230.0);
    let view = bench.set_feed(id, json!("isolated")).expect("it fits");
    assert_eq!(view.verdict.treat_as, "one_fault");
    for (feed, field) in [
        (json!("dc"), "supply.feed"),
        (json!({"feed": "step_down_auto", "input_volts": 100}), "supply.input_volts"),
        (json!({"feed": "direct", "input_volts": 230}), "supply.input_volts"),
    ] {
        let refused = bench.set_feed(id, feed).expect_err("refused");
        assert_eq!(refused.field.as_deref(), Some(field));
    }
    bench.undo(id).expect("undone");
    assert_eq!(bench.inspection(id).expect("it").supply.input_volts, Some(230.0));
}
