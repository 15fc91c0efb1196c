//! What the tables hold and how sure it is.

use super::tables::GRIDS;
use crate::evidence::{Grade, Source};

/// Cells of one grid that share a source and a grade.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct GridCount {
    /// Name of the grid, as the file in `data/grids/`.
    pub grid: &'static str,
    /// Where the cells were read; `None` for memory.
    pub source: Option<&'static Source>,
    /// How sure they are.
    pub grade: Grade,
    /// How many there are.
    pub cells: usize,
}

/// The grids (ISO 965-1, ISO 286, ISO 492, ISO 5753 and the like), counted by source and grade.
///
/// ```
/// let cells: usize = framegauge::standard::grids().iter().map(|g| g.cells).sum();
/// assert!(cells > 1000);
/// ```
#[must_use]
pub fn grids() -> &'static [GridCount] {
    &GRIDS
}
