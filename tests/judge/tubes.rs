//! Tubes: walls and bores, what a reamer takes, which post belongs in.

use super::asked::reaming;
use framegauge::judge::{expected_post, head_tube_from_stock, inside_diameter, wall_implied};
use framegauge::measure::Reading;
use framegauge::standard::Tables;
use framegauge::{ErrorKind, mm};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

#[test]
fn reamed() {
    let ream = |bore: f64, to: f64| reaming(&exact(31.8), &exact(bore), mm(to)).unwrap();
    hold(
        "reamed",
        &[
            case(
                "0.3 mm of stock",
                OPEN,
                "nobody publishes a least wall; beside: 0.3 mm is the most of ream_stock_article, and less than ream_stock_hand_1_to_2_in asks (0.012 in)",
                ream(29.9, 30.2),
            ),
            case(
                "a micrometre more",
                OPEN,
                "beside: 0.301 mm is over ream_stock_article and within ream_stock_guide (0.002 to 0.020 in)",
                ream(29.899, 30.2),
            ),
            case(
                "a wall thinner than builders use",
                OPEN,
                "(31.8 - 30.1) / 2 = 0.85 mm, under head_tube_wall (0.9 to 1.1 mm), which is no required minimum",
                ream(29.9, 30.1),
            ),
            case(
                "a wall that builders use",
                OPEN,
                "(31.8 - 30.0) / 2 = 0.9 mm",
                ream(29.9, 30.0),
            ),
        ],
    );
    for (bore, to, kind, field) in [
        (30.0, 30.0, ErrorKind::NotApplicable, "to"),
        (30.0, 29.9, ErrorKind::NotApplicable, "to"),
        (30.0, 31.8, ErrorKind::Contradiction, "bore"),
        (31.8, 31.9, ErrorKind::Contradiction, "bore"),
        (30.0, -1.0, ErrorKind::OutOfRange, "to"),
    ] {
        let error = reaming(&exact(31.8), &exact(bore), mm(to)).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (kind, field),
            "{bore} to {to}"
        );
    }
}

#[test]
fn walls_and_bores() {
    let kind = |found: Result<Reading, framegauge::Error>| found.unwrap_err().kind();
    // Two walls of half the outside leave nothing (arithmetic).
    assert_eq!(
        kind(inside_diameter(&exact(20.0), &exact(10.0))),
        ErrorKind::Contradiction
    );
    assert_eq!(
        kind(inside_diameter(&exact(0.0), &exact(1.0))),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        kind(inside_diameter(&exact(20.0), &exact(0.0))),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        kind(wall_implied(&exact(20.0), &exact(20.0))),
        ErrorKind::Contradiction
    );
    assert_eq!(
        kind(wall_implied(&exact(20.0), &exact(0.0))),
        ErrorKind::OutOfRange
    );
    let wall = wall_implied(&exact(20.002), &exact(20.0)).unwrap();
    assert_eq!(framegauge::settled_mm(wall.value()), 0.001);
    // 0.04^2 + (2 x 0.03)^2, the root of it, for U of outside less two walls (GUM, 5.1.2).
    let inside = inside_diameter(&read("31.8 +/- 0.04 mm"), &read("1.0 +/- 0.03 mm")).unwrap();
    assert_eq!(inside.to_string(), "29.800 ± 0.072 mm");
}

#[test]
fn stock() {
    let tube =
        |outside, wall: f64| head_tube_from_stock(&outside, &exact(wall), Tables::ours()).unwrap();
    hold(
        "stock",
        &[
            case(
                "31.8 x 1.0",
                OPEN,
                "inside 29.8 mm: seats are listed as found, and no limit decides",
                tube(exact(31.8), 1.0),
            ),
            case(
                "at the reach of a hand reamer",
                OPEN,
                "the largest bore of EC34 is 33.95 mm; 33.442 + 0.508 mm (ream_stock_guide, 0.020 in) reaches it",
                tube(exact(36.442), 1.5),
            ),
            case(
                "a micrometre out of reach",
                OPEN,
                "33.441 + 0.508 = 33.949 mm",
                tube(exact(36.441), 1.5),
            ),
            case(
                "as large as the seat already",
                OPEN,
                "33.95 mm: nothing left to ream",
                tube(exact(36.95), 1.5),
            ),
            case(
                "a micrometre larger than the seat",
                OPEN,
                "33.951 mm: the seat cannot be made smaller",
                tube(exact(36.951), 1.5),
            ),
            case(
                "in reach within the doubt of the readings",
                OPEN,
                "33.42 +/- 0.05 mm may be 33.47",
                tube(read("36.42 +/- 0.05 mm"), 1.5),
            ),
            case(
                "a tube that suits nothing",
                OPEN,
                "inside 22.0 mm: no seat is so small",
                tube(exact(25.0), 1.5),
            ),
        ],
    );
}

#[test]
fn posts_for_tubes() {
    let tube = |used: &[Reading]| expected_post(&exact(28.6), mm(0.7), mm(0.9), used).unwrap();
    // 28.6 - 2 x 0.9 = 26.8 and 28.6 - 2 x 0.7 = 27.2 mm (arithmetic); both are listed posts.
    hold(
        "posts_for_tubes",
        &[
            case(
                "no post in use",
                OPEN,
                "26.8 to 27.2 mm is worked out; nothing is judged",
                tube(&[]),
            ),
            case(
                "a post at the thin end",
                WITHIN,
                "(28.6 - 27.2) / 2 = 0.7 mm, the thinnest wall",
                tube(&[exact(27.2)]),
            ),
            case(
                "a post larger than the tube allows",
                OUT,
                "(28.6 - 27.202) / 2 = 0.699 mm",
                tube(&[exact(27.202)]),
            ),
            case(
                "a post at the thick end",
                WITHIN,
                "0.9 mm, the thickest wall",
                tube(&[exact(26.8)]),
            ),
            case(
                "a post that needs a sleeve",
                OUT,
                "(28.6 - 26.4) / 2 = 1.1 mm: not this tube, or a sleeve",
                tube(&[exact(26.4)]),
            ),
            case(
                "the readings do not tell",
                OPEN,
                "0.7 +/- 0.02 mm on the limit: even chances",
                tube(&[read("27.2 +/- 0.04 mm")]),
            ),
            case(
                "a tube between two posts",
                OPEN,
                "26.6 to 26.99 mm: the largest listed under it is 26.8 mm",
                expected_post(&exact(28.6), mm(0.805), mm(1.0), &[]).unwrap(),
            ),
            case(
                "a tube too small for any post",
                OPEN,
                "15.2 mm: no post is listed",
                expected_post(&exact(17.0), mm(0.7), mm(0.9), &[]).unwrap(),
            ),
        ],
    );
    for (thin, thick, kind) in [
        (0.9, 0.7, ErrorKind::Contradiction),
        (0.0, 0.7, ErrorKind::OutOfRange),
    ] {
        assert_eq!(
            expected_post(&exact(28.6), mm(thin), mm(thick), &[])
                .unwrap_err()
                .kind(),
            kind
        );
    }
}
