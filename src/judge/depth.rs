//! Deep or long enough? Cups in bores, posts in tubes, spindles and shells, bolts through mounts.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::room_below;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{Length, in_mm, mm, positive};
use crate::standard::{BrakeFigure, FlatMountBolt, Row, ShellWindow, find};

/// A cup in its bore: bore depth less insertion. What is missing is how far the cup stands proud.
///
/// ```
/// use framegauge::{judge::cup_depth, measure::DecisionRule};
/// let said = cup_depth(&"9.0 +/- 0.1 mm".parse().unwrap(), &"12.0 +/- 0.1 mm".parse().unwrap(), DecisionRule::default()).unwrap();
/// assert!(said.sentence.contains("3.000 mm proud"));
/// ```
///
/// # Errors
/// `OutOfRange` for a length below zero or above 1000 mm.
pub fn cup_depth(
    bore_depth: &Reading,
    insertion: &Reading,
    rule: DecisionRule,
) -> Result<Verdict, Error> {
    let wanted = Limits::from_table(
        crate::measure::Bound::At(NOTHING),
        crate::measure::Bound::Open,
        Grade::CommonPractice,
    );
    let room = room_below(bore_depth, insertion, wanted, rule)?;
    let short = -room.length.value();
    let found = Finding {
        outcome: Some(room.decision.outcome),
        readings: Vec::from([room.length]),
        limits: Some(wanted),
        decision: Some(room.decision),
        owner: String::from("reamed depth must be at least the insertion"),
        grade: Some(Grade::CommonPractice),
        ..Finding::stated(
            "room below the cup",
            format!(
                "bore {} deep, cup {} long: {}",
                in_mm(bore_depth.value()),
                in_mm(insertion.value()),
                in_mm(room.length.value())
            ),
        )
    };
    let said = Verdict::from_findings("cup in bore", Vec::from([found]));
    Ok(match said.outcome {
        Outcome::NonconformityShown => said
            .saying(format!(
                "The cup bottoms and stands {} proud: no go. Deepen the bore by that much if the wall below allows it, or shorten the cup, which leaves less length to press.",
                in_mm(short)
            ))
            .with(Worked::length("stands proud", short, "insertion less bore depth"))
            .then(NextStep::new("the inside below the bore, and the wall there", "deepening needs wall to cut in, and a shoulder to stop at", "caliper, wall gauge"))
            .minding("cutting cannot be undone; a shortened cup needs a new chamfer and its maker's consent"),
        Outcome::ConformityShown => said
            .saying(format!("The cup seats with {} to spare.", in_mm(room.length.value())))
            .with(Worked::length("room below", room.length.value(), "bore depth less insertion")),
        Outcome::Undecided => said
            .saying("Too close to tell: the cup may bottom before it seats.")
            .with(Worked::length("room below", room.length.value(), "bore depth less insertion"))
            .then(NextStep::new("bore depth at four places and the length of the cup below its flange", "the shallowest place decides", "depth caliper")),
    })
}

/// A spindle or unit made for one shell width in a shell of another, against every window that a crank or frame maker prints
/// for the width it was made for.
///
/// # Errors
/// `OutOfRange` and `NotFinite` for widths that are none.
///
/// ```
/// use framegauge::{judge::spindle_for_width, measure::Outcome, mm};
/// let said = spindle_for_width(&"71 +/- 0.1 mm".parse().unwrap(), mm(68.0)).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert_eq!(said.millimetres("spindle short by"), Some(3.0));
/// ```
pub fn spindle_for_width(shell: &Reading, made_for: Length) -> Result<Verdict, Error> {
    size_reading("shell width", shell)?;
    let made_for = positive("width it was made for", made_for)?;
    let short = shell.value() - made_for;
    let mut findings: Vec<Finding> = Vec::new();
    let mut outer: Option<(Length, Length, Grade)> = None;
    for row in ShellWindow::table() {
        let same = row
            .nominal
            .nominal()
            .is_some_and(|n| settled_cmp(n, made_for).is_eq());
        let (Some(low), Some(high), true) = (row.window.lower(), row.window.upper(), same) else {
            continue;
        };
        let grade = row.window.grade().unwrap_or(Grade::Shop);
        findings.push(sizes_against(
            row.code.clone(),
            &[*shell],
            &Limits::of_size(&row.window),
            &row.owner,
            row.window.evidence(),
            DecisionRule::default(),
        ));
        outer = Some(outer.map_or((low, high, grade), |(l, h, g)| {
            (
                if settled_cmp(low, l).is_lt() { low } else { l },
                if settled_cmp(high, h).is_gt() {
                    high
                } else {
                    h
                },
                g.weaker(grade),
            )
        }));
    }
    let off = match settled_cmp(short, NOTHING) {
        Ordering::Greater => format!("{} too short", in_mm(short)),
        Ordering::Less => format!("{} too long", in_mm(-short)),
        Ordering::Equal => String::from("as made for"),
    };
    let mut sentence = format!(
        "Made for {}, the shell is {}: {off}",
        in_mm(made_for),
        in_mm(shell.value()),
    );
    let deciding = match outer {
        Some((low, high, grade)) => {
            let limits = Limits::between(low, high, grade)?;
            let found = sizes_against(
                "shell width",
                &[*shell],
                &limits,
                "the widest window that any maker prints for this width",
                None,
                DecisionRule::default(),
            );
            sentence.push_str(match found.outcome {
                Some(Outcome::NonconformityShown) => ", outside every window that a maker prints for that width; the cup would end inside the shell or stand out of it. Take a spindle for this width, and keep the cups that fit the thread.",
                Some(Outcome::ConformityShown) => ", inside a window that a maker prints.",
                _ => "; too close to a window's edge to tell.",
            });
            Vec::from([found])
        }
        None => {
            sentence.push_str("; no window is published for that width, so nothing is shown. A whole width out is felt at once: the cup face falls below or stands above the shell face.");
            Vec::from([Finding {
                outcome: Some(Outcome::Undecided),
                ..Finding::stated(
                    "shell width",
                    "no window is published for the width it was made for",
                )
            }])
        }
    };
    let mut said = Verdict::from_findings("spindle in shell", deciding)
        .saying(sentence)
        .with(Worked::length(
            "spindle short by",
            short,
            "shell width less the width it was made for",
        ))
        .with(Worked::length(
            "at each end",
            short / 2.0,
            "half of it, where both ends share it",
        ));
    said.beside = findings;
    if said.outcome == Outcome::Undecided {
        said = said.then(NextStep::new(
            "the maker's width window for this unit",
            "the window belongs to the crank, not to the shell",
            "maker's instructions",
        ));
    }
    Ok(said)
}

/// A bolt through a flat mount. The tables print the bolt for a thickness; between them its length less the thickness must be
/// what the tables share (13 mm).
///
/// # Errors
/// `OutOfRange` and `NotFinite` for sizes that are none.
///
/// ```
/// use framegauge::{judge::flat_mount_bolt, measure::Outcome, mm};
/// let said = flat_mount_bolt(&"20.0 +/- 0.1 mm".parse().unwrap(), Some(mm(38.0))).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown); // bottoms in the blind hole
/// assert_eq!(said.millimetres("bolt length"), Some(33.0));
/// ```
pub fn flat_mount_bolt(thickness: &Reading, bolt: Option<Length>) -> Result<Verdict, Error> {
    size_reading("mount thickness", thickness)?;
    let protrusion = find::<BrakeFigure>("fm_bolt_protrusion")?;
    let Some(stands_out) = protrusion.figure.as_ref().and_then(crate::Figure::nominal) else {
        return Err(Error::new(
            crate::ErrorKind::NotTabulated,
            "bolt",
            "",
            "no length is published",
            "ask the caliper maker",
        ));
    };
    let evidence = protrusion.figure.as_ref().and_then(crate::Figure::evidence);
    let grade = evidence.map_or(Grade::Memory, |e| e.worth());
    let ideal = thickness.value() + stands_out;
    let row = FlatMountBolt::table()
        .iter()
        .filter_map(|r| Some((r.frame_thickness.nominal()?, r.bolt_length.nominal()?)))
        .min_by(|a, b| {
            settled_cmp(
                (a.0 - thickness.value()).abs(),
                (b.0 - thickness.value()).abs(),
            )
        });
    let mut sentence = format!(
        "A mount of {} takes a bolt of {}: thickness and {}",
        in_mm(thickness.value()),
        in_mm(ideal),
        in_mm(stands_out)
    );
    let mut worked = Vec::from([Worked::length(
        "ideal length",
        ideal,
        "thickness + what the tables let stand out",
    )]);
    if let Some((at, length)) = row {
        sentence.push_str(&format!(
            "; the nearest listed is {} for {}",
            in_mm(length),
            in_mm(at)
        ));
        worked.push(Worked::length(
            "bolt length",
            length,
            "listed for the nearest thickness",
        ));
    }
    let mut findings = Vec::new();
    if let Some(bolt) = bolt {
        let bolt = positive("bolt", bolt)?;
        let out = thickness.scaled(-1.0).shifted(bolt);
        worked.push(Worked::length(
            "stands out",
            out.value(),
            "bolt less thickness",
        ));
        // Bolts step by 5 mm: beyond half a step another one is nearer.
        let limits = Limits::between(
            stands_out - mm(2.5),
            stands_out + mm(2.5),
            grade.weaker(Grade::Derived),
        )?;
        let mut found = sizes_against(
            "bolt through mount",
            &[out],
            &limits,
            "within half a step of what the tables let stand out",
            evidence,
            DecisionRule::default(),
        );
        if found.outcome == Some(Outcome::ConformityShown)
            && settled_cmp(
                (out.value() - stands_out).abs(),
                thickness.expanded_uncertainty(),
            )
            .is_gt()
        {
            found.outcome = Some(Outcome::Undecided);
            found
                .words
                .push_str("; but not what the tables print, and no tolerance is published");
        }
        sentence.push_str(match found.outcome {
            Some(Outcome::NonconformityShown) if settled_cmp(out.value(), stands_out).is_gt() => ". The one at hand is too long: it bottoms in the blind hole and feels tight without clamping",
            Some(Outcome::NonconformityShown) => ". The one at hand is too short: too little thread",
            Some(Outcome::ConformityShown) => ". The one at hand is right",
            _ => ". For the one at hand no tolerance is published",
        });
        findings.push(found);
    }
    sentence.push('.');
    let mut said = Verdict::from_findings("flat-mount bolt", findings).saying(sentence);
    said.worked = worked;
    if said.outcome != Outcome::ConformityShown {
        said = said.then(NextStep::new(
            "thickness again after facing, and the depth of the thread in the caliper",
            "facing changes the thickness, and engaged thread is less than what stands out",
            "depth caliper",
        ));
    }
    Ok(said.minding(
        "brakes: torque to the maker's figure; when in doubt, hand over to a qualified workshop",
    ))
}
