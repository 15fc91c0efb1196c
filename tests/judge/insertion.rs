//! How deep a seatpost must go in.
//!
//! For a post of 30 mm the rows of `insertion_rule` ask: twice the diameter 60 mm (16 CFR 1512.15(b)), 2.5 diameters 75 mm,
//! 100 mm below a junction, 60 and 100 mm in general, and the trade rule 25 mm below the weld and 90 mm in all, or 150 mm
//! where the weld is not known. 70 mm is remembered and never decides.

use framegauge::judge::{PostDepth, Verdict};
use framegauge::measure::Reading;
use framegauge::{ErrorKind, ShaftDiameter, mm};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

fn post(weld: Option<f64>, makers: &[(&str, f64)], inserted: Option<Reading>) -> PostDepth {
    PostDepth {
        post: ShaftDiameter::new(mm(30.0)).unwrap(),
        weld: weld.map(mm),
        makers: makers
            .iter()
            .map(|(who, depth)| (String::from(*who), mm(*depth)))
            .collect(),
        inserted,
    }
}

fn said(weld: Option<f64>, makers: &[(&str, f64)], inserted: Option<Reading>) -> Verdict {
    post(weld, makers, inserted).judge().unwrap()
}

#[test]
fn posts() {
    hold(
        "posts",
        &[
            case(
                "nothing known but the post",
                OPEN,
                "nothing is inserted yet",
                said(None, &[], None),
            ),
            case(
                "as deep as the most demanding rule without the weld",
                WITHIN,
                "total_otherwise asks 150 mm, the most of all",
                said(None, &[], Some(exact(150.0))),
            ),
            case(
                "a micrometre less",
                OPEN,
                "enough for 100 mm and not for 150 mm: the rules differ",
                said(None, &[], Some(exact(149.999))),
            ),
            case(
                "as deep as the least demanding rule",
                OPEN,
                "60 mm is what the least demanding rules ask (mark_two_diameters, general_60)",
                said(None, &[], Some(exact(60.0))),
            ),
            case(
                "a micrometre less than any rule asks",
                OUT,
                "under 60 mm",
                said(None, &[], Some(exact(59.999))),
            ),
            case(
                "weld at 70 mm",
                WITHIN,
                "70 + 25 = 95 mm over 90, but 100 mm are asked elsewhere (below_junction, general_100)",
                said(Some(70.0), &[], Some(exact(100.0))),
            ),
            case(
                "weld at 65 mm: both halves of the rule alike",
                OPEN,
                "65 + 25 = 90 mm; 95 mm is over it and under 100",
                said(Some(65.0), &[], Some(exact(95.0))),
            ),
            case(
                "weld at 40 mm: the total rules",
                OPEN,
                "40 + 25 is less than 90 mm, so 90 mm",
                said(Some(40.0), &[], Some(exact(95.0))),
            ),
            case(
                "weld at 130 mm asks most",
                OPEN,
                "130 + 25 = 155 mm, more than any other rule",
                said(Some(130.0), &[], Some(exact(154.999))),
            ),
            case(
                "weld at 130 mm, met",
                WITHIN,
                "155 mm",
                said(Some(130.0), &[], Some(exact(155.0))),
            ),
            case(
                "a frame maker asks more than every rule",
                OUT,
                "the maker's 200 mm goes before the published rules",
                said(
                    Some(60.0),
                    &[("the frame maker", 200.0)],
                    Some(exact(199.999)),
                ),
            ),
            case(
                "maker and mark both met",
                WITHIN,
                "at least 80 and 120 mm, and 120 is over every rule with the weld at 60 mm",
                said(
                    Some(60.0),
                    &[("the mark on the post", 80.0), ("the frame maker", 120.0)],
                    Some(exact(120.0)),
                ),
            ),
            case(
                "a maker's depth, and the post not yet read",
                OPEN,
                "not inserted yet",
                said(Some(60.0), &[("the frame maker", 120.0)], None),
            ),
            case(
                "too close to the most demanding rule",
                OPEN,
                "150 +/- 1 mm against 150 mm: even chances",
                said(None, &[], Some(read("150 +/- 1 mm"))),
            ),
            case(
                "too close to what a maker asks",
                OPEN,
                "200 +/- 1 mm against the maker's 200 mm",
                said(
                    None,
                    &[("the frame maker", 200.0)],
                    Some(read("200 +/- 1 mm")),
                ),
            ),
            case(
                "too close to tell",
                OPEN,
                "60 +/- 1 mm against 60 mm",
                said(Some(60.0), &[], Some(read("60 +/- 1 mm"))),
            ),
        ],
    );
}

#[test]
fn depths_that_are_none() {
    for (bad, field) in [
        (post(Some(-1.0), &[], None), "weld"),
        (
            post(None, &[("the frame maker", 0.0)], None),
            "maker's depth",
        ),
        (post(None, &[], Some(exact(-5.0))), "inserted"),
    ] {
        let error = bad.judge().unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, field)
        );
    }
}
