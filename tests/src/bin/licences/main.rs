//! Writes the page of other people's licences out of what is really built in: `make licences`.
//!
//! Rust packages by `cargo tree` for each system that the app is built for, npm packages by what the bundler put
//! into the screens, and the few things that come within others. Needs the packages themselves, hence a network
//! the first time; that the page is up to date is checked from the lock files alone.

mod crates;
mod npm;
mod parts;
mod texts;

use std::collections::BTreeMap;
use std::path::Path;

use coldchassis_tests::licences::{LEFT_OUT, Licence, PAGE, Package, Page, Text, locks, own};

/// A package with what it says of its licence.
pub struct Found {
    package: Package,
    /// The SPDX expression that it declares.
    expression: String,
    /// Who made it, as it says; may be empty.
    authors: Vec<String>,
    /// The texts of the licence files that it came with.
    files: Vec<String>,
    /// What has to be passed on beside the licence.
    notices: Vec<String>,
}

fn main() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().expect("a folder above");
    // The screens bundle the page, and have to be bundled to write it.
    if !root.join(PAGE).exists() {
        std::fs::write(root.join(PAGE), "{}").expect("the page can be written");
    }
    let mut found = crates::shipped(root);
    found.extend(npm::shipped(root));
    found.extend(parts::shipped(root, &found));
    let page = Page { own: own(root), licences: by_licence(&found) };
    let on_page = page.packages();
    let left_out = locks::may_ship(root).into_iter().filter(|package| !on_page.contains(package));
    let mut list = "# Locked, but not in what ships: written by `make licences`.\n".to_owned();
    for package in left_out {
        list.push_str(&package.line());
        list.push('\n');
    }
    let mut json = serde_json::to_string_pretty(&page).expect("a page can be written");
    json.push('\n');
    std::fs::write(root.join(PAGE), json).expect("the page can be written");
    std::fs::write(root.join(LEFT_OUT), list).expect("the list can be written");
    for licence in &page.licences {
        let packages: usize = licence.texts.iter().map(|text| text.packages.len()).sum();
        println!("{packages:4} {} ({} texts)", licence.id, licence.texts.len());
    }
    println!("{:4} packages", on_page.len());
}

/// Sorts what was found by licence, then by text.
fn by_licence(found: &[Found]) -> Vec<Licence> {
    let mut sorted: BTreeMap<&str, BTreeMap<String, Vec<Package>>> = BTreeMap::new();
    for one in found {
        for id in texts::chosen(&one.package, &one.expression) {
            for text in texts::of(one, id) {
                let packages = sorted.entry(id).or_default().entry(text).or_default();
                packages.push(one.package.clone());
            }
        }
    }
    let mut licences: Vec<Licence> =
        sorted.into_iter().map(|(id, texts)| licence(id, texts)).collect();
    let size =
        |licence: &Licence| licence.texts.iter().map(|text| text.packages.len()).sum::<usize>();
    licences.sort_by_key(|licence| std::cmp::Reverse(size(licence)));
    licences
}

fn licence(id: &str, texts: BTreeMap<String, Vec<Package>>) -> Licence {
    let sorted = |(text, mut packages): (String, Vec<Package>)| {
        packages.sort();
        Text { packages, text }
    };
    let mut texts: Vec<Text> = texts.into_iter().map(sorted).collect();
    // The text that most came with first, then by the first package's name.
    texts.sort_by(|a, b| {
        let by_size = b.packages.len().cmp(&a.packages.len());
        by_size.then_with(|| a.packages.cmp(&b.packages))
    });
    let name = spdx::license_id(id).map_or(id, |known| known.full_name);
    Licence { id: id.to_owned(), name: name.to_owned(), texts }
}
