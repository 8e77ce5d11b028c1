//! Finds the files of the repository that a check reads.

use std::path::{Path, PathBuf};

use walkdir::{DirEntry, WalkDir};

/// Folders that hold what tools wrote, not people.
const WRITTEN_BY_TOOLS: [&str; 5] = ["target", "node_modules", "gen", "generated", "dist"];

/// A file, by its path from the root of the repository.
pub struct SourceFile {
    /// The path, with `/` between its parts.
    pub path: String,
    /// What is in it.
    pub text: String,
}

/// The root of the repository.
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().expect("the checks live in a folder").to_owned()
}

/// The files under a folder with one of these extensions, sorted; none where there is no such folder.
pub fn files(folder: &str, extensions: &[&str]) -> Vec<SourceFile> {
    let root = root();
    let by_people = |entry: &DirEntry| {
        !WRITTEN_BY_TOOLS.iter().any(|name| entry.file_name().to_str() == Some(*name))
    };
    let wanted = |path: &Path| {
        path.extension().is_some_and(|found| extensions.iter().any(|wanted| found == *wanted))
    };
    let start = root.join(folder);
    if !start.exists() {
        return Vec::new();
    }
    WalkDir::new(start)
        .sort_by_file_name()
        .into_iter()
        .filter_entry(by_people)
        .map(|entry| entry.expect("the repository can be read").into_path())
        .filter(|path| path.is_file() && wanted(path))
        .map(|path| SourceFile {
            text: std::fs::read_to_string(&path).expect("a source file is text"),
            path: relative(&path, &root),
        })
        .collect()
}

fn relative(path: &Path, root: &Path) -> String {
    let parts = path.strip_prefix(root).expect("it is in the repository").components();
    parts.map(|part| part.as_os_str().to_string_lossy()).collect::<Vec<_>>().join("/")
}
