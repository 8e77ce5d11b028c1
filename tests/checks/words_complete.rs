//! Every message that the code can ask for exists in English, and gets every variable it uses.
//!
//! Three ways that watch each other: the literals and patterns in the sources, the ids that the
//! core's lists make of those patterns, and the sentences of a few hundred random verdicts.

mod english;
mod expansions;
mod literals;
mod named_messages;
mod shipped;
mod sources;
mod spoken;

use std::collections::BTreeSet;

use english::English;
use expansions::expansions;
use literals::literals;
use named_messages::{built, is_id, pattern};
use sources::SourceFile;

/// Literals in the form of an id that name no message: file, literal, and what they name.
const NO_MESSAGES: [(&str, &str, &str); 2] =
    [("body/impedance.rs", "water-wet", SKIN), ("body/impedance.rs", "saltwater-wet", SKIN)];
const SKIN: &str = "a state of the skin in data/body_impedance_ac.csv";

fn english() -> English {
    let files = sources::files("src-tauri/core/words/en", &["ftl"]);
    assert!(!files.is_empty(), "the English files have moved");
    English::of(files.iter().map(|file| file.text.as_str()))
}

fn rust_files() -> Vec<SourceFile> {
    let files = sources::files("src-tauri", &["rs"]);
    let shipped: Vec<SourceFile> =
        files.into_iter().filter(|file| !shipped::is_test_file(&file.path)).collect();
    assert!(shipped.len() > 50, "only {} files: the core has moved", shipped.len());
    shipped
}

/// What is wrong with the ids and patterns that stand in a file.
fn wrong_names(file: &SourceFile, english: &English) -> Vec<String> {
    let patterns: BTreeSet<&str> = expansions().iter().map(|known| known.pattern).collect();
    let names_no_message = |text: &str| {
        NO_MESSAGES.iter().any(|(path, literal, _)| file.path.ends_with(path) && text == *literal)
    };
    let mut wrong = Vec::new();
    for literal in literals(&file.path, &file.text) {
        let text = &literal.text;
        let place = format!("{}:{}", file.path, literal.line);
        if is_id(text) && !english.has(text) && !names_no_message(text) {
            wrong.push(format!("{place}: there is no message {text}"));
        }
        if let Some(pattern) = pattern(text).filter(|found| !patterns.contains(found.as_str())) {
            wrong.push(format!("{place}: nobody knows what {pattern} becomes (expansions.rs)"));
        }
    }
    wrong
}

/// What is wrong with the messages that a file builds.
fn wrong_messages(file: &SourceFile, english: &English) -> Vec<String> {
    let mut wrong = Vec::new();
    for message in built(&file.path, &file.text) {
        let place = format!("{}:{}", file.path, message.line);
        if !english.has(&message.id) {
            wrong.push(format!("{place}: there is no message {}", message.id));
        }
        for variable in english.variables(&message.id).difference(&message.names) {
            wrong.push(format!("{place}: {} gets no {variable}", message.id));
        }
    }
    wrong
}

#[test]
fn every_message_named_in_the_sources_exists_and_gets_its_variables() {
    let english = english();
    let files = rust_files();
    let (mut messages, mut wrong) = (0, Vec::new());
    for file in &files {
        messages += built(&file.path, &file.text).len();
        wrong.extend(wrong_names(file, &english));
        wrong.extend(wrong_messages(file, &english));
    }
    println!("{messages} messages built in {} files", files.len());
    assert!(messages > 25, "only {messages} messages found: the check has gone blind");
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn every_pattern_becomes_only_messages_that_exist() {
    let english = english();
    let (mut count, mut wrong) = (0, Vec::new());
    for expansion in expansions() {
        for id in &expansion.ids {
            count += 1;
            if !english.has(id) {
                wrong.push(format!("there is no message {id} ({})", expansion.pattern));
            }
            for variable in english.variables(id) {
                if !expansion.variables.contains(&variable.as_str()) {
                    wrong.push(format!("{id} gets no {variable}"));
                }
            }
        }
    }
    println!("{count} ids from patterns");
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn every_message_inside_another_exists() {
    let english = english();
    let lost: Vec<&str> =
        english.inside_others().into_iter().filter(|id| !english.has(id)).collect();
    assert!(lost.is_empty(), "{lost:?}");
}

#[test]
fn no_other_literal_is_excused_than_those_still_there() {
    let files = rust_files();
    for (path, text, _) in NO_MESSAGES {
        let file = files.iter().find(|file| file.path.ends_with(path)).expect(path);
        let there = literals(&file.path, &file.text).iter().any(|literal| literal.text == text);
        assert!(there, "{path} no longer has {text}: take it off the list");
    }
}

/// Quoted texts of the user interface in the form of an id: perhaps messages, perhaps class names.
fn quoted_in_ui() -> BTreeSet<String> {
    let files = sources::files("ui/src", &["svelte", "ts"]);
    let quoted = files.iter().flat_map(|file| file.text.split(['"', '\'', '`']));
    quoted.filter(|text| is_id(text)).map(str::to_owned).collect()
}

/// The words that the screens have: their own, and the files of the core that they take.
fn screen_words() -> English {
    const TAKEN: [&str; 5] =
        ["answers.ftl", "cautions.ftl", "classes.ftl", "questions.ftl", "record.ftl"];
    let own = sources::files("ui/src/lib/words", &["ftl"]);
    let own: Vec<SourceFile> =
        own.into_iter().filter(|file| file.path.contains("/words/en.")).collect();
    assert!(own.len() > 1, "the words of the screens have moved");
    let core = sources::files("src-tauri/core/words/en", &["ftl"]);
    let taken = core.into_iter().filter(|file| TAKEN.iter().any(|name| file.path.ends_with(name)));
    let files: Vec<SourceFile> = own.into_iter().chain(taken).collect();
    English::of(files.iter().map(|file| file.text.as_str()))
}

/// The ids that stand written out in the calls of `say` in a file.
fn said(text: &str) -> Vec<&str> {
    let calls = text.split("say(").skip(1).map(|rest| {
        let mut depth = 1;
        let end = rest.find(|sign| {
            depth += match sign {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
            depth == 0
        });
        &rest[..end.unwrap_or(rest.len())]
    });
    calls.flat_map(|call| call.split('\'').skip(1).step_by(2)).filter(|id| is_id(id)).collect()
}

#[test]
fn every_message_that_a_screen_says_is_among_its_words() {
    let words = screen_words();
    let mut count = 0;
    for file in sources::files("ui/src", &["svelte", "ts"]) {
        for id in said(&file.text) {
            assert!(words.has(id), "{}: the screens have no words for {id}", file.path);
            count += 1;
        }
    }
    assert!(count > 200, "only {count} found: they are said in another way now");
    assert_eq!(said("say(a ? 'list-new' : `x-${f(1)}`) 'no-call'"), ["list-new"]);
}

/// Nobody is wrong to write words before they are used, so these are listed, not refused.
#[test]
fn messages_that_nothing_names_are_listed() {
    let english = english();
    let mut named: BTreeSet<String> = quoted_in_ui();
    named.extend(english.inside_others().into_iter().map(str::to_owned));
    named.extend(expansions().into_iter().flat_map(|expansion| expansion.ids));
    for file in rust_files() {
        named.extend(literals(&file.path, &file.text).into_iter().map(|literal| literal.text));
    }
    let is_caution_of_named =
        |id: &str| id.strip_suffix("-caution").is_some_and(|stem| named.contains(stem));
    let unnamed: Vec<&str> =
        english.ids().filter(|id| !named.contains(*id) && !is_caution_of_named(id)).collect();
    println!("{} of {} messages are named by nothing:", unnamed.len(), english.ids().count());
    unnamed.iter().for_each(|id| println!("  {id}"));
}

fn planted(text: &str) -> SourceFile {
    SourceFile { path: "src-tauri/core/src/planted.rs".to_owned(), text: text.to_owned() }
}

#[test]
fn planted_names_without_a_message_are_found() {
    let english = English::of(["takes-known = takes { $keys }\n"]);
    for (text, count) in [
        (r#"const A: &str = "takes-unknown";"#, 1),
        (r#"fn f() { section(Some("tag-wrost")) }"#, 1),
        (r#"fn f() -> String { format!("riddle-{}", id) }"#, 1),
        (r#"fn f() -> &'static str { "takes-known" }"#, 0),
        (r#"fn f() -> String { format!("class-{}-inline", id) }"#, 0),
    ] {
        let wrong = wrong_names(&planted(text), &english);
        assert_eq!(wrong.len(), count, "{text}: {wrong:?}");
    }
}

#[test]
fn planted_messages_without_their_variables_are_found() {
    let english = English::of(["takes-known = takes { $keys }\nplain = x\n"]);
    for (text, count) in [
        (r#"fn f() -> Message { Message::new("takes-known") }"#, 1),
        (r#"fn f() -> Message { Message::new("takes-known").text("kyes", 1) }"#, 1),
        (r#"fn f() -> Message { Message::new("unplain") }"#, 1),
        (r#"fn f() -> Vec<Message> { vec![Message::new("takes-known").text("keys", 1)] }"#, 0),
        (r#"fn f() -> Message { Message::new("plain").text("keys", 1) }"#, 0),
    ] {
        let wrong = wrong_messages(&planted(text), &english);
        assert_eq!(wrong.len(), count, "{text}: {wrong:?}");
    }
}
