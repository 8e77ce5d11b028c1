//! From the start of the process to the first paint.

use std::process::Stdio;
use std::time::{Duration, Instant};

use coldchassis_app_tests::record::{inspected, units};
use coldchassis_app_tests::selectors::words;
use coldchassis_app_tests::walk::welcome;
use coldchassis_app_tests::{App, Stage, ended, stage};
use serde_json::json;
use tokio::process::Command;

use super::frame::{Frame, Look};
use super::taps::{self, Tap};

/// How often the pixels are read. Each reading takes a fraction of a millisecond.
const LOOK_AGAIN: Duration = Duration::from_millis(2);
/// When nothing has changed for so long, the screen is whole.
const QUIET: Duration = Duration::from_millis(1500);
/// A start that takes longer has failed.
const START: Duration = Duration::from_secs(30);
/// Real units beside those of the demonstration.
const REAL_UNITS: usize = 20;
/// The least part of the window that is ink once a screen of ours is painted: the button at the bottom alone
/// is ten times that. The blank window before it has none.
const LEAST_INK: f64 = 0.003;

/// A start, watched from outside; ms after the start of the process.
pub struct Watched {
    /// The first pixel changed.
    pub window: f64,
    /// A screen of ours is painted, though its text may still wait for its letters.
    pub paint: f64,
    /// The last pixel changed: the list is there, with its text.
    pub whole: f64,
}

/// A start under the web driver; ms after the start of the process.
pub struct Driven {
    /// The web view begins to load the screens. The driver's own waits are before it.
    pub load: f64,
    /// First contentful paint.
    pub paint: f64,
    /// The first tap of all.
    pub tap: Tap,
}

/// A place with a record as of an inspector who has used the app for a while.
pub async fn stocked() -> Stage {
    let stage = Stage::new().await;
    let app = App::start(&stage).await;
    welcome(&app).await;
    app.command("load_demo", json!({})).await.expect("the demonstration");
    for number in 1..=REAL_UNITS {
        let found = [
            ("plug", json!("two_equal_blades")),
            ("bare_metal", json!(["screws_or_shafts"])),
            ("back", json!("fitted")),
        ];
        inspected(&app, &format!("Shelf radio {number}"), &["outside"], &found).await;
    }
    assert_eq!(units(&app).await.len(), REAL_UNITS + 10);
    app.see(&words("list-new")).await;
    // The web view writes the settings down a moment after they are set.
    tokio::time::sleep(Duration::from_secs(1)).await;
    app.kill().await;
    stage
}

/// Starts without a driver, each in a copy of its own.
pub async fn watched(stocked: &Stage, times: usize) -> Vec<Watched> {
    let mut starts = Vec::new();
    for _ in 0..times {
        let stage = stocked.copy().await;
        let frame = Frame::open(&stage.pixels());
        let mut program = Command::new(stage::program());
        let program = stage.set(&mut program).stdout(Stdio::null()).stderr(Stdio::null());
        let before = Instant::now();
        let app = ended::start(program);
        let watching = tokio::task::spawn_blocking(move || watch(&frame, before));
        let looks = watching.await.expect("the watch ends");
        drop(app);
        starts.push(judged(&looks));
    }
    starts
}

/// Every look that differs from the one before it, until nothing changes any more.
fn watch(frame: &Frame, start: Instant) -> Vec<(Duration, Look)> {
    let mut looks = vec![(Duration::ZERO, frame.look())];
    loop {
        std::thread::sleep(LOOK_AGAIN);
        let look = frame.look();
        let now = start.elapsed();
        let (last, before) = looks.last().expect("there is a first one");
        if look != *before {
            looks.push((now, look));
        } else if looks.len() > 2 && now - *last > QUIET {
            return looks;
        }
        assert!(now < START, "nothing was painted");
    }
}

fn judged(looks: &[(Duration, Look)]) -> Watched {
    let ms = |at: &Duration| at.as_secs_f64() * 1e3;
    let (whole, _) = looks.last().expect("there is a last one");
    // The first look is of the bare display, which may be drawn on.
    let mut windows = looks.iter().skip(1);
    let (paint, _) = windows.find(|(_, look)| look.drawn() >= LEAST_INK).expect("a screen of ours");
    Watched { window: ms(&looks[1].0), paint: ms(paint), whole: ms(whole) }
}

/// Starts with the driver, and taps once.
pub async fn driven(stocked: &Stage, times: usize) -> Vec<Driven> {
    let script = "return [performance.timeOrigin,
        performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? null]";
    let mut starts = Vec::new();
    for _ in 0..times {
        let stage = stocked.copy().await;
        let app = App::start(&stage).await;
        app.see("Shelf radio 1").await;
        let told = app.script(script, vec![]).await;
        let load = told[0].as_f64().expect("a time") - app.started_at();
        let paint = load + told[1].as_f64().expect("a first contentful paint");
        let tap = taps::first(&app).await;
        app.kill().await;
        starts.push(Driven { load, paint, tap });
    }
    starts
}
