//! Worn, over-cut, stripped, crossed, oval: what is left to do, in the trade's order of caution.
//!
//! Each step says how it stands by its geometry ([`Stand`]), what it costs later, what to mind, and what its figures rest on.
//! A symptom is not a diagnosis: [`diagnose`] orders the checks before anything is cut.

mod bore;
mod facts;
mod option;
mod symptom;
mod thread;
mod thread_retap;

pub use bore::BoreRescue;
pub use facts::{Ask, Cause, RescueAsk, RescueFact};
pub use option::{Damage, Rescue, RescueOption, Spoilt, Stand, Step};
pub use symptom::{Diagnosis, Symptom, diagnose};
pub use thread::ThreadRescue;
