//! The page of other people's licences is up to date: held against the lock files, without a network.

use std::collections::BTreeSet;
use std::path::PathBuf;

use coldchassis_tests::licences::{Kind, Package, Page, left_out, locks, own};
use toml::{Table, Value};

/// The root of the repository.
fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// What is wrong with a page and a list of what was left out, when these could ship.
fn out_of_date(
    may_ship: &BTreeSet<Package>,
    page: &BTreeSet<Package>,
    left_out: &BTreeSet<String>,
) -> Vec<String> {
    let told = |package: &Package| page.contains(package) || left_out.contains(&package.line());
    let untold = may_ship.iter().filter(|package| !told(package));
    let mut wrong: Vec<String> =
        untold.map(|package| format!("{}: locked, but not told of", package.line())).collect();
    let lines: BTreeSet<String> = may_ship.iter().map(Package::line).collect();
    let kept = page.iter().filter(|package| package.kind != Kind::Part).map(Package::line);
    let gone = kept.chain(left_out.iter().cloned()).filter(|line| !lines.contains(line));
    wrong.extend(gone.map(|line| format!("{line}: told of, but no longer locked")));
    wrong
}

#[test]
fn the_page_tells_of_what_is_locked_now() {
    let root = root();
    let may_ship = locks::may_ship(&root);
    let page = Page::read(&root).packages();
    let left_out = left_out(&root);
    println!("{} locked, {} on the page, {} left out", may_ship.len(), page.len(), left_out.len());
    assert!(page.len() > 200, "only {} packages on the page", page.len());
    let wrong = out_of_date(&may_ship, &page, &left_out);
    assert!(wrong.is_empty(), "`make licences`, and look at what changed:\n{}", wrong.join("\n"));
}

#[test]
fn every_licence_has_its_text_and_every_text_its_packages() {
    for licence in Page::read(&root()).licences {
        assert!(!licence.texts.is_empty(), "{}", licence.id);
        for text in &licence.texts {
            assert!(text.text.len() > 150, "{}: {}", licence.id, text.text);
            assert!(!text.packages.is_empty(), "{}: {}", licence.id, text.text);
            let left_open = ["<year>", "<copyright holders>", "<owner>", "[year]"];
            let found = left_open.iter().find(|open| text.text.contains(**open));
            assert!(found.is_none(), "{}: nobody is named", text.packages[0].line());
        }
    }
}

#[test]
fn our_own_licence_stands_on_top_as_it_is_in_its_files() {
    let root = root();
    assert_eq!(Page::read(&root).own, own(&root));
    let manifest = std::fs::read_to_string(root.join("Cargo.toml")).expect("there is a workspace");
    assert!(manifest.contains("license = \"MIT OR Apache-2.0\""), "the page says so");
}

#[test]
fn letters_and_database_are_on_the_page() {
    let page = Page::read(&root()).packages();
    for name in ["Noto Sans", "SQLite", "Rust standard library"] {
        assert!(page.contains(&Package::new(Kind::Part, name, "")), "{name}");
    }
}

#[test]
fn the_page_has_no_licence_that_the_gate_would_not_let_in() {
    let gate =
        std::fs::read_to_string(root().join("src-tauri/deny.toml")).expect("there is a gate");
    let gate: Table = gate.parse().expect("it is TOML");
    let allowed = gate["licenses"]["allow"].as_array().expect("it lists licences");
    let allowed: BTreeSet<&str> = allowed.iter().filter_map(Value::as_str).collect();
    for licence in Page::read(&root()).licences {
        let packages = licence.texts.iter().flat_map(|text| &text.packages);
        let has_crates = packages.into_iter().any(|package| package.kind == Kind::Crate);
        assert!(!has_crates || allowed.contains(licence.id.as_str()), "{}", licence.id);
    }
}

#[test]
fn a_planted_change_of_a_lock_file_is_found() {
    let lock = |core: &str, more: &str| {
        format!(
            "[[package]]\nname = \"core\"\nversion = \"0.1.0\"\ndependencies = [{core}]\n\
             [[package]]\nname = \"a\"\nversion = \"1.0.0\"\ndependencies = [\"b\"]\n\
             [[package]]\nname = \"b\"\nversion = \"2.0.0\"\n\
             [[package]]\nname = \"checks\"\nversion = \"3.0.0\"\n{more}"
        )
    };
    let manifest = "[dependencies]\na = \"1\"\n[target.'cfg(unix)'.dependencies]\nc = \"1\"\n\
                    [dev-dependencies]\nchecks = \"3\"\n";
    let manifests = [("core", manifest.to_owned())];
    let before = locks::crates(&lock("\"a\", \"checks\"", ""), &manifests);
    let krate = |name: &str, version: &str| Package::new(Kind::Crate, name, version);
    assert_eq!(before, [krate("a", "1.0.0"), krate("b", "2.0.0")].into());
    let nothing = BTreeSet::new();
    assert_eq!(out_of_date(&before, &before, &nothing), Vec::<String>::new());
    let left_out = BTreeSet::from([krate("b", "2.0.0").line()]);
    assert!(out_of_date(&before, &[krate("a", "1.0.0")].into(), &left_out).is_empty());

    let added = "[[package]]\nname = \"c\"\nversion = \"1.0.0\"\n[[package]]\nname = \"b\"\nversion = \"1.9.0\"\n";
    let lock = lock("\"a\", \"c\"", added).replace("[\"b\"]", "[\"b 1.9.0\"]");
    let after = locks::crates(&lock, &manifests);
    let wrong = out_of_date(&after, &before, &nothing);
    assert_eq!(
        wrong,
        [
            "crate b 1.9.0: locked, but not told of",
            "crate c 1.0.0: locked, but not told of",
            "crate b 2.0.0: told of, but no longer locked",
        ]
    );

    let npm = locks::npm(
        r#"{"packages": {"": {"version": "0.1.0"}, "node_modules/@a/b": {"version": "1.0.0"},
            "node_modules/c/node_modules/d": {"version": "2.0.0"},
            "node_modules/e": {"version": "3.0.0", "dev": true}}}"#,
    );
    let names: Vec<String> = npm.iter().map(Package::line).collect();
    assert_eq!(names, ["npm @a/b 1.0.0", "npm d 2.0.0"]);
}
