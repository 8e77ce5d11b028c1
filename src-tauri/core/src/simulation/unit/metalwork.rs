//! Builds the metal a hand can meet, for a wanted reach.

use rand::Rng;

use super::chance::pick;
use super::factors::{Isolation, Reach};
use super::generate::capacitor;
use super::parts::{AerialPost, BareMetal, MetalNode, Place, Terminals};
use super::unusual::AERIAL_FARAD;

/// The metal of one unit.
pub(super) struct Metalwork {
    pub bare: Vec<BareMetal>,
    pub terminals: Option<Terminals>,
    pub post: Option<AerialPost>,
    pub back_fitted: bool,
}

const PLAIN_PLACES: &[(Place, u32)] = &[
    (Place::ShaftOrGrubScrew, 4),
    (Place::Screw, 4),
    (Place::TrimOrGrille, 2),
    (Place::Cabinet, 2),
    (Place::ControlPanel, 2),
    (Place::TonearmOrTurntable, 2),
    (Place::Socket, 3),
    (Place::PickupShield, 2),
];
const JACKS: &[(Place, u32)] = &[(Place::InstrumentJack, 4), (Place::MicrophoneJack, 1)];

impl Metalwork {
    /// Metal that comes to the wanted reach on this isolation, in one of the ways it can.
    pub(super) fn with_reach(reach: Reach, isolation: Isolation, rng: &mut impl Rng) -> Metalwork {
        let mut work =
            Metalwork { bare: Vec::new(), terminals: None, post: None, back_fitted: true };
        let chassis = work.chassis_word(isolation, rng);
        match reach {
            Reach::Closed => work.add_coil_post(rng),
            Reach::AerialTerminal => work.add_capacitor_post(rng),
            Reach::Exposed => work.expose(chassis, rng),
            Reach::Handheld => work.put_in_hand(chassis, rng),
            Reach::CommonExposed => work.expose_common(rng),
        }
        work.add_loose_metal(rng);
        let open_back = matches!(reach, Reach::Exposed | Reach::Handheld | Reach::CommonExposed);
        if open_back && rng.random_bool(0.15) {
            work.back_fitted = false;
        }
        if open_back && work.post.is_none() && rng.random_bool(0.1) {
            work.add_capacitor_post(rng);
        }
        work
    }

    /// Where common and chassis are one node for a hand, the metal may be on either.
    fn chassis_word(&self, isolation: Isolation, rng: &mut impl Rng) -> MetalNode {
        if !isolation.common_is_apart() && rng.random_bool(0.2) {
            MetalNode::Common
        } else {
            MetalNode::Chassis
        }
    }

    fn add(&mut self, place: Place, node: MetalNode) {
        self.bare.push(BareMetal { place, node, held: false });
    }

    fn add_one_of(&mut self, places: &[(Place, u32)], node: MetalNode, rng: &mut impl Rng) {
        if let Some(place) = pick(places, rng) {
            self.add(place, node);
        }
    }

    fn add_coil_post(&mut self, rng: &mut impl Rng) {
        if rng.random_bool(0.05) {
            self.post = Some(AerialPost::CoilOnly);
        }
    }

    fn add_capacitor_post(&mut self, rng: &mut impl Rng) {
        self.post = Some(AerialPost::ThroughCapacitor(capacitor(AERIAL_FARAD, rng)));
    }

    /// Metal joined to nothing: wood screws, a plastic jack nut, terminals on a free winding.
    fn add_loose_metal(&mut self, rng: &mut impl Rng) {
        if rng.random_bool(0.3) {
            self.add_one_of(PLAIN_PLACES, MetalNode::Nothing, rng);
        }
        if rng.random_bool(0.02) {
            self.add_one_of(JACKS, MetalNode::Nothing, rng);
        }
        if self.terminals.is_none() && rng.random_bool(0.1) {
            self.terminals =
                Some(Terminals { node: MetalNode::Nothing, bare: rng.random_bool(0.7) });
        }
    }

    fn expose(&mut self, chassis: MetalNode, rng: &mut impl Rng) {
        match rng.random_range(0..10) {
            0 => self.back_fitted = false,
            1 => self.terminals = Some(Terminals { node: chassis, bare: rng.random_bool(0.7) }),
            2 => self.post = Some(AerialPost::Straight(chassis)),
            _ => {
                for _ in 0..rng.random_range(1..3) {
                    self.add_one_of(PLAIN_PLACES, chassis, rng);
                }
            }
        }
    }

    fn put_in_hand(&mut self, chassis: MetalNode, rng: &mut impl Rng) {
        if rng.random_bool(0.05) {
            let place = Place::ControlPanel;
            self.bare.push(BareMetal { place, node: chassis, held: true });
        } else {
            self.add_one_of(JACKS, chassis, rng);
        }
        if rng.random_bool(0.4) {
            self.expose(chassis, rng);
        }
    }

    fn expose_common(&mut self, rng: &mut impl Rng) {
        const USUAL: &[(Place, u32)] = &[
            (Place::InstrumentJack, 4),
            (Place::MicrophoneJack, 1),
            (Place::Socket, 3),
            (Place::PickupShield, 4),
            (Place::TonearmOrTurntable, 1),
            (Place::ShaftOrGrubScrew, 1),
        ];
        match rng.random_range(0..10) {
            0 => {
                let bare = rng.random_bool(0.7);
                self.terminals = Some(Terminals { node: MetalNode::Common, bare });
            }
            1 => self.post = Some(AerialPost::Straight(MetalNode::Common)),
            _ => self.add_one_of(USUAL, MetalNode::Common, rng),
        }
        if rng.random_bool(0.4) {
            self.add_one_of(PLAIN_PLACES, MetalNode::Chassis, rng);
        }
        if rng.random_bool(0.2) {
            self.add_one_of(JACKS, MetalNode::Chassis, rng);
        }
    }
}
