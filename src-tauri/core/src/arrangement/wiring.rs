//! The network of an arrangement in a state with faults.
//!
//! [`Wiring`] is all that the network depends on, packed into one number: many arrangements, states
//! and fault sets share one network, and it is solved once for all of them.

use num_complex::Complex64;

use super::branch::Branch;
use super::factors::{Arrangement, Isolation, Leg, LineCapacitorClass, LineSide, Reach, SwitchLeg};
use super::fault::{Fault, FaultSet};
use super::legs::{capacitor_legs, hot_pin};
use super::part::Part;
use super::state::{State, Switch};
use super::values::{Values, defaults};
use crate::body::Posture;
use crate::circuit::{Network, Node, Thevenin};
use crate::supply::{Contacts, ISOLATED_STRAY};

pub(super) const HOT: Node = Node::at(1);
pub(super) const NEUTRAL: Node = Node::at(2);
pub(super) const CUT_PIN: Node = Node::at(3);
pub(super) const FAR: Node = Node::at(4);
pub(super) const NEAR: Node = Node::at(5);
pub(super) const CHASSIS: Node = Node::at(6);
/// Hangs on the common by its capacitor alone, so no network has it.
pub(super) const AERIAL: Node = Node::at(7);

/// Earth where the supply floats, which has no neutral to be cut and so no pin that is.
const EARTH_AFLOAT: Node = CUT_PIN;

/// All that a network depends on but the values of its parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Wiring(u32);

const HOT_IS_NEAR: u32 = 1 << 3;
const NEUTRAL_OPEN: u32 = 1 << 4;
const NEAR_SWITCHED: u32 = 1 << 5;
const FAR_SWITCHED: u32 = 1 << 6;
const SWITCHED_OFF: u32 = 1 << 7;
const NEAR_CAPACITOR: u32 = 1 << 8;
const FAR_CAPACITOR: u32 = 1 << 9;
const CLASS_Y: u32 = 1 << 10;
const NEAR_SHORTED: u32 = 1 << 11;
const FAR_SHORTED: u32 = 1 << 12;
const NETWORK_SHORTED: u32 = 1 << 13;
const AERIAL_SHORTED: u32 = 1 << 14;
const BREAKDOWN: u32 = 1 << 15;
const STRAY_FAR: u32 = 1 << 16;
const STRAY_NEAR: u32 = 1 << 17;
const EARTHED: u32 = 1 << 18;
const FEED_EARTHED: u32 = 1 << 19;

/// The nodes a person can touch, and how.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Touched {
    /// Nothing.
    Nothing,
    /// The chassis.
    Chassis(Posture),
    /// The aerial terminal.
    Aerial,
    /// The chassis and the aerial terminal: closed no longer.
    ChassisAndAerial,
    /// The chassis and the common, held in use.
    ChassisAndCommon,
}

/// What a person can touch of a line side with these faults.
pub fn touched(line: &LineSide, faults: FaultSet) -> Touched {
    let barrier_lost = faults.has(Fault::LostBarrier);
    match line.reach {
        Reach::Closed if barrier_lost => Touched::Chassis(Posture::Touching),
        Reach::Closed => Touched::Nothing,
        Reach::AerialTerminal if barrier_lost => Touched::ChassisAndAerial,
        Reach::AerialTerminal => Touched::Aerial,
        Reach::Exposed => Touched::Chassis(Posture::Touching),
        Reach::Handheld => Touched::Chassis(Posture::Holding),
        Reach::CommonExposed => Touched::ChassisAndCommon,
    }
}

/// The nodes of interest as seen from outside.
#[derive(Clone, Copy, Debug)]
pub struct Ports {
    /// The chassis.
    pub chassis: Thevenin,
    /// The second touched node, where there is one: common or aerial terminal.
    pub second: Option<Thevenin>,
    /// Current in the earth path with nobody touching, A rms; 0 without such a path.
    pub earth_amperes: f64,
}

impl Wiring {
    /// The wiring of an arrangement in a state with faults; nothing for a unit without a line side.
    pub fn of(arrangement: &Arrangement, state: State, faults: FaultSet) -> Option<Self> {
        let line = arrangement.line?;
        let mut bits = arrangement.isolation as u32;
        let mut set = |flag: u32, condition: bool| bits |= if condition { flag } else { 0 };
        set(HOT_IS_NEAR, hot_pin(state, faults) == line.near_pin);
        set(NEUTRAL_OPEN, faults.has(Fault::NeutralOpen));
        set(NEAR_SWITCHED, line.switch_leg.opens(Leg::Near));
        set(FAR_SWITCHED, line.switch_leg.opens(Leg::Far));
        set(SWITCHED_OFF, state.switch == Switch::Off && line.switch_leg != SwitchLeg::None);
        let (near, far) = capacitor_legs(line.line_capacitor, state.selector);
        let selector_shorted = faults.has(Fault::SelectorCapacitorShorted);
        set(NEAR_CAPACITOR, near);
        set(FAR_CAPACITOR, far);
        set(CLASS_Y, line.line_capacitor_class == LineCapacitorClass::ClassY);
        set(NEAR_SHORTED, faults.has(Fault::NearCapacitorShorted) || (selector_shorted && near));
        set(FAR_SHORTED, faults.has(Fault::FarCapacitorShorted) || (selector_shorted && far));
        set(NETWORK_SHORTED, faults.has(Fault::NetworkCapacitorShorted));
        set(AERIAL_SHORTED, faults.has(Fault::AerialCapacitorShorted));
        set(BREAKDOWN, faults.has(Fault::InsulationBreakdown));
        set(STRAY_FAR, faults.has(Fault::StrayFar));
        set(STRAY_NEAR, faults.has(Fault::StrayNear));
        set(EARTHED, line.cord.is_earthed() && !faults.has(Fault::EarthOpen));
        set(FEED_EARTHED, faults.has(Fault::FeedEarthed));
        Some(Self(bits))
    }

    /// The packed number, of 20 bits.
    pub const fn bits(self) -> u32 {
        self.0
    }

    /// Whether the chassis has a path to earth.
    pub const fn is_earthed(self) -> bool {
        self.has(EARTHED)
    }

    const fn has(self, flag: u32) -> bool {
        self.0 & flag != 0
    }

    /// What stands between supply and chassis.
    pub fn isolation(self) -> Isolation {
        Isolation::ALL.get((self.0 & 7) as usize).copied().unwrap_or(Isolation::NoLine)
    }

    pub(super) fn common(self) -> Node {
        if self.isolation().has_own_common() { NEAR } else { CHASSIS }
    }

    /// The touched nodes and the earth current, for parts of these values.
    ///
    /// `contacts` are the hot and the neutral contact.
    pub fn ports(self, touched: Touched, values: &Values, hertz: f64, contacts: Contacts) -> Ports {
        let net = self.network(values, hertz, contacts);
        let (chassis, second) = match touched {
            Touched::Nothing | Touched::Chassis(_) => (net.seen_from(CHASSIS), None),
            Touched::ChassisAndCommon => {
                let [chassis, common] = net.seen_from_both(CHASSIS, NEAR);
                (chassis, Some(common))
            }
            Touched::Aerial | Touched::ChassisAndAerial => self.with_aerial(&net, values),
        };
        let earth_amperes =
            if self.is_earthed() { chassis.volts.norm() / values.earth_ohm } else { 0.0 };
        Ports { chassis, second, earth_amperes }
    }

    /// Chassis and aerial terminal, which hangs on the common by its capacitor alone.
    fn with_aerial(self, net: &Network, values: &Values) -> (Thevenin, Option<Thevenin>) {
        let [chassis, common] = self.chassis_and_common(net);
        let series = if self.has(AERIAL_SHORTED) {
            Complex64::new(defaults::SHORT.value, 0.0)
        } else {
            net.reactance(values.aerial_farad)
        };
        (chassis, Some(common.through(series)))
    }

    /// Chassis and common of a network; the same node where the chassis is the common.
    fn chassis_and_common(self, net: &Network) -> [Thevenin; 2] {
        if self.common() == CHASSIS {
            [net.seen_from(CHASSIS); 2]
        } else {
            net.seen_from_both(CHASSIS, NEAR)
        }
    }

    /// Chassis and common as seen from outside, for parts of these values.
    pub fn chassis_and_common_at(
        self,
        values: &Values,
        hertz: f64,
        contacts: Contacts,
    ) -> [Thevenin; 2] {
        self.chassis_and_common(&self.network(values, hertz, contacts))
    }

    /// Whether the capacitor to the aerial terminal is shorted; it changes nothing but that terminal.
    pub const fn is_aerial_shorted(self) -> bool {
        self.has(AERIAL_SHORTED)
    }

    /// The same with a sound capacitor to the aerial terminal.
    #[must_use]
    pub const fn with_sound_aerial(self) -> Self {
        Self(self.0 & !AERIAL_SHORTED)
    }

    /// The class of its line capacitor.
    pub const fn capacitor_class(self) -> LineCapacitorClass {
        if self.has(CLASS_Y) { LineCapacitorClass::ClassY } else { LineCapacitorClass::Ordinary }
    }

    /// Whether the capacitor between common and chassis is shorted.
    pub const fn is_network_shorted(self) -> bool {
        self.has(NETWORK_SHORTED)
    }

    /// Whether a sound line capacitor is joined to a leg.
    pub const fn has_sound_line_capacitor(self) -> bool {
        (self.has(NEAR_CAPACITOR) && !self.has(NEAR_SHORTED))
            || (self.has(FAR_CAPACITOR) && !self.has(FAR_SHORTED))
    }

    /// The network between the outlet contacts, earth and the chassis.
    pub fn network(self, values: &Values, hertz: f64, contacts: Contacts) -> Network {
        let mut net = if contacts.floats {
            // Both contacts' strays hang on the middle between them.
            Network::afloat(hertz, EARTH_AFLOAT, 2.0 * ISOLATED_STRAY.value)
        } else {
            Network::new(hertz)
        };
        net.hold(HOT, contacts.volts[0]);
        net.hold(NEUTRAL, contacts.volts[1]);
        if contacts.floats && self.has(FEED_EARTHED) {
            net.resistor(NEUTRAL, Node::EARTH, defaults::SHORT.value);
        }
        self.each_branch(values, &mut |branch| branch.add_to(&mut net));
        net
    }

    /// Shows every branch of the network: the one description that currents and pictures are made of.
    pub(super) fn each_branch(self, values: &Values, show: &mut impl FnMut(Branch)) {
        let far = self.feed(show, Leg::Far);
        let near = self.feed(show, Leg::Near);
        self.across_the_line(show, values, far, near);
        self.to_the_chassis(show, values, far, near);
        if self.is_earthed() {
            show(Branch::resistor(Part::EarthWire, CHASSIS, Node::EARTH, values.earth_ohm));
        }
    }

    /// Pin, conductor and switch of a leg; gives the leg's own node.
    fn feed(self, show: &mut impl FnMut(Branch), leg: Leg) -> Node {
        let (end, switched, stray, conductor, loose) = match leg {
            Leg::Far => (FAR, FAR_SWITCHED, STRAY_FAR, Part::FarConductor, Part::StrayFar),
            Leg::Near => (NEAR, NEAR_SWITCHED, STRAY_NEAR, Part::NearConductor, Part::StrayNear),
        };
        let pin = self.pin(show, leg);
        let switch = match (self.has(switched), self.has(SWITCHED_OFF)) {
            (false, _) => 0.0,
            (true, false) => defaults::CONDUCTOR.value,
            (true, true) => defaults::OPEN_SWITCH.value,
        };
        show(Branch::resistor(conductor, pin, end, defaults::CONDUCTOR.value + switch));
        self.short_if(show, stray, loose, pin);
        end
    }

    /// The node of a leg's pin: its outlet contact, unless the supply's neutral is cut there.
    fn pin(self, show: &mut impl FnMut(Branch), leg: Leg) -> Node {
        let is_hot = self.has(HOT_IS_NEAR) == (leg == Leg::Near);
        if is_hot {
            HOT
        } else if self.has(NEUTRAL_OPEN) {
            let pull = defaults::NEUTRAL_PULL.value;
            show(Branch::resistor(Part::NeutralPull, HOT, CUT_PIN, pull));
            CUT_PIN
        } else {
            NEUTRAL
        }
    }

    /// Heaters, plate supply or primary between the legs.
    fn across_the_line(
        self,
        show: &mut impl FnMut(Branch),
        values: &Values,
        far: Node,
        near: Node,
    ) {
        let running = !self.has(SWITCHED_OFF);
        let mut load = |ohms| show(Branch::resistor(Part::Load, far, near, ohms));
        if self.isolation().has_heater_string() {
            let cold = values.heater_ohm / defaults::HEATER_RATIO.value;
            load(if running { values.heater_ohm } else { cold });
            if running {
                load(values.load_ohm);
            }
        } else {
            let off = defaults::PRIMARY_OFF.value;
            load(if running { values.primary_ohm } else { off });
        }
    }

    /// Whatever joins the legs to the chassis.
    fn to_the_chassis(self, show: &mut impl FnMut(Branch), values: &Values, far: Node, near: Node) {
        const NEAR_PART: Part = Part::NearChassis;
        const FAR_PART: Part = Part::FarChassis;
        let insulation = defaults::INSULATION.value;
        match self.isolation() {
            Isolation::LineTied | Isolation::HeaterTransformer | Isolation::Autotransformer => {
                show(Branch::resistor(NEAR_PART, near, CHASSIS, defaults::JOINT.value));
            }
            Isolation::LineRectified => {
                let hot_is_near = self.has(HOT_IS_NEAR);
                let (part, rail) = if hot_is_near { (NEAR_PART, near) } else { (FAR_PART, far) };
                show(Branch::resistor(part, rail, CHASSIS, defaults::RECTIFIER.value));
            }
            Isolation::LineFloated => {
                show(Branch::resistor(NEAR_PART, near, CHASSIS, values.network_ohm));
                let farads = values.network_farad;
                self.capacitor_or_short(show, NETWORK_SHORTED, NEAR_PART, near, farads);
            }
            Isolation::LineInsulated => {
                show(Branch::resistor(NEAR_PART, near, CHASSIS, insulation));
                show(Branch::capacitor(NEAR_PART, near, CHASSIS, defaults::STRAY.value));
                self.short_if(show, BREAKDOWN, NEAR_PART, near);
            }
            Isolation::Isolating => {
                show(Branch::capacitor(FAR_PART, far, CHASSIS, values.winding_farad));
                show(Branch::capacitor(NEAR_PART, near, CHASSIS, values.winding_farad));
                show(Branch::resistor(FAR_PART, far, CHASSIS, insulation));
                self.short_if(show, BREAKDOWN, FAR_PART, far);
            }
            Isolation::NoLine => {}
        }
        self.line_capacitors(show, values, far, near);
    }

    fn line_capacitors(
        self,
        show: &mut impl FnMut(Branch),
        values: &Values,
        far: Node,
        near: Node,
    ) {
        let farads = self.line_capacitor_farads(values);
        if self.has(NEAR_CAPACITOR) {
            self.capacitor_or_short(show, NEAR_SHORTED, Part::NearCapacitor, near, farads);
        }
        if self.has(FAR_CAPACITOR) {
            self.capacitor_or_short(show, FAR_SHORTED, Part::FarCapacitor, far, farads);
        }
    }

    /// What a line capacitor is taken to have, F.
    pub fn line_capacitor_farads(self, values: &Values) -> f64 {
        let usual = if self.has(CLASS_Y) { defaults::CLASS_Y } else { defaults::LINE_CAPACITOR };
        values.line_capacitor_farad.unwrap_or(usual.value)
    }

    /// A capacitor to the chassis; shorted, it is a short and no capacitor.
    fn capacitor_or_short(
        self,
        show: &mut impl FnMut(Branch),
        shorted: u32,
        part: Part,
        node: Node,
        farads: f64,
    ) {
        show(if self.has(shorted) {
            Branch::resistor(part, node, CHASSIS, defaults::SHORT.value)
        } else {
            Branch::capacitor(part, node, CHASSIS, farads)
        });
    }

    fn short_if(self, show: &mut impl FnMut(Branch), flag: u32, part: Part, node: Node) {
        if self.has(flag) {
            show(Branch::resistor(part, node, CHASSIS, defaults::SHORT.value));
        }
    }
}

impl Wiring {
    /// Chassis, common and aerial terminal as seen from outside, whatever the reach; for comparison
    /// with an outside solver.
    pub fn all_ports(self, values: &Values, hertz: f64, contacts: Contacts) -> [Thevenin; 3] {
        let net = self.network(values, hertz, contacts);
        let [chassis, common] = self.chassis_and_common(&net);
        let aerial = self.with_aerial(&net, values).1;
        [chassis, common, aerial.unwrap_or(common)]
    }
}
