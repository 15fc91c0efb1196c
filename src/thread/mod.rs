//! Screw threads: the profile travels with the size.

mod form;
mod hand;
mod size;

pub use form::ThreadForm;
pub use hand::{Hand, Side, Turn};
pub use size::ThreadSize;
