//! Makes the problem of what to ask next out of findings: what is possible, grouped, and what may be asked.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;

use super::super::bank::{Access, Question, Role as Says, ValueId};
use super::super::doubt::{is_without_cord, traced};
use super::super::evidence;
use super::super::findings::Findings;
use super::super::judge::Judge;
use super::super::measured::{
    Given, MetalReads, OUTCOMES, PLUGS, expected, has_no_motor, has_path, proven_path, stays_read,
};
use super::super::prior;
use super::super::reach::{METAL, is_metal_found};
use super::super::set::ArrangementSet;
use super::alike::Alike;
use super::beliefs::Beliefs;
use super::problem::{CANT_TELL, Group, Problem, Role, Test};
use super::{Step, answers, metal};
use crate::arrangement::{
    Arrangement, ArrangementId, Isolation, LineCapacitor, Probe, Reach, ReadingId, Switch,
};

fn is_on_earth(reading: ReadingId) -> bool {
    matches!(reading.probes(), Some((Probe::EarthPin, _)))
}

/// A step with what every arrangement says to it.
struct Draft {
    step: Step,
    role: Role,
    outcomes: u8,
    /// By arrangement, in their order.
    stays: &'static [u16],
    stays_proven: &'static [u16],
    gives: &'static [u16],
}

/// The group that each arrangement of a problem is in.
pub(super) type Members = Vec<(ArrangementId, usize)>;

/// What is possible and may be asked at this access.
pub(super) fn problem(
    findings: &Findings,
    set: &ArrangementSet,
    judge: &mut Judge,
    beliefs: &Beliefs,
) -> Problem {
    with_members(findings, set, judge, beliefs).0
}

/// The same, with the group of each arrangement.
pub(super) fn with_members(
    findings: &Findings,
    set: &ArrangementSet,
    judge: &mut Judge,
    beliefs: &Beliefs,
) -> (Problem, Members) {
    let proven = proven_path(findings).is_ok();
    let set = &hoped_for(findings, set);
    let mut drafts = drafts(findings, proven);
    drafts.retain(|draft| draft.may_part(set));
    let mut weights = beliefs.weights().to_vec();
    answers::weigh(findings, &mut weights);
    let open_values = drafts.iter().filter_map(|draft| match draft.step {
        Step::Read(value) => Some(value),
        _ => None,
    });
    let open_values: Vec<ValueId> = open_values.collect();
    let reads_path = drafts.iter().any(|draft| draft.role == Role::PathOn);
    let mut groups: Vec<Group> = Vec::new();
    let mut first: Vec<ArrangementId> = Vec::new();
    let mut members = Members::new();
    let mut known: FxHashMap<Alike, usize> = FxHashMap::default();
    let all: Vec<(ArrangementId, &Arrangement)> = set.iter().collect();
    let says = drafts.iter().map(|draft| |id: ArrangementId| draft.says(id));
    let said = Alike::said(says, &all);
    for ((id, arrangement), said) in all.iter().copied().zip(said) {
        let weight = weights.get(usize::from(id.0)).copied().unwrap_or_default();
        let group = Group {
            has_path: !reads_path || has_path(arrangement),
            ..group_of(id, arrangement, judge, &open_values, weight)
        };
        let alike = said.with(&group);
        let place = *known.entry(alike).or_insert(groups.len());
        match groups.get_mut(place) {
            Some(alike) => alike.weight += weight,
            None => {
                groups.push(group);
                first.push(id);
            }
        }
        members.push((id, place));
    }
    let tests = drafts.iter().map(|draft| draft.test(&first, beliefs)).collect();
    let mut problem = Problem {
        groups,
        tests,
        metal: metal::digits(findings),
        proven,
        no_motor: has_no_motor(findings),
        metal_reads: MetalReads::of(findings),
    };
    put_in_order(&mut problem, findings);
    (problem, members)
}

/// What the unit may be: what is possible, and what would be if the metal found were joined to nothing, which
/// counts as joined until it is traced, where somebody may still trace it. Nobody is made to hope for a unit
/// without a line side once a look at the plug has not shown one.
fn hoped_for(findings: &Findings, set: &ArrangementSet) -> ArrangementSet {
    let mut wide = set.clone();
    if metal::may_be_traced(findings) {
        wide.add(&evidence::possible(&traced(findings, "no")));
    }
    if findings.answers.contains_key(&Question::Plug) && !is_without_cord(findings) {
        wide.remove(&WITHOUT_LINE);
    }
    wide
}

static WITHOUT_LINE: LazyLock<ArrangementSet> =
    LazyLock::new(|| ArrangementSet::of(|arrangement| arrangement.line.is_none()));

fn group_of(
    id: ArrangementId,
    arrangement: &Arrangement,
    judge: &mut Judge,
    open_values: &[ValueId],
    weight: f64,
) -> Group {
    let class = judge.worst_class(id);
    let if_read = if open_values.is_empty() { class } else { judge.class_if_read(id) };
    let has = |value: &&ValueId| class != if_read && has_part(arrangement, **value);
    let parts = open_values.iter().filter(has).fold(0, |bits, value| bits | 1 << *value as u8);
    Group {
        weight,
        class,
        if_read: if parts == 0 { class } else { if_read },
        parts,
        kind: metal::kind(arrangement),
        has_path: has_path(arrangement),
    }
}

/// Whether an arrangement has the part that a value is of.
pub(super) fn has_part(arrangement: &Arrangement, value: ValueId) -> bool {
    arrangement.line.is_some_and(|line| match value {
        ValueId::LineCapacitor => line.line_capacitor != LineCapacitor::None,
        ValueId::AerialCapacitor => line.reach == Reach::AerialTerminal,
        ValueId::NetworkCapacitor | ValueId::NetworkResistor => {
            arrangement.isolation == Isolation::LineFloated
        }
    })
}

/// Turns out well, turns out badly; where there is no such part, nothing.
static VALUES: LazyLock<Vec<Vec<u16>>> = LazyLock::new(|| {
    let gives = |value: &ValueId| {
        let of = |a: &Arrangement| if has_part(a, *value) { 0b11 } else { 0 };
        crate::arrangement::all().iter().map(of).collect()
    };
    ValueId::ALL.iter().map(gives).collect()
});

fn drafts(findings: &Findings, proven: bool) -> Vec<Draft> {
    let questions = Question::ALL.iter().copied().filter(|question| {
        question.entry().role == Says::Conclusive && findings.may_ask(*question)
    });
    let found = is_metal_found(findings);
    let questions = questions.filter_map(|question| Draft::of_question(question, found));
    let values = ValueId::ALL.iter().copied().filter(|value| {
        findings.access.contains(&Access::CoverOff)
            && !findings.values.contains_key(value)
            && !findings.left_open.contains(value)
    });
    let values = values.map(Draft::of_value);
    let readings = readings_to_take(findings);
    let readings = readings.map(|reading| Draft::of_reading(reading, findings, proven));
    let tubes = findings.tubes.is_empty() && findings.may_ask(Question::TubeList);
    let tubes = tubes.then(Draft::of_tubes);
    questions.chain(values).chain(readings).chain(tubes).collect()
}

/// The ohmmeter readings that can be taken: with the pins named by the plug, on the chassis with the
/// cover off, and on bare metal that is known to be there.
fn readings_to_take(findings: &Findings) -> impl Iterator<Item = ReadingId> + '_ {
    let says = |answer: &&str| findings.says(Question::Plug, answer);
    let named = PLUGS.iter().any(says) && findings.access.contains(&Access::Meter);
    // Through a switch that lifts the earth its pin says nothing, so that is asked first.
    let earth = findings.shows_earth_pin()
        && (findings.says(Question::EarthLift, "absent")
            || !findings.answers.contains_key(&Question::EarthLift));
    let cover_off = findings.access.contains(&Access::CoverOff);
    let bare = is_metal_found(findings);
    ReadingId::ohmmeter().filter(move |reading| {
        let Some((pin, place)) = reading.probes() else { return false };
        named
            && !findings.readings.contains_key(reading)
            && !findings.readings_left_open.contains(reading)
            && (pin != Probe::EarthPin || earth)
            && match place {
                Probe::Chassis => cover_off,
                Probe::Part => bare,
                _ => true,
            }
    })
}

/// What a soft step says of each arrangement: its isolation.
static ISOLATIONS: LazyLock<Vec<u16>> =
    LazyLock::new(|| crate::arrangement::all().iter().map(|a| a.isolation as u16).collect());

impl Draft {
    /// A step that says nothing.
    const NOTHING: Self = Self {
        step: Step::Ask(Question::TubeList),
        role: Role::Alone,
        outcomes: 0,
        stays: &[],
        stays_proven: &[],
        gives: &[],
    };

    fn of_question(question: Question, found: bool) -> Option<Self> {
        let step = Step::Ask(question);
        if let Some(place) = METAL.iter().position(|metal| *metal == question) {
            return Some(Self {
                step,
                role: Role::Metal(place),
                outcomes: metal::outcomes(place),
                gives: metal::gives(place, found),
                ..Self::NOTHING
            });
        }
        answers::stands_alone(question).then(|| Self {
            step,
            role: Role::Alone,
            outcomes: question.entry().answers.len() as u8,
            stays: answers::stays(question),
            gives: answers::gives(question),
            ..Self::NOTHING
        })
    }

    fn of_tubes() -> Self {
        Self {
            step: Step::Ask(Question::TubeList),
            role: Role::Soft,
            outcomes: prior::tube_readings(Isolation::LineTied).len() as u8,
            gives: &ISOLATIONS,
            ..Self::NOTHING
        }
    }

    fn of_value(value: ValueId) -> Self {
        Self {
            step: Step::Read(value),
            role: Role::Value(1 << value as u8),
            outcomes: 2,
            gives: VALUES.get(value as usize).map_or(&[], Vec::as_slice),
            ..Self::NOTHING
        }
    }

    fn of_reading(reading: ReadingId, findings: &Findings, proven: bool) -> Self {
        let given = Given {
            no_motor: has_no_motor(findings),
            lift_absent: findings.says(Question::EarthLift, "absent") || is_on_earth(reading),
        };
        let on_pins = matches!(reading.probes(), Some((Probe::PinA, Probe::PinB)));
        Self {
            step: Step::Measure(reading),
            role: match (on_pins, reading.switch()) {
                (true, Some(Switch::On)) => Role::PathOn,
                (true, _) => Role::PathOff,
                (false, _) => Role::Reading,
            },
            outcomes: OUTCOMES.len() as u8,
            stays: stays_read(reading, given, proven),
            stays_proven: stays_read(reading, given, true),
            gives: expected(reading),
        }
    }

    /// Whether an answer could part anything in a set, alone or with others.
    fn may_part(&self, set: &ArrangementSet) -> bool {
        if self.stays.is_empty() || matches!(self.role, Role::PathOn | Role::PathOff) {
            return true;
        }
        let (mut given, mut everywhere) = (0, u16::MAX);
        for (id, _) in set.iter() {
            given |= at(self.gives, id);
            everywhere &= at(self.stays, id);
            if !self.stays_proven.is_empty() {
                everywhere &= at(self.stays_proven, id);
            }
        }
        given & !everywhere != 0
    }

    /// All that an arrangement says to the step.
    fn says(&self, id: ArrangementId) -> u64 {
        let [stays, proven, gives] =
            [self.stays, self.stays_proven, self.gives].map(|list| u64::from(at(list, id)));
        stays << 32 | proven << 16 | gives
    }

    fn chances_of(&self, first: &[ArrangementId]) -> Vec<&'static [f64]> {
        let isolation = |id: &ArrangementId| Isolation::ALL.get(usize::from(at(self.gives, *id)));
        first
            .iter()
            .filter_map(isolation)
            .map(|isolation| prior::tube_readings(*isolation))
            .collect()
    }

    fn test(&self, first: &[ArrangementId], beliefs: &Beliefs) -> Test {
        let cost = beliefs.cost(self.step);
        let soft = self.role == Role::Soft;
        let of = |list: &[u16]| first.iter().map(|id| at(list, *id)).collect();
        let there = |list: &[u16]| if list.is_empty() { Vec::new() } else { of(list) };
        Test {
            step: self.step,
            // What is answered wrongly is asked once more, as often as it takes.
            seconds: cost.seconds / (1.0 - cost.wrong_rate),
            cant_tell: cost.cant_tell_rate,
            outcomes: self.outcomes,
            role: self.role,
            after: None,
            may: there(self.stays),
            may_proven: there(self.stays_proven),
            gives: if soft { Vec::new() } else { of(self.gives) },
            chances: if soft { self.chances_of(first) } else { Vec::new() },
        }
    }
}

fn at(list: &[u16], id: ArrangementId) -> u16 {
    list.get(usize::from(id.0)).copied().unwrap_or_default()
}

/// What makes no sense before something else: a class of a capacitor that nobody has looked for.
fn put_in_order(problem: &mut Problem, findings: &Findings) {
    use super::super::bank::ValueId::{AerialCapacitor, NetworkCapacitor, NetworkResistor};
    let found = metal::is_found(problem.metal);
    let lift_is_open = !findings.answers.contains_key(&Question::EarthLift);
    let not_none = |question: Question| {
        let none = answers::place(question, "none").map_or(0, |bit| 1u16 << bit);
        !none
    };
    let place =
        |question: Question| problem.tests.iter().position(|test| test.step == Step::Ask(question));
    let after = |step: Step| -> Option<(usize, u16)> {
        match step {
            Step::Ask(Question::LineCapacitorClass) | Step::Read(ValueId::LineCapacitor) => {
                Some((place(Question::LineCapacitor)?, not_none(Question::LineCapacitor)))
            }
            Step::Read(NetworkCapacitor | NetworkResistor) => {
                let bit = answers::place(Question::CommonToChassis, "through_network")?;
                Some((place(Question::CommonToChassis)?, 1 << bit | 1 << CANT_TELL))
            }
            Step::Read(AerialCapacitor) => Some((place(Question::Terminals)?, 0b1010)),
            Step::Measure(reading) if is_on_earth(reading) && lift_is_open => {
                let absent = answers::place(Question::EarthLift, "absent")?;
                Some((place(Question::EarthLift).unwrap_or(usize::MAX), 1 << absent))
            }
            Step::Ask(Question::MetalJoined) if !found => {
                Some((place(Question::BareMetal)?, !1 & !(1 << CANT_TELL)))
            }
            _ => None,
        }
    };
    let orders: Vec<Option<(usize, u16)>> =
        problem.tests.iter().map(|test| after(test.step)).collect();
    // Nothing was found to trace, and nobody is asked any more.
    let idle = |test: &Test| {
        test.step == Step::Ask(Question::MetalJoined)
            && !found
            && place(Question::BareMetal).is_none()
    };
    let idle = problem.tests.iter().position(idle);
    for (test, after) in problem.tests.iter_mut().zip(orders) {
        test.after = after;
    }
    if let Some(test) = idle.and_then(|place| problem.tests.get_mut(place)) {
        // Can never be taken.
        test.after = Some((usize::MAX, 0));
    }
}
