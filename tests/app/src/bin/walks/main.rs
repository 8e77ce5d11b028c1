//! Three walks through the real app on a display that nobody sees, as its three users go: `walks [FOLDER]`.
//!
//! Each begins at a new installation and ends with a report in a folder. Prints taps and times, leaves pictures.

mod walker;

use std::path::{Path, PathBuf};

use coldchassis_app_tests::page::pictures;
use coldchassis_app_tests::photo::{FILES, held_upright};
use coldchassis_app_tests::record::SUPPLY;
use coldchassis_app_tests::selectors::{access, core_words, screen_words, words};
use coldchassis_app_tests::{App, Stage};
use walker::{Known, Walker};

#[tokio::main]
async fn main() {
    let folder = std::env::args().nth(1).map_or_else(|| pictures().join("walks"), PathBuf::from);
    let only = std::env::var("COLDCHASSIS_WALK").unwrap_or_default();
    for name in ["buyer", "technician", "shop"] {
        if !only.is_empty() && only != name {
            continue;
        }
        let folder = folder.join(name);
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).expect("a folder for pictures");
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        let mut walker = Walker::new(&app, &stage, &folder);
        println!("## {name}");
        welcome(&mut walker).await;
        match name {
            "buyer" => buyer(&mut walker, &folder).await,
            "technician" => technician(&mut walker, &folder).await,
            _ => shop(&mut walker, &folder).await,
        }
        println!("pictures: {}", folder.display());
        app.kill().await;
    }
}

async fn welcome(walker: &mut Walker<'_>) {
    for title in ["first-does-title", "first-cannot-title", "first-unplug-title"] {
        walker.app.see(&words(title)).await;
        walker.picture(title).await;
        let onward = if title == "first-unplug-title" { "first-start" } else { "continue" };
        walker.tap(&words(onward)).await;
    }
    walker.app.see(&words("list-empty-title")).await;
    walker.picture("list-empty").await;
    walker.tell("introduction");
}

/// What is written down of a new unit.
struct Unit<'a> {
    name: &'a str,
    place: &'a str,
    kind: Option<&'a str>,
    more: &'a [&'a str],
}

async fn new_unit(walker: &mut Walker<'_>, unit: Unit<'_>, is_first: bool) {
    walker.go(&words("list-new")).await;
    walker.write(&words("new-name"), unit.name).await;
    if !unit.place.is_empty() {
        walker.write(&words("new-place"), unit.place).await;
    }
    if let Some(kind) = unit.kind {
        walker.choose(&words("new-kind"), kind).await;
    }
    if is_first {
        walker.choose(&words("new-supply"), SUPPLY).await;
    }
    for id in unit.more {
        walker.tap(&access(id)).await;
    }
    walker.picture("new-unit").await;
    let form = walker.app.address().await;
    walker.tap(&words("new-start")).await;
    let mut address = walker.app.leaves(&form).await;
    while coldchassis_app_tests::selectors::question(&address).is_none() {
        address = walker.app.leaves(&address).await;
    }
}

/// Makes the report and saves it, from the verdict on.
async fn report(walker: &mut Walker<'_>, folder: &Path, name: &str) {
    walker.go(&screen_words("papers", "papers-see")).await;
    walker.picture("papers").await;
    walker.tap(&screen_words("papers", "papers-report-give")).await;
    walker.save(&folder.join(name)).await;
    walker.app.see("Made: ").await;
    walker.picture("papers-made").await;
}

const SHELF_RADIO: Known<'static> = &[
    ("plug", &["two_equal_blades"]),
    ("bare_metal", &["screws_or_shafts"]),
    ("back", &["fitted"]),
    ("terminals", &["none"]),
    ("kind", &["table_radio"]),
    ("cord", &["sound"]),
];

/// At a flea market: the cover stays on, two minutes.
async fn buyer(walker: &mut Walker<'_>, folder: &Path) {
    let unit = Unit { name: "Shelf radio", place: "", kind: None, more: &[] };
    new_unit(walker, unit, true).await;
    walker.tell("at the first question");
    walker.photograph(FILES, &held_upright()).await;
    walker.inspect(SHELF_RADIO).await;
    walker.picture("verdict").await;
    walker.tell("at the verdict");
    println!("asked: {:?}", walker.take_asked());
    report(walker, folder, "radio.pdf").await;
    walker.tell("with the report");
}

const BORROWED: Known<'static> = &[
    ("plug", &["two_equal_blades"]),
    ("bare_metal", &["screws_or_shafts", "instrument_jack"]),
    ("back", &["fitted"]),
    ("terminals", &["none"]),
    ("kind", &["instrument_amplifier"]),
    ("cord", &["sound"]),
    ("transformer", &["separate_traced"]),
    ("switch_leg", &["pin_a"]),
    ("line_capacitor", &["pin_b_leg"]),
    ("line_capacitor_class", &["ordinary"]),
    ("values.line_capacitor", &["0.047u"]),
    ("fuse", &["pin_a_leg"]),
    ("filter_capacitors", &["sound"]),
    ("readings.ohms_a_b_on", &["28"]),
    ("readings.ohms_a_b_off", &["OL"]),
    ("readings.ohms_a_part_on", &["OL"]),
    ("readings.ohms_b_part_on", &["OL"]),
    ("readings.ohms_a_part_off", &["OL"]),
    ("readings.ohms_b_part_off", &["OL"]),
];

/// A borrowed amplifier before the gig: the cover is off, a meter is there.
async fn technician(walker: &mut Walker<'_>, folder: &Path) {
    let more = &["cover_off", "meter"];
    let kind = Some("instrument_amplifier");
    new_unit(walker, Unit { name: "Combo amplifier", place: "Backstage", kind, more }, true).await;
    walker.tell("at the first question");
    walker.inspect(BORROWED).await;
    walker.picture("verdict").await;
    walker.tell("at the verdict");
    println!("asked: {:?}", walker.take_asked());
    let verdict = walker.app.address().await;
    for (file, id, name) in [
        ("circuit", "circuit-see", "circuit"),
        ("", "grid-see", "grid"),
        ("repair", "repairs-see", "repairs"),
        ("outlet", "outlet-see", "outlet"),
    ] {
        let link = if file.is_empty() { words(id) } else { screen_words(file, id) };
        walker.go_part(&link).await;
        walker.picture(name).await;
        walker.back().await;
        assert_eq!(walker.app.address().await, verdict);
    }
    walker.tell("having looked at circuit, grid, repairs and outlet");
    report(walker, folder, "amplifier.pdf").await;
    walker.tell("with the report");
}

/// What came in on one morning: name, kind, what is seen from outside.
const CAME_IN: [(&str, &str, Known<'static>); 4] = [
    ("Shelf radio, brown", "table_radio", SHELF_RADIO),
    (
        "Record player",
        "record_player",
        &[
            ("plug", &["two_equal_blades"]),
            ("bare_metal", &["screws_or_shafts"]),
            ("back", &["fitted"]),
            ("terminals", &["none"]),
            ("kind", &["record_player"]),
        ],
    ),
    (
        "Stage amplifier",
        "instrument_amplifier",
        &[
            ("plug", &["three_pins"]),
            ("bare_metal", &["screws_or_shafts", "instrument_jack"]),
            ("back", &["fitted"]),
            ("terminals", &["none"]),
            ("kind", &["instrument_amplifier"]),
        ],
    ),
    (
        "Picnic portable",
        "portable_radio",
        &[
            ("plug", &["battery_only"]),
            ("rating_plate", &["battery"]),
            ("kind", &["portable_radio"]),
        ],
    ),
];

/// A shop's morning: four units are looked at, sorted in the queue, tagged; the worst gets its report.
async fn shop(walker: &mut Walker<'_>, folder: &Path) {
    for (number, (name, kind, known)) in CAME_IN.into_iter().enumerate() {
        let unit = Unit { name, place: "Shelf A", kind: Some(kind), more: &[] };
        new_unit(walker, unit, number == 0).await;
        walker.inspect(known).await;
        walker.picture("verdict").await;
        println!("{name} asked: {:?}", walker.take_asked());
        walker.tell("units so far");
        walker.go(&words("units")).await;
    }
    walker.picture("list").await;
    walker.go_part(&screen_words("queue", "queue-title")).await;
    walker.picture("queue").await;
    walker.tap(&screen_words("queue", "queue-select")).await;
    for label in ["U-0001", "U-0002"] {
        walker.tap_part(label).await;
    }
    walker.picture("queue-selected").await;
    walker.go(&screen_words("queue", "queue-pick-go")).await;
    walker.picture("queue-go-on").await;
    walker.tap(&core_words("record", "work-do_not_power")).await;
    walker.picture("queue-set").await;
    walker.tap(&screen_words("queue", "queue-picked-tags-give")).await;
    walker.save(&folder.join("tags.pdf")).await;
    walker.picture("queue-tags").await;
    walker.tell("sorted and tagged");
    walker.back().await;
    walker.picture("queue-after").await;
    if walker.has(&screen_words("queue", "queue-pick-stop")).await {
        walker.tap(&screen_words("queue", "queue-pick-stop")).await;
    }
    walker.go_part("U-0001").await;
    walker.picture("queue-unit").await;
    let unit = walker.app.address().await;
    walker.tap(&screen_words("papers", "papers-see")).await;
    walker.app.leaves(&unit).await;
    walker.tap(&screen_words("papers", "papers-report-give")).await;
    walker.save(&folder.join("radio.pdf")).await;
    walker.picture("papers-made").await;
    walker.tell("with the report of the worst");
}
