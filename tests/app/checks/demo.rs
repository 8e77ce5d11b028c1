//! The ten invented units come in one step and go in one step, and touch nothing that is real.

use coldchassis_app_tests::record::units;
use coldchassis_app_tests::selectors::{core_words, inspection, words};
use coldchassis_app_tests::walk::{new_unit, welcome};
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::{Value, json};

/// One of the invented units.
const INVENTED: &str = "demo-kitchen-radio-name";

#[tokio::test]
async fn from_the_empty_list_ten_units_come_and_go() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        app.tap(&words("list-demo-load")).await;
        let name = core_words("demo", INVENTED);
        app.see(&name).await;
        assert_eq!(rows(&app).await, 10);
        let kept = units(&app).await;
        assert_eq!(kept.len(), 10);
        assert!(kept.iter().all(is_demo), "an invented unit that is not marked: {kept:?}");
        let list = app.address().await;
        app.tap_part(&name).await;
        let there = app.leaves(&list).await;
        let here = kept.iter().find(|unit| unit["name"] == json!(name)).expect("the unit");
        assert_eq!(inspection(&there), here["inspection"].as_str());
        app.see(&name).await;
        app.tap(&words("units")).await;
        app.leaves(&there).await;
        app.tap(&words("list-demo-remove")).await;
        app.see(&words("list-empty-title")).await;
        assert_eq!(rows(&app).await, 0);
        assert_eq!(units(&app).await, Vec::<Value>::new());
    })
    .await;
}

#[tokio::test]
async fn a_real_unit_stays_when_the_demonstration_goes() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let first = new_unit(&app, "Shelf radio of the shop").await;
        app.tap(&words("units")).await;
        app.leaves(&first).await;
        app.see("Shelf radio of the shop").await;
        let before = units(&app).await;
        app.tap(&words("settings")).await;
        app.tap(&words("list-demo-load")).await;
        let script = "return ![...document.querySelectorAll('button')]
            .some((button) => button.innerText.trim() === arguments[0])";
        app.until("it can be loaded twice", script, vec![json!(words("list-demo-load"))]).await;
        app.tap(&words("back")).await;
        app.see(&core_words("demo", INVENTED)).await;
        assert_eq!(rows(&app).await, 11);
        app.tap(&words("list-demo-remove")).await;
        let script = "return document.querySelectorAll('main li').length === 1";
        app.until("the demonstration stays", script, vec![]).await;
        app.see("Shelf radio of the shop").await;
        assert_eq!(units(&app).await, before);
        // Gone is gone: not only out of sight until the next start.
        app.kill().await;
        let app = App::start(&stage).await;
        app.see("Shelf radio of the shop").await;
        assert_eq!(units(&app).await, before);
    })
    .await;
}

fn is_demo(unit: &Value) -> bool {
    unit["demo"] == true
}

/// How many units are in the list on the screen.
async fn rows(app: &App) -> u64 {
    let script = "return document.querySelectorAll('main li').length";
    app.script(script, vec![]).await.as_u64().expect("a count")
}
