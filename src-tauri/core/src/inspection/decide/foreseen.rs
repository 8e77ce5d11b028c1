//! What one turn worked out and the next may use again: an answer that only moves what is likely changes how much
//! each group weighs, not which groups there are and what they come to.

use rustc_hash::FxHashMap;

use super::super::bank::{Access, Question, Role};
use super::super::findings::Findings;
use super::super::judge::Judge;
use super::super::set::ArrangementSet;
use super::answers;
use super::beliefs::Beliefs;
use super::build::{self, Members};
use super::problem::Problem;
use crate::hazard::Class;

/// The problem of the last turn with what was worked out about it; kept beside the judge of the same inspection.
#[derive(Debug, Default)]
pub struct Foreseen(Option<Turn>);

#[derive(Debug)]
struct Turn {
    /// What the problem was made of.
    findings: Findings,
    considered: ArrangementSet,
    problem: Problem,
    members: Members,
    outlook: Outlook,
}

/// What the groups of a problem come to with nothing told, worked out when first asked for. No weight bears on it.
#[derive(Debug, Default)]
pub(super) struct Outlook {
    /// The final verdict of each group.
    pub(super) ends: Option<Vec<Class>>,
    /// The steps that a group cannot do without.
    pub(super) certificates: FxHashMap<usize, Vec<usize>>,
}

impl Foreseen {
    /// The problem after some findings and its outlook: that of the last turn with new weights where nothing else
    /// has changed. The costs have to be those of the last turn.
    pub(super) fn problem(
        &mut self,
        findings: &Findings,
        considered: &ArrangementSet,
        judge: &mut Judge,
        beliefs: &Beliefs,
    ) -> (&Problem, &mut Outlook) {
        let hard = hard(findings);
        let kept =
            self.0.take().filter(|turn| turn.findings == hard && turn.considered == *considered);
        let turn = match kept {
            Some(mut turn) => {
                weigh(&mut turn.problem, &turn.members, findings, beliefs);
                turn
            }
            None => {
                let (problem, members) = build::with_members(findings, considered, judge, beliefs);
                let considered = considered.clone();
                let outlook = Outlook::default();
                Turn { findings: hard, considered, problem, members, outlook }
            }
        };
        let turn = self.0.insert(turn);
        (&turn.problem, &mut turn.outlook)
    }
}

const TELLS_OF_A_MOTOR: [Question; 2] = [Question::Kind, Question::AccessoryOutlet];

/// Findings without the answers that change no more than how likely something is. The list of tubes stays: it is a
/// step of its own; so does whatever tells of a motor where somebody has a meter: it says what readings prove.
fn hard(findings: &Findings) -> Findings {
    let mut hard = findings.clone();
    let reads = findings.access.contains(&Access::Meter);
    let bears = |question: Question| {
        question.entry().role == Role::Conclusive
            || question == Question::TubeList
            || reads && TELLS_OF_A_MOTOR.contains(&question)
    };
    hard.answers.retain(|question, _| bears(*question));
    hard
}

fn weigh(problem: &mut Problem, members: &Members, findings: &Findings, beliefs: &Beliefs) {
    let mut weights = beliefs.weights().to_vec();
    answers::weigh(findings, &mut weights);
    for group in &mut problem.groups {
        group.weight = 0.0;
    }
    for (id, group) in members {
        let weight = weights.get(usize::from(id.0));
        if let (Some(group), Some(weight)) = (problem.groups.get_mut(*group), weight) {
            group.weight += weight;
        }
    }
}
