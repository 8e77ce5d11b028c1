//! Pipes that never end, and readers that go away.

use std::fs::OpenOptions;
use std::io::{BufRead, BufReader, Write};
use std::process::{Child, Command, Stdio};
use std::thread::{self, JoinHandle};

use tempfile::TempDir;

use super::accepted::{ARRANGEMENT, FINDINGS};
use super::program::{Ran, command, fault_of_refusal, finish, names, run};

/// Above the cap of 4 MiB, what a pipe holds (1 MiB at most) and a piece: no more may be taken.
const MOST_TAKEN: usize = (4 + 1 + 1) * 1024 * 1024;

/// Writes blanks until the reader goes away; gives how many it took.
fn endless(mut pipe: impl Write + Send + 'static) -> JoinHandle<usize> {
    thread::spawn(move || {
        let piece = [b' '; 64 * 1024];
        let mut taken = 0;
        while taken <= 2 * MOST_TAKEN && pipe.write_all(&piece).is_ok() {
            taken += piece.len();
        }
        taken
    })
}

#[test]
fn input_without_end_is_refused_at_the_cap() {
    for name in ["assess", "exposure"] {
        let folder = TempDir::new().expect("a folder");
        let mut child = command(folder.path(), &[name, "/dev/stdin"]).spawn().expect("it starts");
        let feed = endless(child.stdin.take().expect("a pipe"));
        let ran = finish(child, Vec::new());
        assert_eq!(fault_of_refusal(&ran, "file"), None);
        assert!(feed.join().expect("fed") <= MOST_TAKEN, "it went on reading");
        assert_eq!(names(folder.path()), Vec::<String>::new());
    }
}

#[test]
fn a_named_pipe_without_end_is_refused_at_the_cap_and_one_with_an_end_is_read() {
    let outside = TempDir::new().expect("a folder");
    let path = outside.path().join("pipe");
    let made = Command::new("mkfifo").arg(&path).status().expect("mkfifo runs");
    assert!(made.success());
    let name = path.to_str().expect("UTF-8").to_owned();
    let open = path.clone();
    let feed = thread::spawn(move || {
        endless(OpenOptions::new().write(true).open(open).expect("it opens")).join().expect("fed")
    });
    assert_eq!(fault_of_refusal(&run(&["assess", &name], b""), "file"), None);
    assert!(feed.join().expect("fed") <= MOST_TAKEN, "it went on reading");

    let feed = thread::spawn(move || std::fs::write(path, ARRANGEMENT));
    let ran = run(&["exposure", &name, "--json"], b"");
    feed.join().expect("fed").expect("written");
    assert_eq!((ran.code, ran.err.as_str()), (Some(0), ""));
}

#[test]
fn a_device_without_end_is_refused_at_the_cap() {
    for name in ["assess", "exposure"] {
        assert_eq!(fault_of_refusal(&run(&[name, "/dev/zero"], b""), "file"), None);
    }
}

#[test]
fn input_that_comes_in_small_pieces_is_read_to_its_end() {
    let folder = TempDir::new().expect("a folder");
    let mut child =
        command(folder.path(), &["exposure", "/dev/stdin", "--json"]).spawn().expect("it starts");
    let mut pipe = child.stdin.take().expect("a pipe");
    let feed = thread::spawn(move || {
        for piece in ARRANGEMENT.as_bytes().chunks(7) {
            pipe.write_all(piece).expect("taken");
            pipe.flush().expect("taken");
            thread::yield_now();
        }
    });
    let ran = finish(child, Vec::new());
    feed.join().expect("fed");
    assert_eq!(ran.code, Some(0), "{}", ran.err);
    assert_eq!(ran.out, run(&["exposure", "/dev/stdin", "--json"], ARRANGEMENT.as_bytes()).out);
}

/// Takes the first lines of what a program prints and goes away, as `head` does.
fn after_lines(mut child: Child, lines: usize, input: &str) -> Ran {
    let out = child.stdout.take().expect("a pipe");
    let reader = thread::spawn(move || {
        BufReader::new(out).lines().take(lines).filter(Result::is_ok).count()
    });
    // Where nothing is read, the reader is gone before the program has anything to print.
    if lines == 0 {
        assert_eq!(reader.join().expect("read"), 0);
        return finish(child, input.into());
    }
    let ran = finish(child, input.into());
    assert_eq!(reader.join().expect("read"), lines);
    ran
}

#[test]
fn a_reader_that_goes_away_is_no_trouble() {
    for (arguments, input) in [
        (&["assess", "/dev/stdin", "--json"][..], FINDINGS),
        (&["assess", "/dev/stdin"], FINDINGS),
        (&["exposure", "/dev/stdin", "--json"], ARRANGEMENT),
        (&["exposure", "/dev/stdin"], ARRANGEMENT),
        (&["demo"], ""),
        (&["--help"], ""),
    ] {
        for lines in [0, 1] {
            let folder = TempDir::new().expect("a folder");
            let child = command(folder.path(), arguments).spawn().expect("it starts");
            let ran = after_lines(child, lines, input);
            assert_eq!((ran.code, ran.err.as_str()), (Some(0), ""), "{arguments:?} {lines}");
            assert_eq!(names(folder.path()), Vec::<String>::new());
        }
    }
}

#[test]
fn an_inspection_whose_reader_goes_away_ends_without_a_panic() {
    for lines in [0, 1] {
        let folder = TempDir::new().expect("a folder");
        let child = command(folder.path(), &["inspect"]).spawn().expect("it starts");
        let ran = after_lines(child, lines, "1\n1\n1\n");
        assert!(!ran.err.contains("panicked"), "{}", ran.err);
        assert!(matches!(ran.code, Some(0 | 2)), "{:?}", ran.code);
    }
}

#[test]
fn output_that_cannot_be_written_is_said_in_one_line() {
    for arguments in
        [&["exposure", "/dev/stdin", "--json"][..], &["exposure", "/dev/stdin"], &["demo"]]
    {
        let folder = TempDir::new().expect("a folder");
        let full = OpenOptions::new().write(true).open("/dev/full").expect("a full device");
        let mut command = command(folder.path(), arguments);
        let child = command.stdout(Stdio::from(full)).spawn().expect("it starts");
        let ran = finish(child, ARRANGEMENT.into());
        assert_eq!(ran.code, Some(2), "{arguments:?}");
        assert_eq!(ran.err.lines().count(), 1, "{}", ran.err);
    }
}

#[test]
fn a_refusal_nobody_can_read_is_still_exit_2() {
    let folder = TempDir::new().expect("a folder");
    let mut child = command(folder.path(), &["assess", "/dev/stdin"]).spawn().expect("it starts");
    drop(child.stderr.take());
    let ran = finish(child, b"nonsense".to_vec());
    assert_eq!((ran.code, ran.out.as_str()), (Some(2), ""));
}
