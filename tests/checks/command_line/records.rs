//! `inspect`, `list` and `demo`: what is kept, and that nothing else is.

use std::fs;
use std::io::{BufRead, BufReader, Write};
use std::path::Path;

use coldchassis_core::workbench::{InspectionView, Surroundings, Workbench};
use tempfile::TempDir;

use super::program::{Ran, accepted, command, fault_of_refusal, names, run, run_in, wait};
use super::spoken_out::readable;

/// The only inspection of a record, past the program.
fn kept(record: &Path) -> InspectionView {
    let around = Surroundings {
        clock: Box::new(|| 1_700_000_000_000),
        ids: Box::new(uuid::Uuid::now_v7),
        device: "bench".to_owned(),
        photos: None,
        author: String::new(),
        locale: "en".to_owned(),
    };
    let mut bench = Workbench::open(record, around).expect("a record");
    let units = bench.units(None).expect("units");
    assert_eq!(units.len(), 1);
    bench.inspection(units[0].inspection.expect("an inspection")).expect("it opens")
}

fn worked(ran: &Ran) {
    assert_eq!((ran.code, ran.err.as_str()), (Some(0), ""), "{}", ran.out);
}

/// The title of the tag at the end: the second line in its frame.
fn title(text: &str) -> String {
    let frame = text.rfind("| (o)").expect("a tag");
    let line = text[frame..].lines().nth(1).expect("a title");
    line.trim_matches(['|', ' ']).to_owned()
}

#[test]
fn listing_a_record_that_is_not_there_makes_none() {
    for record in ["missing", "below/missing", "", ".", "/dev/null"] {
        let ran = run(&["list", "--", record], b"");
        assert_eq!(ran.code, Some(2), "{record}: {}{}", ran.out, ran.err);
        assert_eq!(ran.out, "", "{record}");
    }
    assert_eq!(fault_of_refusal(&run(&["list", "missing"], b""), "file"), None);
}

#[test]
fn every_answer_given_before_the_input_ends_is_kept_and_listed() {
    for given in 0..=4 {
        let folder = TempDir::new().expect("a folder");
        // Can't tell, to whatever is asked: it is an answer too.
        let input = "?\n".repeat(given);
        let arguments = ["inspect", "--record", "record", "--name", "Kitchen set"];
        let ran = run_in(folder.path(), &arguments, input.as_bytes());
        worked(&ran);
        readable(&ran.out);
        let view = kept(&folder.path().join("record"));
        assert_eq!(view.findings.len(), given);
        assert!(view.findings.iter().all(|finding| finding.found.starts_with("Can’t tell")));

        let list = run_in(folder.path(), &["list", "record"], b"");
        worked(&list);
        assert_eq!(list.out.lines().count(), 1, "{}", list.out);
        let says = format!("U-0001  {}  Kitchen set", title(&ran.out));
        assert!(list.out.starts_with(&says), "{says:?}: {}", list.out);
    }
}

#[test]
fn an_answer_decides_the_class_that_is_listed() {
    let folder = TempDir::new().expect("a folder");
    // The first question is the plug, its sixth answer no cord and no inlet; then the plate, which names batteries.
    let ran = run_in(folder.path(), &["inspect", "--record", "record"], b"6\n4\n");
    worked(&ran);
    assert_eq!(title(&ran.out), "No line voltage inside: shown");
    let view = kept(&folder.path().join("record"));
    assert_eq!(view.findings.len(), 2);
    assert_eq!(view.findings[0].path, "answers.plug");
    let list = run_in(folder.path(), &["list", "record"], b"");
    assert!(list.out.contains("No line voltage inside: shown"), "{}", list.out);
}

#[test]
fn what_is_no_answer_is_asked_again_and_takes_nothing_back() {
    let folder = TempDir::new().expect("a folder");
    let input = "1\n0\n99\n-1\n1.5\nbanana\n\n\x1b[A\n18446744073709551616\n?\nq\n1\n";
    let ran = run_in(folder.path(), &["inspect", "--record", "record"], input.as_bytes());
    worked(&ran);
    let view = kept(&folder.path().join("record"));
    assert_eq!(view.findings.len(), 2, "one answer, then can't tell, then stop");
    assert!(ran.out.contains("That is none of the answers"), "{}", ran.out);
}

#[test]
fn a_last_line_without_its_end_counts_and_undo_takes_back_one_answer() {
    let folder = TempDir::new().expect("a folder");
    worked(&run_in(folder.path(), &["inspect", "--record", "record"], b"1\n?\nu\n?"));
    assert_eq!(kept(&folder.path().join("record")).findings.len(), 2);
}

#[test]
fn answers_survive_a_program_that_is_ended() {
    let folder = TempDir::new().expect("a folder");
    let mut child =
        command(folder.path(), &["inspect", "--record", "record"]).spawn().expect("it starts");
    let mut input = child.stdin.take().expect("a pipe");
    input.write_all(b"1\n?\n").expect("taken");
    input.flush().expect("taken");
    let out = BufReader::new(child.stdout.take().expect("a pipe"));
    // After each answer the program says what is still possible: then it is kept.
    let said = out.lines().map_while(Result::ok).filter(|line| line.contains("Still possible:"));
    assert_eq!(said.take(2).count(), 2);
    child.kill().expect("it ends");
    wait(&mut child);
    assert_eq!(kept(&folder.path().join("record")).findings.len(), 2);
    let list = run_in(folder.path(), &["list", "record"], b"");
    worked(&list);
    assert!(list.out.starts_with("U-0001  Treat as live: not ruled out"), "{}", list.out);
}

#[test]
fn units_of_one_record_are_listed_each_on_a_line() {
    let folder = TempDir::new().expect("a folder");
    for name in ["First", "Second", "Third"] {
        let arguments = ["inspect", "--record", "record", "--name", name];
        worked(&run_in(folder.path(), &arguments, b"?\n"));
    }
    let list = run_in(folder.path(), &["list", "record"], b"");
    worked(&list);
    assert_eq!(list.out.lines().count(), 3, "{}", list.out);
    for (number, name) in [(1, "First"), (2, "Second"), (3, "Third")] {
        let line = list.out.lines().find(|line| line.contains(name)).expect("the unit");
        assert!(line.starts_with(&format!("U-000{number}  ")), "{line}");
    }
}

#[test]
fn a_file_that_is_no_record_is_left_as_it_is() {
    for arguments in [&["list", "record"][..], &["inspect", "--record", "record"]] {
        for bytes in [b"not a record".as_slice(), &[0; 4096], b"SQLite format 3\0", b"{}"] {
            let folder = TempDir::new().expect("a folder");
            let path = folder.path().join("record");
            fs::write(&path, bytes).expect("written");
            let ran = run_in(folder.path(), arguments, b"1\n");
            assert_eq!(ran.code, Some(2), "{arguments:?}: {}", ran.out);
            assert_eq!((ran.err.lines().count(), ran.out.as_str()), (1, ""), "{}", ran.err);
            assert_eq!(fs::read(&path).expect("there"), bytes, "{arguments:?}");
            assert_eq!(names(folder.path()), ["record"]);
        }
    }
}

#[test]
fn a_record_that_cannot_be_made_is_said_in_one_harmless_line() {
    for record in ["missing/record", ".", "missing/a\nb\u{1b}[31m"] {
        let ran = run(&["inspect", "--record", record], b"1\n");
        assert_eq!((ran.code, ran.out.as_str()), (Some(2), ""), "{record:?}");
        let line = ran.err.trim_end_matches('\n');
        assert!(!line.is_empty() && !line.chars().any(char::is_control), "{:?}", ran.err);
    }
}

#[test]
fn without_a_record_nothing_is_kept() {
    let text = accepted(&["inspect"], b"1\n?\n");
    assert_eq!(title(&text), "Treat as live: not ruled out");
}

#[test]
fn the_demonstration_ends_with_a_tag() {
    let text = accepted(&["demo"], b"");
    readable(&text);
    let tags: Vec<usize> = text.match_indices("| (o)  ").map(|(at, _)| at).collect();
    assert_eq!(tags.len(), 2, "from outside, then with the cover off: {text}");
    assert_eq!(title(&text[..tags[1]]), "Treat as live: not ruled out");
    let last = &text[tags[1]..];
    assert!(!title(last).is_empty());
    for section in ["What may be done now", "What to do next", "Not checked", "Whose body"] {
        assert!(last.contains(section), "{section}: {last}");
    }
    assert!(!last.contains("\n? "), "no question comes after the tag: {last}");
    assert_eq!(text, accepted(&["demo"], b"ignored\n"), "it asks nobody");
}
