//! The string literals in the part of a Rust file that ships, those inside macros too.
//!
//! Attributes are left out, and with them doc comments: both are for developers.

use proc_macro2::{Delimiter, TokenStream, TokenTree};
use syn::visit::{self, Visit};
use syn::{Attribute, Lit, Macro};

use super::shipped::shipped;

/// A string literal, with its escapes resolved.
pub struct Literal {
    /// What it stands for.
    pub text: String,
    /// The line it starts on.
    pub line: usize,
}

/// The string, byte string and C string literals of a file.
pub fn literals(path: &str, text: &str) -> Vec<Literal> {
    let mut found = Found(Vec::new());
    found.visit_file(&shipped(path, text));
    found.0
}

struct Found(Vec<Literal>);

impl Found {
    fn keep(&mut self, literal: &Lit) {
        let text = match literal {
            Lit::Str(text) => text.value(),
            Lit::ByteStr(bytes) => String::from_utf8_lossy(&bytes.value()).into_owned(),
            Lit::CStr(text) => text.value().to_string_lossy().into_owned(),
            _ => return,
        };
        self.0.push(Literal { text, line: literal.span().start().line });
    }

    /// Macros are not parsed, so their tokens are looked through one by one.
    fn look_through(&mut self, tokens: TokenStream) {
        let mut tokens = tokens.into_iter().peekable();
        while let Some(token) = tokens.next() {
            match token {
                TokenTree::Literal(literal) => self.keep(&Lit::new(literal)),
                TokenTree::Group(group) => self.look_through(group.stream()),
                TokenTree::Punct(mark) if mark.as_char() == '#' => {
                    tokens.next_if(
                        |next| matches!(next, TokenTree::Punct(mark) if mark.as_char() == '!'),
                    );
                    tokens.next_if(is_bracketed);
                }
                TokenTree::Punct(_) | TokenTree::Ident(_) => {}
            }
        }
    }
}

fn is_bracketed(token: &TokenTree) -> bool {
    matches!(token, TokenTree::Group(group) if group.delimiter() == Delimiter::Bracket)
}

impl<'ast> Visit<'ast> for Found {
    fn visit_attribute(&mut self, _: &'ast Attribute) {}

    fn visit_lit(&mut self, literal: &'ast Lit) {
        self.keep(literal);
        visit::visit_lit(self, literal);
    }

    fn visit_macro(&mut self, call: &'ast Macro) {
        self.look_through(call.tokens.clone());
    }
}
