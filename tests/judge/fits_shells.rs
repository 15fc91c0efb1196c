//! Bearings and cups in shells, joints that nobody prints a window for, and painted members.

use super::asked::{FitQuestion, HoleMember, ShaftMember};
use framegauge::fit::{Feature, RingClass};
use framegauge::judge::MemberOf;

use framegauge::standard::{Hold, Joint, Shell, find};
use framegauge::{ErrorKind, mm};

use super::fits::{hole, judge, of, shaft, uneven};
use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

#[test]
fn bearings_and_cups_in_shells() {
    let bb30 = |bore: f64, bearing: f64| {
        FitQuestion::of_shell(find::<Shell>("bb30").unwrap())
            .unwrap()
            .hole_measured(exact(bore))
            .unwrap()
            .shaft(shaft(exact(bearing)))
            .judge()
            .unwrap()
    };
    let pf30 = |bore: f64, cup: f64| {
        FitQuestion::of_shell(find::<Shell>("pf30").unwrap())
            .unwrap()
            .hole_measured(exact(bore))
            .unwrap()
            .shaft(shaft(exact(cup)))
            .judge()
            .unwrap()
    };
    let bb90 = |bore: MemberOf, bearing: f64| {
        FitQuestion::of_shell(find::<Shell>("bb90").unwrap())
            .unwrap()
            .hole(bore)
            .shaft(shaft(exact(bearing)))
            .judge()
            .unwrap()
    };
    let ring = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
    hold(
        "bearings_and_cups_in_shells",
        &[
            case(
                "BB30 shell and bearing as printed",
                WITHIN,
                "bb30_workshop 41.960 to 41.985, bb30_bearing 0.004 to 0.040 mm: 41.960 and 42.000 are the ends of both",
                bb30(41.96, 42.0),
            ),
            case(
                "BB30 bearing a micrometre larger",
                OUT,
                "0.041 mm is over 0.040",
                bb30(41.96, 42.001),
            ),
            case(
                "BB30 press of 0.004 mm",
                WITHIN,
                "the lower end of bb30_bearing",
                bb30(41.985, 41.989),
            ),
            case(
                "BB30 press of 0.003 mm",
                OUT,
                "under 0.004 mm by a micrometre",
                bb30(41.985, 41.988),
            ),
            case(
                "BB30 shell a micrometre too large",
                OUT,
                "41.986 is over 41.985 by bb30_workshop; the press of 0.014 mm itself is within",
                bb30(41.986, 42.0),
            ),
            case(
                "BB30 shell a micrometre too small",
                OUT,
                "41.959 is under 41.960",
                bb30(41.959, 41.99),
            ),
            case(
                "BB30 shell and a bearing that nobody measured",
                OPEN,
                "shell 41.97, bearing 41.989 to 42.000 (ISO 492 Normal): 0.019 to 0.030 mm would do, and the bearing is not read",
                FitQuestion::new(Joint::DirectBearing)
                    .hole(
                        HoleMember::of_limits(
                            framegauge::measure::Limits::between(
                                mm(41.95),
                                mm(41.985),
                                framegauge::Grade::Published,
                            )
                            .unwrap(),
                        )
                        .unwrap(),
                    )
                    .shaft(ring.clone())
                    .judge()
                    .unwrap(),
            ),
            case(
                "a measured shell too large for any bearing of the class",
                OUT,
                "42.01 mm is larger than any bearing of 41.989 to 42.000",
                FitQuestion::new(Joint::DirectBearing)
                    .hole(hole(exact(42.01)))
                    .shaft(ring)
                    .judge()
                    .unwrap(),
            ),
            case(
                "PF30 shell as printed, cup presses everywhere",
                OPEN,
                "pf30_workshop 45.95 to 46.00; how much a cup may press nobody prints (shell_press_cup)",
                pf30(46.0, 46.1),
            ),
            case(
                "PF30 shell a micrometre too large",
                OUT,
                "46.001",
                pf30(46.001, 46.1),
            ),
            case(
                "PF30 cup in a gap",
                OUT,
                "a press fit with a gap (common practice), shell within",
                pf30(46.0, 45.99),
            ),
            case(
                "PF30, press or gap not told",
                OPEN,
                "0 +/- 0.006 mm",
                of(
                    Joint::PressShell,
                    read("46.00 +/- 0.004 mm"),
                    read("46.00 +/- 0.004 mm"),
                )
                .judge()
                .unwrap(),
            ),
            case(
                "BB90: a slip fit by design",
                OPEN,
                "bb90 is a slip fit: a gap is no fault, and no limit is published",
                bb90(hole(exact(37.05)), 37.0),
            ),
            case(
                "BB90: the bearing is larger than its seat",
                OUT,
                "37.01 in 37.00 does not slide",
                bb90(hole(exact(37.0)), 37.01),
            ),
            case(
                "BB90: larger at its tightest place only",
                OUT,
                "37.0 in 36.98 one way and 37.03 the other",
                bb90(uneven(36.98, 37.03), 37.0),
            ),
        ],
    );
    let error = FitQuestion::of_shell(find::<Shell>("bsc").unwrap()).unwrap_err();
    assert_eq!((error.kind(), error.field()), (ErrorKind::Missing, "shell"));
}

#[test]
fn other_joints() {
    let quill = |bore, quill| judge(Joint::Quill, bore, quill);
    hold(
        "other_joints",
        &[
            case(
                "quill with a gap",
                OPEN,
                "no window is published for a quill; a gap is no fault of a slip fit",
                quill(22.3, 22.2),
            ),
            case(
                "quill larger than the steerer",
                OUT,
                "22.25 in 22.2 does not slide in",
                quill(22.2, 22.25),
            ),
            case(
                "a part that is pressed by its maker's word",
                OPEN,
                "0.02 mm of press, and nobody prints how much is right",
                of(Joint::Other, exact(20.0), exact(20.02))
                    .hold(Hold::Press)
                    .judge()
                    .unwrap(),
            ),
            case(
                "a part that is screwed",
                OPEN,
                "what holds a screwed part is its thread, not this gap",
                of(Joint::Other, exact(20.0), exact(20.02))
                    .hold(Hold::Screw)
                    .judge()
                    .unwrap(),
            ),
        ],
    );
}

#[test]
fn painted_members() {
    let cup = |bore: f64| of(Joint::HeadCup, exact(bore), exact(34.0));
    let shell = |bore: f64| {
        FitQuestion::of_shell(find::<Shell>("pf30").unwrap())
            .unwrap()
            .hole_measured(exact(bore))
            .unwrap()
    };
    let painted = |ask: FitQuestion, member| ask.coated(member).judge().unwrap();
    hold(
        "painted_members",
        &[
            case(
                "painted bore, too much press",
                OPEN,
                "nothing is shown through paint (common practice)",
                painted(cup(33.8), Feature::Hole),
            ),
            case(
                "painted cup, a gap",
                OUT,
                "bare, the cup is smaller still: a looseness is shown through paint",
                painted(cup(34.2), Feature::Shaft),
            ),
            case(
                "painted bore, within",
                OPEN,
                "nothing is shown through paint, neither good nor bad",
                painted(cup(33.95), Feature::Hole),
            ),
            case(
                "painted cup in a bare shell that is too large",
                OUT,
                "the shell is read on metal: 46.05 is over 46.00 (pf30_workshop), whatever is on the cup",
                painted(shell(46.05).shaft(shaft(exact(46.1))), Feature::Shaft),
            ),
            case(
                "painted shell that reads too small",
                OPEN,
                "45.9 is under 45.95, and read on paint",
                painted(shell(45.9).shaft(shaft(exact(46.1))), Feature::Hole),
            ),
        ],
    );
}
