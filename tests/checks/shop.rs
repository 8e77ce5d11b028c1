//! A tenth of a large shop: that lists, searches, counts and bundles are right when there is much of
//! everything. How quick they are, `cargo bench --bench records` prints; nothing here is timed.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use coldchassis_core::exchange::{export, import};
use coldchassis_core::photo::{Digest, Files};
use coldchassis_core::store::{
    Leaving, QueueFilter, QueueOrder, QueueRow, Snapshots, Store, Unit, UnitFilter, WorkState,
};
use coldchassis_tests::shop::{FIRST_AT, Size, chosen, fill};

/// Everything of the shop, made once for the checks below, which only read.
struct Shop {
    store: Store,
    files: Files,
    units: Vec<Unit>,
    _folder: tempfile::TempDir,
}

const SIZE: Size = Size::TENTH;
/// After every event of the shop.
const LATER: i64 = FIRST_AT * 2;

fn shop() -> Shop {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let photos = folder.path().join("photos");
    let mut store = Store::open(&folder.path().join("record.coldchassis")).expect("a record");
    fill(&mut store, &photos, SIZE, 9);
    let units = store.units(&UnitFilter::default()).expect("the record");
    Shop { store, files: Files::of(photos), units, _folder: folder }
}

/// All pages of the queue, put together.
fn whole(store: &Store, filter: &QueueFilter, order: QueueOrder) -> Vec<QueueRow> {
    let (mut rows, mut after) = (Vec::new(), None);
    loop {
        let page = store.queue(filter, order, after, 50).expect("a page");
        rows.extend(page.rows);
        after = page.next;
        if after.is_none() {
            return rows;
        }
    }
}

fn ids(rows: &[QueueRow]) -> BTreeSet<uuid::Uuid> {
    rows.iter().map(|row| row.unit.id).collect()
}

#[test]
fn a_tenth_of_a_large_shop_is_shown_as_it_is() {
    let shop = shop();
    assert_eq!(shop.units.len(), SIZE.units as usize);
    order(&shop);
    search(&shop);
    filters_and_counts(&shop);
    carried(&shop);
    copied(&shop);
}

fn order(shop: &Shop) {
    let rows = whole(&shop.store, &QueueFilter::default(), QueueOrder::Hazard);
    assert_eq!(ids(&rows).len(), shop.units.len(), "every unit once");
    const CLASSES: [&str; 5] = ["live", "leaky", "one_fault", "two_faults", "no_line"];
    let rank =
        |row: &QueueRow| CLASSES.iter().position(|class| row.class.as_deref() == Some(class));
    let key = |row: &QueueRow| (rank(row), std::cmp::Reverse(row.unit.created_at));
    assert!(rows.is_sorted_by_key(key), "the worst first, then the newest");
    let newest = whole(&shop.store, &QueueFilter::default(), QueueOrder::Newest);
    assert_eq!(newest.len(), shop.units.len());
    assert!(newest.is_sorted_by_key(|row| std::cmp::Reverse(row.unit.created_at)));
}

/// Held against a search that looks at every name.
fn search(shop: &Shop) {
    for text in ["wa", "walnut", "ra", "gram", "walnut ra", "sui hum", "zz"] {
        let filter = QueueFilter { text: text.to_owned(), ..QueueFilter::default() };
        let found = ids(&whole(&shop.store, &filter, QueueOrder::Hazard));
        let by_name = |unit: &&Unit| {
            let name = unit.name.clone().unwrap_or_default().to_lowercase();
            let said =
                ["place", "kind", "cloth", "rubber", "sound", "cord", "plug", "two", "equal"];
            let mut words = text.split(' ');
            words.all(|word| {
                // What a word could mean besides is looked at only where it cannot.
                assert!(!said.iter().any(|other| other.starts_with(word)), "{word}");
                name.split(' ').any(|part| part.starts_with(word))
                    || unit
                        .kind
                        .as_deref()
                        .unwrap_or_default()
                        .split('_')
                        .any(|part| part.starts_with(word))
                    || unit
                        .place
                        .as_deref()
                        .unwrap_or_default()
                        .to_lowercase()
                        .split(' ')
                        .any(|part| part.starts_with(word))
            })
        };
        let wanted: BTreeSet<_> = shop.units.iter().filter(by_name).map(|unit| unit.id).collect();
        assert_eq!(found, wanted, "{text}");
        assert_eq!(wanted.is_empty(), text == "zz", "{text}");
    }
    let tubes = QueueFilter { text: "uch81".to_owned(), ..QueueFilter::default() };
    let with = whole(&shop.store, &tubes, QueueOrder::Hazard);
    let share = with.len() as f64 / shop.units.len() as f64;
    assert!((0.12..0.22).contains(&share), "one list of six has that tube: {share}");
}

fn filters_and_counts(shop: &Shop) {
    let mut by_state: BTreeMap<&str, u32> = BTreeMap::new();
    for unit in &shop.units {
        *by_state.entry(unit.state.as_deref().unwrap_or_default()).or_default() += 1;
    }
    let mut counted: BTreeMap<&str, u32> = BTreeMap::new();
    for count in shop.store.queue_counts().expect("counts") {
        *counted.entry(count.state.id()).or_default() += count.units;
    }
    assert_eq!(counted, by_state);
    for state in WorkState::ALL {
        let filter = QueueFilter { states: vec![*state], ..QueueFilter::default() };
        let rows = whole(&shop.store, &filter, QueueOrder::Newest);
        assert_eq!(rows.len(), by_state[state.id()] as usize, "{state:?}");
    }
    let filter = QueueFilter {
        text: "wal".to_owned(),
        states: vec![WorkState::InRepair, WorkState::Ready],
        ranks: vec![1, 3],
        bases: vec!["not_ruled_out".to_owned()],
        overlays: vec!["no_fuse".to_owned(), "aged_cord".to_owned()],
        places: vec!["Cellar".to_owned(), "shelf a".to_owned()],
        created: Some((FIRST_AT, FIRST_AT + 600_000_000)),
        ..QueueFilter::default()
    };
    let all = whole(&shop.store, &QueueFilter::default(), QueueOrder::Hazard);
    let fits = |row: &&QueueRow| {
        let unit = &row.unit;
        let has = |id: &str| row.overlays.iter().any(|overlay| overlay == id);
        unit.name.as_deref().is_some_and(|name| name.contains("walnut"))
            && matches!(row.state, WorkState::InRepair | WorkState::Ready)
            && matches!(row.class.as_deref(), Some("live" | "one_fault"))
            && row.basis.as_deref() == Some("not_ruled_out")
            && has("no_fuse")
            && has("aged_cord")
            && matches!(unit.place.as_deref(), Some("Cellar" | "Shelf A"))
            && unit.created_at <= FIRST_AT + 600_000_000
    };
    let wanted: BTreeSet<_> = all.iter().filter(fits).map(|row| row.unit.id).collect();
    assert_eq!(ids(&whole(&shop.store, &filter, QueueOrder::Hazard)), wanted);
}

/// A part of the shop on another device shows the same there.
fn carried(shop: &Shop) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let out = folder.path().join("out.bundle");
    let made = export(&shop.store, Some(&shop.files), &chosen(200), LATER, &out).expect("room");
    assert_eq!((made.units, made.events, made.photos, made.lost), (200, 2010, 10, 0));
    let mut other = Store::open_in_memory().expect("a record");
    let files = Files::of(folder.path().join("photos"));
    let taken = import(&mut other, &files, &out, LATER).expect("a bundle");
    assert_eq!((taken.new, taken.known, taken.photos), (2010, 0, 10));
    for unit in other.units(&UnitFilter::default()).expect("the record") {
        assert_eq!(shop.store.unit(unit.id).expect("the record"), Some(unit.clone()));
        let inspection = other.latest_inspection(unit.id).expect("it").expect("is there").id;
        let (here, there) = (shop.store.findings(inspection), other.findings(inspection));
        assert_eq!(here.expect("the record"), there.expect("the record"));
        for photo in other.photos(inspection).expect("the record") {
            assert!(files.has(&Digest::parse(&photo.sha256).expect("a digest")));
        }
    }
    let again = import(&mut other, &files, &out, LATER).expect("a bundle");
    assert_eq!((again.new, again.known, again.photos), (0, 2010, 0));
    let all = export(&shop.store, None, &Leaving::All, LATER, &out).expect("room");
    assert_eq!((all.units, all.events), (10_000, 100_500));
    assert_eq!((all.photos, all.lost), (0, 500), "without a folder of photos none leaves");
}

fn copied(shop: &Shop) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let into = Snapshots::of(&folder.path().join("record"));
    let made = shop.store.take_snapshot(&into).expect("room");
    assert_eq!(made.inspections, u64::from(SIZE.units));
    let copy = Store::open(Path::new(&made.path)).expect("a record");
    assert_eq!(copy.queue_counts().expect("counts"), shop.store.queue_counts().expect("counts"));
}
