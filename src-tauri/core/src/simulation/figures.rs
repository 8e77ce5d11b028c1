//! What an inspection takes on average, by access, kind of unit and order of asking.

use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use serde::Serialize;

use super::draw::{KINDS, unit_of_kind};
use super::inspector::{Inspector, Slips};
use super::run::inspect;
use crate::inspection::{Access, Answer, Findings, Judge, Order, Question};
use crate::supply::Supply;

/// The ways of looking that are simulated.
pub const ACCESS: [&[Access]; 3] = [
    &[Access::Outside],
    &[Access::Outside, Access::CoverOff],
    &[Access::Outside, Access::CoverOff, Access::Meter],
];

/// The orders, each by its id.
const ORDERS: [(&str, Order); 6] = [
    ("engine", Order::Engine),
    ("edges_only", Order::EdgesOnly),
    ("bank", Order::Bank),
    ("information", Order::Information),
    ("information_per_second", Order::InformationPerSecond),
    ("random", Order::Random(0)),
];

/// One line of the figures.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Row {
    /// How far the inspector may go.
    pub access: Vec<&'static str>,
    /// The kind of unit.
    pub kind: &'static str,
    /// The order of asking.
    pub order: &'static str,
    /// Mean time to the final verdict, s.
    pub seconds: f64,
    /// Its standard error, s.
    pub error: f64,
    /// Mean number of steps.
    pub steps: f64,
}

/// All figures of a simulation.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Figures {
    /// Units for each line.
    pub units: u64,
    /// The seed.
    pub seed: u64,
    /// The lines.
    pub rows: Vec<Row>,
}

/// Inspects as many units of each kind with each access in each order. The units, and what their inspectors
/// can tell, are the same for every order.
pub fn simulate(units: u64, seed: u64) -> Figures {
    let mut rows = Vec::new();
    for access in ACCESS {
        for &kind in KINDS {
            for (id, order) in ORDERS {
                rows.push(row(access, kind, (id, order), units, seed));
            }
        }
    }
    Figures { units, seed, rows }
}

fn row(
    access: &[Access],
    kind: &'static str,
    (id, order): (&'static str, Order),
    units: u64,
    seed: u64,
) -> Row {
    let mut findings = Findings::new(Supply::new(120.0, 60.0));
    findings.access = access.iter().copied().collect();
    findings.answers.insert(Question::Kind, Answer::One(kind));
    let mut judge = Judge::of(&findings);
    let (mut seconds, mut squares, mut steps) = (0.0, 0.0, 0.0);
    for unit in 0..units {
        let own = seed.wrapping_mul(1_000_003).wrapping_add(unit);
        let drawn = unit_of_kind(kind, &mut ChaCha8Rng::seed_from_u64(own));
        let mut inspector = Inspector::of(&drawn, Slips::CannotTell, own);
        let order = if id == "random" { Order::Random(own) } else { order };
        let run = inspect(findings.clone(), &mut inspector, &mut judge, order);
        seconds += run.seconds;
        squares += run.seconds * run.seconds;
        steps += run.steps.len() as f64;
    }
    let count = units.max(1) as f64;
    let mean = seconds / count;
    Row {
        access: access.iter().map(|access| access.id()).collect(),
        kind,
        order: id,
        seconds: mean,
        error: ((squares / count - mean * mean).max(0.0) / count).sqrt(),
        steps: steps / count,
    }
}
