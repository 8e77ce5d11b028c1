//! Somebody who looks at a physical unit and answers one question at a time.

use std::collections::BTreeMap;

use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};

use super::unit::{Condition, Meter, PhysicalUnit};
use crate::arrangement::ReadingId;
use crate::inspection::{
    CANT_TELL, Findings, Question, Shape, Step, cost, read_answer, read_meter, read_reading,
    read_value,
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

/// What an inspector knows of a unit, and how he fails.
pub struct Inspector {
    told: BTreeMap<String, Value>,
    readings: BTreeMap<String, Value>,
    meter: Value,
    slips: Slips,
    turn: usize,
    rng: ChaCha8Rng,
}

impl Inspector {
    /// Somebody in front of a unit; the same seed answers alike.
    pub fn of(unit: &PhysicalUnit, slips: Slips, seed: u64) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let told = unit.answers(&mut rng).into_iter().collect();
        let condition = Condition::sound(unit, &mut rng);
        let meter = Meter::default();
        let readings = unit.readings(&condition, &meter, &mut rng).into_iter().collect();
        Self { told, readings, meter: meter.json(), slips, turn: 0, rng }
    }

    /// Takes a step and writes down what comes of it. Gives whether it was answered wrongly on purpose.
    pub fn take(&mut self, step: Step, findings: &mut Findings) -> bool {
        let turn = self.turn;
        self.turn += 1;
        let cannot = self.slips != Slips::Never && self.rng.random_bool(cost(step).cant_tell_rate);
        let wrong = self.slips == Slips::WrongAt(turn);
        match step {
            Step::Ask(question) => self.answer(question, cannot && !wrong, wrong, findings),
            Step::Read(value) => {
                let known = self.told.get(&format!("values.{}", value.id())).cloned();
                let known = known.filter(|_| !cannot).and_then(|v| read_value(value, v).ok());
                match known {
                    Some(known) => _ = findings.values.insert(value, known),
                    None => _ = findings.left_open.insert(value),
                }
                false
            }
            Step::Measure(reading) => {
                self.read(reading, cannot, findings);
                false
            }
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

    fn read(&self, reading: ReadingId, cannot: bool, findings: &mut Findings) {
        let shown = self.readings.get(reading.id()).filter(|_| !cannot);
        let shown = shown.and_then(|shown| read_reading(reading, shown, reading.id()).ok());
        match shown {
            Some(shown) => {
                findings.readings.insert(reading, shown);
                if let Ok(meter) = read_meter(self.meter.clone()) {
                    findings.meter = meter;
                }
            }
            None => _ = findings.readings_left_open.insert(reading),
        }
    }
}
