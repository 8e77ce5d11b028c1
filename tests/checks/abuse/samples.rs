//! What each command takes when it is used as it is meant to be.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};

use super::answers::done;
use super::stage::{BUNDLE, Stage, new_unit, picture};

fn stack() -> Value {
    json!({"steps": ["polarised_plug", "switch_to_hot_leg", "reach_closed"], "limit_ma": 0.5})
}

fn supply() -> Value {
    json!({"volts": 230, "hertz": 50, "volts_max": 253, "feed": "step_down_auto", "input_volts": 400})
}

/// The line of the proof that comes first, and an entry that it takes.
fn first_line(stage: &Stage) -> (Value, Value) {
    let proof = done(&stage.desk, "proof", &json!({"inspection": stage.ids.inspection}));
    let line = &proof["lines"][0];
    let entry = if line["unit"] == "" { json!({"holds": true}) } else { json!({"read": 0.01}) };
    (line["id"].clone(), entry)
}

/// Arguments that a command takes on a fresh stage.
pub fn sample(stage: &Stage, command: &str) -> Value {
    let ids = &stage.ids;
    let (unit, inspection, [photo, other]) = (ids.unit, ids.inspection, ids.photos);
    let of_inspection = json!({"inspection": inspection});
    let mut given = match command {
        "list_units" => return json!({"text": "set"}),
        "list_presets" | "list_regions" | "load_demo" | "remove_demo" | "count_queue"
        | "copy_trouble" | "count_pending" | "list_snapshots" | "list_csv" | "ask_open_path" => {
            return json!({});
        }
        "list_places" => return json!({"text": "shelf"}),
        "show_question" => return json!({"question": "plug"}),
        "create_unit" => {
            let new = new_unit("Another set");
            return json!({"unit": {
                "name": new.name, "place": new.place, "kind": new.kind, "supply": supply(), "access": new.access,
            }});
        }
        "start_inspection" => return json!({"unit": unit, "access": ["outside", "meter"]}),
        "stored_charge" => {
            return json!({"charge": {"farads": 47e-6, "volts": 350, "bleed_ohms": 1e5}});
        }
        "set_inspector" => return json!({"author": "Ada Quill", "language": "en"}),
        "show_photo" => return json!({"sha256": ids.sha256, "thumbnail": true}),
        "find_tubes" | "read_tubes" => return json!({"text": "12SK7"}),
        "study_heaters" => return json!({"tubes": ["12SA7", "50L6GT"], "volts": 117, "hertz": 60}),
        "show_queue" => {
            return json!({"ask": {
                "text": "set", "states": ["to_inspect"], "classes": ["live"], "bases": ["shown"],
                "overlays": ["stored_charge"], "places": ["Shelf 3"], "kinds": ["table_radio"],
                "from": 0, "to": 1_800_000_000_000_i64, "newest": true, "after": "12",
            }});
        }
        // One that nobody misses: what is there otherwise has to outlive everything.
        "delete_unit" => {
            let made = done(&stage.desk, "create_unit", &sample(stage, "create_unit"));
            return json!({"unit": made["unit"]["id"]});
        }
        "set_unit_state" => return json!({"unit": unit, "state": "in_repair"}),
        "export_bundle" => return json!({"units": [unit], "path": stage.given("out.coldbundle")}),
        "import_bundle" => return json!({"path": stage.given(BUNDLE)}),
        "restore_snapshot" => return json!({"number": null, "readable": true}),
        "export_readable" => return json!({"path": stage.given("read.coldbundle")}),
        "make_tags" => return json!({"units": [unit], "paper": "label62"}),
        "ask_save_path" => return json!({"name": "report.pdf"}),
        "save_file" => return json!({"name": "a.txt", "content": STANDARD.encode("text")}),
        "undo" | "show_inspection" | "meter_readings" | "insulation_test" | "touch_test"
        | "grid" | "chart" | "remedies" | "proof" | "feeds" | "report_text" => {
            return of_inspection;
        }
        "answer" => json!({"question": "cord", "answer": "sound"}),
        "set_value" => {
            json!({"value": "line_capacitor", "reading": {"farads": 1e-8, "measured": true}})
        }
        "leave_open" => json!({"value": "network_resistor"}),
        "set_rated" => json!({"rated": {"volts": 120, "hertz": 60, "watts": 30}}),
        "set_tubes" => json!({"tubes": ["12SA7", "12SK7"]}),
        "set_reading" => json!({"reading": "ohms_a_b_on", "value": 120}),
        "set_meter" => json!({"meter": {"max_ohms": 2e6, "percent": 1, "digits": 0}}),
        "circuit" => {
            json!({"at": {"plug": "second", "switch": "on", "selector": null, "faults": ["stray_far"]}})
        }
        "remedy_stack" | "choose_remedies" => json!({"stack": stack()}),
        "circuit_repaired" => json!({"stack": stack(), "at": null}),
        "enter_proof" => {
            let (line, entry) = first_line(stage);
            json!({"line": line, "entry": entry})
        }
        "mark_ready" => json!({"ready": false}),
        "set_feed" => json!({"feed": {"feed": "step_down_auto", "input_volts": 240}}),
        "set_live_test" => json!({"part": "qualified", "value": true}),
        "withdraw" => json!({"finding": "answers.back"}),
        "set_access" => json!({"access": ["outside", "meter"]}),
        "set_supply" => json!({"supply": supply()}),
        "rename" => json!({"name": "Brown set, renamed"}),
        "set_place" => json!({"place": "Shelf 4"}),
        "add_photo" => json!({"finding": "answers.cord", "picture": picture(9)}),
        "caption_photo" => json!({"photo": photo, "caption": "The plug"}),
        "remove_photo" | "export_photo" => json!({"photo": photo}),
        "mark_photo" => json!({"photo": photo, "marks": [
            {"shape": "pin", "x": 0.5, "y": 0.5, "caption": "here"},
            {"shape": "arrow", "x1": 0, "y1": 0, "x2": 1, "y2": 1, "caption": ""},
        ]}),
        "measure_photo" => json!({"photo": photo, "ask": {
            "card": [[0.1, 0.1], [0.9, 0.1], [0.9, 0.8], [0.1, 0.8]], "length": [[0.2, 0.2], [0.4, 0.4]],
            "blades": [[[0.2, 0.3], [0.25, 0.3]], [[0.5, 0.3], [0.56, 0.3]]],
        }}),
        "pair_photo" => json!({"photo": photo, "before": other}),
        "order_photos" => json!({"order": [other, photo]}),
        "make_report" => {
            json!({"ask": {"paper": "letter", "circuit": {"svg": SVG, "says": "x"}, "chart": null}})
        }
        unknown => panic!("a new command: give a sample of what {unknown} takes"),
    };
    given["inspection"] = json!(inspection);
    given
}

const SVG: &str = r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><rect width="9" height="9"/></svg>"#;
