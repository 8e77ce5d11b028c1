//! For each question that stands by itself: the answers under which an arrangement stays, and those it is
//! taken to give.

use std::sync::LazyLock;

use super::super::bank::{Question, Role, Shape};
use super::super::evidence::left_by;
use super::super::findings::{Answer, Findings};
use super::super::reach;
use super::super::set::ArrangementSet;
use crate::arrangement::{Arrangement, ArrangementId, COUNT};

/// What a true answer that leaves more than another is taken to weigh beside it: inspectors name what
/// says the most (assumption; orders the questions only).
const LESS_SHARP: f64 = 0.05;

static LINE_ON_EARTH: LazyLock<ArrangementSet> =
    LazyLock::new(|| ArrangementSet::of(Arrangement::is_line_on_earth));

/// The answers of one question for every arrangement, one bit for each answer.
#[derive(Default)]
struct Answers {
    stays: Vec<u16>,
    gives: Vec<u16>,
}

static ANSWERS: LazyLock<Vec<Answers>> =
    LazyLock::new(|| Question::ALL.iter().map(|question| Answers::of(*question)).collect());

impl Answers {
    fn of(question: Question) -> Self {
        if !stands_alone(question) {
            return Self::default();
        }
        let answers = question.entry().answers.iter();
        // What closing a lift does is added by the judge; while nobody has answered, the sets that it puts on the
        // earth conductor stand for it.
        let wide = |answer: &&'static str| {
            let mut set = left_by(question, answer)?.clone();
            if question == Question::EarthLift {
                set.add(&LINE_ON_EARTH);
            }
            Some(set)
        };
        let sets: Vec<ArrangementSet> = answers.filter_map(wide).collect();
        let every = || (0u16..).map(ArrangementId).take(COUNT);
        let bits = |holds: &dyn Fn(&ArrangementSet) -> bool| {
            let places = sets.iter().enumerate();
            places
                .fold(0u16, |bits, (place, set)| if holds(set) { bits | 1 << place } else { bits })
        };
        let sharpest = |id: ArrangementId| {
            let sharper = |set: &ArrangementSet| {
                sets.iter()
                    .any(|other| other.contains(id) && *other != *set && other.is_within(set))
            };
            bits(&|set| set.contains(id) && !sharper(set))
        };
        Self {
            stays: every().map(|id| bits(&|set| set.contains(id))).collect(),
            gives: every().map(sharpest).collect(),
        }
    }
}

/// Whether a question removes arrangements by each answer alone.
pub(super) fn stands_alone(question: Question) -> bool {
    let entry = question.entry();
    entry.role == Role::Conclusive && entry.shape == Shape::One && !reach::METAL.contains(&question)
}

/// The answers under which each arrangement stays.
pub(super) fn stays(question: Question) -> &'static [u16] {
    ANSWERS.get(question as usize).map_or(&[], |answers| &answers.stays)
}

/// The answers each arrangement is taken to give: the true ones, less those that leave more than another.
pub(super) fn gives(question: Question) -> &'static [u16] {
    ANSWERS.get(question as usize).map_or(&[], |answers| &answers.gives)
}

/// The bit of an answer.
pub(super) fn place(question: Question, answer: &str) -> Option<u8> {
    let place = question.entry().answers.iter().position(|known| *known == answer);
    place.map(|place| place as u8)
}

/// How likely each arrangement is to have given the answers that are there, beside the others.
pub(super) fn weigh(findings: &Findings, weights: &mut [f64]) {
    for (&question, answer) in findings.answers.iter().filter(|(q, _)| stands_alone(**q)) {
        let Answer::One(id) = answer else { continue };
        let Some(bit) = place(question, id) else { continue };
        for (weight, gives) in weights.iter_mut().zip(gives(question)) {
            *weight *= if gives >> bit & 1 == 1 {
                1.0 / f64::from(gives.count_ones())
            } else {
                LESS_SHARP
            };
        }
    }
}
