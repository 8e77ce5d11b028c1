//! A whole inspection in the real window, and what is left of it when the app is killed.

use coldchassis_app_tests::photo::{CAMERA, choose, decoded, held_upright, photos};
use coldchassis_app_tests::record::shown;
use coldchassis_app_tests::selectors::{inspection, question, words};
use coldchassis_app_tests::walk::{
    SHELF_RADIO, answer_one, new_unit, new_unit_with, to_verdict, welcome,
};
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::json;

#[tokio::test]
async fn killed_in_the_middle_it_resumes_at_the_same_question() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let first = new_unit(&app, "Shelf radio").await;
        let second = answer_one(&app, SHELF_RADIO).await;
        assert_ne!(question(&first), question(&second));
        let heading = app.heading().await;
        let possible = app.still_possible().await;
        app.kill().await;
        let app = App::start(&stage).await;
        app.see(&heading).await;
        assert_eq!(app.address().await, second);
        assert_eq!(app.still_possible().await, possible);
    })
    .await;
}

#[tokio::test]
async fn killed_at_the_verdict_it_shows_the_same_verdict() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        new_unit(&app, "Shelf radio").await;
        let asked = to_verdict(&app, SHELF_RADIO).await;
        assert!(asked.contains(&"plug".to_owned()), "the plug was never asked for: {asked:?}");
        let (tag, address) = (app.tag().await, app.address().await);
        let id = json!({"inspection": inspection(&address)});
        let before = app.command("show_inspection", id.clone()).await.expect("an inspection");
        app.kill().await;
        let app = App::start(&stage).await;
        assert_eq!(app.tag().await, tag);
        assert_eq!(app.address().await, address);
        let after = app.command("show_inspection", id).await.expect("the same inspection");
        assert_eq!(after, before);
    })
    .await;
}

#[tokio::test]
async fn photographed_and_killed_it_shows_the_same_verdict_question_and_photo() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let first = new_unit_with(&app, "Shelf radio", &["cover_off"]).await;
        answer_one(&app, SHELF_RADIO).await;
        let asked = answer_one(&app, SHELF_RADIO).await;
        app.tap(&words("verdict")).await;
        let verdict = app.leaves(&asked).await;
        let tag = app.tag().await;
        choose(&app, CAMERA, &held_upright()).await;
        let of_unit = words("photo-open").replace("{ $of }", &words("photo-whole"));
        decoded(&app, "button", &of_unit).await;
        app.tap(&words("found-go-on")).await;
        assert_eq!(app.leaves(&verdict).await, asked);
        let heading = app.heading().await;
        let id = inspection(&first).expect("an inspection");
        let before = shown(&app, id).await;
        assert_eq!(photos(&before).len(), 1);
        app.kill().await;
        let app = App::start(&stage).await;
        app.see(&heading).await;
        assert_eq!(app.address().await, asked);
        assert_eq!(shown(&app, id).await, before);
        app.tap(&words("verdict")).await;
        assert_eq!(app.leaves(&asked).await, verdict);
        assert_eq!(app.tag().await, tag);
        decoded(&app, "button", &of_unit).await;
        app.tap(&words("found-go-on")).await;
        app.leaves(&verdict).await;
        assert!(!to_verdict(&app, SHELF_RADIO).await.is_empty(), "nothing was left to ask");
    })
    .await;
}

#[tokio::test]
async fn a_changed_answer_changes_the_verdict() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        new_unit(&app, "Shelf radio").await;
        to_verdict(&app, SHELF_RADIO).await;
        let before = app.tag().await;
        let verdict = app.address().await;
        app.tap_part(&words("found")).await;
        let found = app.leaves(&verdict).await;
        app.tap(&change_button(&app, "answers.plug", &found).await).await;
        let change = app.leaves(&found).await;
        assert_eq!(question(&change), Some("plug"));
        app.tap(&coldchassis_app_tests::selectors::answer("plug", "battery_only")).await;
        let found = app.leaves(&change).await;
        app.tap(&words("verdict")).await;
        app.leaves(&found).await;
        let after = app.tag().await;
        assert_ne!(after, before);
    })
    .await;
}

/// The button that changes a finding carries the finding's name, which the core knows.
async fn change_button(app: &App, path: &str, address: &str) -> String {
    let id = json!({"inspection": inspection(address)});
    let view = app.command("show_inspection", id).await.expect("an inspection");
    let findings = view["findings"].as_array().expect("findings");
    let finding = findings.iter().find(|finding| finding["path"] == path).expect("the finding");
    words("found-change-what").replace("{ $name }", finding["name"].as_str().expect("a name"))
}
