//! Every state with every single fault, in words: what a person would receive, cell by cell.

use serde::Serialize;
use uuid::Uuid;

use super::error::Problem;
use super::session::Workbench;
use crate::arrangement::{Arrangement, Fault, FaultSet, PlugWay, Selector, State, Switch, all};
use crate::body::{LET_GO_MA, STARTLE_MA};
use crate::fields::id_enum;
use crate::hazard::{Class, Grid, Outcome, Worst};
use crate::inspection::{Findings, Verdict, is_quoted, severity_sentence, worst_state_sentence};
use crate::words::{Message, Words, milliamperes, potential, volts};

id_enum! {
    /// How much a cell is.
    pub enum CellLevel {
        /// Below 0.5 mA.
        Below = "below",
        /// From 0.5 to 5 mA.
        Leaks = "leaks",
        /// 5 mA and more.
        Live = "live",
        /// The breaker trips.
        BreakerTrips = "breaker_trips",
        /// Nothing joined to the circuit can be touched.
        BehindBarrier = "behind_barrier",
    }
}

/// One state with one fault, or as found.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct CellView {
    /// How much it is.
    pub level: CellLevel,
    /// The same in a word or two.
    pub word: String,
    /// The touch current; nothing where nobody is in a circuit.
    pub figure: Option<String>,
    /// The touch current, mA rms.
    pub milliamperes: f64,
    /// What happens, in sentences.
    pub sentences: Vec<String>,
    /// The verdict quotes this one.
    pub quoted: bool,
}

/// A row: a fault, or none.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct GridRow {
    /// The fault; nothing as found.
    pub fault: Option<Fault>,
    /// Its name.
    pub name: String,
    /// What it does.
    pub what: Option<String>,
    /// A cell for each state.
    pub cells: Vec<CellView>,
}

/// A column: a state.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct GridColumn {
    /// Plug, switch and ground switch.
    pub state: State,
    /// The same in a few words, one for each that can differ.
    pub names: Vec<String>,
}

/// The grid of the worst arrangement that is still possible.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct GridView {
    /// Which arrangement it is of, and what it leaves out.
    pub notes: Vec<String>,
    /// The arrangement, a sentence for each of its parts.
    pub arrangement: Vec<String>,
    /// The states; none for a unit without a line side.
    pub columns: Vec<GridColumn>,
    /// As found first, then each single fault.
    pub rows: Vec<GridRow>,
}

impl GridView {
    /// The grid of a unit without a line side: there is nothing to show.
    pub(super) fn of_no_line(words: &Words) -> Self {
        Self {
            notes: vec![words.say_id("grid-no-line")],
            arrangement: Vec::new(),
            columns: Vec::new(),
            rows: Vec::new(),
        }
    }
}

impl Workbench {
    /// Every state with every single fault, for the worst arrangement that an inspection leaves.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn grid(&mut self, inspection: Uuid) -> Result<GridView, Problem> {
        let Some(left) = self.worst_left(inspection)? else {
            return Ok(GridView::of_no_line(&self.words));
        };
        let says = Says {
            findings: &left.findings,
            verdict: &left.verdict,
            arrangement: left.arrangement,
            words: &self.words,
        };
        Ok(says.view(&left.grid))
    }

    /// The worst arrangement that an inspection leaves; nothing where it has no line side.
    pub(super) fn worst_left(&mut self, inspection: Uuid) -> Result<Option<WorstLeft>, Problem> {
        let (inspection, unit) = self.find(inspection)?;
        let findings = self.read(&inspection, &unit)?;
        let verdict = self.verdict_on(&findings);
        let found = verdict.worst_of.and_then(|id| all().get(usize::from(id.0)));
        let Some(arrangement) = found.filter(|arrangement| arrangement.line.is_some()) else {
            return Ok(None);
        };
        let grid = self.grid_of_last(&findings, arrangement);
        Ok(Some(WorstLeft { findings, verdict, arrangement, grid }))
    }
}

/// The worst arrangement that an inspection leaves, and all that is known of it.
pub(super) struct WorstLeft {
    pub(super) findings: Findings,
    pub(super) verdict: Verdict,
    pub(super) arrangement: &'static Arrangement,
    pub(super) grid: Grid,
}

/// Of which arrangement the figures are, and what holds for it whatever they are.
pub(super) fn notes_on(
    findings: &Findings,
    verdict: &Verdict,
    arrangement: &Arrangement,
) -> Vec<Message> {
    let highest = volts(findings.supply.volts_max);
    let of = match verdict.consistent {
        _ if !verdict.conflicts.is_empty() => Message::new("grid-conflict"),
        1 => Message::new("grid-of-one").text("volts", highest),
        count => {
            Message::new("grid-of-worst").text("count", count.to_string()).text("volts", highest)
        }
    };
    let on_earth = arrangement.is_line_on_earth().then(|| Message::new("grid-line-on-earth"));
    // What holds whatever the figures are comes first.
    on_earth.into_iter().chain([of]).collect()
}

/// Says what the cells of an arrangement come to.
pub(super) struct Says<'a> {
    pub(super) findings: &'a Findings,
    pub(super) verdict: &'a Verdict,
    pub(super) arrangement: &'a Arrangement,
    pub(super) words: &'a Words,
}

impl Says<'_> {
    pub(super) fn view(&self, grid: &Grid) -> GridView {
        let columns = grid.states.iter().map(|state| self.column(*state)).collect();
        let rows = grid.faults.iter().zip(&grid.cells);
        GridView {
            notes: self.notes(),
            arrangement: self.parts(),
            columns,
            rows: rows.map(|(faults, cells)| self.row(*faults, &grid.states, cells)).collect(),
        }
    }

    fn notes(&self) -> Vec<String> {
        let pairs = matches!(self.verdict.treat_as, Class::OneFault | Class::TwoFaults)
            .then(|| Message::new("grid-two-faults"));
        let notes =
            notes_on(self.findings, self.verdict, self.arrangement).into_iter().chain(pairs);
        notes.map(|note| self.words.say(&note)).collect()
    }

    fn parts(&self) -> Vec<String> {
        let Some(line) = self.arrangement.line else { return Vec::new() };
        let ids = [
            format!("isolation-{}", self.arrangement.isolation.id()),
            format!("cord-{}", line.cord.id()),
            format!("switch_leg-{}", line.switch_leg.id()),
            format!("line_capacitor-{}", line.line_capacitor.id()),
            format!("reach-{}", line.reach.id()),
        ];
        ids.into_iter().map(|id| self.words.say(&Message::new(id))).collect()
    }

    fn column(&self, state: State) -> GridColumn {
        let plug = match state.plug {
            PlugWay::First => "grid-way-first",
            PlugWay::Second => "grid-way-second",
        };
        let switch = match state.switch {
            Switch::On => "grid-on",
            Switch::Off => "grid-off",
        };
        let selector = state.selector.map(|selector| match selector {
            Selector::Near => "grid-ground-near",
            Selector::Far => "grid-ground-far",
        });
        let ids = [(!self.verdict.worst.fits_one_way).then_some(plug), Some(switch), selector];
        let names = ids.into_iter().flatten().map(|id| self.words.say_id(id)).collect();
        GridColumn { state, names }
    }

    fn row(&self, faults: FaultSet, states: &[State], cells: &[Outcome]) -> GridRow {
        let fault = faults.faults().next();
        let named = |fault: Fault| self.words.say(&Message::new(format!("fault-{}", fault.id())));
        let what =
            |fault: Fault| self.words.say(&Message::new(format!("fault-{}-what", fault.id())));
        let cells = states.iter().zip(cells);
        GridRow {
            fault,
            name: fault.map_or_else(|| self.words.say_id("grid-as-found"), named),
            what: fault.map(what),
            cells: cells.map(|(state, outcome)| self.cell(*state, faults, *outcome)).collect(),
        }
    }

    pub(super) fn cell(&self, state: State, faults: FaultSet, outcome: Outcome) -> CellView {
        let level = level(outcome);
        let current = outcome.milliamperes();
        CellView {
            level,
            word: self.words.say(&Message::new(format!("cell-{}", level.id()))),
            figure: matches!(outcome, Outcome::Touch { .. })
                .then(|| self.words.write(&milliamperes(current))),
            milliamperes: current,
            sentences: self.sentences(state, faults, outcome),
            quoted: is_quoted(self.verdict, state, faults),
        }
    }

    fn sentences(&self, state: State, faults: FaultSet, outcome: Outcome) -> Vec<String> {
        // The worst case is of this very arrangement, and says whether its plug fits one way only.
        let here = Worst {
            milliamperes: outcome.milliamperes(),
            state: Some(state),
            faults,
            ..self.verdict.worst
        };
        let Some(state) = worst_state_sentence(&here, self.findings.supply.feed) else {
            return Vec::new();
        };
        let messages = match outcome {
            Outcome::Touch { milliamperes: current, open_circuit_volts } => vec![
                Message::new("cell-touch")
                    .message("state", state)
                    .text("current", milliamperes(current))
                    .text("volts", potential(open_circuit_volts)),
                severity_sentence(current),
            ],
            Outcome::BreakerTrips => vec![Message::new("cell-trips-what").message("state", state)],
            Outcome::BehindBarrier => {
                vec![Message::new("cell-barrier-what").message("state", state)]
            }
        };
        let on_earth =
            self.arrangement.is_line_on_earth().then(|| Message::new("grid-line-on-earth"));
        on_earth.iter().chain(&messages).map(|message| self.words.say(message)).collect()
    }
}

fn level(outcome: Outcome) -> CellLevel {
    match outcome {
        Outcome::Touch { milliamperes, .. } if milliamperes >= LET_GO_MA.value => CellLevel::Live,
        Outcome::Touch { milliamperes, .. } if milliamperes >= STARTLE_MA.value => CellLevel::Leaks,
        Outcome::Touch { .. } => CellLevel::Below,
        Outcome::BreakerTrips => CellLevel::BreakerTrips,
        Outcome::BehindBarrier => CellLevel::BehindBarrier,
    }
}
