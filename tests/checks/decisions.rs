//! What the engine asks next, against the least that any order could take, and against inspectors who err.

#[path = "decisions/hand_worked.rs"]
mod hand_worked;
#[path = "decisions/inspections.rs"]
mod inspections;
#[path = "decisions/least.rs"]
mod least;
#[path = "decisions/optimum.rs"]
mod optimum;
#[path = "decisions/turns.rs"]
mod turns;
