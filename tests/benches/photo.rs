//! How long a 12-megapixel photo takes to be stored, against an outside program that makes the same
//! two sizes: same files, same run, whole processes by turns.
//!
//! Prints; judges nothing. Needs `vipsthumbnail` (Debian: libvips-tools).

use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use coldchassis_core::photo::{Files, ingest};
use coldchassis_figures::{At, Row, Unit};
use coldchassis_tests::pictures::{file, scene, with_notes};
use image::ImageFormat;

const BENCH: &str = "Photos";
const RUNS: usize = 15;
/// How a picture was held, by its orientation in EXIF.
const HELD: [(u16, &str); 2] = [(1, "upright"), (6, "sideways")];

fn main() {
    let folder = tempfile::tempdir().expect("a temporary folder");
    for (orientation, held) in HELD {
        let source = folder.path().join(format!("camera-{orientation}.jpg"));
        let jpeg = file(&scene(4000, 3000, 1), ImageFormat::Jpeg);
        std::fs::write(&source, with_notes(&jpeg, orientation)).expect("it can be written");
        let size = format!("4000 × 3000, {} kB", jpeg.len() / 1000);
        inside(&source, folder.path(), held, &size);
        beside(&source, folder.path(), held);
    }
}

/// Where the time goes, in this process.
fn inside(source: &Path, folder: &Path, held: &str, size: &str) {
    let bytes = std::fs::read(source).expect("the picture");
    let files = Files::of(folder.join("inside"));
    let (mut taking, mut writing) = (Vec::new(), Vec::new());
    for _ in 0..RUNS {
        let start = Instant::now();
        let photo = ingest(&bytes).expect("a JPEG");
        taking.push(start.elapsed());
        files.remove(&photo.digest).expect("it can be removed");
        let start = Instant::now();
        files.put(&photo).expect("it can be written");
        writing.push(start.elapsed());
    }
    let taking = Row::times(BENCH, format!("taken in, held {held}"), Unit::Millis, &taking);
    taking.note(size).tell();
    Row::times(BENCH, format!("written, held {held}"), Unit::Millis, &writing).tell();
}

/// Whole processes by turns, so that whatever else the machine does falls on both.
fn beside(source: &Path, folder: &Path, held: &str) {
    let (mut ours, mut others) = (Vec::new(), Vec::new());
    for run in 0..RUNS {
        let to = folder.join(format!("ours-{run}"));
        ours.push(timed(Command::new(env!("CARGO_BIN_EXE_ingest")).args([source, to.as_path()])));
        let large = vips(source, folder, 2048);
        let small = vips(source, folder, 320);
        let (Some(large), Some(small)) = (large, small) else {
            println!("no vipsthumbnail here: nothing to compare with");
            return;
        };
        others.push(large + small);
        std::fs::remove_dir_all(&to).expect("it can be removed");
    }
    let others = Row::times(BENCH, "the other", Unit::Millis, &others);
    let theirs = others.at(At::Median).expect("some runs");
    let name = format!("stored, whole process, held {held}");
    let row = Row::times(BENCH, name, Unit::Millis, &ours).beside("vipsthumbnail twice", theirs);
    row.at_most(At::Ratio, 0.5, 3).tell();
}

fn vips(source: &Path, folder: &Path, side: u32) -> Option<Duration> {
    let to = folder.join(format!("other-{side}.jpg[Q=85,strip]"));
    let mut command = Command::new("vipsthumbnail");
    command.arg(source).args(["--size", &side.to_string(), "--output"]).arg(to);
    let is_there = Command::new("vipsthumbnail").arg("--version").output().is_ok();
    is_there.then(|| timed(&mut command))
}

fn timed(command: &mut Command) -> Duration {
    let start = Instant::now();
    let status = command.stdout(Stdio::null()).status().expect("it starts");
    let took = start.elapsed();
    assert!(status.success(), "{command:?}");
    took
}
