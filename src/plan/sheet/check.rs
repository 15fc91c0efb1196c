//! Statements of a sheet that cannot both be true, and readings that lack what they belong to.

use alloc::format;
use alloc::vec::Vec;

use super::frame::FrameSheet;
use super::places::{Face, HeadEndSheet, Part, ShellSheet};
use crate::ErrorKind::{Contradiction, Missing};
use crate::measure::{Placed, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, mm};
use crate::read::Context;
use crate::standard::{Place, ShellWindow};

pub(super) fn check(sheet: &FrameSheet, context: &mut Context<'_>) {
    if let Some(tube) = &sheet.seat_tube {
        context.under("seat_tube", |c| {
            inside_below_outside(&tube.bore, &tube.outside, c);
            let passes = tube.passes.iter().any(|p| !p.bore.is_empty());
            before_after("bore", &tube.bore, !tube.after.is_empty() || passes, c);
            part("post", tube.post.as_ref(), c);
        });
    }
    if let Some(shell) = &sheet.shell {
        context.under("shell", |c| self::shell(shell, c));
    }
    let ends = [
        ("upper", &sheet.head_tube.upper),
        ("lower", &sheet.head_tube.lower),
    ];
    for (name, end) in ends {
        if let Some(end) = end {
            context.under("head_tube", |c| c.under(name, |c| head(end, c)));
        }
    }
    if let Some(crown) = &sheet.crown {
        let after = !crown.after.is_empty();
        context.under("crown", |c| before_after("seat", &crown.seat, after, c));
    }
    for (index, thread) in sheet.thread.iter().enumerate() {
        if thread.place.is_none() {
            let missing = crate::read::missing("");
            context.under("thread", |c| {
                c.item(index, |c| c.under("place", |c| c.refuse(&missing)))
            });
        }
    }
    for brake in &sheet.brake {
        let mount = &brake.sheet;
        context.under(&brake.path, |c| {
            if mount.system.is_none() {
                c.under("system", |c| c.refuse(&crate::read::missing("")));
            }
            let passes = mount.passes.iter().any(|p| !p.points.is_empty());
            before_after(
                "points",
                &mount.points,
                !mount.after.is_empty() || passes,
                c,
            );
        });
    }
    context.under("boss", |c| bosses(sheet, c));
}

/// Two names of bosses that become one code.
fn bosses(sheet: &FrameSheet, context: &mut Context<'_>) {
    let mut codes = Vec::new();
    for (name, _) in &sheet.boss {
        match Place::boss(name) {
            Ok(place) => codes.push((place, name)),
            Err(error) => context.under(name, |c| c.refuse(&error)),
        }
    }
    codes.sort();
    for pair in codes.windows(2) {
        if let [(one, name), (other, _)] = pair
            && one == other
        {
            context.under(name, |c| c.refuse(&crate::read::twice("")));
        }
    }
}

fn shell(shell: &ShellSheet, context: &mut Context<'_>) {
    let passes = shell.passes.iter().any(|p| !p.bore.is_empty());
    before_after(
        "bore",
        &shell.bore,
        !shell.after.is_empty() || passes,
        context,
    );
    let widths = shell.passes.iter().any(|p| !p.width.is_empty());
    before_after("width", &shell.width, widths, context);
    inside_below_outside(&shell.bore, &shell.outside, context);
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
            let value = format!("{} + {}", in_mm(drive.value()), in_mm(other.value()));
            let width = in_mm(width.value());
            context.not_accepted(
                ("half_drive", Contradiction, &value),
                format!("the half widths do not add up to the width of {width}"),
                "measure them again from the middle plane",
            );
        }
    }
    for (name, side) in [("drive", &shell.drive), ("non_drive", &shell.non_drive)] {
        context.under(name, |c| face(side.face.as_ref(), c));
    }
}

fn head(end: &HeadEndSheet, context: &mut Context<'_>) {
    inside_below_outside(&end.bore, &end.outside, context);
    let passes = end.passes.iter().any(|p| !p.bore.is_empty());
    before_after("bore", &end.bore, !end.after.is_empty() || passes, context);
    face(end.face.as_ref(), context);
    part("part", end.part.as_ref(), context);
}

fn face(face: Option<&Face>, context: &mut Context<'_>) {
    let Some(face) = face else { return };
    context.under("face", |c| {
        if let (Some(inner), Some(outer)) = (face.inner_radius, face.outer_radius)
            && settled_cmp(inner, outer).is_ge()
        {
            c.not_accepted(
                ("inner_radius", Contradiction, &in_mm(inner)),
                "the inner radius of a face is not below its outer radius",
                "check which is which, and that both are radii",
            );
        }
        let passes = face.passes.iter().any(|p| !p.probes.is_empty());
        before_after("probes", &face.probes, !face.after.is_empty() || passes, c);
    });
}

fn before_after<T>(field: &'static str, first: &[T], worked: bool, context: &mut Context<'_>) {
    if first.is_empty() && worked {
        context.not_accepted(
            (field, Missing, &""),
            "readings after the work without readings before it",
            format!("give the readings before the work as `{field}`"),
        );
    }
}

fn inside_below_outside(inside: &[Placed], outside: &[Reading], context: &mut Context<'_>) {
    let order = |a: &Length, b: &Length| settled_cmp(*a, *b);
    let widest = inside.iter().map(|p| p.reading.value()).max_by(order);
    let narrowest = outside.iter().map(Reading::value).min_by(order);
    if let (Some(widest), Some(narrowest)) = (widest, narrowest)
        && settled_cmp(widest, narrowest).is_ge()
    {
        context.not_accepted(
            ("bore", Contradiction, &in_mm(widest)),
            format!(
                "the bore is not smaller than the outside of {}",
                in_mm(narrowest)
            ),
            "check which reading is which",
        );
    }
}

fn part(field: &'static str, part: Option<&Part>, context: &mut Context<'_>) {
    if let Some(part) = part
        && let (Some(bore), Some(outside)) = (part.bore.first(), part.outside.first())
        && settled_cmp(bore.value(), outside.value()).is_ge()
    {
        context.under(field, |c| {
            c.not_accepted(
                ("bore", Contradiction, &in_mm(bore.value())),
                "the bore of a part is not smaller than its outside",
                "check which reading is which",
            );
        });
    }
}
