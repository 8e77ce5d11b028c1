//! The house stays in order: modules import only those above them, files stay short and well named,
//! nothing is `unsafe`, and no text gives the verdict that nobody can give.

mod imports;
mod sources;

use std::collections::BTreeSet;

use imports::{From, Import, Written, imports, paths};
use proc_macro2::{TokenStream, TokenTree};

/// The modules of the core; each may import those above it.
const ORDER: [&str; 17] = [
    "figure",
    "words",
    "fields",
    "supply",
    "circuit",
    "body",
    "heaters",
    "arrangement",
    "hazard",
    "inspection",
    "simulation",
    "remedy",
    "photo",
    "store",
    "exchange",
    "report",
    "workbench",
];

/// Imports that the order would allow, but the design does not: a module and what it knows nothing of.
const KNOWS_NOTHING_OF: [(&str, &str); 2] = [("words", "figure"), ("body", "circuit")];

/// The longest a file may be, lines.
const LONGEST: usize = 400;

/// Names that say nothing about what is inside.
const EMPTY_NAMES: [&str; 7] =
    ["utils", "util", "helpers", "helper", "manager", "managers", "misc"];

const CORE: &str = "src-tauri/core/src/";

/// The path of modules that a file of the core is: `inspection/bank.rs` is `inspection`, `bank`.
fn module_path(path: &str) -> Vec<String> {
    let inside = path.strip_prefix(CORE).unwrap_or(path);
    let stem = inside.strip_suffix(".rs").unwrap_or(inside);
    let stem = stem.strip_suffix("/mod").unwrap_or(stem);
    let parts = stem.split('/').filter(|part| *part != "lib");
    parts.map(str::to_owned).collect()
}

/// What is out of order in a file of the core.
fn out_of_order(path: &str, text: &str) -> Vec<String> {
    let module = module_path(path);
    let Some(own) = module.first() else {
        return Vec::new();
    };
    let place = |name: &str| ORDER.iter().position(|module| *module == name);
    let Some(own_place) = place(own) else {
        return vec![format!("{path}: {own} has no place in the order")];
    };
    let trouble = |Import { line, module }: Import| {
        let wrong = match place(&module) {
            _ if module == *own => return None,
            None => "which has no place in the order",
            Some(other) if other > own_place => "which stands below it",
            Some(_) if KNOWS_NOTHING_OF.contains(&(own.as_str(), module.as_str())) => {
                "which it must know nothing of"
            }
            Some(_) => return None,
        };
        Some(format!("{path}:{line}: {own} imports {module}, {wrong}"))
    };
    imports(path, &module, text).into_iter().filter_map(trouble).collect()
}

#[test]
fn modules_import_only_those_above_them() {
    let files = sources::files("src-tauri/core/src", &["rs"]);
    assert!(files.len() > 50, "only {} files: the core has moved", files.len());
    let found: BTreeSet<String> =
        files.iter().filter_map(|file| module_path(&file.path).into_iter().next()).collect();
    let count: usize = files
        .iter()
        .map(|file| imports(&file.path, &module_path(&file.path), &file.text).len())
        .sum();
    println!("{count} imports between {} modules: {found:?}", found.len());
    assert!(count > 60, "only {count} imports found: the check has gone blind");
    let wrong: Vec<String> =
        files.iter().flat_map(|file| out_of_order(&file.path, &file.text)).collect();
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn planted_imports_out_of_order_are_found() {
    for (file, text, line) in [
        ("body/zones.rs", "use crate::circuit::Network;", 1),
        ("body/zones.rs", "\nuse crate::{figure::Figure, hazard::{Class, Row}};", 2),
        ("circuit.rs", "fn f() -> crate::body::Path { todo!() }", 1),
        ("hazard/class.rs", "fn f() {\n  let a = crate::inspection::assess();\n}", 2),
        ("hazard/class.rs", "fn f() { println!(\"{}\", crate::store::VERSION) }", 1),
        ("hazard/class.rs", "use super::super::store::Store;", 1),
        ("hazard/mod.rs", "use super::store::Store;", 1),
        ("hazard/mod.rs", "mod inner { use super::super::store::Store; }", 1),
        ("words/mod.rs", "use crate::figure::Figure;", 1),
        ("figure.rs", "use crate::words::Message;", 1),
        ("hazard/mod.rs", "use crate::gadgets::Gadget;", 1),
        ("hazard/mod.rs", "use crate::*;", 1),
        ("hazard/mod.rs", "pub(crate) type A = Vec<crate::report::Page>;", 1),
    ] {
        let path = format!("{CORE}{file}");
        let wrong = out_of_order(&path, text);
        assert_eq!(wrong.len(), 1, "{file}: {text}: {wrong:?}");
        assert!(wrong[0].starts_with(&format!("{path}:{line}: ")), "{wrong:?}");
    }
    assert_eq!(out_of_order(&format!("{CORE}gadgets/mod.rs"), "").len(), 1);
}

#[test]
fn imports_in_order_are_left_alone() {
    for (file, text) in [
        ("hazard/class.rs", "use crate::body::{Curve, Path};\nuse super::grade::Grade;"),
        ("hazard/class.rs", "use crate::hazard::Row; // crate::store"),
        ("hazard/mod.rs", "pub use class::Class; use self::grade::Grade; use std::fmt;"),
        ("hazard/mod.rs", "/// See [`crate::store`].\nstruct A;"),
        ("store/tests/opening.rs", "use super::super::open::migrations;"),
        ("lib.rs", "pub mod hazard;"),
    ] {
        let wrong = out_of_order(&format!("{CORE}{file}"), text);
        assert!(wrong.is_empty(), "{text}: {wrong:?}");
    }
}

/// The modules that must not know the evidence they are held against: they use nothing of the core but
/// themselves.
const ON_THEIR_OWN: [&str; 2] = ["simulation", "unit"];

/// Names that no path there may begin with, however they came into the file.
const EVIDENCE: [&str; 4] = ["arrangement", "hazard", "inspection", "coldchassis_core"];

/// What a file of the modules on their own uses of the rest of the core.
fn not_on_its_own(path: &str, text: &str) -> Vec<String> {
    let is_outside = |Written { from, parts, .. }: &Written| match from {
        From::Top | From::Above => !parts.iter().take(2).eq(&ON_THEIR_OWN),
        From::Name => match parts.as_slice() {
            [name, _, ..] => EVIDENCE.contains(&name.as_str()),
            _ => false,
        },
    };
    paths(path, &module_path(path), text)
        .into_iter()
        .filter(is_outside)
        .map(|Written { line, parts, .. }| format!("{path}:{line}: {}", parts.join("::")))
        .collect()
}

#[test]
fn simulated_units_know_nothing_of_the_evidence() {
    let files = sources::files(&format!("{CORE}{}", ON_THEIR_OWN.join("/")), &["rs"]);
    assert!(files.len() > 10, "only {} files: the units have moved", files.len());
    let wrong: Vec<String> =
        files.iter().flat_map(|file| not_on_its_own(&file.path, &file.text)).collect();
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn planted_knowledge_of_the_evidence_is_found() {
    for (file, text) in [
        ("facts.rs", "use crate::inspection::bank;"),
        ("facts.rs", "use crate::{arrangement::Cord as C};"),
        ("facts.rs", "fn f() -> crate::hazard::Class { todo!() }"),
        ("facts.rs", "use crate::simulation::play::Play;"),
        ("facts.rs", "use crate::simulation::{play::Play};"),
        ("facts.rs", "use crate::*;"),
        ("facts.rs", "use super::super::play::Play;"),
        ("facts.rs", "use super::super::super::figure::Figure;"),
        ("mod.rs", "use super::play::Play;"),
        ("meter.rs", "mod inner { use super::super::super::play::Play; }"),
        ("meter/tests.rs", "fn f() { assert!(hazard::table().is_empty()) }"),
        ("tests.rs", "use coldchassis_core::inspection::assess;"),
    ] {
        let path = format!("{CORE}simulation/unit/{file}");
        let wrong = not_on_its_own(&path, text);
        assert_eq!(wrong.len(), 1, "{file}: {text}: {wrong:?}");
    }
    for (file, text) in [
        ("facts.rs", "use super::{PhysicalUnit, parts::Bond}; use std::fmt;"),
        ("meter/display.rs", "use super::super::chance::any; use crate::simulation::unit::Plug;"),
        ("tests.rs", "/// Not [`crate::inspection`].\nfn f(unit: &Unit) { unit.arrangement() }"),
    ] {
        let wrong = not_on_its_own(&format!("{CORE}simulation/unit/{file}"), text);
        assert!(wrong.is_empty(), "{file}: {text}: {wrong:?}");
    }
}

/// Files that people write and read as code.
fn written_files() -> Vec<sources::SourceFile> {
    let kinds = ["rs", "ts", "js", "svelte", "css", "sql", "ftl"];
    ["src-tauri", "tests", "migrations", "ui/src"]
        .into_iter()
        .flat_map(|folder| sources::files(folder, &kinds))
        .collect()
}

fn is_too_long(text: &str) -> bool {
    text.lines().count() > LONGEST
}

/// The part of a path that says nothing, if there is one.
fn empty_name(path: &str) -> Option<&str> {
    path.split('/').find(|part| {
        let stem = part.split('.').next().unwrap_or(part);
        // Alone it says nothing; with another word it is the trade's "circuit common".
        stem == "common"
            || stem
                .split(['_', '-'])
                .any(|word| EMPTY_NAMES.contains(&word.to_lowercase().as_str()))
    })
}

#[test]
fn no_file_is_too_long_and_every_name_says_something() {
    let files = written_files();
    assert!(files.len() > 100, "only {} files: the house has moved", files.len());
    let too_long = files.iter().filter(|file| is_too_long(&file.text));
    let mut wrong: Vec<String> = too_long
        .map(|file| format!("{}: {} lines", file.path, file.text.lines().count()))
        .collect();
    let nameless = files.iter().filter_map(|file| {
        empty_name(&file.path).map(|name| format!("{}: the name {name} says nothing", file.path))
    });
    wrong.extend(nameless);
    println!("{} files", files.len());
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn planted_long_files_and_empty_names_are_found() {
    assert!(is_too_long(&"x\n".repeat(LONGEST + 1)));
    assert!(!is_too_long(&"x\n".repeat(LONGEST)));
    for bad in
        ["core/src/utils.rs", "ui/src/lib/helpers/a.ts", "a/photo_manager.rs", "a/common/mod.rs"]
    {
        assert!(empty_name(bad).is_some(), "{bad}");
    }
    for good in ["core/src/circuit.rs", "ui/src/common_leg.svelte", "a/miscellany.rs"] {
        assert_eq!(empty_name(good), None);
    }
}

/// Where a text says the word that no verdict may say.
fn forbidden_word(path: &str, text: &str) -> Vec<String> {
    let says = |line: &str| line.to_lowercase().replace("unsafe_code", "").contains("safe");
    let lines = text.lines().enumerate().filter(|(_, line)| says(line));
    lines.map(|(place, line)| format!("{path}:{}: {line}", place + 1)).collect()
}

#[test]
fn no_text_for_people_says_the_forbidden_word() {
    let files = sources::files("src-tauri/core/words", &["ftl"]);
    assert!(!files.is_empty(), "the Fluent files have moved");
    let mut wrong: Vec<String> =
        files.iter().flat_map(|file| forbidden_word(&file.path, &file.text)).collect();
    if let Ok(text) = std::fs::read_to_string(sources::root().join("README.md")) {
        wrong.extend(forbidden_word("README.md", &text));
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    let planted = "a\nIt is Safe.\nunsafe_code = \"forbid\"\nunsafely\n";
    assert_eq!(forbidden_word("planted", planted).len(), 2);
}

/// The lines with the keyword `unsafe`, in macros too.
fn unsafe_lines(path: &str, text: &str) -> Vec<usize> {
    fn look(tokens: TokenStream, lines: &mut Vec<usize>) {
        for token in tokens {
            match token {
                TokenTree::Ident(word) if word == "unsafe" => lines.push(word.span().start().line),
                TokenTree::Group(group) => look(group.stream(), lines),
                _ => {}
            }
        }
    }
    let mut lines = Vec::new();
    look(text.parse().unwrap_or_else(|error| panic!("{path}: {error}")), &mut lines);
    lines
}

#[test]
fn nothing_is_unsafe() {
    let folders = ["src-tauri", "tests"];
    let files: Vec<_> = folders.iter().flat_map(|folder| sources::files(folder, &["rs"])).collect();
    let wrong: Vec<String> = files
        .iter()
        .flat_map(|file| {
            let lines = unsafe_lines(&file.path, &file.text);
            lines.into_iter().map(|line| format!("{}:{line}", file.path))
        })
        .collect();
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    let planted =
        "fn f() {\n    unsafe { g() }\n}\nm! { unsafe fn h() {} }\n#![forbid(unsafe_code)]\n";
    assert_eq!(unsafe_lines("planted", planted), [2, 4]);
}
