//! Taking back the last thing done.

use uuid::Uuid;

use super::error::Problem;
use super::proof::READY;
use super::session::Workbench;
use super::views::InspectionView;
use crate::store::{Change, Event, Inspection, Scope};

impl Workbench {
    /// Takes back the last thing done to the unit on this device; nothing where there is none, and never
    /// the start of an inspection or the unit itself.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be written.
    pub fn undo(&mut self, inspection: Uuid) -> Result<Option<InspectionView>, Problem> {
        let (found, _) = self.find(inspection)?;
        let Some(scope) = self.undoable(&found)? else {
            return Ok(None);
        };
        let stamp = self.stamp();
        match self.store.undo(&stamp, scope, &mut self.around.ids)? {
            None => Ok(None),
            Some(_) => self.settled(inspection).map(Some),
        }
    }

    /// Where the next undo finds what it takes back; nothing where there is nothing that may be.
    pub(super) fn undoable(&self, inspection: &Inspection) -> Result<Option<Scope>, Problem> {
        let events = self.store.events(inspection.unit)?;
        let Some((scope, next)) = self.last_action(inspection, &events)? else {
            return Ok(None);
        };
        let starts = |event: &Event| {
            event.intent == next
                && matches!(event.typed(), Change::InspectionStarted | Change::UnitCreated { .. })
        };
        Ok((!events.iter().any(starts)).then_some(scope))
    }

    /// The last action on an inspection or on its unit's own facts, such as the supply, and where to
    /// find it; what was done to another inspection stays.
    fn last_action(
        &self,
        inspection: &Inspection,
        events: &[Event],
    ) -> Result<Option<(Scope, Uuid)>, Problem> {
        let device = &self.around.device;
        let whole = Scope { unit: inspection.unit, inspection: None };
        let Some(last) = self.store.next_undo(whole, device)? else { return Ok(None) };
        // What was said of the work in the queue is taken back there; only that it is ready is said here.
        let is_of_queue =
            |event: &Event| matches!(event.typed(), Change::UnitState(state) if state != READY);
        let elsewhere = |event: &Event| {
            let is_others = event.inspection.is_some_and(|other| other != inspection.id);
            event.intent == last && (is_others || is_of_queue(event))
        };
        if !events.iter().any(elsewhere) {
            return Ok(Some((whole, last)));
        }
        let here = Scope { unit: inspection.unit, inspection: Some(inspection.id) };
        Ok(self.store.next_undo(here, device)?.map(|last| (here, last)))
    }
}
