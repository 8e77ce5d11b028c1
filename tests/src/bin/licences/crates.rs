//! The Rust packages that are compiled into the programs.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::process::Command;

use coldchassis_tests::licences::{Kind, Package};
use serde_json::Value;

use crate::Found;
use crate::texts;

/// The systems that the app is built for: a processor each, since packages differ by the system alone.
const SYSTEMS: [&str; 3] =
    ["x86_64-unknown-linux-gnu", "aarch64-linux-android", "aarch64-apple-ios"];

/// The programs that are handed to people.
const PROGRAMS: [&str; 2] = ["coldchassis-app", "coldchassis-cli"];

/// Every package from outside that is compiled into a program on any of the systems. What runs only as the programs
/// are built is not: build scripts, macros, and what those are made of.
pub fn shipped(root: &Path) -> Vec<Found> {
    let mut found = BTreeMap::new();
    for system in SYSTEMS {
        let wanted = compiled_in(root, system);
        for one in described(root, system) {
            let key = (one.package.name.clone(), one.package.version.clone());
            if wanted.contains(&key) {
                found.insert(key, one);
            }
        }
        let missing: Vec<_> = wanted.iter().filter(|key| !found.contains_key(*key)).collect();
        assert!(missing.is_empty(), "{system}: nothing is told of {missing:?}");
    }
    found.into_values().collect()
}

/// The name and version of each package from outside.
fn compiled_in(root: &Path, system: &str) -> BTreeSet<(String, String)> {
    let mut arguments = vec!["tree", "--locked", "--target", system, "--prefix", "none"];
    arguments.extend(["--edges", "normal,no-proc-macro", "--format", "{p}"]);
    for program in PROGRAMS {
        arguments.extend(["--package", program]);
    }
    let tree = cargo(root, &arguments);
    let named = tree.lines().filter_map(|line| {
        let mut words = line.split(' ');
        let (name, version) = (words.next()?, words.next()?.strip_prefix('v')?);
        let is_ours = name.starts_with("coldchassis-");
        (!is_ours).then(|| (name.to_owned(), version.to_owned()))
    });
    named.collect()
}

/// What each package says of itself.
fn described(root: &Path, system: &str) -> Vec<Found> {
    let said = cargo(
        root,
        &["metadata", "--locked", "--format-version", "1", "--filter-platform", system],
    );
    let said: Value = serde_json::from_str(&said).expect("cargo writes JSON");
    let packages = said["packages"].as_array().expect("it lists packages");
    let outside = packages.iter().filter(|package| !package["source"].is_null());
    outside.map(described_by).collect()
}

fn described_by(package: &Value) -> Found {
    let text = |key: &str| package[key].as_str().unwrap_or_default().to_owned();
    let manifest = text("manifest_path");
    let folder = Path::new(&manifest).parent().expect("a manifest is in a folder");
    let (files, notices) = texts::in_folder(folder);
    let authors = package["authors"].as_array().into_iter().flatten().filter_map(Value::as_str);
    Found {
        package: Package::new(Kind::Crate, &text("name"), &text("version")),
        expression: text("license"),
        authors: authors.map(str::to_owned).collect(),
        files,
        notices,
    }
}

fn cargo(root: &Path, arguments: &[&str]) -> String {
    let output = Command::new("cargo").args(arguments).current_dir(root).output();
    let output = output.expect("cargo starts");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).expect("cargo writes text")
}
