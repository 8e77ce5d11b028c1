//! The words in which an arrangement is written down, and every combination of them.

/// Declares a factor: its values, their ids in the files, and the list of all of them.
macro_rules! factor {
    ($(#[$doc:meta])* $name:ident { $($(#[$value_doc:meta])* $value:ident = $id:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$value_doc])* $value),+ }

        impl $name {
            /// Every value, in the order of the design.
            pub const ALL: &'static [Self] = &[$(Self::$value),+];

            /// The id in the files.
            pub fn id(self) -> &'static str {
                match self { $(Self::$value => $id),+ }
            }
        }
    };
}

factor!(
    /// How the line side is built.
    Isolation {
        /// Common on a supply conductor, chassis is the common.
        LineTied = "line_tied",
        /// Bridge or full-wave doubler; chassis is the common, on neither conductor.
        LineRectified = "line_rectified",
        /// Common on a supply conductor, chassis joined to it through a resistor and a capacitor.
        LineFloated = "line_floated",
        /// Common on a supply conductor, chassis joined to nothing.
        LineInsulated = "line_insulated",
        /// Iron feeds the heaters only; the rest is line tied.
        HeaterTransformer = "heater_transformer",
        /// Iron, but one lead is shared by line and set.
        Autotransformer = "autotransformer",
        /// Separate windings.
        Isolating = "isolating",
        /// No line inside.
        NoLine = "no_line",
    }
);
factor!(
    /// Plug and earth wire together.
    Cord {
        /// Two pins, either way round.
        TwoPinReversible = "two_pin_reversible",
        /// Two pins, one way round.
        TwoPinPolarised = "two_pin_polarised",
        /// Three pins, earth on the chassis.
        ThreePinEarthed = "three_pin_earthed",
        /// Three pins, earth not on the chassis.
        ThreePinUnearthed = "three_pin_unearthed",
        /// Earth pin gone.
        ThreePinCut = "three_pin_cut",
        /// Earthed plug that goes in both ways, earth on the chassis.
        ThreePinReversibleEarthed = "three_pin_reversible_earthed",
        /// Earthed plug that goes in both ways, earth not on the chassis.
        ThreePinReversibleUnearthed = "three_pin_reversible_unearthed",
    }
);
factor!(
    /// One of the two supply pins.
    Pin {
        /// The one that is not B.
        A = "a",
        /// The wide, neutral or taped one.
        B = "b",
    }
);
factor!(
    /// From which leg a capacitor goes to the chassis.
    LineCapacitor {
        /// No such capacitor.
        None = "none",
        /// From the near leg.
        NearLeg = "near_leg",
        /// From the far leg.
        FarLeg = "far_leg",
        /// One from each.
        BothLegs = "both_legs",
        /// From the leg that a panel switch chooses.
        Selector = "selector",
    }
);
factor!(
    /// What the line capacitor is made to withstand.
    CapacitorClass {
        /// No class marking for line to accessible metal.
        Ordinary = "ordinary",
        /// Marked class Y.
        ClassY = "class_y",
    }
);
factor!(
    /// Which legs the power switch opens.
    SwitchLeg {
        /// The near leg.
        Near = "near",
        /// The far leg.
        Far = "far",
        /// Both.
        Both = "both",
        /// Neither.
        None = "none",
    }
);
factor!(
    /// Which joined metal can be touched.
    Reach {
        /// None.
        Closed = "closed",
        /// Only a post that goes to the common through a capacitor.
        AerialTerminal = "aerial_terminal",
        /// The chassis.
        Exposed = "exposed",
        /// The chassis, held in use.
        Handheld = "handheld",
        /// The circuit common, where it is not the chassis.
        CommonExposed = "common_exposed",
    }
);

impl Isolation {
    /// The circuit common is a node of its own, not the chassis.
    pub fn common_is_apart(self) -> bool {
        matches!(self, Isolation::LineFloated | Isolation::LineInsulated)
    }

    /// The chassis itself is on the line, so an earth wire puts the line on earth.
    pub fn chassis_on_line(self) -> bool {
        matches!(
            self,
            Isolation::LineTied
                | Isolation::LineRectified
                | Isolation::HeaterTransformer
                | Isolation::Autotransformer
        )
    }

    /// The arrangement can have a line capacitor: elsewhere it would only lie across the line.
    pub fn has_line_capacitor(self) -> bool {
        self.common_is_apart() || self == Isolation::Isolating
    }

    /// The heaters are a series string on the line.
    pub fn has_heater_string(self) -> bool {
        matches!(
            self,
            Isolation::LineTied
                | Isolation::LineRectified
                | Isolation::LineFloated
                | Isolation::LineInsulated
        )
    }
}

impl Cord {
    /// The chassis is bonded to the earth contact.
    pub fn is_earthed(self) -> bool {
        matches!(self, Cord::ThreePinEarthed | Cord::ThreePinReversibleEarthed)
    }
}

/// One arrangement: a value for each factor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Factors {
    /// How the line side is built. With `NoLine` the others are at their first value.
    pub isolation: Isolation,
    /// Plug and earth wire.
    pub cord: Cord,
    /// The pin that feeds the near leg.
    pub near_pin: Pin,
    /// Line capacitor.
    pub line_capacitor: LineCapacitor,
    /// Its class.
    pub line_capacitor_class: CapacitorClass,
    /// Legs the switch opens.
    pub switch_leg: SwitchLeg,
    /// Metal that can be touched.
    pub reach: Reach,
}

impl Factors {
    /// The one arrangement with no line inside.
    pub const NO_LINE: Factors = Factors {
        isolation: Isolation::NoLine,
        cord: Cord::TwoPinReversible,
        near_pin: Pin::B,
        line_capacitor: LineCapacitor::None,
        line_capacitor_class: CapacitorClass::Ordinary,
        switch_leg: SwitchLeg::Near,
        reach: Reach::Closed,
    };

    /// Every arrangement that exists: 6,945.
    pub fn all() -> Vec<Factors> {
        let mut every = vec![Factors::NO_LINE];
        for &isolation in Isolation::ALL.iter().filter(|i| **i != Isolation::NoLine) {
            for &cord in Cord::ALL {
                push_wirings(isolation, cord, &mut every);
            }
        }
        every
    }
}

fn push_wirings(isolation: Isolation, cord: Cord, every: &mut Vec<Factors>) {
    for &near_pin in near_pins(isolation) {
        for (line_capacitor, line_capacitor_class) in capacitors(isolation) {
            for &switch_leg in SwitchLeg::ALL {
                for &reach in reaches(isolation) {
                    every.push(Factors {
                        isolation,
                        cord,
                        near_pin,
                        line_capacitor,
                        line_capacitor_class,
                        switch_leg,
                        reach,
                    });
                }
            }
        }
    }
}

/// With separate windings neither leg is special, so "near" is simply the one of pin B.
pub(super) fn near_pins(isolation: Isolation) -> &'static [Pin] {
    if isolation == Isolation::Isolating { &[Pin::B] } else { Pin::ALL }
}

pub(super) fn reaches(isolation: Isolation) -> &'static [Reach] {
    match Reach::ALL {
        [shared @ .., _] if !isolation.common_is_apart() => shared,
        all => all,
    }
}

pub(super) fn capacitors(isolation: Isolation) -> Vec<(LineCapacitor, CapacitorClass)> {
    let mut found = vec![(LineCapacitor::None, CapacitorClass::Ordinary)];
    if isolation.has_line_capacitor() {
        for &place in LineCapacitor::ALL.iter().filter(|p| **p != LineCapacitor::None) {
            found.extend(CapacitorClass::ALL.iter().map(|&class| (place, class)));
        }
    }
    found
}
