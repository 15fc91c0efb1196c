//! Readings, instruments and limits. The one place where a value is compared with a limit.

mod decision;
mod instrument;
mod limits;
mod normal;
mod reading;
mod tables;

pub use decision::{
    Decision, DecisionRule, GuardFactor, Outcome, Why, acceptance_zone, conformance_probability,
    decide,
};
pub use instrument::{ErrorLimit, Instrument, Measures, instrument, instruments};
pub use limits::{Bound, Limits, settled_cmp};
pub use reading::Reading;

pub(crate) use normal::phi;
