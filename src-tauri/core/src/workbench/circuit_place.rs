//! Which state, with which faults, somebody wants to see of an arrangement.

use serde_json::Value;

use crate::arrangement::{Arrangement, Fault, FaultSet, PlugWay, Selector, State, Switch, states};
use crate::fields::{FieldError, Fields};
use crate::supply::Feed;
use crate::words::Message;

/// The most faults that are computed together.
const MOST_FAULTS: usize = 2;

const KEYS: &[&str] = &["plug", "switch", "selector", "faults"];

/// A state with some faults.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Place {
    pub(super) state: State,
    pub(super) faults: FaultSet,
}

/// Reads the place, or nothing where none is given.
///
/// # Errors
/// Names the field and what it takes: only what can be of this arrangement.
pub(super) fn read_place(
    at: Value,
    arrangement: &Arrangement,
    feed: Feed,
) -> Result<Option<Place>, FieldError> {
    if at.is_null() {
        return Ok(None);
    }
    let mut fields = Fields::of(at, "at")?;
    let plug = fields.id("plug", PlugWay::IDS, PlugWay::of)?;
    let plug = fields.required("plug", plug)?;
    let switch = fields.id("switch", Switch::IDS, Switch::of)?;
    let switch = fields.required("switch", switch)?;
    let selector = match fields.take("selector") {
        None | Some(Value::Null) => None,
        Some(given) => Some(one_of(&given, "at.selector", Selector::IDS, Selector::of)?),
    };
    let faults = match fields.take("faults") {
        None => FaultSet::NONE,
        Some(given) => read_faults(&given, arrangement, feed)?,
    };
    fields.finish(KEYS)?;
    let state = State { plug, switch, selector };
    if !states(arrangement, feed).any(|known| known == state) {
        return Err(FieldError::new("at", Message::new("takes-state-of-arrangement")));
    }
    Ok(Some(Place { state, faults }))
}

fn read_faults(
    given: &Value,
    arrangement: &Arrangement,
    feed: Feed,
) -> Result<FaultSet, FieldError> {
    let existing: Vec<&'static str> = Fault::ALL
        .iter()
        .filter(|fault| fault.exists(arrangement, feed))
        .map(|fault| fault.id())
        .collect();
    let list = given.as_array().filter(|list| list.len() <= MOST_FAULTS);
    let list = list.ok_or_else(|| FieldError::one_of("at.faults", &existing))?;
    list.iter().try_fold(FaultSet::NONE, |faults, one| {
        let known = |id: &str| Fault::of(id).filter(|fault| fault.exists(arrangement, feed));
        Ok(faults.with(one_of(one, "at.faults", &existing, known)?))
    })
}

fn one_of<T>(
    given: &Value,
    field: &str,
    ids: &[&str],
    of: impl Fn(&str) -> Option<T>,
) -> Result<T, FieldError> {
    given.as_str().and_then(of).ok_or_else(|| FieldError::one_of(field, ids))
}
