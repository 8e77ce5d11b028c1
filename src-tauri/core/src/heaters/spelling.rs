//! Spellings of a type number: spaces, capitals, look-alike letters, and Cyrillic.
//!
//! A number is read off worn glass and typed with a thumb, so what looks alike counts as alike where
//! that leaves one type only.

/// The longest spelling that is looked up; longer ones are cut, for no type is as long.
pub(super) const LONGEST: usize = 24;

/// The most characters of a text that are looked at: a number has few, whatever stands between them.
const LONGEST_WRITTEN: usize = 128;

/// A type number as it is looked up: capitals and digits only; `#` before the number of a lamp.
pub(super) type Key = String;

/// The spelling that is looked up.
pub(super) fn key(written: &str) -> Key {
    let plain = |c: char| c.is_ascii_alphanumeric() || c == '#' || is_cyrillic(c);
    written
        .chars()
        .take(LONGEST_WRITTEN)
        .flat_map(char::to_uppercase)
        .filter(|&c| plain(c))
        .take(LONGEST)
        .collect()
}

/// Whether a letter is Cyrillic.
pub(super) fn is_cyrillic(c: char) -> bool {
    ('А'..='я').contains(&c) || c == 'Ё' || c == 'ё'
}

/// The same in Latin letters, where it has Cyrillic ones.
pub(super) fn in_latin(key: &str) -> Option<Key> {
    if key.is_ascii() {
        return None;
    }
    let mut latin = Key::new();
    for c in key.chars() {
        match LATIN.iter().find(|(cyrillic, _)| *cyrillic == c) {
            Some((_, letters)) => latin.push_str(letters),
            None => latin.push(c),
        }
    }
    Some(latin)
}

/// Cyrillic letters of Russian type numbers, as they are written in Latin ones.
const LATIN: [(char, &str); 24] = [
    ('А', "A"),
    ('Б', "B"),
    ('В', "V"),
    ('Г', "G"),
    ('Д', "D"),
    ('Е', "E"),
    ('Ж', "ZH"),
    ('З', "Z"),
    ('И', "I"),
    ('К', "K"),
    ('Л', "L"),
    ('М', "M"),
    ('Н', "N"),
    ('О', "O"),
    ('П', "P"),
    ('Р', "R"),
    ('С', "S"),
    ('Т', "T"),
    ('У', "U"),
    ('Ф', "F"),
    ('Х', "KH"),
    ('Ц', "TS"),
    ('Ч', "CH"),
    ('Э', "E"),
];

/// Latin letters that Cyrillic ones look like, in capitals or in print.
const LOOKS: [(char, &str); 8] = [
    ('В', "B"),
    ('Н', "H"),
    ('П', "N"),
    ('Р', "P"),
    ('С', "C"),
    ('У', "Y"),
    ('Х', "X"),
    ('З', "3"),
];

/// Every Latin spelling that a Cyrillic one can be taken for, each letter by its look or its sound.
pub(super) fn looks_in_latin(key: &str) -> Vec<Key> {
    let mut spellings = vec![Key::new()];
    for c in key.chars() {
        let letters = |table: &'static [(char, &'static str)]| {
            table.iter().find(|(cyrillic, _)| *cyrillic == c).map(|(_, letters)| *letters)
        };
        let own = c.to_string();
        let sound = letters(&LATIN).unwrap_or(&own);
        let looks = letters(&LOOKS);
        let spell = |start: &Key| {
            let ends = std::iter::once(sound).chain(looks);
            ends.map(|end| format!("{start}{end}")).collect::<Vec<Key>>()
        };
        spellings = spellings.iter().flat_map(spell).collect();
    }
    spellings
}

/// How far look-alikes are taken for the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Alike {
    /// O and 0; I and 1, and an L that begins a number and 1. No two types of the list differ by these alone.
    Round,
    /// S and 5, B and 8, Z and 2, G and 6, Q and 0 as well. A few types differ by these.
    Worn,
}

/// The spelling with look-alikes made the same.
pub(super) fn folded(key: &str, alike: Alike) -> Key {
    let round = |c: char| match c {
        'O' => '0',
        'I' => '1',
        other => other,
    };
    let worn = |c: char| match c {
        'S' => '5',
        'B' => '8',
        'Z' => '2',
        'G' => '6',
        'Q' => '0',
        other => other,
    };
    let fold = |c: char| if alike == Alike::Worn { worn(round(c)) } else { round(c) };
    let first = |(nth, c)| if nth == 0 && c == 'L' { '1' } else { fold(c) };
    key.chars().enumerate().map(first).collect()
}

#[cfg(test)]
mod tests {
    use super::{in_latin, key};

    #[test]
    fn spaces_capitals_and_hyphens_do_not_matter() {
        for written in ["12sk7", " 12 SK 7 ", "12-SK-7", "12.sk.7"] {
            assert_eq!(key(written), "12SK7", "{written}");
        }
        assert_eq!(key("#47"), "#47");
    }

    #[test]
    fn cyrillic_has_a_latin_spelling() {
        assert_eq!(in_latin(&key("6ж1п")).unwrap(), "6ZH1P");
        assert_eq!(in_latin(&key("6ZH1P")), None);
    }
}
