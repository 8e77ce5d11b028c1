//! Three devices that look at the same units, and bundles of any of them in any order.

use proptest::prelude::*;

use super::*;

/// One thing that happens on a device. Numbers pick among what is there.
#[derive(Clone, Debug)]
enum Step {
    Create,
    Answer {
        unit: usize,
        question: usize,
        answer: usize,
    },
    Rename {
        unit: usize,
        name: u8,
    },
    State {
        unit: usize,
        state: usize,
    },
    Photograph {
        unit: usize,
        shade: u8,
    },
    Unphotograph {
        unit: usize,
    },
    /// Something is said of a photo: a caption, marks, the one before it, the order of all.
    Describe {
        unit: usize,
        what: usize,
        text: u8,
    },
    /// A repair is chosen, or a line of its proof entered.
    Repair {
        unit: usize,
        what: usize,
    },
    Undo {
        unit: usize,
    },
    Delete {
        unit: usize,
    },
    Clock {
        by: i64,
    },
    /// A bundle to another device while they work.
    Send {
        to: usize,
        some: bool,
    },
}

const ANSWERS: [(&str, [&str; 3]); 2] = [
    ("plug", ["two_equal_blades", "two_polarised_blades", "cant_tell"]),
    ("back", ["fitted", "missing", "cant_tell"]),
];
const STATES: [&str; 3] = ["awaiting_parts", "in_repair", "proof_open"];

fn step() -> impl Strategy<Value = Step> {
    let unit = 0..3_usize;
    prop_oneof![
        1 => Just(Step::Create),
        8 => (unit.clone(), 0..2_usize, 0..3_usize)
            .prop_map(|(unit, question, answer)| Step::Answer { unit, question, answer }),
        3 => (unit.clone(), any::<u8>()).prop_map(|(unit, name)| Step::Rename { unit, name }),
        3 => (unit.clone(), 0..3_usize).prop_map(|(unit, state)| Step::State { unit, state }),
        2 => (unit.clone(), 0..4_u8).prop_map(|(unit, shade)| Step::Photograph { unit, shade }),
        1 => unit.clone().prop_map(|unit| Step::Unphotograph { unit }),
        3 => (unit.clone(), 0..4_usize, any::<u8>())
            .prop_map(|(unit, what, text)| Step::Describe { unit, what, text }),
        2 => (unit.clone(), 0..3_usize).prop_map(|(unit, what)| Step::Repair { unit, what }),
        3 => unit.clone().prop_map(|unit| Step::Undo { unit }),
        1 => unit.prop_map(|unit| Step::Delete { unit }),
        2 => (-60..60_i64).prop_map(|by| Step::Clock { by }),
        3 => (0..3_usize, any::<bool>()).prop_map(|(to, some)| Step::Send { to, some }),
    ]
}

/// Devices that know the same two units before they part.
fn three() -> [Device; 3] {
    let mut devices = [Device::new("shop", 1), Device::new("phone", 2), Device::new("van", 3)];
    let first = devices[0].create("First", false);
    devices[0].photograph(first, 200);
    devices[0].create("Second", false);
    let (path, _) = devices[0].bundle(&Leaving::All);
    devices[1].take(&path).unwrap();
    devices[2].take(&path).unwrap();
    devices
}

fn run(devices: &mut [Device; 3], me: usize, step: &Step) {
    if let Step::Send { to, some } = step {
        let units = devices[me].store.units(&UnitFilter::default()).unwrap();
        let which = match units.first().filter(|_| *some) {
            Some(unit) => Leaving::Units([unit.id].into()),
            None => Leaving::All,
        };
        let (path, _) = devices[me].bundle(&which);
        devices[*to].take(&path).unwrap();
        return;
    }
    let device = &mut devices[me];
    let units = device.store.units(&UnitFilter::default()).unwrap();
    let pick = |at: &usize| units.get(at % units.len().max(1)).map(|unit| unit.id);
    let place = |device: &Device, at: &usize| {
        let unit = pick(at)?;
        Some((unit, device.store.latest_inspection(unit).unwrap()?.id))
    };
    match step {
        Step::Create => _ = device.create("New", false),
        Step::Clock { by } => device.at += by,
        Step::Answer { unit, question, answer } => {
            let Some(place) = place(device, unit) else { return };
            let (question, answers) = ANSWERS[*question];
            device.answer(place, question, answers[*answer]);
        }
        Step::Rename { unit, name } => {
            let Some(unit) = pick(unit) else { return };
            device.act(unit, None, vec![Change::UnitName(format!("n{name}"))], false);
        }
        Step::State { unit, state } => {
            let Some(unit) = pick(unit) else { return };
            let state = Change::UnitState(STATES[*state].to_owned());
            device.act(unit, None, vec![state], false);
        }
        Step::Photograph { unit, shade } => {
            let Some(place) = place(device, unit) else { return };
            device.photograph(place, *shade);
        }
        Step::Unphotograph { unit } => {
            let Some(place) = place(device, unit) else { return };
            let photos = device.store.photos(place.1).unwrap();
            let Some(photo) = photos.first() else { return };
            device.act(place.0, Some(place.1), vec![Change::photo_removed(photo.id)], false);
        }
        Step::Describe { unit, what, text } => {
            let Some(place) = place(device, unit) else { return };
            let photos: Vec<Uuid> =
                device.store.photos(place.1).unwrap().iter().map(|photo| photo.id).collect();
            if let Some(change) = described(&photos, *what, *text) {
                device.act(place.0, Some(place.1), vec![change], false);
            }
        }
        Step::Repair { unit, what } => {
            let Some(place) = place(device, unit) else { return };
            let (key, value) = match what {
                0 => ("remedies", json!({"steps": ["polarised_plug"], "limit_ma": 0.5})),
                1 => ("remedies", json!({"steps": ["reach_closed"], "limit_ma": 0.25})),
                _ => ("proof.cord_pull", json!({"holds": true})),
            };
            let found = Change::Finding { key: key.to_owned(), value };
            device.act(place.0, Some(place.1), vec![found], false);
        }
        Step::Undo { unit } => {
            let Some(unit) = pick(unit) else { return };
            let scope = crate::store::Scope { unit, inspection: None };
            let stamp = device.stamp();
            let mut ids: Vec<_> = (0..8).map(|_| device.id()).collect();
            device.store.undo(&stamp, scope, &mut || ids.pop().unwrap()).unwrap();
        }
        Step::Delete { unit } => {
            let Some(unit) = pick(unit) else { return };
            device.delete(unit);
        }
        Step::Send { .. } => {}
    }
}

/// Something that is said of the last of some photos; nothing where there are too few.
fn described(photos: &[Uuid], what: usize, text: u8) -> Option<Change> {
    let photo = *photos.last()?;
    Some(match what {
        0 => Change::PhotoCaptioned { photo, text: format!("c{text}") },
        1 => {
            let place = f64::from(text) / 255.0;
            let marks = json!([{"shape": "pin", "x": place, "y": 0.5, "caption": ""}]);
            Change::PhotoMarked { photo, marks }
        }
        2 => {
            let before = photos.first().copied().filter(|one| *one != photo)?;
            Change::PhotoPaired { photo, before }
        }
        _ => Change::PhotosOrdered(photos.iter().rev().copied().collect()),
    })
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 48,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn any_order_of_any_bundles_ends_in_the_same_views(
        steps in prop::collection::vec((0..3_usize, step()), 1..40),
        order in Just(vec![0_usize, 1, 2]).prop_shuffle(),
        again in 0..3_usize,
    ) {
        let mut devices = three();
        for (me, step) in &steps {
            run(&mut devices, *me, step);
        }
        let bundles: Vec<PathBuf> = devices.iter().map(|device| device.bundle(&Leaving::All).0).collect();
        let mut fourth = Device::new("stand", 4);
        for bundle in &bundles {
            fourth.take(bundle).unwrap();
        }
        let expected = fourth.views();
        for device in &mut devices {
            for from in &order {
                device.take(&bundles[*from]).unwrap();
            }
            // One of them once more: nothing changes.
            let twice = device.take(&bundles[again]).unwrap();
            prop_assert_eq!((twice.new, twice.photos), (0, 0));
            prop_assert_eq!(device.views(), expected.clone());
        }
    }
}
