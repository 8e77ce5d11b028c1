//! Heaters against outside references: line-ups with their sums, cold readings, the list of types, the
//! rules of type numbers, and texts that nobody would type.
//!
//! The line-ups and their sums were kept before the code that they judge was written. Each row says
//! whether it was seen on a page, comes from trade knowledge or was made up for a check; that mark
//! stands in the message of every comparison.
//!
//! What this does not do: it does not check the figures of the types against manuals.

#[path = "heaters/catalogue.rs"]
mod catalogue;
#[path = "heaters/kinds_of_line_up.rs"]
mod kinds_of_line_up;
#[path = "heaters/left_out.rs"]
mod left_out;
#[path = "heaters/line_ups.rs"]
mod line_ups;
#[path = "heaters/numbers.rs"]
mod numbers;
#[path = "heaters/numbers_elsewhere.rs"]
mod numbers_elsewhere;
#[path = "heaters/odd_text.rs"]
mod odd_text;
#[path = "heaters/readings.rs"]
mod readings;
#[path = "heaters/tables.rs"]
mod tables;
#[path = "heaters/traps.rs"]
mod traps;

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
