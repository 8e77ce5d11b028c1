//! Numbers for people.

use super::super::number::{NumberClaim, assign};
use super::*;

fn claim(unit: u32, number: u32, at: i64, demo: bool) -> NumberClaim {
    NumberClaim::new(v7(0, 0, unit), Some(number), at, v7(0, 1, unit), demo)
}

#[test]
fn the_earlier_creation_keeps_its_number_and_nobody_else_moves() {
    let claims = [
        claim(1, 5, 200, false),
        claim(2, 5, 100, false),
        claim(3, 6, 300, false),
        claim(4, 5, 300, false),
        claim(5, 5, 1, true),
        claim(6, 0, 1, false),
    ];
    let given: Vec<_> = assign(&claims).into_values().collect();
    assert_eq!(given, [7, 5, 6, 8, 9, 1]);
}

#[test]
fn two_devices_show_the_same_numbers_in_whatever_order_they_meet() {
    let (mut here, mut there) = (Device::new("bench", 1), Device::new("phone", 2));
    let mut third = Device::new("shop", 3);
    let ours = [here.create("a", false), here.create("b", false)];
    there.at += 5;
    let theirs = [there.create("c", false), there.create("d", false)];
    assert_eq!(there.store.unit(theirs[1]).unwrap().unwrap().number, 2);
    let (from_here, from_there) = (here.outgoing(), there.outgoing());
    let reversed = from_there.iter().chain(&from_here).rev().cloned();
    third.store.append_foreign(reversed).unwrap();
    here.store.append_foreign(from_there).unwrap();
    there.store.append_foreign(from_here).unwrap();
    let mut expected = vec![(ours[0], 1), (ours[1], 2), (theirs[0], 3), (theirs[1], 4)];
    expected.sort();
    assert_eq!(here.numbers(), expected);
    assert_eq!(there.numbers(), expected);
    assert_eq!(third.numbers(), expected);
    assert_eq!(here.store.next_number().unwrap(), 5);
}

#[test]
fn a_deletion_renumbers_nothing_and_its_number_is_not_given_again() {
    let (mut here, mut there) = (Device::new("bench", 1), Device::new("phone", 2));
    let ours = here.create("a", false);
    there.at += 5;
    let theirs = there.create("b", false);
    here.store.append_foreign(there.outgoing()).unwrap();
    assert_eq!(here.store.unit(theirs).unwrap().unwrap().number, 2);
    here.delete(ours).unwrap();
    assert_eq!(here.numbers(), [(theirs, 2)]);
    there.store.append_foreign(here.outgoing()).unwrap();
    assert_eq!(there.numbers(), [(theirs, 2)]);
    here.delete(theirs).unwrap();
    assert_eq!(here.store.next_number().unwrap(), 3);
    here.store.rebuild_projections().unwrap();
    assert_eq!(here.store.next_number().unwrap(), 3);
}

#[test]
fn the_demonstration_gives_way_to_real_units() {
    let (mut here, mut there) = (Device::new("bench", 1), Device::new("phone", 2));
    let shown = here.create("Demonstration", true);
    there.at += 100;
    let real = there.create("Kitchen radio", false);
    here.store.append_foreign(there.outgoing()).unwrap();
    let mut expected = vec![(real, 1), (shown, 2)];
    expected.sort();
    assert_eq!(here.numbers(), expected);
}

#[test]
fn a_number_that_cannot_be_given_gets_the_first_free_one() {
    let mut device = Device::new("bench", 1);
    device.create("a", false);
    let unit = device.id();
    let created = vec![Change::UnitCreated { number: u32::MAX }];
    device.act(&of_unit(unit, created)).unwrap();
    assert_eq!(device.store.unit(unit).unwrap().unwrap().number, 2);
}

#[test]
fn a_number_that_the_demonstration_frees_is_settled_as_in_a_rebuild() {
    let (mut here, mut there) = (Device::new("bench", 1), Device::new("phone", 2));
    let moved = here.create("Demonstration", true);
    let removed = here.create("Demonstration", true);
    there.create("Kitchen radio", false);
    here.store.append_foreign(there.outgoing()).unwrap();
    let number = |device: &Device| device.store.unit(moved).unwrap().unwrap().number;
    assert_eq!(number(&here), 3);
    here.delete(removed).unwrap();
    assert_eq!(number(&here), 2);
    here.store.rebuild_projections().unwrap();
    assert_eq!(number(&here), 2);
}

#[test]
fn a_claim_follows_the_winner_of_the_creation() {
    let mut device = Device::new("bench", 1);
    let unit = device.create("a", false);
    let first = device.outgoing().remove(0);
    let second = Event {
        id: device.id(),
        device: "phone".to_owned(),
        at: first.at + 1,
        change: Some(json!({"number": 9})),
        ..first
    };
    device.store.append_foreign([second]).unwrap();
    assert_eq!(device.numbers(), [(unit, 9)]);
}
