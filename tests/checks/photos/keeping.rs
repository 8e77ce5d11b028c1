//! Photos in the record: added, captioned, removed, taken back, and what a failure leaves.

use std::fs;
use std::sync::atomic::Ordering;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use coldchassis_core::workbench::{Code, take_in};
use coldchassis_tests::pictures::{file, scene};
use image::ImageFormat;
use uuid::Uuid;

use super::table::Table;

fn jpeg(seed: u32) -> Vec<u8> {
    file(&scene(400, 300, seed), ImageFormat::Jpeg)
}

/// A row never names a file that is not there.
fn check_named(table: &Table) {
    let files = table.files();
    for digest in table.named() {
        for ending in ["jpg", "thumb.jpg"] {
            assert!(files.contains_key(&format!("{digest}.{ending}")), "{digest}.{ending}");
        }
    }
}

#[test]
fn a_photo_is_shown_with_all_there_is_to_say_of_it() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let view = table.bench.add_photo(inspection, Some("answers.plug"), &jpeg(1)).expect("added");
    let [photo] = view.photos.as_slice() else { panic!("{:?}", view.photos) };
    assert_eq!(photo.finding.as_deref(), Some("answers.plug"));
    assert_eq!((photo.width, photo.height), (400, 300));
    assert_eq!((photo.caption.as_str(), photo.author.as_str()), ("", "Odo Trinket"));
    // The class is still shown beside the unit in the list.
    assert_eq!(view.unit.treat_as.as_deref(), Some("live"));
    let full = table.bench.photo_bytes(&photo.sha256, false).expect("the photo");
    let small = table.bench.photo_bytes(&photo.sha256, true).expect("the thumbnail");
    assert_eq!(table.files().len(), 2);
    assert_eq!(table.files()[&format!("{}.jpg", photo.sha256)], full);
    assert_eq!(table.files()[&format!("{}.thumb.jpg", photo.sha256)], small);
    assert!(small.len() < full.len());
}

#[test]
fn several_photos_of_one_finding_stand_in_their_order() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    for seed in 1..=4 {
        table.bench.add_photo(inspection, Some("answers.cord"), &jpeg(seed)).expect("added");
    }
    let view = table.bench.inspection(inspection).expect("an inspection");
    let times: Vec<_> = view.photos.iter().map(|photo| photo.at).collect();
    assert_eq!(times.len(), 4);
    assert!(times.is_sorted_by(|a, b| a < b), "{times:?}");
    assert_eq!(table.named().len(), 4);
    check_named(&table);
}

#[test]
fn the_same_photo_twice_is_one_file_and_one_tap() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let once = table.bench.add_photo(inspection, Some("answers.plug"), &jpeg(1)).expect("added");
    let rows = table.rows();
    let twice = table.bench.add_photo(inspection, Some("answers.plug"), &jpeg(1)).expect("added");
    assert_eq!(twice.photos, once.photos);
    assert_eq!(table.rows(), rows);
    // For another finding it is another row of the same files.
    let third = table.bench.add_photo(inspection, Some("answers.cord"), &jpeg(1)).expect("added");
    assert_eq!(third.photos.len(), 2);
    assert_eq!(table.files().len(), 2);
}

#[test]
fn captions_and_removals_can_be_taken_back() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let added = table.bench.add_photo(inspection, None, &jpeg(1)).expect("added");
    let photo = added.photos[0].clone();
    let view = table.bench.caption_photo(inspection, photo.id, "  Plug, both blades ").expect("ok");
    assert_eq!(view.photos[0].caption, "Plug, both blades");
    let view = table.bench.remove_photo(inspection, photo.id).expect("removed");
    assert!(view.photos.is_empty());
    assert!(table.bench.photo_bytes(&photo.sha256, false).is_ok(), "an undo needs the file");

    let undo = |table: &mut Table| table.bench.undo(inspection).expect("undone").expect("a view");
    let view = undo(&mut table);
    assert_eq!(view.photos[0].caption, "Plug, both blades");
    check_named(&table);
    assert_eq!(undo(&mut table).photos, added.photos);
    assert!(undo(&mut table).photos.is_empty());
}

#[test]
fn what_is_not_there_cannot_be_captioned_removed_or_read() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let view = table.bench.add_photo(inspection, None, &jpeg(1)).expect("added");
    let (photo, rows) = (view.photos[0].clone(), table.rows());
    let nobody = Uuid::nil();
    let other = table.unit().id;
    let stored = table.rows();
    let bench = &mut table.bench;
    for problem in [
        bench.caption_photo(inspection, nobody, "x").unwrap_err(),
        bench.remove_photo(inspection, nobody).unwrap_err(),
        bench.remove_photo(other, photo.id).unwrap_err(),
        bench.caption_photo(nobody, photo.id, "x").unwrap_err(),
        bench.add_photo(nobody, None, &jpeg(2)).unwrap_err(),
    ] {
        assert_eq!(problem.code, Code::NotFound, "{problem}");
    }
    let long = bench.caption_photo(inspection, photo.id, &"x".repeat(201)).unwrap_err();
    assert_eq!((long.code, long.field.as_deref()), (Code::BadInput, Some("caption")));
    for path in ["answers.nonsense", "plug", "answers.", "values.x", "../../record.db", ""] {
        let problem = bench.add_photo(inspection, Some(path), &jpeg(2)).unwrap_err();
        assert_eq!((problem.code, problem.field.as_deref()), (Code::BadInput, Some("finding")));
    }
    for path in ["../record.db", "..", "", "/etc/hostname", &photo.sha256.to_uppercase()] {
        assert_eq!(bench.photo_bytes(path, false).unwrap_err().code, Code::NotFound, "{path}");
    }
    assert_eq!(bench.photo_bytes(&"0".repeat(64), false).unwrap_err().code, Code::NotFound);
    assert_eq!(table.rows(), stored);
    assert!(rows.len() < stored.len(), "only the other unit was added");
    assert_eq!(table.files().len(), 2);
}

#[test]
fn without_a_folder_photos_are_refused() {
    let mut table = Table::without_photos();
    let inspection = table.unit().id;
    let rows = table.rows();
    let problem = table.bench.add_photo(inspection, None, &jpeg(1)).unwrap_err();
    assert_eq!((problem.code, problem.field.as_deref()), (Code::Storage, None));
    assert_eq!(problem.message.id, "error-no-photo-folder");
    assert_eq!(table.rows(), rows);
    assert!(table.bench.photo_bytes(&"0".repeat(64), true).is_err());
}

#[test]
fn both_files_are_there_before_the_row_is_made() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    table.files_at_ids.lock().expect("one thread").clear();
    table.bench.add_photo(inspection, None, &jpeg(1)).expect("added");
    // The ids of the photo, of the action and of its event are drawn after the files were written.
    let seen = table.files_at_ids.lock().expect("one thread").clone();
    assert!(seen.len() >= 3 && seen.iter().all(|count| *count == 2), "{seen:?}");
}

#[test]
fn when_the_folder_cannot_be_written_there_is_no_row() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let rows = table.rows();
    // A file stands where the folder should be: that holds for every user, also for one who may all.
    fs::write(table.photos(), "in the way").expect("it can be written");
    let problem = table.bench.add_photo(inspection, None, &jpeg(1)).unwrap_err();
    assert_eq!((problem.code, problem.message.id.as_str()), (Code::Storage, "error-photo-storage"));
    assert_eq!(table.rows(), rows);
    fs::remove_file(table.photos()).expect("it can be removed");
    // Its place is taken by a folder: the file cannot get its name.
    let view = table.bench.add_photo(inspection, None, &jpeg(1)).expect("added");
    let taken = table.photos().join(format!("{}.jpg", view.photos[0].sha256));
    table.bench.undo(inspection).expect("undone");
    let rows = table.rows();
    fs::remove_file(&taken).expect("it can be removed");
    fs::create_dir(&taken).expect("it can be made");
    assert!(table.bench.add_photo(inspection, None, &jpeg(1)).is_err());
    assert_eq!(table.rows(), rows);
    let left = fs::read_dir(table.photos()).expect("a folder").count();
    assert_eq!(left, 2, "no half-written file is left");
}

#[test]
fn when_the_row_is_refused_its_files_go_and_no_others() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    table.bench.add_photo(inspection, Some("answers.plug"), &jpeg(1)).expect("added");
    let (rows, files) = (table.rows(), table.files());
    table.refuses_rows.store(true, Ordering::Relaxed);
    table.files_at_ids.lock().expect("one thread").clear();
    let problem = table.bench.add_photo(inspection, None, &jpeg(2)).unwrap_err();
    assert_eq!(problem.code, Code::Storage, "{problem}");
    let seen = table.files_at_ids.lock().expect("one thread").clone();
    assert_eq!(seen, [4, 4, 4], "the files came before the row");
    // The same photo is named by another row: its files stay.
    assert!(table.bench.add_photo(inspection, Some("answers.cord"), &jpeg(1)).is_err());
    assert_eq!((table.rows(), table.files()), (rows, files));
    check_named(&table);
}

#[test]
fn a_damaged_file_is_mended_by_taking_the_photo_again() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    table.bench.add_photo(inspection, None, &jpeg(1)).expect("added");
    let whole = table.files();
    for name in whole.keys() {
        fs::write(table.photos().join(name), "").expect("it can be damaged");
    }
    table.bench.add_photo(inspection, None, &jpeg(1)).expect("added again");
    assert_eq!(table.files(), whole);
}

#[test]
fn the_sweep_takes_what_no_row_names_and_leaves_the_rest() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let view = table.bench.add_photo(inspection, None, &jpeg(1)).expect("added");
    table.bench.remove_photo(inspection, view.photos[0].id).expect("removed");
    let kept = table.files();
    let put = |name: &str| fs::write(table.photos().join(name), "x").expect("it can be written");
    let loose = "ab".repeat(32);
    for name in [
        &format!("{loose}.jpg"),
        &format!("{loose}.thumb.jpg"),
        ".arriving-x1",
        "holiday.jpg",
        "notes.txt",
    ] {
        put(name);
    }
    // By this clock all files are younger than an hour: one may belong to a row about to be written.
    assert_eq!(table.bench.sweep().expect("swept"), 0);
    table.clock.store(4_000_000_000_000, Ordering::Relaxed);
    assert_eq!(table.bench.sweep().expect("swept"), 3);
    let mut left = table.files();
    assert!(left.remove("holiday.jpg").is_some() && left.remove("notes.txt").is_some());
    // A removed photo is still named: an undo can bring it back.
    assert_eq!(left, kept);
    assert!(Table::new().bench.sweep().is_ok(), "no folder yet");
}

#[test]
fn a_photo_travels_as_text_and_comes_back_the_same() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let taken = take_in(&STANDARD.encode(jpeg(5))).expect("taken in");
    let view = table.bench.keep_photo(inspection, None, &taken).expect("kept");
    let [photo] = view.photos.as_slice() else { panic!("{:?}", view.photos) };
    for thumbnail in [false, true] {
        let text = table.bench.photo_text(&photo.sha256, thumbnail).expect("the photo");
        let bytes = STANDARD.decode(text).expect("base64");
        assert_eq!(Ok(bytes), table.bench.photo_bytes(&photo.sha256, thumbnail));
    }
    for bad in ["", "not base64", "bm8gcGljdHVyZQ=="] {
        let problem = take_in(bad).expect_err(bad);
        assert_eq!((problem.code, problem.field.as_deref()), (Code::BadInput, Some("photo")));
    }
}
