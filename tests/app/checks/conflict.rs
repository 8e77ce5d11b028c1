//! Findings that contradict each other are named on the verdict, and mended from there by two taps.

use coldchassis_app_tests::record::{answered, shown};
use coldchassis_app_tests::selectors::{answer, core_words, inspection, question, words};
use coldchassis_app_tests::walk::{new_unit_with, welcome};
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::json;

#[tokio::test]
async fn what_contradicts_is_named_looked_at_again_and_mended() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let first = new_unit_with(&app, "Amplifier, two minds about it", &["cover_off"]).await;
        let id = inspection(&first).expect("an inspection").to_owned();
        // Two pins carry no earth, so no earth wire of theirs can be on the chassis.
        answered(&app, &id, "plug", json!("two_equal_blades")).await;
        answered(&app, &id, "earth_wire", json!("on_chassis")).await;
        app.reload().await;
        app.tap(&words("verdict")).await;
        app.see(&words("verdict-conflicts")).await;
        assert_eq!(shown(&app, &id).await["verdict"]["consistent"], 0);
        let (plug, wire) = (again("plug"), again("earth_wire"));
        let named = links(&app).await;
        for (link, found) in [
            (&plug, answer("plug", "two_equal_blades")),
            (&wire, answer("earth_wire", "on_chassis")),
        ] {
            let is_named = |name: &String| begins(name, link) && name.contains(&found);
            assert!(named.iter().any(is_named), "no {link} with {found} among {named:?}");
        }
        assert_eq!(named.len(), 2, "only what contradicts is named: {named:?}");

        let (tag, verdict) = (app.tag().await, app.address().await);
        let link = named.iter().find(|name| begins(name, &plug)).expect("the plug");
        app.tap(link).await;
        let change = app.leaves(&verdict).await;
        assert_eq!(question(&change), Some("plug"));
        app.tap(&answer("plug", "three_pins")).await;
        assert_eq!(app.leaves(&change).await, verdict);
        let another =
            "return document.querySelector('article')?.textContent.trim() !== arguments[0]";
        app.until("the tag stays", another, vec![json!(tag)]).await;
        let read = app.read().await;
        assert!(!read.contains(&words("verdict-conflicts")), "still in conflict:\n{read}");
        assert_eq!(links(&app).await, Vec::<String>::new());
        let mended = shown(&app, &id).await;
        assert_eq!(mended["verdict"]["conflicts"], json!([]));
        assert_ne!(mended["verdict"]["consistent"], 0);
    })
    .await;
}

/// The beginning of a link to a finding that contradicts another.
fn again(question: &str) -> String {
    let name = core_words("answers", &format!("finding-{question}"));
    format!("{}: {name}", words("verdict-again"))
}

/// Whether a name on the screen begins so; the screen writes the finding's first letter large.
fn begins(name: &str, link: &str) -> bool {
    name.to_lowercase().starts_with(&link.to_lowercase())
}

/// The links to look again, as a finger finds them.
async fn links(app: &App) -> Vec<String> {
    let script = "return [...document.querySelectorAll('button')]
        .map((button) => button.innerText.replace(/\\s+/g, ' ').trim())
        .filter((name) => name.startsWith(arguments[0] + ':'))";
    let found = app.script(script, vec![json!(words("verdict-again"))]).await;
    let found = found.as_array().expect("a list").clone();
    found.iter().map(|name| name.as_str().expect("a name").to_owned()).collect()
}
