//! What the engine believes while it plans: how likely each arrangement is, and what each step takes.
//!
//! All of it is common practice and estimates. It orders the questions; no verdict rests on it.

use super::super::bank::{Cost, cost_of, reading_cost, value_cost};
use super::super::findings::Findings;
use super::super::prior;
use super::Step;

/// How likely each arrangement is, and what each step takes.
pub struct Beliefs {
    weights: Vec<f64>,
    costs: Box<dyn Fn(Step) -> Cost + Send + Sync>,
}

impl Beliefs {
    /// The shares, seconds and rates of the tables, after the soft evidence.
    pub fn of(findings: &Findings) -> Self {
        Self::new(prior::weights(findings), |step| cost(step).clone())
    }

    /// Other beliefs: one weight for each arrangement, in their order, and the costs.
    pub fn new(weights: Vec<f64>, costs: impl Fn(Step) -> Cost + Send + Sync + 'static) -> Self {
        Self { weights, costs: Box::new(costs) }
    }

    /// The weight of every arrangement, in their order.
    pub fn weights(&self) -> &[f64] {
        &self.weights
    }

    pub(super) fn cost(&self, step: Step) -> Cost {
        (self.costs)(step)
    }
}

/// What a step takes by the table.
pub fn cost(step: Step) -> &'static Cost {
    match step {
        Step::Ask(question) => cost_of(question),
        Step::Read(value) => value_cost(value),
        Step::Measure(_) => reading_cost(),
    }
}
