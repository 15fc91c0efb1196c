//! Verdicts that turn on one member's own surface, on an uncertainty, or on a figure that is not there.

use super::asked::MeasuredOnce as _;
use super::asked::{FitQuestion, HoleMember, ShaftMember, over_coating};
use framegauge::fit::{Feature, Out};
use framegauge::judge::{Fact, FitFact, head_tube_from_stock, pattern_threads};
use framegauge::measure::Limits;
use framegauge::standard::{Joint, Shell, Tables, find};
use framegauge::{ErrorKind, Grade, in_mm, mm};

use super::{OUT, read};

fn seatpost(sold_as: f64, bore: &str, post: &str) -> Vec<Fact> {
    let said = FitQuestion::new(Joint::Seatpost)
        .sold_as(mm(sold_as))
        .hole(HoleMember::of_reading(read(bore)).unwrap())
        .shaft(ShaftMember::of_reading(read(post)).unwrap())
        .judge()
        .unwrap();
    said.findings.into_iter().map(|f| f.fact).collect()
}

/// A post of 22.19 +/- 0.03 mm may be one of 22.2 mm, and the next of the series is 23.4 mm (`seatposts.toml`): in a bore of 22.8 mm
/// another of 22.2 mm is no cure; in 23.45 mm the next is.
#[test]
fn a_post_of_the_same_size_is_not_offered() {
    let said = seatpost(22.2, "22.80 +/- 0.01 mm", "22.19 +/- 0.03 mm");
    let tried = |said: &[Fact]| {
        said.iter().find_map(|f| match f {
            Fact::Fit(FitFact::TryPost { size, .. }) => Some(in_mm(*size).to_string()),
            _ => None,
        })
    };
    assert_eq!(tried(&said), None);
    assert!(said.iter().any(|f| f.code() == "shim_wall"), "{said:?}");
    let said = seatpost(22.2, "23.45 +/- 0.01 mm", "22.19 +/- 0.03 mm");
    assert_eq!(tried(&said).as_deref(), Some("23.400 mm"));
}

/// 27.32 +/- 0.05 mm may be 0.07 mm off 27.2 mm, less than the 0.1 mm from which a member is blamed (common practice); 27.36 mm is
/// not.
#[test]
fn a_member_is_blamed_beyond_its_uncertainty() {
    let off = |bore: &str| {
        let said = seatpost(27.2, bore, "27.15 +/- 0.01 mm");
        said.iter().any(|f| {
            let Fact::Fit(FitFact::OffTheSizeSold { off, .. }) = f else {
                return false;
            };
            *off == Out::Hole
        })
    };
    assert!(!off("27.32 +/- 0.05 mm"));
    assert!(off("27.36 +/- 0.05 mm"));
}

/// Paint in the hole says nothing of the bare part: a cup shown outside its own limits stays out.
#[test]
fn paint_on_one_member_leaves_the_other() {
    let limits = Limits::between(mm(34.0), mm(34.05), Grade::Shop).unwrap();
    let cup = || {
        ShaftMember::of_limits(limits)
            .unwrap()
            .measured_once(read("34.20 +/- 0.01 mm"))
            .unwrap()
    };
    let said = FitQuestion::new(Joint::HeadCup)
        .hole(HoleMember::of_reading(read("33.92 +/- 0.01 mm")).unwrap())
        .shaft(cup())
        .coated(Feature::Hole)
        .judge()
        .unwrap();
    let own = said
        .findings
        .iter()
        .find(|f| f.fact.code() == "member")
        .unwrap();
    assert_eq!(own.outcome, Some(OUT), "{said}");
}

/// Two members drawn for different sizes are no fit, and the question says so.
#[test]
fn members_of_two_sizes_are_refused() {
    let error = FitQuestion::new(Joint::PressShell)
        .hole(HoleMember::of_class(mm(42.0), "N7".parse().unwrap()).unwrap())
        .shaft(ShaftMember::of_class(mm(44.0), "h6".parse().unwrap()).unwrap())
        .judge()
        .unwrap_err();
    assert_eq!(error.kind(), ErrorKind::Contradiction, "{error}");
}

/// From a part exactly as large as its hole up to a gap of 0.05 mm: a clearance that begins at nothing, and the other way round a
/// press that ends at nothing.
#[test]
fn a_fit_that_begins_at_nothing() {
    let said = |post: f64| {
        let limits = Limits::between(mm(27.2), mm(27.25), Grade::Shop).unwrap();
        let question = FitQuestion::new(Joint::Seatpost)
            .hole(HoleMember::of_limits(limits).unwrap())
            .shaft(ShaftMember::of_reading(super::exact(post)).unwrap());
        question.judge().unwrap().words()
    };
    let text = said(27.2);
    assert!(text.contains("clearance 0.000 to 0.050 mm"), "{text}");
    let text = said(27.25);
    assert!(text.contains("interference 0.000 to 0.050 mm"), "{text}");
}

/// A powder coat is 0.06 to 0.12 mm a side (`coat_one_side`, memory); a diameter known to +/- 0.02 mm gives the coat to +/- 0.01 mm.
/// 30.28 mm on a seat of 30.0 mm is 0.14 mm a side: more than that explains. 30.26 mm is 0.13 mm.
#[test]
fn a_coat_is_judged_by_half_the_uncertainty() {
    let said = |reading: &str| {
        let said = over_coating(Feature::Shaft, Some(&read(reading)), Some(mm(30.0))).unwrap();
        said.words().to_string()
    };
    let text = said("30.28 +/- 0.02 mm");
    assert!(text.contains("a powder coat does not explain"), "{text}");
    let text = said("30.26 +/- 0.02 mm");
    assert!(text.contains("as a powder coat is"), "{text}");
}

/// A pattern of which one hand is not known has no hands to hold a shell against.
#[test]
fn one_hand_is_not_enough() {
    let mut one = find::<Shell>("bsc").unwrap().clone();
    one.hand_drive = None;
    assert_eq!(
        pattern_threads(&one).unwrap_err().kind(),
        ErrorKind::Missing
    );
    let mut other = find::<Shell>("bsc").unwrap().clone();
    other.hand_non_drive = None;
    assert_eq!(
        pattern_threads(&other).unwrap_err().kind(),
        ErrorKind::Missing
    );
}

/// 32.12 less two walls of 1.0 mm is 30.12 mm, 0.02 mm over the upper limit of EC30 (30.10 mm) and known to 0.06 mm: the tube may
/// still be one for EC30. 30.2 mm is not.
#[test]
fn stock_that_may_be_too_large_is_not_ruled_out() {
    let said = |outside: &str| {
        let said =
            head_tube_from_stock(&read(outside), &read("1.0 +/- 0.02 mm"), Tables::ours()).unwrap();
        said.words().to_string()
    };
    assert!(said("32.12 +/- 0.05 mm").contains("EC30"));
    assert!(!said("32.20 +/- 0.05 mm").contains("EC30"));
}
