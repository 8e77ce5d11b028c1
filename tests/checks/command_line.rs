//! The contract of the command line, held against the real program: what it takes, prints, refuses.
//!
//! Every run starts in an empty folder that must still be empty at the end. `COLDCHASSIS_BIN` names
//! another program to check; without it the one of this source is built first.
//!
//! It needs `/dev/stdin`, `/dev/full` and `mkfifo`, so it runs on Linux.
//!
//! What this does not do: it does not judge the figures, only that they come out whole; the worked
//! values and the golden inspections judge them.

#[path = "command_line/accepted.rs"]
mod accepted;
#[path = "command_line/arrangement_files.rs"]
mod arrangement_files;
#[path = "command_line/findings_files.rs"]
mod findings_files;
#[path = "command_line/german.rs"]
mod german;
#[path = "command_line/heaters.rs"]
mod heaters;
#[path = "command_line/odd_bytes.rs"]
mod odd_bytes;
#[path = "command_line/program.rs"]
mod program;
#[path = "command_line/records.rs"]
mod records;
#[path = "command_line/refused.rs"]
mod refused;
#[path = "command_line/remedies.rs"]
mod remedies;
#[path = "command_line/rows.rs"]
mod rows;
#[path = "command_line/spoken_out.rs"]
mod spoken_out;
#[path = "command_line/streams.rs"]
mod streams;
#[path = "command_line/usage.rs"]
mod usage;
