//! What a person reads of a plan: the plan itself, the record of the work. Facts come in, plain workshop English goes out.

mod identify;
mod judge;
mod plan;
mod plan_facts;
mod record;
mod standard;
mod text;

pub use plan::plan;
pub use record::{markdown, record};
