//! The least that an inspection can take, whatever the order of asking: a bound that every order is
//! measured against.
//!
//! Whoever knew beforehand what every step will show would take the cheapest steps after which nothing
//! can better the verdict any more. No order that has to ask first can take less. Found by cores: of
//! the steps that a set leaves out, while asking is not over, at least one has to be taken; the cheapest
//! set that takes one of each is the answer once asking is over after it (implicit hitting sets).

use super::inspector::{Inspector, steps};
use crate::inspection::{
    Access, Beliefs, Findings, Judge, Order, Question, Role, Step, cost, is_metal_found, next_step,
};

/// A set of steps, one bit each in their order.
type Steps = u64;

struct Least<'a> {
    start: &'a Findings,
    /// Says the same of a step whenever it is taken.
    inspector: &'a mut Inspector,
    steps: Vec<Step>,
    /// What each takes, s.
    seconds: Vec<f64>,
    judge: &'a mut Judge,
}

/// The least time, s, for an inspector who would say this of a unit.
pub fn least_seconds(start: &Findings, inspector: &mut Inspector, judge: &mut Judge) -> f64 {
    let mut steps: Vec<Step> = steps().filter(|step| is_open(*step, start)).collect();
    let mut all = start.clone();
    for step in &steps {
        inspector.take(*step, &mut all);
    }
    // Where no metal was found there is nothing to trace, and nobody is asked to.
    if !is_metal_found(&all) {
        steps.retain(|step| *step != Step::Ask(Question::MetalJoined));
    }
    let seconds = steps.iter().map(|step| cost(*step).seconds).collect();
    let mut least = Least { start, inspector, steps, seconds, judge };
    let every = (1 << least.steps.len()) - 1;
    let mut cores: Vec<Steps> = Vec::new();
    loop {
        let taken = least.cheapest(&cores);
        if least.is_over(taken) || taken == every {
            return least.seconds(taken);
        }
        cores.push(every & !least.grown(taken, every));
    }
}

/// What can bear on the verdict at this access and is not told yet.
fn is_open(step: Step, start: &Findings) -> bool {
    match step {
        // The plate rules nothing out, and is asked all the same where a doubt hangs on it.
        Step::Ask(question) => {
            (question.entry().role == Role::Conclusive || question == Question::RatingPlate)
                && start.may_ask(question)
        }
        Step::Read(_) => start.access.contains(&Access::CoverOff),
        Step::Measure(_) => start.access.contains(&Access::Meter),
    }
}

impl Least<'_> {
    fn seconds(&self, taken: Steps) -> f64 {
        let taken = self.seconds.iter().enumerate().filter(|(place, _)| taken >> place & 1 == 1);
        taken.map(|(_, seconds)| seconds).sum()
    }

    /// Whether nothing can better the verdict once these steps are taken.
    fn is_over(&mut self, taken: Steps) -> bool {
        let mut findings = self.start.clone();
        for (place, step) in self.steps.iter().enumerate() {
            if taken >> place & 1 == 1 {
                self.inspector.take(*step, &mut findings);
            }
        }
        let beliefs = Beliefs::of(&findings);
        next_step(&findings, self.judge, &beliefs, Order::Bank).is_none()
    }

    /// As many more steps as leave asking not over: what is left out then is a core.
    fn grown(&mut self, taken: Steps, every: Steps) -> Steps {
        let mut grown = taken;
        for place in 0..self.steps.len() {
            let more = grown | 1 << place;
            if more != grown && more != every && !self.is_over(more) {
                grown = more;
            }
        }
        grown
    }

    /// The cheapest steps that take one of each core.
    fn cheapest(&self, cores: &[Steps]) -> Steps {
        let mut best = (f64::INFINITY, 0);
        self.search(cores, 0, 0, &mut best);
        best.1
    }

    fn search(&self, cores: &[Steps], taken: Steps, refused: Steps, best: &mut (f64, Steps)) {
        let seconds = self.seconds(taken);
        if seconds >= best.0 {
            return;
        }
        let open = cores.iter().filter(|core| *core & taken == 0);
        // The core with the fewest ways out first.
        let Some(core) = open.min_by_key(|core| (*core & !refused).count_ones()) else {
            *best = (seconds, taken);
            return;
        };
        let ways = core & !refused;
        let mut refused = refused;
        for place in (0..self.steps.len()).filter(|place| ways >> place & 1 == 1) {
            self.search(cores, taken | 1 << place, refused, best);
            refused |= 1 << place;
        }
    }
}
