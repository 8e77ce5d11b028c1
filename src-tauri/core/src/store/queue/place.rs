//! Where a unit stands in the queue, as one number.
//!
//! From the top: 3 bits of rank, 48 bits of milliseconds before a moment after the year 9999, 12 bits that
//! tell units of one millisecond apart. So a class is a range of places, a span of days within it another,
//! and both come out in order, the newest first.

/// Bits that tell units of one millisecond apart: four thousand, and more spill into those before.
const TIE_BITS: u32 = 12;
/// Bits of milliseconds: the year 9999 needs 48.
const TIME_BITS: u32 = 48;
const LAST_TIME: i64 = (1 << TIME_BITS) - 1;
const LAST_TIE: i64 = (1 << TIE_BITS) - 1;

/// The largest rank: that of the least hazard.
pub(super) const LAST_RANK: i64 = 7;

/// A span of places, both ends in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Span {
    pub from: i64,
    pub to: i64,
}

/// The first place that a unit of a rank, created at a moment (UTC milliseconds), asks for. Numbers count
/// up as units are created, so of one moment the higher number is the newer.
pub(super) fn of(rank: i64, created_at: i64, number: u32) -> i64 {
    let tie = LAST_TIE - (i64::from(number) & LAST_TIE);
    start(rank) | before_end(created_at) << TIE_BITS | tie
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
    place & ((1 << (TIME_BITS + TIE_BITS)) - 1)
}

/// The place of a rank with an age.
pub(super) const fn with_age(rank: i64, age: i64) -> i64 {
    start(rank) | age
}

const fn start(rank: i64) -> i64 {
    rank << (TIME_BITS + TIE_BITS)
}

fn before_end(at: i64) -> i64 {
    LAST_TIME - at.clamp(0, LAST_TIME)
}
