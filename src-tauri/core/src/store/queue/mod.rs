//! The intake queue: units by state and hazard, filtered and searched, a page at a time.
//!
//! One row for each unit that is shown, and its text in a full-text index under the same number, its
//! place. Places go by hazard, so that whatever is asked for comes out in order and a page costs no more
//! than its rows. What can be filtered by stands in the index as words of their own.

mod facet;
mod place;
mod refresh;
mod search;
mod standing;
mod state;

pub use facet::Meaning;
pub(super) use refresh::{clear, is_missing, refresh};
pub use search::{Cursor, Page, QueueCount, QueueFilter, QueueOrder, QueueRow};
pub use standing::{Stale, Standing};
pub use state::WorkState;
