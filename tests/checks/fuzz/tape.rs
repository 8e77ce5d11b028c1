//! Arbitrary bytes as decisions, one after the other; behind their end every decision is the first there is.
//!
//! So a shorter tape is a simpler input, and a failure shrinks to what matters.

use bolero::{ValueGenerator, produce};

/// The longest tape, bytes.
pub const LONGEST: usize = 240;

/// Tapes of all lengths.
pub fn tapes() -> impl ValueGenerator<Output = Vec<u8>> {
    produce::<Vec<u8>>().with().len(0_usize..LONGEST)
}

pub struct Tape<'a> {
    bytes: &'a [u8],
}

impl<'a> Tape<'a> {
    pub const fn of(bytes: &'a [u8]) -> Self {
        Self { bytes }
    }

    pub fn byte(&mut self) -> u8 {
        let Some((first, rest)) = self.bytes.split_first() else { return 0 };
        self.bytes = rest;
        *first
    }

    /// A number below another; 0 where that is 0.
    pub fn below(&mut self, count: usize) -> usize {
        let bytes = if count > 1 << 16 { 4 } else { 2 };
        let number = (0..bytes).fold(0, |number, _| number << 8 | usize::from(self.byte()));
        if count == 0 { 0 } else { number % count }
    }

    /// Whether something of so many in 256 happens.
    pub fn is(&mut self, of_256: u8) -> bool {
        // Behind the end nothing happens.
        self.byte() > u8::MAX - of_256
    }

    pub fn pick<'b, T>(&mut self, list: &'b [T]) -> &'b T {
        &list[self.below(list.len())]
    }

    /// A figure between two, as likely in each decade.
    pub fn figure(&mut self, low: f64, high: f64) -> f64 {
        let share = self.below(1 << 16) as f64 / f64::from(u16::MAX);
        (low.ln() + (high.ln() - low.ln()) * share).exp().clamp(low, high)
    }
}
