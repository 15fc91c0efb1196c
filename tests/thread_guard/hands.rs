//! Gauges in every combination, chasing, hands and turns.

use framegauge::thread::*;
use strum::IntoEnumIterator;

use super::{Page, answered, refusal};

#[test]
fn gauges() {
    let mut page = Page::new();
    let tried = [None, Some(true), Some(false)];
    let shown = |tried: Option<bool>| match tried {
        None => '-',
        Some(true) => 'y',
        Some(false) => 'n',
    };
    page.title("GO passes, turns of NOT GO, plain GO passes, plain NOT GO enters");
    for go_passes in tried {
        for not_go_turns in [None, Some(0.0), Some(2.0), Some(2.001)] {
            for plain_go_passes in tried {
                for plain_not_go_enters in tried {
                    let found = Gauging {
                        go_passes,
                        not_go_turns,
                        plain_go_passes,
                        plain_not_go_enters,
                    };
                    let said = judge_gauging(&found).map(|verdict| {
                        format!("{} | chase {}", verdict.outcome, verdict.chasing_may_help)
                    });
                    let asked = format!(
                        "{} {} {} {}",
                        shown(go_passes),
                        not_go_turns.map_or("-".into(), |t| t.to_string()),
                        shown(plain_go_passes),
                        shown(plain_not_go_enters)
                    );
                    answered(&mut page, &asked, said);
                }
            }
        }
    }
    page.title("turns that are none");
    for turns in [f64::NAN, f64::NEG_INFINITY, -0.1, 200.1] {
        let found = Gauging {
            not_go_turns: Some(turns),
            ..Gauging::default()
        };
        page.line(&refusal(&judge_gauging(&found).unwrap_err()));
    }
    let many = Gauging {
        not_go_turns: Some(200.0),
        ..Gauging::default()
    };
    assert!(judge_gauging(&many).is_ok());
    for gauge in Gauge::iter() {
        for member in [Member::Internal, Member::External] {
            let means = gauge.meaning(member);
            for words in [means.shows, means.silent_on, means.used] {
                assert!(!words.is_empty(), "{gauge} {member}");
            }
            // GO guards the most material, NOT GO the least: the smallest hole and the largest screw, and the other way round.
            let go = matches!(gauge, Gauge::Go | Gauge::PlainGo);
            let least = go == (member == Member::Internal);
            assert_eq!(means.shows.contains("not below its minimum"), least);
            assert_eq!(means.shows.contains("not above its maximum"), !least);
        }
    }
    let chasing = chasing();
    for words in [
        chasing.restores,
        chasing.never_restores,
        chasing.before,
        chasing.check_after,
    ] {
        assert!(!words.is_empty() && words.iter().all(|w| !w.is_empty()));
    }
    page.check("thread_guard/gauges.txt");
}

#[test]
fn hands() {
    let mut page = Page::new();
    page.title("patterns, and which way to turn");
    for pattern in hand_patterns() {
        page.line(&format!(
            "{} ({}): {}",
            pattern.code,
            pattern.aliases.join(", "),
            pattern.name
        ));
        assert_eq!(
            hand_pattern(&format!(" {} ", pattern.code.to_uppercase())).unwrap(),
            pattern
        );
        for alias in pattern.aliases {
            assert_eq!(
                hand_pattern(&alias.to_uppercase()).unwrap().code,
                pattern.code
            );
        }
        for side in Side::iter() {
            let said = turning(pattern, side).map(|turning| {
                assert_eq!(pattern.hand(side), Some(turning.hand));
                let told = turning.to_string();
                for part in [
                    turning.hand.words().into(),
                    format!("tighten {}", turning.tighten.words()),
                    format!("loosen {}", turning.loosen.words()),
                ] {
                    assert!(told.contains(&*part), "{told}: {part}");
                }
                format!(
                    "{} | {} | {} | {} | {} | {}",
                    turning.hand,
                    turning.tighten,
                    turning.loosen,
                    turning.reason,
                    turning.evidence.grade(),
                    turning.disputed
                )
            });
            answered(&mut page, &format!("  {side}"), said);
        }
    }
    for reason in [
        Reason::PrecessionTightens,
        Reason::TorqueOnly,
        Reason::LittleTurningLoad,
        Reason::DriveTightens,
        Reason::LocksAnother,
    ] {
        assert!(!reason.words().is_empty(), "{reason}");
    }
    page.title("words");
    for hand in Hand::iter() {
        page.line(&format!(
            "{hand}: {}, tighten {}, loosen {}, not {}",
            hand.words(),
            hand.tighten().words(),
            hand.loosen(),
            !hand
        ));
    }
    for side in Side::iter() {
        page.line(&format!("{side}: {}, not {}", side.words(), !side));
    }
    for turn in Turn::iter() {
        page.line(&format!("{turn}: {}, not {}", turn.words(), !turn));
    }
    for form in ThreadForm::iter() {
        let angle = form
            .included_angle()
            .map_or("-".into(), |a| format!("{:.3}", a.value.to_degrees()));
        page.line(&format!("{form}: {}, {angle}", form.words()));
    }
    for mark in [
        "L", "LH", "l", "lh", "left", "G", "R", "RH", "r", "rh", "right", "D", " LH ",
    ] {
        page.line(&format!(
            "mark `{mark}`: {}",
            Hand::from_mark(mark).unwrap()
        ));
    }
    page.check("thread_guard/hands.txt");
}
