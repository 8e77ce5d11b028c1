//! One thing that is used by one at a time, of whom a person who waits comes first.
//!
//! A plain lock is soonest had again by whoever has just given it back: work that takes it over and over
//! would keep a command out for as long as there is work.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::thread;
use std::time::Duration;

/// How long work waits before it looks again whether somebody waits: less than a person notices.
const PAUSE: Duration = Duration::from_millis(1);

/// A thing with its turns. A use of it that failed from inside is for the next one to notice.
#[derive(Debug, Default)]
pub struct Turns<T> {
    thing: Mutex<T>,
    waiting: AtomicUsize,
}

impl<T> Turns<T> {
    /// A thing that nobody uses yet.
    pub const fn of(thing: T) -> Self {
        Self { thing: Mutex::new(thing), waiting: AtomicUsize::new(0) }
    }

    /// The thing for a person's command: as soon as whoever has it gives it back.
    pub fn now(&self) -> MutexGuard<'_, T> {
        self.waiting.fetch_add(1, Ordering::SeqCst);
        let thing = self.thing.lock().unwrap_or_else(PoisonError::into_inner);
        self.waiting.fetch_sub(1, Ordering::SeqCst);
        thing
    }

    /// The thing for work that nobody waits for: after every command that does.
    pub fn later(&self) -> MutexGuard<'_, T> {
        while self.waiting.load(Ordering::SeqCst) > 0 {
            thread::sleep(PAUSE);
        }
        self.thing.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_command_that_waits_comes_before_work_that_takes_its_turn_again() {
        let turns = Turns::of(Vec::new());
        let wait = |until: &dyn Fn() -> bool| {
            while !until() {
                thread::sleep(PAUSE);
            }
        };
        thread::scope(|scope| {
            let held = turns.later();
            scope.spawn(|| turns.now().push("command"));
            wait(&|| turns.waiting.load(Ordering::SeqCst) == 1);
            // Work that asks while the command waits, and would be quicker: it has nobody to be woken by.
            scope.spawn(|| turns.later().push("work"));
            thread::sleep(PAUSE * 20);
            drop(held);
        });
        assert_eq!(*turns.now(), ["command", "work"]);
    }

    #[test]
    fn what_failed_from_inside_leaves_the_thing_to_the_next() {
        let turns = Turns::of(1);
        let failed = thread::scope(|scope| {
            let fails = || {
                let _held = turns.now();
                panic!("from inside");
            };
            scope.spawn(fails).join()
        });
        assert!(failed.is_err());
        assert_eq!(*turns.now(), 1);
        assert_eq!(*turns.later(), 1);
    }
}
