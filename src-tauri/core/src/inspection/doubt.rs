//! What speaks against a kind class though nothing that was answered does: it is said, and holds power back.

use crate::hazard::Class;

use super::bank::Question;
use super::conflict::Possible;
use super::evidence;
use super::findings::{Answer, Findings};
use super::judge::Judge;
use super::overlay::is_earthed_when_not_lifted;
use super::reach;

/// What a kind class leaves open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// Bare metal was found, nobody knows what it is joined to, and traced it could be worse than the class.
    UntracedMetal,
    /// Nothing with a line side is left, but nobody has seen that there is neither cord nor inlet.
    CordNotRuledOut,
    /// That there is neither cord nor inlet is one answer, given in a moment, and nobody has asked the plate.
    PlateUnread,
    /// Neither cord nor inlet was seen, and the rating plate names a line supply all the same.
    PlateNamesLine,
    /// Nobody knows whether a switch lifts the earth; where one does, it can put the supply on the earth wire.
    EarthLift,
}

impl Doubt {
    /// What a class reached by these findings leaves open, the first first.
    pub fn about(
        findings: &Findings,
        possible: &Possible,
        judge: &mut Judge,
        treat_as: Class,
    ) -> Vec<Self> {
        if possible.is_conflict() || treat_as == Class::Live {
            return Vec::new();
        }
        if treat_as == Class::NoLine {
            return Self::of_no_line(findings).into_iter().collect();
        }
        let lift = findings.known(Question::EarthLift).is_none()
            && possible.considered.iter().any(|(_, a)| is_earthed_when_not_lifted(a));
        [(hides_worse(findings, judge, treat_as), Self::UntracedMetal), (lift, Self::EarthLift)]
            .into_iter()
            .filter_map(|(holds, doubt)| holds.then_some(doubt))
            .collect()
    }

    /// A single answer makes a unit one without a line side: the plate is asked beside it.
    fn of_no_line(findings: &Findings) -> Option<Self> {
        let plate = |answer: &&str| findings.says(Question::RatingPlate, answer);
        if !is_without_cord(findings) {
            Some(Self::CordNotRuledOut)
        } else if ["ac_dc", "ac_only", "ac_dc_battery"].iter().any(plate) {
            Some(Self::PlateNamesLine)
        } else {
            findings.may_ask(Question::RatingPlate).then_some(Self::PlateUnread)
        }
    }

    /// The question that clears it.
    pub const fn cleared_by(self) -> Question {
        match self {
            Self::UntracedMetal => Question::MetalJoined,
            Self::CordNotRuledOut | Self::PlateNamesLine => Question::Plug,
            Self::PlateUnread => Question::RatingPlate,
            Self::EarthLift => Question::EarthLift,
        }
    }
}

/// Whether a look has shown that no cord of the unit goes to the wall. A cord that was cut was a cord.
pub fn is_without_cord(findings: &Findings) -> bool {
    ["battery_only", "outside_supply"].iter().any(|plug| findings.says(Question::Plug, plug))
}

/// Whether metal was found of which nobody knows what it is joined to, and one of the answers would be worse
/// than the class.
fn hides_worse(findings: &Findings, judge: &mut Judge, treat_as: Class) -> bool {
    let mut worse = |to: &&'static str| {
        let left = evidence::possible(&traced(findings, to));
        judge.worst_over(&left).is_worse_than(treat_as)
    };
    findings.known(Question::MetalJoined).is_none()
        && reach::is_metal_found(findings)
        && Question::MetalJoined.entry().answers.iter().any(&mut worse)
}

/// The findings, with the metal found traced.
pub fn traced(findings: &Findings, to: &'static str) -> Findings {
    let mut traced = findings.clone();
    traced.answers.insert(Question::MetalJoined, Answer::One(to));
    traced
}
