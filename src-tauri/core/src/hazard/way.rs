//! The way of the current to the person, in one state with some faults, at the ends of the parts that are worst.

use crate::arrangement::{
    Arrangement, FaultSet, Part, Ports, State, Touched, Values, Wiring, touched,
};
use crate::body::Posture;

use super::exposure::{Corner, Exposures};
use super::outcome::Outcome;

/// What a person receives, by which way, through parts of which values.
#[derive(Clone, Debug, PartialEq)]
pub struct Way {
    /// What it comes to.
    pub outcome: Outcome,
    /// What the hand is on: chassis, common or aerial terminal; nothing where nothing can be touched.
    pub touched: Option<Part>,
    /// The parts that the current passes, from the outlet on; none where there is no current.
    pub parts: Vec<Part>,
    /// The values of the parts.
    pub values: Values,
    /// What the chassis is at against earth with nobody touching it, V rms.
    pub chassis_volts: f64,
}

impl Exposures {
    /// The way of the current in an arrangement; nothing for a unit without a line side.
    pub fn way(
        &mut self,
        arrangement: &Arrangement,
        state: State,
        faults: FaultSet,
    ) -> Option<Way> {
        let line = arrangement.line?;
        let wiring = Wiring::of(arrangement, state, faults)?;
        let (outcome, corner) = self.worst_corner(arrangement, state, faults);
        let values = self.parts().values_at(corner, line.line_capacitor_class);
        let (contacts, hertz) = (self.contacts(), self.hertz());
        let in_reach = touched(&line, faults);
        let ports = wiring.ports(in_reach, &values, hertz, contacts);
        let hand = match outcome {
            Outcome::Touch { .. } => self.hand(in_reach, &ports),
            Outcome::BreakerTrips | Outcome::BehindBarrier => None,
        };
        let carries = hand.is_some() || wiring.is_earthed();
        let way = || wiring.way(&values, hertz, contacts, hand);
        Some(Way {
            outcome,
            touched: on(in_reach, hand),
            parts: if carries { way() } else { Vec::new() },
            values,
            chassis_volts: ports.chassis.volts.norm(),
        })
    }

    /// The worst outcome over the ends of the parts, and where it is.
    pub(super) fn worst_corner(
        &mut self,
        arrangement: &Arrangement,
        state: State,
        faults: FaultSet,
    ) -> (Outcome, Corner) {
        let corners = self.parts().corners(arrangement);
        let mut worst: Option<(Outcome, Corner)> = None;
        for corner in corners {
            let here = self.outcome(arrangement, state, faults, corner);
            if worst.is_none_or(|(worst, _)| worst.worse(here) != worst) {
                worst = Some((here, corner));
            }
        }
        worst.unwrap_or((Outcome::BehindBarrier, Corner::default()))
    }

    /// The touched node that gives the most, and what the person is there, Ω.
    fn hand(&self, in_reach: Touched, ports: &Ports) -> Option<(Part, f64)> {
        let person = self.person();
        let second = |part, posture| ports.second.map(|node| (part, posture, node));
        let chassis = |posture| Some((Part::Chassis, posture, ports.chassis));
        let nodes = match in_reach {
            Touched::Nothing => [None, None],
            Touched::Chassis(posture) => [chassis(posture), None],
            Touched::Aerial => [second(Part::AerialTerminal, Posture::Touching), None],
            Touched::ChassisAndAerial => {
                [chassis(Posture::Touching), second(Part::AerialTerminal, Posture::Touching)]
            }
            Touched::ChassisAndCommon => {
                [chassis(Posture::Holding), second(Part::Common, Posture::Holding)]
            }
        };
        let felt = nodes.into_iter().flatten().map(|(part, posture, node)| {
            (part, person.ohms(posture, &node), person.milliamperes(posture, &node))
        });
        felt.max_by(|one, other| one.2.total_cmp(&other.2)).map(|(part, ohms, _)| (part, ohms))
    }
}

/// What the hand is on, also where the breaker trips before anybody feels it.
const fn on(in_reach: Touched, hand: Option<(Part, f64)>) -> Option<Part> {
    match (hand, in_reach) {
        (Some((part, _)), _) => Some(part),
        (None, Touched::Nothing) => None,
        (None, Touched::Aerial) => Some(Part::AerialTerminal),
        (None, _) => Some(Part::Chassis),
    }
}
