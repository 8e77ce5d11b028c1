//! What is kept from one turn of an inspection to the next changes nothing that is said.

use coldchassis_core::inspection::{
    Access, Answer, Findings, Foreseen, Judge, Question, Step, assess, assess_next,
};
use coldchassis_core::simulation::unit::PhysicalUnit;
use coldchassis_core::simulation::{Inspector, KINDS, Slips};
use coldchassis_core::supply::Supply;
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Says something that rules nothing out, or takes it back.
fn change_softly(findings: &mut Findings, rng: &mut impl Rng) {
    let soft = [Question::Kind, Question::RatingPlate, Question::IronSeen, Question::Tingle];
    let question = *soft.choose(rng).expect("there are some");
    let one = *question.entry().answers.choose(rng).expect("there are some");
    let says = Answer::One(if question == Question::Kind { KINDS[0] } else { one });
    if findings.answers.remove(&question).as_ref() != Some(&says) {
        findings.answers.insert(question, says);
    }
}

/// Takes some answer back, as an undo does.
fn take_back(findings: &mut Findings, rng: &mut impl Rng) {
    let asked: Vec<Question> = findings.answers.keys().copied().collect();
    if let Some(question) = asked.choose(rng) {
        findings.answers.remove(question);
    }
}

#[test]
fn a_turn_that_remembers_says_what_one_that_does_not_says() {
    let (mut softly, mut all) = (0, 0);
    for seed in 0..40 {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let mut findings = Findings::new(Supply::new(120.0, 60.0));
        findings.access = Access::ALL.iter().copied().filter(|_| rng.random()).collect();
        findings.access.insert(Access::Outside);
        let mut inspector = Inspector::of(&unit, Slips::CannotTell, seed);
        let (mut judge, mut foreseen) = (Judge::of(&findings), Foreseen::default());
        let mut next: Option<Step> = None;
        for _ in 0..14 {
            match (rng.random_range(0..8), next) {
                (0..4, Some(step)) => {
                    inspector.take(step, &mut findings);
                }
                (7, _) => take_back(&mut findings, &mut rng),
                _ => {
                    change_softly(&mut findings, &mut rng);
                    softly += 1;
                }
            }
            let remembered = assess_next(&findings, &mut judge, &mut foreseen);
            let anew = assess(&findings, &mut Judge::of(&findings));
            assert_eq!(remembered, anew, "seed {seed}: {findings:?}");
            next = anew.next.map(|next| next.step);
            all += 1;
        }
    }
    assert!(softly > 100 && all - softly > 100, "{softly} of {all}");
}
