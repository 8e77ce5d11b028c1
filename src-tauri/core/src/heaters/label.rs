//! Reads a whole list of tubes, as it is copied off a label or pasted.
//!
//! Separators differ, spaces stand inside types and between them, counts come before or after, and lines
//! are numbered.

use super::catalogue::HeaterKind;
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
        let piece = counts_in_brackets(without_number(piece));
        read_piece(&words(&piece), &mut tubes);
    }
    tubes.truncate(MOST_TUBES);
    tubes
}

/// A line without the number in front of it: `3. 12SQ7` or `3) 12SQ7`.
fn without_number(line: &str) -> &str {
    let line = line.trim();
    let rest = line.trim_start_matches(|c: char| c.is_ascii_digit());
    let digits = line.len() - rest.len();
    let parted = rest.strip_prefix(['.', ')']).filter(|rest| rest.starts_with(char::is_whitespace));
    parted.filter(|_| (1..=2).contains(&digits)).unwrap_or(line)
}

/// A count in brackets becomes `x2` behind a type and `2x` at the start; other brackets become spaces.
fn counts_in_brackets(line: &str) -> String {
    let mut plain = String::new();
    let mut rest = line;
    while let Some((before, after)) = rest.split_once(['(', '[']) {
        plain.push_str(before);
        let (inside, behind) = after.split_once([')', ']']).unwrap_or((after, ""));
        let digits = inside.trim().trim_matches(['x', 'X', '×', ' ']);
        match counted(digits) {
            Some(count) if plain.trim().is_empty() => plain.push_str(&format!(" {count}x ")),
            Some(count) => plain.push_str(&format!(" x{count} ")),
            None => plain.push_str(&format!(" {inside} ")),
        }
        rest = behind;
    }
    plain.push_str(rest);
    plain
}

/// The words of a piece; those that can be no part of a type are left out.
fn words(piece: &str) -> Vec<String> {
    let plain = piece.replace([')', ']', ':', '='], " ").replace(['×', '✕', 'X'], "x");
    let words = plain.split_whitespace().flat_map(around_slash).flat_map(|word| around_dash(&word));
    let words = words.filter(|word| word.chars().any(char::is_alphanumeric));
    joined_counts(words.filter(|word| !is_plain(word) && !is_position(word)).collect())
}

/// A slash stands in some type numbers; elsewhere it parts two types.
fn around_slash(word: &str) -> Vec<String> {
    if !word.contains('/') || is_type(word) {
        return vec![word.to_owned()];
    }
    word.split('/').map(str::to_owned).collect()
}

/// `3-12AX7`: a count, where what is behind the dash is a type and the whole is none.
fn around_dash(word: &str) -> Vec<String> {
    let parts = word.split_once(['-', '–']).filter(|_| !is_type(word));
    match parts.and_then(|(count, name)| Some((counted(count)?, name))) {
        Some((count, name)) if is_type(name) => vec![format!("{count}x"), name.to_owned()],
        _ => vec![word.to_owned()],
    }
}

/// Words of a label that name no type: long ones without a digit, but those of lamps and resistors.
fn is_plain(word: &str) -> bool {
    let lower = word.to_lowercase();
    let kept = ["lamp", "cord", "linecord", "ohm", "ohms"].contains(&lower.as_str());
    let wordy = lower.chars().count() > 3
        || ["and", "det", "osc", "rf", "if", "af", "ea"].contains(&lower.as_str());
    wordy && !kept && lower.chars().all(char::is_alphabetic)
}

/// `V3`: where a tube stands in a diagram.
fn is_position(word: &str) -> bool {
    let digits = word.strip_prefix(['V', 'v']).unwrap_or_default();
    counted(digits).is_some() && !is_type(word)
}

/// `2 x` and `x 2` as one word, and a bare number before a type as a count.
fn joined_counts(words: Vec<String>) -> Vec<String> {
    let mut joined: Vec<String> = Vec::new();
    let mut rest = words.as_slice();
    while let Some((word, after)) = rest.split_first() {
        let next = after.first();
        let taken = match (counted(word), next) {
            (Some(count), Some(next)) if next == "x" => Some((format!("{count}x"), 2)),
            (Some(count), Some(next)) if is_count_of(count, word, next) => {
                Some((format!("{count}x"), 1))
            }
            (None, Some(next)) if word == "x" => {
                counted(next).map(|count| (format!("x{count}"), 2))
            }
            _ => None,
        };
        let (word, used) = taken.unwrap_or_else(|| (word.clone(), 1));
        joined.push(word);
        rest = rest.get(used..).unwrap_or_default();
    }
    joined
}

/// `2 6L6`: a small number before a type that would be none with it.
fn is_count_of(count: usize, word: &str, next: &str) -> bool {
    count < 10 && !is_type(word) && is_type(next) && !is_type(&format!("{word}{next}"))
}

fn read_piece(words: &[String], tubes: &mut Vec<Written>) {
    let mut rest = words;
    let mut count = None;
    while let Some((first, after)) = rest.split_first() {
        if let Some(found) = first.strip_suffix('x').and_then(counted) {
            count = Some(found);
            rest = after;
            continue;
        }
        let (written, taken) = longest_type(rest);
        let after = rest.get(taken..).unwrap_or_default();
        let trailing = after.first().and_then(|word| counted(word.strip_prefix('x')?));
        rest = if trailing.is_some() { after.get(1..).unwrap_or_default() } else { after };
        let tube = Tube::of(&written);
        for _ in 0..count.take().or(trailing).unwrap_or(1) {
            if tubes.len() < MOST_TUBES {
                tubes.push(Written { written: written.clone(), tube: tube.clone() });
            }
        }
    }
}

/// The longest run of words that is a type of the list; else pieces of one that a rule knows; else one word.
fn longest_type(words: &[String]) -> (String, usize) {
    let joined =
        |count: usize| words.iter().take(count).map(String::as_str).collect::<Vec<_>>().join(" ");
    let most = words.len().min(MOST_WORDS);
    // A word that is a type by itself is glued to the next one only where that is nothing by itself:
    // `50 L6 GT` is one tube, `50 45` are two.
    let alone = words.first().is_some_and(|first| is_type(first))
        && words.get(1).is_none_or(|next| is_type(next));
    let listed = (1..=most).rev().find(|&count| is_type(&joined(count)) && (count == 1 || !alone));
    let pieces = || (2..=most).rev().find(|&count| are_pieces(words, count, &joined(count)));
    let count = pieces().or(listed).unwrap_or(1);
    (joined(count), count)
}

/// Whether words are the pieces of one number that a rule knows: digits, letters, digits, as `12 ZZ 9`;
/// or a resistance and its unit.
fn are_pieces(words: &[String], count: usize, joined: &str) -> bool {
    let tube = Tube::of(joined);
    let digits = |word: &String| word.chars().all(|c| c.is_ascii_digit());
    let pieces: Vec<bool> = words.iter().take(count).map(digits).collect();
    let alternate = pieces.windows(2).all(|pair| pair.first() != pair.last());
    let first_is_digits = pieces.first() == Some(&true);
    let known = tube.known == Known::ByRule;
    known && ((alternate && first_is_digits) || tube.kind == HeaterKind::Resistor)
}

fn is_type(word: &str) -> bool {
    Tube::of(word).known == Known::Listed
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

    const FIVE: [&str; 5] = ["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"];

    #[test]
    fn a_list_is_read_whatever_parts_it() {
        reads("12SA7 12SK7 12SQ7 50L6GT 35Z5GT", &FIVE);
        reads("12SA7, 12SK7, 12SQ7, 50L6-GT and 35Z5 GT", &FIVE);
        reads("12SA7/12SK7/12SQ7/50L6GT/35Z5GT", &FIVE);
        reads("12 sa 7\n12 sk 7\n12 sq 7\n50 L6 GT\n35z5gt", &FIVE);
        reads("• I2SA7 • l2SK7 • 12SQ7 • 5OL6GT • 35Z5GT", &FIVE);
    }

    #[test]
    fn numbers_and_words_of_a_label_are_no_tubes() {
        reads("1. 12SA7\n2. 12SK7\n3) 12SQ7\n4. 50L6GT\n5. 35Z5GT", &FIVE);
        reads("V1 12SA7, V2 12SK7, V3 12SQ7, V4 50L6GT, V5 35Z5GT", &FIVE);
        reads("12SA7 (converter), 12SK7 (IF), 12SQ7 det, 50L6GT output, rectifier 35Z5GT", &FIVE);
    }

    #[test]
    fn counts_stand_before_or_after() {
        let two = ["6V6GT", "6V6GT", "5Y3GT"];
        for text in [
            "2x 6V6GT, 5Y3GT",
            "2 x 6V6GT 5Y3GT",
            "2 6V6GT 5Y3GT",
            "(2) 6V6GT 5Y3GT",
            "2-6V6GT, 1-5Y3GT",
            "6V6GT x2 5Y3GT",
            "6V6GT X 2 5Y3GT",
            "6V6GT (2), 5Y3GT",
            "6V6GT(2) 5Y3GT",
            "6V6GT (x2), 5Y3GT",
        ] {
            reads(text, &two);
        }
    }

    #[test]
    fn a_slash_inside_a_type_stays() {
        reads("35/51 24A 84/6Z4", &["35/51", "24A", "84/6Z4"]);
    }

    #[test]
    fn what_is_in_no_list_is_kept() {
        reads("QQ99 12SK7", &["QQ99", "12SK7"]);
        reads("12 ZZ 9, 160 ohm", &["12ZZ9", "160OHM"]);
        assert!(read_label(&"(x".repeat(10_000)).len() <= 200);
    }
}
