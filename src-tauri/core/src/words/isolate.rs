//! Keeps a person's text from turning round the words beside it.
//!
//! Letters that run from right to left, and marks that steer the direction, act on what stands next to them
//! (Unicode Standard Annex 9; from memory, high). Between a first-strong isolate and its end they act on
//! nothing else. Any other text stays as it is: the marks print as boxes in a terminal and on labels.

use std::borrow::Cow;

/// Begins a stretch whose direction is that of its own first letter, and ends it.
const BEGIN: char = '\u{2068}';
const END: char = '\u{2069}';

/// The text as it may stand in a sentence.
pub fn isolated(text: &str) -> Cow<'_, str> {
    if !text.chars().any(turns) {
        return Cow::Borrowed(text);
    }
    let mut apart = String::with_capacity(text.len() + 6);
    apart.push(BEGIN);
    let mut open = 0_usize;
    for letter in text.chars() {
        match letter {
            '\u{2066}'..=BEGIN => open += 1,
            // An end of nothing would end what was begun here.
            END if open == 0 => continue,
            END => open -= 1,
            _ => {}
        }
        apart.push(letter);
    }
    apart.extend(std::iter::repeat_n(END, open + 1));
    Cow::Owned(apart)
}

/// Whether a sign can act on the direction of what is beside it: marks that steer, and the blocks of letters
/// that run from right to left.
const fn turns(letter: char) -> bool {
    matches!(letter,
        '\u{061c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}'
        | '\u{0590}'..='\u{08ff}' | '\u{fb1d}'..='\u{fdff}' | '\u{fe70}'..='\u{fefe}'
        | '\u{10800}'..='\u{10fff}' | '\u{1e800}'..='\u{1efff}')
}

#[cfg(test)]
mod tests {
    use super::isolated;

    #[test]
    fn plain_text_stays_as_it_is() {
        for text in ["", "Shelf radio", "Größe 3/8″ – 230 V", "🔌 e\u{301}", "{ $x } <b>"] {
            assert_eq!(isolated(text), text);
        }
    }

    #[test]
    fn what_turns_the_direction_ends_with_the_text() {
        assert_eq!(isolated("\u{202e}gpj.exe"), "\u{2068}\u{202e}gpj.exe\u{2069}");
        assert_eq!(isolated("רדיו"), "\u{2068}רדיו\u{2069}");
        assert_eq!(isolated("a\u{2066}b"), "\u{2068}a\u{2066}b\u{2069}\u{2069}");
        assert_eq!(isolated("a\u{2069}\u{2069}b"), "\u{2068}ab\u{2069}");
        assert_eq!(isolated("\u{2067}a\u{2069}b"), "\u{2068}\u{2067}a\u{2069}b\u{2069}");
    }
}
