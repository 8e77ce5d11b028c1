//! Somebody who looks at a physical unit and answers one question at a time.

use std::collections::{BTreeMap, BTreeSet};

use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};

use super::unit::{Condition, Meter, PhysicalUnit};
use crate::arrangement::ReadingId;
use crate::inspection::{
    CANT_TELL, Findings, PartValue, Question, Shape, Step, ValueId, cost, read_answer, read_meter,
    read_reading, read_tubes, read_value,
};

/// How an inspector fails.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slips {
    /// Can always tell.
    Never,
    /// Cannot tell as often as the estimates say.
    CannotTell,
    /// Cannot tell as often, and the answer of this turn, counted from 0, is wrong.
    WrongAt(usize),
}

/// What the list of tubes is told under.
const TUBES: &str = "tubes";

/// Every step that there is, in a fixed order.
pub(super) fn steps() -> impl Iterator<Item = Step> {
    let questions = Question::ALL.iter().map(|question| Step::Ask(*question));
    let values = ValueId::ALL.iter().map(|value| Step::Read(*value));
    questions.chain(values).chain(ReadingId::ohmmeter().map(Step::Measure))
}

/// What an inspector knows of a unit, and how he fails.
pub struct Inspector {
    told: BTreeMap<String, Value>,
    readings: BTreeMap<String, Value>,
    meter: Value,
    /// The steps at which he cannot tell, whenever they come.
    cannot: BTreeSet<Step>,
    slips: Slips,
    turn: usize,
    rng: ChaCha8Rng,
}

impl Inspector {
    /// Somebody in front of a unit; the same seed answers alike, in whatever order the steps come.
    pub fn of(unit: &PhysicalUnit, slips: Slips, seed: u64) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let told = unit.answers(&mut rng).into_iter().collect();
        let condition = Condition::sound(unit, &mut rng);
        let meter = Meter::default();
        let readings = unit.readings(&condition, &meter, &mut rng).into_iter().collect();
        let cannot = steps()
            .filter(|step| rng.random_bool(cost(*step).cant_tell_rate) && slips != Slips::Never);
        let cannot = cannot.collect();
        Self { told, readings, meter: meter.json(), cannot, slips, turn: 0, rng }
    }

    /// Takes a step and writes down what comes of it. Gives whether it was answered wrongly on purpose.
    pub fn take(&mut self, step: Step, findings: &mut Findings) -> bool {
        let turn = self.turn;
        self.turn += 1;
        let cannot = self.cannot.contains(&step);
        let wrong = self.slips == Slips::WrongAt(turn);
        match step {
            Step::Ask(Question::TubeList) if !cannot && self.told.contains_key(TUBES) => {
                let tubes = self.told.get(TUBES).cloned().unwrap_or_default();
                findings.tubes = read_tubes(tubes, TUBES).unwrap_or_default();
                false
            }
            Step::Ask(question) => self.answer(question, cannot && !wrong, wrong, findings),
            Step::Read(value) => {
                let known = self.told.get(&format!("values.{}", value.id())).cloned();
                let known = known.filter(|_| wrong || !cannot);
                let known = known.and_then(|v| read_value(value, v).ok());
                let misread = wrong && known.is_some();
                match known {
                    // A zero too many or too few is what happens to figures.
                    Some(known) if misread => {
                        let factor = if self.rng.random() { 10.0 } else { 0.1 };
                        let known = PartValue { value: known.value * factor, ..known };
                        findings.values.insert(value, known);
                    }
                    Some(known) => _ = findings.values.insert(value, known),
                    None => _ = findings.left_open.insert(value),
                }
                misread
            }
            Step::Measure(reading) => self.read(reading, cannot && !wrong, wrong, findings),
        }
    }

    fn answer(
        &mut self,
        question: Question,
        cannot: bool,
        wrong: bool,
        findings: &mut Findings,
    ) -> bool {
        let truth = self.told.get(question.id()).cloned().filter(|_| !cannot);
        let said = if wrong { self.anything_but(question, truth.as_ref()) } else { None };
        let erred = said.is_some();
        let said = said.or(truth).unwrap_or_else(|| json!(CANT_TELL));
        if let Ok(answer) = read_answer(question, said) {
            findings.answers.insert(question, answer);
        }
        erred
    }

    /// Any other answer that the question takes.
    fn anything_but(&mut self, question: Question, truth: Option<&Value>) -> Option<Value> {
        let entry = question.entry();
        let wrap = |id: &&'static str| match entry.shape {
            Shape::One => Some(json!(id)),
            Shape::Several => Some(json!([id])),
            Shape::Number | Shape::Tubes => None,
        };
        let others = entry.answers.iter().filter_map(wrap).filter(|answer| Some(answer) != truth);
        let others: Vec<Value> = others.collect();
        let drawn = self.rng.random_range(0..others.len().max(1));
        others.get(drawn).cloned()
    }

    fn read(
        &mut self,
        reading: ReadingId,
        cannot: bool,
        wrong: bool,
        findings: &mut Findings,
    ) -> bool {
        let shown = self.readings.get(reading.id()).cloned().filter(|_| !cannot);
        let misread =
            if wrong { shown.as_ref().and_then(|shown| self.misread(shown)) } else { None };
        let erred = misread.is_some();
        let shown = misread.or(shown);
        let shown = shown.and_then(|shown| read_reading(reading, &shown, reading.id()).ok());
        match shown {
            Some(shown) => {
                findings.readings.insert(reading, shown);
                if let Ok(meter) = read_meter(self.meter.clone()) {
                    findings.meter = meter;
                }
            }
            None => _ = findings.readings_left_open.insert(reading),
        }
        erred
    }

    /// Another figure: a joint, a string or open, as where a probe slips off or meets the wrong place.
    fn misread(&mut self, shown: &Value) -> Option<Value> {
        let others = [json!(0.3), json!(120.0), json!("OL")];
        let is_near = |other: &Value| match (other.as_f64(), shown.as_f64()) {
            (Some(other), Some(shown)) => (other.max(1.0) / shown.max(1.0)).log10().abs() < 1.0,
            (other, shown) => other.is_none() && shown.is_none(),
        };
        let others: Vec<Value> = others.into_iter().filter(|other| !is_near(other)).collect();
        let drawn = self.rng.random_range(0..others.len().max(1));
        others.get(drawn).cloned()
    }
}
