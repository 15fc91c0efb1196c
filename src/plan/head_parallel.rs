//! Parallelism of the two faces of a head tube.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::face_now;
use super::facts::{HeadAsk, HeadFact};
use super::head::held;
use super::head_face::{OWNER, Planned, published, surveyed};
use super::sheet::{HeadTubeSheet, Limited};
use super::site::Site;
use super::work::PlaceWork;
use crate::judge::{Finding, Verdict, sizes_against};
use crate::measure::Outcome;
use crate::standard::Place;

/// The verdict on both faces, where it belongs: at each of them.
pub(super) fn together(ends: &[Planned<'_>], parallel: &Verdict, works: &mut [PlaceWork]) {
    let deals = |w: &PlaceWork| !w.steps.is_empty() || !w.questions.is_empty();
    let dealt = works.iter().any(deals);
    let mut steps = works.iter().flat_map(|w| &w.steps);
    let will_change = steps.any(|s| s.operation().cuts());
    for work in works {
        let here = deals(work);
        for finding in &parallel.findings {
            let out = finding.outcome == Some(Outcome::NonconformityShown);
            if here || dealt {
                // What is done at the other face cures both.
                work.settled(Finding {
                    outcome: finding.outcome.filter(|_| here || !out),
                    ..finding.clone()
                });
                continue;
            }
            work.fact(finding.clone());
            if out {
                work.cure(HeadFact::FaceBothEnds);
            }
        }
        if parallel.outcome == Outcome::Undecided && !will_change {
            work.ask(heights_field(ends, &work.place), HeadAsk::FacesFiner);
        }
    }
}

/// Where new heights of a face are written.
fn heights_field(ends: &[Planned<'_>], place: &Place) -> String {
    let planned = ends.iter().find(|p| Place::HeadFace(p.end.end) == *place);
    let face = planned.and_then(|p| p.end.sheet.face.as_ref());
    let worked = face.is_some_and(|face| !face_now::passes(face).is_empty());
    let path = planned.map_or("head_tube.lower", |p| p.end.path);
    format!("{path}.face.{}", if worked { "passes" } else { "probes" })
}

/// Both faces against every limit of parallelism, the makers' first.
pub(super) fn parallel(site: &Site<'_>, sheet: &HeadTubeSheet, clamped: bool) -> Option<Verdict> {
    let (upper, lower) = (sheet.upper.as_ref()?, sheet.lower.as_ref()?);
    let here = surveyed(upper.face.as_ref()?)?;
    let there = surveyed(lower.face.as_ref()?)?;
    let [one, other] = [&here, &there].map(|s| s.face().outer().length());
    let measured = here.parallelism(&there, one.max(other) * 2.0).ok()?.run_out;
    let makers = upper.limits.iter().chain(&lower.limits);
    let mut found: Vec<Finding> = makers
        .filter(|l| l.what == Limited::Parallelism)
        .map(|l| held("parallelism", &[measured], l, site.rule))
        .collect();
    // What is printed is printed for cups that are clamped against both faces.
    if let Some((limits, row)) = published(site).filter(|_| clamped) {
        let evidence = row.window.evidence();
        let of = row.what.clone();
        let printed = sizes_against(of, &[measured], &limits, OWNER, evidence, site.rule);
        // A maker's own figure decides; this one is shown beside it.
        let decides = found.is_empty();
        found.push(Finding {
            outcome: printed.outcome.filter(|_| decides),
            ..printed
        });
    }
    (!found.is_empty()).then(|| Verdict::from_findings("head_tube", found))
}
