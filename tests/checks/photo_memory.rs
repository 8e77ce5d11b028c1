//! Photos one after the other, and pictures that claim to be huge, do not fill the memory.
//!
//! A program of its own: what other checks hold at the same time would be counted too. Linux only,
//! where a process can ask how much it holds.
#![cfg(target_os = "linux")]

use coldchassis_core::photo::{PhotoError, ingest};
use coldchassis_core::workbench::{NewUnit, Surroundings, Workbench};
use coldchassis_tests::pictures::{claiming, file, png_claiming, scene, with_notes};
use image::ImageFormat;
use serde_json::json;

/// Pages of memory are 4 KiB on every machine these checks are run on.
const PAGE: u64 = 4096;
const MEGABYTE: u64 = 1 << 20;

/// How much of this process is in memory, bytes.
fn resident() -> u64 {
    let pages = std::fs::read_to_string("/proc/self/statm").expect("Linux");
    pages
        .split_whitespace()
        .nth(1)
        .and_then(|pages| pages.parse().ok())
        .map_or(0, |n: u64| n * PAGE)
}

/// The most this process has ever set aside, used or not, bytes.
fn most_set_aside() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").expect("Linux");
    let line = status.lines().find_map(|line| line.strip_prefix("VmPeak:")).expect("a peak");
    let kilobytes = line.trim().trim_end_matches(" kB").parse::<u64>();
    kilobytes.expect("a number") * 1024
}

fn bench(folder: &std::path::Path) -> Workbench {
    let around = Surroundings {
        clock: Box::new(|| 1_700_000_000_000),
        ids: Box::new(uuid::Uuid::now_v7),
        device: "bench".to_owned(),
        photos: Some(folder.join("photos")),
        author: String::new(),
        locale: "en".to_owned(),
    };
    Workbench::open(&folder.join("record.db"), around).expect("it opens")
}

/// One after the other in one check, so that neither is measured with the other's memory.
#[test]
fn memory_stays_where_it_is() {
    huge_claims_set_nothing_aside();
    fifty_photos_leave_nothing_behind();
}

fn huge_claims_set_nothing_aside() {
    let picture = scene(64, 48, 1);
    let files = [
        claiming(&file(&picture, ImageFormat::Jpeg), 30_000, 30_000),
        png_claiming(&file(&picture, ImageFormat::Png), 30_000, 30_000),
    ];
    let before = most_set_aside();
    for bytes in files {
        let wanted = PhotoError::TooLarge { width: 30_000, height: 30_000 };
        assert_eq!(ingest(&bytes), Err(wanted));
    }
    let more = most_set_aside() - before;
    println!("30,000 × 30,000: {} kB more set aside", more / 1024);
    assert!(more < 16 * MEGABYTE, "{more} bytes for pictures of 2.7 GB");
}

/// A large JPEG, by the quickest encoder here: fifty are needed.
fn jpeg(picture: &image::RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    let encoder = jpeg_encoder::Encoder::new(&mut bytes, 85);
    let side = |length: u32| u16::try_from(length).expect("a side of a JPEG");
    let (width, height) = (side(picture.width()), side(picture.height()));
    let done = encoder.encode(picture.as_raw(), width, height, jpeg_encoder::ColorType::Rgb);
    done.expect("it can be written");
    bytes
}

fn fifty_photos_leave_nothing_behind() {
    const PHOTOS: u32 = 50;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let mut bench = bench(folder.path());
    let supply = json!({"volts": 120, "hertz": 60});
    let unit = bench.create_unit(&NewUnit { supply, ..NewUnit::default() }).expect("a unit");
    // 12 megapixels, as a phone gives them; marked afresh so that no two are alike.
    let mut picture = scene(4000, 3000, 1);
    let mut held = Vec::new();
    for count in 0..PHOTOS {
        for x in 0..400 {
            picture.put_pixel(x * 10, count * 50, image::Rgb([255, 0, (count * 5) as u8]));
        }
        let bytes = with_notes(&jpeg(&picture), 6);
        let view = bench.add_photo(unit.id, Some("answers.plug"), &bytes).expect("added");
        assert_eq!(view.photos.len() as u32, count + 1);
        drop((bytes, view));
        held.push(resident());
    }
    // The first few warm the allocator up.
    let (early, last) = (held[4], held[held.len() - 1]);
    let growth = last.saturating_sub(early);
    let most = held.iter().max().expect("some") / MEGABYTE;
    println!(
        "resident after 5: {} MB, after 50: {} MB, most: {most} MB",
        early / MEGABYTE,
        last / MEGABYTE
    );
    // One photo kept by mistake each time would be 45 × 36 MB.
    assert!(growth < 30 * MEGABYTE, "{growth} bytes more");
    let files = std::fs::read_dir(folder.path().join("photos")).expect("a folder").count();
    assert_eq!(files as u32, PHOTOS * 2);
}
