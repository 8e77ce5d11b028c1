//! The intake queue: states, filters, search, order, pages.

use super::*;
use proptest::prelude::*;
use std::collections::BTreeMap;

const CLASSES: [&str; 5] = ["live", "leaky", "one_fault", "two_faults", "no_line"];

/// Says what the engine would make of a unit as it stands.
fn judge(device: &mut Device, unit: Uuid, rank: u8, overlays: &[&str]) {
    let found = device.store.latest_inspection(unit).unwrap().unwrap();
    let supply = device.store.unit(unit).unwrap().unwrap().supply;
    let class = rank.checked_sub(1).map(|at| CLASSES[usize::from(at)].to_owned());
    let standing = Standing {
        unit,
        inspection: found.id,
        engine_version: "1".to_owned(),
        place: device.store.place_of(unit).unwrap(),
        supply,
        class,
        rank,
        basis: Some(if rank == 1 { "not_ruled_out" } else { "shown" }.to_owned()),
        overlays: overlays.iter().map(|id| (*id).to_owned()).collect(),
        proven: false,
    };
    device.store.keep_standings(&[standing]).unwrap();
}

/// Five units, one of each class, from the least hazard to the worst.
pub(super) fn shop() -> (Device, [Uuid; 5]) {
    let mut device = Device::new("bench", 1);
    let units =
        ["Écran radio", "Kitchen set", "Practice amplifier", "Gramophone", "Tuner"].map(|name| {
            let unit = device.create(name, false);
            let inspection = device.inspect(unit);
            device.find((unit, inspection), "answers.plug", json!("two_equal_blades"));
            unit
        });
    for (unit, rank) in units.iter().zip([5, 4, 3, 2, 1]) {
        let overlays: &[&str] = if rank < 3 { &["aged_cord", "no_fuse"] } else { &["no_fuse"] };
        judge(&mut device, *unit, rank, overlays);
    }
    (device, units)
}

pub(super) fn found(device: &Device, filter: &QueueFilter) -> Vec<Uuid> {
    let page = device.store.queue(filter, QueueOrder::Hazard, None, 50).unwrap();
    page.rows.iter().map(|row| row.unit.id).collect()
}

fn searched(device: &Device, text: &str) -> Vec<Uuid> {
    found(device, &QueueFilter { text: text.to_owned(), ..QueueFilter::default() })
}

fn put(device: &mut Device, unit: Uuid, state: WorkState) -> Result<Changed> {
    device.act(&of_unit(unit, vec![Change::UnitState(state.id().to_owned())]))
}

#[test]
fn the_worst_comes_first_and_the_newest_first_when_asked() {
    let (device, mut units) = shop();
    let everything = QueueFilter::default();
    let newest = device.store.queue(&everything, QueueOrder::Newest, None, 50).unwrap();
    let newest: Vec<Uuid> = newest.rows.iter().map(|row| row.unit.id).collect();
    units.reverse();
    assert_eq!(found(&device, &everything), units);
    // All were made within a second.
    assert_eq!(newest, units);
}

#[test]
fn units_of_one_moment_stand_as_they_were_numbered() {
    let mut device = Device::new("bench", 1);
    let mut units = Vec::new();
    for _ in 0..40 {
        device.at = 5_000;
        units.push(device.create("Set", false));
    }
    let newest = |device: &Device| -> Vec<Uuid> {
        let all = QueueFilter::default();
        let page = device.store.queue(&all, QueueOrder::Newest, None, 50).unwrap();
        page.rows.iter().map(|row| row.unit.id).collect()
    };
    units.reverse();
    assert_eq!(newest(&device), units);
    device.rename(units[7], "Renamed").unwrap();
    assert_eq!(newest(&device), units, "nothing else moves a unit");
    device.store.rebuild_projections().unwrap();
    assert_eq!(newest(&device), units);
}

#[test]
fn what_no_longer_holds_is_not_kept_over_what_does() {
    let (mut device, units) = shop();
    let standing = |device: &Device, class: &str| Standing {
        unit: units[0],
        inspection: device.store.latest_inspection(units[0]).unwrap().unwrap().id,
        engine_version: "1".to_owned(),
        place: device.store.place_of(units[0]).unwrap(),
        supply: device.store.unit(units[0]).unwrap().unwrap().supply,
        class: Some(class.to_owned()),
        rank: 3,
        basis: None,
        overlays: Vec::new(),
        proven: false,
    };
    let class = |device: &Device| device.store.queue_of(units[0]).unwrap().unwrap().class;
    let before = standing(&device, "live");
    let inspection = before.inspection;
    device.find((units[0], inspection), "answers.back", json!("missing"));
    let after = standing(&device, "leaky");
    device.store.keep_standings(&[after]).unwrap();
    device.store.keep_standings(&[before]).unwrap();
    assert_eq!(class(&device).as_deref(), Some("leaky"));
    // Another supply is no event of an inspection.
    let before = standing(&device, "live");
    device.act(&of_unit(units[0], vec![Change::UnitSupply(json!({"volts": 230}))])).unwrap();
    let after = standing(&device, "one_fault");
    device.store.keep_standings(&[after]).unwrap();
    device.store.keep_standings(&[before]).unwrap();
    assert_eq!(class(&device).as_deref(), Some("one_fault"));
    let sync: i64 =
        device.store.conn.query_row("PRAGMA synchronous", [], |row| row.get(0)).unwrap();
    assert_eq!(sync, 2, "what a person does waits for the disk again");
}

#[test]
fn a_class_holds_until_something_changes() {
    let (mut device, units) = shop();
    let kindest = units[0];
    let inspection = device.store.latest_inspection(kindest).unwrap().unwrap().id;
    assert_eq!(device.store.stale("1", 9).unwrap(), []);
    device.find((kindest, inspection), "answers.back", json!("missing"));
    let first =
        &device.store.queue(&QueueFilter::default(), QueueOrder::Hazard, None, 1).unwrap().rows[0];
    assert_eq!(
        (first.unit.id, first.class.as_deref()),
        (kindest, None),
        "not known comes before all"
    );
    assert_eq!(device.store.stale("1", 9).unwrap(), [Stale { unit: kindest, inspection }]);
    judge(&mut device, kindest, 4, &[]);
    assert_eq!(device.store.stale("1", 9).unwrap(), []);
    // Another supply, another class.
    device.act(&of_unit(kindest, vec![Change::UnitSupply(json!({"volts": 230}))])).unwrap();
    assert_eq!(device.store.stale("1", 9).unwrap().len(), 1);
    // What another device found earlier counts as much as what was found here last.
    let early = Stamp { at: 1, ..device.stamp() };
    let back = finding("answers.back", json!("fitted"));
    device.act_as(&early, &in_inspection(kindest, inspection, vec![back])).unwrap();
    assert_eq!(device.store.stale("1", 9).unwrap().len(), 1);
    // A newer engine has to say it anew, and a name changes nothing.
    judge(&mut device, kindest, 4, &[]);
    device.rename(kindest, "Renamed").unwrap();
    assert_eq!(device.store.stale("1", 9).unwrap(), []);
    assert_eq!(device.store.stale("2", 9).unwrap().len(), 5);
    assert_eq!(device.store.stale("0", 3).unwrap().len(), 3);
}

#[test]
fn a_state_is_an_event_with_its_time_and_person() {
    let (mut device, units) = shop();
    let states = |device: &Device| -> Vec<WorkState> {
        let page =
            device.store.queue(&QueueFilter::default(), QueueOrder::Hazard, None, 50).unwrap();
        page.rows.iter().map(|row| row.state).collect()
    };
    assert_eq!(states(&device), [WorkState::ToInspect; 5]);
    put(&mut device, units[4], WorkState::AwaitingParts).unwrap();
    let unit = device.store.unit(units[4]).unwrap().unwrap();
    assert_eq!(unit.state.as_deref(), Some("awaiting_parts"));
    assert_eq!(
        (unit.state_at, unit.state_by.as_deref()),
        (Some(device.at), Some("Inspector of bench"))
    );
    assert_eq!(states(&device)[0], WorkState::AwaitingParts);
    device.undo(units[4], None).unwrap();
    assert_eq!(states(&device)[0], WorkState::ToInspect);
    // What another version put it in is for somebody to look at.
    let unheard = Change::UnitState("on_the_moon".to_owned());
    device.act(&of_unit(units[4], vec![unheard])).unwrap();
    assert_eq!(states(&device)[0], WorkState::ToInspect);
}

#[test]
fn ready_is_believed_only_with_its_proof() {
    let (mut device, units) = shop();
    let unit = units[0];
    let state = |device: &Device| {
        let all = device.store.queue(&QueueFilter::default(), QueueOrder::Hazard, None, 9).unwrap();
        let of_unit = all.rows.iter().find(|row| row.unit.id == unit).unwrap().state;
        let filter = QueueFilter { states: vec![of_unit], ..QueueFilter::default() };
        assert!(found(device, &filter).contains(&unit), "it is found under what it stands as");
        of_unit
    };
    put(&mut device, unit, WorkState::Ready).unwrap();
    assert_eq!(state(&device), WorkState::ProofOpen);
    let shown = device.store.latest_inspection(unit).unwrap().unwrap();
    let supply = device.store.unit(unit).unwrap().unwrap().supply;
    let standing = Standing {
        unit,
        inspection: shown.id,
        engine_version: "1".to_owned(),
        place: device.store.place_of(unit).unwrap(),
        supply,
        class: Some("two_faults".to_owned()),
        rank: 4,
        basis: Some("shown".to_owned()),
        overlays: Vec::new(),
        proven: true,
    };
    device.store.keep_standings(&[standing]).unwrap();
    assert_eq!(state(&device), WorkState::Ready);
    // Whatever is changed after that, in any of its inspections, has to be held against the proof first.
    let later = device.inspect(unit);
    device.find((unit, later), "answers.back", json!("fitted"));
    assert_eq!(state(&device), WorkState::ProofOpen);
    put(&mut device, unit, WorkState::HandedBack).unwrap();
    assert_eq!(state(&device), WorkState::HandedBack);
}

#[test]
fn filters_narrow_and_several_of_a_kind_widen() {
    let (mut device, units) = shop();
    put(&mut device, units[0], WorkState::InRepair).unwrap();
    put(&mut device, units[1], WorkState::DoNotPower).unwrap();
    device.act(&of_unit(units[2], vec![Change::UnitPlace("Shelf B".to_owned())])).unwrap();
    device.act(&of_unit(units[3], vec![Change::UnitKind("table_radio".to_owned())])).unwrap();
    let all = QueueFilter::default;
    let states = |states: &[WorkState]| QueueFilter { states: states.to_vec(), ..all() };
    assert_eq!(found(&device, &states(&[WorkState::InRepair])), [units[0]]);
    assert_eq!(
        found(&device, &states(&[WorkState::InRepair, WorkState::DoNotPower])),
        [units[1], units[0]]
    );
    assert_eq!(found(&device, &QueueFilter { ranks: vec![1, 4], ..all() }), [units[4], units[1]]);
    let bases = |basis: &str| QueueFilter { bases: vec![basis.to_owned()], ..all() };
    assert_eq!(found(&device, &bases("not_ruled_out")), [units[4]]);
    let overlays = |ids: &[&str]| QueueFilter {
        overlays: ids.iter().map(|id| (*id).to_owned()).collect(),
        ..all()
    };
    assert_eq!(found(&device, &overlays(&["no_fuse"])).len(), 5);
    assert_eq!(found(&device, &overlays(&["no_fuse", "aged_cord"])), [units[4], units[3]]);
    let place = QueueFilter { places: vec!["shelf b ".to_owned()], ..all() };
    assert_eq!(found(&device, &place), [units[2]]);
    let kind = QueueFilter { kinds: vec!["table_radio".to_owned()], ..all() };
    assert_eq!(found(&device, &kind), [units[3]]);
    assert_eq!(found(&device, &QueueFilter { created: Some((0, 2_000_000)), ..all() }).len(), 5);
    assert!(
        found(&device, &QueueFilter { created: Some((2_000_000, 3_000_000)), ..all() }).is_empty()
    );
    let nothing = QueueFilter { ranks: vec![1], ..states(&[WorkState::InRepair]) };
    assert!(found(&device, &nothing).is_empty());
}

#[test]
fn search_finds_the_beginnings_of_words_wherever_they_stand() {
    let (mut device, units) = shop();
    let inspection = device.store.latest_inspection(units[1]).unwrap().unwrap().id;
    let place = (units[1], inspection);
    device.find(place, "tubes", json!(["12SA7", "50L6-GT"]));
    device.find(place, "answers.back", json!("cant_tell"));
    let photo = device.id();
    let row =
        PhotoRow { finding: None, sha256: "a".repeat(64), width: 4, height: 3, hints: Vec::new() };
    let caption = "Grommet crumbled, Ωμέγα".to_owned();
    let added = Change::PhotoAdded { photo, row: row.value() };
    let said = Change::PhotoCaptioned { photo, text: caption };
    device.act(&in_inspection(place.0, place.1, vec![added, said])).unwrap();
    for text in [
        "12sa7",
        "12s",
        "50l6",
        "gromm",
        "ωμέγ",
        "kitchen",
        "KI",
        "u-0002",
        "0002",
        "grommet kitch 12",
    ] {
        assert_eq!(searched(&device, text), [units[1]], "{text}");
    }
    assert_eq!(searched(&device, "ecran"), [units[0]], "accents make no difference");
    assert_eq!(searched(&device, "blad").len(), 5, "what was found");
    for text in ["zz", "itchen", "cant", "k", "\"", "grommet gramo"] {
        let all = text == "\"";
        assert_eq!(searched(&device, text).len(), if all { 5 } else { 0 }, "{text}");
    }
    for odd in [
        "words : kitchen",
        "NOT kitchen",
        "kitchen*",
        "(kitchen",
        "kitchen\" OR \"tuner",
        "*",
        "--",
    ] {
        searched(&device, odd);
    }
    device.rename(units[1], "Larder set").unwrap();
    assert!(searched(&device, "kitchen").is_empty(), "the old name is found no more");
    assert_eq!(searched(&device, "larder"), [units[1]]);
    device.delete(units[1]).unwrap();
    assert!(searched(&device, "larder").is_empty());
}

#[test]
fn counts_are_of_state_and_class() {
    let (mut device, units) = shop();
    put(&mut device, units[0], WorkState::InRepair).unwrap();
    device.create("Just in", false);
    let counts = device.store.queue_counts().unwrap();
    let mut of: BTreeMap<_, u32> = BTreeMap::new();
    for count in counts {
        *of.entry((count.state.id(), count.class)).or_default() += count.units;
    }
    assert_eq!(of.values().sum::<u32>(), 6);
    assert_eq!(of[&("to_inspect", None)], 1);
    assert_eq!(of[&("in_repair", Some("no_line".to_owned()))], 1);
    assert_eq!(of[&("to_inspect", Some("live".to_owned()))], 1);
}

/// What the queue should show, by its rules as they are written.
fn expected(device: &Device, ranks: &BTreeMap<Uuid, u8>, order: QueueOrder) -> Vec<Uuid> {
    let mut units = device.store.units(&UnitFilter::default()).unwrap();
    units.sort_by_key(|unit| {
        let rank = if order == QueueOrder::Hazard { ranks[&unit.id] } else { 0 };
        (rank, std::cmp::Reverse((unit.created_at, unit.number)))
    });
    units.into_iter().map(|unit| unit.id).collect()
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 24,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn pages_put_together_are_the_whole_queue(
        drawn in prop::collection::vec((0..6_u8, 0..3_usize, 1000..90_000_i64), 0..60),
        most in 1..20_u32,
    ) {
        let mut device = Device::new("bench", 1);
        let words = ["alpha", "alphabet", "beta"];
        let mut ranks = BTreeMap::new();
        for (rank, word, later) in &drawn {
            device.at += later;
            let unit = device.create(words[*word], false);
            device.inspect(unit);
            if *rank > 0 {
                judge(&mut device, unit, *rank, &[]);
            }
            ranks.insert(unit, *rank);
        }
        for order in [QueueOrder::Hazard, QueueOrder::Newest] {
            for text in ["", "al", "alphabet", "be"] {
                let filter = QueueFilter { text: text.to_owned(), ..QueueFilter::default() };
                let (mut shown, mut after) = (Vec::new(), None);
                loop {
                    let page = device.store.queue(&filter, order, after, most).unwrap();
                    prop_assert!(page.rows.len() <= most as usize);
                    shown.extend(page.rows.iter().map(|row| row.unit.id));
                    after = page.next;
                    if after.is_none() {
                        break;
                    }
                }
                let mut wanted = expected(&device, &ranks, order);
                wanted.retain(|unit| device.name_of(*unit).unwrap().starts_with(text));
                prop_assert_eq!(shown, wanted, "{:?} {:?}", order, text);
            }
        }
        let before = projections(&device.store);
        device.store.rebuild_projections().unwrap();
        prop_assert_eq!(projections(&device.store), before);
    }
}
