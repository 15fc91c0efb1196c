//! Exactly at a limit and a little beside it; cases in which only one of two conditions holds.

use super::*;

fn reading(angle: f64, depth: f64, d: f64, gauge: Gauge) -> BoreReading {
    BoreReading {
        gauge,
        ..two_point(angle, depth, d)
    }
}

/// The 5 % point of the range of two normal readings is 2.772 u (studentized range, any statistics handbook: memory),
/// with u = 5 µm 13.86 µm.
#[test]
fn a_bore_has_a_size_until_its_range_is_shown() {
    let size = |d: f64| bore(vec![two_point(0.0, 5.0, 43.9), two_point(90.0, 5.0, d)]).size;
    let Size::One { diameter } = size(43.9138) else {
        panic!("13.8 µm are not shown")
    };
    assert!((to_mm(diameter.value()) - 43.9069).abs() < 1e-9);
    let Size::None { least, most } = size(43.9139) else {
        panic!("13.9 µm are shown")
    };
    assert!((to_mm(least.value()) - 43.9).abs() < 1e-9);
    assert!((to_mm(most.value()) - 43.9139).abs() < 1e-9);
}

/// Two means, each good to u = 5 µm, differ by more than U = 2 √2 u = 14.142 µm, or they do not.
#[test]
fn tapers_ends_and_lobes_are_shown_beyond_their_uncertainty() {
    let taper = |d: f64| {
        bore(vec![two_point(0.0, 2.0, 43.9), two_point(0.0, 12.0, d)])
            .taper
            .unwrap()
    };
    assert!(!taper(43.9141).shown && taper(43.9142).shown && taper(43.8858).shown);
    assert!((to_mm(taper(43.91).difference.value()) + 0.01).abs() < 1e-9);
    let end = |d: f64| bore(vec![two_point(0.0, 2.0, d)]);
    let ends = |d: f64| end(43.9).against_other_end(&end(d)).unwrap();
    assert!(!ends(43.9141).shown && ends(43.9142).shown && ends(43.8858).shown);
    assert!(ends(43.9).both_have_a_size);
    // A bore without size takes the mean of its sections and says that it has none.
    let oval = bore(vec![
        two_point(0.0, 2.0, 43.80),
        two_point(90.0, 2.0, 43.90),
        two_point(0.0, 12.0, 43.70),
    ]);
    let against = oval.against_other_end(&end(43.7)).unwrap();
    assert!(!against.both_have_a_size);
    // (43.85 + 43.70)/2 = 43.775.
    assert!((to_mm(against.difference.value()) - 0.075).abs() < 1e-9);
    let lobes = |d: f64| {
        bore(vec![
            two_point(0.0, 5.0, 43.9),
            reading(0.0, 5.0, d, Gauge::ThreePoint),
        ])
        .lobes_suspected
    };
    assert!(!lobes(43.9141) && lobes(43.9142) && lobes(43.8858) && !lobes(43.8859));
    // With one gauge alone there is nothing to compare.
    assert!(!bore(vec![two_point(0.0, 5.0, 43.9), two_point(90.0, 5.0, 44.2)]).lobes_suspected);
}

#[test]
fn readings_of_one_place_and_of_one_section() {
    let new = |readings: [BoreReading; 2]| BoreSurvey::new(readings);
    let two = |angle, depth| reading(angle, depth, 44.0, Gauge::TwoPoint);
    let three = |angle, depth| reading(angle, depth, 44.0, Gauge::ThreePoint);
    // A diameter repeats after half a turn, three contacts after a third of one.
    for (pair, again) in [
        ([two(0.0, 5.0), two(0.01, 5.0)], false),
        ([two(0.0, 5.0), two(0.009, 5.0)], true),
        ([two(20.0, 5.0), two(199.995, 5.0)], true),
        ([two(20.0, 5.0), two(140.0, 5.0)], false),
        ([two(20.0, 0.0), two(20.0, 0.01)], false),
        ([two(20.0, 5.0), two(20.0, 5.009)], true),
        ([three(20.0, 5.0), three(140.0, 5.0)], true),
        ([three(20.0, 5.0), three(259.995, 5.0)], true),
        ([three(20.0, 5.0), three(200.0, 5.0)], false),
        ([two(20.0, 5.0), three(20.0, 5.0)], false),
    ] {
        assert_eq!(new(pair).is_err(), again, "{pair:?}");
    }
    for (depth, good) in [
        (0.0, true),
        (1000.0, true),
        (1000.001, false),
        (-0.001, false),
    ] {
        assert_eq!(BoreSurvey::new([two(0.0, depth)]).is_ok(), good, "{depth}");
    }
    assert_eq!(
        BoreSurvey::new([two(0.0, f64::NAN)]).unwrap_err().kind(),
        ErrorKind::NotFinite
    );
    // Half a millimetre deeper is another section.
    let sections = |deeper: f64| {
        bore(vec![
            two_point(0.0, 0.0, 44.0),
            two_point(90.0, deeper, 44.0),
        ])
        .sections
        .len()
    };
    assert_eq!([sections(0.499), sections(0.5)], [1, 2]);
    // Two axes at both depths, or it is not complete.
    let complete = |fourth: Option<BoreReading>| {
        let mut all = vec![
            two_point(0.0, 2.0, 44.0),
            two_point(90.0, 2.0, 44.0),
            two_point(0.0, 12.0, 44.0),
        ];
        all.extend(fourth);
        bore(all).complete
    };
    assert!(!complete(None) && complete(Some(two_point(90.0, 12.0, 44.0))));
}

/// What a section is blind to: only what its own readings leave open.
#[test]
fn each_section_says_what_it_is_blind_to() {
    let blind = |readings: Vec<BoreReading>| {
        let words = bore(readings).sections[0].blind_to.clone();
        let about = |what: &str| words.iter().any(|w| w.contains(what));
        [
            about("one axis"),
            about("odd lobes"),
            about("average it away"),
            about("between the axes"),
        ]
    };
    let two = |angle| reading(angle, 5.0, 44.0, Gauge::TwoPoint);
    let three = |angle| reading(angle, 5.0, 44.0, Gauge::ThreePoint);
    assert_eq!(blind(vec![two(0.0)]), [true, true, false, false]);
    assert_eq!(blind(vec![two(0.0), two(90.0)]), [false, true, false, true]);
    assert_eq!(
        blind(vec![two(0.0), two(60.0), two(120.0)]),
        [false, true, false, false]
    );
    assert_eq!(blind(vec![three(0.0)]), [true, false, true, false]);
    assert_eq!(
        blind(vec![two(0.0), three(0.0)]),
        [false, false, true, false]
    );
    assert_eq!(
        blind(vec![two(0.0), two(90.0), three(0.0)]),
        [false, false, false, true]
    );
}

/// Ovality is read between like gauges only, and an ellipse is as uncertain as 4 u/√(6) for 0, 60, 120 degrees: the
/// slope of three even places on a unit circle, u/√(3/2), doubled for the diameter.
#[test]
fn ovality_and_its_uncertainty() {
    let mixed = bore(vec![
        reading(0.0, 5.0, 43.90, Gauge::TwoPoint),
        reading(90.0, 5.0, 43.93, Gauge::TwoPoint),
        reading(10.0, 5.0, 44.00, Gauge::ThreePoint),
        reading(70.0, 5.0, 44.01, Gauge::ThreePoint),
    ]);
    assert!((to_mm(mixed.sections[0].spread) - 0.03).abs() < 1e-9);
    let three = bore([0.0, 60.0, 120.0].map(|a| two_point(a, 5.0, 43.9)).to_vec());
    let ellipse = three.sections[0].ellipse.clone().unwrap();
    let wanted = 2.0 * 0.005 / 1.5_f64.sqrt();
    assert!((to_mm(ellipse.standard_uncertainty) - wanted).abs() < 1e-12);
}

#[test]
fn axes_of_two_bores() {
    let at = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    // The near bore leans by 0.02 mm over 8 mm in x and −0.03 in y. At 50 mm, 6 lengths on, it stands at (0.13, −0.19);
    // at 58 mm, 7 lengths on, at (0.15, −0.22).
    let near = BoreAxis::new(at(0.01, -0.01, 2.0), at(0.03, -0.04, 10.0), mm(0.004)).unwrap();
    let far = BoreAxis::new(at(0.16, -0.15, 50.0), at(0.15, -0.20, 58.0), mm(0.003)).unwrap();
    let offset = near.coaxiality(&far).unwrap();
    // 3 : 4 : 5 at the first centre, 0.02 at the second.
    assert!((to_mm(offset.diameter.value()) - 0.10).abs() < 1e-12);
    let factor = (5.0_f64.powi(2) + 6.0_f64.powi(2)).sqrt();
    assert!((offset.extrapolation - factor).abs() < 1e-9);
    let u = 2.0 * (factor * 0.004).hypot(0.003);
    assert!((to_mm(offset.diameter.standard_uncertainty()) - u).abs() < 1e-12);
    // A millimetre between centres gives a direction, a micrometre less does not; either end may be named first.
    let along = |z: f64| BoreAxis::new(at(0.0, 0.0, 0.0), at(0.0, 0.0, z), mm(0.01));
    assert!(along(1.0).is_ok() && along(0.999).is_err() && along(-1.0).is_ok());
}

/// Limits of a survey of a ring: the face's thickness, its edges, angles and radii of one place.
#[test]
fn rings_at_their_limits() {
    let annulus = |inner: f64, outer: f64| Annulus::new(radius(inner), radius(outer));
    assert!(annulus(17.0, 17.02).is_ok());
    assert!(
        annulus(17.0, 17.009).is_err()
            && annulus(17.0, 17.0).is_err()
            && annulus(18.0, 17.0).is_err()
    );
    let on = |r: f64| {
        RingSurvey::new(
            face(),
            "thread",
            [
                probe(0.0, r, 0.0),
                probe(120.0, r, 0.0),
                probe(240.0, r, 0.0),
            ],
        )
    };
    // The face runs from 17 to 20; a hundredth beyond is the reading of a caliper.
    assert!(on(16.995).is_ok() && on(20.005).is_ok());
    assert!(on(16.985).is_err() && on(20.015).is_err());
    let again = |angle: f64, r: f64| {
        RingSurvey::new(
            face(),
            "thread",
            [
                probe(0.0, 18.0, 0.0),
                probe(angle, r, 0.0),
                probe(120.0, 18.0, 0.0),
                probe(240.0, 18.0, 0.0),
            ],
        )
    };
    assert!(
        again(0.01, 18.0).is_ok() && again(0.009, 18.0).is_err() && again(359.995, 18.0).is_err()
    );
    // The same angle on another circle is another place.
    assert!(again(0.0, 19.0).is_ok());
    let one = again(0.01, 18.0).unwrap();
    assert!(
        one.joined(&on(19.0).unwrap())
            .is_ok_and(|both| both.probes().len() == 7)
    );
    let wider = RingSurvey::new(
        annulus(17.0, 21.0).unwrap(),
        "thread",
        one.probes().to_vec(),
    )
    .unwrap();
    assert_eq!(one.joined(&wider).unwrap_err().field(), "face");
}

/// A slope is what it is, whatever the terms beside it: probes so close that no other term can be told leave the tilt of the
/// plane.
#[test]
fn probes_in_one_spot_still_have_a_tilt() {
    let exact = |angle, z| Probe {
        height: Reading::exact(mm(z)).unwrap(),
        ..probe(angle, 18.5, z)
    };
    let near = survey(vec![
        exact(40.0, 0.000_01),
        exact(40.02, 0.000_02),
        exact(40.05, 0.000_01),
    ]);
    let (form, tilt) = (near.form(mm(37.0)).unwrap(), near.tilt(mm(37.0)).unwrap());
    let (one, other) = (to_mm(form.tilt.value), to_mm(tilt.run_out.value()));
    assert!(
        other > 0.0 && (one / other - 1.0).abs() < 1e-9,
        "{one} {other}"
    );
    let apart = form.tilt_high_at.unwrap().apart(tilt.high_at.unwrap());
    assert!(apart.value < 1e-9);
}

/// A line of a drawing is 145 mm long, which is 71 letters of 3.4 mm, 0.6 of that wide.
#[test]
fn long_notes_are_wrapped_between_words() {
    let drawn = |letters: usize| {
        // "Limit: " and ": never more than 0.40 mm may come off (the nearest limit)" make 65, the name the rest.
        let name = "a".repeat(letters - 65);
        let off = Reading::exact(mm(0.4)).unwrap();
        let limit = CutLimit::new(LimitKind::Other, name, off, Grade::Shop).unwrap();
        let ring = survey(ring_of(5, 18.5, |t| 0.05 * t.cos()));
        let svg = ring
            .drawing(&Sight::default(), mm(0.05), &Allowance::new([limit]))
            .unwrap();
        svg.lines()
            .find(|l| l.contains("Limit: "))
            .unwrap()
            .contains(" limit)<")
    };
    assert!(drawn(71) && !drawn(72));
}
