//! What the app holds in memory, its own process and those of its web view together.
//!
//! Pages that several processes share are counted once in all by their proportional share (PSS), and once in each
//! by what is resident (RSS).

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::Stdio;
use std::time::Duration;

use coldchassis_app_tests::photo::{FILES, choose, photos};
use coldchassis_app_tests::record::{inspected, shown};
use coldchassis_app_tests::{App, Stage, ended, stage};
use coldchassis_figures::{Row, Unit};
use serde_json::json;
use tokio::process::Command;

use super::BENCH;

/// How long nothing is done before memory is looked at.
const REST: Duration = Duration::from_secs(10);
/// How often to look whether a photo is kept.
const AGAIN: Duration = Duration::from_millis(20);
/// A photo that takes longer is lost.
const KEPT: Duration = Duration::from_secs(60);
/// Pixels of a photo as a phone gives it.
const PHOTO: (u16, u16) = (4000, 3000);

/// Tells what it holds at rest, and after so many photos.
pub async fn tell(stocked: &Stage, many: usize) {
    let rest = at_rest(stocked).await;
    rest.tell("at rest on the list of units");
    let [before, after] = with_photos(stocked, many).await;
    before.tell("at rest, with the driver");
    after.tell(&format!("with the driver, {many} photos taken and shown"));
}

/// Memory in MB.
struct Held {
    /// Of all its processes, what they share divided among them.
    proportional: f64,
    /// Of all its processes, what they share counted in each.
    resident: f64,
    /// Of the process with the window and the core alone, as `proportional`.
    own: f64,
    processes: usize,
}

impl Held {
    /// Of a process and all that it started.
    fn by(process: u32) -> Self {
        let all = family(process);
        let sum = |field: &str| all.iter().map(|one| megabytes(*one, field)).sum();
        Self {
            proportional: sum("Pss:"),
            resident: sum("Rss:"),
            own: megabytes(process, "Pss:"),
            processes: all.len(),
        }
    }

    fn tell(&self, when: &str) {
        let row = |what: &str, megabytes: f64| {
            Row::one(BENCH, format!("memory {when}{what}"), Unit::Megabytes, megabytes)
        };
        row("", self.proportional).note(format!("PSS of {} processes", self.processes)).tell();
        row(", shared pages in each", self.resident).note("RSS").tell();
        row(", the window and the core alone", self.own).note("PSS").tell();
    }
}

/// What a process holds by a field of its `smaps_rollup` (proc(5), from memory, high); nothing once it has ended.
fn megabytes(process: u32, field: &str) -> f64 {
    let text = fs::read_to_string(format!("/proc/{process}/smaps_rollup")).unwrap_or_default();
    let line = text.lines().find_map(|line| line.strip_prefix(field)).unwrap_or_default();
    let kilobytes = line.trim().trim_end_matches("kB").trim().parse::<f64>();
    kilobytes.map_or(0.0, |kilobytes| kilobytes * 1024.0 / 1e6)
}

/// A process and all that it started, directly or not.
fn family(process: u32) -> Vec<u32> {
    let parents: BTreeMap<u32, u32> = fs::read_dir("/proc")
        .expect("the system tells of processes")
        .flatten()
        .filter_map(|entry| entry.file_name().to_str()?.parse().ok())
        .filter_map(|number| Some((number, parent(number)?)))
        .collect();
    let mut family = vec![process];
    let mut next = 0;
    while let Some(parent) = family.get(next).copied() {
        family.extend(parents.iter().filter(|(_, of)| **of == parent).map(|(child, _)| *child));
        next += 1;
    }
    family
}

/// The fourth field of `stat`, the second after the name in brackets.
fn parent(process: u32) -> Option<u32> {
    let stat = fs::read_to_string(format!("/proc/{process}/stat")).ok()?;
    stat.rsplit_once(") ")?.1.split(' ').nth(1)?.parse().ok()
}

/// Started by itself, and left alone on the list.
async fn at_rest(stocked: &Stage) -> Held {
    let stage = stocked.copy().await;
    let mut program = Command::new(stage::program());
    let program = stage.set(&mut program).stdout(Stdio::null()).stderr(Stdio::null());
    let app = ended::start(program);
    tokio::time::sleep(REST).await;
    let held = Held::by(app.id().expect("the app runs"));
    assert!(held.processes > 1, "the web view has no process of its own");
    held
}

/// With the driver: at rest on the list, and after photos were chosen at a question one by one, when all of them
/// are on the screen.
async fn with_photos(stocked: &Stage, many: usize) -> [Held; 2] {
    let stage = stocked.copy().await;
    let app = App::start(&stage).await;
    tokio::time::sleep(REST).await;
    let before = Held::by(app.number());
    let found = [("plug", json!("two_equal_blades"))];
    let id = inspected(&app, "Radio to be photographed", &["outside"], &found).await;
    app.go(&format!("#/i/{id}/change/plug")).await;
    let kept = stage.data().join("photos");
    let already = thumbnails(&kept);
    for number in 0..many {
        let file = kept.with_file_name("camera.jpg");
        fs::write(&file, taken(number)).expect("a file");
        choose(&app, FILES, &file).await;
        let arrives = async {
            while thumbnails(&kept) <= already + number {
                tokio::time::sleep(AGAIN).await;
            }
        };
        tokio::time::timeout(KEPT, arrives).await.expect("the photo is kept");
    }
    app.go(&format!("#/i/{id}/found")).await;
    let script = "const shown = [...document.querySelectorAll('main img')];
        return shown.length >= arguments[0] && shown.every((one) => one.complete);";
    app.until("not all photos are shown", script, vec![json!(many)]).await;
    assert_eq!(photos(&shown(&app, &id).await).len(), many);
    tokio::time::sleep(REST).await;
    let after = Held::by(app.number());
    app.kill().await;
    [before, after]
}

fn thumbnails(folder: &Path) -> usize {
    let files = fs::read_dir(folder).into_iter().flatten().flatten();
    files.filter(|file| file.file_name().to_string_lossy().ends_with(".thumb.jpg")).count()
}

/// A picture as a phone gives it, another for each number.
fn taken(number: usize) -> Vec<u8> {
    let (width, height) = (usize::from(PHOTO.0), usize::from(PHOTO.1));
    let pixel = |place: usize| {
        let (x, y) = (place % width, place / width);
        [
            (x * 255 / width) as u8,
            (y * 255 / height) as u8,
            ((x / 16 + y / 16 + number) % 251) as u8,
        ]
    };
    let pixels: Vec<u8> = (0..width * height).flat_map(pixel).collect();
    let mut jpeg = Vec::new();
    let encoder = jpeg_encoder::Encoder::new(&mut jpeg, 85);
    let kind = jpeg_encoder::ColorType::Rgb;
    encoder.encode(&pixels, PHOTO.0, PHOTO.1, kind).expect("a JPEG");
    jpeg
}
