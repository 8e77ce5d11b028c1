//! Kills on one folder, one after the other, so that what they leave piles up.

use std::fs;

use coldchassis_core::workbench::{Surroundings, Workbench};
use coldchassis_tests::killing::{Home, Said, Stage};
use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_chacha::ChaCha8Rng;
use uuid::Uuid;

use super::child::{Aim, Takes, kill, learn};
use super::folder;
use super::ledger::Ledger;
use super::log;
use super::supplies::Supplies;
use super::tally::Tally;

/// Kills of a series.
pub const LENGTH: u64 = 50;
/// How often each stage is aimed at in a series.
const AIMS: [(Stage, usize); 13] = [
    (Stage::Answer, 7),
    (Stage::Create, 2),
    (Stage::Undo, 3),
    (Stage::Edit, 2),
    (Stage::Photo, 8),
    (Stage::Look, 2),
    (Stage::Import, 6),
    (Stage::Delete, 3),
    (Stage::Migrate, 6),
    (Stage::Snapshot, 4),
    (Stage::Export, 2),
    (Stage::Restore, 2),
    (Stage::Open, 3),
];
/// After so many kills everything that was left is made old, and must be gone after a start.
const THOROUGH: usize = 10;

/// Lets workers end every stage once, so that it is known when to kill.
pub fn learn_all(supplies: &Supplies) -> Takes {
    let one = |stage: Stage| {
        let folder = tempfile::tempdir().expect("a folder");
        let home = Home(folder.path().to_owned());
        supplies.begin(&home);
        let ledger = Ledger::of(supplies, &log::read(&home.record()).events);
        if stage == Stage::Migrate {
            log::make_old(&home.record());
        }
        let aim = Aim { stage, number: ledger.next_bundle(stage) };
        (stage, learn(&home, &supplies.given, aim))
    };
    Stage::ALL.into_iter().map(one).collect()
}

/// Kills workers on a folder of its own and looks at it after each time.
pub fn run(supplies: &Supplies, takes: &Takes, seed: u64, length: u64, tally: &mut Tally) {
    let mut takes = takes.clone();
    let folder = tempfile::tempdir().expect("a folder");
    let home = Home(folder.path().to_owned());
    supplies.begin(&home);
    let mut draw = ChaCha8Rng::seed_from_u64(seed);
    let mut aims: Vec<Stage> =
        AIMS.iter().flat_map(|(stage, times)| vec![*stage; *times]).collect();
    assert_eq!(aims.len() as u64, LENGTH);
    aims.shuffle(&mut draw);
    aims.truncate(usize::try_from(length).expect("a few"));
    let mut ledger = Ledger::of(supplies, &log::read(&home.record()).events);
    for (at, stage) in aims.iter().copied().enumerate() {
        let aim = Aim { stage, number: ledger.next_bundle(stage) };
        if stage == Stage::Migrate {
            log::make_old(&home.record());
        }
        let said = kill(&home, &supplies.given, aim, &mut draw, &mut takes);
        tally.row(stage).aimed += 1;
        match ledger.hear(&said, aim) {
            Some(stage) => tally.row(stage).inside += 1,
            None => tally.between += 1,
        }
        tally.count("commands acknowledged", said.iter().filter(|line| is_done(line)).count());
        // Opened only once more after a kill while it was opened: what is left of both is met at once.
        let is_last = at + 1 == aims.len();
        if !is_last && aims.get(at + 1) == Some(&Stage::Open) {
            continue;
        }
        let is_thorough = is_last || (at + 1) % THOROUGH == 0;
        look(supplies, &home, &mut ledger, is_thorough, tally);
    }
}

const fn is_done(line: &Said) -> bool {
    matches!(line, Said::Did(..))
}

/// Looks at what is left, then starts as the app does, then looks at everything.
fn look(
    supplies: &Supplies,
    home: &Home,
    ledger: &mut Ledger,
    is_thorough: bool,
    tally: &mut Tally,
) {
    if ledger.was_about(Stage::Migrate) {
        log::check_either_form(home, ledger, tally);
    }
    if ledger.was_about(Stage::Export) {
        folder::check_given(home, tally);
    }
    if is_thorough {
        folder::make_old(home);
    }
    let mut bench = open(home);
    tally.count("leftovers swept away", bench.sweep().expect("swept"));
    if let Some(look) = bench.look_work().expect("the record") {
        look.run().expect("the record is sound");
        tally.count("starts after which the file was looked at in full", 1);
    }
    ledger.see(&mut bench);
    if is_thorough {
        bench.export_work(None).and_then(|work| work.run(&home.bundle())).expect("a bundle");
    }
    drop(bench);
    let found = log::read(&home.record());
    log::check_sound(&home.record());
    ledger.check(&found, tally);
    log::check_projections(&home.record(), tally);
    folder::check_photos(supplies, home, &found, is_thorough, tally);
    folder::check_snapshots(home, ledger, &found, tally);
    folder::check_deleted(home, ledger, tally);
    if is_thorough {
        folder::check_nothing_stays(home);
        tally.count("folders in which nothing was left over", 1);
    }
    ledger.turn_over(found);
}

/// Opens the record as at the next start: at the first try.
fn open(home: &Home) -> Workbench {
    let around = Surroundings {
        clock: Box::new(|| {
            let since = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH);
            i64::try_from(since.expect("after 1970").as_millis()).expect("a time")
        }),
        ids: Box::new(Uuid::now_v7),
        device: "bench".to_owned(),
        photos: Some(home.photos()),
        author: "Odo Trinket".to_owned(),
        locale: "en".to_owned(),
    };
    let opened = Workbench::open(&home.record(), around);
    opened.unwrap_or_else(|problem| panic!("it does not open: {problem:?}, {:?}", listed(home)))
}

fn listed(home: &Home) -> Vec<std::path::PathBuf> {
    let entries = fs::read_dir(&home.0).expect("a folder");
    entries.map(|entry| entry.expect("an entry").path()).collect()
}
