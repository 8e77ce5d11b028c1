//! The parts of a physical unit.

use super::conductor::{Conductor, Pair};
use super::factors::Cord;

/// A width difference between blades that a person sees and an outlet slot stops, mm.
/// NEMA WD 6 nominal blades are 6.35 mm and 7.92 mm, each ±0.25 mm (maximum widths seen in print,
/// nominal and tolerance from memory): at least 1.07 mm apart when polarised, at most 0.5 mm when
/// equal.
pub const BLADE_STEP_MM: f64 = 0.8;

/// Where the power comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Feed {
    /// The line, by its own cord.
    Line,
    /// Batteries inside, no inlet, no cord.
    Batteries,
    /// A supply of its own outside, low voltage into the unit.
    OutsideSupply,
}

/// What is on the plug to meet the outlet's earth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EarthContact {
    /// Nothing, and nothing ever was.
    None,
    /// A pin, whole. It also fixes which way round the plug goes in.
    Pin,
    /// The stump of a pin.
    Stump,
    /// Clips at the sides, which let the plug go in both ways.
    SideClips,
}

/// A plug.
#[derive(Clone, Debug, PartialEq)]
pub struct Plug {
    /// Width or diameter of the two supply blades, mm.
    pub blade_mm: Pair<f64>,
    /// Earth contact.
    pub earth: EarthContact,
    /// The blade in the neutral place beside an earth pin or its stump.
    pub neutral_place: Conductor,
}

impl Plug {
    /// The wide blade, where one is wider.
    pub fn wide_blade(&self) -> Option<Conductor> {
        let Pair(first, second) = self.blade_mm;
        if (first - second).abs() < BLADE_STEP_MM {
            None
        } else {
            Some(if second > first { Conductor::Second } else { Conductor::First })
        }
    }

    /// The blade that the plug itself shows to be the neutral one.
    pub fn told_neutral(&self) -> Option<Conductor> {
        match self.earth {
            EarthContact::Pin | EarthContact::Stump => Some(self.neutral_place),
            EarthContact::None | EarthContact::SideClips => self.wide_blade(),
        }
    }

    /// The cord that this plug makes with its earth contact bonded to the chassis or not.
    ///
    /// A stump beside a wide blade would still go in one way only; it is not modelled, because no
    /// cord factor says so and taking it for one that goes in both ways is the worse of the two.
    pub fn cord(&self, chassis_bonded: bool) -> Cord {
        match (self.earth, chassis_bonded, self.wide_blade()) {
            (EarthContact::None, _, None) => Cord::TwoPinReversible,
            (EarthContact::None, _, Some(_)) => Cord::TwoPinPolarised,
            (EarthContact::Stump, _, _) => Cord::ThreePinCut,
            (EarthContact::Pin, true, _) => Cord::ThreePinEarthed,
            (EarthContact::Pin, false, _) => Cord::ThreePinUnearthed,
            (EarthContact::SideClips, true, _) => Cord::ThreePinReversibleEarthed,
            (EarthContact::SideClips, false, _) => Cord::ThreePinReversibleUnearthed,
        }
    }
}

/// Where the earth wire of the cord ends inside the unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EarthWire {
    /// The cord has none.
    Absent,
    /// On the chassis. It only bonds the chassis if the plug has an earth contact.
    OnChassis,
    /// On an earth lift switch, which may join it to the chassis or not.
    LiftSwitch,
    /// Cut short or taped off.
    Loose,
}

/// What feeds the plates.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlateSource {
    /// One rectifier straight on the line; the common is a supply conductor.
    LineHalfWave,
    /// Bridge or full-wave doubler straight on the line; the common is on neither conductor.
    LineBridgeOrDoubler,
    /// A winding with one lead shared by line and set.
    TappedWinding,
    /// A winding of its own.
    SeparateWinding,
    /// Batteries or a supply outside.
    LowVoltage,
}

/// What feeds the heaters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeaterSource {
    /// A series string straight on the line.
    LineString,
    /// A transformer that feeds nothing else, or (with plates on iron too) the same transformer.
    Transformer,
    /// A winding on the motor.
    MotorWinding,
    /// Batteries or a supply outside.
    LowVoltage,
}

/// A capacitor or resistor that can be read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Capacitor {
    /// What it really is, F.
    pub farad: f64,
    /// What is printed on it, F; the real value is within ±20 % of this.
    pub marked_farad: f64,
}

/// The joint between circuit common and chassis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bond {
    /// A wire, or the chassis is the common conductor.
    Direct,
    /// A resistor and a capacitor side by side.
    Network {
        /// What the resistor really is, Ω.
        ohm: f64,
        /// What its bands say, Ω; the real value is within ±20 % of this.
        marked_ohm: f64,
        /// The capacitor.
        capacitor: Capacitor,
    },
    /// Nothing.
    Insulated,
}

/// A capacitor, or two alike, from the supply to the chassis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LegCapacitor {
    /// From which conductors one goes to the chassis. Both false: from the panel switch.
    pub from: Pair<bool>,
    /// The part (both parts alike, where there are two).
    pub part: Capacitor,
    /// It is marked class Y.
    pub class_y: bool,
}

/// What a piece of metal is joined to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MetalNode {
    /// Nothing in the circuit.
    Nothing,
    /// The chassis.
    Chassis,
    /// The circuit common.
    Common,
}

/// Where bare metal can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// A control shaft or the grub screw of a knob.
    ShaftOrGrubScrew,
    /// A screw underneath or behind.
    Screw,
    /// Trim, grille or speaker frame.
    TrimOrGrille,
    /// A metal cabinet.
    Cabinet,
    /// A metal control panel.
    ControlPanel,
    /// Tonearm or turntable.
    TonearmOrTurntable,
    /// Instrument jack: its sleeve goes to strings that are held.
    InstrumentJack,
    /// Microphone jack: its sleeve goes to a case that is held.
    MicrophoneJack,
    /// Phono, headphone or footswitch socket.
    Socket,
    /// Screen or body of a pickup.
    PickupShield,
}

impl Place {
    /// The answer to `bare_metal` under which an honest inspector files this place.
    pub fn answer(self) -> &'static str {
        match self {
            Place::ShaftOrGrubScrew | Place::Screw => "screws_or_shafts",
            Place::TrimOrGrille
            | Place::Cabinet
            | Place::ControlPanel
            | Place::TonearmOrTurntable => "panel_or_cabinet",
            Place::InstrumentJack | Place::MicrophoneJack => "instrument_jack",
            Place::Socket | Place::PickupShield => "socket_or_pickup",
        }
    }

    /// Metal in this place ends in a hand whenever the unit is used.
    pub fn is_jack(self) -> bool {
        matches!(self, Place::InstrumentJack | Place::MicrophoneJack)
    }
}

/// A piece of metal that can be touched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BareMetal {
    /// Where.
    pub place: Place,
    /// What it is joined to.
    pub node: MetalNode,
    /// It is held in use although it is no jack (a control panel one leans on).
    pub held: bool,
}

/// Pickup or speaker terminals.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Terminals {
    /// What one of them is joined to. What is connected there carries it to a hand.
    pub node: MetalNode,
    /// Their own metal can be touched.
    pub bare: bool,
}

/// An aerial or earth post.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AerialPost {
    /// To the circuit common through a capacitor.
    ThroughCapacitor(Capacitor),
    /// Straight to this node by a wire; its metal can be touched.
    Straight(MetalNode),
    /// To a coil that is joined to nothing else.
    CoilOnly,
}

/// State of the cord.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CordState {
    /// Plastic, whole.
    Sound,
    /// Cracked.
    Cracked,
    /// Spliced.
    Spliced,
    /// Cloth or rubber.
    ClothOrRubber,
}

/// Figures on a rating plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rated {
    /// Volts.
    pub volts: f64,
    /// Hertz, where given.
    pub hertz: Option<f64>,
    /// Watts, where given.
    pub watts: Option<f64>,
}
