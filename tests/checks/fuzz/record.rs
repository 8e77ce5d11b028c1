//! Files that are opened as a record: ours with bytes or rows changed, cut off, or of anything else. Each is
//! opened or refused, every command answers, and what can be read of it goes into a record that opens.

use std::path::{Path, PathBuf};
use std::sync::LazyLock;
use std::time::{Duration, Instant};

use bolero::check;
use coldchassis_core::words::Words;
use coldchassis_core::workbench::{NewUnit, Problem, QueueAsk, Recovery, ReportAsk, Workbench};
use coldchassis_tests::pictures::{file, scene};
use image::ImageFormat;
use serde_json::json;
use uuid::Uuid;

use super::bytes::change_one;
use super::readings::around;
use super::tally::{Reached, Tally, time};
use super::tape::{Tape, tapes};

/// Longer is taken for a hang.
const PATIENCE: Duration = Duration::from_secs(60);

/// A record of a few units, with its log put into it.
static SEED: LazyLock<Vec<u8>> = LazyLock::new(|| {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let path = folder.path().join("record");
    let photos = folder.path().join("photos");
    let mut bench = Workbench::open(&path, around(Some(photos))).expect("a record");
    for name in ["Brown set", "Cream set", "Two-channel amplifier"] {
        let new = NewUnit {
            name: name.to_owned(),
            place: "Shelf 3".to_owned(),
            supply: json!({"volts": 120, "hertz": 60}),
            access: vec!["cover_off".to_owned()],
            ..NewUnit::default()
        };
        let id = bench.create_unit(&new).expect("a unit").id;
        for (question, answer) in
            [("plug", "two_equal_blades"), ("transformer", "none"), ("common_leg", "pin_b")]
        {
            bench.answer(id, question, json!(answer)).expect("it fits");
        }
        let picture = file(&scene(40, 30, 1), ImageFormat::Jpeg);
        let view = bench.add_photo(id, None, &picture).expect("a photo");
        bench.caption_photo(id, view.photos[0].id, name).expect("it fits");
        bench.undo(id).expect("it can be undone");
    }
    drop(bench);
    std::fs::read(&path).expect("it is there")
});

/// A file to be opened; its folder has whatever SQLite finds beside it.
fn write(tape: &mut Tape<'_>, folder: &Path) -> PathBuf {
    let path = folder.join("record");
    let mut bytes = SEED.clone();
    match tape.below(8) {
        0..3 => {
            std::fs::write(&path, &bytes).expect("it can be written");
            super::rows::change(tape, &path);
            return path;
        }
        3 => {
            // Whole pages: left blank, or another one in their place, as a failing disk does.
            let page = 4096;
            for _ in 0..=tape.below(3) {
                let pages = bytes.len() / page;
                let (to, from) = (tape.below(pages) * page, tape.below(pages) * page);
                if tape.is(128) {
                    bytes[to..to + page].fill(tape.byte());
                } else {
                    bytes.copy_within(from..from + page, to);
                }
            }
        }
        4 => bytes = (0..tape.below(200)).map(|_| tape.byte()).collect(),
        5 => {
            // The header alone: it is ours, and nothing else is.
            bytes.truncate(100);
            change_one(tape, &mut bytes);
        }
        _ => {
            // Behind the header, which says what it is.
            let mut rest = bytes.split_off(100);
            for _ in 0..=tape.below(6) {
                change_one(tape, &mut rest);
            }
            bytes.extend(rest);
        }
    }
    std::fs::write(&path, &bytes).expect("it can be written");
    if tape.is(24) {
        let mut log = bytes;
        log.truncate(tape.below(9000));
        std::fs::write(folder.join("record-wal"), log).expect("it can be written");
    }
    path
}

fn check_sentence(problem: &Problem) {
    let sentence = problem.sentence(&Words::of("en"));
    assert!(sentence.contains(' ') && sentence.chars().count() < 600, "{sentence:?}");
}

/// Whatever comes of it, it is an answer.
fn answered<T>(answer: Result<T, Problem>) -> Option<T> {
    answer.inspect_err(check_sentence).ok()
}

/// Everything that reads the record, and an answer and an undo that write it.
fn use_it(bench: &mut Workbench) {
    answered(bench.queue(&QueueAsk::default()));
    let search = QueueAsk { text: "set".to_owned(), newest: true, ..QueueAsk::default() };
    answered(bench.queue(&search));
    answered(bench.queue_counts());
    answered(bench.queue_places("be"));
    answered(bench.list_csv());
    answered(bench.sweep());
    answered(bench.keep_up());
    let units = answered(bench.units(None)).unwrap_or_default();
    for unit in units.iter().take(2) {
        let Some(inspection) = unit.inspection else { continue };
        answered(bench.inspection(inspection));
        answered(bench.answer(inspection, "back", json!("fitted")));
        answered(bench.undo(inspection));
        answered(bench.report_text(inspection));
        answered(bench.start_inspection(unit.id, &[]));
        answered(bench.set_unit_state(unit.id, "in_repair"));
    }
    answered(bench.inspection(Uuid::nil()));
    let new = NewUnit { supply: json!({"volts": 120, "hertz": 60}), ..NewUnit::default() };
    answered(bench.create_unit(&new));
    if let Some(Some(look)) = answered(bench.look_work()) {
        answered(look.run());
    }
    if let Some(work) = answered(bench.export_work(None)) {
        let folder = tempfile::tempdir().expect("a temporary folder");
        answered(work.run(&folder.path().join("out.coldbundle")));
    }
    if let Some(inspection) = units.first().and_then(|unit| unit.inspection) {
        answered(bench.remedies(inspection));
        answered(bench.report(inspection, &ReportAsk::default()));
    }
}

/// What can be read is put into a record that opens and is whole.
fn recover(path: &Path) {
    let recovery = Recovery::of(path, None, "en");
    answered(recovery.snapshots());
    if answered(recovery.restore(None, true)).is_some() {
        let mut bench = Workbench::open(path, around(None)).expect("what was put together opens");
        bench.units(None).expect("a list");
        bench.queue(&QueueAsk::default()).expect("a page");
        answered(bench.remove_demo());
    }
}

#[test]
fn records() {
    let tally = Tally::new("record");
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        let folder = tempfile::tempdir().expect("a temporary folder");
        let start = Instant::now();
        let path = write(&mut tape, folder.path());
        let reached = match answered(Workbench::open(&path, around(None))) {
            Some(mut bench) => {
                use_it(&mut bench);
                Reached::Taken
            }
            None => Reached::Nothing,
        };
        recover(&path);
        assert!(start.elapsed() < PATIENCE, "it took {:?}", start.elapsed());
        tally.count(reached);
    });
    // Half of them on the whole, but some eighty inputs in 3 s say that only roughly.
    tally.end(25);
}
