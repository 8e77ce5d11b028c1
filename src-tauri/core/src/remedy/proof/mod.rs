//! What has to be measured after a repair, line by line, and whether it was.
//!
//! A line is open until something is entered, then passed or failed. A unit is ready only when no line of the plan
//! is open or failed.

mod entry;
mod line;
mod plan;

pub use entry::{Entered, Outcome, ProofMark, check_entry, evaluate, read_entry};
pub use line::{Comparison, ProofLine, ProofRow, Who, row_of};
pub use plan::{Planned, ProofPlan, plan};
