//! What to ask next, and when asking can no longer improve the verdict.
//!
//! Stops when no arrangement still possible, with the answers it may truthfully give to everything that
//! may still be asked, leaves a better worst class. Until then small problems are searched whole for the
//! least expected time; larger ones go by what parts the most for each second. Both are sound: what is
//! asked only ever adds findings.

mod alike;
mod answers;
mod beliefs;
mod build;
mod edges;
mod ends;
mod exact;
mod foreseen;
mod mask;
mod metal;
mod orders;
mod problem;
mod trial;
mod view;

use super::bank::{Question, ValueId};
use super::conflict::Possible;
use super::doubt::Doubt;
use super::findings::{Finding, Findings};
use super::judge::Judge;
use crate::arrangement::{COUNT, ReadingId};
use crate::hazard::Class;

pub use beliefs::{Beliefs, cost};
use ends::can_improve;
pub use foreseen::Foreseen;
use foreseen::Outlook;
pub(super) use metal::is_untraced;
pub use orders::Order;
use problem::{Problem, Told};
pub use trial::{HandStep, Trial};
use view::View;

/// What to do next.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// Ask a question.
    Ask(Question),
    /// Read or measure a value.
    Read(ValueId),
    /// Take a meter reading.
    Measure(ReadingId),
}

impl Step {
    /// The finding that it adds.
    pub const fn finding(self) -> Finding {
        match self {
            Self::Ask(question) => Finding::Answer(question),
            Self::Read(value) => Finding::Value(value),
            Self::Measure(reading) => Finding::Reading(reading),
        }
    }

    /// Its name in a findings file.
    pub fn name(self) -> String {
        self.finding().name()
    }
}

/// Words of a mask that holds any problem.
const WHOLE: usize = COUNT.div_ceil(64);
/// The most work that a whole search may take, in states × groups × steps; above it edges are cut.
const WORK: usize = 250_000;
/// Groups × steps of a problem that is small: a search of it is quick however many states it takes.
const SMALL: usize = 100;
/// The most states for a small problem.
const SMALL_STATES: usize = 50_000;
/// A whole search takes at least so many states.
const FEWEST: usize = 50;

/// What to do next, and why.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Next {
    /// What to do.
    pub step: Step,
    /// How many classes are still possible.
    pub classes: usize,
    /// The most of them that one answer rules out; 0 where it takes others beside it.
    pub rules_out: usize,
    /// What speaks against the class and would be settled; the answer then rules nothing out.
    pub clears: Option<Doubt>,
}

/// The next step towards a better class, or nothing when treat as, the first of the two classes, can no longer
/// improve.
pub fn next(
    findings: &Findings,
    possible: &Possible,
    judge: &mut Judge,
    (treat_as, could_be): (Class, Class),
    beliefs: &Beliefs,
    order: Order,
    foreseen: &mut Foreseen,
) -> Option<Next> {
    if possible.is_conflict() {
        // A conflict is mended by looking again, not by asking more.
        return None;
    }
    let set = &possible.considered;
    let may_better = treat_as != could_be || metal::may_be_traced(findings);
    if !may_better {
        return None;
    }
    let (problem, outlook) = foreseen.problem(findings, set, judge, beliefs);
    in_room(problem, &mut Choose { order, outlook })
}

/// The step that clears the first of some doubts that may still be cleared.
pub fn clearing(findings: &Findings, doubts: &[Doubt]) -> Option<Next> {
    let doubt = doubts.iter().find(|doubt| findings.may_ask(doubt.cleared_by()))?;
    let step = Step::Ask(doubt.cleared_by());
    Some(Next { step, classes: 0, rules_out: 0, clears: Some(*doubt) })
}

/// The best that treat as could become if all that may be asked at this access were answered; nothing
/// where it cannot become better.
pub fn reach(
    findings: &Findings,
    possible: &Possible,
    judge: &mut Judge,
    beliefs: &Beliefs,
) -> Option<Class> {
    if possible.is_conflict() {
        return None;
    }
    in_room(&build::problem(findings, &possible.considered, judge, beliefs), &mut Reaches)
}

/// Something to work out on a problem, whatever room its masks take.
trait Work {
    type Out;

    fn on<const N: usize>(&mut self, view: &View<'_, N>) -> Option<Self::Out>;
}

/// Does some work with masks that are no larger than they need be.
fn in_room<W: Work>(problem: &Problem, work: &mut W) -> Option<W::Out> {
    match problem.groups.len() {
        0..=64 => work.on(&View::<1>::of(problem)),
        65..=256 => work.on(&View::<4>::of(problem)),
        257..=1024 => work.on(&View::<16>::of(problem)),
        1025..=3072 => work.on(&View::<48>::of(problem)),
        _ => work.on(&View::<WHOLE>::of(problem)),
    }
}

struct Reaches;

impl Work for Reaches {
    type Out = Class;

    fn on<const N: usize>(&mut self, view: &View<'_, N>) -> Option<Class> {
        let (told, _, left) = view.start();
        let treat_as = view.treat_as(&told, &left);
        let ends = ends::ends(view, &told, &left, treat_as);
        ends.into_iter().filter(|end| treat_as.is_worse_than(*end)).max()
    }
}

struct Choose<'o> {
    order: Order,
    outlook: &'o mut Outlook,
}

impl Work for Choose<'_> {
    type Out = Next;

    fn on<const N: usize>(&mut self, view: &View<'_, N>) -> Option<Next> {
        let (told, weights, left) = view.start();
        let treat_as = view.treat_as(&told, &left);
        if !can_improve(view, &told, &left, treat_as) {
            return None;
        }
        let place = choose_at(view, &told, &weights, &left, self.order, self.outlook)?;
        let step = view.problem.tests.get(place)?.step;
        let (classes, rules_out) = view.settles(place, &told, &left);
        Some(Next { step, classes, rules_out, clears: None })
    }
}

/// What an order asks in a state in which treat as can still improve; the outlook is that of this state.
fn choose_at<const N: usize>(
    view: &View<'_, N>,
    told: &Told,
    weights: &[f64],
    left: &mask::Mask<N>,
    order: Order,
    outlook: &mut Outlook,
) -> Option<usize> {
    match order {
        Order::Engine => {
            let size = view.problem.groups.len() * view.problem.tests.len();
            let states = if size <= SMALL { SMALL_STATES } else { WORK / size };
            // A search that is sure to give up is not begun.
            let searched =
                (states > FEWEST).then(|| exact::search(view, states, told, weights, left));
            searched.flatten().or_else(|| edges::choose(view, told, weights, left, outlook))
        }
        Order::EdgesOnly => edges::choose(view, told, weights, left, outlook),
        Order::Bank => orders::bank(view, told, left),
        Order::Information => orders::information(view, told, weights, left, false),
        Order::InformationPerSecond => orders::information(view, told, weights, left, true),
        Order::Random(seed) => orders::random(view, told, left, seed),
    }
}
