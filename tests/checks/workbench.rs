//! Checks of the one door: what a shell may rely on, whatever it sends and in whatever order.
//!
//! The clock is fixed or steps by a known amount and the ids are counted, so every run can be
//! repeated byte by byte. What a verdict says is checked elsewhere; here it only has to be the one
//! that the same findings give as a file.

#[path = "workbench/asking.rs"]
mod asking;
#[path = "workbench/bench.rs"]
mod bench;
#[path = "workbench/circuit.rs"]
mod circuit;
#[path = "workbench/files.rs"]
mod files;
#[path = "workbench/heaters.rs"]
mod heaters;
#[path = "workbench/inspecting.rs"]
mod inspecting;
#[path = "workbench/keeping.rs"]
mod keeping;
#[path = "workbench/no_room.rs"]
mod no_room;
#[path = "workbench/pace.rs"]
mod pace;
#[path = "workbench/permission.rs"]
mod permission;
#[path = "workbench/records.rs"]
mod records;
#[path = "workbench/refusals.rs"]
mod refusals;
#[path = "workbench/repairs.rs"]
mod repairs;
#[path = "workbench/sequences.rs"]
mod sequences;
#[path = "workbench/touch_test.rs"]
mod touch_test;
#[path = "workbench/undoing.rs"]
mod undoing;
#[path = "workbench/unplugged_tests.rs"]
mod unplugged_tests;
#[path = "workbench/wording.rs"]
mod wording;
