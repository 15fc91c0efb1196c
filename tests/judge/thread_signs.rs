//! Threads by gauges and by what was seen of them.

use super::asked::{ThreadSigns, gauged_thread};
use framegauge::judge::{Remedy, Verdict};
use framegauge::thread::{Gauging, Member};

use super::{OPEN, OUT, WITHIN, case, hold};

fn signs(loose: u8, forced: bool, jams: bool, by_hand: bool) -> ThreadSigns {
    ThreadSigns {
        loose_with_good_parts: loose,
        forced,
        jams,
        takes_part_by_hand: by_hand,
    }
}

#[test]
fn seen_and_gauged() {
    let hole = |signs: &ThreadSigns, gauging: Option<&Gauging>| -> Verdict {
        gauged_thread(Member::Internal, signs, gauging).unwrap()
    };
    let none = ThreadSigns::default();
    let all = Gauging {
        go_passes: Some(true),
        not_go_turns: Some(1.0),
        plain_go_passes: Some(true),
        plain_not_go_enters: Some(false),
    };
    let practice = "common practice of gauging (GO passes, NOT GO stops within two turns)";
    hold(
        "seen_and_gauged",
        &[
            case(
                "nothing seen, nothing gauged",
                OPEN,
                "nothing is known",
                hole(&none, None),
            ),
            case(
                "takes its part by hand",
                OPEN,
                "usable in practice, though no gauge has said so",
                hole(&signs(0, false, false, true), None),
            ),
            case(
                "loose with two good parts",
                OUT,
                "the thread is common to both (common practice)",
                hole(&signs(2, false, false, false), None),
            ),
            case(
                "loose with one part",
                OPEN,
                "the part may be the small one",
                hole(&signs(1, false, false, true), None),
            ),
            case(
                "forced, then taken by hand",
                OPEN,
                "cross-hatched threads take a part by hand and prove nothing",
                hole(&signs(0, true, false, true), None),
            ),
            case(
                "jams",
                OPEN,
                "dirt, paint, a crossed start and a wrong pitch feel alike",
                hole(&signs(0, false, true, false), None),
            ),
            case(
                "all four gauges agree",
                WITHIN,
                practice,
                hole(&none, Some(&all)),
            ),
            case(
                "all four gauges agree, and the old signs say nothing against them",
                WITHIN,
                "a gauge outweighs a feel (common practice)",
                hole(&signs(3, true, true, true), Some(&all)),
            ),
            case(
                "loose with one, and the gauges agree",
                WITHIN,
                "the part was the small one",
                hole(&signs(1, false, false, false), Some(&all)),
            ),
            case(
                "NOT GO enters two turns",
                OPEN,
                "two turns are allowed; the crest was not gauged",
                hole(
                    &none,
                    Some(&Gauging {
                        go_passes: Some(true),
                        not_go_turns: Some(2.0),
                        ..Gauging::default()
                    }),
                ),
            ),
            case(
                "NOT GO enters further",
                OUT,
                "beyond two turns: worn or over-tapped",
                hole(
                    &none,
                    Some(&Gauging {
                        go_passes: Some(true),
                        not_go_turns: Some(2.01),
                        ..Gauging::default()
                    }),
                ),
            ),
            case(
                "GO stops, NOT GO not tried, and it jams",
                OUT,
                "something stands in the way",
                hole(
                    &signs(0, false, true, false),
                    Some(&Gauging {
                        go_passes: Some(false),
                        ..Gauging::default()
                    }),
                ),
            ),
            case(
                "GO stops, NOT GO stops",
                OUT,
                "too little cut, or dirt: chasing may help",
                hole(
                    &none,
                    Some(&Gauging {
                        go_passes: Some(false),
                        not_go_turns: Some(0.0),
                        ..Gauging::default()
                    }),
                ),
            ),
            case(
                "only the plain GO was tried",
                OPEN,
                "three gauges are still to be run",
                hole(
                    &none,
                    Some(&Gauging {
                        plain_go_passes: Some(true),
                        ..Gauging::default()
                    }),
                ),
            ),
            case(
                "gauged and loose with two good parts",
                OUT,
                "the gauges are not complete, so the feel counts",
                hole(
                    &signs(2, false, false, false),
                    Some(&Gauging {
                        go_passes: Some(true),
                        ..Gauging::default()
                    }),
                ),
            ),
            case(
                "a part: plain GO passes and NOT GO stops",
                OPEN,
                "threaded gauges are still to be run",
                gauged_thread(
                    Member::External,
                    &none,
                    Some(&Gauging {
                        plain_go_passes: Some(true),
                        plain_not_go_enters: Some(false),
                        ..Gauging::default()
                    }),
                )
                .unwrap(),
            ),
        ],
    );
}

/// Metal that is gone does not come back: a worn hole is sleeved or retapped, a worn screw is replaced (common practice).
#[test]
fn a_worn_screw_is_replaced_and_a_worn_hole_is_not() {
    let of = |member, go, turns| {
        let found = Gauging {
            go_passes: Some(go),
            not_go_turns: Some(turns),
            ..Gauging::default()
        };
        gauged_thread(member, &ThreadSigns::default(), Some(&found)).unwrap()
    };
    let cures = |said: &Verdict| said.cures.iter().map(|c| c.by).collect::<Vec<_>>();
    let next = |said: &Verdict| said.next[0].to_string();
    let (hole, screw) = (Member::Internal, Member::External);
    assert_eq!(cures(&of(screw, true, 3.5)), [Remedy::OtherPart]);
    assert_eq!(cures(&of(hole, true, 3.5)), [Remedy::Sleeve, Remedy::Refer]);
    assert!(next(&of(hole, true, 3.5)).contains("retapping"));
    assert_eq!(
        cures(&of(screw, false, 0.5)),
        [Remedy::Clean, Remedy::Chase]
    );
    assert!(next(&of(screw, false, 0.5)).contains("die of the same pitch and hand"));
    assert!(next(&of(hole, false, 0.5)).contains("chaser of the same pitch and hand"));
}
