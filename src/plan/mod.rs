//! The whole frame: sheet in, ordered plan with permits, stops, checks and cautions out.
//!
//! Each place has a planner: its part of the sheet, what is common, the tables in; facts, steps, questions and what becomes of
//! the place out. The plan is the fold of these, ordered once and numbered once. A cutting step exists only by a permit, and
//! one file gives it.

mod answer;
mod bore_caps;
mod bore_now;
mod caution;
mod crown;
mod cures;
mod entries;
mod face;
mod face_now;
mod facts;
mod fold;
mod head;
mod head_bore;
mod head_depth;
mod head_face;
mod head_part;
mod identity;
mod mount;
mod mount_bolt;
mod mount_cut;

mod mount_now;
mod mount_square;
mod others;
mod permit;
mod ranking;
mod record;
mod round_place;
mod seat_size;
mod seat_tube;
mod sheet;
mod shell;
mod shell_face;
mod shell_name;
mod shell_press;
mod shell_width;
mod site;
mod steerer;
mod steering;
mod surveys;
mod thread;
mod thread_cut;
mod thread_now;
mod threads;
mod tried;
mod work;

pub use answer::{
    After, CONTRACT, Change, Counted, Off, Operation, PlaceReport, Plan, Question, State, Step,
    Stop, Tool, WeakFigure,
};
pub use caution::Caution;
pub use facts::*;
pub use record::{Record, RecordEntry, record};
pub use sheet::*;
pub(crate) use surveys::{Surveyed, surveys};

use alloc::vec::Vec;

use crate::standard::Tables;
use site::Site;
use work::PlaceWork;

/// Plans the preparation of a frame.
///
/// Never fails: what the sheet does not say becomes an open question, and a cut that needs the answer is not planned before.
///
/// ```
/// use framegauge::{plan::{FrameSheet, SeatTubeSheet, prepare}, standard::Place};
/// let sheet = FrameSheet { seat_tube: Some(SeatTubeSheet::default()), ..FrameSheet::default() };
/// let plan = prepare(&sheet);
/// assert!(plan.steps.is_empty());
/// assert_eq!(plan.questions[0].answer, "seat_tube.bore");
/// ```
#[must_use]
pub fn prepare(sheet: &FrameSheet) -> Plan {
    prepare_with(sheet, Tables::ours())
}

/// As [`prepare`], with a shop's own rows beside ours.
///
/// ```
/// use framegauge::{plan::{FrameSheet, prepare_with}, standard::{ShopRows, Tables}};
/// let shop = ShopRows::default();
/// let plan = prepare_with(&FrameSheet::default(), Tables::with(&shop).unwrap());
/// assert!(plan.steps.is_empty() && !plan.acceptable());
/// ```
#[must_use]
pub fn prepare_with<'a>(sheet: &'a FrameSheet, tables: Tables<'a>) -> Plan {
    let site = Site {
        sheet,
        tables,
        rule: sheet.rule,
    };
    fold::fold(sheet, works(&site))
}

/// What every planner gives, in the order of the sheet.
fn works(site: &Site<'_>) -> Vec<PlaceWork> {
    let sheet = site.sheet;
    let mut works = Vec::new();
    works.extend(
        sheet
            .seat_tube
            .as_ref()
            .map(|tube| seat_tube::plan(site, tube)),
    );
    works.extend(sheet.shell.iter().flat_map(|s| shell::plan(site, s)));
    works.extend(head::plan(site, &sheet.head_tube));
    works.extend(sheet.crown.iter().map(|c| crown::plan(site, c)));
    works.extend(sheet.steerer.iter().map(|s| steerer::plan(site, s)));
    works.extend(mount::plan(site, &sheet.brake));
    works.extend(threads::plan(site));
    works.extend(others::plan(site));
    let mut photos = sheet.photos();
    for work in &mut works {
        work.photos = photos.remove(&work.place).unwrap_or_default();
    }
    works
}
