//! Sizes of the parts that a repair takes, each with where its figures come from.
//!
//! Figures are rows of `data/sizing.csv`, `data/preferred.csv` and `data/cords.csv`, each with its mark. What is not
//! known of a set is taken so that no part comes out too small.

mod bond;
mod class_y;
mod cord;
mod dropper;
mod fuse;
mod series;
mod tables;
mod transformer;

pub use bond::{BondLimit, bond_limit_portable, bond_limit_vde, lead_ohms};
pub use class_y::{ClassY, class_y, most_farads};
pub use cord::{CordSize, Measure, cord_for, cord_rows};
pub use dropper::{
    CapacitorDropper, DiodeDropper, ResistorDropper, capacitor_dropper, diode_dropper,
    inrush_amperes, resistor_dropper,
};
pub use fuse::{Fuse, FuseStandard, fuse_for};
pub use series::{Series, above, below, nearest};
pub use tables::{figure, figures, preferred};
pub use transformer::{Rectifier, TransformerSize, from_nameplate, from_parts};
