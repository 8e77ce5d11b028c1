//! A record with something of everything in it, made once and copied for each check.

use std::path::{Path, PathBuf};
use std::sync::LazyLock;
use std::sync::atomic::{AtomicI64, Ordering};

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use coldchassis_core::workbench::{NewUnit, Surroundings, Workbench};
use coldchassis_tests::bridge::Desk;
use coldchassis_tests::pictures::{file, scene};
use image::ImageFormat;
use serde_json::{Value, json};
use tempfile::TempDir;
use uuid::Uuid;

use super::answers::{answer, done};

/// What the samples name.
#[derive(Clone)]
pub struct Ids {
    pub unit: Uuid,
    pub inspection: Uuid,
    pub photos: [Uuid; 2],
    pub sha256: String,
    /// A unit that no check has anything done to.
    pub witness: Uuid,
    pub of_witness: Uuid,
    /// A unit that is gone.
    pub gone: [Uuid; 2],
}

/// A copy of the record, open.
pub struct Stage {
    pub folder: TempDir,
    pub desk: Desk,
    pub ids: Ids,
    witness: Value,
}

static TEMPLATE: LazyLock<(TempDir, Ids)> = LazyLock::new(template);
static CLOCK: AtomicI64 = AtomicI64::new(1_764_320_400_000);

const RECORD: &str = "record.coldchassis";
const PHOTOS: &str = "photos";
const GIVEN: &str = "given";
/// A bundle of another device that is in the folder of what was given.
pub const BUNDLE: &str = "other.coldbundle";

/// The workbench over the record of a folder.
pub fn open(folder: &Path, device: &str) -> Workbench {
    let around = Surroundings {
        clock: Box::new(|| CLOCK.fetch_add(7, Ordering::Relaxed)),
        ids: Box::new(Uuid::now_v7),
        device: device.to_owned(),
        photos: Some(folder.join(PHOTOS)),
        author: "Odo Trinket".to_owned(),
        locale: "en".to_owned(),
    };
    Workbench::open(&folder.join(RECORD), around).expect("the record opens")
}

/// A photo as the screens send it.
pub fn picture(seed: u32) -> String {
    STANDARD.encode(file(&scene(160, 120, seed), ImageFormat::Jpeg))
}

pub fn new_unit(name: &str) -> NewUnit {
    NewUnit {
        name: name.to_owned(),
        place: "Shelf 3".to_owned(),
        kind: Some("table_radio".to_owned()),
        supply: json!({"volts": 120, "hertz": 60, "volts_max": 127}),
        access: vec!["outside".to_owned(), "cover_off".to_owned()],
    }
}

/// A set with its chassis on the line and bare screws, and the repair that was chosen for it.
fn look(bench: &mut Workbench, name: &str) -> (Uuid, Uuid) {
    let view = bench.create_unit(&new_unit(name)).expect("a unit");
    let id = view.id;
    for (question, answer) in [
        ("plug", json!("two_equal_blades")),
        ("bare_metal", json!(["screws_or_shafts"])),
        ("back", json!("fitted")),
        ("terminals", json!(["none"])),
        ("transformer", json!("none")),
        ("common_to_chassis", json!("direct")),
        ("common_leg", json!("pin_b")),
        ("switch_leg", json!("pin_b")),
    ] {
        bench.answer(id, question, answer).expect(question);
    }
    let stack = json!({"steps": ["polarised_plug", "switch_to_hot_leg", "reach_closed"]});
    bench.choose_remedies(id, stack).expect("it is offered");
    (view.unit.id, id)
}

fn template() -> (TempDir, Ids) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let given = folder.path().join(GIVEN);
    std::fs::create_dir(&given).expect("a folder");
    let mut bench = open(folder.path(), "here");
    let (witness, of_witness) = look(&mut bench, "Witness set");
    // Later, so that it is the unit of the other device that gets another number where both have one.
    let elsewhere = tempfile::tempdir().expect("a temporary folder");
    let mut other = open(elsewhere.path(), "elsewhere");
    let (from, _) = look(&mut other, "Set from elsewhere");
    let work = other.export_work(Some(vec![from])).expect("a bundle");
    work.run(&given.join(BUNDLE)).expect("it is written");
    let (unit, inspection) = look(&mut bench, "Brown set");
    let photo = |seed| STANDARD.decode(picture(seed)).expect("base64");
    for seed in [1, 2] {
        bench.add_photo(inspection, Some("answers.plug"), &photo(seed)).expect("a photo");
    }
    let view = bench.add_photo(of_witness, None, &photo(3)).expect("a photo");
    assert_eq!(view.photos.len(), 1);
    let demo = bench.load_demo().expect("the demonstration");
    let gone = [demo[0].id, demo[0].inspection.expect("it was inspected")];
    bench.remove_demo().expect("it goes");
    let photos = bench.inspection(inspection).expect("it is there").photos;
    let ids = Ids {
        unit,
        inspection,
        photos: [photos[0].id, photos[1].id],
        sha256: photos[0].sha256.clone(),
        witness,
        of_witness,
        gone,
    };
    (folder, ids)
}

impl Stage {
    pub fn new() -> Self {
        let (template, ids) = &*TEMPLATE;
        let folder = tempfile::tempdir().expect("a temporary folder");
        copy(template.path(), folder.path());
        let desk = Desk::new(open(folder.path(), "here"), folder.path().join(GIVEN));
        while desk.keep_up() {}
        let witness = done(&desk, "show_inspection", &json!({"inspection": ids.of_witness}));
        Self { folder, desk, ids: ids.clone(), witness }
    }

    /// A path in the folder of what is given away.
    pub fn given(&self, name: &str) -> PathBuf {
        self.folder.path().join(GIVEN).join(name)
    }

    /// Closes the record and checks that it is whole, that nothing was done to what nobody touched, and that
    /// every one of these units is there; each answers when it is opened.
    pub fn close_whole(self, units: &[Uuid]) {
        let Self { folder, desk, ids, witness } = self;
        // Nothing of an earlier command may show in a later one, but for the language that was asked for.
        done(&desk, "set_inspector", &json!({"author": "Ada Quill", "language": "en"}));
        while desk.keep_up() {}
        let now = done(&desk, "show_inspection", &json!({"inspection": ids.of_witness}));
        assert_eq!(now, witness, "what nobody touched has changed");
        let before = done(&desk, "list_units", &json!({"text": null}));
        drop(desk);
        let path = folder.path().join(RECORD);
        let record = rusqlite::Connection::open(&path).expect("the record is SQLite");
        let check = |sql: &str| -> String {
            record.query_row(sql, [], |row| row.get(0)).expect("an answer")
        };
        assert_eq!(check("PRAGMA integrity_check"), "ok");
        assert!(
            !record.prepare("PRAGMA foreign_key_check").expect("SQL").exists([]).expect("rows"),
            "a row without what it belongs to"
        );
        drop(record);
        let again = Desk::new(open(folder.path(), "here"), folder.path().join(GIVEN));
        let after = done(&again, "list_units", &json!({"text": null}));
        assert_eq!(after, before, "another list after the record was closed");
        let listed = |unit: &Uuid| {
            after.as_array().expect("a list").iter().any(|line| line["id"] == json!(unit))
        };
        for unit in units.iter().chain([&ids.unit, &ids.witness]) {
            assert!(listed(unit), "{unit} was acknowledged and is gone");
        }
        for line in after.as_array().expect("a list") {
            let shown =
                answer(&again, "show_inspection", &json!({"inspection": line["inspection"]}));
            assert!(super::answers::is_done(&shown), "{line} cannot be opened: {shown}");
        }
    }
}

fn copy(from: &Path, to: &Path) {
    for entry in std::fs::read_dir(from).expect("a folder") {
        let entry = entry.expect("an entry");
        let to = to.join(entry.file_name());
        if entry.file_type().expect("a kind").is_dir() {
            std::fs::create_dir(&to).expect("a folder");
            copy(&entry.path(), &to);
        } else {
            std::fs::copy(entry.path(), to).expect("a file");
        }
    }
}
