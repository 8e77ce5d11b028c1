//! What a repair changes: modifications as functions of an arrangement, what stands before and after each, and the
//! shortest stack of them that leaves a unit two faults from live.
//!
//! Nothing here knows what is kept in a record. A repair is judged over everything that a unit may still be, so
//! that what is not known makes no figure kinder.

mod chosen;
mod cost;
mod device;
mod modification;
mod parts_list;
mod proof;
mod refusal;
mod search;
mod setup;
mod size;
mod standing;
mod study;

pub use chosen::{Chosen, not_a_stack};
pub use cost::{Cost, cost_of};
pub use device::{Blind, Cut, Device};
pub use modification::Modification;
pub use parts_list::{Appetite, PartKind, PartNeed, Size, parts_list};
pub use proof::{
    Comparison, Entered, Outcome, Planned, ProofLine, ProofMark, ProofPlan, ProofRow, Who,
    check_entry, evaluate, plan, read_entry, row_of,
};
pub use refusal::Refusal;
pub use search::{Stack, Within, follow, shortest};
pub use setup::{NewParts, Setup};
pub use size::{
    BondLimit, CapacitorDropper, ClassY, CordSize, DiodeDropper, Fuse, FuseStandard, Measure,
    Rectifier, ResistorDropper, Series, TransformerSize, above, below, bond_limit_portable,
    bond_limit_vde, capacitor_dropper, class_y, cord_for, cord_rows, diode_dropper, figure,
    figures, from_nameplate, from_parts, fuse_for, inrush_amperes, lead_ohms, most_farads, nearest,
    preferred, resistor_dropper,
};
pub use standing::{Bench, Brief, Standing};
pub use study::{Offer, Offered, Study, offers, study};
