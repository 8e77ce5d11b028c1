//! Whatever happens in whatever order, the same events give the same views.

use super::*;
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::path::Path;

const FILE: &str = "record.db";

/// One thing that happens. Numbers pick among what is there.
#[derive(Clone, Debug)]
enum Step {
    Create { demo: bool },
    Inspect { unit: usize },
    Answer { unit: usize, key: u8, value: u8 },
    Rename { unit: usize, value: u8 },
    Withdraw { unit: usize, key: u8 },
    Photo { unit: usize, photo: u8, what: u8 },
    Undo { unit: usize, whole: bool },
    Redo { unit: usize, whole: bool },
    Delete { unit: usize },
    Clock { by: i64 },
    Send { seed: u64, share: u64 },
    Rebuild,
    Reopen,
}

fn step() -> impl Strategy<Value = Step> {
    let unit = 0..3_usize;
    prop_oneof![
        2 => any::<bool>().prop_map(|demo| Step::Create { demo }),
        3 => unit.clone().prop_map(|unit| Step::Inspect { unit }),
        9 => (unit.clone(), 0..2_u8, any::<u8>())
            .prop_map(|(unit, key, value)| Step::Answer { unit, key, value }),
        3 => (unit.clone(), any::<u8>()).prop_map(|(unit, value)| Step::Rename { unit, value }),
        2 => (unit.clone(), 0..2_u8).prop_map(|(unit, key)| Step::Withdraw { unit, key }),
        4 => (unit.clone(), 0..2_u8, 0..7_u8)
            .prop_map(|(unit, photo, what)| Step::Photo { unit, photo, what }),
        5 => (unit.clone(), any::<bool>()).prop_map(|(unit, whole)| Step::Undo { unit, whole }),
        3 => (unit.clone(), any::<bool>()).prop_map(|(unit, whole)| Step::Redo { unit, whole }),
        1 => unit.prop_map(|unit| Step::Delete { unit }),
        2 => (-60..60_i64).prop_map(|by| Step::Clock { by }),
        3 => (any::<u64>(), 1..4_u64).prop_map(|(seed, share)| Step::Send { seed, share }),
        1 => Just(Step::Rebuild),
        1 => Just(Step::Reopen),
    ]
}

fn script() -> impl Strategy<Value = Vec<(bool, Step)>> {
    prop::collection::vec((any::<bool>(), step()), 1..60)
}

/// A fixed shuffle: sorts by a hash of the id and the seed.
fn shuffled(mut events: Vec<Event>, seed: u64) -> Vec<Event> {
    let hash = |event: &Event| {
        let (high, low) = event.id.as_u64_pair();
        let mixed = (high ^ low.rotate_left(17) ^ seed).wrapping_mul(0x9E37_79B9_7F4A_7C15);
        mixed ^ (mixed >> 29)
    };
    events.sort_by_key(hash);
    events
}

/// Two devices that already look at the same unit, so that they get in each other's way. The first
/// keeps its record in a file.
fn pair(folder: &Path) -> [Device; 2] {
    let store = Store::open(&folder.join(FILE)).unwrap();
    let mut devices = [Device::with(store, "bench", 1), Device::new("phone", 2)];
    let unit = devices[0].create("x", false);
    devices[0].inspect(unit);
    let sent = devices[0].outgoing();
    devices[1].store.append_foreign(sent).unwrap();
    devices[1].at = devices[0].at;
    devices
}

fn run(devices: &mut [Device; 2], folder: &Path, second: bool, step: &Step) {
    let me = usize::from(second);
    if let Step::Send { seed, share } = step {
        let sent = shuffled(devices[me].outgoing(), *seed).into_iter();
        // Only some of the events: the rest may come later or from elsewhere.
        let part = sent.filter(|event| event.id.as_u64_pair().1 % 4 <= *share);
        devices[1 - me].store.append_foreign(part).unwrap();
        return;
    }
    let device = &mut devices[me];
    match step {
        Step::Create { demo } => _ = device.create("x", *demo),
        Step::Clock { by } => device.at += by,
        Step::Rebuild => check_rebuild(&mut device.store),
        Step::Reopen if me == 0 => reopen(device, folder),
        step => on_unit(device, step),
    }
}

fn on_unit(device: &mut Device, step: &Step) {
    let units = device.store.units(&UnitFilter::default()).unwrap();
    let pick = |at: usize| units.get(at % units.len().max(1)).map(|unit| unit.id);
    let latest = |device: &Device, unit| device.store.latest_inspection(unit).unwrap();
    match step {
        Step::Inspect { unit } => {
            pick(*unit).map(|unit| device.inspect(unit));
        }
        Step::Rename { unit, value } => {
            pick(*unit).map(|unit| device.rename(unit, &format!("n{value}")).unwrap());
        }
        Step::Answer { unit, key, value } => {
            let place = pick(*unit).and_then(|unit| Some((unit, latest(device, unit)?.id)));
            place.map(|place| device.find(place, &format!("answers.{key}"), json!(value)));
        }
        Step::Withdraw { unit, key } => {
            let place = pick(*unit).and_then(|unit| Some((unit, latest(device, unit)?.id)));
            let subject = format!("finding.answers.{key}");
            let change = vec![Change::Withdrawn { subject }];
            place.map(|(unit, at)| device.act(&in_inspection(unit, at, change)).unwrap());
        }
        Step::Photo { unit, photo, what } => {
            let place = pick(*unit).and_then(|unit| Some((unit, latest(device, unit)?.id)));
            let change = vec![photo_change(v7(1, 9, u32::from(*photo)), *what)];
            place.map(|(unit, at)| device.act(&in_inspection(unit, at, change)).unwrap());
        }
        Step::Undo { unit, whole } | Step::Redo { unit, whole } => {
            let Some(unit) = pick(*unit) else { return };
            let inspection = latest(device, unit).filter(|_| !whole).map(|at| at.id);
            if matches!(step, Step::Undo { .. }) {
                device.undo(unit, inspection);
            } else {
                device.redo(unit, inspection);
            }
        }
        Step::Delete { unit } => {
            pick(*unit).map(|unit| device.delete(unit).unwrap());
        }
        _ => {}
    }
}

/// Adds one of two files, captions, marks, pairs, orders or removes.
fn photo_change(photo: Uuid, what: u8) -> Change {
    let row = |digit: &str| {
        let sha256 = digit.repeat(64);
        PhotoRow { finding: None, sha256, width: 4, height: 3, hints: Vec::new() }.value()
    };
    match what {
        0 => Change::PhotoAdded { photo, row: row("a") },
        1 => Change::PhotoAdded { photo, row: row("b") },
        2 => Change::PhotoCaptioned { photo, text: "x".to_owned() },
        3 => Change::PhotoMarked { photo, marks: json!([{"pin": {"x": 0.5, "y": 0.5}}]) },
        4 => Change::PhotoPaired { photo, before: photo },
        5 => Change::PhotosOrdered(vec![photo]),
        _ => Change::photo_removed(photo),
    }
}

fn reopen(device: &mut Device, folder: &Path) {
    let before = (rows(&device.store, "event"), projections(&device.store));
    device.store = Store::open_in_memory().unwrap();
    device.store = Store::open(&folder.join(FILE)).unwrap();
    let after = (rows(&device.store, "event"), projections(&device.store));
    assert_eq!(after, before);
}

fn check_rebuild(store: &mut Store) {
    let before = projections(store);
    store.rebuild_projections().unwrap();
    assert_eq!(projections(store), before);
}

/// All that two devices must show alike: everything but the demonstration.
fn views(store: &Store) -> Vec<String> {
    let units = store.units(&UnitFilter::default()).unwrap();
    let mut views = Vec::new();
    for unit in units.into_iter().filter(|unit| !unit.demo) {
        views.push(format!("{unit:?}"));
        views.push(format!("{:?}", store.events(unit.id).unwrap()));
        for inspection in store.inspections(unit.id).unwrap() {
            let findings = store.findings(inspection.id).unwrap();
            let photos = store.photos(inspection.id).unwrap();
            views.push(format!("{inspection:?} {findings:?} {photos:?}"));
        }
    }
    views
}

/// The winners by the rule as it is written, from the events alone.
fn winning_answers(events: &[Event]) -> BTreeMap<(Uuid, String), Value> {
    let same = |a: &Event, b: &Event| {
        (a.unit, a.inspection, &a.subject) == (b.unit, b.inspection, &b.subject)
    };
    let mut best: BTreeMap<_, &Event> = BTreeMap::new();
    for event in events {
        let Some(inspection) = event.inspection else {
            continue;
        };
        if events.iter().any(|e| e.supersedes == Some(event.id) && same(e, event)) {
            continue;
        }
        let best = best.entry((inspection, event.subject.clone())).or_insert(event);
        if (event.at, event.id) > (best.at, best.id) {
            *best = event;
        }
    }
    let answer = |(key, event): ((Uuid, String), &Event)| Some((key, event.change.clone()?));
    let answers = best.into_iter().filter_map(answer);
    answers.filter(|((_, subject), _)| subject.starts_with("finding.")).collect()
}

fn shown_answers(store: &Store) -> BTreeMap<(Uuid, String), Value> {
    let mut shown = BTreeMap::new();
    for unit in store.units(&UnitFilter::default()).unwrap() {
        for inspection in store.inspections(unit.id).unwrap() {
            for finding in store.findings(inspection.id).unwrap() {
                let subject = format!("finding.{}", finding.key);
                shown.insert((inspection.id, subject), finding.value);
            }
        }
    }
    shown
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 96,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn any_interleaving_ends_in_the_same_views(steps in script(), seed in any::<u64>()) {
        let folder = tempfile::tempdir().unwrap();
        let mut devices = pair(folder.path());
        for (second, step) in &steps {
            run(&mut devices, folder.path(), *second, step);
        }
        let mut all = devices[0].outgoing();
        all.extend(devices[1].outgoing());
        let mut third = Device::new("shop", 3);
        third.store.append_foreign(all.clone()).unwrap();
        let expected = views(&third.store);
        for device in &mut devices {
            device.store.append_foreign(shuffled(all.clone(), seed)).unwrap();
            prop_assert_eq!(views(&device.store), expected.clone());
        }
        let mut fourth = Device::new("van", 4);
        for event in shuffled(all.clone(), seed.wrapping_add(1)) {
            fourth.store.append_foreign([event]).unwrap();
        }
        prop_assert_eq!(views(&fourth.store), expected);
        prop_assert_eq!(projections(&fourth.store), projections(&third.store));
        let [first, second] = devices;
        for device in [first, second, third, fourth] {
            let mut store = device.store;
            check_rebuild(&mut store);
        }
    }

    #[test]
    fn what_is_shown_is_what_the_rule_says(steps in script()) {
        let folder = tempfile::tempdir().unwrap();
        let mut devices = pair(folder.path());
        for (second, step) in &steps {
            run(&mut devices, folder.path(), *second, step);
        }
        let [device, _] = devices;
        let units = device.store.units(&UnitFilter::default()).unwrap();
        let events = units.iter().flat_map(|unit| device.store.events(unit.id).unwrap());
        let mut expected = winning_answers(&events.collect::<Vec<_>>());
        expected.retain(|(at, _), _| device.store.inspection(*at).unwrap().is_some());
        prop_assert_eq!(shown_answers(&device.store), expected);
    }

    #[test]
    fn undoing_walks_back_through_every_state_and_redoing_forth(
        values in prop::collection::vec((0..3_u8, any::<u8>(), any::<bool>()), 1..15)
    ) {
        let (mut device, unit, inspection) = bench();
        let state = |device: &Device| -> Vec<_> {
            let findings = device.store.findings(inspection).unwrap();
            findings.into_iter().map(|f| (f.key, f.value, f.author, f.at)).collect()
        };
        let mut states = vec![state(&device)];
        for (key, value, both) in &values {
            let mut changes = vec![finding(&format!("answers.{key}"), json!(value))];
            changes.extend(both.then(|| finding("meter", json!(value))));
            device.act(&in_inspection(unit, inspection, changes)).unwrap();
            states.push(state(&device));
        }
        for expected in states.iter().rev().skip(1) {
            prop_assert!(device.undo(unit, Some(inspection)).is_some());
            prop_assert_eq!(&state(&device), expected);
        }
        for expected in states.iter().skip(1) {
            prop_assert!(device.redo(unit, Some(inspection)).is_some());
            prop_assert_eq!(&state(&device), expected);
        }
        prop_assert!(device.redo(unit, Some(inspection)).is_none());
    }
}
