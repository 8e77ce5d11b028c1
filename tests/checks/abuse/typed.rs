//! Texts that a person typed come back as they are: in views, after the record was closed, from a bundle.

use serde_json::{Value, json};
use uuid::Uuid;

use super::answers::{done, refused};
use super::samples::sample;
use super::stage::{Stage, picture};
use super::texts::{TEXTS, cut};

/// The longest text of a mark, and of a type of tube, characters.
const MARK: usize = 80;
const TUBE: usize = 40;

fn id(view: &Value, path: &str) -> Uuid {
    view.pointer(path).and_then(Value::as_str).and_then(|id| id.parse().ok()).expect("an id")
}

/// Puts a text into every field that takes one; gives the unit and its inspection.
pub fn write_everywhere(stage: &Stage, text: &str) -> (Uuid, Uuid) {
    let desk = &stage.desk;
    done(desk, "set_inspector", &json!({"author": text, "language": "en"}));
    let mut new = sample(stage, "create_unit");
    (new["unit"]["name"], new["unit"]["place"]) = (json!(text), json!(text));
    let view = done(desk, "create_unit", &new);
    let (unit, inspection) = (id(&view, "/unit/id"), id(&view, "/id"));
    let of = |more: Value| {
        let mut arguments = json!({"inspection": inspection});
        for (name, value) in more.as_object().expect("arguments") {
            arguments[name] = value.clone();
        }
        arguments
    };
    done(desk, "answer", &of(json!({"question": "cord", "answer": "sound"})));
    done(desk, "set_tubes", &of(json!({"tubes": [cut(text, TUBE), "12SK7"]})));
    let view = done(desk, "add_photo", &of(json!({"finding": null, "picture": picture(5)})));
    let photo = id(&view, "/photos/0/id");
    done(desk, "caption_photo", &of(json!({"photo": photo, "caption": text})));
    let mark = json!({"shape": "pin", "x": 0.4, "y": 0.4, "caption": cut(text, MARK)});
    done(desk, "mark_photo", &of(json!({"photo": photo, "marks": [mark]})));
    (unit, inspection)
}

/// Fails unless a view has the text wherever it was written.
fn assert_there(view: &Value, text: &str) {
    let is = |path: &str, wanted: &str| {
        assert_eq!(view.pointer(path), Some(&json!(wanted)), "{path} of {text:?}");
    };
    is("/unit/name", text);
    is("/unit/place", text);
    is("/photos/0/caption", text);
    is("/photos/0/author", text);
    is("/photos/0/marks/0/caption", &cut(text, MARK));
    let findings = view["findings"].as_array().expect("a list");
    let of = |path: &str| {
        let found = findings.iter().find(|found| found["path"] == path);
        found.unwrap_or_else(|| panic!("{path} in {findings:?}"))
    };
    assert_eq!(of("answers.cord")["author"], json!(text));
    assert_eq!(of("tubes")["value"][0], json!(cut(text, TUBE)));
}

#[test]
fn every_text_comes_back_as_it_was_typed_and_goes_whole_to_another_device() {
    let (stage, other) = (Stage::new(), Stage::new());
    let mut units = Vec::new();
    for text in TEXTS {
        let (unit, inspection) = write_everywhere(&stage, text);
        let view = done(&stage.desk, "show_inspection", &json!({"inspection": inspection}));
        assert_there(&view, text);
        units.push((unit, inspection, text));
    }
    let list = done(&stage.desk, "list_units", &json!({"text": null}));
    let places = done(&stage.desk, "list_places", &json!({"text": ""}));
    for (unit, _, text) in &units {
        let line = list.as_array().expect("a list").iter().find(|line| line["id"] == json!(unit));
        assert_eq!(line.expect("it is listed")["name"], json!(text));
        assert!(places.as_array().expect("a list").contains(&json!(text)), "{text:?}");
    }
    let path = stage.given("texts.coldbundle");
    let ids: Vec<Uuid> = units.iter().map(|(unit, ..)| *unit).collect();
    done(&stage.desk, "export_bundle", &json!({"units": ids, "path": path}));
    let taken = done(&other.desk, "import_bundle", &json!({"path": path}));
    assert_eq!(taken["photos"], 1, "one picture for all of them");
    for (_, inspection, text) in &units {
        let view = done(&other.desk, "show_inspection", &json!({"inspection": inspection}));
        assert_there(&view, text);
    }
    stage.close_whole(&ids);
    other.close_whole(&ids);
}

#[test]
fn a_sentence_keeps_the_direction_of_what_is_typed_to_itself() {
    let stage = Stage::new();
    for text in TEXTS.iter().filter(|text| text.contains(['\u{202e}', '\u{2066}', '\u{2069}'])) {
        let (_, inspection) = write_everywhere(&stage, text);
        let of_inspection = json!({"inspection": inspection});
        let said = done(&stage.desk, "report_text", &of_inspection);
        let said = said.as_str().expect("a text");
        let first = said.lines().next().expect("a line");
        assert_eq!(depth(first), Some(0), "{first:?}");
        assert!(first.contains('\u{2068}'), "{first:?} is not kept apart");
        for line in said.lines() {
            assert_eq!(depth(line), Some(0), "{line:?}");
        }
    }
    stage.close_whole(&[]);
}

/// How many isolates a line leaves open at its end; nothing where one ends that never began, or a mark that
/// turns the direction stands outside of all.
fn depth(line: &str) -> Option<u32> {
    line.chars().try_fold(0_u32, |open, letter| match letter {
        '\u{2066}'..='\u{2068}' => Some(open + 1),
        '\u{2069}' => open.checked_sub(1),
        '\u{202a}'..='\u{202e}' if open == 0 => None,
        _ => Some(open),
    })
}

#[test]
fn a_name_with_lines_in_it_adds_no_line_to_the_text_for_a_message() {
    let stage = Stage::new();
    let name = "Set\nCLASS: no shock path\u{2028}found\rat all";
    let (_, inspection) = write_everywhere(&stage, name);
    let said = done(&stage.desk, "report_text", &json!({"inspection": inspection}));
    let said = said.as_str().expect("a text");
    assert!(said.lines().next().expect("a line").contains("Set CLASS: no shock path found at all"));
    stage.close_whole(&[]);
}

#[test]
fn a_text_that_is_too_long_is_refused_by_its_field() {
    let stage = Stage::new();
    let line = "0123456789".repeat(10_000);
    let (inspection, photo) = (stage.ids.inspection, stage.ids.photos[0]);
    let mut unit = sample(&stage, "create_unit");
    unit["unit"]["place"] = json!(line);
    let mark = json!([{"shape": "pin", "x": 0.4, "y": 0.4, "caption": line}]);
    for (command, arguments, field) in [
        ("rename", json!({"inspection": inspection, "name": line}), "name"),
        ("set_place", json!({"inspection": inspection, "place": line}), "place"),
        ("set_inspector", json!({"author": line, "language": "en"}), "author"),
        ("set_tubes", json!({"inspection": inspection, "tubes": [line]}), "tubes"),
        (
            "caption_photo",
            json!({"inspection": inspection, "photo": photo, "caption": line}),
            "caption",
        ),
        (
            "mark_photo",
            json!({"inspection": inspection, "photo": photo, "marks": mark}),
            "marks.0.caption",
        ),
        ("show_queue", json!({"ask": {"text": line}}), "text"),
        ("create_unit", unit, "place"),
    ] {
        let problem = refused(&stage.desk, command, &arguments);
        assert_eq!(problem["field"], field, "{command}");
        assert!(problem["sentence"].as_str().expect("a text").len() < 300, "{problem}");
    }
    stage.close_whole(&[]);
}
