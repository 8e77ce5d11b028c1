//! The page of other people's licences, as it is kept: what stands on it, and what the lock files say could.
//!
//! `src/bin/licences` writes it; `checks/licences.rs` holds it against the lock files.

pub mod lines;
pub mod locks;

use std::collections::BTreeSet;
use std::path::Path;

use serde::{Deserialize, Serialize};

/// Where the page is kept, from the root of the repository; the screens bundle it.
pub const PAGE: &str = "ui/src/lib/licences/licences.json";

/// Where it is kept which packages of the lock files are not on the page: they help to build, or are for a system
/// that nothing is built for.
pub const LEFT_OUT: &str = "ui/src/lib/licences/left-out.txt";

/// The page: everything that ships and was made by others.
#[derive(Debug, Serialize, Deserialize)]
pub struct Page {
    /// Our own: either may be chosen.
    pub own: Vec<Own>,
    /// Those with the most packages first.
    pub licences: Vec<Licence>,
}

/// A licence that the app itself is under.
#[derive(Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Own {
    /// Its SPDX id.
    pub id: String,
    /// What it calls itself.
    pub name: String,
    /// Its text, paragraphs on lines of their own.
    pub text: String,
}

/// The licences that the app is under, out of the files that say so.
///
/// # Panics
/// When one of the files is not there.
pub fn own(root: &Path) -> Vec<Own> {
    let files = [("MIT", "LICENSE-MIT"), ("Apache-2.0", "LICENSE-APACHE")];
    let read = |(id, file)| {
        let text = std::fs::read_to_string(root.join(file)).expect("our own licence is there");
        let name = spdx::license_id(id).map_or(id, |known| known.full_name);
        Own { id: id.to_owned(), name: name.to_owned(), text: lines::unwrapped(&text) }
    };
    files.map(read).into()
}

/// A licence and what is under it.
#[derive(Debug, Serialize, Deserialize)]
pub struct Licence {
    /// Its SPDX id.
    pub id: String,
    /// What it calls itself.
    pub name: String,
    /// Its texts: more than one where each package's names those who made it.
    pub texts: Vec<Text>,
}

/// The text of a licence with the packages that came with this very text.
#[derive(Debug, Serialize, Deserialize)]
pub struct Text {
    /// Sorted.
    pub packages: Vec<Package>,
    /// Paragraphs on lines of their own.
    pub text: String,
}

/// Something that ships.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Package {
    /// What it is called where it comes from.
    pub name: String,
    /// Its version; empty for what has none or comes with the compiler.
    pub version: String,
    /// Where it comes from.
    pub kind: Kind,
}

/// Where a package comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// A Rust package from crates.io.
    Crate,
    /// A package from the npm registry.
    Npm,
    /// Something that comes within another package, with the compiler, or as a file beside the code.
    Part,
}

impl Package {
    /// A package by where it comes from, its name and its version.
    pub fn new(kind: Kind, name: &str, version: &str) -> Self {
        Self { name: name.to_owned(), version: version.to_owned(), kind }
    }

    /// The package on one line, as the list of those left out has it.
    pub fn line(&self) -> String {
        let kind = match self.kind {
            Kind::Crate => "crate",
            Kind::Npm => "npm",
            Kind::Part => "part",
        };
        format!("{kind} {} {}", self.name, self.version)
    }
}

impl Page {
    /// Reads the kept page.
    ///
    /// # Panics
    /// When it is not there or is no page.
    pub fn read(root: &Path) -> Self {
        let text = std::fs::read_to_string(root.join(PAGE)).expect("the page is kept");
        serde_json::from_str(&text).expect("it is a page")
    }

    /// Every package on the page.
    pub fn packages(&self) -> BTreeSet<Package> {
        let texts = self.licences.iter().flat_map(|licence| &licence.texts);
        texts.flat_map(|text| text.packages.iter().cloned()).collect()
    }
}

/// The lines of the packages that were left out.
///
/// # Panics
/// When the list is not there.
pub fn left_out(root: &Path) -> BTreeSet<String> {
    let text = std::fs::read_to_string(root.join(LEFT_OUT)).expect("the list is kept");
    text.lines().filter(|line| !line.starts_with('#')).map(str::to_owned).collect()
}
