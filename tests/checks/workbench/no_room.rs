//! No room, or a folder that may only be read, wherever something is written: said as what it is, and what was
//! stored before is as it was. Each on a file system of its own, which needs the right to mount one.

use std::path::{Path, PathBuf};
use std::process::Command;

use coldchassis_core::workbench::{Code, Problem, Surroundings, Workbench, look_at_bundle};
use coldchassis_tests::pictures::{file, scene};
use image::ImageFormat;

use super::bench::{Record, new_unit};

/// Less than a photo, a bundle of one, or a copy of the record takes.
const FULL: &str = "size=16k";
const READ_ONLY: &str = "ro";

/// A folder on a file system of its own; gone again when it is dropped.
struct Mounted<'a>(&'a Path);

impl<'a> Mounted<'a> {
    /// Nothing where this user may mount none.
    fn at(folder: &'a Path, options: &str) -> Option<Self> {
        std::fs::create_dir_all(folder).expect("a folder");
        let mount = ["-t", "tmpfs", "-o", options, "tmpfs"];
        let mounted = Command::new("mount").args(mount).arg(folder).output();
        if mounted.is_ok_and(|done| done.status.success()) {
            return Some(Self(folder));
        }
        eprintln!("skipped: no file system can be mounted here");
        None
    }

    fn is_empty(&self) -> bool {
        std::fs::read_dir(self.0).expect("a folder").next().is_none()
    }
}

impl Drop for Mounted<'_> {
    fn drop(&mut self) {
        Command::new("umount").arg(self.0).status().expect("it was mounted");
    }
}

fn beside(record: &Record, name: &str) -> PathBuf {
    record.path().with_file_name(name)
}

fn open(record: &Record) -> Workbench {
    let photos = Some(beside(record, "photos"));
    let around = Surroundings { photos, ..record.around("here") };
    Workbench::open(&record.path(), around).expect("the record opens")
}

fn picture() -> Vec<u8> {
    file(&scene(1200, 900, 3), ImageFormat::Jpeg)
}

#[track_caller]
fn assert_said<T>(answer: Result<T, Problem>, id: &str) {
    let problem = answer.err().expect("refused");
    assert_eq!((problem.code, problem.message.id.as_str()), (Code::Storage, id));
}

#[test]
fn a_photo_that_finds_no_room_is_refused_and_can_be_taken_again() {
    for (options, said) in [(FULL, "error-no-room"), (READ_ONLY, "error-read-only")] {
        let record = Record::stepping(10);
        let mut bench = open(&record);
        let inspection = bench.create_unit(&new_unit("One", &["outside"])).expect("a unit").id;
        let (rows, photos) = (record.rows(), beside(&record, "photos"));
        let Some(disk) = Mounted::at(&photos, options) else { return };
        assert_said(bench.add_photo(inspection, None, &picture()), said);
        assert_eq!(record.rows(), rows);
        assert!(disk.is_empty(), "nothing half-written is left");
        drop(disk);
        let view = bench.add_photo(inspection, None, &picture()).expect("there is room again");
        assert_eq!(view.photos.len(), 1);
    }
}

#[test]
fn a_bundle_that_finds_no_room_is_not_taken_in() {
    for (options, said) in [(FULL, "error-no-room"), (READ_ONLY, "error-read-only")] {
        let (there, here) = (Record::stepping(10), Record::stepping(10));
        let bundle = with_photo(&there);
        let mut bench = open(&here);
        let (rows, photos) = (here.rows(), beside(&here, "photos"));
        let files = bench.photo_files().expect("a folder");
        let Some(disk) = Mounted::at(&photos, options) else { return };
        assert_said(look_at_bundle(&bundle, &files), said);
        assert_eq!(here.rows(), rows);
        assert!(disk.is_empty(), "nothing half-written is left");
        drop(disk);
        let work = look_at_bundle(&bundle, &files).expect("there is room again");
        assert_eq!(bench.keep_bundle(work).expect("a bundle").photos, 1);
    }
}

/// A bundle of a unit with a photo.
fn with_photo(record: &Record) -> PathBuf {
    let mut bench = open(record);
    let inspection = bench.create_unit(&new_unit("Theirs", &["outside"])).expect("a unit").id;
    bench.add_photo(inspection, None, &picture()).expect("a photo");
    let bundle = beside(record, "out.bundle");
    bench.export_work(None).expect("work").run(&bundle).expect("room");
    bundle
}

#[test]
fn a_bundle_that_cannot_be_written_leaves_what_stands_there() {
    for (options, said) in [(FULL, "file-no-room"), (READ_ONLY, "file-barred")] {
        let record = Record::stepping(10);
        let elsewhere = with_photo(&record);
        let bench = open(&record);
        let (rows, stick) = (record.rows(), beside(&record, "stick"));
        let Some(disk) = Mounted::at(&stick, options) else { return };
        let to = stick.join("out.bundle");
        let stood = std::fs::write(&to, "from yesterday").is_ok();
        assert_eq!(stood, options == FULL);
        assert_said(bench.export_work(None).expect("work").run(&to), said);
        assert_eq!(std::fs::read_to_string(&to).is_ok_and(|text| text == "from yesterday"), stood);
        let left = std::fs::read_dir(disk.0).expect("a folder").count();
        assert_eq!(left, usize::from(stood), "nothing half-written is left");
        assert_eq!(record.rows(), rows);
        bench.export_work(None).expect("work").run(&elsewhere).expect("room elsewhere");
    }
}

#[test]
fn a_copy_that_finds_no_room_is_made_once_there_is_some() {
    for (options, said) in [(FULL, "error-no-room"), (READ_ONLY, "error-read-only")] {
        let record = Record::stepping(10);
        let mut bench = open(&record);
        for _ in 0..20 {
            bench.create_unit(&new_unit("One", &["outside"])).expect("a unit");
        }
        let copies = beside(&record, "snapshots");
        let Some(disk) = Mounted::at(&copies, options) else { return };
        assert_said(bench.snapshot_work().expect("the record").expect("due").run(), said);
        assert!(disk.is_empty(), "nothing half-written is left");
        bench.create_unit(&new_unit("The work goes on", &["outside"])).expect("a unit");
        drop(disk);
        bench.snapshot_work().expect("the record").expect("still due").run().expect("room");
        assert!(bench.snapshot_work().expect("the record").is_none());
    }
}

#[test]
fn a_copy_is_not_put_back_where_the_file_that_is_there_cannot_be_kept() {
    for (options, said) in [(FULL, "error-no-room"), (READ_ONLY, "error-read-only")] {
        let record = Record::stepping(10);
        let mut bench = open(&record);
        for _ in 0..20 {
            bench.create_unit(&new_unit("One", &["outside"])).expect("a unit");
        }
        bench.snapshot_work().expect("the record").expect("due").run().expect("room");
        bench.create_unit(&new_unit("After", &["outside"])).expect("a unit");
        let kept = beside(&record, "damaged");
        let Some(disk) = Mounted::at(&kept, options) else { return };
        assert_said(bench.restore(Some(1), false), said);
        assert!(disk.is_empty(), "nothing half-copied is left");
        assert_eq!(bench.units(None).expect("a list").len(), 21, "the record goes on");
        drop(disk);
        bench.restore(Some(1), false).expect("room");
        assert_eq!(bench.units(None).expect("a list").len(), 20);
    }
}
