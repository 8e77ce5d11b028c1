//! Finds the entry of the list that is meant by what was written on a tube or typed.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;

use super::catalogue::{BY_KEY, Doubt, Named, catalogue};
use super::designation::{RUSSIAN_GRADES, american_parts};
use super::spelling::{Alike, Key, folded, in_latin, is_cyrillic, key, looks_in_latin};
use super::suggest::FOLDED;

/// An entry of the list, and how it was come by.
pub(super) struct Found {
    pub(super) named: Named,
    /// Letters were taken for those that look like them.
    pub(super) corrected: bool,
    /// It has a suffix that the list does not have, and what is doubtful for it.
    pub(super) suffix: Option<Option<Doubt>>,
}

impl Found {
    const fn exactly(named: Named) -> Self {
        Self { named, corrected: false, suffix: None }
    }

    const fn corrected(named: Named) -> Self {
        Self { named, corrected: true, suffix: None }
    }

    const fn with_suffix(named: Named, doubt: Option<Doubt>) -> Self {
        Self { named, corrected: false, suffix: Some(doubt) }
    }
}

/// The entry that is meant: as written, in Latin letters, as a Russian number that was read as a Latin one,
/// without its suffix or prefix, or with look-alikes taken for each other.
pub(super) fn lookup(entered: &str) -> Option<Found> {
    let key = key(entered);
    if let Some(named) = exact(&key) {
        return Some(Found::exactly(named));
    }
    let latin = in_latin(&key).unwrap_or_else(|| key.clone());
    exact(&latin)
        .map(Found::exactly)
        .or_else(|| RUSSIAN_LOOKS.get(&latin).copied().map(Found::corrected))
        .or_else(|| without_suffix(&key).map(|(named, doubt)| Found::with_suffix(named, doubt)))
        .or_else(|| without_grade(&latin).map(|named| Found::with_suffix(named, None)))
        .or_else(|| without_prefix(entered, &key).map(Found::exactly))
        .or_else(|| of_halves(entered).map(Found::exactly))
        .or_else(|| FOLDED.get(&folded(&key, Alike::Round)).copied().map(Found::corrected))
}

fn exact(key: &str) -> Option<Named> {
    BY_KEY.get(key).copied()
}

/// The same type without its suffix, and what is doubtful where it can mean another current.
fn without_suffix(key: &str) -> Option<(Named, Option<Doubt>)> {
    let (_, _, _, suffix) = american_parts(key)?;
    let bare = key.strip_suffix(suffix).filter(|_| !suffix.is_empty())?;
    let glass = suffix.chars().all(|c| matches!(c, 'G' | 'T'));
    Some((exact(bare)?, (!glass).then_some(Doubt::Suffix)))
}

/// A Russian type without the letters of its quality grade, which leave the heater as it is.
fn without_grade(latin: &str) -> Option<Named> {
    let bare = |grade: &&str| exact(latin.strip_suffix(*grade)?).filter(|named| is_russian(*named));
    RUSSIAN_GRADES.iter().filter(|grade| !grade.is_empty()).find_map(bare)
}

/// Letters that makers put before a number, for the base.
const BASE_PREFIXES: [&str; 8] = ["UX", "UY", "UZ", "UT", "UV", "KX", "CX", "WD"];
/// The one that begins European numbers as well: UY41.
const EUROPEAN_TOO: &str = "UY";

/// The same type without the letters of its base, and without the maker's hundred: UX-245 and 345 are 45.
fn without_prefix(entered: &str, key: &str) -> Option<Named> {
    let prefix = BASE_PREFIXES.iter().find(|prefix| key.starts_with(**prefix));
    let rest = prefix.map_or(key, |prefix| key.strip_prefix(prefix).unwrap_or(key));
    if !rest.starts_with(|c: char| c.is_ascii_digit()) {
        return None;
    }
    let digits = rest.chars().take_while(char::is_ascii_digit).count();
    let european = prefix == Some(&EUROPEAN_TOO) && digits < 3 && !entered.contains('-');
    // 211 and 212 are tubes of their own.
    let hundred = rest
        .strip_prefix(['2', '3', '4'])
        .filter(|short| digits == 3 && rest.len() <= 4 && !matches!(*short, "11" | "12"));
    let bare = prefix.and_then(|_| exact(rest));
    bare.or_else(|| hundred.and_then(exact)).filter(|_| !european)
}

/// One tube with two numbers on it, which the list has under both.
fn of_halves(entered: &str) -> Option<Named> {
    let (first, second) = entered.split_once('/')?;
    let (first, second) = (exact(&key(first))?, exact(&key(second))?);
    (first.place == second.place).then_some(first)
}

fn is_russian(named: Named) -> bool {
    named.tube().is_some_and(|tube| tube.names().any(|name| name.contains(is_cyrillic)))
}

/// Russian types by the Latin spellings that their Cyrillic ones are taken for: 6Н8С for 6H8C. What is a
/// number of another type, or of two Russian ones, is left out.
static RUSSIAN_LOOKS: LazyLock<FxHashMap<Key, Named>> = LazyLock::new(|| {
    let mut looks: FxHashMap<Key, Option<Named>> = FxHashMap::default();
    for (place, tube) in catalogue().iter().enumerate() {
        // Shown by its first name, which is in Latin letters as the spelling that was meant.
        let named = Named { place, nth: 0 };
        for name in tube.names().filter(|name| name.contains(is_cyrillic)) {
            for look in looks_in_latin(&key(name)) {
                let only =
                    looks.get(&look).is_none_or(|other| other.is_some_and(|o| o.place == place));
                looks.insert(look, only.then_some(named));
            }
        }
    }
    let alone = looks.into_iter().filter_map(|(look, named)| Some((look, named?)));
    alone.filter(|(look, _)| !BY_KEY.contains_key(look)).collect()
});
