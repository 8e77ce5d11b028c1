//! The paths that a Rust file writes, and the modules of its own crate that it uses by them: by `use`, by a path, and inside macros.

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

/// A path as a file writes it.
#[derive(Debug)]
pub struct Written {
    /// The line it stands on.
    pub line: usize,
    /// From where the path counts.
    pub from: From,
    /// Its parts, without `crate` and `super`. Of a path by `super` that ends below the top of the crate,
    /// all parts from the top.
    pub parts: Vec<String>,
}

/// From where a path counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum From {
    /// It is said from the top of the crate, by `crate` or by enough `super`.
    Top,
    /// It is said by `super`, and ends below the top.
    Above,
    /// It begins with a name.
    Name,
}

/// What a file uses of its own crate. `module` is the file's own path of modules.
///
/// # Panics
/// When the file is no Rust.
pub fn imports(path: &str, module: &[String], text: &str) -> Vec<Import> {
    let mut found = Vec::new();
    for Written { line, from, parts } in paths(path, module, text) {
        if let (From::Top, Some(module)) = (from, parts.into_iter().next()) {
            let import = Import { line, module };
            // One line that uses several things of one module is one import.
            if !found.contains(&import) {
                found.push(import);
            }
        }
    }
    found
}

/// Every path of a file. `module` is the file's own path of modules.
///
/// # Panics
/// When the file is no Rust.
pub fn paths(path: &str, module: &[String], text: &str) -> Vec<Written> {
    let file = syn::parse_file(text).unwrap_or_else(|error| panic!("{path}: {error}"));
    let mut uses = Uses { module: module.to_vec(), found: Vec::new() };
    uses.visit_file(&file);
    uses.found
}

struct Uses {
    /// The modules around what is looked at, from the top of the crate.
    module: Vec<String>,
    found: Vec<Written>,
}

impl Uses {
    fn keep(&mut self, line: usize, segments: &[String]) {
        let supers = segments.iter().take_while(|segment| *segment == "super").count();
        let (from, parts) = match segments.first().map(String::as_str) {
            None => return,
            Some("crate") => (From::Top, segments[1..].to_vec()),
            Some("super") if supers >= self.module.len() => {
                (From::Top, segments[supers..].to_vec())
            }
            Some("super") => {
                let above = &self.module[..self.module.len() - supers];
                (From::Above, [above, &segments[supers..]].concat())
            }
            Some(_) => (From::Name, segments.to_vec()),
        };
        self.found.push(Written { line, from, parts });
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
        self.module.push(module.ident.to_string());
        visit::visit_item_mod(self, module);
        self.module.pop();
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
