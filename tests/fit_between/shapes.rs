//! What readings say of one member: directions, order, who is out, and what a table row may state.

use super::*;

fn at(text: &str, axis: f64, depth: f64) -> SizeReading {
    SizeReading::new(read(text))
        .across(deg(axis))
        .unwrap()
        .at_depth(mm(depth))
        .unwrap()
}

/// A diameter has no front: a direction and the one half a turn on are the same, whichever way round it was counted.
#[test]
fn a_diameter_has_no_front() {
    for (one, other, two) in [
        (90.0, -90.0, false),
        (10.0, -170.0, false),
        (0.0, 180.0, false),
        (10.0, -10.0, true),
        (30.0, -60.0, true),
    ] {
        let pair = [
            at("27.20 +/- 0.01 mm", one, 20.0),
            at("27.21 +/- 0.01 mm", other, 20.0),
        ];
        let tube = HoleMember::measured_only(&pair).unwrap();
        let ovality = tube.shape().unwrap().ovality();
        assert_eq!(ovality.is_some(), two, "{one} {other}");
    }
    let kept = at("27.20 +/- 0.01 mm", -30.0, 0.0);
    // The mouth itself is a depth; outside of it there is none.
    assert_eq!(
        (kept.axis(), kept.depth()),
        (Some(deg(-30.0)), Some(mm(0.0)))
    );
    assert!(kept.at_depth(mm(-0.001)).is_err());
}

/// Readings that agree in size but not in how good they are: the order in which they were written down changes nothing,
/// and the least certain one counts.
#[test]
fn the_order_of_readings_changes_nothing() {
    let fine = at("27.20 +/- 0.01 mm", 0.0, 20.0);
    let coarse = at("27.20 +/- 0.05 mm", 0.0, 120.0);
    let across = [
        at("27.24 +/- 0.01 mm", 90.0, 20.0),
        at("27.24 +/- 0.05 mm", 90.0, 120.0),
    ];
    for readings in [
        [fine, coarse, across[0], across[1]],
        [across[1], across[0], coarse, fine],
    ] {
        let tube = HoleMember::measured_only(&readings).unwrap();
        let shape = tube.shape().unwrap();
        assert_eq!(shape.smallest(), coarse.size());
        assert_eq!(shape.largest(), across[1].size());
        // 0.04 mm out of round, good to the root sum of 0.05 and 0.05: 0.0707 mm.
        let ovality = shape.ovality().unwrap();
        let good_to = in_mm(ovality.expanded_uncertainty()).to_string();
        assert_eq!(in_mm(ovality.value()).to_string(), "0.040 mm");
        assert_eq!(good_to, "0.071 mm");
    }
}

/// A thousand readings are held, one more is a mistake.
#[test]
fn a_thousand_readings_of_one_size() {
    let many = vec![SizeReading::new(read("27.2 +/- 0.1 mm")); 1000];
    assert!(ShaftMember::measured_only(&many).is_ok());
}

/// Both within their own limits is "neither"; one that is not known to be within leaves it open.
#[test]
fn who_is_out_is_said_only_when_it_is_known() {
    let limits = |low: f64, high: f64| Limits::between(mm(low), mm(high), Grade::Shop).unwrap();
    let tube = |text: &str| {
        let tube = HoleMember::of_limits(limits(27.2, 27.3)).unwrap();
        tube.measured_once(read(text)).unwrap()
    };
    let post = |text: &str| {
        let post = ShaftMember::of_limits(limits(27.1, 27.2)).unwrap();
        post.measured_once(read(text)).unwrap()
    };
    let bare = ShaftMember::of_reading(read("27.15 +/- 0.01 mm")).unwrap();
    let out = |tube: &HoleMember, post: &ShaftMember| fit_between(tube, post, RULE).unwrap().out();
    let (good, unsure) = ("27.25 +/- 0.01 mm", "27.30 +/- 0.01 mm");
    assert_eq!(out(&tube(good), &post("27.15 +/- 0.01 mm")), Out::Neither);
    assert_eq!(
        out(&tube(unsure), &post("27.15 +/- 0.01 mm")),
        Out::CannotTell
    );
    assert_eq!(
        out(&tube(good), &post("27.20 +/- 0.01 mm")),
        Out::CannotTell
    );
    assert_eq!(out(&tube(good), &bare), Out::CannotTell);
}

/// Remembered limits are said to be such also when the part itself was measured: the readings are held against them.
#[test]
fn remembered_limits_are_said_beside_readings() {
    let post = ShaftMember::of_reading(read("27.15 +/- 0.01 mm")).unwrap();
    let said = |tube: &HoleMember| {
        let fit = fit_between(tube, &post, RULE).unwrap();
        fit.cautions().contains(&Caution::FromMemory)
    };
    let measured = |grade| {
        let limits = Limits::between(mm(27.2), mm(27.3), grade).unwrap();
        let tube = HoleMember::of_limits(limits).unwrap();
        tube.measured_once(read("27.25 +/- 0.01 mm")).unwrap()
    };
    assert!(said(&measured(Grade::Memory)) && !said(&measured(Grade::Shop)));
}

/// A row may state one limit only, or a size that no part can have.
#[test]
fn rows_with_one_limit_or_an_impossible_size() {
    let row = |nominal: Option<f64>, low: Option<f64>, high: Option<f64>| {
        let span = Span::new(nominal.map(mm), low.map(mm), high.map(mm)).unwrap();
        Figure::known(span, Evidence::shop("drawing 12"))
    };
    let bound = |figure: &Figure| HoleMember::of_figure(figure).unwrap().limits().unwrap();
    let at_least = bound(&row(Some(27.2), Some(27.15), None));
    assert_eq!(at_least.lower().known(), Some(mm(27.15)));
    let at_most = bound(&row(Some(27.2), None, Some(27.3)));
    assert_eq!(at_most.upper().known(), Some(mm(27.3)));
    for size in [0.0, -27.2, 1001.0] {
        let figure = row(Some(size), None, None);
        let (hole, shaft) = (
            HoleMember::of_figure(&figure).unwrap_err(),
            ShaftMember::of_figure(&figure).unwrap_err(),
        );
        assert_eq!(hole.kind(), ErrorKind::OutOfRange, "{size}");
        assert_eq!(shaft.kind(), ErrorKind::OutOfRange, "{size}");
    }
}

/// "A clearance of at most -0.02 mm" asks for a press of 0.02 mm or more: no zero may be put below it.
#[test]
fn a_window_below_zero_stays_open_below() {
    let bore = HoleMember::of_reading(read("33.95 +/- 0.01 mm")).unwrap();
    let cup = |text: &str| ShaftMember::of_reading(read(text)).unwrap();
    let wanted = Wanted::clearance(Limits::at_most(mm(-0.02), Grade::Shop).unwrap(), "");
    let held = |text: &str| {
        let fit = fit_between(&bore, &cup(text), RULE).unwrap();
        fit.against(&wanted).unwrap().outcome
    };
    assert_eq!(held("34.00 +/- 0.01 mm"), Outcome::ConformityShown);
    assert_eq!(held("33.94 +/- 0.01 mm"), Outcome::NonconformityShown);
}
