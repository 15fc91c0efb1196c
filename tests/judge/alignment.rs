//! Dropouts for their hub, and spindles that bind.

use framegauge::judge::{Dropouts, SpindleBinds};
use framegauge::standard::Tables;
use framegauge::{ErrorKind, deg, mm};

use super::{OPEN, OUT, case, exact, hold, read};

const PAIR: fn(f64) -> Dropouts = |spacing| Dropouts {
    spacing: exact(spacing),
    hub: mm(108.0),
    difference: None,
    over: None,
    angle: None,
};

#[test]
fn dropouts() {
    let because = "no limit is published for spacing or angle: nothing is shown";
    hold(
        "dropouts",
        &[
            case(
                "6 mm too wide",
                OPEN,
                because,
                PAIR(114.0).answer(Tables::ours()).unwrap(),
            ),
            case(
                "a micrometre too narrow",
                OPEN,
                because,
                PAIR(107.999).answer(Tables::ours()).unwrap(),
            ),
            case(
                "as wide as the hub",
                OPEN,
                because,
                PAIR(108.0).answer(Tables::ours()).unwrap(),
            ),
            case(
                "two readings and their distance",
                OPEN,
                "atan(1 / 40) = 1.43 degrees (geometry)",
                Dropouts {
                    difference: Some(exact(1.0)),
                    over: Some(mm(40.0)),
                    ..PAIR(114.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "read from the other end",
                OPEN,
                "the sign of the difference turns nothing: 1.43 degrees",
                Dropouts {
                    difference: Some(exact(-1.0)),
                    over: Some(mm(40.0)),
                    ..PAIR(114.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "somebody says 1.9 degrees",
                OPEN,
                "0.47 degrees from 1.43: within half a degree, as angles are said",
                Dropouts {
                    difference: Some(exact(1.0)),
                    over: Some(mm(40.0)),
                    angle: Some(deg(1.9)),
                    ..PAIR(114.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "somebody says 2 degrees",
                OPEN,
                "0.57 degrees from 1.43: another angle",
                Dropouts {
                    difference: Some(exact(1.0)),
                    over: Some(mm(40.0)),
                    angle: Some(deg(2.0)),
                    ..PAIR(114.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "somebody says 0.9 degrees",
                OPEN,
                "0.53 degrees the other way: another angle",
                Dropouts {
                    difference: Some(exact(1.0)),
                    over: Some(mm(40.0)),
                    angle: Some(deg(0.9)),
                    ..PAIR(114.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "a difference and a stated angle",
                OPEN,
                "1 / tan 2 degrees = 28.636 mm (geometry)",
                Dropouts {
                    difference: Some(exact(1.0)),
                    angle: Some(deg(2.0)),
                    ..PAIR(114.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "a difference alone",
                OPEN,
                "without a length or an angle it says nothing",
                Dropouts {
                    difference: Some(exact(1.0)),
                    ..PAIR(114.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
        ],
    );
    for (bad, kind, field) in [
        (
            Dropouts {
                hub: mm(0.0),
                ..PAIR(114.0)
            },
            ErrorKind::OutOfRange,
            "hub",
        ),
        (PAIR(-1.0), ErrorKind::OutOfRange, "spacing"),
        (
            Dropouts {
                difference: Some(exact(1.0)),
                over: Some(mm(-40.0)),
                ..PAIR(114.0)
            },
            ErrorKind::OutOfRange,
            "over",
        ),
        // An angle that is none is refused, whatever else is given.
        (
            Dropouts {
                angle: Some(deg(f64::NAN)),
                ..PAIR(114.0)
            },
            ErrorKind::NotFinite,
            "angle",
        ),
        (
            Dropouts {
                difference: Some(exact(1.0)),
                over: Some(mm(40.0)),
                angle: Some(deg(f64::NAN)),
                ..PAIR(114.0)
            },
            ErrorKind::NotFinite,
            "angle",
        ),
        (
            Dropouts {
                difference: Some(exact(1.0)),
                angle: Some(deg(-2.0)),
                ..PAIR(114.0)
            },
            ErrorKind::OutOfRange,
            "angle",
        ),
        (
            Dropouts {
                difference: Some(exact(1.0)),
                angle: Some(deg(182.0)),
                ..PAIR(114.0)
            },
            ErrorKind::OutOfRange,
            "angle",
        ),
    ] {
        let error = bad.answer(Tables::ours()).unwrap_err();
        assert_eq!((error.kind(), error.field()), (kind, field));
    }
}

#[test]
fn spindles_that_bind() {
    let none = SpindleBinds::default();
    let slides = SpindleBinds {
        spindle: Some(exact(29.98)),
        bearing_bore: Some(exact(30.0)),
        ..none.clone()
    };
    // The tilt takes 6 / 60 of the offset: 0.2 mm takes 0.020 mm, what there is; 0.201 mm takes 0.0201 mm.
    let tilted = |x: f64, y: f64| SpindleBinds {
        offset: vec![exact(x), exact(y)],
        apart: Some(mm(60.0)),
        ring_width: Some(mm(6.0)),
        ..slides.clone()
    };
    let larger = SpindleBinds {
        spindle: Some(exact(30.001)),
        ..slides.clone()
    };
    hold(
        "spindles_that_bind",
        &[
            case(
                "nothing known",
                OPEN,
                "three causes look alike",
                none.answer(Tables::ours()).unwrap(),
            ),
            case(
                "spindle slides in the bearings",
                OPEN,
                "0.02 mm of clearance; the other causes are open",
                slides.answer(Tables::ours()).unwrap(),
            ),
            case(
                "spindle as large as the bore",
                OPEN,
                "0 is the limit of a spindle that slides, and belongs to it",
                SpindleBinds {
                    spindle: Some(exact(30.0)),
                    ..slides.clone()
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "spindle a micrometre larger than the bore",
                OUT,
                "30.001 in 30.000 does not slide (arithmetic)",
                larger.answer(Tables::ours()).unwrap(),
            ),
            case(
                "bores off by as much as the clearance allows",
                OPEN,
                "6/60 x 0.2 = 0.020 mm, all of the clearance and no more",
                tilted(0.12, 0.16).answer(Tables::ours()).unwrap(),
            ),
            case(
                "bores off by a little more",
                OUT,
                "6/60 x root(0.12^2 + 0.18^2) = 0.0216 mm of 0.020 (geometry)",
                tilted(0.12, 0.18).answer(Tables::ours()).unwrap(),
            ),
            case(
                "bores off, and a spindle that is too large",
                OUT,
                "the larger spindle is named, not the bores, because it binds by itself",
                SpindleBinds {
                    spindle: Some(exact(30.001)),
                    ..tilted(0.12, 0.18)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "bores off, clearance not known",
                OPEN,
                "the tilt is known; whether the clearance takes it is not",
                SpindleBinds {
                    offset: vec![exact(0.3), exact(0.4)],
                    apart: Some(mm(60.0)),
                    ring_width: Some(mm(6.0)),
                    ..none.clone()
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "bores off, ring width not known",
                OPEN,
                "how much of the clearance it takes is not known",
                SpindleBinds {
                    ring_width: None,
                    ..tilted(0.3, 0.4)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "offset without the distance",
                OPEN,
                "a tilt needs a length",
                SpindleBinds {
                    apart: None,
                    ..tilted(0.3, 0.4)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "turns freely once the side load is off",
                OUT,
                "the side load binds it (common practice)",
                SpindleBinds {
                    binds_unloaded: Some(false),
                    ..none.clone()
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "binds without side load, bores in line and spindle small enough",
                OPEN,
                "all three causes are ruled out: the bearings are squeezed, perhaps",
                SpindleBinds {
                    binds_unloaded: Some(true),
                    ..tilted(0.0, 0.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "two causes at once",
                OUT,
                "spindle too large, and free once unloaded",
                SpindleBinds {
                    binds_unloaded: Some(false),
                    ..larger.clone()
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
            case(
                "offset read with doubt",
                OPEN,
                "0.5 +/- 0.02 mm takes 0.05 of 0.05 mm: even chances",
                SpindleBinds {
                    spindle: Some(exact(29.95)),
                    offset: vec![read("0.3 +/- 0.02 mm"), read("0.4 +/- 0.02 mm")],
                    ..tilted(0.0, 0.0)
                }
                .answer(Tables::ours())
                .unwrap(),
            ),
        ],
    );
    for (bad, field) in [
        (
            SpindleBinds {
                spindle: Some(exact(-30.0)),
                ..slides.clone()
            },
            "spindle",
        ),
        (
            SpindleBinds {
                bearing_bore: Some(exact(0.0)),
                ..slides.clone()
            },
            "bearing_bore",
        ),
        (
            SpindleBinds {
                apart: Some(mm(0.0)),
                ..tilted(0.3, 0.4)
            },
            "apart",
        ),
        (
            SpindleBinds {
                ring_width: Some(mm(0.0)),
                ..tilted(0.3, 0.4)
            },
            "ring_width",
        ),
    ] {
        let error = bad.answer(Tables::ours()).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, field)
        );
    }
}
