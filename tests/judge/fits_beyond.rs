//! Makers' own windows: they decide before everything that is published.

use framegauge::fit::Wanted;
use framegauge::standard::Joint;

use framegauge::measure::{Bound, DecisionRule, Limits};
use framegauge::{Grade, mm};

use super::fits::of;
use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

#[test]
fn makers_windows() {
    let press = |low: f64, high: f64| {
        Wanted::interference(
            Limits::between(mm(low), mm(high), Grade::Shop).unwrap(),
            "an invented cup maker",
        )
    };
    let gap = |low: f64, high: f64| {
        Wanted::clearance(
            Limits::between(mm(low), mm(high), Grade::Shop).unwrap(),
            "an invented post maker",
        )
    };
    let cup = |bore: f64| of(Joint::HeadCup, exact(bore), exact(34.0));
    let post = |bore: f64| of(Joint::Seatpost, exact(bore), exact(31.6));
    let half = Wanted::clearance(
        Limits::new(Bound::At(mm(0.05)), Bound::Unknown, Grade::Shop).unwrap(),
        "an invented post maker",
    );
    hold(
        "makers_windows",
        &[
            case(
                "within the maker's window, over the published one",
                WITHIN,
                "the maker's 0.15 to 0.25 mm goes before the published 0.1 mm",
                cup(33.8).window(press(0.15, 0.25)).judge().unwrap(),
            ),
            case(
                "under the maker's window",
                OUT,
                "0.149 mm is a micrometre under 0.15",
                cup(33.851).window(press(0.15, 0.25)).judge().unwrap(),
            ),
            case(
                "over the maker's window",
                OUT,
                "0.251 mm is a micrometre over 0.25",
                cup(33.749).window(press(0.15, 0.25)).judge().unwrap(),
            ),
            case(
                "two makers, one of them not met",
                OUT,
                "cup maker met, frame maker (0.05 to 0.10) not",
                cup(33.8)
                    .window(press(0.15, 0.25))
                    .window(press(0.05, 0.1))
                    .judge()
                    .unwrap(),
            ),
            case(
                "a post maker's window, met",
                WITHIN,
                "0.08 in 0.05 to 0.10",
                post(31.68).window(gap(0.05, 0.1)).judge().unwrap(),
            ),
            case(
                "a post maker's window, too tight",
                OUT,
                "0.049 mm is a micrometre under 0.05",
                post(31.649).window(gap(0.05, 0.1)).judge().unwrap(),
            ),
            case(
                "a post maker's window, too loose",
                OUT,
                "0.101 mm is a micrometre over 0.10",
                post(31.701).window(gap(0.05, 0.1)).judge().unwrap(),
            ),
            case(
                "half a window",
                OPEN,
                "the maker gives no upper limit, so conformity cannot be shown",
                post(31.68).window(half.clone()).judge().unwrap(),
            ),
            case(
                "half a window, broken",
                OUT,
                "0.04 mm is under the half that is given",
                post(31.64).window(half).judge().unwrap(),
            ),
            case(
                "simple acceptance by the shop's rule",
                WITHIN,
                "0.10 mm belongs to the window, whatever the tool (the rule that was asked for)",
                of(
                    Joint::Seatpost,
                    read("31.70 +/- 0.02 mm"),
                    read("31.60 +/- 0.02 mm"),
                )
                .window(gap(0.05, 0.1))
                .rule(DecisionRule::SimpleAcceptance)
                .judge()
                .unwrap(),
            ),
            case(
                "the same by the usual rule",
                OPEN,
                "0.10 +/- 0.028 mm on the limit: even chances",
                of(
                    Joint::Seatpost,
                    read("31.70 +/- 0.02 mm"),
                    read("31.60 +/- 0.02 mm"),
                )
                .window(gap(0.05, 0.1))
                .judge()
                .unwrap(),
            ),
        ],
    );
}

/// How far a fit lies beyond a window is counted as the window is: 0.04 mm of gap where a maker wants 0.05 to 0.20 mm of
/// clearance is 0.01 mm too little, though cups of that kind usually press (arithmetic).
#[test]
fn beyond_a_window_of_clearance_in_a_joint_that_presses() {
    let wanted = Limits::between(mm(0.05), mm(0.20), Grade::Shop).unwrap();
    let said = of(Joint::PressShell, exact(46.02), exact(45.98))
        .window(Wanted::clearance(wanted, "an invented cup maker"))
        .judge()
        .unwrap();
    assert_eq!(said.millimetres("beyond window by"), Some(0.01), "{said}");
}
