//! Too few probes, a face without any error, angles that rounding lifts to a full turn.

use super::*;

/// Three points lie on one plane whatever the face is like (geometry): they cannot show it flat.
#[test]
fn three_probes_show_nothing_of_flatness() {
    let flat = goal().flat_within(mm(0.03), Grade::Shop).unwrap();
    let asked = |k: u32| {
        survey(ring_of(k, 18.5, |t| 0.004 * t.cos()))
            .decide_facing(&flat, &allow("width", 0.4), DecisionRule::default())
            .unwrap()
    };
    let three = asked(3);
    let judged = three.flat.unwrap();
    assert_eq!(
        (judged.outcome, judged.probability, judged.margin),
        (Outcome::Undecided, None, None)
    );
    assert_eq!(three.square.outcome, Outcome::ConformityShown);
    assert!(
        three.words.contains("5 probes all round"),
        "{}",
        three.words
    );
    let four = asked(4);
    assert_eq!(four.flat.unwrap().outcome, Outcome::ConformityShown);
    assert_eq!(four.step, FacingStep::Done);
}

/// An even count makes a seat look as if it rocked, so the next better count is never even.
#[test]
fn the_next_better_count_is_odd() {
    let better = |k: u32| sampling(k).unwrap().better;
    assert_eq!(
        [3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map(better),
        [5, 5, 7, 7, 9, 9, 11, 11, 13, 13]
    );
    assert!((3..1000).all(|k| better(k) > k && better(k) % 2 == 1));
}

#[test]
fn a_full_turn_is_the_top_again() {
    for (angle, words) in [
        (0.0, "0 deg (12:00)"),
        (359.4, "359 deg (12:00)"),
        (359.5, "0 deg (12:00)"),
        (359.999_999_9, "0 deg (12:00)"),
    ] {
        assert_eq!(clock(angle).to_string(), words);
    }
    assert_eq!(clock(359.999_999_9).degrees(), 0.0);
    assert_eq!(clock(359.999_9).degrees(), 359.999_9);
}

#[cfg(feature = "serde")]
#[test]
fn shares_and_angles_are_written_settled() {
    let tilted = survey(ring_of(7, 18.5, |t| 0.06 * (t - 0.5).cos()));
    let step = step(&tilted, &allow("width", 0.08));
    let FacingStep::CannotCleanUp {
        share_reachable, ..
    } = &step
    else {
        panic!("{step:?}")
    };
    let written = serde_json::to_value(&step).unwrap()["share_reachable"]
        .as_f64()
        .unwrap();
    assert_eq!(written, (share_reachable * 1e6).round() / 1e6);
    let at = |angle: f64| serde_json::to_value(clock(angle)).unwrap();
    assert_eq!(at(359.999_9)["clockwise_from_top_deg"], 0.0);
    assert_eq!(at(359.999)["clockwise_from_top_deg"], 359.999);
}

/// A plane that holds every point touches them: three are named, as its contacts promise.
#[test]
fn a_flat_face_is_touched() {
    let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    let level = [
        p(3.0, 1.0, 0.2),
        p(-2.0, 4.0, 0.2),
        p(-1.0, -5.0, 0.2),
        p(6.0, 2.0, 0.2),
    ];
    let tangent = least_squares_tangent(&level).unwrap();
    assert_eq!(tangent.contacts().collect::<Vec<_>>(), [0, 1, 2]);
    assert!((to_mm(tangent.plane().height()) - 0.2).abs() < 1e-12);
}
