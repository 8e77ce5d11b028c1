//! The picture of one arrangement in one state: its parts, the way of the current, what may be turned and broken.

use serde::Serialize;
use serde_json::Value;
use uuid::Uuid;

use super::circuit_place::{Place, read_place};
use super::circuit_walk::{Cell, WalkStep, on_earth, walk};
use super::error::Problem;
use super::grid::{CellLevel, Says, WorstLeft, notes_on};
use super::session::Workbench;
use crate::arrangement::{
    Arrangement, Cord, Fault, FaultSet, Isolation, LineCapacitor, LineCapacitorClass, LineSide,
    NearPin, Part, Reach, State, SwitchLeg, Values, hot_pin,
};
use crate::hazard::{Class, Grid, Outcome, STOP_VOLTS, Way};
use crate::inspection::Judge;
use crate::words::{Message, Quantity, TRACE_MA, Words, farads, ohms, potential};

/// A fault that can happen to it.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct FaultChoice {
    /// Which.
    pub fault: Fault,
    /// Its name.
    pub name: String,
    /// What it does.
    pub what: String,
    /// Whether it is shown now.
    pub on: bool,
}

/// What can be turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct Flips {
    /// The plug goes in both ways round.
    pub plug: bool,
    /// There is a switch in the line.
    pub switch: bool,
    /// There is a switch that chooses the leg of the line capacitor.
    pub selector: bool,
}

/// What is written beside a part.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ts_rs::TS)]
pub struct PartLabel {
    /// The part.
    pub part: Part,
    /// Its value.
    pub text: String,
}

/// The circuit picture.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct CircuitView {
    /// Of which arrangement the picture is, and what it leaves out.
    pub notes: Vec<String>,
    /// What stands between the supply and the common.
    pub isolation: Isolation,
    /// The plug and its earth pin.
    pub cord: Cord,
    /// Which pin feeds the near leg.
    pub near_pin: NearPin,
    /// Where a line capacitor goes from.
    pub line_capacitor: LineCapacitor,
    /// Its class.
    pub line_capacitor_class: LineCapacitorClass,
    /// The legs that the switch opens.
    pub switch_leg: SwitchLeg,
    /// What can be touched.
    pub reach: Reach,
    /// Plug, switch and ground switch.
    pub state: State,
    /// The faults that are shown.
    pub faults: Vec<Fault>,
    /// What can be turned.
    pub flips: Flips,
    /// The faults that can happen to it.
    pub choices: Vec<FaultChoice>,
    /// The pin on the hot contact, the faults of the outlet counted.
    pub hot_pin: NearPin,
    /// What the hand is on; nothing where nothing joined to the circuit can be touched.
    pub touched: Option<Part>,
    /// The parts that the current passes, from the outlet on.
    pub path: Vec<Part>,
    /// How much it is.
    pub level: CellLevel,
    /// The same in a word or two.
    pub word: String,
    /// The touch current; nothing where nobody is in a circuit.
    pub figure: Option<String>,
    /// What the metal, or what is behind it, is at with nobody touching it.
    pub volts: String,
    /// What happens, in sentences.
    pub sentences: Vec<String>,
    /// What the arrangement is called without the faults that are shown, whatever the state.
    pub class_label: String,
    /// Its class.
    pub class: Class,
    /// What it would be called once it had these faults; never better than without them.
    pub class_with_faults: Option<String>,
    /// The values of its parts.
    pub labels: Vec<PartLabel>,
    /// The whole picture in sentences.
    pub described: String,
    /// States that teach why.
    pub walk: Vec<WalkStep>,
}

impl Workbench {
    /// The worst arrangement that an inspection leaves, in one state with some faults; in the one that the
    /// verdict quotes where none is given. Nothing for a unit without a line side.
    ///
    /// # Errors
    /// There is no such inspection, the state or a fault is none of this arrangement's, or the record cannot be
    /// read.
    pub fn circuit(&mut self, inspection: Uuid, at: Value) -> Result<Option<CircuitView>, Problem> {
        let Some(left) = self.worst_left(inspection)? else { return Ok(None) };
        let judge = self.judge.get_or_insert_with(|| Judge::of(&left.findings));
        picture_at(&left, judge, &self.words, at)
    }
}

/// The picture of an arrangement in a place, or where the verdict looks.
///
/// # Errors
/// The state or a fault is none of this arrangement's.
pub(super) fn picture_at(
    left: &WorstLeft,
    judge: &mut Judge,
    words: &Words,
    at: Value,
) -> Result<Option<CircuitView>, Problem> {
    let WorstLeft { findings, verdict, arrangement, grid } = left;
    let place = read_place(at, arrangement, findings.supply.feed)?;
    let worst = &verdict.worst;
    let on_earth = on_earth(arrangement, grid).map(|cell| (cell.state, cell.faults));
    let quoted = on_earth.or_else(|| worst.state.map(|state| (state, worst.faults)));
    let quoted = quoted.map(|(state, faults)| Place { state, faults });
    let (Some(place), Some(line)) = (place.or(quoted), arrangement.line) else {
        return Ok(None);
    };
    let says = Says { findings, verdict, arrangement, words };
    Ok(Picture { judge, says, grid, line }.view(place))
}

struct Picture<'a> {
    judge: &'a mut Judge,
    says: Says<'a>,
    grid: &'a Grid,
    line: LineSide,
}

impl Picture<'_> {
    fn view(mut self, place: Place) -> Option<CircuitView> {
        let Place { state, faults } = place;
        let way = self.judge.way(self.says.arrangement, state, faults)?;
        let class = self.judge.class_with(self.says.arrangement, FaultSet::NONE);
        let with_faults = class.worse(self.judge.class_with(self.says.arrangement, faults));
        let cell = self.says.cell(state, faults, way.outcome);
        let words = self.says.words;
        let choices = self.choices(faults);
        let pair = self.pair();
        let behind = self.behind();
        let walk = walk(self.grid, pair, &behind, &self.says);
        let label = |class: Class| words.say(&Message::new(format!("class-{}", class.id())));
        let says = &self.says;
        let notes = notes_on(says.findings, says.verdict, says.arrangement);
        let line = self.line;
        Some(CircuitView {
            notes: notes.iter().map(|note| words.say(note)).collect(),
            isolation: self.says.arrangement.isolation,
            cord: line.cord,
            near_pin: line.near_pin,
            line_capacitor: line.line_capacitor,
            line_capacitor_class: line.line_capacitor_class,
            switch_leg: line.switch_leg,
            reach: line.reach,
            state,
            faults: faults.faults().collect(),
            flips: Flips {
                plug: line.cord.goes_in_both_ways(self.says.findings.supply.feed),
                switch: line.switch_leg != SwitchLeg::None,
                selector: line.line_capacitor == LineCapacitor::Selector,
            },
            choices,
            hot_pin: hot_pin(state, faults),
            touched: way.touched,
            level: cell.level,
            word: cell.word,
            figure: cell.figure,
            volts: words.write(&potential(at_volts(&way))),
            described: describe(&self.says, &way, &cell.sentences),
            sentences: with_barrier(words, &way, cell.sentences),
            class_label: label(class),
            class,
            class_with_faults: (!faults.is_empty()).then(|| label(with_faults)),
            labels: labels(self.says.arrangement, &line, &way.values, words),
            path: way.parts,
            walk,
        })
    }

    /// What the chassis is at in each state as found, V rms: nothing comes of most behind a barrier, and that is what
    /// tells them apart.
    fn behind(&mut self) -> Vec<(State, f64)> {
        let mut volts = |state: State| {
            let way = self.judge.way(self.says.arrangement, state, FaultSet::NONE);
            (state, way.map_or(0.0, |way| way.chassis_volts))
        };
        if self.line.reach == Reach::Closed {
            self.grid.states.iter().map(|state| volts(*state)).collect()
        } else {
            Vec::new()
        }
    }

    /// The two faults that the verdict quotes, where one alone does not make it live.
    fn pair(&mut self) -> Option<Cell> {
        let worst = &self.says.verdict.worst;
        let (state, faults) = (worst.state?, worst.faults);
        let way = (faults.len() == 2).then(|| self.judge.way(self.says.arrangement, state, faults));
        way.flatten().map(|way| Cell { state, faults, outcome: way.outcome })
    }

    fn choices(&self, faults: FaultSet) -> Vec<FaultChoice> {
        let words = self.says.words;
        // Those of the grid: class Y that was fitted is not counted to short.
        let existing = self.grid.faults.iter().filter_map(|set| set.faults().next());
        let choice = |fault: Fault| FaultChoice {
            fault,
            name: words.say(&Message::new(format!("fault-{}", fault.id()))),
            what: words.say(&Message::new(format!("fault-{}-what", fault.id()))),
            on: faults.has(fault),
        };
        existing.map(choice).collect()
    }
}

/// What the metal that is touched is at, V rms; behind a barrier, what the chassis is at. Where less comes through than
/// any part lets through, nothing joins it to the supply, and what the solver says it floats at is none of anybody's.
fn at_volts(way: &Way) -> f64 {
    match way.outcome {
        Outcome::Touch { milliamperes, .. } if milliamperes < TRACE_MA => 0.0,
        Outcome::Touch { open_circuit_volts, .. } => open_circuit_volts,
        Outcome::BreakerTrips | Outcome::BehindBarrier => way.chassis_volts,
    }
}

/// The sentences of the cell; behind a barrier, also what is behind it.
fn with_barrier(words: &Words, way: &Way, mut sentences: Vec<String>) -> Vec<String> {
    if way.outcome == Outcome::BehindBarrier {
        let behind = Message::new(if way.chassis_volts < STOP_VOLTS.value {
            "circuit-behind"
        } else {
            "circuit-behind-live"
        })
        .text("volts", potential(way.chassis_volts));
        sentences.push(words.say(&behind));
    }
    sentences
}

/// The picture in words: what it is built like, what happens, and by which way.
fn describe(says: &Says<'_>, way: &Way, sentences: &[String]) -> String {
    let parts: Vec<String> =
        way.parts.iter().map(|part| says.words.say(&part_name(*part))).collect();
    let by = (!parts.is_empty())
        .then(|| says.words.say(&Message::new("circuit-way").text("parts", parts.join(", "))));
    let built =
        says.words.say(&Message::new(format!("isolation-{}", says.arrangement.isolation.id())));
    let all: Vec<String> =
        std::iter::once(built).chain(sentences.iter().cloned()).chain(by).collect();
    all.join(" ")
}

fn part_name(part: Part) -> Message {
    Message::new(format!("part-{}", part.id()))
}

/// The values that are written beside the parts: those that make a difference to what a person receives.
fn labels(
    arrangement: &Arrangement,
    line: &LineSide,
    values: &Values,
    words: &Words,
) -> Vec<PartLabel> {
    let say = |figure: Quantity| words.write(&figure);
    let capacitor = values.line_capacitor_farad.map(|farad| say(farads(farad)));
    let on = |leg: LineCapacitor| {
        [LineCapacitor::BothLegs, LineCapacitor::Selector, leg].contains(&line.line_capacitor)
    };
    let near = on(LineCapacitor::NearLeg).then_some((Part::NearCapacitor, capacitor.clone()));
    let far = on(LineCapacitor::FarLeg).then_some((Part::FarCapacitor, capacitor));
    let network = (arrangement.isolation == Isolation::LineFloated).then(|| {
        let text = [ohms(values.network_ohm), farads(values.network_farad)].map(say).join(" ∥ ");
        (Part::NearChassis, Some(text))
    });
    let aerial = (line.reach == Reach::AerialTerminal)
        .then(|| (Part::AerialCapacitor, Some(say(farads(values.aerial_farad)))));
    let all = [near, far, network, aerial].into_iter().flatten();
    all.filter_map(|(part, text)| text.map(|text| PartLabel { part, text })).collect()
}
