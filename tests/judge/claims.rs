//! What somebody states: rules of thumb, rows of tables, pitches, a tape round a post.

use framegauge::judge::{Verdict, per_inch_rule, post_by_tape, series_pitches, table_row};
use framegauge::thread::ThreadForm;
use framegauge::{ErrorKind, Pitch, inch, inch_fraction, mm};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

#[test]
fn rules() {
    let rule = |used: f64, claimed: Option<f64>| {
        per_inch_rule(inch(0.0005), mm(50.8), mm(used), claimed).unwrap()
    };
    // 0.0005 in on 2 in is 0.001 in = 0.0254 mm (arithmetic).
    hold(
        "rules",
        &[
            case(
                "no ratio claimed",
                OPEN,
                "nothing is claimed, so nothing is shown",
                rule(0.0508, None),
            ),
            case(
                "twice, and twice claimed",
                WITHIN,
                "0.0508 / 0.0254 = 2 (arithmetic)",
                rule(0.0508, Some(2.0)),
            ),
            case(
                "twice, and two and a half claimed",
                WITHIN,
                "a ratio said in words is meant to half a unit",
                rule(0.0508, Some(2.5)),
            ),
            case(
                "twice, and a little over two and a half claimed",
                OUT,
                "more than half a unit off",
                rule(0.0508, Some(2.51)),
            ),
            case(
                "twice, and once claimed",
                OUT,
                "a whole unit off",
                rule(0.0508, Some(1.0)),
            ),
        ],
    );
    for bad in [0.0, -1.0, f64::INFINITY] {
        let error = per_inch_rule(inch(0.0005), mm(50.8), mm(0.05), Some(bad)).unwrap_err();
        assert_eq!(error.field(), "claimed ratio");
    }
}

#[test]
fn rows_of_tables() {
    // A Whitworth profile of 24 to the inch: h = 0.640327 P, both sides 1.355 mm (BS 84); 34.8 - 33.445 = 1.355.
    let row = |nominal: f64, core: f64, form, written: Option<f64>| -> Verdict {
        table_row(
            mm(nominal),
            mm(core),
            Pitch::tpi(24).unwrap(),
            form,
            written.map(mm),
        )
        .unwrap()
    };
    let whitworth = ThreadForm::Whitworth;
    hold(
        "rows_of_tables",
        &[
            case(
                "a row that agrees",
                WITHIN,
                "2 x 0.640327 x 25.4/24 = 1.355 mm (BS 84)",
                row(34.8, 33.445, whitworth, None),
            ),
            case(
                "off by a hundredth",
                WITHIN,
                "two figures of two decimals: each half a unit off",
                row(34.8, 33.435, whitworth, None),
            ),
            case(
                "off by more",
                OUT,
                "1.367 mm is over 1.355 + 0.010",
                row(34.8, 33.433, whitworth, None),
            ),
            case(
                "off the other way",
                OUT,
                "1.343 mm is under 1.355 - 0.010",
                row(34.8, 33.457, whitworth, None),
            ),
            case(
                "form not known: the span of all forms",
                WITHIN,
                "from BSC, 2 x 0.5327 x 25.4/24 = 1.128 mm (BS 811), to Whitworth, 1.355 mm (BS 84)",
                row(34.8, 33.6, ThreadForm::Unknown, None),
            ),
            case(
                "form not known, outside the span",
                OUT,
                "1.0 mm is under any form",
                row(34.8, 33.8, ThreadForm::Unknown, None),
            ),
            case(
                "the designation says the same",
                WITHIN,
                "34.8 twice",
                row(34.8, 33.445, whitworth, Some(34.8)),
            ),
            case(
                "the designation is a slip",
                OUT,
                "core and pitch agree with the nominal, not with it",
                row(34.8, 33.445, whitworth, Some(37.8)),
            ),
            case(
                "the nominal is the slip",
                OUT,
                "core and pitch agree with the designation",
                row(37.8, 33.445, whitworth, Some(34.8)),
            ),
            case(
                "nothing agrees",
                OUT,
                "core and pitch agree with neither",
                row(37.8, 33.445, whitworth, Some(36.8)),
            ),
            case(
                "both agree, and yet differ",
                OUT,
                "34.800 and 34.805 both lie within what two decimals allow",
                row(34.8, 33.445, whitworth, Some(34.805)),
            ),
        ],
    );
    let error = table_row(
        mm(34.8),
        mm(33.4),
        Pitch::tpi(24).unwrap(),
        whitworth,
        Some(mm(0.0)),
    )
    .unwrap_err();
    assert_eq!(
        (error.kind(), error.field()),
        (ErrorKind::OutOfRange, "designation")
    );
}

#[test]
fn pitches_of_series() {
    let tpi = |n| Pitch::tpi(n).unwrap();
    let half = |coarse, fine| series_pitches(inch_fraction(1, 2), tpi(coarse), tpi(fine)).unwrap();
    hold(
        "pitches_of_series",
        &[
            case(
                "1/2 in: 13 and 20",
                WITHIN,
                "ASME B1.1: 1/2-13 UNC, 1/2-20 UNF",
                half(13, 20),
            ),
            case(
                "13 in both columns",
                OUT,
                "the fine pitch is not finer",
                half(13, 13),
            ),
            case(
                "columns swapped",
                OUT,
                "20 is the fine series",
                half(20, 13),
            ),
            case(
                "28 as fine",
                OUT,
                "1/2-28 is extra fine (UNEF, ASME B1.1), not fine",
                half(13, 28),
            ),
            case(
                "21 as fine",
                OUT,
                "the fine series of 1/2 in has 20 (ASME B1.1)",
                half(13, 21),
            ),
            case(
                "a size of no series",
                OPEN,
                "0.45 in is in neither series (ASME B1.1): finer is all that can be said",
                series_pitches(inch(0.45), tpi(13), tpi(20)).unwrap(),
            ),
        ],
    );
}

#[test]
fn tapes() {
    let tape = |text: &str| post_by_tape(&read(text)).unwrap();
    hold(
        "tapes",
        &[
            case(
                "82 +/- 0.5 mm",
                OPEN,
                "82 / pi = 26.10 +/- 0.16 mm: 26.0 and 26.2 both lie there",
                tape("82 +/- 0.5 mm"),
            ),
            case(
                "85.45 +/- 0.2 mm",
                OPEN,
                "85.45 / pi = 27.20 +/- 0.06 mm: 27.2 alone, and a tape still shows nothing",
                tape("85.45 +/- 0.2 mm"),
            ),
            case(
                "a size that nobody lists",
                OPEN,
                "60 mm: 19.1 mm, no post",
                tape("60 +/- 0.2 mm"),
            ),
        ],
    );
    assert!(post_by_tape(&exact(-82.0)).is_err());
}
