//! No screen shuts anybody out: in the real web view axe finds nothing, in any theme.

use coldchassis_app_tests::screens::{Screen, with_units, without_units};
use coldchassis_app_tests::selectors::root;
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::{Value, json};

/// It comes with the checks in the browser.
const AXE: &str = "tests/browser/node_modules/axe-core/axe.min.js";
const PLAIN: &str = include_str!("access/plain.js");
const LOOK: &str = include_str!("access/look.js");
/// Fewer rules that pass than this on a screen: axe looked at next to nothing.
const LEAST_PASSED: u64 = 10;

#[tokio::test]
async fn light_shuts_nobody_out() {
    looked_at_in("light").await;
}

#[tokio::test]
async fn dark_shuts_nobody_out() {
    looked_at_in("dark").await;
}

#[tokio::test]
async fn high_contrast_shuts_nobody_out() {
    looked_at_in("contrast").await;
}

#[tokio::test]
async fn beside_the_list_nobody_is_shut_out() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        app.client.set_window_size(1280, 844).await.expect("a window with two panes");
        let wrong = looked_at(&app, "light").await;
        let panes = app.script("return document.querySelector('aside') !== null", vec![]).await;
        assert_eq!(panes, true, "the window has one pane");
        assert!(wrong.is_empty(), "{} wrong beside the list:\n{}", wrong.len(), wrong.join("\n"));
    })
    .await;
}

#[tokio::test]
async fn axe_is_listened_to() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        wear(&app, "light").await;
        let script = "const faint = document.createElement('p');
            faint.textContent = 'faint';
            faint.style.setProperty('color', '#c8bda9');
            document.querySelector('main').append(document.createElement('button'), faint);";
        app.go("#/shocked").await;
        app.script(script, vec![]).await;
        let found = violations(&app).await;
        for rule in ["button-name:", "color-contrast:"] {
            assert!(found.iter().any(|line| line.starts_with(rule)), "no {rule} in {found:?}");
        }
    })
    .await;
}

async fn looked_at_in(theme: &str) {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        let wrong = looked_at(&app, theme).await;
        assert!(wrong.is_empty(), "{} wrong in {theme}:\n{}", wrong.len(), wrong.join("\n"));
    })
    .await;
}

/// Looks at every screen in a theme; gives all that is wrong on any of them.
async fn looked_at(app: &App, theme: &str) -> Vec<String> {
    wear(app, theme).await;
    let mut wrong = Vec::new();
    look(app, &without_units(), &mut wrong).await;
    let screens = with_units(app).await;
    // What was put into the record is on the screens only when they read it anew.
    wear(app, theme).await;
    look(app, &screens, &mut wrong).await;
    let shown = app.script("return document.documentElement.dataset.theme", vec![]).await;
    assert_eq!(shown, theme, "the theme was lost on the way");
    wrong
}

async fn look(app: &App, screens: &[Screen], wrong: &mut Vec<String>) {
    for screen in screens {
        screen.reach(app).await;
        let found = violations(app).await;
        wrong.extend(found.into_iter().map(|line| format!("{}: {line}", screen.name)));
    }
}

/// Sets a theme as the settings keep it, and loads the screens and axe with it.
async fn wear(app: &App, theme: &str) {
    let settings = json!({"theme": theme, "welcomed": true}).to_string();
    let script = "localStorage.setItem('settings', arguments[0])";
    app.script(script, vec![json!(settings)]).await;
    app.reload().await;
    let file = root().join(AXE);
    let axe = std::fs::read_to_string(&file).unwrap_or_else(|_| {
        panic!("{} is not there: npm --prefix tests/browser ci", file.display())
    });
    // The driver's scripts are functions: what axe declares would be gone at their end.
    app.script(&format!("{axe}\nwindow.axe = axe;"), vec![]).await;
}

async fn violations(app: &App) -> Vec<String> {
    app.script(PLAIN, vec![]).await;
    let looked = app.client.execute_async(LOOK, vec![]).await.expect("axe answers");
    let found = looked["found"].as_array().expect("a list");
    let mut found: Vec<_> = found.iter().filter_map(Value::as_str).map(str::to_owned).collect();
    let passed = looked["passed"].as_u64().unwrap_or_default();
    if passed < LEAST_PASSED {
        found.push(format!("only {passed} rules were looked at"));
    }
    found
}
