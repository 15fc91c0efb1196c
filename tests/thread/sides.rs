//! Hands, sides and turns; telling threads apart; mismatches.

use framegauge::measure::Reading;
use framegauge::thread::{
    Designation, Hand, Mates, Member, PitchDrift, Reason, ShellThreads, Side, SideFinding,
    ThreadForm, ThreadSize, Turn, caliper_shows, candidates_by_bore, hand_pattern, hand_patterns,
    mismatch, turning,
};
use framegauge::{Grade, Pitch, mm, settled_mm, to_mm};
use proptest::prelude::*;

use super::{cell, published};

/// Hands as the published pages agree: English left on the drive side, Italian and French right on both, Swiss left on
/// the drive side, pedals right on the rider's right, lockring left.
#[test]
fn hands_of_every_pattern() {
    use Hand::{Left, Right};
    for (code, drive, non_drive) in [
        ("bsc", Some(Left), Some(Right)),
        ("iso_6696", Some(Left), Some(Right)),
        ("swiss", Some(Left), Some(Right)),
        ("raleigh_26", Some(Left), Some(Right)),
        ("isis_overdrive", Some(Left), Some(Right)),
        ("t47", Some(Left), Some(Right)),
        ("italian", Some(Right), Some(Right)),
        ("french", Some(Right), Some(Right)),
        ("pedal", Some(Right), Some(Left)),
        ("freewheel", Some(Right), None),
        ("track_lockring", Some(Left), None),
    ] {
        let pattern = hand_pattern(code).unwrap();
        let hands = (pattern.hand(Side::Drive), pattern.hand(Side::NonDrive));
        assert_eq!(hands, (drive, non_drive), "{code}");
        for side in [Side::Drive, Side::NonDrive] {
            let Some(hand) = pattern.hand(side) else {
                assert!(turning(pattern, side).is_err());
                continue;
            };
            let found = turning(pattern, side).unwrap();
            assert_eq!(found.tighten == Turn::Clockwise, hand == Right, "{code}");
            assert_eq!(found.loosen, !found.tighten);
            assert!(!found.reason.words().is_empty());
        }
    }
    // What rests on one owner's note or on memory says so.
    let t47 = hand_pattern("t47").unwrap();
    assert_eq!(t47.non_drive.unwrap().evidence.grade(), Grade::Memory);
    assert!(t47.drive.unwrap().evidence.note().contains("confirm"));
    assert!(
        !hand_pattern("swiss")
            .unwrap()
            .drive
            .unwrap()
            .disputed
            .is_empty()
    );
    for pattern in hand_patterns() {
        for found in [pattern.drive, pattern.non_drive].into_iter().flatten() {
            let evidence = found.evidence;
            assert_eq!(
                evidence.sources().is_empty(),
                evidence.grade() == Grade::Memory
            );
        }
    }
}

/// Precession locks the English drive-side cup and both pedals; it works against Italian and French drive-side cups.
#[test]
fn reasons() {
    let reason =
        |code: &str, side: Side| turning(hand_pattern(code).unwrap(), side).unwrap().reason;
    assert_eq!(reason("bsc", Side::Drive), Reason::PrecessionTightens);
    assert_eq!(reason("bsc", Side::NonDrive), Reason::LittleTurningLoad);
    assert_eq!(reason("french", Side::Drive), Reason::TorqueOnly);
    assert_eq!(reason("pedal", Side::Drive), Reason::PrecessionTightens);
    assert_eq!(reason("pedal", Side::NonDrive), Reason::PrecessionTightens);
    assert_eq!(reason("freewheel", Side::Drive), Reason::DriveTightens);
    assert_eq!(reason("track_lockring", Side::Drive), Reason::LocksAnother);
}

#[test]
fn a_mark_on_a_tap_is_a_hand() {
    assert_eq!(Hand::from_mark("L").unwrap(), Hand::Left);
    // The tap marked L of an English set goes into the drive side.
    assert_eq!(
        hand_pattern("bsc").unwrap().hand(Side::Drive),
        Some(Hand::Left)
    );
    assert_eq!(Hand::from_mark("G").unwrap(), Hand::Left);
    assert!(Hand::from_mark("").is_err());
}

#[test]
fn shells_are_judged_per_side() {
    let bsc: ThreadSize = "1.370 in x 24 tpi BSC".parse().unwrap();
    let english = ShellThreads::of_pattern(bsc, hand_pattern("bsc").unwrap());
    let same = english.against(&english);
    assert!(matches!(same.drive, SideFinding::AsPattern(_)) && !same.swapped);

    let back_to_front = english.back_to_front().against(&english);
    assert!(back_to_front.swapped);
    assert!(matches!(back_to_front.drive, SideFinding::OtherHand(_)));

    let hybrid = english.retapped(Side::Drive, "36 mm x 24 tpi".parse().unwrap());
    assert!(hybrid.is_hybrid() && !english.is_hybrid());
    let judged = hybrid.against(&english);
    assert!(
        matches!(judged.drive, SideFinding::OtherThread(m) if m.grounds.hand && m.grounds.diameter)
    );
    assert!(matches!(judged.non_drive, SideFinding::AsPattern(_)));
    assert!(!judged.swapped);

    let half = ShellThreads {
        drive: None,
        ..english
    };
    assert!(half.is_hybrid());
    assert_eq!(half.against(&english).drive, SideFinding::NoThread);
    // A right-hand-both shell turned round is still right: nothing is swapped.
    let italian = ShellThreads::of_pattern(
        "36 mm x 24 tpi".parse().unwrap(),
        hand_pattern("italian").unwrap(),
    );
    assert!(!italian.back_to_front().against(&italian).swapped);
}

/// Drift and turns of eleven pairs, exact to the digits printed.
#[test]
fn pitch_drift_is_exact() {
    for row in published("pitch_drift.csv") {
        let pitch = |column: &str| row[column].parse::<Pitch>().unwrap();
        let drift = PitchDrift::between(pitch("pitch_a"), pitch("pitch_b"));
        let close = |ours: f64, column: &str, half_digit: f64| {
            let printed = cell(&row, column).unwrap();
            assert!(
                (ours - printed).abs() <= half_digit + 1e-9,
                "{row:?} {column}: {ours}"
            );
        };
        close(to_mm(drift.per_turn), "per_turn_mm", 5e-7);
        close(
            drift.turns_until_visible(mm(0.1)).unwrap().unwrap(),
            "turns_to_0_10_mm",
            0.051,
        );
        close(
            drift.turns_until_visible(mm(0.15)).unwrap().unwrap(),
            "turns_to_0_15_mm",
            0.051,
        );
        close(
            drift.turns_to_half_pitch().unwrap(),
            "turns_to_half_pitch",
            0.051,
        );
        close(
            to_mm(drift.taken_per_turn(ThreadForm::IsoMetric)),
            "taken_per_turn_mm",
            5.1e-5,
        );
        close(
            drift
                .turns_until_binding(mm(0.15), ThreadForm::IsoMetric)
                .unwrap()
                .unwrap(),
            "turns_for_0_15_mm_clearance",
            0.0051,
        );
    }
    let same = PitchDrift::between(Pitch::tpi(20).unwrap(), Pitch::millimetres(1.27).unwrap());
    assert!(same.is_none() && same.turns_to_half_pitch().is_none());
    assert_eq!(same.threads_under_leaf(mm(0.15)).unwrap(), None);
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(same.turns_until_visible(mm(bad)).is_err());
    }
    assert!(same.turns_until_binding(mm(-0.1), ThreadForm::Bsc).is_err());
}

/// Minor diameters of M12 by ISO 965-1: 10.647 to 10.912 (1.25), 10.376 to 10.676 (1.5), 10.106 to 10.441 mm (1.75).
#[test]
fn bores_of_neighbouring_pitches_overlap() {
    let sizes: Vec<ThreadSize> = ["M12x1", "M12x1.25", "M12x1.5", "M12x1.75"]
        .iter()
        .map(|s| s.parse().unwrap())
        .collect();
    let possible = |bore: f64| {
        let reading = Reading::expanded(mm(bore), mm(0.01)).unwrap();
        let found = candidates_by_bore(&sizes, &reading).unwrap();
        assert_eq!(found.ambiguous, found.possible.len() > 1);
        found
            .possible
            .iter()
            .map(ToString::to_string)
            .collect::<Vec<_>>()
            .join(" ")
    };
    assert_eq!(possible(10.66), "M12x1.25 M12x1.5");
    assert_eq!(possible(10.41), "M12x1.5 M12x1.75");
    assert_eq!(possible(11.0), "M12x1");
    assert_eq!(possible(9.5), "");
    assert!(candidates_by_bore(&[], &Reading::exact(mm(10.0)).unwrap()).is_err());
}

/// A male thread near 1 mm pitch reads about 0.2 mm under its name (two published pages).
#[test]
fn crests_read_low() {
    for size in [
        "M35x1",
        "1.375 in x 24 tpi ISO",
        "1.370 in x 24 tpi BSC",
        "36 mm x 24 tpi",
    ] {
        let size: ThreadSize = size.parse().unwrap();
        let reads = caliper_shows(&size, Member::External).unwrap().reads;
        let below = to_mm(size.major() - reads.lower().known().unwrap());
        assert!((below - 0.2).abs() < 0.02, "{size}: {below}");
    }
    assert!(caliper_shows(&"36 mm x 24 tpi".parse().unwrap(), Member::Internal).is_err());
}

#[test]
fn known_mismatches() {
    let of = |a: &str, b: &str| mismatch(&a.parse().unwrap(), &b.parse().unwrap());
    let interchange = of("1.370 in x 24 tpi BSC", "1.375 in x 24 tpi ISO");
    assert_eq!(interchange.mates, Mates::Yes);
    assert!((to_mm(interchange.apart_min) - 0.0034).abs() < 5e-4);
    // An English cup in a French shell: slack 0.116 mm, bound after about one turn.
    let forced = of("1.370 in x 24 tpi BSC LH", "M35x1");
    assert!(forced.grounds.pitch && forced.grounds.diameter && forced.grounds.hand);
    assert!((to_mm(forced.apart_max) - 0.116).abs() < 5e-4);
    assert_eq!(forced.wider.unwrap().to_string(), "M35x1");
    // The same nominal in two forms, 0.15 mm apart.
    let pedal = of("9/16 in x 20 tpi BSC", "9/16 in x 20 tpi UN");
    assert!(pedal.grounds.diameter && !pedal.grounds.pitch && !pedal.grounds.form);
    assert!(of("1/4-20 UN", "1/4-20 BSW").grounds.form);
    // Unknown form: a span of 0.12 mm decides nothing near, but everything far.
    assert_eq!(
        of("1 3/8 in x 26 tpi unknown form", "1 3/8 in x 26 tpi BSC").mates,
        Mates::CannotTell
    );
    assert_eq!(
        of("36 mm x 24 tpi", "1.370 in x 24 tpi BSC").mates,
        Mates::No
    );
    assert_eq!(of("M10x1", "M10x1 LH").grounds.to_string(), "hand");
    assert_eq!(of("M10x1", "M10x1").mates, Mates::Yes);
    assert!(of("10 mm x 26 tpi", "M10x1").grounds.pitch);
}

fn some_thread() -> impl Strategy<Value = Designation> {
    let names = vec![
        "M5x0.8",
        "M9x1",
        "M10x1",
        "M10x1.25",
        "M12x1",
        "M12x1.5",
        "M14x1.25",
        "M35x1",
        "M47x1",
        "1.370-24 BSC",
        "1.375-24 ISO",
        "36 mm x 24 tpi",
        "9/16-20 BSC",
        "9/16-20 UN",
        "3/8-26 BSC",
        "1/4-20 BSW",
        "1/4-20 UN",
        "1.29 in x 24 tpi unknown form",
        "10 mm x 26 tpi",
    ];
    (prop::sample::select(names), any::<bool>()).prop_map(|(name, left)| {
        let read: Designation = name.parse().unwrap();
        if left {
            read.with_hand(Hand::Left)
        } else {
            read
        }
    })
}

proptest! {
    #[test]
    fn mismatch_is_symmetric(a in some_thread(), b in some_thread()) {
        let (one, two) = (mismatch(&a, &b), mismatch(&b, &a));
        prop_assert_eq!(one, two);
        prop_assert_eq!(one.to_string(), two.to_string());
        prop_assert_eq!(one.grounds.any(), one.mates == Mates::No);
        let own = mismatch(&a, &a);
        prop_assert!(!own.grounds.any());
        prop_assert_eq!(settled_mm(own.drift.per_turn), 0.0);
    }

    #[test]
    fn hands_are_mirrored(left: bool) {
        let hand = if left { Hand::Left } else { Hand::Right };
        prop_assert_eq!(hand.tighten(), !hand.loosen());
        prop_assert_eq!((!hand).tighten(), !hand.tighten());
        prop_assert_eq!(!!hand, hand);
    }
}
