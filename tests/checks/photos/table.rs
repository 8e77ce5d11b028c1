//! A workbench with a folder for photos, and a look at both past it.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, AtomicI64, Ordering};
use std::sync::{Arc, Mutex};

use coldchassis_core::workbench::{InspectionView, NewUnit, Surroundings, Workbench};
use serde_json::json;
use tempfile::TempDir;
use uuid::Uuid;

/// A record in a folder of its own, with photos beside it.
pub struct Table {
    folder: TempDir,
    pub bench: Workbench,
    pub clock: Arc<AtomicI64>,
    /// How many photo files there were each time an id was drawn.
    pub files_at_ids: Arc<Mutex<Vec<usize>>>,
    /// From now on every third id, the event's, is one that is taken: the record refuses the row.
    pub refuses_rows: Arc<AtomicBool>,
}

impl Table {
    pub fn new() -> Self {
        Self::with(true)
    }

    /// Without a folder for photos.
    pub fn without_photos() -> Self {
        Self::with(false)
    }

    fn with(has_photos: bool) -> Self {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let photos = folder.path().join("photos");
        let clock = Arc::new(AtomicI64::new(1_700_000_000_000));
        let files_at_ids = Arc::new(Mutex::new(Vec::new()));
        let refuses_rows = Arc::new(AtomicBool::new(false));
        let (now, seen, looked) = (clock.clone(), files_at_ids.clone(), photos.clone());
        let refuses = refuses_rows.clone();
        let (mut drawn, mut last_taken, mut since) = (0, 0, 0);
        let around = Surroundings {
            clock: Box::new(move || now.fetch_add(1, Ordering::Relaxed)),
            ids: Box::new(move || {
                let count = std::fs::read_dir(&looked).map_or(0, |entries| entries.count());
                seen.lock().expect("one thread").push(count);
                drawn += 1;
                if !refuses.load(Ordering::Relaxed) {
                    last_taken = drawn;
                    return id(drawn);
                }
                since += 1;
                id(if since % 3 == 0 { last_taken } else { drawn })
            }),
            device: "bench".to_owned(),
            photos: has_photos.then_some(photos),
            author: "Odo Trinket".to_owned(),
            locale: "en".to_owned(),
        };
        let bench = Workbench::open(&folder.path().join("record.db"), around).expect("it opens");
        Self { folder, bench, clock, files_at_ids, refuses_rows }
    }

    pub fn unit(&mut self) -> InspectionView {
        let supply = json!({"volts": 120, "hertz": 60});
        let access = vec!["outside".to_owned()];
        let new = NewUnit { supply, access, ..NewUnit::default() };
        self.bench.create_unit(&new).expect("a unit")
    }

    pub fn photos(&self) -> PathBuf {
        self.folder.path().join("photos")
    }

    /// Name and contents of every file among the photos.
    pub fn files(&self) -> BTreeMap<String, Vec<u8>> {
        let entries = std::fs::read_dir(self.photos()).into_iter().flatten();
        let file = |entry: std::io::Result<std::fs::DirEntry>| {
            let entry = entry.expect("an entry");
            let name = entry.file_name().to_string_lossy().into_owned();
            (name, std::fs::read(entry.path()).expect("a file"))
        };
        entries.map(file).collect()
    }

    /// Everything in the tables of the record, as text, past the workbench.
    pub fn rows(&self) -> Vec<String> {
        let record = rusqlite::Connection::open(self.folder.path().join("record.db"));
        let record = record.expect("the record is SQLite");
        let mut rows = Vec::new();
        for table in ["event", "unit", "inspection", "finding", "photo", "verdict"] {
            let mut statement = record.prepare(&format!("SELECT * FROM {table}")).expect("a table");
            let columns = statement.column_count();
            let found = statement.query_map([], |row| {
                let cell = |at| row.get::<_, rusqlite::types::Value>(at);
                (0..columns).map(cell).collect::<rusqlite::Result<Vec<_>>>()
            });
            rows.extend(
                found.expect("rows").map(|row| format!("{table} {:?}", row.expect("a row"))),
            );
        }
        rows
    }

    /// The SHA-256 in every row of the projection, past the workbench.
    pub fn named(&self) -> Vec<String> {
        let record = rusqlite::Connection::open(self.folder.path().join("record.db"));
        let record = record.expect("the record is SQLite");
        let mut statement = record.prepare("SELECT sha256 FROM photo").expect("a table");
        let rows = statement.query_map([], |row| row.get(0)).expect("rows");
        rows.map(|row| row.expect("a row")).collect()
    }
}

fn id(drawn: u64) -> Uuid {
    let mut rest = [0; 10];
    rest[2..].copy_from_slice(&drawn.to_be_bytes());
    uuid::Builder::from_unix_timestamp_millis(1_700_000_000_000, &rest).into_uuid()
}
