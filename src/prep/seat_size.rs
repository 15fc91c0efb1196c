//! Which seatpost size a painted seat tube is for.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::draft::Draft;
use super::plan::{Interface, InterfaceReport};
use super::sheet::SeatTubeSheet;
use crate::fit::Shape;
use crate::judge::{Finding, from_to};
use crate::measure::{Reading, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{CuttingRule, Seatpost};

const HERE: Interface = Interface::SeatTube;

/// The size to work to under paint. Paint only narrows a bore: the true size lies at or above the largest reading less
/// its uncertainty, and no further above than a coat on both walls can hide.
pub(super) fn painted_size(
    draft: &mut Draft<'_>,
    tube: &SeatTubeSheet,
    shape: &Shape,
    report: &mut InterfaceReport,
) -> Option<(Length, Option<usize>)> {
    let settled = settle(draft, tube, shape, report);
    if settled.is_none() {
        draft.ask(
            HERE,
            "bore below the paint, and which post the frame was made for",
            "the readings do not name the size that was believed, and paint hides the rest",
            "frame maker's sheet, telescoping gauge",
        );
    }
    settled
}

fn settle(
    draft: &mut Draft<'_>,
    tube: &SeatTubeSheet,
    shape: &Shape,
    report: &mut InterfaceReport,
) -> Option<(Length, Option<usize>)> {
    let (small, large) = (shape.smallest(), shape.largest());
    let coat = draft.tables.find::<CuttingRule>("coat_one_side").ok();
    let hidden = coat
        .and_then(|rule| rule.window.upper())
        .map_or(mm(0.0), |one_side| one_side * 2.0);
    let reach = |r: &Reading| r.expanded_uncertainty() + mm(0.1);
    let fits: Vec<&Seatpost> = draft
        .tables
        .all::<Seatpost>()
        .filter(|post| {
            post.diameter.nominal().is_some_and(|d| {
                settled_cmp(d, large.value() - reach(&large)).is_ge()
                    && settled_cmp(d, large.value() + reach(&large) + hidden).is_le()
            })
        })
        .collect();
    let names = |posts: &[&Seatpost]| {
        posts
            .iter()
            .map(|p| p.code.as_ref())
            .collect::<Vec<_>>()
            .join(", ")
    };
    let believed = tube.common.believed.as_deref().and_then(|name| {
        match draft.tables.find::<Seatpost>(name.trim_end_matches(" mm")) {
            Ok(post) => Some(post),
            Err(error) => {
                report
                    .findings
                    .push(Finding::stated("belief", format!("{error}")));
                None
            }
        }
    });
    match believed {
        Some(post) if fits.iter().any(|p| p.code == post.code) => {
            let others: Vec<&Seatpost> = fits
                .iter()
                .copied()
                .filter(|p| p.code != post.code)
                .collect();
            let words = if others.is_empty() {
                format!(
                    "{} mm, as believed: no other size agrees with the readings",
                    post.code
                )
            } else {
                format!(
                    "{} mm as believed is possible, and so is {}",
                    post.code,
                    names(&others)
                )
            };
            report
                .findings
                .push(Finding::stated("size", words).resting_on(post.diameter.evidence()));
            let doubt = (!others.is_empty()).then(|| {
                draft.ask(
                    HERE,
                    format!("is it really {}? Try a post of known size, and measure the bore below the paint", post.code),
                    format!("the readings allow {} as well, and a reamer cannot put metal back", names(&others)),
                    "post or plug of known size",
                )
            });
            post.diameter.nominal().map(|size| (size, doubt))
        }
        Some(post) => {
            report.findings.push(Finding::stated(
                "size",
                format!(
                    "the sheet says {} mm, the readings say {}: {}. The readings are believed, the label is not",
                    post.code,
                    from_to(small.value(), large.value()),
                    if fits.is_empty() { String::from("no listed size agrees") } else { format!("that is {}", names(&fits)) }
                ),
            ));
            None
        }
        None => match fits.as_slice() {
            [only] => {
                report.findings.push(
                    Finding::stated("size", format!("{} mm by its bore", only.code))
                        .resting_on(only.diameter.evidence()),
                );
                only.diameter.nominal().map(|size| (size, None))
            }
            [] => {
                report.findings.push(Finding::stated(
                    "size",
                    "no listed seatpost size agrees with the bore",
                ));
                None
            }
            several => {
                report.findings.push(Finding::stated(
                    "size",
                    format!(
                        "one of {}: the bore alone does not say which",
                        names(several)
                    ),
                ));
                None
            }
        },
    }
}
