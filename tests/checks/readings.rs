//! Meter readings against outside references: physical units with resistors of their own, and ngspice.

#[path = "readings/outside_solver.rs"]
mod outside_solver;
#[path = "readings/rules.rs"]
mod rules;
#[path = "readings/truth.rs"]
mod truth;
#[path = "readings/verdicts.rs"]
mod verdicts;
