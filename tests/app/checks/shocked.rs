//! What to do when somebody has been shocked is one tap away from every screen, and back returns there.

use coldchassis_app_tests::screens::{Screen, with_units, without_units};
use coldchassis_app_tests::selectors::words;
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::json;

/// The screen itself; it needs no way to itself.
const SHOCKED: &str = "#/shocked";

#[tokio::test]
async fn every_screen_has_the_button_and_back_returns_to_it() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        app.see(&words("first-does-title")).await;
        walk(&app, &without_units()).await;
        let screens = with_units(&app).await;
        assert!(screens.len() > 30, "only {} screens", screens.len());
        walk(&app, &screens).await;
    })
    .await;
}

#[tokio::test]
async fn beside_the_list_it_is_one_tap_too() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        app.client.set_window_size(1280, 844).await.expect("a window with two panes");
        walk(&app, &without_units()).await;
        // Beside the list all verdicts have the same bar at the top.
        let (mut verdicts, others): (Vec<_>, Vec<_>) = with_units(&app)
            .await
            .into_iter()
            .partition(|screen| screen.name.starts_with("verdict "));
        verdicts.truncate(1);
        let screens: Vec<_> = verdicts.into_iter().chain(others).collect();
        app.go("#/").await;
        let panes = app.script("return document.querySelector('aside') !== null", vec![]).await;
        assert_eq!(panes, true, "the window has one pane");
        walk(&app, &screens).await;
    })
    .await;
}

async fn walk(app: &App, screens: &[Screen]) {
    for screen in screens.iter().filter(|screen| screen.address != SHOCKED) {
        screen.start(app).await;
        let (name, address, said) = (&screen.name, app.address().await, app.main().await);
        app.tap(&words("shocked-button-long")).await;
        assert_eq!(app.leaves(&address).await, SHOCKED, "from {name}");
        app.see(&words("shocked-1")).await;
        assert_eq!(app.heading().await, words("shocked-title"), "from {name}");
        app.tap(&words("back")).await;
        assert_eq!(app.leaves(SHOCKED).await, address, "back to {name}");
        // What was only begun on the screen, such as a choice in a list, may be closed again.
        if screen.taps.is_empty() {
            let same = "return [...document.querySelectorAll('main')].at(-1)
                ?.innerText.trim() === arguments[0]";
            let what = format!("back at {name} it does not say:\n{said}\nbut");
            app.until(&what, same, vec![json!(said)]).await;
        }
    }
}
