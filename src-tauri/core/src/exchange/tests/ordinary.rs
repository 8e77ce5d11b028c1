//! Bundles as this program writes them.

use super::*;

fn shop() -> (Device, [(Uuid, Uuid); 2], (Uuid, Digest)) {
    let mut shop = Device::new("shop", 1);
    let radio = shop.create("Kitchen set", false);
    shop.answer(radio, "plug", "two_equal_blades");
    let photo = shop.photograph(radio, 10);
    let amplifier = shop.create("Practice amplifier", false);
    shop.photograph(amplifier, 20);
    (shop, [radio, amplifier], photo)
}

#[test]
fn another_device_shows_what_this_one_shows() {
    let (shop, ..) = shop();
    let (path, exported) = shop.bundle(&Leaving::All);
    assert_eq!((exported.units, exported.events, exported.photos), (2, 13, 2));
    assert_eq!(exported.bytes, std::fs::metadata(&path).unwrap().len());
    let mut phone = Device::new("phone", 2);
    let imported = phone.take(&path).unwrap();
    assert_eq!((imported.new, imported.known, imported.late), (13, 0, 0));
    assert_eq!((imported.photos, imported.without_photo), (2, 0));
    assert_eq!(imported.units.len(), 2);
    assert_eq!(phone.views(), shop.views());
    assert_eq!(phone.pictures(), shop.pictures());
}

#[test]
fn the_same_bundle_twice_changes_nothing() {
    let (shop, ..) = shop();
    let (path, _) = shop.bundle(&Leaving::All);
    let mut phone = Device::new("phone", 2);
    phone.take(&path).unwrap();
    let before = (phone.views(), phone.pictures());
    let again = phone.take(&path).unwrap();
    assert_eq!((again.new, again.known, again.photos), (0, 13, 0));
    assert!(again.units.is_empty());
    assert_eq!((phone.views(), phone.pictures()), before);
}

#[test]
fn the_same_record_gives_the_same_bytes() {
    let (shop, ..) = shop();
    let first = std::fs::read(shop.bundle(&Leaving::All).0).unwrap();
    assert_eq!(std::fs::read(shop.bundle(&Leaving::All).0).unwrap(), first);
}

#[test]
fn some_units_leave_with_all_of_theirs_and_nothing_else() {
    let (shop, [radio, _], _) = shop();
    let (path, exported) = shop.bundle(&Leaving::Units([radio.0].into()));
    assert_eq!((exported.units, exported.events, exported.photos), (1, 7, 1));
    let apart = Apart::of(&path);
    assert!(apart.events().iter().all(|event| event["unit"] == json!(radio.0)));
    let mut phone = Device::new("phone", 2);
    phone.take(&path).unwrap();
    assert_eq!(phone.store.units(&UnitFilter::default()).unwrap().len(), 1);
}

#[test]
fn every_one_of_several_chosen_units_leaves() {
    let mut shop = Device::new("shop", 1);
    let units: Vec<Uuid> = (0..7).map(|_| shop.create("Set", false).0).collect();
    for chosen in 1..units.len() {
        // One that is not there in the middle takes no other's place.
        let nobody = Uuid::from_u128(7);
        let which: std::collections::BTreeSet<Uuid> =
            units.iter().take(chosen).copied().chain([nobody]).collect();
        let (path, exported) = shop.bundle(&Leaving::Units(which));
        assert_eq!(exported.units, chosen as u64);
        let mut phone = Device::new("phone", 2);
        assert_eq!(phone.take(&path).unwrap().units.len(), chosen);
    }
}

#[test]
fn the_demonstration_never_leaves_even_when_it_is_asked_for() {
    let mut shop = Device::new("shop", 1);
    let demo = shop.create("Invented", true);
    for which in [Leaving::All, Leaving::Units([demo.0].into())] {
        let (path, exported) = shop.bundle(&which);
        assert_eq!((exported.units, exported.events), (0, 0), "{which:?}");
        assert!(!String::from_utf8_lossy(&std::fs::read(path).unwrap()).contains("Invented"));
    }
}

#[test]
fn a_removed_photo_stays_and_a_lost_one_is_counted() {
    let (mut shop, [radio, amplifier], (photo, digest)) = shop();
    shop.act(radio.0, Some(radio.1), vec![Change::photo_removed(photo)], false);
    let (_, lost) = shop.photograph(amplifier, 30);
    shop.files().remove(&lost).unwrap();
    let (path, exported) = shop.bundle(&Leaving::All);
    assert_eq!((exported.photos, exported.lost), (1, 1));
    let apart = Apart::of(&path);
    let mut left_out = vec![json!(digest.as_str()), json!(lost.as_str())];
    left_out.sort_by_key(Value::to_string);
    assert_eq!(apart.manifest["left_out"], json!(left_out));
    let mut phone = Device::new("phone", 2);
    let imported = phone.take(&path).unwrap();
    assert_eq!((imported.photos, imported.without_photo), (1, 2));
    assert!(!phone.files().has(&digest));
}

#[test]
fn what_a_damaged_file_cost_is_said_and_taken_in() {
    let (mut shop, [radio, _], _) = shop();
    for answer in ["two_polarised_blades", "three_pins"] {
        shop.answer(radio, "plug", answer);
    }
    let mut events = shop.store.events(radio.0).unwrap();
    let at = events.iter().position(|event| event.change == Some(json!("two_polarised_blades")));
    let gone = events.remove(at.unwrap()).id;
    // As a recovery puts together what could be read.
    let mut recovered = Device::new("shop", 3);
    recovered.store.append_foreign(events).unwrap();
    let (path, _) = recovered.bundle(&Leaving::All);
    let apart = Apart::of(&path);
    assert_eq!(apart.manifest["lost"], json!([gone]));
    let mut phone = Device::new("phone", 2);
    phone.take(&path).unwrap();
    assert_eq!(phone.views(), recovered.views());
    // What is not said to be lost has to be there.
    let mut silent = apart.clone();
    silent.manifest["lost"] = json!([]);
    silent.write(&path);
    let refused = Device::new("stand", 4).take(&path).unwrap_err();
    assert!(
        matches!(
            refused,
            BundleError::Store(crate::store::StoreError::Dangling { id: _, field: "supersedes" })
        ),
        "{refused:?}"
    );
    // Whoever has it gives it back.
    let (whole, _) = shop.bundle(&Leaving::All);
    phone.take(&whole).unwrap();
    let mut fresh = Device::new("van", 5);
    fresh.take(&whole).unwrap();
    assert_eq!(phone.views(), fresh.views());
}

#[test]
fn a_photo_with_other_bytes_than_its_name_says_stays() {
    let (shop, _, (_, digest)) = shop();
    let path = shop.folder.path().join(format!("photos/{digest}.jpg"));
    std::fs::write(path, b"worn card").unwrap();
    let (_, exported) = shop.bundle(&Leaving::All);
    assert_eq!((exported.photos, exported.lost), (1, 1));
}

#[test]
fn a_deleted_unit_stays_deleted_whatever_comes_later() {
    let (mut shop, [radio, _], (_, digest)) = shop();
    let (before, _) = shop.bundle(&Leaving::All);
    let before_kept = shop.folder.path().join("before.bundle");
    std::fs::rename(before, &before_kept).unwrap();
    let mut phone = Device::new("phone", 2);
    phone.take(&before_kept).unwrap();
    shop.delete(radio.0);
    shop.files().remove(&digest).unwrap();
    let (after, _) = shop.bundle(&Leaving::All);
    let taken = phone.take(&after).unwrap();
    assert!(taken.units.contains(&radio.0));
    assert_eq!(phone.views(), shop.views());
    // What was sent before the deletion brings nothing back, not even the file of the photo.
    phone.files().remove(&digest).unwrap();
    let late = phone.take(&before_kept).unwrap();
    assert_eq!((late.new, late.late, late.photos), (0, 7, 0));
    assert!(!phone.files().has(&digest));
    assert_eq!(phone.views(), shop.views());
}

#[test]
fn both_devices_number_clashing_units_alike() {
    let (mut shop, mut phone) = (Device::new("shop", 1), Device::new("phone", 2));
    shop.create("Here", false);
    phone.create("There", false);
    let (from_shop, _) = shop.bundle(&Leaving::All);
    let (from_phone, _) = phone.bundle(&Leaving::All);
    phone.take(&from_shop).unwrap();
    shop.take(&from_phone).unwrap();
    assert_eq!(phone.views(), shop.views());
    let numbers = shop.store.units(&UnitFilter::default()).unwrap();
    let mut numbers: Vec<_> = numbers.iter().map(|unit| unit.number).collect();
    numbers.sort_unstable();
    assert_eq!(numbers, [1, 2]);
}

#[test]
fn what_was_half_written_never_stands_under_the_name() {
    let (shop, ..) = shop();
    let to = shop.folder.path().join("kept.bundle");
    std::fs::write(&to, "an older one").unwrap();
    let store = &shop.store;
    let folder_gone = shop.folder.path().join("gone").join("kept.bundle");
    let failed = export(store, Some(&shop.files()), &Leaving::All, NOW, &folder_gone);
    assert!(matches!(failed, Err(BundleError::Io(_))));
    assert_eq!(std::fs::read_to_string(&to).unwrap(), "an older one");
    let names: Vec<_> = std::fs::read_dir(shop.folder.path()).unwrap().flatten().collect();
    assert_eq!(names.len(), 2, "photos and the older one: {names:?}");
}

#[test]
fn photos_are_stored_and_not_packed() {
    let (shop, _, (_, digest)) = shop();
    let (path, _) = shop.bundle(&Leaving::All);
    let mut zip = zip::ZipArchive::new(std::fs::File::open(path).unwrap()).unwrap();
    let entry = zip.by_name(&format!("photos/{digest}.jpg")).unwrap();
    assert_eq!(entry.compression(), zip::CompressionMethod::Stored);
}
