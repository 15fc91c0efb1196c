//! Guides: how to do a whole job with the crate. Each is a page of documentation with examples that run; there is no code
//! in them to call.
//!
//! | if you want to … | read |
//! |---|---|
//! | add a standard to the tables, or bring your own rows | [`add_a_standard`] |
//! | build the crate into a program of your own | [`embed`] |
//! | ask from a script, in any language | [`script`] |
//! | know what a verdict says, and what it does not | [`read_a_verdict`] |

pub mod add_a_standard;
pub mod embed;
pub mod read_a_verdict;
pub mod script;
