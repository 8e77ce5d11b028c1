//! How the benches report what they measured, and the sheet that a run of all of them leaves.
//!
//! A bench tells [`Row`]s: they are printed, and added to a file where `COLDCHASSIS_FIGURES` names one. The
//! program of this crate makes the sheet out of that file.

pub mod machine;
mod row;
pub mod sheet;
mod unit;

pub use row::{At, Bound, Limit, Peer, Row, read};
pub use unit::Unit;
