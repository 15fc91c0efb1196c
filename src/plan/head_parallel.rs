//! Parallelism of the two faces of a head tube.

use alloc::format;
use alloc::vec::Vec;

use super::face_now;
use super::head_face::{PUBLISHED, Planned, published, surveyed};
use super::sheet::{HeadTubeSheet, Limited};
use super::site::{Site, verb};
use super::work::PlaceWork;
use crate::face::RingSurvey;
use crate::judge::{Finding, sizes_against};
use crate::measure::Outcome;
use crate::standard::Place;

/// Parallelism of the two faces, as surveyed.
pub(super) struct Parallel {
    found: Vec<Finding>,
    pub worst: Outcome,
}

/// The finding on both faces, where it belongs: at each of them.
pub(super) fn together(ends: &[Planned<'_>], parallel: &Parallel, works: &mut [PlaceWork]) {
    let deals = |w: &PlaceWork| !w.steps.is_empty() || !w.questions.is_empty();
    let dealt = works.iter().any(deals);
    let will_change = works
        .iter()
        .any(|w| w.steps.iter().any(|s| s.operation().cuts()));
    for work in works.iter_mut() {
        let here = deals(work);
        for finding in &parallel.found {
            let out = finding.outcome == Some(Outcome::NonconformityShown);
            match (here, dealt) {
                (true, _) => work.settled(finding.clone()),
                // What is done at the other face cures both.
                (false, true) => work.settled(Finding {
                    outcome: finding.outcome.filter(|_| !out),
                    ..finding.clone()
                }),
                (false, false) => {
                    work.fact(finding.clone());
                    if out {
                        work.cure(format!(
                            "{} both ends with the pilot centred in the opposite bore, where that is permitted; else the frame maker",
                            verb(super::answer::Operation::Face)
                        ));
                    }
                }
            }
        }
        if parallel.worst == Outcome::Undecided && !will_change {
            let path = ends
                .iter()
                .find(|p| Place::HeadFace(p.end.end) == work.place)
                .map_or("head_tube.lower", |p| p.end.path);
            work.ask_plain(
                format!("{path}.face.{}", probes_field(ends, &work.place)),
                "heights of both faces again, finer; or ink both and take the first light cut where a cut is permitted",
                "whether the two faces are parallel enough is not shown either way",
                "dial indicator turned about the pilot",
            );
        }
    }
}

/// Where new heights of a face are written.
fn probes_field(ends: &[Planned<'_>], place: &Place) -> &'static str {
    let face = ends
        .iter()
        .find(|p| Place::HeadFace(p.end.end) == *place)
        .and_then(|p| p.end.sheet.face.as_ref());
    match face {
        Some(face) if !face_now::passes(face).is_empty() => "passes",
        _ => "probes",
    }
}

/// Both faces against every limit of parallelism, the makers' first.
pub(super) fn parallel(site: &Site<'_>, sheet: &HeadTubeSheet, clamped: bool) -> Option<Parallel> {
    let (upper, lower) = (sheet.upper.as_ref()?, sheet.lower.as_ref()?);
    let (here, there) = (
        surveyed(upper.face.as_ref()?)?,
        surveyed(lower.face.as_ref()?)?,
    );
    let outer = |s: &RingSurvey| s.face().outer().length();
    let over = outer(&here).max(outer(&there)) * 2.0;
    let measured = here.parallelism(&there, over).ok()?.run_out;
    let mut found = Vec::new();
    let mut worst = Outcome::ConformityShown;
    let makers = [&upper.limits, &lower.limits]
        .into_iter()
        .flatten()
        .filter(|l| l.what == Limited::Parallelism);
    for limit in makers {
        let finding = sizes_against(
            "parallelism of both faces",
            &[measured],
            &limit.limits,
            &limit.owner,
            None,
            site.rule,
        );
        worst = worse(worst, finding.outcome);
        found.push(finding);
    }
    // What is printed is printed for cups that are clamped against both faces.
    if let Some((limits, evidence)) = published(site).filter(|_| clamped) {
        let mut finding = sizes_against(
            "parallelism of both faces",
            &[measured],
            &limits,
            PUBLISHED,
            evidence,
            site.rule,
        );
        if found.is_empty() {
            worst = worse(worst, finding.outcome);
        } else {
            // The maker's own figure decides; this one is shown beside it.
            finding.outcome = None;
        }
        found.push(finding);
    }
    (!found.is_empty()).then_some(Parallel { found, worst })
}

fn worse(one: Outcome, other: Option<Outcome>) -> Outcome {
    match (one, other) {
        (Outcome::NonconformityShown, _) | (_, Some(Outcome::NonconformityShown)) => {
            Outcome::NonconformityShown
        }
        (Outcome::Undecided, _) | (_, Some(Outcome::Undecided)) => Outcome::Undecided,
        _ => one,
    }
}
