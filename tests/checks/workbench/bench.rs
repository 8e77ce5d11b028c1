//! A record in a folder of its own, with a clock and ids that can be repeated.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, AtomicU64, Ordering};

use coldchassis_core::workbench::{
    AssessView, InspectionView, NewUnit, Surroundings, Tag, Workbench, assess_file, tag,
};
use serde_json::{Map, Value, json};
use tempfile::TempDir;
use uuid::Uuid;

/// When the clock starts, UTC milliseconds.
pub const START: i64 = 1_700_000_000_000;

/// The device that all is done on unless a check says otherwise.
pub const HERE: &str = "here";

/// A record that can be closed and opened again; its clock and counter go on.
pub struct Record {
    folder: TempDir,
    clock: Arc<AtomicI64>,
    step: i64,
    drawn: Arc<AtomicU64>,
}

impl Record {
    /// A record whose clock stands still: only what was done can change a view.
    pub fn fixed() -> Self {
        Self::stepping(0)
    }

    /// A record whose clock goes on by a step each time it is looked at.
    pub fn stepping(step: i64) -> Self {
        Self {
            folder: tempfile::tempdir().expect("a temporary folder"),
            clock: Arc::new(AtomicI64::new(START)),
            step,
            drawn: Arc::default(),
        }
    }

    pub fn path(&self) -> PathBuf {
        self.folder.path().join("record.db")
    }

    /// A clock and ids that go on from where the last ones were.
    pub fn around(&self, device: &str) -> Surroundings {
        let (clock, step, drawn) = (self.clock.clone(), self.step, self.drawn.clone());
        Surroundings {
            clock: Box::new(move || clock.fetch_add(step, Ordering::Relaxed)),
            ids: Box::new(move || counted(drawn.fetch_add(1, Ordering::Relaxed) + 1)),
            device: device.to_owned(),
            photos: None,
            author: format!("Inspector {device}"),
            locale: "en".to_owned(),
        }
    }

    pub fn open_on(&self, device: &str) -> Workbench {
        Workbench::open(&self.path(), self.around(device)).expect("the record opens")
    }

    pub fn open(&self) -> Workbench {
        self.open_on(HERE)
    }

    /// How many events and verdicts are stored, past the workbench.
    pub fn rows(&self) -> (i64, i64) {
        let record = rusqlite::Connection::open(self.path()).expect("the record is SQLite");
        let count = |sql| record.query_row(sql, [], |row| row.get(0)).expect("a count");
        (count("SELECT count(*) FROM event"), count("SELECT count(*) FROM verdict"))
    }

    /// All bytes in the record's folder, by file.
    pub fn bytes(&self) -> BTreeMap<PathBuf, Vec<u8>> {
        let entries = std::fs::read_dir(self.folder.path()).expect("the folder is there");
        let paths = entries.map(|entry| entry.expect("an entry").path());
        paths.map(|path| (path.clone(), std::fs::read(path).expect("a file"))).collect()
    }
}

/// A UUID v7 of the clock's start that holds a counter.
pub fn counted(count: u64) -> Uuid {
    let millis = u64::try_from(START).expect("after 1970");
    let mut tail = [0; 10];
    tail[2..].copy_from_slice(&count.to_be_bytes());
    uuid::Builder::from_unix_timestamp_millis(millis, &tail).into_uuid()
}

/// An id that no record here has.
pub fn foreign() -> Uuid {
    counted(u64::from(u32::MAX))
}

pub fn usual_supply() -> Value {
    json!({"volts": 120, "hertz": 60, "volts_max": 127})
}

pub fn new_unit(name: &str, access: &[&str]) -> NewUnit {
    NewUnit {
        name: name.to_owned(),
        place: "Shelf 3".to_owned(),
        kind: None,
        supply: usual_supply(),
        access: owned(access),
    }
}

pub fn owned(list: &[&str]) -> Vec<String> {
    list.iter().map(|&item| item.to_owned()).collect()
}

/// A set with its chassis on the line and the switch in that leg, but for what can be touched.
pub const TIED: [(&str, &str); 6] = [
    ("plug", "two_equal_blades"),
    ("back", "fitted"),
    ("transformer", "none"),
    ("common_to_chassis", "direct"),
    ("common_leg", "pin_b"),
    ("switch_leg", "pin_b"),
];

/// Makes a unit and gives the id of its inspection.
pub fn begin(door: &mut Workbench, access: &[&str]) -> Uuid {
    door.create_unit(&new_unit("Brown set", access)).expect("a unit").id
}

/// Answers that leave a class between the worst and the best, and more to ask.
pub fn answer_some(door: &mut Workbench, inspection: Uuid) -> InspectionView {
    let mut last = None;
    for (question, answer) in [
        ("plug", json!("two_polarised_blades")),
        ("bare_metal", json!(["screws_or_shafts"])),
        ("back", json!("fitted")),
        ("line_capacitor", json!("pin_a_leg")),
        ("tube_count", json!(5)),
    ] {
        last = Some(door.answer(inspection, question, answer).expect(question));
    }
    last.expect("a view")
}

/// A view as a shell gets it.
pub fn json_of(view: &InspectionView) -> Value {
    serde_json::to_value(view).expect("a view is JSON")
}

/// An inspection as it stands, as a shell gets it.
pub fn seen(door: &mut Workbench, inspection: Uuid) -> Value {
    json_of(&door.inspection(inspection).expect("an inspection"))
}

/// What was found, as a file that can be assessed without any record.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    pub supply: Value,
    pub access: Vec<String>,
    /// By dotted path, as `answers.plug`.
    pub findings: BTreeMap<String, Value>,
}

impl Found {
    pub fn nothing(access: &[&str]) -> Self {
        Self { supply: usual_supply(), access: owned(access), findings: BTreeMap::new() }
    }

    pub fn with(mut self, path: &str, value: Value) -> Self {
        self.findings.insert(path.to_owned(), value);
        self
    }

    fn file(&self) -> Value {
        let mut file = json!({"supply": self.supply, "access": self.access});
        let mut groups: BTreeMap<&str, Map<String, Value>> = BTreeMap::new();
        for (path, value) in &self.findings {
            match path.split_once('.') {
                None => file[path] = value.clone(),
                Some((group, key)) => {
                    groups.entry(group).or_default().insert(key.to_owned(), value.clone());
                }
            }
        }
        for (group, keys) in groups {
            file[group] = Value::Object(keys);
        }
        file
    }

    /// Fails unless a view says what assessing these findings from scratch says.
    pub fn assert_agrees(&self, door: &Workbench, view: &InspectionView) {
        let file = self.file();
        let (findings, verdict) =
            assess_file(file.to_string().as_bytes()).unwrap_or_else(|e| panic!("{file}: {e:?}"));
        assert_eq!(view.verdict, AssessView::from(&verdict), "{file}");
        assert_eq!(view.classes, verdict.classes, "{file}");
        let said: Tag = tag(&findings, &verdict, door.words());
        assert_eq!(view.tag, said, "{file}");
        assert_eq!(view.supply, findings.supply, "{file}");
        // In which order they stand is checked where findings are listed.
        let mut shown: Vec<&str> = view.findings.iter().map(|found| found.path.as_str()).collect();
        shown.sort_unstable();
        let known: Vec<&str> = self.findings.keys().map(String::as_str).collect();
        assert_eq!(shown, known, "{file}");
    }
}
