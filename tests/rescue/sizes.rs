//! Another part, or a larger bore for it.

use framegauge::mm;
use framegauge::rescue::{BoreRescue, Damage, Step};
use framegauge::standard::Joint;

use super::bores::{bore, cup, post, with};
use super::{Case, MEASURE, NO, YES, exact, hold, read};

/// A seat tube read to 0.05 mm, with a post of 27.0 mm in it.
fn doubtful() -> BoreRescue {
    let bores = [read("27.40 +/- 0.05 mm")];
    bore(Joint::Seatpost, Damage::Worn, &bores, Some(exact(27.0)))
}

#[test]
fn other_sizes() {
    let sizes = |ask: BoreRescue, sizes: &[f64], outside: Option<f64>| {
        with(ask, |a| {
            a.sizes = sizes.iter().map(|s| mm(*s)).collect();
            a.outside = outside.map(exact);
        })
    };
    let pressing = || {
        let mut ask = cup(34.06);
        ask.wanted_interference = Some(mm(0.05));
        ask
    };
    let pressed = |s: &[f64]| sizes(pressing(), s, None);
    hold(
        "other_sizes",
        &[
            Case(
                "a post as large as the bore",
                &[(Step::AdjustPart, YES), (Step::NextSize, MEASURE)],
                "27.4 in 27.4; the next size up is 27.6, and the wall is not known",
                sizes(post(&[27.4], 27.0), &[27.0, 27.2, 27.4, 27.6], None),
            ),
            Case(
                "a post a micrometre larger than the bore",
                &[(Step::AdjustPart, MEASURE)],
                "27.4 does not go into 27.399, and the post at hand is no larger part",
                sizes(post(&[27.399], 27.0), &[27.0, 27.4], None),
            ),
            Case(
                "a post larger than the bore by less than the bore is known",
                &[(Step::AdjustPart, YES)],
                "27.42 in 27.40 +/- 0.05 mm: it may go in, and is tried before anything is cut",
                sizes(doubtful(), &[27.42], None),
            ),
            Case(
                "a post larger than the bore by more than that",
                &[(Step::AdjustPart, MEASURE)],
                "27.46 mm does not go into 27.45",
                sizes(doubtful(), &[27.46], None),
            ),
            Case(
                "a wall of 1.2 mm after reaming",
                &[(Step::NextSize, YES)],
                "(30 - 27.6) / 2 (arithmetic)",
                sizes(post(&[27.4], 27.4), &[27.4, 27.6, 27.8], Some(30.0)),
            ),
            Case(
                "no wall after reaming",
                &[(Step::NextSize, NO)],
                "27.6 around 27.6",
                sizes(post(&[27.4], 27.4), &[27.6], Some(27.6)),
            ),
            Case(
                "a micrometre of wall",
                &[(Step::NextSize, YES)],
                "0.001 mm is possible by geometry, and no least wall is published",
                sizes(post(&[27.4], 27.4), &[27.6], Some(27.602)),
            ),
            Case(
                "a bore that has that size already",
                &[(Step::NextSize, MEASURE)],
                "27.4 is no larger than 27.4",
                sizes(post(&[27.2, 27.4], 27.0), &[27.4], Some(30.0)),
            ),
            Case(
                "a cup and the press it wants",
                &[(Step::NextSize, YES)],
                "34.5 - 0.05 = 34.45 mm of bore for a part of 34.5 mm, (37 - 34.45) / 2 = 1.275 mm of wall (arithmetic)",
                sizes(pressing(), &[34.5], Some(37.0)),
            ),
            Case(
                "a cup, and the press not stated",
                &[(Step::NextSize, MEASURE)],
                "a bore as large as the part does not hold it (common practice)",
                sizes(cup(34.06), &[34.5], Some(37.0)),
            ),
            Case(
                "a cup whose bore is there already",
                &[(Step::NextSize, MEASURE)],
                "34.11 - 0.05 = 34.06 mm is the bore as it is",
                sizes(pressing(), &[34.11], Some(37.0)),
            ),
            Case(
                "a cup a micrometre larger",
                &[(Step::NextSize, YES)],
                "34.061 mm of bore",
                sizes(pressing(), &[34.111], Some(37.0)),
            ),
            Case(
                "a cup of twice the wanted press at most",
                &[(Step::AdjustPart, YES)],
                "34.16 presses 0.10 mm, twice 0.05; 34.161 would press more",
                pressed(&[34.06, 34.1, 34.16, 34.161]),
            ),
            Case(
                "cups that do not press, or too much",
                &[(Step::AdjustPart, MEASURE)],
                "34.06 in 34.06 does not press, 34.161 presses over 0.10 mm",
                pressed(&[34.06, 34.161]),
            ),
            Case(
                "a part within the doubt of the part at hand",
                &[(Step::AdjustPart, MEASURE)],
                "27.05 is not larger than 27.00 +/- 0.05 mm",
                sizes(
                    bore(
                        Joint::Seatpost,
                        Damage::Worn,
                        &[exact(27.4)],
                        Some(read("27.00 +/- 0.05 mm")),
                    ),
                    &[27.05],
                    None,
                ),
            ),
            Case(
                "no part at hand to compare",
                &[(Step::AdjustPart, YES)],
                "any size that fits is a part",
                sizes(
                    bore(Joint::Seatpost, Damage::Worn, &[exact(27.4)], None),
                    &[27.2],
                    None,
                ),
            ),
        ],
    );
}
