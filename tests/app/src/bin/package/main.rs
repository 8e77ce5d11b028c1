//! Installs the package on this machine as a person would, and takes it away again: `package FIRST.deb NEWER.deb`.
//!
//! What it keeps, it keeps in a home of its own; the package is on the machine while it runs and gone after it. It
//! needs root or `sudo`, and refuses where the package is installed already.

mod deb;
mod menu;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use coldchassis_app_tests::record::{shown, units};
use coldchassis_app_tests::selectors::inspection;
use coldchassis_app_tests::stage;
use coldchassis_app_tests::walk::{SHELF_RADIO, answer_one, new_unit, welcome};
use coldchassis_app_tests::{App, Stage};
use serde_json::Value;

use deb::Package;

/// The unit that has to outlive it all.
const UNIT: &str = "Shelf radio, brown case";
/// The app, where the package puts it.
const PROGRAM: &str = "/usr/bin/coldchassis-app";
/// The command line, where the package puts it.
const COMMAND_LINE: &str = "/usr/bin/coldchassis";

#[tokio::main]
async fn main() {
    let files: Vec<PathBuf> = std::env::args_os().skip(1).map(PathBuf::from).collect();
    let [first, newer] = &files[..] else { panic!("package FIRST.deb NEWER.deb") };
    let [first, newer] = [first, newer].map(|file| file.canonicalize().expect("a package"));

    deb::holds_no_script(&first);
    deb::lint(&first);
    let package = Package::install(&first);
    deb::is_whole();
    assert_eq!(stage::program(), Path::new(PROGRAM), "COLDCHASSIS_APP names the installed app");
    println!("{} is installed and whole", package.version());

    let stage = Stage::as_installed().await;
    menu::start(&stage).await;
    let kept = inspect(&stage).await;
    println!("it starts from the menu; a unit is in {}", stage.data().display());

    let older = package.version();
    package.install_over(&newer);
    deb::is_whole();
    assert_ne!(package.version(), older, "the newer package is the same");
    menu::start(&stage).await;
    read(&stage, &kept).await;
    println!("{} is installed over it and reads the unit", package.version());

    let files = deb::files();
    let before = contents(&stage.data());
    package.take_away("remove");
    gone(&stage, &files, &before).await;
    println!(
        "removed: {} files are gone, {} files of the record are as before",
        files.len(),
        before.len()
    );

    package.install_over(&newer);
    menu::start(&stage).await;
    read(&stage, &kept).await;
    println!("installed again, it reads the unit");

    let before = contents(&stage.data());
    package.take_away("purge");
    gone(&stage, &files, &before).await;
    println!("purged: the record is as before");
}

/// What has to be the same whatever happens to the package.
struct Kept {
    inspection: String,
    findings: Value,
}

/// Makes a unit by taps and answers for it.
async fn inspect(stage: &Stage) -> Kept {
    let app = App::start(stage).await;
    welcome(&app).await;
    let asked = new_unit(&app, UNIT).await;
    answer_one(&app, SHELF_RADIO).await;
    let inspection = inspection(&asked).expect("an inspection").to_owned();
    let findings = shown(&app, &inspection).await["findings"].clone();
    assert!(findings.as_array().is_some_and(|found| !found.is_empty()), "{findings}");
    app.kill().await;
    Kept { inspection, findings }
}

/// Reads the unit on the screen, by its findings, and by the command line.
async fn read(stage: &Stage, kept: &Kept) {
    let app = App::start(stage).await;
    app.see(UNIT).await;
    assert_eq!(units(&app).await.len(), 1, "one unit was made");
    assert_eq!(shown(&app, &kept.inspection).await["findings"], kept.findings);
    app.kill().await;
    let record = stage.data().join("record.coldchassis");
    let listed = stage.ask(COMMAND_LINE, &["list", &record.display().to_string()]).await;
    let listed = listed.expect("the command line reads the record");
    assert!(listed.contains(UNIT), "{listed}");
}

/// Nothing of the package is left, and all of the record.
async fn gone(stage: &Stage, files: &[PathBuf], before: &BTreeMap<PathBuf, Vec<u8>>) {
    for file in files {
        assert!(!file.exists(), "{} is left behind", file.display());
    }
    assert!(!stage.runs("gtk-launch", &[menu::ENTRY]).await, "it is still in the menu");
    assert!(!before.is_empty(), "there is a record");
    assert!(contents(&stage.data()) == *before, "the record was touched");
}

/// Every file below a folder, byte by byte.
fn contents(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut found = BTreeMap::new();
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            found.append(&mut contents(&path));
        } else if path.is_file() {
            let bytes = std::fs::read(&path).expect("a file");
            found.insert(path, bytes);
        }
    }
    found
}
