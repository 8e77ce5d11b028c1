//! Photos: added, captioned, removed, and each taken back.

use super::*;

/// A file name of 64 digits.
fn digest(digit: char) -> String {
    digit.to_string().repeat(64)
}

fn row(digit: char) -> PhotoRow {
    let finding = Some("answers.plug".to_owned());
    PhotoRow { finding, sha256: digest(digit), width: 2048, height: 1536, hints: Vec::new() }
}

fn added(photo: Uuid, digit: char) -> Change {
    Change::PhotoAdded { photo, row: row(digit).value() }
}

fn captioned(photo: Uuid, text: &str) -> Change {
    Change::PhotoCaptioned { photo, text: text.to_owned() }
}

impl Device {
    fn change(&mut self, place: (Uuid, Uuid), change: Change) {
        self.act(&in_inspection(place.0, place.1, vec![change])).unwrap();
    }

    fn captions(&self, inspection: Uuid) -> Vec<(Uuid, String)> {
        let photos = self.store.photos(inspection).unwrap();
        photos.into_iter().map(|photo| (photo.id, photo.caption)).collect()
    }
}

#[test]
fn a_photo_shows_what_was_added_by_whom_and_when() {
    let (mut device, unit, inspection) = bench();
    let id = device.id();
    device.change((unit, inspection), added(id, 'a'));
    let expected = Photo {
        id,
        inspection,
        finding: Some("answers.plug".to_owned()),
        sha256: digest('a'),
        width: 2048,
        height: 1536,
        caption: String::new(),
        marks: json!([]),
        before: None,
        hints: Vec::new(),
        author: "Inspector of bench".to_owned(),
        at: device.at,
    };
    assert_eq!(device.store.photos(inspection).unwrap(), [expected]);
    let nobody = device.id();
    assert_eq!(device.store.photos(nobody).unwrap(), []);
}

#[test]
fn adding_captioning_and_removing_are_taken_back_one_by_one() {
    let (mut device, unit, inspection) = bench();
    let (place, photo) = ((unit, inspection), device.id());
    device.change(place, added(photo, 'a'));
    let first = device.store.photos(inspection).unwrap();
    device.change(place, captioned(photo, "cord"));
    device.change(place, captioned(photo, "cord entry"));
    device.change(place, Change::photo_removed(photo));
    assert_eq!(device.captions(inspection), []);

    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.captions(inspection), [(photo, "cord entry".to_owned())]);
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.captions(inspection), [(photo, "cord".to_owned())]);
    device.undo(unit, Some(inspection)).unwrap();
    // What was put back keeps its author and time.
    assert_eq!(device.store.photos(inspection).unwrap(), first);
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.captions(inspection), []);

    for _ in 0..3 {
        device.redo(unit, Some(inspection)).unwrap();
    }
    assert_eq!(device.captions(inspection), [(photo, "cord entry".to_owned())]);
    device.redo(unit, Some(inspection)).unwrap();
    assert_eq!(device.captions(inspection), []);
}

#[test]
fn a_restored_photo_keeps_its_place() {
    let (mut device, unit, inspection) = bench();
    let place = (unit, inspection);
    let photos = [device.id(), device.id(), device.id()];
    for (photo, digit) in photos.into_iter().zip(['a', 'b', 'c']) {
        device.change(place, added(photo, digit));
    }
    let before = device.store.photos(inspection).unwrap();
    assert_eq!(before.iter().map(|photo| photo.id).collect::<Vec<_>>(), photos);
    device.change(place, Change::photo_removed(photos[0]));
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(device.store.photos(inspection).unwrap(), before);
}

#[test]
fn a_rebuild_and_another_device_show_the_same_photos() {
    let (mut here, unit, inspection) = bench();
    let place = (unit, inspection);
    let photos = [here.id(), here.id()];
    here.change(place, added(photos[0], 'a'));
    here.change(place, captioned(photos[0], "front"));
    here.change(place, added(photos[1], 'b'));
    here.change(place, Change::photo_removed(photos[1]));
    let before = projections(&here.store);
    here.store.rebuild_projections().unwrap();
    assert_eq!(projections(&here.store), before);
    let mut there = Device::new("phone", 2);
    let mut sent = here.outgoing();
    sent.reverse();
    there.store.append_foreign(sent).unwrap();
    assert_eq!(there.store.photos(inspection).unwrap(), here.store.photos(inspection).unwrap());
}

#[test]
fn rows_that_could_lead_elsewhere_are_not_shown() {
    let (mut device, unit, inspection) = bench();
    for bad in [
        json!({"sha256": "../../../record", "width": 1, "height": 1, "finding": null}),
        json!({"sha256": digest('A'), "width": 1, "height": 1, "finding": null}),
        json!({"sha256": digest('a'), "width": 0, "height": 1, "finding": null}),
        json!({"sha256": digest('a'), "width": -1, "height": 1, "finding": null}),
        json!({"sha256": digest('a')}),
        json!("front"),
    ] {
        let photo = device.id();
        device.change((unit, inspection), Change::PhotoAdded { photo, row: bad.clone() });
        assert_eq!(device.store.photos(inspection).unwrap(), [], "{bad}");
    }
}

#[test]
fn the_log_names_photos_until_the_unit_is_purged() {
    let (mut device, unit, inspection) = bench();
    let (place, photos) = ((unit, inspection), [device.id(), device.id()]);
    device.change(place, added(photos[0], 'a'));
    device.change(place, added(photos[1], 'b'));
    device.change(place, Change::photo_removed(photos[1]));
    let named = [digest('a'), digest('b')].into_iter().collect();
    assert_eq!(device.store.photo_digests().unwrap(), named);
    device.delete(unit).unwrap();
    assert!(device.store.photo_digests().unwrap().is_empty());
    assert!(rows(&device.store, "photo").is_empty());
}

#[test]
fn photos_stand_in_the_order_given_and_new_ones_after() {
    let (mut device, unit, inspection) = bench();
    let place = (unit, inspection);
    let ids = [device.id(), device.id(), device.id()];
    for (id, digit) in ids.into_iter().zip(['a', 'b', 'c']) {
        device.change(place, added(id, digit));
    }
    let order = |device: &Device| -> Vec<Uuid> {
        device.store.photos(inspection).unwrap().into_iter().map(|photo| photo.id).collect()
    };
    assert_eq!(order(&device), ids);
    device.change(place, Change::PhotosOrdered(vec![ids[2], ids[0]]));
    assert_eq!(order(&device), [ids[2], ids[0], ids[1]]);
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(order(&device), ids);
}

#[test]
fn marks_and_pairs_are_kept_beside_the_photo_and_taken_back_one_by_one() {
    let (mut device, unit, inspection) = bench();
    let place = (unit, inspection);
    let (before, after) = (device.id(), device.id());
    device.change(place, added(before, 'a'));
    device.change(place, added(after, 'b'));
    let marks = json!([{"pin": {"x": 0.5, "y": 0.25}}]);
    device.change(place, Change::PhotoMarked { photo: after, marks: marks.clone() });
    device.change(place, Change::PhotoPaired { photo: after, before });
    let shown = |device: &Device| {
        let photos = device.store.photos(inspection).unwrap();
        photos.into_iter().map(|photo| (photo.marks, photo.before)).collect::<Vec<_>>()
    };
    assert_eq!(shown(&device), [(json!([]), None), (marks.clone(), Some(before))]);
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(shown(&device), [(json!([]), None), (marks, None)]);
    device.undo(unit, Some(inspection)).unwrap();
    assert_eq!(shown(&device), [(json!([]), None), (json!([]), None)]);
    device.change(place, Change::PhotoPaired { photo: after, before });
    device.change(place, Change::photo_unpaired(after));
    assert_eq!(shown(&device)[1].1, None);
}

#[test]
fn what_its_pixels_hint_at_is_kept_with_a_photo() {
    let (mut device, unit, inspection) = bench();
    let photo = device.id();
    let hinted = PhotoRow { hints: vec!["blurred".to_owned()], ..row('a') };
    device.change((unit, inspection), Change::PhotoAdded { photo, row: hinted.value() });
    assert_eq!(device.store.photos(inspection).unwrap()[0].hints, ["blurred"]);
}
