//! How quick a large shop's record is: 100,000 units, a million events, 5,000 photos, drawn from a seed.
//!
//! Prints each figure beside its bound; judges nothing. `COLDCHASSIS_SHOP=10000` takes a smaller one, a photo to each 20 units.

use std::fs::{self, File};
use std::hint::black_box;
use std::io::Write;
use std::path::Path;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;
use std::time::{Duration, Instant};

use coldchassis_core::exchange::{export, import};
use coldchassis_core::photo::Files;
use coldchassis_core::store::{
    Cursor, Leaving, QueueFilter, QueueOrder, Snapshots, Store, WorkState,
};
use coldchassis_core::workbench::{QueueAsk, Surroundings, Turns, Workbench};
use coldchassis_figures::{At, Row, Unit};
use coldchassis_tests::shop::{self, ADJECTIVES, NOUNS, Size, TUBES};
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use uuid::Uuid;

const BENCH: &str = "The record";
/// What issue 9 asks for of a large shop, by how the name begins: times in ms at most, MB/s at least.
const BOUNDS: [(&str, At, f64); 4] = [
    ("open to list", At::Most, 300.0),
    ("search", At::P99, 20.0),
    ("a page of the queue", At::P99, 10.0),
    ("counts", At::P99, 30.0),
];
const SPEEDS: [(&str, f64); 2] = [("export of 1000 units", 100.0), ("import of it", 100.0)];
/// Rows of a page.
const PAGE: u32 = 50;
/// Searches and pages that are timed.
const ASKED: usize = 2000;
/// How long a person looks at what was answered before the next command, while verdicts are worked out.
const LOOKS: Duration = Duration::from_millis(10);
/// Units that are carried to another device.
const CARRIED: u32 = 1000;

fn main() {
    let size = match std::env::var("COLDCHASSIS_SHOP") {
        Ok(units) => {
            let units = units.parse().expect("a number of units");
            Size { units, photos: units / 20 }
        }
        Err(_) => Size::LARGE,
    };
    let folder = tempfile::tempdir().expect("a temporary folder");
    let record = folder.path().join("record.coldchassis");
    let photos = folder.path().join("photos");
    let (took, ()) = timed(|| {
        let mut store = Store::open(&record).expect("a record");
        shop::fill(&mut store, &photos, size, 9);
        store.close().expect("it closes");
    });
    let bytes = fs::metadata(&record).expect("the record").len();
    println!("{size:?}: made in {:.0} s, {} MB", took.as_secs_f64(), bytes / 1_000_000);
    opening(&record);
    let store = Store::open(&record).expect("the record");
    searching(&store);
    paging(&store);
    beginning(&store);
    counting(&store);
    looking_after(&store, &record);
    drop(store);
    judging(&record, &photos);
    carrying(&record, &photos, folder.path(), size);
}

fn timed<T>(run: impl FnOnce() -> T) -> (Duration, T) {
    let start = Instant::now();
    let done = run();
    (start.elapsed(), done)
}

/// Tells how long something took.
fn print(what: &str, times: Vec<Duration>) {
    let row = Row::times(BENCH, what, Unit::Millis, &times);
    let bound = BOUNDS.iter().find(|(name, ..)| what.starts_with(name));
    bound.map_or(row.clone(), |(_, at, most)| row.at_most(*at, *most, 9)).tell();
}

/// From a closed file to the first page and the counts.
fn opening(record: &Path) {
    let times = (0..9).map(|_| {
        let open = || {
            let store = Store::open(record).expect("the record");
            let filter = QueueFilter::default();
            let page = store.queue(&filter, QueueOrder::Hazard, None, PAGE).expect("a page");
            black_box((page, store.queue_counts().expect("counts")));
            store
        };
        timed(open).0
    });
    print("open to list, the file in the system's memory", times.collect());
}

/// Beginnings of words that are there, of two letters and more, one word or two, some with filters.
fn query(draw: &mut ChaCha8Rng) -> QueueFilter {
    let words: Vec<&str> = ADJECTIVES
        .into_iter()
        .chain(NOUNS)
        .chain(TUBES.iter().flat_map(|list| list.iter().copied()))
        .chain(["table", "cloth", "blades", "shelf", "bench", "instrument", "A12", "Q1"])
        .collect();
    let mut begin = || {
        let word = words.choose(draw).expect("words");
        let most = word.chars().count().max(3);
        let length = draw.random_range(2..most);
        word.chars().take(length).collect::<String>()
    };
    let mut text = begin();
    if draw.random_ratio(1, 3) {
        let second = words.choose(draw).expect("words");
        text = format!("{text} {}", second.chars().take(3).collect::<String>());
    }
    let mut filter = QueueFilter { text, ..QueueFilter::default() };
    if draw.random_ratio(1, 3) {
        filter.states = vec![*WorkState::ALL.choose(draw).expect("states")];
    }
    if draw.random_ratio(1, 4) {
        filter.ranks = vec![draw.random_range(1..=5)];
    }
    filter
}

fn searching(store: &Store) {
    let mut draw = ChaCha8Rng::seed_from_u64(3);
    let filters: Vec<QueueFilter> = (0..ASKED).map(|_| query(&mut draw)).collect();
    for (order, what) in [(QueueOrder::Hazard, "by hazard"), (QueueOrder::Newest, "newest first")] {
        let one = |filter: &QueueFilter| {
            timed(|| black_box(store.queue(filter, order, None, PAGE).expect("a page"))).0
        };
        print(&format!("search {what}, first {PAGE}"), filters.iter().map(one).collect());
    }
}

/// Pages anywhere, under filters without text.
fn paging(store: &Store) {
    let mut draw = ChaCha8Rng::seed_from_u64(4);
    let places = ["shelf a", "cellar", "counter", "nowhere"];
    let mut after: Option<Cursor> = None;
    let mut times = Vec::new();
    for _ in 0..ASKED {
        let mut filter = QueueFilter::default();
        match draw.random_range(0..6) {
            0 => filter.states = vec![*WorkState::ALL.choose(&mut draw).expect("states")],
            1 => filter.places = vec![(*places.choose(&mut draw).expect("places")).to_owned()],
            2 => filter.overlays = vec!["aged_cord".to_owned(), "no_fuse".to_owned()],
            3 => {
                filter.bases = vec!["shown".to_owned()];
                filter.ranks = vec![1, 2];
                filter.states = vec![WorkState::InRepair, WorkState::ProofOpen];
            }
            4 => {
                let from = shop::FIRST_AT + draw.random_range(0..9_000_000_000);
                filter.created = Some((from, from + 86_400_000));
            }
            _ => {}
        }
        let order = if draw.random_ratio(1, 2) { QueueOrder::Hazard } else { QueueOrder::Newest };
        let (took, page) = timed(|| store.queue(&filter, order, after, PAGE).expect("a page"));
        times.push(took);
        after = page.next;
    }
    print("a page of the queue", times);
}

/// The first page as the queue opens with it: all that is in the shop.
fn beginning(store: &Store) {
    for (order, what) in [(QueueOrder::Hazard, "by hazard"), (QueueOrder::Newest, "newest first")] {
        let one = |_| {
            let filter = QueueFilter { states: in_the_shop(), ..QueueFilter::default() };
            timed(|| black_box(store.queue(&filter, order, None, PAGE).expect("a page"))).0
        };
        print(&format!("the queue as it opens, {what}"), (0..200).map(one).collect());
    }
}

fn in_the_shop() -> Vec<WorkState> {
    let all = WorkState::ALL.iter().copied();
    all.filter(|state| *state != WorkState::HandedBack).collect()
}

fn counting(store: &Store) {
    let one = |_| timed(|| black_box(store.queue_counts().expect("counts"))).0;
    print("counts", (0..200).map(one).collect());
}

fn looking_after(store: &Store, record: &Path) {
    let (took, made) = timed(|| store.take_snapshot(&Snapshots::of(record)).expect("room"));
    println!(
        "  snapshot, checked in full: {:.1} s, {} MB",
        took.as_secs_f64(),
        made.bytes / 1_000_000
    );
    let (took, ()) = timed(|| store.check_in_full().expect("a sound file"));
    println!("  full look at the file: {:.1} s", took.as_secs_f64());
}

/// Works all verdicts out anew as the app does beside its window, with a command every few milliseconds, and
/// what such a command has to wait for: at most as long as the workbench is held.
fn judging(record: &Path, photos: &Path) {
    let around = Surroundings {
        clock: Box::new(|| shop::FIRST_AT),
        ids: Box::new(Uuid::now_v7),
        device: "bench".to_owned(),
        photos: Some(photos.to_owned()),
        author: String::new(),
        locale: "en".to_owned(),
    };
    let bench = Turns::of(Workbench::open(record, around).expect("the record"));
    let is_over = AtomicBool::new(false);
    let (mut held, mut units) = (Vec::new(), 0);
    let start = Instant::now();
    let (waits, took) = thread::scope(|scope| {
        let commands = scope.spawn(|| commands(&bench, &is_over));
        let keeper = bench.later().keeper().expect("the record");
        let mut keeper = keeper.expect("a record in a file");
        loop {
            let judged = keeper.judge().expect("the record");
            if judged.is_empty() {
                break;
            }
            units += judged.len();
            let mut bench = bench.later();
            held.push(timed(|| bench.keep_judged(&judged).expect("the record")).0);
        }
        let took = start.elapsed().as_secs_f64();
        is_over.store(true, Ordering::SeqCst);
        (commands.join().expect("commands"), took)
    });
    let each = took * 1e3 / units.max(1) as f64;
    Row::one(BENCH, format!("a verdict anew, of {units}"), Unit::Millis, each).tell();
    print("  the workbench held meanwhile", held);
    print("  what a command waits for meanwhile", waits);
}

/// Asks for pages until it is over, and tells how long each command waited for its turn.
fn commands(bench: &Turns<Workbench>, is_over: &AtomicBool) -> Vec<Duration> {
    let states = in_the_shop().into_iter().map(|state| state.id().to_owned()).collect();
    let ask = QueueAsk { states, ..QueueAsk::default() };
    let mut waits = Vec::new();
    while !is_over.load(Ordering::SeqCst) {
        let (waited, bench) = timed(|| bench.now());
        waits.push(waited);
        black_box(bench.queue(&ask).expect("a page"));
        drop(bench);
        thread::sleep(LOOKS);
    }
    waits
}

fn carrying(record: &Path, photos: &Path, folder: &Path, size: Size) {
    let store = Store::open(record).expect("the record");
    let files = Files::of(photos.to_owned());
    let which = shop::photographed(size, CARRIED);
    let out = folder.join("out.bundle");
    let mut speeds = Vec::new();
    for _ in 0..3 {
        let (took, made) =
            timed(|| export(&store, Some(&files), &which, shop::FIRST_AT * 2, &out).expect("room"));
        speeds.push((took, made));
    }
    let (took, made) = speeds.into_iter().min_by_key(|(took, _)| *took).expect("three");
    print_speed(
        &format!("export of {} units, {} photos", made.units, made.photos),
        made.bytes,
        took,
    );
    let disk = |name: &str| {
        let bytes = fs::read(&out).expect("the bundle");
        timed(|| {
            let mut file = File::create(folder.join(name)).expect("a file");
            file.write_all(&bytes).expect("room");
            file.sync_all().expect("the disk");
        })
        .0
    };
    print_speed("the disk's own: the same bytes as one file", made.bytes, disk("plain"));
    let mut best: Option<Duration> = None;
    for time in 0..3 {
        let files = Files::of(folder.join(format!("photos-{time}")));
        let path = folder.join(format!("other-{time}.coldchassis"));
        let mut other = Store::open(&path).expect("a record");
        let (took, taken) =
            timed(|| import(&mut other, &files, &out, shop::FIRST_AT * 2).expect("a bundle"));
        assert_eq!(taken.new, made.events);
        best = Some(best.map_or(took, |best| best.min(took)));
    }
    print_speed("import of it into an empty record", made.bytes, best.expect("three"));
    let (took, made) = timed(|| {
        export(&store, Some(&files), &Leaving::All, shop::FIRST_AT * 2, &folder.join("all.bundle"))
            .expect("room")
    });
    print_speed(&format!("export of all, {} events", made.events), made.bytes, took);
}

fn print_speed(what: &str, bytes: u64, took: Duration) {
    let megabytes = bytes as f64 / 1e6;
    let speed = megabytes / took.as_secs_f64();
    let row = Row::one(BENCH, what, Unit::MegabytesPerSecond, speed);
    let row = row.note(format!("{megabytes:.0} MB"));
    let bound = SPEEDS.iter().find(|(name, _)| what.starts_with(name));
    bound.map_or(row.clone(), |(_, least)| row.at_least(At::Median, *least, 9)).tell();
}
