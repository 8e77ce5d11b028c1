//! What was entered for a line, and what it comes to.

use std::collections::BTreeMap;

use serde_json::Value;

use super::line::Comparison;
use super::plan::Planned;
use crate::fields::{FieldError, Fields, id_enum};
use crate::inspection::TouchPosition;
use crate::words::Message;

id_enum! {
    /// What a line comes to.
    pub enum ProofMark {
        /// Nothing was entered yet, or not all of it.
        Open = "open",
        /// It keeps to its limit.
        Passed = "passed",
        /// It does not.
        Failed = "failed",
    }
}

/// What was entered for a line.
#[derive(Clone, Debug, PartialEq)]
pub enum Entered {
    /// A reading, in the unit of the line.
    Read(f64),
    /// Above the range of the meter.
    OverRange,
    /// It holds, or it does not.
    Holds(bool),
    /// A reading for each position of plug and switch.
    Positions(BTreeMap<TouchPosition, f64>),
}

/// A line with what was entered.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// The line, with its limit.
    pub planned: Planned,
    /// What was entered; nothing yet.
    pub entered: Option<Entered>,
    /// What it comes to.
    pub mark: ProofMark,
}

/// The most that a meter can read of anything here.
const MOST: f64 = 1e12;

/// The parts that an entry can have, of which a line takes one.
struct Given {
    read: Option<f64>,
    over_range: bool,
    holds: Option<bool>,
    positions: Option<Fields>,
}

impl Given {
    fn read(value: Value) -> Result<Self, FieldError> {
        let mut fields = Fields::of(value, "entry")?;
        let given = Self {
            read: fields.number("read", 0.0..=MOST)?,
            over_range: fields.flag("over_range")?.unwrap_or(false),
            holds: fields.flag("holds")?,
            positions: fields.object("positions")?,
        };
        fields.finish(&["read", "over_range", "holds", "positions"])?;
        Ok(given)
    }
}

/// Checks an entry whose plan is not at hand, such as one that another device sends: it must be what some line
/// could take.
///
/// # Errors
/// Names the field and what it takes.
pub fn check_entry(value: Value) -> Result<(), FieldError> {
    let Given { read, over_range, holds, positions } = Given::read(value)?;
    let ways = [read.is_some(), over_range, holds.is_some(), positions.is_some()];
    if ways.into_iter().filter(|is_given| *is_given).count() != 1 {
        return Err(FieldError::new("entry", Message::new("takes-reading-of-line")));
    }
    let Some(mut positions) = positions else { return Ok(()) };
    for position in TouchPosition::IDS {
        positions.number(position, 0.0..=MOST)?;
    }
    positions.finish(TouchPosition::IDS)
}

/// Reads an entry: `{"read": 0.08}`, `{"over_range": true}`, `{"holds": true}` or `{"positions": {"first_on": 0.1}}`,
/// whichever the line takes.
///
/// # Errors
/// Names the field and what it takes.
pub fn read_entry(planned: &Planned, value: Value) -> Result<Entered, FieldError> {
    let Given { read, over_range, holds, positions } = Given::read(value)?;
    if let Some(positions) = positions {
        let alone = read.is_none() && !over_range && holds.is_none();
        if alone && !planned.positions.is_empty() {
            return read_positions(planned, positions);
        }
        return Err(FieldError::new("entry.positions", Message::new("takes-reading-of-line")));
    }
    if !planned.positions.is_empty() {
        return Err(FieldError::new("entry", Message::new("takes-positions-of-line")));
    }
    let is_yes = planned.comparison == Comparison::Yes;
    match (is_yes, read, over_range, holds) {
        (true, None, false, Some(holds)) => Ok(Entered::Holds(holds)),
        (false, Some(read), false, None) => Ok(Entered::Read(read)),
        (false, None, true, None) => Ok(Entered::OverRange),
        (true, ..) => Err(FieldError::new("entry", Message::new("takes-holds"))),
        (false, ..) => Err(FieldError::new("entry", Message::new("takes-reading-of-line"))),
    }
}

fn read_positions(planned: &Planned, mut fields: Fields) -> Result<Entered, FieldError> {
    let mut read = BTreeMap::new();
    for position in &planned.positions {
        if let Some(number) = fields.number(position.id(), 0.0..=MOST)? {
            read.insert(*position, number);
        }
    }
    let known: Vec<&str> = planned.positions.iter().map(|position| position.id()).collect();
    fields.finish(&known)?;
    if read.is_empty() {
        return Err(FieldError::new("entry.positions", Message::new("takes-positions-of-line")));
    }
    Ok(Entered::Positions(read))
}

/// What a line comes to with what was entered: failed as soon as one reading is, passed once all are there.
fn of_positions(planned: &Planned, read: &BTreeMap<TouchPosition, f64>) -> ProofMark {
    let limit = planned.limit.unwrap_or(f64::NAN);
    let keeps = |read: &f64| *read <= limit;
    if !read.values().all(keeps) {
        ProofMark::Failed
    } else if planned.positions.iter().all(|position| read.contains_key(position)) {
        ProofMark::Passed
    } else {
        ProofMark::Open
    }
}

/// What a line comes to with what was entered.
pub fn evaluate(planned: &Planned, entered: Option<Entered>) -> Outcome {
    let limit = planned.limit.unwrap_or(f64::NAN);
    let passed = |passed: bool| if passed { ProofMark::Passed } else { ProofMark::Failed };
    let mark =
        entered.as_ref().map_or(ProofMark::Open, |entered| match (planned.comparison, entered) {
            (_, Entered::Positions(read)) => of_positions(planned, read),
            (Comparison::Yes, Entered::Holds(holds)) => passed(*holds),
            (Comparison::AtMost | Comparison::AtMostWithLead, Entered::Read(read)) => {
                passed(*read <= limit)
            }
            (Comparison::AtLeast, Entered::Read(read)) => passed(*read >= limit),
            (Comparison::AtLeast, Entered::OverRange) => ProofMark::Passed,
            // Above the range of the meter is never below a limit; and what fits no line shows nothing.
            _ => ProofMark::Failed,
        });
    Outcome { planned: planned.clone(), entered, mark }
}
