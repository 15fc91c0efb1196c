//! What is refused, drawn and written.

use super::*;

#[test]
fn bad_surveys_are_refused_by_name() {
    let refused = |probes: Vec<Probe>| RingSurvey::new(face(), "thread", probes).unwrap_err();
    assert_eq!(refused(vec![]).kind(), ErrorKind::Missing);
    assert_eq!(
        refused(vec![probe(0.0, 18.0, 0.0), probe(90.0, 18.0, 0.0)]).kind(),
        ErrorKind::Missing
    );
    let again = refused(vec![
        probe(0.0, 18.0, 0.0),
        probe(90.0, 18.0, 0.0),
        probe(0.0, 18.0, 0.1),
    ]);
    assert_eq!(
        (again.kind(), again.field()),
        (ErrorKind::Contradiction, "probes.2.angle")
    );
    // Two radii on one line through the axis.
    let line = vec![
        probe(0.0, 17.5, 0.0),
        probe(0.0, 19.5, 0.0),
        probe(180.0, 17.5, 0.0),
        probe(180.0, 19.5, 0.0),
    ];
    assert_eq!(refused(line).kind(), ErrorKind::NotApplicable);
    assert_eq!(
        refused(vec![
            probe(0.0, 36.0, 0.0),
            probe(90.0, 18.0, 0.0),
            probe(180.0, 18.0, 0.0)
        ])
        .field(),
        "probes.0.radius"
    );
    let three = vec![
        probe(0.0, 17.5, 0.0),
        probe(90.0, 18.0, 0.0),
        probe(180.0, 18.5, 0.0),
    ];
    assert_eq!(refused(three).kind(), ErrorKind::OutOfRange);
    assert_eq!(
        RingSurvey::new(face(), " ", ring_of(5, 18.0, |_| 0.0))
            .unwrap_err()
            .field(),
        "datum"
    );
    assert!(
        Clock::new(deg(-1.0)).is_err()
            && Clock::new(deg(360.0)).is_err()
            && Clock::new(deg(f64::NAN)).is_err()
    );
    assert!(Reading::new(mm(f64::NAN), mm(0.0)).is_err());
    let depth = |v: f64| survey(ring_of(5, 18.0, |t| 0.01 * t.cos())).touched_area(mm(v));
    assert_eq!(depth(-0.1).unwrap_err().kind(), ErrorKind::OutOfRange);
    assert_eq!(
        depth(f64::INFINITY).unwrap_err().kind(),
        ErrorKind::NotFinite
    );
    // The same on free points.
    let p = |x, y| Point::new(mm(x), mm(y), mm(0.0)).unwrap();
    for points in [
        vec![],
        vec![p(0.0, 0.0), p(1.0, 0.0)],
        vec![p(0.0, 0.0); 5],
        vec![p(0.0, 0.0), p(1.0, 1.0), p(2.0, 2.0)],
    ] {
        assert!(least_squares(&points).is_err() && minimum_zone(&points).is_err());
        assert!(least_squares_tangent(&points).is_err() && minimax_tangent(&points).is_err());
        let seat = seat_plane(&points, mm(0.0), mm(0.0)).unwrap_err();
        assert_eq!(seat.field(), "points");
    }
    let outside =
        seat_plane(&[p(0.0, 0.0), p(1.0, 0.0), p(0.0, 1.0)], mm(1.0), mm(1.0)).unwrap_err();
    assert_eq!(
        (outside.kind(), outside.field()),
        (ErrorKind::Contradiction, "axis")
    );
    let pad = |x, y| PadPoint {
        pad: "pad".into(),
        point: p(x, y),
    };
    assert!(
        PadSurvey::new(
            "axle",
            [pad(0.0, 0.0), pad(0.0, 0.0), pad(1.0, 1.0)],
            mm(0.01)
        )
        .is_err()
    );
    assert!(
        PadSurvey::new(
            "axle",
            [pad(0.0, 0.0), pad(1.0, 0.0), pad(0.0, 1.0)],
            mm(-0.01)
        )
        .is_err()
    );
}

#[test]
fn drawings_are_whole_and_safe() {
    let hostile = "<script>&\"\u{7}";
    let ring = RingSurvey::new(face(), hostile, ring_of(7, 18.5, |t| 0.05 * t.cos())).unwrap();
    let limit = CutLimit::new(
        LimitKind::PaintLip,
        hostile,
        Reading::exact(mm(0.2)).unwrap(),
        Grade::Shop,
    )
    .unwrap();
    let svg = ring
        .drawing(&Sight::default(), mm(0.05), &Allowance::new([limit]))
        .unwrap();
    assert!(!svg.contains("<script") && svg.contains("&lt;script&gt;&amp;&quot;"));
    // XML 1.0 allows no such sign, not even as an entity.
    assert!(!svg.contains('\u{7}'));
    assert_eq!(svg.matches("<text").count(), svg.matches("</text>").count());
    assert!(svg.trim_end().ends_with("</svg>") && !svg.contains("NaN"));
    // Black and white only.
    for colour in svg
        .split("fill=\"")
        .chain(svg.split("stroke=\""))
        .skip(1)
        .filter_map(|s| s.split('"').next())
    {
        assert!(
            ["black", "white", "none", "url(#touched)"].contains(&colour)
                || colour.starts_with("<svg"),
            "{colour}"
        );
    }
    assert!(
        ring.drawing(&Sight::default(), mm(-0.05), &Allowance::default())
            .is_err()
    );
}

#[cfg(feature = "serde")]
#[test]
fn answers_serialize_with_units_and_settled_numbers() {
    let ring = survey(ring_of(7, 18.5, |t| 0.06 * t.cos()));
    let answer = ring
        .answer(&goal(), &allow("width", 0.4), DecisionRule::default())
        .unwrap();
    let json = serde_json::to_value(&answer).unwrap();
    assert_eq!(json["facing"]["step"]["step"], "one_pass");
    assert_eq!(
        json["facing"]["clean_up"]["at_outer_edge_mm"],
        serde_json::json!(0.12973)
    );
    assert_eq!(
        json["squareness"]["tilt"]["over_mm"],
        serde_json::json!(40.0)
    );
    assert_eq!(json["facing"]["nearest_limit"]["kind"], "minimum_width");
    assert!(json["seat"]["contacts"].as_array().unwrap().len() == 3);
    let oval = bore(vec![two_point(0.0, 5.0, 43.8), two_point(90.0, 5.0, 44.0)]);
    let json = serde_json::to_value(&oval).unwrap();
    assert_eq!(json["size"]["finding"], "none");
    assert_eq!(
        json["sections"][0]["ovality_at_least_mm"],
        serde_json::json!(0.2)
    );
}

#[cfg(feature = "serde")]
#[test]
fn sheets_name_the_field_that_is_wrong() {
    let ring = |probe: &str| {
        let sheet: RingSheet = serde_json::from_str(&format!(
            r#"{{ "inner_diameter": "34 mm", "outer_diameter": "42 mm", "probed_diameter": "40 mm", "pilot": "thread",
                "uncertainty": "0.008 mm", "probes": [{{ "angle": "0 deg", "height": "0.05 mm" }},
                {{ "angle": "120 deg", "height": "0.02 mm" }}, {probe}] }}"#
        ))
        .unwrap();
        sheet.read()
    };
    assert!(ring(r#"{ "angle": "240 deg", "height": "0.03 +/- 0.01 mm" }"#).is_ok());
    for (probe, field) in [
        (
            r#"{ "angle": "400 deg", "height": "0.03 mm" }"#,
            "probes.2.angle.angle",
        ),
        (
            r#"{ "angle": "240", "height": "0.03 mm" }"#,
            "probes.2.angle.angle",
        ),
        (
            r#"{ "angle": "240 deg", "height": "0.03" }"#,
            "probes.2.height.length",
        ),
        (
            r#"{ "angle": "240 deg", "height": "0.03 mm", "diameter": "80 mm" }"#,
            "probes.2.radius",
        ),
        (
            r#"{ "angle": "0 deg", "height": "0.03 mm" }"#,
            "probes.2.angle",
        ),
    ] {
        assert_eq!(ring(probe).unwrap_err().field(), field, "{probe}");
    }
    let bore: BoreSheet = serde_json::from_str(
        r#"{ "readings": [{ "angle": "0 deg", "depth": "5 mm", "diameter": "43.97 mm" }] }"#,
    )
    .unwrap();
    assert_eq!(
        bore.read().unwrap_err().field(),
        "readings.0.diameter.uncertainty"
    );
    let unknown = serde_json::from_str::<BoreSheet>(r#"{ "readings": [], "typo": 1 }"#);
    assert!(unknown.unwrap_err().to_string().contains("typo"));
    let limit = |json: &str| {
        serde_json::from_str::<LimitSheet>(json)
            .unwrap()
            .read()
            .unwrap_err()
            .kind()
    };
    assert_eq!(
        limit(r#"{ "kind": "wall", "what": "insert" }"#),
        ErrorKind::Missing
    );
    assert_eq!(
        limit(r#"{ "kind": "wall", "what": "insert", "may_come_off": "1 mm", "unknown": "?" }"#),
        ErrorKind::Contradiction
    );
}
