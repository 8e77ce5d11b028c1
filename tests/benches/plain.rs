//! What the record takes beside plain SQLite: the same statements over a bare connection to a file with the same in
//! it, by turns in the same run. What is more is what the store makes of it: who wins, what changed, typed rows.
//!
//! Prints; judges nothing. `COLDCHASSIS_SHOP` takes a shop of another size.

use std::fs;
use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

use coldchassis_core::store::{
    Action, Change, Cursor, Leaving, QueueFilter, QueueOrder, Stamp, Store,
};
use coldchassis_figures::{At, Row, Unit};
use coldchassis_tests::seeds;
use coldchassis_tests::shop::{self, ADJECTIVES, NOUNS, Size, TUBES};
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rusqlite::{Connection, TransactionBehavior, params};
use serde_json::json;
use uuid::Uuid;

const BENCH: &str = "The record beside plain SQLite";
/// Units of the shop.
const UNITS: u64 = 10_000;
/// Rows of a page.
const PAGE: u32 = 50;
/// Searches and pages that are timed.
const ASKED: usize = 1000;
/// Events that are added.
const ADDED: u32 = 300;
/// How long a write may wait for the disk.
const BUSY: Duration = Duration::from_secs(5);

/// The statements of the store.
macro_rules! sql {
    ($name:literal) => {
        include_str!(concat!("../../src-tauri/core/src/store/sql/", $name, ".sql"))
    };
}

fn main() {
    let units = u32::try_from(seeds::asked("COLDCHASSIS_SHOP", UNITS)).expect("a number of units");
    let folder = tempfile::tempdir().expect("a temporary folder");
    let [record, plain] =
        ["record.coldchassis", "plain.sqlite"].map(|name| folder.path().join(name));
    let mut store = Store::open(&record).expect("a record");
    shop::fill(&mut store, folder.path(), Size { units, photos: 0 }, 9);
    store.close().expect("it closes");
    fs::copy(&record, &plain).expect("room for a copy");
    let mut both = Both {
        store: Store::open(&record).expect("the record"),
        plain: connected(&plain),
        of: format!("{units} units, SQLite {}", rusqlite::version()),
    };
    both.search();
    both.page();
    both.append(units);
    drop(both);
    let [ours, theirs] = [&record, &plain].map(|file| events(file));
    assert_eq!(ours, theirs, "not the same was written");
}

/// As sure of the disk as the store is; all else as SQLite comes.
fn connected(file: &Path) -> Connection {
    let plain = Connection::open(file).expect("the copy");
    plain.busy_timeout(BUSY).expect("a setting");
    plain.pragma_update(None, "journal_mode", "WAL").expect("a setting");
    plain.pragma_update(None, "synchronous", "FULL").expect("a setting");
    plain.set_prepared_statement_cache_capacity(64);
    plain
}

fn events(file: &Path) -> u32 {
    let count = |row: &rusqlite::Row<'_>| row.get(0);
    connected(file).query_row("SELECT count(*) FROM event", [], count).expect("a count")
}

fn timed<T>(run: impl FnOnce() -> T) -> (Duration, T) {
    let start = Instant::now();
    let done = run();
    (start.elapsed(), done)
}

struct Both {
    store: Store,
    plain: Connection,
    /// What the figures are of.
    of: String,
}

impl Both {
    fn tell(&self, what: &str, ours: &[Duration], theirs: &[Duration]) {
        let theirs = Row::times(BENCH, what, Unit::Millis, theirs);
        let median = theirs.at(At::Median).expect("some were timed");
        let row = Row::times(BENCH, what, Unit::Millis, ours);
        row.beside("the same statements alone", median).note(self.of.as_str()).tell();
    }

    /// The first page of what has a word that begins so.
    fn search(&self) {
        let mut draw = ChaCha8Rng::seed_from_u64(3);
        let words: Vec<&str> = ADJECTIVES.into_iter().chain(NOUNS).chain(TUBES.concat()).collect();
        let (mut ours, mut theirs) = (Vec::new(), Vec::new());
        for _ in 0..ASKED {
            let word = words.choose(&mut draw).expect("words");
            let length = draw.random_range(2..=word.len());
            let text: String = word.chars().take(length).collect();
            let matching = format!("words : \"{text}\" *");
            let filter = QueueFilter { text, ..QueueFilter::default() };
            let (took, page) = timed(|| self.store.queue(&filter, QueueOrder::Hazard, None, PAGE));
            ours.push(took);
            let (took, rows) = timed(|| self.plain_page(Some(&matching), None));
            theirs.push(took);
            let found: Vec<Uuid> =
                page.expect("a page").rows.iter().map(|row| row.unit.id).collect();
            assert_eq!(found, rows, "{filter:?}");
        }
        self.tell("search, the first page", &ours, &theirs);
    }

    /// One page after the other, from the first to the last and once more.
    fn page(&self) {
        let (mut ours, mut theirs) = (Vec::new(), Vec::new());
        let mut after: Option<Cursor> = None;
        let filter = QueueFilter::default();
        for _ in 0..ASKED {
            let (took, page) = timed(|| self.store.queue(&filter, QueueOrder::Hazard, after, PAGE));
            ours.push(took);
            let (took, rows) = timed(|| self.plain_page(None, after));
            theirs.push(took);
            let page = page.expect("a page");
            let found: Vec<Uuid> = page.rows.iter().map(|row| row.unit.id).collect();
            assert_eq!(found, rows, "after {after:?}");
            after = page.next;
        }
        self.tell("a page of the queue", &ours, &theirs);
    }

    /// The units of a page in the order of the queue, each read as its columns are.
    fn plain_page(&self, matching: Option<&str>, after: Option<Cursor>) -> Vec<Uuid> {
        // The rank of a class stands in the three bits above 48 of a place.
        let spans = (0..8_i64).map(|rank| (rank << 48, ((rank + 1) << 48) - 1));
        let wanted = i64::from(PAGE) + 1;
        let mut places: Vec<i64> = Vec::new();
        for (first, last) in spans {
            let from = after.map_or(first, |Cursor(place)| first.max(place + 1));
            let left = wanted - places.len() as i64;
            if from > last || left <= 0 {
                continue;
            }
            places.extend(match matching {
                Some(words) => {
                    let asked = params![from, last, left, words];
                    self.places(sql!("queue_page_matching"), asked)
                }
                None => self.places(sql!("queue_page"), params![from, last, left]),
            });
        }
        places.truncate(PAGE as usize);
        let mut statement = self.plain.prepare_cached(sql!("queue_row")).expect("a statement");
        let unit = |place: i64| {
            let read = |row: &rusqlite::Row<'_>| {
                let columns = row.as_ref().column_count();
                for column in 0..columns {
                    black_box(row.get_ref(column)?);
                }
                row.get::<_, String>("id")
            };
            let id = statement.query_row([place], read).expect("a row");
            Uuid::parse_str(&id).expect("an id")
        };
        places.into_iter().map(unit).collect()
    }

    fn places(&self, sql: &str, asked: &[&dyn rusqlite::ToSql]) -> Vec<i64> {
        let mut statement = self.plain.prepare_cached(sql).expect("a statement");
        let rows = statement.query_map(asked, |row| row.get(0)).expect("places");
        rows.map(|place| place.expect("a place")).collect()
    }

    /// An answer, on the disk when it returns, of one unit after the other.
    fn append(&mut self, units: u32) {
        let Leaving::Units(chosen) = shop::chosen(units.min(ADDED)) else { return };
        let change = Change::Finding { key: "answers.back".to_owned(), value: json!("fitted") };
        let (mut ours, mut theirs) = (Vec::new(), Vec::new());
        for unit in chosen {
            let inspections = self.store.inspections(unit).expect("the record");
            let inspection = inspections.first().map(|inspection| inspection.id);
            let stamp = Stamp {
                at: shop::FIRST_AT * 2,
                device: "bench".to_owned(),
                author: "Intake".to_owned(),
                intent: Uuid::now_v7(),
            };
            let action = Action { unit, inspection, changes: vec![change.clone()], demo: false };
            let (took, changed) = timed(|| self.store.append(&stamp, &action, &mut Uuid::now_v7));
            ours.push(took);
            assert_eq!(changed.expect("it is taken").events.len(), 1);
            let (took, ()) = timed(|| insert(&mut self.plain, &stamp, &action, &change));
            theirs.push(took);
        }
        self.tell("an answer, on the disk", &ours, &theirs);
    }
}

fn insert(plain: &mut Connection, stamp: &Stamp, action: &Action, change: &Change) {
    let text = |id: Uuid| id.hyphenated().to_string();
    let behavior = TransactionBehavior::Immediate;
    let transaction = plain.transaction_with_behavior(behavior).expect("nobody else writes");
    let values = params![
        text(Uuid::now_v7()),
        stamp.device,
        stamp.author,
        stamp.at,
        text(action.unit),
        action.inspection.map(text),
        change.subject(),
        change.value().map(|value| value.to_string()),
        None::<String>,
        text(stamp.intent),
        None::<String>,
        None::<String>,
        action.demo,
    ];
    let mut statement = transaction.prepare_cached(sql!("event_insert")).expect("a statement");
    assert_eq!(statement.execute(values).expect("it is taken"), 1);
    drop(statement);
    transaction.commit().expect("the disk");
}
