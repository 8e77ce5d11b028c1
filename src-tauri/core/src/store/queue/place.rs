//! Where a unit stands in the queue, as one number.
//!
//! From the top: 3 bits of rank, 38 bits of seconds before the end of the year 9999, 10 bits that tell
//! units of one second apart. So a class is a range of places, a span of days within it another, and both
//! come out in order, the newest first.

use uuid::Uuid;

/// Bits that tell units of one second apart: a thousand, and more spill into the seconds before.
const TIE_BITS: u32 = 10;
/// Bits of seconds: the year 9999 needs 38.
const SECOND_BITS: u32 = 38;
const LAST_SECOND: i64 = (1 << SECOND_BITS) - 1;
const LAST_TIE: i64 = (1 << TIE_BITS) - 1;

/// The largest rank: that of the least hazard.
pub(super) const LAST_RANK: i64 = 7;

/// A span of places, both ends in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Span {
    pub from: i64,
    pub to: i64,
}

/// The first place that a unit of a rank, created at a moment (UTC milliseconds), asks for.
pub(super) fn of(rank: i64, created_at: i64, unit: Uuid) -> i64 {
    let tie = i64::from(
        unit.as_bytes().iter().rev().take(2).fold(0_u16, |tie, byte| tie << 8 | u16::from(*byte)),
    );
    start(rank) | before_end(created_at) << TIE_BITS | (tie & LAST_TIE)
}

/// Whether two places are of one rank and second.
pub(super) const fn is_beside(place: i64, other: i64) -> bool {
    place >> TIE_BITS == other >> TIE_BITS
}

/// All places of a rank, or those of units created in a span of milliseconds, both ends in it.
pub(super) fn span(rank: i64, created: Option<(i64, i64)>) -> Span {
    let (first, last) = created.unwrap_or((0, i64::MAX));
    let from = start(rank) | before_end(last) << TIE_BITS;
    let to = start(rank) | before_end(first) << TIE_BITS | LAST_TIE;
    Span { from, to }
}

/// A place without its rank: what the newest come first by.
pub(super) const fn age(place: i64) -> i64 {
    place & ((1 << (SECOND_BITS + TIE_BITS)) - 1)
}

/// The place of a rank with an age.
pub(super) const fn with_age(rank: i64, age: i64) -> i64 {
    start(rank) | age
}

const fn start(rank: i64) -> i64 {
    rank << (SECOND_BITS + TIE_BITS)
}

fn before_end(at: i64) -> i64 {
    LAST_SECOND - (at / 1000).clamp(0, LAST_SECOND)
}
