//! The messages that Rust code names: by literals, by patterns it fills in, and with what arguments.

use std::collections::BTreeSet;

use syn::punctuated::Punctuated;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{Attribute, Expr, ExprCall, ExprMethodCall, Lit, Macro, Token};

use super::shipped::shipped;

/// A message built in one expression: `Message::new("…").text("…", …)`.
#[derive(Debug)]
pub struct Built {
    /// The id.
    pub id: String,
    /// The placeholders that are filled.
    pub names: BTreeSet<String>,
    /// The line it starts on.
    pub line: usize,
}

/// Whether a text has the form of a message's id: small letters and digits in parts joined by hyphens.
pub fn is_id(text: &str) -> bool {
    let is_part = |part: &str| {
        let fits = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
        !part.is_empty() && part.chars().all(fits)
    };
    text.contains('-')
        && text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.split('-').all(is_part)
}

/// A text with placeholders in the form of an id, each placeholder as `{}`; nothing for other texts.
pub fn pattern(text: &str) -> Option<String> {
    let mut plain = String::new();
    let mut depth = 0;
    for c in text.chars() {
        match c {
            '{' => depth += 1,
            '}' if depth == 1 => {
                plain.push_str("{}");
                depth = 0;
            }
            c if depth == 0 => plain.push(c),
            _ => {}
        }
    }
    let looks_like_one = plain.contains("{}") && is_id(&plain.replace("{}", "x"));
    (looks_like_one && plain.starts_with(|c: char| c.is_ascii_lowercase())).then_some(plain)
}

/// The messages a file builds from a literal id, in the part that ships.
pub fn built(path: &str, text: &str) -> Vec<Built> {
    let mut found = Found(Vec::new());
    found.visit_file(&shipped(path, text));
    found.0
}

struct Found(Vec<Built>);

/// The id in `Message::new("…")`.
fn new_message(call: &ExprCall) -> Option<String> {
    let Expr::Path(function) = &*call.func else {
        return None;
    };
    let mut segments = function.path.segments.iter().rev();
    let is_new = segments.next()?.ident == "new" && segments.next()?.ident == "Message";
    literal(call.args.first().filter(|_| is_new)?)
}

fn literal(expression: &Expr) -> Option<String> {
    match expression {
        Expr::Lit(literal) => match &literal.lit {
            Lit::Str(text) => Some(text.value()),
            _ => None,
        },
        _ => None,
    }
}

impl<'ast> Visit<'ast> for Found {
    fn visit_attribute(&mut self, _: &'ast Attribute) {}

    fn visit_expr_method_call(&mut self, outermost: &'ast ExprMethodCall) {
        let mut names = BTreeSet::new();
        let mut call = outermost;
        let root = loop {
            if !["text", "message", "list", "count"].iter().any(|name| call.method == *name) {
                return visit::visit_expr_method_call(self, outermost);
            }
            names.extend(call.args.first().and_then(literal));
            match &*call.receiver {
                Expr::MethodCall(inner) => call = inner,
                Expr::Call(root) => break root,
                _ => return visit::visit_expr_method_call(self, outermost),
            }
        };
        let Some(id) = new_message(root) else {
            return visit::visit_expr_method_call(self, outermost);
        };
        self.0.push(Built { id, names, line: root.span().start().line });
        let mut call = outermost;
        loop {
            call.args.iter().for_each(|argument| self.visit_expr(argument));
            let Expr::MethodCall(inner) = &*call.receiver else {
                break;
            };
            call = inner;
        }
    }

    fn visit_expr_call(&mut self, call: &'ast ExprCall) {
        if let Some(id) = new_message(call) {
            let line = call.span().start().line;
            self.0.push(Built { id, names: BTreeSet::new(), line });
        }
        visit::visit_expr_call(self, call);
    }

    fn visit_macro(&mut self, call: &'ast Macro) {
        let arguments = call.parse_body_with(Punctuated::<Expr, Token![,]>::parse_terminated);
        // A macro whose body is no list of expressions builds no message in this project.
        for argument in arguments.iter().flatten() {
            let mut inner = Found(Vec::new());
            inner.visit_expr(argument);
            self.0.append(&mut inner.0);
        }
    }
}

#[test]
fn ids_and_patterns_are_told_from_other_texts() {
    for id in ["takes-one-of", "near_pin-a", "a-1"] {
        assert!(is_id(id), "{id}");
    }
    for other in ["plug", "A-b", "one-way plug", "-near-leg", "a-", "--"] {
        assert!(!is_id(other), "{other}");
    }
    assert_eq!(pattern("reason-{stem}{suffix}").as_deref(), Some("reason-{}{}"));
    assert_eq!(pattern("class-{}-inline").as_deref(), Some("class-{}-inline"));
    for other in ["{}-{}", "values.{}", "{a} - {b}", "takes-one-of"] {
        assert_eq!(pattern(other), None, "{other}");
    }
}

#[test]
fn built_messages_are_found_with_what_fills_them() {
    let text = r#"
        fn a() -> Vec<Message> {
            vec![Message::new("a-a").text("x", 1).message("y", Message::new("b-b").list("z", c()))]
        }
        fn b() { if x { words::Message::new("c-c") } else { Message::new(d) }; }
        #[cfg(test)]
        mod tests { fn c() { Message::new("e-e"); } }
    "#;
    let found = built("planted.rs", text);
    let found: Vec<String> = found
        .iter()
        .map(|m| format!("{} {}", m.id, m.names.iter().cloned().collect::<Vec<_>>().join(" ")))
        .collect();
    assert_eq!(found, ["a-a x y", "b-b z", "c-c "]);
}
