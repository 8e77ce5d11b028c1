//! The npm packages that the bundler put into the screens.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::Command;

use coldchassis_tests::licences::{Kind, Package};
use serde_json::Value;

use crate::Found;
use crate::texts;

/// Bundles the screens beside a map of where each line came from, and describes the packages in it. Fonts are in
/// no map: what the style sheets take them from is asked of `fonts.css`.
pub fn shipped(root: &Path) -> Vec<Found> {
    let built = tempfile::tempdir().expect("a folder can be made");
    let status = Command::new("npx")
        .args(["vite", "build", "--sourcemap", "--logLevel", "error", "--outDir"])
        .arg(built.path())
        .current_dir(root.join("ui"))
        .status();
    assert!(status.expect("npx starts").success(), "the screens cannot be bundled");
    let mut names = BTreeSet::new();
    let assets = std::fs::read_dir(built.path().join("assets")).expect("there are assets");
    for asset in assets {
        let path = asset.expect("the folder can be read").path();
        if path.extension().is_some_and(|kind| kind == "map") {
            names.extend(mapped(&std::fs::read_to_string(path).expect("a map is text")));
        }
    }
    assert!(names.contains("svelte"), "the maps tell of no packages: {names:?}");
    let fonts = std::fs::read_to_string(root.join("ui/src/styles/fonts.css"));
    names.extend(fonts.expect("the fonts are named").lines().filter_map(font));
    names.iter().map(|name| described(root, name)).collect()
}

/// The packages that a map of sources names.
fn mapped(map: &str) -> Vec<String> {
    let map: Value = serde_json::from_str(map).expect("a map is JSON");
    let sources = map["sources"].as_array().into_iter().flatten().filter_map(Value::as_str);
    let inside = sources.filter_map(|path| path.rsplit_once("node_modules/").map(|(_, rest)| rest));
    inside.map(package_of).collect()
}

/// The package that a line of the style sheet takes a font from.
fn font(line: &str) -> Option<String> {
    let (_, path) = line.split_once("url('@")?;
    Some(package_of(&format!("@{path}")))
}

/// The name at the head of a path: two parts where the first is a scope.
fn package_of(path: &str) -> String {
    let parts = if path.starts_with('@') { 2 } else { 1 };
    path.split('/').take(parts).collect::<Vec<_>>().join("/")
}

fn described(root: &Path, name: &str) -> Found {
    let folder = root.join("ui/node_modules").join(name);
    let said = std::fs::read_to_string(folder.join("package.json")).expect("the package is there");
    let said: Value = serde_json::from_str(&said).expect("a package says what it is");
    let text = |key: &str| said[key].as_str().unwrap_or_default().to_owned();
    let author = said["author"]["name"].as_str().or(said["author"].as_str());
    let (files, notices) = texts::in_folder(&folder);
    Found {
        package: Package::new(Kind::Npm, name, &text("version")),
        expression: text("license"),
        authors: author.into_iter().map(str::to_owned).collect(),
        files,
        notices,
    }
}
