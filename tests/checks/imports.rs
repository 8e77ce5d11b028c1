//! The modules of its own crate that a Rust file uses: by `use`, by a path, and inside macros.

use proc_macro2::{TokenStream, TokenTree};
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{Attribute, ItemMod, ItemUse, Macro, Path, UseTree};

/// A module at the top of the crate that a file uses.
#[derive(Debug, PartialEq, Eq)]
pub struct Import {
    /// The line it stands on.
    pub line: usize,
    /// The module's name; `*` for all of them.
    pub module: String,
}

/// What a file uses of its own crate. `module` is the file's own path of modules.
///
/// # Panics
/// When the file is no Rust.
pub fn imports(path: &str, module: &[String], text: &str) -> Vec<Import> {
    let file = syn::parse_file(text).unwrap_or_else(|error| panic!("{path}: {error}"));
    let mut uses = Uses { depth: module.len(), found: Vec::new() };
    uses.visit_file(&file);
    uses.found
}

struct Uses {
    /// How many `super` lead to the top of the crate.
    depth: usize,
    found: Vec<Import>,
}

impl Uses {
    /// Keeps a path if it leads to the top of the crate and on to a module.
    fn keep(&mut self, line: usize, segments: &[String]) {
        let supers = segments.iter().take_while(|segment| *segment == "super").count();
        let start = match segments.first().map(String::as_str) {
            Some("crate") => 1,
            Some("super") if supers == self.depth => supers,
            _ => return,
        };
        if let Some(module) = segments.get(start) {
            let import = Import { line, module: module.clone() };
            // One line that uses several things of one module is one import.
            if !self.found.contains(&import) {
                self.found.push(import);
            }
        }
    }

    fn follow(&mut self, tree: &UseTree, before: &mut Vec<String>) {
        match tree {
            UseTree::Path(path) => {
                before.push(path.ident.to_string());
                self.follow(&path.tree, before);
                before.pop();
            }
            UseTree::Group(group) => {
                for tree in &group.items {
                    self.follow(tree, before);
                }
            }
            UseTree::Name(name) => self.keep_end(tree, before, name.ident.to_string()),
            UseTree::Rename(name) => self.keep_end(tree, before, name.ident.to_string()),
            UseTree::Glob(_) => self.keep_end(tree, before, "*".to_owned()),
        }
    }

    fn keep_end(&mut self, tree: &UseTree, before: &[String], end: String) {
        let segments: Vec<String> = before.iter().cloned().chain([end]).collect();
        let line = tree.span().start().line;
        self.keep(line, &segments);
    }

    /// Macros are not parsed, so paths are put together from their tokens.
    fn look_through(&mut self, tokens: TokenStream) {
        let (mut segments, mut line, mut colons) = (Vec::new(), 0, 0);
        for token in tokens {
            match token {
                TokenTree::Punct(mark) if mark.as_char() == ':' => colons += 1,
                TokenTree::Ident(word) => {
                    if colons != 2 {
                        self.keep(line, &std::mem::take(&mut segments));
                    }
                    if segments.is_empty() {
                        line = word.span().start().line;
                    }
                    segments.push(word.to_string());
                    colons = 0;
                }
                other => {
                    self.keep(line, &std::mem::take(&mut segments));
                    colons = 0;
                    if let TokenTree::Group(group) = other {
                        self.look_through(group.stream());
                    }
                }
            }
        }
        self.keep(line, &segments);
    }
}

impl<'ast> Visit<'ast> for Uses {
    fn visit_attribute(&mut self, _: &'ast Attribute) {}

    fn visit_item_mod(&mut self, module: &'ast ItemMod) {
        self.depth += 1;
        visit::visit_item_mod(self, module);
        self.depth -= 1;
    }

    fn visit_item_use(&mut self, item: &'ast ItemUse) {
        self.follow(&item.tree, &mut Vec::new());
    }

    fn visit_path(&mut self, path: &'ast Path) {
        let segments: Vec<String> =
            path.segments.iter().map(|segment| segment.ident.to_string()).collect();
        self.keep(path.span().start().line, &segments);
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, call: &'ast Macro) {
        self.visit_path(&call.path);
        self.look_through(call.tokens.clone());
    }
}
