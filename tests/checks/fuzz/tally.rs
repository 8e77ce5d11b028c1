//! How many inputs a target tried, and how many of them got past the first refusal.

use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

/// The time for each target where nothing is said, s.
const SECONDS: u64 = 3;
/// Fewer inputs say nothing of a share.
const ENOUGH: u64 = 50;

/// How long each target runs.
pub fn time() -> Duration {
    Duration::from_secs(coldchassis_tests::seeds::asked("COLDCHASSIS_FUZZ_SECONDS", SECONDS))
}

pub struct Tally {
    name: &'static str,
    start: Instant,
    tried: AtomicU64,
    past: AtomicU64,
    taken: AtomicU64,
}

/// How far an input got.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Reached {
    /// It was refused as no such thing at all.
    Nothing,
    /// It was looked at more closely, and refused.
    Further,
    /// It was taken.
    Taken,
}

impl Tally {
    pub fn new(name: &'static str) -> Self {
        let zero = || AtomicU64::new(0);
        Self { name, start: Instant::now(), tried: zero(), past: zero(), taken: zero() }
    }

    pub fn count(&self, reached: Reached) {
        self.tried.fetch_add(1, Ordering::Relaxed);
        self.past.fetch_add(u64::from(reached != Reached::Nothing), Ordering::Relaxed);
        self.taken.fetch_add(u64::from(reached == Reached::Taken), Ordering::Relaxed);
    }

    /// Prints what was counted; fails where too few inputs got past the first refusal, of 100.
    pub fn end(&self, least: u64) {
        let of = |count: &AtomicU64| count.load(Ordering::Relaxed);
        let (tried, past, taken) = (of(&self.tried), of(&self.past), of(&self.taken));
        let share = |count: u64| 100 * count / tried.max(1);
        println!(
            "{}: {tried} inputs in {:.0} s, {} % past the first refusal, {} % taken",
            self.name,
            self.start.elapsed().as_secs_f64(),
            share(past),
            share(taken),
        );
        assert!(tried > 0, "nothing was tried");
        assert!(tried < ENOUGH || share(past) >= least, "the target tries next to nothing");
    }
}
