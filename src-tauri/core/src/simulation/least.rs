//! The least that an inspection can take, whatever the order of asking: a bound that every order is
//! measured against.
//!
//! Whoever knew beforehand what every step will show would take the cheapest steps after which nothing
//! can better the verdict any more. No order that has to ask first can take less. Found by cores: of
//! the steps that a set leaves out, while asking is not over, at least one has to be taken; the cheapest
//! set that takes one of each is the answer once asking is over after it (implicit hitting sets).

use super::inspector::{Inspector, steps};
use crate::inspection::{
    Access, Beliefs, Findings, Judge, Order, Question, Role, Step, cost, next_step,
};

/// A set of steps, one bit each in their order.
type Steps = u64;

struct Least<'j> {
    start: Findings,
    all: Findings,
    steps: Vec<Step>,
    judge: &'j mut Judge,
}

/// The least time, s, for an inspector who would say this of a unit.
pub fn least_seconds(start: &Findings, inspector: &mut Inspector, judge: &mut Judge) -> f64 {
    let access: Vec<Access> = start.access.iter().copied().collect();
    let mut steps: Vec<Step> = steps().filter(|step| is_open(*step, start, &access)).collect();
    let mut all = start.clone();
    for step in &steps {
        inspector.take(*step, &mut all);
    }
    // Where no metal was found there is nothing to trace, and nobody is asked to.
    if !is_metal_found(&all) {
        steps.retain(|step| *step != Step::Ask(Question::MetalJoined));
        all.answers.remove(&Question::MetalJoined);
    }
    let mut least = Least { start: start.clone(), all, steps, judge };
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

fn is_metal_found(all: &Findings) -> bool {
    let bare = all.known(Question::BareMetal).is_some();
    bare && !all.says(Question::BareMetal, "none_anywhere")
        || all.says(Question::Back, "missing")
        || all.says(Question::Terminals, "pickup_or_speaker")
}

/// What can bear on the verdict at this access and is not told yet.
fn is_open(step: Step, start: &Findings, access: &[Access]) -> bool {
    match step {
        Step::Ask(question) => {
            question.entry().role == Role::Conclusive
                && question.may_be_asked(access)
                && !start.answers.contains_key(&question)
        }
        Step::Read(_) => access.contains(&Access::CoverOff),
        Step::Measure(_) => access.contains(&Access::Meter),
    }
}

impl Least<'_> {
    fn seconds(&self, taken: Steps) -> f64 {
        let taken = self.steps.iter().enumerate().filter(|(place, _)| taken >> place & 1 == 1);
        taken.map(|(_, step)| cost(*step).seconds).sum()
    }

    /// Whether nothing can better the verdict once these steps are taken.
    fn is_over(&mut self, taken: Steps) -> bool {
        let mut findings = self.start.clone();
        for (place, step) in self.steps.iter().enumerate() {
            if taken >> place & 1 == 1 {
                copy(*step, &self.all, &mut findings);
            }
        }
        findings.meter = self.all.meter;
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

fn copy(step: Step, all: &Findings, findings: &mut Findings) {
    match step {
        Step::Ask(question) => copy_answer(question, all, findings),
        Step::Read(value) => {
            if let Some(known) = all.values.get(&value) {
                findings.values.insert(value, *known);
            } else {
                findings.left_open.insert(value);
            }
        }
        Step::Measure(reading) => {
            if let Some(known) = all.readings.get(&reading) {
                findings.readings.insert(reading, *known);
            } else {
                findings.readings_left_open.insert(reading);
            }
        }
    }
}

fn copy_answer(question: Question, all: &Findings, findings: &mut Findings) {
    if let Some(answer) = all.answers.get(&question) {
        findings.answers.insert(question, answer.clone());
    }
}
