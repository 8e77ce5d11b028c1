//! The command line of Cold Chassis.
fn main() {}
