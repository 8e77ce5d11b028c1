//! A way through the app by taps alone: what an inspector does with a unit.

use serde_json::json;

use super::app::App;
use super::record::SUPPLY;
use super::selectors::{access, answer, question, words};

/// An inspector's answers: a question, and all that is ticked for it.
pub type Answers<'a> = &'a [(&'a str, &'a [&'a str])];

/// A two-blade shelf radio with bare screws, looked at from outside: it stays live, not ruled out.
pub const SHELF_RADIO: Answers<'static> = &[
    ("plug", &["two_equal_blades"]),
    ("bare_metal", &["screws_or_shafts"]),
    ("back", &["fitted"]),
    ("terminals", &["none"]),
];

/// More questions than the bank has: an inspection that asks more goes in circles.
const MOST: usize = 40;

/// Goes through the screens of the first run to the list of units.
pub async fn welcome(app: &App) {
    let steps = ["first-does-title", "first-cannot-title", "first-unplug-title"];
    let [before @ .., last] = steps;
    for title in before {
        app.see(&words(title)).await;
        app.tap(&words("continue")).await;
    }
    app.see(&words(last)).await;
    app.tap(&words("first-start")).await;
    app.see(&words("list-empty-title")).await;
}

/// Makes a unit that is looked at from outside, and comes to its first question; gives the address.
pub async fn new_unit(app: &App, name: &str) -> String {
    new_unit_with(app, name, &[]).await
}

/// Makes a unit with more ticked than looking from outside, and comes to its first question; gives the
/// address.
pub async fn new_unit_with(app: &App, name: &str, more: &[&str]) -> String {
    app.tap(&words("list-new")).await;
    app.write(&words("new-name"), name).await;
    app.choose(&words("new-supply"), SUPPLY).await;
    for id in more {
        app.tap(&access(id)).await;
    }
    let form = app.address().await;
    app.tap(&words("new-start")).await;
    let mut address = app.leaves(&form).await;
    // An inspection opens where it stands, by way of its own address.
    while question(&address).is_none() {
        address = app.leaves(&address).await;
    }
    address
}

/// Answers the question on the screen; gives the address after it.
///
/// # Panics
/// When no question is on the screen, or it stays there.
pub async fn answer_one(app: &App, answers: Answers<'_>) -> String {
    let address = app.address().await;
    let asked = question(&address).unwrap_or_else(|| panic!("no question at {address}"));
    let known = answers.iter().find(|(question, _)| *question == asked);
    // What the inspector has not looked at, nobody can tell.
    let chosen = known.map_or(&["cant_tell"][..], |(_, chosen)| chosen);
    for one in chosen {
        app.tap(&answer(asked, one)).await;
    }
    if ticks(app, &address).await {
        app.tap(&words("next")).await;
    }
    app.leaves(&address).await
}

/// Answers until nothing more is asked: the verdict is on the screen then. Gives the questions asked.
///
/// # Panics
/// When the questions go in circles.
pub async fn to_verdict(app: &App, answers: Answers<'_>) -> Vec<String> {
    let mut asked = Vec::new();
    let mut address = app.address().await;
    while !address.ends_with("/verdict") {
        asked.extend(question(&address).map(str::to_owned));
        assert!(asked.len() < MOST, "the questions go in circles: {asked:?}");
        address = answer_one(app, answers).await;
    }
    asked
}

/// Whether answers are ticked on this screen, and only Next keeps them.
async fn ticks(app: &App, address: &str) -> bool {
    let script = "return location.hash === arguments[0]
        && document.querySelector('button[role=checkbox]') !== null";
    app.script(script, vec![json!(address)]).await == true
}
