//! The evidence table: what each answer leaves standing.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::arrangement::{
    Arrangement, Cord, Isolation, LineCapacitor, LineCapacitorClass, LineSide, NearPin, SwitchLeg,
};

use super::bank::{Question, Role};
use super::findings::{Answer, Findings};
use super::measured::Measured;
use super::reach;
use super::set::ArrangementSet;

/// Whether an arrangement stays after one answer to a question that stands by itself.
///
/// The questions about touchable metal are read together (see the reach rules), so here they remove
/// nothing; neither do soft and overlay questions. A unit without a line side has none of the other
/// factors: answers about them say nothing of it.
pub fn stays(question: Question, answer: &str, arrangement: &Arrangement) -> bool {
    let isolation = arrangement.isolation;
    match question {
        Question::Plug => plug(answer, arrangement),
        Question::Transformer => transformer(answer, isolation),
        Question::CommonToChassis => common_to_chassis(answer, isolation),
        Question::CommonLeg => common_leg(answer, arrangement),
        _ => arrangement.line.is_none_or(|line| factor(question, answer, &line, isolation)),
    }
}

fn plug(answer: &str, arrangement: &Arrangement) -> bool {
    let cords: &[Cord] = match answer {
        "two_equal_blades" => &[Cord::TwoPinReversible],
        "two_polarised_blades" => &[Cord::TwoPinPolarised],
        "three_pins" => &[Cord::ThreePinEarthed, Cord::ThreePinUnearthed],
        "earth_pin_missing" => &[Cord::ThreePinCut],
        "three_pins_reversible" => {
            &[Cord::ThreePinReversibleEarthed, Cord::ThreePinReversibleUnearthed]
        }
        "battery_only" => &[],
        // The plug is on an outside supply, or there is none: it says nothing of the unit.
        _ => return true,
    };
    match arrangement.line {
        Some(line) => cords.contains(&line.cord),
        None => cords.is_empty(),
    }
}

fn transformer(answer: &str, isolation: Isolation) -> bool {
    use Isolation::{
        Autotransformer, HeaterTransformer, Isolating, LineFloated, LineInsulated, LineRectified,
        LineTied, NoLine,
    };
    match answer {
        "none" => {
            matches!(isolation, LineTied | LineRectified | LineFloated | LineInsulated | NoLine)
        }
        "heaters_only_traced" => isolation == HeaterTransformer,
        "separate_traced" => isolation == Isolating,
        "shared_lead" => matches!(isolation, Autotransformer | HeaterTransformer),
        "motor_winding" => !matches!(isolation, Isolating | NoLine),
        _ => true,
    }
}

fn common_to_chassis(answer: &str, isolation: Isolation) -> bool {
    use Isolation::{Isolating, LineFloated, LineInsulated, NoLine};
    match answer {
        "direct" => !matches!(isolation, LineFloated | LineInsulated),
        "through_network" => matches!(isolation, LineFloated | Isolating | NoLine),
        "not_joined" => matches!(isolation, LineInsulated | Isolating | NoLine),
        _ => true,
    }
}

fn common_leg(answer: &str, arrangement: &Arrangement) -> bool {
    use Isolation::{Isolating, LineRectified, NoLine};
    let on_neither = matches!(arrangement.isolation, Isolating | LineRectified | NoLine);
    match (pin(answer), arrangement.line) {
        (Some(pin), Some(line)) => !on_neither && line.near_pin == pin,
        (Some(_), None) => false,
        (None, _) => answer != "neither" || on_neither,
    }
}

fn factor(question: Question, answer: &str, line: &LineSide, isolation: Isolation) -> bool {
    match question {
        Question::Selector => answer != "absent" || line.line_capacitor != LineCapacitor::Selector,
        Question::SwitchLeg => line.switch_leg == switch_leg(answer, line.near_pin),
        Question::LineCapacitor => {
            !isolation.may_have_line_capacitor()
                || line.line_capacitor == line_capacitor(answer, line.near_pin)
        }
        Question::LineCapacitorClass => {
            line.line_capacitor == LineCapacitor::None
                || (line.line_capacitor_class == LineCapacitorClass::ClassY)
                    == (answer == "class_y")
        }
        // Lifted it counts as not earthed; what its other position does, the judge adds.
        Question::EarthLift => answer != "present" || !line.cord.is_earthed(),
        Question::EarthWire => line.cord.is_earthed() == (answer == "on_chassis"),
        _ => true,
    }
}

/// The pin that an answer names.
pub(super) fn pin(answer: &str) -> Option<NearPin> {
    match answer {
        "pin_a" | "pin_a_leg" => Some(NearPin::A),
        "pin_b" | "pin_b_leg" => Some(NearPin::B),
        _ => None,
    }
}

fn switch_leg(answer: &str, near_pin: NearPin) -> SwitchLeg {
    match pin(answer) {
        Some(pin) if pin == near_pin => SwitchLeg::Near,
        Some(_) => SwitchLeg::Far,
        None if answer == "both" => SwitchLeg::Both,
        None => SwitchLeg::None,
    }
}

fn line_capacitor(answer: &str, near_pin: NearPin) -> LineCapacitor {
    match pin(answer) {
        Some(pin) if pin == near_pin => LineCapacitor::NearLeg,
        Some(_) => LineCapacitor::FarLeg,
        None => match answer {
            "both_legs" => LineCapacitor::BothLegs,
            "on_selector" => LineCapacitor::Selector,
            _ => LineCapacitor::None,
        },
    }
}

/// What each conclusive answer leaves, worked out once.
static TABLE: LazyLock<BTreeMap<(Question, &'static str), ArrangementSet>> = LazyLock::new(|| {
    let mut table = BTreeMap::new();
    for &question in Question::ALL {
        if question.entry().role == Role::Conclusive {
            for &answer in question.entry().answers {
                let set = ArrangementSet::of(|a| stays(question, answer, a));
                table.insert((question, answer), set);
            }
        }
    }
    table
});

/// What one answer to a question leaves; nothing for one that removes nothing by itself.
pub fn left_by(question: Question, answer: &'static str) -> Option<&'static ArrangementSet> {
    TABLE.get(&(question, answer))
}

/// What the answers that stand by themselves leave, each.
pub(super) fn constraints(
    findings: &Findings,
) -> impl Iterator<Item = (Question, &'static ArrangementSet)> + '_ {
    findings.answers.iter().filter_map(|(&question, answer)| match answer {
        Answer::One(id) => left_by(question, id).map(|set| (question, set)),
        Answer::CantTell | Answer::Several(_) | Answer::Number(_) => None,
    })
}

/// The arrangements that stay after all findings; empty where they contradict each other.
pub fn possible(findings: &Findings) -> ArrangementSet {
    let mut set = reach::allowed(findings).set();
    for (_, left) in constraints(findings) {
        set.keep(left);
    }
    let measured = Measured::of(findings);
    if !measured.is_empty() {
        set.keep(&measured.left());
    }
    set
}
