//! How long something takes, for the benches.

use std::time::{Duration, Instant};

/// The quickest of five runs, so that other work on the machine does not count.
pub fn best_of_five(run: impl Fn()) -> Duration {
    let once = || {
        let start = Instant::now();
        run();
        start.elapsed()
    };
    (0..5).map(|_| once()).min().unwrap_or_default()
}
