//! Conflicts worked out again over all subsets of the answers that remove arrangements.

use std::cell::Cell;

use coldchassis_core::inspection::{
    Answer, ArrangementSet, Basis, Finding, Findings, Judge, Possible, Question, assess, possible,
};
use proptest::prelude::{prop_assert, prop_assert_eq};
use proptest::test_runner::{TestCaseResult, TestRunner};

use crate::cases;
use crate::drafts::{Draft, contradictory};
use crate::oracle::Oracle;

fn only(findings: &Findings, kept: &[Question]) -> Findings {
    let mut rest = findings.clone();
    rest.answers.retain(|question, _| kept.contains(question));
    rest
}

/// What every subset of the answers leaves together with all findings about metal.
struct Subsets {
    questions: Vec<Question>,
    left: Vec<ArrangementSet>,
}

impl Subsets {
    fn of(findings: &Findings) -> Self {
        let all = ArrangementSet::all();
        // The answers that remove something by themselves, each alone.
        let alone: Vec<(Question, ArrangementSet)> = findings
            .answers
            .iter()
            .filter(|(_, answer)| matches!(answer, Answer::One(_)))
            .map(|(question, _)| (*question, possible(&only(findings, &[*question]))))
            .filter(|(question, set)| *set != all && !METAL.contains(question))
            .collect();
        let metal = possible(&only(findings, &METAL));
        let mut left = vec![metal];
        for (_, set) in &alone {
            let with: Vec<ArrangementSet> = left.iter().map(|rest| rest.and(set)).collect();
            left.extend(with);
        }
        Self { questions: alone.into_iter().map(|(question, _)| question).collect(), left }
    }

    fn is_consistent(&self, subset: usize) -> bool {
        !self.left[subset].is_empty()
    }

    fn one_less(&self, subset: usize) -> impl Iterator<Item = usize> {
        bits(self.questions.len())
            .filter(move |bit| subset & bit != 0)
            .map(move |bit| subset & !bit)
    }

    fn one_more(&self, subset: usize) -> impl Iterator<Item = usize> {
        bits(self.questions.len()).filter(move |bit| subset & bit == 0).map(move |bit| subset | bit)
    }

    /// The smallest subsets that contradict themselves, by names, sorted.
    fn conflicts(&self) -> Vec<Vec<&'static str>> {
        let smallest = |subset: &usize| {
            !self.is_consistent(*subset)
                && self.one_less(*subset).all(|less| self.is_consistent(less))
        };
        let mut found: Vec<Vec<&str>> =
            (0..self.left.len()).filter(smallest).map(|subset| self.names(subset)).collect();
        found.sort();
        found
    }

    /// What stays after some smallest correction: what the largest consistent subsets leave.
    fn after_corrections(&self) -> ArrangementSet {
        let largest = |subset: &usize| {
            self.is_consistent(*subset)
                && !self.one_more(*subset).any(|more| self.is_consistent(more))
        };
        let mut union = ArrangementSet::EMPTY;
        for subset in (0..self.left.len()).filter(largest) {
            union.add(&self.left[subset]);
        }
        union
    }

    fn names(&self, subset: usize) -> Vec<&'static str> {
        let chosen =
            self.questions.iter().enumerate().filter(|(place, _)| subset >> place & 1 == 1);
        let mut names: Vec<&str> = chosen.map(|(_, question)| question.id()).collect();
        names.sort_unstable();
        names
    }
}

const METAL: [Question; 4] =
    [Question::BareMetal, Question::Back, Question::Terminals, Question::MetalJoined];

fn bits(count: usize) -> impl Iterator<Item = usize> {
    (0..count).map(|place| 1 << place)
}

fn asked(finding: &Finding) -> Option<Question> {
    match finding {
        Finding::Answer(question) => Some(*question),
        Finding::Value(_) | Finding::Reading(_) => None,
    }
}

/// A conflict restricted to itself is one, and no longer is when any one of it is taken out.
fn is_smallest(findings: &Findings, conflict: &[Finding]) -> TestCaseResult {
    let questions: Vec<Question> = conflict.iter().filter_map(asked).collect();
    let alone = Possible::after(&only(findings, &questions));
    prop_assert_eq!(alone.consistent(), 0);
    prop_assert_eq!(&alone.conflicts, &vec![conflict.to_vec()]);
    // Every proper subset leaves at least what one of these leaves.
    for left_out in &questions {
        let rest: Vec<Question> = questions.iter().copied().filter(|q| q != left_out).collect();
        let rest = Possible::after(&only(findings, &rest));
        prop_assert!(rest.consistent() > 0 && !rest.is_conflict(), "{left_out:?}");
    }
    Ok(())
}

#[test]
fn conflicts_and_corrections_are_those_of_brute_force() {
    let (in_conflict, several) = (Cell::new(0u32), Cell::new(0u32));
    let law = |draft: Draft| {
        let findings = draft.findings();
        let (found, subsets) = (Possible::after(&findings), Subsets::of(&findings));
        let names = |conflict: &Vec<Finding>| conflict.iter().map(|one| one.name()).collect();
        let conflicts: Vec<Vec<String>> = found.conflicts.iter().map(names).collect();
        prop_assert_eq!(conflicts, subsets.conflicts(), "{}", draft.json());
        prop_assert_eq!(&found.considered, &subsets.after_corrections(), "{}", draft.json());
        prop_assert_eq!(found.is_conflict(), found.consistent() == 0);
        prop_assert_eq!(found.is_conflict(), possible(&findings).is_empty());
        for conflict in &found.conflicts {
            is_smallest(&findings, conflict)?;
        }
        in_conflict.update(|count| count + u32::from(found.is_conflict()));
        several.update(|count| count + u32::from(found.conflicts.len() > 1));
        Ok(())
    };
    TestRunner::new(cases(192)).run(&contradictory(90), law).unwrap();
    println!("conflicts {}, several at once {}", in_conflict.get(), several.get());
    assert!(in_conflict.get() >= 32 && several.get() >= 8);
}

/// One damning finding is not outvoted: the verdict is the worst over every smallest correction.
#[test]
fn in_a_conflict_the_verdict_is_over_every_smallest_correction() {
    let (in_conflict, agree) = (Cell::new(0u32), Cell::new(0u32));
    let law = |draft: Draft| {
        let findings = draft.findings();
        if !Possible::after(&findings).is_conflict() {
            return Ok(());
        }
        in_conflict.update(|count| count + 1);
        let verdict = assess(&findings, &mut Judge::of(&findings));
        let (mut oracle, left) =
            (Oracle::of(&findings), Subsets::of(&findings).after_corrections());
        let classes = (oracle.treat_as(&left), oracle.could_be(&left));
        prop_assert_eq!((verdict.treat_as, verdict.could_be), classes);
        prop_assert_eq!((verdict.next, verdict.consistent), (None, 0));
        // Also where every correction leads to the same class.
        prop_assert_eq!(verdict.basis, Basis::NotRuledOut);
        agree.update(|count| count + u32::from(verdict.treat_as == verdict.could_be));
        Ok(())
    };
    TestRunner::new(cases(1000)).run(&contradictory(90), law).unwrap();
    println!("conflicts {}, of one class {}", in_conflict.get(), agree.get());
    assert!(in_conflict.get() >= 40 && agree.get() >= 2);
}
