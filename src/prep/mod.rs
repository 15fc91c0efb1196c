//! The whole frame: sheet in, ordered plan with stops, checks and cautions out.

mod brake;
mod came_off;
mod caution;
mod draft;
mod facing;
mod fork;
mod head;
mod head_bore;
mod identity;
mod picture;
mod plan;
mod press;
#[cfg(feature = "serde")]
mod read;
#[cfg(feature = "serde")]
mod read_places;
mod record;
mod seat_post;
mod seat_size;
mod seat_tube;
mod sheet;
mod sheet_passes;
mod shell;
mod shell_press;
mod shell_width;
mod text;
mod thread_work;
mod threads;
#[cfg(feature = "serde")]
mod values;
#[cfg(feature = "serde")]
mod written;

pub use caution::Caution;
pub use picture::{Picture, pictures};
pub use plan::{
    Amount, Consequence, Edge, Interface, InterfaceReport, Operation, Plan, Question, Step, Stop,
    Tool, WeakFigure,
};
#[cfg(feature = "serde")]
pub use read::SHEET_FORMAT;
pub use record::{Progress, Record, RecordEntry, record};
pub use sheet::*;
#[cfg(feature = "serde")]
pub use written::*;

use crate::standard::Tables;
use draft::Draft;

/// Plans the preparation of a frame.
///
/// Never fails: what the sheet does not say becomes an open question, and a step that needs the answer waits for it.
///
/// ```
/// use framegauge::prep::{FrameSheet, SeatTubeSheet, prepare};
/// let sheet = FrameSheet { seat_tube: Some(SeatTubeSheet::default()), ..FrameSheet::default() };
/// let plan = prepare(&sheet);
/// assert!(plan.steps.is_empty());
/// assert!(plan.questions[0].ask.contains("bore"));
/// ```
#[must_use]
pub fn prepare(sheet: &FrameSheet) -> Plan {
    prepare_with(sheet, Tables::ours())
}

/// As [`prepare`], with a shop's own rows beside ours.
///
/// ```
/// use framegauge::{prep::{FrameSheet, prepare_with}, standard::{ShopRows, Tables}};
/// let shop = ShopRows::default();
/// let plan = prepare_with(&FrameSheet::default(), Tables::with(&shop).unwrap());
/// assert!(plan.steps.is_empty());
/// ```
#[must_use]
pub fn prepare_with<'a>(sheet: &'a FrameSheet, tables: Tables<'a>) -> Plan {
    let mut draft = Draft::new(sheet, tables);
    if let Some(tube) = &sheet.seat_tube {
        seat_tube::plan(&mut draft, tube);
    }
    if let Some(shell) = &sheet.shell {
        shell::plan(&mut draft, shell);
    }
    if let Some(end) = &sheet.head_upper {
        head::plan(&mut draft, Interface::HeadUpper, end);
    }
    if let Some(end) = &sheet.head_lower {
        head::plan(&mut draft, Interface::HeadLower, end);
    }
    if let Some(steerer) = &sheet.steerer {
        fork::steerer(&mut draft, steerer);
    }
    if let Some(crown) = &sheet.crown {
        fork::crown(&mut draft, crown);
    }
    for (index, thread) in sheet.threads.iter().enumerate() {
        threads::plan(&mut draft, index, thread);
    }
    for (index, brake) in sheet.brakes.iter().enumerate() {
        brake::plan(&mut draft, index, brake);
    }
    draft.finish()
}
