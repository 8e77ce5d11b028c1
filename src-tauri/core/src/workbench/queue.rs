//! The intake queue for a shell: asked for by ids, shown in words.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::error::Problem;
use super::ready::proven_in;
use super::search_words::Vocabulary;
use super::session::Workbench;
use super::upkeep::ENGINE;
use super::views::UnitView;
use crate::fields::FieldError;
use crate::hazard::Class;
use crate::inspection::{Basis, OverlayId};
use crate::store::{Change, Cursor, QueueFilter, QueueOrder, QueueRow, WorkState};
use crate::words::{Message, Words};

/// Rows of a page.
const PAGE: u32 = 50;
/// Places that a filter is offered at once.
const MOST_PLACES: usize = 200;

/// What is asked of the queue; whatever is left out narrows nothing.
#[derive(Clone, Debug, Default, Deserialize, ts_rs::TS)]
#[serde(deny_unknown_fields, default)]
pub struct QueueAsk {
    /// Beginnings of words in names, notes, tubes and findings, all of which must be there.
    pub text: String,
    /// States, any of which will do.
    pub states: Vec<String>,
    /// Classes, any of which will do; `unknown` is one that is not worked out.
    pub classes: Vec<String>,
    /// `shown`, `not_ruled_out` or both.
    pub bases: Vec<String>,
    /// Cautions, all of which must stand.
    pub overlays: Vec<String>,
    /// Places, any of which will do; capitals make no difference.
    pub places: Vec<String>,
    /// Kinds, any of which will do.
    pub kinds: Vec<String>,
    /// Came in at this time or later, UTC milliseconds.
    #[ts(type = "number | null")]
    pub from: Option<i64>,
    /// Came in at this time or earlier, UTC milliseconds.
    #[ts(type = "number | null")]
    pub to: Option<i64>,
    /// The newest first, not the worst.
    pub newest: bool,
    /// Where the page before ended: its `next`.
    pub after: Option<String>,
}

/// A page of the queue.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct QueueView {
    /// The units, at most 50.
    pub rows: Vec<QueueLine>,
    /// What to ask the next page after; nothing at the end.
    pub next: Option<String>,
}

/// A unit in the queue.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct QueueLine {
    /// The unit, with its class while that holds.
    pub unit: UnitView,
    /// How far the work has come.
    pub state: WorkState,
    /// The same in words.
    pub state_text: String,
    /// When that was said, UTC milliseconds; nothing where nobody has.
    #[ts(type = "number | null")]
    pub state_at: Option<i64>,
    /// Who said it; may be empty.
    pub state_by: String,
    /// The cautions beside the class, by id.
    pub overlays: Vec<String>,
    /// The inspection that the proof of its repair belongs to, which can be an earlier one than the class is
    /// of; nothing where no repair was chosen.
    pub proof: Option<Uuid>,
}

/// How many units are in a state.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct StateCount {
    /// The state.
    pub state: WorkState,
    /// In words.
    pub text: String,
    /// How many units.
    pub units: u32,
}

/// How many units have a class.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct ClassCount {
    /// The class; nothing where it is not worked out.
    pub class: Option<Class>,
    /// In words.
    pub text: String,
    /// How many units.
    pub units: u32,
}

/// The queue at a glance.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct QueueCounts {
    /// All units.
    pub units: u32,
    /// By state, every state, in the order in which a shop goes.
    pub states: Vec<StateCount>,
    /// By class, the unknown first, then the worst; of units that were not handed back.
    pub classes: Vec<ClassCount>,
}

/// The class that is not known, as it is asked for.
const UNKNOWN: &str = "unknown";

impl Workbench {
    /// A page of the queue.
    ///
    /// # Errors
    /// An id is none, by its field; or the record cannot be read.
    pub fn queue(&self, ask: &QueueAsk) -> Result<QueueView, Problem> {
        let filter = ask.filter(&self.vocabulary)?;
        let order = if ask.newest { QueueOrder::Newest } else { QueueOrder::Hazard };
        let page = self.store.queue(&filter, order, ask.cursor()?, PAGE)?;
        Ok(QueueView {
            rows: page.rows.into_iter().map(|row| self.line(row)).collect::<Result<_, _>>()?,
            next: page.next.map(|Cursor(place)| place.to_string()),
        })
    }

    /// How many units there are of each state and class.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn queue_counts(&self) -> Result<QueueCounts, Problem> {
        let counts = self.store.queue_counts()?;
        let sum = |is_wanted: &dyn Fn(&crate::store::QueueCount) -> bool| {
            counts.iter().filter(|count| is_wanted(count)).map(|count| count.units).sum::<u32>()
        };
        let state = |state: &WorkState| StateCount {
            state: *state,
            text: state_text(*state, self.words()),
            units: sum(&|count| count.state == *state),
        };
        let class = |class: Option<Class>| ClassCount {
            class,
            text: class_text(class, self.words()),
            units: sum(&|count| {
                let is_class = count.class.as_deref() == class.map(Class::id);
                is_class && count.state != WorkState::HandedBack
            }),
        };
        let classes = std::iter::once(None).chain(Class::ALL.iter().copied().map(Some));
        Ok(QueueCounts {
            units: sum(&|_| true),
            states: WorkState::ALL.iter().map(state).collect(),
            classes: classes.map(class).collect(),
        })
    }

    /// The places where units stand, for a filter to offer: of those with a text in their name at most 200,
    /// by name.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn queue_places(&self, text: &str) -> Result<Vec<String>, Problem> {
        Ok(self.store.places(text, MOST_PLACES)?)
    }

    /// How many units have a class that is still to be worked out beside the workbench, such as those that
    /// came in a bundle.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn pending(&self) -> Result<u32, Problem> {
        Ok(self.store.pending(ENGINE)?)
    }

    /// Says how far the work on a unit has come. Ready needs the proof of its repair.
    ///
    /// # Errors
    /// There is no such state or unit; or, to ready, a line of the proof is open or failed, nothing was
    /// chosen to be repaired, or a later inspection found the unit worse than the repair was to leave it.
    pub fn set_unit_state(&mut self, unit: Uuid, state: &str) -> Result<QueueLine, Problem> {
        let known = WorkState::of(state);
        let state = known.ok_or_else(|| FieldError::one_of("state", WorkState::IDS))?;
        self.store.unit(unit)?.ok_or_else(Problem::no_unit)?;
        if state == WorkState::Ready {
            self.prove_unit(unit)?;
        }
        self.act(unit, None, vec![Change::UnitState(state.id().to_owned())])?;
        self.keep_standing(unit)?;
        let row = self.store.queue_of(unit)?.ok_or_else(Problem::no_unit)?;
        self.line(row)
    }

    fn line(&self, row: QueueRow) -> Result<QueueLine, Problem> {
        Ok(QueueLine {
            state: row.state,
            state_text: state_text(row.state, self.words()),
            state_at: row.unit.state_at,
            state_by: row.unit.state_by.clone().unwrap_or_default(),
            overlays: row.overlays.clone(),
            proof: proven_in(&self.store, row.unit.id)?,
            unit: unit_of(row),
        })
    }
}

/// The rank of a class, from the worst, 1.
pub(super) fn rank_of(class: Class) -> u8 {
    let place = Class::ALL.iter().position(|other| *other == class);
    place.and_then(|place| u8::try_from(place + 1).ok()).unwrap_or(0)
}

impl QueueAsk {
    fn filter(&self, vocabulary: &Vocabulary) -> Result<QueueFilter, Problem> {
        let rank = |id: &str| match id {
            UNKNOWN => Some(0),
            other => Class::of(other).map(rank_of),
        };
        let with_unknown: Vec<&str> = Class::IDS.iter().copied().chain([UNKNOWN]).collect();
        let id = |id: &str| Some(id.to_owned());
        let basis = |given: &str| Basis::of(given).and_then(|basis| id(basis.id()));
        let overlay = |given: &str| OverlayId::of(given).and_then(|overlay| id(overlay.id()));
        let created = match (self.from, self.to) {
            (None, None) => None,
            (from, to) => Some((from.unwrap_or(0), to.unwrap_or(i64::MAX))),
        };
        Ok(QueueFilter {
            text: super::commands::text("text", &self.text)?,
            meanings: vocabulary.meanings(&self.text),
            states: each("states", &self.states, WorkState::IDS, WorkState::of)?,
            ranks: each("classes", &self.classes, &with_unknown, rank)?,
            bases: each("bases", &self.bases, Basis::IDS, basis)?,
            overlays: each("overlays", &self.overlays, OverlayId::IDS, overlay)?,
            places: self.places.clone(),
            kinds: self.kinds.clone(),
            created,
        })
    }

    fn cursor(&self) -> Result<Option<Cursor>, Problem> {
        let read = |after: &String| {
            let place = after.parse().map(Cursor);
            place.map_err(|_| FieldError::new("after", Message::new("takes-page-end")))
        };
        Ok(self.after.as_ref().map(read).transpose()?)
    }
}

fn each<T>(
    field: &str,
    given: &[String],
    known: &[&str],
    of: impl Fn(&str) -> Option<T>,
) -> Result<Vec<T>, FieldError> {
    let one = |(place, id): (usize, &String)| {
        of(id).ok_or_else(|| FieldError::one_of(format!("{field}.{place}"), known))
    };
    given.iter().enumerate().map(one).collect()
}

/// A unit as a list shows it.
pub(super) fn unit_of(row: QueueRow) -> UnitView {
    let unit = row.unit;
    UnitView {
        id: unit.id,
        label: unit.label(),
        name: unit.name.unwrap_or_default(),
        place: unit.place.unwrap_or_default(),
        kind: unit.kind,
        demo: unit.demo,
        inspection: row.inspection,
        signal: row.class.as_deref().and_then(Class::of).map(Class::signal),
        treat_as: row.class,
        basis: row.basis,
        changed_at: unit.changed_at,
    }
}

fn state_text(state: WorkState, words: &Words) -> String {
    words.say_id(&format!("work-{}", state.id()))
}

fn class_text(class: Option<Class>, words: &Words) -> String {
    match class {
        Some(class) => words.say_id(&format!("class-{}-short", class.id())),
        None => words.say_id("queue-unknown"),
    }
}
