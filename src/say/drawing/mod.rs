//! Drawings of surveyed faces: plain SVG text, black on white, legible in print without colour.
//!
//! The plan gives what the heading says, the depth that is drawn and the limits; the survey gives the numbers.

mod mount;
mod page;
mod ring;
mod room;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::amounts::{at_least, at_most, two};
use super::text::capital;
use crate::Error;
use crate::face::{Caps, LimitName};
use crate::measure::settled_below;
use crate::plan::{FrameSheet, Off, Plan, Surveyed, prepare_with, surveys};
use crate::quantity::{Length, mm, settled_mm};
use crate::standard::{HeadTubeEnd, Place, Tables};
use crate::thread::Side;

/// When a face looked as it is drawn.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub enum When {
    /// Nobody said.
    #[default]
    NotSaid,
    /// Before the work.
    Before,
    /// After the work.
    After,
}

/// What a drawing is of: what its heading says.
///
/// ```
/// use framegauge::say::{Sight, When};
/// let sight = Sight { frame: "no. 4", when: When::Before, ..Sight::default() };
/// assert_eq!(sight.step, None);
/// ```
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Sight<'a> {
    /// The frame, in the shop's words; empty where nobody said.
    pub frame: &'a str,
    /// Where; `None` for a survey by itself.
    pub place: Option<&'a Place>,
    /// What the place is called; empty for its usual name.
    pub name: &'a str,
    /// When it looked so.
    pub when: When,
    /// The step of the plan that cuts it, and how much that takes off.
    pub step: Option<(usize, Off)>,
}

impl Sight<'_> {
    /// What is drawn.
    fn title(&self, usual: &str) -> String {
        match self.place {
            _ if !self.name.is_empty() => capital(self.name),
            Some(place) => capital(&place.words()),
            None => usual.into(),
        }
    }

    /// The lines below the title.
    fn lines(&self) -> Vec<String> {
        let mut lines = alloc::vec![seen_from(self.place).to_string()];
        if !self.frame.is_empty() {
            lines.push(format!("Frame: {}", self.frame));
        }
        let when = match self.when {
            When::NotSaid => None,
            When::Before => Some("Before the work"),
            When::After => Some("After the work"),
        };
        let step = self.step.map(|(number, off)| {
            let amount = super::amounts::amount(crate::standard::Operation::Face, &off);
            format!("step {number}: take off {amount}")
        });
        match (when, step) {
            (Some(when), Some(step)) => lines.push(format!("{when}; {step}")),
            (Some(when), None) => lines.push(format!("{when}; no cut is planned here")),
            (None, Some(step)) => lines.push(capital(&step)),
            (None, None) => {}
        }
        lines
    }
}

/// From where a face is seen, and what is up in the drawing.
const fn seen_from(place: Option<&Place>) -> &'static str {
    match place {
        Some(Place::ShellFace(Side::Drive)) => {
            "Drive side: seen from outside, looking at the right side of the bicycle (chain side). 12 o'clock is up."
        }
        Some(Place::ShellFace(Side::NonDrive)) => {
            "Non-drive side: seen from outside, looking at the left side of the bicycle (no chain). 12 o'clock is up."
        }
        Some(Place::HeadFace(HeadTubeEnd::Upper)) => {
            "Upper end: seen from above, looking down into the head tube. Clockwise as the sheet counts it."
        }
        Some(Place::HeadFace(HeadTubeEnd::Lower)) => {
            "Lower end: seen from below, looking up into the head tube. Clockwise as the sheet counts it."
        }
        Some(Place::Brake(_)) => {
            "Seen from outside, looking at the faces that the caliper is bolted to. The wheel is towards the top of the drawing."
        }
        _ => "Seen from outside, looking at the face.",
    }
}

/// A length with as many decimals as the indicator can show: two where it cannot tell more.
fn figure(length: Length, u: Length) -> String {
    if settled_below(u, mm(0.0025)) {
        format!("{:.3}", settled_mm(length) + 0.0)
    } else {
        two(length)
    }
}

/// A depth of cut, as the step of a plan says it: never less than is needed.
fn deep(depth: Length, u: Length) -> String {
    if settled_below(u, mm(0.0025)) {
        figure(depth, u)
    } else {
        format!("{:.2}", at_least(depth) + 0.0)
    }
}

/// A height at its mark, outwards plus.
fn height(z: f64, u: Length) -> String {
    let plain = figure(mm(z), u);
    if plain.starts_with('-') || plain.chars().all(|c| matches!(c, '0' | '.')) {
        plain
    } else {
        format!("+{plain}")
    }
}

/// What the heights of a drawing are.
fn scale(datum: &str) -> String {
    let of = if datum.trim_start().starts_with("the ") {
        ""
    } else {
        "the "
    };
    format!("Heights in mm, measured along {of}{datum}, outwards is plus")
}

/// One line a limit, the nearest marked.
fn limits<N: LimitName, M: LimitName>(allowance: &Caps<N, M>) -> Vec<String> {
    let nearest = allowance.nearest();
    let line = |limit| {
        let cap: &crate::face::Cap<N, M> = limit;
        let left = match (cap.surely(), cap.measure()) {
            (Some(left), _) if settled_below(mm(0.0), left) => {
                format!("never more than {:.2} mm may come off", at_most(left))
            }
            (Some(_), _) => "nothing more may come off".into(),
            (None, Some(measure)) => format!("not known yet, {measure}"),
            (None, None) => "not known yet".into(),
        };
        let mark = if nearest == Some(cap) {
            " (the nearest limit)"
        } else {
            ""
        };
        format!("Limit: {}: {left}{mark}", cap.what())
    };
    let lines: Vec<String> = allowance.limits().iter().map(line).collect();
    if lines.is_empty() {
        return alloc::vec!["Limits: none stated".into()];
    }
    lines
}

/// The most labels that are told below a figure where there is no room in it.
const MOST_BELOW: usize = 30;

/// What found no room in the figure.
fn without_room(left: &[String]) -> Option<String> {
    let told = left.get(..MOST_BELOW).unwrap_or(left).join("; ");
    let more = left.len().saturating_sub(MOST_BELOW);
    match (left.is_empty(), more) {
        (true, _) => None,
        (false, 0) => Some(format!("No room beside the mark: {told}")),
        (false, more) => Some(format!(
            "No room beside the mark: {told}; and {more} more, see the sheet"
        )),
    }
}

/// A drawing of a face, seen from outside.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// The place.
    pub place: Place,
    /// A name that can be a file name: letters, digits and underscores.
    pub name: String,
    /// The drawing, SVG.
    pub svg: String,
}

/// Draws every face that was surveyed, as it is now and, where work was done, as it was before: heights, first contact, what a
/// cut of the planned depth touches, and the limits that the plan stops at. A face that cannot be surveyed is not drawn; the
/// plan says why.
///
/// ```
/// use framegauge::{plan::FrameSheet, say, standard::Tables};
/// assert!(say::pictures(&FrameSheet::default(), Tables::ours()).is_empty());
/// ```
#[must_use]
pub fn pictures(sheet: &FrameSheet, tables: Tables<'_>) -> Vec<Picture> {
    let now = prepare_with(sheet, tables);
    let mut out = Vec::new();
    if now.places.iter().any(|p| p.worked) {
        let first = sheet.before();
        let plan = prepare_with(&first, tables);
        draw(&mut out, &first, &plan, When::Before);
        draw(&mut out, sheet, &now, When::After);
    } else {
        draw(&mut out, sheet, &now, When::Before);
    }
    out
}

/// Draws the faces of a sheet as its plan sees them.
fn draw(out: &mut Vec<Picture>, sheet: &FrameSheet, plan: &Plan, when: When) {
    let word = if when == When::After {
        "after"
    } else {
        "before"
    };
    for (place, survey) in surveys(sheet) {
        let Some(report) = plan.place(&place) else {
            continue;
        };
        let cut = plan
            .steps_at(&place)
            .find_map(|s| s.off.map(|off| (s.number, off)));
        let sight = Sight {
            frame: &plan.frame,
            place: Some(&place),
            name: &report.name,
            when,
            step: cut,
        };
        let planned = cut.map(|(_, off)| off.least);
        let svg: Result<String, Error> = match &survey {
            Surveyed::Ring(ring) => {
                let depth = planned.unwrap_or_else(|| ring.clean_up().at_probes);
                ring.drawing(&sight, depth, &report.limits)
            }
            Surveyed::Mount(mount) => {
                let depth = planned.unwrap_or_else(|| mount.range());
                mount.drawing(&sight, depth, &report.limits)
            }
        };
        if let Ok(svg) = svg {
            let name = format!("{place}").replace('.', "_");
            out.push(Picture {
                name: format!("{name}_{word}"),
                svg,
                place,
            });
        }
    }
}
