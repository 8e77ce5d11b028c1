//! The app starts on a new device, and says what is the matter where it cannot.

use coldchassis_app_tests::selectors::{screen_words, words};
use coldchassis_app_tests::walk::welcome;
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::json;

#[tokio::test]
async fn a_new_device_shows_an_empty_list() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        assert_eq!(app.heading().await, words("units"));
        assert!(app.read().await.contains(&words("list-empty-text")));
        assert_eq!(app.command("list_units", json!({"text": null})).await, Ok(json!([])));
        let device = std::fs::read_to_string(stage.data().join("device")).expect("a device's name");
        app.kill().await;
        let app = App::start(&stage).await;
        app.see(&words("list-empty-title")).await;
        let again = std::fs::read_to_string(stage.data().join("device")).expect("a device's name");
        assert_eq!(again, device, "the device has another name after a restart");
    })
    .await;
}

#[tokio::test]
async fn the_window_is_as_large_as_a_phone() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        let size = app.script("return [innerWidth, innerHeight]", vec![]).await;
        assert_eq!(size, json!([390, 844]));
    })
    .await;
}

#[tokio::test]
async fn a_record_that_is_not_ours_is_named_and_left_alone() {
    within_reason(async {
        let stage = Stage::new().await;
        let record = stage.data().join("record.coldchassis");
        std::fs::write(&record, "a letter to a friend").expect("a file");
        let app = App::start(&stage).await;
        let refused = app.command("list_units", json!({"text": null})).await.unwrap_err();
        assert_eq!(refused["code"], "not_our_file");
        assert_eq!(refused["field"], json!(null));
        let sentence = refused["sentence"].as_str().expect("a sentence");
        // In place of everything else, so that nothing is entered that could not be kept.
        app.see(sentence).await;
        app.see(&screen_words("record", "recovery-new")).await;
        assert_eq!(std::fs::read_to_string(&record).expect("the file"), "a letter to a friend");
    })
    .await;
}

#[tokio::test]
async fn a_mistake_is_answered_with_its_field() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        let unit = json!({"unit": {"supply": {"volts": 0, "hertz": 60}}});
        let refused = app.command("create_unit", unit).await.unwrap_err();
        assert_eq!(refused["code"], "bad_input");
        assert_eq!(refused["field"], "supply.volts");
        assert_eq!(app.command("list_units", json!({})).await, Ok(json!([])));
    })
    .await;
}
