//! Two members as measured, joint by joint, on the limits of the published windows and a micrometre beside.

use super::asked::{FitQuestion, HoleMember, ShaftMember};
use framegauge::fit::SizeReading;
use framegauge::judge::Verdict;
use framegauge::judge::{MemberOf, windows_of};
use framegauge::measure::Reading;
use framegauge::mm;
use framegauge::standard::{Joint, Tables};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

pub fn hole(reading: Reading) -> MemberOf {
    HoleMember::of_reading(reading).unwrap()
}

pub fn shaft(reading: Reading) -> MemberOf {
    ShaftMember::of_reading(reading).unwrap()
}

pub fn of(joint: Joint, around: Reading, inside: Reading) -> FitQuestion {
    FitQuestion::new(joint)
        .hole(hole(around))
        .shaft(shaft(inside))
}

/// A hole of two sizes, as an oval or tapered one is.
pub fn uneven(small: f64, large: f64) -> MemberOf {
    HoleMember::measured_only(&[
        SizeReading::new(exact(small)),
        SizeReading::new(exact(large)),
    ])
    .unwrap()
}

pub fn judge(joint: Joint, around: f64, inside: f64) -> Verdict {
    of(joint, exact(around), exact(inside)).judge().unwrap()
}

#[test]
fn cups_in_head_tubes() {
    let cup = |bore| judge(Joint::HeadCup, bore, 34.0);
    let read_cup = |bore: &str, u: &str| {
        of(
            Joint::HeadCup,
            read(&format!("{bore} +/- {u} mm")),
            read(&format!("34.00 +/- {u} mm")),
        )
        .judge()
        .unwrap()
    };
    hold(
        "cups_in_head_tubes",
        &[
            case(
                "0.10 mm of press",
                WITHIN,
                "cup_at_most_0_10, a maker's page, decides: 0.1 mm belongs to it",
                cup(33.9),
            ),
            case(
                "a micrometre more",
                OUT,
                "0.101 mm is over the maker's 0.1 mm; two encyclopaedia windows beside would allow it, so they disagree",
                cup(33.899),
            ),
            case(
                "no press and no gap",
                WITHIN,
                "0 is the end of a press fit, and belongs to it",
                cup(34.0),
            ),
            case(
                "a micrometre of gap",
                OUT,
                "a press fit with a gap (common practice)",
                cup(34.001),
            ),
            case(
                "by caliper",
                OPEN,
                "0.07 +/- 0.042 mm: 1.4 standard uncertainties from 0.1 mm; a caliper cannot settle it",
                read_cup("33.93", "0.03"),
            ),
            case(
                "by micrometer",
                WITHIN,
                "0.05 +/- 0.006 mm is clear of 0 and 0.1 mm",
                read_cup("33.95", "0.004"),
            ),
            case(
                "by a tool of just 8 micrometres",
                WITHIN,
                "0.05 +/- 0.011 mm; fine enough not to ask for a finer one",
                read_cup("33.95", "0.008"),
            ),
            case(
                "by a tool a little coarser",
                WITHIN,
                "0.05 +/- 0.013 mm; the shape is open still, and is asked for with a finer tool",
                read_cup("33.95", "0.009"),
            ),
            case(
                "44 mm: a rule is quoted, not applied",
                WITHIN,
                "cup_per_inch_rule_44 prints one figure and stands beside",
                judge(Joint::HeadCup, 43.95, 44.0),
            ),
            case(
                "an oval bore, tight one way and loose the other",
                OUT,
                "0.1 mm of press across, 0.05 mm of gap along: one place outside is enough",
                FitQuestion::new(Joint::HeadCup)
                    .hole(uneven(33.9, 34.05))
                    .shaft(shaft(exact(34.0)))
                    .judge()
                    .unwrap(),
            ),
        ],
    );
}

#[test]
fn races_on_seats() {
    let race = |bore| judge(Joint::CrownRace, bore, 30.0);
    hold(
        "races_on_seats",
        &[
            case(
                "as little as any opinion has",
                WITHIN,
                "race_0_025_0_05 begins at 0.025 mm; no maker prints a window, so the span of opinions is what there is",
                race(29.975),
            ),
            case(
                "a micrometre less",
                OUT,
                "0.024 mm is under every opinion",
                race(29.976),
            ),
            case(
                "as much as any opinion has",
                WITHIN,
                "race_0_10_0_20 ends at 0.20 mm",
                race(29.8),
            ),
            case(
                "a micrometre more",
                OUT,
                "0.201 mm is over every opinion",
                race(29.799),
            ),
            case(
                "between two opinions",
                WITHIN,
                "0.07 mm lies in neither window but within their span; that they disagree is said",
                race(29.93),
            ),
            case(
                "a gap",
                OUT,
                "a press fit with a gap (common practice)",
                race(30.01),
            ),
            case(
                "a race that is loose at one place",
                OUT,
                "0.08 mm of press and 0.02 mm: under 0.025 mm by 0.005 mm there",
                FitQuestion::new(Joint::CrownRace)
                    .hole(uneven(29.92, 29.98))
                    .shaft(shaft(exact(30.0)))
                    .judge()
                    .unwrap(),
            ),
        ],
    );
}

#[test]
fn posts_in_tubes() {
    let post = |bore, post| {
        of(Joint::Seatpost, exact(bore), exact(post))
            .sold_as(mm(27.2))
            .judge()
            .unwrap()
    };
    hold(
        "posts_in_tubes",
        &[
            case(
                "0.30 mm of gap",
                OPEN,
                "seatpost_0_20_0_30 ends there, seatpost_within_0_2 before: they disagree, and no maker prints one",
                post(27.3, 27.0),
            ),
            case(
                "a micrometre more",
                OUT,
                "0.301 mm is over every opinion: shim or a larger post",
                post(27.301, 27.0),
            ),
            case(
                "no gap",
                OPEN,
                "seatpost_h7_27_2 begins at 0, seatpost_0_20_0_30 wants 0.20 mm: they disagree",
                post(27.2, 27.2),
            ),
            case(
                "a micrometre too tight",
                OUT,
                "a post larger than its hole does not slide in",
                post(27.199, 27.2),
            ),
            case(
                "the hole off by more than 0.1 mm",
                OUT,
                "27.55 is 0.35 mm over 27.2; the post is as sold",
                post(27.55, 27.2),
            ),
            case(
                "the post off by more than 0.1 mm",
                OUT,
                "26.8 is 0.4 mm under 27.2; the hole is as sold",
                post(27.2, 26.8),
            ),
            case(
                "both off by more than 0.1 mm",
                OUT,
                "27.4 and 26.9 against 27.2",
                post(27.4, 26.9),
            ),
            case(
                "off by exactly 0.1 mm",
                OPEN,
                "half a step of the sizes: not yet off; 0.2 mm of gap, on which the windows disagree",
                post(27.3, 27.1),
            ),
            case(
                "a larger post exists that fits",
                OUT,
                "27.4 is the largest listed size not over 27.4",
                judge(Joint::Seatpost, 27.4, 27.0),
            ),
            case(
                "a micrometre under that size",
                OUT,
                "27.2 is the largest listed size not over 27.399",
                judge(Joint::Seatpost, 27.399, 27.0),
            ),
            case(
                "the present post is the largest that fits",
                OUT,
                "no listed size lies between it and the hole, so only a shim is left",
                of(Joint::Seatpost, exact(21.0), exact(20.6))
                    .judge()
                    .unwrap(),
            ),
            case(
                "another size has two opinions",
                WITHIN,
                "at 31.6 mm seatpost_h7_27_2 does not speak; 0.2 mm",
                judge(Joint::Seatpost, 31.8, 31.6),
            ),
            case(
                "by caliper, too close",
                OPEN,
                "0.30 +/- 0.04 mm on the limit: even chances",
                of(
                    Joint::Seatpost,
                    read("27.30 +/- 0.03 mm"),
                    read("27.00 +/- 0.03 mm"),
                )
                .judge()
                .unwrap(),
            ),
        ],
    );
}

#[test]
fn bearings_in_head_tubes() {
    let seat = |bore| judge(Joint::IntegratedBearing, bore, 41.0);
    hold(
        "bearings_in_head_tubes",
        &[
            case(
                "IS41, 0.10 mm of gap",
                WITHIN,
                "integrated_is41: 0.10 mm belongs to it",
                seat(41.1),
            ),
            case("a micrometre less", OUT, "0.099 mm", seat(41.099)),
            case(
                "IS41, 0.20 mm of gap",
                WITHIN,
                "integrated_is41 ends there",
                seat(41.2),
            ),
            case("a micrometre more", OUT, "0.201 mm", seat(41.201)),
            case(
                "a bearing that would have to be pressed",
                OUT,
                "an integrated bearing is a slip fit: press is an error",
                seat(40.9),
            ),
            case(
                "IS42: one figure without limits is quoted only",
                OPEN,
                "integrated_is42 prints 0.15 mm and no limits",
                judge(Joint::IntegratedBearing, 41.95, 41.8),
            ),
        ],
    );
}

/// Which sizes a window speaks of: closer than half a millimetre to the size that it was printed for (0.3 mm for seats of
/// integrated bearings, which are 0.85 mm apart); general machining classes speak of none.
#[test]
fn windows_speak_of_their_size() {
    let count = |joint: Joint, near: f64| windows_of(Tables::ours(), joint, mm(near)).count();
    for (joint, near, with, without) in [
        (Joint::DirectBearing, 42.0, 1, 0),
        (Joint::HeadCup, 44.0, 4, 3),
        (Joint::Seatpost, 27.2, 4, 3),
    ] {
        assert_eq!(count(joint, near), with, "{joint} at {near}");
        assert_eq!(count(joint, near + 0.49), with, "{joint} a little over");
        assert_eq!(count(joint, near - 0.49), with, "{joint} a little under");
        assert_eq!(count(joint, near + 0.51), without, "{joint} over");
        assert_eq!(count(joint, near - 0.51), without, "{joint} under");
    }
    for (near, codes) in [
        (41.1, &["integrated_is41"][..]),
        (41.39, &["integrated_is41"]),
        (41.41, &[]),
        (40.79, &[]),
        (41.64, &[]),
        (41.66, &["integrated_is42"]),
        (42.24, &["integrated_is42"]),
        (42.26, &[]),
    ] {
        let found: Vec<_> = windows_of(Tables::ours(), Joint::IntegratedBearing, mm(near))
            .map(|w| w.code.as_ref())
            .collect();
        assert_eq!(found, codes, "at {near}");
    }
    assert_eq!(count(Joint::PressShell, 41.0), 1);
    assert_eq!(
        (count(Joint::Quill, 22.2), count(Joint::Other, 22.2)),
        (0, 0)
    );
}
