//! What has been found about a unit: answers, values, tubes and readings.

use std::collections::{BTreeMap, BTreeSet};

use crate::arrangement::{ReadingId, Spread};
use crate::body::TOUCH_LIMIT_VOLTS;
use crate::hazard::Parts;
use crate::heaters::{Study, study};
use crate::supply::Supply;
use crate::words::Message;

use super::bank::{Access, Question, ValueId};
use super::leak;
use super::live_test::{LiveTest, Stop};

/// An answer to a question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// The inspector cannot tell. Removes nothing.
    CantTell,
    /// One of the question's ids.
    One(&'static str),
    /// One or more of the question's ids.
    Several(BTreeSet<&'static str>),
    /// A whole number.
    Number(u32),
}

impl Answer {
    /// Whether the answer is this id or has it among several.
    pub fn says(&self, id: &str) -> bool {
        match self {
            Self::One(one) => *one == id,
            Self::Several(several) => several.contains(id),
            Self::CantTell | Self::Number(_) => false,
        }
    }

    /// Whether something was found out.
    pub fn is_known(&self) -> bool {
        *self != Self::CantTell
    }
}

/// A value read off a part or measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartValue {
    /// F or Ω.
    pub value: f64,
    /// Measured counts as it is, marked within 20 %.
    pub measured: bool,
}

impl PartValue {
    fn spread(self) -> Spread {
        if self.measured { Spread::exactly(self.value) } else { Spread::marked(self.value) }
    }
}

/// What the rating plate says; each figure may be missing.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Rated {
    /// V rms.
    pub volts: Option<f64>,
    /// Hz.
    pub hertz: Option<f64>,
    /// W.
    pub watts: Option<f64>,
}

/// A meter reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reading {
    /// Ω, MΩ for insulation, V for the touch test.
    Value(f64),
    /// Above the meter's range.
    OverRange,
}

/// The meter's range and accuracy.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Meter {
    /// The highest resistance it shows, Ω.
    pub max_ohms: f64,
    /// Accuracy, % of the reading.
    pub percent: f64,
    /// Accuracy, digits of the last place.
    pub digits: f64,
}

impl Default for Meter {
    fn default() -> Self {
        Self { max_ohms: 2e6, percent: 1.0, digits: 2.0 }
    }
}

/// One finding, by what was asked or measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Finding {
    /// An answer.
    Answer(Question),
    /// A value of a part.
    Value(ValueId),
    /// A meter reading.
    Reading(ReadingId),
}

impl Finding {
    /// Its name: the question's id, or `values.` or `readings.` and the id.
    pub fn name(self) -> String {
        match self {
            Self::Answer(question) => question.id().to_owned(),
            Self::Value(value) => format!("values.{}", value.id()),
            Self::Reading(reading) => format!("readings.{}", reading.id()),
        }
    }

    /// Its name for a person.
    pub fn words(self) -> Message {
        Message::new(match self {
            Self::Answer(question) => format!("finding-{}", question.id()),
            Self::Value(value) => format!("finding-value-{}", value.id()),
            Self::Reading(reading) => format!("finding-{}", reading.id()),
        })
    }
}

/// All that has been found about a unit.
#[derive(Clone, Debug, PartialEq)]
pub struct Findings {
    /// What it is to be plugged into.
    pub supply: Supply,
    /// How far the inspector may go; always outside.
    pub access: BTreeSet<Access>,
    /// Answers.
    pub answers: BTreeMap<Question, Answer>,
    /// Tube types as written.
    pub tubes: Vec<String>,
    /// Meter readings.
    pub readings: BTreeMap<ReadingId, Reading>,
    /// Values of parts.
    pub values: BTreeMap<ValueId, PartValue>,
    /// Values that were looked for in vain, not to be asked again.
    pub left_open: BTreeSet<ValueId>,
    /// Readings that could not be taken, not to be asked for again.
    pub readings_left_open: BTreeSet<ReadingId>,
    /// The rating plate.
    pub rated: Option<Rated>,
    /// A rating plate was looked for in vain.
    pub plate_left_open: bool,
    /// The meter.
    pub meter: Meter,
    /// The live touch test.
    pub live_test: LiveTest,
}

impl Findings {
    /// Nothing found yet, looking from outside.
    pub fn new(supply: Supply) -> Self {
        Self {
            supply,
            access: BTreeSet::from([Access::Outside]),
            answers: BTreeMap::new(),
            tubes: Vec::new(),
            readings: BTreeMap::new(),
            values: BTreeMap::new(),
            left_open: BTreeSet::new(),
            readings_left_open: BTreeSet::new(),
            rated: None,
            plate_left_open: false,
            meter: Meter::default(),
            live_test: LiveTest::default(),
        }
    }

    /// The answer to a question, where something was found out.
    pub fn known(&self, question: Question) -> Option<&Answer> {
        self.answers.get(&question).filter(|answer| answer.is_known())
    }

    /// Whether a known answer is this id or has it among several.
    pub fn says(&self, question: Question, id: &str) -> bool {
        self.known(question).is_some_and(|answer| answer.says(id))
    }

    /// Whether a switch lifts the earth: the cord counts as not earthed, and its other position as well.
    pub fn has_earth_lift(&self) -> bool {
        self.says(Question::EarthLift, "present")
    }

    /// Whether the cord has a third wire that only drops volts for the heaters.
    pub fn has_resistance_cord(&self) -> bool {
        self.says(Question::CordWires, "three_wires_two_pins")
    }

    /// Whether a plug with an earth pin was seen.
    pub fn shows_earth_pin(&self) -> bool {
        ["three_pins", "three_pins_reversible"].iter().any(|plug| self.says(Question::Plug, plug))
    }

    /// Whether a question may be asked at this access and has not been.
    pub fn may_ask(&self, question: Question) -> bool {
        let given = question.entry().access.iter().any(|access| self.access.contains(access));
        given && !self.answers.contains_key(&question)
    }

    /// The same findings without one of them.
    #[must_use]
    pub fn without(&self, finding: Finding) -> Self {
        let mut rest = self.clone();
        match finding {
            Finding::Answer(question) => {
                rest.answers.remove(&question);
            }
            Finding::Value(value) => {
                rest.values.remove(&value);
            }
            Finding::Reading(reading) => {
                rest.readings.remove(&reading);
            }
        }
        rest
    }

    /// The findings that can carry a verdict: known answers, values and ohmmeter readings.
    pub fn list(&self) -> Vec<Finding> {
        let answers = self.answers.iter().filter(|(_, answer)| answer.is_known());
        let answers = answers.map(|(question, _)| Finding::Answer(*question));
        let values = self.values.keys().map(|value| Finding::Value(*value));
        let readings = self.readings.keys().filter(|reading| reading.probes().is_some());
        let readings = readings.map(|reading| Finding::Reading(*reading));
        answers.chain(values).chain(readings).collect()
    }

    /// What is known of the parts' values, at worst: what to act on goes by these.
    pub fn parts(&self) -> Parts {
        let spread = |value| self.values.get(&value).map(|part| part.spread());
        let usual = Parts::default();
        Parts {
            line_capacitor: spread(ValueId::LineCapacitor),
            network_ohm: leak::in_circuit(self, self.network_resistor()).at_worst,
            network_farad: spread(ValueId::NetworkCapacitor).unwrap_or(usual.network_farad),
            aerial: spread(ValueId::AerialCapacitor).unwrap_or(usual.aerial),
            heater_ohm: self
                .heaters()
                .and_then(|heaters| heaters.string_ohm())
                .unwrap_or(usual.heater_ohm),
            ..usual
        }
    }

    /// The same parts as the meter reads them now: the best that a unit can be goes by these.
    pub fn as_read(&self, parts: &Parts) -> Parts {
        let network_ohm = leak::in_circuit(self, self.network_resistor()).as_read;
        Parts { network_ohm, ..*parts }
    }

    /// The resistor between common and chassis as it is marked or was measured by itself, else its range, Ω.
    pub fn network_resistor(&self) -> Spread {
        let told = self.values.get(&ValueId::NetworkResistor);
        told.map_or(Parts::default().network_ohm, |part| part.spread())
    }

    /// The highest reading of a touch test, V rms: those of each position, and one that was only told.
    pub fn touch_volts(&self) -> Option<f64> {
        let told = match self.readings.get(&ReadingId::TouchTestVolts) {
            Some(Reading::Value(volts)) => Some(*volts),
            _ => None,
        };
        told.into_iter().chain(self.live_test.most_volts()).reduce(f64::max)
    }

    /// Why a touch test ends, and forbids power; a reading that was only told counts as one.
    pub fn touch_stop(&self) -> Option<Stop> {
        let above = self.touch_volts().is_some_and(|volts| volts > TOUCH_LIMIT_VOLTS.value);
        match self.live_test.stop() {
            Some(Stop::Tripped) => Some(Stop::Tripped),
            _ if above => Some(Stop::AboveLimit),
            other => other,
        }
    }

    /// What the list of tubes says against this supply; nothing where there is none.
    pub fn heaters(&self) -> Option<Study> {
        (!self.tubes.is_empty()).then(|| study(&self.tubes, self.supply.volts))
    }
}
