//! What an ohmmeter reads of an arrangement, unplugged: the network at direct current.
//!
//! A resistance between two places of a network of resistors can only rise when one of them rises
//! (Rayleigh's monotonicity law). So the least reading is that with every part at its least, and the most
//! that with every part at its most: two solutions bound every unit between.

mod network;
mod parts;

pub use network::reading_range;
pub use parts::{BOND_MOST, BOND_SOUND, DirectParts, MOTOR_LEAST, WIRE_LEAST};
