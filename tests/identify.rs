//! Identification against worked examples, real questions and the pairs that are easily confused.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::identify::{
    Assumptions, Belief, DoubtKind, Feature, HeadTubeEnd, Identification, InterfaceKind as Kind,
    Observation, Options, Outcome, Rule, Standing, UNLISTED, identify,
};
use framegauge::standard::End;
use framegauge::thread::{Hand, Side, ThreadForm, ThreadSize};
use framegauge::{ErrorKind, Pitch, mm};

const UPPER: Kind = Kind::HeadTube(HeadTubeEnd::Upper);

fn see(words: &[(&str, &str)]) -> Vec<Observation> {
    words
        .iter()
        .map(|(key, value)| Observation::read(key, value).unwrap())
        .collect()
}

fn ask(kind: Kind, words: &[(&str, &str)]) -> Identification {
    identify(kind, &see(words), &Options::default()).unwrap()
}

fn left(answer: &Identification) -> Vec<&str> {
    let mut codes: Vec<&str> = answer.outcome.left().iter().map(AsRef::as_ref).collect();
    codes.sort_unstable();
    codes
}

fn excluded_by(answer: &Identification, code: &str) -> Option<Feature> {
    match answer.candidate(code)?.standing {
        Standing::Excluded(e) => Some(e.by),
        _ => None,
    }
}

fn first_next(answer: &Identification) -> Option<Feature> {
    answer.next.first().map(|n| n.measure)
}

/// The worked example of the measurement notes, section 5 (derived there): seat tubes 27.2, 27.0, 26.8 each ±0.05 mm,
/// caliper with s = 0.026 mm.
mod worked_example {
    use super::*;

    fn at(value: f64, u: f64) -> Identification {
        let assumptions = Assumptions {
            seat_tube: mm(0.05),
            ..Assumptions::default()
        };
        let options = Options {
            assumptions,
            ..Options::default()
        };
        let reading = framegauge::measure::Reading::new(mm(value), mm(u)).unwrap();
        identify(
            Kind::SeatTube,
            &[Observation::size(Feature::Bore, reading)],
            &options,
        )
        .unwrap()
    }

    fn pair(answer: &Identification) -> f64 {
        let (a, b) = (
            answer.candidate("27.2").unwrap().share,
            answer.candidate("27.0").unwrap().share,
        );
        a / (a + b)
    }

    #[test]
    fn midway_is_ambiguous() {
        let answer = at(27.10, 0.026);
        assert_eq!(left(&answer), ["27.0", "27.2"]);
        assert!((pair(&answer) - 0.5).abs() < 1e-6);
        assert!(answer.candidate("26.8").unwrap().share < 1e-6);
        assert_eq!(answer.decided_by.unwrap().rule, Rule::Nothing);
    }

    /// At 27.11 the exclusion decides against the ranking: 27.0 is 2.3 s away and keeps 0.145 of the pair.
    #[test]
    fn exclusion_is_named_where_the_ranking_differs() {
        let answer = at(27.11, 0.026);
        assert_eq!(answer.outcome.identified(), Some("27.2"));
        assert!((pair(&answer) - 0.855).abs() < 5e-4, "{}", pair(&answer));
        assert_eq!(answer.decided_by.unwrap().rule, Rule::Exclusion);
        let Standing::Excluded(e) = answer.candidate("27.0").unwrap().standing else {
            panic!("27.0 is out")
        };
        assert!((e.against.unwrap().distance_in_u - 2.3).abs() < 0.01);
    }

    /// With a micrometer (s 0.0033) a reading between the bands is no listed standard.
    #[test]
    fn a_fine_reading_between_the_bands_is_unlisted() {
        assert_eq!(at(27.10, 0.0033).outcome, Outcome::Unlisted);
    }
}

/// The confusable pairs of the notes on shells, axles and threads, section 2, "easily confused pairs".
mod confusable {
    use super::*;

    /// "readings 34.6-34.7 vs 34.8, overlap within caliper error; pitch separates".
    #[test]
    fn bsa_and_french_cups() {
        let cup = ("crest_diameter", "34.75 +/- 0.1 mm");
        let answer = ask(Kind::Shell, &[cup, ("width", "68.0 +/- 0.1 mm")]);
        for code in ["bsc", "iso_6696", "french", "swiss"] {
            assert!(
                left(&answer).contains(&code),
                "{code} in {:?}",
                left(&answer)
            );
        }
        assert_eq!(
            first_next(&answer),
            Some(Feature::Pitch),
            "{:?}",
            answer.next
        );
        assert_eq!(
            left(&ask(Kind::Shell, &[cup, ("pitch", "24 tpi")])),
            ["bsc", "iso_6696"]
        );
        assert_eq!(
            left(&ask(Kind::Shell, &[cup, ("pitch", "1 mm")])),
            ["french", "swiss"]
        );
    }

    /// "10 turns advance 10.58 vs 10.00 mm".
    #[test]
    fn ten_turns_tell_bsa_from_french() {
        for (advance, expected) in [
            ("10.58 +/- 0.1 mm", ["bsc", "iso_6696"]),
            ("10.0 +/- 0.1 mm", ["french", "swiss"]),
        ] {
            let seen = [
                Observation::advance(10, advance.parse().unwrap()).unwrap(),
                Observation::read("crest_diameter", "34.75 +/- 0.1 mm").unwrap(),
            ];
            let answer = identify(Kind::Shell, &seen, &Options::default()).unwrap();
            assert_eq!(left(&answer), expected);
        }
    }

    /// "identical thread; drive-side hand only".
    #[test]
    fn french_and_swiss() {
        let thread = [("minor_diameter", "34.0 +/- 0.05 mm"), ("pitch", "1 mm")];
        let open = ask(Kind::Shell, &thread);
        assert_eq!(left(&open), ["french", "swiss"]);
        assert!(!open.interchange);
        let next = &open.next[0];
        assert_eq!(
            (next.measure, next.separates.len()),
            (Feature::HandDrive, 1)
        );
        assert!((next.bits - 1.0).abs() < 0.01);
        assert!(
            open.notes.iter().any(|n| n.contains("no force")),
            "{:?}",
            open.notes
        );
        for (hand, code, other) in [("right", "french", "swiss"), ("left", "swiss", "french")] {
            let mut words = thread.to_vec();
            words.push(("hand_drive", hand));
            let told = ask(Kind::Shell, &words);
            assert_eq!(told.outcome.identified(), Some(code));
            assert_eq!(excluded_by(&told, other), Some(Feature::HandDrive));
        }
    }

    /// "same diameter class; pitch (10.58 vs 9.77 mm per 10 turns), width 71/76".
    #[test]
    fn bsa_and_raleigh() {
        let minor = ("minor_diameter", "33.9 +/- 0.05 mm");
        let by_pitch = ask(Kind::Shell, &[minor, ("pitch", "26 tpi")]);
        assert_eq!(by_pitch.outcome.identified(), Some("raleigh_26"));
        assert_eq!(excluded_by(&by_pitch, "bsc"), Some(Feature::Pitch));
        let by_width = ask(Kind::Shell, &[minor, ("width", "71.2 +/- 0.1 mm")]);
        assert_eq!(by_width.outcome.identified(), Some("raleigh_26"));
        assert_eq!(excluded_by(&by_width, "bsc"), Some(Feature::Width));
    }

    /// "nothing: same thread".
    #[test]
    fn bsa_and_iso_are_one_thread() {
        let answer = ask(
            Kind::Shell,
            &[
                ("minor_diameter", "33.8 +/- 0.05 mm"),
                ("pitch", "24 tpi"),
                ("hand_drive", "left"),
                ("width", "68 +/- 0.1 mm"),
            ],
        );
        assert_eq!(left(&answer), ["bsc", "iso_6696"]);
        assert!(answer.interchange);
        assert!(answer.next.is_empty() && !answer.inseparable);
        assert!(
            answer.sentence.contains("does not matter"),
            "{}",
            answer.sentence
        );
    }

    /// "47 vs 48; pitch 1 vs 1.5".
    #[test]
    fn t47_and_isis_overdrive() {
        let t47 = ask(
            Kind::Shell,
            &[
                ("minor_diameter", "46.0 +/- 0.05 mm"),
                ("pitch", "1 mm"),
                ("width", "86.5 +/- 0.1 mm"),
            ],
        );
        assert_eq!(t47.outcome.identified(), Some("t47"));
        let isis = ask(
            Kind::Shell,
            &[("minor_diameter", "46.5 +/- 0.05 mm"), ("pitch", "1.5 mm")],
        );
        assert_eq!(isis.outcome.identified(), Some("isis_overdrive"));
    }

    /// "T47 minor bore vs PF30 bore: 45.92-46.15 vs 46.0; thread present or not".
    #[test]
    fn t47_and_pf30() {
        let bore = [("bore", "46.0 +/- 0.05 mm"), ("width", "73 +/- 0.1 mm")];
        let open = ask(Kind::Shell, &bore);
        assert_eq!(left(&open), ["pf30", "pf30a", "t47"]);
        let look = open
            .next
            .iter()
            .find(|n| n.measure == Feature::Threaded)
            .expect("a look is offered");
        assert_eq!((look.cost, look.instrument.as_deref()), (0, None));
        let with = |is| {
            let mut words = bore.to_vec();
            words.push(("threaded", is));
            ask(Kind::Shell, &words)
        };
        assert_eq!(with("yes").outcome.identified(), Some("t47"));
        assert_eq!(left(&with("no")), ["pf30", "pf30a"]);
    }

    /// "BB30 / BBright direct vs PF41: 41.96 vs 41.0".
    #[test]
    fn bb30_and_pf41() {
        let answer = ask(
            Kind::Shell,
            &[("bore", "41.97 +/- 0.05 mm"), ("width", "68 +/- 0.1 mm")],
        );
        assert_eq!(answer.outcome.identified(), Some("bb30"));
        assert_eq!(excluded_by(&answer, "bb86"), Some(Feature::Bore));
    }

    /// "PF30 68 vs BBright 79 vs BB386 86.5 vs OSBB 61 vs PF30A 73/83: all 46 bore; width and which side carries the
    /// extra".
    #[test]
    fn the_46_mm_bores() {
        for (width, code) in [("68.0", "pf30"), ("79.0", "bbright_pf"), ("61.0", "osbb61")] {
            let width = format!("{width} +/- 0.1 mm");
            let answer = ask(
                Kind::Shell,
                &[
                    ("bore", "46.0 +/- 0.05 mm"),
                    ("width", &width),
                    ("threaded", "no"),
                ],
            );
            assert_eq!(answer.outcome.identified(), Some(code));
        }
        let answer = ask(
            Kind::Shell,
            &[
                ("bore", "46.0 +/- 0.05 mm"),
                ("width", "86.5 +/- 0.1 mm"),
                ("threaded", "no"),
            ],
        );
        assert_eq!(answer.outcome.identified(), Some("bb386"));
        let open = ask(
            Kind::Shell,
            &[
                ("bore", "46.0 +/- 0.05 mm"),
                ("width", "73.0 +/- 0.1 mm"),
                ("threaded", "no"),
            ],
        );
        assert_eq!(left(&open), ["pf30", "pf30a"]);
        assert!(matches!(
            first_next(&open),
            Some(Feature::HalfWidthDrive | Feature::HalfWidthNonDrive)
        ));
        let even = ask(
            Kind::Shell,
            &[
                ("bore", "46.0 +/- 0.05 mm"),
                ("half_width_drive", "36.5 +/- 0.5 mm"),
                ("half_width_non_drive", "36.5 +/- 0.5 mm"),
                ("threaded", "no"),
            ],
        );
        assert_eq!(even.outcome.identified(), Some("pf30"));
        let uneven = ask(
            Kind::Shell,
            &[
                ("bore", "46.0 +/- 0.05 mm"),
                ("half_width_drive", "34 +/- 0.5 mm"),
                ("half_width_non_drive", "39 +/- 0.5 mm"),
                ("threaded", "no"),
            ],
        );
        assert_eq!(uneven.outcome.identified(), Some("pf30a"));
    }

    /// "BB30 '42': nominal 42, bore 41.96; trade name is the bearing outside diameter". A hidden-headset seat of
    /// 41.95 is a head-tube matter and does not appear here.
    #[test]
    fn a_42_mm_shell_bore_is_bb30() {
        let answer = ask(
            Kind::Shell,
            &[("bore", "42.0 +/- 0.05 mm"), ("width", "68 +/- 0.1 mm")],
        );
        assert_eq!(answer.outcome.identified(), Some("bb30"));
    }

    /// "pedal 9/16x20 vs M14x1.25: 14.29 vs 14.0; 1.27 vs 1.25".
    #[test]
    fn pedals() {
        let open = ask(Kind::Pedal, &[("crest_diameter", "14.0 +/- 0.05 mm")]);
        assert_eq!(left(&open), ["pedal_9_16", "pedal_french"]);
        assert_eq!(first_next(&open), Some(Feature::Pitch));
        assert_eq!(
            ask(
                Kind::Pedal,
                &[("crest_diameter", "14.15 +/- 0.05 mm"), ("pitch", "20 tpi")]
            )
            .outcome
            .identified(),
            Some("pedal_9_16")
        );
        assert_eq!(
            ask(
                Kind::Pedal,
                &[("crest_diameter", "13.9 +/- 0.05 mm"), ("pitch", "1.25 mm")]
            )
            .outcome
            .identified(),
            Some("pedal_french")
        );
    }

    /// "M10x1 vs 10 x 26: pitch 1.000 vs 0.977; pitch gauge".
    #[test]
    fn ten_millimetre_axles() {
        let open = ask(Kind::AxleThread, &[("crest_diameter", "9.9 +/- 0.05 mm")]);
        for code in ["axle_m10", "axle_10x26"] {
            assert!(left(&open).contains(&code), "{:?}", left(&open));
        }
        assert_eq!(first_next(&open), Some(Feature::Pitch));
        let crest = ("crest_diameter", "9.9 +/- 0.05 mm");
        assert_eq!(
            ask(Kind::AxleThread, &[crest, ("pitch", "1 mm")])
                .outcome
                .identified(),
            Some("axle_m10")
        );
        assert_eq!(
            left(&ask(Kind::AxleThread, &[crest, ("pitch", "26 tpi")])),
            ["axle_10x26"]
        );
    }

    /// "freewheel ISO/British/Italian (34.92/34.80/35.0 x 24) vs French 34.7 x 1".
    #[test]
    fn freewheels() {
        let crest = ("crest_diameter", "34.6 +/- 0.05 mm");
        let french = ask(
            Kind::AnyThread,
            &[crest, ("pitch", "1 mm"), ("hand", "right")],
        );
        assert_eq!(left(&french), ["freewheel_french"]);
        let others = ask(
            Kind::AnyThread,
            &[crest, ("pitch", "24 tpi"), ("hand", "right")],
        );
        assert!(!left(&others).contains(&"freewheel_french"));
        assert!(left(&others).contains(&"freewheel_british"));
    }

    /// "lockring 1.29 x 24 vs 33.5 x 24: 32.77 vs 33.5, both LH".
    #[test]
    fn lockrings() {
        let at = |crest: &str| {
            ask(
                Kind::AnyThread,
                &[
                    ("crest_diameter", crest),
                    ("pitch", "24 tpi"),
                    ("hand", "left"),
                ],
            )
        };
        assert_eq!(left(&at("32.6 +/- 0.04 mm")), ["lockring_1_29"]);
        assert_eq!(left(&at("33.4 +/- 0.04 mm")), ["lockring_33_5"]);
    }

    /// Codes that share a bore (a headset maker's guide of 2009: one 44.00 row; a frame maker's page: EC44 in it).
    #[test]
    fn ec44_and_zs44_share_a_bore() {
        let answer = ask(UPPER, &[("bore", "43.98 +/- 0.01 mm")]);
        assert_eq!(left(&answer), ["EC44", "ZS44"]);
        assert!(answer.interchange);
    }

    /// Width variants of one 41 mm bore: the width is the only thing that separates them.
    #[test]
    fn pf41_widths() {
        let open = ask(Kind::Shell, &[("bore", "41.0 +/- 0.05 mm")]);
        for code in ["bb86", "bb92", "pf41_wide"] {
            assert!(left(&open).contains(&code));
        }
        assert!(!open.interchange);
        assert_eq!(first_next(&open), Some(Feature::Width));
        assert_eq!(
            ask(
                Kind::Shell,
                &[("bore", "41.0 +/- 0.05 mm"), ("width", "91.6 +/- 0.2 mm")]
            )
            .outcome
            .identified(),
            Some("bb92")
        );
    }
}

/// Real questions of the case log, restated; the letters and numbers are those of the log.
mod cases {
    use super::*;

    /// A01: M35 x 1, right-hand both sides; an English cup was believed to fit.
    #[test]
    fn a01_french_shell() {
        let answer = ask(
            Kind::Shell,
            &[
                ("pitch", "1 mm"),
                ("minor_diameter", "34.0 +/- 0.05 mm"),
                ("hand_drive", "right"),
                ("hand_non_drive", "right"),
                ("hearsay", "BSA"),
            ],
        );
        assert_eq!(answer.outcome.identified(), Some("french"));
        assert_eq!(answer.belief, Some(Belief::Contradicted));
    }

    /// A03: 26 tpi, 71 wide.
    #[test]
    fn a03_nottingham_shell() {
        let answer = ask(
            Kind::Shell,
            &[
                ("pitch", "26 tpi"),
                ("width", "71 +/- 0.2 mm"),
                ("label", "BSA"),
            ],
        );
        assert_eq!(answer.outcome.identified(), Some("raleigh_26"));
        assert_eq!(answer.belief, Some(Belief::Contradicted));
        assert_eq!(excluded_by(&answer, "bsc"), Some(Feature::Pitch));
    }

    /// A05: only the country is known: nothing is told, French leads, no force in either direction.
    #[test]
    fn a05_country_alone() {
        let answer = ask(Kind::Shell, &[("country", "french")]);
        assert_eq!(answer.outcome, Outcome::CannotTell);
        assert_eq!(answer.belief, Some(Belief::NotTested));
        assert_eq!(answer.candidates[0].code, "french");
        assert!(answer.candidates[0].share < 0.1);
        assert!(answer.notes.iter().any(|n| n.contains("no force")));
        assert!(!answer.next.is_empty());
    }

    /// B07: 46 x 79, 34 + 45 from the centre; a symmetric 79 is refused; the name also stands for a 41.96 bore.
    #[test]
    fn b07_asymmetric_shell() {
        let shell = |drive: &str, non: &str| {
            ask(
                Kind::Shell,
                &[
                    ("bore", "46.0 +/- 0.05 mm"),
                    ("width", "79 +/- 0.2 mm"),
                    ("half_width_drive", drive),
                    ("half_width_non_drive", non),
                    ("label", "BBright"),
                ],
            )
        };
        let answer = shell("34 +/- 0.5 mm", "45 +/- 0.5 mm");
        assert_eq!(answer.outcome.identified(), Some("bbright_pf"));
        assert_eq!(excluded_by(&answer, "bb386"), Some(Feature::Width));
        assert_eq!(excluded_by(&answer, "pf30"), Some(Feature::Width));
        assert_eq!(excluded_by(&answer, "bbright_df"), Some(Feature::Bore));
        assert_eq!(
            shell("39.5 +/- 0.5 mm", "39.5 +/- 0.5 mm").outcome,
            Outcome::Unlisted
        );
    }

    /// C08: 31.7 outside, 1.0 wall: 29.70 inside, to be reamed to a 1 in seat, not 1-1/8.
    #[test]
    fn c08_head_tube_stock() {
        let answer = ask(
            UPPER,
            &[
                ("outside_diameter", "31.7 +/- 0.05 mm"),
                ("wall", "1.0 +/- 0.05 mm"),
            ],
        );
        assert_eq!(left(&answer), ["EC29", "EC30"]);
        assert_eq!(excluded_by(&answer, "EC34"), Some(Feature::Bore));
        assert!(answer.notes.iter().any(|n| n.contains("29.700")));
    }

    /// C10: a steerer thread reading 25.0: French probably, the pitch must confirm.
    #[test]
    fn c10_steerer_thread() {
        let crest = ("crest_diameter", "25.0 +/- 0.05 mm");
        let answer = ask(Kind::Steerer, &[crest]);
        assert!(left(&answer).contains(&"1in_iso_threaded"));
        assert_eq!(answer.candidates[0].code, "french_threaded");
        assert!(answer.candidates[0].share > 0.5);
        assert_eq!(first_next(&answer), Some(Feature::Pitch));
        assert_eq!(
            ask(Kind::Steerer, &[crest, ("pitch", "1 mm")])
                .outcome
                .identified(),
            Some("french_threaded")
        );
    }

    /// D02: bore 27.40 by telescoping gauge, nominal 27.2.
    #[test]
    fn d02_oversize_bore() {
        let answer = ask(
            Kind::SeatTube,
            &[
                ("bore", "27.40 mm with telescoping_gauge"),
                ("label", "27.2"),
            ],
        );
        assert_eq!(answer.outcome.identified(), Some("27.4"));
        assert_eq!(answer.belief, Some(Belief::Contradicted));
        let post = ask(
            Kind::Seatpost,
            &[("outside_diameter", "27.00 mm with caliper_digital_outside")],
        );
        assert_eq!(post.outcome.identified(), Some("27.0"));
        // A post stamped 27.2 was once read at 27.03: the stamp is worth a look.
        assert!(
            ask(
                Kind::Seatpost,
                &[("outside_diameter", "27.04 mm with caliper_digital_outside")]
            )
            .notes
            .iter()
            .any(|n| n.contains("stamp"))
        );
    }

    /// D06: 28.0 tubing calls for 26.4 to 26.6; the 25.8 post that fits proves nothing.
    #[test]
    fn d06_a_part_that_fits() {
        let answer = ask(
            Kind::SeatTube,
            &[
                ("outside_diameter", "28.0 +/- 0.04 mm"),
                ("wall", "0.75 +/- 0.05 mm"),
                ("part_that_fits", "25.8"),
            ],
        );
        assert_eq!(left(&answer), ["26.4", "26.6"]);
        assert_eq!(answer.belief, Some(Belief::Contradicted));
        assert!(answer.notes.iter().any(|n| n.contains("roundness")));
    }

    /// D08: a spread of 1.01 is no size; 28.83 is painted 28.6; the "head tube" is the steerer.
    #[test]
    fn d08_scatter_paint_and_a_wrong_name() {
        let tube = ask(
            Kind::SeatTube,
            &[
                ("bore", "26.14 mm with caliper_digital_inside"),
                ("bore", "27.15 mm with caliper_digital_inside"),
                ("outside_diameter", "28.83 mm with caliper_digital_outside"),
            ],
        );
        assert_eq!(tube.outcome, Outcome::CannotTell);
        assert_eq!(tube.doubts[0].kind, DoubtKind::Scatter);
        assert!(tube.doubts[0].words.contains("1.010"));
        assert!(
            tube.notes.iter().any(|n| n.contains("0.115 mm a side")),
            "{:?}",
            tube.notes
        );
        let head = ask(
            UPPER,
            &[
                ("bore", "21.80 mm with caliper_digital_inside"),
                ("bore", "22.05 mm with caliper_digital_inside"),
            ],
        );
        assert_eq!(head.outcome, Outcome::CannotTell);
        assert!(
            head.doubts
                .iter()
                .any(|d| d.kind == DoubtKind::Implausible && d.words.contains("steerer"))
        );
    }

    /// D10: a circumference of 82 ± 0.5: 26.10, so 26.0 or 26.2.
    #[test]
    fn d10_circumference() {
        let answer = ask(Kind::Seatpost, &[("circumference", "82 +/- 0.5 mm")]);
        assert_eq!(left(&answer), ["26.0", "26.2"]);
        assert_eq!(first_next(&answer), Some(Feature::OutsideDiameter));
    }

    /// D12: 28.6 x 0.6 to 0.7 tube that takes a 25.4 post: the implied wall is 1.6.
    #[test]
    fn d12_doubtful_label() {
        let answer = ask(
            Kind::SeatTube,
            &[
                ("outside_diameter", "28.6 +/- 0.05 mm"),
                ("wall", "0.65 +/- 0.05 mm"),
                ("part_that_fits", "25.4"),
            ],
        );
        assert_eq!(left(&answer), ["27.2", "27.4"]);
        assert_eq!(answer.belief, Some(Belief::Contradicted));
        assert!(
            answer.notes.iter().any(|n| n.contains("1.60 mm")),
            "{:?}",
            answer.notes
        );
    }

    /// E02: the 6H minor diameter of M12x1.0 (10.917 to 11.153) stands clear of the coarser pitches, those overlap.
    #[test]
    fn e02_thru_axle_pitches() {
        let also = [ThreadSize::new(
            ThreadForm::IsoMetric,
            mm(12.0),
            Pitch::millimetres(1.25).unwrap(),
        )
        .unwrap()];
        let options = Options {
            also: &also,
            ..Options::default()
        };
        let at =
            |bore: &str| identify(Kind::AxleThread, &see(&[("bore", bore)]), &options).unwrap();
        let listed = ask(Kind::AxleThread, &[("bore", "11.05 +/- 0.05 mm")]);
        assert_eq!(listed.outcome.identified(), Some("thru_axle_m12_1_0"));
        // Beside an M12x1.25 tap it may be that thread, worn: the pitch settles it.
        let beside = at("11.05 +/- 0.05 mm");
        assert_eq!(beside.candidates[0].code, "thru_axle_m12_1_0");
        assert_eq!(first_next(&beside), Some(Feature::Pitch));
        let open = at("10.43 +/- 0.05 mm");
        assert!(
            left(&open).contains(&"thru_axle_m12_1_5")
                && left(&open).contains(&"thru_axle_m12_1_75")
        );
        assert_eq!(first_next(&open), Some(Feature::Pitch));
        assert!(left(&at("10.66 +/- 0.02 mm")).contains(&"M12x1.25"));
    }

    /// E04: a hole of 8.5 is no M10x1 (minor 8.917 to 9.153); it suits the M10x1.5 tap at hand (8.376 to 8.676).
    #[test]
    fn e04_hanger_hole() {
        let hole = see(&[("bore", "8.5 +/- 0.05 mm")]);
        let alone = identify(Kind::HangerThread, &hole, &Options::default()).unwrap();
        assert_eq!(alone.outcome, Outcome::Unlisted);
        assert!(
            alone.sentence.contains("hanger_m10") && alone.sentence.contains("8.917"),
            "{}",
            alone.sentence
        );
        let tap = [ThreadSize::new(
            ThreadForm::IsoMetric,
            mm(10.0),
            Pitch::millimetres(1.5).unwrap(),
        )
        .unwrap()];
        let with = identify(
            Kind::HangerThread,
            &hole,
            &Options {
                also: &tap,
                ..Options::default()
            },
        )
        .unwrap();
        assert_eq!(with.outcome.identified(), Some("M10x1.5"));
    }
}

/// Numbers that became others on the way.
mod slips {
    use super::*;

    #[test]
    fn each_slip_is_named() {
        for (kind, words, expected) in [
            (
                Kind::Seatpost,
                ("outside_diameter", "13.6 +/- 0.05 mm"),
                "radius",
            ),
            (
                Kind::Seatpost,
                ("outside_diameter", "85.5 +/- 0.5 mm"),
                "circumference",
            ),
            (Kind::Shell, ("bore", "1.33 +/- 0.002 mm"), "inches"),
            (
                Kind::SeatTube,
                ("bore", "690.9 +/- 1 mm"),
                "millimetres read as inches",
            ),
            (
                Kind::CrownSeat,
                ("outside_diameter", "25.4 +/- 0.05 mm"),
                "steerer",
            ),
            (Kind::Shell, ("bore", "68.0 +/- 0.1 mm"), "width"),
        ] {
            let answer = ask(kind, &[words]);
            assert_eq!(answer.outcome, Outcome::CannotTell, "{words:?}");
            assert!(
                answer.sentence.contains(expected),
                "{words:?}: {}",
                answer.sentence
            );
        }
    }

    #[test]
    fn two_contradictory_readings_name_no_size() {
        let answer = ask(
            Kind::SeatTube,
            &[("bore", "27.2 +/- 0.05 mm"), ("bore", "26.8 +/- 0.05 mm")],
        );
        assert_eq!(answer.outcome, Outcome::CannotTell);
        let pitches = ask(Kind::Shell, &[("pitch", "24 tpi"), ("pitch", "1 mm")]);
        assert_eq!(pitches.outcome, Outcome::CannotTell);
    }
}

mod rules {
    use super::*;

    /// The bias of one caliper counts once: two readings by it say less than two by independent instruments.
    #[test]
    fn one_instrument_is_one_witness() {
        let by = |bore: &str, width: &str| {
            let answer = ask(
                Kind::Shell,
                &[("bore", bore), ("width", width), ("threaded", "no")],
            );
            answer.candidate("bb30").unwrap().share / answer.candidate(UNLISTED).unwrap().share
        };
        // Both readings lie at the low edge of their band: one bias explains both, two accidents are needed otherwise.
        let shared = by(
            "41.86 +/- 0.1 mm with caliper",
            "67.1 +/- 0.1 mm with caliper",
        );
        let apart = by(
            "41.86 +/- 0.1 mm with caliper",
            "67.1 +/- 0.1 mm with another caliper",
        );
        assert!(shared > 1.2 * apart, "{shared} against {apart}");
        // Repeats by one instrument do not wear its bias away.
        let many = vec![("bore", "27.13 +/- 0.05 mm with caliper"); 12];
        let answer = ask(Kind::SeatTube, &many);
        assert_eq!(left(&answer), ["27.0", "27.2"]);
    }

    #[test]
    fn beliefs_are_weak() {
        let words = [("bore", "46.0 +/- 0.05 mm"), ("threaded", "no")];
        let plain = ask(Kind::Shell, &words);
        let mut more = words.to_vec();
        more.extend([
            ("label", "BB386"),
            ("country", "BB386"),
            ("hearsay", "BB386"),
        ]);
        let told = ask(Kind::Shell, &more);
        let odds = |a: &Identification| {
            a.candidate("bb386").unwrap().share / a.candidate("pf30").unwrap().share
        };
        let factor = odds(&told) / odds(&plain);
        assert!((factor - 2.0).abs() < 1e-9, "{factor}");
        assert_eq!(told.belief, Some(Belief::NotTested));
        assert_eq!(left(&plain), left(&told));
    }

    #[test]
    fn a_second_name_of_one_thread_confirms() {
        let answer = ask(
            Kind::Shell,
            &[
                ("minor_diameter", "33.8 +/- 0.05 mm"),
                ("pitch", "24 tpi"),
                ("hand_drive", "left"),
                ("label", "BSA"),
            ],
        );
        assert_eq!(answer.belief, Some(Belief::Confirmed));
    }

    #[test]
    fn a_trade_name_of_two_patterns_is_pointed_out() {
        let answer = ask(
            Kind::Shell,
            &[
                ("bore", "46.0 +/- 0.05 mm"),
                ("width", "79 +/- 0.1 mm"),
                ("label", "bbr"),
            ],
        );
        assert_eq!(answer.belief, Some(Belief::Confirmed));
        assert!(
            answer
                .notes
                .iter()
                .any(|n| n.contains("bbright_df") && n.contains("bbright_pf")),
            "{:?}",
            answer.notes
        );
    }

    #[test]
    fn tools_at_hand_bound_the_plan() {
        let bore = see(&[("bore", "27.1 +/- 0.05 mm")]);
        let none = Options {
            tools: &["steel_rule"],
            ..Options::default()
        };
        let answer = identify(Kind::SeatTube, &bore, &none).unwrap();
        assert!(answer.inseparable && answer.next.is_empty());
        assert!(
            answer
                .sentence
                .contains("cannot be separated with these tools")
        );
        let all = identify(Kind::SeatTube, &bore, &Options::default()).unwrap();
        assert!(!all.inseparable && all.next[0].bits > 0.5, "{:?}", all.next);
        let wrong = Options {
            tools: &["eyeball"],
            ..Options::default()
        };
        assert_eq!(
            identify(Kind::SeatTube, &bore, &wrong).unwrap_err().kind(),
            ErrorKind::UnknownName
        );
    }

    /// The cheapest tool within 0.05 bit: a rule tells 68 from 86.5 mm as well as a caliper does.
    #[test]
    fn the_cheapest_tool_is_named() {
        let answer = ask(
            Kind::Dropout(End::Rear),
            &[("inner_faces", "130 +/- 0.4 mm")],
        );
        assert_eq!(answer.outcome.identified(), Some("qr_rear_130"));
        let open = ask(
            Kind::Dropout(End::Rear),
            &[("outside_diameter", "10 +/- 0.1 mm")],
        );
        let width = open
            .next
            .iter()
            .find(|n| n.measure == Feature::OverLocknut)
            .unwrap();
        assert_eq!(width.instrument.as_deref(), Some("steel_rule"));
        for pair in open.next.windows(2) {
            assert!(pair[0].bits >= pair[1].bits - 0.05);
        }
    }

    #[test]
    fn brake_mounts() {
        let post = ask(
            Kind::BrakeMount(End::Rear),
            &[("bolt_spacing", "74.2 +/- 0.3 mm")],
        );
        assert_eq!(post.outcome.identified(), Some("pm"));
        // Plane heights 47.24, 55.90, 64.56 mm: a builder's formula for the mount, 140, 160 and 180 mm rotors (derived).
        let sized = ask(
            Kind::BrakeMount(End::Front),
            &[
                ("bolt_spacing", "74.0 +/- 0.3 mm"),
                ("plane_height", "64.3 +/- 1 mm"),
            ],
        );
        assert_eq!(sized.outcome.identified(), Some("pm_180"));
        assert_eq!(
            ask(
                Kind::BrakeMount(End::Front),
                &[("bolt_spacing", "51 +/- 0.3 mm")]
            )
            .outcome
            .identified(),
            Some("is_front")
        );
    }

    #[test]
    fn crown_seats_and_steerers() {
        assert_eq!(
            ask(
                Kind::CrownSeat,
                &[("outside_diameter", "39.82 +/- 0.02 mm")]
            )
            .outcome
            .identified(),
            Some("39.8")
        );
        // 26.4 and 26.5 cannot be told apart: measured seats of 26.4 run to 26.53.
        assert_eq!(
            left(&ask(
                Kind::CrownSeat,
                &[("outside_diameter", "26.45 +/- 0.02 mm")]
            )),
            ["26.4", "26.5"]
        );
        let steerer = ask(
            Kind::Steerer,
            &[
                ("threaded", "no"),
                ("outside_diameter", "28.6 +/- 0.02 mm"),
                ("lower_diameter", "38.1 +/- 0.05 mm"),
            ],
        );
        assert_eq!(steerer.outcome.identified(), Some("tapered_1_1_8_1_1_2"));
    }

    #[test]
    fn a_width_alone_names_nothing() {
        let answer = ask(Kind::Shell, &[("width", "61 +/- 0.1 mm")]);
        assert_eq!(answer.outcome, Outcome::CannotTell);
        assert_eq!(ask(Kind::Shell, &[]).outcome, Outcome::CannotTell);
    }

    #[test]
    fn shares_sum_to_one() {
        for kind in Kind::all() {
            let answer = identify(
                kind,
                &see(&[("bore", "30 +/- 0.3 mm")]),
                &Options::default(),
            )
            .unwrap();
            let sum: f64 = answer.candidates.iter().map(|c| c.share).sum();
            assert!((sum - 1.0).abs() < 1e-9, "{kind}: {sum}");
            assert!(answer.candidates.iter().any(|c| c.code == UNLISTED));
        }
    }

    /// A shop's own row stands beside ours.
    #[cfg(feature = "serde")]
    #[test]
    fn shop_rows_take_part() {
        let rows: framegauge::standard::ShopRows = toml::from_str(
            "[[seatpost]]\ncode = \"ours_29.9\"\ndiameter = { nominal = \"29.9 mm\", lower = \"29.88 mm\", upper = \"29.92 mm\" }\n",
        )
        .unwrap();
        let options = Options {
            shop: Some(&rows),
            ..Options::default()
        };
        let answer = identify(
            Kind::Seatpost,
            &see(&[("outside_diameter", "29.9 +/- 0.004 mm")]),
            &options,
        )
        .unwrap();
        assert!(left(&answer).contains(&"ours_29.9"));
        assert_eq!(answer.candidates[0].code, "ours_29.9");
    }
}

mod bad_input {
    use super::*;

    fn kind_of(seen: &[Observation]) -> ErrorKind {
        identify(Kind::Shell, seen, &Options::default())
            .unwrap_err()
            .kind()
    }

    #[test]
    fn uncertainty_must_make_sense() {
        let reading = |v, u| framegauge::measure::Reading::new(mm(v), mm(u)).unwrap();
        assert_eq!(
            kind_of(&[Observation::size(Feature::Bore, reading(34.0, 0.0))]),
            ErrorKind::OutOfRange
        );
        assert_eq!(
            kind_of(&[Observation::size(Feature::Bore, reading(3.0, 5.0))]),
            ErrorKind::Contradiction
        );
        assert_eq!(
            kind_of(&[Observation::size(Feature::Bore, reading(-34.0, 0.05))]),
            ErrorKind::OutOfRange
        );
        assert_eq!(
            kind_of(&[Observation::size(Feature::Bore, reading(2000.0, 0.05))]),
            ErrorKind::OutOfRange
        );
        assert_eq!(
            kind_of(&[Observation::size(Feature::Hand, reading(34.0, 0.05))]),
            ErrorKind::Unit
        );
    }

    #[test]
    fn absurd_spreads_are_refused() {
        for (spread, kind) in [
            (-0.1, ErrorKind::OutOfRange),
            (60.0, ErrorKind::OutOfRange),
            (f64::NAN, ErrorKind::NotFinite),
        ] {
            let assumptions = Assumptions {
                seat_tube: mm(spread),
                ..Assumptions::default()
            };
            let options = Options {
                assumptions,
                ..Options::default()
            };
            assert_eq!(
                identify(Kind::SeatTube, &[], &options).unwrap_err().kind(),
                kind
            );
        }
    }

    #[test]
    fn contradictions_are_refused() {
        let both = [
            Observation::hand(Side::Drive, Hand::Left),
            Observation::hand(Side::Drive, Hand::Right),
        ];
        assert_eq!(kind_of(&both), ErrorKind::Contradiction);
        let none = [
            Observation::Threaded(false),
            Observation::Pitch(Pitch::tpi(24).unwrap()),
        ];
        assert_eq!(kind_of(&none), ErrorKind::Contradiction);
    }

    #[test]
    fn names_that_name_nothing_offer_the_nearest() {
        let error = identify(
            Kind::Shell,
            &[Observation::label("bsq")],
            &Options::default(),
        )
        .unwrap_err();
        assert_eq!(error.kind(), ErrorKind::UnknownName);
        assert!(error.remedy().contains("bsc"), "{error}");
        assert_eq!(kind_of(&[Observation::label("")]), ErrorKind::UnknownName);
        assert_eq!(
            kind_of(&[Observation::label("é".repeat(300))]),
            ErrorKind::UnknownName
        );
    }

    #[test]
    fn text_forms() {
        for (key, value, kind) in [
            ("hand_left", "left", ErrorKind::Text),
            ("hand", "clockwise", ErrorKind::Text),
            ("threaded", "perhaps", ErrorKind::Text),
            ("bore", "33.7 mm", ErrorKind::Missing),
            (
                "bore",
                "NaN mm with caliper_digital_inside",
                ErrorKind::NotFinite,
            ),
            ("boar", "33.7 +/- 0.05 mm", ErrorKind::UnknownField),
            ("pitch", "24", ErrorKind::Unit),
        ] {
            assert_eq!(
                Observation::read(key, value).unwrap_err().kind(),
                kind,
                "{key} = {value}"
            );
        }
        assert!(
            "shel"
                .parse::<Kind>()
                .unwrap_err()
                .remedy()
                .contains("shell")
        );
    }
}

/// Numbers go out settled, with the unit in the name.
#[cfg(feature = "serde")]
#[test]
fn serialized() {
    let answer = ask(
        Kind::Shell,
        &[
            ("bore", "46.0 +/- 0.05 mm"),
            ("width", "79.0 +/- 0.1 mm"),
            ("label", "BB386"),
        ],
    );
    let json = serde_json::to_value(&answer).unwrap();
    assert_eq!(json["outcome"], "identified");
    assert_eq!(json["code"], "bbright_pf");
    assert_eq!(json["belief"], "contradicted");
    let out = json["candidates"]
        .as_array()
        .unwrap()
        .iter()
        .find(|c| c["code"] == "bb386")
        .unwrap();
    assert_eq!(out["standing"], "excluded");
    assert_eq!(out["excluded"]["by"], "width");
    assert_eq!(out["excluded"]["read_mm"], 79.0);
    assert_eq!(out["excluded"]["lower_mm"], 85.7);
    let open = ask(Kind::SeatTube, &[("bore", "27.1 +/- 0.05 mm")]);
    let json = serde_json::to_value(&open).unwrap();
    assert_eq!(json["outcome"], "ambiguous");
    assert_eq!(json["next"][0]["measure"], "bore");
}
