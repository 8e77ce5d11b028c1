//! Looks at the files beside the record: photos, copies, what was never finished.

use std::collections::BTreeSet;
use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use coldchassis_core::exchange::import;
use coldchassis_core::photo::Files;
use coldchassis_core::store::Store;
use coldchassis_tests::killing::{Home, snapshot_name};

use super::ledger::Ledger;
use super::log::{self, Found};
use super::supplies::Supplies;
use super::tally::Tally;

/// Older than anything that may still be worked on.
const LONG_AGO: Duration = Duration::from_secs(24 * 3600);
/// How many copies may be there: five, two from before a migration, and one of each that came before an older
/// one could go.
const MOST_COPIES: usize = 9;

fn paths(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder);
    let entries = entries.into_iter().flatten();
    entries.map(|entry| entry.expect("an entry").path()).collect()
}

fn name(path: &Path) -> &str {
    path.file_name().and_then(|name| name.to_str()).expect("a plain name")
}

/// Makes everything that was left look as if a day had passed since.
pub fn make_old(home: &Home) {
    let hidden = [home.0.clone(), home.snapshots(), home.given()];
    let hidden = hidden.iter().flat_map(|folder| paths(folder));
    let hidden = hidden.filter(|path| name(path).starts_with('.'));
    for path in hidden.chain(paths(&home.photos())) {
        let file = File::open(&path).expect("it is there");
        file.set_modified(SystemTime::now() - LONG_AGO).expect("it is ours");
    }
}

/// Nothing is left but what has its place: whatever was never finished is gone by now.
pub fn check_nothing_stays(home: &Home) {
    let places = ["record.coldchassis", "photos", "snapshots", "given", "damaged"];
    for path in paths(&home.0) {
        assert!(places.contains(&name(&path)), "{} stays for ever", path.display());
    }
    for path in paths(&home.snapshots()) {
        // The note of the copy that was put back last, one line: the next copy is due by it.
        let is_note = name(&path) == "put_back";
        assert!(is_note || snapshot_name(&path).is_some(), "{} stays for ever", path.display());
    }
    for path in paths(&home.given()) {
        assert_eq!(path, home.bundle(), "it stays for ever");
    }
}

/// A bundle that was to be given away is whole, or the one before, or not there.
pub fn check_given(home: &Home, tally: &mut Tally) {
    if home.bundle().exists() {
        let folder = tempfile::tempdir().expect("a folder");
        let mut other = Store::open_in_memory().expect("a record");
        let files = Files::of(folder.path().to_owned());
        let now = i64::MAX / 2;
        import(&mut other, &files, &home.bundle(), now).expect("a whole bundle");
        tally.count("bundles that were given away found whole", 1);
    }
}

/// Every photo that is shown, or that an undo can bring back, has both its files, byte for byte. No file is
/// cut short, and once what was left is cleared away there are no others.
pub fn check_photos(
    supplies: &Supplies,
    home: &Home,
    found: &Found,
    is_cleared: bool,
    tally: &mut Tally,
) {
    assert!(found.shown.is_subset(&found.kept));
    let mut wanted = BTreeSet::new();
    for digest in &found.kept {
        let picture = supplies.photos.get(digest).expect("a photo that was given");
        for (ending, bytes) in [("jpg", &picture.full), ("thumb.jpg", &picture.thumbnail)] {
            let path = home.photos().join(format!("{digest}.{ending}"));
            let there = fs::read(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
            assert!(there == *bytes, "{} is another picture", path.display());
            wanted.insert(path);
        }
    }
    tally.count("photo files held against what was given", wanted.len());
    let loose = paths(&home.photos()).into_iter().filter(|path| !wanted.contains(path));
    for path in loose {
        assert!(!is_cleared, "{} stays for ever", path.display());
        let stem = name(&path);
        let thumbnail = stem.strip_suffix(".thumb.jpg");
        let Some(digest) = thumbnail.or_else(|| stem.strip_suffix(".jpg")) else {
            assert!(stem.starts_with(".arriving-"), "{} is no photo", path.display());
            continue;
        };
        let picture = supplies.photos.get(digest).expect("a photo that was given");
        let bytes = if thumbnail.is_some() { &picture.thumbnail } else { &picture.full };
        assert!(fs::read(&path).expect("it is there") == *bytes, "{}", path.display());
    }
}

/// Every copy is a whole record. Those that are new hold all that was there when its worker began.
pub fn check_snapshots(home: &Home, ledger: &mut Ledger<'_>, found: &Found, tally: &mut Tally) {
    let mut count = 0;
    for path in paths(&home.snapshots()) {
        let Some((number, _)) = snapshot_name(&path) else { continue };
        count += 1;
        if !ledger.copies.insert(number) {
            continue;
        }
        log::check_sound(&path);
        let events = log::read(&path).events;
        for id in events.keys() {
            let is_known = ledger.ever.contains(id) || found.events.contains_key(id);
            assert!(is_known, "{id} in copy {number} was never in the record");
        }
        for (id, unit) in &ledger.before {
            let is_deleted = ledger.deleted().any(|bundle| bundle.units.contains(unit));
            assert!(is_deleted || events.contains_key(id), "copy {number} lacks {id}");
        }
        tally.count("copies found whole", 1);
    }
    assert!(count <= MOST_COPIES, "{count} copies");
}

/// Of a unit that was deleted nothing is left in the record and in the copies but that it was.
pub fn check_deleted(home: &Home, ledger: &Ledger<'_>, tally: &mut Tally) {
    let names: Vec<_> = ledger.deleted().flat_map(|bundle| &bundle.names).collect();
    if names.is_empty() {
        return;
    }
    for path in paths(&home.0).into_iter().chain(paths(&home.snapshots())) {
        if path.is_dir() || name(&path).starts_with('.') {
            continue;
        }
        let bytes = fs::read(&path).expect("it is there");
        let text = String::from_utf8_lossy(&bytes);
        for id in &names {
            assert!(!text.contains(id.as_str()), "{} holds {id}", path.display());
        }
    }
    tally.count("looks for what was deleted", 1);
}
