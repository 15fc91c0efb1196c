//! Calipers on their mounts, tabs on sliding dropouts, hubs in their dropouts.

use super::asked::hub_width;
use framegauge::judge::{CaliperPlace, Verdict, sliding_tab};
use framegauge::standard::{End, Tables};
use framegauge::{ErrorKind, deg, mm};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

fn place(native: f64, adapter: f64, rotor: f64, ends: Option<(End, End)>) -> Verdict {
    CaliperPlace {
        native: mm(native),
        adapter: Some(mm(adapter)),
        rotor: mm(rotor),
        made_for: ends.map(|e| e.0),
        on: ends.map(|e| e.1),
    }
    .answer(Tables::ours())
    .unwrap()
}

#[test]
fn calipers() {
    hold(
        "calipers",
        &[
            case(
                "mount and rotor agree",
                WITHIN,
                "160 = 160",
                place(160.0, 0.0, 160.0, None),
            ),
            case(
                "adapter turned to the wrong side",
                OUT,
                "160 + 20 for a rotor of 160: 10 mm too high on radius",
                place(160.0, 20.0, 160.0, None),
            ),
            case(
                "caliper too low",
                OUT,
                "160 for a rotor of 180: 10 mm too low on radius",
                place(160.0, 0.0, 180.0, None),
            ),
            case(
                "rear adapter on the front",
                WITHIN,
                "is_front_rear_step: a rear adapter gains 20 mm at the front",
                place(160.0, 0.0, 180.0, Some((End::Rear, End::Front))),
            ),
            case(
                "front adapter on the rear",
                WITHIN,
                "is_front_rear_step the other way: 180 - 20",
                place(180.0, 0.0, 160.0, Some((End::Front, End::Rear))),
            ),
            case(
                "front adapter on the front",
                WITHIN,
                "at its own end nothing is gained",
                place(160.0, 20.0, 180.0, Some((End::Front, End::Front))),
            ),
            case(
                "a rotor of 203 where 200 fits",
                OPEN,
                "1.5 mm on radius: whether the overlap will do is the caliper maker's to say",
                place(200.0, 0.0, 203.0, None),
            ),
            case(
                "a hair more",
                OUT,
                "1.501 mm on radius",
                place(200.0, 0.0, 203.002, None),
            ),
        ],
    );
    for (bad, field) in [
        (
            CaliperPlace {
                native: mm(0.0),
                adapter: None,
                rotor: mm(160.0),
                made_for: None,
                on: None,
            },
            "native",
        ),
        (
            CaliperPlace {
                native: mm(160.0),
                adapter: Some(mm(f64::NAN)),
                rotor: mm(160.0),
                made_for: None,
                on: None,
            },
            "adapter",
        ),
    ] {
        let error = bad.answer(Tables::ours()).unwrap_err();
        assert!(error.field().starts_with(field), "{error}");
    }
}

#[test]
fn tabs() {
    let tab = |dropout: f64, slot: f64, travel: f64| {
        sliding_tab(deg(dropout), deg(slot), mm(travel)).unwrap()
    };
    hold(
        "sliding_tabs",
        &[
            case(
                "slots parallel",
                WITHIN,
                "same direction: nothing changes against the axle (geometry)",
                tab(26.0, 26.0, 15.0),
            ),
            case(
                "slot of the tab level, dropout at 26 degrees",
                OUT,
                "2 x 15 mm x sin 13 degrees = 6.749 mm (geometry)",
                tab(26.0, 0.0, 15.0),
            ),
            case(
                "slots at right angles the other way",
                OUT,
                "2 x 10 mm x sin 45 degrees = 14.142 mm (geometry)",
                tab(0.0, 90.0, 10.0),
            ),
        ],
    );
    // 2 x 1000 mm x sin(half the angle): 5.7e-5 degrees stray 0.000995 mm, 5.8e-5 stray 0.001012 mm (geometry).
    assert_eq!(tab(0.0, 5.7e-5, 1000.0).outcome, WITHIN);
    assert_eq!(tab(0.0, 5.8e-5, 1000.0).outcome, OUT);
    let error = sliding_tab(deg(0.0), deg(f64::INFINITY), mm(1.0)).unwrap_err();
    assert_eq!(
        (error.kind(), error.field()),
        (ErrorKind::NotFinite, "tab slot")
    );
}

#[test]
fn hubs() {
    let hub = |reading| hub_width("ta_12x142", reading).unwrap();
    hold(
        "hubs",
        &[
            case(
                "not read yet",
                OPEN,
                "142 mm over the end caps (ta_12x142)",
                hub(None),
            ),
            case("as printed", WITHIN, "142 mm", hub(Some(&exact(142.0)))),
            case(
                "off by no more than the reading is unsure",
                WITHIN,
                "0.1 mm at +/- 0.1 mm: not shown to differ",
                hub(Some(&read("141.9 +/- 0.1 mm"))),
            ),
            case(
                "a little off",
                OPEN,
                "0.2 mm at +/- 0.1 mm differs, less than a cap, and no tolerance is published",
                hub(Some(&read("141.8 +/- 0.1 mm"))),
            ),
            case(
                "a millimetre short",
                OPEN,
                "1 mm is where a cap or spacer would be missing, and is not yet over it (common practice)",
                hub(Some(&exact(141.0))),
            ),
            case(
                "a millimetre and a micrometre short",
                OUT,
                "a cap or spacer is missing",
                hub(Some(&exact(140.999))),
            ),
            case(
                "over by more than a millimetre",
                OUT,
                "a cap or spacer too many or too wide",
                hub(Some(&read("143.5 +/- 0.1 mm"))),
            ),
        ],
    );
    assert_eq!(
        hub_width("ta_12x142", Some(&exact(0.0)))
            .unwrap_err()
            .kind(),
        ErrorKind::OutOfRange
    );
}
