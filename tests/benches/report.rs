//! How long a report with twelve photos takes, its photos passed through as they are stored.
//!
//! Prints the median and the longest; ends with an error where the best is longer than its bound. One core, release
//! build: `cargo bench -p coldchassis-tests --bench report`.

use std::hint::black_box;
use std::process::ExitCode;
use std::time::{Duration, Instant};

use coldchassis_core::workbench::{GivenDrawing, NewUnit, ReportAsk, Surroundings, Workbench};
use coldchassis_figures::{At, Row, Unit};
use serde_json::json;
use uuid::Uuid;

const BENCH: &str = "Reports";
/// The longest that a report may take.
const REPORT: Duration = Duration::from_millis(100);
const PHOTOS: u8 = 12;
const REPORTS: usize = 30;

fn main() -> ExitCode {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let around = Surroundings {
        clock: Box::new(|| 1_700_000_000_000),
        ids: Box::new(Uuid::now_v7),
        device: "bench".to_owned(),
        photos: Some(folder.path().join("photos")),
        author: String::new(),
        locale: "en".to_owned(),
    };
    let record = folder.path().join("record.coldchassis");
    let mut bench = Workbench::open(&record, around).expect("the record");
    let supply = json!({"volts": 120, "hertz": 60});
    let access = vec!["outside".to_owned(), "cover_off".to_owned()];
    let unit = NewUnit { supply, access, ..NewUnit::default() };
    let inspection = bench.create_unit(&unit).expect("a unit").id;
    for (question, answer) in [
        ("kind", json!("instrument_amplifier")),
        ("plug", json!("two_equal_blades")),
        ("transformer", json!("separate_traced")),
        ("line_capacitor", json!("pin_a_leg")),
        ("bare_metal", json!(["instrument_jack"])),
    ] {
        bench.answer(inspection, question, answer).expect("an answer");
    }
    for number in 0..PHOTOS {
        bench.add_photo(inspection, None, &photo(number)).expect("a photo");
    }
    let drawing = || Some(GivenDrawing { svg: drawing(), says: "A drawing".to_owned() });
    let ask = ReportAsk { circuit: drawing(), chart: drawing(), ..ReportAsk::default() };
    let took: Vec<Duration> = (0..REPORTS)
        .map(|_| {
            let start = Instant::now();
            black_box(bench.report(inspection, &ask).expect("a report"));
            start.elapsed()
        })
        .collect();
    let row = Row::times(BENCH, format!("with {PHOTOS} photos"), Unit::Millis, &took);
    if row.at_most(At::Least, Unit::Millis.of(REPORT), 9).tell() {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}

/// A picture as a phone gives it, 12 megapixels, another for each number.
fn photo(number: u8) -> Vec<u8> {
    let (width, height) = (4000_usize, 3000_usize);
    let pixel = |place: usize| {
        let (x, y) = (place % width, place / width);
        [(x * 255 / width) as u8, (y * 255 / height) as u8, number.wrapping_mul(20)]
    };
    let pixels: Vec<u8> = (0..width * height).flat_map(pixel).collect();
    let mut jpeg = Vec::new();
    let encoder = jpeg_encoder::Encoder::new(&mut jpeg, 85);
    let kind = jpeg_encoder::ColorType::Rgb;
    encoder.encode(&pixels, width as u16, height as u16, kind).expect("a JPEG");
    jpeg
}

/// As many lines and words as the circuit picture and the chart have.
fn drawing() -> String {
    let line = |at: usize| {
        let y = at * 2;
        format!("<path d='M10 {y}L{} {}H390' fill='none' stroke='#000'/>", 40 + at, y + 1)
    };
    let word = |at: usize| format!("<text x='{}' y='{}'>10 mA</text>", at * 9, 20 + at * 6);
    let lines: String = (0..200).map(line).collect();
    let words: String = (0..40).map(word).collect();
    format!("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 400 400'>{lines}{words}</svg>")
}
