//! What the command line prints for one file: a contract for scripts.

use serde::Serialize;

use crate::arrangement::{FaultSet, State, read_exposure};
use crate::body::{Body, Path, Percentile, Skin};
use crate::fields::{self, FieldError};
use crate::hazard::{Outcome, Person, Row, Table, table_for};
use crate::inspection::{Findings, Judge, Verdict, assess, read_findings};

use super::error::Problem;

/// One state of a unit.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct StateView {
    /// `first` or `second`.
    pub plug: &'static str,
    /// `on` or `off`.
    pub switch: &'static str,
    /// `near` or `far`, where there is a selector.
    pub selector: Option<&'static str>,
}

impl From<State> for StateView {
    fn from(state: State) -> Self {
        Self {
            plug: state.plug.id(),
            switch: state.switch.id(),
            selector: state.selector.map(|selector| selector.id()),
        }
    }
}

/// A state with faults.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct WorstStateView {
    /// The state.
    #[serde(flatten)]
    pub state: StateView,
    /// The faults.
    pub faults: Vec<&'static str>,
}

/// One row of an exposure table.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RowView {
    /// The state.
    pub state: StateView,
    /// The faults.
    pub faults: Vec<&'static str>,
    /// Touch current, mA rms.
    pub touch_ma: f64,
    /// Open-circuit voltage of the worst node, V rms.
    pub open_circuit_v: Option<f64>,
    /// `touch`, `breaker_trips` or `behind_barrier`.
    pub outcome: &'static str,
}

/// The exposure table of one arrangement.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ExposureView {
    /// The class.
    pub class: &'static str,
    /// The fault margin; 3 is three or more.
    pub margin: u8,
    /// The largest current with no fault, mA rms.
    pub as_found_ma: f64,
    /// A row for each state and set of at most two faults.
    pub rows: Vec<RowView>,
}

/// A likely class.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct LikelyView {
    /// The class.
    pub class: &'static str,
    /// Its share, 0.7 to 1.
    pub share: f64,
}

/// A finding that carries the verdict.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RestsOnView {
    /// The finding.
    pub finding: String,
    /// What treat as would be without it.
    pub without: &'static str,
}

/// The verdict on a findings file.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct AssessView {
    /// The worst class still consistent.
    pub treat_as: &'static str,
    /// The best class still consistent.
    pub could_be: &'static str,
    /// `shown` or `not_ruled_out`.
    pub basis: &'static str,
    /// The class that soft evidence points to.
    pub likely: Option<LikelyView>,
    /// The fault margin of the worst case.
    pub margin: u8,
    /// The current of the worst case, mA rms.
    pub worst_touch_ma: f64,
    /// The state and faults of the worst case.
    pub worst_state: Option<WorstStateView>,
    /// What to ask next.
    pub next_question: Option<String>,
    /// Minimal sets of findings that contradict each other.
    pub conflicts: Vec<Vec<String>>,
    /// The findings that carry the verdict.
    pub rests_on: Vec<RestsOnView>,
    /// The cautions beside the class.
    pub overlays: Vec<&'static str>,
    /// How many arrangements agree with every finding.
    pub consistent: usize,
    /// Tubes of whose heater nothing is known.
    pub unknown_tubes: Vec<String>,
}

/// The exposure table of one arrangement file, exactly as given, at nominal volts, for a person.
///
/// # Errors
/// Bad input, by its field.
pub fn exposure_file(text: &[u8], person: &Person) -> Result<ExposureView, Problem> {
    let file = read_exposure(fields::parse(text)?)?;
    let volts = file.supply.volts;
    let table = table_for(&file.arrangement, &file.supply, volts, &file.values, person);
    Ok(ExposureView::from(&table))
}

/// A person by the ids of skin, percentile and path; nothing for the path takes the worst expected.
///
/// # Errors
/// An id is not known, by its field.
pub fn person(skin: &str, percentile: &str, path: Option<&str>) -> Result<Person, Problem> {
    let skin = Skin::of(skin).ok_or_else(|| FieldError::one_of("skin", Skin::IDS))?;
    let percentile = Percentile::of(percentile)
        .ok_or_else(|| FieldError::one_of("percentile", Percentile::IDS))?;
    let path = path
        .map(|id| Path::of(id).ok_or_else(|| FieldError::one_of("path", Path::IDS)))
        .transpose()?;
    Ok(Person::new(Body { skin, percentile, ..Body::default() }, path))
}

/// The verdict on a findings file, with the findings it was read from.
///
/// # Errors
/// Bad input, by its field.
pub fn assess_file(text: &[u8]) -> Result<(Findings, Verdict), Problem> {
    let findings = read_findings(fields::parse(text)?)?;
    let mut judge = Judge::of(&findings);
    let verdict = assess(&findings, &mut judge);
    Ok((findings, verdict))
}

pub(super) fn fault_ids(faults: FaultSet) -> Vec<&'static str> {
    faults.faults().map(|fault| fault.id()).collect()
}

impl From<&Row> for RowView {
    fn from(row: &Row) -> Self {
        let (outcome, open_circuit_v) = match row.outcome {
            Outcome::Touch { open_circuit_volts, .. } => ("touch", Some(open_circuit_volts)),
            Outcome::BreakerTrips => ("breaker_trips", None),
            Outcome::BehindBarrier => ("behind_barrier", None),
        };
        Self {
            state: row.state.into(),
            faults: fault_ids(row.faults),
            touch_ma: row.outcome.milliamperes(),
            open_circuit_v,
            outcome,
        }
    }
}

impl From<&Table> for ExposureView {
    fn from(table: &Table) -> Self {
        Self {
            class: table.class.id(),
            margin: table.margin,
            as_found_ma: table.as_found_ma,
            rows: table.rows.iter().map(RowView::from).collect(),
        }
    }
}

impl From<&Verdict> for AssessView {
    fn from(verdict: &Verdict) -> Self {
        let worst = &verdict.worst;
        Self {
            treat_as: verdict.treat_as.id(),
            could_be: verdict.could_be.id(),
            basis: verdict.basis.id(),
            likely: verdict
                .likely
                .map(|likely| LikelyView { class: likely.class.id(), share: likely.share }),
            margin: worst.margin,
            worst_touch_ma: worst.milliamperes,
            worst_state: worst.state.map(|state| WorstStateView {
                state: state.into(),
                faults: fault_ids(worst.faults),
            }),
            next_question: verdict.next.map(|next| next.step.name()),
            conflicts: verdict
                .conflicts
                .iter()
                .map(|conflict| conflict.iter().map(|finding| finding.name()).collect())
                .collect(),
            rests_on: verdict
                .rests_on
                .iter()
                .map(|rests| RestsOnView {
                    finding: rests.finding.name(),
                    without: rests.without.id(),
                })
                .collect(),
            overlays: verdict.overlays.iter().map(|overlay| overlay.id.id()).collect(),
            consistent: verdict.consistent,
            unknown_tubes: verdict.unknown_tubes.clone(),
        }
    }
}
