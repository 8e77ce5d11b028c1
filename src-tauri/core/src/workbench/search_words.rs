//! What findings are called, so that a search finds them by the words a person sees.
//!
//! The record keeps ids, which hold in every language. So it is the search that is put into ids, not the
//! findings into words: another language needs nothing to be indexed anew.

use std::collections::BTreeMap;

use super::question_views::answer_words;
use crate::inspection::Question;
use crate::store::Meaning;
use crate::words::Words;

/// The words of a language that stand for findings.
pub(super) struct Vocabulary {
    entries: Vec<(Vec<String>, Meaning)>,
}

impl Vocabulary {
    /// What questions and their answers are called where findings are listed.
    pub fn of(words: &Words) -> Self {
        let tubes = [(words.say_id("finding-tubes"), Meaning::any("tubes"))];
        let questions = Question::ALL.iter().flat_map(|question| called(*question, words));
        let entries = questions.chain(tubes).map(|(text, meaning)| (pieces(&text), meaning));
        Self { entries: entries.collect() }
    }

    /// What each word of a text can mean; what means nothing is left out.
    pub fn meanings(&self, text: &str) -> BTreeMap<String, Vec<Meaning>> {
        let meant = text.split_whitespace().map(|word| (word.to_owned(), self.meant_by(word)));
        meant.filter(|(_, meanings)| !meanings.is_empty()).collect()
    }

    /// As the index looks for a word: by its beginning, one of a single letter whole, and where it falls
    /// into pieces these stand one after the other.
    fn meant_by(&self, word: &str) -> Vec<Meaning> {
        let typed = pieces(word);
        let Some((last, before)) = typed.split_last() else { return Vec::new() };
        let is_whole = typed.iter().map(|piece| piece.chars().count()).sum::<usize>() == 1;
        let ends = |piece: &str| if is_whole { piece == last } else { piece.starts_with(last) };
        let fits = |part: &[String]| match part.split_last() {
            Some((piece, others)) => others == before && ends(piece),
            None => false,
        };
        let entries = self.entries.iter();
        let meant = entries.filter(|(said, _)| said.windows(typed.len()).any(fits));
        meant.map(|(_, meaning)| meaning.clone()).collect()
    }
}

/// A question's name among findings, and each of its answers.
fn called(question: Question, words: &Words) -> Vec<(String, Meaning)> {
    let id = question.id();
    let key = format!("answers.{id}");
    let name = (words.say_id(&format!("finding-{id}")), Meaning::any(&key));
    let answer = |answer: &&str| (answer_words(id, answer, words), Meaning::answer(&key, answer));
    let answers = question.entry().answers.iter().map(answer);
    std::iter::once(name).chain(answers).collect()
}

/// The words in a text, in small letters.
fn pieces(text: &str) -> Vec<String> {
    let pieces = text.split(|letter: char| !letter.is_alphanumeric());
    pieces.filter(|piece| !piece.is_empty()).map(str::to_lowercase).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn meant(word: &str) -> Vec<Meaning> {
        Vocabulary::of(&Words::of("en")).meant_by(word)
    }

    #[test]
    fn a_word_means_what_begins_with_it_in_the_words_of_a_finding() {
        assert_eq!(meant("UNIVERS"), [Meaning::answer("answers.rating_plate", "ac_dc")]);
        assert_eq!(meant("matchbox"), [Meaning::answer("answers.iron_seen", "small")]);
        assert_eq!(meant("atchbox"), []);
        assert!(meant("capacitor").contains(&Meaning::any("answers.line_capacitor")));
        assert!(meant("tubes").contains(&Meaning::any("tubes")));
    }

    #[test]
    fn a_word_in_pieces_means_what_has_them_side_by_side() {
        assert!(meant("ac/d").contains(&Meaning::answer("answers.rating_plate", "ac_dc")));
        assert_eq!(meant("dc/ac"), []);
        assert_eq!(meant("earth-lift"), [Meaning::any("answers.earth_lift")]);
    }

    #[test]
    fn one_letter_means_a_word_of_that_letter() {
        assert!(meant("y").contains(&Meaning::answer("answers.line_capacitor_class", "class_y")));
        assert!(!meant("y").contains(&Meaning::answer("answers.selector", "present")));
        assert_eq!(meant("?!"), []);
    }

    #[test]
    fn what_nobody_could_tell_is_meant_by_nothing() {
        let told = Vocabulary::of(&Words::of("en")).meanings("can’t tell zither");
        assert!(told.is_empty(), "{told:?}");
    }
}
