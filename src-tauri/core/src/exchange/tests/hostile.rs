//! Zips that nobody honest wrote: refused whole, with the reason, and nothing changed.

use super::trap::Trap;
use super::*;

#[test]
fn put_together_again_as_it_was_it_is_taken_in() {
    let mut trap = Trap::new();
    trap.apart.clone().listed().write(&trap.sent);
    assert_eq!(trap.victim.take(&trap.sent).unwrap().units.len(), 2, "the new and the renumbered");
}

#[test]
fn names_that_lead_elsewhere() {
    for name in [
        "../../evil.jpg",
        "photos/../../evil.jpg",
        "/etc/passwd",
        "C:\\evil.jpg",
        "photos\\..\\evil.jpg",
        "photos/evil.jpg",
        "Photos/a.jpg",
        "events.jsonl/",
        "./events.jsonl",
        "photos/\u{202e}gpj.exe",
        "",
    ] {
        let mut trap = Trap::new();
        let mut apart = trap.apart.clone();
        apart.parts.push((name.to_owned(), b"x".to_vec()));
        let listed = apart.clone().listed();
        for (apart, what) in [(apart, "unlisted"), (listed, "listed")] {
            let refusal = trap.with(&apart, &format!("{name:?} {what}"));
            let fits = matches!(refusal, BundleError::BadName(_) | BundleError::NotAFile(_));
            assert!(fits, "{name:?}: {refusal:?}");
        }
    }
}

#[test]
fn links_and_folders() {
    let mut trap = Trap::new();
    let digest = "a".repeat(64);
    let file = std::fs::File::create(&trap.sent).unwrap();
    let mut zip = zip::ZipWriter::new(file);
    zip.add_symlink(format!("photos/{digest}.jpg"), "/etc/passwd", stored()).unwrap();
    zip.finish().unwrap();
    assert!(matches!(trap.refused("a link"), BundleError::NotAFile(_)));
    let mut zip = zip::ZipWriter::new(std::fs::File::create(&trap.sent).unwrap());
    zip.add_directory("photos", stored()).unwrap();
    zip.finish().unwrap();
    assert!(matches!(trap.refused("a folder"), BundleError::NotAFile(_)));
}

#[test]
fn what_unpacks_to_too_much() {
    let mut trap = Trap::new();
    let packed = stored().compression_method(zip::CompressionMethod::Deflated);
    for name in ["events.jsonl", "manifest.json"] {
        let mut zip = zip::ZipWriter::new(std::fs::File::create(&trap.sent).unwrap());
        zip.start_file(name, packed).unwrap();
        zip.write_all(&vec![b' '; 20_000_000]).unwrap();
        zip.finish().unwrap();
        assert!(matches!(trap.refused("a bomb"), BundleError::Bomb(_)));
    }
    // A packed photo is none.
    let mut zip = zip::ZipWriter::new(std::fs::File::create(&trap.sent).unwrap());
    zip.start_file(format!("photos/{}.jpg", "a".repeat(64)), packed).unwrap();
    zip.write_all(&[0; 1000]).unwrap();
    zip.finish().unwrap();
    assert!(matches!(trap.refused("a packed photo"), BundleError::OtherPacking(_)));
}

#[test]
fn a_length_that_is_a_lie() {
    let mut trap = Trap::new();
    // The central record of the events says that they are ten bytes.
    let packed = stored().compression_method(zip::CompressionMethod::Deflated);
    let mut zip = zip::ZipWriter::new(std::fs::File::create(&trap.sent).unwrap());
    zip.start_file("events.jsonl", packed).unwrap();
    zip.write_all(&trap.apart.parts[0].1).unwrap();
    zip.finish().unwrap();
    let mut bytes = std::fs::read(&trap.sent).unwrap();
    let central = find(&bytes, b"PK\x01\x02");
    bytes[central + 24..central + 28].copy_from_slice(&10_u32.to_le_bytes());
    trap.with_bytes(&bytes, "a short length");
}

#[test]
fn parts_that_are_there_twice() {
    let mut trap = Trap::new();
    let bytes = trap.bytes();
    // Another part takes the name of the events, in both of its places: the same length of name.
    let mut apart = trap.apart.clone();
    apart.parts.push(("eventz.jsonl".to_owned(), b"{}\n".to_vec()));
    apart.write(&trap.sent);
    let mut twice = std::fs::read(&trap.sent).unwrap();
    while let Some(at) = twice.windows(12).position(|window| window == b"eventz.jsonl") {
        twice[at..at + 12].copy_from_slice(b"events.jsonl");
    }
    assert!(matches!(trap.with_bytes(&twice, "twice"), BundleError::Twice));
    // The manifest names a part twice.
    let mut apart = trap.apart.clone();
    let part = apart.manifest["parts"][0].clone();
    apart.manifest["parts"].as_array_mut().unwrap().push(part);
    assert!(matches!(trap.with(&apart, "named twice"), BundleError::Twice));
    assert!(!bytes.is_empty());
}

#[test]
fn parts_that_share_bytes_or_differ_from_their_own_header() {
    let mut trap = Trap::new();
    let bytes = trap.bytes();
    // The second entry of the list points to the first part.
    let first = find(&bytes, b"PK\x01\x02");
    let second = first + 4 + find(&bytes[first + 4..], b"PK\x01\x02");
    let mut shared = bytes.clone();
    let place: Vec<u8> = bytes[first + 42..first + 46].to_vec();
    shared[second + 42..second + 46].copy_from_slice(&place);
    trap.with_bytes(&shared, "shared bytes");
    // The header before a part calls it something else than the list does.
    let mut renamed = bytes;
    let at = find(&renamed, b"events.jsonl");
    renamed[at] = b'f';
    trap.with_bytes(&renamed, "two names");
}

#[test]
fn counts_that_are_a_lie() {
    let mut trap = Trap::new();
    let mut bytes = trap.bytes();
    let end = bytes.len() - 22;
    bytes[end + 8..end + 12].copy_from_slice(&[0xFF, 0x7F, 0xFF, 0x7F]);
    trap.with_bytes(&bytes, "32,767 parts");
    // A record of the long form that claims four thousand million parts.
    let mut bytes = trap.bytes();
    let end = bytes.split_off(bytes.len() - 22);
    let at = bytes.len() as u64;
    bytes.extend(b"PK\x06\x06");
    bytes.extend(44_u64.to_le_bytes());
    bytes.extend([45, 0, 45, 0, 0, 0, 0, 0, 0, 0, 0, 0]);
    bytes.extend(4_000_000_000_u64.to_le_bytes());
    bytes.extend(4_000_000_000_u64.to_le_bytes());
    bytes.extend([0; 16]);
    bytes.extend(b"PK\x06\x07");
    bytes.extend(0_u32.to_le_bytes());
    bytes.extend(at.to_le_bytes());
    bytes.extend(1_u32.to_le_bytes());
    bytes.extend(&end[..8]);
    bytes.extend([0xFF; 12]);
    bytes.extend([0, 0]);
    assert!(matches!(trap.with_bytes(&bytes, "many parts"), BundleError::TooMany));
    for (field, count) in [("events", 3), ("units", 7)] {
        let mut apart = trap.apart.clone();
        apart.manifest[field] = json!(count);
        let refusal = trap.with(&apart, field);
        assert!(matches!(refusal, BundleError::WrongCount { .. }), "{refusal:?}");
    }
    let mut apart = trap.apart.clone();
    apart.manifest["events"] = json!(u64::MAX);
    assert!(matches!(trap.with(&apart, "many events"), BundleError::TooMany));
}

#[test]
fn files_that_are_no_bundles_and_cut_ones() {
    let mut trap = Trap::new();
    let whole = trap.bytes();
    for (bytes, what) in [(&b""[..], "nothing"), (b"Dear reader", "a letter"), (&[0x50; 40], "P")] {
        assert!(matches!(trap.with_bytes(bytes, what), BundleError::NotABundle(_)), "{what}");
    }
    for cut in (0..whole.len()).step_by(whole.len() / 40) {
        trap.with_bytes(&whole[..cut], &format!("cut at {cut}"));
    }
    let mut zip = zip::ZipWriter::new(std::fs::File::create(&trap.sent).unwrap());
    zip.start_file("events.jsonl", stored()).unwrap();
    zip.finish().unwrap();
    assert!(matches!(trap.refused("no manifest"), BundleError::NotABundle(_)));
}

#[test]
fn a_single_changed_byte_is_never_taken_in_unseen() {
    let mut trap = Trap::new();
    let whole = trap.bytes();
    let mut harmless = 0;
    for at in (0..whole.len()).step_by(3) {
        let mut bytes = whole.clone();
        bytes[at] ^= 0x20;
        std::fs::write(&trap.sent, bytes).unwrap();
        let before = (trap.victim.views(), trap.victim.pictures());
        match trap.victim.take(&trap.sent) {
            // Bytes that say nothing of the contents, such as when a part was packed.
            Ok(taken) => {
                harmless += 1;
                assert_eq!(taken.new + taken.known, trap.apart.events().len() as u64);
                // What it took in must not hide what the next does.
                let fresh = Trap::new();
                (trap.victim, trap.sent) = (fresh.victim, fresh.sent);
            }
            Err(refusal) => {
                assert!(refusal.is_refusal(), "byte {at}: {refusal}");
                assert_eq!((trap.victim.views(), trap.victim.pictures()), before, "byte {at}");
            }
        }
    }
    assert!(harmless < whole.len() / 30, "{harmless} of {} bytes do not matter", whole.len() / 3);
}

fn find(bytes: &[u8], text: &[u8]) -> usize {
    bytes.windows(text.len()).position(|window| window == text).unwrap()
}
