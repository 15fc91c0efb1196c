//! The whole frame: sheet in, ordered plan with permits, stops, checks and cautions out.

mod answer;
mod caution;
mod fold;
mod permit;
mod rows;
mod sheet;
mod work;

pub use answer::{
    After, CONTRACT, Change, Counted, Off, Operation, PlaceReport, Plan, Question, State, Step,
    Stop, Tool, WeakFigure,
};
pub use caution::Caution;
pub use sheet::*;
