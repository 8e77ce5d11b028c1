//! Several commands at once: everything that was acknowledged is there in the end.

use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;

use serde_json::{Value, json};
use uuid::Uuid;

use super::answers::{answer, done, is_done};
use super::samples::sample;
use super::stage::{Stage, picture};

/// Who acts at once, and how often.
const HANDS: u32 = 4;
const ROUNDS: u32 = 6;

/// What one of them was told is done.
struct Acknowledged {
    unit: Uuid,
    inspection: Uuid,
    name: String,
    photos: usize,
    place: String,
}

fn id(view: &Value, path: &str) -> Uuid {
    view.pointer(path).and_then(Value::as_str).and_then(|id| id.parse().ok()).expect("an id")
}

/// One hand: a unit of its own, and something of one that all share.
fn work(stage: &Stage, hand: u32) -> Acknowledged {
    let desk = &stage.desk;
    let view = done(desk, "create_unit", &sample(stage, "create_unit"));
    let mut own = Acknowledged {
        unit: id(&view, "/unit/id"),
        inspection: id(&view, "/id"),
        name: String::new(),
        photos: 0,
        place: String::new(),
    };
    let inspection = own.inspection;
    for round in 0..ROUNDS {
        let name = format!("Set {hand}, round {round}");
        done(desk, "rename", &json!({"inspection": inspection, "name": name}));
        own.name = name;
        let seed = 1000 + hand * ROUNDS + round;
        let photo = json!({"inspection": inspection, "finding": null, "picture": picture(seed)});
        done(desk, "add_photo", &photo);
        own.photos += 1;
        // Of what all share, the last one is right.
        let shared =
            json!({"inspection": stage.ids.inspection, "place": format!("{hand} {round}")});
        done(desk, "set_place", &shared);
        let place = json!({"inspection": inspection, "place": format!("Shelf {round}")});
        done(desk, "set_place", &place);
        own.place = format!("Shelf {round}");
        let path = stage.given(&format!("{hand}-{round}.coldbundle"));
        done(desk, "export_bundle", &json!({"units": null, "path": path}));
        done(desk, "import_bundle", &json!({ "path": path }));
        let question =
            json!({"inspection": inspection, "question": "plug", "answer": "three_pins"});
        done(desk, "answer", &question);
        let queue = done(desk, "show_queue", &json!({"ask": {"text": "set"}}));
        assert!(queue["rows"].as_array().expect("rows").len() > 1);
        done(desk, "report_text", &json!({"inspection": inspection}));
    }
    own
}

#[test]
fn what_was_acknowledged_to_one_is_there_whatever_the_others_did() {
    let stage = Stage::new();
    let is_over = AtomicBool::new(false);
    let told = thread::scope(|scope| {
        let hands: Vec<_> = (0..HANDS)
            .map(|hand| {
                let stage = &stage;
                scope.spawn(move || work(stage, hand))
            })
            .collect();
        // Beside them one that sends nothing but mistakes.
        let mistaken = scope.spawn(|| {
            let mut refused = 0;
            while !is_over.load(Ordering::Relaxed) {
                for arguments in [json!({}), json!({"inspection": Uuid::nil()}), json!([1])] {
                    let answer = answer(&stage.desk, "show_inspection", &arguments);
                    refused += u32::from(!is_done(&answer));
                }
            }
            refused
        });
        let told: Vec<Acknowledged> =
            hands.into_iter().map(|hand| hand.join().expect("a hand ends")).collect();
        is_over.store(true, Ordering::Relaxed);
        assert!(mistaken.join().expect("it ends") > 0);
        told
    });
    for own in &told {
        let view = done(&stage.desk, "show_inspection", &json!({"inspection": own.inspection}));
        assert_eq!(view["unit"]["name"], json!(own.name));
        assert_eq!(view["unit"]["place"], json!(own.place));
        assert_eq!(view["photos"].as_array().expect("photos").len(), own.photos);
        for photo in view["photos"].as_array().expect("photos") {
            let ask = json!({"sha256": photo["sha256"], "thumbnail": false});
            done(&stage.desk, "show_photo", &ask);
        }
    }
    let shared = done(&stage.desk, "show_inspection", &json!({"inspection": stage.ids.inspection}));
    let place = shared["unit"]["place"].as_str().expect("a place");
    assert!(place.ends_with(&format!(" {}", ROUNDS - 1)), "{place} is not the last of anybody's");
    let numbers = done(&stage.desk, "list_units", &json!({"text": null}));
    let mut labels: Vec<&str> = numbers
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|line| line["label"].as_str())
        .collect();
    let count = labels.len();
    labels.sort_unstable();
    labels.dedup();
    assert_eq!(labels.len(), count, "two units have one number");
    let units: Vec<Uuid> = told.iter().map(|own| own.unit).collect();
    stage.close_whole(&units);
}
