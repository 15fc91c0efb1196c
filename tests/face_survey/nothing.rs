//! Nothing at all, exactly at a limit, and places that are almost another.

use super::*;

/// A diameter read without any doubt (invented: no gauge does).
fn sure(angle: f64, depth: f64, d: f64, gauge: Gauge) -> BoreReading {
    BoreReading {
        diameter: Reading::exact(mm(d)).unwrap(),
        gauge,
        ..two_point(angle, depth, d)
    }
}

/// No difference is no finding, however well it was read.
#[test]
fn equal_readings_show_nothing() {
    let two = |depth| sure(0.0, depth, 43.9, Gauge::TwoPoint);
    let along = bore(vec![two(2.0), two(12.0)]);
    assert!(!along.taper.clone().unwrap().shown);
    assert!(!along.against_other_end(&along).unwrap().shown);
    let both = bore(vec![two(5.0), sure(0.0, 5.0, 43.9, Gauge::ThreePoint)]);
    assert!(!both.lobes_suspected);
    // A hair more is a finding.
    let hair = bore(vec![two(5.0), sure(0.0, 5.0, 43.901, Gauge::ThreePoint)]);
    assert!(hair.lobes_suspected);
}

/// Depths less than half a millimetre beyond the first of a section belong to it, and to no other.
#[test]
fn a_reading_belongs_to_one_section() {
    let one_axis = |readings: Vec<BoreReading>| {
        let shape = bore(readings);
        let blind = |s: &Section| s.blind_to.iter().any(|b| b.contains("one axis"));
        shape.sections.iter().map(blind).collect::<Vec<_>>()
    };
    let at = |angle, depth| two_point(angle, depth, 44.0);
    assert_eq!(one_axis(vec![at(0.0, 0.0), at(90.0, 0.5)]), [true, true]);
    // 0.4 lies as near to 0.8, but stands with 0.
    assert_eq!(
        one_axis(vec![at(0.0, 0.0), at(90.0, 0.4), at(0.0, 0.8)]),
        [false, true]
    );
}

/// A round bore has no long axis, a flat face no hump, a flat mount nothing to rock about: no direction may be made up.
#[test]
fn no_error_has_no_direction() {
    let round = bore([0.0, 60.0, 120.0].map(|a| two_point(a, 5.0, 44.0)).to_vec());
    let ellipse = round.sections[0].ellipse.clone().unwrap();
    assert_eq!((ellipse.long_at, ellipse.ovality), (None, mm(0.0)));
    let flat = survey(ring_of(5, 18.5, |_| 0.0)).form(mm(37.0)).unwrap();
    assert_eq!((flat.saddle_high_at, flat.saddle), (None, Some(mm(0.0))));
    let pads = [(20.0, 0.0), (0.0, 20.0), (-20.0, 0.0), (0.0, -20.0)]
        .map(|(x, y)| Point::new(mm(x), mm(y), mm(0.0)).unwrap());
    let seat = seat_plane(&pads, mm(0.0), mm(0.0)).unwrap();
    assert_eq!(seat.rock(mm(40.0), mm(0.0), mm(0.004)).unwrap(), None);
}

fn exactly(angle: f64, r: f64, z: f64, u: f64) -> Probe {
    Probe {
        height: Reading::new(mm(z), mm(u)).unwrap(),
        ..probe(angle, r, z)
    }
}

/// Three places probed twice are enough. Half a millimetre apart is another place; a face that did not change was not cut,
/// and its zero did not move.
#[test]
fn a_pass_that_took_nothing() {
    let ring = |first: f64| {
        let others = [90.0, 180.0, 270.0].map(|a| exactly(a, 17.0, 0.0, 0.0));
        let first = exactly(0.0, first, 0.0, 0.0);
        survey([[first].as_slice(), &others].concat())
    };
    let compared = |after: f64| {
        ring(17.0)
            .compare(&ring(after), &goal(), DecisionRule::default())
            .unwrap()
    };
    let same = compared(17.0);
    assert_eq!((same.stations, same.cut, same.zero_moved), (4, 0, false));
    assert_eq!(compared(17.49).stations, 4);
    assert_eq!(compared(17.5).stations, 3);
}

/// "Ten times as far" is not farther than ten times: 10/128 mm beside a spread, or an uncertainty, of 1/128 mm. Powers of two,
/// so that the sums are exact.
#[test]
fn exactly_ten_times_does_not_stand_apart() {
    let suspect = |heights: [f64; 5], u: f64| {
        let probes: Vec<Probe> = heights
            .iter()
            .zip([0.0, 72.0, 144.0, 216.0, 288.0])
            .map(|(z, a)| exactly(a, 18.5, *z, u))
            .collect();
        let warnings = survey(probes).warnings();
        warnings
            .iter()
            .any(|w| matches!(w, Warning::Suspect { .. }))
    };
    let step = 1.0 / 128.0;
    let spread = |odd| suspect([0.0, 0.0, step, 0.0, odd], 0.0);
    assert!(!spread(10.0 * step) && spread(11.0 * step));
    let unsure = |odd| suspect([0.0, 0.0, 0.0, 0.0, odd], step);
    assert!(!unsure(10.0 * step) && unsure(11.0 * step));
}

/// A circle probed once stands at that height all round. Inner circle low, outer one (radius 19.5 against 18) high: half way
/// down the cutter has touched 19.5/37.5 = 0.52 of both lengths.
#[test]
fn a_circle_probed_once() {
    let mut probes = ring_of(3, 18.0, |_| 0.0);
    probes.push(probe(60.0, 19.5, 0.1));
    let touched = survey(probes).touched_arc(mm(0.05)).unwrap();
    assert!((touched - 0.52).abs() < 1e-12, "{touched}");
}

/// A share lies above 0 and not above 1, asked for or set as a goal.
#[test]
fn shares_beyond_the_face_are_refused() {
    let ring = survey(ring_of(5, 18.5, |t| 0.05 * t.cos()));
    for share in [0.0, -0.5, 1.001, f64::NAN, f64::INFINITY] {
        let asked = ring.depth_for_share(share).unwrap_err();
        let set = goal().touching(share).unwrap_err();
        for error in [asked, set] {
            assert_eq!(
                (error.kind(), error.field()),
                (ErrorKind::OutOfRange, "share")
            );
        }
    }
    assert!(ring.depth_for_share(1.0).is_ok() && goal().touching(1.0).is_ok());
}

/// Two points name no plane, and say so before anything else; an axis must be somewhere.
#[test]
fn two_points_and_an_axis_nowhere() {
    let p = |x, y| Point::new(mm(x), mm(y), mm(0.0)).unwrap();
    let two = [p(0.0, 0.0), p(1.0, 0.0)];
    let kinds = [
        least_squares(&two).unwrap_err().kind(),
        minimum_zone(&two).unwrap_err().kind(),
        least_squares_tangent(&two).unwrap_err().kind(),
        minimax_tangent(&two).unwrap_err().kind(),
        seat_plane(&two, mm(0.5), mm(0.0)).unwrap_err().kind(),
    ];
    assert_eq!(kinds, [ErrorKind::Missing; 5]);
    let three = [p(-1.0, -1.0), p(2.0, 0.0), p(0.0, 2.0)];
    for (x, y) in [(f64::NAN, 0.0), (0.0, f64::NAN), (f64::INFINITY, 0.0)] {
        let error = seat_plane(&three, mm(x), mm(y)).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::NotFinite, "axis")
        );
    }
}

#[test]
fn a_direction_is_given_back_as_it_was_said() {
    for angle in [0.0, 45.0, 135.0, 359.0] {
        assert!((clock(angle).angle().value - deg(angle).value).abs() < 1e-12);
    }
}

/// Widths are kept in order; a cut of nothing leaves the narrowest width, and a negative cut is none.
#[test]
fn widths_and_cuts_of_nothing() {
    let at = |a, w| WidthReading {
        at: clock(a),
        width: Reading::exact(mm(w)).unwrap(),
    };
    let shell = WidthSurvey::new([at(0.0, 68.2), at(180.0, 68.1)]).unwrap();
    let kept: Vec<Length> = shell.readings().iter().map(|r| r.width.value()).collect();
    assert_eq!(kept, [mm(68.2), mm(68.1)]);
    let cut = |v: f64| Reading::exact(mm(v)).unwrap();
    let left = |one: f64, other: f64| shell.remaining(&cut(one), &cut(other));
    assert_eq!(
        in_mm(left(0.0, 0.05).unwrap().value()).to_string(),
        "68.050 mm"
    );
    for (one, other, field) in [(-0.001, 0.0, "one end"), (0.0, -0.001, "other end")] {
        let error = left(one, other).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, field)
        );
    }
}

/// Sheets give diameters, surveys keep radii: half of 34, 42 and 40 mm.
#[cfg(feature = "serde")]
#[test]
fn a_sheet_of_diameters_becomes_radii() {
    let sheet: RingSheet = serde_json::from_str(
        r#"{ "inner_diameter": "34 mm", "outer_diameter": "42 mm", "probed_diameter": "40 mm",
             "pilot": "shell thread", "uncertainty": "0.008 mm", "probes": [
             { "angle": "0 deg", "height": "0.1 mm" }, { "angle": "120 deg", "height": "0 mm" },
             { "angle": "240 deg", "height": "0 mm" }] }"#,
    )
    .unwrap();
    let ring = sheet.read().unwrap();
    let radii = [
        ring.face().inner(),
        ring.face().outer(),
        ring.probes()[0].radius,
    ];
    let written = radii.map(|r| in_mm(r.length()).to_string());
    assert_eq!(written, ["17.000 mm", "21.000 mm", "20.000 mm"]);
}

/// A cross marks what carries a pressed cup: of a saddle read at four places the two high ones, not the third contact that
/// only fixes the plane. Twelve marks of the clock have the same line.
#[test]
fn crosses_mark_what_carries() {
    let saddle = survey(ring_of(4, 18.5, |t| 0.03 * (2.0 * t).cos()));
    let svg = saddle
        .drawing(&Sight::default(), mm(0.01), &Allowance::default())
        .unwrap();
    let thin = "stroke=\"black\" stroke-width=\"0.4\"/>";
    let lines = svg
        .lines()
        .filter(|l| l.contains("<line") && l.ends_with(thin));
    assert_eq!(lines.count(), 12 + 2 * 2);
}

/// A tall mount is drawn no taller than 60 mm: pads 100 mm apart stand 60 mm apart on paper, 10 mm beside 6.
#[test]
fn a_tall_mount_stays_on_the_page() {
    let at = |x: f64, y: f64| PadPoint {
        pad: if y < 50.0 { "lower" } else { "upper" }.into(),
        point: Point::new(mm(x), mm(y), mm(0.001 * x)).unwrap(),
    };
    let all = [
        at(-5.0, 20.0),
        at(5.0, 20.0),
        at(-5.0, 120.0),
        at(5.0, 120.0),
    ];
    let mount = PadSurvey::new("wheel axle", all, mm(0.006)).unwrap();
    let svg = mount
        .drawing(&Sight::default(), mm(0.001), &Allowance::default())
        .unwrap();
    let places = |name: &str| -> Vec<f64> {
        let marks = svg.lines().filter(|l| l.contains(" r=\"1.5\""));
        let value = |line: &str| {
            let after = line.split_once(&format!("{name}=\"")).unwrap().1;
            after.split('"').next().unwrap().parse::<f64>().unwrap()
        };
        marks.map(value).collect()
    };
    let apart = |of: Vec<f64>| {
        assert_eq!(of.len(), 4);
        let least = of.iter().copied().fold(f64::INFINITY, f64::min);
        of.iter().copied().fold(0.0, f64::max) - least
    };
    assert!((apart(places("cy")) - 60.0).abs() < 0.02);
    assert!((apart(places("cx")) - 6.0).abs() < 0.02);
}
