//! Inspects a unit in the real app on a display that nobody sees, and leaves pictures: `walk [FOLDER]`.

use std::path::PathBuf;

use coldchassis_app_tests::page::pictures;
use coldchassis_app_tests::photo::{FILES, choose, decoded, held_upright};
use coldchassis_app_tests::selectors::{core_words, open_photo, words};
use coldchassis_app_tests::walk::{SHELF_RADIO, answer_one, new_unit, to_verdict, welcome};
use coldchassis_app_tests::{App, Stage, within_reason};

/// The unit that is inspected; the others in the list are those of the demonstration.
const UNIT: &str = "Shelf radio, brown case";

#[tokio::main]
async fn main() {
    let folder = std::env::args().nth(1).map_or_else(pictures, PathBuf::from);
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        app.tap(&words("list-demo-load")).await;
        app.see(&core_words("demo", "demo-kitchen-radio-name")).await;
        let asked = new_unit(&app, UNIT).await;
        let question = app.picture(&folder, "question").await;
        choose(&app, FILES, &held_upright()).await;
        let thumbnail = open_photo("plug");
        decoded(&app, "button", &thumbnail).await;
        app.tap(&thumbnail).await;
        app.leaves(&asked).await;
        decoded(&app, "figure svg", &core_words("answers", "finding-plug")).await;
        let photo = app.picture(&folder, "photo").await;
        app.system_back().await;
        answer_one(&app, SHELF_RADIO).await;
        to_verdict(&app, SHELF_RADIO).await;
        app.tag().await;
        let verdict = app.picture(&folder, "verdict").await;
        app.tap(&words("units")).await;
        app.see(UNIT).await;
        let list = app.picture(&folder, "list").await;
        for file in [list, question, photo, verdict] {
            println!("{}", file.display());
        }
    })
    .await;
}
