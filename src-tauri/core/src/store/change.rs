//! What a person can change, as types; the log keeps each as a subject and a JSON value.

use serde::{Deserialize, Serialize};
use serde_json::{Value, json};
use uuid::Uuid;

/// Subject of a unit's creation.
pub(super) const UNIT_CREATED: &str = "unit.created";
/// Subject of a unit's name.
pub(super) const UNIT_NAME: &str = "unit.name";
/// Subject of the place where a unit stands.
pub(super) const UNIT_PLACE: &str = "unit.place";
/// Subject of a unit's kind.
pub(super) const UNIT_KIND: &str = "unit.kind";
/// Subject of the supply that a unit is to be used on.
pub(super) const UNIT_SUPPLY: &str = "unit.supply";
/// Subject of how far the work on a unit has come.
pub(super) const UNIT_STATE: &str = "unit.state";
/// Subject of a tombstone.
pub(super) const UNIT_DELETED: &str = "unit.deleted";
/// Subject of an inspection's start.
pub(super) const INSPECTION_STARTED: &str = "inspection.started";
/// Subject of how far the inspector may go.
pub(super) const INSPECTION_ACCESS: &str = "inspection.access";
/// Subject of the order in which an inspection's photos stand.
pub(super) const PHOTO_ORDER: &str = "inspection.photos";
/// What the subjects of findings begin with; the rest is the finding's key.
pub(super) const FINDING: &str = "finding.";
/// What the subjects of photos begin with; the photo's id and what is set follow.
pub(super) const PHOTO: &str = "photo.";

/// One human change. What it means beyond its subject is for others to say.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "set", content = "to", rename_all = "snake_case")]
pub enum Change {
    /// A unit is created under a number for people.
    UnitCreated {
        /// The number that it asks for: see [`Store::next_number`](super::Store::next_number).
        number: u32,
    },
    /// The unit's name.
    UnitName(String),
    /// Where the unit stands.
    UnitPlace(String),
    /// What kind of unit it is.
    UnitKind(String),
    /// The supply that it is to be used on.
    UnitSupply(Value),
    /// How far the work on it has come.
    UnitState(String),
    /// The unit is deleted. Only the store writes this: see [`Store::delete_unit`](super::Store::delete_unit).
    UnitDeleted(Claim),
    /// An inspection begins.
    InspectionStarted,
    /// How far the inspector may go.
    InspectionAccess(Vec<String>),
    /// A finding: an answer, a reading, a value, the tubes, the meter, a remark.
    Finding {
        /// Such as `answers.plug`, `values.line_capacitor` or `tubes`.
        key: String,
        /// The answer or value.
        value: Value,
    },
    /// A photo is added. Withdrawing this subject removes it.
    PhotoAdded {
        /// The photo.
        photo: Uuid,
        /// Its file, size and what it shows.
        row: Value,
    },
    /// A photo's caption.
    PhotoCaptioned {
        /// The photo.
        photo: Uuid,
        /// The caption.
        text: String,
    },
    /// Marks drawn on a photo.
    PhotoMarked {
        /// The photo.
        photo: Uuid,
        /// The marks.
        marks: Value,
    },
    /// A photo shows after what another shows before.
    PhotoPaired {
        /// The photo of after.
        photo: Uuid,
        /// The photo of before.
        before: Uuid,
    },
    /// The order in which the photos stand; those that are not named come after, as they were added.
    PhotosOrdered(Vec<Uuid>),
    /// A subject is unset.
    Withdrawn {
        /// What is unset.
        subject: String,
    },
    /// A change that this version does not know; it is kept and passed on as it is.
    Other {
        /// What it sets.
        subject: String,
        /// To what.
        value: Value,
    },
}

/// What a unit's creation asked for, kept in its tombstone so that a deletion renumbers nothing else.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Claim {
    /// The number asked for.
    pub number: u32,
    /// When it was created, UTC milliseconds.
    pub created_at: i64,
    /// The event that created it.
    pub created_event: Uuid,
}

/// Which events a change stands beside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Level {
    /// The unit's own.
    Unit,
    /// An inspection's.
    Inspection,
    /// The inspection's if there is one, else the unit's.
    Either,
}

impl Change {
    /// A photo is removed; an undo brings it back.
    pub fn photo_removed(photo: Uuid) -> Self {
        Self::Withdrawn { subject: format!("{PHOTO}{photo}.added") }
    }

    /// A photo stands by itself again.
    pub fn photo_unpaired(photo: Uuid) -> Self {
        Self::Withdrawn { subject: format!("{PHOTO}{photo}.paired") }
    }

    /// Whether this version knows what a subject sets, and so what a value of it has to be.
    pub fn knows(subject: &str) -> bool {
        const WHOLE: [&str; 10] = [
            UNIT_CREATED,
            UNIT_NAME,
            UNIT_PLACE,
            UNIT_KIND,
            UNIT_SUPPLY,
            UNIT_STATE,
            UNIT_DELETED,
            INSPECTION_STARTED,
            INSPECTION_ACCESS,
            PHOTO_ORDER,
        ];
        let of_photo = |what: &str| matches!(what, "added" | "captioned" | "marked" | "paired");
        let photo = subject.strip_prefix(PHOTO).and_then(|rest| rest.split_once('.'));
        WHOLE.contains(&subject)
            || subject.starts_with(FINDING)
            || photo.is_some_and(|(_, what)| of_photo(what))
    }

    /// What it sets, as the log names it.
    pub fn subject(&self) -> String {
        match self {
            Self::UnitCreated { .. } => UNIT_CREATED.to_owned(),
            Self::UnitName(_) => UNIT_NAME.to_owned(),
            Self::UnitPlace(_) => UNIT_PLACE.to_owned(),
            Self::UnitKind(_) => UNIT_KIND.to_owned(),
            Self::UnitSupply(_) => UNIT_SUPPLY.to_owned(),
            Self::UnitState(_) => UNIT_STATE.to_owned(),
            Self::UnitDeleted(_) => UNIT_DELETED.to_owned(),
            Self::InspectionStarted => INSPECTION_STARTED.to_owned(),
            Self::InspectionAccess(_) => INSPECTION_ACCESS.to_owned(),
            Self::Finding { key, .. } => format!("{FINDING}{key}"),
            Self::PhotoAdded { photo, .. } => format!("{PHOTO}{photo}.added"),
            Self::PhotoCaptioned { photo, .. } => format!("{PHOTO}{photo}.captioned"),
            Self::PhotoMarked { photo, .. } => format!("{PHOTO}{photo}.marked"),
            Self::PhotoPaired { photo, .. } => format!("{PHOTO}{photo}.paired"),
            Self::PhotosOrdered(_) => PHOTO_ORDER.to_owned(),
            Self::Withdrawn { subject } | Self::Other { subject, .. } => subject.clone(),
        }
    }

    /// What the log keeps of it; nothing when the subject is unset.
    pub fn value(&self) -> Option<Value> {
        let value = match self {
            Self::UnitCreated { number } => json!({ "number": number }),
            Self::UnitName(text)
            | Self::UnitPlace(text)
            | Self::UnitKind(text)
            | Self::UnitState(text)
            | Self::PhotoCaptioned { text, .. } => json!(text),
            Self::UnitDeleted(claim) => json!(claim),
            Self::InspectionStarted => json!(true),
            Self::InspectionAccess(access) => json!(access),
            Self::PhotoPaired { before, .. } => json!(before),
            Self::PhotosOrdered(order) => json!(order),
            Self::UnitSupply(value)
            | Self::Finding { value, .. }
            | Self::PhotoAdded { row: value, .. }
            | Self::PhotoMarked { marks: value, .. }
            | Self::Other { value, .. } => value.clone(),
            Self::Withdrawn { .. } => Value::Null,
        };
        (!value.is_null()).then_some(value)
    }

    /// Reads what the log keeps. What this version cannot read comes back as [`Change::Other`].
    pub fn read(subject: &str, value: Option<&Value>) -> Self {
        let subject = subject.to_owned();
        let Some(value) = value.filter(|value| !value.is_null()) else {
            return Self::Withdrawn { subject };
        };
        known(&subject, value).unwrap_or_else(|| Self::Other { value: value.clone(), subject })
    }

    pub(super) fn level(&self) -> Level {
        let subject = self.subject();
        match subject.split('.').next() {
            Some("unit") => Level::Unit,
            Some("inspection" | "finding") => Level::Inspection,
            _ => Level::Either,
        }
    }
}

fn known(subject: &str, value: &Value) -> Option<Change> {
    let text = || value.as_str().map(str::to_owned);
    match subject {
        UNIT_CREATED => number(value).map(|number| Change::UnitCreated { number }),
        UNIT_NAME => text().map(Change::UnitName),
        UNIT_PLACE => text().map(Change::UnitPlace),
        UNIT_KIND => text().map(Change::UnitKind),
        UNIT_STATE => text().map(Change::UnitState),
        UNIT_SUPPLY => Some(Change::UnitSupply(value.clone())),
        UNIT_DELETED => claim(value).map(Change::UnitDeleted),
        INSPECTION_STARTED => (*value == json!(true)).then_some(Change::InspectionStarted),
        INSPECTION_ACCESS => access(value).map(Change::InspectionAccess),
        PHOTO_ORDER => order(value).map(Change::PhotosOrdered),
        _ => finding(subject, value).or_else(|| photo(subject, value)),
    }
}

fn number(value: &Value) -> Option<u32> {
    let number = value.as_object()?.get("number")?.as_u64()?;
    u32::try_from(number).ok()
}

fn claim(value: &Value) -> Option<Claim> {
    Claim::deserialize(value).ok()
}

fn access(value: &Value) -> Option<Vec<String>> {
    Vec::deserialize(value).ok()
}

fn order(value: &Value) -> Option<Vec<Uuid>> {
    let order: Vec<Uuid> = Vec::deserialize(value).ok()?;
    // Any other spelling would come back as another value.
    (json!(order) == *value).then_some(order)
}

fn finding(subject: &str, value: &Value) -> Option<Change> {
    let key = subject.strip_prefix(FINDING)?.to_owned();
    let value = value.clone();
    Some(Change::Finding { key, value })
}

fn photo(subject: &str, value: &Value) -> Option<Change> {
    let (id, what) = subject.strip_prefix(PHOTO)?.split_once('.')?;
    // Any other spelling of the id would come back as another subject.
    let photo = Uuid::try_parse(id).ok().filter(|u| u.to_string() == id)?;
    let value = value.clone();
    match what {
        "added" => Some(Change::PhotoAdded { photo, row: value }),
        "captioned" => {
            let text = value.as_str()?.to_owned();
            Some(Change::PhotoCaptioned { photo, text })
        }
        "marked" => {
            let marks = value;
            Some(Change::PhotoMarked { photo, marks })
        }
        "paired" => {
            let before = value.as_str().and_then(|text| Uuid::try_parse(text).ok())?;
            (json!(before) == value).then_some(Change::PhotoPaired { photo, before })
        }
        _ => None,
    }
}
