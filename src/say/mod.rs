//! What a person reads of a plan: the plan itself, the record of the work. Facts come in, plain workshop English goes out.

mod amounts;
mod bench;
mod blank;
mod judge;
mod plan;
mod plan_facts;
mod record;
mod text;

pub use bench::bench;
pub use blank::blank;
pub use plan::plan;
pub use record::{markdown, record};
