//! What a shell shows of repairs: plain data, already in the inspector's language.

use serde::Serialize;

use super::grid::GridView;
use crate::arrangement::{Fault, State};
use crate::hazard::{Class, Signal};
use crate::remedy::{Modification, PartKind, Refusal};

/// Where a unit stands.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct StandingView {
    /// The class.
    pub class: Class,
    /// What it is called.
    pub label: String,
    /// The sign that goes with it.
    pub signal: Signal,
    /// The fault margin; 3 is three or more.
    pub margin: u8,
    /// The worst touch current, mA rms.
    pub worst_ma: f64,
    /// The same with its unit.
    pub worst: String,
    /// The largest current with no fault, mA rms.
    pub as_found_ma: f64,
    /// The same with its unit.
    pub as_found: String,
    /// Where the worst is.
    pub state: Option<State>,
    /// The faults it takes.
    pub faults: Vec<Fault>,
    /// The faults that remain, each by itself or with another, in words.
    pub remaining: Vec<String>,
    /// Powering it would put the supply on the earth wire.
    pub line_on_earth: bool,
    /// The worst case, what remains and what trips, in sentences.
    pub sentences: Vec<String>,
    /// All of it in one line.
    pub line: String,
}

/// Where a unit stands after a modification.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RemedyAfter {
    /// Over everything that it may be.
    pub standing: StandingView,
    /// The arrangement that is the worst of it before, by itself, where that is another standing.
    pub of_worst: Option<StandingView>,
    /// It makes something worse.
    pub worse: bool,
    /// It changes a current, a class or what trips.
    pub changes: bool,
}

/// One modification.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RemedyView {
    /// Which.
    pub id: Modification,
    /// What it is called.
    pub name: String,
    /// What it changes.
    pub does: String,
    /// What it does not do.
    pub does_not: String,
    /// Minutes and parts in words.
    pub cost: String,
    /// Cautions of its own, such as where it gains nothing.
    pub cautions: Vec<String>,
    /// Where the unit stands after it; nothing where it is not offered.
    pub after: Option<RemedyAfter>,
    /// Why it is not offered, by its id.
    pub refusal: Option<Refusal>,
    /// The same in words.
    pub refused: Option<String>,
    /// It is a step of the shortest stack.
    pub in_shortest: bool,
    /// It is in the stack that was chosen.
    pub chosen: bool,
}

/// A stack of modifications.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct StackView {
    /// The modifications, in their order; none where it takes none.
    pub steps: Vec<Modification>,
    /// All of it in one line: the steps and what they cost.
    pub line: String,
    /// The steps that make something worse, each in a sentence.
    pub worse: Vec<String>,
    /// Minutes; common practice.
    pub minutes: f64,
    /// Parts, in US dollars or euros; common practice.
    pub price: f64,
}

/// What may take the place of a line cord or a ballast that takes up volts.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct DropperView {
    /// What it is called.
    pub name: String,
    /// Its size, in words.
    pub size: String,
    /// What to mind, in sentences.
    pub notes: Vec<String>,
}

/// The repairs of a unit.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RemediesView {
    /// What comes first: local codes, who may do it, unplug.
    pub cautions: Vec<String>,
    /// When not to repair, and what a repair does to the original: at the end.
    pub last: Vec<String>,
    /// Over how many arrangements it is judged.
    pub over: String,
    /// Where it stands now.
    pub before: StandingView,
    /// Every modification.
    pub remedies: Vec<RemedyView>,
    /// The shortest stack that leaves it two faults from live.
    pub shortest: Option<StackView>,
    /// The shortest of what is done to the unit alone.
    pub in_unit: Option<StackView>,
    /// Why there is none, where there is none.
    pub no_way: Option<String>,
    /// The stack that was chosen.
    pub chosen: Vec<Modification>,
    /// What may take up the volts that the heaters of its list of tubes leave; none where they leave none.
    pub droppers: Vec<DropperView>,
    /// The limit of the touch current that class Y is sized for, mA.
    pub limit_ma: f64,
}

/// One step of a stack.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct StepView {
    /// Which.
    pub id: Modification,
    /// What it is called.
    pub name: String,
    /// Where the unit stands after it.
    pub after: StandingView,
    /// That it is worse than before it, in a sentence.
    pub worse: Option<String>,
}

/// A part to buy.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct PartNeedView {
    /// The part.
    pub kind: PartKind,
    /// What it is called.
    pub name: String,
    /// The modification that takes it.
    pub step: Modification,
    /// Its size, in words; nothing where it has none.
    pub size: Option<String>,
    /// How the size was come by, and what to mind, in sentences.
    pub notes: Vec<String>,
}

/// A stack before and after.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct RepairView {
    /// The stack and what it costs.
    pub stack: StackView,
    /// Where the unit stands before it.
    pub before: StandingView,
    /// Where it stands after it.
    pub after: StandingView,
    /// Step by step.
    pub steps: Vec<StepView>,
    /// The grid before.
    pub grid_before: GridView,
    /// The grid after: of the arrangement that is then the worst.
    pub grid_after: GridView,
    /// What may follow.
    pub remedies: Vec<RemedyView>,
    /// What has to be bought.
    pub parts: Vec<PartNeedView>,
    /// It is the stack that was chosen.
    pub chosen: bool,
}
