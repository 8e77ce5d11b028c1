//! Looks into the file of the record past the program.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use coldchassis_core::store::{SCHEMA_VERSION, Store};
use coldchassis_tests::killing::{Home, Stage};
use rusqlite::Connection;
use rusqlite::types::Value;

use super::ledger::Ledger;
use super::tally::Tally;

/// Makes a record one of the first form, with what it holds: what the migrations did is taken back.
const BACK_TO_THE_FIRST: &str = "ALTER TABLE photo DROP COLUMN hints;
    ALTER TABLE photo DROP COLUMN before; ALTER TABLE photo DROP COLUMN marks;
    DROP INDEX unit_by_place; DROP TABLE unit_text; DROP TABLE queue; DROP TABLE standing;
    ALTER TABLE unit DROP COLUMN state_at; ALTER TABLE unit DROP COLUMN state_by;
    PRAGMA user_version = 1;";

/// What is worked out from the log. Two units of one moment may stand either way round in the queue, so
/// its order is left out.
const PROJECTIONS: [&str; 5] = [
    "SELECT * FROM unit",
    "SELECT * FROM inspection",
    "SELECT * FROM finding",
    "SELECT * FROM photo",
    "SELECT queue.unit, state, class, basis, overlays, inspection, engine_version, demo, words, facets
     FROM queue JOIN unit_text ON unit_text.rowid = queue.place",
];

/// What stands in a record.
pub struct Found {
    /// Its events, each with its unit.
    pub events: BTreeMap<String, String>,
    /// Every id that an event has or names.
    pub named: BTreeSet<String>,
    /// The photos that are shown.
    pub shown: BTreeSet<String>,
    /// The photos that an event names: an undo can bring them back.
    pub kept: BTreeSet<String>,
}

/// Reads a record, or a copy of one.
pub fn read(record: &Path) -> Found {
    let conn = Connection::open(record).expect("a file");
    let mut events = BTreeMap::new();
    let mut named = BTreeSet::new();
    let sql = "SELECT id, unit, inspection, intent, subject FROM event";
    let mut statement = conn.prepare(sql).expect("a log");
    let mut rows = statement.query([]).expect("a log");
    while let Some(row) = rows.next().expect("a row") {
        let text = |at: usize| row.get::<_, Option<String>>(at).expect("text").unwrap_or_default();
        let photo = text(4);
        let photo = photo.strip_prefix("photo.").and_then(|rest| rest.split_once('.'));
        named.extend(photo.map(|(id, _)| id.to_owned()));
        named.extend((0..4).map(text));
        events.insert(text(0), text(1));
    }
    let list = |sql: &str| {
        let mut statement = conn.prepare(sql).expect("a table");
        let rows = statement.query_map([], |row| row.get::<_, String>(0)).expect("a table");
        rows.collect::<Result<BTreeSet<_>, _>>().expect("text")
    };
    let shown = list("SELECT sha256 FROM photo");
    let kept = list(
        "SELECT json_extract(change, '$.sha256') FROM event
         WHERE subject GLOB 'photo.*.added' AND change IS NOT NULL",
    );
    Found { events, named, shown, kept }
}

/// Every page, index, rule and reference of the file holds.
pub fn check_sound(record: &Path) {
    let conn = Connection::open(record).expect("a file");
    let said: String =
        conn.query_row("PRAGMA integrity_check", [], |row| row.get(0)).expect("an answer");
    assert_eq!(said, "ok", "{}", record.display());
    let mut statement = conn.prepare("PRAGMA foreign_key_check").expect("a question");
    assert!(!statement.exists([]).expect("an answer"), "a row without what it belongs to");
}

/// What is shown is what the log says, worked out anew.
pub fn check_projections(record: &Path, tally: &mut Tally) {
    let before = projections(record);
    let mut store = Store::open(record).expect("a record");
    store.rebuild_projections().expect("the log");
    store.close().expect("it is closed");
    let after = projections(record);
    assert!(!before.is_empty());
    for (was, is) in before.iter().zip(&after) {
        assert_eq!(was, is, "a row that the log does not say");
    }
    assert_eq!(before.len(), after.len());
    tally.count("rows that are shown held against the log", after.len());
}

fn projections(record: &Path) -> Vec<String> {
    let conn = Connection::open(record).expect("a file");
    let mut all = Vec::new();
    for sql in PROJECTIONS {
        let mut statement = conn.prepare(sql).expect("a table");
        let columns = statement.column_count();
        let rows = statement.query_map([], |row| {
            let cells = (0..columns).map(|at| row.get::<_, Value>(at));
            Ok(format!("{sql}: {:?}", cells.collect::<Result<Vec<_>, _>>()?))
        });
        let mut rows: Vec<_> = rows.expect("a table").map(|row| row.expect("a row")).collect();
        rows.sort();
        all.extend(rows);
    }
    all
}

/// Makes a closed record one of the first form.
pub fn make_old(record: &Path) {
    let conn = Connection::open(record).expect("a file");
    conn.execute_batch(BACK_TO_THE_FIRST).expect("a record of this form");
    conn.close().expect("it is closed");
}

/// After a kill in a migration the file, as SQLite opens it, is of the old or of the new form, with every event.
pub fn check_either_form(home: &Home, ledger: &Ledger<'_>, tally: &mut Tally) {
    let folder = tempfile::tempdir().expect("a folder");
    let copy = folder.path().join("record.coldchassis");
    for side in ["", "-journal", "-wal"] {
        let from = home.0.join(format!("record.coldchassis{side}"));
        if from.exists() {
            fs::copy(from, folder.path().join(format!("record.coldchassis{side}"))).expect("room");
        }
    }
    let header = fs::read(&copy).expect("a record").get(60..64).map(<[u8]>::to_vec);
    let conn = Connection::open(&copy).expect("a file");
    let version = conn.query_row("PRAGMA user_version", [], |row| row.get::<_, u32>(0));
    let version = version.expect("a version");
    assert!([1, SCHEMA_VERSION].contains(&version), "half way: {version}");
    if header.as_deref() != Some(version.to_be_bytes().as_slice()) {
        tally.count("migrations ended while their pages went into the file", 1);
    }
    conn.close().expect("it is closed");
    let events = read(&copy).events;
    assert!(ledger.before.keys().all(|id| events.contains_key(id)), "events are lost");
    if ledger.is_under(Stage::Migrate) {
        let row = tally.row(Stage::Migrate);
        *(if version == 1 { &mut row.absent } else { &mut row.whole }) += 1;
    }
}
