//! Spellings and classes that are refused.

use framegauge::thread::{
    Designation, Hand, IsoClass, Member, Position, ThreadForm, ThreadSize, ToleranceClass,
    UnifiedClass, hand_pattern,
};
use framegauge::{Pitch, inch, mm};

use super::{Page, refusal};

#[test]
fn refusals() {
    let mut page = Page::new();
    let long = format!("M10x1{}", " ".repeat(59));
    assert_eq!(long.len(), 64);
    assert!(long.parse::<Designation>().is_ok(), "64 bytes are read");
    let longer = format!("{long} ");
    page.title("designations");
    for text in TEXTS.iter().copied().chain([longer.as_str()]) {
        let error = match text.parse::<Designation>() {
            Ok(read) => panic!("`{text}` is read as {read}"),
            Err(error) => error,
        };
        page.line(&format!("`{text}` -> {}", refusal(&error)));
    }
    page.title("more than a size");
    for text in [
        "M10x1-6H",
        "M10x1 LH",
        "M10x1-L",
        "M10x1-N",
        "1/2-20 UNF-2B",
    ] {
        page.line(&format!(
            "`{text}` -> {}",
            refusal(&text.parse::<ThreadSize>().unwrap_err())
        ));
    }
    page.title("classes");
    for text in [
        "", "6", "H", "g6", "x6", "6K", "6H6", "6H6H6", "5g6h", "6HxH", "6H6HH", "6H/6g", "0H",
        "3H", "9H", "4H9H", "4H3H", "2g", "2g6g", "5g", "5g5g", "7g", "9g9g", "10g", "0A", "4A",
        "2AB", "2A2A", "9B", "6i",
    ] {
        page.line(&format!(
            "`{text}` -> {}",
            refusal(&text.parse::<ToleranceClass>().unwrap_err())
        ));
    }
    for (text, error) in [
        (
            "grade 3 of a hole",
            IsoClass::new(3, 6, Position::InternalG).unwrap_err(),
        ),
        (
            "crest grade 9 of a hole",
            IsoClass::new(4, 9, Position::InternalH).unwrap_err(),
        ),
        (
            "grade 2 of a screw",
            IsoClass::new(2, 6, Position::ExternalF).unwrap_err(),
        ),
        (
            "crest grade 7 of a screw",
            IsoClass::new(7, 7, Position::ExternalE).unwrap_err(),
        ),
        (
            "Unified class 0",
            UnifiedClass::new(0, Member::External).unwrap_err(),
        ),
        (
            "Unified class 4",
            UnifiedClass::new(4, Member::Internal).unwrap_err(),
        ),
    ] {
        page.line(&format!("{text} -> {}", refusal(&error)));
    }
    page.title("sizes from their parts");
    let (metric, tpi) = (Pitch::millimetres(1.0).unwrap(), Pitch::tpi(24).unwrap());
    for (form, major, pitch) in [
        (ThreadForm::IsoMetric, mm(f64::NAN), metric),
        (ThreadForm::IsoMetric, mm(f64::INFINITY), metric),
        (ThreadForm::IsoMetric, mm(0.999), metric),
        (ThreadForm::IsoMetric, mm(-10.0), metric),
        (ThreadForm::IsoMetric, mm(300.001), metric),
        (ThreadForm::IsoMetric, mm(2.999), metric),
        (ThreadForm::IsoMetric, mm(34.8), tpi),
        (ThreadForm::IsoInch, inch(1.375), metric),
        (ThreadForm::Unified, inch(0.5625), metric),
        (ThreadForm::Bsc, inch(1.37), metric),
        (ThreadForm::Whitworth, inch(0.25), metric),
    ] {
        let error = ThreadSize::new(form, major, pitch).unwrap_err();
        page.line(&format!(
            "{form}, {} mm x {pitch} -> {}",
            framegauge::to_mm(major),
            refusal(&error)
        ));
    }
    assert!(ThreadSize::new(ThreadForm::IsoMetric, mm(3.0), metric).is_ok());
    assert!(
        ThreadSize::new(
            ThreadForm::IsoMetric,
            mm(1.0),
            Pitch::millimetres(0.2).unwrap()
        )
        .is_ok()
    );
    assert!(ThreadSize::new(ThreadForm::IsoMetric, mm(300.0), metric).is_ok());
    page.title("marks and patterns");
    for mark in ["", "X", "LR", "links", "M"] {
        page.line(&format!(
            "`{mark}` -> {}",
            refusal(&Hand::from_mark(mark).unwrap_err())
        ));
    }
    for name in ["square taper", "", "bscc"] {
        page.line(&format!(
            "`{name}` -> {}",
            refusal(&hand_pattern(name).unwrap_err())
        ));
    }
    page.check("thread_guard/refused.txt");
}

#[rustfmt::skip]
const TEXTS: &[&str] = &[
    "", "   ", "M", "m", "Mx1",  "M.5x1", "M10.x1", "M10x", "M10x.", "M10x1.", "M-10x1", "M1.2.3x1", "M1,2.3x1", "M10x1,2,3", "MNaNx1",
    "M1.5x0,5", "M1234567890x1", "M10x0.1234567890", "M301x1", "M300.001x1", "M0x1", "M0.9x0.2", "M10x0", "M10x0.1", "M10x10", "M10x3.4", "M3x1.1",
    "M300x9", "M35", "M11.5", "M9.5", "M36x24 tpi", "M36x24tpi", "M10x1 blue", "M10x1 H6", "M10x1-6H/6g", "M10x1-6", "M10x1-2B", "M10x1-6H-6g",
    "M10x1 6H 6H", "M10x1-L-S", "M10x1-N N", "M10x1 LH LH", "M10x1 LH RH", "M10x1 s", "M10x1x2", "M10x1 leftish", "1.370", "1.370 in", "1.370 24 BSC",
    "x24 BSC", "-24 BSC", "1.370-24", "1.370 in x 24 tpi", "1.370 in x 24 tpi LH", "9/16-20", "9/16-20-2B", "1.370-24 XYZ", "1.370-24.5 BSC", "1.370-0 BSC",
    "1.370-3 BSC", "1.370-128 BSC", "1.370-70000 BSC", "1.370 in x 1 mm BSC", "1.375 in x 1 mm ISO", "1/2 in x 1 mm UN", "36 mm x 24", "36 mm x 24 BSC",
    "9/16 mm x 20 tpi", "1 3/8 mm x 26 tpi", "#10 mm x 32 tpi", "9/0-20 UN", "9/-20 UN", "9/1025-20 UN", "1025/1024-20 UN", "1 3/0-20 UN", "1 3/x UN",
    "#13-32 UN", "#-32 UN", "#x-32 UN", "#1234567-32 UN",
    "123456/1-20 UN",
    "1234567/1-20 UN",
    "123456789 mm x 1 mm",
    "1234567890 mm x 1 mm",
    "M1x0.4",
    "1/2-20,5 UN", "1234567 in x 20 tpi UN", "12-20 UN", "0.01-80 UN", "1/2-4 BSC", "1/2-13 UNF", "1/2-20 UNC",
    "1/2-28 UNF", "15/16-20 UNF", "1-20 UNF", "1-12 UNC", "1-8 UNEF", "1-24 UNF", "#5-44 UNC", "1.3-20 UNC", "1/2-20 UNF-6H", "1.370-24 BSC-2A",
    "3/16-24 BSW-2B", "36 mm x 24 tpi-6H", "1.375-24 ISO-2A", "34,8 mm x 1.0 mm", "1.370-24 BSC LH BSC", "999999999999999 mm x 1 mm", "0.5 mm x 24 tpi",
    "301 mm x 24 tpi", "1/2 - UN", "1/2-20 UNFF", "1 3-20 UN", "1 in x 24 tpi unknown", "è10x1", "M10x1é", "M10x1.5.5",
];
