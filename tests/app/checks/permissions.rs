//! The window may run our own commands and nothing else, and there is one list of them.

use std::collections::BTreeSet;

use coldchassis_app_tests::selectors::root;
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::{Value, json};

fn read(file: &str) -> String {
    let text = std::fs::read_to_string(root().join(file));
    text.unwrap_or_else(|error| panic!("{file}: {error}"))
}

/// The words between quotes, or the words, of the part of a file that begins and ends so.
fn names(text: &str, begin: &str, end: &str) -> BTreeSet<String> {
    let part = text.split_once(begin).and_then(|(_, rest)| rest.split_once(end));
    let (part, _) = part.unwrap_or_else(|| panic!("no part from {begin} to {end}"));
    let names = part.split(|letter: char| !letter.is_alphanumeric() && letter != '_');
    names.filter(|name| !name.is_empty()).map(str::to_owned).collect()
}

fn built() -> BTreeSet<String> {
    names(&read("src-tauri/build.rs"), "COMMANDS: &[&str] = &[", "];")
}

#[test]
fn every_list_of_the_commands_names_the_same() {
    let built = built();
    assert!(built.contains("answer") && built.len() > 10, "{built:?}");
    let handled = names(&read("src-tauri/src/commands.rs"), "generate_handler![", "]");
    assert_eq!(handled, built, "src/commands.rs against build.rs");
    let capability: Value =
        serde_json::from_str(&read("src-tauri/capabilities/main.json")).expect("JSON");
    let allowed = capability["permissions"].as_array().expect("a list");
    let allowed: BTreeSet<_> = allowed.iter().filter_map(Value::as_str).collect();
    let wanted: Vec<_> =
        built.iter().map(|name| format!("allow-{}", name.replace('_', "-"))).collect();
    assert_eq!(allowed, wanted.iter().map(String::as_str).collect(), "the capability");
    let bridge = read("tests/src/bridge.rs");
    let arms =
        bridge.lines().filter_map(|line| line.trim().strip_prefix('"')?.split_once("\" => "));
    let bridged: BTreeSet<_> = arms.map(|(name, _)| name.to_owned()).collect();
    assert_eq!(bridged, built, "the loopback bridge of the browser checks");
    let screens = read("ui/src/lib/backend/backend.ts");
    let called: BTreeSet<_> =
        screens.split("call('").skip(1).filter_map(|rest| rest.split('\'').next()).collect();
    let missing: Vec<_> = called.iter().filter(|name| !built.contains(**name)).collect();
    assert!(missing.is_empty(), "the screens call what is not there: {missing:?}");
}

#[tokio::test]
async fn the_page_may_run_nothing_but_our_commands() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        assert!(app.command("list_presets", json!({})).await.is_ok());
        for (command, arguments) in [
            ("plugin:webview|create_webview_window", json!({"options": {"label": "other"}})),
            ("plugin:window|set_title", json!({"label": "main", "value": "x"})),
            ("plugin:path|resolve_directory", json!({"directory": 1})),
            ("plugin:event|emit", json!({"event": "x"})),
            ("plugin:app|version", json!({})),
            ("plugin:resources|close", json!({"rid": 1})),
            ("no_such_command", json!({})),
        ] {
            let answer = app.command(command, arguments).await;
            let refused = answer.expect_err(command).to_string();
            let is_barred = refused.contains("not allowed") || refused.contains("not found");
            assert!(is_barred, "{command} is refused for another reason: {refused}");
        }
        assert_eq!(app.script("return typeof window.__TAURI__", vec![]).await, "undefined");
        let frozen = app.script("return Object.isFrozen(Object.prototype)", vec![]).await;
        assert_eq!(frozen, true, "the prototype is not frozen");
    })
    .await;
}
