//! How long a 12-megapixel photo takes to be stored, against an outside program that makes the same
//! two sizes: same files, same run, whole processes by turns.
//!
//! Prints; judges nothing. Needs `vipsthumbnail` (Debian: libvips-tools).

use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use coldchassis_core::photo::{Files, ingest};
use coldchassis_tests::pictures::{file, scene, with_notes};
use image::ImageFormat;

const RUNS: usize = 15;

fn main() {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let sources = [1, 6].map(|orientation| {
        let path = folder.path().join(format!("camera-{orientation}.jpg"));
        let jpeg = file(&scene(4000, 3000, 1), ImageFormat::Jpeg);
        std::fs::write(&path, with_notes(&jpeg, orientation)).expect("it can be written");
        println!("orientation {orientation}: 4000 × 3000, {} kB", jpeg.len() / 1000);
        path
    });
    for source in &sources {
        inside(source, folder.path());
        beside(source, folder.path());
    }
}

/// Where the time goes, in this process.
fn inside(source: &Path, folder: &Path) {
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
    println!(
        "  in this process: taken in {:.0} ms, written {:.0} ms (medians of {RUNS})",
        median(&mut taking),
        median(&mut writing)
    );
}

/// Whole processes by turns, so that whatever else the machine does falls on both.
fn beside(source: &Path, folder: &Path) {
    let (mut ours, mut others) = (Vec::new(), Vec::new());
    for run in 0..RUNS {
        let to = folder.join(format!("ours-{run}"));
        ours.push(timed(Command::new(env!("CARGO_BIN_EXE_ingest")).args([source, to.as_path()])));
        let large = vips(source, folder, 2048);
        let small = vips(source, folder, 320);
        let (Some(large), Some(small)) = (large, small) else {
            println!("  no vipsthumbnail here: nothing to compare with");
            return;
        };
        others.push(large + small);
        std::fs::remove_dir_all(&to).expect("it can be removed");
    }
    let (ours, others) = (median(&mut ours), median(&mut others));
    println!(
        "  whole processes, medians of {RUNS}: {ours:.0} ms against {others:.0} ms, ratio {:.2}",
        ours / others
    );
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

fn median(times: &mut [Duration]) -> f64 {
    times.sort();
    times[times.len() / 2].as_secs_f64() * 1e3
}
