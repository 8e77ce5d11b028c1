//! How far the work on a unit has come.

use crate::fields::id_enum;

id_enum! {
    /// How far the work on a unit has come, in the order in which a shop goes.
    pub enum WorkState {
        /// It came in and nobody has looked at it.
        ToInspect = "to_inspect",
        /// It was looked at and must not be powered.
        DoNotPower = "do_not_power",
        /// Something for it is on its way.
        AwaitingParts = "awaiting_parts",
        /// Somebody works on it.
        InRepair = "in_repair",
        /// It is repaired, and the proof is not complete.
        ProofOpen = "proof_open",
        /// The proof is complete; whoever sets this asks for it (`workbench::ready`).
        Ready = "ready",
        /// Its owner has it.
        HandedBack = "handed_back",
    }
}

impl WorkState {
    /// What a unit is in that nobody has put anywhere, or that another version put where this one knows
    /// nothing of: somebody has to look at it.
    pub(super) fn of_unit(state: Option<&str>) -> Self {
        state.and_then(Self::of).unwrap_or(Self::ToInspect)
    }

    /// What it stands as: ready is not believed without its proof, whoever said it and whatever was changed
    /// since.
    pub(super) const fn with_proof(self, is_proven: bool) -> Self {
        match self {
            Self::Ready if !is_proven => Self::ProofOpen,
            state => state,
        }
    }
}
