//! Every row of the reference tables, computed by the core and compared to the digits as printed.
//!
//! Each row says whether its figure was seen in print or comes from memory; that mark and the
//! source stand in the message of every comparison, because a difference from a remembered figure
//! means something else than one from a printed figure. Rows are counted, so that an empty or
//! shortened table fails.
//!
//! What this does not do: it does not check the tables themselves against the standards.

#[path = "reference_tables/body.rs"]
mod body;
#[path = "reference_tables/charges.rs"]
mod charges;
#[path = "reference_tables/currents.rs"]
mod currents;
#[path = "reference_tables/rows.rs"]
mod rows;
#[path = "reference_tables/supplies.rs"]
mod supplies;
#[path = "reference_tables/times.rs"]
mod times;
