//! How far the work on a unit has come.

use crate::fields::id_enum;
use crate::store::change::Change;
use crate::store::error::{Result, StoreError};
use crate::store::event::{Action, Changed, Stamp};
use crate::store::{Ids, Store};
use uuid::Uuid;

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
        /// The proof is complete.
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
}

impl Store {
    /// Says how far the work on a unit has come. Ready needs the proof: `has_proof` is asked for it, and
    /// for nothing else.
    ///
    /// # Errors
    /// [`StoreError::NeedsProof`], or there is no such unit.
    pub fn set_state<E: From<StoreError>>(
        &mut self,
        stamp: &Stamp,
        unit: Uuid,
        state: WorkState,
        has_proof: impl FnOnce(&Self) -> std::result::Result<bool, E>,
        ids: Ids<'_>,
    ) -> std::result::Result<Changed, E> {
        if state == WorkState::Ready && !has_proof(self)? {
            return Err(StoreError::NeedsProof(unit).into());
        }
        let changes = vec![Change::UnitState(state.id().to_owned())];
        let action = Action { unit, inspection: None, changes, demo: false };
        let changed: Result<Changed> = self.append(stamp, &action, ids);
        Ok(changed?)
    }
}
