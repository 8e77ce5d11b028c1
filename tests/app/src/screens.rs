//! Every screen, with how to reach it: the one list for the checks that look at all of them.

use serde_json::{Value, json};

use super::app::App;
use super::photo::{self, FILES};
use super::record::{Found, inspected, shown, units};
use super::selectors::{answer, words};

/// A screen, or a state of one.
pub struct Screen {
    /// What to call it.
    pub name: String,
    /// Its address.
    pub address: String,
    /// What is tapped there first.
    pub taps: Vec<String>,
}

impl Screen {
    fn at(name: impl Into<String>, address: impl Into<String>) -> Self {
        Self { name: name.into(), address: address.into(), taps: Vec::new() }
    }

    fn tapping(mut self, taps: impl IntoIterator<Item = String>) -> Self {
        self.taps.extend(taps);
        self
    }

    /// Goes there, and waits until it is at rest.
    ///
    /// # Panics
    /// When it cannot be reached.
    pub async fn reach(&self, app: &App) {
        // By way of another screen, so that nothing of an earlier visit is left.
        app.go(AWAY).await;
        app.go(&self.address).await;
        self.rest(app).await;
    }

    /// Starts the screens there, as after a restart of the app, and waits until it is at rest.
    ///
    /// # Panics
    /// When it cannot be reached.
    pub async fn start(&self, app: &App) {
        app.go(&self.address).await;
        app.reload().await;
        self.rest(app).await;
    }

    async fn rest(&self, app: &App) {
        for tap in &self.taps {
            app.tap(tap).await;
        }
        let complete = "return [...document.images].every((image) => image.complete)";
        app.until(&format!("{} is not at rest", self.name), complete, vec![]).await;
        app.settle().await;
    }
}

/// Somewhere else.
const AWAY: &str = "#/settings";
/// An id of the right form that no record has.
const NOBODY: &str = "00000000-0000-7000-8000-000000000000";
const ALL_ACCESS: &[&str] = &["outside", "cover_off", "meter"];

/// The screens that need no unit, while there is none.
pub fn without_units() -> Vec<Screen> {
    let mut screens: Vec<_> = (1..=3)
        .map(|step| Screen::at(format!("first run {step}"), format!("#/first/{step}")))
        .collect();
    screens.push(Screen::at("empty list", "#/"));
    screens.push(Screen::at("new unit", "#/new"));
    screens.push(Screen::at("settings, no demonstration", "#/settings"));
    screens.push(Screen::at("heaters, no tubes", "#/heaters"));
    screens.push(Screen::at("somebody shocked", "#/shocked"));
    screens.push(Screen::at("trouble", format!("#/i/{NOBODY}/verdict")));
    screens
}

/// The screens of units, which are put into the record for them.
///
/// # Panics
/// When the app refuses any of it.
pub async fn with_units(app: &App) -> Vec<Screen> {
    app.command("load_demo", json!({})).await.expect("the demonstration");
    let mut screens =
        vec![Screen::at("list", "#/"), Screen::at("settings, demonstration there", "#/settings")];
    for unit in units(app).await {
        screens.push(verdict(&unit));
    }
    screens.extend(questions(app).await);
    screens.extend(review(app).await);
    screens
}

/// The demonstration has one of every class, on both bases.
fn verdict(unit: &Value) -> Screen {
    let text = |name: &str| unit[name].as_str().unwrap_or_default();
    let name = format!("verdict {} {} of {}", text("treat_as"), text("basis"), text("name"));
    Screen::at(name, format!("#/i/{}/verdict", text("inspection")))
}

/// A question of each shape, of a unit that nothing is known of.
async fn questions(app: &App) -> Vec<Screen> {
    let id = inspected(app, "Shelf radio, unknown", ALL_ACCESS, &[]).await;
    let at = |turn: &str, question: &str| format!("#/i/{id}/{turn}/{question}");
    let asked = |name: &str, question: &str| Screen::at(name, at("q", question));
    let next = || [words("next")];
    vec![
        asked("question with drawings", "plug"),
        asked("how to look, open", "plug").tapping([words("question-how-to-look")]),
        asked("question in words", "kind"),
        asked("several answers", "bare_metal"),
        asked("several answers, none ticked", "bare_metal").tapping(next()),
        asked("several answers, places left", "bare_metal")
            .tapping([answer("bare_metal", "none_anywhere"), words("next")]),
        asked("farads", "values.line_capacitor"),
        asked("farads, none entered", "values.line_capacitor").tapping(next()),
        asked("ohms", "values.network_resistor"),
        asked("rated", "values.rated"),
        asked("rated, none entered", "values.rated").tapping(next()),
        asked("how many", "tube_count"),
        asked("how many, none entered", "tube_count").tapping(next()),
        asked("types", "tube_list"),
        Screen::at("caution", at("also", "cord")),
        Screen::at("hint", at("hint", "rating_plate")),
        Screen::at("found, nothing yet", format!("#/i/{id}/found")),
    ]
}

/// What was found, readings, a photo, and a verdict on findings that disagree.
async fn review(app: &App) -> Vec<Screen> {
    let found: Found<'_> = &[
        ("plug", json!("two_equal_blades")),
        ("bare_metal", json!(["screws_or_shafts"])),
        ("back", json!("fitted")),
    ];
    let id = inspected(app, "Shelf radio, looked at", ALL_ACCESS, found).await;
    let reading = json!({"inspection": id, "reading": "ohms_a_part_on", "value": 220_000});
    app.command("set_reading", reading).await.expect("a reading");
    let tubes = json!(["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT", "6SJ7", "QQ99"]);
    app.command("set_tubes", json!({"inspection": id, "tubes": tubes})).await.expect("the tubes");
    app.go(&format!("#/i/{id}/change/plug")).await;
    photo::choose(app, FILES, &photo::held_upright()).await;
    app.until("no photo is kept", "return document.querySelector('main img') !== null", vec![])
        .await;
    let photo = photo::photos(&shown(app, &id).await)[0]["id"].clone();
    let photo = photo.as_str().expect("an id");
    let disagree: Found<'_> =
        &[("plug", json!("two_equal_blades")), ("earth_wire", json!("on_chassis"))];
    let conflict = inspected(app, "Amplifier, two minds about it", ALL_ACCESS, disagree).await;
    let at = |place: &str| format!("#/i/{id}/{place}");
    vec![
        Screen::at("question answered, with a photo", at("change/plug")),
        Screen::at("found, with a photo", at("found")),
        Screen::at("tubes", at("change/tube_list")),
        Screen::at("heaters", at("heaters")),
        Screen::at("readings", at("readings")),
        Screen::at("one reading, to be unplugged first", at("readings/ohms_a_b_on")),
        Screen::at("one reading, taken", at("readings/ohms_a_part_on")),
        Screen::at("photo", at(&format!("photo/{photo}"))),
        Screen::at("verdict with a photo", at("verdict")),
        Screen::at("verdict, findings disagree", format!("#/i/{conflict}/verdict")),
    ]
}
