//! Which packages could ship, read from the lock files alone: quick, and without a network.
//!
//! Too many rather than too few: a lock file does not tell what only helps to build, or for which system.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use serde_json::Value as Json;
use toml::{Table, Value};

use super::{Kind, Package};

/// The programs that are handed to people, with the folders of all members that they are made of.
const SHIPPED: [(&str, &str); 3] = [
    ("coldchassis-app", "src-tauri"),
    ("coldchassis-cli", "src-tauri/cli"),
    ("coldchassis-core", "src-tauri/core"),
];

/// Everything that either lock file would let ship.
///
/// # Panics
/// When a lock file or a manifest cannot be read.
pub fn may_ship(root: &Path) -> BTreeSet<Package> {
    let read = |path: &str| std::fs::read_to_string(root.join(path)).expect("the file can be read");
    let manifests = SHIPPED.map(|(name, folder)| (name, read(&format!("{folder}/Cargo.toml"))));
    let mut all = crates(&read("Cargo.lock"), &manifests);
    all.extend(npm(&read("ui/package-lock.json")));
    all
}

/// A package of `Cargo.lock`.
struct Locked {
    version: String,
    /// Each as `name` or, where several versions are locked, `name version`.
    needs: Vec<String>,
}

/// What the members need, and what that needs in turn; what only their checks or build scripts need is left out.
///
/// # Panics
/// When a text is no lock file or no manifest.
pub fn crates(lock: &str, manifests: &[(&str, String)]) -> BTreeSet<Package> {
    let locked = locked(lock);
    let mut open: Vec<(String, String)> = Vec::new();
    for (member, manifest) in manifests {
        let wanted = normal_needs(manifest);
        let entry = locked.iter().find(|((name, _), _)| name == member);
        let (_, entry) = entry.expect("the member is in the lock file");
        let needs = entry.needs.iter().map(|need| resolve(need, &locked));
        open.extend(needs.filter(|(name, _)| wanted.contains(name)));
    }
    let mut found = BTreeSet::new();
    while let Some(key) = open.pop() {
        if manifests.iter().any(|(member, _)| *member == key.0) || !found.insert(key.clone()) {
            continue;
        }
        open.extend(locked[&key].needs.iter().map(|need| resolve(need, &locked)));
    }
    found.iter().map(|(name, version)| Package::new(Kind::Crate, name, version)).collect()
}

fn locked(lock: &str) -> BTreeMap<(String, String), Locked> {
    let lock: Table = lock.parse().expect("it is a lock file");
    let packages = lock["package"].as_array().expect("it has packages");
    let text = |package: &Value, key: &str| package[key].as_str().expect("it is text").to_owned();
    let needs = |package: &Value| -> Vec<String> {
        let needs = package.get("dependencies").and_then(Value::as_array);
        needs.into_iter().flatten().filter_map(Value::as_str).map(str::to_owned).collect()
    };
    let entry = |package: &Value| {
        let version = text(package, "version");
        let key = (text(package, "name"), version.clone());
        (key, Locked { version, needs: needs(package) })
    };
    packages.iter().map(entry).collect()
}

/// The one package that a line of needs stands for.
fn resolve(need: &str, locked: &BTreeMap<(String, String), Locked>) -> (String, String) {
    let mut words = need.split(' ');
    let name = words.next().unwrap_or_default().to_owned();
    if let Some(version) = words.next() {
        return (name, version.to_owned());
    }
    let one = locked.iter().find(|((found, _), _)| *found == name);
    let version = one.map(|(_, package)| package.version.clone());
    (name, version.expect("what is needed is locked"))
}

/// What a manifest asks for as the program runs, on any system.
fn normal_needs(manifest: &str) -> BTreeSet<String> {
    let manifest: Table = manifest.parse().expect("it is a manifest");
    let targets = manifest.get("target").and_then(Value::as_table);
    let by_target = targets.into_iter().flat_map(|targets| targets.values());
    let everywhere = manifest.get("dependencies");
    let sections = by_target.filter_map(|target| target.get("dependencies")).chain(everywhere);
    sections.filter_map(Value::as_table).flat_map(|section| section.keys().cloned()).collect()
}

/// What the screens' lock file has that is not for building alone.
///
/// # Panics
/// When the text is no lock file.
pub fn npm(lock: &str) -> BTreeSet<Package> {
    let lock: Json = serde_json::from_str(lock).expect("it is a lock file");
    let packages = lock["packages"].as_object().expect("it has packages");
    let kept =
        packages.iter().filter(|(place, package)| !place.is_empty() && package["dev"] != true);
    let named = kept.map(|(place, package)| {
        let name = place.rsplit("node_modules/").next().unwrap_or_default();
        Package::new(Kind::Npm, name, package["version"].as_str().unwrap_or_default())
    });
    named.collect()
}
