//! Why a modification is not offered.

use crate::fields::id_enum;

id_enum! {
    /// Why a modification is not offered.
    pub enum Refusal {
        /// Nothing in it is fed from the wall.
        NoLineSide = "no_line_side",
        /// It is so already.
        Already = "already",
        /// What would be changed is not there.
        NotThere = "not_there",
        /// Metal that is held or plugged in while in use cannot be taken out of reach.
        HeldInUse = "held_in_use",
        /// It would put the supply on the earth wire.
        LineOnEarth = "line_on_earth",
        /// Common and chassis are still joined by a capacitor that can short, or by nothing that is rated for it.
        NetworkOrdinary = "network_ordinary",
        /// It would take away an earth that does its work.
        LosesEarth = "loses_earth",
        /// Downstream of an isolating transformer such a device sees nothing.
        SeesNothing = "sees_nothing",
        /// Outlets there take a plug both ways round.
        GoesInBothWays = "goes_in_both_ways",
    }
}

impl Refusal {
    /// Whether it must not be done to a unit that may be built like this; else there is only nothing to do.
    pub const fn is_forbidden(self) -> bool {
        matches!(
            self,
            Self::LineOnEarth | Self::NetworkOrdinary | Self::LosesEarth | Self::SeesNothing
        )
    }
}
