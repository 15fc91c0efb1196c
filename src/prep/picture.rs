//! Pictures of the faces of a sheet, for the record.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::plan::{Interface, Plan, end_words};
use super::prepare_with;
use super::sheet::{Face, FrameSheet};
use super::{brake, facing};
use crate::face::Allowance;
use crate::quantity::{Length, mm};
use crate::standard::Tables;
use crate::thread::Side;

/// A drawing of a face, seen from outside.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// A name that can be a file name: letters, digits and underscores.
    pub name: String,
    /// The drawing, SVG.
    pub svg: String,
}

/// Draws every face that was surveyed, before and after the work: heights, first contact, and what a cut of the planned
/// depth touches. A face that cannot be surveyed is not drawn; the plan says why.
///
/// ```
/// use framegauge::{prep::{FrameSheet, pictures}, standard::Tables};
/// assert!(pictures(&FrameSheet::default(), Tables::ours()).is_empty());
/// ```
#[must_use]
pub fn pictures(sheet: &FrameSheet, tables: Tables<'_>) -> Vec<Picture> {
    let first = prepare_with(&sheet.before(), tables);
    let next = prepare_with(sheet, tables);
    let mut out = Vec::new();
    let mut draw = |name: &str, interface: Interface, face: &Face| {
        for (when, probes, plan) in [
            ("before", &face.probes, &first),
            ("after", &face.after, &next),
        ] {
            let Ok(survey) = facing::survey(face, probes, "pilot") else {
                continue;
            };
            let depth =
                planned_depth(plan, interface).unwrap_or_else(|| survey.clean_up().at_probes);
            let allowance = Allowance::new(facing::written_limits(&face.limits));
            out.extend(survey.drawing(depth, &allowance).ok().map(|svg| Picture {
                name: format!("{name}_{when}"),
                svg,
            }));
        }
    };
    if let Some(shell) = &sheet.shell {
        for (name, side, here) in [
            ("shell_drive", Side::Drive, &shell.drive),
            ("shell_non_drive", Side::NonDrive, &shell.non_drive),
        ] {
            if let Some(face) = &here.face {
                draw(name, Interface::ShellSide(side), face);
            }
        }
    }
    for (name, interface, end) in [
        ("head_upper", Interface::HeadUpper, &sheet.head_upper),
        ("head_lower", Interface::HeadLower, &sheet.head_lower),
    ] {
        if let Some(face) = end.as_ref().and_then(|e| e.face.as_ref()) {
            draw(name, interface, face);
        }
    }
    for (index, mount) in sheet.brakes.iter().enumerate() {
        let end = match end_words(mount.end) {
            "" => "mount",
            end => end,
        };
        for (when, points, plan) in [
            ("before", &mount.points, &first),
            ("after", &mount.after, &next),
        ] {
            let Ok(survey) = brake::survey(points) else {
                continue;
            };
            let depth =
                planned_depth(plan, Interface::Brake(index)).unwrap_or_else(|| survey.range());
            let allowance = Allowance::new(facing::written_limits(&mount.common.limits));
            out.extend(survey.drawing(depth, &allowance).ok().map(|svg| Picture {
                name: format!("brake_{}_{end}_{when}", index + 1),
                svg,
            }));
        }
    }
    out
}

fn planned_depth(plan: &Plan, interface: Interface) -> Option<Length> {
    let step = plan
        .steps
        .iter()
        .find(|s| s.interface == interface && s.amount.is_some())?;
    step.amount
        .as_ref()
        .map(|a| a.least)
        .filter(|depth| *depth > mm(0.0))
}
