//! How deep a seatpost must go in.
//!
//! For a post of 30 mm the rows of `insertion_rule` ask: twice the diameter 60 mm (16 CFR 1512.15(b)), 2.5 diameters 75 mm,
//! 100 mm below a junction, 60 and 100 mm in general, and the trade rule 25 mm below the weld and 90 mm in all, or 150 mm
//! where the weld is not known. 70 mm is remembered and never decides.

use framegauge::judge::{Insertion, Verdict, WrittenDepth};
use framegauge::measure::Reading;
use framegauge::standard::Tables;
use framegauge::{ErrorKind, mm};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

fn post(weld: Option<f64>, makers: &[(&str, f64)], inserted: Option<Reading>) -> Insertion {
    Insertion {
        post: Some(mm(30.0)),
        weld: weld.map(mm),
        written: makers
            .iter()
            .map(|(who, depth)| WrittenDepth {
                owner: String::from(*who),
                depth: mm(*depth),
            })
            .collect(),
        inserted,
        ..Insertion::default()
    }
}

fn said(weld: Option<f64>, makers: &[(&str, f64)], inserted: Option<Reading>) -> Verdict {
    post(weld, makers, inserted).answer(Tables::ours()).unwrap()
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
            "written[0].depth",
        ),
        (post(None, &[], Some(exact(-5.0))), "inserted"),
    ] {
        let error = bad.answer(Tables::ours()).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, field)
        );
    }
}

/// A tube that is clear less deep than the least demanding rule asks takes no post; one that is clear less deep than the post is
/// meant to go in does not take that post. (Arithmetic; 60 mm are the least, see the head of this file.)
#[test]
fn room_for_the_post() {
    let with = |clear: f64, inserted: Option<Reading>| {
        let mut asked = post(Some(50.0), &[], inserted);
        asked.clear = Some(mm(clear));
        asked.answer(Tables::ours()).unwrap()
    };
    assert_eq!(with(59.999, None).outcome, OUT);
    assert_eq!(with(60.0, None).outcome, OPEN);
    let deep = with(60.0, Some(exact(150.0)));
    assert_eq!(deep.outcome, OUT);
    assert!(!deep.cures.is_empty(), "{deep}");
    assert_eq!(with(200.0, Some(exact(150.0))).outcome, WITHIN);
}

/// Without the diameter of the post only the rules in millimetres count: 60 mm at the least.
#[test]
fn a_post_of_unknown_size() {
    let asked = Insertion {
        weld: Some(mm(20.0)),
        inserted: Some(exact(59.0)),
        ..Insertion::default()
    };
    assert_eq!(asked.answer(Tables::ours()).unwrap().outcome, OUT);
}
