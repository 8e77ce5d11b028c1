//! The factors of an arrangement and their ids.

use serde::Serialize;

use crate::fields::id_enum;
use crate::supply::Feed;

id_enum! {
    /// What stands between the supply and the set's common.
    pub enum Isolation {
        /// The common is on a supply conductor, and the chassis is the common.
        LineTied = "line_tied",
        /// A bridge or full-wave doubler: common and chassis on neither leg, live either way round.
        LineRectified = "line_rectified",
        /// The common is on a supply conductor, the chassis joined to it by a resistor and a capacitor.
        LineFloated = "line_floated",
        /// The same with nothing but stray capacitance between.
        LineInsulated = "line_insulated",
        /// A winding feeds the heaters only; the rest is line tied.
        HeaterTransformer = "heater_transformer",
        /// Iron without isolation, the chassis on its common end.
        Autotransformer = "autotransformer",
        /// Separate windings; the chassis is the set's common.
        Isolating = "isolating",
        /// Batteries only.
        NoLine = "no_line",
    }
}

id_enum! {
    /// The plug, and whether its earth pin is joined to the chassis.
    pub enum Cord {
        /// Two equal pins.
        TwoPinReversible = "two_pin_reversible",
        /// Two pins that go in one way only.
        TwoPinPolarised = "two_pin_polarised",
        /// Three pins, the chassis bonded.
        ThreePinEarthed = "three_pin_earthed",
        /// Three pins, the earth wire not on the chassis.
        ThreePinUnearthed = "three_pin_unearthed",
        /// The earth pin cut off, so that the plug goes in both ways round.
        ThreePinCut = "three_pin_cut",
        /// An earthed plug that goes in both ways round, the chassis bonded.
        ThreePinReversibleEarthed = "three_pin_reversible_earthed",
        /// The same, the earth wire not on the chassis.
        ThreePinReversibleUnearthed = "three_pin_reversible_unearthed",
    }
}

impl Cord {
    /// Whether the chassis is bonded to the earth contact.
    pub const fn is_earthed(self) -> bool {
        matches!(self, Self::ThreePinEarthed | Self::ThreePinReversibleEarthed)
    }

    /// Whether the plug goes in both ways round.
    pub const fn is_reversible(self) -> bool {
        !matches!(self, Self::TwoPinPolarised | Self::ThreePinEarthed | Self::ThreePinUnearthed)
    }
}

impl Cord {
    /// Whether either pin can come to stand on either contact without a fault: the plug goes in both ways round, or
    /// the outlet has no neutral of its own.
    pub const fn goes_in_both_ways(self, feed: Feed) -> bool {
        self.is_reversible() || !feed.has_fixed_neutral()
    }
}

id_enum! {
    /// The pin that feeds the near leg, the one the circuit common is on.
    pub enum NearPin {
        /// Pin B: the wide blade or neutral pin, or the one marked with tape.
        B = "b",
        /// Pin A.
        A = "a",
    }
}

id_enum! {
    /// Where a line capacitor goes to the chassis from.
    pub enum LineCapacitor {
        /// There is none.
        None = "none",
        /// The near leg.
        NearLeg = "near_leg",
        /// The far leg.
        FarLeg = "far_leg",
        /// One from each leg.
        BothLegs = "both_legs",
        /// A panel switch chooses the leg.
        Selector = "selector",
    }
}

id_enum! {
    /// Whether a line capacitor is of the kind that does not fail short.
    pub enum LineCapacitorClass {
        /// Paper, film or ceramic of no class; also where there is none.
        Ordinary = "ordinary",
        /// Class Y of IEC 60384-14.
        ClassY = "class_y",
    }
}

id_enum! {
    /// The legs the power switch opens.
    pub enum SwitchLeg {
        /// The near leg.
        Near = "near",
        /// The far leg.
        Far = "far",
        /// Both legs.
        Both = "both",
        /// No switch, or none in the line.
        None = "none",
    }
}

id_enum! {
    /// Which metal a person can touch.
    pub enum Reach {
        /// Every place checked; nothing joined to the circuit can be touched.
        Closed = "closed",
        /// Closed, but an aerial or earth terminal goes to the common through a capacitor.
        AerialTerminal = "aerial_terminal",
        /// Metal on the chassis.
        Exposed = "exposed",
        /// Metal on the chassis that is held in use.
        Handheld = "handheld",
        /// Metal on the circuit common, where that is not the chassis.
        CommonExposed = "common_exposed",
    }
}

/// One of the two conductors of the supply inside the unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Leg {
    /// The one the common is on.
    Near,
    /// The other.
    Far,
}

impl Isolation {
    /// Whether the unit has a line side at all.
    pub const fn has_line(self) -> bool {
        !matches!(self, Self::NoLine)
    }

    /// Whether the common is something else than the chassis.
    pub const fn has_own_common(self) -> bool {
        matches!(self, Self::LineFloated | Self::LineInsulated)
    }

    /// Whether the chassis is joined to the near leg by a wire.
    pub const fn is_tied(self) -> bool {
        matches!(self, Self::LineTied | Self::HeaterTransformer | Self::Autotransformer)
    }

    /// Whether a line capacitor to the chassis makes sense.
    pub const fn may_have_line_capacitor(self) -> bool {
        self.has_own_common() || matches!(self, Self::Isolating)
    }

    /// Whether a series heater string lies across the line.
    pub const fn has_heater_string(self) -> bool {
        matches!(
            self,
            Self::LineTied | Self::LineRectified | Self::LineFloated | Self::LineInsulated
        )
    }

    /// Whether the line feeds a half-wave plate supply straight, so that direct current flows in it.
    pub const fn draws_half_waves(self) -> bool {
        self.has_line() && !matches!(self, Self::Isolating | Self::LineRectified)
    }

    /// Whether an earth on the chassis would be an earth on the line.
    pub const fn is_line_on_chassis(self) -> bool {
        self.is_tied() || matches!(self, Self::LineRectified)
    }
}

impl SwitchLeg {
    /// Whether the power switch opens this leg.
    pub const fn opens(self, leg: Leg) -> bool {
        match leg {
            Leg::Near => matches!(self, Self::Near | Self::Both),
            Leg::Far => matches!(self, Self::Far | Self::Both),
        }
    }
}

/// The factors of a unit that has a line side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
pub struct LineSide {
    /// The plug and the bond.
    pub cord: Cord,
    /// The pin that feeds the near leg.
    pub near_pin: NearPin,
    /// Where a line capacitor goes.
    pub line_capacitor: LineCapacitor,
    /// Its class.
    pub line_capacitor_class: LineCapacitorClass,
    /// The legs that are switched.
    pub switch_leg: SwitchLeg,
    /// The metal in reach.
    pub reach: Reach,
}

/// One way in which a unit can be built.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
pub struct Arrangement {
    /// What stands between supply and chassis.
    pub isolation: Isolation,
    /// The rest; nothing for a unit without a line side.
    #[serde(flatten)]
    pub line: Option<LineSide>,
}

impl Arrangement {
    /// Whether powering it would put the supply on the earth conductor.
    pub fn is_line_on_earth(&self) -> bool {
        self.isolation.is_line_on_chassis() && self.line.is_some_and(|line| line.cord.is_earthed())
    }

    /// The same with the switch that lifts its earth in the other position, where that puts the supply on the earth
    /// conductor; nothing for any other arrangement.
    pub fn with_lift_closed(&self) -> Option<Self> {
        let line = self.line?;
        let cord = match line.cord {
            Cord::ThreePinUnearthed => Cord::ThreePinEarthed,
            Cord::ThreePinReversibleUnearthed => Cord::ThreePinReversibleEarthed,
            _ => return None,
        };
        let closed = Self { line: Some(LineSide { cord, ..line }), ..*self };
        self.isolation.is_line_on_chassis().then_some(closed)
    }

    /// Why this combination cannot exist, as the id of the factor that is wrong; nothing if it can.
    pub fn contradiction(&self) -> Option<&'static str> {
        let line = self.line?;
        let isolation = self.isolation;
        if isolation == Isolation::Isolating && line.near_pin != NearPin::B {
            return Some("near_pin");
        }
        if line.line_capacitor != LineCapacitor::None && !isolation.may_have_line_capacitor() {
            return Some("line_capacitor");
        }
        if line.line_capacitor == LineCapacitor::None
            && line.line_capacitor_class != LineCapacitorClass::Ordinary
        {
            return Some("line_capacitor_class");
        }
        if line.reach == Reach::CommonExposed && !isolation.has_own_common() {
            return Some("reach");
        }
        None
    }
}
