//! Tests of bundles, and the devices that write and read them.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod hostile;
mod ordinary;
mod properties;
mod shaped;
mod trap;

use std::io::{Read, Write};
use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use uuid::Uuid;

use super::*;
use crate::photo::{Digest, Files, Ingested, write_jpeg};
use crate::store::{Action, Change, Leaving, PhotoRow, Stamp, Store, UnitFilter};

/// Now, for every device: events of the tests are made within a second of it.
const NOW: i64 = 1_764_320_400_000;

/// A device with a record and a folder of photos.
struct Device {
    store: Store,
    folder: tempfile::TempDir,
    name: &'static str,
    tag: u8,
    at: i64,
    drawn: u32,
}

impl Device {
    fn new(name: &'static str, tag: u8) -> Self {
        let store = Store::open_in_memory().unwrap();
        let folder = tempfile::tempdir().unwrap();
        Self { store, folder, name, tag, at: NOW, drawn: 0 }
    }

    fn files(&self) -> Files {
        Files::of(self.folder.path().join("photos"))
    }

    fn id(&mut self) -> Uuid {
        self.drawn += 1;
        let mut rest = [self.tag; 10];
        rest[6..].copy_from_slice(&self.drawn.to_be_bytes());
        uuid::Builder::from_unix_timestamp_millis(u64::try_from(self.at).unwrap(), &rest)
            .into_uuid()
    }

    fn stamp(&mut self) -> Stamp {
        self.at += 10;
        let (device, author) = (self.name.to_owned(), format!("Inspector of {}", self.name));
        Stamp { at: self.at, device, author, intent: self.id() }
    }

    fn act(&mut self, unit: Uuid, inspection: Option<Uuid>, changes: Vec<Change>, demo: bool) {
        let stamp = self.stamp();
        let mut ids: Vec<_> = changes.iter().map(|_| self.id()).collect();
        let action = Action { unit, inspection, changes, demo };
        self.store.append(&stamp, &action, &mut || ids.pop().unwrap()).unwrap();
    }

    /// A unit with an inspection.
    fn create(&mut self, name: &str, demo: bool) -> (Uuid, Uuid) {
        let (unit, inspection) = (self.id(), self.id());
        let number = self.store.next_number().unwrap();
        let changes = vec![
            Change::UnitCreated { number },
            Change::UnitName(name.to_owned()),
            Change::UnitSupply(json!({"volts": 120.0, "hertz": 60.0})),
            Change::InspectionStarted,
            Change::InspectionAccess(vec!["outside".to_owned()]),
        ];
        self.act(unit, Some(inspection), changes, demo);
        (unit, inspection)
    }

    fn answer(&mut self, place: (Uuid, Uuid), question: &str, answer: &str) {
        let (key, value) = (format!("answers.{question}"), json!(answer));
        self.act(place.0, Some(place.1), vec![Change::Finding { key, value }], false);
    }

    /// Adds a photo of one colour.
    fn photograph(&mut self, place: (Uuid, Uuid), shade: u8) -> (Uuid, Digest) {
        let (id, photo) = (self.id(), photo(shade));
        self.files().put(&photo).unwrap();
        let row = PhotoRow {
            finding: None,
            sha256: photo.digest.to_string(),
            width: photo.width,
            height: photo.height,
            hints: Vec::new(),
        };
        let added = Change::PhotoAdded { photo: id, row: row.value() };
        self.act(place.0, Some(place.1), vec![added], false);
        (id, photo.digest)
    }

    fn delete(&mut self, unit: Uuid) {
        let (stamp, id) = (self.stamp(), self.id());
        self.store.delete_unit(&stamp, unit, &mut || id).unwrap();
    }

    fn bundle(&self, which: &Leaving) -> (PathBuf, Exported) {
        let path = self.folder.path().join("out.bundle");
        let exported = export(&self.store, Some(&self.files()), which, NOW, &path).unwrap();
        (path, exported)
    }

    fn take(&mut self, bundle: &Path) -> Result<Imported, BundleError> {
        let files = self.files();
        import(&mut self.store, &files, bundle, NOW)
    }

    /// All that devices with the same events must show alike.
    fn views(&self) -> Vec<String> {
        let mut views = Vec::new();
        for unit in self.store.units(&UnitFilter::default()).unwrap() {
            if unit.demo {
                continue;
            }
            views.push(format!("{unit:?} {:?}", self.store.events(unit.id).unwrap()));
            for inspection in self.store.inspections(unit.id).unwrap() {
                let findings = self.store.findings(inspection.id).unwrap();
                let photos = self.store.photos(inspection.id).unwrap();
                let there = photos.iter().filter_map(|photo| Digest::parse(&photo.sha256));
                let there: Vec<bool> = there.map(|digest| self.files().has(&digest)).collect();
                views.push(format!("{inspection:?} {findings:?} {photos:?} {there:?}"));
            }
        }
        views
    }

    /// Every name and every byte in the folder of photos.
    fn pictures(&self) -> Vec<(String, Vec<u8>)> {
        let Ok(entries) = std::fs::read_dir(self.folder.path().join("photos")) else {
            return Vec::new();
        };
        let file = |entry: std::fs::DirEntry| {
            (entry.file_name().into_string().unwrap(), std::fs::read(entry.path()).unwrap())
        };
        let mut files: Vec<_> = entries.map(|entry| file(entry.unwrap())).collect();
        files.sort();
        files
    }
}

/// A small photo as it is kept here.
fn photo(shade: u8) -> Ingested {
    let jpeg =
        write_jpeg(&image::RgbImage::from_pixel(16, 12, image::Rgb([shade, 90, 40]))).unwrap();
    let thumbnail =
        write_jpeg(&image::RgbImage::from_pixel(8, 6, image::Rgb([shade, 90, 40]))).unwrap();
    let digest = Digest::of(&jpeg);
    Ingested { digest, jpeg, thumbnail, width: 16, height: 12, hints: Vec::new() }
}

/// A bundle taken apart, to be put together again with something wrong.
#[derive(Clone)]
struct Apart {
    manifest: Value,
    parts: Vec<(String, Vec<u8>)>,
}

impl Apart {
    fn of(bundle: &Path) -> Self {
        let mut zip = zip::ZipArchive::new(std::fs::File::open(bundle).unwrap()).unwrap();
        let mut parts = Vec::new();
        for index in 0..zip.len() {
            let mut part = zip.by_index(index).unwrap();
            let mut bytes = Vec::new();
            part.read_to_end(&mut bytes).unwrap();
            parts.push((part.name().unwrap().into_owned(), bytes));
        }
        let manifest = parts.pop().unwrap();
        assert_eq!(manifest.0, "manifest.json");
        Self { manifest: serde_json::from_slice(&manifest.1).unwrap(), parts }
    }

    fn events(&self) -> Vec<Value> {
        let lines = self.parts[0].1.split(|byte| *byte == b'\n').filter(|line| !line.is_empty());
        lines.map(|line| serde_json::from_slice(line).unwrap()).collect()
    }

    /// With other events, and a manifest that says so.
    fn with_events(&self, events: &[Value]) -> Self {
        let text: String = events.iter().map(|event| format!("{event}\n")).collect();
        self.with_part(0, text.into_bytes())
    }

    /// With other bytes in a part, and a manifest that says so.
    fn with_part(&self, index: usize, bytes: Vec<u8>) -> Self {
        let mut other = self.clone();
        other.parts[index].1 = bytes;
        other.listed()
    }

    /// With a manifest that names what is there.
    fn listed(mut self) -> Self {
        let part = |(name, bytes): &(String, Vec<u8>)| json!({"name": name, "bytes": bytes.len(), "sha256": Digest::of(bytes).as_str()});
        let events = self.parts[0].1.iter().filter(|byte| **byte == b'\n').count();
        let units: std::collections::BTreeSet<String> = self.parts[0]
            .1
            .split(|byte| *byte == b'\n')
            .filter_map(|line| serde_json::from_slice::<Value>(line).ok())
            .filter_map(|event| event["unit"].as_str().map(str::to_owned))
            .collect();
        self.manifest["parts"] = self.parts.iter().map(part).collect();
        self.manifest["events"] = json!(events);
        self.manifest["units"] = json!(units.len());
        self
    }

    fn write(&self, to: &Path) {
        let mut zip = zip::ZipWriter::new(std::fs::File::create(to).unwrap());
        let mut parts = self.parts.clone();
        parts.push(("manifest.json".to_owned(), self.manifest.to_string().into_bytes()));
        for (name, bytes) in parts {
            zip.start_file(name, stored()).unwrap();
            zip.write_all(&bytes).unwrap();
        }
        zip.finish().unwrap();
    }
}

fn stored() -> zip::write::SimpleFileOptions {
    zip::write::SimpleFileOptions::default().compression_method(zip::CompressionMethod::Stored)
}
