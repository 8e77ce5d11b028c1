//! What the checks share: the outside circuit solver, the loopback bridge, pictures and seeds.

pub mod spice;

pub mod bridge;
pub mod camera;
pub mod killing;
pub mod licences;
pub mod pace;
pub mod pictures;
pub mod seeds;
pub mod shop;
