//! What speaks against a kind class though nothing that was answered does: it is said, and holds power back.

use crate::arrangement::{Probe, ReadingId};
use crate::hazard::Class;

use super::bank::Question;
use super::conflict::Possible;
use super::evidence;
use super::findings::{Answer, Findings, Reading};
use super::judge::Judge;
use super::reach;

/// What a kind class leaves open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// Bare metal was found, nobody knows what it is joined to, and traced it could be worse than the class.
    UntracedMetal,
    /// Nothing with a line side is left, but nobody has seen that there is neither cord nor inlet.
    CordNotRuledOut,
    /// Neither cord nor inlet was seen, and something was found that only a unit with one has.
    LineSideFound,
    /// That there is neither cord nor inlet is one answer, given in a moment, and nobody has read the plate.
    PlateUnread,
    /// Neither cord nor inlet was seen, and the rating plate names a line supply all the same.
    PlateNamesLine,
    /// Nobody knows whether a switch lifts the earth; where one does, it can put the supply on the earth wire.
    EarthLift,
    /// An earth wire is on the chassis, but nobody has seen a plug whose earth pin it could go to.
    EarthPinUnseen,
    /// Beside the bare metal an aerial or earth terminal can be touched, and that is worse than the metal.
    AerialBeside,
    /// The same, of a terminal that may be there: nobody has looked.
    AerialUnseen,
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
            && possible.considered.iter().any(|(_, a)| a.with_lift_closed().is_some());
        let at_the_aerial = is_worse_at_the_aerial(findings, judge, treat_as);
        let is_looked_for = findings.known(Question::Terminals).is_some();
        let doubts = [
            (hides_worse(findings, judge, treat_as), Self::UntracedMetal),
            (lift, Self::EarthLift),
            (is_earth_pin_unseen(findings), Self::EarthPinUnseen),
            (at_the_aerial && is_looked_for, Self::AerialBeside),
            (at_the_aerial && !is_looked_for, Self::AerialUnseen),
        ];
        doubts.into_iter().filter_map(|(holds, doubt)| holds.then_some(doubt)).collect()
    }

    /// A single answer makes a unit one without a line side: whatever else speaks of one is heard, and of a unit
    /// that no supply feeds at all the plate is asked.
    fn of_no_line(findings: &Findings) -> Option<Self> {
        let plate = |answer: &&str| findings.says(Question::RatingPlate, answer);
        // No battery has a frequency.
        let names_line = ["ac_dc", "ac_only", "ac_dc_battery"].iter().any(plate)
            || findings.rated.is_some_and(|rated| rated.hertz.is_some());
        let alone = findings.says(Question::Plug, "battery_only");
        if !is_without_cord(findings) {
            Some(Self::CordNotRuledOut)
        } else if speaks_of_a_line_side(findings) {
            Some(Self::LineSideFound)
        } else if alone && names_line {
            Some(Self::PlateNamesLine)
        } else {
            let unread = findings.known(Question::RatingPlate).is_none();
            (alone && unread).then_some(Self::PlateUnread)
        }
    }

    /// The question that clears it.
    pub const fn cleared_by(self) -> Question {
        match self {
            Self::UntracedMetal => Question::MetalJoined,
            Self::CordNotRuledOut
            | Self::LineSideFound
            | Self::PlateNamesLine
            | Self::EarthPinUnseen => Question::Plug,
            Self::PlateUnread => Question::RatingPlate,
            Self::EarthLift => Question::EarthLift,
            Self::AerialBeside | Self::AerialUnseen => Question::Terminals,
        }
    }
}

/// Whether a look has shown that no cord of the unit goes to the wall. A cord that was cut was a cord.
pub fn is_without_cord(findings: &Findings) -> bool {
    ["battery_only", "outside_supply"].iter().any(|plug| findings.says(Question::Plug, plug))
}

/// Whether something was found that only a unit with a line side has: a cord, an earth wire on the chassis, a part
/// or a conductor of the line, a way through from pins that should not be there.
fn speaks_of_a_line_side(findings: &Findings) -> bool {
    const SAYS: [(Question, &[&str]); 6] = [
        (Question::AccessoryOutlet, &["present"]),
        (Question::EarthLift, &["present"]),
        (Question::EarthWire, &["on_chassis"]),
        (Question::Fuse, &["pin_a_leg", "pin_b_leg"]),
        (Question::SwitchLeg, &["pin_a", "pin_b", "both"]),
        (Question::LineCapacitor, &["pin_a_leg", "pin_b_leg", "both_legs", "on_selector"]),
    ];
    // The cord of a separate supply may be judged as well.
    let cord = [Question::Cord, Question::CordWires];
    let outside = findings.says(Question::Plug, "outside_supply");
    (!outside && cord.iter().any(|question| findings.known(*question).is_some()))
        || SAYS.iter().any(|(question, answers)| {
            answers.iter().any(|answer| findings.says(*question, answer))
        })
        || findings
            .readings
            .iter()
            .any(|(id, reading)| id.probes().is_some() && matches!(reading, Reading::Value(_)))
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

/// Whether an earth wire counts as going to a pin that nobody has seen: the plug is gone, unseen or of a supply.
fn is_earth_pin_unseen(findings: &Findings) -> bool {
    findings.says(Question::EarthWire, "on_chassis") && !findings.shows_earth_pin()
}

/// Whether an aerial terminal beside bare metal is there, or nobody has looked, and is worse to touch than the metal. An
/// arrangement has one reach, which the metal gives; the terminal is judged as if there were none.
fn is_worse_at_the_aerial(findings: &Findings, judge: &mut Judge, treat_as: Class) -> bool {
    let may_be_there = findings.known(Question::Terminals).is_none()
        || findings.says(Question::Terminals, "aerial_or_earth");
    may_be_there
        && reach::is_metal_found(findings)
        && judge.worst_over(&evidence::possible(&at_the_aerial(findings))).is_worse_than(treat_as)
}

/// The findings as they would be if an aerial terminal were all that can be touched.
fn at_the_aerial(findings: &Findings) -> Findings {
    let mut aerial = findings.clone();
    aerial.answers.insert(Question::BareMetal, Answer::Several(["none_anywhere"].into()));
    aerial.answers.insert(Question::Terminals, Answer::Several(["aerial_or_earth"].into()));
    aerial.answers.insert(Question::Back, Answer::One("fitted"));
    aerial.answers.remove(&Question::MetalJoined);
    let on_metal = |id: &ReadingId| id.probes().is_some_and(|(_, place)| place == Probe::Part);
    aerial.readings.retain(|id, _| !on_metal(id));
    aerial
}

/// The findings, with the metal found traced.
pub fn traced(findings: &Findings, to: &'static str) -> Findings {
    let mut traced = findings.clone();
    traced.answers.insert(Question::MetalJoined, Answer::One(to));
    traced
}
