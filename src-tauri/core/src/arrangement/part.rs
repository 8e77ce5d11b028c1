//! The things of a line side that can carry current, as a picture or a person would name them.

use crate::fields::id_enum;

id_enum! {
    /// One thing that can carry current, from the outlet to the person.
    pub enum Part {
        /// The outlet's hot contact.
        HotContact = "hot_contact",
        /// The outlet's neutral contact.
        NeutralContact = "neutral_contact",
        /// Other loads on the same supply, which pull a cut neutral towards hot.
        NeutralPull = "neutral_pull",
        /// From the outlet to the far leg's switch.
        FarConductor = "far_conductor",
        /// From the outlet to the near leg's switch.
        NearConductor = "near_conductor",
        /// The switch contact in the far leg.
        FarSwitch = "far_switch",
        /// The switch contact in the near leg.
        NearSwitch = "near_switch",
        /// Heaters and plate supply, or the primary, between the legs.
        Load = "load",
        /// What joins the near leg to the chassis: a joint, a network, insulation, a rectifier.
        NearChassis = "near_chassis",
        /// What joins the far leg to the chassis: insulation, a winding's capacitance, a rectifier.
        FarChassis = "far_chassis",
        /// The line capacitor from the near leg.
        NearCapacitor = "near_capacitor",
        /// The line capacitor from the far leg.
        FarCapacitor = "far_capacitor",
        /// The near leg's conductor lying on the chassis.
        StrayNear = "stray_near",
        /// The far leg's conductor lying on the chassis.
        StrayFar = "stray_far",
        /// The chassis.
        Chassis = "chassis",
        /// The circuit common, where it is not the chassis.
        Common = "common",
        /// The capacitor to the aerial terminal.
        AerialCapacitor = "aerial_capacitor",
        /// The aerial terminal.
        AerialTerminal = "aerial_terminal",
        /// The earth wire.
        EarthWire = "earth_wire",
        /// Whoever touches it.
        Person = "person",
    }
}
