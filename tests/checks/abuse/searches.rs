//! What a search box may be given: nothing in it is an order to the index.

use serde_json::{Value, json};

use super::answers::{done, refused};
use super::stage::Stage;
use super::texts::TEXTS;
use super::typed::write_everywhere;

/// Signs and words that mean something to the full-text index.
const OPERATORS: [&str; 24] = [
    "\"",
    "\"\"",
    "*",
    "a*",
    "-",
    "-brown",
    "brown -set",
    "NEAR",
    "NEAR(brown set)",
    "AND",
    "OR",
    "NOT",
    "brown AND",
    "words : brown",
    "words:brown",
    "facets : x",
    "^brown",
    "(",
    ")",
    "{",
    "+",
    "\\",
    "brown\0set",
    "\u{1}",
];

fn found(stage: &Stage, text: &str) -> Vec<String> {
    let page = done(&stage.desk, "show_queue", &json!({"ask": {"text": text}}));
    let rows = page["rows"].as_array().expect("rows").iter();
    rows.map(|row| row["unit"]["name"].as_str().expect("a name").to_owned()).collect()
}

#[test]
fn a_search_is_words_whatever_signs_are_in_it() {
    let stage = Stage::new();
    let both = found(&stage, "set");
    assert_eq!(both.len(), 2, "{both:?}");
    for text in OPERATORS {
        found(&stage, text);
        done(&stage.desk, "list_units", &json!({"text": text}));
    }
    for (text, wanted) in [
        ("\"brown\"", &["Brown set"][..]),
        ("bro*", &["Brown set"]),
        ("brown\0set", &["Brown set"]),
        ("brown NOT witness", &[]),
        ("brown OR witness", &[]),
        ("words:brown", &[]),
        ("-", &["Brown set", "Witness set"]),
    ] {
        let mut names = found(&stage, text);
        names.sort();
        assert_eq!(names, wanted, "{text:?}");
    }
    stage.close_whole(&[]);
}

#[test]
fn a_unit_is_found_by_the_name_that_it_has() {
    let stage = Stage::new();
    for text in TEXTS {
        write_everywhere(&stage, text);
    }
    for text in TEXTS {
        let names = found(&stage, text);
        // A text without any letter narrows nothing, and finds only the first page of all.
        let is_wanted = text.chars().any(char::is_alphanumeric);
        assert!(!is_wanted || names.iter().any(|name| name == text), "{text:?} finds {names:?}");
        let listed = done(&stage.desk, "list_units", &json!({"text": text}));
        let is_named = |line: &Value| line["name"] == json!(text);
        assert!(listed.as_array().expect("a list").iter().any(is_named), "{text:?} is not listed");
        let page = done(&stage.desk, "show_queue", &json!({"ask": {"places": [text]}}));
        assert_eq!(page["rows"].as_array().expect("rows").len(), 1, "the place {text:?}");
    }
    stage.close_whole(&[]);
}

#[test]
fn a_page_after_any_place_is_a_page_or_refused() {
    let stage = Stage::new();
    for after in [i64::MIN, -1, 0, 1, 7 << 48, i64::MAX - 1, i64::MAX] {
        for newest in [false, true] {
            let ask = json!({"after": after.to_string(), "newest": newest, "from": i64::MIN, "to": i64::MAX});
            done(&stage.desk, "show_queue", &json!({ "ask": ask }));
        }
    }
    for after in ["", "x", "1e3", "9223372036854775808"] {
        let problem = refused(&stage.desk, "show_queue", &json!({"ask": {"after": after}}));
        assert_eq!(problem["field"], "after");
    }
    stage.close_whole(&[]);
}
