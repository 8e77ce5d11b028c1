//! Pages and counts of the queue.

use super::facet::{Meaning, facet};
use super::place::{self, LAST_RANK, Span};
use super::state::WorkState;
use crate::store::Store;
use crate::store::column::{Id, Json};
use crate::store::error::Result;
use crate::store::view::{Unit, UnitFilter, unit_row};
use rusqlite::{Connection, Row, params};
use serde_json::Value;
use std::collections::BTreeMap;
use uuid::Uuid;

/// Which units are wanted; nothing set: all. Of several values of one kind any will do.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct QueueFilter {
    /// Words that all begin a word of the unit's names, notes, tubes or findings; those of one letter are
    /// whole words.
    pub text: String,
    /// What words of the text mean among findings: for a word that is here, any of that will do as well.
    pub meanings: BTreeMap<String, Vec<Meaning>>,
    /// How far the work has come.
    pub states: Vec<WorkState>,
    /// Ranks of the class, from the worst, 1; 0 is a class that is not known.
    pub ranks: Vec<u8>,
    /// Whether the class is shown.
    pub bases: Vec<String>,
    /// Cautions, all of which must stand.
    pub overlays: Vec<String>,
    /// Where it stands; capitals make no difference.
    pub places: Vec<String>,
    /// Kinds.
    pub kinds: Vec<String>,
    /// When it came in: from and to, both in it, UTC milliseconds.
    pub created: Option<(i64, i64)>,
}

/// In what order.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum QueueOrder {
    /// The worst first, what is not known before all; the newest first among equals.
    #[default]
    Hazard,
    /// The newest first.
    Newest,
}

/// Where a page ended, for the next to begin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cursor(pub i64);

/// A unit as the queue shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct QueueRow {
    /// The unit.
    pub unit: Unit,
    /// How far the work has come.
    pub state: WorkState,
    /// The inspection that the class is of.
    pub inspection: Option<Uuid>,
    /// The class, while it holds.
    pub class: Option<String>,
    /// Whether it is shown.
    pub basis: Option<String>,
    /// The cautions beside it.
    pub overlays: Vec<String>,
    /// The version of the engine that says so.
    pub engine_version: Option<String>,
}

/// A page of the queue.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Page {
    /// The units, in order.
    pub rows: Vec<QueueRow>,
    /// Where the next page begins; nothing at the end.
    pub next: Option<Cursor>,
}

/// How many units of a state have a class.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct QueueCount {
    /// The state.
    pub state: WorkState,
    /// The class; none where it is not known.
    pub class: Option<String>,
    /// How many.
    pub units: u32,
}

impl Store {
    /// A page of the queue of at most so many rows, after another page's end.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn queue(
        &self,
        filter: &QueueFilter,
        order: QueueOrder,
        after: Option<Cursor>,
        most: u32,
    ) -> Result<Page> {
        // One more, to know whether there is another page.
        let wanted = usize::try_from(most).unwrap_or(usize::MAX).saturating_add(1);
        let finding = Finding { conn: &self.conn, words: filter.matching(), wanted };
        let ranks = filter.rank_list();
        let mut places = match order {
            QueueOrder::Hazard => finding.by_hazard(&ranks, filter.created, after)?,
            QueueOrder::Newest => finding.newest(&ranks, filter.created, after)?,
        };
        let has_more = places.len() == wanted;
        if has_more {
            places.pop();
        }
        let next = places.last().filter(|_| has_more).map(|last| Cursor(*last));
        let rows = places.into_iter().map(|place| self.queue_row(place)).collect::<Result<_>>()?;
        Ok(Page { rows, next })
    }

    /// How many units there are of each state and class.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn queue_counts(&self) -> Result<Vec<QueueCount>> {
        let mut statement = self.conn.prepare_cached(include_str!("../sql/queue_count.sql"))?;
        let rows = statement.query_map([], |row| {
            let state: String = row.get(0)?;
            let state = WorkState::of_unit(Some(&state));
            Ok(QueueCount { state, class: row.get(1)?, units: row.get(2)? })
        })?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// A unit as the queue shows it; nothing where it is not shown.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn queue_of(&self, unit: Uuid) -> Result<Option<QueueRow>> {
        let place = super::refresh::kept_place(&self.conn, unit)?;
        place.map(|place| self.queue_row(place)).transpose()
    }

    /// Units as the queue shows them, the last changed first.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn rows(&self, filter: &UnitFilter) -> Result<Vec<QueueRow>> {
        let mut statement = self.conn.prepare_cached(include_str!("../sql/queue_list.sql"))?;
        let asked = params![filter.words(), filter.kind, filter.state];
        let rows = statement.query_map(asked, queue_row)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// Where units stand: so many places at most that have a text in their name, by name. Capitals make no
    /// difference.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn places(&self, text: &str, most: usize) -> Result<Vec<String>> {
        let text = text.trim().to_lowercase();
        let mut statement = self.conn.prepare_cached(include_str!("../sql/unit_places.sql"))?;
        let rows = statement.query_map([], |row| row.get(0))?;
        let fits = |place: &rusqlite::Result<String>| {
            place.as_ref().map_or(true, |place| place.to_lowercase().contains(&text))
        };
        Ok(rows.filter(fits).take(most).collect::<rusqlite::Result<_>>()?)
    }

    fn queue_row(&self, place: i64) -> Result<QueueRow> {
        let mut statement = self.conn.prepare_cached(include_str!("../sql/queue_row.sql"))?;
        Ok(statement.query_row([place], queue_row)?)
    }
}

fn queue_row(row: &Row<'_>) -> rusqlite::Result<QueueRow> {
    let state: String = row.get("queue_state")?;
    let overlays = row.get::<_, Json>("overlays")?.0;
    let overlays = overlays.as_array().into_iter().flatten().filter_map(Value::as_str);
    Ok(QueueRow {
        unit: unit_row(row)?,
        state: WorkState::of_unit(Some(&state)),
        inspection: row.get::<_, Option<Id>>("inspection")?.map(|id| id.0),
        class: row.get("class")?,
        basis: row.get("basis")?,
        overlays: overlays.map(str::to_owned).collect(),
        engine_version: row.get("engine_version")?,
    })
}

impl QueueFilter {
    fn rank_list(&self) -> Vec<i64> {
        let all = 0..=LAST_RANK;
        let is_wanted = |rank: &i64| {
            self.ranks.is_empty() || self.ranks.iter().any(|wanted| i64::from(*wanted) == *rank)
        };
        all.filter(is_wanted).collect()
    }

    /// What the index is asked for; nothing where the order alone is.
    fn matching(&self) -> Option<String> {
        let mut parts: Vec<String> = self.searched().collect();
        let states: Vec<&str> = self.states.iter().map(|state| state.id()).collect();
        parts.extend(any_of("state", states));
        parts.extend(any_of("basis", self.bases.iter().map(String::as_str)));
        parts.extend(any_of("place", self.places.iter().map(String::as_str)));
        parts.extend(any_of("kind", self.kinds.iter().map(String::as_str)));
        let each = self.overlays.iter().filter_map(|one| any_of("overlay", [one.as_str()]));
        parts.extend(each);
        (!parts.is_empty()).then(|| parts.join(" AND "))
    }

    /// The words of the text that have something to look for in them, or what they mean. Where the index
    /// cuts one of them, such as at a hyphen, its pieces have to stand one after the other. A sign that steers
    /// parts words: the first NUL would end what is asked.
    fn searched(&self) -> impl Iterator<Item = String> {
        self.text.split(|c: char| c.is_whitespace() || c.is_control()).filter_map(|word| {
            let letters = word.chars().filter(|c| c.is_alphanumeric()).count();
            let ending = if letters > 1 { "*" } else { "" };
            let quoted = word.replace('"', "\"\"");
            let written = format!("words : \"{quoted}\" {ending}");
            let meant = self.meanings.get(word).into_iter().flatten().map(Meaning::facet);
            let meant = either(meant.collect());
            (letters > 0).then(|| match meant {
                Some(meant) => format!("({written} OR {meant})"),
                None => written,
            })
        })
    }
}

fn any_of<'a>(kind: &str, values: impl IntoIterator<Item = &'a str>) -> Option<String> {
    either(values.into_iter().map(|value| facet(kind, value)).collect())
}

fn either(facets: Vec<String>) -> Option<String> {
    (!facets.is_empty()).then(|| format!("facets : ({})", facets.join(" OR ")))
}

/// Looks for places.
struct Finding<'a> {
    conn: &'a Connection,
    words: Option<String>,
    wanted: usize,
}

impl Finding<'_> {
    fn by_hazard(
        &self,
        ranks: &[i64],
        created: Option<(i64, i64)>,
        after: Option<Cursor>,
    ) -> Result<Vec<i64>> {
        let mut places = Vec::new();
        for rank in ranks {
            let mut span = place::span(*rank, created);
            span.from =
                after.map_or(span.from, |Cursor(place)| span.from.max(place.saturating_add(1)));
            places.extend(self.within(span, self.wanted - places.len())?);
            if places.len() >= self.wanted {
                break;
            }
        }
        Ok(places)
    }

    /// The newest of each rank, then the newest of all.
    fn newest(
        &self,
        ranks: &[i64],
        created: Option<(i64, i64)>,
        after: Option<Cursor>,
    ) -> Result<Vec<i64>> {
        let mut places = Vec::new();
        for rank in ranks {
            let mut span = place::span(*rank, created);
            if let Some(Cursor(last)) = after {
                // Of two of one age the one of the worse rank comes first.
                let age = place::with_age(*rank, place::age(last));
                span.from = span.from.max(if age > last { age } else { age.saturating_add(1) });
            }
            places.extend(self.within(span, self.wanted)?);
        }
        places.sort_by_key(|place| (place::age(*place), *place));
        places.truncate(self.wanted);
        Ok(places)
    }

    fn within(&self, span: Span, most: usize) -> Result<Vec<i64>> {
        let most = i64::try_from(most).unwrap_or(i64::MAX);
        if span.from > span.to {
            return Ok(Vec::new());
        }
        let place = |row: &Row<'_>| row.get::<_, i64>(0);
        let places = match &self.words {
            None => {
                let sql = include_str!("../sql/queue_page.sql");
                let mut statement = self.conn.prepare_cached(sql)?;
                let rows = statement.query_map(params![span.from, span.to, most], place)?;
                rows.collect::<rusqlite::Result<_>>()?
            }
            Some(words) => {
                let sql = include_str!("../sql/queue_page_matching.sql");
                let mut statement = self.conn.prepare_cached(sql)?;
                let rows = statement.query_map(params![span.from, span.to, most, words], place)?;
                rows.collect::<rusqlite::Result<_>>()?
            }
        };
        Ok(places)
    }
}
