//! Tells which places of a damaged log are lost, from those that a deleted unit left empty.
//!
//! Either is a gap in the places that can be reached. The indexes of the log lie on pages of their own and
//! name every place that is taken: one of them that can be read to its end, and names all that was reached,
//! says of each gap what it is. Where none can, nobody knows, and that is what is said.

use rusqlite::Connection;

/// Each index of the log that names every event.
const INDEXES: [&str; 3] = [
    include_str!("sql/event_salvage_by_id.sql"),
    include_str!("sql/event_salvage_by_intent.sql"),
    include_str!("sql/event_salvage_by_key.sql"),
];

/// What the file says of its log, apart from the log itself.
#[derive(Debug)]
pub(super) struct Beside {
    indexes: Vec<Index>,
    /// The last place that was ever given; nothing where that cannot be read.
    counter: Option<i64>,
    /// The last place that is known of.
    last: i64,
}

#[derive(Debug)]
struct Index {
    /// The places that it names, as far as it can be read, in order.
    places: Vec<i64>,
    is_whole: bool,
}

/// What was reached of a log.
#[derive(Debug, Default)]
pub(super) struct Reached {
    /// Places of events, in whatever order.
    pub events: Vec<i64>,
    /// Places of what is no event. A page that makes no sense may give any.
    pub others: Vec<i64>,
    /// A page could not be read.
    pub is_broken: bool,
}

/// What the places of a log come to.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Missing {
    /// Places of events that were read.
    pub read: u64,
    /// Places that something stands or stood at which cannot be read.
    pub lost: u64,
    /// Places of which nothing tells whether something stood there.
    pub doubtful: u64,
    /// Where the log ends is not known: more may be lost than is counted.
    pub is_uncounted: bool,
}

impl Beside {
    /// Reads what there is; `most` is a place that no log of that length reaches.
    pub fn of(conn: &Connection, most: i64) -> Self {
        let indexes: Vec<Index> = INDEXES.iter().map(|sql| Index::read(conn, sql, most)).collect();
        let possible = |place: &i64| (1..=most).contains(place);
        let place = |sql: &str| conn.query_row(sql, [], |row| row.get::<_, Option<i64>>(0));
        let of = |sql: &str| place(sql).ok().flatten().filter(possible);
        let counter = of(include_str!("sql/event_salvage_counter.sql"));
        let by_log = of(include_str!("sql/event_salvage_last.sql"));
        let by_index = indexes.iter().filter_map(|index| index.places.last().copied());
        let last = by_index.chain(counter).chain(by_log).max().unwrap_or(0);
        Self { indexes, counter, last }
    }

    /// The last place that the log may have; 0 where none is known of.
    pub const fn last(&self) -> i64 {
        self.last
    }

    /// Says of each place that was not reached what it is.
    pub fn judge(&self, reached: Reached) -> Missing {
        let is_broken = reached.is_broken;
        let events = in_order(reached.events);
        let mut others = in_order(reached.others);
        others.retain(|place| events.binary_search(place).is_err());
        let mut lost = others.clone();
        let mut is_sure = false;
        for index in &self.indexes {
            let is_event = |place: &i64| events.binary_search(place).is_ok();
            let (named, missing): (Vec<i64>, Vec<i64>) =
                index.places.iter().copied().partition(is_event);
            // An index that names nothing agrees with a log of which nothing can be read.
            let is_blank = is_broken && index.places.is_empty();
            is_sure |= index.is_whole && named.len() == events.len() && !is_blank;
            lost.extend(missing);
        }
        let (read, lost) = (events.len() as u64, in_order(lost).len() as u64);
        let empty = u64::try_from(self.last).unwrap_or(0).saturating_sub(read + lost);
        Missing {
            read,
            lost,
            doubtful: if is_sure { 0 } else { empty },
            is_uncounted: !is_sure && self.counter.is_none(),
        }
    }
}

impl Index {
    fn read(conn: &Connection, sql: &str, most: i64) -> Self {
        let mut places = Vec::new();
        let is_whole = fill(&mut places, conn, sql, most).is_ok();
        Self { places: in_order(places), is_whole }
    }
}

/// Takes the places that an index names, up to where it cannot be read.
fn fill(places: &mut Vec<i64>, conn: &Connection, sql: &str, most: i64) -> rusqlite::Result<()> {
    let mut statement = conn.prepare(sql)?;
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        let place = row.get(0)?;
        // A page that makes no sense may hold any number.
        if (1..=most).contains(&place) {
            places.push(place);
        }
    }
    Ok(())
}

/// Places in order, each once.
fn in_order(mut places: Vec<i64>) -> Vec<i64> {
    places.sort_unstable();
    places.dedup();
    places
}
