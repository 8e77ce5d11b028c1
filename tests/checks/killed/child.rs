//! Starts a worker and kills it.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{BufRead, BufReader, Read};
use std::os::unix::process::ExitStatusExt;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use coldchassis_core::store::SCHEMA_VERSION;
use coldchassis_tests::killing::{Given, Home, Said, Stage};
use rand::Rng;
use rand_chacha::ChaCha8Rng;

/// The number of the signal that cannot be caught.
const SIGKILL: i32 = 9;
/// What a command writes, it writes first; the rest of its time goes into the verdict.
const WRITING: Duration = Duration::from_millis(12);

/// How long a migration is waited for: then it is killed wherever it is.
const LONGEST: Duration = Duration::from_secs(3);

/// What a kill is meant for.
#[derive(Clone, Copy, Debug)]
pub struct Aim {
    pub stage: Stage,
    /// Of the bundle to be taken in.
    pub number: u32,
}

/// How long the stages take, as workers said last.
pub type Takes = BTreeMap<Stage, Duration>;

fn start(home: &Home, given: &Given, aim: Aim, seed: u64) -> Child {
    let mut worker = Command::new(env!("CARGO_BIN_EXE_worker"));
    worker.arg(&home.0).arg(&given.0).arg(seed.to_string());
    worker.arg(aim.stage.id()).arg(aim.number.to_string());
    worker.stdout(Stdio::piped()).spawn().expect("a worker")
}

/// Lets a worker end a stage, and gives how long that took.
pub fn learn(home: &Home, given: &Given, aim: Aim) -> Duration {
    let mut child = start(home, given, aim, 0);
    let lines = BufReader::new(child.stdout.take().expect("its lines")).lines();
    let took = lines.filter_map(|line| Said::read(&line.expect("a line"))).find_map(|line| {
        let Said::Did(stage, micros, _) = line else { return None };
        (stage == aim.stage).then(|| Duration::from_micros(micros))
    });
    child.kill().expect("it can be killed");
    child.wait().expect("it ends");
    took.expect("it comes to its stage")
}

/// Starts a worker, kills it where it is meant to be killed, and gives all that it said.
pub fn kill(
    home: &Home,
    given: &Given,
    aim: Aim,
    draw: &mut ChaCha8Rng,
    takes: &mut Takes,
) -> Vec<Said> {
    let mut child = start(home, given, aim, draw.random());
    let mut lines = BufReader::new(child.stdout.take().expect("its lines")).lines();
    let mut passed = if is_small(aim.stage) { draw.random_range(0..4) } else { 0 };
    let mut said = Vec::new();
    for line in lines.by_ref() {
        let Some(line) = Said::read(&line.expect("a line")) else { continue };
        let is_aim = matches!(line, Said::Begins(stage, _) if stage == aim.stage);
        said.push(line);
        if is_aim && passed == 0 {
            break;
        }
        passed -= u32::from(is_aim);
    }
    let long = takes.get(&aim.stage).copied().expect("every stage was learnt");
    if aim.stage != Stage::Migrate || !is_in_transaction(home, draw) {
        std::thread::sleep(delay(aim.stage, long, draw));
    }
    child.kill().expect("it can be killed");
    // What was still on its way was said before.
    said.extend(lines.map_while(Result::ok).filter_map(|line| Said::read(&line)));
    let end = child.wait().expect("it ends");
    assert_eq!(end.signal(), Some(SIGKILL), "it ended by itself in {aim:?}: {end}, {said:?}");
    for line in &said {
        if let Said::Did(stage, micros, _) = line {
            takes.insert(*stage, Duration::from_micros(*micros));
        }
    }
    said
}

/// Waits, two times of three, for the moment of a migration that lasts least and could cost most: its
/// rollback journal is there, or its pages are already in the file and the journal still is. Tells whether it waited.
fn is_in_transaction(home: &Home, draw: &mut ChaCha8Rng) -> bool {
    let journal = home.0.join("record.coldchassis-journal");
    let (wanted, share) = (draw.random_range(0..3), draw.random_range(0.0..1.0));
    let until = Instant::now() + LONGEST;
    let is_it = || match wanted {
        1 => journal.exists(),
        _ => version(home) == Some(SCHEMA_VERSION),
    };
    while wanted > 0 && !is_it() && Instant::now() < until {
        std::hint::spin_loop();
    }
    if wanted == 1 {
        std::thread::sleep(WRITING.mul_f64(share));
    }
    wanted > 0
}

/// The version that stands in the record's header.
fn version(home: &Home) -> Option<u32> {
    let mut header = [0; 64];
    File::open(home.record()).ok()?.read_exact(&mut header).ok()?;
    header.last_chunk().map(|bytes| u32::from_be_bytes(*bytes))
}

const fn is_small(stage: Stage) -> bool {
    matches!(stage, Stage::Create | Stage::Answer | Stage::Undo | Stage::Edit | Stage::Photo)
}

/// Of a small stage, that comes again and again, often while it writes; of a long one anywhere, but more often
/// towards its end, where it puts in place what it made. Sometimes after its end.
fn delay(stage: Stage, long: Duration, draw: &mut ChaCha8Rng) -> Duration {
    let share = draw.random_range(0.0..1.0);
    match (is_small(stage), draw.random::<bool>()) {
        (true, true) => long.min(WRITING).mul_f64(share),
        (true, false) => long.mul_f64(share * 1.1),
        (false, true) => long.mul_f64(share),
        (false, false) => long.mul_f64(0.5 + share * 0.55),
    }
}
