//! Inputs that nobody thought of: nothing panics, no figure is senseless, what is refused changes nothing.
//!
//! Each target starts from something valid and changes it, a little or much, by arbitrary bytes; bytes alone
//! would be refused at once. How many inputs get past the first refusal is counted, printed and has to be a
//! share of all, so that no target goes on for show. `COLDCHASSIS_FUZZ_SECONDS` is the time for each (3 s
//! unless it is given; `make fuzz` takes 60). What was found once stands under `found`.

#[path = "fuzz/arrangement.rs"]
mod arrangement;
#[path = "fuzz/bundle.rs"]
mod bundle;
#[path = "fuzz/bytes.rs"]
mod bytes;
#[path = "fuzz/findings.rs"]
mod findings;
#[path = "fuzz/found.rs"]
mod found;
#[path = "fuzz/ids.rs"]
mod ids;
#[path = "fuzz/json.rs"]
mod json;
#[path = "fuzz/photo.rs"]
mod photo;
#[path = "fuzz/readings.rs"]
mod readings;
#[path = "fuzz/record.rs"]
mod record;
#[path = "fuzz/rows.rs"]
mod rows;
#[path = "fuzz/tally.rs"]
mod tally;
#[path = "fuzz/tape.rs"]
mod tape;
#[path = "fuzz/tubes.rs"]
mod tubes;
