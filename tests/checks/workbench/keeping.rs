//! What stays after a record was replaced, and what is said of it.

use std::path::{Path, PathBuf};

use coldchassis_core::workbench::{Code, Recovery, Surroundings, Workbench};
use coldchassis_tests::pictures::{file, scene};
use image::ImageFormat;

use super::bench::{Record, new_unit};

/// Later than every file here was written, by more than the sweep waits.
const LONG_AFTER: i64 = 4_000_000_000_000;

fn photos(record: &Record) -> PathBuf {
    record.path().with_file_name("photos")
}

/// A record with twenty inspections and a copy of them.
fn copied(record: &Record) -> Workbench {
    let around = Surroundings {
        photos: Some(photos(record)),
        clock: Box::new(|| LONG_AFTER),
        ..record.around("here")
    };
    let mut bench = Workbench::open(&record.path(), around).expect("the record opens");
    for _ in 0..20 {
        bench.create_unit(&new_unit("One", &["outside"])).expect("a unit");
    }
    bench.snapshot_work().expect("the record").expect("due").run().expect("room");
    bench
}

fn names(folder: &Path) -> Vec<String> {
    let entries = std::fs::read_dir(folder).into_iter().flatten();
    let name = |entry: std::io::Result<std::fs::DirEntry>| {
        entry.expect("an entry").file_name().to_string_lossy().into_owned()
    };
    entries.map(name).collect()
}

/// Writes over everything behind the first page of each copy.
fn spoil_copies(record: &Record) {
    let folder = record.path().with_file_name("snapshots");
    for name in names(&folder).iter().filter(|name| name.ends_with(".coldchassis")) {
        let mut bytes = std::fs::read(folder.join(name)).expect("a copy");
        bytes[4096..].fill(0xA5);
        std::fs::write(folder.join(name), bytes).expect("it can be written");
    }
}

#[test]
fn photos_that_the_copy_does_not_know_stay_as_long_as_the_replaced_file() {
    let record = Record::fixed();
    let mut bench = copied(&record);
    let made = bench.create_unit(&new_unit("Late", &["outside"])).expect("a unit");
    let picture = file(&scene(400, 300, 1), ImageFormat::Jpeg);
    bench.add_photo(made.id, None, &picture).expect("a photo");
    bench.restore(Some(1), false).expect("room");
    std::fs::write(photos(&record).join(".arriving-x1"), "half").expect("it can be written");
    assert_eq!(bench.sweep().expect("swept"), 1, "what was never finished goes");
    assert_eq!(names(&photos(&record)).len(), 2);
    std::fs::remove_dir_all(record.path().with_file_name("damaged")).expect("it is there");
    assert_eq!(bench.sweep().expect("swept"), 2, "nothing may name them any more");
}

#[test]
fn what_is_said_of_a_replaced_record_is_true_of_a_sound_one() {
    let record = Record::fixed();
    let mut bench = copied(&record);
    let chosen = bench.restore(Some(1), false).expect("room");
    assert_eq!(chosen.says, [bench.words().say_id("recovered-from-copy")]);
    assert!(!chosen.says[0].contains("damaged"), "{:?}", chosen.says);
    let known = bench.restore(Some(1), true).expect("room");
    assert!(known.read > 0 && known.added == 0, "{known:?}");
    assert!(known.says[1].ends_with("had to be added."), "{:?}", known.says);
    assert_eq!((known.unreadable, known.doubtful, known.uncounted), (0, 0, false));
    let anew = bench.restore(None, true).expect("room");
    assert!(anew.says[1].contains(&anew.read.to_string()), "{:?}", anew.says);
    assert_eq!(bench.units(None).expect("a list").len(), 20);
}

#[test]
fn what_is_lost_for_certain_and_what_may_be_are_said_apart() {
    let record = Record::fixed();
    drop(copied(&record));
    let mut bytes = std::fs::read(record.path()).expect("the record");
    bytes[..4096].fill(0);
    std::fs::write(record.path(), bytes).expect("it can be written");
    let recovery = Recovery::of(&record.path(), None, "en");
    let done = recovery.restore(Some(1), true).expect("room");
    assert!(done.uncounted && done.read == 0, "{done:?}");
    assert_eq!(done.says.len(), 3, "{:?}", done.says);
    assert_eq!(done.says[1], "There was nothing in that file that could be read.");
    assert!(done.says[2].contains("more may be lost"), "{:?}", done.says);
}

#[test]
fn what_can_be_read_is_saved_though_every_copy_is_damaged() {
    let record = Record::fixed();
    drop(copied(&record));
    let recovery = Recovery::of(&record.path(), None, "en");
    let to = record.path().with_file_name("out.bundle");
    let with_copy = recovery.export_readable(0, &to).expect("a bundle");
    let said = |says: &[String]| says.last().expect("a sentence").clone();
    assert!(said(&with_copy.says).starts_with("It holds the copy of 20"), "{:?}", with_copy.says);
    spoil_copies(&record);
    let without = recovery.export_readable(0, &to).expect("a bundle");
    assert_eq!((without.units, without.events), (20, with_copy.events));
    assert!(said(&without.says).ends_with("no sound copy was found."), "{:?}", without.says);
}

#[test]
fn where_there_is_nothing_to_save_no_bundle_is_written() {
    let record = Record::fixed();
    drop(copied(&record));
    spoil_copies(&record);
    std::fs::write(record.path(), "a letter to a friend").expect("it can be written");
    let to = record.path().with_file_name("out.bundle");
    let recovery = Recovery::of(&record.path(), None, "en");
    let refused = recovery.export_readable(0, &to).expect_err("nothing is there");
    assert_eq!(
        (refused.code, refused.message.id.as_str()),
        (Code::Damaged, "error-nothing-readable")
    );
    assert!(!to.exists());
}
