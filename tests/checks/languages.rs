//! Every language says the same as English: the same messages with the same variables, the same figures, and
//! nothing left in English but what is no English.

mod english;
mod sources;

use std::collections::{BTreeMap, BTreeSet};

use coldchassis_core::words::{Message, Words};
use english::English;
use fluent_syntax::ast::{Entry, Expression, Pattern, PatternElement, VariantKey};
use fluent_syntax::parser::parse;

/// Texts that are the same in German and English, and why that is right.
const ALIKE: [(&str, &str); 41] = [
    ("app-name", NAME),
    ("chart-gfci", TERM),
    ("chart-rcd", TERM),
    ("chart-zone-ac_1", TERM),
    ("chart-zone-ac_2", TERM),
    ("chart-zone-ac_3", TERM),
    ("chart-zone-ac_4_1", TERM),
    ("chart-zone-ac_4_2", TERM),
    ("chart-zone-ac_4_3", TERM),
    ("circuit-class-y", TERM),
    ("field-hertz", TERM),
    ("field-name", WORD),
    ("language-de", NAME),
    ("language-en", NAME),
    ("list-demo", WORD),
    ("measuring-moved", TERM),
    ("new-name", WORD),
    ("new-optional", WORD),
    ("papers-a4", TERM),
    ("papers-letter", NAME),
    ("part-size-fuse-iec", TERM),
    ("part-size-fuse-ul", TERM),
    ("queue-overlay-pcb", TERM),
    ("reading-over-range", TERM),
    ("readings-key-k", TERM),
    ("readings-key-m", TERM),
    ("readings-ohm", TERM),
    ("readings-ol", TERM),
    ("readings-pin-a", NAME),
    ("readings-pin-b", NAME),
    ("repairs-limit-of", TERM),
    ("region-name-japan", WORD),
    ("report-creator", NAME),
    ("report-list-name", WORD),
    ("report-made", TERM),
    ("settings-region", WORD),
    ("touch-meter-volts", TERM),
    ("heaters-times", SIGNS),
    ("guide-prompt", SIGNS),
    ("tube-same", SIGNS),
    ("queue-and", SIGNS),
];
const NAME: &str = "a name";
const TERM: &str = "a unit, a standard or a term that the trade uses in both languages";
const WORD: &str = "a word that both languages spell alike";
const SIGNS: &str = "signs only";

/// English words that are no German ones: a sentence that was left as it was has some of them.
const ENGLISH_WORDS: [&str; 24] = [
    "the", "and", "of", "with", "is", "are", "it", "not", "what", "which", "your", "you", "from",
    "this", "that", "has", "have", "can", "where", "by", "or", "as", "be", "to",
];

/// Where such a word is right: message and word. AS is the Australian standard.
const KEPT_WORDS: [(&str, &str); 2] =
    [("region-plugs-australia", "as"), ("help-exposure-path", "to")];

/// A language's messages and terms with their texts, as they stand in the files.
type Texts = BTreeMap<String, String>;

fn texts(files: &[sources::SourceFile]) -> Texts {
    let mut found = Texts::new();
    for file in files {
        let mut id = String::new();
        for line in file.text.lines() {
            let begins = line.starts_with(|c: char| c.is_ascii_lowercase() || c == '-');
            if let Some((name, text)) = line.split_once(" =").filter(|_| begins) {
                id = name.to_owned();
                found.insert(id.clone(), text.trim().to_owned());
            } else if line.starts_with(' ') && !id.is_empty() {
                let text = found.entry(id.clone()).or_default();
                text.push('\n');
                text.push_str(line.trim());
            }
        }
    }
    found
}

/// The files of a language in the core, those of countries apart.
fn core(language: &str) -> Vec<sources::SourceFile> {
    let files = sources::files(&format!("src-tauri/core/words/{language}"), &["ftl"]);
    files.into_iter().filter(|file| !file.path.contains("/guards/")).collect()
}

fn screens(language: &str) -> Vec<sources::SourceFile> {
    let files = sources::files("ui/src/lib/words", &["ftl"]);
    files.into_iter().filter(|file| file.path.contains(&format!("/words/{language}."))).collect()
}

fn others() -> Vec<String> {
    let others: Vec<String> = Words::languages().into_iter().filter(|one| one != "en").collect();
    assert_eq!(others, ["de"], "a language is checked by what is written of it here");
    others
}

/// Each pair of sets of files that has to say the same, with the language of the second.
fn pairs() -> Vec<(Vec<sources::SourceFile>, Vec<sources::SourceFile>)> {
    let of =
        |language: String| [(core("en"), core(&language)), (screens("en"), screens(&language))];
    let pairs: Vec<_> = others().into_iter().flat_map(of).collect();
    assert!(pairs.iter().all(|(english, _)| english.len() > 5), "the words have moved");
    pairs
}

fn read(files: &[sources::SourceFile]) -> English {
    English::of(files.iter().map(|file| file.text.as_str()))
}

/// What is said in one language only, or with other variables.
fn differences(english: &English, other: &English) -> Vec<String> {
    let (ours, theirs): (BTreeSet<&str>, BTreeSet<&str>) =
        (english.ids().collect(), other.ids().collect());
    let missing = ours.difference(&theirs).map(|id| format!("{id} is missing"));
    let extra = theirs.difference(&ours).map(|id| format!("{id} is in no English file"));
    let both = ours.intersection(&theirs).filter(|id| english.variables(id) != other.variables(id));
    missing.chain(extra).chain(both.map(|id| format!("{id} has other variables"))).collect()
}

#[test]
fn every_language_has_every_message_with_the_same_variables() {
    for (english, other) in pairs() {
        let names = |files: &[sources::SourceFile]| files.len();
        assert_eq!(names(&english), names(&other), "a file each");
        let wrong = differences(&read(&english), &read(&other));
        assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    }
}

#[test]
fn a_message_that_is_missing_left_over_or_different_is_found() {
    let english = English::of(["a = one { $x }\nb = two\n"]);
    for (text, count) in [
        ("a = eins { $x }\nb = zwei\n", 0),
        ("a = eins\nb = zwei\n", 1),
        ("a = { $x }\nc = drei\n", 2),
    ] {
        assert_eq!(differences(&english, &English::of([text])).len(), count, "{text}");
    }
}

/// The figures that a reader sees in a text, with a point for the decimal mark; names of variables left out.
fn figures(text: &str, decimal_mark: char) -> Vec<String> {
    let words = text.split(|c: char| !(c.is_alphanumeric() || ".,_$\\".contains(c)));
    let plain = words.filter(|word| !word.starts_with(['$', '\\']));
    let figures = plain.flat_map(|word| {
        let parts: Vec<String> = word
            .split(|c: char| !(c.is_ascii_digit() || c == '.' || c == ','))
            .map(|part| part.trim_matches(['.', ',']).to_owned())
            .collect();
        parts
    });
    let mut figures: Vec<String> = figures
        .filter(|figure| !figure.is_empty())
        .map(|figure| figure.replace(decimal_mark, "."))
        .collect();
    figures.sort();
    figures
}

#[test]
fn every_figure_stands_in_both_languages() {
    let (mut count, mut wrong) = (0, Vec::new());
    for (english, other) in pairs() {
        let (english, other) = (texts(&english), texts(&other));
        for (id, text) in &english {
            // It speaks of the marks themselves.
            let Some(said) = other.get(id).filter(|_| id != "question-figure-ambiguous") else {
                continue;
            };
            let (ours, theirs) = (figures(text, '.'), figures(said, ','));
            count += ours.len();
            if ours != theirs {
                wrong.push(format!("{id}: {ours:?} and {theirs:?}"));
            }
        }
    }
    println!("{count} figures");
    assert!(count > 300, "only {count} figures found: the check has gone blind");
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn a_figure_that_was_changed_on_the_way_is_found() {
    assert_eq!(
        figures("60 V and 0.25 J, in { $n } s", '.'),
        figures("60 V, 0,25 J in { $n } s", ',')
    );
    assert_ne!(figures("30 mA", '.'), figures("300 mA", ','));
    assert_ne!(figures("0.5 mA", '.'), figures("5 mA", ','));
}

/// Whether there is anything to translate: letters outside of what is filled in.
fn has_letters(text: &str) -> bool {
    let mut depth = 0;
    text.chars().any(|letter| {
        match letter {
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => {}
        }
        depth == 0 && letter.is_alphabetic()
    })
}

#[test]
fn what_is_the_same_in_both_languages_is_on_the_list_with_its_reason() {
    let mut alike = BTreeSet::new();
    for (english, other) in pairs() {
        let (english, other) = (texts(&english), texts(&other));
        let same = english.iter().filter(|(id, text)| other.get(*id) == Some(*text));
        alike.extend(same.map(|(id, _)| id.clone()).filter(|id| !is_signs_only(&english[id])));
    }
    let listed: BTreeSet<String> =
        ALIKE.iter().filter(|(_, why)| *why != SIGNS).map(|(id, _)| (*id).to_owned()).collect();
    assert_eq!(alike, listed, "put it into German, or onto the list; or take it off");
}

fn is_signs_only(text: &str) -> bool {
    !has_letters(text)
}

#[test]
fn no_sentence_was_left_in_english() {
    let mut wrong = Vec::new();
    for (_, other) in pairs() {
        for (id, text) in texts(&other) {
            let lower = text.to_lowercase();
            let outside = without_placeables(&lower);
            // An id that is typed as it stands, such as hand_to_hand, is one word.
            let words = outside.split(|c: char| !c.is_alphabetic() && c != '_');
            for word in words.filter(|word| ENGLISH_WORDS.contains(word)) {
                if !KEPT_WORDS.contains(&(id.as_str(), word)) {
                    wrong.push(format!("{id}: “{word}” in {text}"));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// A text without what is filled in and without what is quoted as it is typed.
fn without_placeables(text: &str) -> String {
    let mut depth = 0;
    text.chars()
        .filter(|letter| {
            match letter {
                '{' => depth += 1,
                '}' => depth -= 1,
                _ => {}
            }
            depth == 0
        })
        .collect()
}

/// The keys of every selection in a pattern, in their order.
fn selections(pattern: &Pattern<String>) -> Vec<BTreeSet<String>> {
    let of = |element: &PatternElement<String>| match element {
        PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
            let keys = variants.iter().map(|variant| match &variant.key {
                VariantKey::Identifier { name } | VariantKey::NumberLiteral { value: name } => {
                    name.clone()
                }
            });
            Some(keys.collect())
        }
        _ => None,
    };
    pattern.elements.iter().filter_map(of).collect()
}

fn all_selections(files: &[sources::SourceFile]) -> BTreeMap<String, Vec<BTreeSet<String>>> {
    let mut found = BTreeMap::new();
    for file in files {
        let resource = parse(file.text.clone()).expect("a file without a mistake");
        for entry in resource.body {
            if let Entry::Message(message) = entry {
                let keys = message.value.as_ref().map(selections).unwrap_or_default();
                found.insert(message.id.name, keys);
            }
        }
    }
    found
}

#[test]
fn every_choice_and_plural_of_english_is_made_in_each_language() {
    let mut count = 0;
    for (english, other) in pairs() {
        let (english, other) = (all_selections(&english), all_selections(&other));
        for (id, keys) in &english {
            // German has the plurals of English: one and other.
            assert_eq!(other.get(id), Some(keys), "{id}");
            count += keys.len();
        }
    }
    println!("{count} choices");
    assert!(count > 30, "only {count} choices found: the check has gone blind");
}

#[test]
fn no_language_gives_the_verdict_that_nobody_can_give() {
    const VERDICTS: [&str; 6] =
        ["sicher", "ungefährlich", "unbedenklich", "gefahrlos", "harmlos", "betriebssicher"];
    for (_, other) in pairs() {
        for (id, text) in texts(&other) {
            let lower = text.to_lowercase();
            let mut words = lower.split(|c: char| !c.is_alphabetic());
            assert!(!words.any(|word| VERDICTS.contains(&word)), "{id}: {text}");
        }
    }
}

#[test]
fn one_is_one_and_more_are_more() {
    let said = |language: &str, count: usize| {
        let engine = Message::new("report-engine").text("version", "1").text("count", count);
        Words::of(language).say(&engine)
    };
    assert!(said("en", 1).contains("One arrangement is"), "{}", said("en", 1));
    assert!(said("en", 6945).contains("6945 arrangements are"), "{}", said("en", 6945));
    assert!(said("de", 1).contains("Eine Anordnung ist"), "{}", said("de", 1));
    assert!(said("de", 6945).contains("6945 Anordnungen sind"), "{}", said("de", 6945));
}

#[test]
fn a_country_names_the_protection_that_is_usual_there() {
    let said = |locale: &str| Words::of(locale).say_id("permission-one_fault");
    for (locale, there, elsewhere) in [
        ("en-US", "behind a GFCI,", "RCD"),
        ("en-CA", "behind a GFCI,", "RCD"),
        ("en-GB", "behind an RCD,", "GFCI"),
        ("en_AU.UTF-8", "behind an RCD,", "GFCI"),
        ("de-DE", "hinter einem FI-Schutzschalter (RCD)", "GFCI"),
        ("de-EU", "hinter einem FI-Schutzschalter (RCD)", "GFCI"),
        ("de-US", "hinter einem FI-Schutzschalter (GFCI)", "RCD"),
    ] {
        let text = said(locale);
        assert!(text.contains(there) && !text.contains(elsewhere), "{locale}: {text}");
    }
    assert!(said("en").contains("GFCI/RCD") && said("de").contains("GFCI/RCD"));
    assert!(said("de-XX").contains("GFCI/RCD"), "of a country that nobody knows");
}

#[test]
fn every_country_file_has_the_terms_that_it_stands_for() {
    for language in Words::languages() {
        let folder = format!("src-tauri/core/words/{language}");
        let common = texts(&core(&language));
        let guards = sources::files(&format!("{folder}/guards"), &["ftl"]);
        assert_eq!(guards.len(), 2, "{language}");
        for file in guards {
            let terms = texts(std::slice::from_ref(&file));
            assert_eq!(terms.keys().collect::<Vec<_>>(), ["-a-guard", "-a-guard-short", "-guard"]);
            assert!(terms.keys().all(|term| common.contains_key(term)), "{}", file.path);
        }
    }
}
