//! The demonstration covers every class and both bases, never mixes with real units, goes whole.

use std::collections::BTreeSet;
use std::path::Path;

use coldchassis_core::hazard::Class;
use coldchassis_core::inspection::Basis;
use coldchassis_core::workbench::{InspectionView, NewUnit, Surroundings, UnitView, Workbench};
use coldchassis_tests::pictures::{file, scene};
use image::ImageFormat;
use serde_json::json;

fn bench(folder: &Path) -> Workbench {
    let mut now = 1_700_000_000_000;
    let clock = std::sync::Mutex::new(move || {
        now += 1;
        now
    });
    let around = Surroundings {
        clock: Box::new(move || clock.lock().expect("one thread")()),
        ids: Box::new(uuid::Uuid::now_v7),
        device: "bench".to_owned(),
        photos: Some(folder.join("photos")),
        author: "Odo Trinket".to_owned(),
        locale: "en".to_owned(),
    };
    Workbench::open(&folder.join("record.db"), around).expect("it opens")
}

fn open() -> (tempfile::TempDir, Workbench) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let bench = bench(folder.path());
    (folder, bench)
}

fn real_unit(bench: &mut Workbench) -> InspectionView {
    let supply = json!({"volts": 120, "hertz": 60});
    let name = "Real radio".to_owned();
    bench.create_unit(&NewUnit { name, supply, ..NewUnit::default() }).expect("a unit")
}

fn is_demo(unit: &UnitView) -> bool {
    unit.demo
}

/// Every row that does not belong to the demonstration, past the workbench.
fn real_rows(folder: &Path) -> Vec<String> {
    let record = rusqlite::Connection::open(folder.join("record.db")).expect("SQLite");
    let mut rows = Vec::new();
    for sql in [
        "SELECT * FROM event WHERE demo = 0",
        "SELECT * FROM unit WHERE demo = 0",
        "SELECT * FROM verdict WHERE unit IN (SELECT id FROM unit WHERE demo = 0)",
        "SELECT * FROM finding WHERE unit IN (SELECT id FROM unit WHERE demo = 0)",
        "SELECT * FROM photo WHERE unit IN (SELECT id FROM unit WHERE demo = 0)",
    ] {
        let mut statement = record.prepare(sql).expect("a query");
        let columns = statement.column_count();
        let found = statement.query_map([], |row| {
            let cell = |at| row.get::<_, rusqlite::types::Value>(at);
            (0..columns).map(cell).collect::<rusqlite::Result<Vec<_>>>()
        });
        rows.extend(found.expect("rows").map(|row| format!("{:?}", row.expect("a row"))));
    }
    rows
}

#[test]
fn ten_units_cover_every_class_and_both_bases() {
    let (_folder, mut bench) = open();
    let units = bench.load_demo().expect("loaded");
    assert_eq!(units.len(), 10);
    assert!(units.iter().all(is_demo));
    let mut found = BTreeSet::new();
    for unit in &units {
        let view = bench.inspection(unit.inspection.expect("an inspection")).expect("a view");
        assert!(view.verdict.conflicts.is_empty(), "{}", unit.name);
        // What the list says is what the inspection says.
        assert_eq!(unit.treat_as.as_deref(), Some(view.verdict.treat_as), "{}", unit.name);
        assert_eq!(unit.basis.as_deref(), Some(view.verdict.basis), "{}", unit.name);
        println!("{} {}: {} {}", unit.label, unit.name, view.verdict.treat_as, view.verdict.basis);
        found.insert((view.verdict.treat_as.to_owned(), view.verdict.basis.to_owned()));
    }
    for class in Class::IDS {
        assert!(found.iter().any(|(treat_as, _)| treat_as == class), "no unit is {class}");
    }
    for basis in Basis::IDS {
        assert!(found.iter().any(|(_, shown)| shown == basis), "no unit is {basis}");
    }
}

#[test]
fn every_unit_has_a_name_a_place_and_findings_in_words() {
    let (_folder, mut bench) = open();
    let units = bench.load_demo().expect("loaded");
    let names: BTreeSet<_> = units.iter().map(|unit| &unit.name).collect();
    assert_eq!(names.len(), 10);
    for unit in &units {
        assert!(unit.name.contains(' ') && unit.place.contains(' '), "{unit:?}");
        let view = bench.inspection(unit.inspection.expect("an inspection")).expect("a view");
        assert!(view.findings.len() >= 3, "{}: {:?}", unit.name, view.findings);
        assert!(unit.kind.is_some());
    }
    let stations = ["Flea market", "Backstage", "Shop"];
    for station in stations {
        assert!(units.iter().filter(|unit| unit.place.starts_with(station)).count() >= 3);
    }
}

#[test]
fn loading_twice_loads_once() {
    let (_folder, mut bench) = open();
    let once = bench.load_demo().expect("loaded");
    assert_eq!(bench.load_demo().expect("loaded"), once);
}

#[test]
fn real_units_are_not_touched_and_the_demonstration_goes_whole() {
    let (folder, mut bench) = open();
    let real = real_unit(&mut bench).id;
    let photo = file(&scene(300, 200, 1), ImageFormat::Jpeg);
    bench.add_photo(real, None, &photo).expect("added");
    let (rows, units) = (real_rows(folder.path()), bench.units(None).expect("units"));
    let photos = || std::fs::read_dir(folder.path().join("photos")).expect("a folder").count();
    assert!(rows.len() > 5);

    let loaded = bench.load_demo().expect("loaded");
    assert_eq!(loaded.iter().filter(|unit| is_demo(unit)).count(), 10);
    assert_eq!(real_rows(folder.path()), rows);
    // What a person does with them is of the demonstration too.
    let demo = loaded.iter().find(|unit| is_demo(unit)).and_then(|unit| unit.inspection);
    let demo = demo.expect("an inspection");
    bench.answer(demo, "back", json!("missing")).expect("answered");
    bench.add_photo(demo, None, &file(&scene(300, 200, 2), ImageFormat::Jpeg)).expect("added");
    // The same photo as the real unit's: its file must stay.
    bench.add_photo(demo, None, &photo).expect("added");
    assert_eq!((photos(), real_rows(folder.path())), (4, rows.clone()));

    assert_eq!(bench.remove_demo().expect("removed"), units);
    assert_eq!((photos(), real_rows(folder.path())), (2, rows));
    let record = rusqlite::Connection::open(folder.path().join("record.db")).expect("SQLite");
    for table in ["event", "unit"] {
        let sql = format!("SELECT count(*) FROM {table} WHERE demo = 1");
        let left: i64 = record.query_row(&sql, [], |row| row.get(0)).expect("a count");
        assert_eq!(left, 0, "{table}");
    }
    let shown = bench.inspection(real).expect("a view").photos[0].sha256.clone();
    assert!(bench.photo_bytes(&shown, false).is_ok());
    // And it can be loaded again.
    assert_eq!(bench.load_demo().expect("loaded").len(), 11);
}

#[test]
fn a_real_unit_made_beside_the_demonstration_stays() {
    let (_folder, mut bench) = open();
    bench.load_demo().expect("loaded");
    let real = real_unit(&mut bench);
    assert!(!real.unit.demo);
    let left = bench.remove_demo().expect("removed");
    assert_eq!(left.iter().map(|unit| unit.id).collect::<Vec<_>>(), [real.unit.id]);
    assert!(bench.remove_demo().is_ok(), "nothing is left to remove");
}
