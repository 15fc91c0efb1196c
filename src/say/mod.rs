//! What a person reads of a plan: the plan itself, the record of the work. Facts come in, plain workshop English goes out.

mod amounts;
mod bench;
mod blank;
mod drawing;
mod face;
mod fit;
mod ground;
mod html;
mod identify;
mod judge;
mod letter;
mod measure;
#[cfg(feature = "serde")]
mod out;
mod photo;
mod plan;
mod plan_facts;
#[cfg(feature = "serde")]
pub(crate) mod reckoned;
mod rescue;
mod standard;
mod text;
mod thread;
mod work;

pub use bench::bench;
pub use blank::blank;
pub use drawing::{Picture, Sight, When, pictures};
pub use html::page;
pub(crate) use judge::from_to;
pub use letter::{letter, markdown, record};
pub use measure::measure;
pub use photo::{Embedded, ImageKind};
pub use plan::plan;
