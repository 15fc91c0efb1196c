//! A pressed or slipped part against its bore, shared by shells and head tubes.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::draft::{Draft, DraftStep, Stage};
use super::plan::{Amount, Interface, InterfaceReport, Operation, Stop, Tool};
use super::sheet::{Part, PlacedReading};
use crate::evidence::Citation;
use crate::fit::{Fit, HoleMember, ShaftMember, SizeReading, Wanted, fit_between};
use crate::judge::{Finding, fit_words, windows_of};
use crate::measure::Limits;
use crate::quantity::{Length, in_mm};
use crate::standard::FitWindow;
use crate::standard::Joint;
use crate::thread::Turn;

/// Diameters with their places, as the fit room takes them.
pub(super) fn sizes(readings: &[PlacedReading]) -> Vec<SizeReading> {
    readings
        .iter()
        .map(|p| {
            let mut size = SizeReading::new(p.reading);
            if let Some(angle) = p.angle {
                size = size.across(angle).unwrap_or(size);
            }
            if let Some(depth) = p.depth {
                size = size.at_depth(depth).unwrap_or(size);
            }
            size
        })
        .collect()
}

/// The hole as measured.
pub(super) fn hole(readings: &[PlacedReading]) -> Option<HoleMember> {
    HoleMember::measured_only(&sizes(readings)).ok()
}

/// The part, by its readings or else by its maker's limits.
pub(super) fn shaft(part: &Part) -> Option<ShaftMember> {
    let readings: Vec<SizeReading> = part.outside.iter().map(|r| SizeReading::new(*r)).collect();
    ShaftMember::measured_only(&readings).ok().or_else(|| {
        part.outside_limits
            .and_then(|limits| ShaftMember::of_limits(limits).ok())
    })
}

/// Judges a part in a bore against every window that somebody prints for this joint; conflicts stand side by side.
pub(super) fn part_in_bore(
    draft: &mut Draft<'_>,
    interface: Interface,
    part: Option<&Part>,
    bore: &[PlacedReading],
    joints: &[Joint],
    slip: bool,
    report: &mut InterfaceReport,
) -> Option<Fit> {
    let part = part?;
    let (Some(hole), Some(shaft)) = (hole(bore), shaft(part)) else {
        draft.ask(
            interface,
            format!(
                "outside diameter of the {} where it will sit, and the bore",
                if part.name.is_empty() {
                    "part"
                } else {
                    &part.name
                }
            ),
            "the fit cannot be judged without both",
            "outside micrometer",
        );
        return None;
    };
    let fit = fit_between(&hole, &shaft, draft.rule).ok()?;
    let name = if part.name.is_empty() {
        String::from("part")
    } else {
        part.name.clone()
    };
    report.findings.push(Finding::stated(
        format!("{name} in its bore"),
        format!("{} on diameter", fit_words(&fit)),
    ));
    for caution in fit.cautions() {
        report
            .findings
            .push(Finding::stated("fit", String::from(caution.words())));
    }
    let near = bore.first()?.reading.value();
    let windows: Vec<&FitWindow> = joints
        .iter()
        .flat_map(|joint| windows_of(draft.tables, *joint, near))
        .filter(|w| w.window.is_known())
        .collect();
    if windows.is_empty() && !slip {
        report.findings.push(Finding::stated("wanted fit", "no maker prints a window for this joint; give the part maker's limit on `interference`"));
    }
    report.findings.extend(
        windows
            .into_iter()
            .filter_map(|window| held(&fit, &format!("{name} in its bore"), window)),
    );
    Some(fit)
}

/// Holds a fit against one published window. A window that prints a single figure and no limits is quoted, not applied.
pub(super) fn held(fit: &Fit, what: &str, window: &FitWindow) -> Option<Finding> {
    if window.window.lower().is_none() && window.window.upper().is_none() {
        let figure = in_mm(window.window.nominal()?);
        return Some(
            Finding::stated(
                what,
                format!(
                    "{} prints {} of {figure}, without limits",
                    window.owner, window.sense
                ),
            )
            .resting_on(window.window.evidence()),
        );
    }
    let wanted = Wanted {
        sense: window.sense,
        limits: Limits::of_requirement(&window.window),
        owner: window.owner.clone(),
    };
    let held = fit.against(&wanted).ok()?;
    Some(Finding::fit(
        what,
        fit,
        &wanted,
        &held,
        window.window.evidence(),
    ))
}

/// What came off a bore, by its smallest and largest diameters before and after.
pub(super) fn came_off(
    before: &[PlacedReading],
    after: &[PlacedReading],
    report: &mut InterfaceReport,
) {
    let plain = |readings: &[PlacedReading]| readings.iter().map(|p| p.reading).collect::<Vec<_>>();
    let (old, new) = (
        crate::judge::extremes(&plain(before)),
        crate::judge::extremes(&plain(after)),
    );
    let (Some(old_small), Some(new_small)) = (old.first(), new.first()) else {
        return;
    };
    let removed = new_small.less(old_small);
    let words = match removed.sure_sign() {
        Ordering::Less => format!(
            "the bore reads {} narrower than before: measured elsewhere, or not clean",
            in_mm(-removed.value())
        ),
        Ordering::Equal => String::from("nothing that these readings can see came off"),
        Ordering::Greater => format!(
            "{} ± {} on diameter at the narrowest place",
            in_mm(removed.value()),
            in_mm(removed.expanded_uncertainty())
        ),
    };
    report.findings.push(Finding {
        readings: Vec::from([removed]),
        ..Finding::stated("what came off", words)
    });
}

/// A bore that is reamed into its limits, with how much may come off and where to stop.
pub(super) fn ream(
    interface: Interface,
    (title, why): (String, &'static str),
    (cutter, pilot): (String, &'static str),
    smallest: Length,
    limits: &Limits,
    (sources, owner): (Vec<Citation>, &str),
) -> Option<DraftStep> {
    let (low, high) = (limits.lower().known()?, limits.upper().known()?);
    let mut step = DraftStep::new(interface, Stage::Bore, Operation::Ream, title, why);
    step.tool = Some(Tool {
        cutter,
        hand: None,
        turn: Turn::Clockwise,
        pilot: String::from(pilot),
    });
    step.amount = Some(Amount {
        least: low - smallest,
        most: high - smallest,
        counted: "on diameter",
    });
    step.stop = Some(Stop {
        limit: format!("upper limit {} ({owner})", in_mm(high)),
        left: Some(high - smallest),
        grade: Some(limits.grade()),
        sources,
    });
    Some(step)
}
