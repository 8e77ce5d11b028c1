use super::{FILES, FIRST_LANGUAGE, Message, Words};
use fluent_bundle::FluentResource;
use std::collections::BTreeSet;

#[test]
fn every_file_parses_and_no_id_stands_twice() {
    for language in Words::languages() {
        let mut seen = BTreeSet::new();
        for file in FILES.get_dir(&language).unwrap().files() {
            let text = file.contents_utf8().unwrap();
            let resource = FluentResource::try_new(text.to_owned());
            assert!(resource.is_ok(), "{} has a mistake", file.path().display());
            for line in text.lines() {
                let id = line.split(" =").next().unwrap();
                if line.contains(" =") && id.starts_with(|c: char| c.is_ascii_lowercase()) {
                    assert!(seen.insert(id.to_owned()), "{id} stands twice in {language}");
                }
            }
        }
    }
}

#[test]
fn no_text_gives_the_verdict_that_nobody_can_give() {
    for file in FILES.get_dir(FIRST_LANGUAGE).unwrap().files() {
        for line in file.contents_utf8().unwrap().lines() {
            assert!(!line.to_lowercase().contains("safe"), "{}: {line}", file.path().display());
        }
    }
}

#[test]
fn one_and_several_are_told_apart() {
    let words = Words::of("en");
    let said = |count| words.say(&Message::new("bundle-late").count("events", count));
    let (one, several) = (said(1), said(1234));
    assert!(one.starts_with("One event is "), "{one}");
    assert!(several.starts_with("1234 events are "), "{several}");
    let none = Message::new("bundle-made").count("units", 1).count("photos", 0);
    assert_eq!(words.say(&none), "The bundle has one unit and no photos.");
}

#[test]
fn an_unknown_message_shows_its_id_and_an_unknown_language_speaks_english() {
    let words = Words::of("xx");
    assert_eq!(words.language(), "en");
    assert_eq!(words.say(&Message::new("no-such-message")), "no-such-message");
    assert_eq!(words.say_id("class-live"), Words::of("en").say_id("class-live"));
}
