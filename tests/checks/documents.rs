//! Reports, tags and lists as they leave the house, read back by programs that did not make them: poppler's
//! `pdftotext`, `pdffonts` and `pdftoppm`, and a reader of codes.

#[path = "workbench/bench.rs"]
#[allow(dead_code)]
mod bench;

use std::path::{Path, PathBuf};
use std::process::Command;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use coldchassis_core::workbench::{
    Code, DocumentView, GivenDrawing, Paper, ReportAsk, Surroundings, TagPaper, Workbench,
};
use serde_json::json;
use uuid::Uuid;

use bench::{Record, new_unit};

/// Letters of three alphabets, and of none that the documents have.
const NAME: &str = "Ραδιόφωνο Приёмник “Shelf radio” \u{65e5}\u{202e}";

struct Made {
    record: Record,
    bench: Workbench,
    unit: Uuid,
    inspection: Uuid,
}

/// A set that is not ruled out to be live.
fn made() -> Made {
    let record = Record::stepping(1500);
    let photos = record.path().with_file_name("photos");
    let around = Surroundings { photos: Some(photos), ..record.around("here") };
    let mut bench = Workbench::open(&record.path(), around).expect("the record opens");
    let view = bench.create_unit(&new_unit(NAME, &["outside"])).expect("a unit");
    for (question, answer) in [
        ("kind", json!("table_radio")),
        ("plug", json!("two_equal_blades")),
        ("bare_metal", json!(["screws_or_shafts"])),
    ] {
        bench.answer(view.id, question, answer).expect("an answer");
    }
    Made { record, bench, unit: view.unit.id, inspection: view.id }
}

/// A picture as a camera gives it, different for each number.
fn photo(number: u8) -> Vec<u8> {
    let (width, height) = (1600, 1200);
    let pixel = |place: usize| {
        let (x, y) = (place % width, place / width);
        [(x * 255 / width) as u8, (y * 255 / height) as u8, number.wrapping_mul(20)]
    };
    let pixels: Vec<u8> = (0..width * height).flat_map(pixel).collect();
    let mut jpeg = Vec::new();
    let encoder = jpeg_encoder::Encoder::new(&mut jpeg, 80);
    encoder
        .encode(&pixels, width as u16, height as u16, jpeg_encoder::ColorType::Rgb)
        .expect("a JPEG");
    jpeg
}

/// A document in a file.
fn file(record: &Record, document: &DocumentView) -> PathBuf {
    let path = record.path().with_file_name(&document.name);
    let bytes = STANDARD.decode(&document.base64).expect("base64");
    std::fs::write(&path, bytes).expect("a file");
    path
}

fn said(command: &str, arguments: &[&str], path: &Path) -> String {
    let run = Command::new(command).args(arguments).arg(path).arg("-").output();
    let run = run.unwrap_or_else(|error| panic!("{command} has to be installed: {error}"));
    assert!(run.status.success(), "{command}: {}", String::from_utf8_lossy(&run.stderr));
    String::from_utf8(run.stdout).expect("text")
}

fn fonts(path: &Path) -> Vec<Vec<String>> {
    let run = Command::new("pdffonts").arg(path).output().expect("pdffonts has to be installed");
    let text = String::from_utf8(run.stdout).expect("text");
    let lines = text.lines().skip(2);
    lines.map(|line| line.split_whitespace().map(str::to_owned).collect()).collect()
}

/// The pages as pictures.
fn pages(path: &Path, dots: u32) -> Vec<image::GrayImage> {
    let stem = path.with_extension("page");
    let dots = dots.to_string();
    let run =
        Command::new("pdftoppm").args(["-gray", "-png", "-r", &dots]).arg(path).arg(&stem).status();
    assert!(run.expect("pdftoppm has to be installed").success());
    let folder = path.parent().expect("a folder");
    let name = stem.file_name().expect("a name").to_string_lossy().into_owned();
    let mut found: Vec<PathBuf> = std::fs::read_dir(folder)
        .expect("a folder")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| {
            let file = path.file_name().expect("a name").to_string_lossy().into_owned();
            file.starts_with(&name) && file.ends_with(".png")
        })
        .collect();
    found.sort();
    found.iter().map(|path| image::open(path).expect("a picture").into_luma8()).collect()
}

fn codes(page: &image::GrayImage) -> Vec<String> {
    let mut page = rqrr::PreparedImage::prepare_from_greyscale(
        page.width() as usize,
        page.height() as usize,
        |x, y| page.get_pixel(x as u32, y as u32).0[0],
    );
    page.detect_grids().iter().map(|grid| grid.decode().expect("a whole code").1).collect()
}

#[test]
fn a_report_says_the_verdict_first_and_holds_its_letters() {
    let mut made = made();
    let view = made.bench.inspection(made.inspection).expect("it");
    let svg = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 100'>\
               <path d='M10 10H190V90H10z' fill='none' stroke='#000'/>\
               <text x='20' y='50'>far leg Ω</text></svg>";
    let drawing = || Some(GivenDrawing { svg: svg.to_owned(), says: "The way".to_owned() });
    for paper in [Paper::A4, Paper::Letter] {
        let ask = ReportAsk { paper, circuit: drawing(), chart: drawing() };
        let document = made.bench.report(made.inspection, &ask).expect("a report");
        assert_eq!(document.name, "U-0001_report.pdf");
        let path = file(&made.record, &document);
        let text = said("pdftotext", &["-layout", "-f", "1", "-l", "1"], &path);
        let place = |what: &str| text.find(what).unwrap_or_else(|| panic!("{what} in {text}"));
        let tag = &view.tag;
        assert!(place(&tag.signal_word) < place(&tag.title), "{text}");
        let first = |line: &str| line.split(' ').take(4).collect::<Vec<_>>().join(" ");
        assert!(place(&tag.title) < place(&first(&tag.permission[0])));
        assert!(text.contains("Ραδιόφωνο Приёмник “Shelf radio” \u{fffd}"), "{text}");
        let whole = said("pdftotext", &["-layout"], &path);
        for finding in &view.findings {
            assert!(whole.contains(&first(&finding.name)), "{} in {whole}", finding.name);
        }
        for what in [
            "What was not checked",
            "Position by position",
            "far leg Ω",
            "Page 1 of",
            "IEC 60479-1",
        ] {
            assert!(whole.contains(what), "{what} in {whole}");
        }
        let fonts = fonts(&path);
        assert!(!fonts.is_empty());
        // Name, type (two words), encoding, embedded, subset, unicode, object: `CID TrueType Identity-H yes yes yes`.
        for font in fonts {
            assert_eq!(font[4..7], ["yes", "yes", "yes"], "{font:?}");
        }
        let [width, height] = match paper {
            Paper::A4 => [595.3, 841.9],
            Paper::Letter => [612.0, 792.0],
        };
        let page = &pages(&path, 72)[0];
        assert!((f64::from(page.width()) - width).abs() <= 1.0, "{}", page.width());
        assert!((f64::from(page.height()) - height).abs() <= 1.0, "{}", page.height());
    }
}

#[test]
fn twelve_photos_are_passed_through_and_fit_into_two_megabytes() {
    let mut made = made();
    let mut stored = 0;
    for number in 0..12 {
        let view = made.bench.add_photo(made.inspection, None, &photo(number)).expect("a photo");
        let sha256 = &view.photos.last().expect("a photo").sha256;
        stored += made.bench.photo_bytes(sha256, false).expect("it").len();
    }
    let view = made.bench.inspection(made.inspection).expect("it");
    let marks = json!([
        {"shape": "pin", "x": 0.5, "y": 0.5, "caption": ""},
        {"shape": "arrow", "x1": 0.1, "y1": 0.1, "x2": 0.4, "y2": 0.4, "caption": ""},
        {"shape": "box", "x1": 0.2, "y1": 0.2, "x2": 0.8, "y2": 0.8, "caption": ""},
    ]);
    made.bench.mark_photo(made.inspection, view.photos[1].id, marks).expect("marks");
    let document = made.bench.report(made.inspection, &ReportAsk::default()).expect("a report");
    let length = STANDARD.decode(&document.base64).expect("base64").len();
    assert!(length < 2_000_000, "{length} bytes");
    // What is stored goes in as it is: no more than what is said of it comes on top.
    assert!(length > stored && length < stored + 200_000, "{length} beside {stored}");
    let path = file(&made.record, &document);
    let run = Command::new("pdfimages").arg("-list").arg(&path).output().expect("pdfimages");
    let list = String::from_utf8(run.stdout).expect("text");
    let photos: Vec<&str> = list.lines().filter(|line| line.contains(" jpeg ")).collect();
    assert_eq!(photos.len(), 12, "{list}");
}

#[test]
fn a_tag_is_read_without_a_network_on_every_paper() {
    let mut made = made();
    let view = made.bench.inspection(made.inspection).expect("it");
    let sizes = [(TagPaper::Label62, [62.0, 100.0], 1), (TagPaper::FourBySix, [101.6, 152.4], 1)];
    let sizes = sizes.into_iter().chain([(TagPaper::SheetOfEight, [210.0, 297.0], 8)]);
    for (paper, [width, height], count) in sizes {
        let units = vec![made.unit; count];
        let document = made.bench.tags(&units, paper).expect("tags");
        let path = file(&made.record, &document);
        let all = pages(&path, 203);
        assert_eq!(all.len(), 1);
        let page = &all[0];
        let millimetres = |dots: u32| f64::from(dots) * 25.4 / 203.0;
        assert!((millimetres(page.width()) - width).abs() < 0.3, "{paper:?}");
        assert!((millimetres(page.height()) - height).abs() < 0.3, "{paper:?}");
        // A reader sees one tag at a time.
        let (across, down) = if count == 8 { (2, 4) } else { (1, 1) };
        let (wide, high) = (page.width() / across, page.height() / down);
        let cells = (0..across * down).map(|place| {
            let (x, y) = (place % across * wide, place / across * high);
            codes(&image::imageops::crop_imm(page, x, y, wide, high).to_image())
        });
        for code in cells {
            let [code] = code.as_slice() else { panic!("{paper:?}: {code:?}") };
            assert!(code.starts_with(&format!("U-0001 {}\n", made.unit)), "{code}");
            assert!(code.contains(&view.tag.title), "{code}");
        }
        let text = said("pdftotext", &["-layout"], &path);
        for what in [&view.tag.signal_word, &view.unit.label] {
            assert_eq!(text.matches(what.as_str()).count(), count, "{what} in {text}");
        }
        assert!(text.contains("Checked by"), "{text}");
        // Black only: nothing on it is a colour, and little is in between.
        let black = page.pixels().filter(|pixel| pixel.0[0] < 128).count();
        assert!(black > 1000);
    }
}

#[test]
fn a_tag_that_says_too_much_keeps_inside_its_frame() {
    let record = Record::stepping(1500);
    let mut bench = Workbench::open(&record.path(), record.around("here")).expect("it opens");
    let name = "W".repeat(80);
    let view = bench.create_unit(&new_unit(&name, &["outside"])).expect("a unit");
    bench.answer(view.id, "plug", json!("two_equal_blades")).expect("an answer");
    let document = bench.tags(&[view.unit.id], TagPaper::Label62).expect("a tag");
    let path = file(&record, &document);
    let page = &pages(&path, 203)[0];
    // Between the frame and the edge of the label there is nothing.
    let edge = (2.0 / 25.4 * 203.0) as u32;
    let (width, height) = page.dimensions();
    let outside = |x: u32, y: u32| x < edge || y < edge || x >= width - edge || y >= height - edge;
    let inked = page.enumerate_pixels().filter(|(x, y, pixel)| outside(*x, *y) && pixel.0[0] < 200);
    assert_eq!(inked.count(), 0);
    assert_eq!(codes(page).len(), 1, "the code is whole");
}

#[test]
fn what_cannot_be_printed_is_refused_by_its_field() {
    let mut made = made();
    let refused = |result: Result<DocumentView, coldchassis_core::workbench::Problem>| {
        result.expect_err("refused").field
    };
    assert_eq!(refused(made.bench.tags(&[], TagPaper::Label62)), Some("units".to_owned()));
    let many = vec![made.unit; 201];
    assert_eq!(refused(made.bench.tags(&many, TagPaper::Label62)), Some("units".to_owned()));
    let nobody = [Uuid::from_u128(7)];
    let missing = made.bench.tags(&nobody, TagPaper::Label62).expect_err("there is none");
    assert_eq!(missing.code, Code::NotFound);
    let svg = " ".repeat(2_000_001);
    let huge = Some(GivenDrawing { svg, says: String::new() });
    let ask = ReportAsk { circuit: huge, ..ReportAsk::default() };
    assert_eq!(refused(made.bench.report(made.inspection, &ask)), Some("circuit".to_owned()));
    for svg in ["", "<svg", "<html/>", "&lol;"] {
        let broken = Some(GivenDrawing { svg: svg.to_owned(), says: String::new() });
        let ask = ReportAsk { chart: broken, ..ReportAsk::default() };
        // What is no drawing is left out; it takes nothing else with it.
        made.bench.report(made.inspection, &ask).expect("a report without it");
    }
}

#[test]
fn the_message_is_short_and_says_what_may_be_done() {
    let mut made = made();
    let view = made.bench.inspection(made.inspection).expect("it");
    let text = made.bench.report_text(made.inspection).expect("a text");
    for what in view.tag.permission.iter().chain([&view.tag.title, &view.tag.signal_word]) {
        assert!(text.contains(what.as_str()), "{what} in {text}");
    }
    assert!(text.contains("Local codes"), "{text}");
    assert!(text.len() < 4000, "{} bytes", text.len());
}

#[test]
fn the_list_opens_as_text_whatever_a_unit_is_called() {
    let record = Record::stepping(1500);
    let mut bench = Workbench::open(&record.path(), record.around("here")).expect("it opens");
    bench.load_demo().expect("the demonstration");
    let names = ["=1+1", "a, \"b\"", "Ραδιό", "-", "two\nlines"];
    let mut made = 0;
    for name in names {
        made += usize::from(bench.create_unit(&new_unit(name, &["outside"])).is_ok());
    }
    bench.set_inspector("Mira", "en").expect("a name");
    let sent = bench.create_unit(&new_unit("Sent on", &["outside"])).expect("a unit").unit.id;
    bench.set_unit_state(sent, "awaiting_parts").expect("a state");
    made += 1;
    let document = bench.list_csv().expect("a list");
    assert_eq!(document.name, "units.csv");
    let bytes = STANDARD.decode(&document.base64).expect("base64");
    let text = std::str::from_utf8(&bytes).expect("UTF-8");
    let text = text.strip_prefix('\u{feff}').expect("the mark of UTF-8");
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let head = reader.headers().expect("a head").clone();
    assert_eq!(head.iter().next(), Some("Unit"));
    let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
    assert_eq!(rows.len(), made, "none of the demonstration");
    assert!(rows.iter().all(|row| row.len() == head.len()));
    let column = |name: &str| head.iter().position(|one| one == name).expect("a column");
    let of = |row: &csv::StringRecord, name: &str| row[column(name)].to_owned();
    let row = rows.iter().find(|row| &row[1] == "Sent on").expect("it is listed");
    assert_eq!(
        [of(row, "State"), of(row, "Set by")],
        ["Awaiting parts".to_owned(), "Mira".to_owned()]
    );
    assert_eq!(rows.iter().filter(|row| of(row, "State") == "To inspect").count(), made - 1);
    let named = |name: &str| rows.iter().any(|row| &row[1] == name);
    assert!(named("'=1+1") && named("a, \"b\"") && named("Ραδιό"), "{rows:?}");
}

#[test]
fn report_tag_text_and_list_are_in_the_language_that_is_spoken() {
    let mut made = made();
    made.bench.set_inspector("", "de-DE").expect("a language");
    let view = made.bench.inspection(made.inspection).expect("it");
    let ask = ReportAsk { paper: Paper::A4, circuit: None, chart: None };
    let document = made.bench.report(made.inspection, &ask).expect("a report");
    assert_eq!(document.name, "U-0001_Bericht.pdf");
    let path = file(&made.record, &document);
    let bytes = std::fs::read(&path).expect("a file");
    let raw = String::from_utf8_lossy(&bytes);
    assert!(
        raw.contains("/Lang(de)") || raw.contains("/Lang (de)"),
        "the document says its language"
    );
    let text = said("pdftotext", &["-layout"], &path);
    let permission = first_words(&view.tag.permission[0]);
    for what in ["GEFAHR", "Nicht einstecken", "Was gefunden wurde", "Seite 1 von", &permission] {
        assert!(text.contains(what), "{what} in {text}");
    }
    for english in ["Plug", "Found", "Page", "What was", "Do not", "not ruled out"] {
        assert!(!text.contains(english), "{english} in {text}");
    }
    let tags = made.bench.tags(&[made.unit], TagPaper::Label62).expect("a tag");
    let text = said("pdftotext", &["-layout"], &file(&made.record, &tags));
    assert!(text.contains("GEFAHR") && text.contains("nicht"), "{text}");
    let told = made.bench.report_text(made.inspection).expect("a text");
    assert!(told.contains("GEFAHR"), "{told}");
    let list = file(&made.record, &made.bench.list_csv().expect("a list"));
    let list = std::fs::read_to_string(list).expect("text");
    assert!(list.contains("Gerät") && list.contains("nicht ausgeschlossen"), "{list}");
}

fn first_words(line: &str) -> String {
    line.split(' ').take(2).collect::<Vec<_>>().join(" ")
}
