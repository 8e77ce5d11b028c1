//! What ships and is no package: it comes within one, with the compiler, or as a file beside the code.

use std::path::Path;

use coldchassis_tests::licences::{Kind, Package};

use crate::Found;

/// The letters of the documents, the database, and the standard library of the language.
pub fn shipped(root: &Path, packages: &[Found]) -> Vec<Found> {
    let letters = std::fs::read_to_string(root.join("src-tauri/core/data/letters/OFL.txt"));
    let database = packages.iter().find(|found| found.package.name == "libsqlite3-sys");
    assert!(database.is_some(), "the database has gone: take it off the page");
    vec![
        part("Noto Sans", "OFL-1.1", vec![letters.expect("the letters' licence is beside them")]),
        part("SQLite", "blessing", vec![BLESSING.to_owned()]),
        part("Rust standard library", "MIT OR Apache-2.0", Vec::new()),
    ]
}

fn part(name: &str, expression: &str, files: Vec<String>) -> Found {
    Found {
        package: Package::new(Kind::Part, name, ""),
        expression: expression.to_owned(),
        authors: Vec::new(),
        files,
        notices: Vec::new(),
    }
}

/// What stands at the head of each file of SQLite in place of a licence.
const BLESSING: &str = "\
The author disclaims copyright to this source code. In place of a legal notice, here is a blessing:

May you do good and not evil.

May you find forgiveness for yourself and forgive others.

May you share freely, never taking more than you give.
";
