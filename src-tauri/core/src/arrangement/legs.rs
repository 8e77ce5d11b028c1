//! Which pin is hot, and which legs have a line capacitor.

use super::factors::{LineCapacitor, NearPin};
use super::fault::{Fault, FaultSet};
use super::state::{Selector, State};

/// The pin on the hot contact once the outlet's faults are counted.
pub fn hot_pin(state: State, faults: FaultSet) -> NearPin {
    match (state.hot_pin(), faults.has(Fault::OutletReversed)) {
        (pin, false) => pin,
        (NearPin::A, true) => NearPin::B,
        (NearPin::B, true) => NearPin::A,
    }
}

/// Whether there is a line capacitor on the near and on the far leg.
pub(super) fn capacitor_legs(capacitor: LineCapacitor, selector: Option<Selector>) -> (bool, bool) {
    match capacitor {
        LineCapacitor::None => (false, false),
        LineCapacitor::NearLeg => (true, false),
        LineCapacitor::FarLeg => (false, true),
        LineCapacitor::BothLegs => (true, true),
        LineCapacitor::Selector => {
            (selector == Some(Selector::Near), selector == Some(Selector::Far))
        }
    }
}
