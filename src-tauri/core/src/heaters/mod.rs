//! Heaters: what tubes a unit has, what their heaters need, and what that suggests about the line side.
//!
//! A list of tubes on a label says in seconds whether the heaters add up to the line voltage. It is soft
//! evidence: it moves what is likely and proves nothing.

mod catalogue;
mod designation;
mod dropper;
mod label;
mod lamps;
mod lookup;
mod resistance;
mod spelling;
mod string;
mod study;
mod suggest;
mod tube;

pub use catalogue::{
    Doubt, HeaterKind, Rating, Rectifier, TubeRole, TubeSource, TubeType, Use, catalogue, find,
    sources,
};
pub use dropper::{Dropper, RATED_FACTOR, series_capacitor};
pub use label::{Written, read_label};
pub use lamps::lamps_like;
pub use resistance::{ColdRange, HEATER_RATIO_MOST, PlugReading};
pub use string::{OVER, UNDER, voltage_share};
pub use study::{Clash, Part, Place, Reading, Study, study};
pub use suggest::{Suggestion, suggest};
pub use tube::{Known, Tube};
