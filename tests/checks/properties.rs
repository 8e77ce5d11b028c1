//! Laws that hold for every network, arrangement and set of findings, tried on random ones.
//!
//! Each law is either a theorem about passive circuits, the design's own definition worked out
//! again by brute force, or a promise of the verdict (it never gets better by knowing less). Runs
//! are repeatable: the seed is fixed unless `PROPTEST_RNG_SEED` says otherwise, and
//! `PROPTEST_CASES` makes them longer.
//!
//! What this does not do: it compares nothing to outside figures; the reference tables do.

#[path = "properties/arrangements.rs"]
mod arrangements;
#[path = "properties/conflicts.rs"]
mod conflicts;
#[path = "properties/drafts.rs"]
mod drafts;
#[path = "properties/evidence.rs"]
mod evidence;
#[path = "properties/grading.rs"]
mod grading;
#[path = "properties/mirrors.rs"]
mod mirrors;
#[path = "properties/networks.rs"]
mod networks;
#[path = "properties/oracle.rs"]
mod oracle;
#[path = "properties/tubes.rs"]
mod tubes;
#[path = "properties/verdicts.rs"]
mod verdicts;

use proptest::test_runner::{Config, RngSeed};

/// The settings of a run of this many cases.
fn cases(cases: u32) -> Config {
    let usual = Config::default();
    let longer = std::env::var_os("PROPTEST_CASES").is_some();
    Config {
        cases: if longer { usual.cases } else { cases },
        failure_persistence: None,
        rng_seed: match usual.rng_seed {
            RngSeed::Random => RngSeed::Fixed(20_260_101),
            fixed => fixed,
        },
        ..usual
    }
}
