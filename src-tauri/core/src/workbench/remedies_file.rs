//! What the command line prints of the repairs of one findings file: a contract for scripts.

use serde::Serialize;

use super::error::Problem;
use super::file_views::{WorstStateView, fault_ids};
use crate::arrangement::{Arrangement, all};
use crate::fields;
use crate::inspection::{Possible, read_findings};
use crate::remedy::{Bench, Chosen, Cut, Offer, Setup, Stack, Standing, Study, cost_of, study};

/// What a device in the outlet makes of the worst current.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct CutFigures {
    /// `gfci`, `rcd_a` or `rcd_ac`.
    pub device: &'static str,
    /// The longest the touch lasts, s; nothing where it need not trip.
    pub seconds: Option<f64>,
    /// Why it need not.
    pub blind: Option<&'static str>,
}

/// Where a unit stands.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct StandingFigures {
    /// The class.
    pub class: &'static str,
    /// The fault margin; 3 is three or more.
    pub margin: u8,
    /// The worst touch current, mA rms: as found where that is live, else with the fewest faults.
    pub worst_touch_ma: f64,
    /// The largest current with no fault, mA rms.
    pub as_found_ma: f64,
    /// Where the worst current is.
    pub worst_state: Option<WorstStateView>,
    /// The smallest sets of faults that make it live.
    pub remaining: Vec<Vec<&'static str>>,
    /// Powering it would put the supply on the earth wire.
    pub line_on_earth: bool,
    /// The device in the outlet.
    pub trip: Option<CutFigures>,
}

/// Where a unit stands after a modification.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct AfterFigures {
    /// Over everything that the unit may be.
    #[serde(flatten)]
    pub over: StandingFigures,
    /// The arrangement that is the worst of it before, by itself; nothing where that is the same.
    pub of_worst: Option<StandingFigures>,
    /// It makes something worse.
    pub worse: bool,
}

/// One modification.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ModificationFigures {
    /// Its id.
    pub modification: &'static str,
    /// Where the unit stands before it.
    pub before: StandingFigures,
    /// Where it stands after; nothing where it is not offered.
    pub after: Option<AfterFigures>,
    /// Why it is not offered.
    pub refused: Option<&'static str>,
    /// Minutes; common practice.
    pub minutes: f64,
    /// Parts, in US dollars or euros; common practice.
    pub price: f64,
}

/// A stack of modifications.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct StackFigures {
    /// The modifications, in their order; none where it takes none.
    pub steps: Vec<&'static str>,
    /// Class and current with no fault after each step.
    pub classes: Vec<&'static str>,
    /// The places of the steps after which it is worse than before them, counted from 0.
    pub worse: Vec<usize>,
    /// Minutes.
    pub minutes: f64,
    /// Parts, in US dollars or euros.
    pub price: f64,
}

/// The repairs of a findings file.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RemediesFigures {
    /// Where the unit stands.
    pub before: StandingFigures,
    /// How many arrangements it is judged over.
    pub over: usize,
    /// The worst of them; nothing for a unit without a line side.
    #[ts(type = "Record<string, string> | null")]
    pub worst_arrangement: Option<Arrangement>,
    /// Every modification.
    pub modifications: Vec<ModificationFigures>,
    /// The shortest stack that leaves it two faults from live.
    pub shortest: Option<StackFigures>,
    /// The shortest of what is done to the unit alone.
    pub shortest_in_unit: Option<StackFigures>,
}

/// The repairs of a findings file, with what they were worked out for.
///
/// # Errors
/// Bad input, by its field.
pub fn remedies_file(text: &[u8]) -> Result<(Setup, Study, RemediesFigures), Problem> {
    let findings = read_findings(fields::parse(text)?)?;
    let setup = Setup::of(&findings, &Possible::after(&findings)).sized(Chosen::none().limit_ma);
    let study = study(&setup, &mut Bench::default());
    let figures = RemediesFigures::of(&setup, &study);
    Ok((setup, study, figures))
}

impl RemediesFigures {
    fn of(setup: &Setup, study: &Study) -> Self {
        let before = StandingFigures::from(&study.before);
        let worst = study.before.of.and_then(|id| all().get(usize::from(id.0)));
        Self {
            modifications: study.offers.iter().map(|offer| of_offer(&before, offer)).collect(),
            before,
            over: setup.set.len(),
            worst_arrangement: worst.filter(|worst| worst.line.is_some()).copied(),
            shortest: study.shortest.as_ref().map(StackFigures::from),
            shortest_in_unit: study.in_unit.as_ref().map(StackFigures::from),
        }
    }
}

fn of_offer(before: &StandingFigures, offer: &Offer) -> ModificationFigures {
    let cost = cost_of(offer.modification);
    let after = offer.result.as_ref().ok().map(|offered| AfterFigures {
        over: (&offered.over).into(),
        of_worst: offered.worst.as_ref().map(StandingFigures::from),
        worse: offered.is_worse,
    });
    ModificationFigures {
        modification: offer.modification.id(),
        before: before.clone(),
        after,
        refused: offer.result.as_ref().err().map(|refusal| refusal.id()),
        minutes: cost.minutes,
        price: cost.price,
    }
}

impl From<&Standing> for StandingFigures {
    fn from(standing: &Standing) -> Self {
        let worst = &standing.worst;
        Self {
            class: standing.class.id(),
            margin: worst.margin,
            worst_touch_ma: worst.milliamperes,
            as_found_ma: standing.as_found_ma,
            worst_state: worst.state.map(|state| WorstStateView {
                state: state.into(),
                faults: fault_ids(worst.faults),
            }),
            remaining: standing.remaining.iter().map(|set| fault_ids(*set)).collect(),
            line_on_earth: standing.line_on_earth,
            trip: standing.cut.map(CutFigures::from),
        }
    }
}

impl From<Cut> for CutFigures {
    fn from(cut: Cut) -> Self {
        Self {
            device: cut.device.id(),
            seconds: cut.seconds,
            blind: cut.blind.map(|blind| blind.id()),
        }
    }
}

impl From<&Stack> for StackFigures {
    fn from(stack: &Stack) -> Self {
        Self {
            steps: stack.steps.iter().map(|step| step.id()).collect(),
            classes: stack.briefs.iter().map(|brief| brief.class.id()).collect(),
            worse: stack.worse.clone(),
            minutes: stack.minutes,
            price: stack.price,
        }
    }
}
