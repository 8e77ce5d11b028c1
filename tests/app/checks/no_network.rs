//! Nothing leaves the app: whatever the page tries, a live listener on this machine hears nothing.
//!
//! The same attempts are made in the bare engine first, without our bars: those that arrive from there
//! are the ones whose silence says something.

use std::collections::BTreeSet;
use std::time::Duration;

use coldchassis_app_tests::listener::Listener;
use coldchassis_app_tests::selectors::words;
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::json;

/// Ways out of a page that leave it where it is. Each asks for its own name.
const STAYING: &str = include_str!("no_network/staying.js");
/// Ways out by leaving the page.
const LEAVING: [(&str, &str); 6] = [
    (
        "link",
        "const a = document.createElement('a'); a.href = to; document.body.append(a); a.click();",
    ),
    ("place", "location.href = to;"),
    (
        "form",
        "const f = document.createElement('form'); f.action = to; document.body.append(f); f.submit();",
    ),
    ("window", "window.open(to);"),
    (
        "refresh",
        "const m = document.createElement('meta'); m.httpEquiv = 'refresh'; \
        m.content = '0;url=' + to; document.head.append(m);",
    ),
    (
        "download",
        "const a = document.createElement('a'); a.href = to; a.download = 'x'; \
        document.body.append(a); a.click();",
    ),
];
/// Long enough for what is on its way to arrive: on one machine that takes milliseconds.
const ON_ITS_WAY: Duration = Duration::from_secs(2);

/// The ways that must be known to work, or the silence would prove nothing.
const PROVEN: [&str; 14] = [
    "fetch", "xhr", "image", "style", "frame", "script", "beacon", "events", "socket", "font",
    "media", "link", "form", "place",
];

#[tokio::test]
async fn what_the_page_tries_to_send_does_not_leave_the_app() {
    within_reason(async {
        let open = attempts_in_the_bare_engine().await;
        println!("heard from the bare engine: {open:?}");
        let unproven: Vec<_> = PROVEN.iter().filter(|way| !open.contains(**way)).collect();
        assert!(
            unproven.is_empty(),
            "these ways do not even work in the bare engine: {unproven:?}"
        );

        let stage = Stage::new().await;
        let listener = Listener::new().await;
        listener.prove().await;
        let app = App::start(&stage).await;
        app.see(&words("first-does-title")).await;
        let tried = stay(&app, &listener).await;
        assert!(tried >= 15, "only {tried} ways were tried");
        for (way, script) in LEAVING {
            leave(&app, &listener, way, script).await;
            assert!(app.is_running(), "the app ended at {way}");
            app.see(&words("first-does-title")).await;
        }
        tokio::time::sleep(ON_ITS_WAY).await;
        assert_eq!(listener.heard(), Vec::<String>::new());
        let address = app.script("return location.href", vec![]).await;
        assert!(
            address.as_str().is_some_and(|at| at.starts_with("tauri://localhost")),
            "{address}"
        );
        // The listener was live to the end.
        listener.prove().await;
    })
    .await;
}

/// The names of the ways that arrive when nothing bars them.
async fn attempts_in_the_bare_engine() -> BTreeSet<String> {
    let stage = Stage::new().await;
    let listener = Listener::new().await;
    listener.prove().await;
    let browser = App::bare_browser(&stage).await;
    let start = format!("http://127.0.0.1:{}/start", listener.port());
    browser.client.goto(&start).await.expect("the listener's page");
    stay(&browser, &listener).await;
    tokio::time::sleep(ON_ITS_WAY).await;
    for (way, script) in LEAVING {
        browser.client.goto(&start).await.expect("the listener's page");
        leave(&browser, &listener, way, script).await;
        tokio::time::sleep(Duration::from_millis(300)).await;
    }
    let names = |request: &String| {
        let path = request.split_whitespace().nth(1)?;
        Some(path.trim_start_matches('/').split('?').next()?.to_owned())
    };
    listener.heard().iter().filter_map(names).collect()
}

/// Tries every way that leaves the page where it is; gives how many.
async fn stay(app: &App, listener: &Listener) -> u64 {
    let tried = app.script(STAYING, vec![json!(listener.port())]).await;
    tried.as_u64().expect("a count")
}

async fn leave(app: &App, listener: &Listener, way: &str, script: &str) {
    let to = format!("http://127.0.0.1:{}/{way}", listener.port());
    // Afterwards, so that the script has ended before the page goes.
    let script = format!("const to = arguments[0]; setTimeout(() => {{ {script} }}, 0);");
    app.script(&script, vec![json!(to)]).await;
    tokio::time::sleep(Duration::from_millis(200)).await;
}
