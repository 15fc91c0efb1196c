//! Generated tables; see `data/`.
use super::Instrument;
pub(super) static INSTRUMENTS: [Instrument; 0] = [];
