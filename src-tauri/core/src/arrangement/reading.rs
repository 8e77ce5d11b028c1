//! The readings a meter can give of a unit: between which places, and where the switch stands.

use super::state::Switch;
use crate::fields::id_enum;

id_enum! {
    /// Meter readings, the unit unplugged but for the last.
    pub enum ReadingId {
        /// Pin A to the chassis, switch on.
        OhmsAChassisOn = "ohms_a_chassis_on",
        /// Pin A to the chassis, switch off.
        OhmsAChassisOff = "ohms_a_chassis_off",
        /// Pin B to the chassis, switch on.
        OhmsBChassisOn = "ohms_b_chassis_on",
        /// Pin B to the chassis, switch off.
        OhmsBChassisOff = "ohms_b_chassis_off",
        /// Earth pin to the chassis.
        OhmsEarthChassis = "ohms_earth_chassis",
        /// Pin A to the bare metal, switch on.
        OhmsAPartOn = "ohms_a_part_on",
        /// Pin A to the bare metal, switch off.
        OhmsAPartOff = "ohms_a_part_off",
        /// Pin B to the bare metal, switch on.
        OhmsBPartOn = "ohms_b_part_on",
        /// Pin B to the bare metal, switch off.
        OhmsBPartOff = "ohms_b_part_off",
        /// Earth pin to the bare metal.
        OhmsEarthPart = "ohms_earth_part",
        /// Pin A to pin B, switch on.
        OhmsABOn = "ohms_a_b_on",
        /// Pin A to pin B, switch off.
        OhmsABOff = "ohms_a_b_off",
        /// Insulation, pins to chassis, at a test voltage.
        InsulationMegohms = "insulation_megohms",
        /// Live touch test across 1500 Ω ∥ 0.15 µF.
        TouchTestVolts = "touch_test_volts",
    }
}

id_enum! {
    /// Where a probe goes.
    pub enum Probe {
        /// Pin A of the plug.
        PinA = "pin_a",
        /// Pin B.
        PinB = "pin_b",
        /// The earth pin.
        EarthPin = "earth_pin",
        /// The chassis itself, the cover off.
        Chassis = "chassis",
        /// The bare metal found from outside, every piece of it in turn: for a supply pin the lowest
        /// reading counts, for the earth pin the highest.
        Part = "part",
    }
}

impl ReadingId {
    /// How many are ohmmeter readings; they come first.
    pub const OHMS: usize = 12;

    /// The ohmmeter readings, in their order.
    pub fn ohmmeter() -> impl Iterator<Item = Self> + Clone {
        Self::ALL.iter().copied().take(Self::OHMS)
    }

    /// The two places that an ohmmeter goes between; nothing for the other tests.
    pub const fn probes(self) -> Option<(Probe, Probe)> {
        use Probe::{Chassis, EarthPin, Part, PinA, PinB};
        Some(match self {
            Self::OhmsAChassisOn | Self::OhmsAChassisOff => (PinA, Chassis),
            Self::OhmsBChassisOn | Self::OhmsBChassisOff => (PinB, Chassis),
            Self::OhmsEarthChassis => (EarthPin, Chassis),
            Self::OhmsAPartOn | Self::OhmsAPartOff => (PinA, Part),
            Self::OhmsBPartOn | Self::OhmsBPartOff => (PinB, Part),
            Self::OhmsEarthPart => (EarthPin, Part),
            Self::OhmsABOn | Self::OhmsABOff => (PinA, PinB),
            Self::InsulationMegohms | Self::TouchTestVolts => return None,
        })
    }

    /// Where the power switch stands; nothing where that makes no difference.
    pub const fn switch(self) -> Option<Switch> {
        match self {
            Self::OhmsAChassisOn
            | Self::OhmsBChassisOn
            | Self::OhmsAPartOn
            | Self::OhmsBPartOn
            | Self::OhmsABOn => Some(Switch::On),
            Self::OhmsAChassisOff
            | Self::OhmsBChassisOff
            | Self::OhmsAPartOff
            | Self::OhmsBPartOff
            | Self::OhmsABOff => Some(Switch::Off),
            Self::OhmsEarthChassis
            | Self::OhmsEarthPart
            | Self::InsulationMegohms
            | Self::TouchTestVolts => None,
        }
    }

    /// The same reading with the names of the two supply pins swapped.
    #[must_use]
    pub const fn mirrored(self) -> Self {
        match self {
            Self::OhmsAChassisOn => Self::OhmsBChassisOn,
            Self::OhmsAChassisOff => Self::OhmsBChassisOff,
            Self::OhmsBChassisOn => Self::OhmsAChassisOn,
            Self::OhmsBChassisOff => Self::OhmsAChassisOff,
            Self::OhmsAPartOn => Self::OhmsBPartOn,
            Self::OhmsAPartOff => Self::OhmsBPartOff,
            Self::OhmsBPartOn => Self::OhmsAPartOn,
            Self::OhmsBPartOff => Self::OhmsAPartOff,
            other => other,
        }
    }
}
