//! Turns message ids with arguments into sentences a person can read.
//!
//! No other module holds a sentence: they name a [`Message`], and [`Words`] finds its text in the
//! Fluent files of the chosen language, in English where that language lacks it.

mod quantity;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use include_dir::{Dir, include_dir};
use serde::Serialize;
use unic_langid::LanguageIdentifier;

pub use quantity::{
    TRACE_MA, amperes, coulombs, farads, heater_volts, hertz, joules, milliamperes, millimetres,
    milliwatts, ohms, percent, potential, ratio, seconds, volts, watts,
};

static FILES: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/words");

/// The language every message has.
const FIRST_LANGUAGE: &str = "en";

/// What stands in a message's placeholder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case", tag = "kind", content = "value")]
pub enum Argument {
    /// Text that stays as it is: what a person typed, an id, a figure with its unit.
    Text(String),
    /// Another message, put into words first.
    Message(Message),
    /// Several messages, put into words and joined as a list.
    List(Vec<Message>),
}

/// A sentence before it has a language: the id of a message and what stands in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct Message {
    /// The id in the Fluent files.
    pub id: String,
    /// What stands in the placeholders, by name.
    pub arguments: Vec<(String, Argument)>,
}

impl Message {
    /// A message without placeholders.
    pub fn new(id: impl Into<String>) -> Self {
        Self { id: id.into(), arguments: Vec::new() }
    }

    /// Puts text that stays as it is into a placeholder.
    #[must_use]
    pub fn text(mut self, name: &str, value: impl Into<String>) -> Self {
        self.arguments.push((name.to_owned(), Argument::Text(value.into())));
        self
    }

    /// Puts another message into a placeholder.
    #[must_use]
    pub fn message(mut self, name: &str, value: Self) -> Self {
        self.arguments.push((name.to_owned(), Argument::Message(value)));
        self
    }

    /// Puts a list of messages into a placeholder.
    #[must_use]
    pub fn list(mut self, name: &str, values: Vec<Self>) -> Self {
        self.arguments.push((name.to_owned(), Argument::List(values)));
        self
    }
}

/// The messages of one language, English behind it.
pub struct Words {
    bundles: Vec<FluentBundle<FluentResource>>,
}

impl Words {
    /// The words of a language such as `en` or `de`; English where there is no such language.
    pub fn of(locale: &str) -> Self {
        let language = locale.split(['-', '_']).next().unwrap_or(FIRST_LANGUAGE);
        let mut languages = vec![language];
        if language != FIRST_LANGUAGE {
            languages.push(FIRST_LANGUAGE);
        }
        Self { bundles: languages.into_iter().filter_map(bundle).collect() }
    }

    /// The languages that have words.
    pub fn languages() -> Vec<String> {
        FILES.dirs().map(|dir| dir.path().to_string_lossy().into_owned()).collect()
    }

    /// Whether some language in use has this message.
    pub fn has(&self, id: &str) -> bool {
        self.bundles.iter().any(|bundle| bundle.has_message(id))
    }

    /// The sentence; the id itself where no language has the message, so that nothing is hidden.
    pub fn say(&self, message: &Message) -> String {
        self.find(message).unwrap_or_else(|| message.id.clone())
    }

    /// The sentence of a message without placeholders.
    pub fn say_id(&self, id: &str) -> String {
        self.say(&Message::new(id))
    }

    /// The sentence, or nothing where no language has the message.
    pub fn find(&self, message: &Message) -> Option<String> {
        let bundle = self.bundles.iter().find(|bundle| bundle.has_message(&message.id))?;
        let pattern = bundle.get_message(&message.id)?.value()?;
        let mut arguments = FluentArgs::new();
        for (name, value) in &message.arguments {
            arguments.set(name.as_str(), self.argument(value));
        }
        // What is missing shows as its placeholder's name in the text.
        let mut missing = Vec::new();
        Some(bundle.format_pattern(pattern, Some(&arguments), &mut missing).into_owned())
    }

    fn argument(&self, value: &Argument) -> String {
        match value {
            Argument::Text(text) => text.clone(),
            Argument::Message(message) => self.say(message),
            Argument::List(messages) => self.join(messages),
        }
    }

    fn join(&self, messages: &[Message]) -> String {
        let mut spoken: Vec<String> = messages.iter().map(|message| self.say(message)).collect();
        let Some(last) = spoken.pop() else { return String::new() };
        let join = |id: &str, list: String, next: String| {
            self.say(&Message::new(id).text("list", list).text("next", next))
        };
        match spoken.into_iter().reduce(|list, next| join("list-pair", list, next)) {
            None => last,
            Some(list) => join("list-last", list, last),
        }
    }
}

fn bundle(language: &str) -> Option<FluentBundle<FluentResource>> {
    let identifier: LanguageIdentifier = language.parse().ok()?;
    let mut bundle = FluentBundle::new_concurrent(vec![identifier]);
    // Isolation marks are right for mixed scripts but print as boxes in a terminal and on labels.
    bundle.set_use_isolating(false);
    for file in FILES.get_dir(language)?.files() {
        // A file with a mistake still gives its good messages; a test refuses such a file.
        let resource = match FluentResource::try_new(file.contents_utf8()?.to_owned()) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        // Likewise the first of two messages with one id stays, and a test refuses the second.
        let _ = bundle.add_resource(resource);
    }
    Some(bundle)
}

#[cfg(test)]
mod tests;
