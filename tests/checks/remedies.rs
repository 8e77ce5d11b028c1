//! What repairs change, against what the design says they must show, and the search against trying everything.

#[path = "remedies/brute_force.rs"]
mod brute_force;
#[path = "remedies/feeds.rs"]
mod feeds;
#[path = "remedies/must_show.rs"]
mod must_show;
#[path = "remedies/proof.rs"]
mod proof;
#[path = "remedies/sizing.rs"]
mod sizing;
