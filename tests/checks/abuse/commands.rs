//! The commands of the shell with their arguments, out of its own sources: a new one cannot be forgotten.

use std::collections::BTreeMap;

use syn::{FnArg, GenericArgument, Item, ItemFn, Pat, PathArguments, Type};

const BUILD: &str = include_str!("../../../src-tauri/build.rs");
const SOURCES: [&str; 3] = [
    include_str!("../../../src-tauri/src/commands.rs"),
    include_str!("../../../src-tauri/src/records.rs"),
    include_str!("../../../src-tauri/src/giving.rs"),
];
/// What the shell hands to a command itself.
const OF_THE_SHELL: [&str; 2] = ["Desked", "AppHandle"];

/// An argument of a command.
pub struct Argument {
    pub name: String,
    /// Its type as the shell writes it, such as `Option<Uuid>`.
    pub kind: String,
}

/// A command of the shell.
pub struct Command {
    pub name: String,
    pub arguments: Vec<Argument>,
}

/// Every command that `build.rs` names.
pub fn all() -> Vec<Command> {
    let mut written: BTreeMap<String, Vec<Argument>> = SOURCES.iter().flat_map(commands).collect();
    let list =
        BUILD.split("COMMANDS: &[&str] = &[").nth(1).and_then(|rest| rest.split("];").next());
    let names = list.expect("the list of commands").split('"').skip(1).step_by(2);
    let command = |name: &str| {
        let arguments = written.remove(name);
        let arguments = arguments.unwrap_or_else(|| panic!("{name} is in none of the sources"));
        Command { name: name.to_owned(), arguments }
    };
    let all: Vec<Command> = names.map(command).collect();
    assert!(written.is_empty(), "not in build.rs: {:?}", written.keys());
    assert!(all.len() > 60, "{} commands", all.len());
    all
}

fn commands(source: &&str) -> Vec<(String, Vec<Argument>)> {
    let file = syn::parse_file(source).expect("Rust");
    let is_command = |item: &ItemFn| item.attrs.iter().any(|one| one.path().is_ident("command"));
    let functions = file.items.into_iter().filter_map(|item| match item {
        Item::Fn(item) if is_command(&item) => Some(item),
        _ => None,
    });
    functions.map(|item| (item.sig.ident.to_string(), arguments(&item))).collect()
}

fn arguments(item: &ItemFn) -> Vec<Argument> {
    let one = |given: &FnArg| {
        let FnArg::Typed(given) = given else { panic!("a command has no self") };
        let Pat::Ident(name) = &*given.pat else { panic!("an argument has a name") };
        let name = name.ident.to_string();
        // The shell would call it otherwise on the screens' side.
        assert!(!name.contains('_'), "{name} is of two words");
        Argument { name, kind: written(&given.ty) }
    };
    let given = item.sig.inputs.iter().map(one);
    given.filter(|one| !OF_THE_SHELL.iter().any(|own| one.kind.starts_with(own))).collect()
}

/// A type as it is written, without its path.
fn written(kind: &Type) -> String {
    let Type::Path(path) = kind else { panic!("an argument is of a named type") };
    let last = path.path.segments.last().expect("a name");
    let name = last.ident.to_string();
    let PathArguments::AngleBracketed(inner) = &last.arguments else { return name };
    let inner = inner.args.iter().filter_map(|one| match one {
        GenericArgument::Type(kind) => Some(written(kind)),
        _ => None,
    });
    let inner: Vec<String> = inner.collect();
    if inner.is_empty() { name } else { format!("{name}<{}>", inner.join(", ")) }
}
