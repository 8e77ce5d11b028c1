//! What the workers of all series are given: pictures, bundles, bundles that delete, and a record to begin with.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use coldchassis_core::exchange::{export, import};
use coldchassis_core::photo::{Digest, Files, ingest};
use coldchassis_core::store::{Leaving, Stamp, Store, UnitFilter};
use coldchassis_tests::killing::{Given, Home, PICTURES};
use coldchassis_tests::pictures::{file, scene};
use coldchassis_tests::shop::{FIRST_AT, Size, fill};
use image::ImageFormat;
use tempfile::TempDir;
use uuid::Uuid;

/// Units in a bundle.
const UNITS: usize = 4;
/// How many bundles there are.
pub const BUNDLES: u32 = 20;
/// How many of them, the first, are in the record to begin with.
pub const AT_FIRST: u32 = 8;
/// A moment after all that the bundles hold, UTC milliseconds.
const LATER: i64 = FIRST_AT + 86_400_000;

/// The events of a bundle.
pub struct Bundle {
    /// Of its units.
    pub units: BTreeSet<String>,
    /// All of them.
    pub events: BTreeSet<String>,
    /// Those that name a unit: words of a person, which a deletion has to take away.
    pub names: BTreeSet<String>,
    /// The tombstones that delete its units.
    pub tombstones: BTreeSet<String>,
}

/// The bytes of a photo.
pub struct Picture {
    pub full: Vec<u8>,
    pub thumbnail: Vec<u8>,
}

/// All of it, in a folder that goes with this.
pub struct Supplies {
    pub given: Given,
    pub bundles: Vec<Bundle>,
    pub photos: BTreeMap<String, Picture>,
    beginning: Home,
    _folder: TempDir,
}

impl Supplies {
    pub fn make() -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        let given = Given(folder.path().join("given"));
        fs::create_dir(&given.0).expect("a folder");
        let mut photos = pictures(&given);
        let donor = Home(folder.path().join("donor"));
        fs::create_dir(&donor.0).expect("a folder");
        let bundles = bundles(&donor, &given);
        photos.extend(kept(&donor));
        let beginning = Home(folder.path().join("beginning"));
        begin(&beginning, &given);
        Self { given, bundles, photos, beginning, _folder: folder }
    }

    /// A folder for a series, with the record to begin with.
    pub fn begin(&self, home: &Home) {
        for (from, to) in
            [(self.beginning.photos(), home.photos()), (self.beginning.0.clone(), home.0.clone())]
        {
            fs::create_dir_all(&to).expect("a folder");
            for entry in fs::read_dir(from).expect("a folder") {
                let path = entry.expect("an entry").path();
                if path.is_file() {
                    fs::copy(&path, to.join(path.file_name().expect("a name"))).expect("room");
                }
            }
        }
        fs::create_dir_all(home.given()).expect("a folder");
    }
}

/// Writes the pictures. Gives what is kept of each.
fn pictures(given: &Given) -> BTreeMap<String, Picture> {
    let one = |number: u32| {
        let bytes = file(&scene(640, 480, number + 1), ImageFormat::Jpeg);
        fs::write(given.picture(number), &bytes).expect("room");
        let photo = ingest(&bytes).expect("a picture");
        let picture = Picture { full: photo.jpeg, thumbnail: photo.thumbnail };
        (photo.digest.to_string(), picture)
    };
    (0..PICTURES).map(one).collect()
}

/// The photos in a folder.
fn kept(home: &Home) -> BTreeMap<String, Picture> {
    let names = fs::read_dir(home.photos()).expect("a folder");
    let names =
        names.map(|entry| entry.expect("an entry").file_name().into_string().expect("text"));
    let one = |name: String| {
        let digest = name.strip_suffix(".jpg")?.to_owned();
        let thumbnail = fs::read(home.photos().join(format!("{digest}.thumb.jpg"))).ok()?;
        let full = fs::read(home.photos().join(name)).ok()?;
        (Digest::of(&full).as_str() == digest).then_some((digest, Picture { full, thumbnail }))
    };
    names.filter_map(one).collect()
}

/// Fills the record of another device, bundles its units, deletes them and bundles that.
fn bundles(donor: &Home, given: &Given) -> Vec<Bundle> {
    let mut store = Store::open(&donor.record()).expect("a record");
    let count = u32::try_from(UNITS).expect("a few") * BUNDLES;
    fill(&mut store, &donor.photos(), Size { units: count, photos: count }, 17);
    let files = Files::of(donor.photos());
    let mut units: Vec<Uuid> = store
        .units(&UnitFilter::default())
        .expect("the record")
        .iter()
        .map(|unit| unit.id)
        .collect();
    units.sort();
    let mut bundles = Vec::new();
    for (number, units) in (0..BUNDLES).zip(units.chunks(UNITS)) {
        let which = Leaving::Units(units.iter().copied().collect());
        let to = given.bundle(number);
        let made = export(&store, Some(&files), &which, LATER, &to).expect("room");
        assert_eq!((made.photos, made.lost), (UNITS as u64, 0));
        let events: Vec<_> =
            units.iter().flat_map(|unit| store.events(*unit).expect("the record")).collect();
        let names = events.iter().filter(|event| event.subject == "unit.name");
        let names: BTreeSet<String> = names.map(|event| event.id.to_string()).collect();
        let events = events.iter().map(|event| event.id.to_string()).collect();
        for unit in units {
            delete(&mut store, *unit);
        }
        export(&store, None, &which, LATER, &given.deleting(number)).expect("room");
        let left = units.iter().flat_map(|unit| store.events(*unit).expect("the record"));
        let tombstones: BTreeSet<String> = left.map(|event| event.id.to_string()).collect();
        assert_eq!((names.len(), tombstones.len()), (UNITS, UNITS));
        let units = units.iter().map(Uuid::to_string).collect();
        bundles.push(Bundle { units, events, names, tombstones });
    }
    bundles
}

fn delete(store: &mut Store, unit: Uuid) {
    let stamp = Stamp {
        at: LATER,
        device: "shop".to_owned(),
        author: "Intake".to_owned(),
        intent: Uuid::now_v7(),
    };
    store.delete_unit(&stamp, unit, &mut Uuid::now_v7).expect("the unit is there");
}

/// Makes the record that every series begins with.
fn begin(home: &Home, given: &Given) {
    fs::create_dir(&home.0).expect("a folder");
    let mut store = Store::open(&home.record()).expect("a record");
    let files = Files::of(home.photos());
    for number in 0..AT_FIRST {
        import(&mut store, &files, &given.bundle(number), LATER).expect("a bundle");
    }
    store.close().expect("it is closed");
    assert!(!Path::new(&home.0).join("record.coldchassis-wal").exists());
}
