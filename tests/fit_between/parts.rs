//! Measured parts: which one is out, at which place, and what would cure it.

use super::*;

/// Tube 27.40, post 27.00, sold as 27.2: both are 0.2 off, and the shim has half the difference as its wall.
#[test]
fn loose_post_both_are_out() {
    let tube = HoleMember::of_reading(read("27.40 +/- 0.02 mm"))
        .unwrap()
        .with_nominal(mm(27.2))
        .unwrap();
    let post = ShaftMember::of_reading(read("27.00 +/- 0.02 mm")).unwrap();
    let fit = fit_between(&tube, &post, RULE).unwrap();
    assert_eq!(
        in_mm(fit.hole().off_nominal.unwrap()).to_string(),
        "0.200 mm"
    );
    assert_eq!(
        in_mm(fit.shaft().off_nominal.unwrap()).to_string(),
        "-0.200 mm"
    );
    let window = Wanted::clearance(
        Limits::between(mm(0.0), mm(0.1), Grade::CommonPractice).unwrap(),
        "",
    );
    let held = fit.against(&window).unwrap();
    assert_eq!(
        (held.outcome, held.out),
        (Outcome::NonconformityShown, Out::Both)
    );
    assert_eq!(held.cure.shim_wall().unwrap().to_string(), "0.200 mm");
    assert_eq!(
        held.cure.shaft_sizes.unwrap().to_string(),
        "27.300 to 27.400 mm"
    );
    // With limits of their own the members are judged by these.
    let tube = tube
        .clone()
        .measured_once(read("27.21 +/- 0.005 mm"))
        .unwrap();
    let held = fit_between(&tube, &post, RULE)
        .unwrap()
        .against(&window)
        .unwrap();
    assert_eq!(held.out, Out::Shaft);
}

/// A crown seat of 30.02 in a race of 29.92: 0.10 of press, the upper end of one maker's "at most 0.10". A caliper cannot show
/// that; by simple acceptance it passes.
#[test]
fn crown_race_at_the_upper_end() {
    let race = HoleMember::of_reading(read("29.92 +/- 0.01 mm")).unwrap();
    let seat = ShaftMember::of_reading(read("30.02 +/- 0.01 mm")).unwrap();
    let window = Wanted::interference(Limits::at_most(mm(0.10), Grade::Published).unwrap(), "");
    let by = |rule| {
        fit_between(&race, &seat, rule)
            .unwrap()
            .against(&window)
            .unwrap()
    };
    assert_eq!(by(RULE).outcome, Outcome::Undecided);
    assert_eq!(
        by(DecisionRule::SimpleAcceptance).outcome,
        Outcome::ConformityShown
    );
    assert!((by(RULE).probability.unwrap() - 0.5).abs() < 1e-9);
    assert_eq!(
        in_mm(by(RULE).tightest.margin.unwrap()).to_string(),
        "0.000 mm"
    );
}

/// Frame 27.0, post 26.8: a sheet sold as 0.2 thick would not enter; the wall is 0.10.
#[test]
fn shim_wall_is_half_the_difference() {
    let tube = HoleMember::of_reading(read("27.00 +/- 0.01 mm")).unwrap();
    let post = ShaftMember::of_reading(read("26.80 +/- 0.01 mm")).unwrap();
    let window = Wanted::clearance(Limits::between(mm(0.0), mm(0.1), Grade::Shop).unwrap(), "");
    let held = fit_between(&tube, &post, RULE)
        .unwrap()
        .against(&window)
        .unwrap();
    assert_eq!(held.cure.shim_wall().unwrap().to_string(), "0.100 mm");
    // A press that is too tight needs no shim.
    let tight = fit_between(&post_as_tube(), &post, RULE)
        .unwrap()
        .against(&window)
        .unwrap();
    assert_eq!(
        (tight.outcome, tight.cure.shim_wall()),
        (Outcome::NonconformityShown, None)
    );
}

fn post_as_tube() -> HoleMember {
    HoleMember::of_reading(read("26.60 +/- 0.01 mm")).unwrap()
}

/// A shell bore of 45.80 where 45.95 to 46.00 is wanted: out by 0.15, and the bore is to blame, not the cup.
#[test]
fn undersize_bore_is_named() {
    let limits = Limits::between(mm(45.95), mm(46.0), Grade::Published).unwrap();
    let bore = HoleMember::of_limits(limits)
        .unwrap()
        .measured_once(read("45.80 +/- 0.02 mm"))
        .unwrap();
    let cup_limits = Limits::between(mm(46.0), mm(46.05), Grade::Published).unwrap();
    let cup = ShaftMember::of_limits(cup_limits)
        .unwrap()
        .measured_once(read("46.02 +/- 0.005 mm"))
        .unwrap();
    let fit = fit_between(&bore, &cup, RULE).unwrap();
    assert_eq!(fit.out(), Out::Hole);
    assert_eq!(
        in_mm(fit.hole().outside_by().unwrap()).to_string(),
        "0.150 mm"
    );
    assert_eq!(fit.shaft().outside_by(), None);
}

/// A direct bearing slips in by hand by design: no interference is a clearance fit, and conforms to a slip window.
#[test]
fn slip_fit_is_not_loose() {
    let shell = HoleMember::of_reading(read("37.005 +/- 0.003 mm")).unwrap();
    let ring = ShaftMember::of_ring(mm(37.0), RingClass::Normal)
        .unwrap()
        .measured_once(read("36.995 +/- 0.001 mm"))
        .unwrap();
    let fit = fit_between(&shell, &ring, RULE).unwrap();
    assert_eq!(fit.kind(), FitKind::Clearance);
    assert!(fit.kind().words().contains("by hand"));
    let slip = Wanted::clearance(Limits::between(mm(0.0), mm(0.03), Grade::Shop).unwrap(), "");
    let held = fit.against(&slip).unwrap();
    assert_eq!(
        (held.outcome, held.cure.shim_wall().is_none()),
        (Outcome::ConformityShown, true)
    );
}

/// ISO 492 limits the mean of the two-point diameters of a ring, so a ring that is out of round within the class conforms;
/// a cup of the same limits and readings does not, because a limit of size holds at every place (ISO 286-1).
#[test]
fn a_ring_is_judged_by_its_mean() {
    // Outside 42 mm, Normal class: 0/-11 um (ISO 492). One axis reads 2 um over, the other 10 um under: mean -4 um.
    let readings = [42.002, 41.990]
        .map(|d| SizeReading::new(framegauge::measure::Reading::exact(mm(d)).unwrap()));
    let ring = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
    let limits = ring.limits().unwrap();
    let cup = ShaftMember::of_limits(limits).unwrap();
    let shell = HoleMember::of_reading(read("41.97 +/- 0.002 mm")).unwrap();
    let own = |shaft: ShaftMember| {
        let fit = fit_between(&shell, &shaft.measured(&readings).unwrap(), RULE).unwrap();
        (
            fit.shaft().decision.unwrap().outcome,
            fit.shaft().outside_by().is_some(),
        )
    };
    assert_eq!(own(ring), (Outcome::ConformityShown, false));
    assert_eq!(own(cup), (Outcome::NonconformityShown, true));
}

/// One oval bore: conformity needs every place, one place shown outside is enough for nonconformity.
#[test]
fn every_place_counts() {
    let at = |text: &str, axis: f64, depth: f64| {
        SizeReading::new(read(text))
            .across(deg(axis))
            .unwrap()
            .at_depth(mm(depth))
            .unwrap()
    };
    let bore = HoleMember::measured_only(&[
        at("33.95 +/- 0.004 mm", 0.0, 5.0),
        at("34.03 +/- 0.004 mm", 90.0, 5.0),
        at("33.95 +/- 0.004 mm", 0.0, 12.0),
        at("33.96 +/- 0.004 mm", 90.0, 12.0),
    ])
    .unwrap();
    let cup = ShaftMember::of_reading(read("34.02 +/- 0.004 mm")).unwrap();
    let fit = fit_between(&bore, &cup, RULE).unwrap();
    assert_eq!(fit.kind(), FitKind::Transition);
    let window = Wanted::interference(
        Limits::between(mm(0.02), mm(0.10), Grade::Published).unwrap(),
        "",
    );
    let held = fit.against(&window).unwrap();
    assert_eq!(held.tightest.outcome, Outcome::ConformityShown);
    assert_eq!(held.outcome, Outcome::NonconformityShown);
    // The bore varies by 0.08, just the width of the window: exactly one cup size fits, within binary noise.
    assert_eq!(
        held.cure.shaft_sizes.unwrap().to_string(),
        "34.050 to 34.050 mm"
    );
}

/// Unmeasured members leave the outcome open unless every pair within their limits conforms, or none does.
#[test]
fn limits_alone_show_what_all_pairs_share() {
    let hole = HoleMember::of_class(mm(42.0), "P7".parse().unwrap()).unwrap();
    let ring = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
    let fit = fit_between(&hole, &ring, RULE).unwrap();
    let wanted = |low: f64, high: f64| {
        let held = fit
            .against(&Wanted::interference(
                Limits::between(um(low), um(high), Grade::Shop).unwrap(),
                "",
            ))
            .unwrap();
        (held.outcome, held.probability)
    };
    assert_eq!(wanted(0.0, 50.0), (Outcome::ConformityShown, Some(1.0)));
    assert_eq!(wanted(10.0, 50.0), (Outcome::Undecided, None));
    assert_eq!(wanted(50.0, 90.0), (Outcome::NonconformityShown, Some(0.0)));
    // One member measured: the bore is known, the ring may still be anything within its class.
    let hole = hole.measured_once(read("41.960 +/- 0.001 mm")).unwrap();
    let fit = fit_between(&hole, &ring, RULE).unwrap();
    let held = fit
        .against(&Wanted::interference(
            Limits::at_most(um(20.0), Grade::Shop).unwrap(),
            "",
        ))
        .unwrap();
    assert_eq!(held.outcome, Outcome::NonconformityShown);
}

#[test]
fn an_unknown_limit_never_shows_conformity() {
    let bore = HoleMember::of_reading(read("34.00 +/- 0.001 mm")).unwrap();
    let cup = ShaftMember::of_reading(read("34.05 +/- 0.001 mm")).unwrap();
    let limits = Limits::new(Bound::Unknown, Bound::At(mm(0.10)), Grade::Published).unwrap();
    let held = fit_between(&bore, &cup, RULE)
        .unwrap()
        .against(&Wanted::interference(limits, ""))
        .unwrap();
    assert_eq!(
        (held.outcome, held.why),
        (Outcome::Undecided, Why::LimitUnknown)
    );
}

#[test]
fn bad_input_is_named() {
    let hole = HoleMember::of_class(mm(42.0), "H7".parse().unwrap()).unwrap();
    let other = ShaftMember::of_ring(mm(41.0), RingClass::Normal).unwrap();
    assert_eq!(
        fit_between(&hole, &other, RULE).unwrap_err().kind(),
        ErrorKind::Contradiction
    );
    assert_eq!(
        HoleMember::measured_only(&[]).unwrap_err().kind(),
        ErrorKind::Missing
    );
    assert_eq!(
        hole.clone().with_nominal(mm(43.0)).unwrap_err().kind(),
        ErrorKind::Contradiction
    );
    assert_eq!(
        HoleMember::of_reading(read("-1 +/- 0.1 mm"))
            .unwrap_err()
            .kind(),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        HoleMember::of_figure(&Figure::unknown("not published"))
            .unwrap_err()
            .kind(),
        ErrorKind::Missing
    );
    let negative = Limits::between(mm(-1.0), mm(1.0), Grade::Shop).unwrap();
    assert_eq!(
        ShaftMember::of_limits(negative).unwrap_err().kind(),
        ErrorKind::OutOfRange
    );
    // One-sided limits say no size: measure.
    let one_sided =
        HoleMember::of_limits(Limits::at_least(mm(44.0), Grade::Published).unwrap()).unwrap();
    let cup = ShaftMember::of_reading(read("44.05 +/- 0.01 mm")).unwrap();
    assert_eq!(
        fit_between(&one_sided, &cup, RULE).unwrap_err().kind(),
        ErrorKind::Missing
    );
    // A bare nominal size serves, and says so.
    let stated = Figure::known(
        Span::new(Some(mm(44.0)), None, None).unwrap(),
        Evidence::shop("catalogue"),
    );
    let fit = fit_between(&HoleMember::of_figure(&stated).unwrap(), &cup, RULE).unwrap();
    assert!(fit.cautions().contains(&Caution::NominalOnly));
    // Repeats of one place that differ by more than they claim.
    let repeats = ["27.20 +/- 0.01 mm", "27.30 +/- 0.01 mm"].map(|t| SizeReading::new(read(t)));
    let post = ShaftMember::measured_only(&repeats).unwrap();
    assert!(
        post.shape()
            .unwrap()
            .cautions()
            .contains(&Caution::ScatterExceedsUncertainty)
    );
    let too_many = vec![SizeReading::new(read("27.2 +/- 0.1 mm")); 1001];
    assert_eq!(
        ShaftMember::measured_only(&too_many).unwrap_err().kind(),
        ErrorKind::TooLarge
    );
}

/// Serialized numbers carry their unit in the name and no binary noise.
#[cfg(feature = "serde")]
#[test]
fn serialized_form() {
    let bore = HoleMember::of_reading(read("34.80 +/- 0.01 mm"))
        .unwrap()
        .with_nominal(mm(34.8))
        .unwrap();
    let cup = ShaftMember::of_reading(read("34.85 +/- 0.01 mm")).unwrap();
    let fit = fit_between(&bore, &cup, RULE).unwrap();
    let json = serde_json::to_value(&fit).unwrap();
    assert_eq!(json["tightest"]["value_mm"], -0.05);
    assert_eq!(json["kind"], "interference");
    assert_eq!(json["shaft"]["off_nominal_mm"], 0.05);
    assert!(json.get("sizes").is_none());
}

/// ISO 286-1, definitions of clearance and interference: each is positive. A post that would have to be forced in is no
/// "clearance of at most 0.2 mm", and a cup that drops in is no "interference of at most 0.1 mm".
#[test]
fn a_window_that_is_open_below_ends_at_zero() {
    let held = |hole: &str, shaft: &str, wanted: &Wanted| {
        let hole = HoleMember::of_reading(hole.parse().unwrap()).unwrap();
        let shaft = ShaftMember::of_reading(shaft.parse().unwrap()).unwrap();
        let fit = fit_between(&hole, &shaft, DecisionRule::default()).unwrap();
        fit.against(wanted).unwrap().outcome
    };
    let slip = Wanted::clearance(Limits::at_most(mm(0.2), Grade::Published).unwrap(), "");
    assert_eq!(
        held("27.00 +/- 0.01 mm", "27.15 +/- 0.01 mm", &slip),
        Outcome::NonconformityShown
    );
    assert_eq!(
        held("27.25 +/- 0.01 mm", "27.15 +/- 0.01 mm", &slip),
        Outcome::ConformityShown
    );
    let press = Wanted::interference(Limits::at_most(mm(0.1), Grade::Published).unwrap(), "");
    assert_eq!(
        held("34.06 +/- 0.01 mm", "34.00 +/- 0.01 mm", &press),
        Outcome::NonconformityShown
    );
    assert_eq!(
        held("33.95 +/- 0.01 mm", "34.00 +/- 0.01 mm", &press),
        Outcome::ConformityShown
    );
}
