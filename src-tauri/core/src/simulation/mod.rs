//! What a computer plays through in place of a bench: units with parts of their own, what an honest
//! inspector finds on them, and what an inspection takes in one order of asking or another.

mod draw;
mod figures;
mod inspector;
mod least;
mod run;
pub mod unit;
mod wrong;

pub use draw::{KINDS, unit_of_kind};
pub use figures::{ACCESS, Figures, Row, simulate};
pub use inspector::{Inspector, Slips};
pub use least::least_seconds;
pub use run::{Run, inspect, true_class, true_classes};
pub use wrong::{Slip, one_wrong_answer, permits};
