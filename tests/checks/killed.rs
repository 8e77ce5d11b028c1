//! A process that is killed at any moment costs nothing that it acknowledged.
//!
//! A worker works on a record as the app does and is killed, again and again on the same folder. After each
//! time the folder is opened as at the next start, and has to hold every event whose command had returned; of
//! the command that was under way all or nothing; for every photo that is named its files, whole; copies that
//! are whole; and nothing that stays for ever. `COLDCHASSIS_KILLS=1000` kills a thousand times (`make kills`).
//!
//! What this does not do: a process that is killed leaves what it has written with the system, which still
//! puts it on the disk. What a loss of power would cost is not shown here; against that stand
//! `synchronous=FULL` and the flushing of files and folders before they are named.
//!
//! Seeds fix what is done and when the kill is meant to come; when it truly comes, the machine decides.

#[path = "killed/child.rs"]
mod child;
#[path = "killed/folder.rs"]
mod folder;
#[path = "killed/ledger.rs"]
mod ledger;
#[path = "killed/log.rs"]
mod log;
#[path = "killed/series.rs"]
mod series;
#[path = "killed/supplies.rs"]
mod supplies;
#[path = "killed/tally.rs"]
mod tally;

use coldchassis_tests::seeds::{asked, on_all_threads};

/// Kills where nothing is asked for.
const USUAL: u64 = 100;

#[test]
fn a_process_that_is_killed_costs_nothing_that_it_acknowledged() {
    let kills = asked("COLDCHASSIS_KILLS", USUAL);
    let supplies = supplies::Supplies::make();
    let takes = series::learn_all(&supplies);
    let tally = on_all_threads(
        kills.div_ceil(series::LENGTH),
        |tally: &mut tally::Tally, seed| {
            let length = (kills - seed * series::LENGTH).min(series::LENGTH);
            series::run(&supplies, &takes, seed, length, tally);
        },
        tally::Tally::add,
    );
    println!("{tally}");
    assert_eq!(tally.kills(), kills);
    if kills >= USUAL {
        tally.check_that_it_says_something();
    }
}
