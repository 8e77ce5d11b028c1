//! The messages of the English Fluent files: their ids, and the variables each of them uses.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{
    CallArguments, Entry, Expression, InlineExpression, Pattern, PatternElement,
};
use fluent_syntax::parser::parse;

/// What one message or term uses.
#[derive(Clone, Debug, Default)]
struct Uses {
    variables: BTreeSet<String>,
    /// Other messages by id, terms by id with a hyphen in front.
    others: BTreeSet<String>,
}

/// The messages and terms of a language.
#[derive(Debug, Default)]
pub struct English {
    entries: BTreeMap<String, Uses>,
}

impl English {
    /// Reads files.
    ///
    /// # Panics
    /// When one of them has a mistake.
    pub fn of<'a>(texts: impl IntoIterator<Item = &'a str>) -> Self {
        let mut english = Self::default();
        for text in texts {
            let resource = parse(text).unwrap_or_else(|(_, errors)| panic!("{errors:?}"));
            for entry in resource.body {
                let (id, pattern) = match entry {
                    Entry::Message(message) => (message.id.name.to_owned(), message.value),
                    Entry::Term(term) => (format!("-{}", term.id.name), Some(term.value)),
                    _ => continue,
                };
                let mut uses = Uses::default();
                if let Some(pattern) = &pattern {
                    uses.of_pattern(pattern);
                }
                english.entries.insert(id, uses);
            }
        }
        english
    }

    /// Whether there is such a message.
    pub fn has(&self, id: &str) -> bool {
        self.entries.contains_key(id)
    }

    /// The ids of all messages; terms have none that code can name.
    pub fn ids(&self) -> impl Iterator<Item = &str> {
        self.entries.keys().map(String::as_str).filter(|id| !id.starts_with('-'))
    }

    /// The variables that a message needs, those of the messages inside it too.
    pub fn variables(&self, id: &str) -> BTreeSet<String> {
        let mut needed = BTreeSet::new();
        let (mut open, mut seen) = (vec![id.to_owned()], BTreeSet::new());
        while let Some(id) = open.pop() {
            // A term gets no variables but those passed to it, and none are.
            if let Some(uses) = self.entries.get(&id).filter(|_| seen.insert(id.clone())) {
                needed.extend(uses.variables.iter().cloned());
                open.extend(uses.others.iter().cloned());
            }
        }
        needed
    }

    /// The messages that stand inside others.
    pub fn inside_others(&self) -> BTreeSet<&str> {
        self.entries.values().flat_map(|uses| uses.others.iter().map(String::as_str)).collect()
    }
}

impl Uses {
    fn of_pattern(&mut self, pattern: &Pattern<&str>) {
        for element in &pattern.elements {
            if let PatternElement::Placeable { expression } = element {
                self.of_expression(expression);
            }
        }
    }

    fn of_expression(&mut self, expression: &Expression<&str>) {
        match expression {
            Expression::Inline(inline) => self.of_inline(inline),
            Expression::Select { selector, variants } => {
                self.of_inline(selector);
                for variant in variants {
                    self.of_pattern(&variant.value);
                }
            }
        }
    }

    fn of_inline(&mut self, inline: &InlineExpression<&str>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.variables.insert(id.name.to_owned());
            }
            InlineExpression::MessageReference { id, .. } => {
                self.others.insert(id.name.to_owned());
            }
            InlineExpression::TermReference { id, arguments, .. } => {
                self.others.insert(format!("-{}", id.name));
                arguments.iter().for_each(|arguments| self.of_arguments(arguments));
            }
            InlineExpression::FunctionReference { arguments, .. } => self.of_arguments(arguments),
            InlineExpression::Placeable { expression } => self.of_expression(expression),
            InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
        }
    }

    fn of_arguments(&mut self, arguments: &CallArguments<&str>) {
        arguments.positional.iter().for_each(|argument| self.of_inline(argument));
        arguments.named.iter().for_each(|argument| self.of_inline(&argument.value));
    }
}

#[test]
fn variables_are_found_wherever_a_message_hides_them() {
    let english = English::of([
        "-term = a term\nplain = { -term }\none = { $a } and { two }\n",
        "two = { $b ->\n    [x] { $c }\n   *[other] { \"text\" }\n}\nlost = { no-such }\n",
    ]);
    let variables = |id: &str| english.variables(id).into_iter().collect::<Vec<_>>().join(" ");
    assert_eq!(variables("one"), "a b c");
    assert_eq!(variables("plain"), "");
    assert_eq!(english.ids().collect::<Vec<_>>(), ["lost", "one", "plain", "two"]);
    let lost: Vec<&str> =
        english.inside_others().into_iter().filter(|id| !english.has(id)).collect();
    assert_eq!(lost, ["no-such"]);
}
