//! Finds or builds the program, and runs it in an empty folder with a time limit.

use std::io::{Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, ExitStatus, Stdio};
use std::sync::OnceLock;
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

use tempfile::TempDir;

/// A run takes milliseconds; one that takes this long waits for something that never comes.
const LONGEST: Duration = Duration::from_secs(120);

/// What a run left behind.
pub struct Ran {
    /// The exit code; nothing where a signal ended it.
    pub code: Option<i32>,
    /// Everything on standard output.
    pub out: String,
    /// Everything on standard error.
    pub err: String,
}

/// The program: `COLDCHASSIS_BIN`, or the one beside this test, brought up to date first.
///
/// Cargo builds no other package's program for a test, and an old one would pass for the new.
pub fn program() -> &'static Path {
    static PROGRAM: OnceLock<Option<PathBuf>> = OnceLock::new();
    let found = PROGRAM.get_or_init(|| match std::env::var_os("COLDCHASSIS_BIN") {
        Some(path) => Some(std::path::absolute(path).expect("a path")),
        None => build(),
    });
    found.as_deref().expect("the program builds")
}

/// Builds the program; nothing where that fails, so that it is tried only once.
fn build() -> Option<PathBuf> {
    let test = std::env::current_exe().expect("this test is a file");
    let folder = test.ancestors().nth(2).expect("profile folder / deps / test");
    let target = folder.parent().expect("a target folder");
    let profile = match folder.file_name().and_then(|name| name.to_str()) {
        Some("debug") => "dev",
        Some(name) => name,
        None => panic!("a profile folder: {}", folder.display()),
    };
    // With the package of this test, so that what both need is not built once more with other features.
    let built = Command::new(env!("CARGO"))
        .args(["build", "--quiet", "-p", "coldchassis-cli", "-p", "coldchassis-tests"])
        .args(["--bin", "coldchassis"])
        .args(["--profile", profile, "--target-dir"])
        .arg(target)
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .status()
        .expect("cargo runs");
    let name = format!("coldchassis{}", std::env::consts::EXE_SUFFIX);
    built.success().then(|| folder.join(name))
}

/// A command in a folder, in English, whatever the surroundings of this test.
pub fn command(folder: &Path, arguments: &[&str]) -> Command {
    let mut command = Command::new(program());
    command
        .args(arguments)
        .current_dir(folder)
        .env("LANG", "en")
        .env_remove("LC_ALL")
        .env_remove("LC_MESSAGES")
        .env_remove("COLDCHASSIS_INSPECTOR")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped());
    command
}

/// Runs in an empty folder, and fails if anything is left in it.
pub fn run(arguments: &[&str], input: &[u8]) -> Ran {
    run_with(&[], arguments, input)
}

/// The same with some settings of the environment.
pub fn run_with(settings: &[(&str, &str)], arguments: &[&str], input: &[u8]) -> Ran {
    let folder = TempDir::new().expect("a folder");
    let mut command = command(folder.path(), arguments);
    let child = command.envs(settings.iter().copied()).spawn().expect("the program starts");
    let ran = finish(child, input.to_vec());
    assert_eq!(names(folder.path()), Vec::<String>::new(), "{arguments:?} left files behind");
    ran
}

/// Runs in a folder, with this on standard input.
pub fn run_in(folder: &Path, arguments: &[&str], input: &[u8]) -> Ran {
    finish(command(folder, arguments).spawn().expect("the program starts"), input.to_vec())
}

/// Feeds a started program and gathers what it prints until it ends.
pub fn finish(mut child: Child, input: Vec<u8>) -> Ran {
    let feed = child.stdin.take().map(|mut pipe| {
        // A program that refuses early closes its end: that is its right.
        thread::spawn(move || drop(pipe.write_all(&input)))
    });
    let out = child.stdout.take().map(gather);
    let err = child.stderr.take().map(gather);
    let status = wait(&mut child);
    if let Some(feed) = feed {
        feed.join().expect("fed");
    }
    Ran { code: status.code(), out: joined(out), err: joined(err) }
}

/// Waits for the end of a program, and ends it when it takes too long.
pub fn wait(child: &mut Child) -> ExitStatus {
    let start = Instant::now();
    loop {
        if let Some(status) = child.try_wait().expect("a child") {
            return status;
        }
        if start.elapsed() > LONGEST {
            child.kill().expect("it ends");
            panic!("still running after {LONGEST:?}");
        }
        thread::sleep(Duration::from_millis(1));
    }
}

fn gather(mut pipe: impl Read + Send + 'static) -> JoinHandle<String> {
    thread::spawn(move || {
        let mut bytes = Vec::new();
        pipe.read_to_end(&mut bytes).expect("readable");
        String::from_utf8(bytes).expect("UTF-8")
    })
}

fn joined(text: Option<JoinHandle<String>>) -> String {
    text.map(|text| text.join().expect("gathered")).unwrap_or_default()
}

/// The names in a folder.
pub fn names(folder: &Path) -> Vec<String> {
    let entries = std::fs::read_dir(folder).expect("a folder");
    let name = |entry: std::io::Result<std::fs::DirEntry>| entry.expect("an entry").file_name();
    entries.map(|entry| name(entry).to_string_lossy().into_owned()).collect()
}

/// A run that worked: no word of complaint.
pub fn accepted(arguments: &[&str], input: &[u8]) -> String {
    let ran = run(arguments, input);
    assert_eq!((ran.code, ran.err.as_str()), (Some(0), ""), "{arguments:?}");
    ran.out
}

/// What is wrong with a refusal, which has to be: exit 2, nothing printed, one line on standard
/// error that names the field and then says what it takes. Nothing where it is as it should be.
pub fn fault_of_refusal(ran: &Ran, field: &str) -> Option<String> {
    let line = ran.err.strip_suffix('\n').unwrap_or_default();
    let says = line.strip_prefix(&format!("{field}: ")).unwrap_or_default();
    let found = if ran.code != Some(2) {
        format!("exit {:?}", ran.code)
    } else if !ran.out.is_empty() {
        format!("{} bytes on standard output", ran.out.len())
    } else if let Some(bad) = line.chars().find(|c| c.is_control()) {
        format!("{bad:?} in the line")
    } else if says.len() < 5 || says.contains("{$") || says.starts_with("takes-") {
        format!("does not name {field} and say what it takes")
    } else if line.chars().count() > 1000 {
        format!("{} characters", line.chars().count())
    } else {
        return None;
    };
    Some(format!("{found}: {:?}", ran.err.chars().take(200).collect::<String>()))
}
