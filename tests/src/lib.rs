//! What the checks share: physical units that answer for themselves, and the outside circuit solver.

pub mod spice;

pub mod bridge;
pub mod physical_unit;
pub mod pictures;
pub mod seeds;
