//! Damaged threads.

use framegauge::fit::MaterialKind;
use framegauge::judge::{Gauging, Passed, pattern_threads};
use framegauge::measure::Reading;
use framegauge::rescue::{Damage, Rescue, RescueOption, Step, ThreadRescue};
use framegauge::standard::{Shell, Tables, find};
use framegauge::thread::{ShellThreads, Side};

use super::{Case, MEASURE, NO, YES, exact, hold};

fn alone(thread: &str, damage: Damage) -> ThreadRescue {
    ThreadRescue::new(thread.parse().unwrap(), damage)
}

fn in_shell(code: &str, damage: Damage, side: Side) -> ThreadRescue {
    let shell: ShellThreads = pattern_threads(find::<Shell>(code).unwrap()).unwrap();
    ThreadRescue::new(shell.side(side).unwrap(), damage).in_shell(shell, side)
}

fn with(mut ask: ThreadRescue, change: impl FnOnce(&mut ThreadRescue)) -> Rescue {
    change(&mut ask);
    ask.options(Tables::ours()).unwrap()
}

fn to(thread: &str) -> impl FnOnce(&mut ThreadRescue) {
    move |ask| {
        ask.to.push(thread.parse().unwrap());
        ask.outside = Some(exact(40.0));
    }
}

#[test]
fn damages() {
    let worn_out = Gauging {
        go: Some(Passed::Passed),
        not_go_turns: Some(6.0),
        ..Gauging::default()
    };
    let blocked = Gauging {
        go: Some(Passed::Failed),
        not_go_turns: Some(0.0),
        ..Gauging::default()
    };
    hold(
        "damaged_threads",
        &[
            Case(
                "stripped hanger",
                &[
                    (Step::Clean, YES),
                    (Step::Chase, NO),
                    (Step::Gauge, YES),
                    (Step::AdjustPart, NO),
                    (Step::Compound, NO),
                    (Step::Retap, MEASURE),
                    (Step::Insert, MEASURE),
                    (Step::Sleeve, MEASURE),
                    (Step::Refer, YES),
                ],
                "metal is gone: neither chaser nor compound brings it back (common practice)",
                alone("M10x1", Damage::Stripped)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "worn shell, drive side",
                &[
                    (Step::Chase, NO),
                    (Step::AdjustPart, MEASURE),
                    (Step::Compound, MEASURE),
                    (Step::ClampInUnit, MEASURE),
                ],
                "a chaser makes a loose thread looser; a unit that clamps needs no thread",
                in_shell("bsc", Damage::Worn, Side::Drive)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "tapped too large, non-drive side",
                &[(Step::Chase, NO), (Step::FillAndRecut, MEASURE)],
                "over-cut is filled and recut by builders (common practice)",
                in_shell("bsc", Damage::OverCut, Side::NonDrive)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "hands swapped",
                &[
                    (Step::Chase, NO),
                    (Step::AdjustPart, NO),
                    (Step::Compound, NO),
                    (Step::Insert, NO),
                    (Step::FillAndRecut, MEASURE),
                ],
                "sound thread of the wrong hand: nothing that follows the old helix helps",
                in_shell("bsc", Damage::Swapped, Side::Drive)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "seized",
                &[
                    (Step::Clean, YES),
                    (Step::Free, MEASURE),
                    (Step::Chase, NO),
                    (Step::AdjustPart, NO),
                    (Step::Compound, NO),
                ],
                "the part is still in: nothing is cut; the hand has to be sure before it is turned",
                in_shell("bsc", Damage::Seized, Side::Drive)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "crossed, not gauged",
                &[(Step::Chase, YES), (Step::Compound, NO)],
                "a chaser of the same size and hand follows the old helix (common practice)",
                alone("M10x1", Damage::CrossCut)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "crossed, GO stops",
                &[(Step::Chase, YES)],
                "what stops the gauge may be displaced metal: chasing may help",
                with(alone("M10x1", Damage::CrossCut), |a| {
                    a.gauging = Some(blocked)
                }),
            ),
            Case(
                "crossed, NOT GO runs in",
                &[(Step::Chase, NO)],
                "worn as well: a chaser never restores it",
                with(alone("M10x1", Damage::CrossCut), |a| {
                    a.gauging = Some(worn_out)
                }),
            ),
            Case(
                "laminate frame, stripped insert",
                &[
                    (Step::Chase, NO),
                    (Step::Retap, NO),
                    (Step::Insert, NO),
                    (Step::Sleeve, NO),
                    (Step::Clean, YES),
                    (Step::Refer, YES),
                ],
                "laminate is not cut",
                with(alone("M5x0.8", Damage::Stripped), |a| {
                    a.material = Some(MaterialKind::Carbon)
                }),
            ),
            Case(
                "metal frame, stripped insert",
                &[(Step::Sleeve, MEASURE)],
                "metal may be cut",
                with(alone("M5x0.8", Damage::Stripped), |a| {
                    a.material = Some(MaterialKind::Metal)
                }),
            ),
        ],
    );
}

#[test]
fn what_still_bears() {
    let worn = |bore: f64| with(alone("M10x1", Damage::Worn), |a| a.bore = Some(exact(bore)));
    hold(
        "what_still_bears",
        &[
            Case(
                "bore of 9.5 mm",
                &[(Step::AdjustPart, MEASURE)],
                "(10 - 9.5) / 2 = 0.25 mm of 5/8 H = 0.541 mm still bears, 46 % (ISO 68-1)",
                worn(9.5),
            ),
            Case(
                "bore as large as the part",
                &[(Step::AdjustPart, NO)],
                "nothing bears",
                worn(10.0),
            ),
            Case(
                "a micrometre smaller",
                &[(Step::AdjustPart, MEASURE)],
                "half a micrometre bears: what is enough nobody publishes",
                worn(9.999),
            ),
            Case(
                "form not known",
                &[(Step::AdjustPart, MEASURE)],
                "without the form its height is not known",
                with(in_shell("italian", Damage::Worn, Side::Drive), |a| {
                    a.bore = Some(exact(35.5))
                }),
            ),
        ],
    );
}

#[test]
fn retaps_and_inserts() {
    let outside = |ask: ThreadRescue, around: f64| with(ask, |a| a.outside = Some(exact(around)));
    let stripped = || in_shell("bsc", Damage::Stripped, Side::Drive);
    hold(
        "retaps_and_inserts",
        &[
            Case(
                "stripped English drive side in 40 mm of shell",
                &[(Step::Retap, YES)],
                "36 mm x 24 tpi (italian) clears the old grooves; M35x1 would be cut into them",
                outside(stripped(), 40.0),
            ),
            Case(
                "the shell is as thick as the new thread",
                &[(Step::Retap, NO)],
                "36 mm around 36 mm: no wall left",
                outside(stripped(), 36.0),
            ),
            Case(
                "a micrometre more",
                &[(Step::Retap, YES)],
                "half a micrometre of wall: possible by geometry, and no least wall is published",
                outside(stripped(), 36.001),
            ),
            Case(
                "same helix, a little larger",
                &[(Step::Retap, YES)],
                "old grooves reach 54 % of the new height, on the same helix: the new thread follows them",
                with(alone("M10x1", Damage::Worn), to("M10.5x1")),
            ),
            Case(
                "a little larger, and of the other hand",
                &[(Step::Retap, NO)],
                "the same 54 %, crossed by the other hand",
                with(alone("M10x1", Damage::Worn), to("M10.5x1 LH")),
            ),
            Case(
                "a little larger, of another pitch",
                &[(Step::Retap, NO)],
                "another pitch crosses the old grooves",
                with(alone("M10x1", Damage::Worn), to("M10.4x1.25")),
            ),
            Case(
                "much larger, of another pitch",
                &[(Step::Retap, YES)],
                "old grooves reach 33 % of the new height, less than half",
                with(alone("M10x1", Damage::Worn), to("M11x1.25")),
            ),
            Case(
                "the same size again",
                &[(Step::Retap, NO)],
                "nothing would be cut",
                with(alone("M10x1", Damage::Worn), to("M10x1")),
            ),
            Case(
                "both sides of one size after the retap",
                &[(Step::Retap, MEASURE)],
                "the other side was recut to Italian before: no hybrid any more",
                {
                    let shell = pattern_threads(find::<Shell>("bsc").unwrap()).unwrap();
                    let italian = pattern_threads(find::<Shell>("italian").unwrap()).unwrap();
                    let half = shell.retapped(Side::NonDrive, italian.non_drive.unwrap());
                    with(
                        ThreadRescue::new(half.drive.unwrap(), Damage::Stripped)
                            .in_shell(half, Side::Drive),
                        |a| a.to.push(italian.drive.unwrap()),
                    )
                },
            ),
            Case(
                "insert in 13.299 mm of metal",
                &[(Step::Insert, NO)],
                "the tap of a wire insert for M12x1 has 12 + 1.299 mm: it would break through",
                outside(alone("M12x1", Damage::Stripped), 13.299),
            ),
            Case(
                "a micrometre more",
                &[(Step::Insert, YES)],
                "possible by geometry",
                outside(alone("M12x1", Damage::Stripped), 13.3),
            ),
            Case(
                "no insert is known for a BSC thread",
                &[(Step::Insert, MEASURE)],
                "its maker's figures decide",
                alone("1.370 in x 24 tpi BSC", Damage::Stripped)
                    .options(Tables::ours())
                    .unwrap(),
            ),
        ],
    );
}

/// The next patterns are larger, by 2 mm at most, and are no thread that mates already.
#[test]
fn next_patterns() {
    let named = |thread: &str, outside: f64| -> Vec<String> {
        let shell = pattern_threads(find::<Shell>("bsc").unwrap()).unwrap();
        let left = with(
            alone(thread, Damage::Stripped).in_shell(shell, Side::Drive),
            |a| a.outside = Some(exact(outside)),
        );
        let named = |o: &RescueOption| o.what.as_ref().map(ToString::to_string);
        left.steps(Step::Retap)
            .map(|o| named(o).unwrap_or_default())
            .collect()
    };
    // T47 is M47x1 (t47); 2.0 mm larger is near enough, 2.1 mm is another shell.
    assert!(named("M45x1", 60.0).iter().any(|t| t.starts_with("M47x1")));
    assert!(
        !named("M44.9x1", 60.0)
            .iter()
            .any(|t| t.starts_with("M47x1"))
    );
    // M48x1.5 (isis_overdrive) is not larger than M48x1.
    assert_eq!(named("M48x1", 60.0), [""]);
    // Swiss is the French thread of the other hand: it mates but for the hand, and is no rescue; Italian is larger.
    assert_eq!(
        named("M35x1", 60.0)
            .iter()
            .filter(|t| t.starts_with("M35x1"))
            .count(),
        0
    );
    assert!(
        named("M35x1", 60.0)
            .iter()
            .any(|t| t.starts_with("36 mm x 24 tpi"))
    );
}

#[test]
fn sizes_that_are_none() {
    for (outside, bore, field) in [(Some(-1.0), None, "outside"), (None, Some(0.0), "bore")] {
        let size = |v: Option<f64>| -> Option<Reading> { v.map(exact) };
        let mut ask = alone("M10x1", Damage::Worn);
        (ask.outside, ask.bore) = (size(outside), size(bore));
        assert!(
            ask.options(Tables::ours())
                .unwrap_err()
                .field()
                .starts_with(field)
        );
    }
}
