//! What a person reads of a plan: the plan itself, the record of the work. Facts come in, plain workshop English goes out.

mod judge;
mod plan;
mod plan_facts;
mod record;
mod rescue;
mod text;

pub use plan::plan;
pub use record::{markdown, record};
