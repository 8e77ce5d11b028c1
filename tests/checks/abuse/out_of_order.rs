//! Commands before their time, after it, twice, and about what is gone.

use serde_json::{Value, json};
use uuid::Uuid;

use super::answers::{answer, done, refused};
use super::samples::sample;
use super::stage::Stage;

fn id(view: &Value, path: &str) -> Uuid {
    view.pointer(path).and_then(Value::as_str).and_then(|id| id.parse().ok()).expect("an id")
}

/// A unit of which nothing is known.
fn fresh(stage: &Stage) -> (Uuid, Uuid) {
    let new = json!({"unit": {"supply": {"volts": 120, "hertz": 60}}});
    let view = done(&stage.desk, "create_unit", &new);
    (id(&view, "/unit/id"), id(&view, "/id"))
}

#[test]
fn what_comes_before_its_time_is_refused() {
    let stage = Stage::new();
    let (unit, inspection) = fresh(&stage);
    // What is shown before a repair is chosen shows nothing of it: whether it is taken or not, nothing is ready.
    for line in ["cord_pull", "earth_bond", "chassis_volts_loaded", "leakage_second"] {
        let entry = json!({"inspection": inspection, "line": line, "entry": {"holds": true}});
        answer(&stage.desk, "enter_proof", &entry);
    }
    refused(&stage.desk, "mark_ready", &json!({"inspection": inspection, "ready": true}));
    refused(&stage.desk, "set_unit_state", &json!({"unit": unit, "state": "ready"}));
    let stack = json!({"steps": ["gfci_outlet", "gfci_outlet"]});
    refused(&stage.desk, "choose_remedies", &json!({"inspection": inspection, "stack": stack}));
    refused(&stage.desk, "withdraw", &json!({"inspection": inspection, "finding": "answers.plug"}));
    refused(&stage.desk, "restore_snapshot", &json!({"number": 1, "readable": true}));
    refused(
        &stage.desk,
        "order_photos",
        &json!({"inspection": inspection, "order": stage.ids.photos}),
    );
    // What can be shown of nothing is shown.
    for command in [
        "grid",
        "chart",
        "remedies",
        "proof",
        "feeds",
        "touch_test",
        "insulation_test",
        "report_text",
    ] {
        done(&stage.desk, command, &json!({"inspection": inspection}));
    }
    done(&stage.desk, "make_report", &json!({"inspection": inspection, "ask": {}}));
    done(&stage.desk, "make_tags", &json!({"units": [unit], "paper": "sheet_of_eight"}));
    stage.close_whole(&[unit]);
}

#[test]
fn what_is_done_twice_is_done_once() {
    let stage = Stage::new();
    let inspection = stage.ids.inspection;
    let [photo, other] = stage.ids.photos;
    let of_photo = json!({"inspection": inspection, "photo": photo});
    done(&stage.desk, "remove_photo", &of_photo);
    for command in ["remove_photo", "export_photo"] {
        refused(&stage.desk, command, &of_photo);
    }
    let mut pair = json!({"inspection": inspection, "photo": photo, "before": other});
    refused(&stage.desk, "pair_photo", &pair);
    (pair["photo"], pair["before"]) = (json!(other), json!(photo));
    refused(&stage.desk, "pair_photo", &pair);
    let order = json!({"inspection": inspection, "order": [other, photo]});
    refused(&stage.desk, "order_photos", &order);
    let caption = json!({"inspection": inspection, "photo": photo, "caption": "x"});
    refused(&stage.desk, "caption_photo", &caption);
    let back = json!({"inspection": inspection, "finding": "answers.back"});
    done(&stage.desk, "withdraw", &back);
    refused(&stage.desk, "withdraw", &back);
    // The photo comes back with an undo, and may be captioned again.
    done(&stage.desk, "undo", &json!({"inspection": inspection}));
    done(&stage.desk, "undo", &json!({"inspection": inspection}));
    done(&stage.desk, "caption_photo", &caption);
    let bundle = sample(&stage, "import_bundle");
    let first = done(&stage.desk, "import_bundle", &bundle);
    let again = done(&stage.desk, "import_bundle", &bundle);
    assert_eq!((&first["new"], &again["new"]), (&again["known"], &json!(0)));
    stage.close_whole(&[]);
}

#[test]
fn nothing_is_done_to_what_is_gone() {
    let stage = Stage::new();
    let [unit, inspection] = stage.ids.gone;
    for command in ["show_inspection", "undo", "grid", "proof", "remedies", "report_text", "feeds"]
    {
        let problem = refused(&stage.desk, command, &json!({"inspection": inspection}));
        assert_eq!(problem["code"], "not_found", "{command}");
    }
    let plug = json!({"inspection": inspection, "question": "plug", "answer": "three_pins"});
    refused(&stage.desk, "answer", &plug);
    refused(&stage.desk, "start_inspection", &json!({"unit": unit, "access": []}));
    refused(&stage.desk, "set_unit_state", &json!({"unit": unit, "state": "in_repair"}));
    refused(&stage.desk, "make_tags", &json!({"units": [unit], "paper": "label62"}));
    let path = stage.given("gone.coldbundle");
    refused(&stage.desk, "export_bundle", &json!({"units": [unit], "path": path}));
    assert!(!path.exists(), "a bundle of nothing was written");
    // The demonstration comes again with what is undone in it taken away.
    done(&stage.desk, "load_demo", &json!({}));
    done(&stage.desk, "load_demo", &json!({}));
    done(&stage.desk, "remove_demo", &json!({}));
    done(&stage.desk, "remove_demo", &json!({}));
    stage.close_whole(&[]);
}

#[test]
fn a_repair_that_no_longer_fits_keeps_nothing_else_from_being_shown() {
    let stage = Stage::new();
    let inspection = stage.ids.inspection;
    // An earthed plug that goes in one way, on a set that is found to be isolated: another repair than was chosen.
    for (question, answer) in [
        ("plug", "three_pins"),
        ("earth_wire", "on_chassis"),
        ("transformer", "separate_traced"),
        ("common_to_chassis", "cant_tell"),
        ("common_leg", "neither"),
    ] {
        let given = json!({"inspection": inspection, "question": question, "answer": answer});
        done(&stage.desk, "answer", &given);
    }
    let stack = json!(["polarised_plug", "switch_to_hot_leg", "reach_closed"]);
    refused(&stage.desk, "remedy_stack", &json!({"inspection": inspection, "stack": stack}));
    for command in ["show_inspection", "remedies", "grid", "report_text"] {
        done(&stage.desk, command, &json!({"inspection": inspection}));
    }
    done(&stage.desk, "make_report", &json!({"inspection": inspection, "ask": {}}));
    let nothing = json!({"inspection": inspection, "stack": []});
    done(&stage.desk, "choose_remedies", &nothing);
    stage.close_whole(&[]);
}
