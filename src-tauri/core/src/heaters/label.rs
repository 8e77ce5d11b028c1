//! Reads a whole list of tubes, as it is copied off a label or pasted.
//!
//! Separators differ, spaces stand inside types and between them, and counts come before or after.

use super::tube::{Known, Tube};

/// One tube of a list.
#[derive(Clone, Debug, PartialEq)]
pub struct Written {
    /// As it stood there.
    pub written: String,
    /// What is known of it.
    pub tube: Tube,
}

/// The longest list that is read, characters: a label has fewer.
const LONGEST_LIST: usize = 4_000;
/// The most tubes that are read.
const MOST_TUBES: usize = 200;
/// The most words that one type is made of, such as `12 SK 7 GT`.
const MOST_WORDS: usize = 4;
/// The highest count before or after a type.
const MOST_OF_ONE: usize = 20;

/// The tubes of a list, each as often as it is there.
pub fn read_label(text: &str) -> Vec<Written> {
    let cut: String = text.chars().take(LONGEST_LIST).collect();
    let mut tubes = Vec::new();
    for piece in cut.split([',', ';', '\n', '\r', '\t', '|', '•', '·', '+', '&']) {
        let words = words(piece);
        read_piece(&words, &mut tubes);
    }
    tubes.truncate(MOST_TUBES);
    tubes
}

/// The words of a piece; brackets and signs around counts become spaces.
fn words(piece: &str) -> Vec<String> {
    let plain = piece.replace(['(', ')', '[', ']', ':', '='], " ").replace(['×', '✕'], "x");
    plain
        .split_whitespace()
        .flat_map(around_slash)
        .filter(|word| word.chars().any(char::is_alphanumeric))
        .filter(|word| {
            !matches!(word.to_ascii_lowercase().as_str(), "and" | "tubes" | "tube" | "ea")
        })
        .collect()
}

/// A slash stands in some type numbers; elsewhere it parts two types.
fn around_slash(word: &str) -> Vec<String> {
    if !word.contains('/') || Tube::of(word).known == Known::Listed {
        return vec![word.to_owned()];
    }
    word.split('/').map(str::to_owned).collect()
}

fn read_piece(words: &[String], tubes: &mut Vec<Written>) {
    let mut rest = words;
    let mut count = None;
    while let Some((first, after)) = rest.split_first() {
        if let Some(found) = count_before(first) {
            count = Some(found);
            rest = after;
            continue;
        }
        let (written, taken) = longest_type(rest);
        let after = rest.get(taken..).unwrap_or_default();
        let trailing = after.first().and_then(|word| count_after(word));
        rest = if trailing.is_some() { after.get(1..).unwrap_or_default() } else { after };
        let tube = Tube::of(&written);
        for _ in 0..count.take().or(trailing).unwrap_or(1) {
            if tubes.len() < MOST_TUBES {
                tubes.push(Written { written: written.clone(), tube: tube.clone() });
            }
        }
    }
}

/// The longest run of words that is a type of the list; else the longest that a rule knows; else one.
fn longest_type(words: &[String]) -> (String, usize) {
    let joined =
        |count: usize| words.iter().take(count).map(String::as_str).collect::<Vec<_>>().join(" ");
    let most = words.len().min(MOST_WORDS);
    for known in [Known::Listed, Known::ByRule] {
        // A word that is known by itself is glued to the next one only where that is nothing by itself:
        // `50 L6 GT` is one tube, `50 45` are two.
        let is_whole =
            Tube::of(&joined(1)).known == known && words.get(1).is_none_or(|next| is_type(next));
        let longest = (1..=most).rev().find(|&count| {
            let run = joined(count);
            Tube::of(&run).known == known && (count == 1 || !is_whole)
        });
        if let Some(count) = longest {
            return (joined(count), count);
        }
    }
    (joined(1), 1)
}

fn is_type(word: &str) -> bool {
    Tube::of(word).known == Known::Listed
}

/// `2x` before a type.
fn count_before(word: &str) -> Option<usize> {
    let word = word.to_ascii_lowercase();
    counted(word.strip_suffix('x')?)
}

/// `x2` after a type.
fn count_after(word: &str) -> Option<usize> {
    let word = word.to_ascii_lowercase();
    counted(word.strip_prefix('x')?)
}

fn counted(digits: &str) -> Option<usize> {
    digits.parse().ok().filter(|count| (1..=MOST_OF_ONE).contains(count))
}

#[cfg(test)]
mod tests {
    use super::read_label;

    #[track_caller]
    fn reads(text: &str, types: &[&str]) {
        let read: Vec<String> = read_label(text).into_iter().map(|read| read.tube.name).collect();
        assert_eq!(read, types, "{text}");
    }

    #[test]
    fn a_list_is_read_whatever_parts_it() {
        let five = ["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"];
        reads("12SA7 12SK7 12SQ7 50L6GT 35Z5GT", &five);
        reads("12SA7, 12SK7, 12SQ7, 50L6-GT and 35Z5 GT", &five);
        reads("12SA7/12SK7/12SQ7/50L6GT/35Z5GT", &five);
        reads("12 sa 7\n12 sk 7\n12 sq 7\n50 L6 GT\n35z5gt", &five);
        reads("• I2SA7 • l2SK7 • 12SQ7 • 5OL6GT • 35Z5GT", &five);
    }

    #[test]
    fn counts_stand_before_or_after() {
        reads("2x 6V6GT, 5Y3GT", &["6V6GT", "6V6GT", "5Y3GT"]);
        reads("6V6GT x2 5Y3GT", &["6V6GT", "6V6GT", "5Y3GT"]);
        reads("6V6GT (x2), 5Y3GT", &["6V6GT", "6V6GT", "5Y3GT"]);
    }

    #[test]
    fn a_slash_inside_a_type_stays() {
        reads("35/51 24A 84/6Z4", &["35/51", "24A", "84/6Z4"]);
    }

    #[test]
    fn what_nobody_knows_is_kept() {
        reads("QWERTY 12SK7", &["QWERTY", "12SK7"]);
        assert!(read_label(&"(x".repeat(10_000)).len() <= 200);
    }
}
