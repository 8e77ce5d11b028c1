//! A tag is saved where the system's own window says, and nothing where the person thinks better of it.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use coldchassis_app_tests::selectors::{inspection, screen_words};
use coldchassis_app_tests::walk::{SHELF_RADIO, answer_one, new_unit, welcome};
use coldchassis_app_tests::{App, Stage, within_reason};

/// How long the system's window may take to open, or a file to be there.
const PATIENCE: Duration = Duration::from_secs(20);
const AGAIN: Duration = Duration::from_millis(100);
/// The system's window, as GTK names it in English.
const WINDOW: [&str; 4] = ["search", "--onlyvisible", "--name", "Save"];

#[tokio::test]
async fn a_tag_is_saved_where_the_system_s_window_says() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        welcome(&app).await;
        let asked = new_unit(&app, "Shelf radio").await;
        answer_one(&app, SHELF_RADIO).await;
        let id = inspection(&asked).expect("an inspection").to_owned();
        app.go(&format!("#/i/{id}/papers")).await;

        let folder = tempfile::tempdir().expect("a temporary folder");
        let file = folder.path().join("on a stick.pdf");
        app.tap(&screen_words("papers", "papers-tag-give")).await;
        window(&stage).await;
        stage.press(&["key", "Escape"]).await;
        while stage.press(&WINDOW).await {
            tokio::time::sleep(AGAIN).await;
        }
        app.tap(&screen_words("papers", "papers-tag-give")).await;
        window(&stage).await;
        // The name that is offered is marked but for its end, so what is typed takes its place.
        stage.press(&["type", &file.with_extension("").display().to_string()]).await;
        stage.press(&["key", "Return"]).await;
        let bytes = written(&file).await;
        assert!(bytes.starts_with(b"%PDF"), "{} bytes", bytes.len());
        app.see(&screen_words("papers", "papers-made").replace("{ $name }", "U-0001_tag.pdf"))
            .await;
        assert_eq!(files(folder.path()), [file], "only what was asked for, once");
        app.kill().await;
    })
    .await;
}

/// Waits for the system's window and gives it the keys.
async fn window(stage: &Stage) {
    let start = Instant::now();
    let focused = [&WINDOW[..], &["windowfocus"]].concat();
    while !stage.press(&focused).await {
        assert!(start.elapsed() < PATIENCE, "no window asks where the file goes");
        tokio::time::sleep(AGAIN).await;
    }
}

async fn written(file: &Path) -> Vec<u8> {
    let start = Instant::now();
    loop {
        match std::fs::read(file) {
            Ok(bytes) if !bytes.is_empty() => return bytes,
            _ => assert!(start.elapsed() < PATIENCE, "{} is not written", file.display()),
        }
        tokio::time::sleep(AGAIN).await;
    }
}

fn files(folder: &Path) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).expect("a folder");
    entries.map(|entry| entry.expect("an entry").path()).collect()
}
