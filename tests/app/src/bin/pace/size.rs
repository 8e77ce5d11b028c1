//! How large the program is, as it is handed out.

use std::fs;
use std::path::Path;
use std::process::Command;

use coldchassis_app_tests::stage;
use coldchassis_figures::{At, Row, Unit};

use super::BENCH;

/// The most that the program may take, MB.
const PROGRAM: f64 = 15.0;

/// Tells its size as it was built, and without whatever a debugger might want.
pub fn tell() {
    let program = stage::program();
    let built = Row::one(BENCH, "size of the program", Unit::Megabytes, megabytes(&program));
    built.at_most(At::Median, PROGRAM, 10).tell();
    let folder = tempfile::tempdir().expect("a folder");
    let bare = folder.path().join("bare");
    let stripped = Command::new("strip").arg("-o").arg(&bare).arg(&program).status();
    if stripped.is_ok_and(|status| status.success()) {
        let row = Row::one(BENCH, "the same, stripped", Unit::Megabytes, megabytes(&bare));
        row.at_most(At::Median, PROGRAM, 10).tell();
    }
}

fn megabytes(file: &Path) -> f64 {
    fs::metadata(file).expect("the program").len() as f64 / 1e6
}
