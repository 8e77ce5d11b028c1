//! Measures how fast the app starts, and goes from question to question: `pace [STARTS] [TAPS]`.
//!
//! A start is measured twice: without any driver, by watching the pixels of the display, and with the web
//! driver, by what the web view itself says of its first contentful paint. All is on the clock of this
//! machine; run it when nothing else runs.

mod frame;
mod starts;
mod table;
mod taps;

use coldchassis_app_tests::stage;

use taps::Tap;

/// How often to start, and to tap, when nothing else is asked for.
const USUAL: (usize, usize) = (20, 200);

#[tokio::main]
async fn main() {
    let mut given = std::env::args().skip(1).map(|text| {
        text.parse::<usize>()
            .unwrap_or_else(|_| panic!("{text:?} is not a number: pace [STARTS] [TAPS]"))
    });
    let starts = given.next().unwrap_or(USUAL.0).max(1);
    let taps = given.next().unwrap_or(USUAL.1).max(1);
    println!("{}", stage::program().display());
    println!("load before: {}", table::load());

    let stocked = starts::stocked().await;
    let watched = starts::watched(&stocked, starts).await;
    table::head(&format!(
        "{starts} starts without a driver, to the list of units; ms after the start"
    ));
    table::row("the window is up", watched.iter().map(|start| start.window));
    table::row("first paint of a screen of ours", watched.iter().map(|start| start.paint));
    table::row("last change: the list with its text", watched.iter().map(|start| start.whole));

    let driven = starts::driven(&stocked, starts).await;
    table::head(&format!("{starts} starts with the driver; ms after the start, to 20 ms"));
    table::row("the web view begins to load", driven.iter().map(|start| start.load));
    table::row("first contentful paint", driven.iter().map(|start| start.paint));
    table::row("the time between the two", driven.iter().map(|start| start.paint - start.load));
    table::head(&format!("{starts} first taps, one after each of these starts; ms after the tap"));
    taps_rows(driven.iter().map(|start| &start.tap));

    let tapped = taps::many(&stocked, taps).await;
    table::head(&format!("{taps} taps, each to the next question; ms after the tap"));
    taps_rows(tapped.iter());
    println!("\nload after: {}", table::load());
}

fn taps_rows<'a>(taps: impl Iterator<Item = &'a Tap> + Clone) {
    table::row("the question is painted", taps.clone().map(|tap| tap.painted));
    table::row("the question is in the page", taps.clone().map(|tap| tap.changed));
    table::row("the core has answered", taps.map(|tap| tap.answered));
}
