//! Processes that end with the check that started them.

use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::time::{Duration, SystemTime, UNIX_EPOCH};

use tokio::io::{AsyncBufReadExt, BufReader};
use tokio::process::Child;

/// How long a program may take to say that it is ready.
const READY: Duration = Duration::from_secs(20);

/// What the system counts a second as. Fixed at 100 on Linux for programs (USER_HZ, from memory, high).
const TICKS: f64 = 100.0;

/// Starts a program that is killed when it is dropped.
///
/// # Panics
/// When it is not installed.
pub fn start(command: &mut tokio::process::Command) -> Child {
    let started = command.kill_on_drop(true).stdin(Stdio::null()).spawn();
    started.unwrap_or_else(|error| {
        panic!("{:?} does not start: {error}", command.as_std().get_program());
    })
}

/// The first line that a program prints.
///
/// # Panics
/// When it ends or says nothing.
pub async fn first_line(child: &mut Child) -> String {
    let output = child.stdout.take().expect("its output is piped");
    let mut line = String::new();
    let mut lines = BufReader::new(output);
    let read = lines.read_line(&mut line);
    tokio::time::timeout(READY, read).await.expect("it says nothing").expect("its output is text");
    assert!(!line.is_empty(), "it ended without a word");
    line.trim().to_owned()
}

/// A process that another one started for us, known by its number and the program it runs.
pub struct Ended {
    number: u32,
    program: PathBuf,
}

impl Ended {
    /// The process of this number, where it runs `program`.
    pub fn of(number: u32, program: PathBuf) -> Option<Self> {
        Some(Self { number, program }).filter(Self::is_running)
    }

    /// The child of process `parent` that runs `program`.
    pub fn child_of(parent: u32, program: PathBuf) -> Option<Self> {
        let children = std::fs::read_to_string(format!("/proc/{parent}/task/{parent}/children"));
        let children = children.ok()?;
        let numbers = children.split_whitespace().filter_map(|number| number.parse().ok());
        numbers.map(|number| Self { number, program: program.clone() }).find(Self::is_running)
    }

    /// Its number.
    pub fn number(&self) -> u32 {
        self.number
    }

    /// Whether it still runs; its number alone might have gone to another process.
    pub fn is_running(&self) -> bool {
        let runs = std::fs::read_link(format!("/proc/{}/exe", self.number));
        runs.is_ok_and(|runs| runs == self.program)
    }

    /// When it started, in ms since 1970. The system counts its age in hundredths of a second.
    ///
    /// # Panics
    /// When it has ended.
    pub fn started_at(&self) -> f64 {
        let now = SystemTime::now().duration_since(UNIX_EPOCH).expect("it is after 1970");
        let read =
            |file: &str| std::fs::read_to_string(file).expect("the system tells of a process");
        let uptime = read("/proc/uptime");
        let uptime: f64 =
            uptime.split(' ').next().and_then(|text| text.parse().ok()).expect("a time");
        let stat = read(&format!("/proc/{}/stat", self.number));
        // The name of the program, in brackets, may hold anything. The start is the 22nd field of all
        // (proc(5), from memory, high), the 20th after it.
        let (_, fields) = stat.rsplit_once(") ").expect("a name");
        let ticks: f64 =
            fields.split(' ').nth(19).and_then(|text| text.parse().ok()).expect("a start");
        now.as_secs_f64() * 1e3 - (uptime - ticks / TICKS) * 1e3
    }

    /// Ends it as a crash or an empty battery would: it is told nothing.
    pub fn kill(&self) {
        if self.is_running() {
            // Whether that worked is seen by looking: it may have ended by itself in between.
            let _ = Command::new("kill").args(["-KILL", &self.number.to_string()]).status();
        }
    }
}

impl Drop for Ended {
    fn drop(&mut self) {
        self.kill();
    }
}
