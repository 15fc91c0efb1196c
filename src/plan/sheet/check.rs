//! Statements of a sheet that cannot both be true, and readings that lack what they belong to.

use alloc::format;

use super::frame::FrameSheet;
use super::places::{Face, HeadEndSheet, Part, ShellSheet};
use crate::measure::{Placed, Reading, settled_below, settled_cmp};
use crate::quantity::{in_mm, mm};
use crate::read::Context;
use crate::standard::ShellWindow;
use crate::{Error, ErrorKind};

pub(super) fn check(sheet: &FrameSheet, context: &mut Context<'_>) {
    if let Some(tube) = &sheet.seat_tube {
        context.under("seat_tube", |c| {
            inside_below_outside("bore", &tube.bore, &tube.outside, c);
            let passes = tube.after.is_empty() && tube.passes.iter().all(|p| p.bore.is_empty());
            before_after("bore", tube.bore.is_empty(), passes, c);
            part("post", tube.post.as_ref(), c);
        });
    }
    if let Some(shell) = &sheet.shell {
        context.under("shell", |c| self::shell(shell, c));
    }
    for (name, end) in [
        ("upper", &sheet.head_tube.upper),
        ("lower", &sheet.head_tube.lower),
    ] {
        if let Some(end) = end {
            context.under("head_tube", |c| c.under(name, |c| head(end, c)));
        }
    }
    if let Some(crown) = &sheet.crown {
        context.under("crown", |c| {
            before_after("seat", crown.seat.is_empty(), crown.after.is_empty(), c);
        });
    }
    for (index, thread) in sheet.thread.iter().enumerate() {
        if thread.place.is_none() {
            context.under("thread", |c| {
                c.item(index, |c| {
                    c.under("place", |c| c.refuse(&crate::read::missing("")));
                });
            });
        }
    }
    for brake in &sheet.brake {
        let mount = &brake.sheet;
        context.under(&brake.path, |c| {
            if mount.system.is_none() {
                c.under("system", |c| c.refuse(&crate::read::missing("")));
            }
            let passes = mount.after.is_empty() && mount.passes.iter().all(|p| p.points.is_empty());
            before_after("points", mount.points.is_empty(), passes, c);
        });
    }
    bosses(sheet, context);
}

/// Two names of bosses that become one code.
fn bosses(sheet: &FrameSheet, context: &mut Context<'_>) {
    let mut codes: alloc::vec::Vec<_> = sheet
        .boss
        .iter()
        .filter_map(|(name, _)| match crate::standard::Place::boss(name) {
            Ok(place) => Some((place, name)),
            Err(error) => {
                context.under("boss", |c| c.under(name, |c| c.refuse(&error)));
                None
            }
        })
        .collect();
    codes.sort();
    for pair in codes.windows(2) {
        if let [(one, name), (other, _)] = pair
            && one == other
        {
            context.under("boss", |c| {
                c.under(name, |c| c.refuse(&crate::read::twice("")))
            });
        }
    }
}

fn shell(shell: &ShellSheet, context: &mut Context<'_>) {
    let passes = shell.after.is_empty() && shell.passes.iter().all(|p| p.bore.is_empty());
    before_after("bore", shell.bore.is_empty(), passes, context);
    let widths = shell.passes.iter().all(|p| p.width.is_empty());
    before_after("width", shell.width.is_empty(), widths, context);
    inside_below_outside("bore", &shell.bore, &shell.outside, context);
    part("part", shell.part.as_ref(), context);
    if let Some(code) = &shell.window {
        let found = context.tables().find::<ShellWindow>(code);
        context.under("window", |c| c.keep(found).is_some());
    }
    if let (Some(drive), Some(other), Some(width)) =
        (shell.half_drive, shell.half_non_drive, shell.width.first())
    {
        let gap = drive.plus(&other).less(width);
        // Half a millimetre is what a straightedge and a rule leave between them (common practice).
        if settled_below(gap.expanded_uncertainty() + mm(0.5), gap.value().abs()) {
            context.under("half_drive", |c| {
                c.refuse(&Error::new(
                    ErrorKind::Contradiction,
                    "",
                    format!("{} + {}", in_mm(drive.value()), in_mm(other.value())),
                    format!(
                        "the half widths do not add up to the width of {}",
                        in_mm(width.value())
                    ),
                    "measure them again from the middle plane",
                ));
            });
        }
    }
    for (name, side) in [("drive", &shell.drive), ("non_drive", &shell.non_drive)] {
        context.under(name, |c| face(side.face.as_ref(), c));
    }
}

fn head(end: &HeadEndSheet, context: &mut Context<'_>) {
    inside_below_outside("bore", &end.bore, &end.outside, context);
    let passes = end.after.is_empty() && end.passes.iter().all(|p| p.bore.is_empty());
    before_after("bore", end.bore.is_empty(), passes, context);
    face(end.face.as_ref(), context);
    part("part", end.part.as_ref(), context);
}

fn face(face: Option<&Face>, context: &mut Context<'_>) {
    let Some(face) = face else { return };
    context.under("face", |c| {
        if let (Some(inner), Some(outer)) = (face.inner_radius, face.outer_radius)
            && settled_cmp(inner, outer).is_ge()
        {
            c.under("inner_radius", |c| {
                c.refuse(&Error::new(
                    ErrorKind::Contradiction,
                    "",
                    in_mm(inner),
                    "the inner radius of a face is not below its outer radius",
                    "check which is which, and that both are radii",
                ));
            });
        }
        let passes = face.after.is_empty() && face.passes.iter().all(|p| p.probes.is_empty());
        before_after("probes", face.probes.is_empty(), passes, c);
    });
}

fn before_after(
    field: &'static str,
    first_is_missing: bool,
    no_pass: bool,
    context: &mut Context<'_>,
) {
    if first_is_missing && !no_pass {
        context.under(field, |c| {
            c.refuse(&Error::new(
                ErrorKind::Missing,
                "",
                "",
                "readings after the work without readings before it",
                format!("give the readings before the work as `{field}`"),
            ));
        });
    }
}

fn inside_below_outside(
    field: &'static str,
    inside: &[Placed],
    outside: &[Reading],
    context: &mut Context<'_>,
) {
    let widest = inside
        .iter()
        .map(|p| p.reading.value())
        .max_by(|a, b| settled_cmp(*a, *b));
    let narrowest = outside
        .iter()
        .map(Reading::value)
        .min_by(|a, b| settled_cmp(*a, *b));
    if let (Some(widest), Some(narrowest)) = (widest, narrowest)
        && settled_cmp(widest, narrowest).is_ge()
    {
        context.under(field, |c| {
            c.refuse(&Error::new(
                ErrorKind::Contradiction,
                "",
                in_mm(widest),
                format!(
                    "the bore is not smaller than the outside of {}",
                    in_mm(narrowest)
                ),
                "check which reading is which",
            ));
        });
    }
}

fn part(field: &'static str, part: Option<&Part>, context: &mut Context<'_>) {
    if let Some(part) = part
        && let (Some(bore), Some(outside)) = (part.bore.first(), part.outside.first())
        && settled_cmp(bore.value(), outside.value()).is_ge()
    {
        context.under(field, |c| {
            c.under("bore", |c| {
                c.refuse(&Error::new(
                    ErrorKind::Contradiction,
                    "",
                    in_mm(bore.value()),
                    "the bore of a part is not smaller than its outside",
                    "check which reading is which",
                ));
            });
        });
    }
}
