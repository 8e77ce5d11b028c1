//! What happens to a person at one wiring: a current, a tripped breaker, or nothing in reach.

use crate::arrangement::{Touched, Values, Wiring};
use crate::body::{Body, Impedance, Path, Posture};
use crate::circuit::Thevenin;
use crate::figure::{Figure, Mark, Source};
use crate::supply::Contacts;

use super::touch::{touch_amperes, touch_ohms};

/// Current in the earth path from which a branch breaker is taken to trip at once, A.
pub const BREAKER_TRIPS_A: Figure = Figure::new(150.0, "A", Source::Model, Mark::Assumption);

/// Who touches: whose body, and by which path where it is not the worst to be expected.
#[derive(Clone, Copy, Debug)]
pub struct Person {
    impedance: Impedance,
    path: Option<Path>,
}

impl Person {
    /// A body, on the worst path to be expected unless one is chosen.
    pub fn new(body: Body, path: Option<Path>) -> Self {
        Self { impedance: Impedance::of(body), path }
    }

    pub(super) fn milliamperes(&self, posture: Posture, node: &Thevenin) -> f64 {
        let path = self.path.unwrap_or(posture.worst_path());
        1e3 * touch_amperes(&self.impedance, path.impedance_factor().value, node)
    }

    /// What this person puts between the node and earth, Ω.
    pub(super) fn ohms(&self, posture: Posture, node: &Thevenin) -> f64 {
        let path = self.path.unwrap_or(posture.worst_path());
        touch_ohms(&self.impedance, path.impedance_factor().value, node)
    }
}

impl Default for Person {
    /// The one verdicts are for: 5 % of people have less impedance, dry skin, large contact.
    fn default() -> Self {
        Self::new(Body::default(), None)
    }
}

/// What a person receives in one state with one set of faults.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outcome {
    /// A current through the body.
    Touch {
        /// Touch current, mA rms.
        milliamperes: f64,
        /// Open-circuit voltage of the node that gives it, V rms.
        open_circuit_volts: f64,
    },
    /// The earthed chassis carries so much that the breaker trips.
    BreakerTrips,
    /// Nothing joined to the circuit can be touched.
    BehindBarrier,
}

impl Outcome {
    /// The touch current, mA rms; 0 where nobody is in a circuit.
    pub const fn milliamperes(self) -> f64 {
        match self {
            Self::Touch { milliamperes, .. } => milliamperes,
            Self::BreakerTrips | Self::BehindBarrier => 0.0,
        }
    }

    /// The worse of two: a current before a breaker that trips, and that before nothing in reach.
    #[must_use]
    pub const fn worse(self, other: Self) -> Self {
        match (self, other) {
            (Self::Touch { milliamperes: own, .. }, Self::Touch { milliamperes, .. }) => {
                if milliamperes > own {
                    other
                } else {
                    self
                }
            }
            (Self::Touch { .. }, _) | (_, Self::BehindBarrier) => self,
            (_, Self::Touch { .. } | Self::BreakerTrips) => other,
        }
    }
}

/// The outcome of a wiring for a person who touches these nodes.
pub fn outcome(
    wiring: Wiring,
    touched: Touched,
    values: &Values,
    hertz: f64,
    contacts: Contacts,
    person: &Person,
) -> Outcome {
    if touched == Touched::Nothing && !wiring.is_earthed() {
        return Outcome::BehindBarrier;
    }
    let ports = wiring.ports(touched, values, hertz, contacts);
    if ports.earth_amperes >= BREAKER_TRIPS_A.value {
        return Outcome::BreakerTrips;
    }
    let current = |posture: Posture, node: &Thevenin| Outcome::Touch {
        milliamperes: person.milliamperes(posture, node),
        open_circuit_volts: node.volts.norm(),
    };
    let second = |posture| ports.second.as_ref().map(|node| current(posture, node));
    let both = |posture| {
        let chassis = current(posture, &ports.chassis);
        second(posture).map_or(chassis, |second| chassis.worse(second))
    };
    match touched {
        Touched::Nothing => Outcome::BehindBarrier,
        Touched::Chassis(posture) => current(posture, &ports.chassis),
        Touched::Aerial => second(Posture::Touching).unwrap_or(Outcome::BehindBarrier),
        Touched::ChassisAndAerial => both(Posture::Touching),
        Touched::ChassisAndCommon => both(Posture::Holding),
    }
}
