//! Inspects a unit in the real app on a display that nobody sees, and leaves pictures: `walk [FOLDER]`.

use std::path::PathBuf;

use coldchassis_app_tests::page::pictures;
use coldchassis_app_tests::walk::{SHELF_RADIO, answer_one, new_unit, to_verdict, welcome};
use coldchassis_app_tests::{App, Stage, selectors, within_reason};

#[tokio::main]
async fn main() {
    let folder = std::env::args().nth(1).map_or_else(pictures, PathBuf::from);
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        new_unit(&app, "Shelf radio, brown case").await;
        let question = app.picture(&folder, "question").await;
        answer_one(&app, SHELF_RADIO).await;
        to_verdict(&app, SHELF_RADIO).await;
        app.tag().await;
        let verdict = app.picture(&folder, "verdict").await;
        app.tap(&selectors::words("units")).await;
        app.see("Shelf radio, brown case").await;
        let list = app.picture(&folder, "list").await;
        for file in [list, question, verdict] {
            println!("{}", file.display());
        }
    })
    .await;
}
