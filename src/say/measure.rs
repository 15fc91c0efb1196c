//! The measuring list: what to read, ask or try with each instrument, before the work and after it.

use alloc::format;
use alloc::string::{String, ToString};

use super::bench::Bench;
use super::text::Paper;
use crate::plan::Plan;

/// What is to be measured for a plan, by instrument: each is picked up once before the work.
///
/// ```
/// use framegauge::{plan::{FrameSheet, SeatTubeSheet, prepare}, say};
/// let sheet = FrameSheet { seat_tube: Some(SeatTubeSheet::default()), ..FrameSheet::default() };
/// assert!(say::measure(&prepare(&sheet)).contains("[ ] seat tube: bore"));
/// ```
#[must_use]
pub fn measure(plan: &Plan) -> String {
    let bench = Bench::of(plan);
    let mut page = Paper::default();
    page.para("", &format!("{}: what to measure", bench.title));
    if bench.questions.is_empty() {
        page.line("");
        page.line("before the work: nothing more");
    }
    for (tool, blanks) in &bench.questions {
        page.line("");
        page.para("", tool);
        for blank in blanks {
            page.para(
                "  [ ] ",
                &format!("{} ________ ({})", blank.words, blank.field),
            );
        }
    }
    let mut title = Some("after the work");
    for step in &plan.steps {
        for check in &step.checks {
            page.title(&mut title);
            let head = format!("  [ ] {:>2} ", step.number);
            page.para(&head, &check.to_string());
        }
    }
    page.done()
}
