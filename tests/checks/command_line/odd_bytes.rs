//! Files that are no findings and no arrangement at all, and paths that lead to no file.

use std::fs;

use tempfile::TempDir;

use super::program::{accepted, fault_of_refusal, run};
use super::refused::{Bad, all_refused, bad};

const GOOD: &str = r#"{"supply": {"volts": 120, "hertz": 60}, "isolation": "no_line"}"#;
const FINDINGS: &str = r#"{"supply": {"volts": 120, "hertz": 60}}"#;

/// The cap of the contract.
const MOST_BYTES: usize = 4 * 1024 * 1024;

const BOTH: [&str; 2] = ["assess", "exposure"];

fn no_json() -> Vec<Bad> {
    let whole: [&[u8]; 22] = [
        b"",
        b" ",
        b"\n\n",
        b"\0",
        b"null",
        b"true",
        b"5",
        b"\"text\"",
        b"[]",
        b"[{\"supply\": 1}]",
        b"{",
        b"}",
        b"{]",
        b"{\"supply\"",
        b"{\"supply\":",
        b"{'supply': 1}",
        b"{supply: 1}",
        b"{\"supply\": {\"volts\": 120, \"hertz\": 60},}",
        b"{\"supply\": {\"volts\": 120 \"hertz\": 60}}",
        b"// a comment\n{}",
        b"supply = 1",
        b"\x1b[31m\x1b]0;title\x07",
    ];
    let mut cases: Vec<Bad> = whole.iter().map(|bytes| bad(*bytes, "file")).collect();
    for more in [" x", "}", ",", " {}", "\0", "\u{feff}", " null", "//"] {
        cases.push(bad(format!("{FINDINGS}{more}"), "file"));
        cases.push(bad(format!("{GOOD}{more}"), "file"));
    }
    // A byte order mark is no JSON (RFC 8259, section 8.1, lets a reader refuse it).
    cases.push(bad(format!("\u{feff}{GOOD}"), "file"));
    cases.push(bad(b"\xff\xfe{\0}\0".as_slice(), "file"));
    cases.push(bad(b"{\"supply\": \"\xc3\x28\"}".as_slice(), "file"));
    cases.push(bad(b"{\"supply\": \"\xed\xa0\x80\"}".as_slice(), "file"));
    cases.push(bad(r#"{"supply": "\ud800"}"#, "file"));
    cases.push(bad("{\"supply\": \"a\nb\"}", "file"));
    cases
}

fn deep_or_huge() -> Vec<Bad> {
    let deep = 10_000;
    let big = 10_000_000;
    vec![
        bad("[".repeat(deep), "file"),
        bad("[".repeat(deep) + &"]".repeat(deep), "file"),
        bad("{\"a\":".repeat(deep), "file"),
        bad("{\"a\":".repeat(deep) + "1" + &"}".repeat(deep), "file"),
        bad(format!("{{\"supply\": {}{}}}", "[".repeat(deep), "]".repeat(deep)), "file"),
        bad(" ".repeat(big), "file"),
        bad(format!("\"{}\"", "x".repeat(big)), "file"),
        bad(" ".repeat(MOST_BYTES + 1 - GOOD.len()) + GOOD, "file"),
        // Within the cap, but nothing that is asked for.
        bad(format!("[{}1]", "1,".repeat(MOST_BYTES / 2 - 2)), "file"),
        bad(" ".repeat(MOST_BYTES), "file"),
        bad("9".repeat(MOST_BYTES), "file"),
    ]
}

#[test]
fn what_is_no_json_object_is_refused_as_a_file() {
    for command in BOTH {
        all_refused(command, &no_json());
    }
}

#[test]
fn what_is_too_deep_or_too_big_is_refused_as_a_file() {
    for command in BOTH {
        all_refused(command, &deep_or_huge());
    }
}

#[test]
fn a_file_of_exactly_the_cap_is_taken() {
    for (command, file) in [("assess", FINDINGS), ("exposure", GOOD)] {
        let padded = " ".repeat(MOST_BYTES - file.len()) + file;
        accepted(&[command, "/dev/stdin", "--json"], padded.as_bytes());
    }
}

#[test]
fn a_regular_file_is_treated_as_a_pipe_is() {
    let folder = TempDir::new().expect("a folder");
    let path = folder.path().join("with blank\n\u{1b}[31m.json");
    let name = path.to_str().expect("UTF-8");
    for (command, file) in [("assess", FINDINGS), ("exposure", GOOD)] {
        fs::write(&path, file).expect("written");
        let piped = accepted(&[command, "/dev/stdin", "--json"], file.as_bytes());
        assert_eq!(accepted(&[command, name, "--json"], b""), piped);
        for bytes in [b"".as_slice(), b"nonsense", &[b' '; MOST_BYTES + 1]] {
            fs::write(&path, bytes).expect("written");
            assert_eq!(fault_of_refusal(&run(&[command, name], b""), "file"), None);
        }
    }
}

#[test]
fn paths_that_lead_to_no_file_are_refused() {
    let folder = TempDir::new().expect("a folder");
    let inside = |name: &str| folder.path().join(name).to_str().expect("UTF-8").to_owned();
    let missing = inside("missing.json");
    let strange = inside("a\nb\u{1b}[31m.json");
    let through_a_file = inside("plain/below.json");
    fs::write(folder.path().join("plain"), FINDINGS).expect("written");
    let long = "n".repeat(5000);
    for command in BOTH {
        for path in
            [".", "..", "/", "/dev/null", &missing, &strange, &through_a_file, &long, "-missing"]
        {
            for arguments in [&[command, "--json", "--", path][..], &[command, "--", path]] {
                let found = fault_of_refusal(&run(arguments, b""), "file");
                assert_eq!(found, None, "{arguments:?}");
            }
        }
    }
}
