//! What a computer plays through in place of a bench: units with parts of their own, and what an honest
//! inspector finds on them.

pub mod unit;
