//! Readings, instruments and limits. The one place where a value is compared with a limit.

mod able;
mod budget;
mod corrections;
mod decision;
mod instrument;
mod limits;
mod normal;
mod pooled;
mod reading;
mod spot;
mod student;
mod tables;
mod text;

pub use able::{Able, able, decide_from_few, probability_from_few};
pub use budget::{Budget, Contribution, Coverage, Shape, SumShape};
pub use corrections::{jaw_correction, lever_factor};
pub use decision::{
    Decision, DecisionRule, GuardFactor, Outcome, Why, acceptance_zone, conformance_probability,
    decide,
};
pub use instrument::{ErrorLimit, Instrument, Measures, instrument, instruments};
pub use limits::{Bound, Limits, settled_below, settled_cmp};
pub use pooled::{Pooled, Repeated};
pub use reading::Reading;
pub use spot::{Placed, Spot, Surface};
pub use student::{Freedom, coverage_factor, student};

pub(crate) use normal::phi;
pub(crate) use text::says_how_sure;
