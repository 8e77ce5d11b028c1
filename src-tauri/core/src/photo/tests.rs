//! Tests of the parts that a whole photo does not show.

use super::jpeg::{Outline, outline};
use super::*;

#[test]
fn a_digest_is_64_small_hexadecimal_digits_and_nothing_else() {
    // FIPS 180-4, example of a one-block message: "abc"; from memory, high, and known to `sha256sum`.
    let abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    assert_eq!(Digest::of(b"abc").as_str(), abc);
    assert_eq!(Digest::parse(abc), Some(Digest::of(b"abc")));
    let wide = "０".repeat(64);
    let long = "0".repeat(65);
    for bad in ["", "..", "../../etc/passwd", &abc.to_uppercase(), &wide, &long, &"0".repeat(63)] {
        assert_eq!(Digest::parse(bad), None, "{bad}");
    }
    assert_eq!(Digest::parse(&format!("{}/", "0".repeat(63))), None);
}

#[test]
fn an_outline_needs_the_end_of_the_image_itself() {
    let frame = [0xFF, 0xC0, 0, 11, 8, 0, 1, 0, 1, 3, 1, 0x11, 0];
    let scan = [0xFF, 0xDA, 0, 2, 0x12, 0xFF, 0x00, 0x34, 0xFF, 0xD3, 0x56];
    let end = [0xFF, 0xD9];
    // A thumbnail's end inside the notes is not the picture's.
    let notes = [0xFF, 0xE1, 0, 6, 0xFF, 0xD8, 0xFF, 0xD9];
    let of = |parts: &[&[u8]]| outline(&parts.concat());
    let start: &[u8] = &[0xFF, 0xD8];
    let whole = Outline { components: 3, is_whole: true };
    assert_eq!(of(&[start, &frame, &scan, &end]), whole);
    assert_eq!(of(&[start, &notes, &frame, &scan, &[0xFF, 0xFF], &end, b"more"]), whole);
    assert!(!of(&[start, &notes, &frame, &scan]).is_whole);
    assert!(!of(&[start, &notes]).is_whole);
    assert!(!of(&[start, &frame, &scan, &[0xFF]]).is_whole);
    assert_eq!(of(&[]), Outline::default());
    assert_eq!(of(&[start, &[0xFF, 0xC0, 0, 0]]), Outline::default());
}

#[test]
fn the_folder_is_only_made_when_the_first_photo_comes() {
    let folder = tempfile::tempdir().unwrap();
    let photos = folder.path().join("data").join("photos");
    let files = Files::of(photos.clone());
    let digest = Digest::of(b"abc");
    assert_eq!(files.read(&digest, Size::Full).unwrap(), None);
    assert!(!files.has(&digest));
    files.remove(&digest).unwrap();
    assert!(!photos.exists());
    let photo = Ingested {
        digest: digest.clone(),
        jpeg: b"abc".to_vec(),
        thumbnail: b"a".to_vec(),
        width: 1,
        height: 1,
    };
    files.put(&photo).unwrap();
    assert!(files.has(&digest));
    assert_eq!(files.read(&digest, Size::Full).unwrap().as_deref(), Some(&b"abc"[..]));
    assert_eq!(files.read(&digest, Size::Thumbnail).unwrap().as_deref(), Some(&b"a"[..]));
    files.remove(&digest).unwrap();
    assert_eq!(std::fs::read_dir(&photos).unwrap().count(), 0);
}
