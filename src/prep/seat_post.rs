//! The post in its tube: fit, shim, insertion.

use alloc::format;
use alloc::string::String;

use super::caution::Caution;
use super::draft::Draft;
use super::plan::{Interface, InterfaceReport};
use super::press;
use super::sheet::{JointMaterial, SeatTubeSheet};
use crate::evidence::{Figure, Grade};
use crate::fit::{Fit, fit_between};
use crate::judge::{Finding, fit_words, sizes_against, windows_of};
use crate::measure::{Limits, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, mm, settled_mm};
use crate::standard::Joint;
use crate::standard::{InsertionRule, Seatpost};

const HERE: Interface = Interface::SeatTube;

pub(super) fn post_and_shim(
    draft: &mut Draft<'_>,
    tube: &SeatTubeSheet,
    size: Option<Length>,
    report: &mut InterfaceReport,
) {
    let readings = if tube.after.is_empty() {
        &tube.bore
    } else {
        &tube.after
    };
    let Some(post) = &tube.post else { return };
    if post.material == JointMaterial::Carbon {
        draft.caution(Caution::CarbonPost);
    }
    let (Some(mut hole), Some(shaft)) = (press::hole(readings), press::shaft(post)) else {
        draft.ask(
            HERE,
            "outside diameter of the post where it will sit",
            "the fit cannot be judged without it",
            "outside micrometer",
        );
        return;
    };
    if let Some(size) = size {
        hole = hole.clone().with_nominal(size).unwrap_or(hole);
    }
    let Ok(fit) = fit_between(&hole, &shaft, draft.rule) else {
        return;
    };
    report.findings.push(Finding::stated(
        "post in tube as found",
        format!("{} on diameter", fit_words(&fit)),
    ));
    let Some(near) = size.or_else(|| readings.first().map(|p| p.reading.value())) else {
        return;
    };
    let windows = windows_of(draft.tables, Joint::Seatpost, near);
    report
        .findings
        .extend(windows.filter_map(|window| press::held(&fit, "post in tube", window)));
    blame(draft, tube, &fit, report);
    let gap = fit.tightest().value();
    if settled_below(mm(0.1), gap) {
        cure(draft, &fit, gap, report);
    }
    if settled_below(mm(0.0), gap)
        && let Some(shim) = tube.shim
    {
        let needed = gap / 2.0;
        let words = if settled_cmp(shim * 2.0, gap).is_gt() {
            format!(
                "a wall of {} adds {} on diameter and will not enter: the gap of {} takes a wall of {} (half the difference)",
                in_mm(shim),
                in_mm(shim * 2.0),
                in_mm(gap),
                in_mm(needed)
            )
        } else {
            format!(
                "a wall of {} takes {} of the gap of {}; a snug one has {}",
                in_mm(shim),
                in_mm(shim * 2.0),
                in_mm(gap),
                in_mm(needed)
            )
        };
        report.findings.push(Finding::stated("shim", words));
    }
}

/// Which member is off the size that the frame was sold for.
fn blame(draft: &Draft<'_>, tube: &SeatTubeSheet, fit: &Fit, report: &mut InterfaceReport) {
    let sold_as = tube
        .common
        .believed
        .as_deref()
        .and_then(|name| draft.tables.find::<Seatpost>(name).ok());
    let Some((row, size)) = sold_as.and_then(|row| Some((row, row.diameter.nominal()?))) else {
        return;
    };
    let (bore, post) = (fit.hole().smallest, fit.shaft().largest);
    let step = mm(0.1);
    let (bore_off, post_off) = (bore.value() - size, post.value() - size);
    let off = |by: Length| settled_below(step, by.abs());
    let which = match (off(bore_off), off(post_off)) {
        (true, true) => "both are off",
        (true, false) => "the tube is off",
        (false, true) => "the post is off",
        (false, false) => return,
    };
    report.findings.push(
        Finding::stated(
            "which one is off",
            format!(
                "against {} mm the bore is {:+.3} mm and the post {:+.3} mm: {which}",
                row.code,
                settled_mm(bore_off),
                settled_mm(post_off)
            ),
        )
        .resting_on(row.diameter.evidence()),
    );
}

/// The next size that would fit, or the shim.
fn cure(draft: &Draft<'_>, fit: &Fit, gap: Length, report: &mut InterfaceReport) {
    let bore = fit.hole().smallest.value();
    let larger = draft
        .tables
        .all::<Seatpost>()
        .filter_map(|row| Some((row, row.diameter.nominal()?)))
        .filter(|(_, d)| {
            settled_cmp(*d, bore).is_le()
                && settled_cmp(*d, fit.shaft().largest.value() + mm(0.05)).is_gt()
        })
        .max_by(|a, b| a.1.value.total_cmp(&b.1.value));
    let shim = format!(
        "a shim of wall {} (half of {}), as long as the insertion, its slot on the slot of the tube",
        in_mm(gap / 2.0),
        in_mm(gap)
    );
    let finding = match larger {
        Some((row, d)) => Finding::stated(
            "cure",
            format!(
                "a post of {} mm would leave {}; or {shim}",
                row.code,
                in_mm(bore - d)
            ),
        )
        .resting_on(row.diameter.evidence()),
        None => Finding::stated("cure", shim),
    };
    report.findings.push(finding);
}

/// The deepest of the insertion rules that were read rules.
pub(super) fn insertion(
    draft: &mut Draft<'_>,
    tube: &SeatTubeSheet,
    size: Option<Length>,
    report: &mut InterfaceReport,
) {
    let diameter = size.or_else(|| {
        tube.post
            .as_ref()
            .and_then(|p| p.outside.first().map(Reading::value))
    });
    let mut ruling: Option<(Length, String, Grade)> = None;
    let mut offer = |depth: Length, what: String, grade: Grade| {
        if ruling.as_ref().is_none_or(|(best, _, _)| depth > *best) {
            ruling = Some((depth, what, grade));
        }
    };
    for rule in draft.tables.all::<InsertionRule>() {
        let grade = rule
            .depth
            .as_ref()
            .and_then(Figure::grade)
            .or_else(|| rule.times_diameter.as_ref().and_then(Figure::grade));
        let Some(grade) = grade.filter(|g| *g > Grade::Memory) else {
            continue;
        };
        if let (Some(times), Some(d)) = (
            rule.times_diameter.as_ref().and_then(Figure::lower),
            diameter,
        ) && rule.counts != crate::standard::DepthCounts::NoDepth
        {
            offer(
                d * times.0,
                format!("{} ({} diameters)", rule.what, times.0),
                grade,
            );
        }
        if rule.counts == crate::standard::DepthCounts::WithWeld
            && let (Some(total), Some(weld)) =
                (rule.depth.as_ref().and_then(Figure::lower), tube.weld_depth)
        {
            let below = draft
                .tables
                .find::<InsertionRule>("below_top_tube_weld")
                .ok()
                .and_then(|r| r.depth.as_ref().and_then(Figure::lower));
            offer(
                total,
                format!(
                    "{} in all, where it also reaches below the weld",
                    in_mm(total)
                ),
                grade,
            );
            if let Some(below) = below {
                offer(
                    weld + below,
                    format!("weld at {} and {} below it", in_mm(weld), in_mm(below)),
                    grade,
                );
            }
        }
    }
    for limit in tube.common.limits.iter().filter(|l| l.what == "insertion") {
        if let Some(depth) = limit.limits.lower().known() {
            offer(depth, limit.owner.clone(), Grade::Shop);
        }
    }
    if let Some((depth, what, grade)) = ruling {
        let words = format!(
            "at least {} of the rules that were read, the deepest asks: {what}. The marks on post and frame come first where they ask more",
            in_mm(depth)
        );
        report.findings.push(Finding {
            grade: Some(grade),
            owner: what,
            ..Finding::stated("insertion of the post", words)
        });
        if let Some(part) = &tube.post
            && let Some(insertion) = part.insertion
            && let (Ok(reading), Ok(limits)) =
                (Reading::exact(insertion), Limits::at_least(depth, grade))
        {
            report.findings.push(sizes_against(
                "insertion planned",
                &[reading],
                &limits,
                "the deepest of the rules that were read",
                None,
                draft.rule,
            ));
        }
    }
    if let Some(insertion) = tube.post.as_ref().and_then(|p| p.insertion)
        && let Some(clear) = tube.clear_depth
        && let (Ok(reading), Ok(limits)) = (
            Reading::exact(insertion),
            Limits::at_most(clear, Grade::Shop),
        )
    {
        report.findings.push(sizes_against(
            "room for the post",
            &[reading],
            &limits,
            "how deep the tube is clear, by the sheet",
            None,
            draft.rule,
        ));
    }
}
