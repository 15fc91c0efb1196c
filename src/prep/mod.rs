//! The whole frame: sheet in, ordered plan with stops, checks and cautions out.

#[cfg(feature = "serde")]
mod read;
mod sheet;
#[cfg(feature = "serde")]
mod written;

#[cfg(feature = "serde")]
pub use read::SHEET_FORMAT;
pub use sheet::*;
#[cfg(feature = "serde")]
pub use written::*;
