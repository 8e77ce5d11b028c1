//! Bundles whose zip is in order and whose contents are not.

use super::trap::Trap;
use super::*;

#[test]
fn wrong_hashes_lengths_and_lists() {
    let mut trap = Trap::new();
    for index in 0..trap.apart.parts.len() {
        let mut apart = trap.apart.clone();
        let last = apart.parts[index].1.len() - 1;
        apart.parts[index].1[last] ^= 1;
        trap.with(&apart, &format!("part {index} changed"));
        let mut apart = trap.apart.clone();
        apart.parts[index].1.push(b'\n');
        let refusal = trap.with(&apart, &format!("part {index} longer"));
        assert!(matches!(refusal, BundleError::WrongHash(_)), "{refusal:?}");
        let mut apart = trap.apart.clone();
        apart.parts.remove(index);
        let refusal = trap.with(&apart, &format!("part {index} gone"));
        assert!(matches!(refusal, BundleError::Missing(_)), "{refusal:?}");
        let mut apart = trap.apart.clone();
        apart.manifest["parts"].as_array_mut().unwrap().remove(index);
        let refusal = trap.with(&apart, &format!("part {index} unlisted"));
        assert!(matches!(refusal, BundleError::Unlisted(_)), "{refusal:?}");
    }
    // The name of a photo is its hash, even where the manifest agrees with the bytes.
    let apart = trap.apart.with_part(1, photo(11).jpeg);
    assert!(matches!(trap.with(&apart, "another photo"), BundleError::WrongHash(_)));
}

#[test]
fn manifests_that_make_no_sense() {
    let mut trap = Trap::new();
    for (field, value) in [
        ("format", json!("other")),
        ("version", json!(0)),
        ("version", json!("1")),
        ("version", json!(-1)),
        ("parts", json!({})),
        ("parts", json!([7])),
        ("at", json!("today")),
        ("left_out", json!(["../x"])),
        ("lost", json!(["../x"])),
        ("extra", json!(1)),
    ] {
        let mut apart = trap.apart.clone();
        apart.manifest[field] = value;
        let refusal = trap.with(&apart, field);
        assert!(matches!(refusal, BundleError::BadManifest(_)), "{field}: {refusal:?}");
    }
    let mut apart = trap.apart.clone();
    apart.manifest = json!([1, 2]);
    trap.with(&apart, "a list");
    let mut apart = trap.apart.clone();
    apart.manifest["parts"][0]["sha256"] = json!("short");
    assert!(matches!(trap.with(&apart, "a short hash"), BundleError::BadManifest(_)));
}

#[test]
fn a_newer_version_is_refused_whatever_its_form() {
    let mut trap = Trap::new();
    for newer in [
        json!({"format": "coldchassis_bundle", "version": 2, "anything": {"else": true}}),
        json!({"format": "coldchassis_bundle", "version": u64::MAX}),
    ] {
        let mut apart = trap.apart.clone();
        apart.manifest = newer;
        let refusal = trap.with(&apart, "newer");
        assert!(matches!(refusal, BundleError::Newer { known: 1, .. }), "{refusal:?}");
    }
}

#[test]
fn broken_lines() {
    let mut trap = Trap::new();
    let deep = "[".repeat(100_000);
    let long = format!("\"{}\"", "x".repeat(2 << 20));
    for (text, what) in [
        ("{\n", "half an object"),
        ("\n", "an empty line"),
        ("7\n", "a number"),
        ("{}\n", "an empty object"),
        ("{\"id\": \"x\"}", "no end of line"),
        ("\u{0}\n", "a zero"),
        (deep.as_str(), "deep lists"),
        (long.as_str(), "a long line"),
    ] {
        let mut bytes = trap.apart.parts[0].1.clone();
        bytes.extend(text.as_bytes());
        let apart = trap.apart.with_part(0, bytes);
        let refusal = trap.with(&apart, what);
        assert!(matches!(refusal, BundleError::BadLine { .. }), "{what}: {refusal:?}");
    }
    let mut bytes = trap.apart.parts[0].1.clone();
    bytes.extend([0xFF, 0xFE, b'\n']);
    let apart = trap.apart.with_part(0, bytes);
    assert!(matches!(trap.with(&apart, "no text"), BundleError::BadLine { .. }));
}

#[test]
fn wrong_types_of_fields() {
    let mut trap = Trap::new();
    for (field, value) in [
        ("id", json!(7)),
        ("id", json!("not-an-id")),
        ("device", json!(null)),
        ("device", json!("")),
        ("device", json!("x".repeat(500))),
        ("author", json!(["a"])),
        ("author", json!("x".repeat(500))),
        ("at", json!("today")),
        ("at", json!(1.5)),
        ("at", json!(-1)),
        ("unit", json!({})),
        ("subject", json!("a b")),
        ("subject", json!("")),
        ("subject", json!("x".repeat(300))),
        ("supersedes", json!(1)),
        ("undoes", json!("x")),
        ("demo", json!("yes")),
        ("demo", json!(true)),
        ("surprise", json!(1)),
    ] {
        let set = |event: &mut Value| event[field] = value.clone();
        trap.with_event(1, set, &format!("{field} {value}"));
    }
    for field in ["id", "device", "author", "at", "unit", "subject", "intent", "demo"] {
        let unset = |event: &mut Value| {
            event.as_object_mut().unwrap().remove(field);
        };
        trap.with_event(1, unset, &format!("no {field}"));
    }
}

#[test]
fn wrong_types_of_what_is_set() {
    let mut trap = Trap::new();
    for (subject, change) in [
        ("unit.created", json!({"number": "one"})),
        ("unit.created", json!({"number": -1})),
        ("unit.name", json!(7)),
        ("unit.name", json!("x".repeat(3000))),
        ("unit.supply", json!({"volts": 0, "hertz": 60})),
        ("unit.supply", json!("mains")),
        ("inspection.started", json!("yes")),
        ("inspection.access", json!("outside")),
        ("inspection.access", json!(["everywhere"])),
        ("finding.answers.plug", json!("a_fourth_kind")),
        ("finding.answers.plug", json!({"deep": [1]})),
        (".added", json!({"sha256": "../../x", "width": 1, "height": 1, "finding": null})),
        (".added", json!("front")),
    ] {
        let at = trap.place_of(subject);
        let set = |event: &mut Value| event["change"] = change.clone();
        trap.with_event(at, set, &format!("{subject} {change}"));
    }
    let plug = trap.place_of("answers.plug");
    for (subject, change) in [
        ("finding.answers.unheard_of", json!("fitted")),
        ("finding.readings.ohms_b_chassis_on", json!(-4)),
        ("finding.values.line_capacitor", json!({"farads": "4n7"})),
        ("finding.tubes", json!("12SA7")),
        ("finding.meter", json!({"max_ohms": 0})),
        ("finding.live_test.qualified", json!(7)),
        ("finding.left_open.rated", json!("yes")),
        ("finding.remedies", json!(["magic"])),
        ("finding.remedies", json!({"steps": ["polarised_plug"], "limit_ma": 50})),
        ("finding.proof.earth_bond", json!({"read": "low"})),
        ("finding.proof.earth_bond", json!({"read": 0.1, "holds": true})),
        ("finding.proof.earth_bond", json!({})),
        ("finding.proof.unheard_of", json!({"read": 0.1})),
        ("finding.proof", json!({"earth_bond": {"read": 0.1}})),
        ("finding.supply", json!({"volts": 1, "hertz": 1})),
        ("finding.answers", json!({"plug": "no_plug"})),
        ("inspection.photos", json!(["front"])),
    ] {
        let set = |event: &mut Value| {
            event["subject"] = json!(subject);
            event["change"] = change.clone();
        };
        // A group given whole reads as one, so only its own shape is at stake.
        if subject != "finding.answers" {
            trap.with_event(plug, set, &format!("{subject} {change}"));
        }
    }
}

/// Whoever once got a bundle knows the ids in it: a unit of their own must not stand in for one that is here.
#[test]
fn an_inspection_that_another_unit_has() {
    let mut trap = Trap::new();
    let events = trap.apart.events();
    let other = |id: &Uuid| Uuid::from_u128(id.as_u128() ^ (1 << 40));
    let renamed = |event: &Value| {
        let mut event = event.clone();
        for field in ["id", "intent", "unit"] {
            let id: Uuid = serde_json::from_value(event[field].clone()).unwrap();
            event[field] = json!(other(&id));
        }
        for field in ["supersedes", "undoes", "restores"] {
            if let Ok(ids) = serde_json::from_value::<Vec<Uuid>>(event[field].clone()) {
                event[field] = json!(ids.iter().map(other).collect::<Vec<_>>());
            } else if let Ok(id) = serde_json::from_value::<Uuid>(event[field].clone()) {
                event[field] = json!(other(&id));
            }
        }
        event
    };
    let both: Vec<Value> = events.iter().cloned().chain(events.iter().map(renamed)).collect();
    let apart = trap.apart.with_events(&both);
    let refusal = trap.with(&apart, "one inspection of two units");
    let is_named = matches!(
        refusal,
        BundleError::Store(crate::store::StoreError::Dangling { field: "inspection", .. })
    );
    assert!(is_named, "{refusal:?}");
}

#[test]
fn ids_that_dangle() {
    let mut trap = Trap::new();
    let (plug, stranger) = (trap.place_of("answers.plug"), json!(Uuid::from_u128(7)));
    let other_key = trap.apart.events()[trap.place_of("unit.name")]["id"].clone();
    for (field, value) in [
        ("unit", stranger.clone()),
        ("inspection", stranger.clone()),
        ("inspection", json!(null)),
        ("supersedes", other_key.clone()),
        ("supersedes", stranger.clone()),
    ] {
        let set = |event: &mut Value| event[field] = value.clone();
        let refusal = trap.with_event(plug, set, &format!("{field} {value}"));
        let fits = matches!(
            refusal,
            BundleError::Store(crate::store::StoreError::Dangling { .. })
                | BundleError::BadEvent { .. }
        );
        assert!(fits, "{field}: {refusal:?}");
    }
    let set = |event: &mut Value| {
        event["undoes"] = stranger.clone();
        event["restores"] = other_key.clone();
    };
    trap.with_event(plug, set, "restores of another subject");
    let set = |event: &mut Value| {
        event["undoes"] = stranger.clone();
        event["restores"] = stranger.clone();
    };
    trap.with_event(plug, set, "restores what is nowhere");
    // The start of the inspection, or the creation, is missing.
    for subject in ["inspection.started", "unit.created"] {
        let mut events = trap.apart.events();
        events.remove(trap.place_of(subject));
        let apart = trap.apart.with_events(&events);
        trap.with(&apart, subject);
    }
}

#[test]
fn events_that_go_round_in_a_circle() {
    let mut trap = Trap::new();
    let mut events = trap.apart.events();
    let mut second = events[trap.place_of("answers.plug")].clone();
    second["id"] = json!(Uuid::from_u128(9));
    second["supersedes"] = events[trap.place_of("answers.plug")]["id"].clone();
    events[trap.place_of("answers.plug")]["supersedes"] = second["id"].clone();
    events.push(second);
    let apart = trap.apart.with_events(&events);
    trap.with(&apart, "a circle");
}

#[test]
fn events_from_the_future() {
    let mut trap = Trap::new();
    let set = |event: &mut Value| event["at"] = json!(NOW + 86_400_001);
    let refusal = trap.with_event(2, set, "tomorrow");
    assert!(matches!(refusal, BundleError::Future { line: 3 }), "{refusal:?}");
    // A clock set to local time is no reason.
    let mut events = trap.apart.events();
    events[2]["at"] = json!(NOW + 43_200_000);
    trap.apart.with_events(&events).write(&trap.sent);
    trap.victim.take(&trap.sent).unwrap();
}

#[test]
fn one_id_with_two_contents() {
    let mut trap = Trap::new();
    let mut events = trap.apart.events();
    let mut other = events[1].clone();
    other["author"] = json!("Somebody else");
    events.push(other);
    let apart = trap.apart.with_events(&events);
    let contradicts = |refusal: &BundleError| {
        matches!(refusal, BundleError::Store(crate::store::StoreError::Contradicts(_)))
    };
    assert!(contradicts(&trap.with(&apart, "in one bundle")));
    trap.apart.write(&trap.sent);
    trap.victim.take(&trap.sent).unwrap();
    let set = |event: &mut Value| event["author"] = json!("Somebody else");
    assert!(contradicts(&trap.with_event(1, set, "against the record")));
}

#[test]
fn photos_that_are_none_or_belong_to_nothing() {
    let mut trap = Trap::new();
    let good = photo(10);
    let mut noted = good.jpeg.clone();
    noted.splice(2..2, *b"\xFF\xE1\x00\x08Exif\0\0");
    let mut clip = good.jpeg.clone();
    clip.extend(b"a film clip");
    let large = write_jpeg(&image::RgbImage::new(2049, 8)).unwrap();
    for (bytes, what) in [
        (b"MZ not a photo".to_vec(), "a program"),
        (noted, "a camera's notes"),
        (clip, "a clip behind"),
        (good.jpeg[..40].to_vec(), "half a photo"),
        (large, "too large"),
        (Vec::new(), "nothing"),
    ] {
        let digest = Digest::of(&bytes);
        let mut apart = trap.apart.clone();
        apart.parts.push((format!("photos/{digest}.jpg"), bytes));
        apart.parts.push((format!("photos/{digest}.thumb.jpg"), good.thumbnail.clone()));
        let refusal = trap.with(&apart.listed(), what);
        assert!(matches!(refusal, BundleError::BadPhoto { .. }), "{what}: {refusal:?}");
    }
    // A photo that no event names, one without its thumbnail, and an event whose photo is nowhere.
    let mut apart = trap.apart.clone();
    let loose = photo(55);
    apart.parts.push((format!("photos/{}.jpg", loose.digest), loose.jpeg));
    let alone = trap.with(&apart.clone().listed(), "without a thumbnail");
    assert!(matches!(alone, BundleError::Missing(_)), "{alone:?}");
    apart.parts.push((format!("photos/{}.thumb.jpg", loose.digest), loose.thumbnail));
    let refusal = trap.with(&apart.listed(), "of no event");
    assert!(matches!(refusal, BundleError::Photo(_)), "{refusal:?}");
    let mut apart = trap.apart.clone();
    apart.parts.truncate(1);
    let refusal = trap.with(&apart.listed(), "nowhere");
    assert!(matches!(refusal, BundleError::Photo(_)), "{refusal:?}");
}
