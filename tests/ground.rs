//! The ground: settled comparison, text form, roles.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use core::cmp::Ordering;

use framegauge::measure::{Limits, settled_cmp};
use framegauge::{
    BoreDiameter, Clearance, ErrorKind, Grade, Length, Pitch, ShaftDiameter, in_mm, inch,
    inch_fraction, mm, nanometres, parse_length, parse_toleranced, settled_mm, to_mm,
};
use proptest::prelude::*;

/// Every whole micrometre from 20 to 60 mm: a gap of exactly 0.05 mm meets a limit of 0.05 mm. The bare comparison fails
/// for more than half of them, which is why nothing else in the crate compares with a limit.
#[test]
fn settled_comparison_never_errs() {
    let limit = Limits::at_most(mm(0.05), Grade::Standard).unwrap();
    let mut bare_wrong = 0;
    for um in 20_000..=60_000 {
        let bore = mm(f64::from(um + 50) / 1000.0);
        let shaft = mm(f64::from(um) / 1000.0);
        let gap = Clearance::between(
            BoreDiameter::new(bore).unwrap(),
            ShaftDiameter::new(shaft).unwrap(),
        )
        .length();
        assert_eq!(settled_cmp(gap, mm(0.05)), Ordering::Equal, "{um} um");
        assert!(limit.admits(gap));
        assert!(!limit.admits(gap + framegauge::um(1.0)));
        bare_wrong += u32::from(gap > mm(0.05));
    }
    assert!(bare_wrong > 15_000, "the trap has gone: {bare_wrong}");
}

/// Inch conversions with one rounding. Exact values: 1.370 in = 17399/500 mm, 9/16 in = 14.2875 mm, 24 tpi = 25.4/24 mm.
#[test]
fn inches_are_exact() {
    assert_eq!(settled_mm(inch(1.370)), 34.798);
    assert_eq!(settled_mm(inch_fraction(9, 16)), 14.2875);
    assert_eq!(settled_mm(inch_fraction(11, 8)), 34.925);
    assert_eq!(to_mm(Pitch::tpi(20).unwrap().length()), 1.27);
    assert_eq!(in_mm(inch_fraction(9, 16)).to_string(), "14.288 mm");
}

#[test]
fn text_that_reads_two_ways_is_refused() {
    for (text, kind) in [
        ("27.2", ErrorKind::Unit),
        ("", ErrorKind::Unit),
        ("mm", ErrorKind::Text),
        ("27.2.1 mm", ErrorKind::Text),
        ("1,058 mm", ErrorKind::Text),
        ("1.370,5 mm", ErrorKind::Text),
        ("NaN mm", ErrorKind::NotFinite),
        ("inf mm", ErrorKind::NotFinite),
        ("1e400 mm", ErrorKind::Text),
        ("--3 mm", ErrorKind::Text),
        ("3/0 in", ErrorKind::Text),
        ("27.2 furlong", ErrorKind::Unit),
    ] {
        let error = parse_length(text).unwrap_err();
        assert_eq!(error.kind(), kind, "{text}: {error}");
        assert!(!error.remedy().is_empty(), "{text}");
    }
    assert_eq!(
        parse_length(&"9".repeat(100)).unwrap_err().kind(),
        ErrorKind::TooLarge
    );
    assert!(parse_toleranced("33.9 +/- -0.05 mm").is_err());
    assert!(parse_toleranced("41.96 -0.1/+0.1 mm").is_err());
}

/// Micrometres after a bare nominal value would make 34 um of a 34 mm seat.
#[test]
fn a_nominal_value_before_micrometres_needs_its_unit() {
    for text in ["33.9 +/- 50 um", "33.9 ± 50 µm", "41.96 0/-25 um"] {
        let error = parse_toleranced(text).unwrap_err();
        assert_eq!(error.kind(), ErrorKind::Unit, "{text}");
        assert!(error.remedy().contains("33.9 mm +/- 50 um"));
    }
    let (nominal, found) = parse_toleranced("33.9 mm +/- 50 um").unwrap();
    assert_eq!(settled_mm(nominal), 33.9);
    assert_eq!(settled_mm(found.unwrap().lower), -0.05);
    // Both in micrometres is meant when both say so.
    let (nominal, _) = parse_toleranced("500 um +/- 50 um").unwrap();
    assert_eq!(settled_mm(nominal), 0.5);
}

/// 0.0127 mm is half of the last of three places; what is less has no sign either.
#[test]
fn nothing_has_no_sign_in_inches() {
    let shown = |value: f64| format!("{:.3}", framegauge::in_inches(mm(value)));
    assert_eq!(shown(-0.0126), "0.000 in");
    assert_eq!(shown(-0.0127), "-0.001 in");
    assert_eq!(shown(-0.0128), "-0.001 in");
    assert_eq!(settled_mm(parse_length("1 - 3/8 in").unwrap()), 34.925);
}

/// A comma before three digits is a decimal comma only where thousands are out of the question on a bicycle.
#[test]
fn decimal_commas() {
    for (text, expected) in [
        ("27,2 mm", 27.2),
        ("34,798 mm", 34.798),
        ("0,025 mm", 0.025),
        ("1,370 in", 34.798),
        ("33,67 mm", 33.67),
    ] {
        assert_eq!(settled_mm(parse_length(text).unwrap()), expected, "{text}");
    }
}

#[test]
fn roles_refuse_what_no_part_can_be() {
    for bad in [f64::NAN, f64::INFINITY, -1.0, 0.0, 1000.1] {
        let error = BoreDiameter::new(mm(bad)).unwrap_err();
        assert_eq!(error.field(), "bore diameter");
        assert!(ShaftDiameter::new(mm(bad)).is_err());
    }
    assert!(
        Pitch::millimetres(0.0).is_err()
            && Pitch::millimetres(10.0).is_err()
            && Pitch::tpi(2).is_err()
    );
    assert!(nanometres(mm(f64::NAN)).is_none());
}

proptest! {
    #[test]
    fn printed_lengths_read_back(nm in -500_000_000i64..500_000_000) {
        #[expect(clippy::cast_precision_loss)]
        let length = mm(nm as f64 / 1e6);
        let printed = format!("{:.6}", in_mm(length));
        prop_assert_eq!(nanometres(parse_length(&printed).unwrap()), Some(nm));
    }

    #[test]
    fn no_text_panics(text in ".{0,80}") {
        let _ = parse_length(&text);
        let _ = parse_toleranced(&text);
        let _ = text.parse::<Pitch>();
        let _ = text.parse::<framegauge::measure::Reading>();
    }

    #[test]
    fn clearance_is_negative_interference(bore in 1.0f64..900.0, shaft in 1.0f64..900.0) {
        let (bore, shaft) = (BoreDiameter::new(mm(bore)).unwrap(), ShaftDiameter::new(mm(shaft)).unwrap());
        let clearance = Clearance::between(bore, shaft).length();
        let interference = framegauge::Interference::between(bore, shaft).length();
        prop_assert_eq!(settled_cmp(clearance, -interference), Ordering::Equal);
    }

    /// A tighter limit never admits what a looser one refuses.
    #[test]
    fn tighter_is_never_kinder(value in -1.0f64..1.0, limit in -1.0f64..1.0, slack in 0.0f64..0.5) {
        let at_most = |l: f64| Limits::at_most(mm(l), Grade::Shop).unwrap();
        let value: Length = mm(value);
        prop_assert!(!at_most(limit).admits(value) || at_most(limit + slack).admits(value));
    }
}

/// Halves go away from zero at every precision, as in tables: in binary 0.00015 is a hair less than it is written.
#[test]
fn halves_go_away_from_zero() {
    let four = |value: f64| format!("{:.4}", in_mm(mm(value)));
    let five = |value: f64| format!("{:.5}", in_mm(mm(value)));
    assert_eq!(
        (four(0.00015), four(-0.00015)),
        ("0.0002 mm".into(), "-0.0002 mm".into())
    );
    assert_eq!(
        (five(0.000035), five(-0.000035)),
        ("0.00004 mm".into(), "-0.00004 mm".into())
    );
}

/// Beyond 9000 km, that is 9e15 nm, a length has no settled value; just below it has.
#[test]
fn a_length_is_settled_up_to_nine_thousand_kilometres() {
    assert_eq!(nanometres(mm(9.0e9)), None);
    assert_eq!(nanometres(mm(-9.0e9)), None);
    assert_eq!(nanometres(mm(8.999e9)), Some(8_999_000_000_000_000));
    assert_eq!(nanometres(mm(f64::NAN)), None);
}

/// With `{:#}` a fact prints its grade and sources, and a derived one its formula; what has no formula prints none.
#[test]
fn evidence_is_printed_on_demand() {
    use framegauge::standard::{Shell, find};
    // T47: pitch diameter derived as 47 mm - 0.649519 x 1 mm; hand of the drive side published (`shells.toml`).
    let t47 = find::<Shell>("t47").unwrap();
    let derived = format!("{:#}", t47.pitch_diameter.as_ref().unwrap());
    assert!(derived.contains("47 mm - 0.649519 x 1 mm"), "{derived}");
    let published = format!("{:#}", t47.hand_drive.as_ref().unwrap());
    assert!(
        published.starts_with("left (published once: "),
        "{published}"
    );
    assert!(!published.contains(": :"), "{published}");
}

/// Why a figure or fact is unknown is told through `Stated`, and nothing where it is known.
#[test]
fn reasons_are_told_while_walking() {
    use framegauge::standard::{HeadSeat, Shell, Stated, Walk, find};
    let told = |row: &dyn Walk, field: &str| {
        let mut reason = None;
        row.walk("row", &mut |name, stated: &dyn Stated| {
            if name == field {
                reason = Some(String::from(stated.reason()));
            }
        });
        reason.unwrap()
    };
    // `head_tube.toml`, EC33, and `shells.toml`, fauber_threaded.
    let seat = find::<HeadSeat>("EC33").unwrap();
    assert!(told(seat, "bore").starts_with("no source lists it"));
    assert_eq!(told(seat, "fit"), "");
    let shell = find::<Shell>("fauber_threaded").unwrap();
    assert_eq!(told(shell, "hand_drive"), "not found");
    assert_eq!(told(shell, "minor_diameter"), "");
}
