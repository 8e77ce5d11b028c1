//! Units put into the record by the commands of the screens, to come quickly to where a check begins.

use serde_json::{Value, json};

use super::app::App;

/// What the units of the checks are to be plugged into: the id of a preset, 120 V at 60 Hz.
pub const SUPPLY: &str = "120v_60hz";

/// What was found of a unit: a question and its answer, as the record keeps them.
pub type Found<'a> = &'a [(&'a str, Value)];

/// Makes a unit and answers for it; gives its inspection.
///
/// # Panics
/// When the app refuses any of it.
pub async fn inspected(app: &App, name: &str, access: &[&str], found: Found<'_>) -> String {
    let presets = app.command("list_presets", json!({})).await.expect("supplies");
    let presets = presets.as_array().expect("a list");
    let supply = presets.iter().find(|preset| preset["id"] == SUPPLY).expect("the supply");
    let supply = supply["supply"].clone();
    let unit = json!({"name": name, "place": "", "kind": null, "supply": supply, "access": access});
    let made = app.command("create_unit", json!({"unit": unit})).await.expect("a unit");
    let inspection = made["id"].as_str().expect("an inspection").to_owned();
    for (question, answer) in found {
        answered(app, &inspection, question, answer.clone()).await;
    }
    inspection
}

/// Answers one question; gives the inspection after it.
///
/// # Panics
/// When the app refuses it.
pub async fn answered(app: &App, inspection: &str, question: &str, answer: Value) -> Value {
    let given = json!({"inspection": inspection, "question": question, "answer": answer});
    let view = app.command("answer", given).await;
    view.unwrap_or_else(|refused| panic!("{question} is refused: {refused}"))
}

/// An inspection as it stands in the record.
///
/// # Panics
/// When there is none.
pub async fn shown(app: &App, inspection: &str) -> Value {
    let view = app.command("show_inspection", json!({"inspection": inspection})).await;
    view.unwrap_or_else(|refused| panic!("{inspection} is refused: {refused}"))
}

/// The units in the list.
///
/// # Panics
/// When the app gives none.
pub async fn units(app: &App) -> Vec<Value> {
    let units = app.command("list_units", json!({"text": null})).await.expect("a list");
    units.as_array().expect("a list").clone()
}
