//! The system's back goes one screen at a time, and a hurried thumb answers one question only.

use std::time::Duration;

use coldchassis_app_tests::record::{inspected, shown};
use coldchassis_app_tests::selectors::{answer, inspection, question, words};
use coldchassis_app_tests::walk::{SHELF_RADIO, answer_one, new_unit, new_unit_with, welcome};
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::{Value, json};

/// Between the taps of a double tap. Common practice, from memory: systems take up to 300 ms for one.
const DOUBLE_TAP: Duration = Duration::from_millis(150);

#[tokio::test]
async fn back_goes_one_screen_at_a_time() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let mut trail = vec![app.address().await];
        trail.push(new_unit_with(&app, "Shelf radio", &["cover_off"]).await);
        for _ in 0..3 {
            trail.push(answer_one(&app, SHELF_RADIO).await);
        }
        for next in [words("found"), words("verdict"), words("shocked-button-long")] {
            let before = app.address().await;
            app.tap_part(&next).await;
            trail.push(app.leaves(&before).await);
        }
        let mut headings = Vec::new();
        while let Some(left) = trail.pop() {
            assert_eq!(app.address().await, left);
            app.settle().await;
            headings.push(app.heading().await);
            if !trail.is_empty() {
                app.system_back().await;
            }
        }
        // The form that made the unit is not gone back to: it would make the same unit twice.
        let (list, shocked) = (words("units"), words("shocked-title"));
        assert_eq!((headings.first(), headings.last()), (Some(&shocked), Some(&list)));
        let mut different = headings.clone();
        different.sort();
        different.dedup();
        assert_eq!(different.len(), headings.len(), "one screen is shown twice: {headings:?}");
        assert!(app.is_running());
    })
    .await;
}

#[tokio::test]
async fn going_back_takes_no_answer_back() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let first = new_unit(&app, "Shelf radio").await;
        let second = answer_one(&app, SHELF_RADIO).await;
        let id = inspection(&first).expect("an inspection");
        let before = shown(&app, id).await;
        assert_eq!(app.system_back().await, first);
        // What was answered stands there ticked.
        let given =
            "return document.querySelector('[aria-pressed=true]')?.innerText.trim() ?? null";
        let given = app.until("no answer is ticked", given, vec![]).await;
        assert_eq!(given, answer("plug", "two_equal_blades"));
        assert_eq!(shown(&app, id).await, before);
        app.script("history.forward()", vec![]).await;
        assert_eq!(app.leaves(&first).await, second);
    })
    .await;
}

#[tokio::test]
async fn two_clicks_on_one_answer_in_one_breath_answer_one_question() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let first = new_unit(&app, "Shelf radio").await;
        let script = "const button = [...document.querySelectorAll('button')]
            .find((button) => button.innerText.trim() === arguments[0]);
            button.click();
            button.click();
            return button !== undefined;";
        let blades = json!(answer("plug", "two_equal_blades"));
        assert_eq!(app.script(script, vec![blades]).await, true);
        let second = app.leaves(&first).await;
        one_answer_only(&app, &second, &["answers.plug"]).await;
    })
    .await;
}

/// A question with answers to tap, whose next question has answers in the same places.
const ALIKE: &str = "transformer";

#[tokio::test]
async fn a_double_tap_at_one_place_answers_one_question() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let found =
            [("plug", json!("two_equal_blades")), ("bare_metal", json!(["screws_or_shafts"]))];
        let id = inspected(&app, "Shelf radio", &["outside", "cover_off"], &found).await;
        let address = format!("#/i/{id}/q/{ALIKE}");
        app.go(&address).await;
        app.tap_twice(&answer(ALIKE, "none"), DOUBLE_TAP).await;
        let next = app.leaves(&address).await;
        let wanted = ["answers.bare_metal", "answers.plug", "answers.transformer"];
        one_answer_only(&app, &next, &wanted).await;
    })
    .await;
}

/// After a while long enough for a second answer, there is none, and the screen is where it was.
async fn one_answer_only(app: &App, address: &str, wanted: &[&str]) {
    tokio::time::sleep(Duration::from_secs(1)).await;
    let view = shown(app, inspection(address).expect("an inspection")).await;
    let findings = view["findings"].as_array().expect("findings");
    let mut paths: Vec<_> =
        findings.iter().filter_map(|finding| finding["path"].as_str()).collect();
    paths.sort_unstable();
    assert_eq!(paths, wanted, "at {}", app.address().await);
    let asked: &Value = &view["question"]["id"];
    assert_eq!(app.address().await, address);
    assert_eq!(question(address), asked.as_str());
}
