//! Measures how fast the app starts and goes from question to question, how large it is, and what memory it takes:
//! `pace [STARTS] [TAPS] [PHOTOS]`.
//!
//! A start is measured twice: without any driver, by watching the pixels of the display, and with the web
//! driver, by what the web view itself says of its first contentful paint. All is on the clock of this
//! machine; run it when nothing else runs.

mod frame;
mod memory;
mod size;
mod starts;
mod taps;

use coldchassis_app_tests::stage;
use coldchassis_figures::{At, Row, Unit, machine};

use taps::Tap;

const BENCH: &str = "The app";
/// How often to start and to tap, and how many photos to take, when nothing else is asked for.
const USUAL: (usize, usize, usize) = (20, 200, 100);
/// The longest from the start to the first paint, and from a tap to the next question painted, ms.
const FIRST_PAINT: f64 = 800.0;
const NEXT_QUESTION: f64 = 100.0;

#[tokio::main]
async fn main() {
    let mut given = std::env::args().skip(1).map(|text| {
        text.parse::<usize>()
            .unwrap_or_else(|_| panic!("{text:?} is not a number: pace [STARTS] [TAPS] [PHOTOS]"))
    });
    let starts = given.next().unwrap_or(USUAL.0).max(1);
    let taps = given.next().unwrap_or(USUAL.1).max(1);
    let many = given.next().unwrap_or(USUAL.2).max(1);
    println!("{}", stage::program().display());
    let load = machine::load().map_or_else(String::new, |load| load.to_string());
    println!("load before: {load}");
    size::tell();

    let stocked = starts::stocked().await;
    let watched = starts::watched(&stocked, starts).await;
    let start = |what: &str| format!("start, without a driver, to {what}");
    row(&start("the window"), watched.iter().map(|start| start.window)).tell();
    let painted = row(&start("the first paint"), watched.iter().map(|start| start.paint));
    painted.at_most(At::Median, FIRST_PAINT, 3).tell();
    row(&start("the list with its text"), watched.iter().map(|start| start.whole)).tell();

    let driven = starts::driven(&stocked, starts).await;
    let start = |what: &str| format!("start, with the driver, to {what}");
    row(&start("where the screens are loaded"), driven.iter().map(|start| start.load)).tell();
    row(&start("first contentful paint"), driven.iter().map(|start| start.paint)).tell();
    taps_rows("first tap", driven.iter().map(|start| &start.tap), None);

    let tapped = taps::many(&stocked, taps).await;
    taps_rows("tap", tapped.iter(), Some(NEXT_QUESTION));
    memory::tell(&stocked, many).await;
}

fn row(name: &str, figures: impl Iterator<Item = f64>) -> Row {
    Row::new(BENCH, name, Unit::Millis, figures)
}

fn taps_rows<'a>(name: &str, taps: impl Iterator<Item = &'a Tap> + Clone, bound: Option<f64>) {
    let to = |what: &str| format!("{name} to {what}");
    let painted = row(&to("the next question painted"), taps.clone().map(|tap| tap.painted));
    bound.map_or(painted.clone(), |most| painted.at_most(At::Median, most, 3)).tell();
    row(&to("the question in the page"), taps.clone().map(|tap| tap.changed)).tell();
    row(&to("the answer of the core"), taps.map(|tap| tap.answered)).tell();
}
