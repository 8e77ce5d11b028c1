//! How the line side of a unit can be built: the factors, which combinations exist, and the network
//! of each in a state with faults.
//!
//! Nothing here knows how anybody finds out which arrangement a unit has.

mod branch;
mod direct;
mod factors;
mod fault;
mod file;
mod legs;
mod part;
mod reading;
mod state;
mod universe;
mod values;
mod way;
mod wiring;

pub use direct::{BOND_MOST, BOND_SOUND, DirectParts, MOTOR_LEAST, WIRE_LEAST, reading_range};
pub use factors::{
    Arrangement, Cord, Isolation, Leg, LineCapacitor, LineCapacitorClass, LineSide, NearPin, Reach,
    SwitchLeg,
};
pub use fault::{Fault, FaultSet, fault_sets};
pub use file::{ExposureFile, read_exposure};
pub use legs::hot_pin;
pub use part::Part;
pub use reading::{Probe, ReadingId};
pub use state::{PlugWay, Selector, State, Switch, states};
pub use universe::{ArrangementId, COUNT, all, find, twin};
pub use values::{Spread, Values, defaults};
pub use wiring::{Ports, Touched, Wiring, touched};
