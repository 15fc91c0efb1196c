use crate::standard::GridCount;
pub(crate) static GRIDS: [GridCount; 0] = [];
