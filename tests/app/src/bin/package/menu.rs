//! The entry in the menu: what a desktop starts, and the window that it takes to belong to it.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use coldchassis_app_tests::Stage;
use coldchassis_app_tests::ended::Ended;

/// The entry, by the name of its file.
pub const ENTRY: &str = "coldchassis-app";
/// How long the window may take.
const PATIENCE: Duration = Duration::from_secs(40);
const AGAIN: Duration = Duration::from_millis(50);

/// Starts the app by its entry, sees its window, and ends it.
///
/// # Panics
/// When no window of the entry's class appears, or a desktop would not find its icon.
pub async fn start(stage: &Stage) {
    let entry = format!("/usr/share/applications/{ENTRY}.desktop");
    let entry = std::fs::read_to_string(entry).expect("an entry in the menu");
    let of = |key: &str| {
        let line = entry.lines().find_map(|line| line.strip_prefix(key)?.strip_prefix('='));
        line.unwrap_or_else(|| panic!("the entry has no {key}")).to_owned()
    };
    let picture = format!("/usr/share/icons/hicolor/128x128/apps/{}.png", of("Icon"));
    assert!(Path::new(&picture).is_file(), "{picture} is not there");
    assert_eq!(PathBuf::from("/usr/bin").join(of("Exec")), Path::new(super::PROGRAM));
    for key in ["Name", "Comment", "Comment[de]", "Categories"] {
        assert!(!of(key).is_empty(), "{key} is empty");
    }
    assert!(stage.runs("gtk-launch", &[ENTRY]).await, "the menu does not start it");
    let class = format!("^{}$", of("StartupWMClass"));
    let number = window(stage, &class).await;
    let window = stage.ask("xdotool", &["getwindowname", &number]).await;
    assert_eq!(window, Some(of("Name")), "the window's title");
    let process = stage.ask("xdotool", &["getwindowpid", &number]).await.expect("its process");
    let process = process.parse().expect("a number");
    let process = Ended::of(process, PathBuf::from(super::PROGRAM)).expect("the installed app");
    recorded(stage).await;
    process.kill();
    let start = Instant::now();
    while process.is_running() {
        assert!(start.elapsed() < PATIENCE, "the app survives");
        tokio::time::sleep(AGAIN).await;
    }
}

/// The window of that class, once it is seen.
async fn window(stage: &Stage, class: &str) -> String {
    let start = Instant::now();
    loop {
        let found = stage.ask("xdotool", &["search", "--onlyvisible", "--class", class]).await;
        match found.as_deref().and_then(|numbers| numbers.lines().next()) {
            Some(number) => return number.to_owned(),
            None => assert!(start.elapsed() < PATIENCE, "no window of class {class}"),
        }
        tokio::time::sleep(AGAIN).await;
    }
}

/// Waits until the app has its record.
async fn recorded(stage: &Stage) {
    let record = stage.data().join("record.coldchassis");
    let start = Instant::now();
    while !record.is_file() {
        assert!(start.elapsed() < PATIENCE, "{} is not there", record.display());
        tokio::time::sleep(AGAIN).await;
    }
}
