//! A large shop's record, drawn from a seed: units with what was found of them, states, places, photos.
//!
//! Ten events a unit, and one for each photo. The words are invented; what is found is what the bank of
//! questions takes, so that every unit can be opened and judged.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use coldchassis_core::photo::{Digest, write_jpeg};
use coldchassis_core::store::{
    Change, Event, Leaving, PhotoRow, Standing, Store, StoreError, WorkState,
};
use image::RgbImage;
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};
use uuid::Uuid;

/// How large a shop is.
#[derive(Clone, Copy, Debug)]
pub struct Size {
    /// Units, each of ten events.
    pub units: u32,
    /// Photos, each of one event more.
    pub photos: u32,
}

impl Size {
    /// How many units stand to each that has a photo.
    fn every(self) -> u32 {
        (self.units / self.photos.max(1)).max(1)
    }

    /// The shop that figures are given for: 100,000 units, a million events, 5,000 photos.
    pub const LARGE: Self = Self { units: 100_000, photos: 5000 };
    /// A tenth of it.
    pub const TENTH: Self = Self { units: 10_000, photos: 500 };
}

/// When the first unit came in: 1 January 2020, UTC milliseconds. The rest follow minutes apart.
pub const FIRST_AT: i64 = 1_577_836_800_000;
/// The version that the shop's classes are said by.
pub const ENGINE: &str = "0.0.1";

/// What units are called: an adjective, a noun, a letter with a number.
pub const ADJECTIVES: [&str; 24] = [
    "brown", "walnut", "ivory", "dented", "upright", "little", "heavy", "cream", "green",
    "chipped", "tall", "round", "painted", "dusty", "silent", "humming", "repaired", "borrowed",
    "black", "veneered", "mottled", "crackled", "portable", "slanted",
];
/// The nouns.
pub const NOUNS: [&str; 24] = [
    "radio",
    "receiver",
    "gramophone",
    "amplifier",
    "combo",
    "console",
    "tuner",
    "cabinet",
    "set",
    "player",
    "changer",
    "preamplifier",
    "organ",
    "speaker",
    "megaphone",
    "cathedral",
    "tombstone",
    "chairside",
    "suitcase",
    "jukebox",
    "intercom",
    "recorder",
    "wireless",
    "phonograph",
];
const PLACES: [&str; 12] = [
    "Shelf A",
    "Shelf B",
    "Shelf C",
    "Shelf D",
    "Bench one",
    "Bench two",
    "Window",
    "Cellar",
    "Loading door",
    "Upper store",
    "Quarantine",
    "Counter",
];
const KINDS: [&str; 4] = ["table_radio", "portable_radio", "instrument_amplifier", "record_player"];
const PLUGS: [&str; 4] = ["two_equal_blades", "two_polarised_blades", "three_pins", "cant_tell"];
const CORDS: [&str; 3] = ["cloth_or_rubber", "sound", "cant_tell"];
/// Lists of tubes.
pub const TUBES: [&[&str]; 6] = [
    &["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"],
    &["12BE6", "12BA6", "12AT6", "50C5", "35W4"],
    &["6SN7GT", "6V6GT", "6V6GT", "5Y3GT"],
    &["12AX7", "12AX7", "6L6GC", "6L6GC", "GZ34"],
    &["UCH81", "UBF80", "UCL82", "UY85"],
    &["ECC83", "EL84", "EL84", "EZ81"],
];
const CLASSES: [&str; 5] = ["live", "leaky", "one_fault", "two_faults", "no_line"];
const OVERLAYS: [&str; 5] =
    ["aged_cord", "no_fuse", "prove_outlet", "filter_capacitors", "wrong_supply"];

/// Fills a record and a folder of photos.
///
/// # Panics
/// When the record refuses what it should take, or the folder cannot be written.
pub fn fill(store: &mut Store, photos: &Path, size: Size, seed: u64) {
    let digests = write_photos(photos, size.photos);
    let every = size.every();
    let mut draw = ChaCha8Rng::seed_from_u64(seed);
    let units = (0..size.units).flat_map(|number| {
        let photo = (number % every == 0).then(|| digests.get((number / every) as usize)).flatten();
        unit(number, photo, &mut draw)
    });
    let events = units.map(Ok::<Event, StoreError>);
    let taken =
        store.union(events, &BTreeSet::new(), |_| Ok(())).expect("a shop's record is in order");
    assert_eq!(taken.units.len(), size.units as usize);
    stand(store, seed);
}

/// The first units, as many as are wanted.
pub fn chosen(units: u32) -> Leaving {
    Leaving::Units((0..units).map(|number| id(number, 0)).collect())
}

/// The first units that have a photo, as many as are wanted.
pub fn photographed(size: Size, units: u32) -> Leaving {
    let numbers = (0..units.min(size.photos)).map(|number| number * size.every());
    Leaving::Units(numbers.map(|number| id(number, 0)).collect())
}

fn created_at(number: u32) -> i64 {
    FIRST_AT + i64::from(number) * 120_000
}

/// An id that nothing else has, made at the unit's time.
fn id(number: u32, which: u8) -> Uuid {
    let at = u64::try_from(created_at(number)).expect("after 1970");
    let mut rest = [which; 10];
    rest[5..9].copy_from_slice(&number.to_be_bytes());
    uuid::Builder::from_unix_timestamp_millis(at, &rest).into_uuid()
}

fn unit(number: u32, photo: Option<&Digest>, draw: &mut ChaCha8Rng) -> Vec<Event> {
    let mut pick = |list: &[&'static str]| *list.choose(draw).expect("a list");
    let name = format!(
        "{} {} {}{}",
        pick(&ADJECTIVES),
        pick(&NOUNS),
        char::from(b'A' + u8::try_from(number % 26).expect("a letter")),
        number / 7
    );
    let mut changes = vec![
        Change::UnitCreated { number: number + 1 },
        Change::UnitName(name),
        Change::UnitPlace(pick(&PLACES).to_owned()),
        Change::UnitKind(pick(&KINDS).to_owned()),
        Change::UnitState(pick(WorkState::IDS).to_owned()),
        Change::UnitSupply(json!({"volts": 120.0, "hertz": 60.0})),
        Change::InspectionStarted,
        found("answers.plug", json!(pick(&PLUGS))),
        found("answers.cord", json!(pick(&CORDS))),
        found("tubes", json!(TUBES.choose(draw).expect("a list"))),
    ];
    changes.extend(photo.map(|digest| added(number, digest)));
    let event = |(place, change): (usize, Change)| {
        let which = u8::try_from(place + 10).expect("few events");
        event(number, which, &change)
    };
    changes.into_iter().enumerate().map(event).collect()
}

fn found(key: &str, value: Value) -> Change {
    Change::Finding { key: key.to_owned(), value }
}

fn added(number: u32, digest: &Digest) -> Change {
    let sha256 = digest.to_string();
    let row = PhotoRow { finding: None, sha256, width: 2048, height: 1536, hints: Vec::new() };
    Change::PhotoAdded { photo: id(number, 2), row: row.value() }
}

fn event(number: u32, which: u8, change: &Change) -> Event {
    let subject = change.subject();
    let of_unit = subject.starts_with("unit.");
    Event {
        id: id(number, which),
        device: "shop".to_owned(),
        author: "Intake".to_owned(),
        at: created_at(number) + i64::from(which),
        unit: id(number, 0),
        inspection: (!of_unit).then(|| id(number, 1)),
        subject,
        change: change.value(),
        supersedes: None,
        intent: id(number, 3),
        undoes: None,
        restores: None,
        demo: false,
    }
}

/// Gives every unit a class, as the engine would have. The bench works out the true ones.
fn stand(store: &mut Store, seed: u64) {
    let mut draw = ChaCha8Rng::seed_from_u64(seed ^ 1);
    loop {
        let stale = store.stale(ENGINE, 2000).expect("the record");
        if stale.is_empty() {
            return;
        }
        let standing = |stale: coldchassis_core::store::Stale| {
            let rank = draw.random_range(1..=5_u8);
            Standing {
                unit: stale.unit,
                inspection: stale.inspection,
                engine_version: ENGINE.to_owned(),
                place: store.place_of(stale.unit).expect("the record"),
                supply: Some(json!({"volts": 120.0, "hertz": 60.0})),
                class: Some(CLASSES[usize::from(rank - 1)].to_owned()),
                rank,
                basis: Some(["shown", "not_ruled_out"][usize::from(rank % 2)].to_owned()),
                overlays: OVERLAYS
                    .iter()
                    .filter(|_| draw.random_ratio(1, 4))
                    .map(|id| (*id).to_owned())
                    .collect(),
                proven: true,
            }
        };
        let standings: Vec<Standing> = stale.into_iter().map(standing).collect();
        store.keep_standings(&standings).expect("the record");
    }
}

/// Writes photos as they are kept: some 300 kB each, and no two alike.
fn write_photos(folder: &Path, photos: u32) -> Vec<Digest> {
    fs::create_dir_all(folder).expect("a folder");
    let (full, small) = (noisy(2048, 1536), noisy(320, 240));
    let one = |number: u32| {
        // The shape of a pixel in the 18 bytes of JFIF: 0 and 0 mean nothing, and any pair is read.
        let mut jpeg = full.clone();
        jpeg[14..18].copy_from_slice(&(number + 0x0001_0001).to_be_bytes());
        let digest = Digest::of(&jpeg);
        fs::write(folder.join(format!("{digest}.jpg")), jpeg).expect("it can be written");
        fs::write(folder.join(format!("{digest}.thumb.jpg")), &small).expect("it can be written");
        digest
    };
    (0..photos).map(one).collect()
}

/// A picture with as much in it as a photo of a chassis.
fn noisy(width: u32, height: u32) -> Vec<u8> {
    let mut draw = ChaCha8Rng::seed_from_u64(5);
    let picture = RgbImage::from_fn(width, height, |x, y| {
        let base = u8::try_from((x / 9 + y / 7) % 200).expect("below 200");
        let grain = draw.random_range(0..14_u8);
        image::Rgb([base + grain, base / 2 + grain, 40 + grain])
    });
    write_jpeg(&picture).expect("a picture")
}
