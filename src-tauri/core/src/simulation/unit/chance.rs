//! How a random unit is drawn: one of several things, by weight, over decades.

use rand::Rng;

/// One of several things, each as likely.
pub(super) fn any<T: Copy>(first: T, others: &[T], rng: &mut impl Rng) -> T {
    let place = rng.random_range(0..=others.len());
    place.checked_sub(1).and_then(|place| others.get(place)).copied().unwrap_or(first)
}

/// One of a list, each as likely; `None` of an empty one.
pub(super) fn one_of<T: Copy>(things: &[T], rng: &mut impl Rng) -> Option<T> {
    let (first, others) = things.split_first()?;
    Some(any(*first, others, rng))
}

/// One of a list, by weight; `None` of an empty one.
pub(super) fn pick<T: Copy>(weighted: &[(T, u32)], rng: &mut impl Rng) -> Option<T> {
    let total: u32 = weighted.iter().map(|(_, weight)| weight).sum();
    if total == 0 {
        return None;
    }
    let mut left = rng.random_range(0..total);
    for &(thing, weight) in weighted {
        if left < weight {
            return Some(thing);
        }
        left -= weight;
    }
    None
}

/// Evenly over decades, as part values are.
pub(super) fn over_decades((low, high): (f64, f64), rng: &mut impl Rng) -> f64 {
    (low * (high / low).powf(rng.random::<f64>())).clamp(low, high)
}
