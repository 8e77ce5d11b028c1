#![cfg_attr(
    test,
    allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)
)]
//! The core of Cold Chassis: what can be ruled out about the line side of an old line-powered unit
//! before it is plugged in, what a person who touches it would receive, and the record of it.
//!
//! Modules may import only those above them in this list; `DEVELOPERS.md` draws the map.

pub mod arrangement;
pub mod body;
pub mod circuit;
pub mod exchange;
pub mod fields;
pub mod figure;
pub mod hazard;
pub mod heaters;
pub mod inspection;
pub mod photo;
pub mod remedy;
pub mod report;
pub mod simulation;
pub mod store;
pub mod supply;
pub mod words;
pub mod workbench;
