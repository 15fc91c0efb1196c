//! Disc-brake mounts: faced after the axle thread, because the cutter pilots on the axle.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing::{covered, written_limits};
use super::plan::{
    Amount, Consequence, Interface, InterfaceReport, Operation, Stop, Tool, end_words,
};
use super::sheet::{BrakeSheet, JointMaterial, PadPoint};
use crate::face::{self, Allowance, CutLimit, LimitKind, PadSurvey, Point};
use crate::judge::Finding;
use crate::measure::{Limits, Outcome, Reading, decide, settled_below};
use crate::quantity::{Length, in_mm, mm, to_mm};
use crate::standard::{BrakeFigure, BrakeSystem, End, FlatMountBolt};
use crate::thread::Turn;

pub(super) fn plan(draft: &mut Draft<'_>, index: usize, sheet: &BrakeSheet) {
    let interface = Interface::Brake(index);
    let name = format!("{} {}", end_words(sheet.end), system_words(sheet.system));
    let mut report = InterfaceReport {
        interface,
        title: name.clone(),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    draft.caution(Caution::Brakes);
    let now = if sheet.after.is_empty() {
        &sheet.points
    } else {
        &sheet.after
    };
    let painted = covered(sheet.common.coating);
    bolt(draft, interface, sheet, &mut report);
    if now.len() < 3 {
        if painted {
            draft.ask(
                interface,
                format!("{name}: heights of both faces at 3 places or more each, along and across"),
                "side slope of the face rolls the caliper and cannot be set right with its bolts",
                "dial indicator on a bar held by the axle",
            );
        }
        draft.report(report);
        return;
    }
    let survey = match survey(now) {
        Ok(survey) => survey,
        Err(error) => {
            report
                .findings
                .push(Finding::stated("faces", format!("no survey: {error}")));
            draft.report(report);
            return;
        }
    };
    if !sheet.after.is_empty() {
        let off = came_off(sheet, &mut report);
        super::came_off::left_after(cut_limits(sheet), off, &mut report);
    }
    let plane = survey.least_squares();
    let u = survey.reading_uncertainty();
    let range = Reading::new(survey.range(), u * core::f64::consts::SQRT_2);
    // A slope that rounds to nothing has no sign.
    let degrees = |slope: f64| {
        let angle = libm::atan(slope).to_degrees();
        if angle.abs() < 0.005 { 0.0 } else { angle }
    };
    report.findings.push(Finding::stated(
        if sheet.after.is_empty() { "faces as found" } else { "faces after the pass" },
        format!(
            "{} between the highest and the lowest place; side slope {:.2} deg, along the mount {:.2} deg",
            in_mm(survey.range()),
            degrees(plane.plane().slope_y()),
            degrees(plane.plane().slope_x())
        ),
    ));
    report.findings.push(Finding::stated("which tilt matters", "side slope rolls the caliper and is not adjustable; a height difference along the mount only moves the pads in the plane of the rotor"));
    tilt(
        draft,
        interface,
        sheet,
        plane.plane().slope_y(),
        &name,
        &mut report,
    );
    if let Ok(range) = range {
        cut(
            draft,
            interface,
            sheet,
            &name,
            range,
            painted && sheet.after.is_empty(),
            &mut report,
        );
    }
    draft.report(report);
}

const fn system_words(system: BrakeSystem) -> &'static str {
    match system {
        BrakeSystem::Is => "IS brake mount",
        BrakeSystem::Pm => "post mount",
        BrakeSystem::Fm => "flat mount",
        BrakeSystem::Rotor | BrakeSystem::Pads | BrakeSystem::Any => "brake mount",
    }
}

pub(super) fn survey(points: &[PadPoint]) -> Result<PadSurvey, crate::Error> {
    let mut pads = Vec::with_capacity(points.len());
    let mut worst = mm(0.0);
    for point in points {
        worst = worst.max(point.height.standard_uncertainty());
        pads.push(face::PadPoint {
            pad: "mount".into(),
            point: Point::new(point.along, point.across, point.height.value())?,
        });
    }
    PadSurvey::new("wheel axle", pads, worst)
}

/// What came off at the places that were read both times.
fn came_off(sheet: &BrakeSheet, report: &mut InterfaceReport) -> Option<Reading> {
    let near = |a: Length, b: Length| settled_below((a - b).abs(), mm(0.5));
    let removed: Vec<Reading> = sheet
        .points
        .iter()
        .filter_map(|b| {
            let a = sheet
                .after
                .iter()
                .find(|a| near(a.along, b.along) && near(a.across, b.across))?;
            Some(b.height.less(&a.height))
        })
        .collect();
    super::came_off::told(removed, report)
}

/// What limits the cut of a mount, by readings before it.
fn cut_limits(sheet: &BrakeSheet) -> Vec<CutLimit> {
    let mut limits = written_limits(&sheet.common.limits);
    if let Some(limit) = sheet.common.limits.iter().find(|l| l.what == "thickness")
        && let (Some(thickness), Some(least)) = (sheet.thickness, limit.limits.lower().known())
    {
        limits.extend(
            CutLimit::leaving(
                LimitKind::MountThickness,
                format!("least thickness {} ({})", in_mm(least), limit.owner),
                &thickness,
                least,
                limit.limits.grade(),
            )
            .ok(),
        );
    }
    limits
}

/// The slope at which a pad of this length touches a centred rotor with this clearance a side: asin(2 c / L).
fn tilt(
    draft: &mut Draft<'_>,
    interface: Interface,
    sheet: &BrakeSheet,
    slope: f64,
    name: &str,
    report: &mut InterfaceReport,
) {
    let squareness = draft
        .tables
        .all::<BrakeFigure>()
        .find(|f| f.code == "mount_squareness");
    if let Some(reason) = squareness
        .and_then(|f| f.figure.as_ref())
        .map(crate::evidence::Figure::reason)
    {
        report.findings.push(Finding::stated(
            "squareness",
            format!("no limit is published: {reason}"),
        ));
    }
    let (Some(clearance), Some(length)) = (sheet.pad_clearance, sheet.pad_length) else {
        draft.ask(
            interface,
            format!("{name}: clearance of pad and rotor on each side, and length of the pad across the tilt"),
            "no squareness limit is published for a mount; the caliper's own clearance is the only bound",
            "feeler, steel rule; or the brake maker's figure",
        );
        return;
    };
    let ratio = 2.0 * to_mm(clearance) / to_mm(length);
    if ratio >= 1.0 {
        return;
    }
    let bound = libm::asin(ratio).to_degrees();
    let lean = libm::atan(slope).to_degrees().abs();
    let clear = lean < bound;
    let words = if clear {
        format!(
            "side slope {lean:.2} deg; a pad {} long with {} a side touches at {bound:.2} deg: clear with the rotor centred and true",
            in_mm(length),
            in_mm(clearance)
        )
    } else {
        format!(
            "side slope {lean:.2} deg; a pad {} long with {} a side touches at {bound:.2} deg: it will rub whatever the bolts do",
            in_mm(length),
            in_mm(clearance)
        )
    };
    let outcome = if clear {
        Outcome::ConformityShown
    } else {
        Outcome::NonconformityShown
    };
    report.findings.push(Finding {
        outcome: Some(outcome),
        owner: String::from("the caliper's own clearance"),
        ..Finding::stated("caliper at 90 degrees to the rotor", words)
    });
}

/// Bolt length follows the thickness of a flat mount.
fn bolt(
    draft: &mut Draft<'_>,
    interface: Interface,
    sheet: &BrakeSheet,
    report: &mut InterfaceReport,
) {
    if sheet.system != BrakeSystem::Fm || sheet.end == End::Front {
        return;
    }
    let Some(thickness) = sheet.thickness else {
        draft.ask(interface, "thickness of the flat mount, bolt head to caliper face", "the bolt is chosen by it, and too long a bolt bottoms in the blind hole and feels tight without clamping", "outside caliper");
        return;
    };
    let Some(rule) = draft
        .tables
        .find::<BrakeFigure>("fm_bolt_protrusion")
        .ok()
        .and_then(|f| f.figure.as_ref())
    else {
        return;
    };
    let Some(protrusion) = rule.nominal() else {
        return;
    };
    let wanted = thickness.value() + protrusion;
    let listed = draft
        .tables
        .all::<FlatMountBolt>()
        .filter_map(|b| Some((b.frame_thickness.nominal()?, b.bolt_length.nominal()?)))
        .min_by(|a, b| {
            (a.0 - thickness.value())
                .abs()
                .value
                .total_cmp(&(b.0 - thickness.value()).abs().value)
        });
    let mut words = format!(
        "mount {} thick: bolt of {} (thickness and {})",
        in_mm(thickness.value()),
        in_mm(wanted),
        in_mm(protrusion)
    );
    if let Some((for_thickness, length)) = listed {
        words.push_str(&format!(
            "; nearest in the list: {} for a mount of {}",
            in_mm(length),
            in_mm(for_thickness)
        ));
    }
    report
        .findings
        .push(Finding::stated("bolt", words).resting_on(rule.evidence()));
    if let Some(at_hand) = sheet.bolt {
        let spare = at_hand - wanted;
        let words = if settled_below(mm(1.0), spare) {
            format!(
                "{} is {} too long: it may bottom in the blind hole and clamp nothing",
                in_mm(at_hand),
                in_mm(spare)
            )
        } else if settled_below(spare, mm(-1.0)) {
            format!("{} is {} too short", in_mm(at_hand), in_mm(-spare))
        } else {
            format!("{} suits", in_mm(at_hand))
        };
        report.findings.push(Finding::stated("bolt at hand", words));
    }
}

fn cut(
    draft: &mut Draft<'_>,
    interface: Interface,
    sheet: &BrakeSheet,
    name: &str,
    needed: Reading,
    painted: bool,
    report: &mut InterfaceReport,
) {
    if !painted {
        report.leave.push(String::from(
            "the faces: bare, and no published limit says that they must be cut",
        ));
        return;
    }
    if sheet.common.material == JointMaterial::Carbon {
        draft.caution(Caution::Carbon);
        let mut step = DraftStep::new(
            interface,
            Stage::Clean,
            Operation::Clean,
            format!("Take the paint off the {name} by hand"),
            "carbon and its bonded inserts are not faced",
        );
        step.proof = String::from(
            "the caliper bolts down without rocking; if it rocks, the frame maker decides",
        );
        step.cautions = Vec::from([Caution::Carbon, Caution::BondedInsert, Caution::Brakes]);
        draft.step(step);
        return;
    }
    let allowance = Allowance::new(cut_limits(sheet));
    let mut step = DraftStep::new(
        interface,
        Stage::Face,
        Operation::Face,
        format!("Face the {name}, the least that gives full contact"),
        "paint and build-up tilt the caliper; a hollow in the middle may keep paint as long as both ends of each face are bright",
    );
    step.end = sheet.end;
    step.tool = Some(Tool {
        cutter: String::from("brake-mount facing cutter"),
        hand: None,
        turn: Turn::Clockwise,
        pilot: String::from("the axle, in its chased thread, clamped as it will be ridden"),
    });
    step.amount = Some(Amount {
        least: needed.value(),
        most: needed.value() + needed.expanded_uncertainty(),
        counted: "of depth after first touch",
    });
    match allowance
        .nearest()
        .and_then(|l| Some((l.clone(), *l.may_come_off()?)))
    {
        Some((limit, left)) => {
            let spare = left.less(&needed);
            let enough = Limits::at_least(mm(0.0), limit.grade())
                .map(|zero| decide(&spare, &zero, draft.rule).outcome);
            step.stop = Some(Stop {
                limit: String::from(limit.what()),
                left: Some(left.value()),
                grade: Some(limit.grade()),
                sources: Vec::new(),
            });
            if enough.is_ok_and(|o| o == Outcome::NonconformityShown) {
                step.operation = Operation::Refer;
                step.tool = None;
                step.title = format!(
                    "Do not face the {name}: {} would be needed, {} may come off",
                    in_mm(needed.value()),
                    in_mm(left.value())
                );
            }
        }
        None => {
            step.waits_for.push(draft.ask(
                interface,
                format!("{name}: how much may come off? Least thickness or depth of cut, from the frame maker"),
                "no figure is published; the mount's thickness and its threads set the limit",
                "frame maker",
            ));
        }
    }
    step.checks = Vec::from([
        String::from(
            "ink the faces: bright at both ends of each; heights again into the sheet as `after`",
        ),
        String::from("caliper at 90 degrees to the rotor, pads even"),
    ]);
    if sheet.system == BrakeSystem::Fm {
        step.checks.push(String::from(
            "thickness of the mount again, and with it the bolt: facing makes the mount thinner",
        ));
    }
    if sheet.system == BrakeSystem::Fm {
        step.consequences.push(Consequence {
            on: interface,
            words: String::from("the mount is thinner by what comes off: a bolt chosen before is that much too long"),
            by: Some(needed.value() + needed.expanded_uncertainty()),
        });
    }
    step.proof = String::from(
        "the caliper bolts down without rocking, the wheel turns free, the brake holds at walking pace",
    );
    step.cautions = Vec::from([Caution::Brakes]);
    draft.step(step);
    if sheet.system == BrakeSystem::Fm && sheet.end != End::Front {
        let mut check = DraftStep::new(
            interface,
            Stage::Check,
            Operation::Check,
            format!("Choose the bolts of the {name} anew by the thickness that is left"),
            "a bolt that bottoms feels tight and clamps nothing",
        );
        check.end = sheet.end;
        check.cautions = Vec::from([Caution::Brakes]);
        draft.step(check);
    }
}
