//! What the queue is searched and filtered by: words that mean findings, places, and what a page costs.

use super::queue::{found, shop};
use super::*;
use std::collections::BTreeMap;

#[test]
fn a_word_finds_what_it_is_said_to_mean() {
    let (mut device, units) = shop();
    let place = (units[1], device.store.latest_inspection(units[1]).unwrap().unwrap().id);
    device.find(place, "answers.bare_metal", json!(["screws", "panel"]));
    device.find(place, "answers.back", json!("cant_tell"));
    let meant = |text: &str, meanings: &[(&str, Meaning)]| {
        let mut by_word: BTreeMap<String, Vec<Meaning>> = BTreeMap::new();
        for (word, meaning) in meanings {
            by_word.entry((*word).to_owned()).or_default().push(meaning.clone());
        }
        found(
            &device,
            &QueueFilter { text: text.to_owned(), meanings: by_word, ..QueueFilter::default() },
        )
    };
    let any = |key: &str| Meaning::any(key);
    let answer = |id: &str| Meaning::answer("answers.bare_metal", id);
    assert!(meant("blech", &[]).is_empty());
    assert_eq!(meant("blech", &[("blech", answer("panel"))]), [units[1]]);
    assert!(meant("blech", &[("blech", answer("jack"))]).is_empty());
    assert_eq!(meant("blech", &[("blech", any("answers.bare_metal"))]), [units[1]]);
    assert!(meant("back", &[("back", any("answers.back"))]).is_empty(), "nobody could tell");
    assert_eq!(
        meant("blech", &[("blech", answer("jack")), ("blech", answer("screws"))]),
        [units[1]]
    );
    // What a word means stands beside what is written, and every word has to be found.
    assert_eq!(meant("kitchen", &[("kitchen", answer("jack"))]), [units[1]]);
    assert!(meant("tuner blech", &[("blech", answer("panel"))]).is_empty());
    assert_eq!(meant("kit blech", &[("blech", answer("panel"))]), [units[1]]);
}

#[test]
fn places_are_found_by_a_part_of_their_name() {
    let (mut device, units) = shop();
    for (unit, place) in units.iter().zip(["Shelf B", "Cellar", "Shelf B", "Öfen, shelf", ""]) {
        device.act(&of_unit(*unit, vec![Change::UnitPlace(place.to_owned())])).unwrap();
    }
    let places = |device: &Device, text: &str, most| device.store.places(text, most).unwrap();
    assert_eq!(places(&device, "", 9), ["Cellar", "Shelf B", "Öfen, shelf"]);
    assert_eq!(places(&device, "", 2), ["Cellar", "Shelf B"]);
    assert_eq!(places(&device, " SHELF ", 9), ["Shelf B", "Öfen, shelf"]);
    assert_eq!(places(&device, "öf", 9), ["Öfen, shelf"]);
    assert!(places(&device, "%", 9).is_empty());
    device.delete(units[1]).unwrap();
    assert_eq!(places(&device, "", 1), ["Shelf B"]);
}

/// Each page is read off an index in its order: nothing is looked through, and nothing sorted.
#[test]
fn a_page_costs_no_more_than_its_rows() {
    let (device, _) = shop();
    let plan = |sql: &str, asked: &[&dyn rusqlite::ToSql]| -> String {
        let sql = format!("EXPLAIN QUERY PLAN {sql}");
        let mut statement = device.store.conn.prepare(&sql).unwrap();
        let steps = statement.query_map(asked, |row| row.get::<_, String>("detail")).unwrap();
        steps.collect::<rusqlite::Result<Vec<_>>>().unwrap().join("; ")
    };
    let page = plan(include_str!("../sql/queue_page.sql"), &[&0, &9, &50]);
    assert_eq!(page, "SEARCH queue USING INTEGER PRIMARY KEY (rowid>? AND rowid<?)");
    let matching = plan(include_str!("../sql/queue_page_matching.sql"), &[&0, &9, &50, &"a"]);
    // M: what matches, by the index of words; < and >: the span of places; and in order of the rowid.
    let (index, how) = matching.rsplit_once(' ').unwrap();
    assert_eq!(index, "SCAN unit_text VIRTUAL TABLE INDEX");
    assert!(['M', '<', '>'].iter().all(|mark| how.contains(*mark)), "{matching}");
    let count = plan(include_str!("../sql/queue_pending.sql"), &[&"1"]);
    assert_eq!(count.matches("USING COVERING INDEX queue_by_engine").count(), 3, "{count}");
    let places = plan(include_str!("../sql/unit_places.sql"), &[]);
    assert_eq!(
        places.matches("SEARCH unit USING COVERING INDEX unit_by_place").count(),
        2,
        "{places}"
    );
}
