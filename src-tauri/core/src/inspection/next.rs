//! What to ask next, and when asking can no longer improve the verdict.
//!
//! Stops when no arrangement still possible, with the answers it may truthfully give to everything
//! that may still be asked, leaves a better worst class. Until then it asks the question that is
//! expected to part the most likelihood of one class from that of others for each second. Both are
//! sound: what is asked only ever adds findings.

use std::collections::HashSet;
use std::sync::LazyLock;

use super::bank::{Access, Question, Role, Shape, ValueId, cost_of, value_cost};
use super::conflict::Possible;
use super::evidence::left_by;
use super::findings::{Answer, Finding, Findings};
use super::judge::Judge;
use super::reach;
use super::set::ArrangementSet;
use crate::arrangement::{Arrangement, ArrangementId, COUNT, Isolation, LineCapacitor, Reach};
use crate::hazard::Class;

/// What to do next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// Ask a question.
    Ask(Question),
    /// Read or measure a value.
    Read(ValueId),
}

impl Step {
    /// Its name in a findings file.
    pub fn name(self) -> String {
        match self {
            Self::Ask(question) => Finding::Answer(question).name(),
            Self::Read(value) => Finding::Value(value).name(),
        }
    }
}

/// The next step, or nothing when treat as, the first of the two classes, can no longer improve;
/// `weights` is how likely each arrangement is.
pub fn step(
    findings: &Findings,
    weights: &[f64],
    possible: &Possible,
    judge: &mut Judge,
    (treat_as, could_be): (Class, Class),
) -> Option<Step> {
    if possible.is_conflict() {
        // A conflict is mended by looking again, not by asking more.
        return None;
    }
    let open = Open::of(findings);
    if treat_as == could_be || !open.can_improve(possible, judge, treat_as) {
        return open.metal_to_trace(&possible.considered, treat_as);
    }
    open.best_question(&Weights::of(weights, &possible.considered, judge), &possible.considered)
        .or_else(|| open.value_that_matters(&possible.considered).map(Step::Read))
}

/// What may still be asked.
struct Open {
    single: Vec<Question>,
    metal: Vec<Question>,
    values: Vec<ValueId>,
    findings: Findings,
}

impl Open {
    fn of(findings: &Findings) -> Self {
        let access: Vec<Access> = findings.access.iter().copied().collect();
        let open: Vec<Question> = Question::ALL
            .iter()
            .copied()
            .filter(|question| question.entry().role == Role::Conclusive)
            .filter(|question| question.may_be_asked(&access))
            .filter(|question| !findings.answers.contains_key(question))
            .collect();
        let may_read = access.contains(&Access::CoverOff);
        let unread = |value: &&ValueId| {
            let settled = findings.values.contains_key(value) || findings.left_open.contains(value);
            may_read && !settled
        };
        Self {
            single: open
                .iter()
                .copied()
                .filter(|question| !reach::METAL.contains(question))
                .collect(),
            metal: reach::METAL.into_iter().filter(|question| open.contains(question)).collect(),
            values: ValueId::ALL.iter().filter(unread).copied().collect(),
            findings: findings.clone(),
        }
    }

    /// Bare metal counts as on the chassis until it is traced. Where it could be on a common of its own
    /// that makes matters worse, so it is traced before anything better than live is left standing.
    fn metal_to_trace(&self, set: &ArrangementSet, treat_as: Class) -> Option<Step> {
        let untraced = self.metal.contains(&Question::MetalJoined)
            && set.iter().any(|(_, a)| {
                a.isolation.has_own_common()
                    && a.line.is_some_and(|line| line.reach == Reach::Exposed)
            });
        (untraced && treat_as != Class::Live).then_some(Step::Ask(Question::MetalJoined))
    }

    /// Whether some arrangement could answer so that the worst class left is better.
    ///
    /// Arrangements that answer alike leave the same, so one of each is tried.
    fn can_improve(&self, possible: &Possible, judge: &mut Judge, treat_as: Class) -> bool {
        let set = &possible.considered;
        let mut tried = HashSet::new();
        for (id, arrangement) in set.iter() {
            if !treat_as.is_worse_than(self.best_hope(id, judge))
                || !tried.insert(self.signature(id, arrangement))
            {
                continue;
            }
            let left = self.after_truthful_answers(set, id, arrangement);
            if left.iter().any(|left| self.worst_hope(left, judge, treat_as)) {
                return true;
            }
        }
        false
    }

    /// What an arrangement would answer to all that is open.
    fn signature(&self, id: ArrangementId, arrangement: &Arrangement) -> (Option<Reach>, Vec<u8>) {
        let reach = arrangement.line.map(|line| line.reach).filter(|_| !self.metal.is_empty());
        (reach, self.single.iter().map(|&question| sharpest_mask(question, id)).collect())
    }

    fn best_hope(&self, id: ArrangementId, judge: &mut Judge) -> Class {
        if self.values.is_empty() { judge.worst_class(id) } else { judge.class_if_read(id) }
    }

    /// Whether everything left could turn out better than treat as.
    fn worst_hope(&self, left: &ArrangementSet, judge: &mut Judge, treat_as: Class) -> bool {
        left.iter().all(|(id, _)| treat_as.is_worse_than(self.best_hope(id, judge)))
    }

    /// What is left of a set after every joint choice of the sharpest truthful answers.
    fn after_truthful_answers(
        &self,
        set: &ArrangementSet,
        id: ArrangementId,
        arrangement: &Arrangement,
    ) -> Vec<ArrangementSet> {
        let mut start = set.clone();
        start.keep(&self.metal_after(arrangement));
        let mut left = vec![start];
        for &question in &self.single {
            let sharpest = sharpest_answers(question, id);
            if !sharpest.is_empty() {
                left = left
                    .iter()
                    .flat_map(|set| sharpest.iter().map(move |answer| set.and(answer)))
                    .collect();
            }
        }
        left
    }

    /// What the open questions about metal can leave, answered truthfully by this arrangement.
    fn metal_after(&self, arrangement: &Arrangement) -> ArrangementSet {
        let mut told = self.findings.clone();
        if let Some(line) = arrangement.line {
            for &question in &self.metal {
                if let Some(answer) = metal_answer(question, line.reach) {
                    told.answers.insert(question, answer);
                }
            }
        }
        reach::allowed(&told).set()
    }

    /// The question that parts the most for each second; the bank's order breaks ties.
    fn best_question(&self, weights: &Weights, set: &ArrangementSet) -> Option<Step> {
        let metal = self.metal.first().map(|first| {
            let seconds: f64 = self.metal.iter().map(|question| cost_of(*question).seconds).sum();
            (*first, self.parted_by_metal(set, weights) / seconds)
        });
        let single = self.single.iter().map(|&question| {
            (question, parted_by(question, set, weights) / cost_of(question).seconds)
        });
        let mut candidates: Vec<(Question, f64)> = single.chain(metal).collect();
        candidates.sort_by_key(|(question, _)| *question);
        let mut best: Option<(f64, Question)> = None;
        for (question, score) in candidates {
            if score > 0.0 && best.is_none_or(|(most, _)| score > most) {
                best = Some((score, question));
            }
        }
        best.map(|(_, question)| Step::Ask(question))
    }

    fn parted_by_metal(&self, set: &ArrangementSet, weights: &Weights) -> f64 {
        let with_reach = |reach: Reach| {
            let mut told = self.findings.clone();
            for &question in &self.metal {
                if let Some(answer) = metal_answer(question, reach) {
                    told.answers.insert(question, answer);
                }
            }
            let having = set.iter().filter(|(_, a)| a.line.is_some_and(|l| l.reach == reach));
            let having = weights.by_class(having.map(|(id, _)| id));
            weights.parted(&having, set, &reach::allowed(&told).set())
        };
        Reach::ALL.iter().map(|&reach| with_reach(reach)).sum()
    }

    /// A value that some arrangement still possible has, the cheapest first.
    fn value_that_matters(&self, set: &ArrangementSet) -> Option<ValueId> {
        let mut values = self.values.clone();
        values.sort_by(|a, b| value_cost(*a).seconds.total_cmp(&value_cost(*b).seconds));
        values.into_iter().find(|value| set.iter().any(|(_, a)| has_part(a, *value)))
    }
}

fn has_part(arrangement: &Arrangement, value: ValueId) -> bool {
    arrangement.line.is_some_and(|line| match value {
        ValueId::LineCapacitor => line.line_capacitor != LineCapacitor::None,
        ValueId::AerialCapacitor => line.reach == Reach::AerialTerminal,
        ValueId::NetworkCapacitor | ValueId::NetworkResistor => {
            arrangement.isolation == Isolation::LineFloated
        }
    })
}

/// A truthful answer about metal of a unit with this reach; nothing where the question is idle.
fn metal_answer(question: Question, reach: Reach) -> Option<Answer> {
    let nothing = matches!(reach, Reach::Closed | Reach::AerialTerminal);
    let several = |id| Some(Answer::Several([id].into()));
    match question {
        Question::BareMetal => several(match reach {
            Reach::Closed | Reach::AerialTerminal => "none_anywhere",
            Reach::Exposed => "screws_or_shafts",
            Reach::Handheld => "instrument_jack",
            Reach::CommonExposed => "socket_or_pickup",
        }),
        Question::Back => Some(Answer::One("fitted")),
        Question::Terminals => {
            several(if reach == Reach::AerialTerminal { "aerial_or_earth" } else { "none" })
        }
        Question::MetalJoined if nothing => None,
        Question::MetalJoined if reach == Reach::CommonExposed => Some(Answer::One("common")),
        Question::MetalJoined => Some(Answer::One("chassis")),
        _ => None,
    }
}

/// The answers an arrangement may truthfully give, less those that leave more than another does: one
/// bit for each answer of the question.
fn sharpest_mask(question: Question, id: ArrangementId) -> u8 {
    let masks = SHARPEST.get(question as usize);
    masks.and_then(|masks| masks.get(usize::from(id.0))).copied().unwrap_or_default()
}

static SHARPEST: LazyLock<Vec<Vec<u8>>> = LazyLock::new(|| {
    let masks = |question: &Question| {
        let answers: Vec<&ArrangementSet> = answer_sets(*question).collect();
        (0u16..).map(ArrangementId).take(COUNT).map(|id| mask_of(&answers, id)).collect()
    };
    Question::ALL.iter().map(masks).collect()
});

fn mask_of(answers: &[&ArrangementSet], id: ArrangementId) -> u8 {
    let truthful = || answers.iter().filter(|answer| answer.contains(id));
    let is_sharpest = |set: &ArrangementSet| {
        set.contains(id) && !truthful().any(|other| *other != set && other.is_within(set))
    };
    answers.iter().enumerate().fold(
        0,
        |mask, (place, set)| {
            if is_sharpest(set) { mask | 1 << place } else { mask }
        },
    )
}

fn sharpest_answers(question: Question, id: ArrangementId) -> Vec<&'static ArrangementSet> {
    let mask = sharpest_mask(question, id);
    let sets = answer_sets(question).enumerate();
    sets.filter(|(place, _)| mask & (1 << place) != 0).map(|(_, set)| set).collect()
}

fn answer_sets(question: Question) -> impl Iterator<Item = &'static ArrangementSet> {
    let answers = match question.entry().shape {
        Shape::One => question.entry().answers,
        _ => &[],
    };
    answers.iter().filter_map(move |answer| left_by(question, answer))
}

/// What a question is expected to part, each arrangement giving its first sharpest answer.
fn parted_by(question: Question, set: &ArrangementSet, weights: &Weights) -> f64 {
    let answers: Vec<&ArrangementSet> = answer_sets(question).collect();
    let mut by_answer = vec![Shares::default(); answers.len()];
    for (id, _) in set.iter() {
        let sharpest = sharpest_mask(question, id).trailing_zeros() as usize;
        if let Some(shares) = by_answer.get_mut(sharpest) {
            weights.count(id, shares);
        }
    }
    let answered = answers.iter().zip(&by_answer);
    let expected: f64 = answered.map(|(answer, having)| weights.parted(having, set, answer)).sum();
    expected * (1.0 - cost_of(question).cant_tell_rate)
}

/// Likelihood by class, in the order of the classes.
type Shares = [f64; Class::ALL.len()];

/// Likelihoods scaled to 1 over a set, and the class of each arrangement in it.
struct Weights {
    weights: Vec<f64>,
    classes: Vec<Option<Class>>,
}

impl Weights {
    /// What an arrangement counts at least, so that no question looks idle for want of a prior.
    const FLOOR: f64 = 1e-9;

    fn of(weights: &[f64], set: &ArrangementSet, judge: &mut Judge) -> Self {
        let mut weights = weights.to_vec();
        let mut classes = vec![None; weights.len()];
        let mut total = 0.0;
        for (id, _) in set.iter() {
            let place = usize::from(id.0);
            if let (Some(weight), Some(class)) = (weights.get_mut(place), classes.get_mut(place)) {
                *weight = weight.max(Self::FLOOR);
                *class = Some(judge.worst_class(id));
                total += *weight;
            }
        }
        for weight in &mut weights {
            *weight /= total;
        }
        Self { weights, classes }
    }

    fn count(&self, id: ArrangementId, shares: &mut Shares) {
        let place = usize::from(id.0);
        if let (Some(weight), Some(Some(class))) =
            (self.weights.get(place), self.classes.get(place))
            && let Some(share) = shares.get_mut(*class as usize)
        {
            *share += weight;
        }
    }

    fn by_class(&self, ids: impl Iterator<Item = ArrangementId>) -> Shares {
        let mut shares = Shares::default();
        ids.for_each(|id| self.count(id, &mut shares));
        shares
    }

    /// Likelihood of those who give an answer × likelihood of another class that the answer removes.
    fn parted(&self, having: &Shares, set: &ArrangementSet, answer: &ArrangementSet) -> f64 {
        if having.iter().all(|share| *share == 0.0) {
            return 0.0;
        }
        let mut removed = set.clone();
        removed.remove(answer);
        let removed = self.by_class(removed.iter().map(|(id, _)| id));
        let total: f64 = removed.iter().sum();
        having.iter().zip(&removed).map(|(share, same)| share * (total - same)).sum()
    }
}
