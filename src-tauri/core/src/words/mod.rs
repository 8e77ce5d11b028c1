//! Turns message ids with arguments into sentences a person can read.
//!
//! No other module holds a sentence: they name a [`Message`], and [`Words`] finds its text in the
//! Fluent files of the chosen language, in English where that language lacks it.

mod isolate;
mod quantity;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use include_dir::{Dir, File, include_dir};
use serde::Serialize;
use unic_langid::LanguageIdentifier;

pub use isolate::isolated;
pub use quantity::{
    Quantity, TRACE_MA, amperes, coulombs, farads, heater_volts, hertz, joules, milliamperes,
    millimetres, milliwatts, number, ohms, percent, potential, ratio, seconds, square_millimetres,
    tenths, volt_amperes, volts, watts, whole_percent,
};

static FILES: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/words");

/// Where a screen may break a word.
const SOFT_HYPHEN: char = '\u{ad}';

/// The language every message has.
const FIRST_LANGUAGE: &str = "en";

/// What stands in a message's placeholder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
#[serde(rename_all = "snake_case", tag = "kind", content = "value")]
pub enum Argument {
    /// Text that stays as it is: what a person typed, an id, a whole number. What would turn round the words beside it
    /// is kept apart from them.
    Text(String),
    /// A figure with its unit, with a point for its decimal mark until a language gives it its own.
    Figure(#[ts(type = "string")] Quantity),
    /// How many there are, which also decides between one and more.
    Count(#[ts(type = "number")] u64),
    /// Another message, put into words first.
    Message(Message),
    /// Several messages, put into words and joined as a list.
    List(Vec<Message>),
}

impl From<String> for Argument {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<&str> for Argument {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<usize> for Argument {
    fn from(count: usize) -> Self {
        Self::Count(count as u64)
    }
}

impl From<Quantity> for Argument {
    fn from(figure: Quantity) -> Self {
        Self::Figure(figure)
    }
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

    /// Puts text that stays as it is, or a figure, into a placeholder.
    #[must_use]
    pub fn text(mut self, name: &str, value: impl Into<Argument>) -> Self {
        self.arguments.push((name.to_owned(), value.into()));
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

    /// Puts a number of things into a placeholder.
    #[must_use]
    pub fn count(mut self, name: &str, value: u64) -> Self {
        self.arguments.push((name.to_owned(), Argument::Count(value)));
        self
    }
}

/// The messages of one language, English behind it.
pub struct Words {
    bundles: Vec<FluentBundle<FluentResource>>,
    decimal_mark: String,
}

impl Words {
    /// The words of a locale such as `en`, `de-AT` or `de_DE.UTF-8`; English where there is no such
    /// language. The country says only what the device in the outlet that ends a shock is called there.
    pub fn of(locale: &str) -> Self {
        let tag = locale.split(['.', '@']).next().unwrap_or_default();
        let mut subtags = tag.split(['-', '_']).map(str::to_ascii_lowercase);
        let language = subtags.next().unwrap_or_default();
        let guard = subtags.find_map(|country| guard_in(&country));
        let mut languages = vec![language.as_str()];
        if language != FIRST_LANGUAGE {
            languages.push(FIRST_LANGUAGE);
        }
        let bundles = languages.into_iter().filter_map(|one| bundle(one, guard)).collect();
        let mut words = Self { bundles, decimal_mark: String::new() };
        words.decimal_mark = words.say_id("decimal-mark");
        words
    }

    /// The language that is spoken, as in the `lang` of a document: `en` where the locale has none.
    pub fn language(&self) -> String {
        let first = self.bundles.first().and_then(|bundle| bundle.locales.first());
        first.map_or_else(|| FIRST_LANGUAGE.to_owned(), |locale| locale.language.to_string())
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
            match value {
                Argument::Count(count) => arguments.set(name.as_str(), FluentValue::from(*count)),
                other => arguments.set(name.as_str(), self.argument(other)),
            }
        }
        // What is missing shows as its placeholder's name in the text.
        let mut missing = Vec::new();
        let text = bundle.format_pattern(pattern, Some(&arguments), &mut missing);
        // Screens break long words at soft hyphens; a terminal, a page and a search know nothing of them.
        Some(text.replace(SOFT_HYPHEN, ""))
    }

    /// A figure with the decimal mark of the language.
    pub fn write(&self, figure: &Quantity) -> String {
        figure.marked(&self.decimal_mark)
    }

    /// What stands between the whole and its parts in a figure.
    pub fn decimal_mark(&self) -> &str {
        &self.decimal_mark
    }

    fn argument(&self, value: &Argument) -> String {
        match value {
            Argument::Text(text) => isolated(text).into_owned(),
            Argument::Figure(figure) => self.write(figure),
            Argument::Message(message) => self.say(message),
            Argument::List(messages) => self.join(messages),
            Argument::Count(count) => count.to_string(),
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

/// What ends a shock in the outlets of a country, by the name of the file with its words; nothing of a
/// country that is not known, and both are named then.
fn guard_in(country: &str) -> Option<&'static str> {
    match country {
        "us" | "ca" => Some("gfci"),
        "at" | "au" | "ch" | "de" | "eu" | "gb" | "ie" | "jp" | "nz" => Some("rcd"),
        _ => None,
    }
}

fn bundle(language: &str, guard: Option<&str>) -> Option<FluentBundle<FluentResource>> {
    let identifier: LanguageIdentifier = language.parse().ok()?;
    let mut bundle = FluentBundle::new_concurrent(vec![identifier]);
    // Isolation marks are right for mixed scripts but print as boxes in a terminal and on labels.
    bundle.set_use_isolating(false);
    for file in FILES.get_dir(language)?.files() {
        // The first of two messages with one id stays, and a test refuses the second.
        let _ = bundle.add_resource(resource(file)?);
    }
    let path = guard.map(|guard| format!("{language}/guards/{guard}.ftl"));
    if let Some(file) = path.and_then(|path| FILES.get_file(path)) {
        bundle.add_resource_overriding(resource(file)?);
    }
    Some(bundle)
}

/// A file with a mistake still gives its good messages; a test refuses such a file.
fn resource(file: &File<'_>) -> Option<FluentResource> {
    let (Ok(read) | Err((read, _))) = FluentResource::try_new(file.contents_utf8()?.to_owned());
    Some(read)
}

#[cfg(test)]
mod tests;
