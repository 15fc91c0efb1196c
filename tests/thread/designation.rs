//! Reading and printing designations.

use framegauge::thread::{
    Designation, EngagementGroup, Hand, IsoClass, Position, ThreadForm, ThreadSize, ToleranceClass,
    UnifiedClass,
};
use framegauge::{ErrorKind, Pitch, inch, mm};
use proptest::prelude::*;

fn read(text: &str) -> Designation {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}

#[test]
fn forms_that_are_read() {
    for (text, printed) in [
        ("M10x1", "M10x1"),
        ("m10 x 1", "M10x1"),
        ("M10×1,0", "M10x1"),
        ("M10x1-6H", "M10x1-6H"),
        ("M12x1.5-6g", "M12x1.5-6g"),
        ("M8", "M8x1.25"),
        ("M8-6H", "M8x1.25-6H"),
        ("M20x2-7g6g-L-LH", "M20x2-7g6g-L LH"),
        ("M10x1 LH", "M10x1 LH"),
        ("M10x1LH", "M10x1 LH"),
        ("1.370 in x 24 tpi BSC", "1.370 in x 24 tpi BSC"),
        ("1.370 in x 24 tpi BSC LH", "1.370 in x 24 tpi BSC LH"),
        ("1.370-24 BSC", "1.370 in x 24 tpi BSC"),
        ("1,370 x 24 BSA", "1.370 in x 24 tpi BSC"),
        ("1.375\" x 24 tpi ISO", "1 3/8 in x 24 tpi ISO"),
        ("1 3/8 in x 26 tpi BSC", "1 3/8 in x 26 tpi BSC"),
        ("1-3/8-26 BSC", "1 3/8 in x 26 tpi BSC"),
        ("9/16-20 UN", "9/16 in x 20 tpi UN"),
        ("1/2-20 UNF-2B", "1/2 in x 20 tpi UN-2B"),
        ("1-24 UNS", "1 in x 24 tpi UN"),
        ("#10-32 UNF-2A", "0.190 in x 32 tpi UN-2A"),
        ("31/32 in x 30 tpi BSC", "31/32 in x 30 tpi BSC"),
        ("36 mm x 24 tpi", "36 mm x 24 tpi"),
        ("34.7 mm x 1 mm", "34.7 mm x 1 mm"),
        (
            "1.29 in x 24 tpi unknown form",
            "1.290 in x 24 tpi unknown form",
        ),
        ("10 mm x 26 tpi RH", "10 mm x 26 tpi"),
        ("3/16-24 BSW", "3/16 in x 24 tpi BSW"),
    ] {
        assert_eq!(read(text).to_string(), printed, "{text}");
        assert_eq!(read(printed), read(text));
    }
    assert_eq!(read("M20x2-7g6g-L-LH").group, Some(EngagementGroup::Long));
}

#[test]
fn refusals_are_helpful() {
    for (text, kind, word) in [
        ("M10x10", ErrorKind::OutOfRange, "M10x1"),
        ("M10x0", ErrorKind::OutOfRange, "0.2 mm"),
        ("M0x1", ErrorKind::OutOfRange, "1 mm"),
        ("M35", ErrorKind::Missing, "M35x1"),
        ("1.370-24", ErrorKind::Missing, "BSC"),
        ("1.370 in x 24 tpi", ErrorKind::Missing, "BSC"),
        ("9/16-20", ErrorKind::Missing, "UN"),
        ("M12x1,5-6g 1.0", ErrorKind::Contradiction, "once"),
        ("34,8 mm x 1.0 mm", ErrorKind::Text, "one decimal mark"),
        ("1/2-13 UNF", ErrorKind::Contradiction, "20"),
        ("1/2-20 UNC", ErrorKind::Contradiction, "13"),
        ("36 mm x 24", ErrorKind::Unit, "24 tpi"),
        ("M36x24 tpi", ErrorKind::Contradiction, "36 mm x 24 tpi"),
        ("9/16 mm x 20 tpi", ErrorKind::Contradiction, "inches"),
        ("9/0-20 UN", ErrorKind::Text, "9/16"),
        ("1.370-24.5 BSC", ErrorKind::Text, "whole"),
        ("M10x1-2B", ErrorKind::NotApplicable, "6H"),
        ("M10x1-6H/6g", ErrorKind::Text, "one at a time"),
        ("1.370-24 BSC-6H", ErrorKind::NotApplicable, "2A"),
        ("M10x1 LH RH", ErrorKind::Contradiction, "once"),
        ("M10x1 6H 6H", ErrorKind::Contradiction, "once"),
        ("M10x1 blue", ErrorKind::Text, "LH"),
        ("M", ErrorKind::Text, "M10x1"),
        ("", ErrorKind::Text, "M10x1"),
        ("M1.2.3x1", ErrorKind::Text, "M10x1"),
        ("MNaNx1", ErrorKind::Text, "M10x1"),
        ("#13-32 UN", ErrorKind::Text, "#12"),
        ("999999999999999 mm x 1 mm", ErrorKind::Text, "known"),
    ] {
        let error = text.parse::<Designation>().unwrap_err();
        assert_eq!(error.kind(), kind, "{text}: {error}");
        assert!(error.to_string().contains(word), "{text}: {error}");
    }
    let long = "M".repeat(100);
    assert_eq!(
        long.parse::<Designation>().unwrap_err().kind(),
        ErrorKind::TooLarge
    );
    assert!("M10x1-6H".parse::<ThreadSize>().is_err());
}

fn any_size() -> impl Strategy<Value = ThreadSize> {
    let metric = (1000u32..=300_000, 200u32..=8000).prop_map(|(major, pitch)| {
        (
            ThreadForm::IsoMetric,
            mm(f64::from(major) / 1e3),
            Pitch::millimetres(f64::from(pitch) / 1e3),
        )
    });
    let inch_form = prop_oneof![
        Just(ThreadForm::IsoInch),
        Just(ThreadForm::Unified),
        Just(ThreadForm::Bsc),
        Just(ThreadForm::Whitworth),
        Just(ThreadForm::Unknown)
    ];
    let by_inch = (inch_form.clone(), 40u32..=6000, 4u16..=127)
        .prop_map(|(form, thou, tpi)| (form, inch(f64::from(thou) / 1e3), Pitch::tpi(tpi)));
    let by_fraction = (inch_form, 2u32..=200, 4u16..=127)
        .prop_map(|(form, parts, tpi)| (form, inch(f64::from(parts) / 32.0), Pitch::tpi(tpi)));
    let odd = (1000u32..=300_000, 4u16..=127).prop_map(|(um, tpi)| {
        (
            ThreadForm::Unknown,
            mm(f64::from(um) / 1e3),
            Pitch::tpi(tpi),
        )
    });
    prop_oneof![metric, by_inch, by_fraction, odd]
        .prop_filter_map("no such size", |(form, major, pitch)| {
            ThreadSize::new(form, major, pitch.unwrap()).ok()
        })
}

fn any_designation() -> impl Strategy<Value = Designation> {
    let iso = (
        4u8..=8,
        prop::sample::select(vec![4u8, 6, 8]),
        any::<bool>(),
    )
        .prop_map(|(p, c, hole)| {
            let position = if hole {
                Position::InternalH
            } else {
                Position::ExternalG
            };
            ToleranceClass::Iso(IsoClass::new(p, c, position).unwrap())
        });
    (any_size(), iso, 1u8..=3, any::<bool>(), any::<bool>()).prop_map(
        |(size, iso, number, left, classed)| {
            let mut read = Designation::new(size);
            if classed {
                read.class = match size.form() {
                    ThreadForm::IsoMetric | ThreadForm::IsoInch => Some(iso),
                    ThreadForm::Unified => {
                        let member = framegauge::thread::Member::External;
                        Some(ToleranceClass::Unified(
                            UnifiedClass::new(number, member).unwrap(),
                        ))
                    }
                    _ => None,
                };
            }
            if left {
                read.with_hand(Hand::Left)
            } else {
                read
            }
        },
    )
}

proptest! {
    #[test]
    fn printed_and_read_back(given in any_designation()) {
        let printed = given.to_string();
        let back: Designation = printed.parse().unwrap();
        prop_assert_eq!(back, given, "{}", printed);
        prop_assert_eq!(back.to_string(), printed);
    }

    #[test]
    fn any_text_is_read_or_refused(text in ".{0,70}") {
        if let Err(error) = text.parse::<Designation>() {
            prop_assert!(!error.problem().is_empty() && !error.remedy().is_empty());
        }
    }

    #[test]
    fn near_designations_are_read_or_refused(text in "[M#0-9x./, -]{1,8}(mm|in|tpi|BSC|UN|ISO)?[ -]?[0-9HgLABx]{0,4}") {
        if let Err(error) = text.parse::<Designation>() {
            prop_assert!(!error.problem().is_empty() && !error.remedy().is_empty());
        }
    }
}
