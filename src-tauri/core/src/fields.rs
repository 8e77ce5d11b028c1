//! Reads a JSON object field by field, so that bad input is refused by the name of its field.
//!
//! Every key must be taken before [`Fields::finish`]; what is left over is an unknown key. An error
//! names the dotted path and says what the field takes.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use serde_json::Value;

use crate::words::{Message, number};

/// Bad input: which field, and a message that says what it takes.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{field}: {}", .message.id)]
pub struct FieldError {
    /// The dotted path of the field, such as `answers.plug`.
    pub field: String,
    /// What the field takes.
    pub message: Message,
}

impl FieldError {
    /// An error about a field, with the message that says what it takes.
    pub fn new(field: impl Into<String>, message: Message) -> Self {
        Self { field: field.into(), message }
    }

    /// The field takes one of a few ids.
    pub fn one_of(field: impl Into<String>, ids: &[&str]) -> Self {
        Self::new(field, Message::new("takes-one-of").text("ids", ids.join(", ")))
    }
}

/// Declares a closed set of ids: an enum with its ids, in the order of the design.
///
/// The ids are a contract with scripts and stored findings, so they are written out.
macro_rules! id_enum {
    ($(#[$meta:meta])* $vis:vis enum $name:ident { $($(#[$vmeta:meta])* $variant:ident = $id:literal),+ $(,)? }) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, ts_rs::TS)]
        $vis enum $name {
            $($(#[$vmeta])* #[serde(rename = $id)] $variant),+
        }

        impl $name {
            /// Every value, in the order of the design.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// Every id, in the same order.
            pub const IDS: &'static [&'static str] = &[$($id),+];

            /// The id of this value.
            pub const fn id(self) -> &'static str {
                match self { $(Self::$variant => $id),+ }
            }

            /// The value with this id.
            pub fn of(id: &str) -> Option<Self> {
                match id { $($id => Some(Self::$variant),)+ _ => None }
            }
        }
    };
}
pub(crate) use id_enum;

/// The keys of one JSON object that have not been read yet.
pub struct Fields {
    path: String,
    left: BTreeMap<String, Value>,
}

impl Fields {
    /// The fields of an object found at `path` (empty for the file itself).
    pub fn of(value: Value, path: &str) -> Result<Self, FieldError> {
        match value {
            Value::Object(map) => {
                Ok(Self { path: path.to_owned(), left: map.into_iter().collect() })
            }
            _ => Err(FieldError::new(name_or_file(path), Message::new("takes-an-object"))),
        }
    }

    /// The dotted path of a key of this object.
    pub fn path(&self, key: &str) -> String {
        if self.path.is_empty() { key.to_owned() } else { format!("{}.{key}", self.path) }
    }

    /// Takes a key's value if the object has it.
    pub fn take(&mut self, key: &str) -> Option<Value> {
        self.left.remove(key)
    }

    /// Takes an object's fields if the key is there.
    pub fn object(&mut self, key: &str) -> Result<Option<Fields>, FieldError> {
        let path = self.path(key);
        self.take(key).map(|value| Fields::of(value, &path)).transpose()
    }

    /// Takes a number within a range, both ends included, if the key is there.
    pub fn number(
        &mut self,
        key: &str,
        range: RangeInclusive<f64>,
    ) -> Result<Option<f64>, FieldError> {
        let Some(value) = self.take(key) else {
            return Ok(None);
        };
        match value.as_f64() {
            Some(number) if range.contains(&number) => Ok(Some(number)),
            _ => Err(FieldError::new(self.path(key), number_range(&range))),
        }
    }

    /// Takes a number that is above zero and below a bound, if the key is there.
    pub fn positive_below(&mut self, key: &str, bound: f64) -> Result<Option<f64>, FieldError> {
        let Some(value) = self.take(key) else {
            return Ok(None);
        };
        match value.as_f64() {
            Some(number) if number > 0.0 && number < bound => Ok(Some(number)),
            _ => Err(FieldError::new(
                self.path(key),
                Message::new("takes-positive-below").text("bound", number(bound)),
            )),
        }
    }

    /// Takes `true` or `false` if the key is there.
    pub fn flag(&mut self, key: &str) -> Result<Option<bool>, FieldError> {
        match self.take(key) {
            None => Ok(None),
            Some(Value::Bool(flag)) => Ok(Some(flag)),
            Some(_) => Err(FieldError::new(self.path(key), Message::new("takes-true-or-false"))),
        }
    }

    /// Takes one of a few ids if the key is there.
    pub fn id<T>(
        &mut self,
        key: &str,
        ids: &[&str],
        of: impl Fn(&str) -> Option<T>,
    ) -> Result<Option<T>, FieldError> {
        let Some(value) = self.take(key) else {
            return Ok(None);
        };
        match value.as_str().and_then(of) {
            Some(found) => Ok(Some(found)),
            None => Err(FieldError::one_of(self.path(key), ids)),
        }
    }

    /// Says that a field that must be there is missing.
    pub fn required<T>(&self, key: &str, value: Option<T>) -> Result<T, FieldError> {
        value.ok_or_else(|| FieldError::new(self.path(key), Message::new("takes-required")))
    }

    /// The keys that are left, to be read one by one.
    pub fn rest(self) -> (String, BTreeMap<String, Value>) {
        (self.path, self.left)
    }

    /// Refuses what was not read: an unknown key.
    pub fn finish(self, known: &[&str]) -> Result<(), FieldError> {
        match self.left.keys().next() {
            None => Ok(()),
            Some(key) => Err(FieldError::new(
                self.path(key),
                Message::new("takes-known-keys").text("keys", known.join(", ")),
            )),
        }
    }
}

/// Says what range a number may have.
pub fn number_range(range: &RangeInclusive<f64>) -> Message {
    Message::new("takes-number-from-to")
        .text("low", number(*range.start()))
        .text("high", number(*range.end()))
}

/// The name of a field, or of the whole file where the path is empty.
fn name_or_file(path: &str) -> &str {
    if path.is_empty() { "file" } else { path }
}

/// Reads one JSON text, refusing broken JSON and a key that stands twice.
///
/// Two answers to one question in one file must not be settled by which comes last.
pub fn parse(text: &[u8]) -> Result<Value, FieldError> {
    let text = std::str::from_utf8(text)
        .map_err(|_| FieldError::new("file", Message::new("takes-utf8")))?;
    if text.trim().is_empty() {
        return Err(FieldError::new("file", Message::new("takes-json-object")));
    }
    let unique: UniqueKeys = serde_json::from_str(text).map_err(|error| {
        FieldError::new(
            "file",
            Message::new("takes-valid-json")
                .text("line", error.line().to_string())
                .text("column", error.column().to_string()),
        )
    })?;
    match unique.repeated {
        Some(key) => Err(FieldError::new(key, Message::new("takes-once"))),
        None => Ok(unique.value),
    }
}

/// A JSON value together with the first key that stood twice in one object.
struct UniqueKeys {
    value: Value,
    repeated: Option<String>,
}

impl<'de> serde::Deserialize<'de> for UniqueKeys {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Visitor)
    }
}

struct Visitor;

impl<'de> serde::de::Visitor<'de> for Visitor {
    type Value = UniqueKeys;

    fn expecting(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        formatter.write_str("JSON")
    }

    fn visit_bool<E>(self, value: bool) -> Result<UniqueKeys, E> {
        Ok(plain_value(Value::Bool(value)))
    }

    fn visit_i64<E>(self, value: i64) -> Result<UniqueKeys, E> {
        Ok(plain_value(value.into()))
    }

    fn visit_u64<E>(self, value: u64) -> Result<UniqueKeys, E> {
        Ok(plain_value(value.into()))
    }

    fn visit_f64<E>(self, value: f64) -> Result<UniqueKeys, E> {
        Ok(plain_value(value.into()))
    }

    fn visit_str<E>(self, value: &str) -> Result<UniqueKeys, E> {
        Ok(plain_value(value.into()))
    }

    fn visit_unit<E>(self) -> Result<UniqueKeys, E> {
        Ok(plain_value(Value::Null))
    }

    fn visit_seq<A: serde::de::SeqAccess<'de>>(self, mut seq: A) -> Result<UniqueKeys, A::Error> {
        let mut values = Vec::new();
        let mut repeated = None;
        while let Some(next) = seq.next_element::<UniqueKeys>()? {
            values.push(next.value);
            repeated = repeated.or(next.repeated);
        }
        Ok(UniqueKeys { value: Value::Array(values), repeated })
    }

    fn visit_map<A: serde::de::MapAccess<'de>>(self, mut map: A) -> Result<UniqueKeys, A::Error> {
        let mut object = serde_json::Map::new();
        let mut repeated = None;
        while let Some((key, next)) = map.next_entry::<String, UniqueKeys>()? {
            repeated = repeated.or_else(|| next.repeated.map(|inner| format!("{key}.{inner}")));
            if object.insert(key.clone(), next.value).is_some() {
                repeated = repeated.or(Some(key));
            }
        }
        Ok(UniqueKeys { value: Value::Object(object), repeated })
    }
}

fn plain_value(value: Value) -> UniqueKeys {
    UniqueKeys { value, repeated: None }
}
