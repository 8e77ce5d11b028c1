//! The machine that the figures are of.

use std::fs;
use std::process::Command;

use chrono::Utc;

/// What the machine is and what ran on it, by name. What cannot be found out is left out.
pub fn described() -> Vec<(&'static str, String)> {
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let described = [
        ("date", Some(Utc::now().format("%Y-%m-%d").to_string())),
        ("commit", commit()),
        ("processor", field("/proc/cpuinfo", "model name")),
        ("cores", Some(cores.to_string())),
        ("memory", field("/proc/meminfo", "MemTotal").and_then(|text| gigabytes(&text))),
        ("kernel", read("/proc/sys/kernel/osrelease")),
        ("system", system()),
        ("rustc", said("rustc", &["--version"])),
        ("not built as it ships", profile()),
        ("ngspice", said("ngspice", &["--version"])),
        ("vipsthumbnail", said("vipsthumbnail", &["--version"])),
        ("WebKitGTK", said("pkg-config", &["--modversion", "webkit2gtk-4.1"])),
    ];
    described.into_iter().filter_map(|(name, told)| Some((name, told?))).collect()
}

/// How many processes wanted to run, over the last minute.
pub fn load() -> Option<f64> {
    read("/proc/loadavg")?.split(' ').next()?.parse().ok()
}

fn read(file: &str) -> Option<String> {
    fs::read_to_string(file).ok().map(|text| text.trim().to_owned())
}

/// The first field of that name, as in `model name : …`.
fn field(file: &str, name: &str) -> Option<String> {
    let text = read(file)?;
    let line = text.lines().find(|line| line.starts_with(name))?;
    Some(line.split_once(':')?.1.trim().to_owned())
}

/// `16384000 kB` in GB.
fn gigabytes(text: &str) -> Option<String> {
    let kilobytes: f64 = text.split(' ').next()?.parse().ok()?;
    Some(format!("{:.1} GB", kilobytes * 1024.0 / 1e9))
}

fn system() -> Option<String> {
    let text = read("/etc/os-release")?;
    let line = text.lines().find_map(|line| line.strip_prefix("PRETTY_NAME="))?;
    Some(line.trim_matches('"').to_owned())
}

/// What was measured, and whether anything of it is not kept yet.
fn commit() -> Option<String> {
    let commit = said("git", &["rev-parse", "--short", "HEAD"])?;
    // The sheet itself may still be that of the run before.
    let but_the_sheet = ["--", ".", ":!tests/benches/FIGURES.md"];
    let status = ["status", "--porcelain", "--untracked-files=no"];
    let changed = said("git", &[&status[..], &but_the_sheet].concat()).is_some();
    Some(if changed { format!("{commit}, with changes") } else { commit })
}

/// What the surroundings change of the profiles that cargo builds by.
fn profile() -> Option<String> {
    let changes = std::env::vars().filter(|(name, _)| name.starts_with("CARGO_PROFILE_"));
    let mut changes: Vec<String> = changes.map(|(name, value)| format!("{name}={value}")).collect();
    changes.sort();
    (!changes.is_empty()).then(|| changes.join(" "))
}

/// The first line that a program says that has a letter or a digit in it.
fn said(program: &str, arguments: &[&str]) -> Option<String> {
    let output = Command::new(program).args(arguments).output().ok()?;
    let text = String::from_utf8(output.stdout).ok()?;
    let line = text.lines().find(|line| line.contains(char::is_alphanumeric))?;
    Some(line.trim_matches(|c: char| c == '*' || c.is_whitespace()).to_owned())
}
