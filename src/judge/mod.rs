//! Judging one interface: what was found, held against limits with their owner, in words a person can act on.

mod finding;

pub use finding::{Finding, sizes_against};
pub(crate) use finding::{extremes, fit_words, spread};
