//! Bundles: of another device, with bytes of the zip changed, or taken apart, changed inside and put together
//! again with a manifest that says so. Each is taken in whole or refused, and a refusal changes nothing.

use std::io::{Cursor, Read, Write};
use std::path::{Path, PathBuf};
use std::sync::{LazyLock, Mutex, PoisonError};

use bolero::check;
use coldchassis_core::photo::Digest;
use coldchassis_core::workbench::{Code, Problem, Workbench, look_at_bundle};
use coldchassis_tests::pictures::{file, scene};
use image::ImageFormat;
use serde_json::{Value, json};
use tempfile::TempDir;
use uuid::Uuid;
use zip::write::SimpleFileOptions;

use super::bytes::{change, change_one};
use super::json;
use super::readings::around;
use super::tally::{Reached, Tally, time};
use super::tape::{Tape, tapes};

/// A device with something on it.
struct Device {
    folder: TempDir,
    bench: Workbench,
    inspection: Uuid,
}

impl Device {
    /// In a file where it is to give a bundle away, else in memory.
    fn new(name: &str, is_in_file: bool) -> Self {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let around = around(Some(folder.path().join("photos")));
        let bench = match is_in_file {
            true => Workbench::open(&folder.path().join("record"), around),
            false => Workbench::in_memory(around),
        };
        let mut bench = bench.expect("a record");
        let new = json!({
            "name": name, "place": "Shelf 3", "supply": {"volts": 120, "hertz": 60}, "access": ["cover_off", "meter"],
        });
        let new = serde_json::from_value(new).expect("a unit");
        let inspection = bench.create_unit(&new).expect("a unit").id;
        for (question, answer) in [("plug", "two_equal_blades"), ("transformer", "none")] {
            bench.answer(inspection, question, json!(answer)).expect("it fits");
        }
        Self { folder, bench, inspection }
    }

    /// All that a refusal must not change: what is listed, what is shown of the unit, the files of photos.
    fn seen(&mut self) -> (String, String, Vec<(PathBuf, u64)>) {
        let units = self.bench.units(None).expect("a list");
        let shown = self.bench.inspection(self.inspection).expect("it is there");
        (
            json!(units).to_string(),
            json!(shown).to_string(),
            files(&self.folder.path().join("photos")),
        )
    }
}

fn files(folder: &Path) -> Vec<(PathBuf, u64)> {
    let entries = std::fs::read_dir(folder).into_iter().flatten().filter_map(Result::ok);
    let mut files: Vec<_> = entries
        .map(|entry| (entry.path(), entry.metadata().map_or(0, |about| about.len())))
        .collect();
    files.sort();
    files
}

/// A bundle taken apart.
#[derive(Clone)]
struct Apart {
    manifest: Value,
    events: Vec<Value>,
    photos: Vec<(String, Vec<u8>)>,
}

/// A bundle of a device that has something of every kind, as bytes and taken apart.
static SEED: LazyLock<(Vec<u8>, Apart)> = LazyLock::new(|| {
    let mut from = Device::new("Set from elsewhere", true);
    let id = from.inspection;
    let bench = &mut from.bench;
    let whole = "it fits";
    for (question, answer) in [
        ("bare_metal", json!(["screws_or_shafts"])),
        ("back", json!("fitted")),
        ("terminals", json!(["none"])),
        ("common_to_chassis", json!("direct")),
        ("common_leg", json!("pin_b")),
        ("switch_leg", json!("pin_b")),
        ("kind", json!("table_radio")),
    ] {
        bench.answer(id, question, answer).expect(whole);
    }
    bench.set_tubes(id, json!(["12SA7", "50L6GT"])).expect(whole);
    bench.set_value(id, "line_capacitor", json!({"farads": 1e-8, "measured": true})).expect(whole);
    bench.leave_open(id, "aerial_capacitor").expect(whole);
    bench.set_rated(id, json!({"volts": 120})).expect(whole);
    bench.set_reading(id, "ohms_a_b_on", json!(120)).expect(whole);
    bench.set_meter(id, json!({"max_ohms": 2e6, "percent": 1, "digits": 2})).expect(whole);
    bench.set_live_test(id, "protection", json!("gfci")).expect(whole);
    bench.choose_remedies(id, json!(["polarised_plug", "switch_to_hot_leg"])).expect(whole);
    let lines = bench.proof(id).expect(whole).lines;
    let first = lines.first().expect("a line");
    let entry = if first.unit.is_empty() { json!({"holds": true}) } else { json!({"read": 0.01}) };
    bench.enter_proof(id, first.id.id(), entry).expect(whole);
    let view =
        bench.add_photo(id, Some("answers.plug"), &file(&scene(40, 30, 1), ImageFormat::Jpeg));
    let photo = view.expect(whole).photos[0].id;
    bench.caption_photo(id, photo, "The plug").expect(whole);
    let marks = json!([{"shape": "pin", "x": 0.5, "y": 0.5, "caption": "here"}]);
    bench.mark_photo(id, photo, marks).expect(whole);
    bench.answer(id, "back", json!("missing")).expect(whole);
    bench.undo(id).expect(whole);
    bench.withdraw(id, "values.rated").expect(whole);
    let unit = bench.inspection(id).expect(whole).unit.id;
    bench.set_unit_state(unit, "in_repair").expect(whole);
    let path = from.folder.path().join("seed.coldbundle");
    from.bench.export_work(None).expect(whole).run(&path).expect("it is written");
    let bytes = std::fs::read(&path).expect("it is there");
    let apart = Apart::of(&bytes);
    assert!(apart.events.len() > 25 && apart.photos.len() == 2, "{} events", apart.events.len());
    (bytes, apart)
});

impl Apart {
    fn of(bundle: &[u8]) -> Self {
        let mut zip = zip::ZipArchive::new(Cursor::new(bundle)).expect("a zip");
        let mut part = |name: &str| {
            let mut bytes = Vec::new();
            let mut part = zip.by_name(name).expect("a part");
            part.read_to_end(&mut bytes).expect("it unpacks");
            bytes
        };
        let manifest: Value = serde_json::from_slice(&part("manifest.json")).expect("JSON");
        let lines = part("events.jsonl");
        let lines = lines.split(|byte| *byte == b'\n').filter(|line| !line.is_empty());
        let events = lines.map(|line| serde_json::from_slice(line).expect("JSON")).collect();
        let parts = manifest["parts"].as_array().expect("parts").clone();
        let names = parts.iter().filter_map(|part| part["name"].as_str());
        let names = names.filter(|name| name.starts_with("photos/"));
        let photos = names.map(|name| (name.to_owned(), part(name))).collect();
        Self { manifest, events, photos }
    }

    /// Makes the manifest name what is there.
    fn list(&mut self, events: &[u8]) {
        let part = |name: &str, bytes: &[u8]| json!({"name": name, "bytes": bytes.len(), "sha256": Digest::of(bytes).as_str()});
        let photos = self.photos.iter().map(|(name, bytes)| part(name, bytes));
        let parts = std::iter::once(part("events.jsonl", events)).chain(photos);
        self.manifest["parts"] = Value::Array(parts.collect());
        self.manifest["events"] = json!(self.events.len());
        let mut units: Vec<&Value> = self.events.iter().map(|event| &event["unit"]).collect();
        units.sort_by_key(|unit| unit.to_string());
        units.dedup();
        self.manifest["units"] = json!(units.len());
    }

    fn lines(&self) -> Vec<u8> {
        self.events.iter().flat_map(|event| format!("{event}\n").into_bytes()).collect()
    }

    fn bytes(&self) -> Vec<u8> {
        let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
        let stored =
            SimpleFileOptions::default().compression_method(zip::CompressionMethod::Stored);
        let mut put = |name: &str, bytes: &[u8]| {
            zip.start_file(name, stored).expect("a part");
            zip.write_all(bytes).expect("it is written");
        };
        put("events.jsonl", &self.lines());
        for (name, bytes) in &self.photos {
            put(name, bytes);
        }
        put("manifest.json", self.manifest.to_string().as_bytes());
        zip.finish().expect("a zip").into_inner()
    }
}

/// A bundle with something wrong in it, or nothing.
fn bundle(tape: &mut Tape<'_>) -> Vec<u8> {
    let (whole, apart) = &*SEED;
    let mut bytes = whole.clone();
    let mut apart = apart.clone();
    match tape.below(8) {
        0 => {
            change(tape, &mut bytes, 3);
            return bytes;
        }
        1 => {
            // Put together again by another program, and that changed.
            bytes = apart.bytes();
            change(tape, &mut bytes, 3);
            return bytes;
        }
        2 => {
            json::change(tape, &mut apart.manifest);
            return apart.bytes();
        }
        3 => {
            let (name, jpeg) = {
                let place = tape.below(apart.photos.len());
                &mut apart.photos[place]
            };
            change_one(tape, jpeg);
            // The full picture is named by what it is.
            if tape.is(200) && !name.ends_with(".thumb.jpg") {
                return renamed(apart);
            }
        }
        _ => {
            for _ in 0..=tape.below(3) {
                change_events(tape, &mut apart.events);
            }
        }
    }
    let lines = apart.lines();
    apart.list(&lines);
    apart.bytes()
}

/// The photo under the name of what it has become, in the events too.
fn renamed(mut apart: Apart) -> Vec<u8> {
    let full = apart.photos.iter().find(|(name, _)| !name.ends_with(".thumb.jpg"));
    let (name, jpeg) = full.expect("a photo").clone();
    let before = name.trim_start_matches("photos/").trim_end_matches(".jpg").to_owned();
    let now = Digest::of(&jpeg).to_string();
    for (name, _) in &mut apart.photos {
        *name = name.replace(&before, &now);
    }
    for event in &mut apart.events {
        *event = serde_json::from_str(&event.to_string().replace(&before, &now)).expect("JSON");
    }
    let lines = apart.lines();
    apart.list(&lines);
    apart.bytes()
}

fn change_events(tape: &mut Tape<'_>, events: &mut Vec<Value>) {
    if events.is_empty() {
        return;
    }
    let (place, other) = (tape.below(events.len()), tape.below(events.len()));
    match tape.below(9) {
        0 => drop(events.remove(place)),
        1 => events.swap(place, other),
        2 => {
            let mut twin = events[place].clone();
            twin["id"] = json!(Uuid::from_u128(u128::from(tape.byte()) << 64 | 0x7000 << 64));
            events.push(twin);
        }
        3 => {
            let field = *tape.pick(&[
                "subject",
                "change",
                "at",
                "author",
                "device",
                "supersedes",
                "undoes",
            ]);
            events[place][field] = events[other][field].clone();
        }
        4 => {
            // Another finding of the same inspection, of a value that fits or not.
            let mut file = json!({});
            super::ids::put(tape, &mut file);
            let fields = file.as_object().expect("a file");
            let Some((group, inside)) = fields.iter().next() else { return };
            let first = inside.as_object().and_then(|inside| inside.iter().next());
            let (subject, value) = match first {
                Some((key, value)) if tape.is(200) => (format!("finding.{group}.{key}"), value),
                _ => (format!("finding.{group}"), inside),
            };
            (events[place]["subject"], events[place]["change"]) = (json!(subject), value.clone());
        }
        5 => {
            let change = &mut events[place]["change"];
            json::change(tape, change);
        }
        _ => json::change(tape, &mut events[place]),
    }
}

/// Why it was refused.
fn reason(problem: &Problem) -> String {
    assert_eq!(problem.code, Code::BadInput, "{problem:?}");
    let reason = problem.message.arguments.iter().find(|(name, _)| name == "reason");
    format!("{:?}", reason.expect("a reason"))
}

fn take_in(victim: &mut Device, path: &Path) -> Result<(), Problem> {
    let files = victim.bench.photo_files().expect("a folder");
    let work = look_at_bundle(path, &files)?;
    victim.bench.keep_bundle(work)?;
    Ok(())
}

/// Everything that came in can be listed, opened, judged, printed and given on.
fn look(victim: &mut Device, tape: &mut Tape<'_>) {
    let bench = &mut victim.bench;
    let units = bench.units(None).expect("a list");
    for unit in &units {
        let Some(inspection) = unit.inspection else { continue };
        match bench.inspection(inspection) {
            Ok(view) => {
                for photo in &view.photos {
                    // A picture that cannot be decoded is refused, and only that.
                    drop(bench.export_text(inspection, photo.id));
                    drop(bench.photo_text(&photo.sha256, true));
                }
            }
            // A unit that came without its supply asks for it.
            Err(problem) => assert_eq!(problem.field.as_deref(), Some("supply"), "{problem:?}"),
        }
        drop(bench.report_text(inspection));
        drop(bench.proof(inspection));
        if tape.is(24) {
            let ask = coldchassis_core::workbench::ReportAsk::default();
            drop(bench.report(inspection, &ask));
        }
    }
    bench.keep_up().expect("the record");
    bench.queue(&coldchassis_core::workbench::QueueAsk::default()).expect("a page");
    bench.queue_counts().expect("counts");
    bench.list_csv().expect("a list");
}

#[test]
fn bundles() {
    let tally = Tally::new("bundle");
    let victim = Mutex::new(None::<Device>);
    let sent = tempfile::tempdir().expect("a temporary folder");
    let path = sent.path().join("sent.coldbundle");
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        std::fs::write(&path, bundle(&mut tape)).expect("it can be written");
        let mut kept = victim.lock().unwrap_or_else(PoisonError::into_inner);
        // After a failure, or what was taken in, the next one meets a device that knows nothing of it.
        let mut victim = kept.take().unwrap_or_else(|| Device::new("Set here", false));
        let before = victim.seen();
        let reached = match take_in(&mut victim, &path) {
            Ok(()) => {
                look(&mut victim, &mut tape);
                Reached::Taken
            }
            Err(problem) => {
                let why = reason(&problem);
                assert_eq!(victim.seen(), before, "refused for {why}, and yet changed");
                *kept = Some(victim);
                let first = ["bundle-not-one", "bundle-manifest", "bundle-newer"];
                let is_first = first.iter().any(|id| why.contains(id));
                if is_first { Reached::Nothing } else { Reached::Further }
            }
        };
        tally.count(reached);
    });
    tally.end(50);
}
