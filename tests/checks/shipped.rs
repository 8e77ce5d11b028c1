//! The part of a Rust file that ships: everything but its tests.

use syn::{Attribute, File, ImplItem, Item};

/// Whether a whole file is test code, by its path.
pub fn is_test_file(path: &str) -> bool {
    path.ends_with("/tests.rs") || path.split('/').any(|part| part == "tests" || part == "benches")
}

/// Parses a file and leaves its tests out.
///
/// # Panics
/// When the file is no Rust: a file that cannot be read must not pass as one without findings.
pub fn shipped(path: &str, text: &str) -> File {
    let mut file = syn::parse_file(text).unwrap_or_else(|error| panic!("{path}: {error}"));
    file.items = without_tests(file.items);
    file
}

fn without_tests(items: Vec<Item>) -> Vec<Item> {
    let mut kept: Vec<Item> =
        items.into_iter().filter(|item| !is_for_tests(attributes(item))).collect();
    for item in &mut kept {
        match item {
            Item::Mod(module) => {
                if let Some((_, inner)) = &mut module.content {
                    *inner = without_tests(std::mem::take(inner));
                }
            }
            Item::Impl(block) => block.items.retain(
                |item| !matches!(item, ImplItem::Fn(method) if is_for_tests(&method.attrs)),
            ),
            _ => {}
        }
    }
    kept
}

fn attributes(item: &Item) -> &[Attribute] {
    match item {
        Item::Const(item) => &item.attrs,
        Item::Enum(item) => &item.attrs,
        Item::Fn(item) => &item.attrs,
        Item::Impl(item) => &item.attrs,
        Item::Macro(item) => &item.attrs,
        Item::Mod(item) => &item.attrs,
        Item::Static(item) => &item.attrs,
        Item::Struct(item) => &item.attrs,
        Item::Trait(item) => &item.attrs,
        Item::Use(item) => &item.attrs,
        // Whatever else carries `cfg(test)` is looked at as if it shipped: too strict, never too kind.
        _ => &[],
    }
}

/// Whether an item is there for tests only: `#[test]`, `#[cfg(test)]`, `#[cfg(all(test, …))]`.
fn is_for_tests(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        if attribute.path().is_ident("test") {
            return true;
        }
        let Ok(condition) = attribute.parse_args::<proc_macro2::TokenStream>() else {
            return false;
        };
        let condition = condition.to_string().replace(' ', "");
        attribute.path().is_ident("cfg")
            && (condition == "test" || condition.starts_with("all(test,"))
    })
}
