//! What is typed, on paper and in a spreadsheet: read back by programs that did not make it.

use std::path::Path;
use std::process::Command;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};

use super::answers::done;
use super::stage::Stage;
use super::texts::TEXTS;
use super::typed::write_everywhere;

/// What a formula begins with, in this spreadsheet or that.
const FORMULA: [char; 8] = ['=', '+', '-', '@', '＝', '＋', '－', '＠'];

fn bytes(document: &Value) -> Vec<u8> {
    STANDARD.decode(document["base64"].as_str().expect("base64")).expect("base64")
}

/// A name that every file system takes.
fn assert_plain_name(document: &Value) {
    let name = document["name"].as_str().expect("a name");
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '_' | '-' | '.');
    assert!(name.chars().all(plain) && name.len() < 80 && !name.starts_with('.'), "{name}");
}

/// What a program of its own finds in a PDF.
fn read(program: &str, pdf: &[u8], folder: &Path) -> String {
    let path = folder.join("read.pdf");
    std::fs::write(&path, pdf).expect("it can be written");
    let mut command = Command::new(program);
    command.arg(&path);
    if program == "pdftotext" {
        command.args(["-layout", "-"]);
    }
    let output = command.output().expect("poppler-utils is there");
    assert!(output.status.success(), "{output:?}");
    String::from_utf8(output.stdout).expect("UTF-8")
}

/// Marks that turn the direction of text, or say nothing on paper.
fn is_steering(letter: char) -> bool {
    matches!(letter, '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}'
        | '\u{2060}'..='\u{2069}' | '\u{feff}' | '\u{fe0f}')
}

/// Letters that the paper has for certain: the rest is shown as missing there.
fn is_plain(text: &str) -> bool {
    text.chars().all(|c| matches!(c, ' '..='~' | '\u{a0}'..='\u{17f}'))
}

fn without_spaces(text: &str) -> String {
    text.chars().filter(|letter| !letter.is_whitespace() && !letter.is_control()).collect()
}

#[test]
fn a_spreadsheet_takes_every_text_for_text() {
    let stage = Stage::new();
    for text in TEXTS {
        write_everywhere(&stage, text);
    }
    let document = done(&stage.desk, "list_csv", &json!({}));
    assert_plain_name(&document);
    let csv = bytes(&document);
    let table = csv.strip_prefix(b"\xef\xbb\xbf").expect("it says that it is UTF-8");
    let mut rows = Vec::new();
    for row in csv::Reader::from_reader(table).records() {
        let row = row.expect("as many cells in each row");
        for cell in &row {
            assert!(!cell.trim_start().starts_with(FORMULA), "{cell:?} is taken for a formula");
            assert!(!cell.chars().any(char::is_control), "{cell:?}");
        }
        rows.push(row);
    }
    for text in TEXTS {
        let flat: String = text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
        let cell = if flat.starts_with(FORMULA) { format!("'{flat}") } else { flat };
        assert!(rows.iter().any(|row| row[1] == cell && row[2] == cell), "{text:?}");
    }
    stage.close_whole(&[]);
}

#[test]
fn a_report_and_a_tag_have_every_text_in_its_place() {
    let stage = Stage::new();
    let folder = stage.folder.path();
    for text in TEXTS {
        let (unit, inspection) = write_everywhere(&stage, text);
        let view = done(&stage.desk, "show_inspection", &json!({"inspection": inspection}));
        let label = view["unit"]["label"].as_str().expect("a label");
        let ask = json!({"inspection": inspection, "ask": {}});
        let report = done(&stage.desk, "make_report", &ask);
        let tag = json!({"units": [unit], "paper": "label62"});
        let tag = done(&stage.desk, "make_tags", &tag);
        for document in [&report, &tag] {
            assert_plain_name(document);
            let said = read("pdftotext", &bytes(document), folder);
            assert!(said.contains(label), "{text:?}: no {label} in {said}");
            assert!(!said.chars().any(is_steering), "{text:?} steers {said:?}");
            let printed: String = text.chars().filter(|c| !is_steering(*c)).collect();
            if is_plain(&printed) {
                let wanted = without_spaces(&printed);
                assert!(without_spaces(&said).contains(&wanted), "{text:?} is not in {said}");
            }
        }
        let about = read("pdfinfo", &bytes(&report), folder);
        let title = about.lines().find(|line| line.starts_with("Title:")).expect("a title");
        assert!(
            title.contains(label) && title.ends_with("inspection before plugging in"),
            "{title:?}"
        );
    }
    stage.close_whole(&[]);
}

#[test]
fn a_report_is_in_a_language_that_there_is() {
    let stage = Stage::new();
    for language in ["", "xx", "en-x-\u{202e}", "{ $x }", "../../en", "e\0n", &"en-".repeat(5000)] {
        done(&stage.desk, "set_inspector", &json!({"author": "Ada Quill", "language": language}));
        let ask = json!({"inspection": stage.ids.inspection, "ask": {}});
        let report = bytes(&done(&stage.desk, "make_report", &ask));
        let is_english = report.windows(9).any(|part| part == b"/Lang(en)" || part == b"/Lang (en");
        assert!(is_english, "{language:?}");
    }
    stage.close_whole(&[]);
}
